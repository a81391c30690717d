"""What to have ready before a shoot."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date, datetime

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.buying.shopping import shopping
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.shoots.making_ahead import MARGIN
from barkeep.domain.shoots.menu import Order
from barkeep.domain.shoots.mise_en_place import Step, mise_en_place
from barkeep.domain.specs.spec import Line, Spec
from tests.worlds import TODAY, bottle

MOST_LIME_ML, LEAST_LIME_ML = 43.0, 22.0
"""44 g, about 43 ml, to the lime (USDA SR28 09160, *yields*); the trade counts on 22 to 30."""


@pytest.fixture
def snapshot(sample_bar, clock):
    """The sample bar as a frozen picture."""
    with Bar.open(sample_bar, clock=clock) as bar:
        return bar.snapshot


def lime_drink(quantity=30.0, serves=10):
    line = Line(f"{quantity} ml lime juice", "lime-juice", quantity, None, "ml", quantity)
    return Order(Spec("Sour", (line,), "Shake and double strain.", "shaken", "coupe"), serves)


def test_fruit_is_counted_from_yields_with_a_margin(knowledge):
    (limes,) = mise_en_place([lime_drink()], Snapshot(knowledge, TODAY)).squeeze
    assert 300.0 < limes.amount <= 300.0 * (1 + MARGIN)
    ((fruit, count, unit),) = limes.inputs
    assert (fruit, unit, count) == ("lime", "each", math.ceil(count))
    assert limes.amount / MOST_LIME_ML <= count <= math.ceil(limes.amount / LEAST_LIME_ML)


@pytest.mark.parametrize(
    ("ingredient", "each", "serves", "pieces"),
    [
        ("egg-white", 32.0, 4, ("egg", 4.0)),  # the margin breaks no other egg
        ("egg-white", 32.0, 8, ("egg", 9.0)),
        ("lemon-juice", 22.5, 3, ("lemon", 2.0)),
        ("lime-juice", 30.0, 4, ("lime", 5.0)),
        ("lemon-juice", 22.5, 40, ("lemon", 27.0)),
    ],
)
def test_a_margin_takes_no_other_piece_unless_it_takes_all_of_it(
    knowledge, ingredient, each, serves, pieces
):
    line = Line(f"{each} ml", ingredient, each, None, "ml", each)
    spec = Spec("Moth", (line,), "Shake.", technique="shaken")
    picture = Snapshot(knowledge, TODAY)
    made = [
        one
        for one in mise_en_place([Order(spec, serves)], picture).steps
        if one.key.endswith(ingredient)
    ]
    assert f"from {pieces[1]:.0f} × " in made[0].text
    bought = {one.ingredient: one.need for one in shopping([[Order(spec, serves)]], picture).items}
    assert bought == {pieces[0]: pieces[1]}


def test_what_is_there_is_not_squeezed_again(snapshot):
    there = sum(b.level.amount for b in snapshot.usable["lime-juice"])
    orders = [lime_drink(there / 10, 9)]
    assert mise_en_place(orders, snapshot).squeeze == ()
    (more,) = mise_en_place([lime_drink(there / 10, 11)], snapshot).squeeze
    assert more.amount == pytest.approx(there / 10 * (1 + MARGIN))


def test_syrups_are_made_from_their_recipe(knowledge):
    line = Line("", "simple-syrup", 20.0, None, "ml", 20.0)
    ready = mise_en_place(
        [Order(Spec("S", (line,), "Stir.", "stirred"), 10)], Snapshot(knowledge, TODAY)
    )
    (syrup,) = ready.make
    # 1 kg and 1 kg give 1626.5 ml (ICUMSA), so 230 ml takes 141.4 g of each.
    assert syrup.inputs[0] == ("sugar", pytest.approx(230 / 1626.5 * 1000), "g")
    assert ready.squeeze == ()


def test_everything_set_out_is_counted_over_all_specs(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    ready = mise_en_place(
        [Order(by_name["Request Stop"], 3), Order(by_name["Two-Coach Local"], 2)], snapshot
    )
    assert {each.name: each.count for each in ready.glassware} == {
        "coupe": 3,
        "highball glass": 2,
    }
    assert {each.name: each.count for each in ready.garnishes} == {
        "lime wedge": 3,
        "orange slice": 2,
    }
    tools = {each.name: each.count for each in ready.tools}
    assert tools["fine strainer"] == tools["bar spoon"] == tools["jigger"] == 1
    assert "soda water" in ready.chill
    working = next(each for each in ready.ice if each.kind.startswith("cubes to shake"))
    assert working.grams == 3 * 250.0 * 1.25


def test_glasses_are_set_out_by_the_words_of_their_specs_and_counted_as_one(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    coupes = ("chilled Nick and Nora", "small coupe", "Nick and Nora glass", "skull or gourd")
    orders = [Order(replace(by_name["Request Stop"], glass=glass), 2) for glass in coupes]
    ready = mise_en_place([*orders, orders[0], orders[3]], snapshot)
    assert {each.name: each.count for each in ready.glassware} == {
        "Nick and Nora or small coupe": 8,
        "skull or gourd": 4,
    }
    said = {step.key: step.text for step in ready.steps}
    assert said["glass:small-coupe"].startswith("Set out 8 × Nick and Nora or small coupe")
    assert "Nick and Noras" in said["chill:small-coupes"]


def test_the_steps_end_ready(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    ready = mise_en_place([Order(by_name["Ices on Platform Three"], 30)], snapshot)
    order = ["the day before", "two hours before", "an hour before", "half an hour before"]
    places = [order.index(step.when) for step in ready.steps]
    assert places == sorted(places)


def test_no_serves_need_nothing(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    ready = mise_en_place([Order(by_name["Request Stop"], 0)], snapshot)
    assert (ready.make, ready.squeeze, ready.glassware, ready.tools) == ((), (), (), ())


def test_every_classic_can_be_prepared(knowledge):
    bar = Snapshot(knowledge, TODAY)
    for spec in knowledge.classics:
        ready = mise_en_place([Order(spec, 4)], bar)
        assert all(each.amount > 0 for each in (*ready.make, *ready.squeeze))
        assert ready.tools


def order_of(key, quantity, serves=10, **spec):
    line = Line("", key, quantity, None, "ml", quantity)
    return Order(Spec("S", (line,), "Stir.", "stirred", **spec), serves)


def steps_by_key(ready):
    found = {each.key: each for each in ready.steps}
    assert len(found) == len(ready.steps)
    return found


def test_what_it_is_made_from_is_made_before_it(knowledge):
    """By hand: 200 ml and 15 % are 230 ml of grenadine, which at 500 ml of juice to 814 ml takes
    141.3 ml of pomegranate juice, of 120 ml a fruit: two."""
    ready = mise_en_place([order_of("grenadine", 20.0)], Snapshot(knowledge, TODAY))
    (syrup,), (juice,) = ready.make, ready.squeeze
    assert syrup.amount == pytest.approx(230.0)
    assert juice.amount == pytest.approx(230.0 * 500 / 814)
    assert juice.inputs == (("pomegranate", 2.0, "each"),)
    steps = steps_by_key(ready)
    first = steps["squeeze:pomegranate-juice:for-grenadine"]
    then = steps["make:grenadine"]
    assert first.minutes_before == then.minutes_before + 30
    assert "141 ml of pomegranate juice from 2 × pomegranate, to go into grenadine" in first.text
    assert "15 % more than the drinks take" in then.text
    assert ready.steps.index(first) < ready.steps.index(then)


def test_what_is_there_of_its_inputs_is_not_made(knowledge):
    juice = bottle(1, "pomegranate-juice", 700.0)
    bar = Snapshot(knowledge, TODAY, (juice.product,), (juice,))
    ready = mise_en_place([order_of("grenadine", 20.0)], bar)
    assert [each.ingredient for each in ready.make] == ["grenadine"] and ready.squeeze == ()


def test_drinks_are_served_from_a_bottle_before_what_is_made_of_it(knowledge):
    """300 ml of juice there, 250 ml for the drinks: 50 ml is left of the 141.3 ml it takes."""
    juice = bottle(1, "pomegranate-juice", 300.0)
    juice = replace(juice, product=replace(juice.product, house_made=True))
    bar = Snapshot(knowledge, TODAY, (juice.product,), (juice,))
    orders = [order_of("grenadine", 20.0), order_of("pomegranate-juice", 25.0)]
    (more,) = mise_en_place(orders, bar).squeeze
    assert more.into == "grenadine"
    assert more.amount == pytest.approx(230.0 * 500 / 814 - 50.0)


def test_what_rests_is_begun_early_enough(knowledge):
    """A shrub stands a day, then half an hour of hands and half an hour to spare."""
    ready = mise_en_place([order_of("berry-shrub", 20.0)], Snapshot(knowledge, TODAY))
    (step,) = [each for each in ready.steps if each.key == "make:berry-shrub"]
    assert step.minutes_before == 24 * 60 + 60
    assert "Leave 24 hours for it to rest." in step.text
    starts = datetime(2026, 11, 27, 15, 0)
    assert step.at(starts) == datetime(2026, 11, 26, 14, 0)
    assert step.said_when(starts) == "Thursday 26 November 2026, 14:00"
    assert step.said_when(starts, date.isoformat) == "Thursday 2026-11-26, 14:00"
    assert step.said_when() == "The day before"


def test_every_recipe_that_says_it_waits_says_how_long(knowledge):
    waits = ("overnight", "leave them", "leave it", "hours", "a day in", "rest an hour")
    for recipe in knowledge.made_from:
        if any(word in recipe.how for word in waits):
            assert recipe.rest_hours > 0, recipe.made
        elif recipe.rest_hours:
            assert "half an hour" in recipe.how, recipe.made
        if "overnight" in recipe.how:
            assert recipe.rest_hours == 12.0, recipe.made


def house_made(use_by, amount=500.0):
    product = Product("Grenadine, the last", "", "grenadine", 500.0, house_made=True, id=7)
    return Bottle(7, product, Level(amount, "open"), made=date(2026, 11, 1), use_by=use_by)


def test_a_house_made_bottle_past_its_date_by_then_is_made_anew(knowledge):
    old = house_made(date(2026, 11, 24))
    bar = Snapshot(knowledge, TODAY, (old.product,), (old,))
    order = [order_of("grenadine", 20.0)]
    assert mise_en_place(order, bar).make == ()
    assert mise_en_place(order, bar, on=date(2026, 11, 24)).make == ()
    ready = mise_en_place(order, bar, on=date(2026, 11, 25))
    (syrup,) = ready.make
    assert syrup.amount == pytest.approx(230.0) and ready.past == (old,)
    step = steps_by_key(ready)["discard:7"]
    assert step.text == (
        "Do not count on Grenadine, the last: its date is 24 Nov 2026. "
        "Throw it away and make it anew."
    )
    assert ready.steps.index(step) < [s.key for s in ready.steps].index("make:grenadine")


def test_a_bottle_nobody_wants_is_no_concern(knowledge):
    old = house_made(date(2026, 11, 1))
    bar = Snapshot(knowledge, TODAY, (old.product,), (old,))
    assert mise_en_place([lime_drink()], bar).past == ()


def test_each_drink_has_a_clean_shaker_and_all_share_the_jigger(knowledge):
    bar = Snapshot(knowledge, TODAY)
    orders = [lime_drink(), replace(lime_drink(), serves=2)]
    counts = {each.name: each.count for each in mise_en_place(orders, bar).tools}
    assert (counts["shaker tins"], counts["fine strainer"], counts["jigger"]) == (2, 2, 1)


def test_a_garnish_says_from_how_many_it_is_cut(knowledge):
    """Six wedges to a lime: ten take two."""
    line = Line("Garnish: lime wedge", "lime-wedge", 1.0, None, "each", 1.0, garnish=True)
    order = Order(Spec("S", (line,), "Stir.", "stirred"), 10)
    steps = steps_by_key(mise_en_place([order], Snapshot(knowledge, TODAY)))
    assert steps["garnish:lime-wedge"].text == "Cut 10 × lime wedge from 2 × lime."


def test_the_owners_way_of_making_it_goes_first(knowledge):
    own = MadeFrom("grenadine", (Input("sugar", 100),), 100.0, "Ours.", own=True, rest_hours=48.0)
    ours = Knowledge(knowledge.tree, made_from=(*knowledge.made_from, own))
    ready = mise_en_place([order_of("grenadine", 20.0)], Snapshot(ours, TODAY))
    (syrup,) = ready.make
    assert (syrup.how, syrup.minutes_before) == ("Ours.", 48 * 60 + 60)
    assert steps_by_key(ready)["make:grenadine"].when == "two days before"


def test_recipes_in_a_circle_come_to_an_end(knowledge):
    circle = (
        MadeFrom("grenadine", (Input("pomegranate-juice", 1.0),), 1.0, "A."),
        MadeFrom("pomegranate-juice", (Input("grenadine", 1.0),), 1.0, "B."),
    )
    bar = Snapshot(Knowledge(knowledge.tree, made_from=circle), TODAY)
    ready = mise_en_place([order_of("grenadine", 20.0)], bar)
    assert [each.key for each in (*ready.make, *ready.squeeze)] == [
        "make:grenadine",
        "squeeze:pomegranate-juice:for-grenadine",
    ]


def test_what_would_do_as_well_is_taken_first(knowledge):
    there = bottle(1, "lemon-juice", 700.0)
    bar = Snapshot(knowledge, TODAY, (there.product,), (there,))
    order = lime_drink()
    line = replace(order.spec.lines[0], alternatives=("lemon-juice",))
    either = replace(order, spec=replace(order.spec, lines=(line,)))
    assert mise_en_place([either], bar).squeeze == ()


def test_steps_are_keyed_alike_each_time_and_once_each(knowledge):
    bar = Snapshot(knowledge, TODAY)
    for spec in knowledge.classics:
        once, again = (mise_en_place([Order(spec, 4)], bar).steps for _ in range(2))
        more = mise_en_place([Order(spec, 9)], bar).steps
        keys = [each.key for each in once]
        assert keys == [each.key for each in again] == [each.key for each in more]
        assert len(set(keys)) == len(keys)
        minutes = [each.minutes_before for each in once]
        assert minutes == sorted(minutes, reverse=True)


@pytest.mark.parametrize(
    ("minutes", "words"),
    [(15, "just before"), (30, "half an hour before"), (1500, "the day before")],
)
def test_how_long_before_in_words(minutes, words):
    assert Step("x", minutes, "").when == words


def test_a_garnish_keeps_what_stands_after_a_colon_of_its_own(knowledge):
    line = Line("1 orange slice: dried", "orange-slice", 1.0, None, "each", 1.0, garnish=True)
    spec = Spec("S", (line, replace(line, text="Garnish: orange slice")), "Stir.", "stirred")
    ready = mise_en_place([Order(spec, 2)], Snapshot(knowledge, TODAY))
    assert [each.name for each in ready.garnishes] == ["1 orange slice: dried", "orange slice"]
