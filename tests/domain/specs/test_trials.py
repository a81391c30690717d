"""Scales and scores read as people write them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.specs.trials import (
    DEFAULT_SCALES,
    Scale,
    Score,
    read_scales,
    read_score,
    show_scales,
    show_score,
    show_scores,
)
from barkeep.errors import InvalidField, UnknownName

SCALES = (Scale("Theme"), Scale("On theme"), Scale("Faults", 5, 0))


@pytest.mark.parametrize(
    ("text", "scales"),
    [
        ("Balance", (Scale("Balance"),)),
        ("Balance 1 to 5, On theme 1-10", (Scale("Balance"), Scale("On theme", 1, 10))),
        ("Balance,Faults 5–0;Nose", (Scale("Balance"), Scale("Faults", 5, 0), Scale("Nose"))),
        ("Balance 0,5 to 2,5", (Scale("Balance", 0.5, 2.5),)),
        ("Lift −2 to 2\nNose", (Scale("Lift", -2, 2), Scale("Nose"))),
        ("Round  2", (Scale("Round 2"),)),
    ],
)
def test_scales_are_read(text, scales):
    assert read_scales(text) == scales


@pytest.mark.parametrize("text", ["", " , ; "])
def test_a_text_without_a_scale_says_how_to_write_one(text):
    with pytest.raises(InvalidField, match="write them as “Balance 1 to 5"):
        read_scales(text)


names = st.from_regex(r"[A-Za-z]{1,8}( [A-Za-z]{1,8})?", fullmatch=True)
numbers = st.integers(-100, 100).map(lambda number: number / 10)


@given(st.lists(st.builds(Scale, names, numbers, numbers), min_size=1, max_size=5).map(tuple))
def test_scales_are_read_back(scales):
    assert read_scales(show_scales(scales)) == scales


def test_the_first_scales_can_be_said():
    assert show_scales(DEFAULT_SCALES) == "Balance 1 to 5, Flavour 1 to 5, On theme 1 to 5"


@pytest.mark.parametrize(
    ("text", "score"),
    [
        ("Ada Theme 4", Score("Ada", "Theme", 4.0)),
        ("Ada on theme 4,5", Score("Ada", "On theme", 4.5)),
        ("Ada Brook faults 0", Score("Ada Brook", "Faults", 0.0)),
        # Who tastes alone need not say who that was.
        ("Theme 4", Score("", "Theme", 4.0)),
        ("on theme 4", Score("", "On theme", 4.0)),
    ],
)
def test_a_score_is_read(text, score):
    assert read_score(text, SCALES) == score


@pytest.mark.parametrize("text", ["", "4", "Ada 4", "Theme"])
def test_a_score_without_a_part_says_how_to_write_one(text):
    with pytest.raises(InvalidField, match="write the scale and a number"):
        read_score(text, SCALES)


def test_a_score_that_is_no_number_is_refused():
    with pytest.raises(InvalidField, match="score cannot be “good”: it is a number such as"):
        read_score("Ada Theme good", SCALES)


def test_a_scale_that_there_is_not_names_those_there_are():
    with pytest.raises(UnknownName, match=r"no scale called “Nose”.*nearest are Theme, On"):
        read_score("Ada Nose 4", SCALES)


def test_scores_are_shown_short():
    assert [show_score(each) for each in (4.0, 3.5, -2.0)] == ["4", "3.5", "−2"]
    assert show_scores({"Nose": 11 / 3, "On theme": 4.0}) == "Nose 3.7, On theme 4"
