"""The count of a shelf, as values: what is found, taken back, and left out."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

import pytest

from barkeep.domain.amounts.units import US_UNITS
from barkeep.domain.bottles.bottle import TENTHS_SIGMA, Bottle, Level
from barkeep.domain.bottles.counting import (
    CountRow,
    ShelfCount,
    as_expected,
    at_share,
    exactly,
    found_at,
    tenths,
)
from barkeep.domain.bottles.levels import EMPTY_SIGMA, MeasuredLevel
from barkeep.errors import LevelAboveSize
from tests import worlds
from tests.domain.bottles.bottles_to_measure import TREE, container

GIN = worlds.bottle(1, "london-dry-gin", 315.0)

RUM = worlds.bottle(2, "white-rum", 700.0)

SEALED = replace(worlds.bottle(3, "red-bitter", 700.0), level=Level(700.0, "sealed"))


def pieces(left: float) -> Bottle:
    made = worlds.bottle(4, "lime", left)
    return replace(made, product=replace(made.product, unit="each", size=6.0))


def test_tenths_are_judged_by_eye_and_an_empty_bottle_is_plain_to_see():
    assert tenths(GIN, 3).measured == MeasuredLevel(210.0, "tenths", TENTHS_SIGMA * 700.0)
    assert tenths(GIN, 0).measured == MeasuredLevel(0.0, "tenths", EMPTY_SIGMA)
    assert [tenths(GIN, many).words for many in (0, 1, 3, 10)] == [
        "empty",
        "1 tenth",
        "3 tenths",
        "full",
    ]


def test_pieces_are_counted_without_doubt():
    assert tenths(pieces(4), 10).measured == MeasuredLevel(6.0, "volume", 0.0)
    assert at_share(pieces(4), 0.4).measured == MeasuredLevel(2.0, "volume", 0.0)
    assert as_expected(pieces(4)).measured == MeasuredLevel(4.0, "volume", 0.0)


def test_a_click_takes_the_nearest_tenth():
    assert at_share(GIN, 0.44) == tenths(GIN, 4)
    assert at_share(GIN, 0.46) == tenths(GIN, 5)


def test_a_whole_seal_leaves_nothing_to_judge():
    assert as_expected(SEALED).measured == MeasuredLevel(700.0, "tenths", 0.0)
    assert found_at(SEALED, 690.0).sigma == TENTHS_SIGMA * 700.0
    assert as_expected(GIN).measured == MeasuredLevel(315.0, "tenths", TENTHS_SIGMA * 700.0)


def test_only_an_amount_can_be_typed_again():
    written = exactly("  812 ml ", container(size=1000.0), US_UNITS)
    assert (written.words, written.measured.amount) == ("812 ml", 812.0)
    judged = [tenths(GIN, 3), as_expected(GIN), at_share(GIN, 0.4)]
    assert [each.is_amount for each in (written, at_share(pieces(4), 0.4), *judged)] == [
        True,
        True,
        False,
        False,
        False,
    ]


def test_an_amount_above_the_bottle_is_refused():
    with pytest.raises(LevelAboveSize):
        exactly("800 ml", container(), US_UNITS)


def test_a_count_is_taken_again_and_taken_back():
    begun = ShelfCount().taken(1, tenths(GIN, 4)).taken(2, tenths(RUM, 9))
    again = begun.taken(1, tenths(GIN, 5)).dropped(2)
    assert {key: each.amount for key, each in begun.levels.items()} == {1: 280.0, 2: 630.0}
    assert {key: each.amount for key, each in again.levels.items()} == {1: 350.0}
    assert 1 in again and 2 not in again and len(again) == 1
    assert again.dropped(7) == again


def test_a_bottle_that_is_gone_or_smaller_takes_its_count_along():
    count = ShelfCount().taken(1, tenths(GIN, 4)).taken(2, tenths(RUM, 9))
    smaller = replace(RUM, product=replace(RUM.product, size=500.0))
    assert set(count.kept_for([RUM]).levels) == {2}
    assert set(count.kept_for([GIN, smaller]).levels) == {1}


def test_a_count_begins_with_the_open_liquids_along_the_shelf():
    shelf = [replace(GIN, position=2), replace(RUM, position=1), SEALED, pieces(4)]
    count = ShelfCount()
    assert [each.bottle.id for each in count.rows(shelf, TREE, everything=False)] == [2, 1]
    assert len(count.rows(shelf, TREE, everything=True)) == 4
    assert count.left_out(shelf) == 2


def test_a_count_takes_the_sealed_bottles_that_came_in_since_the_last_one():
    before, after, then = date(2026, 11, 19), date(2026, 11, 20), datetime(2026, 11, 20, 18)
    counted = replace(GIN, level=replace(GIN.level, counted=then))
    bought = replace(SEALED, received=after)
    known = replace(SEALED, id=5, received=before)
    seen = replace(SEALED, id=6, received=after, level=replace(SEALED.level, counted=then))
    shelf = [counted, bought, known, seen, replace(pieces(4), received=after)]
    count = ShelfCount()
    assert [each.bottle.id for each in count.rows(shelf, TREE, everything=False)] == [1, 3]
    assert count.left_out(shelf) == 1  # the open one
    never = [replace(each, level=replace(each.level, counted=None)) for each in shelf[:3]]
    assert [each.bottle.id for each in count.rows(never, TREE, everything=False)] == [1, 3, 5]


def test_what_was_counted_stays_in_view():
    shelf = [GIN, RUM, SEALED]
    count = ShelfCount().taken(3, as_expected(SEALED))
    assert [each.bottle.id for each in count.rows(shelf, TREE, everything=False)] == [1, 2, 3]
    assert [each.bottle.id for each in count.counted_rows(shelf, TREE)] == [3]
    assert count.left_out(shelf) == 2


def test_a_difference_is_flagged_beyond_the_doubt_of_both():
    row = CountRow(GIN, "London dry gin")
    assert (row.compared, row.difference, row.flagged) == (None, 0.0, False)
    found = ShelfCount().taken(1, tenths(GIN, 1)).row(row)
    assert (found.expected, found.difference, found.flagged) == (315.0, 245.0, True)
