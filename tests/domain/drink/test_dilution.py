"""What ice adds. All the figures behind it are *from memory*, so these are no outside checks."""

from __future__ import annotations

from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.drink import mixture as dilution
from barkeep.domain.drink.mixture import expected_dilution, fitted_dilution, least_dilution
from barkeep.domain.ingredients.uses import Technique
from barkeep.errors import OutsideRange

strengths = st.floats(dilution.WEAKEST, dilution.STRONGEST)

techniques = st.sampled_from(get_args(Technique))


# Arnold, Liquid Intelligence, 2014, p. 123, as tabulated from the formulas (from memory).
AT = (15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0)

TABLE = {
    "stirred": (0.305, 0.346, 0.381, 0.410, 0.433, 0.450, 0.461),
    "shaken": (0.429, 0.489, 0.541, 0.585, 0.621, 0.649, 0.670),
}

WRONG_SIGN = (0.500, 0.614, 0.736, 0.867, 1.005, 1.151, 1.304)
"""Shaken, with +1.567, as it has been misprinted."""


# Arnold, pp. 125-126 (from memory): ml and % vol before; share added; ml and % vol after.
RANGES = {
    "stirred": ((88, 97), (29, 43), (0.41, 0.49), (130, 142), (21, 29)),
    "shaken": ((98, 112), (23, 31.5), (0.51, 0.60), (156, 178), (15.0, 19.7)),
    "built": ((70, 73), (34, 40), (0.24, 0.24), (88, 90), (27, 32)),
}


@pytest.mark.computed
class TestFormulas:
    @pytest.mark.parametrize("technique", TABLE)
    def test_the_table_within_rounding(self, technique):
        for abv, printed in zip(AT, TABLE[technique], strict=True):
            assert fitted_dilution(technique, abv) == pytest.approx(printed, abs=0.0007)

    def test_the_sign_is_the_right_one(self):
        for abv, wrong in zip(AT, WRONG_SIGN, strict=True):
            assert wrong == pytest.approx(
                1.567 * (abv / 100) ** 2 + 1.742 * abv / 100 + 0.203, abs=0.001
            )
            assert fitted_dilution("shaken", abv) < wrong - 0.07

    @given(strengths)
    def test_a_shaken_drink_takes_more_than_a_stirred_one(self, abv):
        assert fitted_dilution("shaken", abv) > fitted_dilution("stirred", abv)

    @given(st.floats(15.0, 44.0))
    def test_a_stronger_drink_takes_more(self, abv):
        for technique in ("shaken", "stirred"):
            assert fitted_dilution(technique, abv + 1.0) > fitted_dilution(technique, abv)

    def test_there_is_no_formula_for_a_blender(self):
        with pytest.raises(ValueError, match="no formula for a drink that is blended"):
            fitted_dilution("blended", 20.0)

    @pytest.mark.parametrize("abv", [14.9, 45.1])
    def test_beyond_what_they_were_fitted_to_they_are_refused(self, abv):
        with pytest.raises(OutsideRange) as refused:
            fitted_dilution("stirred", abv)
        assert str(refused.value) == (
            f"a strength of {abv:g} % vol cannot be used: it is 15 to 45 % vol."
        )


@pytest.mark.computed
class TestPublishedRanges:
    @pytest.mark.parametrize("style", RANGES)
    def test_each_row_agrees_with_itself(self, style):
        """Volume times and strength over one more than the dilution, all in the printed ranges."""
        volume, abv, added, served, after = RANGES[style]
        for end in (0, 1):
            assert volume[end] * (1.0 + added[end]) == pytest.approx(served[end], rel=0.06)
            assert abv[end] / (1.0 + added[end]) == pytest.approx(after[end], rel=0.06)

    @pytest.mark.parametrize("style", ["stirred", "shaken"])
    def test_the_formulas_fall_into_the_ranges(self, style):
        _, abv, (least, most), _, _ = RANGES[style]
        for end in (0, 1):
            assert least - 0.05 < fitted_dilution(style, abv[end]) < most + 0.05

    def test_building_is_the_middle_of_its_range(self):
        assert expected_dilution("built", 36.0).share == RANGES["built"][2][0]


