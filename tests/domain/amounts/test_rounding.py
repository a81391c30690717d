"""Quantities printed in a style: rounded to what can be measured, and read back."""

from __future__ import annotations

import locale
from unittest.mock import patch

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.domain.amounts.amount import Amount, parse_amount, show_amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.amounts.rounding import STYLES, rounded, show_as
from barkeep.domain.amounts.units import FRACTIONAL, UNITS, US_UNITS, BarUnits
from tests.walked import walked

OFTEN = settings(max_examples=1000, deadline=None)
MARKS = st.sampled_from([".", ","])
BARS = st.builds(BarUnits, st.sampled_from(["oz", "imp_oz"]), st.floats(0.05, 2.0))


def with_mark(mark):
    """A locale with this decimal mark."""
    return patch.object(locale, "localeconv", lambda: {"decimal_point": mark})


def ml(value, unit, units):
    """So many of a unit in ml."""
    return to_quantity(Amount(float(value), None, unit), "ml", units)


@walked(
    ("volume_ml", "shown"),
    [
        (59.147, "2 oz"),
        (60, "2 oz"),
        (45, "1 ½ oz"),
        (22.5, "¾ oz"),
        (20, "⅔ oz"),
        (15, "½ oz"),
        (10, "⅓ oz"),
        (7.5, "¼ oz"),
        (5, "1 tsp"),
        (3.7, "¾ tsp"),
        (1.6, "2 dashes"),
        (0.8, "1 dash"),
        (0.15, "3 drops"),
        (0, "0 oz"),
        (120, "4 oz"),
        (300, "10 ¼ oz"),
        (750, "25 ½ oz"),
        (5000, "169 oz"),
    ],
)
def test_among_ounces_small_amounts_are_spoons_and_dashes(volume_ml, shown):
    assert show_as(volume_ml, "ml", "oz") == shown


@walked(
    ("volume_ml", "in_ml", "in_cl"),
    [
        (59.147, "60 ml", "6 cl"),
        (44.36, "45 ml", "4.5 cl"),
        (22.18, "22.5 ml", "2.25 cl"),
        (9.86, "10 ml", "1 cl"),
        (7.39, "7.5 ml", "0.75 cl"),
        (4.93, "5 ml", "0.5 cl"),
        (1.23, "1.2 ml", "0.12 cl"),
        (0.8, "0.8 ml", "0.08 cl"),
        (0.05, "0.05 ml", "0.005 cl"),
        (118.3, "120 ml", "12 cl"),
        (473.2, "475 ml", "47.5 cl"),
        (1234, "1230 ml", "123 cl"),
    ],
)
def test_metric_amounts_are_what_a_jigger_or_a_jug_shows(volume_ml, in_ml, in_cl):
    assert show_as(volume_ml, "ml", "ml") == in_ml
    assert show_as(volume_ml, "ml", "cl") == in_cl


def test_the_bars_own_ounce_and_dash_are_meant():
    imperial = BarUnits("imp_oz", 0.3)
    assert show_as(28.413, "ml", "oz", imperial) == "1 oz"
    assert show_as(1.6, "ml", "oz", imperial) == "5 dashes"
    assert rounded(28.413, "oz", imperial).unit == "imp_oz"


def test_weights_and_pieces_stay_what_they_are():
    for style in STYLES:
        assert show_as(12.5, "g", style) == "12.5 g"
        assert show_as(2.5, "each", style) == "2 ½"


@pytest.mark.parametrize("style", ["as_written", "parts"])
def test_a_style_that_is_none_for_a_single_volume_is_taken_for_ml(style):
    assert show_as(44.4, "ml", style) == "45 ml"


@given(st.floats(0, 5000), st.sampled_from(STYLES), BARS, MARKS)
@OFTEN
def test_a_volume_reads_back_within_half_its_step_and_is_printed_the_same(
    volume_ml, style, units, mark
):
    with with_mark(mark):
        shown = show_as(volume_ml, "ml", style, units)
        amount = parse_amount(shown, units)
        again_ml = to_quantity(amount, "ml", units)
        assert show_as(again_ml, "ml", style, units) == shown
    step_ml = ml(rounded(volume_ml, style, units).step, amount.unit, units)
    assert abs(again_ml - volume_ml) <= step_ml / 2 * (1 + 1e-9) + 1e-9
    assert ("." if mark == "," else ",") not in shown


@given(st.floats(0.001, 5000), st.sampled_from(sorted(UNITS)), BARS, MARKS)
@OFTEN
def test_an_amount_as_written_reads_back_within_half_its_step_and_is_printed_the_same(
    value, unit, units, mark
):
    with with_mark(mark):
        shown = show_amount(value, unit, units)
        again = parse_amount(shown, units)
        assert again.unit == unit
        assert show_amount(again.value, unit, units) == shown
    decimals = len(shown.partition(mark)[2].partition(" ")[0])
    step = 10.0**-decimals if decimals else 1 / 8 if unit in FRACTIONAL else 1.0
    assert abs(again.value - value) <= step / 2 * (1 + 1e-9)


@given(st.floats(0.001, 5000), st.sampled_from(["g", "each"]), st.sampled_from(STYLES), MARKS)
@OFTEN
def test_a_weight_or_a_number_of_pieces_is_printed_the_same_once_read_back(
    quantity, unit, style, mark
):
    with with_mark(mark):
        shown = show_as(quantity, unit, style)
        again = to_quantity(parse_amount(shown), unit)
        assert show_as(again, unit, style) == shown
    assert again == pytest.approx(quantity, rel=0.02)


@given(st.floats(0.5, 5000), st.sampled_from(["oz", "ml", "cl"]))
def test_what_is_printed_is_never_a_quarter_off(volume_ml, style):
    """But for a dash and its half: whoever pours less than half a teaspoon pours dashes."""
    found = rounded(volume_ml, style)
    printed_ml = ml(found.value, found.unit, US_UNITS)
    least = 0.6 if found.unit == "dash" else 0.85
    assert least <= printed_ml / volume_ml <= 1.0 / least


@given(st.floats(0, 5000), st.floats(0, 5000), st.sampled_from(["oz", "ml", "cl"]), BARS)
def test_more_is_never_printed_as_less(one_ml, other_ml, style, units):
    less, more = (rounded(each, style, units) for each in sorted((one_ml, other_ml)))
    assert ml(less.value, less.unit, units) <= ml(more.value, more.unit, units) + 1e-9
