"""One bottle's level as a picture that can be read, and set, with the keyboard too."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.metrics import UNIT
from barkeep.desktop.tones import current_tones
from barkeep.desktop.widgets.level_drawing import LevelReading, draw_level, share_at

TENTH, HUNDREDTH = 0.1, 0.01
_STEPS = {
    Qt.Key.Key_Up: TENTH,
    Qt.Key.Key_Right: TENTH,
    Qt.Key.Key_Down: -TENTH,
    Qt.Key.Key_Left: -TENTH,
}


class LevelGauge(QWidget):
    """Draws a level; with `editable`, a click, a drag or the arrow keys pick a new one.

    `picked` carries the share of the size. Shift makes the arrow keys go by
    hundredths, Home and End to empty and full.
    """

    picked = Signal(float)

    def __init__(self, parent: QWidget | None = None, *, editable: bool = False) -> None:
        super().__init__(parent)
        self._reading = LevelReading(0.0)
        self._editable = editable
        self.setAccessibleName("Level")
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        if editable:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.setCursor(Qt.CursorShape.PointingHandCursor)

    @property
    def reading(self) -> LevelReading:
        """What is drawn."""
        return self._reading

    def show_reading(self, reading: LevelReading, words: str) -> None:
        """Draw a reading; `words` say the same: “Level 315 of 700 ml, 45 %”."""
        self._reading = reading
        self.setAccessibleDescription(words)
        self.setToolTip(words)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(96, 168)

    def minimumSizeHint(self) -> QSize:
        return QSize(40, 96)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        tones = current_tones()
        draw_level(painter, self._drawn(), self._reading, tones)
        if self.hasFocus():
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(tones.accent), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), UNIT / 2, UNIT / 2)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._pick_at(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._pick_at(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if not self._editable or key not in (*_STEPS, Qt.Key.Key_Home, Qt.Key.Key_End):
            super().keyPressEvent(event)
            return
        fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in _STEPS:
            step = _STEPS[key] * (HUNDREDTH / TENTH if fine else 1)
            self._pick(self._reading.share + step)
        else:
            self._pick(0.0 if key == Qt.Key.Key_Home else 1.0)

    def _pick_at(self, event: QMouseEvent) -> None:
        if not self._editable or not event.buttons() & Qt.MouseButton.LeftButton:
            return
        self._pick(share_at(self._drawn(), QPointF(event.position())))

    def _pick(self, share: float) -> None:
        """Show the new share at once; whoever listens brings the words."""
        held = round(max(0.0, min(1.0, share)), 2)
        self._reading = replace(self._reading, share=held)
        self.update()
        self.picked.emit(held)

    def _drawn(self) -> QRectF:
        """Where the level goes; a lying gauge keeps room above and below for its pointers."""
        lying = self.width() >= self.height()
        across = UNIT if lying else UNIT / 2
        return QRectF(self.rect()).adjusted(UNIT / 2, across, -UNIT / 2, -across)
