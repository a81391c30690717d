"""Products, bottles and the ledger; a level is a fold of the ledger's entries.

An entry is never changed or deleted. Undo appends a `reverse` entry that
names the one it takes back; redo reverses that reversal. What counts is the
list of entries that no active entry reverses, oldest first.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields
from datetime import date, datetime
from functools import lru_cache
from math import hypot, sqrt
from operator import attrgetter
from typing import Literal

from barkeep.domain.amounts.units import Unit
from barkeep.domain.liquids.constants import within
from barkeep.translation import tr_noop

EntryKind = Literal["receive", "open", "count", "pour", "waste", "empty", "correct", "reverse"]
CountMethod = Literal["tenths", "volume", "weight", "height"]
BottleState = Literal["sealed", "open", "empty"]
STATE_WORDS: Mapping[BottleState, str] = {
    "sealed": tr_noop("sealed"),
    "open": tr_noop("open"),
    "empty": tr_noop("empty"),
}
"""Each state as it stands in a sentence, to be said through `tr`."""


TENTHS_SIGMA = 0.05
"""One-sigma doubt of a level judged in tenths, as a share of the size.

Two people differ by up to a tenth (*common practice*); half of that is taken
as one sigma.
"""
GUESSED_SIGMA = 0.25
"""One-sigma doubt of a level nobody looked at, as a share: half full, give or take all of it."""
VOLUME_SIGMA_ML = 5.0
"""One-sigma doubt of a volume read off a measuring jug (*common practice*)."""
POUR_SIGMA_SHARE, POUR_SIGMA = 0.02, 1.0
"""One-sigma doubt of a pour: a share of it, and so many ml or g (*common practice*)."""


SIGMAS = 2.0
"""So many sigmas either way are called the doubt: 19 levels of 20 lie within it."""
SCALE_SIGMA_G = 1.0
"""One-sigma doubt of a kitchen scale (*common practice*)."""

LOW_SHARE = 0.2
"""An open bottle with less than this share left is called low (*common practice*)."""

_FILL_TOLERANCES = ((1000.0, 0.015), (376.0, 0.02), (101.0, 0.03), (0.0, 0.045))
"""From so many ml on, the share by which a new bottle's fill may be off its label."""
LEAST_DASH_ML, MOST_DASH_ML = 0.05, 2.0
"""From a drop to the largest dash in any manual with room to spare; a choice of barkeep."""


@dataclass(frozen=True, slots=True)
class Label:
    """What a label says. Size in `unit`; strength in % vol; sugar and acid in g per litre.

    `ingredient` is a key, or any name the family tree answers to until the
    label is checked; `shape` is the key of a bottle shape, None for the usual
    one of its size. `density_g_per_ml` was learned by weighing; None where
    strength and sugar tell it, or where nobody knows.
    """

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
    shape: str | None = None
    density_g_per_ml: float | None = None
    acid_g_per_l: float | None = None

    @property
    def title(self) -> str:
        """Maker and name as one would say them."""
        return f"{self.maker} {self.name}".strip()


@dataclass(frozen=True, slots=True, kw_only=True)
class Product(Label):
    """A label that the bar knows, by its id."""

    id: int


_all_of_label = attrgetter(*(each.name for each in fields(Label)))


def label_of(product: Product) -> Label:
    """What a product's label says, without its identity: where a change of it starts."""
    return Label(*_all_of_label(product))


def product_of(label: Label, product_id: int) -> Product:
    """The product that a label becomes once the bar knows it."""
    return Product(*_all_of_label(label), id=product_id)


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
    """What a fold of the ledger says of one bottle.

    `method` and `sigma` are those of the last count; `expected_sigma` is the
    one-sigma doubt of `amount` now, with all that was poured since.
    """

    amount: float = 0.0
    state: BottleState = "sealed"
    opened: date | None = None
    counted: datetime | None = None
    method: CountMethod | None = None
    sigma: float | None = None
    expected_sigma: float = 0.0


@dataclass(frozen=True, slots=True)
class Tare:
    """What an empty bottle weighs on a scale, without its cap, and the one-sigma doubt of it."""

    weight_g: float
    sigma_g: float

    @property
    def was_weighed(self) -> bool:
        """Whether the empty bottle itself stood on the scale; else its weight was worked out."""
        return self.sigma_g <= SCALE_SIGMA_G


