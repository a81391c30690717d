"""From typed words to the thing that is meant."""

from __future__ import annotations

import pytest

from barkeep.application.finding import (
    find_bottle,
    find_ingredient,
    find_product,
    nearest_names,
)
from barkeep.errors import AmbiguousName, UnknownName
from tests.application.conftest import gin_draft


def test_an_ingredient_is_found_by_key_name_or_alias(knowledge):
    for text in ("sweet-vermouth", "Sweet  Vermouth", "red vermouth"):
        assert find_ingredient(knowledge.tree, text) == "sweet-vermouth"
    with pytest.raises(UnknownName) as unknown:
        find_ingredient(knowledge.tree, "bourban")
    assert unknown.value.nearest[0] == "bourbon"


def test_a_bottle_is_found_by_id_title_or_words(bar, gin):
    bar.inventory.add_product(gin_draft(name="dry gin", ingredient="dry gin"))
    other = bar.inventory.receive(2).value
    for text in ("1", "#1", "tansy lock NAVY strength gin", "navy"):
        assert find_bottle(bar.snapshot, text) == gin
    assert find_bottle(bar.snapshot, "dry gin") == other
    with pytest.raises(AmbiguousName) as several:
        find_bottle(bar.snapshot, "tansy")
    assert several.value.choices == (
        "Tansy Lock navy-strength gin (#1)",
        "Tansy Lock dry gin (#2)",
    )
    for text in ("", "#7", "vermouth of roses"):
        with pytest.raises(UnknownName):
            find_bottle(bar.snapshot, text)


def test_two_bottles_of_one_product_are_told_apart_by_id(bar, gin):
    bar.inventory.receive(gin.product.id)
    with pytest.raises(AmbiguousName, match=r"\(#1\) or .* \(#2\)"):
        find_bottle(bar.snapshot, "navy-strength gin")


def test_a_product_is_found_without_a_bottle(bar):
    product = bar.inventory.add_product(gin_draft()).value
    assert find_product(bar.snapshot, "navy gin") == product
    with pytest.raises(UnknownName) as unknown:
        find_product(bar.snapshot, "navi gin")
    assert unknown.value.nearest == (product.title,)


def test_nothing_like_it_is_nothing_near():
    assert nearest_names("zzzz", ["gin", "rum"]) == ()
    assert nearest_names("gin", []) == ()


def test_of_two_bottles_of_one_product_the_only_open_one_may_be_meant(bar, gin):
    bar.inventory.receive(gin.product.id)

    def found(text="navy-strength gin"):
        return find_bottle(bar.snapshot, text, rather_open=True)

    with pytest.raises(AmbiguousName):
        found()
    bar.inventory.pour(2, 50.0)
    assert found().id == 2
    with pytest.raises(AmbiguousName):
        find_bottle(bar.snapshot, "navy-strength gin")
    bar.inventory.add_product(gin_draft(name="dry gin", ingredient="dry gin"))
    bar.inventory.receive(2)
    with pytest.raises(AmbiguousName):
        found("tansy")  # two products: the open one may be the wrong one
    bar.inventory.pour(1, 50.0)
    with pytest.raises(AmbiguousName):
        found()
