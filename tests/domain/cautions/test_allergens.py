"""Allergens: by ingredient and by descent, in words a label and an owner use."""

from __future__ import annotations

import pytest

from barkeep.domain.cautions.allergens import (
    Allergen,
    allergens_of,
    brought_in_sentence,
    contains_sentence,
    read_allergens,
    shipped_allergens,
)
from barkeep.domain.ingredients.tree import Ingredient, with_own
from barkeep.errors import KnowledgeError
from tests.walked import walked


def words(keys, tree) -> list[str]:
    return [allergen.word for allergen in allergens_of(keys, tree)]


def test_a_drink_carries_what_its_ingredients_do_each_once_by_word(tree):
    assert words(["orgeat", "egg-white", "amaretto", "lime-juice", "sweet-vermouth"], tree) == [
        "egg",
        "sulphites",
        "tree nuts",
    ]
    assert words(["gin", "lime-juice"], tree) == words([], tree) == []


def test_each_says_whose_list_it_is_on(tree):
    milk, sulphites = allergens_of(["cream-liqueur", "cava"], tree)
    assert (milk.word, milk.lists) == ("milk", ("US", "EU"))
    assert (sulphites.word, sulphites.lists) == ("sulphites", ("EU",))
    assert "clarified milk punch" in milk.note


def test_what_a_family_carries_everything_below_it_does(tree):
    own = Ingredient("hedge-wine", "Hedge wine", ("wine",), allergens=("egg",))
    assert words(["hedge-wine"], with_own(tree, [own])) == ["egg", "sulphites"]
    assert words(["beer"], tree) == ["gluten"]


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("Nuts", "tree nuts"),
        ("soy", "soya"),
        ("Sulfites", "sulphites"),
        ("shellfish", "crustaceans"),
    ],
)
def test_an_owners_word_is_taken_for_the_lists_word(tree, written, meant):
    own = Ingredient("house-dust", "House dust", allergens=(written,))
    (found,) = allergens_of(["house-dust"], with_own(tree, [own]))
    assert found.word == meant and found.lists


def test_a_word_on_no_list_is_kept_and_said(tree):
    own = Ingredient("moss-dew", "Moss dew", allergens=("moss",))
    found = allergens_of(["moss-dew"], with_own(tree, [own]))
    assert found == (Allergen("moss", (), ""),)
    assert "Contains moss" in contains_sentence(found)


def test_the_sentences_name_them():
    milk = shipped_allergens().called("milk")
    moss = Allergen("moss", (), "")
    assert contains_sentence([milk, moss]).startswith("Contains milk and moss, which can cause")
    assert "label" in contains_sentence([milk])
    assert brought_in_sentence([milk]) == "A stand-in or choice of bottle brings in milk."
    assert contains_sentence([]) == brought_in_sentence([]) == ""


class TestWhatIngredientsSay:
    def test_every_word_is_on_a_list(self, tree):
        known = {allergen.word for allergen in shipped_allergens().all}
        used = {word for key in tree for word in tree[key].allergens}
        assert used <= known

    def test_what_a_kind_names_everything_below_it_names(self, tree):
        for key in tree:
            above = {word for kind in tree.ancestors(key) for word in tree[kind].allergens}
            assert above <= set(tree[key].allergens), key

    def test_what_everything_in_a_family_names_the_family_names(self, tree):
        for key in tree:
            below = [set(tree[each].allergens) for each in tree.children(key)]
            if tree[key].family and len(below) > 1:
                shared = set.intersection(*below) - KEPT_APART.get(key, set())
                assert shared <= set(tree[key].allergens), key

    def test_wheat_is_a_cereal_with_gluten(self, tree):
        for key in tree:
            if "wheat" in tree[key].allergens:
                assert "gluten" in tree[key].allergens, key


# Home-made ones need not carry it.
KEPT_APART = {"cordial": {"sulphites"}, "coconut-product": {"sulphites"}}


TOML = """
[authority]
US = "an act"
EU = "a regulation"

[sentence]
contains = "Contains {allergens}."
brought_in = "Brings in {allergens}."

[[allergen]]
word = "moss"
other_words = ["lichen"]
lists = ["US"]
"""


class TestReading:
    def test_it_says_what_the_text_says(self):
        known = read_allergens(TOML)
        assert known.all == (Allergen("moss", ("US",), ""),)
        assert known.called("Lichen") == known.called("moss")
        assert known.authority == {"US": "an act", "EU": "a regulation"}

    @walked(
        ("old", "new", "key", "reason"),
        [
            ('["US"]', '["CH"]', "allergen moss", "“lists” has “CH”; it must be one of US, EU"),
            ('["US"]', "[]", "allergen moss", "it is on no list"),
            ('word = "moss"', "", "allergen ?", "“word” is missing"),
            ('["lichen"]', '["Moss"]', "allergen moss", "“Moss” is there twice"),
            ("other_words", "others", "allergen moss", "no field “others”"),
            ('US = "an act"', "", "authority", "“US” is missing"),
            ('US = "an act"', 'US = "an act"\nCH = "a law"', "authority", "no field “CH”"),
            ("Contains {allergens}", "Contains some", "sentence", "must have {allergens} once"),
            ("brought_in", "brought", "sentence", "“brought_in” is missing"),
            ("[sentence]", "[sentences]", "sentences", "misspelling"),
            ("[[allergen]]", "[allergen]", "allergen", "write each as [[allergen]]"),
        ],
    )
    def test_a_fault_is_located(self, old, new, key, reason):
        text = TOML.replace(old, new, 1)
        assert text != TOML
        with pytest.raises(KnowledgeError) as fault:
            read_allergens(text, "own.toml")
        assert (fault.value.file, fault.value.key) == ("own.toml", key)
        assert reason in fault.value.reason

    def test_a_missing_part_is_located(self):
        with pytest.raises(
            KnowledgeError, match=r"allergens\.toml, authority: write it as a table"
        ):
            read_allergens("")

    def test_two_allergens_of_one_word_are_refused(self):
        more = TOML + '\n[[allergen]]\nword = "lichen"\nlists = ["EU"]\n'
        with pytest.raises(KnowledgeError, match="“lichen” is there twice"):
            read_allergens(more)

    def test_the_shipped_lists_are_read_once(self):
        assert shipped_allergens() is shipped_allergens()
