"""What solids bring: every entry is of a known ingredient, and a broken table is refused."""

from __future__ import annotations

import pytest

from barkeep.domain.ingredients.composition import (
    composition_of,
    read_compositions,
    shipped_compositions,
)
from barkeep.errors import KnowledgeError


def test_every_entry_is_of_an_ingredient_in_its_own_unit(tree):
    per = {"ml": "l", "g": "g", "each": "each"}
    for key, made_of in shipped_compositions().items():
        assert key in tree, key
        assert tree[key].family or made_of.per == per[tree[key].unit], key


def test_nothing_takes_more_room_than_it_can_hold(tree):
    for key, made_of in shipped_compositions().items():
        grams = made_of.sugar_g + made_of.acid_g + made_of.protein_g + made_of.fat_g
        room = 1000.0 if made_of.per == "l" else made_of.volume_ml
        assert 0.0 < grams <= 2.0 * room, key


def test_what_is_said_of_a_kind_holds_below_it(tree):
    sugar = composition_of("sugar", tree)
    assert sugar == composition_of("demerara-sugar", tree) == shipped_compositions()["sweetener"]
    assert composition_of("double-cream", tree) == shipped_compositions()["cream"]


def test_of_a_kind_measured_otherwise_nothing_is_taken_over(tree):
    assert composition_of("sugar-cube", tree) == shipped_compositions()["sugar-cube"]
    assert composition_of("gin", tree) is None


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("sugar = 1", "write it as a table"),
        ('[sugar]\nper = "cup"\nbasis = "x"', "must be one of l, g, each"),
        ('[sugar]\nper = "g"\nsugar_g = -1\nbasis = "x"', "it must be 0 or more"),
        ('[sugar]\nper = "g"\nbasis = "x"\nsweet = 1', "there is no field “sweet”"),
        ('[sugar]\nper = "g"', "“basis”"),
    ],
)
def test_a_broken_table_is_refused(text, reason):
    with pytest.raises(KnowledgeError, match=reason):
        read_compositions(text)
