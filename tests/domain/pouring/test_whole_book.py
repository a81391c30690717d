"""What is decided for the whole book at once is what one spec at a time comes to."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from random import Random

import numpy as np
import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bottles.bottle import Level
from barkeep.domain.pouring.evening import evening_asked_once, evening_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import sourcing_for
from barkeep.domain.pouring.verdict import VERDICTS
from barkeep.domain.pouring.verdicts import drink_for, tonight, verdicts
from barkeep.domain.pouring.whole_book import (
    UNDECIDED,
    decide,
    decided_by_levels,
    distinct,
    spread,
)
from tests.domain.pouring.test_alternatives import with_choices
from tests.worlds import random_bar


def one_by_one(bar, within, serves):
    """Every spec's drink, each worked out by itself; best first, then by name."""
    sourcing = sourcing_for(bar, within)
    drinks = [drink_for(spec, bar, sourcing, serves) for spec in bar.all_specs]
    return sorted(
        drinks,
        key=lambda each: (VERDICTS.index(each.verdict), each.lacking, each.spec.name.casefold()),
    )


@pytest.mark.parametrize(
    ("within", "serves"), [("exact", 1), ("close", 1), ("close", 3), ("loose", 2)]
)
def test_the_book_at_once_is_each_spec_by_itself(within, serves):
    seen: Counter[str] = Counter()
    for seed in range(40):
        bar = with_choices(Random(seed), random_bar(Random(seed)))
        found, expected = verdicts(bar, within, serves), one_by_one(bar, within, serves)
        assert [bar.all_specs[each].name for each in found.order] == [
            each.spec.name for each in expected
        ]
        assert [found.of[each] for each in found.order] == [each.verdict for each in expected], seed
        assert list(tonight(bar, within, serves)) == expected
        evening = evening_of(bar, within, serves)
        assert [each.verdict for each in evening.placed] == [each.verdict for each in expected]
        once = evening_asked_once(bar, within, serves)
        assert once.placed == evening.placed
        assert [once.drink(each.spec) for each in once.placed] == expected
        looked_at = Random(seed).sample(evening.placed, len(evening.placed))
        assert {each.place: evening.drink(each.spec) for each in looked_at} == dict(
            enumerate(expected)
        )
        decision, sourcing = decide(bar, within, serves, Memory())
        seen["decided"] += int(np.count_nonzero(decision.codes != UNDECIDED))
        closer = decided_by_levels(decision, sourcing, serves)
        seen["by levels"] += len(decision.undecided) - len(closer.undecided)
        seen.update(each.verdict for each in expected)
    assert seen["decided"] > 60, "many of them by the arrays"
    assert seen["by levels"] > 30, "and many of those that levels bear on"
    assert all(
        seen[verdict] > 2 for verdict in VERDICTS if within != "exact" or verdict != "stand_in"
    )


def test_an_evening_knows_nothing_that_nobody_asked_for():
    evening = evening_of(random_bar(Random(1)))
    asked, other = evening.placed[0].spec, evening.placed[-1].spec
    assert evening.known(asked) is None
    drink = evening.drink(asked)
    assert evening.known(asked) is drink
    assert evening.known(other) is None


def test_the_next_evening_keeps_what_a_count_cannot_have_touched(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        snapshot = opened.snapshot
    memory = Memory()
    before = evening_of(snapshot, memory=memory)
    for each in before.placed:
        before.drink(each.spec)
    counted = next(each for each in snapshot.bottles if each.level.state == "open")
    level = replace(counted.level, amount=counted.level.amount / 2)
    bottles = tuple(
        replace(each, level=level) if each is counted else each for each in snapshot.bottles
    )
    bar = snapshot.changed(bottles=bottles)
    after = evening_of(bar, memory=memory)
    kept = [each for each in after.placed if after.known(each.spec)]
    assert len(before.placed) / 4 < len(kept) < len(before.placed)
    assert [after.drink(each.spec) for each in after.placed] == list(tonight(bar))


@pytest.mark.parametrize(("within", "serves"), [("close", 1), ("loose", 4)])
def test_an_evening_of_the_sample_and_of_an_empty_bar(sample_bar, clock, within, serves):
    with Bar.open(sample_bar, clock=clock) as opened:
        snapshot = opened.snapshot
    for bar in (snapshot, snapshot.changed(bottles=())):
        evening = evening_of(bar, within, serves)
        assert [evening.drink(each.spec) for each in evening.placed] == one_by_one(
            bar, within, serves
        )


def changed(chance: Random, bar):
    """The bar after one thing happened to it."""
    bottles, specs = list(bar.bottles), list(bar.specs)
    what = chance.choice(["count", "empty", "gone", "spec", "no spec", "not there", "nothing"])
    place = chance.randrange(len(bottles)) if bottles else None
    if what in ("count", "empty") and place is not None:
        amount = 0.0 if what == "empty" else chance.choice([5.0, 40.0, 700.0])
        bottles[place] = replace(bottles[place], level=Level(amount, "open"))
    elif what == "gone" and place is not None and len(bottles) > 1:
        del bottles[place]
    elif what == "spec":
        number = chance.randrange(len(specs))
        line = specs[number].lines[0]
        more = replace(line, quantity=(line.quantity or 10.0) + 7.0)
        specs[number] = replace(specs[number], lines=(more, *specs[number].lines[1:]))
    elif what == "no spec" and len(specs) > 1:
        del specs[0]
    settings = bar.settings
    if what == "not there":
        always = frozenset(
            key for key in bar.knowledge.tree if bar.knowledge.tree[key].always_there
        )
        settings = replace(settings, not_there=always - settings.not_there)
    return replace(bar, bottles=tuple(bottles), specs=tuple(specs), settings=settings)


def test_after_any_changes_the_answer_is_that_of_a_bar_asked_for_the_first_time():
    for seed in range(12):
        chance, memory = Random(seed), Memory()
        before = [random_bar(chance, specs=6)]
        for step in range(40):
            # Now and then back to a bar that was, as undo does.
            back = chance.random() < 0.2
            bar = chance.choice(before) if back else changed(chance, before[-1])
            before.append(bar)
            found, afresh = verdicts(bar, memory=memory), verdicts(bar)
            assert found == afresh, (seed, step)
            if step % 8 == 0:
                drinks = tonight(bar, memory=memory)
                assert drinks == tonight(bar), (seed, step)
                assert [each.verdict for each in drinks] == [found.of[at] for at in found.order]


def test_ragged_lists_are_spread_in_turn():
    row, place = spread(np.array([2, 0, 2]), np.array([2, 5, 1]))
    assert row.tolist() == [0, 1, 1, 2]
    assert place.tolist() == [7, 0, 1, 7]


def test_equal_numbers_of_one_owner_count_once():
    assert distinct(np.array([2, 2, 0, 2]), np.array([4, 4, 4, 9]), 4).tolist() == [1, 0, 2, 0]
    assert distinct(np.array([], int), np.array([], int), 2).tolist() == [0, 0]
