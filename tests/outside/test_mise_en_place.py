"""Fruit to be squeezed, beside the yields of USDA SR28 (`usda_liquids.csv`, column *yields*).

USDA presses harder than a hand press does: the trade counts on less, so what is
counted here lies between USDA's yield and half of it.
"""

from __future__ import annotations

import math
import re
from datetime import date

import pytest

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.shoots.making_ahead import MARGIN
from barkeep.domain.shoots.menu import Order
from barkeep.domain.shoots.mise_en_place import mise_en_place
from barkeep.domain.specs.spec import Line, Spec
from tests.outside.tables import rows

TABLE = {row["ndb_no"]: row for row in rows("usda_liquids")}
FRUIT = [
    ("lime-juice", "lime", "09160"),
    ("lemon-juice", "lemon", "09152"),
    ("orange-juice", "orange", "09206"),
    ("grapefruit-juice", "grapefruit", "09404"),
]
"""Ingredient, fruit, NDB number of its raw juice."""


def usda_ml(number: str) -> float:
    """The juice of one fruit: grams over the density of the household measure."""
    grams = re.match(r"(?:lime|lemon|fruit) yields=(\d+) g", TABLE[number]["yields"])
    assert grams is not None
    density = float(TABLE[number]["density_g_per_ml_from_household_measure"])
    return float(grams[1]) / density


def test_usda_yields_are_those_of_the_reference():
    """44 g of lime are 43 ml, 48 g of lemon 47, 86 g of orange 82, 196 g of grapefruit 188."""
    assert [round(usda_ml(number)) for _key, _fruit, number in FRUIT] == [43, 47, 82, 188]


@pytest.mark.parametrize(("juice", "fruit", "number"), FRUIT)
@pytest.mark.parametrize("serves", [1, 7, 40])
def test_fruit_is_counted_between_usda_and_half_of_it(knowledge, juice, fruit, number, serves):
    line = Line("", juice, 30.0, None, "ml", 30.0)
    order = Order(Spec("S", (line,), "Shake.", "shaken"), serves)
    (made,) = mise_en_place([order], Snapshot(knowledge, date(2026, 11, 21))).squeeze
    ((key, count, unit),) = made.inputs
    assert (key, unit) == (fruit, "each")
    wanted = 30.0 * serves * (1.0 + MARGIN)
    assert math.ceil(wanted / usda_ml(number)) <= count <= math.ceil(2 * wanted / usda_ml(number))
