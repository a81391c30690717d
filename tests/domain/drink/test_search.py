"""Searching the book of a bar: strength from tonight's bottles, and what is due soon."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from barkeep.domain.drink.analysis import analyse, strength_of
from barkeep.domain.drink.search import days_until_due, search
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import BadQuery
from tests.worlds import TODAY, bottle, snapshot

STRONG = Spec("Iron", (Line("", "london-dry-gin", 60, None, "ml", 60.0),), technique="built")
MILD = Spec(
    "Feather",
    (Line("", "sweet-vermouth", 60, None, "ml", 60.0), Line("", "soda-water", 60, None, "ml", 60)),
    technique="built",
)
NEITHER = Spec("Stone", (Line("salt", "salt"),))


@pytest.fixture
def bar(knowledge):
    plain = replace(knowledge, classics=())
    return snapshot(plain, [bottle(1, "london-dry-gin", 300)], (STRONG, MILD, NEITHER))


def names(bar, text, memory=None):
    return [spec.name for spec in search(bar, text, memory)]


def test_everything_is_found_by_name_order(bar):
    assert names(bar, "") == ["Feather", "Iron", "Stone"]
    assert names(bar, "with:gin") == ["Iron"]


def test_a_spec_is_as_strong_as_its_analysis_says(bar):
    abv = analyse(MILD, bar).abv_percent
    assert names(bar, f"strength:{abv:.1f}") == ["Feather"]
    assert names(bar, "strength:>30") == ["Iron"]
    assert names(bar, "-strength:>30") == ["Feather", "Stone"]


def test_every_classic_is_found_by_the_strength_it_is_analysed_at(knowledge):
    bar = snapshot(knowledge)
    found = {spec.name for spec in search(bar, "strength:20..30")}
    measured = {spec.name: analyse(spec, bar) for spec in bar.all_specs}
    wanted = {
        name
        for name, each in measured.items()
        if each.served_volume_ml
        if 20.0 <= each.abv_percent <= 30.0
    }
    assert found == wanted and 0 < len(found) < len(measured)


def test_only_what_is_asked_is_worked_out_and_only_once(bar, monkeypatch):
    asked = []
    monkeypatch.setattr(
        "barkeep.domain.drink.analysis.strength_of",
        lambda spec, bar: (asked.append(spec.name), strength_of(spec, bar))[1],
    )
    memory = Memory()
    names(bar, "iron due", memory)
    assert asked == []
    names(bar, "strength:>30", memory)
    assert sorted(asked) == ["Feather", "Iron", "Stone"]
    names(bar, "strength:<30", memory)
    stronger = bottle(1, "london-dry-gin", 300)
    stronger = replace(stronger, product=replace(stronger.product, abv_percent=57.0))
    asked.clear()
    assert names(replace(bar, bottles=(stronger,)), "strength:>56", memory) == ["Iron"]
    assert asked == ["Iron"]


def dated(number, ingredient, use_by=None, opened=None, amount=300.0):
    made = bottle(number, ingredient, amount)
    level = replace(made.level, opened=None if opened is None else TODAY - timedelta(opened))
    return replace(made, level=level, use_by=None if use_by is None else TODAY + timedelta(use_by))


def test_what_is_due_is_the_first_of_use_by_and_shelf_life(bar, tree):
    keeps = tree["sweet-vermouth"].shelf_life_days
    assert keeps
    bottles = (
        dated(1, "sweet-vermouth", opened=keeps - 3),
        dated(2, "sweet-vermouth", opened=keeps - 9),
        dated(3, "lemon-juice", use_by=2),
        dated(4, "lime-juice", use_by=-1),
        dated(5, "simple-syrup", use_by=4, amount=0.0),
        dated(6, "london-dry-gin", opened=4000),
        dated(7, "dry-vermouth", opened=tree["dry-vermouth"].shelf_life_days + 5),
        dated(8, "cream-sherry"),
    )
    due = days_until_due(replace(bar, bottles=bottles))
    assert due == {"sweet-vermouth": 3, "lemon-juice": 2, "dry-vermouth": -5}


def test_a_spec_is_due_with_the_first_bottle_it_uses(bar, tree):
    keeps = tree["sweet-vermouth"].shelf_life_days
    soon = replace(bar, bottles=(dated(1, "sweet-vermouth", opened=keeps - 3),))
    assert names(soon, "due") == ["Feather"]
    assert names(soon, "due:2") == []
    wide = Spec("Wide", (Line("", "gin", 60, None, "ml", 60.0, alternatives=("vermouth",)),))
    assert names(replace(soon, specs=(wide, STRONG)), "due:3") == ["Wide"]


def test_a_term_that_means_nothing_is_refused(bar):
    with pytest.raises(BadQuery):
        search(bar, "strength:stark")
