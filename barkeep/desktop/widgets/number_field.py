"""A field for a whole number, its text as far from the frame as in other fields."""

from __future__ import annotations

from PySide6.QtWidgets import QLineEdit, QSpinBox, QWidget

from barkeep.desktop.metrics import HALF


def number_field(name: str, least: int, most: int, parent: QWidget | None = None) -> QSpinBox:
    """A spin box from `least` to `most`; `name` is its accessible name."""
    made = QSpinBox(parent)
    made.setRange(least, most)
    made.setAccessibleName(name)
    inner = made.findChild(QLineEdit)
    if inner is not None:  # a style sheet's left padding does not reach it
        inner.setTextMargins(HALF + 2, 0, 0, 0)
    return made
