"""Making things at home: the ledger, the product, the dates, own recipes, and undo."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from math import inf, nan

import pytest

from barkeep.application.bar import Bar
from barkeep.application.making import InputsShort, NoRecipe
from barkeep.application.shelving import StillInUse
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.errors import InvalidField, UnknownName
from tests.application.conftest import small_knowledge

CORDIAL = MadeFrom(
    "lime-cordial", (Input("lime-juice", 100.0), Input("gin", 100.0)), 200.0, "Stir."
)

OWN = MadeFrom(
    "lime cordial", (Input("lime juice", 50.0), Input("water", 50.0)), 100.0, " Stir  it. "
)


@pytest.fixture
def knowledge():
    known = small_knowledge()
    juice = replace(known.tree["lime-juice"], abv_percent=0.0, sugar_g_per_l=17.0)
    tree = replace(known.tree, ingredients={**known.tree.ingredients, "lime-juice": juice})
    return replace(known, tree=tree, made_from=(CORDIAL,))


@pytest.fixture
def stocked(bar):
    """Two bottles of juice of 80 ml, a full bottle of gin."""
    juice = Label("lime juice", "", "lime-juice", 80.0, house_made=True)
    first = bar.inventory.receive_new(juice).value
    bar.inventory.receive(first.product.id)
    gin = Label("gin", "Tansy Lock", "london-dry-gin", 700.0, abv_percent=43.0)
    bar.inventory.receive_new(gin)
    return bar


def levels(bar):
    return {each.id: each.level for each in bar.snapshot.bottles}


def left(bar):
    return [each.level.amount for each in bar.snapshot.bottles]


# Making


def test_it_draws_its_inputs_and_comes_on_the_shelf_with_its_figures(stocked):
    done = stocked.house.make("lime cordial", 200.0)
    assert left(stocked) == [0.0, 60.0, 600.0, 200.0]
    bottle = done.value
    assert (bottle.level.amount, bottle.product.size, bottle.product.house_made) == (200, 200, True)
    assert (bottle.product.title, bottle.product.abv_percent) == ("lime cordial", 21.5)
    assert bottle.made == date(2026, 11, 21)
    assert done.label == "Make 200 ml lime cordial"
    assert done.changes == {"products", "bottles"}


def test_the_ledger_says_what_for(stocked):
    stocked.house.make("lime-cordial", 200.0)
    gin = stocked.snapshot.bottles[2]
    entry, after = stocked.inventory.history(gin.id)[-1]
    assert (entry.kind, entry.amount, entry.note) == ("pour", 100.0, "for 200 ml lime cordial")
    assert after == 600.0


def test_one_undo_takes_all_of_it_back_and_redo_does_it_again(stocked):
    before, products = levels(stocked), stocked.snapshot.products
    stocked.house.make("lime-cordial", 150.0, recipe=CORDIAL, keep_recipe=True)
    after = levels(stocked)
    stocked.undo()
    assert levels(stocked) == before
    assert stocked.snapshot.products == products
    assert not any(each.own for each in stocked.snapshot.knowledge.made_from)
    stocked.redo()
    assert levels(stocked) == after
    assert stocked.snapshot.knowledge.made_from[0].own


def test_what_is_short_is_refused_and_nothing_is_lost(stocked):
    before = levels(stocked)
    with pytest.raises(InputsShort) as refused:
        stocked.house.make("lime-cordial", 400.0)
    assert str(refused.value) == (
        "lime cordial cannot be made: 200 ml of lime juice is needed and 160 ml is there."
    )
    assert levels(stocked) == before


def test_told_to_make_less_it_makes_what_the_inputs_give(stocked):
    bottle = stocked.house.make("lime-cordial", 400.0, or_less=True).value
    assert bottle.level.amount == 320.0
    assert left(stocked)[:2] == [0.0, 0.0]
    assert [each.level.state for each in stocked.snapshot.bottles[:2]] == ["empty", "empty"]


def test_made_again_it_is_the_same_product_with_the_figures_of_now(stocked):
    first = stocked.house.make("lime-cordial", 100.0).value
    weaker = replace(CORDIAL, inputs=(Input("lime-juice", 150.0), Input("gin", 50.0)))
    second = stocked.house.make("lime-cordial", 100.0, recipe=weaker).value
    assert second.product.id == first.product.id
    assert second.product.abv_percent == 10.8  # 25 ml at 43 % in 100 ml
    assert (
        len([each for each in stocked.snapshot.bottles if each.product.id == first.product.id]) == 2
    )
    stocked.undo()
    assert stocked.snapshot.bottles[-1].product.abv_percent == 21.5


def test_a_bought_product_of_the_same_name_is_left_as_it_is(stocked):
    bought = Label("lime cordial", "", "lime-cordial", 100.0, abv_percent=0.0)
    product = stocked.inventory.add_product(bought).value
    made = stocked.house.make("lime-cordial", 100.0).value
    assert made.product.title == "lime cordial (made here)"
    assert next(e for e in stocked.snapshot.products if e.id == product.id) == product


def test_dates_may_be_given_and_must_follow_each_other(stocked):
    days = {"made": date(2026, 11, 19), "use_by": date(2026, 12, 1)}
    bottle = stocked.house.make("lime-cordial", 20.0, **days).value
    assert (bottle.made, bottle.use_by) == tuple(days.values())
    before = levels(stocked)
    with pytest.raises(InvalidField):
        stocked.house.make("lime-cordial", 20.0, use_by=date(2026, 11, 1))
    assert levels(stocked) == before


def test_a_past_bottle_is_not_poured(stocked):
    for bottle in stocked.snapshot.bottles[:2]:
        stocked.inventory.redate(bottle.id, date(2026, 11, 10), date(2026, 11, 12))
    plan = stocked.house.plan("lime-cordial", 100.0)
    assert (
        plan.past == ("The lime juice of 10 Nov is past its date (12 Nov) and is not counted.",) * 2
    )
    with pytest.raises(InputsShort):
        stocked.house.make("lime-cordial", 100.0)


@pytest.mark.parametrize("amount", [0.0, -1.0, nan, inf])
def test_no_amount_is_refused(stocked, amount):
    with pytest.raises(InvalidField) as refused:
        stocked.house.make("lime-cordial", amount)
    assert refused.value.field == "amount"


def test_pieces_are_whole(bar):
    recipe = MadeFrom("lime", (Input("water", 1.0),), 1.0, "")
    with pytest.raises(InvalidField):
        bar.house.plan("lime", 1.5, recipe=recipe)


def test_what_nobody_knows_how_to_make_is_refused(bar):
    with pytest.raises(NoRecipe, match="no recipe for bourbon"):
        bar.house.make("bourbon", 100.0)
    with pytest.raises(UnknownName):
        bar.house.make("moonglow", 100.0)


# Own recipes


def test_an_own_recipe_takes_the_place_of_the_known_one(bar, reopen):
    kept = bar.knowledge.set_recipe(OWN)
    assert kept.changes == {"knowledge"}
    assert kept.label == "Keep a recipe for lime cordial"
    for each in (bar, reopen()):
        (recipe,) = each.snapshot.knowledge.made_from
        assert recipe == MadeFrom(
            "lime-cordial",
            (Input("lime-juice", 50.0), Input("water", 50.0)),
            100.0,
            "Stir it.",
            own=True,
        )


def test_an_own_recipe_is_what_stands_in_is_worked_out_with(stocked):
    """The graph is built of the recipes of now."""
    assert stocked.snapshot.knowledge.graph.recipes["lime-cordial"] == (CORDIAL,)
    stocked.knowledge.set_recipe(OWN)
    (recipe,) = stocked.snapshot.knowledge.graph.recipes["lime-cordial"]
    assert recipe.own


def test_taken_back_the_known_one_counts_again(bar):
    bar.knowledge.set_recipe(OWN)
    assert bar.knowledge.remove_recipe("lime cordial").label == "Forget the recipe for lime cordial"
    assert bar.snapshot.knowledge.made_from == (CORDIAL,)
    bar.undo()
    assert bar.snapshot.knowledge.made_from[0].own
    bar.undo()
    assert bar.snapshot.knowledge.made_from == (CORDIAL,)
    with pytest.raises(UnknownName, match="recipe of yours"):
        bar.knowledge.remove_recipe("lime-cordial")


@pytest.mark.parametrize(
    ("changes", "error", "words"),
    [
        ({"made": "moonglow"}, UnknownName, "moonglow"),
        ({"inputs": (Input("moonglow", 1.0),)}, UnknownName, "moonglow"),
        ({"inputs": (Input("gin", 0.0),)}, InvalidField, "amount of gin"),
        ({"inputs": (Input("gin", nan),)}, InvalidField, "amount of gin"),
        ({"inputs": (Input("lime cordial", 1.0),)}, InvalidField, "made from itself"),
        ({"inputs": ()}, InvalidField, "at least one"),
        ({"yields": 0.0}, InvalidField, "yield"),
        ({"yields": inf}, InvalidField, "yield"),
    ],
)
def test_a_recipe_that_cannot_be_is_refused(bar, changes, error, words):
    with pytest.raises(error, match=words):
        bar.knowledge.set_recipe(replace(OWN, **changes))
    assert bar.snapshot.knowledge.made_from == (CORDIAL,)


def test_an_input_named_twice_is_added_up(bar):
    twice = replace(OWN, inputs=(Input("gin", 10.0), Input("gin", 15.0)))
    assert bar.knowledge.set_recipe(twice).value.inputs == (Input("gin", 25.0),)


def test_an_ingredient_of_an_own_recipe_is_still_in_use(bar):
    bar.knowledge.add_ingredient(Ingredient("fog-tea", "fog tea"))
    bar.knowledge.set_recipe(replace(OWN, inputs=(Input("fog-tea", 10.0),)))
    with pytest.raises(StillInUse, match="recipe for lime cordial"):
        bar.knowledge.remove_ingredient("fog-tea")


def test_a_recipe_of_something_no_longer_known_does_not_keep_the_bar_closed(bar_file, bar, clock):
    bar.knowledge.add_ingredient(Ingredient("fog-tea", "fog tea"))
    bar.knowledge.set_recipe(replace(OWN, inputs=(Input("navy-strength-gin", 10.0),)))
    bar.close()
    known = small_knowledge()
    kept = {k: v for k, v in known.tree.ingredients.items() if k != "navy-strength-gin"}
    without = replace(known, tree=replace(known.tree, ingredients=kept), made_from=(CORDIAL,))
    with Bar.open(bar_file, without, clock) as opened:
        assert opened.snapshot.knowledge.made_from == (CORDIAL,)
