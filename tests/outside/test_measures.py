"""Exact measures: NIST Handbook 44, Appendix C, and the UK Weights and Measures Act's gallon.

`data/customary_measures.csv` has them with others that have no standard; what
those come to is a choice, so `tests/domain/test_measures.py` minds them and
they do not count as checks from outside. Nor do the ounces, spoons and cups of
US nutrition labels (21 CFR 101.9(b)(5)(viii)), which no bar pours.
"""

from __future__ import annotations

import pytest

from barkeep.domain.amounts.amount import Amount
from barkeep.domain.amounts.measures import length_cm, to_quantity
from tests.outside.tables import rows

HANDBOOK = "NIST Handbook 44, Appendix C: a US gallon is 231 cubic inches, an inch 2.54 cm"
IMPERIAL = "UK Weights and Measures: a gallon is 4.54609 l, 160 fluid ounces"
SI = "SI"


EXACT = {
    # name in the table -> barkeep's amount that is the same, and who says so
    "US fluid ounce": (1, "oz", HANDBOOK),
    "UK imperial fluid ounce": (1, "imp_oz", IMPERIAL),
    "centilitre": (1, "cl", SI),
    "US teaspoon": (1, "tsp", HANDBOOK),
    "US tablespoon": (1, "tbsp", HANDBOOK),
    "US cup": (1, "cup", HANDBOOK),
    "US gill": (1, "gill", HANDBOOK),
    "imperial gill": (1, "imp_gill", IMPERIAL),
    "US fluid dram": (1 / 8, "oz", HANDBOOK),
    "US minim": (1 / 480, "oz", HANDBOOK),
    "imperial minim": (1 / 480, "imp_oz", IMPERIAL),
    "US pint": (1, "pint", HANDBOOK),
    "imperial pint": (1, "imp_pint", IMPERIAL),
    "US quart": (2, "pint", HANDBOOK),
    "US gallon": (8, "pint", HANDBOOK),
    "imperial gallon": (8, "imp_pint", IMPERIAL),
    "US fifth (obsolete)": (8 / 5, "pint", HANDBOOK),
}
TABLE = {row["name"]: row for row in rows("customary_measures")}


def test_every_exact_row_of_the_table_is_checked():
    assert {name for name, row in TABLE.items() if row["kind"] == "exact"} == EXACT.keys()


@pytest.mark.parametrize("name", EXACT)
def test_a_measure_is_what_its_source_says(name):
    number, unit, source = EXACT[name]
    printed = TABLE[name]["mL_default"]
    decimals = len(printed.partition(".")[2])
    half_a_digit = 0.5 * 10.0**-decimals if decimals else 0.0
    volume_ml = to_quantity(Amount(number, None, unit), "ml")
    assert volume_ml == pytest.approx(float(printed), abs=half_a_digit * 1.001, rel=1e-12), source


GALLON_ML, IMPERIAL_GALLON_ML = 231 * 2.54**3, 4546.09


@pytest.mark.parametrize(
    ("unit", "in_gallons", "gallon_ml"),
    [
        ("oz", 128, GALLON_ML),
        ("tbsp", 256, GALLON_ML),
        ("tsp", 768, GALLON_ML),
        ("cup", 16, GALLON_ML),
        ("gill", 32, GALLON_ML),
        ("pint", 8, GALLON_ML),
        ("imp_oz", 160, IMPERIAL_GALLON_ML),
        ("imp_gill", 32, IMPERIAL_GALLON_ML),
        ("imp_pint", 8, IMPERIAL_GALLON_ML),
    ],
)
def test_so_many_of_a_measure_are_the_legal_gallon(unit, in_gallons, gallon_ml):
    """Both gallons as the law defines them, to the last digit."""
    assert to_quantity(Amount(in_gallons, None, unit), "ml") == pytest.approx(gallon_ml, rel=1e-11)


def test_the_pound_and_the_inch_are_the_international_ones():
    """NIST Handbook 44, Appendix C: 453.592 37 g and 2.54 cm, exactly."""
    assert to_quantity(Amount(1, None, "lb"), "g") == 453.59237
    assert length_cm(Amount(1, None, "in")) == 2.54
