"""How long a shoot takes to be weighed, as ratios to one bare linear programme of its size.

Nothing here asserts a time: the figures are printed for people to read
(`python -m pytest tests/benchmarks -m benchmark -s`).
"""

from __future__ import annotations

import pytest
from scipy.optimize import linprog

from barkeep.application.bar import Bar
from barkeep.domain.shoots.drinks import orders_of
from barkeep.domain.shoots.log import as_planned, expected_after
from barkeep.domain.shoots.mise_en_place import mise_en_place
from barkeep.domain.shoots.plan import plan
from tests.benchmarks.test_answers import clocked, median_of

pytestmark = pytest.mark.benchmark


def bare_programme():
    """Twelve lines of three ways each over thirty pools, nothing built around it."""
    ways = 36
    drawn = [[30.0 if way % 30 == pool else 0.0 for way in range(ways)] for pool in range(30)]
    met = [[1.0 if way // 3 == line else 0.0 for way in range(ways)] for line in range(12)]
    return linprog([1.0] * ways, drawn, [500.0] * 30, met, [3.0] * 12, method="highs")


def test_a_shoot_is_weighed(sample_bar, clock, capsys):
    with Bar.open(sample_bar, clock=clock) as bar:
        shoots, snapshot = bar.snapshot.shoots, bar.snapshot
    planned = next(each for each in shoots if each.state == "planned")
    filmed = next(each for each in shoots if each.state == "filmed")
    baseline = median_of([clocked(bare_programme) for _ in range(15)])
    questions = {
        "can it all be poured, with stand-ins looked for": lambda: plan(planned, snapshot),
        "what is to be made ready": lambda: mise_en_place(orders_of(planned, snapshot), snapshot),
        "what each bottle should hold now": lambda: expected_after(
            filmed, snapshot, as_planned(filmed)
        ),
    }
    with capsys.disabled():
        print(f"\none bare programme: {baseline:.1f} ms (the baseline)")
        for name, ask in questions.items():
            took = median_of([clocked(ask) for _ in range(5)])
            print(f"{name}: {took:.1f} ms, {took / baseline:.1f} of that")
    assert not plan(planned, snapshot).possible and plan(filmed, snapshot).possible
