"""What to buy: never short, never one package too many, nothing counted twice."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date, timedelta
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.pars import Par, read_par, with_par
from barkeep.domain.bar.shoots import ServeCounts, Shoot, ShootDrink
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.buying.packages import package_for, packages_for
from barkeep.domain.buying.shopping import (
    list_as_text,
    shopping,
    shopping_for,
    still_to_film,
    total_in_words,
)
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.shoots.menu import Order, menu
from barkeep.domain.shoots.mise_en_place import mise_en_place
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import AmountError, InvalidField, WrongDimension
from barkeep.translation import speak_through
from tests import worlds
from tests.walked import walked

TREE = FamilyTree(
    {
        each.key: each
        for each in (
            Ingredient("spirit", "Spirit", family=True, abv_percent=40.0),
            Ingredient("gin", "Gin", ("spirit",), abv_percent=40.0),
            Ingredient("dry-gin", "Dry gin", ("gin",), abv_percent=40.0),
            Ingredient("rum", "Rum", ("spirit",), abv_percent=40.0),
            Ingredient("lime", "Lime", unit="each", typical_size=1.0),
            Ingredient("juice", "Juice", family=True),
            Ingredient("lime-juice", "Lime juice", ("juice",), typical_size=250.0),
            Ingredient("syrup", "Syrup", typical_size=500.0),
            Ingredient("cordial", "Cordial", typical_size=500.0),
            Ingredient("soda", "Soda", typical_size=200.0),
            Ingredient("sugar", "Sugar", unit="g", always_there=True),
            Ingredient("ice", "Ice", unit="g", always_there=True),
        )
    }
)
RECIPES = (
    MadeFrom("lime-juice", (Input("lime", 1.0),), 25.0, "Press."),
    MadeFrom("syrup", (Input("sugar", 100.0),), 100.0, "Stir."),
    MadeFrom("cordial", (Input("lime-juice", 50.0), Input("sugar", 100.0)), 100.0, "Stir."),
)
KNOWN = Knowledge(TREE, (StandIn("gin", "rum", 1.0, 1.0, "near"),), made_from=RECIPES)


def line(key: str, amount: float, least: float | None = None) -> Line:
    unit = TREE[key].unit
    return Line(f"{amount:g} {unit} {key}", key, amount, None, unit, amount, min_abv_percent=least)


def order(serves: int, *lines: Line, name: str = "Deckchair") -> Order:
    return Order(Spec(name, lines, "Build."), serves)


def bar(*bottles: Bottle, pars=(), products=(), knowledge=KNOWN):
    picture = worlds.snapshot(knowledge, bottles)
    settings = replace(picture.settings, pars=tuple(Par(*each) for each in pars))
    return replace(picture, settings=settings, products=(*picture.products, *products))


def limes(count: float) -> Bottle:
    product = Product("Limes", "", "lime", 12.0, "each", id=77)
    return Bottle(77, product, Level(count, "open"), 77)


def pressed(amount: float) -> Bottle:
    """Lime juice that was pressed here."""
    found = worlds.bottle(1, "lime-juice", amount)
    return replace(found, product=replace(found.product, house_made=True))


def product(number, key, size, price=None, unit="ml", **more) -> Product:
    return Product(
        f"{key} {number}", "Hollow Lamp", key, size, unit, price=price, id=number, **more
    )


def bought(found) -> dict[str, tuple[float, int]]:
    return {each.ingredient: (each.need, each.packages) for each in found.items}


# Packages


@given(st.floats(0.0, 5000.0), st.sampled_from([1.0, 50.0, 200.0, 500.0, 700.0]))
def test_packages_are_never_short_and_never_one_too_many(amount, size):
    count = packages_for(amount, size)
    assert count * size >= amount - 1e-6
    assert (count - 1) * size < amount or count == 0


def test_a_product_of_the_shelf_goes_before_a_cheaper_one_then_the_price_decides():
    there = worlds.bottle(1, "gin", 10.0)
    dear, cheap = product(8, "dry-gin", 700.0, 30.0), product(9, "dry-gin", 700.0, 20.0)
    assert package_for("gin", None, bar(there, products=[cheap])).product == there.product
    assert package_for("gin", None, bar(products=[dear, cheap])).product == cheap
    large = product(7, "dry-gin", 1000.0, 28.0)
    assert package_for("gin", None, bar(products=[dear, large])).product == large
    unpriced = product(6, "dry-gin", 700.0)
    assert package_for("gin", None, bar(products=[unpriced, dear])).product == dear


def test_neither_a_stand_in_nor_a_general_kind_nor_what_is_made_here_is_bought():
    rum, gin = product(8, "rum", 700.0, 9.0), product(9, "gin", 700.0, 9.0)
    own = product(7, "dry-gin", 700.0, 1.0, house_made=True)
    found = package_for("dry-gin", None, bar(products=[rum, gin, own]))
    assert (found.product, found.ingredient, found.size) == (None, "dry-gin", 700.0)


def test_a_least_strength_is_respected():
    weak = product(8, "gin", 700.0, 10.0, abv_percent=40.0)
    strong = product(9, "gin", 700.0, 40.0, abv_percent=57.0)
    needs = [[order(1, line("gin", 60.0, least=50.0))]]
    (item,) = shopping(needs, bar(products=[weak, strong])).items
    assert item.product == strong
    (nameless,) = shopping(needs, bar(products=[weak])).items
    assert nameless.product is None and nameless.min_abv_percent == 50.0
    assert "it must have 50 % vol or more" in nameless.why


def test_amounts_stand_in_reasons_that_are_said_in_another_language():
    said = {
        "{{}} short for {drink}": "für {drink} fehlen {{}}",
        "it must have {abv:g} % vol or more": "mindestens {abv:g} % vol",
    }
    speak_through(lambda words, _about: said.get(words, words))
    try:
        needs = [[order(1, line("gin", 60.0, least=50.0))]]
        (item,) = shopping(needs, bar()).items
    finally:
        speak_through(None)
    assert item.why == ("für Deckchair fehlen 60 ml", "mindestens 50 % vol")


# What is short


def test_two_shoots_do_not_count_the_same_bottle_twice():
    needs = [[order(10, line("rum", 50.0))], [order(10, line("rum", 50.0))]]
    alone = shopping(needs[:1], bar(worlds.bottle(1, "rum", 700.0)))
    assert alone.items == ()
    both = shopping(needs, bar(worlds.bottle(1, "rum", 700.0)), themes=["A", "B"])
    assert bought(both) == {"rum": (300.0, 1)}
    assert sum(float(why.split(" ")[0]) for why in both.items[0].why) == 300.0
    assert all("’s Deckchair" in why for why in both.items[0].why)


def test_juice_is_bought_as_fruit_with_the_margin_of_the_mise_en_place():
    needs = [order(10, line("lime-juice", 25.0))]
    for there in (0.0, 3.0, 10.0, 11.0, 11.5, 12.0):
        picture = bar(limes(there))
        (made,) = mise_en_place(needs, picture).squeeze
        ((_key, squeezed, _unit),) = made.inputs
        lacking = max(0.0, math.ceil(11.0 - there))
        assert squeezed == 11.0  # ten, and the one more of which the margin takes all
        assert bought(shopping([needs], picture)) == (
            {"lime": (lacking, math.ceil(lacking / 12.0))} if lacking else {}
        )


def test_what_is_there_as_juice_needs_no_fruit():
    needs = [[order(10, line("lime-juice", 25.0))]]
    assert shopping(needs, bar(pressed(250.0))).items == ()
    half = shopping(needs, bar(pressed(150.0)))
    assert bought(half)["lime"][0] == 4.0  # no other one for the margin


def test_a_recipe_of_a_recipe_goes_down_to_the_fruit():
    found = shopping([[order(2, line("cordial", 50.0))]], bar())
    assert bought(found) == {"lime": (2.0, 2)}
    assert found.items[0].why == ("100 ml of cordial short for Deckchair",)


def test_a_carton_the_bar_knows_is_bought_rather_than_squeezed():
    carton = product(8, "lime-juice", 200.0, 3.0)
    found = shopping([[order(10, line("lime-juice", 25.0))]], bar(products=[carton]))
    assert [(each.product, each.packages, each.cost) for each in found.items] == [(carton, 2, 6.0)]


def test_what_is_always_there_and_what_is_made_of_it_is_never_bought():
    needs = [[order(10, line("sugar", 5.0), line("syrup", 20.0), line("ice", 100.0))]]
    assert shopping(needs, bar(pars=[("sugar", 500.0), ("syrup", 500.0)])).items == ()


def test_an_always_there_thing_that_is_not_there_is_bought():
    picture = bar()
    settings = replace(picture.settings, not_there=frozenset({"sugar"}))
    found = shopping([[order(1, line("sugar", 5.0))]], replace(picture, settings=settings))
    assert bought(found)["sugar"][0] == 5.0


def test_what_is_left_of_a_special_kind_serves_a_general_line():
    needs = [[order(1, line("gin", 100.0), line("dry-gin", 50.0))]]
    found = shopping(needs, bar(), within="exact")
    assert bought(found) == {"dry-gin": (150.0, 1)}
    assert len(found.items[0].why) == 2
    large = [[order(10, line("gin", 100.0), line("dry-gin", 50.0))]]
    assert bought(shopping(large, bar())) == {"dry-gin": (700.0, 1), "gin": (800.0, 2)}


# Pars


def test_a_par_is_what_is_to_be_left_after_the_shoots():
    shelf = worlds.bottle(1, "rum", 700.0)
    needs = [[order(5, line("rum", 50.0))]]
    picture = bar(shelf, pars=[("rum", 1400.0)])
    (item,) = shopping(needs, picture).items
    assert (item.need, item.packages) == (950.0, 2)
    assert item.why == ("par is 2 bottles, and 450 ml will be left",)
    assert shopping(needs, picture, pars=False).items == ()
    assert shopping([], bar(shelf, pars=[("rum", 700.0)])).items == ()


def test_a_par_of_a_general_kind_counts_everything_below_it():
    shelf = (worlds.bottle(1, "rum", 500.0), worlds.bottle(2, "dry-gin", 500.0))
    assert shopping([], bar(*shelf, pars=[("spirit", 1000.0)])).items == ()
    both = shopping([], bar(*shelf, pars=[("spirit", 1200.0), ("dry-gin", 700.0)]))
    assert bought(both) == {"dry-gin": (200.0, 1)}


def test_the_rest_of_a_bottle_counts_for_one_par_only_and_not_for_two_lines():
    pars = [("gin", 700.0), ("dry-gin", 350.0)]
    found = shopping([[order(1, line("dry-gin", 350.0))]], bar(pars=pars))
    assert bought(found) == {"dry-gin": (700.0, 1), "gin": (350.0, 1)}


def test_a_par_of_what_is_made_here_is_bought_as_what_it_is_made_from():
    found = shopping([], bar(pars=[("lime-juice", 250.0)]))
    assert bought(found) == {"lime": (10.0, 10)}
    assert found.items[0].why == ("par is 250 ml of lime juice",)


def random_needs(chance: Random, kinds):
    """Three shoots of one drink each, a shelf and two pars, all of these kinds."""
    shelf = [
        worlds.bottle(number, key, float(chance.randint(0, 700)))
        for number, key in enumerate(kinds[:3], 1)
    ]
    amounts = [20.0, 45.0, 60.0]
    needs = [
        [
            order(
                chance.randint(1, 12),
                *(line(key, chance.choice(amounts)) for key in chance.sample(kinds, 2)),
                name=f"Drink {number}",
            )
        ]
        for number in range(3)
    ]
    pars = [(key, chance.choice([200.0, 700.0, 1000.0])) for key in chance.sample(kinds, 2)]
    picture = bar(*shelf, pars=pars, knowledge=replace(KNOWN, stand_ins=()))
    return needs, pars, picture


def suffices(found, counts, needs, pars, picture) -> bool:
    """Buys so many packages for real: the menu is possible, and the pars stand after it."""
    there = list(picture.bottles)
    for number, (item, count) in enumerate(zip(found.items, counts, strict=True), 100):
        key = item.product.ingredient if item.product else item.ingredient
        there.append(worlds.bottle(number, key, count * item.size, max(1, count) * item.size))
    after = replace(picture, bottles=tuple(there))
    every = [each for some in needs for each in some]
    return _pars_can_stand(after, every, pars)


@walked("seed", range(80))
def test_after_buying_the_list_nothing_is_short(seed):
    needs, pars, picture = random_needs(Random(seed), ("gin", "dry-gin", "rum", "spirit", "soda"))
    found = shopping(needs, picture)
    assert suffices(found, [each.packages for each in found.items], needs, pars, picture)
    assert all(each.need > (each.packages - 1) * each.size for each in found.items)


@walked("seed", range(80))
def test_one_package_less_of_anything_is_short(seed):
    needs, pars, picture = random_needs(Random(seed), ("dry-gin", "rum", "soda"))
    found = shopping(needs, picture)
    counts = [each.packages for each in found.items]
    assert suffices(found, counts, needs, pars, picture)
    for place in range(len(counts)):
        fewer = [count - (number == place) for number, count in enumerate(counts)]
        assert not suffices(found, fewer, needs, pars, picture)


def _pars_can_stand(after, every, pars) -> bool:
    """Whether some way to pour everything leaves the pars: the pars poured as well can be met.

    The two pars are of kinds that may overlap, so the wider of them is asked for what it has
    beyond the narrower.
    """
    wide, narrow = sorted(pars, key=lambda each: len(TREE.ancestors(each[0])))
    above = TREE.is_a(narrow[0], wide[0])
    rest = max(0.0, wide[1] - narrow[1]) if above else wide[1]
    kept = [order(1, line(narrow[0], narrow[1]))]
    kept += [order(1, line(wide[0], rest))] if rest else []
    return menu([*every, *kept], after, "exact").possible


# Shoots


def shoot(theme, on, state="planned"):
    drink = ShootDrink(None, "Deckchair", ServeCounts(0, 4, 0))
    return Shoot(1, theme, on, (drink,), state)


def test_shoots_that_were_filmed_are_not_bought_for_and_past_dates_are_looked_ahead_for():
    spec = Spec("Deckchair", (line("lime-juice", 25.0),), "Build.", id=None)
    fresh = replace(pressed(200.0), use_by=worlds.TODAY + timedelta(days=2))
    far, near = shoot("Far", date(2026, 12, 24)), shoot("Near", worlds.TODAY, "idea")
    filmed = shoot("Gone", worlds.TODAY, "filmed")
    picture = replace(
        bar(fresh, knowledge=replace(KNOWN, classics=(spec,))), shoots=(far, filmed, near)
    )
    assert still_to_film(picture) == (near, far)
    assert shopping_for([near], picture).items == ()
    (item,) = shopping_for([far], picture).items
    assert (item.ingredient, item.need) == ("lime", 4.0)
    assert item.why == ("100 ml of lime juice short for Far’s Deckchair",)


# Words


def test_the_total_says_what_has_no_price():
    known = product(8, "rum", 700.0, 20.0)
    needs = [[order(1, line("rum", 50.0), line("soda", 300.0))]]
    found = shopping(needs, bar(products=[known]))
    assert (found.total, found.unpriced) == (20.0, 1)
    assert total_in_words(found) == "20.00 EUR for 1 thing; 1 has no known price."
    assert list_as_text(found, TREE).splitlines()[:2] == [
        "Rum: 1 × 700 ml Hollow Lamp rum 8 (20.00 EUR)",
        "Soda: 2 × 200 ml",
    ]
    assert total_in_words(shopping([], bar())) == "There is nothing to buy."


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("2 bottles", 1400.0),
        ("2 Flaschen", 1400.0),
        ("1 Flasche", 700.0),
        ("1.4 l", 1400.0),
        ("500", 500.0),
        ("0", 0.0),
    ],
)
def test_a_par_is_read_as_people_write_it(text, amount):
    assert read_par(text, TREE["gin"]) == pytest.approx(amount)


def test_a_par_that_is_no_amount_is_refused():
    with pytest.raises(AmountError):
        read_par("1-2 l", TREE["gin"])
    with pytest.raises(WrongDimension):
        read_par("3 kg", TREE["gin"])


def test_a_par_of_a_few_ml_asks_whether_bottles_are_meant():
    with pytest.raises(InvalidField, match="likely “2 bottles”"):
        read_par("2", TREE["gin"])


def test_one_par_an_ingredient():
    pars = with_par(with_par((), Par("rum", 700.0)), Par("gin", 700.0))
    assert with_par(pars, Par("rum", 10.0)) == (Par("gin", 700.0), Par("rum", 10.0))
    assert with_par(pars, Par("rum", 0.0)) == (Par("gin", 700.0),)
