"""Syrups made at home: against ICUMSA SPS-4 (Bubník et al., 1995), and USDA SR28 for honey."""

from __future__ import annotations

from datetime import date

import pytest

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.liquids import sucrose
from barkeep.domain.making.figures import RecipePart, expected_yield_ml
from barkeep.domain.making.house_made import plan_making, recipes_for
from tests.outside.tables import US_CUP_ML, rows


@pytest.mark.computed
@pytest.mark.parametrize(
    ("key", "sugar_g", "water_g"),
    [("simple-syrup", 1000.0, 1000.0), ("rich-simple-syrup", 2000.0, 1000.0)],
    ids=["1 to 1 by weight", "2 to 1 by weight"],
)
def test_sucrose_density_gives_sugar_and_volume(knowledge, key, sugar_g, water_g):
    made = sucrose.syrup(sugar_g, water_g)
    parts = [RecipePart("sugar", sugar_g), RecipePart("water", water_g)]
    assert expected_yield_ml(parts, knowledge) == pytest.approx(made.volume_ml, rel=1e-6)
    bar = Snapshot(knowledge, date(2026, 11, 21))
    figures = plan_making(recipes_for(key, knowledge)[0], 700.0, bar).figures
    assert figures.sugar_g_per_l == pytest.approx(made.sugar_g_per_l, rel=1e-3)


def test_usda_19296_honey_syrup(knowledge):
    """Half honey by volume: half of USDA SR28 19296, 82.12 g of sugars in 100 g, 339 g a cup."""
    (honey,) = [each for each in rows("usda_liquids") if each["ndb_no"] == "19296"]
    honey_g_per_l = float(honey["sugars_g_100g"]) * 10.0 * 339.0 / US_CUP_ML
    assert honey["density_basis_SR28"] == "339 g/1 US cup"
    bar = Snapshot(knowledge, date(2026, 11, 21))
    figures = plan_making(recipes_for("honey-syrup", knowledge)[0], 994.0, bar).figures
    assert figures.sugar_g_per_l == pytest.approx(honey_g_per_l / 2.0, rel=0.02)
