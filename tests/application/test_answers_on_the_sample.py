"""The claims of Next bottle on the sample bar, each really bought."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.supply import purchase
from barkeep.domain.pouring.verdicts import tonight
from tests.how_much import some_of
from tests.worlds import makeable


@pytest.fixture
def bar(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def bought(bar: Bar, key: str) -> None:
    """Receive one ordinary purchase, as the owner would."""
    ingredient = bar.snapshot.knowledge.tree[key]
    draft = Label(
        name=f"Shunter {ingredient.name}",
        maker="Old Sidings",
        ingredient=key,
        size=purchase(key, bar.snapshot.knowledge.tree).amount,
        unit=ingredient.unit,
        abv_percent=ingredient.abv_percent,
    )
    bar.inventory.receive_new(draft)


def test_really_buying_each_candidate_gives_exactly_the_drinks_claimed(bar):
    """Through the store: receive, ask Tonight again, undo, and the answer is as before."""
    memory = Memory()
    before = makeable(bar.snapshot, "close", memory)
    candidates = [form for each in next_bottle(bar.snapshot) for form in each.forms]
    assert len(candidates) > 250
    turning = [each for each in candidates if each.unlocks]
    others = [each for each in candidates if not each.unlocks]
    for candidate in (*some_of(turning, 2), *some_of(others, 8)):
        bought(bar, candidate.ingredient)
        after = makeable(bar.snapshot, "close", memory)
        assert after - before == set(candidate.unlocks), candidate
        assert before <= after
        bar.undo()
        assert makeable(bar.snapshot, "close", memory) == before


def test_every_state_shows_on_the_sample_bar(bar):
    verdicts = [drink.verdict for drink in tonight(bar.snapshot)]
    assert len(verdicts) >= 100
    assert {"ready", "stand_in", "one_short", "short"} == set(verdicts)
