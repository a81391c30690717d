"""A bottle's level over time: steps of pours, counts, refills, and the doubt as a band."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy

from barkeep.desktop.bottles.rows import entry_in_words, short_date
from barkeep.desktop.look.metrics import HALF, TypeSize, font_of, scaled
from barkeep.desktop.look.tones import Tones, blend
from barkeep.desktop.widgets.levels import draw_pointer
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.picture import Picture
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_steps import LevelStep
from barkeep.domain.bottles.level_words import doubt_of, quantity, with_doubt
from barkeep.translation import tr, tr_noop

NAME = tr_noop("Level over time")
WIDTH, HEIGHT = 212, 116
"""The narrowest, which fits beside a list, and how high it is."""
DOT = 3.0
MEANT = 10.0
"""So near to an entry the mouse means it."""


class LevelHistory(Picture):
    """Hidden while there is too little to draw; the arrow keys walk the entries."""

    def __init__(self) -> None:
        super().__init__(tr(NAME))
        self.steps: tuple[LevelStep, ...] = ()
        """What is drawn, the oldest entry first."""
        self.at: int | None = None
        """The number of the entry that is lit."""
        self._bottle: Bottle | None = None
        self._now = datetime.min
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_steps(self, bottle: Bottle, steps: Sequence[LevelStep], now: datetime) -> None:
        """Draw a history up to now."""
        self.setVisible(len(steps) > 1)
        if len(steps) < 2:
            return
        self.steps, self._bottle, self.at = tuple(steps), bottle, None
        self._now = max(now, self.steps[-1].at)
        self.show_words(self._in_words(bottle))

    def says_at(self, point: QPointF) -> str:
        places = [abs(self._x(self._area(), each.at) - point.x()) for each in self.steps]
        near = min(range(len(places)), key=places.__getitem__, default=None)
        if near is None or places[near] > MEANT:
            return super().says_at(point)
        return self.words_of(near)

    def words_of(self, number: int) -> str:
        """One entry: its day, what happened, and what was there after it."""
        step = self.steps[number]
        assert self._bottle is not None
        unit = self._bottle.product.unit
        happened = entry_in_words(step.entry, unit)
        beside = " " if step.is_count else ", "
        said = f"{self._day(step.at)}: {happened}{beside}{step.leaves(unit)}"
        return f"{said}; {step.entry.note}" if step.entry.note else said

    def sizeHint(self) -> QSize:
        return QSize(scaled(WIDTH), scaled(HEIGHT))

    # How it is drawn

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        if not self.steps:
            return
        painter.setFont(font_of(TypeSize.CAPTION))
        area = self._area(rect)
        self._draw_frame(painter, area, tones)
        painter.fillPath(self._band(area), blend(tones.liquid, tones.base, 0.45))
        painter.setPen(QPen(QColor(tones.text), 1.6))
        painter.drawPath(self._line(area))
        for number, step in enumerate(self.steps):
            self._draw_entry(painter, area, step, tones)
            if number == self.at:
                self._light(painter, area, step, tones)

    def _draw_frame(self, painter: QPainter, area: QRectF, tones: Tones) -> None:
        assert self._bottle is not None
        high, product = _metrics().height(), self._bottle.product
        for share in (0.0, 0.5, 1.0):
            y = round(area.bottom() - share * area.height()) + 0.5
            painter.setPen(QPen(QColor(tones.line), 1))
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))
            painter.setPen(QColor(tones.muted))
            beside = QRectF(0.0, y - high / 2.0, area.left() - HALF, high)
            painter.drawText(
                beside,
                int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter),
                f"{share * product.size:g}",
            )
        below = QRectF(area.left(), area.bottom() + 2, area.width(), high)
        painter.drawText(below, int(Qt.AlignmentFlag.AlignLeft), self._day(self.steps[0].at))
        painter.drawText(below, int(Qt.AlignmentFlag.AlignRight), tr("today"))

    def _draw_entry(self, painter: QPainter, area: QRectF, step: LevelStep, tones: Tones) -> None:
        """A dot with how far it may be off for a count, a triangle for what came in."""
        at = self._place(area, step.at, step.after)
        painter.setPen(QPen(QColor(tones.text), 1.4))
        if step.is_count:
            high, low = (
                self._place(area, step.at, step.after + way * doubt_of(step.after_sigma))
                for way in (1.0, -1.0)
            )
            painter.drawLine(high, low)
            painter.setBrush(QColor(tones.text))
            painter.drawEllipse(at, DOT, DOT)
        elif step.is_refill:
            draw_pointer(painter, at + QPointF(0.0, 1.0), "up", tones.ready)
        painter.setBrush(Qt.BrushStyle.NoBrush)

    def _light(self, painter: QPainter, area: QRectF, step: LevelStep, tones: Tones) -> None:
        painter.setPen(QPen(QColor(tones.accent), 2))
        x = self._x(area, step.at)
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()))
        painter.drawEllipse(self._place(area, step.at, step.after), DOT + 3, DOT + 3)

    def _line(self, area: QRectF) -> QPainterPath:
        """A level holds until the next entry changes it."""
        path = QPainterPath(self._place(area, self.steps[0].at, self.steps[0].after))
        for step in self.steps[1:]:
            path.lineTo(self._place(area, step.at, step.before))
            path.lineTo(self._place(area, step.at, step.after))
        path.lineTo(self._place(area, self._now, self.steps[-1].after))
        return path

    def _band(self, area: QRectF) -> QPainterPath:
        """Where the level lay, with all doubt, 19 times of 20."""
        upper, lower = QPolygonF(), QPolygonF()
        ends = [*(each.at for each in self.steps[1:]), self._now]
        for step, end in zip(self.steps, ends, strict=True):
            doubt = doubt_of(step.after_sigma)
            for when in (step.at, end):
                upper.append(self._place(area, when, step.after + doubt))
                lower.append(self._place(area, when, step.after - doubt))
        path = QPainterPath()
        path.addPolygon(QPolygonF([*upper.toList(), *reversed(lower.toList())]))
        path.closeSubpath()
        return path

    def _area(self, rect: QRectF | None = None) -> QRectF:
        room = QRectF(self.rect()) if rect is None else rect
        small = _metrics()
        assert self._bottle is not None
        left = small.horizontalAdvance(f"{self._bottle.product.size:g}") + 2 * HALF
        return room.adjusted(left, small.height() / 2.0 + 2, -DOT - 5, -small.height() - HALF)

    def _x(self, area: QRectF, at: datetime) -> float:
        start = self.steps[0].at
        span = (self._now - start).total_seconds() or 1.0
        return area.left() + (at - start).total_seconds() / span * area.width()

    def _place(self, area: QRectF, at: datetime, level: float) -> QPointF:
        assert self._bottle is not None
        share = max(0.0, min(1.0, level / self._bottle.product.size))
        return QPointF(self._x(area, at), area.bottom() - share * area.height())

    # The keyboard

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Home: -len(self.steps),
            Qt.Key.Key_End: len(self.steps),
        }.get(Qt.Key(event.key()))
        if step is None or not self.steps:
            super().keyPressEvent(event)
            return
        last = len(self.steps) - 1
        start = self.at if self.at is not None else last + 1 if step < 0 else -1
        self.at = max(0, min(last, start + step))
        self.setAccessibleDescription(self.words_of(self.at))
        announce(self, self.words_of(self.at))
        self.show_tip(self.words_of(self.at), self._lit_at().toPoint())
        self.update()

    def _lit_at(self) -> QPointF:
        step = self.steps[self.at or 0]
        return self._place(self._area(), step.at, step.after)

    # In words

    def _day(self, at: datetime) -> str:
        return short_date(at.date(), self._now.date())

    def _in_words(self, bottle: Bottle) -> str:
        unit, first, last = bottle.product.unit, self.steps[0], self.steps[-1]
        now = with_doubt(last.after, last.after_sigma, unit)
        counts = sum(each.is_count for each in self.steps)
        told = tr_noop(
            "From {first} on {day} to {now} today, in {n} entries, {counts} counts among them"
        )
        if counts == 1:
            told = tr_noop(
                "From {first} on {day} to {now} today, in {n} entries, 1 count among them"
            )
        return tr(
            told,
            first=quantity(first.after, unit),
            day=self._day(first.at),
            now=now,
            n=len(self.steps),
            counts=counts,
        )


def _metrics() -> QFontMetricsF:
    return QFontMetricsF(font_of(TypeSize.CAPTION))
