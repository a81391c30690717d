"""A small world: a dozen ingredients, two stand-ins, one classic, and a bar in a file."""

from __future__ import annotations

from datetime import datetime

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import Confusable, FamilyTree, Ingredient
from barkeep.domain.specs.spec import Line, Spec

NOON = datetime(2026, 11, 21, 12, 0)


INGREDIENTS = (
    Ingredient("spirit", "spirit", family=True),
    Ingredient("gin", "gin", ("spirit",), abv_percent=40.0),
    Ingredient("london-dry-gin", "London dry gin", ("gin",), ("dry gin",), abv_percent=40.0),
    Ingredient("navy-strength-gin", "navy-strength gin", ("gin",), abv_percent=57.0),
    Ingredient("bourbon", "bourbon", ("spirit",), abv_percent=45.0),
    Ingredient("sweet-vermouth", "sweet vermouth", ("spirit",), ("red vermouth",)),
    Ingredient("lime-juice", "lime juice", shelf_life_days=2),
    Ingredient("lime-cordial", "lime cordial"),
    Ingredient("simple-syrup", "simple syrup", shelf_life_days=14),
    Ingredient("lime", "lime", unit="each", typical_size=1.0),
    Ingredient("water", "water", always_there=True),
    Ingredient("ice", "ice", unit="g", always_there=True),
)


DAISY = Spec("Signal Daisy", (Line("2 oz gin", "gin", 2, None, "oz", 60.0),), classic=True)


def small_knowledge() -> Knowledge:
    """The small world."""
    confusables = (Confusable("lime-juice", "lime-cordial", "cordial is sweetened."),)
    tree = FamilyTree({each.key: each for each in INGREDIENTS}, confusables)
    stand_ins = (StandIn("gin", "bourbon", 0.4, 1.0, "both are strong"),)
    return Knowledge(tree, stand_ins, classics=(DAISY,))


def gin_draft(**changes: object) -> Label:
    """A product draft like any other."""
    values: dict[str, object] = {
        "name": "navy-strength gin",
        "maker": "Tansy Lock",
        "ingredient": "navy-strength-gin",
        "size": 700.0,
        "abv_percent": 57.0,
        "price": 38.5,
    }
    return Label(**{**values, **changes})


def plough(name: str = "Snow Plough", **changes: object) -> Spec:
    """A spec of two lines."""
    lines = (
        Line("60 ml London dry gin", "london-dry-gin", 60.0, None, "ml", 60.0),
        Line("22-30 ml lime juice, sour", "lime-juice", 22.0, 30.0, "ml", 22.0, note="sour"),
    )
    return Spec(**{"name": name, "lines": lines, "technique": "shaken", **changes})


class Clock:
    """A clock the test sets."""

    def __init__(self) -> None:
        self.now = NOON

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def knowledge() -> Knowledge:
    return small_knowledge()


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def bar_file(tmp_path):
    return tmp_path / "signal-box.bar"


@pytest.fixture
def bar(bar_file, knowledge, clock):
    with Bar.open(bar_file, knowledge, clock) as opened:
        yield opened


@pytest.fixture
def reopen(bar_file, knowledge, clock):
    """Open the same file again, as after a restart."""
    bars = []

    def again() -> Bar:
        bars.append(Bar.open(bar_file, knowledge, clock))
        return bars[-1]

    yield again
    for each in bars:
        each.close()


@pytest.fixture
def gin(bar):
    """A full bottle of navy-strength gin."""
    product = bar.inventory.add_product(gin_draft()).value
    return bar.inventory.receive(product.id).value
