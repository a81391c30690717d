"""What the owner put on the shopping list, beside what shoots and pars need."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from barkeep.domain.bottles.bottle import Product
from barkeep.domain.ingredients.tree import FamilyTree


@dataclass(frozen=True, slots=True)
class ToBuy:
    """So many packages of a kind: of a product, by its id, or of any where that is None.

    `why` says in words what it is for; empty where nobody said.
    """

    ingredient: str
    packages: int
    product: int | None = None
    why: str = ""

    def is_same_as(self, other: ToBuy) -> bool:
        """Whether both are the same thing, however many."""
        return (self.ingredient, self.product) == (other.ingredient, other.product)


def with_to_buy(listed: Iterable[ToBuy], added: Iterable[ToBuy]) -> tuple[ToBuy, ...]:
    """The list with more on it; what is there already is bought once, as often as either says."""
    found = list(listed)
    for each in added:
        place = next((at for at, one in enumerate(found) if one.is_same_as(each)), None)
        if place is None:
            found.append(each)
        else:
            there = found[place]
            why = each.why or there.why
            found[place] = replace(there, packages=max(there.packages, each.packages), why=why)
    return tuple(found)


def without_bought(
    listed: Iterable[ToBuy], bought: Iterable[tuple[Product, int]], tree: FamilyTree
) -> tuple[ToBuy, ...]:
    """What is left of the list once so many packages of products have come.

    The very product goes first; else another one of the same kind is what was meant.
    """
    left = list(listed)
    for product, came in bought:
        for exactly in (True, False):
            for place, each in enumerate(left):
                if _is_met(each, product, tree, exactly=exactly):
                    taken = min(came, each.packages)
                    left[place] = replace(each, packages=each.packages - taken)
                    came -= taken
    return tuple(each for each in left if each.packages > 0)


def _is_met(each: ToBuy, product: Product, tree: FamilyTree, *, exactly: bool) -> bool:
    if exactly:
        return each.product == product.id
    known = product.ingredient in tree and each.ingredient in tree
    return known and tree.is_a(product.ingredient, each.ingredient)
