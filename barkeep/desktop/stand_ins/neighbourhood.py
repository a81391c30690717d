"""The neighbours of an ingredient as a track diagram, walked from stop to stop."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.metrics import HALF, RADIUS, TypeSize, font_of
from barkeep.desktop.look.tones import Tones
from barkeep.desktop.widgets.labels import caption
from barkeep.desktop.widgets.layouts import column_of
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.picture import Picture
from barkeep.domain.stand_ins.neighbourhood import Neighbourhood, Relation
from barkeep.domain.stand_ins.track_plan import Box, Side, Stop, TrackPlan, Way, track_plan
from barkeep.translation import tr, tr_noop

NAME = tr_noop("Its neighbours")
HOW = tr_noop(
    "Nearer is closer. A bottle marks what is in the bar. Enter or a click goes on, Backspace back."
)
LEAST = 300
_WAYS: Mapping[Qt.Key, Way] = {
    Qt.Key.Key_Left: "left",
    Qt.Key.Key_Right: "right",
    Qt.Key.Key_Up: "up",
    Qt.Key.Key_Down: "down",
}


class NeighbourPicture(Picture):
    """Tells by key where one has `walked`, that one goes `back`, and in words what is `lit`."""

    walked = Signal(str)
    back = Signal()
    lit = Signal(str)

    def __init__(self) -> None:
        super().__init__(NAME)
        self.around: Neighbourhood | None = None
        """What is drawn."""
        self.at: int | None = None
        """The number of the stop that is lit."""
        self._opened: frozenset[Relation] = frozenset()
        self._plan: TrackPlan | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_neighbourhood(self, around: Neighbourhood) -> None:
        """Draw the neighbours of another ingredient; of the same one, what is opened stays so."""
        if self.around is None or around.of != self.around.of:
            self._opened = frozenset()
            self._light(None)
        self.around, self._plan = around, None
        if self.at is not None and self.at >= len(self.plan().stops):
            self._light(None)
        self.show_words(around.in_words)

    def plan(self) -> TrackPlan:
        """Where everything stands at the present width."""
        assert self.around is not None
        if self._plan is None or self._plan.wide != self.width():
            metrics = _metrics()
            self._plan = track_plan(
                self.around,
                float(self.width()),
                metrics.height() + HALF + 2.0,
                metrics.horizontalAdvance,
                opened=self._opened,
            )
        return self._plan

    def says_at(self, point: QPointF) -> str:
        number = None if self.around is None else self.plan().at((point.x(), point.y()))
        return super().says_at(point) if number is None else self._words_of(number)

    def sizeHint(self) -> QSize:
        return QSize(LEAST, 0 if self.around is None else round(self.plan().high))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.updateGeometry()

    # How it is drawn

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        if self.around is None:
            return
        painter.setFont(font_of(TypeSize.CAPTION))
        plan = self.plan()
        for number, stop in enumerate(plan.stops):
            if number != self.at:
                _draw_track(painter, stop, QPen(QColor(tones.line), 2))
        if self.at is not None:
            _draw_track(painter, plan.stops[self.at], QPen(QColor(tones.accent), 3))
        self._draw_middle(painter, plan.middle, tones)
        painter.setPen(QColor(tones.muted))
        for words, box, side in plan.headings:
            _write(painter, box, side, words)
        for number, stop in enumerate(plan.stops):
            self._draw_stop(painter, stop, tones, lit=number == self.at)

    def _draw_middle(self, painter: QPainter, box: Box, tones: Tones) -> None:
        assert self.around is not None
        painter.setPen(QPen(QColor(tones.accent), 2))
        painter.setBrush(QColor(tones.highlight))
        painter.drawRoundedRect(_rect(box), RADIUS, RADIUS)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.save()
        strong = font_of(TypeSize.CAPTION)
        strong.setBold(True)
        painter.setFont(strong)
        painter.setPen(QColor(tones.on_highlight))
        inside = Box(box.x + HALF, box.y, box.wide - 2 * HALF, box.high)
        name = QFontMetricsF(strong).elidedText(
            self.around.name, Qt.TextElideMode.ElideRight, inside.wide
        )
        painter.drawText(_rect(inside), int(Qt.AlignmentFlag.AlignCenter), name)
        painter.restore()

    def _draw_stop(self, painter: QPainter, stop: Stop, tones: Tones, *, lit: bool) -> None:
        if stop.neighbour is not None:
            _draw_mark(painter, stop, tones, lit=lit)
        if lit:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(tones.highlight))
            painter.drawRoundedRect(_rect(stop.label), HALF, HALF)
            painter.setBrush(Qt.BrushStyle.NoBrush)
        ink, quiet = (tones.on_highlight,) * 2 if lit else (tones.text, tones.muted)
        is_said = stop.neighbour is not None
        _write_stop(painter, stop, QColor(ink if is_said else tones.link), QColor(quiet))

    # The mouse and the keyboard

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self.around is not None:
            at = event.position()
            over = self.plan().at((at.x(), at.y()))
            self.setCursor(
                Qt.CursorShape.ArrowCursor if over is None else Qt.CursorShape.PointingHandCursor
            )
            if over is not None:
                self._light(over)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self.around is None or event.button() != Qt.MouseButton.LeftButton:
            return
        self._light(self.plan().at((at.x(), at.y())))
        self._go_on()

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        if not self.hasFocus():
            self._light(None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if self.around is None or event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            super().keyPressEvent(event)
        elif key in _WAYS:
            towards = self.plan().towards(self.at, _WAYS[key])
            self._light(self.at if towards is None else towards)
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End) and self.plan().stops:
            self._light(0 if key == Qt.Key.Key_Home else len(self.plan().stops) - 1)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._go_on()
        elif key == Qt.Key.Key_Backspace:
            self.back.emit()
        else:
            super().keyPressEvent(event)

    def _light(self, number: int | None) -> None:
        if number == self.at:
            return
        self.at = number
        words = "" if number is None else self._words_of(number)
        self.lit.emit(words)
        if words:
            announce(self, words)
        self.update()

    def _go_on(self) -> None:
        if self.at is None:
            return
        stop = self.plan().stops[self.at]
        if stop.neighbour is not None:
            self.walked.emit(stop.neighbour.key)
            return
        self._opened |= {stop.relation}
        self._plan = None
        self.updateGeometry()
        self.update()

    def _words_of(self, number: int) -> str:
        stop = self.plan().stops[number]
        near = stop.neighbour
        return (
            tr("{more} more: Enter shows them", more=stop.more) if near is None else near.in_words
        )


class Neighbours(QWidget):
    """The picture, and below it what is lit, in words."""

    def __init__(self) -> None:
        super().__init__()
        self.picture = NeighbourPicture()
        self.said = caption(tr(HOW))
        self.said.setMinimumHeight(2 * self.said.fontMetrics().lineSpacing())
        self.said.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.picture.lit.connect(lambda words: self.said.setText(words or tr(HOW)))
        column_of(self.picture, self.said, on=self, gap=HALF)


def _metrics() -> QFontMetricsF:
    return QFontMetricsF(font_of(TypeSize.CAPTION))


def _rect(box: Box) -> QRectF:
    return QRectF(box.x, box.y, box.wide, box.high)


def _draw_track(painter: QPainter, stop: Stop, pen: QPen) -> None:
    """A line whose corners are rounded off, as tracks are."""
    painter.setPen(pen)
    points = [QPointF(*each) for each in stop.line]
    path = QPainterPath(points[0])
    for before, corner, after in zip(points, points[1:], points[2:], strict=False):
        path.lineTo(corner + _towards(corner, before))
        path.quadTo(corner, corner + _towards(corner, after))
    path.lineTo(points[-1])
    painter.drawPath(path)


def _towards(start: QPointF, end: QPointF) -> QPointF:
    """A little of the way, at most half of it."""
    way = end - start
    far = abs(way.x()) + abs(way.y())
    return way * (min(RADIUS, far / 2.0) / far) if far else way


def _draw_mark(painter: QPainter, stop: Stop, tones: Tones, *, lit: bool) -> None:
    """A bottle for what is in the bar, a ring for what is not."""
    assert stop.neighbour is not None
    x, y = stop.mark
    edge = QColor(tones.accent if lit else tones.ready if stop.neighbour.there else tones.muted)
    painter.setPen(QPen(edge, 1.6))
    painter.setBrush(QColor(tones.base))
    if not stop.neighbour.there:
        painter.drawEllipse(QPointF(x, y), 4.0, 4.0)
    else:
        painter.setBrush(edge)
        painter.drawRoundedRect(QRectF(x - 3.5, y - 1.5, 7.0, 7.5), 1.5, 1.5)
        painter.drawRect(QRectF(x - 1.2, y - 6.5, 2.4, 5.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _write(painter: QPainter, box: Box, side: Side, words: str) -> None:
    far = Qt.AlignmentFlag.AlignRight if side < 0 else Qt.AlignmentFlag.AlignLeft
    shown = _metrics().elidedText(words, Qt.TextElideMode.ElideRight, box.wide)
    painter.drawText(_rect(box), int(far | Qt.AlignmentFlag.AlignVCenter), shown)


def _write_stop(painter: QPainter, stop: Stop, ink: QColor, quiet: QColor) -> None:
    """Its figure beside the mark, then as much of its name as there is room for."""
    box, beside = stop.label, 0.0
    if stop.figure:
        painter.setPen(quiet)
        _write(painter, box, stop.side, stop.figure)
        beside = _metrics().horizontalAdvance(f"{stop.figure}  ")
    left = box.x if stop.side < 0 else box.x + beside
    painter.setPen(ink)
    _write(painter, Box(left, box.y, box.wide - beside, box.high), stop.side, stop.words)
