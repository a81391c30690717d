"""Where the neighbours of an ingredient stand in its picture, and how one walks between them.

The ingredient is in the middle. Above it stands its family and below it its kinds; on the left
what it stands in for and what it is made from, on the right what stands in for it and what is
made of it. Of what stands in, the nearer is the closer. Each stands on a line of its own, in one
of three columns that do not meet, so no label is ever on another. Where that leaves no room for
names all of it stands in one column. Lengths in pixels.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.domain.stand_ins.neighbourhood import HEADINGS, Neighbour, Neighbourhood, Relation
from barkeep.translation import tr

Way = Literal["left", "right", "up", "down"]
Side = Literal[-1, 0, 1]
Point = tuple[float, float]

MOST: Mapping[Relation, int] = {
    "above": 3, "stands_for": 5, "stands_in": 5, "made_from": 4, "makes": 4, "below": 4,
}  # fmt: skip
"""So many of a relation are shown at first, the closest."""
DOT, GAP = 5.0, 8.0
"""Half the width of a mark, and what lies between things."""
FARTHEST = 0.3
"""The share of a column by which the least close stands farther off."""
LEAST_CLOSE = 0.3
NARROW = 52
"""A picture that is not as wide as so many letters has one column."""


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle."""

    x: float
    y: float
    wide: float
    high: float

    @property
    def right(self) -> float:
        """Where it ends."""
        return self.x + self.wide

    @property
    def bottom(self) -> float:
        """Where it ends below."""
        return self.y + self.high

    @property
    def middle(self) -> Point:
        """Its centre."""
        return self.x + self.wide / 2.0, self.y + self.high / 2.0

    def holds(self, point: Point) -> bool:
        """Whether a point lies in it."""
        return self.x <= point[0] <= self.right and self.y <= point[1] <= self.bottom


@dataclass(frozen=True, slots=True)
class Stop:
    """One place of the picture: a neighbour, or `more` of a relation that are not shown.

    Its words stand in `label`, from the side of its mark; `line` leads to it from the middle.
    """

    relation: Relation
    side: Side
    label: Box
    mark: Point
    line: tuple[Point, ...]
    neighbour: Neighbour | None = None
    more: int = 0

    @property
    def words(self) -> str:
        """What its label says."""
        return (
            tr("and {more} more", more=self.more) if self.neighbour is None else self.neighbour.name
        )

    @property
    def figure(self) -> str:
        """The closeness beside the words, where there is one."""
        near = self.neighbour
        return "" if near is None or near.closeness is None else f"{near.closeness:.2f}"

    @property
    def reach(self) -> Box:
        """Where the mouse means it: its label and its mark."""
        left = min(self.label.x, self.mark[0] - DOT)
        right = max(self.label.right, self.mark[0] + DOT)
        return Box(left, self.label.y, right - left, self.label.high)


@dataclass(frozen=True, slots=True)
class TrackPlan:
    """The whole picture. `headings` are words, each in its box and said from one side."""

    wide: float
    high: float
    middle: Box
    headings: tuple[tuple[str, Box, Side], ...]
    stops: tuple[Stop, ...]

    @property
    def labels(self) -> tuple[Box, ...]:
        """Every rectangle with words in it."""
        headed = (box for _words, box, _side in self.headings)
        return (self.middle, *headed, *(each.label for each in self.stops))

    def at(self, point: Point) -> int | None:
        """The number of the stop at a point."""
        return next((n for n, each in enumerate(self.stops) if each.reach.holds(point)), None)

    def towards(self, number: int | None, way: Way) -> int | None:
        """The nearest stop that way, from one or from the middle; None where there is none."""
        x, y = self.middle.middle if number is None else self.stops[number].mark
        along = {"left": (-1, 0), "right": (1, 0), "up": (0, -1), "down": (0, 1)}[way]

        def cost(other: Stop) -> tuple[float, float] | None:
            right, down = other.mark[0] - x, other.mark[1] - y
            ahead = right * along[0] + down * along[1]
            aside = abs(right * along[1]) + abs(down * along[0])
            return (ahead + 3.0 * aside, ahead) if ahead > 0.5 else None

        costs = [(cost(each), n) for n, each in enumerate(self.stops) if n != number]
        return min(((c, n) for c, n in costs if c is not None), default=(None, None))[1]


