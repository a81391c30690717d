"""Grams in a standard drink by country: `standard_drinks.csv`.

Its sources, row by row in its last column: NIAAA, Health Canada, the NHS,
NHMRC, HSE, AUDIT, and Kalinowski & Humphreys, *Addiction* 111(7):1293 (2016),
read in a copy. Rows *from memory* or in conflict carry a doubt in ours.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import content
from tests.outside.tables import rows

TABLE = {row["jurisdiction"]: row for row in rows("standard_drinks")}
OUR_NAMES = {
    "United Kingdom (unit)": "United Kingdom",
    "WHO (AUDIT reference)": "World Health Organization",
}
SOURCES = {
    "United States": "NIAAA",
    "Canada": "Health Canada",
    "United Kingdom (unit)": "NHS",
    "Australia": "NHMRC",
    "Ireland": "HSE",
    "WHO (AUDIT reference)": "AUDIT",
}
CASES = [
    pytest.param(place, id=f"from memory: {place}", marks=pytest.mark.computed)
    if row["confidence"].startswith("from memory")
    else pytest.param(place, id=f"{SOURCES.get(place, 'Kalinowski & Humphreys 2016')}: {place}")
    for place, row in TABLE.items()
]


@pytest.mark.parametrize("place", CASES)
def test_grams(place):
    printed = float(TABLE[place]["grams_ethanol"])
    ours = content.standard_drink(OUR_NAMES.get(place, place))
    if ours.country == "United Kingdom":
        # A unit is 10 ml, which is 7.89 g; the NHS states it as 8.
        assert round(ours.grams) == printed
        assert ours.grams == pytest.approx(content.ethanol_ml_g(10.0), abs=0.005)
    else:
        assert ours.grams == printed


def test_every_country_is_in_the_table_and_no_other():
    assert sorted(OUR_NAMES.get(place, place) for place in TABLE) == list(content.countries())


def test_where_lists_conflict_or_memory_serves_it_is_said():
    for place, row in TABLE.items():
        ours = content.standard_drink(OUR_NAMES.get(place, place))
        if "conflict" in row["confidence"]:
            assert ours.doubt, place
        if row["confidence"].startswith("from memory"):
            assert "from memory" in ours.basis, place


def test_kalinowski_and_humphreys_they_run_from_8_to_20_g():
    """Over the rows that a publication is named for, those *from memory* left out."""
    read = [place for place, row in TABLE.items() if "from memory" not in row["confidence"]]
    grams = [content.standard_drink(OUR_NAMES.get(place, place)).grams for place in read]
    assert (round(min(grams)), max(grams)) == (8, 20.0)
