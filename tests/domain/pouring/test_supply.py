"""What stands there is the same however the picture came about."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from random import Random

from barkeep.application.bar import Bar
from barkeep.domain.bar.of_kinds import HousePour, ShelfLife
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.pouring.usual import usual_pours


def changed(chance: Random, bar):
    """The picture after one thing happened, with all it takes along from the one before."""
    place = chance.randrange(len(bar.bottles))
    one, others = bar.bottles[place], (*bar.bottles[:place], *bar.bottles[place + 1 :])
    match chance.choice(["count", "empty", "gone", "last", "label", "day", "house", "keeps"]):
        case "count":
            level = replace(one.level, amount=chance.choice([1.0, 40.0, 650.0]))
            return bar.changed(bottles=(*others, replace(one, level=level)))
        case "empty":
            return bar.changed(
                bottles=(*others, replace(one, level=replace(one.level, amount=0.0)))
            )
        case "gone":
            return bar.changed(bottles=others)
        case "last":
            return bar.changed(bottles=(*others, one))
        case "label":
            product = replace(one.product, abv_percent=chance.choice([None, 20.0, 63.0]))
            return bar.changed(bottles=(replace(one, product=product), *others))
        case "day":
            return bar.changed(on=bar.on + timedelta(days=chance.choice([-40, 1, 9])))
        case "house":
            house = (HousePour(one.ingredient, one.product.id),)
            return bar.changed(settings=replace(bar.settings, house=house))
        case _:
            keeps = (ShelfLife(one.ingredient, chance.choice([1, 400])),)
            return bar.changed(settings=replace(bar.settings, keeps=keeps))


def test_after_any_changes_as_in_a_picture_made_afresh(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        bar = opened.snapshot
    chance = Random(1)
    for step in range(150):
        afresh = replace(bar)
        assert supply_of(bar) == supply_of(afresh), step
        assert list(supply_of(bar).stocks) == list(supply_of(afresh).stocks), step
        assert usual_pours(bar) == usual_pours(afresh), step
        kinds = bar.knowledge.tree
        assert [supply_of(bar).total(key) for key in kinds] == [
            sum(each.level.amount for each in bar.usable.get(key, ()))
            if key not in bar.always_there
            else 0.0
            for key in kinds
        ]
        bar = changed(chance, bar)


def test_what_stands_of_other_kinds_is_the_very_same_after_a_count(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        bar = opened.snapshot
    before = supply_of(bar).stocks
    one = bar.usable[next(iter(before))][0]
    level = replace(one.level, amount=one.level.amount / 2)
    bottles = (replace(each, level=level) if each is one else each for each in bar.bottles)
    after = supply_of(bar.changed(bottles=tuple(bottles))).stocks
    others = [key for key in before if after[key] is not before[key]]
    assert others == [one.ingredient]
