"""Lange's *Handbook of Chemistry*, 15th ed., Table 5.13 (p. 5.83): ethanol in water.

Specific gravity 20/4 and freezing point at 15 strengths, read at
studfile.net/preview/408309. The gravity is printed to five decimals of g/ml and
agrees to 0.00004; what is in the file is it times 999.972 kg/m³.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import ethanol
from barkeep.domain.liquids.freezing import freezing_point_c, in_freezer
from tests.outside.tables import rows

GRAVITY = [row for row in rows("ethanol_water_density") if "Lange" in row["source"]]
FREEZING = rows("freezing_points")
G_PER_ML = 0.00004


def named(row: dict[str, str]) -> str:
    by_mass = float(row.get("ethanol_pct_mass") or 100.0 * float(row["ethanol_mass_fraction"]))
    return f"Lange, Table 5.13: {by_mass:.1f} % mass"


@pytest.mark.parametrize("row", GRAVITY, ids=named)
def test_density(row):
    ours = ethanol.density_of_mass_fraction(float(row["ethanol_mass_fraction"]))
    assert ours == pytest.approx(float(row["density_kg_m3"]), abs=1000.0 * G_PER_ML)


@pytest.mark.parametrize("row", FREEZING, ids=named)
def test_strength_by_mass_and_by_volume(row):
    """The table prints both, rounded to three figures."""
    ours = 100.0 * ethanol.mass_fraction(float(row["ethanol_pct_vol"]))
    assert ours == pytest.approx(float(row["ethanol_pct_mass"]), abs=0.1)


@pytest.mark.parametrize("row", FREEZING, ids=named)
def test_freezing_point(row):
    ours = freezing_point_c(float(row["ethanol_pct_vol"]))
    assert ours == pytest.approx(float(row["freezing_point_C_Lange_T5_13"]), abs=1e-9)


def test_all_fifteen_points_are_checked():
    assert len(GRAVITY) == len(FREEZING) == 15


@pytest.mark.computed
@pytest.mark.parametrize(
    ("abv", "celsius"), [(20.0, -7.4), (25.0, -10.7), (30.0, -14.3), (35.0, -18.0), (40.0, -23.1)]
)
def test_between_the_points(abv, celsius):
    assert freezing_point_c(abv) == pytest.approx(celsius, abs=0.06)


@pytest.mark.parametrize(
    ("abv", "verdict"),
    [
        (5.0, "frozen"),
        (12.0, "frozen"),
        (24.0, "frozen"),
        (25.0, "slush"),
        (30.0, "slush"),
        (33.0, "slush"),
        (35.0, "borderline"),
        (36.0, "borderline"),
        (37.0, "liquid"),
        (40.0, "liquid"),
        (50.0, "liquid"),
        (96.0, "liquid"),
    ],
)
def test_a_household_freezer_by_lange_and_by_common_practice(abv, verdict):
    """At -18 °C 35 % vol is the break-even by the table; the words for the rest are the trade's."""
    assert in_freezer(abv) == verdict


@pytest.mark.computed
def test_sugar_keeps_a_liqueur_liquid_that_would_be_slush():
    """By the ideal law of freezing, *from memory*."""
    assert in_freezer(33.0) == "slush"
    assert in_freezer(33.0, 250.0) == "liquid"
