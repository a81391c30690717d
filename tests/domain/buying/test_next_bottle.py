"""A purchase's claim is exactly what really buying it gives."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from barkeep.domain.bottles.bottle import Product
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.ingredients.ordinary import OnlyWhenAsked, Ordinary
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.how_much import some_of
from tests.worlds import bottle, having, makeable, random_bar, snapshot


def exactly(bar) -> set[str]:
    return makeable(bar, "exact")


def assert_claims_hold(bar, within) -> int:
    """Really buy each form of each candidate and compare; how many drinks were claimed."""
    before = makeable(bar, within)
    claimed = 0
    rows = next_bottle(bar, within)
    named = [form.ingredient for each in rows for form in each.forms]
    assert len(named) == len(set(named))
    reasons = [(each.unlocks, each.forms[0].reason) for each in rows if each.unlocks]
    assert len(reasons) == len(set(reasons))
    for candidate in rows:
        first = candidate.forms[0]
        assert (first.ingredient, first.unlocks) == (candidate.ingredient, candidate.unlocks)
        for form in candidate.forms:
            after = having(bar, form.ingredient)
            assert set(form.unlocks) == makeable(after, within) - before, candidate
            assert set(form.exactly) == exactly(after) - before, candidate
        claimed += len(candidate.unlocks)
    return claimed


@pytest.mark.parametrize("first", some_of(range(0, 200, 50), 2))
def test_every_claim_on_200_random_bars(first):
    claimed = 0
    for seed in range(first, first + 50):
        claimed += assert_claims_hold(random_bar(Random(seed)), "close")
    assert claimed > 100


@pytest.mark.parametrize("within", ["exact", "loose"])
def test_every_claim_at_other_closeness(within):
    assert sum(assert_claims_hold(random_bar(Random(seed)), within) for seed in range(40)) > 60


def test_nothing_that_would_turn_a_drink_is_left_out():
    for seed in some_of(range(100), 2):
        bar = random_bar(Random(seed))
        tree = bar.knowledge.tree
        named = {form.ingredient for each in next_bottle(bar) for form in each.forms}
        for key in set(tree) - named:
            if not tree[key].family and key not in bar.always_there:
                assert makeable(having(bar, key), "close") == makeable(bar, "close")


def test_ties_go_to_what_brings_most_near_then_to_the_price():
    specs = [
        spec(line("gin"), name="Gin drink"),
        spec(line("kummel"), name="Kümmel drink"),
        spec(line("kummel"), line("coconut-milk"), line("cream-of-coconut"), name="Far"),
        spec(line("genever"), name="Genever drink"),
    ]
    bar = snapshot(KNOWLEDGE, [], specs)
    found = [each.ingredient for each in next_bottle(bar, "exact")]
    # Kümmel brings the far one nearer than any, but not to one short: the name decides.
    # London dry gin turns what any gin does, and is no row beside it.
    assert found[:3] == ["genever", "gin", "kummel"]
    cheap = Product("Dry gin", "Grey Ferry", "london-dry-gin", 700, price=20.0, id=9)
    priced = [each.ingredient for each in next_bottle(replace(bar, products=(cheap,)), "exact")]
    assert priced[0] == "london-dry-gin"


def test_two_short_becomes_one_short_and_is_said():
    bar = snapshot(KNOWLEDGE, [], [spec(line("gin"), line("kummel"), name="Both")])
    found = {each.ingredient: each for each in next_bottle(bar)}
    assert found["gin"].nearest == ("Both",)
    assert found["gin"].why == "Turns nothing by itself; brings Both to one short."


def test_a_bottle_that_is_there_but_too_low_is_worth_buying_again():
    bar = snapshot(KNOWLEDGE, [bottle(1, "gin", 10)], [spec(line("gin", 60))])
    found = {each.ingredient: each for each in next_bottle(bar)}
    assert found["gin"].owned
    assert found["gin"].unlocks == ("Drink",)
    assert "what is left is too little" in found["gin"].why


def test_an_empty_book_turns_nothing():
    assert all(not each.unlocks for each in next_bottle(snapshot(KNOWLEDGE)))


@pytest.mark.parametrize("within", ["exact", "close"])
def test_the_claim_holds_where_some_kinds_are_poured_only_when_asked_for(within):
    """What is bought may be ordinary or not: either way it turns what is claimed."""
    claimed = 0
    for seed in range(25):
        bar = random_bar(Random(seed))
        tree = bar.knowledge.tree
        kinds = [key for key in tree if tree[key].parents][::2]
        marks = {key: OnlyWhenAsked(key, 0.8, 0.75, "it is stronger") for key in kinds}
        bar = replace(bar, knowledge=replace(bar.knowledge, tree=tree.taking(Ordinary(marks))))
        claimed += assert_claims_hold(bar, within)
    assert claimed > 30
