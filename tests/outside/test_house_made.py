"""Syrups made at home against the sucrose tables: ICUMSA SPS-4 (Bubník et al., 1995)."""

from __future__ import annotations

from datetime import date

import pytest

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.making.figures import Part, expected_yield_ml
from barkeep.domain.making.house_made import plan_making, recipes_for
from tests.outside import physics


@pytest.mark.computed
@pytest.mark.parametrize(
    ("key", "sugar_g", "water_g"),
    [("simple-syrup", 1000.0, 1000.0), ("rich-simple-syrup", 2000.0, 1000.0)],
    ids=["1 to 1 by weight", "2 to 1 by weight"],
)
def test_sucrose_density_gives_sugar_and_volume(knowledge, key, sugar_g, water_g):
    made = physics.syrup(sugar_g, water_g)
    parts = [Part("sugar", sugar_g), Part("water", water_g)]
    assert expected_yield_ml(parts, knowledge) == pytest.approx(made.volume_ml, rel=1e-6)
    bar = Snapshot(knowledge, date(2026, 11, 21))
    figures = plan_making(recipes_for(key, knowledge)[0], 700.0, bar).figures
    assert figures.sugar_g_per_l == pytest.approx(made.sugar_g_per_l, rel=1e-3)


def test_usda_19296_honey_syrup(knowledge):
    """Half honey by volume: within 1 % of what USDA SR28 19296 says of honey, halved."""
    bar = Snapshot(knowledge, date(2026, 11, 21))
    figures = plan_making(recipes_for("honey-syrup", knowledge)[0], 994.0, bar).figures
    assert figures.sugar_g_per_l == pytest.approx(
        knowledge.tree["honey-syrup"].sugar_g_per_l, rel=0.01
    )
