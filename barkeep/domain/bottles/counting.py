"""A count in progress: what was found in each bottle, what was expected, and the difference."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.containers import Container
from barkeep.domain.bottles.level_words import Comparison
from barkeep.domain.bottles.levels import MeasuredLevel, judged, parse_level
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.translation import tr, tr_noop

ROUNDING = 1e-9


@dataclass(frozen=True, slots=True)
class Typed:
    """A level as it was given, and how that read.

    `is_amount` says that the words are an amount, which can be typed again. Other words are kept
    in English, whatever is spoken: `said` are those a person reads.
    """

    measured: MeasuredLevel
    words: str
    is_amount: bool = False

    @property
    def said(self) -> str:
        """How it read."""
        return self.words if self.is_amount else tr(self.words)


@dataclass(frozen=True, slots=True)
class CountRow:
    """One bottle of a count; `typed` is None until it is counted."""

    bottle: Bottle
    ingredient: str
    typed: Typed | None = None

    @property
    def expected(self) -> float:
        """What the ledger says is left, in the bottle's unit."""
        return self.bottle.level.amount

    @property
    def compared(self) -> Comparison | None:
        """The count beside what was expected; None before it is counted."""
        if self.typed is None:
            return None
        level, measured = self.bottle.level, self.typed.measured
        return Comparison(level.amount, level.expected_sigma, measured.amount, measured.sigma)

    @property
    def difference(self) -> float:
        """Expected less counted, in the bottle's unit; nothing before it is counted."""
        return self.compared.variance if self.compared else 0.0

    @property
    def flagged(self) -> bool:
        """Whether the difference is more than the doubt of both explains."""
        return self.compared is not None and self.compared.told_apart


@dataclass(frozen=True, slots=True)
class ShelfCount:
    """The counts of one round by bottle id, none of them written yet."""

    typed: Mapping[int, Typed] = field(default_factory=dict)

    def __len__(self) -> int:
        return len(self.typed)

    def __contains__(self, bottle_id: object) -> bool:
        return bottle_id in self.typed

    @property
    def levels(self) -> Mapping[int, MeasuredLevel]:
        """Bottle id -> what was measured, for the one transaction that writes it."""
        return {bottle_id: each.measured for bottle_id, each in self.typed.items()}

    def taken(self, bottle_id: int, typed: Typed) -> ShelfCount:
        """With a bottle counted, or counted again."""
        return ShelfCount({**self.typed, bottle_id: typed})

    def dropped(self, bottle_id: int) -> ShelfCount:
        """With a bottle left uncounted."""
        return ShelfCount({key: each for key, each in self.typed.items() if key != bottle_id})

    def kept_for(self, bottles: Iterable[Bottle]) -> ShelfCount:
        """Without counts of bottles that are gone, or that hold less than was counted."""
        sizes = {each.id: each.product.size for each in bottles}
        return ShelfCount(
            {
                key: each
                for key, each in self.typed.items()
                if key in sizes and each.measured.amount <= sizes[key] * (1 + ROUNDING)
            }
        )

    def rows(
        self, bottles: Iterable[Bottle], tree: FamilyTree, *, everything: bool
    ) -> tuple[CountRow, ...]:
        """The bottles to count along the shelf: the open ones and new ones, or really all.

        What has been counted stays in view either way.
        """
        along = sorted(bottles, key=lambda each: (each.position, each.id))
        new = _new_ones(along)
        return tuple(
            CountRow(bottle, tree.name(bottle.ingredient), self.typed.get(bottle.id))
            for bottle in along
            if everything or bottle.id in self or on_the_shelf(bottle) or bottle.id in new
        )

    def row(self, row: CountRow) -> CountRow:
        """A row as it stands now."""
        return replace(row, typed=self.typed.get(row.bottle.id))

    def counted_rows(self, bottles: Iterable[Bottle], tree: FamilyTree) -> tuple[CountRow, ...]:
        """The rows that have a count, along the shelf."""
        return tuple(row for row in self.rows(bottles, tree, everything=True) if row.typed)

    def left_out(self, bottles: Iterable[Bottle]) -> int:
        """How many open bottles have no count."""
        return sum(on_the_shelf(each) and each.id not in self for each in bottles)


def on_the_shelf(bottle: Bottle) -> bool:
    """Whether a bottle is open, and holds a liquid."""
    return bottle.level.state == "open" and bottle.product.unit == "ml"


def _new_ones(bottles: Sequence[Bottle]) -> frozenset[int]:
    """The sealed liquids that came in since the last count of the shelf, and have none."""
    counts = [each.level.counted.date() for each in bottles if each.level.counted is not None]
    last = max(counts, default=date.min)
    return frozenset(
        each.id
        for each in bottles
        if each.level.state == "sealed"
        and each.product.unit == "ml"
        and each.level.counted is None
        and each.received is not None
        and each.received >= last
    )


TENTHS = (
    tr_noop("empty"),
    tr_noop("1 tenth"),
    tr_noop("2 tenths"),
    tr_noop("3 tenths"),
    tr_noop("4 tenths"),
    tr_noop("5 tenths"),
    tr_noop("6 tenths"),
    tr_noop("7 tenths"),
    tr_noop("8 tenths"),
    tr_noop("9 tenths"),
    tr_noop("full"),
)
"""A level of so many tenths in words, as a count keeps it."""


def tenths(bottle: Bottle, many: int) -> Typed:
    """So many tenths of a bottle, judged by eye; pieces are counted, which leaves no doubt."""
    size = bottle.product.size
    if bottle.product.unit == "each":
        measured = MeasuredLevel(size * many / 10, "volume", 0.0)
    else:
        measured = judged(many / 10, size)
    return Typed(measured, TENTHS[many])


def at_share(bottle: Bottle, share: float) -> Typed:
    """Where a drawn level was clicked: the nearest tenth, or the nearest whole piece."""
    if bottle.product.unit == "each":
        pieces = float(round(share * bottle.product.size))
        return Typed(MeasuredLevel(pieces, "volume", 0.0), f"{pieces:.0f}", is_amount=True)
    return tenths(bottle, round(share * 10))


def as_expected(bottle: Bottle) -> Typed:
    """The level the ledger says, looked at and found to be so."""
    return Typed(found_at(bottle, bottle.level.amount), tr_noop("expected"))


def found_at(bottle: Bottle, amount: float) -> MeasuredLevel:
    """An amount that was expected, looked at and found to be so, in the bottle's unit."""
    if bottle.product.unit == "each":
        return MeasuredLevel(amount, "volume", 0.0)
    # A whole seal leaves nothing to judge by eye.
    if bottle.level.state == "sealed" and amount == bottle.level.amount:
        return MeasuredLevel(amount, "tenths", 0.0)
    size = bottle.product.size
    return MeasuredLevel(amount, "tenths", judged(amount / size, size).sigma)


def exactly(text: str, container: Container, units: BarUnits) -> Typed:
    """A level as someone wrote it of a bottle. Raises what `parse_level` raises."""
    measured = parse_level(text, container, units)
    return Typed(measured, " ".join(text.split()), is_amount=True)
