"""27 CFR 30, the US Gauging Manual: Tables 4 and 6 at 60 °F (`ttb_checks.csv`).

Read at law.cornell.edu, old.govregs.com and chanrobles.com; the worked examples
of the same manual are in `worked_examples.py`.
"""

from __future__ import annotations

import pytest

from barkeep.domain.liquids import ethanol
from tests.outside import physics, us_gauging
from tests.outside.tables import LB_G, US_GAL_ML, rows

CHECKS = rows("ttb_checks")
QUANTITIES = {
    "parts water in 100 gal": (us_gauging.parts_of_water, 0.0075),
    "wine gal per lb (air)": (us_gauging.wine_gallons_per_lb, 0.00003),
    "proof gal per lb (air)": (us_gauging.proof_gallons_per_lb, 0.00004),
}


def named(row: dict[str, str]) -> str:
    return f"{row['source']}, {row['proof_US']} proof: {row['quantity']}"


@pytest.mark.parametrize("row", CHECKS, ids=named)
def test_the_manual_s_tables(row):
    ours, tolerance = QUANTITIES[row["quantity"]]
    assert ours(float(row["proof_US"])) == pytest.approx(float(row["published"]), abs=tolerance)


def test_all_seven_are_checked():
    assert len(CHECKS) == 7
    assert {row["quantity"] for row in CHECKS} == QUANTITIES.keys()


def test_27_cfr_30_a_gallon_of_water_weighs_what_the_manual_says():
    """Published 8.32823 lb at 60 °F in air; OIML R 22 gives 8.32838."""
    water = ethanol.density_of_mass_fraction(0.0, ethanol.US_REFERENCE_C)
    weight = physics.in_air_g(water * US_GAL_ML / 1000.0, water) / LB_G
    assert weight == pytest.approx(8.32823, abs=0.0002)


@pytest.mark.parametrize("proof", [80.0, 85.0, 90.0, 95.0, 100.0])
def test_27_cfr_30_32_solids_hide_some_of_the_proof(proof):
    """Published: 100 mg of solids in 100 ml hide 0.4 of a degree from 80 to 100 proof."""
    hidden = proof - physics.us_proof(physics.apparent_abv(physics.of_us_proof(proof), 1.0))
    assert hidden == pytest.approx(0.4, abs=0.08)


def test_27_cfr_5_11_proof_is_twice_the_strength():
    assert ethanol.read_strength("86 proof") == 43.0
    assert ethanol.read_strength("100 US proof") == 50.0


@pytest.mark.computed
def test_an_80_proof_spirit_is_a_trifle_stronger_at_20_c():
    """By OIML R 22: 40.07 % vol at 20 °C, and 50.06 for 100 proof. *Computed.*"""
    for proof, at_20 in ((80.0, 40.07), (100.0, 50.06)):
        p = ethanol.mass_fraction(physics.of_us_proof(proof), ethanol.US_REFERENCE_C)
        assert ethanol.strength(p) == pytest.approx(at_20, abs=0.005)


def test_britannica_old_british_proof_is_57_06_percent():
    """Proof spirit weighs 12/13 of the same volume of water at 51 °F; 57.06 % vol."""
    there = (51.0 - 32.0) / 1.8
    water = ethanol.density_of_mass_fraction(0.0, there)
    assert ethanol.read_strength("100 UK proof") == pytest.approx(57.06, abs=0.005)
    spirit = ethanol.density_kg_m3(ethanol.read_strength("100 UK proof"), there)
    assert spirit / water == pytest.approx(12.0 / 13.0, abs=0.0005)
