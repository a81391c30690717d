"""Bottles and counts in another language: all that is said, and nothing that is kept."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.bottles.bottle import STATE_WORDS, Level
from barkeep.domain.bottles.counting import as_expected, at_share, tenths
from barkeep.domain.bottles.level_words import Comparison, certainty, sentence
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.translation import speak_through, tr
from tests import worlds

GIN = worlds.bottle(1, "london-dry-gin", 315.0)


@pytest.fixture(autouse=True)
def marked():
    """What is said stands in brackets."""
    speak_through(lambda words, _about: f"[{words}]")
    yield
    speak_through(None)


def test_every_shape_that_is_shipped_is_named_and_described():
    for shape in shipped_shapes().values():
        assert (shape.name_said, shape.about_said) == (f"[{shape.name}]", f"[{shape.about}]")
    made_up = replace(shipped_shapes()["general"], name="wonky jug")
    assert made_up.name_said == "wonky jug"


def test_a_count_is_kept_in_the_words_it_always_had():
    for typed, words in ((tenths(GIN, 3), "3 tenths"), (as_expected(GIN), "expected")):
        assert (typed.words, typed.said) == (words, f"[{words}]")
    pieces = replace(GIN, product=replace(GIN.product, unit="each", size=6.0))
    typed = at_share(pieces, 0.5)
    assert typed.words == typed.said == "3"


def test_levels_and_states_are_said():
    assert certainty("tenths", 35.0, "ml", 700.0) == "[judged in tenths], ± 70 ml"
    said = sentence(Comparison(315.0, 10.0, 210.0, 10.0), "ml")
    assert said.startswith("210 ml ± 20, [105 ml less than expected] (315 ml)")
    assert [tr(STATE_WORDS[Level(0.0, state).state]) for state in STATE_WORDS] == [
        "[sealed]",
        "[open]",
        "[empty]",
    ]
