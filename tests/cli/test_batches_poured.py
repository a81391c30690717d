"""Batches as a professional would pour them, each case written before it was tried."""

from __future__ import annotations

import re
from dataclasses import dataclass

import pytest

from tests import small_bar


@dataclass(frozen=True)
class Case:
    """What is asked, and what the answer must and must not say."""

    words: str
    said: tuple[str, ...]
    unsaid: tuple[str, ...] = ()


CASES = (
    # Six lemons are lemon juice, and the tap is always there.
    Case("Harrow Sour|--serves|8", (r"47\d ml  Vodka", "from 5 × lemon first"), ("Short of",)),
    Case("Harrow Sour|--from|lemon=6", ("about 10 serves", "6 × lemon give about 228 ml")),
    # The gin ends it: what there is of it is poured, and serves are said low.
    Case(
        "Even Three|--from|gin=200 ml",
        ("about 6 serves", "200 ml  London dry gin"),
        ("7 serves", r"20[1-9] ml"),
    ),
    Case("Even Three|--from|gin=199.9 ml", ("199 ml  London dry gin",), ("200 ml  London",)),
    Case("Harrow Sour|--volume|1 l", ("about 6 serves", "1000 ml in all"), (r"\d\.\d+ serves",)),
    # What is blended is a base without water.
    Case(
        "Snow Rum|--serves|4",
        ("Blend it as it is served, in 1 round: 473 ml of the base", "crushed ice a round"),
        ("ml  Water", "Short of"),
    ),
    # Egg and cream are shaken in, round by round, and eggs are counted.
    Case(
        "Moth|--serves|4",
        ("4 in all; kept apart", "in 2 rounds of 2 serves", "2 × egg white", "from 4 × whole egg"),
        ("ml  Water", "Short of egg", "5 × whole egg"),
    ),
    Case("Cream Step|--serves|4", ("kept apart", "Shake it as it is served"), ("ml  Water",)),
    # Boiling water is there, and nobody ices a toddy.
    Case(
        "Straight Toddy|--serves|4",
        ("470 ml  Boiling water", "from 2 × lemon first", "Make 60 ml of honey syrup from 30 ml"),
        (r"(?i)\bice\b", "(?i)chill", "Short of"),
    ),
    Case("Even Three|--serves|6|--served|hot", ("6 serves of 89 ml, hot",), (r"(?i)\bice\b",)),
    # Just the water that keeps it pourable, and how much less that is.
    Case(
        "Ten to Two|--serves|2|--served|frozen",
        (r"1\d ml  Water", "less than ice would give", "still pours at -18 °C"),
        ("[4-9]. ml  Water",),
    ),
    Case(
        "Harrow Sour|--serves|4|--served|frozen",
        ("would not pour even so: keep it in the fridge",),
        ("ml  Water",),
    ),
    # Bubbles wait; built drinks take their water from the ice in the glass.
    Case(
        "Long Porch|--serves|3",
        ("3 serves of 177 ml, over ice", "it has bubbles: add it as it is served"),
        ("ml  Water", "  [0-9]+ × "),
    ),
    # The words of the spec stay.
    Case("Harrow Sour|--serves|8", ("For one serve the spec says: Shake with ice and fine-str",)),
)


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    """The small bar; a batch writes nothing, so one does for all."""
    return small_bar.build(tmp_path_factory.mktemp("small"))


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.words)
def test_a_batch_is_what_a_professional_pours(barkeep, built, case):
    shown = barkeep("--bar", built, "batch", *case.words.split("|")).out
    for said in case.said:
        assert re.search(said, shown), said
    for unsaid in case.unsaid:
        assert not re.search(unsaid, shown), unsaid


def test_serves_made_things_and_rounds_are_data_too(barkeep, built):
    answer = barkeep("--bar", built, "batch", "Moth", "--from", "gin=200 ml", "--json").answer
    assert answer["serves_shown"] == "about 4 serves"
    assert 4.0 < answer["serves"] < 5.0
    squeezed, separated = answer["made_first"]
    assert (squeezed["ingredient"], squeezed["from"][0]["ingredient"]) == ("Lemon juice", "Lemon")
    assert separated["from"] == [{"ingredient": "Whole egg", "amount": pytest.approx(4.51, 0.01)}]
    rounds = answer["by_rounds"]
    assert (rounds["worked"], rounds["count"], rounds["serves_each"]) == ("shaken", 3, 2.0)
    assert rounds["apart"] == ["2 × egg white"]
