"""In what a thing is bought: which product, in what size, how many."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.drink.costs import unit_price
from barkeep.domain.making.made_here import products_to_buy
from barkeep.domain.pouring.supply import Stock, purchase, strength_of

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


@dataclass(frozen=True, slots=True)
class Purchase:
    """What one goes home with of just one kind: the packages of a known product, else the usual.

    `stock` is all that is in them; `price` is that of all of them, None where nobody knows.
    """

    ingredient: str
    stock: Stock
    packages: int
    product: Product | None = None
    price: float | None = None


def purchase_of(
    key: str, snapshot: Snapshot, prices: Mapping[str, float] | None = None
) -> Purchase:
    """One purchase of a kind: the cheapest product of just it that is no miniature.

    A price is known before none is; less than half the usual size is a miniature. Of what is
    sold by the piece as many packages as hold a few. `prices` are what a purchase of a kind
    costs where the owner says so, which goes before what the bar knows.
    """
    usual, said = purchase(key, snapshot.knowledge.tree), (prices or {}).get(key)
    fitting = snapshot.once(_sold_by_kind).get(key, ())

    def rank(product: Product) -> tuple[bool, bool, float, str, int]:
        small = product.size < usual.amount / 2 and product.unit != "each"
        return product.price is None, small, product.price or 0.0, product.title, product.id

    if not fitting:
        return Purchase(key, usual, 1, price=said)
    found = purchase_of_product(min(fitting, key=rank), snapshot)
    return found if said is None else replace(found, price=said)


def purchase_of_product(best: Product, snapshot: Snapshot) -> Purchase:
    """One purchase of just this product."""
    key, usual = best.ingredient, purchase(best.ingredient, snapshot.knowledge.tree)
    count = max(1, packages_for(usual.amount, best.size)) if best.unit == "each" else 1
    stock = Stock(key, best.size * count, strength_of(best, snapshot.knowledge.tree))
    price = None if best.price is None else best.price * count
    return Purchase(key, stock, packages=count, product=best, price=price)


def _sold_by_kind(snapshot: Snapshot) -> Mapping[str, tuple[Product, ...]]:
    """The products of each kind that a shop has, and that the tree measures as their labels do."""
    tree, found = snapshot.knowledge.tree, dict[str, tuple[Product, ...]]()
    for each in snapshot.products:
        fits = each.ingredient in tree and each.unit == tree[each.ingredient].unit
        if fits and not each.house_made and each.size > 0.0:
            found[each.ingredient] = (*found.get(each.ingredient, ()), each)
    return found
