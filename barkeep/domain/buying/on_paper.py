"""A bar changed on paper: with bottles that are not there, and without some that are.

Every answer is asked of a snapshot, so one that is changed gets every answer. Nothing of it is
ever written.
"""

from __future__ import annotations

from collections.abc import Iterable

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.buying.packages import Purchase


def with_bought(snapshot: Snapshot, purchases: Iterable[Purchase]) -> Snapshot:
    """The bar after really buying these: full, sealed, received today.

    Bottles and products on paper have ids below 0, which none in a bar has.
    """
    products, bottles = list(snapshot.products), list(snapshot.bottles)
    for each in purchases:
        product = each.product
        if product is None:
            product = _unknown_product(each, snapshot, _below(one.id for one in products))
            products.append(product)
        for _package in range(each.packages):
            number = _below(one.id for one in bottles)
            level = Level(product.size, "sealed")
            place = 1 + max((one.position for one in bottles), default=0)
            bottles.append(Bottle(number, product, level, place, received=snapshot.on))
    return snapshot.changed(products=tuple(products), bottles=tuple(bottles))


def _below(ids: Iterable[int]) -> int:
    return min(0, min(ids, default=0)) - 1


def _unknown_product(bought: Purchase, snapshot: Snapshot, number: int) -> Product:
    """What stands for a product that the bar does not know yet."""
    kind = snapshot.knowledge.tree[bought.ingredient]
    return Product(
        kind.name,
        "",
        kind.key,
        bought.stock.amount,
        kind.unit,
        price=bought.price,
        id=number,
    )
