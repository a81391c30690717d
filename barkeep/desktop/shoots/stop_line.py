"""A shoot as a line of stops, drawn from top to bottom: what is done, next, and to follow."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QMouseEvent, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.look.tones import Tones
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.picture import Picture
from barkeep.domain.shoots.stops import Stop, StopLine, day_in_words
from barkeep.translation import tr_noop

NAME = tr_noop("How far the shoot is")
MARK = 7.0
"""Half of how wide a stop is drawn beside plain type, in pixels."""


class StopLinePicture(Picture):
    """Up and Down go from stop to stop, and say each; Enter or a click on what is next does it.

    `taken` carries the key of the stop.
    """

    taken = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(NAME, parent)
        self.line = StopLine(())
        """What is drawn."""
        self._place: int | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_line(self, line: StopLine) -> None:
        """Draw another line."""
        self.line, self._place = line, None
        self.show_words(line.in_words)

    def sizeHint(self) -> QSize:
        return QSize(240, round(self._row() * max(1, len(self.line.stops))))

    def says_at(self, point: QPointF) -> str:
        stop = self._stop_at(point)
        return super().says_at(point) if stop is None else said_in_full(stop)

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        row, mark = self._row(), float(scaled(MARK))
        across = rect.left() + mark + HALF
        middles = [rect.top() + row * (each + 0.5) for each in range(len(self.line.stops))]
        painter.setPen(QPen(QColor(tones.glass), 2))
        if middles:
            painter.drawLine(QPointF(across, middles[0]), QPointF(across, middles[-1]))
        for place, (stop, middle) in enumerate(zip(self.line.stops, middles, strict=True)):
            if place == self._place and self.hasFocus():
                ground = QRectF(rect.left() + 2, middle - row / 2 + 1, rect.width() - 4, row - 2)
                painter.fillRect(ground, QColor(tones.raised))
            painter.save()
            painter.translate(across, middle)
            painter.scale(mark / MARK, mark / MARK)
            _draw_mark(painter, stop, tones)
            painter.restore()
            words = QRectF(across + mark + UNIT, middle - row / 2, rect.right(), row)
            words.setRight(rect.right() - HALF)
            self._draw_words(painter, words, stop, tones)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        keys, last = Qt.Key, len(self.line.stops) - 1
        steps = {keys.Key_Down: 1, keys.Key_Up: -1, keys.Key_Right: 1, keys.Key_Left: -1}
        if event.key() in (keys.Key_Return, keys.Key_Enter, keys.Key_Space):
            self._take(self._next_place if self._place is None else self._place)
        elif (by := steps.get(Qt.Key(event.key()))) and last >= 0:
            start = self._next_place if self._place is None else self._place + by
            self._place = max(0, min(last, 0 if start is None else start))
            announce(self, said_in_full(self.line.stops[self._place]))
            self.update()
        else:
            super().keyPressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        stop = self._stop_at(event.position())
        if event.button() == Qt.MouseButton.LeftButton and stop is not None:
            self._take(self.line.stops.index(stop))
        event.accept()

    @property
    def _next_place(self) -> int | None:
        stop = self.line.next
        return None if stop is None else self.line.stops.index(stop)

    def _take(self, place: int | None) -> None:
        if place is not None and place == self._next_place:
            self.taken.emit(self.line.stops[place].key)

    def _stop_at(self, point: QPointF) -> Stop | None:
        place = int(point.y() // self._row())
        return self.line.stops[place] if 0 <= place < len(self.line.stops) else None

    def _row(self) -> float:
        return QFontMetricsF(font_of(TypeSize.STRONG, self.font())).height() + UNIT

    def _draw_words(self, painter: QPainter, words: QRectF, stop: Stop, tones: Tones) -> None:
        """The word of a stop, strong where it is next, and how it stands in quieter letters."""
        is_next = stop.state == "next"
        font = font_of(TypeSize.STRONG if is_next else TypeSize.BODY, self.font())
        painter.setFont(font)
        painter.setPen(QColor(tones.text if stop.state in ("done", "next") else tones.muted))
        painter.drawText(words, Qt.AlignmentFlag.AlignVCenter, stop.word)
        rest = words.adjusted(self._word_width() + UNIT, 0.0, 0.0, 0.0)
        painter.setFont(font if is_next else font_of(TypeSize.BODY, self.font()))
        if not is_next:
            painter.setPen(QColor(tones.muted))
        metrics = QFontMetricsF(painter.font())
        shown = metrics.elidedText(stop.why, Qt.TextElideMode.ElideRight, rest.width())
        painter.drawText(rest, Qt.AlignmentFlag.AlignVCenter, shown)

    def _word_width(self) -> float:
        metrics = QFontMetricsF(font_of(TypeSize.STRONG, self.font()))
        return max(metrics.horizontalAdvance(each.word) for each in self.line.stops)


def said_in_full(stop: Stop) -> str:
    """A stop with its date: *Film, later: on Friday 4 December (4 December 2026)*."""
    on = "" if stop.on is None else f" ({day_in_words(stop.on)})"
    return f"{stop.in_words}{on}"


def _draw_mark(painter: QPainter, stop: Stop, tones: Tones) -> None:
    """A shape for each state, so that colour is not the only sign; about the origin."""
    at = QPointF(0.0, 0.0)
    paper = QColor(tones.base)
    match stop.state:
        case "done":
            painter.setPen(QPen(QColor(tones.ready), 1))
            painter.setBrush(QColor(tones.ready))
            painter.drawEllipse(at, MARK, MARK)
            painter.setPen(QPen(paper, 2))
            tick = (QPointF(-3.2, 0.2), QPointF(-0.8, 2.8), QPointF(3.4, -2.6))
            painter.drawPolyline(QPolygonF([at + each for each in tick]))
        case "next":
            painter.setPen(QPen(QColor(tones.accent), 2))
            painter.setBrush(paper)
            painter.drawEllipse(at, MARK, MARK)
            painter.setBrush(QColor(tones.accent))
            painter.drawEllipse(at, MARK - 4, MARK - 4)
        case "later":
            painter.setPen(QPen(QColor(tones.glass), 1.5))
            painter.setBrush(paper)
            painter.drawEllipse(at, MARK - 1, MARK - 1)
        case _:
            painter.setPen(QPen(QColor(tones.muted), 2))
            painter.drawLine(at - QPointF(MARK - 2, 0.0), at + QPointF(MARK - 2, 0.0))