Measure = Callable[[str], float]


def track_plan(
    around: Neighbourhood,
    wide: float,
    line: float,
    measure: Measure,
    *,
    opened: Collection[Relation] = (),
) -> TrackPlan:
    """Place a neighbourhood in a picture and lines of a size; `opened` show all they have."""
    planner = _Planner(
        around=around, wide=wide, line=line, measure=measure, opened=frozenset(opened)
    )
    return planner.plan()


@dataclass(frozen=True, slots=True)
class _Row:
    """What stands on one line of a column, counted down from that of the middle."""

    number: int
    relation: Relation
    side: Side
    what: str | Neighbour | int


@dataclass(frozen=True, slots=True)
class _Columns:
    """The middle column, and the whole width; the track up and down runs just within it."""

    left: float
    right: float
    wide: float

    @property
    def rail(self) -> float:
        return self.left + GAP + DOT

    def trunk(self, side: Side) -> float:
        """Where the track beside the middle column runs up and down."""
        return self.right + GAP if side > 0 else self.left - GAP

    def mark(self, side: Side, closeness: float | None) -> float:
        """How far to the side a mark stands; what has no closeness stands nearest."""
        if side == 0 and closeness is None:
            return self.rail
        far = 0.0 if closeness is None else (1.0 - closeness) / (1.0 - LEAST_CLOSE)
        room = {-1: self.left, 0: self.right - self.left, 1: self.wide - self.right}[side]
        off = 2.0 * GAP + FARTHEST * room * min(1.0, far)
        return self.rail + off if side == 0 else self.trunk(side) + side * off

    def label(self, side: Side, mark: float, words: float) -> tuple[float, float]:
        """Where words beside a mark begin, and how wide they may be."""
        beside = DOT + GAP / 2.0
        if side < 0:
            end = mark - beside
            begin = max(GAP, end - words)
            return begin, end - begin
        begin = mark + beside
        end = self.right if side == 0 else self.wide - GAP
        return begin, min(words, end - begin)


