"""A field with the word before it that says what it is for."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QWidget

from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import row_of
from barkeep.desktop.widgets.type_ahead import type_to_choices
from barkeep.translation import tr


def labelled(words: str, field: QWidget) -> QWidget:
    """A field behind its word; an underlined letter of that leads to it by Alt."""
    holder = QWidget()
    label = text_label(tr(words), quiet=True)
    label.setTextFormat(Qt.TextFormat.AutoText)  # or the letter would not be underlined
    label.setBuddy(field)
    if isinstance(field, QComboBox):
        type_to_choices(field)
    row_of(label, field, on=holder)
    return holder
