"""Every question of the written-down key is asked, and properties that hold for every answer."""

from __future__ import annotations

import re
from collections.abc import Iterator
from importlib import import_module
from types import FunctionType

import pytest

from tests.second_bar.asking import HERE, NOT_SAFE, flat, has, is_exact

ASKED_IN = (
    *("what_is_poured", "going_off", "garnish_and_fruit", "balance_and_batches"),
    *("buying_and_filming", "cautions_and_tonight"),
)
GENERAL = ("Rum", "Gin", "Whisky", "Vodka", "Brandy")
ONLY_WHEN_ASKED = ("Bulwark", "Pith", "Signal", "Tarpot", "Cane Row", "Peat Drift")
LIMITING = (
    *(("Negroni", "London dry gin", "Thimble"), ("Daiquiri", "white rum", "Low Water")),
    *(("Manhattan", "rye whiskey", "Split Gate"), ("Bamboo", "fino sherry", "Salt Pan")),
    *(("Harrow Sour", "vodka", "Plain Harrow"), ("Margarita", "triple sec", "Vask triple")),
    *(("Moth", "London dry gin", "Thimble"), ("Frozen Daiquiri", "white rum", "Low Water")),
)
"""A drink, an ingredient that limits a batch of it, and the bottle of that."""


def whys_of_the_key() -> dict[int, str]:
    """Each question's number and why."""
    text = (HERE / "answer_key.md").read_text(encoding="utf-8")
    parts = re.split(r"^### (\d+)\. ", text, flags=re.MULTILINE)[1:]
    pairs = zip(parts[::2], parts[1::2], strict=True)
    return {int(number): part.partition("- **Why:** ")[2].strip() for number, part in pairs}


def docstrings() -> Iterator[str]:
    """What each test says that it asks and why, in one line."""
    for name in ASKED_IN:
        for each in vars(import_module(f"tests.second_bar.test_{name}")).values():
            if isinstance(each, FunctionType) and each.__name__.startswith("test_"):
                yield " ".join((each.__doc__ or "").split())


def test_every_question_of_the_key_is_asked_for_its_reason():
    asked = set(docstrings())
    whys = whys_of_the_key()
    assert len(whys) == 40
    assert asked == {f"{number}. {why}" for number, why in whys.items()}


def test_no_answer_pours_what_is_not_safe(bar):
    for drink in bar.drinks().values():
        for line in drink["lines"]:
            assert line["bottle"] not in NOT_SAFE, f"{drink['spec']}: {line['as_written']}"
        for poured in drink.get("then", []):
            assert not [each for each in NOT_SAFE if each in flat(poured)], drink["spec"]


def test_no_shoot_draws_what_is_not_safe(changed):
    drinks = ("Straight Toddy", "Gin Sour", "Night Boat", "Cream Step", "Clover Club")
    drawn = flat(changed.shoot(dict.fromkeys(drinks, 1)).check["draws"])
    assert not [each for each in NOT_SAFE if each in drawn]


def test_a_general_want_never_draws_what_is_poured_only_when_asked(bar):
    for drink in bar.drinks().values():
        for line in drink["lines"]:
            if line["wanted"] in GENERAL and line["bottle"] is not None and is_exact(line):
                special = [each for each in ONLY_WHEN_ASKED if each in line["bottle"]]
                assert not special, f"{drink['spec']}: {line['as_written']}"


@pytest.mark.parametrize(("name", "limit", "title"), LIMITING)
def test_a_batch_of_all_there_is_takes_no_more_and_nearly_all(bar, name, limit, title):
    (there,) = (each["level_ml"] for each in bar.bottles() if title in each["product"])
    made = bar.answer("batch", name, "--from", f"{limit}={there} ml")
    (line,) = (each for each in made["lines"] if has(each["as_written"], limit))
    shown = float(line["shown"].removesuffix(" ml"))
    assert 0.97 * there < line["amount_ml"] <= there
    assert 0.97 * there < shown <= there


def test_no_form_stands_in_two_rows_of_next_bottle(bar):
    rows = bar.answer("next-bottle")["candidates"]
    forms = [each for row in rows for each in {row["ingredient"], *row.get("forms", ())}]
    assert not {each for each in forms if forms.count(each) > 1}
