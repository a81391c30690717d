"""Sweetened spirits: at the edges they are what they are made of."""

from __future__ import annotations

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from barkeep.domain.liquids import ethanol, sucrose, sweetened
from barkeep.errors import OutsideRange

abvs = st.floats(0.0, 100.0)
sugars = st.floats(0.0, 1200.0)
temperatures = st.floats(0.0, 40.0)


def kg_m3(abv: float, sugar: float, t: float = 20.0) -> float:
    return 1000.0 * sweetened.spirit_density(abv, sugar, t).g_per_ml


def room_for(sugar: float) -> float:
    """The most % vol beside so much sugar."""
    return 100.0 - sugar * sucrose.volume_taken_ml_per_g(sugar) / 10.0


@given(abvs, temperatures)
def test_without_sugar_it_is_ethanol_and_water(abv, t):
    assert kg_m3(abv, 0.0, t) == pytest.approx(ethanol.density_kg_m3(abv, t), rel=1e-12)


@given(sugars, temperatures)
def test_without_ethanol_it_is_a_syrup(sugar, t):
    """The two sources' waters differ by 0.005 kg/m³."""
    syrup = sucrose.density_kg_m3(sucrose.brix_of(sugar), t)
    assert kg_m3(0.0, sugar, t) == pytest.approx(syrup, abs=0.01)


@given(st.floats(0.0, 0.999), sugars, temperatures)
def test_it_does_not_jump(share, sugar, t):
    abv = share * room_for(sugar)
    here = kg_m3(abv, sugar, t)
    assert kg_m3(abv, sugar + 1e-6, t) == pytest.approx(here, abs=1e-4)
    assert kg_m3(abv + 1e-6 * share, sugar, t) == pytest.approx(here, abs=1e-4)


@given(st.floats(0.0, 0.95), sugars, temperatures)
def test_sugar_makes_it_heavier_and_ethanol_lighter(share, sugar, t):
    abv = share * room_for(sugar + 10.0)
    assert kg_m3(abv, sugar + 10.0, t) > kg_m3(abv, sugar, t)
    assume(abv > 1.0)
    assert kg_m3(abv, sugar, t) < kg_m3(abv - 1.0, sugar, t)


@given(st.floats(10.0, 45.0), st.floats(0.0, 400.0), st.floats(5.0, 39.0))
def test_a_warmer_liqueur_is_lighter(abv, sugar, t):
    assert kg_m3(abv, sugar, t + 1.0) < kg_m3(abv, sugar, t)


def test_the_doubt_grows_with_the_first_real_sweetness():
    dry, sweet = sweetened.spirit_density(40.0, 5.0), sweetened.spirit_density(40.0, 5.1)
    assert (dry.sigma_share, sweet.sigma_share) == (0.0005, 0.005)


def test_the_doubt_without_sugar_is_a_label_s_tolerance():
    """27 CFR 19.356: 0.3 % vol either way."""
    plain = sweetened.spirit_density(40.0)
    off = abs(ethanol.density_kg_m3(40.3) - ethanol.density_kg_m3(40.0)) / 1000.0
    assert plain.g_per_ml * plain.sigma_share == pytest.approx(off, rel=0.05)


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: sweetened.spirit_density(90.0, 500.0),
            "a strength beside 500 g/l of sugar of 90 % vol cannot be used: "
            "it is 0 to 68.8648 % vol.",
        ),
        (
            lambda: sweetened.spirit_density(20.0, -1.0),
            "a sugar content of -1 g/l cannot be used: it is 0 to 1229.05 g/l.",
        ),
        (
            lambda: sweetened.spirit_density(20.0, 100.0, 50.0),
            "a temperature of 50 °C cannot be used: it is 0 to 40 °C.",
        ),
    ],
)
def test_what_cannot_be_is_refused_with_its_value_and_range(call, sentence):
    with pytest.raises(OutsideRange) as refused:
        call()
    assert str(refused.value) == sentence
