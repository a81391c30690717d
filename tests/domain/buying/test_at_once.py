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
from tests.domain.pouring.test_whole_book import changed
from tests.walked import walked
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


@walked("seed", SEEDS)
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


def test_after_any_changes_the_answer_is_that_of_a_bar_asked_for_the_first_time():
    for seed in range(6):
        chance, memory = Random(seed), Memory()
        before = [random_bar(chance, specs=6)]
        for step in range(10):
            # Now and then back to a bar that was, as undo does.
            back = chance.random() < 0.2
            bar = chance.choice(before) if back else changed(chance, before[-1])
            before.append(bar)
            assert next_bottle(bar, memory=memory) == next_bottle(bar), (seed, step)


def test_a_count_of_a_bar_like_a_real_one_changes_what_it_changes_afresh(knowledge):
    bar, memory = invented_bar(knowledge, 80, 50, seed=4, on=TODAY), Memory()
    answers = [next_bottle(bar, memory=memory)]
    for number in range(0, 48, 12):
        one = bar.bottles[number]
        level = replace(one.level, amount=2.0)
        now = (replace(each, level=level) if each is one else each for each in bar.bottles)
        bar = bar.changed(bottles=tuple(now))
        answers.append(next_bottle(bar, memory=memory))
        assert answers[-1] == next_bottle(bar)
        assert next_bottle(bar, memory=memory) is answers[-1]
    assert len({tuple(each.unlocks for each in some) for some in answers}) > 1
