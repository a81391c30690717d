"""Sucrose in water, beside tables that other people measured and printed.

* CRC *Handbook of Chemistry and Physics*, "Concentrative properties of aqueous
  solutions", as tabulated in M. T. Flanagan's library: 63 points at 20 °C.
* National Bureau of Standards Circular C440 (1942): pounds in a US gallon in
  air, read at foodpartners.net; and the fit of Brix by apparent gravity that
  was drawn from it, good to 40 °Bx, read in a secondary copy.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import sucrose
from tests.outside import physics
from tests.outside.tables import LB_G, US_CUP_ML, US_FL_OZ_ML, US_GAL_ML, rows

TABLE = rows("sucrose_density")
CRC = [row for row in TABLE if "outside check" in row["source"]]
COMPUTED = [row for row in TABLE if row["source"].endswith("computed")]


def apparent_gravity(brix: float) -> float:
    """Gravity 20/20 as weighed in air."""
    syrup, water = (sucrose.density_kg_m3(each) for each in (brix, 0.0))
    return physics.in_air_g(syrup, syrup) / physics.in_air_g(water, water)


@pytest.mark.parametrize("row", CRC, ids=lambda row: f"CRC Handbook: {row['brix_pct_mass']} °Bx")
def test_density_and_sugar(row):
    """To 0.36 kg/m³ and 0.3 g/l up to 76 °Bx; beyond saturation the two part, to 0.06 %."""
    brix = float(row["brix_pct_mass"])
    density, sugar = float(row["density_kg_m3"]), float(row["sugar_g_per_L"])
    off = 0.37 if brix <= 76.0 else 0.0006 * density
    assert sucrose.density_kg_m3(brix) == pytest.approx(density, abs=off)
    assert sucrose.g_per_l(brix) == pytest.approx(sugar, abs=0.3 if brix <= 76.0 else 0.7)


def test_all_of_crc_s_points_are_checked():
    assert len(CRC) == 63


@pytest.mark.parametrize(
    ("brix", "pounds"),
    [
        pytest.param(0.0, 8.322, id="NBS Circular C440: water"),
        pytest.param(5.0, 8.486, id="NBS Circular C440: 5 °Bx"),
    ],
)
def test_weight_of_a_gallon_in_air(brix, pounds):
    density = sucrose.density_kg_m3(brix)
    ours = physics.in_air_g(density * US_GAL_ML / 1000.0, density) / LB_G
    assert ours == pytest.approx(pounds, abs=0.001)


@pytest.mark.parametrize("brix", [3.8, 4.0, 7.6, 7.9, 10.0, 20.0, 30.0, 40.0])
def test_nbs_fit_of_brix_by_apparent_gravity(brix):
    s = apparent_gravity(brix)
    fit = ((182.4601 * s - 775.6821) * s + 1262.7794) * s - 669.5622
    assert fit == pytest.approx(brix, abs=0.025)


@pytest.mark.computed
def test_the_polynomial_is_the_published_one():
    """405 values another program computed from the ICUMSA coefficients."""
    assert len(COMPUTED) == 405
    for row in COMPUTED:
        brix, t = float(row["brix_pct_mass"]), float(row["t_C"])
        printed = float(row["density_kg_m3"])
        assert sucrose.density_kg_m3(brix, t) == pytest.approx(printed, abs=0.006), row
        sugar = float(row["sugar_g_per_L"])
        assert sucrose.g_per_l(brix, t) == pytest.approx(sugar, abs=0.06), row


@pytest.mark.computed
@pytest.mark.parametrize(
    ("sugar", "water", "brix", "density", "volume", "per_l", "per_fl_oz"),
    [
        pytest.param(1000.0, 1000.0, 50.0, 1.2297, 1626.5, 614.8, 18.18, id="1:1 by mass"),
        pytest.param(1500.0, 1000.0, 60.0, 1.2866, 1943.1, 772.0, 22.83, id="3:2 by mass"),
        pytest.param(2000.0, 1000.0, 66.67, 1.3268, 2261.2, 884.5, 26.16, id="2:1 by mass"),
        pytest.param(200.0, None, 45.85, 1.2072, 361.3, 553.5, 16.37, id="1:1 by volume"),
        pytest.param(400.0, None, 62.88, 1.3037, 488.0, 819.7, 24.24, id="2:1 by volume"),
    ],
)
def test_what_a_syrup_yields(sugar, water, brix, density, volume, per_l, per_fl_oz):
    """By volume: a US cup of sugar is 200 g (USDA SR28 19335)."""
    cup_g = US_CUP_ML * sucrose.water_density_kg_m3(20.0) / 1000.0
    made = physics.syrup(sugar, water or cup_g)
    assert made.brix == pytest.approx(brix, abs=0.006)
    assert made.mass_g / made.volume_ml == pytest.approx(density, abs=0.0001)
    assert made.volume_ml == pytest.approx(volume, abs=0.06)
    assert made.sugar_g_per_l == pytest.approx(per_l, abs=0.06)
    assert made.sugar_g_per_l * US_FL_OZ_ML / 1000.0 == pytest.approx(per_fl_oz, abs=0.01)


def test_solubility_handbooks_a_2_to_1_syrup_is_as_good_as_saturated():
    """66.7 to 67.1 % at 20 °C (ICUMSA-type tables; Mohos 2010, App. 2)."""
    assert physics.syrup(2000.0, 1000.0).brix >= sucrose.SATURATED_BRIX - 0.05
    assert physics.syrup(1500.0, 1000.0).brix < sucrose.SATURATED_BRIX - 0.05


@pytest.mark.computed
@pytest.mark.parametrize(
    ("sugar", "taken"),
    [(50, 0.616), (100, 0.617), (200, 0.618), (300, 0.6195), (400, 0.621), (500, 0.623)],
)
def test_the_volume_sugar_takes_up(sugar, taken):
    assert sucrose.volume_taken_ml_per_g(float(sugar)) == pytest.approx(taken, abs=0.0007)


@pytest.mark.computed
def test_the_volume_sugar_takes_up_in_a_thick_syrup():
    assert sucrose.volume_taken_ml_per_g(1200.0) == pytest.approx(0.637, abs=0.001)
