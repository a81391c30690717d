"""From words on a page to an ingredient."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.documents.knowledge import read_tree
from barkeep.domain.ingredients.names import ADJUSTED, EXACT, MAKER, find_name, match_ingredient
from tests.walked import walked


@pytest.fixture(scope="module")
def tree():
    read = resource_files.read_text
    return read_tree(read("ingredients.toml"), read("confusables.toml"))


def test_every_own_name_and_alias_finds_its_ingredient(tree):
    for key in tree:
        for name in (tree[key].name, *tree[key].aliases):
            found = match_ingredient(name, tree)
            assert found.key == key, name
            assert found.confidence == EXACT


@walked(
    ("text", "key", "confidence"),
    [
        ("LONDON DRY GIN", "london-dry-gin", EXACT),
        ("creme de cassis", "creme-de-cassis", EXACT),
        ("limes", "lime", EXACT),
        ("well-chilled lime juice", "lime-juice", ADJUSTED),
        ("chilled lime juice", "lime-juice", ADJUSTED),
        ("cold, fresh lime juice", "lime-juice", ADJUSTED),
        ("strong cold black tea", "black-tea", ADJUSTED),
        ("Freshly Squeezed Lime Juice", "lime-juice", EXACT),
        ("Fresh cream (Chilled)", "cream", EXACT),
        ("lime, cut into small wedges", "lime", EXACT),
        ("Lime cut into small wedges", "lime", EXACT),
        ("ginger beers", "ginger-beer", ADJUSTED),
        ("Bitter Campari", "red-bitter", EXACT),
        ("bitter amaro", "amaro", ADJUSTED),
        ("X maraschino", "maraschino-liqueur", MAKER),
        ("Grey Ferry London dry gin", "london-dry-gin", MAKER),
        ("Pellow & Rudge Lamp Room dry gin", "london-dry-gin", MAKER),
        ("Tansy Lock lime cordial", "lime-cordial", MAKER),
    ],
)
def test_names_are_matched_as_written(tree, text, key, confidence):
    found = match_ingredient(text, tree)
    assert (found.key, found.confidence) == (key, confidence)


def test_the_longest_name_wins(tree):
    assert match_ingredient("Hollow Lamp white crème de cacao", tree).key == "white-creme-de-cacao"
    assert match_ingredient("Hollow Lamp crème de cacao", tree).key == "creme-de-cacao"


@walked(
    "text",
    [
        "coconut milk powder",
        "almond cream",
        "peanut butter",
        "rice milk",
        "bitter orange",
        "bitter cucumber",
        "vanilla gin",
        "horseradish vodka",
        "alcohol-free gin",
        "smoked maraschino",
        "strawberry flavoured gin",
        "beer vinegar",
        "cream of tartar",
        "cherry tomato juice",
        "Copperbend syrup",
        "Copperbend liqueur",
        "gin, cold lime juice",
    ],
)
def test_a_false_friend_never_matches(tree, text):
    found = match_ingredient(text, tree)
    if text == "gin, cold lime juice":  # a note, not another ingredient
        assert found.key == "gin"
    else:
        assert found.key is None
        assert 1 <= len(set(found.nearest)) == len(found.nearest) <= 3  # none is far-fetched


def test_an_unknown_name_gets_the_three_nearest(tree):
    found = match_ingredient("bourban", tree)
    assert (found.key, found.matched, found.confidence) == (None, None, 0.0)
    assert found.nearest[0] == "Bourbon"
    assert len(found.nearest) == 3
    assert match_ingredient("Soda wter (cold)", tree).nearest[0] == "Soda water"
    assert match_ingredient("", tree).nearest == ()


def test_a_misspelling_is_suggested_but_never_taken(tree):
    for name in ("campary", "vodk", "lime juce", "sweet vermuth"):
        assert match_ingredient(name, tree).key is None


def test_the_name_that_matched_is_the_one_that_was_written(tree):
    assert match_ingredient("sugar", tree).matched == "sugar"
    assert match_ingredient("White sugar", tree).matched == "White sugar"


def test_notes_are_given_back_in_order(tree):
    found, notes = find_name("lime (ripe), peeled, cut into wedges", tree)
    assert found is not None and found.key == "lime"
    assert notes == ("ripe", "peeled", "cut into wedges")
    found, notes = find_name("Coffee, tea and chocolate", tree)
    assert found is not None and found.key == "hot-drink" and notes == ()


@given(st.text(max_size=80))
def test_any_text_is_answered(text):
    found = match_ingredient(text, _TREE)
    assert found.key is None or found.key in _TREE
    assert (found.key is None) == (found.confidence == 0.0)


_TREE = read_tree(
    resource_files.read_text("ingredients.toml"), resource_files.read_text("confusables.toml")
)
