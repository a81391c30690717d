"""When a bottle is low, past its use-by date, or due."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from barkeep.domain.bottles.bottle import Level
from tests.worlds import TODAY, bottle

FIFTH = 140.0


@pytest.mark.parametrize(
    ("left", "state", "low"),
    [
        (FIFTH, "open", False),
        (FIFTH - 1, "open", True),
        (FIFTH - 1, "sealed", False),
        (0.0, "empty", False),
    ],
)
def test_an_open_bottle_below_a_fifth_is_low(left, state, low):
    assert replace(bottle(1, "gin", 0.0), level=Level(left, state)).is_low is low


@pytest.mark.parametrize(
    ("days", "past", "due"),
    [(-1, True, True), (0, False, True), (3, False, True), (4, False, False), (None, False, False)],
)
def test_what_is_within_three_days_of_its_date_is_due(days, past, due):
    last = None if days is None else TODAY + timedelta(days=days)
    there = replace(bottle(1, "gin", 300.0), use_by=last)
    assert (there.is_past(TODAY), there.is_due(TODAY)) == (past, due)
    nothing = replace(there, level=Level(0.0, "empty"))
    assert not nothing.is_past(TODAY) and not nothing.is_due(TODAY)
