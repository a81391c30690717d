"""A bar made of a document is equal to the one the document was made of."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from barkeep.application.backups import restore
from barkeep.application.bar import Bar
from barkeep.application.imports import NamedText, preview
from barkeep.domain.amounts.units import OwnMeasure
from barkeep.domain.bar.of_kinds import HousePour, ShelfLife
from barkeep.domain.bar.pars import Par
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import BottleFacts, Label, Tare
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.domain.specs.trials import Score, Trial
from barkeep.errors import UserError
from barkeep.store.bottles import entries_by_bottle
from barkeep.store.everything import read_everything
from barkeep.store.store import Store
from tests.conftest import NOON


@pytest.fixture
def clock():
    return lambda: NOON


def again(bar: Bar, folder: Path) -> Bar:
    """The bar that the document of another one makes."""
    document = folder / "all.json"
    bar.write_file(document, bar.backups.everything())
    copy = folder / "again.bar"
    assert restore(copy, document, folder, lambda: NOON).kept is None
    return Bar.open(copy, clock=lambda: NOON)


PARTS = ("products", "bottles", "specs", "trials", "shoots", "settings")


def assert_equal(one: Bar, other: Bar) -> None:
    """In all that answers are made of, in every entry of the ledger, and in what is removed."""
    for part in PARTS:
        assert getattr(one.snapshot, part) == getattr(other.snapshot, part), part
    assert one.snapshot.knowledge == other.snapshot.knowledge
    assert one.check() == other.check() == ()
    ledgers, rows = [], []
    for bar in (one, other):
        store = Store.open(bar.path, lambda: NOON)
        with store.reading() as connection:
            ledgers.append(entries_by_bottle(connection))
            rows.append(read_everything(connection))
        store.close()
    assert ledgers[0] == ledgers[1]
    assert rows[0] == rows[1]


def test_the_sample_comes_back(sample_bar, tmp_path, clock):
    with Bar.open(sample_bar, clock=clock) as bar, again(bar, tmp_path) as copy:
        assert len(copy.snapshot.bottles) > 60 and len(copy.snapshot.shoots) > 4
        assert_equal(bar, copy)
        assert copy.undo_label is None  # what undo remembers is not in a document


def test_a_bar_that_holds_nothing_comes_back(tmp_path, clock):
    with Bar.open(tmp_path / "new.bar", clock=clock) as bar, again(bar, tmp_path) as copy:
        assert_equal(bar, copy)


def random_text(rng: random.Random) -> str:
    letters = 'ab cé½“”\n\t"\\</script>=+@梅酒\u202e\u0000\U0001f378'
    return "x" + "".join(rng.choice(letters) for _ in range(rng.randrange(12))).rstrip() + "x"


def random_step(bar: Bar, rng: random.Random) -> bool:
    """Do one thing to the bar, or be refused; whether it was done."""
    name = random_text(rng)
    seen, day = bar.snapshot, date(2026, 11, 1) + timedelta(days=rng.randrange(60))
    bottle = rng.choice(seen.bottles).id
    spec = rng.choice(seen.specs)
    shoot = rng.choice(seen.shoots)
    line = Line(f"30 ml {name}", "gin", rng.uniform(1, 90), rng.choice([None, 95.5]), "ml", 30.0,
                optional=rng.random() < 0.5, note=name, min_abv_percent=rng.choice([None, 50.0]),
                alternatives=rng.choice([(), ("rum",)]), called=name,
                stated=rng.choice([(), ("aged",)]))  # fmt: skip
    drink = Spec(name, (line, line)[: rng.randrange(1, 3)], method=name, technique="stirred",
                 glass="coupe", notes=name, serves=rng.choice([1.0, 2.5]), credit=name,
                 tags=rng.choice([(), (name, "night")]), source=name,
                 unsettled=rng.choice([(), (UnsettledLine(name, 1, "what?"),)]))  # fmt: skip
    label = Label(
        name,
        random_text(rng),
        rng.choice(["gin", "white-rum"]),
        350.1,
        abv_percent=rng.choice([None, 43.2]),
        price=rng.choice([None, 19.99]),
    )
    facts = BottleFacts(received=day, tare=rng.choice([None, Tare(500.25, 1.0)]),
                        dash_ml=rng.choice([None, 0.7]))  # fmt: skip
    steps = [
        bar.undo,
        bar.undo,
        bar.redo,
        lambda: bar.inventory.receive_new(label, rng.uniform(0, 350), facts),
        lambda: bar.inventory.pour(bottle, rng.uniform(0, 40), name),
        lambda: bar.inventory.correct(bottle, rng.uniform(-20, 20), name),
        lambda: bar.inventory.empty(bottle, name),
        lambda: bar.inventory.remove(bottle),
        lambda: bar.inventory.redate(bottle, None, day),
        lambda: bar.inventory.remove_product(rng.choice(seen.products).id),
        lambda: bar.inventory.reorder([each.id for each in rng.sample(seen.bottles, 3)]),
        lambda: bar.specs.add([drink]),
        lambda: bar.specs.remove(spec.id),
        lambda: bar.trials.add(
            Trial(None, spec.id, day, (Score(name, "Balance", 3.5),), name, name)
        ),
        lambda: bar.shoots.remove(shoot.id),
        lambda: bar.knowledge.add_ingredient(Ingredient("", name, ("gin",), abv_percent=41.5)),
        lambda: bar.knowledge.add_stand_in(
            StandIn("gin", "white-rum", 0.55, 1.1, name, ("accent",))
        ),
        lambda: bar.knowledge.set_recipe(
            MadeFrom("grenadine", (Input("sugar", 100.5),), 200.0, name)
        ),
        lambda: bar.settings.change(settings(bar, rng, name)),
    ]
    try:
        rng.choice(steps)()
    except UserError:
        return False
    return True


def settings(bar: Bar, rng: random.Random, name: str) -> Settings:
    product = rng.choice(bar.snapshot.products)
    return replace(
        bar.snapshot.settings,
        name=name,
        pars=(Par("gin", rng.uniform(1, 900)),),
        measures=(OwnMeasure("zzladle", 1.5, "oz"),),
        house=(HousePour(product.ingredient, product.id),),
        keeps=(ShelfLife("sweet-vermouth", rng.randrange(1, 90)),),
        not_there=rng.choice([frozenset(), frozenset({"ice"})]),
    )


@pytest.mark.parametrize("seed", range(4))
def test_a_random_bar_comes_back(sample_bar, tmp_path, clock, seed):
    rng = random.Random(seed)
    with Bar.open(sample_bar, clock=clock) as bar:
        assert sum(random_step(bar, rng) for _ in range(60)) > 30
        with again(bar, tmp_path) as copy:
            assert_equal(bar, copy)


def test_where_specs_are_wanted_it_says_what_it_is(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as bar:
        found = preview(bar.snapshot, [NamedText("all.json", bar.backups.everything())])
    assert [each.message for each in found.problems] == [
        "it holds a whole bar and no list of specs; restore it by “barkeep import”, or in the "
        "window by File, Backups…"
    ]
