"""Where a drink freezes; the table itself is checked in `tests/outside`."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.liquids.freezing import FREEZER_C, freezing_point_c, in_freezer
from barkeep.errors import OutsideRange

ORDER = ["frozen", "slush", "borderline", "liquid"]

abvs = st.floats(0.0, 100.0)

sugars = st.floats(0.0, 600.0)


@given(abvs, st.floats(0.0, 20.0), sugars)
def test_a_stronger_drink_freezes_no_higher(abv, more, sugar):
    stronger = min(100.0, abv + more)
    assert freezing_point_c(stronger, sugar) <= freezing_point_c(abv, sugar) + 1e-9


@given(abvs, sugars, st.floats(0.1, 100.0))
def test_sugar_lowers_it(abv, sugar, more):
    sweeter = min(600.0, sugar + more)
    assert freezing_point_c(abv, sweeter) <= freezing_point_c(abv, sugar)


@pytest.mark.computed
def test_water_freezes_at_nothing_and_a_mole_of_sugar_in_it_at_1_86_below():
    assert freezing_point_c(0.0) == 0.0
    # The cryoscopic constant of water, 1.86 K kg/mol: CRC Handbook (from memory).
    # 342.3 g in a kilogram of water come to about 1212 ml.
    per_l = 342.3 / 1.212
    assert freezing_point_c(0.0, per_l) == pytest.approx(-1.86, abs=0.03)


@given(abvs, st.floats(0.0, 20.0), sugars)
def test_a_stronger_drink_comes_out_no_harder(abv, more, sugar):
    stronger = min(100.0, abv + more)
    harder, softer = (ORDER.index(in_freezer(each, sugar)) for each in (abv, stronger))
    assert softer >= harder


@given(abvs, sugars, st.floats(-27.0, 0.0))
def test_the_word_follows_from_the_point(abv, sugar, freezer):
    spare = freezer - freezing_point_c(abv, sugar)
    word = in_freezer(abv, sugar, freezer)
    assert (word == "liquid") == (spare >= 1.0)
    assert (word == "borderline") == (-1.0 <= spare < 1.0)
    assert word != "slush" or abv >= 25.0


@given(st.floats(46.3, 100.0))
def test_strong_spirit_stays_liquid_as_cold_as_may_be_asked(abv):
    assert in_freezer(abv, 0.0, -27.0) == "liquid"
    assert in_freezer(abv, 0.0, FREEZER_C) == "liquid"


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: in_freezer(60.0, 0.0, -40.0),
            "a freezer temperature of -40 °C cannot be used: it is -27 to 0 °C.",
        ),
        (
            lambda: freezing_point_c(120.0),
            "a strength of 120 % vol cannot be used: it is 0 to 100 % vol.",
        ),
        (
            lambda: freezing_point_c(20.0, 700.0),
            "a sugar content of 700 g/l cannot be used: it is 0 to 600 g/l.",
        ),
    ],
)
def test_what_cannot_be_is_refused_with_its_value_and_range(call, sentence):
    with pytest.raises(OutsideRange) as refused:
        call()
    assert str(refused.value) == sentence
