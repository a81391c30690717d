"""Expected and counted, each with its doubt, and whether the two can be told apart."""

from __future__ import annotations

from datetime import datetime
from math import hypot

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bottles.bottle import Entry, expected_sigma, fill_sigma, fold
from barkeep.domain.bottles.level_words import (
    Comparison,
    certainty,
    difference,
    doubt_of,
    in_doubt,
    reason,
    sentence,
    with_doubt,
)
from tests.walked import walked

NOON = datetime(2026, 11, 21, 12, 0)


def ledger(*written: tuple) -> list[Entry]:
    """Entries from (kind, amount) and, for a count, (kind, amount, method, sigma)."""
    return [
        Entry(number, 1, kind, NOON, *values) for number, (kind, *values) in enumerate(written, 1)
    ]


class TestExpectedSigma:
    def test_a_new_bottle_is_as_sure_as_its_maker_s_fill(self):
        assert expected_sigma(ledger(("receive", 700.0))) == fill_sigma(700.0)
        assert fill_sigma(700.0) == pytest.approx(8.08, abs=0.01)

    def test_a_count_sets_it_and_each_pour_adds_a_little(self):
        counted = ("count", 400.0, "weight", 3.0)
        assert expected_sigma(ledger(("receive", 700.0), counted)) == 3.0
        poured = ledger(("receive", 700.0), counted, ("pour", 50.0), ("pour", 50.0))
        assert expected_sigma(poured) == pytest.approx(hypot(3.0, 1.0, 1.0, 1.0, 1.0))

    def test_large_pours_are_doubted_by_a_share(self):
        poured = ledger(("count", 600.0, "volume", 0.0), ("pour", 500.0))
        assert expected_sigma(poured) == pytest.approx(hypot(10.0, 1.0))

    def test_what_was_undone_does_not_count(self):
        entries = ledger(("count", 600.0, "volume", 5.0), ("pour", 500.0))
        undone = [*entries, Entry(3, 1, "reverse", NOON, reverses=2)]
        assert expected_sigma(undone) == 5.0

    def test_an_empty_bottle_is_in_no_doubt(self):
        assert expected_sigma(ledger(("receive", 700.0), ("pour", 45.0), ("empty", 0.0))) == 0.0

    def test_pieces_are_in_no_doubt(self):
        entries = ledger(("receive", 12.0), ("pour", 3.0), ("count", 8.0, "volume", 0.0))
        assert expected_sigma(entries, "each") == 0.0

    def test_a_correction_and_an_opening_change_nothing(self):
        entries = ledger(("count", 400.0, "tenths", 35.0), ("open", 0.0), ("correct", -20.0))
        assert expected_sigma(entries) == 35.0

    @given(st.lists(st.floats(0.1, 60.0), max_size=12))
    def test_doubt_only_grows_from_count_to_count(self, pours):
        entries = ledger(("count", 700.0, "weight", 2.0), *(("pour", each) for each in pours))
        doubts = [expected_sigma(entries[:many]) for many in range(1, len(entries) + 1)]
        assert doubts == sorted(doubts)

    def test_the_fold_carries_it_beside_the_last_count_s_own(self):
        level = fold(ledger(("count", 400.0, "tenths", 35.0), ("pour", 45.0)))
        assert (level.sigma, level.method) == (35.0, "tenths")
        assert level.expected_sigma == pytest.approx(hypot(35.0, 0.9, 1.0))


class TestSealedBottles:
    """A scale never meets 700 ml to the drop; that alone does not break a seal."""

    @pytest.mark.parametrize("method", ["weight", "height"])
    def test_within_the_doubt_it_is_still_sealed(self, method):
        level = fold(ledger(("receive", 700.0), ("count", 691.0, method, 3.0)))
        assert (level.state, level.amount) == ("sealed", 691.0)

    def test_beyond_it_somebody_has_opened_it(self):
        level = fold(ledger(("receive", 700.0), ("count", 670.0, "weight", 3.0)))
        assert (level.state, level.opened) == ("open", NOON.date())

    def test_by_eye_or_jug_only_the_very_same_is_untouched(self):
        for method in ("tenths", "volume"):
            level = fold(ledger(("receive", 700.0), ("count", 691.0, method, 35.0)))
            assert level.state == "open"


class TestComparison:
    @walked(
        ("expected", "sigma_before", "counted", "sigma", "told_apart"),
        [
            (315, 35, 315, 35, False),
            (315, 35, 217, 35, False),  # 98 of ± 99
            (315, 35, 215, 35, True),
            (315, 35, 415, 35, True),
            (315, 0, 305, 5, False),  # just two sigmas
            (315, 0, 304.9, 5, True),
            (6, 0, 5, 0, True),
            (6, 0, 6, 0, False),
        ],
    )
    def test_two_sigmas_of_both_together(self, expected, sigma_before, counted, sigma, told_apart):
        compared = Comparison(expected, sigma_before, counted, sigma)
        assert compared.told_apart is told_apart
        assert compared.variance == expected - counted

    @given(st.floats(0, 700), st.floats(0, 50), st.floats(0, 700), st.floats(0, 50))
    def test_either_way_round(self, one, one_sigma, other, other_sigma):
        here = Comparison(one, one_sigma, other, other_sigma)
        there = Comparison(other, other_sigma, one, one_sigma)
        assert here.told_apart == there.told_apart
        assert here.variance == -there.variance
        assert here.doubt == there.doubt == pytest.approx(2 * hypot(one_sigma, other_sigma))


class TestWords:
    def test_a_difference_beyond_doubt(self):
        compared = Comparison(315, 35, 215, 35)
        assert difference(compared, "ml") == "100 ml less than expected"
        assert reason(compared, "ml") == "beyond the doubt of ± 99 ml"
        assert sentence(compared, "ml") == (
            "215 ml ± 70, 100 ml less than expected (315 ml): beyond the doubt of ± 99 ml"
        )
        assert difference(Comparison(315, 35, 415, 35), "ml") == "100 ml more than expected"

    def test_a_difference_within_doubt_is_still_shown(self):
        compared = Comparison(315, 35, 308, 3)
        assert sentence(compared, "ml") == (
            "308 ml ± 6, as expected (315 ml): 7 ml less, within ± 70 ml"
        )

    def test_no_difference_at_all(self):
        assert sentence(Comparison(60, 5, 60, 5), "ml") == "60 ml ± 10, as expected (60 ml)"
        assert reason(Comparison(60, 5, 60, 5), "ml") == "to the drop"
        assert reason(Comparison(6, 0, 6, 0), "each") == "exactly"

    def test_pieces_in_no_doubt(self):
        compared = Comparison(6, 0, 5, 0)
        assert sentence(compared, "each") == "5, 1 less than expected (6)"
        assert reason(compared, "each") == "counted exactly"

    def test_the_doubt_stands_the_same_way_everywhere(self):
        assert doubt_of(35.0) == 70.0
        assert in_doubt(35.0, "ml") == "± 70 ml"
        assert with_doubt(280.0, 35.0, "ml") == "280 ml ± 70"
        assert certainty("tenths", 35.0, "ml") == "judged in tenths, ± 70 ml"
        assert certainty(None, None, "ml") == in_doubt(0.0, "ml") == ""
        assert with_doubt(4.0, 0.0, "each") == "4"
