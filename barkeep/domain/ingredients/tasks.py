"""What is done to make a thing here: squeezed, separated, cut, or made."""

from __future__ import annotations

from typing import Literal

from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree

Task = Literal["make", "squeeze", "separate", "cut"]


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
