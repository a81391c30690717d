"""The plainer ways find what barkeep finds, where levels bind nothing."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest

from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.application.benchmarks.peers import peers
from barkeep.application.benchmarks.plain_book import plain_book
from barkeep.application.benchmarks.rows import Row, growth, rows
from barkeep.application.knowledge import shipped
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.verdicts import tonight
from tests.worlds import TODAY


@pytest.fixture(scope="module")
def bar():
    made = invented_bar(shipped(), 150, 60, seed=7, on=TODAY)
    plenty = [replace(each, level=replace(each.level, amount=1e6)) for each in made.bottles]
    return replace(made, bottles=tuple(plenty))


@pytest.fixture(scope="module")
def found(bar):
    return peers(plain_book(bar, "close"), bar.knowledge, bar.owned, 0.8)


@pytest.mark.parametrize("peer", ["against_sql", "against_floor"])
def test_a_peer_finds_the_drinks_that_can_be_made(bar, found, peer):
    makeable = {drink.spec.name for drink in tonight(bar) if drink.makeable}
    assert makeable
    assert {bar.all_specs[place].name for place in found[peer].ready()} == makeable


@pytest.mark.parametrize("peer", ["against_sql", "against_floor"])
def test_a_peer_counts_what_each_purchase_turns(bar, found, peer):
    """It knows no purchases with several forms: each form is counted by itself."""
    forms = {form.ingredient: len(form.unlocks) for row in next_bottle(bar) for form in row.forms}
    counted = found[peer].turned()
    turned = {key: count for key, count in forms.items() if count}
    assert turned
    assert {key: counted.get(key, 0) for key in turned} == turned
    assert max(counted.values()) == max(turned.values())


def test_the_plain_search_finds_most_of_them(bar, found):
    """It knows no recipes and no method, so its answer is near."""
    ready, searched = found["against_floor"].ready(), found["against_search"].ready()
    assert len(ready & searched) > 0.7 * len(ready | searched)
    both = found["against_floor"].turned(), found["against_search"].turned()
    exactly, near = map(Counter, both)
    assert (exactly & near).total() > 0.5 * exactly.total()


def test_a_seed_makes_one_bar():
    made = [invented_bar(shipped(), 20, 10, seed=seed, on=TODAY) for seed in (3, 3, 4)]
    assert made[0].specs == made[1].specs != made[2].specs
    assert made[0].bottles == made[1].bottles != made[2].bottles
    assert all(4 <= len(spec.lines) <= 6 for spec in made[0].specs)


def test_a_bar_without_specs_is_timed_too():
    assert [row.specs for row in rows(shipped(), (0,), 0, on=TODAY)] == [0] * 7


def test_growth_is_the_slope_on_a_logarithmic_scale():
    taken = {100: 2.0, 10_000: 200.0}
    found = [Row(specs, "tonight", ms, 1.0, 1.0, 1.0) for specs, ms in taken.items()]
    assert [round(each.exponent, 6) for each in growth(found)] == [1.0]
    assert growth(found[:1]) == ()