class TestExpected:
    @given(techniques, st.floats(0.0, 100.0))
    def test_there_is_an_answer_for_every_drink(self, technique, abv):
        expected = expected_dilution(technique, abv)
        assert 0.0 <= expected.share <= 0.9
        assert expected.sigma >= 0.0
        assert expected.basis
        assert (expected.sigma == 0.0) == (technique == "hot")

    @given(st.sampled_from(["shaken", "stirred"]), strengths)
    def test_within_the_range_it_is_the_formula(self, technique, abv):
        expected = expected_dilution(technique, abv)
        assert expected.share == fitted_dilution(technique, abv)
        assert expected.sigma == pytest.approx(0.15 * expected.share)
        assert expected.note == ""

    @pytest.mark.parametrize("abv", [0.0, 8.0, 50.0, 70.0])
    def test_beyond_it_there_is_more_doubt_and_a_note(self, abv):
        expected = expected_dilution("shaken", abv)
        assert expected.sigma == pytest.approx(0.3 * expected.share)
        assert expected.note == (
            f"the dilution formula was fitted to 15 to 45 % vol, and this is {abv:.0f} % vol"
        )

    @given(st.floats(0.0, 100.0))
    def test_an_unknown_method_counts_as_built_and_says_so(self, abv):
        unknown, built = expected_dilution("unknown", abv), expected_dilution("built", abv)
        assert (unknown.share, unknown.sigma) == (built.share, built.sigma)
        assert "does not say how it is chilled" in unknown.note

    def test_every_basis_says_that_it_is_no_measurement(self):
        for technique in get_args(Technique):
            basis = expected_dilution(technique, 30.0).basis
            assert any(each in basis for each in ("from memory", "common practice", "no ice"))

    @given(techniques, st.floats(0.0, 100.0))
    def test_the_same_water_as_a_share_of_what_is_served(self, technique, abv):
        """100 ml and the water: 45 % added is 31 % of the drink."""
        added = expected_dilution(technique, abv)
        water = 100.0 * added.share
        assert added.share_of_final * (100.0 + water) == pytest.approx(water)
        assert dilution.Dilution(0.45, 0.0, "").share_of_final == pytest.approx(0.31, abs=0.001)

    @pytest.mark.parametrize("abv", [-1.0, 101.0, float("nan")])
    def test_what_is_no_strength_is_refused(self, abv):
        with pytest.raises(OutsideRange):
            expected_dilution("shaken", abv)


class TestHeatBalance:
    @pytest.mark.computed
    @pytest.mark.parametrize(("mass", "to", "ice"), [(96.2, -5.0, 33.0), (97.4, -3.0, 30.0)])
    def test_100_ml_from_20_c(self, mass, to, ice):
        """Of 30 and of 20 % vol, with some 4.2 to 4.3 J/gK."""
        assert mass * least_dilution(20.0, to, 4.25) == pytest.approx(ice, abs=0.5)

    @given(st.floats(0.0, 40.0), st.floats(-10.0, 40.0), st.floats(3.5, 4.4))
    def test_heat_given_is_heat_taken(self, start, end, heat):
        if end > start:
            with pytest.raises(OutsideRange):
                least_dilution(start, end, heat)
            return
        ice = least_dilution(start, end, heat)
        # Heat of fusion and heat of water: CRC Handbook (from memory).
        assert ice * (333.55 + 4.2 * end) == pytest.approx(heat * (start - end))

    @given(strengths)
    def test_it_is_below_what_bars_measure(self, abv):
        assert least_dilution(20.0, -2.0) < fitted_dilution("stirred", abv)

    def test_colder_than_ice_gets_a_drink_is_refused(self):
        with pytest.raises(OutsideRange) as refused:
            least_dilution(20.0, -15.0)
        assert str(refused.value) == (
            "a temperature after of -15 °C cannot be used: it is -10 to 20 °C."
        )


def test_a_hair_beyond_the_limit_is_the_limit():
    """45 % vol worked out from volumes may come to 45.00000000000001."""
    hair = 45.0 * (1.0 + 2e-15)
    assert hair > 45.0
    beyond, at = expected_dilution("shaken", hair), expected_dilution("shaken", 45.0)
    assert (beyond.note, beyond.sigma) == (at.note, pytest.approx(at.sigma))
    assert expected_dilution("shaken", 45.1).note
