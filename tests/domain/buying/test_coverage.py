"""The best set of purchases is what trying every set finds, and what another solver finds."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations
from random import Random

import pulp
import pytest

from barkeep.domain.buying.coverage import Market, Need, Target, best_covering
from barkeep.domain.buying.limits import Limits
from tests.how_much import some_of


def random_market(chance: Random, purchases: int, targets: int) -> Market:
    """Needs that are shared, options of one purchase or several, worths alike or not."""
    whole = chance.random() < 0.7

    def option() -> frozenset[int]:
        many = min(purchases, chance.choice([1, 1, 1, 1, 2, 3]))
        return frozenset(chance.sample(range(purchases), many))

    needs = [
        frozenset(option() for _ in range(chance.randint(1, 3))) for _ in range(1 + targets // 2)
    ]
    return Market(
        tuple(float(chance.randint(5, 40)) for _ in range(purchases)),
        tuple(
            Target(
                float(chance.randint(1, 3)) if whole else chance.random() + 0.1,
                tuple(chance.choices(needs, k=chance.randint(1, 4))),
            )
            for _ in range(targets)
        ),
        chance.choice(
            [
                Limits(bottles=chance.randint(1, 4)),
                Limits(budget=float(chance.randint(1, 90))),
                Limits(bottles=chance.randint(1, 4), budget=float(chance.randint(20, 90))),
            ]
        ),
    )


def worth_of(market: Market, chosen: frozenset[int]) -> float:
    """What a set is worth, looked at target by target."""
    return sum(
        each.worth
        for each in market.targets
        if all(any(option <= chosen for option in need) for need in each.needs)
    )


def by_trying_all(market: Market, worth=worth_of) -> float:
    """What the best of all sets is worth."""
    everything = range(len(market.costs))
    sets = (
        frozenset(some)
        for count in range(len(everything) + 1)
        for some in combinations(everything, count)
        if market.affordable(some)
    )
    return max(worth(market, each) for each in sets)


@pytest.mark.parametrize("first", some_of(range(0, 300, 50), 3))
def test_it_is_what_trying_every_set_finds(first):
    for seed in range(first, first + 50):
        chance = Random(seed)
        market = random_market(chance, chance.randint(1, 9), chance.randint(0, 14))
        found = best_covering(market)
        assert found.proved_best
        assert market.affordable(found.chosen)
        assert found.worth == pytest.approx(worth_of(market, found.chosen)), seed
        assert found.worth == pytest.approx(by_trying_all(market)), seed
        assert found.upper_bound == pytest.approx(found.worth)


def test_it_holds_where_needs_promise_too_much():
    """Some targets take purchases that no need tells of; that is only found out by asking."""
    refuted = 0
    for seed in range(60):
        chance = Random(seed)
        market = random_market(chance, chance.randint(2, 8), chance.randint(2, 12))
        really = [
            frozenset(chance.sample(range(len(market.costs)), chance.choice([0, 0, 1, 2])))
            for _ in market.targets
        ]

        def worth(market: Market, chosen: frozenset[int], really=really) -> float:
            kept = tuple(
                each for each, asked in zip(market.targets, really, strict=True) if asked <= chosen
            )
            return worth_of(replace(market, targets=kept), chosen)

        def refute(chosen, claimed, really=really) -> dict[int, Need]:
            nonlocal refuted
            found = {
                each: frozenset(frozenset({one}) for one in really[each] - chosen)
                for each in claimed
                if not really[each] <= chosen
            }
            refuted += len(found)
            return found

        found = best_covering(market, refute)
        assert found.proved_best
        assert found.worth == pytest.approx(worth(market, found.chosen)), seed
        assert found.worth == pytest.approx(by_trying_all(market, worth)), seed
    assert refuted > 60


def by_cbc(market: Market) -> float:
    """What CBC says of the same question, put to it in the plainest way."""
    asked = pulp.LpProblem("purchases", pulp.LpMaximize)
    bought = [pulp.LpVariable(f"x{each}", cat="Binary") for each in range(len(market.costs))]
    covered = []
    for number, target in enumerate(market.targets):
        here = pulp.LpVariable(f"y{number}", cat="Binary")
        covered.append(here)
        for place, need in enumerate(target.needs):
            ways = []
            for which, option in enumerate(sorted(need, key=sorted)):
                way = pulp.LpVariable(f"w{number}_{place}_{which}", cat="Binary")
                for each in option:
                    asked += way <= bought[each]
                ways.append(way)
            asked += here <= pulp.lpSum(ways)
    if market.limits.bottles is not None:
        asked += pulp.lpSum(bought) <= market.limits.bottles
    if market.limits.budget is not None:
        parts = zip(market.costs, bought, strict=True)
        asked += pulp.lpSum(cost * each for cost, each in parts) <= market.limits.budget
    worths = zip(market.targets, covered, strict=True)
    asked += pulp.lpSum(target.worth * here for target, here in worths)
    asked.solve(pulp.PULP_CBC_CMD(msg=False))
    return float(pulp.value(asked.objective) or 0.0)


@pytest.mark.parametrize("seed", some_of(range(20), 10))
def test_it_is_what_another_solver_finds_of_more(seed):
    chance = Random(seed)
    market = random_market(chance, chance.randint(15, 30), chance.randint(40, 120))
    found = best_covering(market)
    assert found.proved_best
    assert found.worth == pytest.approx(by_cbc(market), abs=1e-4)


def test_what_adds_nothing_is_not_bought_and_of_equals_the_first_is():
    target = Target(1.0, (frozenset({frozenset({2}), frozenset({1})}),))
    found = best_covering(Market((1.0, 1.0, 1.0), (target,), Limits(bottles=3)))
    assert found.chosen == {1}


def test_who_stops_it_is_given_the_best_so_far():
    market = random_market(Random(5), 12, 60)
    market = replace(market, limits=Limits(bottles=4))
    asked = []

    def until_something_is_found(worth: float, bound: float) -> bool:
        asked.append((worth, bound))
        return not worth

    stopped = best_covering(market, go_on=until_something_is_found)
    assert (stopped.ended, stopped.proved_best) == ("cancelled", False)
    assert 0.0 < stopped.worth <= stopped.upper_bound
    assert stopped.worth == pytest.approx(worth_of(market, stopped.chosen))
    assert asked[0] == (0.0, sum(each.worth for each in market.targets))
    at_once = best_covering(market, go_on=lambda _worth, _bound: False)
    assert (at_once.chosen, at_once.ended) == (frozenset(), "cancelled")


def test_out_of_time_it_gives_the_best_so_far():
    market = replace(random_market(Random(5), 12, 60), limits=Limits(bottles=4))
    found = best_covering(market, seconds=0.0)
    assert (found.ended, found.proved_best) == ("time", False)
    assert found.upper_bound >= by_trying_all(market)
