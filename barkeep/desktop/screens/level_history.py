"""A bottle's level over time as a small painted line."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.metrics import HALF, TypeSize, font_of
from barkeep.desktop.models.bottle_words import short_date
from barkeep.desktop.tones import Tones, blend, current_tones
from barkeep.domain.inventory import Bottle, Entry
from barkeep.domain.level_words import quantity

WIDTH, HEIGHT = 212, 92
"""Fits the narrowest details beside a list."""
DOT = 2.5
Steps = Sequence[tuple[Entry, float]]


class LevelHistory(QWidget):
    """Steps from entry to entry, counts as dots; hidden while there is too little to draw."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._points: tuple[tuple[datetime, float, bool], ...] = ()
        self._ends = ("", "")
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName("Level over time")
        self.setFont(font_of(TypeSize.CAPTION))

    def show_steps(self, bottle: Bottle, steps: Steps, now: datetime) -> None:
        """Draw a history, oldest entry first, up to now."""
        size = bottle.product.size
        drawn = [(entry.at, level / size, entry.kind == "count") for entry, level in steps]
        self.setVisible(len(drawn) > 1)
        if len(drawn) < 2:
            return
        self._points = (*drawn, (max(now, drawn[-1][0]), drawn[-1][1], False))
        self._ends = (short_date(drawn[0][0].date(), now.date()), "today")
        first, last = (quantity(steps[place][1], bottle.product.unit) for place in (0, -1))
        words = f"From {first} on {self._ends[0]} to {last} today, in {len(steps)} entries"
        self.setAccessibleDescription(words)
        self.setToolTip(words)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(WIDTH, HEIGHT)

    def paintEvent(self, _event: QPaintEvent) -> None:
        if not self._points:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tones = current_tones()
        foot = self.fontMetrics().height() + HALF
        area = QRectF(self.rect()).adjusted(DOT + 1, DOT + 1, -DOT - 1, -foot)
        self._draw_frame(painter, area, tones)
        places = self._places(area)
        line = _steps(places)
        ground = QPainterPath(line)
        ground.lineTo(area.right(), area.bottom())
        ground.lineTo(places[0].x(), area.bottom())
        painter.fillPath(ground, blend(tones.liquid, tones.base, 0.35))
        painter.setPen(QPen(QColor(tones.text), 1.5))
        painter.drawPath(line)
        painter.setBrush(QColor(tones.text))
        for place, (_at, _share, is_count) in zip(places, self._points, strict=True):
            if is_count:
                painter.drawEllipse(place, DOT, DOT)

    def _draw_frame(self, painter: QPainter, area: QRectF, tones: Tones) -> None:
        painter.setPen(QPen(QColor(tones.line), 1))
        for share in (0.0, 0.5, 1.0):
            y = round(area.bottom() - share * area.height()) + 0.5
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))
        painter.setPen(QColor(tones.muted))
        below = QRectF(area.left(), area.bottom() + 2, area.width(), self.fontMetrics().height())
        painter.drawText(below, Qt.AlignmentFlag.AlignLeft, self._ends[0])
        painter.drawText(below, Qt.AlignmentFlag.AlignRight, self._ends[1])

    def _places(self, area: QRectF) -> list[QPointF]:
        start, end = self._points[0][0], self._points[-1][0]
        span = (end - start).total_seconds() or 1.0

        def place(at: datetime, share: float) -> QPointF:
            along = (at - start).total_seconds() / span
            return QPointF(
                area.left() + along * area.width(), area.bottom() - min(1.0, share) * area.height()
            )

        return [place(at, share) for at, share, _count in self._points]


def _steps(places: Sequence[QPointF]) -> QPainterPath:
    """A level holds until the next entry changes it."""
    path = QPainterPath(places[0])
    for before, place in pairwise(places):
        path.lineTo(place.x(), before.y())
        path.lineTo(place)
    return path
