"""Serves from shared bottles, against an independent solver."""

from __future__ import annotations

import math
from random import Random

import networkx as nx
import pytest

from barkeep.domain.pouring.serves import Way, most_serves, whole_serves
from tests.walked import walked


def ways(*pools: str, need: float) -> list[Way]:
    return [Way({(pool, 0): need}) for pool in pools]


def test_lines_that_share_a_bottle_share_its_volume():
    supply = {("gin", 0): 700.0}
    alone = most_serves([ways("gin", need=60)], supply)
    both = most_serves([ways("gin", need=60), ways("gin", need=10)], supply)
    assert alone.whole == 11
    assert both.whole == 10
    assert both.runs_out == ("gin", 0)


def test_a_line_with_a_choice_leaves_the_shared_bottle_to_the_other():
    supply = {("london", 0): 120.0, ("old tom", 0): 120.0}
    lines = [ways("london", need=60), ways("london", "old tom", need=60)]
    assert most_serves(lines, supply).most == pytest.approx(2.0)


def test_what_is_always_there_limits_nothing():
    free = most_serves([[Way({})]], {})
    assert math.isinf(free.most)
    assert free.whole is None


def test_a_line_nothing_meets_allows_no_serve():
    assert most_serves([ways("gin", need=60), []], {("gin", 0): 700.0}).whole == 0


def test_the_first_to_run_out_is_named():
    supply = {("gin", 0): 700.0, ("lime juice", 0): 45.0}
    found = most_serves([ways("gin", need=60), ways("lime juice", need=22.5)], supply)
    assert (found.whole, found.runs_out) == (2, ("lime juice", 0))


def test_a_recipe_draws_on_both_of_its_inputs():
    orgeat = Way({("almonds", 0): 4.0, ("flower water", 0): 0.5})
    supply = {("almonds", 0): 40.0, ("flower water", 0): 2.0}
    found = most_serves([[orgeat]], supply)
    assert found.most == pytest.approx(4.0)
    assert found.runs_out == ("flower water", 0)


def serves_by_flow(lines: list[list[Way]], supply: dict) -> float:
    """Halve the interval of S, asking a maximum flow whether S serves fit.

    Valid where each way draws one pool and a pool's need is the line's own.
    """
    low, high = 0.0, 1000.0
    for _ in range(60):
        middle = (low + high) / 2
        graph = nx.DiGraph()
        for number, line in enumerate(lines):
            ((_, need),) = line[0].draws.items()
            graph.add_edge("source", number, capacity=middle * need)
            for way in line:
                (pool,) = way.draws
                graph.add_edge(number, pool)
        for pool, there in supply.items():
            graph.add_edge(pool, "sink", capacity=there)
        asked = sum(middle * next(iter(line[0].draws.values())) for line in lines)
        fits = nx.maximum_flow_value(graph, "source", "sink") >= asked - 1e-7
        low, high = (middle, high) if fits else (low, middle)
    return low


@walked("seed", range(80))
def test_serves_equal_those_of_a_maximum_flow_on_random_shared_bottles(seed):
    chance = Random(seed)
    pools = [f"p{number}" for number in range(chance.randint(1, 5))]
    supply = {(pool, 0): float(chance.randint(5, 700)) for pool in pools}
    lines = [
        ways(
            *chance.sample(pools, chance.randint(1, len(pools))),
            need=float(chance.choice([5, 15, 22.5, 30, 60])),
        )
        for _ in range(chance.randint(1, 5))
    ]
    flow = serves_by_flow(lines, supply)
    assert most_serves(lines, supply).most == pytest.approx(flow, rel=1e-6)
    assert whole_serves(lines, supply).whole == int(flow + 1e-6)


@walked("seed", range(60))
def test_whole_serves_equal_the_programme_where_ways_draw_on_several_pools(seed):
    chance = Random(seed)
    pools = [(f"p{number}", 0) for number in range(4)]
    supply = {pool: float(chance.randint(5, 300)) for pool in pools}

    def way() -> Way:
        drawn = chance.sample(pools, chance.randint(1, 2))
        return Way({pool: float(chance.choice([5, 15, 30])) for pool in drawn})

    lines = [[way() for _ in range(chance.randint(1, 3))] for _ in range(chance.randint(1, 4))]
    assert whole_serves(lines, supply).whole == most_serves(lines, supply).whole
