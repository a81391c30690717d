"""What is done to make a thing here, and whether it is done before the drink is begun.

Squeezing, separating and cutting are part of making a drink, and so is what is
brewed to be drunk hot; a syrup or a mix has to stand there first.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.translation import tr_noop

Task = Literal["make", "squeeze", "separate", "cut"]
TASK_WORDS: Mapping[Task, str] = {
    "make": tr_noop("Make"),
    "squeeze": tr_noop("Squeeze"),
    "separate": tr_noop("Separate"),
    "cut": tr_noop("Cut"),
}

AT_THE_LAST = ("water", "ice", "hot-drink", "brewed-tea")
"""Kinds that are made right before they are poured."""


def task_of(recipe: MadeFrom, tree: FamilyTree) -> Task:
    """Fruit is squeezed, eggs are separated, a garnish is cut, and all else is made."""
    alone = len(recipe.inputs) == 1

    def is_kind(kind: str) -> bool:
        return kind in tree and tree.is_a(recipe.made, kind)

    if alone and is_kind("juice") and not is_kind("fruit-puree"):
        return "squeeze"
    if alone and is_kind("egg-product"):
        return "separate"
    if alone and not recipe.rest_hours and tree[recipe.made].unit == "each":
        return "cut"
    return "make"


def is_of_the_last_minute(recipe: MadeFrom, tree: FamilyTree) -> bool:
    """Whether it is made right before it is poured: ice is crushed then, coffee brewed."""
    return any(kind in tree and tree.is_a(recipe.made, kind) for kind in AT_THE_LAST)


def is_made_first(recipe: MadeFrom, tree: FamilyTree) -> bool:
    """Whether it has to be there before the drink is begun."""
    if task_of(recipe, tree) != "make":
        return False
    return recipe.rest_hours > 0.0 or not is_of_the_last_minute(recipe, tree)
