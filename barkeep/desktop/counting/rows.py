"""A count in progress: what was typed for each bottle, what was expected, and the difference."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from PySide6.QtCore import Qt

from barkeep.desktop.bottles.words import percent
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE, SUBTITLE_ROLE
from barkeep.desktop.widgets.levels import LevelReading
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, CountMethod
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.level_words import (
    METHODS,
    Comparison,
    difference,
    doubt_of,
    in_doubt,
    quantity,
    reason,
    with_doubt,
)
from barkeep.domain.bottles.levels import MeasuredLevel, judged, parse_level

ROUNDING = 1e-9


BOTTLE, LEVEL, EXPECTED, COUNTED, DIFFERENCE = range(5)
"""The columns, left to right."""


_BRIEFLY: Mapping[CountMethod, str] = {
    "tenths": "by eye",
    "volume": "measured",
    "weight": "weighed",
    "height": "by height",
}


@dataclass(frozen=True, slots=True)
class Typed:
    """A level as it was given, and how that read."""

    measured: MeasuredLevel
    words: str


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

    @property
    def reading(self) -> LevelReading:
        """What the gauge draws: the count once there is one, the expected level marked."""
        size = self.bottle.product.size
        sealed = self.bottle.level.state == "sealed"
        if self.typed is None:
            return LevelReading(self.bottle.share, self.bottle.share, sealed=sealed)
        measured = self.typed.measured
        share, doubt = measured.amount / size, doubt_of(measured.sigma) / size
        return LevelReading(share, self.bottle.share, doubt, sealed=sealed)


class ShelfCount:
    """The counts of one round, none of them written yet. They outlive the page that shows them."""

    def __init__(self) -> None:
        self._typed: dict[int, Typed] = {}

    def __len__(self) -> int:
        return len(self._typed)

    def __contains__(self, bottle_id: object) -> bool:
        return bottle_id in self._typed

    @property
    def levels(self) -> Mapping[int, MeasuredLevel]:
        """Bottle id -> what was measured, for the one transaction that writes it."""
        return {bottle_id: each.measured for bottle_id, each in self._typed.items()}

    def take(self, bottle_id: int, typed: Typed) -> None:
        """Count a bottle, or count it again."""
        self._typed[bottle_id] = typed

    def drop(self, bottle_id: int) -> None:
        """Leave a bottle uncounted."""
        self._typed.pop(bottle_id, None)

    def clear(self) -> None:
        """Begin anew."""
        self._typed.clear()

    def keep_only(self, bottles: Iterable[Bottle]) -> None:
        """Drop counts of bottles that are gone, or that hold less than was counted."""
        sizes = {each.id: each.product.size for each in bottles}
        fit = {key: each for key, each in self._typed.items() if key in sizes}
        self._typed = {
            key: each
            for key, each in fit.items()
            if each.measured.amount <= sizes[key] * (1 + ROUNDING)
        }

    def rows(self, snapshot: Snapshot, *, everything: bool) -> tuple[CountRow, ...]:
        """The bottles to count along the shelf: the open ones, or really all.

        What has been counted stays in view either way.
        """
        tree = snapshot.knowledge.tree
        along = sorted(snapshot.bottles, key=lambda each: (each.position, each.id))
        return tuple(
            CountRow(bottle, tree.name(bottle.ingredient), self._typed.get(bottle.id))
            for bottle in along
            if everything or bottle.id in self or on_the_shelf(bottle)
        )

    def row(self, row: CountRow) -> CountRow:
        """A row as it stands now."""
        return replace(row, typed=self._typed.get(row.bottle.id))

    def counted_rows(self, snapshot: Snapshot) -> tuple[CountRow, ...]:
        """The rows that have a count, along the shelf."""
        return tuple(row for row in self.rows(snapshot, everything=True) if row.typed)


def on_the_shelf(bottle: Bottle) -> bool:
    """Whether a bottle is one of those a count begins with: open, and holding a liquid."""
    return bottle.level.state == "open" and bottle.product.unit == "ml"


def tenths(bottle: Bottle, many: int) -> Typed:
    """So many tenths of a bottle, judged by eye; pieces are counted, which leaves no doubt."""
    size = bottle.product.size
    if bottle.product.unit == "each":
        measured = MeasuredLevel(size * many / 10, "volume", 0.0)
    else:
        measured = judged(many / 10, size)
    words = {0: "empty", 1: "1 tenth", 10: "full"}.get(many, f"{many} tenths")
    return Typed(measured, words)


def at_share(bottle: Bottle, share: float) -> Typed:
    """Where a drawn level was clicked: the nearest tenth, or the nearest whole piece."""
    if bottle.product.unit == "each":
        pieces = float(round(share * bottle.product.size))
        return Typed(MeasuredLevel(pieces, "volume", 0.0), f"{pieces:.0f}")
    return tenths(bottle, round(share * 10))


def as_expected(bottle: Bottle) -> Typed:
    """The level the ledger says, looked at and found to be so."""
    return Typed(found_at(bottle, bottle.level.amount), "expected")


def found_at(bottle: Bottle, amount: float) -> MeasuredLevel:
    """An amount that was expected, looked at and found to be so, in the bottle's unit."""
    if bottle.product.unit == "each":
        return MeasuredLevel(amount, "volume", 0.0)
    # A whole seal leaves nothing to judge by eye.
    if bottle.level.state == "sealed" and amount == bottle.level.amount:
        return MeasuredLevel(amount, "tenths", 0.0)
    size = bottle.product.size
    return MeasuredLevel(amount, "tenths", judged(amount / size, size).sigma)


