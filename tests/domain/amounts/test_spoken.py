"""Amounts in words."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.amounts.spoken import any_amount_at_start, spoken_at_start
from barkeep.errors import UserError
from tests.walked import walked


@walked(
    ("text", "value", "high", "unit", "rest"),
    [
        ("half an ounce of gin", 0.5, None, "oz", " of gin"),
        ("three-quarters of an ounce lime", 0.75, None, "oz", " lime"),
        ("an ounce and a half of rye", 1.5, None, "oz", " of rye"),
        ("one and three quarters ounces rye", 1.75, None, "oz", " rye"),
        ("forty-five ml pisco", 45.0, None, "ml", " pisco"),
        ("twenty two ml pisco", 22.0, None, "ml", " pisco"),
        ("two to three dashes bitters", 2.0, 3.0, "dash", " bitters"),
        ("two or three dashes bitters", 2.0, 3.0, "dash", " bitters"),
        ("a couple of dashes bitters", 2.0, None, "dash", " bitters"),
        ("a few drops saline", 3.0, None, "drop", " saline"),
        ("six mint leaves", 6.0, None, None, " mint leaves"),
        ("equal parts gin", 1.0, None, "part", " gin"),
    ],
)
def test_a_spoken_amount_ends_where_its_unit_does(text, value, high, unit, rest):
    found = spoken_at_start(text)
    assert (found.value, found.high, found.unit) == (value, high, unit)
    assert text[found.end :] == rest


@walked(
    "text",
    ["half a lime", "half and half", "gin", "", "quarter", "a gin", "of an ounce", "equal gin"],
)
def test_what_is_no_spoken_amount_is_left(text):
    assert spoken_at_start(text) is None


def test_figures_are_still_read():
    found = any_amount_at_start("1 1/2 oz gin")
    assert (found.value, found.unit) == (1.5, "oz")


WORDS = (
    "a an and half quarter three of to or ounce ounces dashes two twenty few couple equal parts "
    "gin 2 - , ."
)


@given(st.lists(st.sampled_from(WORDS.split(" ")), max_size=8))
def test_any_run_of_words_is_read_or_left_and_never_read_past_its_end(words):
    text = " ".join(words)
    try:
        found = any_amount_at_start(text)
    except UserError:
        return
    if found is not None:
        assert 0 < found.end <= len(text)
        assert found.value > 0
        assert found.high is None or found.high > found.value
