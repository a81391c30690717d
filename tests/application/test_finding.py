"""From typed words to the thing that is meant."""

from __future__ import annotations

from datetime import date

import pytest

from barkeep.application.finding import (
    find_bottle,
    find_drink,
    find_ingredient,
    find_product,
    find_shoot,
    nearest_names,
)
from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.shoots.log import LogSheet
from barkeep.errors import AmbiguousName, UnknownName
from tests.application.conftest import gin_draft


def test_an_ingredient_is_found_by_key_name_or_alias(knowledge):
    for text in ("sweet-vermouth", "Sweet  Vermouth", "red vermouth"):
        assert find_ingredient(knowledge.tree, text) == "sweet-vermouth"
    with pytest.raises(UnknownName) as unknown:
        find_ingredient(knowledge.tree, "bourban")
    assert unknown.value.nearest[0] == "bourbon"


def test_a_name_that_only_a_list_prints_is_found_and_never_offered(knowledge):
    tree = knowledge.tree
    printed = {name for key in tree for name in tree[key].printed}
    for name in printed:
        assert name in tree[find_ingredient(tree, name)].printed
        with pytest.raises(UnknownName) as unknown:
            find_ingredient(tree, f"{name[:-1]}z")
        assert not printed & set(unknown.value.nearest)


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


@pytest.fixture
def shoots(bar):
    """Two themes on 21 November and a week around it; today is the 21st."""
    days = {"Night train": (14, 23, 30), "Night sleeper": (21,), "Mail": (21,)}
    return {
        (theme, day): bar.shoots.add(Shoot(None, theme, date(2026, 11, day))).value
        for theme, some in days.items()
        for day in some
    }


def test_a_shoot_is_found_by_id_theme_beginning_or_words(bar, shoots):
    for text in (f"#{shoots['Mail', 21].id}", "mail", "  MAIL ", "mai"):
        assert find_shoot(bar.snapshot, text) == shoots["Mail", 21]
    for text in ("night s", "sleeper", "sleeper night"):
        assert find_shoot(bar.snapshot, text) == shoots["Night sleeper", 21]
    with pytest.raises(AmbiguousName) as several:
        find_shoot(bar.snapshot, "night")
    assert f"Night sleeper (2026-11-21, #{shoots['Night sleeper', 21].id})" in (
        several.value.choices
    )
    for text in ("", "#99", "harbour", "train mail"):
        with pytest.raises(UnknownName):
            find_shoot(bar.snapshot, text)


def test_of_several_shoots_the_nearest_not_yet_logged_is_meant(bar, shoots):
    ours = {day: one for (theme, day), one in shoots.items() if theme == "Night train"}
    assert find_shoot(bar.snapshot, "night train") == ours[23]
    assert find_shoot(bar.snapshot, "night t", date(2026, 11, 30)) == ours[30]
    with pytest.raises(UnknownName) as unknown:
        find_shoot(bar.snapshot, "night train", date(2026, 11, 29))
    assert len(unknown.value.nearest) == 3
    bar.shoots.remove(ours[23].id)
    assert find_shoot(bar.snapshot, "night train") == ours[14]
    bar.shoots.log(ours[14].id, LogSheet(()))
    assert find_shoot(bar.snapshot, "night train") == ours[30]
    bar.shoots.remove(ours[30].id)
    assert find_shoot(bar.snapshot, "night train").log is not None
    again = bar.shoots.add(Shoot(None, "Night train", date(2026, 11, 1))).value
    bar.shoots.log(again.id, LogSheet(()))
    assert find_shoot(bar.snapshot, "night train").id == ours[14].id  # the later of two logged


def test_a_day_tells_two_themes_apart(bar, shoots):
    assert find_shoot(bar.snapshot, "night", date(2026, 11, 14)) == shoots["Night train", 14]


def test_a_drink_of_a_shoot_is_found_by_its_words():
    shoot = Shoot(1, "Night train", date(2026, 11, 21), (ShootDrink(1, "Snow Plough"),))
    assert find_drink(shoot, "plough").name == "Snow Plough"
    with pytest.raises(UnknownName, match="no drink of Night train called “Drift”"):
        find_drink(shoot, "Drift")
