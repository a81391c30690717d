"""Yields in `made_from.toml` that say they were computed from sucrose density (ICUMSA).

What a liquid holds that is not water counts as sugar; water and solids are
those of USDA SR26, weights of its household measures. *Computed*, so no outside
checks, but each stands on a published table.
"""

from __future__ import annotations

import re

import pytest

from barkeep.application.knowledge import shipped
from tests.outside import physics
from tests.outside.tables import rows

USDA = {row["ndb_no"]: row for row in rows("usda_liquids")}
SOLIDS = {"sugar", "demerara-sugar", "gum-arabic"}
WATERS = {"water", "boiling-water", "black-tea", "coffee", "cold-brew-coffee"}
JUICES = {
    "pomegranate-juice": "09442",
    "pineapple-juice": "09273",
    "passion-fruit-puree": "09232",
    "lime-juice": "09160",
    "lemon-juice": "09152",
    "honey": "19296",
}
LEFT_IN = {
    "cinnamon-stick",
    "vanilla-pod",
    "mint",
    "rosemary",
    "lavender",
    "hibiscus-flowers",
    "fresh-chilli",
    "lime-peel",
    "lemon-peel",
}
"""Strained out again; what stays in them is said in the basis."""
KNOWN = SOLIDS | WATERS | JUICES.keys() | LEFT_IN
RECIPES = [
    each
    for each in shipped().made_from
    if "sucrose density" in each.basis and {part.ingredient for part in each.inputs} <= KNOWN
]


def expected_ml(recipe) -> float:
    solids = water = 0.0
    for part in recipe.inputs:
        if part.ingredient in SOLIDS:
            solids += part.amount
        elif part.ingredient in WATERS:
            water += part.amount
        elif part.ingredient in JUICES:
            row = USDA[JUICES[part.ingredient]]
            grams = part.amount * float(row["density_g_per_ml_from_household_measure"])
            water += grams * float(row["water_g_100g"]) / 100.0
            solids += grams * (1.0 - float(row["water_g_100g"]) / 100.0)
    if kept := re.search(r"(\d+) ml of water left", recipe.basis):
        water -= float(kept[1])
    share = re.search(r"less (\d+) %", recipe.basis)
    less = float(share[1]) / 100.0 if share else 0.0
    return physics.syrup(solids, water).volume_ml * (1.0 - less)


@pytest.mark.computed
@pytest.mark.parametrize(
    "recipe", RECIPES, ids=lambda each: f"{each.made} of {each.inputs[0].ingredient}"
)
def test_yield(recipe):
    assert recipe.yields == pytest.approx(expected_ml(recipe), rel=0.006)


def test_most_of_those_recipes_are_checked():
    assert len(RECIPES) >= 18
