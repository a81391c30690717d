"""The regions that are shipped: their names can be read back, wherever they are read."""

from __future__ import annotations

import pytest

from barkeep.domain.ingredients.regions import names_in, region_named, shipped_regions
from barkeep.domain.ingredients.tree import Ingredient, with_own
from barkeep.domain.phrases import folded
from barkeep.errors import UnknownName


def test_every_name_means_its_ingredient_and_is_none_to_be_kept_quiet(tree):
    for region in shipped_regions().values():
        assert names_in(region.key, tree) == region.names, region.key
        for key, name in region.names.items():
            assert folded(name) not in map(folded, tree[key].printed), (region.key, name)


def test_it_is_another_name_than_the_kinds_own(tree):
    for region in shipped_regions().values():
        for key, name in region.names.items():
            assert folded(name) != folded(tree[key].name), (region.key, name)


def test_a_region_is_known_by_its_key_its_name_and_its_countries():
    found = [region_named(each).key for each in ("uk", "GB", "Ireland", "united states", "NZ")]
    assert found == ["UK", "UK", "UK", "US", "AU"]
    with pytest.raises(UnknownName, match="Mars"):
        region_named("Mars")


def test_no_region_and_one_that_is_not_known_name_nothing(tree):
    assert names_in("", tree) == names_in("none", tree) == {}


def test_what_the_owner_calls_otherwise_keeps_that(tree):
    own = Ingredient("own-fizz", "Club soda of mine", ("mixer",), aliases=("club soda",))
    theirs = Ingredient("soda-water", "Soda water", ("mixer",))
    assert "soda-water" not in names_in("US", with_own(tree, [own, theirs]))
