"""What ice adds. All the figures behind it are *from memory*, so these are no outside checks."""

from __future__ import annotations

from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.drink import mixture
from barkeep.domain.drink.mixture import expected_dilution
from barkeep.domain.ingredients.relations import Technique
from barkeep.errors import OutsideRange

strengths = st.floats(mixture.WEAKEST, mixture.STRONGEST)
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
            assert expected_dilution(technique, abv).share == pytest.approx(printed, abs=0.0007)

    def test_the_sign_is_the_right_one(self):
        for abv, wrong in zip(AT, WRONG_SIGN, strict=True):
            assert wrong == pytest.approx(
                1.567 * (abv / 100) ** 2 + 1.742 * abv / 100 + 0.203, abs=0.001
            )
            assert expected_dilution("shaken", abv).share < wrong - 0.07

    @given(strengths)
    def test_a_shaken_drink_takes_more_than_a_stirred_one(self, abv):
        assert expected_dilution("shaken", abv).share > expected_dilution("stirred", abv).share

    @given(st.floats(15.0, 44.0))
    def test_a_stronger_drink_takes_more(self, abv):
        for technique in ("shaken", "stirred"):
            more = expected_dilution(technique, abv + 1.0).share
            assert more > expected_dilution(technique, abv).share


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
            assert least - 0.05 < expected_dilution(style, abv[end]).share < most + 0.05

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
    def test_within_the_range_the_doubt_is_the_formulas(self, technique, abv):
        expected = expected_dilution(technique, abv)
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

    @pytest.mark.parametrize("abv", [-1.0, 101.0, float("nan")])
    def test_what_is_no_strength_is_refused(self, abv):
        with pytest.raises(OutsideRange):
            expected_dilution("shaken", abv)
