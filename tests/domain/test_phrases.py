"""Phrases in free words: what is meant, what only sounds like it, and what is said not to be."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.phrases import Phrases, folded, is_findable
from tests.walked import walked


def found(words: str, *said: str, unless: tuple[str, ...] = ()) -> bool:
    return Phrases(said, unless).found_in(folded(words))


@walked(
    ("phrase", "words"),
    [
        ("flame", "Hold a flame to it"),
        ("flambe", "Flambé the peel"),
        ("dry ice", "a piece of dry-ice"),
        ("dry ice", "Dry\n  ICE"),
        ("ignit*", "ignite it; igniting"),
        ("set * alight", "Set it alight."),
        ("garlic ... oil", "garlic oil"),
        ("garlic ... oil", "garlic cloves in warm olive oil"),
        ("copper * lined", "a copper mug lined with tin"),
        ("cook's torch", "with a cook’s torch"),
    ],
)
def test_a_phrase_is_found(phrase, words):
    assert found(words, phrase)


@walked(
    ("phrase", "words"),
    [
        ("flame", "flamenco"),
        ("flame", "inflame the flamed"),
        ("dry ice", "Shake dry, ice after"),
        ("dry ice", "Keep it dry. Ice comes last"),
        ("set * alight", "set alight"),
        ("set * alight", "set the sugar cube alight"),
        ("garlic ... oil", "garlic, and then the oil"),
        ("garlic ... oil", "garlic one two three four five oil"),
        ("oil ... garlic", "garlic oil"),
        ("ignit*", "reignite"),
        ("a.c", "abc"),
    ],
)
def test_what_only_looks_like_it_is_not(phrase, words):
    assert not found(words, phrase)


@pytest.mark.parametrize(
    "words",
    [
        "never flame it",
        "no flame",
        "without a flame",
        "Don’t use a flame",
        "do not add any flame",
        "instead of the flame",
        "smoke free of flame",
    ],
)
def test_what_is_said_not_to_be_is_not(words):
    assert not found(words, "flame")


@pytest.mark.parametrize(
    "words",
    [
        "no lid, flame",
        "Never. Flame the peel",
        "never stir the flame",
        "No flame before the stir, then flame it",
        "nothing but flame",
    ],
)
def test_a_not_reaches_only_its_own_phrase(words):
    assert found(words, "flame")


def test_a_phrase_inside_a_disarming_one_does_not_count_but_another_does():
    unless = ("charcoal filter*",)
    assert not found("charcoal-filtered vodka", "charcoal", unless=unless)
    assert found("charcoal-filtered vodka and charcoal", "charcoal", unless=unless)


@walked("phrase", ["", " ", "*", "...", "a *", "it", "... oil", "garlic ..."])
def test_a_phrase_that_says_too_little_is_known(phrase):
    assert not is_findable(phrase)


@pytest.mark.parametrize("phrase", ["oil", "light the *", "* flame", "garlic ... oil", "flam*"])
def test_a_phrase_that_says_enough_is_known(phrase):
    assert is_findable(phrase)


WORDS = st.lists(st.sampled_from(("abc", "abd", "bcd", "cde", "def")), min_size=1, max_size=3).map(
    " ".join
)


@given(st.lists(WORDS, min_size=1, max_size=4), st.lists(WORDS, max_size=6), st.integers(0, 9))
def test_whatever_phrase_is_there_is_found_wherever_it_stands(phrases, around, at):
    """The quick look for a piece of a phrase loses none of the phrases themselves."""
    for phrase in phrases:
        parts = [*around[:at], phrase, *around[at:]]
        assert Phrases(tuple(phrases)).found_in(", ".join(parts))


@given(st.lists(WORDS, min_size=1, max_size=4), st.lists(WORDS, max_size=6))
def test_nothing_is_found_that_is_not_there(phrases, words):
    text = ", ".join(words)
    there = any(f" {phrase} " in f" {part} " for phrase in phrases for part in words)
    assert Phrases(tuple(phrases)).found_in(text) == there
