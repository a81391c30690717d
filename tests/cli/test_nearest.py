"""After a mistake in a name the command line ranks as the fields of the window do."""

from __future__ import annotations

import pytest

from barkeep.domain.ingredients.finder import nearest
from barkeep.errors import spoken_list

TAKES_AN_INGREDIENT = (
    ("stand-in", "{}"),
    ("make", "{}", "500 ml"),
    ("batch", "Buffer Stop", "--from", "{}=700 ml"),
    ("product", "add", "Hedge", "--ingredient", "{}"),
    ("ingredient", "show", "{}"),
)


@pytest.mark.parametrize("words", TAKES_AN_INGREDIENT, ids=lambda words: words[0])
def test_every_command_that_takes_an_ingredient_names_the_nearest(barkeep, bar, words):
    said = barkeep("--bar", bar, *(each.format("gni") for each in words)).refusal
    assert said.startswith("There is no ingredient called “gni”. The nearest are Gin, ")
    said = barkeep("--bar", bar, *(each.format("sweet vermuth") for each in words)).refusal
    assert "The nearest are Sweet vermouth" in said


@pytest.mark.parametrize("words", TAKES_AN_INGREDIENT, ids=lambda words: words[0])
def test_what_is_like_nothing_is_offered_nothing(barkeep, bar, words):
    said = barkeep("--bar", bar, *(each.format("gravel") for each in words)).refusal
    assert said.startswith("There is no ingredient called “gravel”. To teach it: ")


def test_what_is_named_is_what_the_finder_ranks(barkeep, bar, knowledge):
    names = [each.name for each in nearest("bourban", knowledge.tree)]
    said = barkeep("--bar", bar, "ingredient", "show", "bourban").refusal
    assert f"The nearest are {spoken_list(names, 'and')}. To teach it: " in said


def test_bottles_and_specs_are_ranked_alike(barkeep, bar):
    said = barkeep("--bar", bar, "count", "Lamp Rom dry gin", "0.5").refusal
    assert said.startswith(
        "There is no bottle called “Lamp Rom dry gin”. The nearest are Pellow & Rudge Lamp Room"
    )
    said = barkeep("--bar", bar, "spec", "show", "Bufer Stop").refusal
    assert said.startswith("There is no spec called “Bufer Stop”. The nearest are Buffer Stop")
    said = barkeep("--bar", bar, "spec", "show", "zzyzx").refusal
    assert said == "There is no spec called “zzyzx”."


def test_a_spec_read_asks_with_the_likeliest_kinds(barkeep, bar, tmp_path):
    page = tmp_path / "down.txt"
    page.write_text("Down Distant\n45 ml gni\n20 ml gravel\n", encoding="utf-8")
    answer = barkeep("--bar", bar, "spec", "read", page, "--json").answer
    misspelt, unknown = answer["specs"][0]["lines"]
    assert misspelt["guesses"][0]["ingredient"] == "Gin"
    assert unknown["guesses"] == []
    messages = [each["message"] for each in answer["specs"][0]["problems"]]
    assert messages[0].startswith("no ingredient is called “gni”; the nearest are Gin, ")
    assert messages[1].startswith("no ingredient is called “gravel”. To teach it: ")
