"""Plans over thousands of specs: proved best where there is something to go by, else never worse
than taking bottles one by one. Prints what they take."""

from __future__ import annotations

from datetime import date
from time import process_time

import pytest

from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.application.knowledge import shipped
from barkeep.domain.buying.limits import Limits
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.buying.on_paper import with_bought
from barkeep.domain.buying.packages import purchase_of
from barkeep.domain.buying.planning import buying_plan
from tests.worlds import makeable

SPECS, ON = 5_000, date(2026, 11, 30)


def large_bar(bottles: int):
    return invented_bar(shipped(), SPECS, bottles, seed=1, on=ON)


@pytest.mark.benchmark
@pytest.mark.parametrize("bottles", [40, 60])
def test_five_bottles_are_proved_best_for_a_bar_of_25_kinds_and_more(bottles):
    bar = large_bar(bottles)
    assert len(bar.usable) >= 25
    begun = process_time()
    plan = buying_plan(bar, Limits(bottles=5), seconds=600.0)
    print(f"\n{len(bar.usable)} kinds, {len(plan.unlocks)} drinks: {process_time() - begun:.1f} s")
    assert plan.proved_best
    before = makeable(bar)
    after = makeable(with_bought(bar, [each.bought for each in plan.steps]))
    assert after - before == set(plan.unlocks)


@pytest.mark.benchmark
def test_from_nothing_it_is_no_worse_than_one_bottle_after_another():
    bar = large_bar(0)
    begun = process_time()
    plan = buying_plan(bar, Limits(bottles=8), seconds=20.0)
    print(f"\n{len(plan.unlocks)} of at most {plan.upper_bound:g}: {process_time() - begun:.1f} s")
    one_by_one = bar
    for _ in range(8):
        best = next_bottle(one_by_one)[0]
        one_by_one = with_bought(one_by_one, [purchase_of(best.ingredient, one_by_one)])
    assert len(plan.unlocks) >= len(makeable(one_by_one)) - len(makeable(bar))
    assert len(plan.unlocks) <= plan.upper_bound
