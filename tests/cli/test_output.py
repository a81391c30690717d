"""Numbers as they are given out."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.cli.output import rounded


@pytest.mark.parametrize("number", [-0.0, -0.04, -1e-12])
def test_nothing_is_less_than_nothing(number):
    assert math.copysign(1.0, rounded(number, 1)) == 1.0


@given(st.floats(-1e6, 1e6), st.integers(0, 4))
def test_it_is_rounded_and_never_minus_zero(number, digits):
    found = rounded(number, digits)
    assert found == round(number, digits)
    assert found != 0.0 or math.copysign(1.0, found) == 1.0


def test_what_is_not_known_stays_so():
    assert rounded(None) is None
