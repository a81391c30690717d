"""CoolProp 8.0.0 (MIT licence): ethanol in water, `INCOMP::MEA`, and pure `Ethanol`.

`data/coolprop_ethanol_water.csv` is what that release gives at 101 325 Pa; its
own fit of other measurements (Melinder, *Properties of Secondary Working
Fluids*, by its documentation, *from memory*) is good to some 0.05 %, so the
tolerance is 0.6 kg/m³. Its freezing points are in `freezing_points.csv`.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import ethanol
from barkeep.domain.liquids.freezing import freezing_point_c
from tests.outside.tables import rows

DENSITIES = rows("coolprop_ethanol_water")
MIXED = [row for row in DENSITIES if row["fluid"] == "INCOMP::MEA"]


def named(row: dict[str, str]) -> str:
    return f"{row['version']} {row['fluid']}: {row['ethanol_mass_fraction']} at {row['t_C']} °C"


@pytest.mark.parametrize("row", DENSITIES, ids=named)
def test_density(row):
    ours = ethanol.density_of_mass_fraction(float(row["ethanol_mass_fraction"]), float(row["t_C"]))
    assert ours == pytest.approx(float(row["density_kg_m3"]), abs=0.6)


def test_27_points_from_5_to_60_percent_mass_and_0_to_40_c_are_checked():
    points = {(float(row["ethanol_mass_fraction"]), float(row["t_C"])) for row in MIXED}
    assert len(points) == 27
    assert (min(points), max(points)) == ((0.05, 0.0), (0.6, 40.0))


@pytest.mark.parametrize(
    "row", rows("freezing_points"), ids=lambda row: f"CoolProp: {row['ethanol_pct_mass']} % mass"
)
def test_freezing_point_within_1_3_k(row):
    ours = freezing_point_c(float(row["ethanol_pct_vol"]))
    assert ours == pytest.approx(float(row["freezing_point_C_CoolProp_MEA"]), abs=1.3)
