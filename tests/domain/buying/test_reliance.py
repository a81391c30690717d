"""What a bottle carries is what is really lost once it is emptied."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bar.of_kinds import HousePour
from barkeep.domain.bottles.bottle import Level
from barkeep.domain.buying.reliance import reliance
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import verdicts
from tests.domain.pouring.test_alternatives import with_choices
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.how_much import some_of
from tests.worlds import bottle, random_bar, snapshot


def standing(bar, within, memory=None):
    found = verdicts(bar, within, memory=memory)
    return {each.name: verdict for each, verdict in zip(bar.all_specs, found.of, strict=True)}


def emptied(bar, one):
    """The bar once a bottle is really empty."""
    bottles = [
        replace(each, level=Level(0.0, "empty")) if each is one else each for each in bar.bottles
    ]
    return bar.changed(bottles=tuple(bottles))


def assert_it_is_what_emptying_shows(bar, within) -> int:
    before, found = standing(bar, within), reliance(bar, within)
    usable = {each.id for some in bar.usable.values() for each in some}
    always = {each.id for each in bar.bottles if each.ingredient in bar.always_there}
    assert {each.bottle.id for each in found.carried} == usable - always
    made = [name for name, verdict in before.items() if verdict in ("ready", "stand_in")]
    assert found.makeable == len(made)
    for each in found.carried:
        after = standing(emptied(bar, each.bottle), within)
        lost = [name for name in made if after[name] not in ("ready", "stand_in")]
        worse = [name for name in made if (before[name], after[name]) == ("ready", "stand_in")]
        assert (list(each.lost), list(each.worse)) == (lost, worse), each.bottle
    return sum(len(each.lost) + len(each.worse) for each in found.carried)


@pytest.mark.parametrize("within", ["exact", "close", "loose"])
def test_it_is_what_emptying_each_bottle_shows_on_random_bars(within):
    found = 0
    for seed in some_of(range(300), 30):
        chance = Random(seed)
        bar = with_choices(chance, random_bar(chance))
        more = [
            replace(bottle(50 + number, each.ingredient, 45.0), product=each.product)
            for number, each in enumerate(bar.bottles)
            if chance.random() < 0.3
        ]
        house = [
            HousePour(bar.knowledge.tree[each.ingredient].parents[0], each.product.id)
            for each in bar.bottles
            if bar.knowledge.tree[each.ingredient].parents and chance.random() < 0.3
        ]
        settings = replace(bar.settings, house=tuple({each.kind: each for each in house}.values()))
        bar = replace(bar, bottles=(*bar.bottles, *more), settings=settings)
        found += assert_it_is_what_emptying_shows(bar, within)
    assert found > 3


def test_it_is_what_emptying_each_bottle_of_the_sample_shows(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        bar = opened.snapshot
    memory = Memory()
    before, found = standing(bar, "close", memory), reliance(bar)
    made = [name for name, verdict in before.items() if verdict in ("ready", "stand_in")]
    carried = {each.bottle.id: each for each in found.carried}
    lost_of_all = 0
    for each in some_of(bar.bottles, 5):
        after = standing(emptied(bar, each), "close", memory)
        lost = tuple(name for name in made if after[name] not in ("ready", "stand_in"))
        worse = tuple(name for name in made if (before[name], after[name]) == ("ready", "stand_in"))
        found_here = carried.get(each.id)
        assert (lost, worse) == ((found_here.lost, found_here.worse) if found_here else ((), ()))
        lost_of_all += len(lost)
    assert lost_of_all > 20


def test_what_it_costs_and_how_often_it_can_be_poured():
    specs = [
        spec(line("gin", 60.0), name="Long"),
        spec(line("gin", 30.0), name="Short"),
        spec(line("gin", 45.0), line("kummel"), name="Not to be made"),
    ]
    gin = bottle(1, "gin", 139.0)
    bar = snapshot(KNOWLEDGE, [replace(gin, product=replace(gin.product, price=28.0))], specs)
    (found,) = reliance(bar).carried
    assert found.lost == found.poured_for == ("Long", "Short")
    assert (found.pour, found.cost, found.serves_left) == (45.0, pytest.approx(1.8), 3)
    assert [each.bottle.id for each in reliance(bar).low] == [1]
    unpriced = snapshot(KNOWLEDGE, [gin], specs)
    assert reliance(unpriced).carried[0].cost is None


def test_a_second_bottle_takes_the_weight_and_an_unused_one_carries_nothing():
    specs = [spec(line("gin", 60.0), name="Long")]
    two = [bottle(1, "gin", 100.0), bottle(2, "gin", 500.0), bottle(3, "kummel", 300.0)]
    found = reliance(snapshot(KNOWLEDGE, two, specs))
    assert all(not each.lost for each in found.carried)
    assert [each.bottle.id for each in found.nothing] == [3]
    assert reliance(snapshot(KNOWLEDGE, [], specs)).carried == ()
    assert reliance(snapshot(KNOWLEDGE, two, [])).makeable == 0


def test_where_a_stand_in_takes_its_place_a_drink_is_worse_and_not_lost():
    specs = [spec(line("london-dry-gin", 60.0), name="Dry")]
    found = reliance(
        snapshot(KNOWLEDGE, [bottle(1, "london-dry-gin", 300.0), bottle(2, "gin", 300.0)], specs)
    )
    carried = {each.bottle.id: each for each in found.carried}
    assert (carried[1].lost, carried[1].worse) == ((), ("Dry",))
    assert carried[2].carries_nothing
