"""A plan claims exactly what really buying it gives, and nothing better can be bought."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations
from random import Random

import pytest

from barkeep.domain.bottles.bottle import Product
from barkeep.domain.buying.limits import Limits, checked_limits
from barkeep.domain.buying.on_paper import with_bought
from barkeep.domain.buying.packages import purchase_of
from barkeep.domain.buying.pairs import pairs
from barkeep.domain.buying.plan import Plan
from barkeep.domain.buying.planning import buying_plan
from barkeep.errors import InvalidField
from tests.domain.pouring.test_alternatives import with_choices
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.how_much import some_of
from tests.walked import walked
from tests.worlds import bottle, makeable, random_bar, snapshot


def bought(bar, keys):
    """The bar after really buying one of each."""
    return with_bought(bar, [purchase_of(key, bar) for key in keys])


def assert_it_holds(bar, plan: Plan, within) -> None:
    """Really buy it, step by step, and compare."""
    had = [each.bought.ingredient for each in plan.steps]
    before = makeable(bar, within)
    assert len(before) == plan.before
    for number, step in enumerate(plan.steps, 1):
        after = makeable(bought(bar, had[:number]), within)
        assert set(step.unlocks) == after - before, (had, number)
        assert step.makeable == len(after)
        before = after
    exactly = {name for step in plan.steps for name in step.exactly}
    ready = makeable(bought(bar, had), "exact")
    assert exactly == ready & set(plan.unlocks)


def priced(chance: Random, bar):
    """The bar with products of most kinds, at prices or none, in sizes of their own."""
    tree, number = bar.knowledge.tree, 100 + len(bar.products)
    more = tuple(
        Product(
            f"sold {key}",
            "Hollow Lamp",
            key,
            chance.choice([50.0, 350.0, 700.0]),
            abv_percent=chance.choice([None, None, 35.0, 55.0]),
            price=chance.choice([None, 8.0, 15.0, 22.0, 31.0]),
            id=number + place,
        )
        for place, key in enumerate(tree)
        if chance.random() < 0.8
    )
    return replace(bar, products=(*bar.products, *more))


def sold(bar):
    tree = bar.knowledge.tree
    return [key for key in tree if not tree[key].family and key not in bar.always_there]


def best_by_trying_all(bar, limits: Limits, within, worths=None) -> float:
    purchases = [purchase_of(key, bar) for key in sold(bar)]
    if limits.budget is not None:
        purchases = [each for each in purchases if each.price is not None]
    most = len(purchases) if limits.bottles is None else limits.bottles
    best, before = 0.0, makeable(bar, within)
    for count in range(1, most + 1):
        sets = [
            some
            for some in combinations(purchases, count)
            if limits.budget is None or sum(each.price for each in some) <= limits.budget
        ]
        if not sets:
            break
        for some in sets:
            opened = makeable(with_bought(bar, some), within) - before
            best = max(best, sum((worths or {}).get(name, 1.0) for name in opened))
    return best


@walked("seed", some_of(range(300), 30))
def test_it_is_what_trying_every_set_finds_and_really_buying_it_gives(seed):
    chance = Random(seed)
    bar = with_choices(chance, priced(chance, random_bar(chance)))
    within = chance.choice(["exact", "close", "loose"])
    limits = chance.choice([Limits(1), Limits(2), Limits(3), Limits(None, 40.0), Limits(2, 30.0)])
    names = [each.name for each in bar.all_specs]
    worths = chance.choice([None, None, {names[0]: 0.0, names[1]: 2.5}])
    plan = buying_plan(bar, limits, within, worths=worths, seconds=600.0)
    assert_it_holds(bar, plan, within)
    worth = sum((worths or {}).get(name, 1.0) for name in plan.unlocks)
    assert plan.worth == pytest.approx(worth)
    assert plan.worth == pytest.approx(best_by_trying_all(bar, limits, within, worths))
    assert plan.proved_best
    assert plan.upper_bound == pytest.approx(plan.worth)


GIN = [bottle(1, "gin", 700)]


def unlocked(plan: Plan) -> set[str]:
    return set(plan.unlocks)


def test_two_bottles_that_open_a_drink_only_together_are_found():
    specs = [
        spec(line("gin"), line("kummel"), line("genever"), name="Both"),
        spec(line("gin"), line("kummel"), line("genever"), line("lime-juice"), name="All three"),
        spec(line("gin"), line("egg-white"), name="One"),
    ]
    bar = snapshot(KNOWLEDGE, GIN, specs)
    one = buying_plan(bar, Limits(1))
    assert unlocked(one) == {"One"}
    two = buying_plan(bar, Limits(2), "exact")
    assert len(two.unlocks) == 1
    three = buying_plan(bar, Limits(3), "exact")
    assert unlocked(three) == {"Both", "All three"} or unlocked(three) == {"Both", "One"}
    four = buying_plan(bar, Limits(4), "exact")
    assert unlocked(four) == {"Both", "All three", "One"}
    assert [each.makeable for each in four.steps][-1] == 3
    assert four.proved_best
    assert_it_holds(bar, four, "exact")
    assert buying_plan(bar, Limits(9), "exact").steps == four.steps, "nothing for nothing"


def test_what_a_drink_is_worth_decides():
    specs = [
        spec(line("kummel"), name="First"),
        spec(line("kummel"), name="Second"),
        spec(line("egg-white"), name="Filmed"),
    ]
    bar = snapshot(KNOWLEDGE, [], specs)
    assert unlocked(buying_plan(bar, Limits(1))) == {"First", "Second"}
    weighed = buying_plan(bar, Limits(1), worths={"Filmed": 3.0})
    assert (unlocked(weighed), weighed.worth) == ({"Filmed"}, 3.0)
    only = buying_plan(bar, Limits(2), worths={"First": 0.0, "Second": 0.0})
    assert [each.bought.ingredient for each in only.steps] == ["egg-white"]


def test_money_is_what_limits_and_what_has_no_price_is_left_out():
    products = tuple(
        Product(f"{key} for sale", "Tansy Lock", key, 700, price=price, id=number)
        for number, (key, price) in enumerate(
            [("kummel", 30.0), ("egg-white", 12.0), ("genever", None)], 50
        )
    )
    specs = [
        spec(line("kummel"), name="Dear"),
        spec(line("kummel"), name="Dear too"),
        spec(line("egg-white"), name="Cheap"),
        spec(line("genever"), name="Unknown"),
    ]
    bar = replace(snapshot(KNOWLEDGE, [], specs), products=products)
    plan = buying_plan(bar, Limits(budget=41.99), "exact")
    assert (unlocked(plan), plan.cost) == ({"Dear", "Dear too"}, 30.0)
    assert plan.left_out == ("genever",)
    plan = buying_plan(bar, Limits(budget=42.0), "exact")
    assert (unlocked(plan), plan.cost) == ({"Dear", "Dear too", "Cheap"}, 42.0)
    told = buying_plan(bar, Limits(budget=20.0), "exact", prices={"genever": 8.0})
    assert (unlocked(told), told.cost) == ({"Cheap", "Unknown"}, 20.0)
    assert not buying_plan(bar, Limits(budget=11.0), "exact").steps
    many = buying_plan(bar, Limits(3), "exact")
    assert (many.cost, many.unpriced) == (42.0, ("genever",))


def test_a_least_strength_is_bought_as_strong_as_the_product_is():
    strong = spec(replace(line("gin"), min_abv_percent=40.0), name="Strong")
    bar = snapshot(KNOWLEDGE, [], [strong])
    assert unlocked(buying_plan(bar, Limits(1), "exact")) == {"Strong"}
    weak = Product("Weak", "Grey Ferry", "gin", 700, abv_percent=37.5, price=1.0, id=9)
    found = buying_plan(replace(bar, products=(weak,)), Limits(1), "exact")
    assert [each.bought.ingredient for each in found.steps] == ["london-dry-gin"]
    assert_it_holds(replace(bar, products=(weak,)), found, "exact")
    proof = replace(weak, name="Proof", abv_percent=57.0)
    stronger = snapshot(
        KNOWLEDGE, [], [spec(replace(line("gin"), min_abv_percent=50.0), name="Strong")]
    )
    assert not buying_plan(stronger, Limits(3), "exact").steps
    found = buying_plan(replace(stronger, products=(proof,)), Limits(3), "exact")
    assert [each.bought.product for each in found.steps] == [proof]


@walked(
    ("bottles", "budget", "says"),
    [
        (None, None, "say how many bottles, or how much may be spent"),
        (0, None, "it is 1 to 50"),
        (-3, None, "it is 1 to 50"),
        (51, None, "it is 1 to 50"),
        (None, 0.0, "it is more than nothing"),
        (None, -5.0, "it is more than nothing"),
        (None, float("nan"), "it is more than nothing"),
        (3, float("inf"), "it is more than nothing"),
    ],
)
def test_what_limits_nothing_is_refused(bottles, budget, says):
    with pytest.raises(InvalidField, match=says):
        checked_limits(bottles, budget)


def test_an_empty_book_and_an_empty_bar():
    nothing = buying_plan(snapshot(KNOWLEDGE), Limits(3))
    assert (nothing.steps, nothing.proved_best, nothing.upper_bound) == ((), True, 0.0)
    bar = snapshot(KNOWLEDGE, [], [spec(line("gin"), line("kummel"), name="Both")])
    assert unlocked(buying_plan(bar, Limits(2))) == {"Both"}
    one = buying_plan(bar, Limits(1))
    assert (one.steps, one.proved_best) == ((), True)


def test_stopped_at_once_it_says_so_and_claims_nothing_more_than_it_found():
    bar = random_bar(Random(3), specs=30)
    stopped = buying_plan(bar, Limits(3), go_on=lambda _worth, _bound: False)
    assert (stopped.ended, stopped.steps, stopped.worth) == ("cancelled", (), 0.0)
    assert stopped.upper_bound >= buying_plan(bar, Limits(3)).worth > 0.0
    late = buying_plan(bar, Limits(3), seconds=0.0)
    assert (late.ended, late.proved_best) == ("time", False)
    assert_it_holds(bar, late, "close")


@walked("seed", some_of(range(300), 30))
def test_pairs_are_all_that_turn_what_neither_turns_alone(seed):
    chance = Random(seed)
    bar = with_choices(chance, priced(chance, random_bar(chance)))
    within = chance.choice(["exact", "close", "loose"])
    before = makeable(bar, within)
    alone = {key: makeable(bought(bar, [key]), within) - before for key in sold(bar)}
    expected = {}
    for one, other in combinations(alone, 2):
        opened = makeable(bought(bar, [one, other]), within) - before - alone[one] - alone[other]
        if opened:
            expected[frozenset((one, other))] = opened
    found = pairs(bar, within)
    for each in found:
        keys = [one.ingredient for one in each.bought]
        assert set(each.together) == expected[frozenset(keys)], (seed, keys)
        assert [set(names) for names in each.apart] == [alone[key] for key in keys]
    assert {frozenset(each.together) for each in found} == set(map(frozenset, expected.values()))
    assert len({each.together for each in found}) == len(found)
