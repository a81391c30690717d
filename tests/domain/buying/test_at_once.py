"""What arrays decide of purchases is what looking at each drink by itself finds."""

from __future__ import annotations

import os
from dataclasses import replace
from random import Random

import numpy as np
import pytest

from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring import whole_book
from barkeep.domain.pouring.memory import Memory
from tests.worlds import TODAY, random_bar

SEEDS = range(int(os.environ.get("SEEDS", "40")))


def one_by_one(bar, within):
    """The same answer with nothing decided by arrays, so that every drink is looked at."""

    def undecided(found, sourcing, serves):
        at_once = decided(found, sourcing, serves)
        return replace(at_once, codes=np.full_like(at_once.codes, whole_book.UNDECIDED))

    decided = whole_book.decided
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(whole_book, "decided", undecided)
        return next_bottle(bar, within)


@pytest.mark.parametrize("seed", SEEDS)
def test_on_random_bars(seed):
    chance = Random(seed)
    bar, memory = random_bar(chance), Memory()
    within = chance.choice(["exact", "close", "loose"])
    for _ in range(2):
        assert next_bottle(bar, within, memory) == one_by_one(bar, within)
        levels = [replace(each.level, amount=chance.choice([5.0, 60.0])) for each in bar.bottles]
        both = zip(bar.bottles, levels, strict=True)
        bar = bar.changed(bottles=tuple(replace(each, level=level) for each, level in both))


@pytest.mark.parametrize(("seed", "left"), [(1, 1.0), (2, 0.06), (3, 0.02)])
def test_on_bars_like_a_real_one(knowledge, seed, left):
    """With plenty in the bottles, and with so little that many drinks are short for that."""
    bar = invented_bar(knowledge, 150, 60, seed=seed, on=TODAY)
    little = [
        replace(each, level=replace(each.level, amount=each.level.amount * left))
        for each in bar.bottles
    ]
    bar = bar.changed(bottles=tuple(little))
    found = next_bottle(bar)
    assert found == one_by_one(bar, "close")
    assert any(each.unlocks for each in found) and any(each.nearest for each in found)
