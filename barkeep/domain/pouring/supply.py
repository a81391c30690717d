"""What can be poured, pooled by ingredient and strength."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TypeAlias

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.ingredients.tree import FamilyTree

Pool: TypeAlias = tuple[str, int]
"""An ingredient key and a strength class: how many of a spec's least strengths it meets."""

PIECES_BOUGHT = 6.0
"""So many are bought at once of what is sold by the piece, such as limes (*common practice*)."""


@dataclass(frozen=True, slots=True)
class Draw:
    """So much out of one bottle, in the unit of its ingredient."""

    bottle: Bottle
    amount: float


@dataclass(frozen=True, slots=True)
class Stock:
    """An amount of one ingredient at one strength, in the ingredient's unit."""

    ingredient: str
    amount: float
    abv_percent: float
    bottle: Bottle | None = None


@dataclass(frozen=True)
class Supply:
    """All stocks by ingredient, and what is always there and never runs out."""

    stocks: Mapping[str, tuple[Stock, ...]]
    always: frozenset[str]

    @cached_property
    def owned(self) -> frozenset[str]:
        """Keys of everything that can be used."""
        return self.always | self.stocks.keys()

    def total(self, key: str) -> float:
        """How much of one ingredient there is, in its unit; 0 where there is none."""
        return self._whole.get((key, 0), 0.0)

    def total_of_kind(self, key: str, tree: FamilyTree) -> float:
        """How much there is of an ingredient and of everything that is one, in its unit."""
        return sum(map(self.total, tree.at_or_below(key)))

    def bottle(self, key: str, least_abv: float | None = None) -> Bottle | None:
        """The bottle to pour from first, None for what is always there."""
        stocks = self.stocks.get(key, ())
        fit = (each.bottle for each in stocks if each.abv_percent >= (least_abv or 0.0))
        return next(fit, None)

    def strong(self, least_abv: float) -> frozenset[str]:
        """Keys of everything of which some is at least this strong, in % vol."""
        return frozenset(
            key
            for key, stocks in self.stocks.items()
            if any(stock.abv_percent >= least_abv for stock in stocks)
        )

    def pools(self, thresholds: Iterable[float] = ()) -> Mapping[Pool, float]:
        """The amounts by ingredient and strength class, in the ingredient's unit."""
        limits = sorted(set(thresholds))
        return self._in_classes(limits) if limits else self._whole

    @cached_property
    def _whole(self) -> Mapping[Pool, float]:
        return self._in_classes([])

    def _in_classes(self, limits: Sequence[float]) -> Mapping[Pool, float]:
        amounts: dict[Pool, float] = {}
        for key, stocks in self.stocks.items():
            for stock in stocks:
                pool = (key, _strength_class(stock, limits))
                amounts[pool] = amounts.get(pool, 0.0) + stock.amount
        return amounts

    def stocks_in(self, pool: Pool, limits: Sequence[float]) -> tuple[Stock, ...]:
        """The stocks of one pool, in the order they are used up; `limits` lowest first."""
        key, number = pool
        stocks = self.stocks.get(key, ())
        return tuple(each for each in stocks if _strength_class(each, limits) == number)

    def pools_with(
        self, more: Iterable[Stock], thresholds: Iterable[float] = ()
    ) -> Mapping[Pool, float]:
        """The same amounts with some stocks more."""
        limits = tuple(thresholds)
        amounts = dict(self.pools(limits))
        for stock in more:
            pool = (stock.ingredient, _strength_class(stock, limits))
            amounts[pool] = amounts.get(pool, 0.0) + stock.amount
        return amounts


def supply_of(snapshot: Snapshot) -> Supply:
    """What the snapshot's bottles hold today, in the order they are used up."""
    return snapshot.once(_supply_of)


def _supply_of(snapshot: Snapshot) -> Supply:
    always, stocks = snapshot.always_there, snapshot.by_kind(_stocks)
    return Supply({key: some for key, some in stocks.items() if key not in always}, always)


def _stocks(snapshot: Snapshot, bottles: tuple[Bottle, ...]) -> tuple[Stock, ...]:
    tree = snapshot.knowledge.tree
    return tuple(_stock(bottle, tree) for bottle in bottles)


def purchase(key: str, tree: FamilyTree) -> Stock:
    """What one goes home with: an ordinary bottle or bag, of fruit a few."""
    kind = tree[key]
    by_the_piece = kind.unit == "each" and kind.typical_size == 1.0
    amount = PIECES_BOUGHT if by_the_piece else kind.typical_size
    return Stock(key, amount, kind.abv_percent or 0.0)


def _strength_class(stock: Stock, limits: Iterable[float]) -> int:
    return sum(stock.abv_percent >= limit for limit in limits)


def _stock(bottle: Bottle, tree: FamilyTree) -> Stock:
    strength = strength_of(bottle.product, tree)
    return Stock(bottle.ingredient, bottle.level.amount, strength, bottle)


def strength_of(product: Product, tree: FamilyTree) -> float:
    """The strength on a product's label, else the usual one of its kind, in % vol."""
    usual = tree[product.ingredient].abv_percent or 0.0
    return usual if product.abv_percent is None else product.abv_percent
