"""Products, bottles and the ledger; a level is a fold of the ledger's entries.

An entry is never changed or deleted. Undo appends a `reverse` entry that
names the one it takes back; redo reverses that reversal. What counts is the
list of entries that no active entry reverses, oldest first.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from barkeep.domain.ingredients import Unit

EntryKind = Literal["receive", "open", "count", "pour", "waste", "empty", "correct", "reverse"]
CountMethod = Literal["tenths", "volume", "weight", "height"]
BottleState = Literal["sealed", "open", "empty"]

TENTHS_SIGMA = 0.05
"""One-sigma doubt of a level judged in tenths, as a share of the size.

Two people differ by up to a tenth (*common practice*); half of that is taken
as one sigma.
"""
VOLUME_SIGMA_ML = 5.0
"""One-sigma doubt of a volume read off a measuring jug (*common practice*)."""


@dataclass(frozen=True, slots=True)
class Product:
    """What a label says. Size in `unit`; strength in % vol; sugar in g per litre."""

    id: int
    name: str
    maker: str
    ingredient: str
    size: float
    unit: Unit = "ml"
    abv_percent: float | None = None
    sugar_g_per_l: float | None = None
    price: float | None = None
    barcode: str = ""
    house_made: bool = False

    @property
    def title(self) -> str:
        """Maker and name as one would say them."""
        return f"{self.maker} {self.name}".strip()


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the ledger, in the bottle's unit.

    `amount` is the new level for *receive* and *count*, what was taken for
    *pour* and *waste*, a signed change for *correct*, and unused otherwise.
    `sigma` is the one-sigma doubt of a count.
    """

    id: int
    bottle_id: int
    kind: EntryKind
    at: datetime
    amount: float = 0.0
    method: CountMethod | None = None
    sigma: float | None = None
    note: str = ""
    reverses: int | None = None


@dataclass(frozen=True, slots=True)
class Level:
    """What a fold of the ledger says of one bottle."""

    amount: float = 0.0
    state: BottleState = "sealed"
    opened: date | None = None
    counted: datetime | None = None
    method: CountMethod | None = None
    sigma: float | None = None


@dataclass(frozen=True, slots=True)
class Bottle:
    """One physical container, with its level as of the snapshot.

    `position` is the owner's order along the shelf.
    """

    id: int
    product: Product
    level: Level
    position: int = 0
    received: date | None = None
    made: date | None = None
    use_by: date | None = None

    @property
    def ingredient(self) -> str:
        """The key of what is in it."""
        return self.product.ingredient

    @property
    def share(self) -> float:
        """The level as a share of the size, 0 to 1."""
        return self.level.amount / self.product.size if self.product.size else 0.0

    def past_use_by(self, on: date) -> bool:
        """Whether its use-by date lies before `on`."""
        return self.use_by is not None and self.use_by < on


def active(entries: Sequence[Entry]) -> tuple[Entry, ...]:
    """The entries that count: those no active entry reverses, reversals left out.

    A reversal always comes after what it reverses, so one pass from the
    newest entry back decides each.
    """
    reversed_ids: set[int] = set()
    kept: list[Entry] = []
    for entry in sorted(entries, key=lambda each: each.id, reverse=True):
        if entry.id in reversed_ids:
            continue
        if entry.reverses is not None:
            reversed_ids.add(entry.reverses)
        else:
            kept.append(entry)
    return tuple(reversed(kept))


def fold(entries: Sequence[Entry]) -> Level:
    """The level the ledger adds up to; with no active entry, sealed and holding nothing."""
    level = Level()
    for entry in active(entries):
        level = _after(level, entry)
    return level


def history(entries: Sequence[Entry]) -> tuple[tuple[Entry, float], ...]:
    """Each active entry with the level after it, oldest first."""
    level = Level()
    steps: list[tuple[Entry, float]] = []
    for entry in active(entries):
        level = _after(level, entry)
        steps.append((entry, level.amount))
    return tuple(steps)


def variance(expected: float, counted: float) -> float:
    """Expected less counted: what is gone without a pour, in the bottle's unit."""
    return expected - counted


def pour_order(bottles: Iterable[Bottle]) -> tuple[Bottle, ...]:
    """The order bottles of one kind are used up: open first, soonest use-by, then emptiest."""

    def rank(bottle: Bottle) -> tuple[bool, date, float, int]:
        sealed = bottle.level.state == "sealed"
        return (sealed, bottle.use_by or date.max, bottle.level.amount, bottle.id)

    return tuple(sorted(bottles, key=rank))


def _after(level: Level, entry: Entry) -> Level:
    amount, state, opened = level.amount, level.state, level.opened
    counted, method, sigma = level.counted, level.method, level.sigma
    match entry.kind:
        case "receive":
            amount, state = entry.amount, "sealed"
        case "open":
            state, opened = "open", opened or entry.at.date()
        case "count":
            untouched = state == "sealed" and entry.amount == amount
            amount, counted, method, sigma = entry.amount, entry.at, entry.method, entry.sigma
            if not untouched:
                state, opened = "open", opened or entry.at.date()
        case "pour" | "waste":
            amount, state = amount - entry.amount, "open"
            opened = opened or entry.at.date()
        case "correct":
            amount += entry.amount
        case "empty":
            amount, state = 0.0, "empty"
    amount = max(0.0, amount)
    if amount == 0.0 and entry.kind in ("count", "pour", "waste"):
        state = "empty"
    return Level(amount, state, opened, counted, method, sigma)
