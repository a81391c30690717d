"""Own stand-ins, own ingredients and the settings."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.application.shelving import NeverOffered, StillInUse
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.errors import DuplicateName, InvalidField, UnknownName
from tests.application.conftest import gin_draft, plough

OWN = StandIn("gin", "bourbon", 0.7, 0.75, "it works in this bar", ("shaken", "never_base"))
BITTERS = Ingredient(
    "rail-bitters",
    "Rail bitters",
    ("spirit",),
    ("track bitters",),
    {"UK": ("siding bitters",)},
    ("Bitter Rail",),
    abv_percent=45.0,
    allergens=("nuts",),
    shelf_life_days=400,
)


def test_an_own_stand_in_wins_until_it_is_forgotten(bar, reopen):
    done = bar.knowledge.add_stand_in(OWN)
    assert done.label == "Let bourbon stand in for gin" and done.changes == {"knowledge"}
    assert bar.snapshot.knowledge.stand_ins == (replace(OWN, own=True),)
    assert reopen().snapshot.knowledge == bar.snapshot.knowledge
    assert bar.knowledge.remove_stand_in("Gin", "bourbon").value == done.value
    assert bar.snapshot.knowledge.stand_ins[0].closeness == 0.4
    with pytest.raises(UnknownName, match="bourbon for gin"):
        bar.knowledge.remove_stand_in("gin", "bourbon")


def test_a_second_own_stand_in_for_the_pair_changes_the_first(bar):
    bar.knowledge.add_stand_in(OWN)
    bar.knowledge.add_stand_in(replace(OWN, closeness=0.2))
    assert [each.closeness for each in bar.snapshot.knowledge.stand_ins] == [0.2]
    bar.undo()
    assert [each.closeness for each in bar.snapshot.knowledge.stand_ins] == [0.7]


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"closeness": 0.0}, "closeness"),
        ({"closeness": 1.01}, "closeness"),
        ({"closeness": float("nan")}, "closeness"),
        ({"ratio": 0.0}, "ratio"),
        ({"ratio": float("inf")}, "ratio"),
        ({"scope": ("stired",)}, "scope"),
        ({"why": "  "}, "why"),
        ({"offered": "gin"}, "offered"),
    ],
)
def test_a_stand_in_that_cannot_be_is_refused(bar, changes, field):
    with pytest.raises(InvalidField) as refused:
        bar.knowledge.add_stand_in(replace(OWN, **changes))
    assert refused.value.field == field
    assert bar.undo_label is None


def test_what_is_mistaken_never_stands_in(bar):
    for pair in (("lime-juice", "lime-cordial"), ("lime-cordial", "lime-juice")):
        with pytest.raises(NeverOffered, match=r"must never stand in for .*cordial is sweetened"):
            bar.knowledge.add_stand_in(StandIn(*pair, 0.5, 1.0, "no"))
    with pytest.raises(UnknownName):
        bar.knowledge.add_stand_in(replace(OWN, offered="moss"))


def test_an_own_ingredient_is_in_the_tree_and_usable(bar, reopen):
    done = bar.knowledge.add_ingredient(BITTERS)
    assert done.label == "Add ingredient Rail bitters" and done.value == BITTERS
    assert bar.snapshot.knowledge.tree.is_a("rail-bitters", "spirit")
    product = bar.inventory.add_product(gin_draft(ingredient="Track Bitters")).value
    assert product.ingredient == "rail-bitters"
    assert reopen().snapshot.knowledge == bar.snapshot.knowledge


def test_an_own_ingredient_may_replace_a_known_one(bar):
    tree = bar.snapshot.knowledge.tree
    done = bar.knowledge.add_ingredient(replace(tree["gin"], abv_percent=43.0))
    assert done.label == "Change ingredient gin"
    assert bar.snapshot.knowledge.tree["gin"].abv_percent == 43.0
    bar.knowledge.remove_ingredient("gin")
    assert bar.snapshot.knowledge.tree["gin"].abv_percent == 40.0


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"name": ""}, "name"),
        ({"key": "Rail Bitters"}, "key"),
        ({"key": ""}, "key"),
        ({"unit": "oz"}, "unit"),
        ({"abv_percent": 101.0}, "strength"),
        ({"sugar_g_per_l": -1.0}, "sugar"),
        ({"shelf_life_days": -1}, "shelf life"),
        ({"typical_size": 0.0}, "typical size"),
        ({"parents": ("rail-bitters",)}, "parents"),
    ],
)
def test_an_ingredient_that_cannot_be_is_refused(bar, changes, field):
    if "parents" in changes:
        bar.knowledge.add_ingredient(BITTERS)
    with pytest.raises(InvalidField) as refused:
        bar.knowledge.add_ingredient(replace(BITTERS, **changes))
    assert refused.value.field == field


def test_a_family_cannot_run_in_a_circle(bar):
    bar.knowledge.add_ingredient(BITTERS)
    spirit = bar.snapshot.knowledge.tree["spirit"]
    with pytest.raises(InvalidField, match="circle"):
        bar.knowledge.add_ingredient(replace(spirit, parents=("rail-bitters",)))


def test_a_name_belongs_to_one_ingredient(bar):
    for changes in ({"name": "DRY gin"}, {"aliases": ("bourbon",)}):
        with pytest.raises(DuplicateName):
            bar.knowledge.add_ingredient(replace(BITTERS, **changes))
    with pytest.raises(UnknownName):
        bar.knowledge.add_ingredient(replace(BITTERS, parents=("moss",)))


def test_an_ingredient_in_use_stays(bar):
    bar.knowledge.add_ingredient(BITTERS)
    line = replace(plough().lines[0], ingredient="rail-bitters")
    bar.specs.add([plough(lines=(line,))])
    with pytest.raises(StillInUse, match="Snow Plough still refer"):
        bar.knowledge.remove_ingredient("rail-bitters")
    bar.specs.remove(1)
    assert bar.knowledge.remove_ingredient("rail-bitters").value == BITTERS
    assert "rail-bitters" not in bar.snapshot.knowledge.tree
    with pytest.raises(UnknownName):
        bar.knowledge.remove_ingredient("gin")


def test_settings_are_kept(bar, reopen):
    chosen = Settings("Signal box", "GBP", frozenset({"ice"}))
    done = bar.settings.change(chosen)
    assert (done.value, done.changes, done.label) == (chosen, {"settings"}, "Change settings")
    assert reopen().snapshot.settings == chosen
    assert bar.settings.change(chosen).changes == frozenset()


@pytest.mark.parametrize(
    ("settings", "field"),
    [
        (Settings(name=" "), "name"),
        (Settings(currency="eur"), "currency"),
        (Settings(currency="EURO"), "currency"),
        (Settings(not_there=frozenset({"gin"})), "not there"),
        (Settings(not_there=frozenset({"moss"})), "not there"),
    ],
)
def test_settings_that_cannot_be_are_refused(bar, settings, field):
    with pytest.raises(InvalidField) as refused:
        bar.settings.change(settings)
    assert refused.value.field == field
