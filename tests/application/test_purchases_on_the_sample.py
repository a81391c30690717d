"""What one thing less in the sample bar would have its owner buy, told as a bartender would."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.made_first import make_first
from barkeep.domain.pouring.verdicts import tonight


@pytest.fixture
def bar(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def without(bar, *kinds):
    """The bar without everything that is one of these kinds."""
    tree = bar.snapshot.knowledge.tree
    left = (
        each
        for each in bar.snapshot.bottles
        if not any(tree.is_a(each.ingredient, kind) for kind in kinds)
    )
    return replace(bar.snapshot, bottles=tuple(left))


# What is gone; what is bought, and where; what else is the same purchase.
PURCHASES = [
    (("mint",), "mint", "market", {"mint-leaf"}),
    # Nobody buys a key lime for want of limes, nor one lime for an evening.
    (
        ("lime", "lime-juice", "lime-cordial"),
        *("lime", "market", {"lime-juice", "lime-wedge", "lime-cordial", "key-lime"}),
    ),
    (("lemon", "lemon-juice"), "lemon", "market", {"lemon-juice"}),
    (("orange", "orange-juice"), "orange", "market", {"orange-juice", "blood-orange"}),
    (("honey", "honey-syrup"), "honey", "market", {"honey-syrup", "rich-honey-syrup"}),
    (("egg", "egg-product"), "egg", "market", {"egg-white", "egg-yolk"}),
    (("grenadine",), "pomegranate-juice", "market", {"grenadine", "pomegranate"}),
    (("pineapple", "pineapple-juice"), "pineapple-juice", "market", {"pineapple"}),
    (("cinnamon-syrup", "cinnamon-stick"), "cinnamon-stick", "market", {"cinnamon-syrup"}),
    (("coffee-beans",), "coffee-beans", "market", {"coffee"}),
    (("gin",), "london-dry-gin", "bottle_shop", {"gin"}),
    (("triple-sec",), "triple-sec", "bottle_shop", {"dry-curacao"}),
    (("soda-water",), "soda-water", "bottle_shop", set()),
    # What stands overnight is rather bought.
    (("orgeat",), "orgeat", "bottle_shop", {"orange-flower-water"}),
]


@pytest.mark.parametrize(("gone", "bought", "shop", "forms"), PURCHASES)
def test_what_is_missing_is_one_purchase_with_its_forms(bar, gone, bought, shop, forms):
    snapshot = without(bar, *gone)
    rows = next_bottle(snapshot)
    found = next(each for each in rows if each.ingredient == bought)
    assert found.unlocks and found.shop == shop
    there = [form.ingredient for form in found.forms]
    assert there[0] == bought and forms <= set(there)
    others = {form.ingredient for row in rows if row is not found for form in row.forms}
    assert others.isdisjoint(there)


def test_what_can_be_made_here_is_no_purchase_and_tonight_says_to_make_it_first(bar):
    snapshot = without(bar, "honey-syrup", "simple-syrup", "cinnamon-syrup")
    tree = snapshot.knowledge.tree
    named = {form.ingredient for row in next_bottle(snapshot) for form in row.forms}
    assert named.isdisjoint({"honey-syrup", "simple-syrup", "rich-simple-syrup"})
    found = {each.spec.name: make_first(each.lines, tree) for each in tonight(snapshot)}
    assert found["Bee's Knees"] == "make honey syrup first (10 min)"
    assert found["Gin Fizz"] == "make simple syrup first (10 min)"
    assert found["Negroni"] == ""


def test_no_two_purchases_turn_the_same_drinks_by_the_same_lines(bar):
    for gone in (("mint",), ("lime", "lime-juice"), ("gin",), ("rum",), ("dairy-containing",)):
        leads = [each.forms[0] for each in next_bottle(without(bar, *gone)) if each.unlocks]
        reasons = [(each.unlocks, each.reason) for each in leads]
        assert len(reasons) == len(set(reasons))
        exact = [set(each.reason) for each in leads if each.exactly]
        lesser = [each for each in leads if not each.exactly]
        assert not [each for each in lesser if any(set(each.reason) <= some for some in exact)]


def test_what_is_there_but_past_its_date_is_said_beside_its_purchase(bar):
    snapshot = bar.snapshot
    old = tuple(
        replace(each, use_by=snapshot.on - timedelta(days=1))
        if each.ingredient == "grenadine"
        else each
        for each in snapshot.bottles
    )
    rows = next_bottle(replace(snapshot, bottles=old))
    row = next(each for each in rows if "grenadine" in {form.ingredient for form in each.forms})
    assert row.why.endswith(" Grenadine is there, but past its date.")
    assert "past its date" not in rows[0].why
