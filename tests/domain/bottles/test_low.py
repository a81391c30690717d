"""When a bottle is low."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.bottles.bottle import Level
from tests.worlds import bottle

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
