"""Three pictures of numbers: steps that climb, bars side by side, days along a line.

Each says its values under the mouse and all of them in words; what they are of, whoever shows
one says.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, font_of
from barkeep.desktop.look.sides import turned_about, write
from barkeep.desktop.look.tones import Tones
from barkeep.desktop.widgets.levels import draw_pointer
from barkeep.desktop.widgets.picture import Picture
from barkeep.translation import tr

DOT = 4.0
"""The radius of a point."""
LEAST_ROWS = 6
"""Of its small letters: no picture is less high."""
BRIEF = 20
"""How many letters wide a label beside a dot is at most."""
NEAR = 12.0
"""So near to a point the mouse means it."""
LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
MIDDLE = Qt.AlignmentFlag.AlignCenter


@dataclass(frozen=True, slots=True)
class Mark:
    """One value: `words` say it exactly, `label` stands beside it where there is room.

    `more` is drawn beyond the value, hollow; `tone` is a field of `Tones`. One that is `marked`
    has a small triangle over it, whatever its colour.
    """

    value: float
    words: str
    label: str = ""
    more: float = 0.0
    tone: str = "accent"
    marked: bool = False


class Chart(Picture):
    """A picture of marks; `rows` is its height in lines of its small letters."""

    rows = 9
    turns = True

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self.marks: tuple[Mark, ...] = ()
        """What is drawn, left to right."""
        self.chosen: int | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)

    def show_marks(self, marks: Sequence[Mark], in_words: str, chosen: int | None = None) -> None:
        """Draw these; `in_words` says all of it."""
        self.marks, self.chosen = tuple(marks), chosen
        self.show_words(in_words)

    def choose(self, chosen: int | None) -> None:
        """Stress one mark."""
        self.chosen = chosen
        self.update()

    def places(self, _rect: QRectF) -> Sequence[QRectF]:
        """Where the mouse means each mark."""
        raise NotImplementedError

    def on_its_side(self, place: QRectF, rect: QRectF) -> QRectF:
        """Where a place goes: it was measured from the left, and words may run from the right."""
        return turned_about(place, rect) if self.isRightToLeft() else place

    def x_on_its_side(self, x: float, rect: QRectF) -> float:
        """As `on_its_side`, of one distance."""
        return rect.left() + rect.right() - x if self.isRightToLeft() else x

    def says_at(self, point: QPointF) -> str:
        for mark, place in zip(self.marks, self.places(QRectF(self.rect())), strict=True):
            if place.contains(point):
                return mark.words
        return super().says_at(point)

    def sizeHint(self) -> QSize:
        return self._high(self.rows)

    def minimumSizeHint(self) -> QSize:
        return self._high(LEAST_ROWS)

    def _high(self, rows: int) -> QSize:
        return QSize(200, round(rows * _small().height() + 2 * UNIT))


def _font() -> QFont:
    return font_of(TypeSize.CAPTION)


def _small() -> QFontMetricsF:
    return QFontMetricsF(_font())


def _brief(label: str) -> str:
    """As much of a long label as leaves room for others; the mouse says all of it."""
    small = _small()
    return small.elidedText(label, Qt.TextElideMode.ElideRight, BRIEF * small.averageCharWidth())


def _pen(colour: str, width: float = 1.0) -> QPen:
    return QPen(QColor(colour), width)


def _pale(colour: str, alpha: int) -> QColor:
    made = QColor(colour)
    made.setAlpha(alpha)
    return made


def _draw_edge(painter: QPainter, bar: QRectF, colour: str) -> None:
    """A line around a bar, inside it, as thin as that leaves room for."""
    thin = min(1.0, bar.width() / 4, bar.height())
    for side in (
        QRectF(bar.left(), bar.top(), bar.width(), thin),
        QRectF(bar.left(), bar.top(), thin, bar.height()),
        QRectF(bar.right() - thin, bar.top(), thin, bar.height()),
    ):
        painter.fillRect(side, QColor(colour))


def _draw_chosen(painter: QPainter, column: QRectF, tones: Tones) -> None:
    """A light ground, with a line above and below it."""
    painter.fillRect(column, QColor(tones.highlight))
    for y in (column.top(), column.bottom()):
        painter.fillRect(QRectF(column.left(), y - 1, column.width(), 2), QColor(tones.text))


class StepsChart(Chart):
    """Values that climb from left to right, one a step, with how much each adds.

    The first is what there is before any step.
    """

    def __init__(self, name: str, along: str, upwards: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self._along, self._upwards = tr(along), tr(upwards)

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        painter.setFont(_font())
        room, points = self._room(rect), self._points(rect)
        if not points:
            return
        self._draw_axes(painter, rect, room, tones)
        path = QPolygonF([points[0]])
        for before, after in pairwise(points):
            path.append(QPointF(after.x(), before.y()))
            path.append(after)
        under = QPolygonF(path)
        under.append(QPointF(points[-1].x(), room.bottom()))
        under.append(QPointF(points[0].x(), room.bottom()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(_pale(tones.accent, 40))
        painter.drawPolygon(under)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(_pen(tones.accent, 2))
        painter.drawPolyline(path)
        painter.setBrush(QColor(tones.accent))
        for number, point in enumerate(points):
            size = DOT + 2 if number == self.chosen else DOT
            painter.drawEllipse(point, size, size)
        self._draw_labels(painter, points, tones)

    def places(self, rect: QRectF) -> Sequence[QRectF]:
        points = self._points(rect)
        half = max(NEAR, abs(points[1].x() - points[0].x()) / 2 if len(points) > 1 else 0.0)
        return [QRectF(each.x() - half, rect.top(), 2 * half, rect.height()) for each in points]

    def _room(self, rect: QRectF) -> QRectF:
        small = _small()
        widest = max((small.horizontalAdvance(f"{each.value:g}") for each in self.marks), default=0)
        return rect.adjusted(
            UNIT + widest + UNIT, 2.6 * small.height(), -3 * UNIT, -2 * small.height() - UNIT
        )

    def _points(self, rect: QRectF) -> list[QPointF]:
        if not self.marks:
            return []
        room = self._room(rect)
        values = [each.value for each in self.marks]
        low, span = min(values), max(values) - min(values)
        wide = room.width() / max(1, len(values) - 1)
        return [
            QPointF(
                self.x_on_its_side(room.left() + number * wide, rect),
                room.bottom() - (room.height() * (value - low) / span if span else 0.0),
            )
            for number, value in enumerate(values)
        ]

    def _draw_axes(self, painter: QPainter, rect: QRectF, room: QRectF, tones: Tones) -> None:
        small = _small()
        height = small.height()
        painter.setPen(_pen(tones.line))
        drawn = self.on_its_side(room, rect)
        painter.drawLine(drawn.bottomLeft(), drawn.bottomRight())
        painter.drawLine(drawn.topLeft(), drawn.topRight())
        painter.setPen(QColor(tones.muted))
        head = QRectF(rect.left() + UNIT, rect.top() + HALF, rect.width() - 2 * UNIT, height)
        write(painter, head, LEFT, self._upwards)
        foot = QRectF(room.left(), rect.bottom() - height - HALF, room.width(), height)
        write(painter, self.on_its_side(foot, rect), MIDDLE, self._along)
        values = [each.value for each in self.marks]
        for value, y in ((min(values), room.bottom()), (max(values), room.top())):
            place = QRectF(rect.left(), y - height / 2, room.left() - rect.left() - UNIT, height)
            write(painter, self.on_its_side(place, rect), RIGHT, f"{value:g}")

    def _draw_labels(self, painter: QPainter, points: Sequence[QPointF], tones: Tones) -> None:
        """The number of each step below it, and what it adds above it, where they fit."""
        small, used = _small(), -1e9
        below = max((each.y() for each in points), default=0.0) + HALF
        for number, point in sorted(enumerate(points), key=lambda each: each[1].x()):
            added = self.marks[number].label
            wide = max(map(small.horizontalAdvance, (str(number), added)))
            if point.x() - wide / 2 < used:
                continue
            used = point.x() + wide / 2 + UNIT
            box = QRectF(point.x() - wide / 2, 0.0, wide, small.height())
            painter.setPen(QColor(tones.muted))
            box.moveTop(below)
            write(painter, box, MIDDLE, str(number))
            painter.setPen(QColor(tones.text))
            box.moveBottom(point.y() - DOT - 2)
            write(painter, box, MIDDLE, added)


class BarsChart(Chart):
    """A bar a mark from a common ground, its value and then, hollow, what is more."""

    def __init__(self, name: str, along: str, upwards: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self._along, self._upwards = tr(along), tr(upwards)

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        if not self.marks:
            return
        painter.setFont(_font())
        room, most, small = self._room(rect), self._most, _small()
        painter.setPen(QColor(tones.muted))
        head = QRectF(
            rect.left() + UNIT, rect.top() + HALF, rect.width() - 2 * UNIT, small.height()
        )
        write(painter, head, LEFT, self._upwards)
        foot = QRectF(room.left(), room.bottom() + HALF, room.width(), small.height())
        write(painter, self.on_its_side(foot, rect), MIDDLE, self._along)
        drawn = self.on_its_side(room, rect)
        for value, y in ((0.0, room.bottom()), (most, room.top())):
            painter.setPen(QColor(tones.muted))
            place = QRectF(rect.left(), y - small.height() / 2, room.left() - UNIT, small.height())
            write(painter, self.on_its_side(place, rect), RIGHT, f"{value:g}")
            painter.setPen(_pen(tones.line))
            painter.drawLine(QPointF(drawn.left(), y), QPointF(drawn.right(), y))
        painter.setPen(Qt.PenStyle.NoPen)
        for number, (mark, place) in enumerate(zip(self.marks, self._bars(rect), strict=True)):
            colour = getattr(tones, mark.tone)
            if number == self.chosen:
                column = QRectF(place.left(), room.top(), place.width(), room.height())
                _draw_chosen(painter, column.adjusted(-1, 0, 1, 0), tones)
            high = room.height() * mark.value / most
            more = room.height() * mark.more / most
            solid = QRectF(place.left(), room.bottom() - high, place.width(), high)
            painter.fillRect(solid, QColor(colour))
            hollow = QRectF(place.left(), solid.top() - more, place.width(), more)
            painter.fillRect(hollow, _pale(colour, 60))
            _draw_edge(painter, hollow, colour)
            if mark.marked:
                tip = QPointF(place.center().x(), hollow.top() - 2)
                draw_pointer(painter, tip, "down", colour)
                painter.setPen(Qt.PenStyle.NoPen)

    def places(self, rect: QRectF) -> Sequence[QRectF]:
        return [each.adjusted(-1, 0, 1, 0) for each in self._bars(rect)]

    @property
    def _most(self) -> float:
        return max((each.value + each.more for each in self.marks), default=0.0) or 1.0

    def _room(self, rect: QRectF) -> QRectF:
        small = _small()
        left = UNIT + small.horizontalAdvance(f"{self._most:g}") + UNIT
        return rect.adjusted(left, 2.2 * small.height(), -UNIT, -small.height() - 2 * HALF)

    def _bars(self, rect: QRectF) -> list[QRectF]:
        room = self._room(rect)
        each = room.width() / max(len(self.marks), 12)
        gap = min(2.0, each / 4)
        return [
            self.on_its_side(
                QRectF(room.left() + number * each, rect.top(), each - gap, rect.height()), rect
            )
            for number in range(len(self.marks))
        ]


@dataclass(frozen=True, slots=True)
class Tick:
    """A day that is written on the line: how far from today, and as which date."""

    value: float
    label: str


class DaysChart(Chart):
    """Marks along a line of days, `value` how many from today; their labels in lanes above it."""

    rows = 9

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self._ticks: tuple[Tick, ...] = ()

    def show_days(self, marks: Sequence[Mark], ticks: Sequence[Tick], in_words: str) -> None:
        """Draw these along a line on which some days are written."""
        self._ticks = tuple(ticks)
        self.show_marks(sorted(marks, key=lambda each: each.value), in_words)

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        if not (self.marks or self._ticks):
            return
        painter.setFont(_font())
        small, y = _small(), self._line(rect)
        painter.setPen(_pen(tones.line, 2))
        painter.drawLine(QPointF(rect.left() + UNIT, y), QPointF(rect.right() - UNIT, y))
        used = -1e9
        for tick in sorted(self._ticks, key=lambda each: self._x(rect, each.value)):
            x, wide = self._x(rect, tick.value), small.horizontalAdvance(tick.label)
            left = min(max(rect.left() + HALF, x - wide / 2), rect.right() - wide - HALF)
            painter.setPen(_pen(tones.text if tick.value == 0.0 else tones.muted, 1.5))
            painter.drawLine(QPointF(x, y - HALF), QPointF(x, y + HALF))
            if left > used:
                place = QRectF(left, y + DOT + HALF, wide, small.height())
                write(painter, place, MIDDLE, tick.label)
                used = left + wide + UNIT
        for number, (mark, dot) in enumerate(zip(self.marks, self._dots(rect), strict=True)):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(getattr(tones, mark.tone)))
            size = DOT + 1 if number == self.chosen else DOT
            painter.drawEllipse(dot, size, size)
        painter.setPen(QColor(tones.text))
        for mark, place in self._labels(rect):
            write(painter, place, LEFT, _brief(mark.label))

    def places(self, rect: QRectF) -> Sequence[QRectF]:
        found = {id(mark): place for mark, place in self._labels(rect)}
        return [
            found.get(id(mark), QRectF()).united(
                QRectF(dot.x() - DOT - 2, dot.y() - DOT, 2 * DOT + 4, 2 * DOT)
            )
            for mark, dot in zip(self.marks, self._dots(rect), strict=True)
        ]

    def _line(self, rect: QRectF) -> float:
        return rect.bottom() - _small().height() - 2 * UNIT

    def _lane(self) -> float:
        return _small().height() + 1

    def _x(self, rect: QRectF, value: float) -> float:
        days = [each.value for each in self.marks] + [each.value for each in self._ticks]
        low, span = min(days), (max(days) - min(days)) or 1.0
        room = rect.adjusted(2 * UNIT, 0, -2 * UNIT, 0)
        return self.x_on_its_side(room.left() + room.width() * (value - low) / span, rect)

    def _dots(self, rect: QRectF) -> list[QPointF]:
        """A dot a mark, those of one day one above the other as far as there is room."""
        found, before = list[QPointF](), dict[float, int]()
        line = self._line(rect)
        most = max(0, int((line - rect.top() - UNIT) / self._lane()) - 1)
        for mark in self.marks:
            lane = before.get(mark.value, 0)
            before[mark.value] = lane + 1
            y = line - (min(lane, most) + 0.7) * self._lane()
            found.append(QPointF(self._x(rect, mark.value), y))
        return found

    def _labels(self, rect: QRectF) -> Iterator[tuple[Mark, QRectF]]:
        """Beside each dot, right of it or else left, what fits there and is in nobody's way."""
        small = _small()
        taken = [QRectF(dot.x() - DOT, dot.y() - DOT, 2 * DOT, 2 * DOT) for dot in self._dots(rect)]
        for mark, dot in zip(self.marks, self._dots(rect), strict=True):
            wide = small.horizontalAdvance(_brief(mark.label))
            for left in (dot.x() + DOT + 3, dot.x() - DOT - 3 - wide):
                place = QRectF(left, dot.y() - small.height() / 2, wide, small.height())
                fits = rect.left() <= left and left + wide <= rect.right() - HALF
                if fits and not any(place.intersects(each) for each in taken):
                    taken.append(place)
                    yield mark, place
                    break