@dataclass(frozen=True)
class _Planner:
    around: Neighbourhood
    wide: float
    line: float
    measure: Measure
    opened: frozenset[Relation]

    def plan(self) -> TrackPlan:
        rows = (*self._above(), *(self._one_column() if self._is_narrow else self._columns_of()))
        top = min([0, *(each.number for each in rows)])
        last = max([0, *(each.number for each in rows)])
        columns, box = self._columns(), self._box_of(-top)
        middle = Box(columns.left, box.y - 2.0, columns.right - columns.left, box.high + 4.0)
        headings, stops = list[tuple[str, Box, Side]](), list[Stop]()
        for each in rows:
            line = self._box_of(each.number - top)
            if isinstance(each.what, str):
                mark = columns.mark(each.side, None)
                x, room = columns.label(each.side, mark, self._words(each.what))
                headings.append((each.what, Box(x, line.y, room, line.high), each.side))
            else:
                stops.append(self._stop(each, line, columns, middle))
        high = (last - top + 1) * self.line + 2.0 * GAP
        return TrackPlan(
            wide=self.wide,
            high=high,
            middle=middle,
            headings=tuple(headings),
            stops=tuple(stops),
        )

    @property
    def _is_narrow(self) -> bool:
        return self.wide < NARROW * self.measure("n")

    def _columns_of(self) -> Iterator[_Row]:
        """What stands left, right and below."""
        yield from self._beside(-1)
        yield from self._beside(1)
        yield from self._group("below", 2, 0)

    def _one_column(self) -> Iterator[_Row]:
        """One relation below the other."""
        number = 2
        for relation in _DOWN:
            for each in self._group(relation, number, 0):
                yield each
                number = each.number + 1

    def _group(self, relation: Relation, number: int, side: Side) -> list[_Row]:
        """A heading on one line, and what it heads on those below."""
        listed, heading = self._listed(relation), self._heading(relation)
        rows = [_Row(number + 1 + n, relation, side, each) for n, each in enumerate(listed)]
        return [_Row(number, relation, side, heading), *rows] if heading else []

    def _box_of(self, row: int) -> Box:
        return Box(0.0, GAP + row * self.line + 1.0, 0.0, self.line - 2.0)

    def _words(self, words: str) -> float:
        return self.measure(words) + 4.0

    def _columns(self) -> _Columns:
        """The middle column is as wide as what stands in it, within what leaves the others room."""
        inner = [each.name for relation in _INNER for each in self._shown(relation)]
        asked = [1.15 * self._words(self.around.name) + 2.0 * GAP]
        asked += [
            self._words(each) + 2.0 * (GAP + DOT) + GAP
            for each in (*inner, tr("and {more} more", more=99))
        ]
        if self._is_narrow:
            return _Columns(GAP, self.wide - GAP, self.wide)
        middle = min(max(asked), 0.38 * self.wide)
        return _Columns((self.wide - middle) / 2.0, (self.wide + middle) / 2.0, self.wide)

    def _shown(self, relation: Relation) -> Sequence[Neighbour]:
        all_of_it = self.around.by(relation)
        is_short = relation in self.opened or len(all_of_it) <= MOST[relation] + 1
        return all_of_it if is_short else all_of_it[: MOST[relation]]

    def _listed(self, relation: Relation) -> list[Neighbour | int]:
        """What is shown, and at last how many more there are."""
        shown = self._shown(relation)
        more = len(self.around.by(relation)) - len(shown)
        return [*shown, *([more] if more else [])]

    def _beside(self, side: Literal[-1, 1]) -> list[_Row]:
        """What stands in, the closest on the line of the middle, and below it what is made."""
        first, second = _BESIDE[side]
        listed = self._listed(first)
        rows = [
            _Row(_fanned(place), first, side, each)
            for place, each in enumerate(listed)
            if not isinstance(each, int)
        ]
        last = max([0, *(each.number for each in rows)])
        if listed and isinstance(listed[-1], int):
            last += 1
            rows.append(_Row(last, first, side, listed[-1]))
        if heading := self._heading(first):
            rows.append(_Row(min([0, *(each.number for each in rows)]) - 1, first, side, heading))
        return [*rows, *self._group(second, last + 2, side)]

    def _heading(self, relation: Relation) -> str:
        if relation == "stands_in" and self.around.none_because:
            return tr("Nothing stands in")
        return tr(HEADINGS[relation]) if self.around.by(relation) else ""

    def _above(self) -> list[_Row]:
        return [_Row(-2 - n, "above", 0, each) for n, each in enumerate(self._listed("above"))]

    def _stop(self, row: _Row, line: Box, columns: _Columns, middle: Box) -> Stop:
        near = row.what if isinstance(row.what, Neighbour) else None
        more = row.what if isinstance(row.what, int) else 0
        mark = columns.mark(row.side, None if near is None else near.closeness)
        at = (mark, line.middle[1])
        bare = Stop(
            relation=row.relation,
            side=row.side,
            label=line,
            mark=at,
            line=_track(at, row.side, columns, middle),
            neighbour=near,
            more=more,
        )
        figure = f"{bare.figure}  " if bare.figure else ""
        x, room = columns.label(row.side, mark, self._words(f"{figure}{bare.words}"))
        return replace(bare, label=Box(x, line.y, room, line.high))


_INNER: tuple[Relation, ...] = ("above", "below")
_DOWN: tuple[Relation, ...] = ("stands_in", "stands_for", "made_from", "makes", "below")
_BESIDE: Mapping[Side, tuple[Relation, Relation]] = {
    -1: ("stands_for", "made_from"),
    1: ("stands_in", "makes"),
}


def _fanned(place: int) -> int:
    """The first on the line of the middle, the next above and below it in turn."""
    return (place + 1) // 2 * (-1 if place % 2 else 1)


def _track(mark: Point, side: Side, columns: _Columns, middle: Box) -> tuple[Point, ...]:
    """The way from the middle to a mark: along the trunk, then along its own line."""
    x, y = mark
    if side == 0:
        rail = columns.rail
        begin = (rail, middle.bottom if y > middle.bottom else middle.y)
        return (begin, mark) if x == rail else (begin, (rail, y), mark)
    start, trunk = (middle.right if side > 0 else middle.x), columns.trunk(side)
    level = middle.middle[1]
    if y == level:
        return ((start, level), mark)
    return ((start, level), (trunk, level), (trunk, y), mark)
