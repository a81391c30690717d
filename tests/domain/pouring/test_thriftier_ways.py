"""A farther way that takes less of the same bottles is a way of its own.

What is answered is held against every way there is, none left out.
"""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from barkeep.domain.ingredients.derivations import _Search, closest_per_leaves
from barkeep.domain.pouring.assessment import assess
from barkeep.domain.pouring.sourcing import choices, sourcing_for, thresholds
from tests.worlds import random_bar


def with_every_way(laid_out, sourcing):
    """The same lines, each with all ways that the search walks, however alike."""
    spec = laid_out.spec
    every = tuple(
        choices(
            line,
            derivations=sorted(
                (
                    way
                    for want in wants
                    for way in _Search(sourcing.derivations, want, buying=0).run()
                ),
                key=lambda each: each.rank,
            ),
            limits=thresholds(spec),
            supply=sourcing.supply,
            tree=sourcing.tree,
        )
        for line, wants in zip(laid_out.lines, laid_out.wants, strict=True)
    )
    return replace(laid_out, choices=every)


@pytest.mark.parametrize("within", ["close", "loose"])
def test_no_way_that_matters_is_left_out(within):
    compared = 0
    for seed in range(80):
        bar = random_bar(Random(seed))
        sourcing = sourcing_for(bar, within)
        for spec in bar.specs:
            laid_out = assess(spec, sourcing)
            every = with_every_way(laid_out, sourcing)
            for exact in (False, True):
                found, most = laid_out.most(exact=exact), every.most(exact=exact)
                assert found.whole == most.whole, (seed, spec.name, exact)
                compared += most.most > 0.0
    assert compared > 150


def test_of_ways_that_take_the_same_the_farther_is_kept_only_where_it_takes_less():
    way = next(
        each
        for seed in range(50)
        for each in _ways(random_bar(Random(seed)))
        if len(each.draws) == 1 and each.exact
    )
    (key,) = way.draws
    thrifty = replace(way, closeness=0.9, ratio=0.5, draws={key: 0.5 * way.draws[key]})
    wasteful = replace(way, closeness=0.8, ratio=2.0, draws={key: 2.0 * way.draws[key]})
    assert closest_per_leaves([wasteful, thrifty, way, way]) == (way, thrifty)


def _ways(bar):
    sourcing = sourcing_for(bar, "loose")
    for spec in bar.specs:
        for choice in assess(spec, sourcing).choices:
            yield from (each.derivation for each in choice)
