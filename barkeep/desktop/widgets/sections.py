"""The parts of a page of details: a heading with a line below it, and words to be copied."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QVBoxLayout

from barkeep.desktop.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.widgets.labels import text_label


def add_heading(column: QVBoxLayout, heading: str) -> None:
    """Begin a part of the page."""
    column.addSpacing(PAD)
    column.addWidget(text_label(heading, TypeSize.STRONG, wrap=True))
    line = QFrame()
    line.setFrameShape(QFrame.Shape.HLine)
    line.setFrameShadow(QFrame.Shadow.Plain)
    line.setForegroundRole(QPalette.ColorRole.Mid)
    column.addWidget(line)


def grid_of_rows() -> QGridLayout:
    """A grid whose second column takes the room there is."""
    grid = QGridLayout()
    grid.setContentsMargins(0, HALF, 0, 0)
    grid.setHorizontalSpacing(UNIT + HALF)
    grid.setVerticalSpacing(UNIT)
    grid.setColumnStretch(1, 1)
    return grid


def selectable(label: QLabel) -> QLabel:
    """Let a label's words be marked and copied."""
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label
