"""The lines of a family tree that lead to one version of a drink."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QSize
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

STEP = 18
"""What one level moves a version to the right, in device-independent pixels."""
MOST_STEPS = 6
"""Deeper versions stay where they are, or their names would have no room."""


class FamilyBranch(QWidget):
    """`goes_on` says of each level whether more hangs on it below; of none, nothing is drawn.

    `elbow` is how far below the top the branch turns to its version.
    """

    def __init__(self, goes_on: Sequence[bool], elbow: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._goes_on = tuple(goes_on)[-MOST_STEPS:]
        self._elbow = elbow
        self.setFixedWidth(STEP * len(self._goes_on))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        return QSize(self.width(), self._elbow)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.PlaceholderText), 1.0))
        last = len(self._goes_on) - 1
        for level, goes_on in enumerate(self._goes_on):
            across = STEP * level + STEP / 2 - 0.5
            if goes_on or level == last:
                below = self.height() if goes_on else self._elbow + 0.5
                painter.drawLine(QPointF(across, 0.0), QPointF(across, below))
            if level == last:
                turn = self._elbow + 0.5
                painter.drawLine(QPointF(across, turn), QPointF(STEP * (level + 1) - 3.0, turn))
