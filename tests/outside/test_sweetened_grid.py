"""Density of ethanol, sucrose and water together: no published table was found.

So `sugared_spirit_density.csv`, computed by another program from OIML R 22 and
the ICUMSA polynomial, only holds that both models are applied as they are
meant. What was published is where the older one may be trusted: Hackbarth,
*J. Am. Soc. Brew. Chem.* 67(3):146 (2009), finds real solutions lighter than
Tabarié's rule (OIV-MA-AS2-03B) from some 18 % ethanol by weight.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import sweetened
from tests.outside import physics
from tests.outside.tables import rows

GRID = rows("sugared_spirit_density")


def models(row: dict[str, str]) -> tuple[float, float]:
    """Our density and Tabarié's, kg/m³."""
    abv, sugar = float(row["abv_pct_20C"]), float(row["sucrose_g_per_L"])
    ours = sweetened.spirit_density(abv, sugar).g_per_ml
    return 1000.0 * ours, physics.tabarie_kg_m3(abv, sugar)


@pytest.mark.computed
def test_both_models():
    assert len(GRID) == 176
    for row in GRID:
        ours, tabarie = models(row)
        assert ours == pytest.approx(float(row["density_additive_volume_kg_m3"]), abs=0.01), row
        assert tabarie == pytest.approx(float(row["density_Tabarie_kg_m3"]), abs=0.01), row


def test_hackbarth_2009_a_strong_liqueur_is_lighter_than_tabarie_says():
    strong = [row for row in GRID if float(row["abv_pct_20C"]) >= 30.0]
    sweet = [row for row in strong if float(row["sucrose_g_per_L"]) >= 100.0]
    assert len(sweet) > 50
    assert all(ours < tabarie for ours, tabarie in map(models, sweet))


@pytest.mark.computed
def test_the_models_agree_within_the_doubt_that_is_stated():
    """One sigma, for liqueurs as they are sold: up to 40 % vol and 350 g/l."""
    sold = [
        row
        for row in GRID
        if float(row["abv_pct_20C"]) <= 40.0 and float(row["sucrose_g_per_L"]) <= 350.0
    ]
    assert len(sold) > 80
    for row in sold:
        ours, tabarie = models(row)
        assert abs(ours - tabarie) / ours < sweetened.SIGMA_SWEETENED, row
