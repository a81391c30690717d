"""What decides whether something may be written is asked of the bar as it is then, not as read.

Two hold one bar open: the other writes what the first has not read when it writes itself.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from barkeep.application.imports import NamedText, preview
from barkeep.application.shelving import StillInUse
from barkeep.domain.amounts.units import OwnMeasure
from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.trials import Scale, Score, Trial
from barkeep.errors import DuplicateName, InvalidField, UnknownName
from tests.application.conftest import plough

NO_BITTERS = (UnknownName, "There is no ingredient called “(?i:rail.bitters)”")
NO_PLOUGH = (UnknownName, "There is no spec called “Snow Plough”")
BITTERS = Ingredient("rail-bitters", "Rail bitters", ("spirit",))
BITTERS_LABEL = Label("Rail bitters", "Tansy Lock", "rail-bitters", 200.0)
DASHES = Line("2 dashes rail bitters", "rail-bitters", 2.0, None, "dash", 1.6)
SIGNAL = Ingredient("signal-bitters", "Signal bitters", ("spirit",))


def bitters_gone(bar):
    bar.knowledge.remove_ingredient("rail-bitters")


def spec_gone(bar):
    bar.specs.remove(bar.snapshot.specs[0].id)


def another_scale(bar):
    bar.settings.change(replace(bar.snapshot.settings, scales=(Scale("Length", 1, 3),)))


def set_ladle(bar, read):
    ladle = OwnMeasure("ladle", 45.0, "ml")
    bar.settings.change(replace(read.settings, measures=(ladle,)), read.settings)


def import_milepost(bar, read):
    text = NamedText("specs.txt", "Milepost\n60 ml rail bitters\n")
    bar.imports.specs(preview(read, [text]))


def change_spec(bar, read):
    bar.specs.replace(replace(read.specs[0], lines=(DASHES,)), read.specs[0])


def set_recipe(bar, read):
    inputs = (Input("rail-bitters", 1.0),)
    bar.knowledge.set_recipe(MadeFrom("simple-syrup", inputs, 1.0, "Stir."))


def add_shoot(bar, read):
    drink = ShootDrink(read.specs[0].id, "Snow Plough")
    bar.shoots.add(Shoot(None, "Night train", date(2026, 11, 28), (drink,)))


def add_trial(bar, read):
    scored = (Score("", "Balance", 4.0),)
    bar.trials.add(Trial(None, read.specs[0].id, date(2026, 11, 2), scored))


# What the other writes, what is begun of what was read before that, and how that is refused.
CASES = {
    "a name for two kinds": (
        lambda bar: bar.knowledge.add_name("gin", "lamp spirit"),
        lambda bar, read: bar.knowledge.add_name("bourbon", "Lamp spirit"),
        (DuplicateName, "There is already an ingredient called “Lamp spirit”"),
    ),
    "a new kind of a name that was given": (
        lambda bar: bar.knowledge.add_name("gin", "signal bitters"),
        lambda bar, read: bar.knowledge.add_ingredient(SIGNAL),
        (DuplicateName, "There is already an ingredient called “Signal bitters”"),
    ),
    "a measure of a name that was given": (
        lambda bar: bar.knowledge.add_name("gin", "ladle gin"),
        set_ladle,
        (InvalidField, "ladle"),
    ),
    "a kind that was taken into use": (
        lambda bar: bar.inventory.add_product(BITTERS_LABEL),
        lambda bar, read: bitters_gone(bar),
        (StillInUse, "the product Tansy Lock Rail bitters still refers to it"),
    ),
    "a bottle of a kind that is gone": (
        bitters_gone,
        lambda bar, read: bar.inventory.receive_new(BITTERS_LABEL),
        NO_BITTERS,
    ),
    "a product of a kind that is gone": (
        bitters_gone,
        lambda bar, read: bar.inventory.add_product(BITTERS_LABEL),
        NO_BITTERS,
    ),
    "a label changed to a kind that is gone": (
        bitters_gone,
        lambda bar, read: bar.inventory.change_product(read.products[0].id, BITTERS_LABEL),
        NO_BITTERS,
    ),
    "a spec of a kind that is gone": (
        bitters_gone,
        lambda bar, read: bar.specs.add([Spec("Milepost", (DASHES,))]),
        NO_BITTERS,
    ),
    "a spec changed to a kind that is gone": (bitters_gone, change_spec, NO_BITTERS),
    "an import of a kind that is gone": (bitters_gone, import_milepost, NO_BITTERS),
    "a stand-in that is gone": (
        bitters_gone,
        lambda bar, read: bar.knowledge.add_stand_in(
            StandIn("gin", "rail-bitters", 0.5, 1.0, "so")
        ),
        NO_BITTERS,
    ),
    "a recipe of a kind that is gone": (bitters_gone, set_recipe, NO_BITTERS),
    "a kind that is gone made": (
        bitters_gone,
        lambda bar, read: bar.house.make("rail-bitters", 100.0),
        NO_BITTERS,
    ),
    "a par of a kind that is gone": (
        bitters_gone,
        lambda bar, read: bar.settings.set_par("rail-bitters", 100.0),
        NO_BITTERS,
    ),
    "a kind that is gone on the list": (
        bitters_gone,
        lambda bar, read: bar.shopping.add([ToBuy("rail-bitters", 1)]),
        NO_BITTERS,
    ),
    "a riff of a spec that is gone": (
        spec_gone,
        lambda bar, read: bar.specs.add([plough("Snow Blower", riff_of="Snow Plough")]),
        NO_PLOUGH,
    ),
    "a drink whose spec is gone": (spec_gone, add_shoot, NO_PLOUGH),
    "a score on a scale that is gone": (
        another_scale,
        add_trial,
        (UnknownName, "There is no scale called “Balance”"),
    ),
}


@pytest.mark.parametrize("case", CASES)
def test_what_was_free_or_there_when_it_was_read_is_asked_again(bar, gin, reopen, case):
    theirs, mine, (error, said) = CASES[case]
    bar.knowledge.add_ingredient(BITTERS)
    bar.specs.add([plough()])
    read = bar.snapshot
    other = reopen()
    theirs(other)
    heard = []
    bar.subscribe(heard.append)
    with pytest.raises(error, match=said):
        mine(bar, read)
    assert reopen().snapshot == other.snapshot
    assert heard == [] and bar.snapshot is read and bar.refresh()
    assert len(heard) == 1 and bar.snapshot == other.snapshot


def test_what_the_other_gave_back_may_be_taken_though_it_was_not_read(bar, reopen):
    bar.knowledge.add_name("gin", "lamp spirit")
    other = reopen()
    other.undo()
    bar.knowledge.add_name("bourbon", "lamp spirit")
    other.refresh()
    assert other.snapshot == bar.snapshot
    assert bar.snapshot.knowledge.tree.by_name["lamp spirit"] == "bourbon"
