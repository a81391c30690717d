"""What an own ingredient is to begin with, and the names it may have."""

from __future__ import annotations

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.ingredients.own import as_their_kinds, free_key, likely_kind
from barkeep.domain.ingredients.tree import Ingredient, with_own
from barkeep.domain.spec_text.own_names import why_unreadable
from tests.walked import walked


@pytest.fixture(scope="module")
def tree():
    return shipped().tree


@walked(
    ("words", "kind"),
    [
        ("smoked maple syrup", "maple-syrup"),
        ("chilli tequila", "tequila"),
        ("coffee-infused rum", "rum"),
        ("Tansy Lock amaro", "amaro"),
        ("sea buckthorn juice", "juice"),
        ("syrup of violets", "syrup"),
        ("gin infused with tea", "gin"),
        ("a long story of smoke and honey", "honey"),
        ("peach gin, chilled (cold)", "gin"),
        ("rose petals", "dried-rosebud"),
        ("quince gum", None),
        ("", None),
    ],
)
def test_the_likely_kind_is_told_by_the_words_or_not_at_all(tree, words, kind):
    assert likely_kind(words, tree) == kind


@pytest.mark.parametrize(
    ("name", "key"),
    [
        ("Crème d’été", "creme-d-ete"),
        ("1:1 violet syrup", "1-1-violet-syrup"),
        ("Lime juice!", "lime-juice-2"),
        ("梅酒", "own-6885-9152"),
    ],
)
def test_a_key_is_free_and_made_of_what_keys_are(tree, name, key):
    assert key not in tree
    assert free_key(name, tree) == key


def test_hardly_a_name_that_is_shipped_would_be_refused(tree):
    """A refusal must not meet good names, but those with commas, and what says how."""
    names = ((name, tree[key]) for key in tree for name in (tree[key].name, *tree[key].aliases))
    refused = [name for name, of in names if why_unreadable(name, of, tree)]
    odd = {"151", "rhum", "rhum blanc", "framboise", "mûre", "guindilla", "big cube", "large cube"}
    odd |= {"chamomile", "camomile"}  # its tea, syrup or liqueur
    odd |= {"Garnish", "peel of citrus", "sprig of fennel"}  # numbers, measures, two meanings
    assert all("," in name or name in odd for name in refused)
    assert len(refused) < 20


def test_figures_left_open_are_those_of_the_nearest_kind_that_says_some(tree):
    own = [
        Ingredient("b", "b", ("a",)),
        Ingredient("a", "a", ("gin",), sugar_g_per_l=20.0),
        Ingredient("c", "c"),
    ]
    grown = as_their_kinds(with_own(tree, own), [each.key for each in own])
    for key in ("a", "b"):
        assert (grown[key].abv_percent, grown[key].sugar_g_per_l) == (
            tree["gin"].abv_percent,
            20.0,
        )
    assert grown["c"].abv_percent is None
