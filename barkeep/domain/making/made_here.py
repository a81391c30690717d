"""Whether a thing is made here or bought, on which what is made ready and shopped for agree."""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.drink.ice import is_carbonated
from barkeep.domain.pouring.supply import strength_of


def products_to_buy(key: str, least_abv: float | None, snapshot: Snapshot) -> Iterator[Product]:
    """The products the bar knows of a kind or a kind below it, as strong as is asked for."""
    tree = snapshot.knowledge.tree
    for each in snapshot.products:
        of_it = tree.is_a(each.ingredient, key) and each.unit == tree[key].unit
        for_sale = not each.house_made and each.size > 0.0
        if of_it and for_sale and strength_of(each, tree) >= (least_abv or 0.0):
            yield each


def is_made_here(key: str, snapshot: Snapshot) -> bool:
    """Whether there is a recipe that gives the thing itself, and no product of it to buy.

    What sparkles is bought: a shoot is no place to carbonate.
    """
    knowledge = snapshot.knowledge
    if key not in knowledge.own_way or is_carbonated(key, knowledge.tree):
        return False
    return next(products_to_buy(key, None, snapshot), None) is None
