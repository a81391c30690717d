"""Batches against published dilution, freezing and fruit figures, ten serves at a time.

W30 and W31 of `data/worked_examples.csv` put Arnold's equations (*Liquid
Intelligence*, 2014) to work for one drink; a batch of ten must be ten of
those; they are marked `computed`, since both sides use one formula. Freezing
points are Lange's Handbook, 15th ed., table 5.13.
"""

from __future__ import annotations

import re
from datetime import date

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.making.batch_measures import ForServes, ForVolume, FromIngredient
from barkeep.domain.making.batches import batch
from barkeep.domain.spec_text.text import read_specs
from tests.outside.tables import rows

SOUR = "Sour\n60 ml white rum\n22.5 ml lime juice\n22.5 ml simple syrup\n\nShake with ice."
STIRRED = (
    "Stirred\n60 ml rye whiskey\n30 ml sweet vermouth\n2 dashes aromatic bitters\n\nStir with ice."
)


@pytest.fixture(scope="module")
def snapshot():
    """Nothing on the shelf: every figure is what the kind usually is."""
    return Snapshot(shipped(), date(2026, 11, 21))


def spec(text, snapshot):
    (found,) = read_specs(text, snapshot.knowledge.tree)
    assert found.spec is not None
    return found.spec


@pytest.mark.computed
def test_shaken_is_ten_of_w31(snapshot):
    """W31, worked out from Arnold's equations: 159.5 ml, 15.0 % vol.

    Sugar 8.9 g/100 ml, acid 0.85 or 0.65 g/100 ml by the lime.
    """
    made = batch(spec(SOUR, snapshot), snapshot, ForServes(10))
    assert made.total_ml == pytest.approx(1595, abs=5)
    assert made.abv_percent == pytest.approx(15.0, abs=0.1)
    assert made.sugar_g_per_l == pytest.approx(89, abs=1)
    assert 6.4 <= made.acid_g_per_l <= 8.5
    assert made.water_ml == pytest.approx(0.5193 * 1050, rel=0.01)


@pytest.mark.computed
def test_stirred_is_ten_of_w30(snapshot):
    """W30, worked out from Arnold's equations: 131.4 ml, 24.7 % vol."""
    made = batch(spec(STIRRED, snapshot), snapshot, ForServes(10))
    assert made.total_ml == pytest.approx(1314, abs=3)
    assert made.abv_percent == pytest.approx(24.7, abs=0.1)


@pytest.mark.computed
def test_hot_takes_no_water(snapshot):
    made = batch(spec(SOUR, snapshot), snapshot, ForServes(10), "hot")
    assert made.water_ml == 0.0 and made.total_ml == pytest.approx(1050.0)


@pytest.mark.parametrize("abv_percent", [14.0, 23.1, 29.5, 36.1])
def test_ice_begins_in_the_freezer_where_lange_says(snapshot, abv_percent):
    """Vodka of 40 % vol thinned to a strength of the table; the note is whole degrees."""
    (lange_c,) = [
        float(each["freezing_point_C_Lange_T5_13"])
        for each in rows("freezing_points")
        if float(each["ethanol_pct_vol"]) == abv_percent
    ]
    water_ml = 60.0 * 40.0 / abv_percent - 60.0
    text = f"Thin\n60 ml vodka\n{water_ml:.4f} ml water\n\nBuild."
    made = batch(spec(text, snapshot), snapshot, ForServes(10), "frozen")
    (note,) = [each for each in made.notes if "ice begins" in each]
    found = re.search(r"near -(\d+) °C", note)
    assert found is not None
    # Lange and CoolProp differ by up to 1.1 K here, the note by half a degree of rounding.
    assert -float(found[1]) == pytest.approx(lange_c, abs=1.6)


@pytest.mark.computed
def test_pivot_volume_and_serves_give_the_same_batch(snapshot):
    """By hand: 700 ml of rum at 60 ml a serve are 11 2/3 serves of 159.5 ml."""
    drink = spec(SOUR, snapshot)
    pivot = batch(drink, snapshot, FromIngredient("white-rum", 700.0))
    assert pivot.serves == pytest.approx(35 / 3)
    serves = batch(drink, snapshot, ForServes(35 / 3))
    volume = batch(drink, snapshot, ForVolume(serves.total_ml))
    for other in (serves, volume):
        assert [each.exact for each in other.lines] == pytest.approx(
            [each.exact for each in pivot.lines]
        )
        assert other.total_ml == pytest.approx(pivot.total_ml)