def exactly(bottle: Bottle, text: str, snapshot: Snapshot) -> Typed:
    """A level as someone wrote it of a bottle of this bar. Raises what `parse_level` raises."""
    container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
    measured = parse_level(text, container, snapshot.settings.units)
    return Typed(measured, " ".join(text.split()))


def reading_in_words(typed: Typed, bottle: Bottle) -> str:
    """How a text was read: *812 g: 372 ml ± 6*."""
    measured = typed.measured
    return f"{typed.words}: {with_doubt(measured.amount, measured.sigma, bottle.product.unit)}"


def exact_in_words(typed: Typed, bottle: Bottle) -> str:
    """What is read while it is being typed: *372 ml ± 6, weighed*."""
    measured = typed.measured
    read = with_doubt(measured.amount, measured.sigma, bottle.product.unit)
    return f"{read}, {_BRIEFLY[measured.method]}"


def count_columns() -> tuple[Column[CountRow], ...]:
    """Bottle, gauge, expected, counted, and the difference in words."""
    return (
        Column(
            "Bottle",
            lambda row: row.bottle.product.name,
            tooltip=lambda row: row.bottle.product.title,
            roles={SUBTITLE_ROLE: below_name},
        ),
        Column(
            "Level",
            lambda row: "",
            roles={
                LEVEL_ROLE: lambda row: row.reading,
                Qt.ItemDataRole.AccessibleTextRole: row_in_words,
            },
        ),
        Column(
            "Expected",
            lambda row: quantity(row.expected, row.bottle.product.unit),
            roles={SUBTITLE_ROLE: expected_in_doubt},
        ),
        Column("Counted", counted_in_words, roles={SUBTITLE_ROLE: typed_in_words}),
        Column(
            "Difference",
            difference_in_words,
            tooltip=difference_explained,
            roles={
                SUBTITLE_ROLE: difference_explained,
                ICONS_ROLE: lambda row: ("warning",) if row.flagged else (),
            },
        ),
    )


def below_name(row: CountRow) -> str:
    """The maker, and the state of a bottle that is not open."""
    bottle = row.bottle
    state = "" if bottle.level.state == "open" else bottle.level.state
    return ", ".join(part for part in (bottle.product.maker or row.ingredient, state) if part)


def expected_in_doubt(row: CountRow) -> str:
    """How far the expected level may be off; for pieces, their share."""
    level, unit = row.bottle.level, row.bottle.product.unit
    return in_doubt(level.expected_sigma, unit) or percent(row.bottle.share)


def counted_in_words(row: CountRow) -> str:
    """What was counted, in the bottle's unit."""
    if row.typed is None:
        return "not counted"
    return quantity(row.typed.measured.amount, row.bottle.product.unit)


def typed_in_words(row: CountRow) -> str:
    """The count as it was typed, with its doubt."""
    if row.typed is None:
        return ""
    doubt = in_doubt(row.typed.measured.sigma, row.bottle.product.unit)
    return f"{row.typed.words}, {doubt}" if doubt else row.typed.words


def difference_in_words(row: CountRow) -> str:
    """*45 ml less than expected*, or *as expected* within the doubt of both levels."""
    return difference(row.compared, row.bottle.product.unit) if row.compared else ""


def difference_explained(row: CountRow) -> str:
    """How the difference compares with the doubt of both levels."""
    return reason(row.compared, row.bottle.product.unit) if row.compared else ""


def row_in_words(row: CountRow) -> str:
    """The whole row as one sentence, for those who do not see it."""
    unit = row.bottle.product.unit
    start = f"{row.bottle.product.title}, expected {quantity(row.expected, unit)}"
    if row.typed is None:
        return f"{start}, not counted"
    measured = row.typed.measured
    counted = with_doubt(measured.amount, measured.sigma, unit)
    return f"{start}, counted {counted}, {METHODS[measured.method]}: {difference_in_words(row)}"


def totals_in_words(rows: Iterable[CountRow]) -> str:
    """How many bottles, how much liquid is gone in all, and how many differ beyond doubt."""
    counted = [row for row in rows if row.typed]
    liquids = [row for row in counted if row.bottle.product.unit == "ml"]
    flagged = sum(row.flagged for row in counted)
    parts = [bottles_in_words(len(counted))]
    if liquids:
        parts.append(_in_all(sum(row.difference for row in liquids)))
    parts.append(f"{flagged} beyond doubt" if flagged else "none beyond doubt")
    return " · ".join(parts)


def bottles_in_words(many: int) -> str:
    """*1 bottle*, *14 bottles*."""
    return "1 bottle" if many == 1 else f"{many} bottles"


def _in_all(gone_ml: float) -> str:
    amount = quantity(abs(gone_ml), "ml")
    if round(gone_ml) == 0:
        return "in all as expected"
    return f"in all {amount} {'less' if gone_ml > 0 else 'more'} than expected"
