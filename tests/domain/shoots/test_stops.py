"""Shoots in the states an owner's are in, each with the stop that is expected to be next.

The cases were written down before the answer was, in the words beside them.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import pytest

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.shoots import (
    ChosenPour,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootLog,
)
from barkeep.domain.buying.for_shoot import stops_for
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.shoots.drinks import orders_of
from barkeep.domain.shoots.mise_en_place import mise_en_place
from barkeep.domain.shoots.plan import as_of, plan
from barkeep.domain.shoots.stops import STOPS
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from tests import worlds
from tests.worlds import TODAY

DAY = timedelta(days=1)
KINDS = ("gin", "rum", "rye", "amaro", "sherry", "brandy", "aquavit")
TREE = FamilyTree(
    {
        **{each: Ingredient(each, each, typical_size=700.0) for each in KINDS},
        "sugar": Ingredient("sugar", "sugar", unit="g", typical_size=1000.0),
        "water": Ingredient("water", "water", always_there=True),
        "syrup": Ingredient("syrup", "syrup", typical_size=500.0),
        "cordial": Ingredient("cordial", "cordial", typical_size=500.0),
    }
)
RECIPES = tuple(
    MadeFrom(made, (Input("sugar", 500.0), Input("water", 500.0)), 800.0, "Stir.", 1.0)
    for made in ("syrup", "cordial")
)
KNOWLEDGE = Knowledge(TREE, (StandIn("gin", "rum", 0.7, 1.0, "both burn"),), (), RECIPES)


def line(key, amount=30.0):
    return Line(f"{amount:g} ml {key}", key, amount, None, "ml", amount)


SPECS = (
    Spec("Plain", (line("gin"),), id=1),
    Spec("Long", tuple(map(line, KINDS)), id=2),
    Spec("Sweet", (line("gin"), line("syrup")), id=3),
    Spec("Sweeter", (line("gin"), line("syrup"), line("cordial")), id=4),
    Spec("Asked", (line("gin"),), id=5, unsettled=(UnsettledLine("a bit of glim", 1, "?"),)),
)
SUGAR = 1000.0


def bar(*there, sugar=SUGAR, made=()):
    """So many ml of each kind that is there, sugar, and what was made here."""
    bottles = [worlds.bottle(number, key, 700.0) for number, key in enumerate(there, 1)]
    if sugar:
        bottle = worlds.bottle(90, "sugar", sugar, 1000.0)
        bottles.append(replace(bottle, product=replace(bottle.product, unit="g")))
    for number, key in enumerate(made, 91):
        bottle = worlds.bottle(number, key, 400.0)
        bottles.append(replace(bottle, product=replace(bottle.product, house_made=True)))
    return worlds.snapshot(KNOWLEDGE, bottles, SPECS)


def shoot(*names, on=TODAY + 3 * DAY, state="planned", serves=2, **more):
    numbers = {each.name: each.id for each in SPECS}
    drinks = tuple(
        ShootDrink(numbers.get(name, 99), name, ServeCounts(0, serves, 0)) for name in names
    )
    return Shoot(7, "Night train", on, drinks, state, **more)


def logged_bottle(number, counted=None):
    return LoggedBottle(number, f"Bottle {number}", "ml", 60.0, 0.0, 400.0, counted)


def log(*counted):
    bottles = tuple(logged_bottle(number, each) for number, each in enumerate(counted, 1))
    return ShootLog(datetime(2026, 11, 20, 18), (2,), bottles)


def line_of(planned, there):
    then = as_of(planned, there)
    ready = mise_en_place(orders_of(planned, then), then, on=then.on)
    return stops_for(plan(planned, there), ready, there)


def ticks(planned, there, count):
    """The keys of so many of its steps, for it to have ticked."""
    then = as_of(planned, there)
    return frozenset(
        [each.key for each in mise_en_place(orders_of(planned, then), then).steps][:count]
    )


SWEET = bar("gin", made=("syrup",))
CHOSEN = replace(
    shoot("Plain"),
    drinks=(
        ShootDrink(1, "Plain", ServeCounts(0, 2, 0), (ChosenPour(0, "rum", 1.0, None, "gin"),)),
    ),
)
STEPPED = shoot("Sweet")
CASES = (
    ("a theme and no drink", shoot(state="idea"), bar("gin"), "idea", "no drink yet"),
    ("planned, and no drink", shoot(), bar("gin"), "idea", "no drink yet"),
    (
        "an idea with a drink lacks things",
        shoot("Plain", state="idea"),
        bar(),
        "shop",
        "1 of 1 to buy",
    ),
    ("all is there, nothing to make", shoot("Plain"), bar("gin"), "film", "on Tuesday 24 November"),
    ("seven to buy, none bought", shoot("Long"), bar(), "shop", "7 of 7 to buy"),
    ("three of seven still to buy", shoot("Long"), bar(*KINDS[:4]), "shop", "3 of 7 to buy"),
    ("all seven bought", shoot("Long"), bar(*KINDS), "film", "on Tuesday 24 November"),
    ("a syrup to make", shoot("Sweet"), bar("gin"), "prepare", "1 thing to make"),
    ("to buy and to make", shoot("Sweet"), bar(), "shop", "1 of 2 to buy"),
    ("one of two made", shoot("Sweeter"), SWEET, "prepare", "made 1 of 2"),
    ("both made", shoot("Sweeter"), bar("gin", made=("syrup", "cordial")), "film", None),
    (
        "ticking has begun",
        replace(STEPPED, ticked=ticks(STEPPED, bar("gin"), 1)),
        bar("gin"),
        "prepare",
        None,
    ),
    ("today, all is ready", shoot("Plain", on=TODAY), bar("gin"), "film", "today"),
    ("tomorrow, all is ready", shoot("Plain", on=TODAY + DAY), bar("gin"), "film", "tomorrow"),
    (
        "its day is past",
        shoot("Plain", on=TODAY - DAY),
        bar("gin"),
        "film",
        "its day was 20 November",
    ),
    ("past, with things to buy", shoot("Long", on=TODAY - DAY), bar(), "film", None),
    (
        "filmed, not logged",
        shoot("Plain", on=TODAY, state="filmed"),
        bar("gin"),
        "count",
        "1 bottle not logged",
    ),
    (
        "logged and counted",
        shoot("Plain", on=TODAY - DAY, state="logged", log=log(400.0, 390.0)),
        bar("gin"),
        None,
        "logged 20 November 2026, 2 bottles",
    ),
    (
        "logged, some not counted",
        shoot("Plain", on=TODAY - DAY, state="logged", log=log(400.0, None)),
        bar("gin"),
        None,
        "logged 20 November 2026, 2 bottles, 1 of them not counted",
    ),
    (
        "filmed from an empty bar",
        shoot("Plain", on=TODAY, state="filmed"),
        bar(sugar=0),
        "count",
        None,
    ),
    (
        "filmed, things had been missing",
        shoot("Long", on=TODAY, state="filmed"),
        bar("gin"),
        "count",
        None,
    ),
    (
        "a spec was removed",
        shoot("Plain", "Gone"),
        bar("gin"),
        "idea",
        "the spec of Gone was removed",
    ),
    ("a stand-in is chosen", CHOSEN, bar("rum"), "film", None),
    ("an empty bar", shoot("Sweet"), bar(sugar=0), "shop", "2 of 2 to buy"),
    (
        "the log was undone",
        shoot("Plain", on=TODAY - DAY, state="filmed"),
        bar("gin"),
        "count",
        None,
    ),
    (
        "a line is not understood",
        shoot("Asked"),
        bar("gin"),
        "idea",
        "“a bit of glim” is not understood",
    ),
    ("no serve is planned", shoot("Plain", serves=0), bar("gin"), "idea", "no serve is planned"),
)


@pytest.mark.parametrize(
    ("planned", "there", "stop", "why"),
    [each[1:] for each in CASES],
    ids=[each[0] for each in CASES],
)
def test_the_next_stop_of_a_shoot(planned, there, stop, why):
    found = line_of(planned, there)
    assert tuple(each.key for each in found.stops) == STOPS
    assert sum(each.state == "next" for each in found.stops) == (stop is not None)
    assert (found.next and found.next.key) == stop
    if not planned.drinks:
        assert {found["shop"].state, found["prepare"].state} == {"later"}
    if why is not None:
        assert (found.next or found["count"]).why == why
