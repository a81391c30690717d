"""The snapshot after any changes and undos, beside one that is read from nothing."""

from __future__ import annotations

import os
from dataclasses import replace
from random import Random

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.specs.trials import Trial
from barkeep.errors import UserError
from tests.application.conftest import NOON, gin_draft, plough

SEEDS = range(int(os.environ.get("SEEDS", "3")))
STEPS = 40
KINDS = ("gin", "london-dry-gin", "navy-strength-gin", "bourbon", "sweet-vermouth", "lime-juice")
NAMES = ("Snow Plough", "ash lamp", "Ash Lantern", "Çedar Fog", "Signal Daisy", "zinc", "Night 10")
PARTS = ("products", "bottles", "specs", "trials", "shoots", "settings", "all_specs", "usable")


def picture(bar: Snapshot) -> dict[str, object]:
    """All that is read of a bar, and what its book and its shelf come to."""
    knowledge = bar.knowledge
    return {
        **{part: getattr(bar, part) for part in PARTS},
        "tree": tuple(knowledge.tree),
        "stand-ins": knowledge.stand_ins,
    }


def one_change(bar: Bar, chance: Random) -> None:
    """Anything that can be done to a bar."""
    shot = bar.snapshot
    specs, bottles, products = shot.specs, shot.bottles, shot.products
    lines = tuple(chance.sample([*plough().lines, *plough().lines], chance.randint(1, 3)))
    draft = gin_draft(
        name=chance.choice(NAMES),
        ingredient=chance.choice(KINDS),
        size=chance.choice([500.0, 700.0, 700.0]),
        price=chance.choice([None, 12.0]),
    )
    fresh = [plough(f"{chance.choice(NAMES)} {each}") for each in range(chance.randint(1, 3))]
    match chance.randrange(16):
        case 0 | 1:
            bar.specs.add([plough(chance.choice(NAMES), lines=lines)])
        case 2:
            bar.specs.add(fresh)
        case 3 | 4 if specs:
            new = replace(chance.choice(specs), name=chance.choice(NAMES), lines=lines)
            bar.specs.replace(new)
        case 5 if specs:
            bar.specs.remove(chance.choice(specs).id or 0)
        case 6:
            bar.inventory.receive_new(draft)
        case 7 if products:
            bar.inventory.change_product(chance.choice(products).id, draft)
        case 8 if products:
            bar.inventory.remove_product(chance.choice(products).id)
        case 9 if bottles:
            bar.inventory.pour(chance.choice(bottles).id, 30.0)
        case 10 if bottles:
            bar.inventory.remove(chance.choice(bottles).id)
        case 11 if bottles:
            ids = [each.id for each in bottles]
            bar.inventory.reorder(chance.sample(ids, len(ids)))
        case 12 if specs:
            bar.trials.add(Trial(None, chance.choice(specs).id or 0, NOON.date(), notes="dry"))
        case 13:
            shown = replace(shot.settings, classics=not shot.settings.classics)
            bar.settings.change(replace(shown, dash_ml=chance.choice([0.8, 0.9])))
        case 14:
            bar.redo()
        case _:
            bar.undo()


@pytest.mark.parametrize("seed", SEEDS)
def test_after_any_changes_and_undos_it_is_what_is_read_from_nothing(bar, reopen, seed):
    chance, done = Random(seed), 0
    for _ in range(STEPS):
        _ = bar.snapshot.all_specs
        try:
            one_change(bar, chance)
        except UserError:
            continue
        done += 1
        with reopen() as anew:
            assert picture(bar.snapshot) == picture(anew.snapshot)
    assert done > STEPS // 4 and bar.check() == ()


def test_a_changed_spec_leaves_every_other_the_very_same(bar):
    bar.specs.add([plough(f"Lamp {each:02}") for each in range(20)])
    before = {each.id: each for each in bar.snapshot.all_specs}
    middle = bar.snapshot.specs[10]
    bar.specs.replace(replace(middle, name="Zinc", notes="Colder."))
    after = {each.id: each for each in bar.snapshot.all_specs}
    others = before.keys() - {middle.id}
    assert all(after[each] is before[each] for each in others)
    assert [each.name for each in bar.snapshot.specs][-1] == "Zinc"
    bar.undo()
    assert bar.snapshot.spec_by_id[middle.id or 0] == middle
    assert all(bar.snapshot.spec_by_id[each] is before[each] for each in others if each)


def test_a_changed_label_is_on_all_its_bottles_and_no_other_is_read(bar, gin):
    other = bar.inventory.receive_new(gin_draft(name="dry gin")).value
    bar.inventory.receive(gin.product.id)
    before = bar.snapshot.bottle_by_id
    bar.inventory.change_product(gin.product.id, gin_draft(price=99.0))
    after = bar.snapshot.bottle_by_id
    assert [each.product.price for each in after.values()].count(99.0) == 2
    kept = [each for each in after if after[each] is before[each]]
    assert kept == [each for each, one in before.items() if one.product.name == "dry gin"], other
