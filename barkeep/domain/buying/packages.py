"""In what a thing is bought: which product, in what size, how many."""

from __future__ import annotations

import math
from dataclasses import dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.drink.costs import unit_price
from barkeep.domain.making.made_here import products_to_buy
from barkeep.domain.pouring.supply import strength_of

NEARLY = 1e-9
"""Of a package: what is short of it by less is as good as nothing."""


@dataclass(frozen=True, slots=True)
class Package:
    """One purchase of an ingredient: its size in the ingredient's unit, its strength and price.

    `product` is None where the bar knows none; the size is then the usual one.
    """

    ingredient: str
    size: float
    abv_percent: float
    product: Product | None = None

    @property
    def price(self) -> float | None:
        """What one costs, None where nobody knows."""
        return None if self.product is None else self.product.price


def package_for(key: str, least_abv: float | None, snapshot: Snapshot) -> Package:
    """What to buy of a kind: a product the bar knows, else one usual purchase.

    A product is of the kind itself or of a kind below it, never a stand-in,
    and as strong as is asked for. What stands on the shelf goes first, then
    what costs least by its size.
    """
    tree = snapshot.knowledge.tree
    shelf = {bottle.product.id for bottle in snapshot.bottles}
    usual = tree[key]

    def rank(product: Product) -> tuple[bool, float, bool, str, int]:
        each = unit_price(product)
        off_shelf, other = product.id not in shelf, product.ingredient != key
        return off_shelf, math.inf if each is None else each, other, product.title, product.id

    fitting = list(products_to_buy(key, least_abv, snapshot))
    if not fitting:
        strength = max(usual.abv_percent or 0.0, least_abv or 0.0)
        return Package(key, usual.typical_size, strength)
    best = min(fitting, key=rank)
    return Package(best.ingredient, best.size, strength_of(best, tree), best)


def packages_for(amount: float, size: float) -> int:
    """How many packages hold an amount: never short of it, and not one too many.

    >>> packages_for(700.0, 700.0), packages_for(700.1, 700.0), packages_for(0.0, 700.0)
    (1, 2, 0)
    """
    return max(0, math.ceil(amount / size - NEARLY))
