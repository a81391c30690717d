"""OIML R 22, *International Alcoholometric Tables*, 1975 (Council Directive 76/766/EEC, Annex).

The coefficients are the published ones. The density tables were computed from
them, by another program, so what they hold is that barkeep applies the formula
as it is meant; they are marked *computed*. Independent densities are in
`test_langes_handbook.py`, `test_us_gauging.py` and `test_coolprop.py`.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import ethanol
from barkeep.domain.liquids.constants import constants
from tests.outside.tables import rows

AT_C = (0.0, 15.0, 20.0, 25.0, 30.0)

# % vol: % mass, then kg/m³ at each of those temperatures.
CHECK_TABLE = {
    0.0: (0.0, 999.837, 999.096, 998.201, 997.043, 995.645),
    10.0: (8.0149, 987.117, 985.782, 984.710, 983.373, 981.795),
    12.5: (10.0486, 984.695, 982.966, 981.780, 980.335, 978.657),
    20.0: (16.2135, 978.754, 975.238, 973.557, 971.651, 969.538),
    25.0: (20.3812, 975.244, 970.197, 968.098, 965.805, 963.329),
    30.0: (24.6071, 971.378, 964.744, 962.211, 959.517, 956.669),
    40.0: (33.2996, 960.629, 951.329, 948.045, 944.665, 941.190),
    43.0: (35.9865, 956.391, 946.509, 943.057, 939.521, 935.904),
    45.0: (37.8011, 953.302, 943.092, 939.542, 935.916, 932.217),
    50.0: (42.4257, 944.729, 933.886, 930.142, 926.334, 922.465),
    57.0: (49.1282, 931.029, 919.622, 915.699, 911.716, 907.676),
    75.5: (68.3755, 887.962, 875.675, 871.476, 867.223, 862.918),
    96.0: (93.8384, 824.489, 811.734, 807.420, 803.081, 798.722),
    100.0: (100.0, 806.215, 793.506, 789.239, 784.954, 780.648),
}

CELLS = [
    pytest.param(abv, t, printed, id=f"OIML R 22, computed: {abv:g} % vol at {t:g} °C")
    for abv, (_, *row) in CHECK_TABLE.items()
    for t, printed in zip(AT_C, row, strict=True)
]

GRID = [row for row in rows("ethanol_water_density") if row["source"].endswith("computed")]


def test_oiml_r22_all_54_published_coefficients_are_used():
    table = constants("ethanol_water")
    ours = {("A", str(at), ""): value for at, value in enumerate(table["a"], 1)}
    ours |= {("B", str(at), ""): value for at, value in enumerate(table["b"], 1)}
    for i, row in enumerate(table["c"], 1):
        ours |= {("C", str(i), str(k)): value for k, value in enumerate(row, 1)}
    published = {
        (row["set"], row["i"], row["k"]): float(row["value"])
        for row in rows("oiml_r22_coefficients")
    }
    assert len(published) == 54
    assert ours == published


@pytest.mark.computed
@pytest.mark.parametrize(("abv", "temperature_c", "printed"), CELLS)
def test_density(abv, temperature_c, printed):
    assert ethanol.density_kg_m3(abv, temperature_c) == pytest.approx(printed, abs=0.01)


@pytest.mark.computed
@pytest.mark.parametrize("abv", CHECK_TABLE, ids="OIML R 22, computed: {:g} % vol by mass".format)
def test_mass(abv):
    assert 100.0 * ethanol.mass_fraction(abv) == pytest.approx(CHECK_TABLE[abv][0], abs=0.0001)


def test_the_check_table_is_whole():
    assert len(CELLS) == 14 * 5


@pytest.mark.computed
def test_oiml_r22_the_whole_grid():
    assert len(GRID) == 707
    for row in GRID:
        abv, t = float(row["strength_pct_vol_20C"]), float(row["t_C"])
        printed = float(row["density_kg_m3"])
        assert ethanol.density_kg_m3(abv, t) == pytest.approx(printed, abs=0.001), row


def test_oiml_r22_ethanol_at_20_c_weighs_the_customary_0_78924():
    """Published: the density that strength by volume is counted with."""
    assert ethanol.density_of_mass_fraction(1.0) == pytest.approx(789.239, abs=0.0005)


@pytest.mark.computed
@pytest.mark.parametrize(
    ("volume", "abv", "wanted", "after", "water", "naive"),
    [
        (1000.0, 60.0, 40.0, 1500.0, 513.9, 500.0),
        (1000.0, 96.0, 40.0, 2400.0, 1470.5, 1400.0),
        (700.0, 57.5, 43.0, 936.05, 243.0, 236.0),
    ],
)
def test_reduction_takes_more_water_than_volumes_say(volume, abv, wanted, after, water, naive):
    done = ethanol.reduced(volume, abv, wanted)
    assert done.volume_ml == pytest.approx(after, abs=0.01)
    assert done.water_ml == pytest.approx(water, abs=0.1)
    assert done.water_ml > done.volume_ml - volume >= naive


@pytest.mark.computed
@pytest.mark.parametrize(
    ("parts", "volume", "abv"),
    [
        (((50.0, 100.0), (50.0, 0.0)), 96.46, 51.83),
        (((50.0, 100.0), (53.73, 0.0)), 100.08, 49.96),
        (((1000.0, 60.0), (500.0, 0.0)), 1486.3, 40.37),
        (((60.0, 40.0), (30.0, 0.0)), 89.87, 26.71),
        (((60.0, 50.0), (30.0, 0.0)), 89.55, 33.50),
        (((45.0, 40.0), (135.0, 0.0)), 180.17, 9.99),
    ],
)
def test_mixing_contracts(parts, volume, abv):
    made = ethanol.mixed(ethanol.SpiritMixture(*part) for part in parts)
    assert made.volume_ml == pytest.approx(volume, rel=0.0001)
    assert made.abv_percent == pytest.approx(abv, abs=0.01)
