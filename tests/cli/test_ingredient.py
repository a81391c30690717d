"""`barkeep ingredient`: what there is, and what the owner adds to it."""

from __future__ import annotations

import pytest


@pytest.fixture
def ingredient(barkeep, bar):
    """Run one of its actions."""
    return lambda *argv: barkeep("--bar", bar, "ingredient", *argv)


def test_one_is_added_used_and_taken_away(barkeep, bar, ingredient, tmp_path):
    added = ingredient(
        *("add", "Signal bitters", "--kind", "cocktail bitters", "--alias", "Box bitters"),
        *("--abv", "90 proof", "--sugar", "12", "--keeps", "400"),
    )
    assert added.out == "Added Signal bitters, a kind of cocktail bitters.\n"
    (found,) = ingredient("show", "box bitters", "--json").answer["ingredients"]
    assert found == {
        "key": "signal-bitters",
        "name": "Signal bitters",
        "kinds": ["Cocktail bitters"],
        "own": True,
        "aliases": ["Box bitters"],
        "unit": "ml",
        "abv_percent": 45.0,
        "sugar_g_per_l": 12.0,
        "acid_g_per_l": None,
        "keeps_days": 400,
    }
    file = tmp_path / "milepost.txt"
    file.write_text("Milepost\n2 oz gin\n2 dashes box bitters\n\nStir.\n", encoding="utf-8")
    assert barkeep("--bar", bar, "spec", "add", file).status == 0
    assert "Milepost still refer" in ingredient("remove", "Signal bitters").refusal.replace(
        "refers", "refer"
    )
    barkeep("--bar", bar, "undo")
    assert ingredient("remove", "Signal bitters").out == "Took Signal bitters away.\n"
    assert "There is no ingredient called" in ingredient("show", "Signal bitters").refusal
    barkeep("--bar", bar, "undo")
    assert ingredient("show", "Signal bitters").out.endswith("your own\n")


def test_they_are_listed_below_a_kind_and_the_own_alone(ingredient):
    ingredient("add", "Signal bitters", "--kind", "bitters")
    listed = ingredient("list", "bitters").out
    assert row_of("Signal bitters", "cocktail bitters", "yes") in squeezed(listed)
    assert row_of("Orange bitters", "cocktail bitters") in squeezed(listed)
    own = ingredient("list", "--own", "--json").answer["ingredients"]
    assert [each["name"] for each in own] == ["Signal bitters"]
    assert len(ingredient("list", "--json").answer["ingredients"]) > 250


def test_another_name_is_given_and_taken_back(ingredient):
    assert ingredient("alias", "gin", "Lamp spirit").out == "Gin answers to Lamp spirit now.\n"
    assert "also called Lamp spirit" in ingredient("show", "lamp spirit").out
    said = ingredient("remove", "gin").out
    assert said == "What barkeep itself knows of Gin counts again.\n"
    assert "There is no ingredient called" in ingredient("show", "lamp spirit").refusal
    again = ingredient("remove", "gin").refusal
    assert "There is no ingredient of yours called" in again


def test_a_name_that_a_list_prints_finds_its_kind_and_is_not_shown(ingredient):
    shown = ingredient("show", "Campari").out
    assert shown.startswith("Red bitter aperitivo, a kind of")
    assert "also called red bitter" in shown and "Campari" not in shown
    known = ingredient("show", "Campari", "--json").answer["ingredients"][0]
    assert known["key"] == "red-bitter" and "Campari" not in known["aliases"]


@pytest.mark.parametrize(
    ("argv", "said"),
    [
        (("add", "Gin", "--kind", "spirit"), "There is already an ingredient called “Gin”"),
        (("add", "X", "--kind", "nothing known"), "There is no ingredient called"),
        (("add", "Signal", "--kind", "bitters", "--alias", "gin"), "already an ingredient called"),
        (("add", "Signal", "--kind", "bitters", "--abv", "strong"), "--abv cannot be “strong”"),
        (("add", "Signal", "--kind", "bitters", "--abv", "100° proof"), "US proof or 100 UK proof"),
        (("add", "Signal", "--kind", "bitters", "--sugar", "-1"), "it is 0 g/l or more"),
        (("alias", "gin", "vodka"), "already an ingredient called “vodka”"),
        (("alias", "gin", "gin"), "already an ingredient called “gin”"),
        (("remove", "gin"), "There is no ingredient of yours called"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_written(barkeep, bar, ingredient, argv, said):
    assert said in ingredient(*argv).refusal
    assert ingredient("list", "--own", "--json").answer["ingredients"] == []


def squeezed(text: str) -> list[str]:
    return [" ".join(row.split()) for row in text.splitlines()]


def row_of(*cells: str) -> str:
    return " ".join(cells)
