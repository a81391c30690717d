"""The fruit of a shoot: what is squeezed and set out is what is there and what is bought."""

from __future__ import annotations

import math
from dataclasses import replace
from random import Random

import pytest

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.buying.shopping import shopping
from barkeep.domain.ingredients.fruit import PEELS
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.shoots.garnish_needs import source_of
from barkeep.domain.shoots.menu import Order
from barkeep.domain.shoots.mise_en_place import MiseEnPlace, mise_en_place
from barkeep.domain.specs.spec import Line, Spec
from tests.worlds import TODAY, snapshot

FRUIT = ("lime", "lemon", "orange", "grapefruit", "pomegranate")


def stock(number: int, key: str, amount: float, unit: str, **label) -> Bottle:
    product = Product(key, "", key, amount, unit=unit, id=number, **label)
    return Bottle(number, product, Level(amount, "open"), number)


def random_bar(chance: Random, knowledge) -> Snapshot:
    """Some fruit, and perhaps some lime juice that was squeezed before, or bought."""
    held = {key: chance.choice([0, 0, 1, 2, 5, 12]) for key in FRUIT}
    bottles = [stock(at, key, float(held[key]), "each") for at, key in enumerate(FRUIT, 1)]
    if chance.random() < 0.3:
        much, squeezed = chance.uniform(5.0, 150.0), chance.random() < 0.5
        bottles.append(stock(9, "lime-juice", much, "ml", house_made=squeezed))
    return snapshot(knowledge, [each for each in bottles if each.level.amount])


def of_fruit(ready: MiseEnPlace, fruit: str) -> float:
    """What the mise en place takes of a fruit, pressed or whole."""
    pressed = [each for made in (*ready.make, *ready.squeeze) for each in made.inputs]
    whole = sum(each.count for each in ready.pieces if each.ingredient == fruit)
    return whole + sum(amount for key, amount, _unit in pressed if key == fruit)


def is_either(ready: MiseEnPlace, fruit: str, bar: Snapshot) -> bool:
    """Whether it is not told which of a few are pressed, as their juice may be bought as well."""
    for_sale = any(not each.house_made for each in bar.products if each.unit == "ml")
    return for_sale and any(each.ingredient == fruit for each in ready.pieces)


def with_garnishes(ready: MiseEnPlace, fruit: str, bar: Snapshot) -> float:
    """All that is taken of a fruit: what is cut off it whole, and what is pressed or peeled."""
    cut = {"whole": 0.0, "peel": 0.0}
    for garnish in ready.garnishes:
        source = garnish.garnish and source_of(garnish.garnish, bar, supply_of(bar))
        if source and source.fruit and source.fruit.ingredient == fruit:
            cut["peel" if source.ingredient in PEELS else "whole"] += source.fruit.amount
    made = [each for each in ready.make if each.ingredient in PEELS]
    peeled = sum(amount for each in made for key, amount, _unit in each.inputs if key == fruit)
    pressed = of_fruit(ready, fruit) - peeled
    return math.ceil(cut["whole"] - 1e-9) + max(pressed, math.ceil(cut["peel"] + peeled - 1e-9))


def test_the_fruit_of_the_mise_en_place_is_what_is_there_and_what_is_bought(knowledge):
    chance, agreed, bought = Random(12), 0, 0
    pressed = [spec for spec in knowledge.classics if takes_fruit(spec, knowledge.tree)]
    assert len(pressed) > 100
    for _shoot in range(40):
        drinks = chance.sample(pressed, chance.randint(1, 4))
        orders = [Order(each, chance.randint(1, 6)) for each in drinks]
        bar = random_bar(chance, knowledge)
        ready, list_ = mise_en_place(orders, bar), shopping([orders], bar, pars=False)
        there = {each.ingredient: each.level.amount for each in bar.bottles}
        for fruit in FRUIT:
            if is_either(ready, fruit, bar):
                continue
            needed = sum(each.need for each in list_.items if each.ingredient == fruit)
            short = max(0.0, with_garnishes(ready, fruit, bar) - there.get(fruit, 0.0))
            assert needed == short, (fruit, [(each.spec.name, each.serves) for each in orders])
            agreed, bought = agreed + bool(of_fruit(ready, fruit)), bought + bool(needed)
    assert agreed > 40 and bought > 30  # the shoots do take fruit, and lack some of it


