"""What a bar gives of an ingredient, and that none of it is ever handed out twice."""

from __future__ import annotations

from random import Random

import pytest

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.making.available import available_in
from barkeep.domain.making.batch_measures import ForServes, FromIngredient
from barkeep.domain.making.batches import batch
from barkeep.domain.pouring.supply import supply_of
from barkeep.errors import CannotBatch
from tests import worlds
from tests.walked import walked

FRESH = ("lemon", "lime", "orange", "whole-egg", "honey", "lemon-juice", "lime-juice", "mint")


def bar_of(knowledge, **there: float) -> Snapshot:
    """A bar with so much of each ingredient, dashes written as underscores."""
    keys = {key.replace("_", "-"): amount for key, amount in there.items()}
    return worlds.snapshot(
        knowledge,
        [worlds.bottle(number, key, much) for number, (key, much) in enumerate(keys.items(), 1)],
    )


@pytest.mark.parametrize(
    ("there", "wanted", "most"),
    [
        ({"lemon": 6}, "lemon-juice", 228.0),
        ({"lemon": 2, "lemon_juice": 30}, "lemon-juice", 106.0),
        ({"lemon": 2}, "lemon-peel", 8.0),
        ({"egg": 3}, "egg-white", 96.0),
        ({"honey": 100}, "honey-syrup", 198.8),
        ({"vodka": 10}, "lemon-juice", 0.0),
    ],
)
def test_what_can_be_had(knowledge, there, wanted, most):
    stock = available_in(bar_of(knowledge, **there))
    assert stock.most(wanted, 1e6).amount == pytest.approx(most, rel=1e-6)


def test_a_peeled_lemon_is_still_squeezed_and_a_wedge_is_not(knowledge):
    stock = available_in(bar_of(knowledge, lemon=2))
    assert stock.take("lemon-peel", 8).amount == pytest.approx(8.0)
    assert stock.take("lemon-juice", 1e6).amount == pytest.approx(76.0)
    again = available_in(bar_of(knowledge, lime=2))
    wedges = again.take("lime-wedge", 6).amount
    left = again.most("lime-juice", 1e6).amount
    assert (wedges, left) == pytest.approx((6.0, 26.0))


def random_bar(chance: Random, knowledge, specs) -> Snapshot:
    """Some of what the specs take, and fresh things, in odd amounts."""
    keys = sorted(
        {key for spec in specs for key in spec.wanted} | (set(FRESH) & set(knowledge.tree))
    )
    some = chance.sample(keys, 3 * len(keys) // 4)
    bottles = [
        worlds.bottle(number, key, round(chance.uniform(0.5, 700.0), 2))
        for number, key in enumerate(some, 1)
    ]
    return worlds.snapshot(knowledge, bottles, specs)


@walked("seed", range(12))
def test_a_limiting_batch_never_exceeds_what_there_is(knowledge, seed):
    chance = Random(seed)
    specs = tuple(chance.sample(knowledge.classics, 6))
    snapshot = random_bar(chance, knowledge, specs)
    supply, tree = supply_of(snapshot), knowledge.tree
    for spec in specs:
        for line in spec.required_lines:
            have = supply.total_of_kind(line.ingredient, tree)
            if not have or not line.quantity:
                continue
            try:
                made = batch(spec, snapshot, FromIngredient(line.ingredient, have))
            except CannotBatch:
                continue
            pivots = [each for each in made.lines if each.is_pivot]
            assert pivots
            assert sum(each.amount for each in pivots) <= have * (1 + 1e-9)
            unmet = {each.ingredient for each in made.short}
            for each in made.lines:
                if each.taken is not None and each.ingredient not in unmet:
                    most = available_in(snapshot).most(each.ingredient, 1e9).amount
                    assert each.amount <= most * (1 + 1e-6)


def test_lines_that_share_their_fruit_are_short_together(knowledge):
    spec = next(each for each in knowledge.classics if each.name == "Army and Navy")
    snapshot = bar_of(knowledge, london_dry_gin=700, lemon=2, orgeat=700, aromatic_bitters=50)
    made = batch(spec, snapshot, ForServes(4))
    assert [each.ingredient for each in made.short] == ["lemon-juice"]
    (short,) = made.short
    assert short.have == pytest.approx(76.0, rel=1e-6)
