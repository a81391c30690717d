"""Sugar and water: there and back again, no sugar lost, nothing beyond its range."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.liquids import ethanol, sucrose
from barkeep.errors import OutsideRange

brixes = st.floats(0.0, sucrose.HIGHEST_BRIX)

temperatures = st.floats(0.0, 80.0)

amounts = st.floats(0.1, 10_000.0)


def exactly(value):
    return pytest.approx(value, rel=1e-9, abs=1e-9)


@given(brixes)
def test_brix_and_sugar_there_and_back(brix):
    assert sucrose.brix_of(sucrose.g_per_l(brix)) == exactly(brix)


@given(st.floats(0.0, 1.0))
def test_sugar_and_brix_there_and_back(share):
    sugar = share * sucrose.g_per_l(sucrose.HIGHEST_BRIX)
    assert sucrose.g_per_l(sucrose.brix_of(sugar)) == exactly(sugar)


@given(brixes, st.floats(0.01, 10.0), temperatures)
def test_more_sugar_is_heavier(brix, more, t):
    sweeter = min(sucrose.HIGHEST_BRIX, brix + more)
    assert sucrose.density_kg_m3(sweeter, t) >= sucrose.density_kg_m3(brix, t)
    if sweeter - brix > 1e-6:
        assert sucrose.density_kg_m3(sweeter, t) > sucrose.density_kg_m3(brix, t)


@given(brixes, st.floats(5.0, 79.0))
def test_a_warmer_syrup_is_lighter(brix, t):
    assert sucrose.density_kg_m3(brix, t + 1.0) < sucrose.density_kg_m3(brix, t)


@given(st.floats(0.0, 40.0))
def test_both_sources_have_the_same_water(t):
    water = ethanol.density_of_mass_fraction(0.0, t)
    assert sucrose.water_density_kg_m3(t) == pytest.approx(water, abs=0.005)
    assert sucrose.density_kg_m3(0.0, t) == sucrose.water_density_kg_m3(t)


@given(amounts, st.floats(0.2, 50.0))
def test_a_syrup_holds_all_of_its_sugar_and_water(sugar, ratio):
    water = sugar * ratio
    made = sucrose.syrup(sugar, water)
    assert made.mass_g == exactly(sugar + water)
    assert made.sugar_g_per_l * made.volume_ml / 1000.0 == exactly(sugar)
    assert made.brix == exactly(100.0 / (1.0 + ratio))
    assert made.sugar_g_per_l == exactly(sucrose.g_per_l(made.brix))
    # Dissolved sugar takes up 0.60 to 0.65 ml a gram (from memory).
    assert 0.60 < (made.volume_ml - water / 0.9982) / sugar < 0.65


@given(amounts, st.floats(1.0, 85.0), st.floats(0.01, 1.0))
def test_thinning_keeps_the_sugar(volume, brix, share):
    wanted = brix * share
    water = sucrose.water_to_thin_g(volume, brix, wanted)
    mass = volume * sucrose.density_kg_m3(brix) / 1000.0
    assert water >= 0.0
    assert (mass + water) * wanted == exactly(mass * brix)


@given(amounts, st.floats(10.0, 66.0))
def test_thinning_gives_the_syrup_made_so_at_once(volume, brix):
    """Half of its Brix, made from the same sugar."""
    mass = volume * sucrose.density_kg_m3(brix) / 1000.0
    sugar = mass * brix / 100.0
    water = sucrose.water_to_thin_g(volume, brix, brix / 2.0)
    assert sucrose.syrup(sugar, mass - sugar + water).brix == exactly(brix / 2.0)


@given(st.floats(0.0, 1.0), st.floats(0.0, 80.0))
def test_the_volume_taken_is_what_is_not_water(share, t):
    """What a litre at 20 °C becomes at another temperature, put together again."""
    sugar = max(1.0, share * sucrose.g_per_l(sucrose.HIGHEST_BRIX))
    brix = sucrose.brix_of(sugar)
    grams = sucrose.density_kg_m3(brix)
    water_ml = (grams - sugar) * 1000.0 / sucrose.water_density_kg_m3(t)
    volume = water_ml + sugar * sucrose.volume_taken_ml_per_g(sugar, t)
    assert grams * 1000.0 / volume == pytest.approx(sucrose.density_kg_m3(brix, t), rel=1e-9)


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: sucrose.density_kg_m3(90.0),
            "a sugar content of 90 °Bx cannot be used: it is 0 to 85 °Bx.",
        ),
        (
            lambda: sucrose.density_kg_m3(50.0, 95.0),
            "a temperature of 95 °C cannot be used: it is 0 to 80 °C.",
        ),
        (
            lambda: sucrose.brix_of(1300.0),
            "a sugar content of 1300 g/l cannot be used: it is 0 to 1229.05 g/l.",
        ),
        (
            lambda: sucrose.volume_taken_ml_per_g(-1.0),
            "a sugar content of -1 g/l cannot be used: it is 0 to 1229.05 g/l.",
        ),
        (
            lambda: sucrose.syrup(-1.0, 100.0),
            "a mass of sugar of -1 g cannot be used: it is 0 to 1e+07 g.",
        ),
        (
            lambda: sucrose.syrup(100.0, 0.0),
            "a mass of water of 0 g cannot be used: it is 1e-09 to 1e+07 g.",
        ),
        (
            lambda: sucrose.syrup(900.0, 100.0),
            "a sugar content of 90 °Bx cannot be used: it is 0 to 85 °Bx.",
        ),
        (
            lambda: sucrose.water_to_thin_g(100.0, 50.0, 60.0),
            "a wanted sugar content of 60 °Bx cannot be used: it is 1e-06 to 50 °Bx.",
        ),
    ],
)
def test_what_cannot_be_is_refused_with_its_value_and_range(call, sentence):
    with pytest.raises(OutsideRange) as refused:
        call()
    assert str(refused.value) == sentence