def takes_fruit(spec: Spec, tree) -> bool:
    return any(
        line.ingredient in FRUIT or tree.is_a(line.ingredient, "juice")
        for line in spec.required_lines
    )


def test_a_hair_more_than_a_fruit_gives_takes_no_other_one(knowledge):
    """Four half ounces and 15 % are 68.02 ml, and an orange gives 68."""
    line = Line("1/2 oz orange juice", "orange-juice", 0.5, None, "oz", 14.7867647812)
    order = Order(Spec("Signal", (line,), "Shake.", "shaken"), 4)
    (oranges,) = mise_en_place([order], Snapshot(knowledge, TODAY)).squeeze
    assert oranges.inputs == (("orange", 1.0, "each"),)


def test_what_one_buys_is_bought_and_squeezed_only_from_what_is_there(knowledge):
    """Bottled lime juice is known: five limes are pressed, and what they lack is a bottle."""
    line = Line("30 ml lime juice", "lime-juice", 30.0, None, "ml", 30.0)
    order = Order(Spec("Signal", (line,), "Shake.", "shaken"), 10)
    bottled, limes = stock(1, "lime-juice", 500.0, "ml"), stock(2, "lime", 5.0, "each")
    bar = replace(snapshot(knowledge, [bottled, limes]), bottles=(limes,))
    ready = mise_en_place([order], bar)
    (pressed,) = ready.squeeze
    said = next(each.text for each in ready.steps if each.text.startswith("Squeeze"))
    assert " from 5 × lime (what is there gives no more; the rest is bought). " in said
    assert pressed.inputs == (("lime", 5.0, "each"),)
    (bought,) = shopping([[order]], bar, pars=False).items
    assert (bought.ingredient, bought.product) == ("lime-juice", bottled.product)
    assert bought.need == pytest.approx(300.0 - pressed.amount, abs=0.001)
    nothing = replace(bar, bottles=())
    assert mise_en_place([order], nothing).squeeze == ()
    (bought,) = shopping([[order]], nothing, pars=False).items
    assert (bought.ingredient, bought.need) == ("lime-juice", 300.0)


def piece(key: str, amount: float, unit: str = "each") -> Line:
    return Line(f"{amount} {key}", key, amount, None, unit, amount)


@pytest.mark.parametrize(
    ("key", "amounts", "said"),
    [
        ("lime", (1.0,), "Have 3 × lime ready, for Signal."),
        ("lime", (0.5,), "Have 2 × lime ready, for Signal."),  # three halves are cut from two
        ("lime", (0.5, 1.0), "Have 5 × lime ready, for Signal and Points."),
        ("egg", (1.0,), "Have 3 × egg ready, for Signal."),
        ("sugar-cube", (2.0,), "Have 6 × sugar cube ready, for Signal."),
    ],
)
def test_what_goes_in_by_the_piece_is_set_out(knowledge, key, amounts, said):
    names = ("Signal", "Points")
    specs = [
        Spec(name, (piece(key, each),), "Muddle and shake.", "shaken")
        for name, each in zip(names, amounts, strict=False)
    ]
    steps = mise_en_place([Order(each, 3) for each in specs], Snapshot(knowledge, TODAY)).steps
    assert said in [each.text for each in steps]


def test_what_is_cut_for_the_drink_or_a_garnish_is_not_set_out_whole(knowledge):
    lines = (piece("lime-wedge", 2.0), replace(piece("cocktail-cherry", 1.0), garnish=True))
    orders = [Order(Spec("Signal", lines, "Muddle and build.", "built"), 3)]
    ready = mise_en_place(orders, Snapshot(knowledge, TODAY))
    assert ready.pieces == ()
    assert any(
        each.text.startswith("Cut 6 × lime wedge from ")
        or each.text.startswith("Cut 7 × lime wedge from ")
        for each in ready.steps
    )