NEW = 0
"""The id of a bottle or an entry that has not been written yet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BottleFacts:
    """What is known of one bottle beside its label and its level.

    `tare` was weighed empty, or worked out from `full_g`, what it weighed when
    it was full. `dash_ml` is what one dash from its own dasher gives.
    """

    received: date | None = None
    made: date | None = None
    use_by: date | None = None
    tare: Tare | None = None
    full_g: float | None = None
    dash_ml: float | None = None


NOTHING_KNOWN = BottleFacts()
_FACTS = tuple(each.name for each in fields(BottleFacts))
_all_of_facts = attrgetter(*_FACTS)
_NOTHING_IN_IT = Level()


@dataclass(frozen=True, slots=True)
class Bottle(BottleFacts):
    """One physical container, with its level as of the snapshot.

    `position` is the owner's order along the shelf.
    """

    id: int
    product: Product
    level: Level
    position: int = 0

    @property
    def ingredient(self) -> str:
        """The key of what is in it."""
        return self.product.ingredient

    @property
    def share(self) -> float:
        """The level as a share of the size, 0 to 1."""
        return self.level.amount / self.product.size if self.product.size else 0.0

    @property
    def is_low(self) -> bool:
        """Whether it is open and nearly used up."""
        return self.level.state == "open" and self.share < LOW_SHARE


def new_bottle(product: Product, facts: BottleFacts, position: int) -> Bottle:
    """A bottle that has not been written yet, so nothing is in its ledger."""
    known = dict(zip(_FACTS, _all_of_facts(facts), strict=True))
    return Bottle(NEW, product, _NOTHING_IN_IT, position, **known)


_by_number = attrgetter("id")


def active(entries: Sequence[Entry]) -> tuple[Entry, ...]:
    """The entries that count: those no active entry reverses, reversals left out.

    A reversal always comes after what it reverses, so one pass from the
    newest entry back decides each.
    """
    if all(entry.reverses is None for entry in entries):
        return tuple(sorted(entries, key=_by_number))
    reversed_ids: set[int] = set()
    kept: list[Entry] = []
    for entry in sorted(entries, key=_by_number, reverse=True):
        if entry.id in reversed_ids:
            continue
        if entry.reverses is not None:
            reversed_ids.add(entry.reverses)
        else:
            kept.append(entry)
    return tuple(reversed(kept))


def fold(entries: Sequence[Entry], unit: Unit = "ml") -> Level:
    """The level the ledger adds up to; with no active entry, sealed and holding nothing."""
    level = _NOTHING_IN_IT
    for entry in active(entries):
        level = _after(level, entry, unit)
    return level


def expected_sigma(entries: Sequence[Entry], unit: Unit = "ml") -> float:
    """The one-sigma doubt of the level that the ledger expects, in the bottle's unit.

    A bottle that comes in is filled to within the maker's tolerance, a count
    is as sure as its means, and each pour since adds a little doubt of its
    own. Pieces are counted one by one and leave none.
    """
    return fold(entries, unit).expected_sigma


def fill_tolerance(size_ml: float) -> float:
    """The share by which a fill may be off. Source: 27 CFR 19.356. Raises `OutsideRange`."""
    size = within("size", size_ml, 0.0, 1e7, unit="ml")
    return next(share for least, share in _FILL_TOLERANCES if size >= least)


@lru_cache(maxsize=256)
def fill_sigma(amount: float) -> float:
    """One-sigma doubt of what comes in a new bottle, in the unit of `amount`.

    Any fill within the tolerance of 27 CFR 19.356 is taken as equally likely;
    what is sold by weight is taken as no worse.
    """
    return amount * fill_tolerance(amount) / sqrt(3)


def history(entries: Sequence[Entry]) -> tuple[tuple[Entry, float], ...]:
    """Each active entry with the level after it, oldest first."""
    # The unit changes the doubt, not the amount.
    return tuple((entry, level.amount) for entry, level in levels_after(entries, "ml"))


def levels_after(entries: Sequence[Entry], unit: Unit) -> tuple[tuple[Entry, Level], ...]:
    """Each active entry with all that is known of the level after it, oldest first."""
    level = Level()
    found: list[tuple[Entry, Level]] = []
    for entry in active(entries):
        level = _after(level, entry, unit)
        found.append((entry, level))
    return tuple(found)


def variance(expected: float, counted: float) -> float:
    """Expected less counted: what is gone without a pour, in the bottle's unit."""
    return expected - counted


def _after(level: Level, entry: Entry, unit: Unit) -> Level:
    amount, state, opened = level.amount, level.state, level.opened
    counted = level.counted, level.method, level.sigma
    match entry.kind:
        case "receive":
            amount, state = entry.amount, "sealed"
        case "open":
            state, opened = "open", opened or entry.at.date()
        case "count":
            untouched = state == "sealed" and _as_it_was(level, entry)
            amount = entry.amount
            counted = entry.at, entry.method, entry.sigma
            if not untouched:
                state = "open"
                # Of one that is found empty nobody knows on which day it was opened.
                opened = opened or (entry.at.date() if amount else None)
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
    doubt = _doubt_after(level.expected_sigma, entry, unit)
    return Level(amount, state, opened, *counted, expected_sigma=doubt)


def _as_it_was(level: Level, count: Entry) -> bool:
    """Whether a count finds what was there; a scale or a ruler never meets it to the drop."""
    if count.method not in ("weight", "height"):
        return count.amount == level.amount
    doubt = SIGMAS * hypot(level.expected_sigma, count.sigma or 0.0)
    return abs(count.amount - level.amount) <= doubt


def _doubt_after(before: float, entry: Entry, unit: Unit) -> float:
    """The one-sigma doubt of the level after an entry, in the bottle's unit."""
    match entry.kind:
        case "count":
            return entry.sigma or 0.0
        case "empty":
            return 0.0
        case "receive":
            return 0.0 if unit == "each" else fill_sigma(entry.amount)
        case "pour" | "waste" if unit != "each":
            return hypot(before, POUR_SIGMA_SHARE * entry.amount, POUR_SIGMA)
    return before
