"""What stands there until the bar is read: a window where the bar's will be."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QMainWindow, QVBoxLayout, QWidget

from barkeep.desktop.metrics import UNIT, TypeSize
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.window_state import WindowState, restore_window

PICTURE = 96


class OpeningWindow(QMainWindow):
    """`painted` comes once, after the first paint."""

    painted = Signal()

    def __init__(self, state: WindowState) -> None:
        super().__init__()
        self.setWindowTitle("barkeep")
        self._was_painted = False
        centre = QWidget()
        column = QVBoxLayout(centre)
        column.setSpacing(UNIT)
        column.addStretch(2)
        column.addWidget(PictureLabel("barkeep", PICTURE), 0, Qt.AlignmentFlag.AlignHCenter)
        self.label = text_label("Opening the bar…", TypeSize.TITLE)
        column.addWidget(self.label, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(3)
        self.setCentralWidget(centre)
        restore_window(self, state)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._was_painted:
            self._was_painted = True
            self.painted.emit()
