"""What the owner put on the shopping list by hand, such as the bottles of a plan."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from barkeep.domain.ingredients.tree import FamilyTree

MOST_TO_BUY = 99
"""Packages of one thing; more is a misprint."""


@dataclass(frozen=True, slots=True)
class ToBuy:
    """So many packages of a kind that are to be bought, whatever shoots and pars take."""

    ingredient: str
    packages: int


def with_to_buy(listed: Iterable[ToBuy], more: Iterable[ToBuy]) -> tuple[ToBuy, ...]:
    """The list with more on it; of what is on it already the larger number, none for 0."""
    found = {each.ingredient: each for each in listed}
    for each in more:
        known = found.get(each.ingredient, each)
        larger = each.packages == 0 or each.packages > known.packages
        found[each.ingredient] = each if larger else known
    kept = (each for each in found.values() if each.packages > 0)
    return tuple(sorted(kept, key=lambda each: each.ingredient))


def less_bought(
    listed: Iterable[ToBuy], bought: Iterable[str], tree: FamilyTree
) -> tuple[ToBuy, ...]:
    """The list once these came, a key for each package: of just that kind, else of one above."""
    left = {each.ingredient: each.packages for each in listed}
    for key in bought:
        above = (each for each in left if left[each] > 0 and tree.is_a(key, each))
        came_for = key if left.get(key, 0) > 0 else next(above, None)
        if came_for is not None:
            left[came_for] -= 1
    return tuple(ToBuy(key, count) for key, count in left.items() if count > 0)
