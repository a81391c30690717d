"""What is used up is what trying every evening finds, and no bottle gives more than it holds."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from itertools import product
from random import Random

import pulp
import pytest

from barkeep.domain.bottles.bottle import Level
from barkeep.domain.pouring.sourcing import choices, sourcing_for, thresholds
from barkeep.domain.pouring.use_up import PIECE, UseUp, use_up
from barkeep.domain.pouring.verdicts import verdicts
from barkeep.errors import InvalidField
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.how_much import some_of
from tests.worlds import TODAY, bottle, random_bar, snapshot


def ageing_bar(chance: Random, specs: int = 5):
    """A small bar of which some goes off soon, some later and some never."""
    bar = random_bar(chance, specs)
    bottles = [
        replace(
            each,
            level=Level(min(each.level.amount, chance.choice([25.0, 70.0, 130.0])), "open"),
            use_by=chance.choice([None, TODAY + timedelta(3), TODAY + timedelta(9)]),
        )
        for each in bar.bottles
    ]
    return replace(bar, bottles=tuple(bottles))


def ml(bar, key, amount):
    return amount * (PIECE if bar.knowledge.tree[key].unit == "each" else 1.0)


def servings_of(bar, within, days=14):
    """The ways to pour each drink that can be made, by its name; the pools, and what ages of each.

    Of a drink: whether it is ready, and of each line what each way to it draws.
    """
    found, sourcing = verdicts(bar, within), sourcing_for(bar, within)
    made = [
        (one, verdict)
        for one, verdict in zip(bar.all_specs, found.of, strict=True)
        if verdict in ("ready", "stand_in")
    ]
    limits = tuple(sorted({each for one, _ in made for each in thresholds(one)}))
    pools = sourcing.supply.pools(limits)
    ageing = {}
    for pool in pools:
        for stock in sourcing.supply.stocks_in(pool, limits):
            end = bar.ends.get(stock.bottle.id)
            if end is not None and end.last <= TODAY + timedelta(days):
                ageing[pool] = ageing.get(pool, 0.0) + stock.amount
    drinks = {}
    for one, verdict in made:
        lines = []
        for each_line in one.required_lines:
            ways = sourcing.ways_to(each_line, one)
            some = choices(
                each_line,
                [way for way in ways if way.exact or verdict != "ready"],
                limits,
                sourcing.supply,
                sourcing.tree,
            )
            lines.append([way.draws for each in some for way in each.ways])
        drinks[one.name] = (verdict == "ready", lines)
    return drinks, pools, ageing


def by_trying_all(bar, within, serves):
    """Most used by ready drinks, most used in all, fewest serves: of every evening there is."""
    drinks, pools, ageing = servings_of(bar, within)
    servings = set()
    for ready, lines in drinks.values():
        for ways in product(*lines):
            drawn = {}
            for way in ways:
                for pool, amount in way.items():
                    drawn[pool] = drawn.get(pool, 0.0) + amount
            if not ageing.keys().isdisjoint(drawn):
                servings.add((ready, tuple(sorted(drawn.items()))))

    def used(drawn):
        return sum(ml(bar, pool[0], min(drawn.get(pool, 0.0), ageing[pool])) for pool in ageing)

    best, states = (0.0, 0.0, 0), {((), ())}
    for count in range(1, serves + 1):
        after = set()
        for ready, all_drawn in states:
            for is_ready, drawn in servings:
                both = dict(all_drawn)
                of_ready = dict(ready)
                for pool, amount in drawn:
                    both[pool] = both.get(pool, 0.0) + amount
                    if is_ready:
                        of_ready[pool] = of_ready.get(pool, 0.0) + amount
                if all(amount <= pools.get(pool, 0.0) + 1e-6 for pool, amount in both.items()):
                    after.add((tuple(sorted(of_ready.items())), tuple(sorted(both.items()))))
        for ready, both in after:
            reached = (round(used(dict(ready)), 3), round(used(dict(both)), 3), -count)
            best = max(best, reached)
        states = after
    return best


def reached(bar, found: UseUp):
    of_ready = {}
    for drink in found.drinks:
        for use in drink.uses if drink.verdict == "ready" else ():
            key = use.bottle.ingredient
            of_ready[use.bottle.id] = of_ready.get(use.bottle.id, 0.0) + ml(bar, key, use.amount)
    used = sum(ml(bar, each.bottle.ingredient, each.used) for each in found.ageing)
    return used, sum(of_ready.values()), sum(each.serves for each in found.drinks)


@pytest.mark.parametrize("first", some_of(range(0, 300, 10), 6))
def test_it_is_what_trying_every_evening_finds(first):
    told = 0
    for seed in range(first, first + 10):
        chance = Random(seed)
        bar, within = ageing_bar(chance), chance.choice(["exact", "close", "loose"])
        serves = chance.randint(1, 3)
        found = use_up(bar, serves, within=within)
        assert found.proved_best
        best_ready, best, fewest = by_trying_all(bar, within, serves)
        used, of_ready, count = reached(bar, found)
        assert (used, count) == (pytest.approx(best, abs=0.01), -fewest), seed
        assert of_ready == pytest.approx(best_ready, abs=0.01)
        for each in found.ageing:
            assert each.used + each.left == pytest.approx(each.bottle.level.amount, abs=0.01)
        told += bool(found.drinks)
    assert told > 1


def by_cbc(bar, within, serves) -> float:
    """The most that ready drinks can use in so many serves, as CBC finds it."""
    drinks, pools, ageing = servings_of(bar, within)
    asked = pulp.LpProblem("evening", pulp.LpMaximize)
    drawn = {pool: [] for pool in pools}
    counts = []
    for number, (ready, lines) in enumerate(drinks.values()):
        if not ready:
            continue
        count = pulp.LpVariable(f"d{number}", 0, serves, cat="Integer")
        counts.append(count)
        for place, ways in enumerate(lines):
            poured = []
            for which, draws in enumerate(ways):
                times = pulp.LpVariable(f"w{number}_{place}_{which}", 0, serves, cat="Integer")
                poured.append(times)
                for pool, amount in draws.items():
                    drawn.setdefault(pool, []).append(amount * times)
            asked += pulp.lpSum(poured) == count
    asked += pulp.lpSum(counts) <= serves
    worth = []
    for number, (pool, parts) in enumerate(drawn.items()):
        asked += pulp.lpSum(parts) <= pools.get(pool, 0.0) + 1e-6
        if pool in ageing:
            used = pulp.LpVariable(f"u{number}", 0, ageing[pool])
            asked += used <= pulp.lpSum(parts)
            worth.append(ml(bar, pool[0], 1.0) * used)
    asked += pulp.lpSum(worth)
    asked.solve(pulp.PULP_CBC_CMD(msg=False))
    return float(pulp.value(asked.objective) or 0.0)


@pytest.mark.parametrize("seed", some_of(range(30), 15))
def test_it_is_what_another_solver_finds_of_more(seed):
    chance = Random(seed)
    bar = ageing_bar(chance, specs=40)
    found = use_up(bar, 8, within="close")
    assert found.proved_best
    _used, of_ready, _count = reached(bar, found)
    assert of_ready == pytest.approx(by_cbc(bar, "close", 8), abs=0.01)


def milk(number, key, amount, days):
    return replace(bottle(number, key, amount), use_by=TODAY + timedelta(days))


def test_the_fewest_serves_that_use_nearly_all_of_it():
    specs = [
        spec(line("egg-white", 30.0), name="Small"),
        spec(line("egg-white", 60.0), line("gin"), name="Large"),
    ]
    bar = snapshot(KNOWLEDGE, [milk(1, "egg-white", 150.0, 2), bottle(2, "gin", 700.0)], specs)
    found = use_up(bar)
    assert [(each.spec.name, each.serves) for each in found.drinks] == [("Large", 2), ("Small", 1)]
    (use,) = found.drinks[0].uses
    assert (use.bottle.id, use.amount) == (1, pytest.approx(120.0))
    (egg,) = found.ageing
    assert (egg.last, egg.used, egg.left) == (TODAY + timedelta(2), pytest.approx(150.0), 0.0)
    two = use_up(bar, 2)
    assert [(each.spec.name, each.serves) for each in two.drinks] == [("Large", 2)]


def test_a_ready_drink_goes_before_one_with_a_stand_in_that_uses_more():
    specs = [
        spec(line("egg-white", 30.0), name="Ready"),
        spec(line("egg-white", 60.0), line("london-dry-gin"), name="Stood in for"),
    ]
    bar = snapshot(KNOWLEDGE, [milk(1, "egg-white", 90.0, 2), bottle(2, "gin", 700.0)], specs)
    assert [each.spec.name for each in use_up(bar, 1).drinks] == ["Ready"]


def test_what_is_far_from_its_date_never_opened_or_poured_for_nothing():
    specs = [spec(line("gin"), name="Gin drink")]
    bottles = [milk(1, "gin", 100.0, 30), milk(2, "kummel", 100.0, 3), bottle(3, "genever", 50.0)]
    bar = snapshot(KNOWLEDGE, bottles, specs)
    found = use_up(bar)
    assert (found.drinks, [each.bottle.id for each in found.idle]) == ((), [2])
    assert [each.bottle.id for each in use_up(bar, days=40).ageing] == [2, 1]
    assert use_up(snapshot(KNOWLEDGE, bottles)).drinks == ()
    nothing = use_up(snapshot(KNOWLEDGE))
    assert (nothing.ageing, nothing.drinks, nothing.proved_best) == ((), (), True)


@pytest.mark.parametrize(("serves", "days"), [(0, 14), (-1, 14), (100, 14), (2, -1), (2, 400)])
def test_what_cannot_be_asked(serves, days):
    with pytest.raises(InvalidField):
        use_up(snapshot(KNOWLEDGE), serves, days=days)
