"""Searching the book by what was typed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.specs.query import facts_of, parse_query
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import BadQuery
from tests.walked import walked

SLEEPER = Spec(
    "Upper Berth",
    (Line("", "white-rum", 2.0, None, "oz", 60.0), Line("", "egg-white", 1.0, None, "each", 32.0)),
    "Shake.",
    "shaken",
    "small coupe",
    tags=("Winter", "house"),
)


def found(text, tree, **facts):
    return parse_query(text, tree).finds(facts_of(SLEEPER, **facts))


@walked(
    "text",
    [
        "",
        "berth",
        "upper rum",
        '"upper berth"',
        "-gin",
        "with:rum",
        "with:spirit",
        'with:"white rum"',
        "without:gin",
        "tag:house",
        "season:winter",
        "glass:coupe",
        "made:shaken",
        "winter",
        "-due",
        "with:",
        "berth strength:",
    ],
)
def test_a_spec_is_found_by(text, tree):
    assert found(text, tree)


@pytest.mark.parametrize(
    "text",
    ["lower", '"berth upper"', "-berth", "with:gin", "without:rum", "tag:summer", "made:stirred"],
)
def test_a_spec_is_not_found_by(text, tree):
    assert not found(text, tree)


@walked(
    ("text", "hit"),
    [
        ("strength:>15", True),
        ("strength:>=18", True),
        ("strength:<18", True),
        ("strength:18..24", True),
        ("strength:18-24", True),
        ("strength:..17", False),
        ("strength:18.5", True),
        ("strength:20", False),
        ("strength:>20", False),
        ("strength:medium", True),
        ("strength:Medium", True),
        ("strength:light", False),
        ("strength:strong", False),
        ("-strength:strong", True),
    ],
)
def test_strength_is_asked_in_percent(text, hit, tree):
    assert found(text, tree, abv_percent=18.0) is hit


@pytest.mark.parametrize(
    ("abv_percent", "word"),
    [
        *((0.0, "free"), (0.49, "free"), (0.5, "light"), (11.99, "light"), (12.0, "medium")),
        *((19.99, "medium"), (20.0, "strong"), (60.0, "strong")),
    ],
)
def test_each_strength_has_one_word(abv_percent, word, tree):
    words = ("free", "light", "medium", "strong")
    hits = [each for each in words if found(f"strength:{each}", tree, abv_percent=abv_percent)]
    assert hits == [word]
    assert not found(f"strength:{word}", tree, abv_percent=None)


def test_what_is_not_known_is_not_found(tree):
    assert not found("strength:>0", tree)
    assert not found("due", tree)


def test_due_counts_days(tree):
    assert found("due", tree, due_in=7)
    assert not found("due", tree, due_in=8)
    assert found("due:14", tree, due_in=8)


def test_a_query_tells_what_it_asks(tree):
    assert parse_query("rum due strength:>20", tree).asks == {"due", "strength"}


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("with:unicorn", "“with:unicorn” finds nothing: no ingredient is called that."),
        ("strength:stark", "write a strength such as >25, <12 or 18..24, in % vol, or light"),
        ("strength:24..18", "the lower strength comes first"),
        ("due:soon", "write a number of days, such as due:14"),
    ],
)
def test_a_term_that_means_nothing_is_said(text, sentence, tree):
    with pytest.raises(BadQuery) as caught:
        parse_query(text, tree)
    assert sentence in str(caught.value)


@given(st.text(max_size=60))
def test_any_text_is_a_query_or_a_clear_refusal(tree, text):
    try:
        parse_query(text, tree).finds(facts_of(SLEEPER))
    except BadQuery as error:
        assert str(error)
