"""Which kinds a typed text may mean, in which order, and when none."""

from __future__ import annotations

import tomllib
from pathlib import Path

from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.documents.knowledge import read_tree
from barkeep.domain.ingredients.finder import nearest, ranked
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.name_search import Fit
from tests.walked import walked

TREE = read_tree(
    resource_files.read_text("ingredients.toml"), resource_files.read_text("confusables.toml")
)
_ASKED = Path(__file__).parents[2] / "reference" / "names_asked.toml"
ASKED = [
    (typed, keys)
    for section in tomllib.loads(_ASKED.read_text(encoding="utf-8")).values()
    for typed, keys in section.items()
]


def keys(text, **how):
    return [each.key for each in ranked(text, TREE, **how)]


@walked(("typed", "expected"), ASKED)
def test_what_people_type_is_answered_by_what_they_mean(typed, expected):
    found = keys(typed)
    if expected:
        assert found and found[0] in expected
    else:
        assert found == []


def test_lime_gives_the_fruit_then_fresh_juice_before_bottled():
    found = keys("lime")
    assert found[:2] == ["lime", "lime-juice"]
    assert found.index("bottled-lime-juice") > 2


def test_gin_gives_gin_then_its_usual_kinds():
    found = ranked("gin", TREE)
    kinds = [each for each in found if each.fit is Fit.KIND]
    assert found[0].key == "gin" and found[1].key == "london-dry-gin"
    assert list(found[1 : 1 + len(kinds)]) == kinds
    assert {"old-tom-gin", "navy-strength-gin"} <= {each.key for each in kinds}
    assert found[1].reasons == ("it is a kind of gin",)
    of_whisky = keys("whisky")
    assert of_whisky[0] == "whisky" and {"bourbon", "rye-whiskey"} <= set(of_whisky[1:9])


def test_no_guess_is_better_than_a_far_fetched_one():
    found = ranked("matcha", TREE)
    assert all("matcha" in each.key or "matcha" in each.called for each in found)
    assert keys("") == keys("  ") == keys("—") == keys("?!") == []


def test_what_is_in_the_bar_goes_first_among_equals_only():
    assert keys("aqua")[0] != "aquafaba"
    assert keys("aqua", there={"aquafaba"})[0] == "aquafaba"
    assert keys("elderflower", there={"elderflower-cordial"})[0] == "elderflower-cordial"
    assert keys("elderflower", there={"elderflower-liqueur"})[0] == "elderflower-liqueur"
    assert keys("lime", there={"lime-cordial"})[:2] == ["lime", "lime-cordial"]
    assert keys("gin", there={"navy-strength-gin"})[:2] == ["gin", "navy-strength-gin"]
    assert keys("white rum", there={"dark-rum"})[0] == "white-rum"
    assert keys("zzzz", there={"gin"}) == []


def test_a_kind_is_in_the_bar_where_one_of_its_kinds_is():
    found = {each.key: each.there for each in ranked("gin", TREE, there={"old-tom-gin", "gone"})}
    assert found["gin"] and found["old-tom-gin"] and not found["london-dry-gin"]


def test_each_says_why_it_is_offered():
    (first, *_) = ranked("red vermouth", TREE, there={"sweet-vermouth"})
    assert (first.name, first.called) == ("Sweet vermouth", "red vermouth")
    assert first.reasons == (
        "it is called so",
        "it is also called red vermouth",
        "it is in the bar",
    )
    assert ranked("bourban", TREE)[0].reasons == ("it is spelt much like it",)
    assert [each.is_sure for each in (first, ranked("bourban", TREE)[0])] == [True, False]


def test_after_a_mistake_three_are_named_and_no_mere_grouping():
    found = nearest("gni", TREE)
    assert len(found) == 3 and found[0].key == "gin" and found[1].key == "london-dry-gin"
    assert all(not TREE[each.key].family for each in nearest("sprit", TREE))


UNDERSTOOD = [
    (word, ingredient.key)
    for ingredient in TREE.ingredients.values()
    for word in ingredient.all_names
    if word not in ingredient.offered_names
]


def test_there_are_words_that_are_only_understood():
    assert len(UNDERSTOOD) >= 8


@walked(("word", "key"), UNDERSTOOD)
def test_a_word_that_is_only_understood_finds_its_kind_and_is_never_shown(word, key):
    found = ranked(word, TREE)
    assert found[0].key == key
    for half in (word, word[:4], word[:-1]):
        shown = [
            each
            for found in ranked(half, TREE)
            for each in (found.name, found.called, *found.reasons)
        ]
        assert all(word.casefold() not in each.casefold() for each in shown)


def test_a_name_that_is_shown_goes_before_one_only_understood():
    tree = FamilyTree(
        {
            "plain": Ingredient("plain", "Zestonade"),
            "hidden": Ingredient("hidden", "Orange soda", printed=("Zestola",)),
        }
    )
    assert [each.name for each in ranked("zesto", tree)] == ["Zestonade", "Orange soda"]
    assert [each.name for each in ranked("zestola", tree)] == ["Orange soda"]
    assert [each.name for each in ranked("ze", tree)] == ["Zestonade"]


@given(st.text(max_size=200))
def test_any_text_is_answered_by_kinds_of_the_tree_best_first(text):
    found = ranked(text, TREE)
    assert len({each.key for each in found}) == len(found)
    assert all(each.name == TREE.name(each.key) and 0.0 < each.score <= 1.0 for each in found)


@given(st.sampled_from(sorted(TREE)), st.data())
def test_every_name_finds_its_own_kind_first(key, data):
    name = data.draw(st.sampled_from((TREE[key].name, *TREE[key].aliases)))
    assert ranked(name.upper(), TREE)[0].key == key
