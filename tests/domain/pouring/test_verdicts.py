"""Verdicts: their words, their reasons, and what can never change them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Level
from barkeep.domain.ingredients.relations import Input, MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import Confusable, FamilyTree, Ingredient
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.spec import Line, Spec
from tests.worlds import TODAY, bottle, having, makeable, random_bar, snapshot

INGREDIENTS = [
    Ingredient("gin", "Gin", abv_percent=40.0),
    Ingredient("london-dry-gin", "London dry gin", ("gin",), proper=True, abv_percent=40.0),
    Ingredient("genever", "Genever", abv_percent=38.0),
    Ingredient("lime", "Lime", unit="each", typical_size=1.0),
    Ingredient("lime-juice", "Lime juice"),
    Ingredient("sugar", "White sugar", unit="g", always_there=True),
    Ingredient("water", "Water", always_there=True),
    Ingredient("simple-syrup", "Simple syrup"),
    Ingredient("egg-white", "Egg white", allergens=("egg",)),
    Ingredient("kummel", "Kümmel"),
    Ingredient("coconut-milk", "Coconut milk"),
    Ingredient("cream-of-coconut", "Cream of coconut"),
]
KNOWLEDGE = Knowledge(
    FamilyTree(
        {each.key: each for each in INGREDIENTS},
        (Confusable("coconut-milk", "cream-of-coconut", "one is sweet and one is not"),),
    ),
    (
        StandIn("london-dry-gin", "gin", 0.9, 1.0, "the label does not say which kind"),
        StandIn("gin", "genever", 0.85, 1.0, "maltier", ("never_base",)),
        StandIn("london-dry-gin", "genever", 0.85, 0.9, "maltier"),
    ),
    (NoStandIn("kummel", "nothing else tastes of caraway like it"),),
    (
        MadeFrom("lime-juice", (Input("lime", 1.0),), 30.0, "Squeeze."),
        MadeFrom("simple-syrup", (Input("sugar", 1000), Input("water", 1000)), 1626.5, "Stir."),
    ),
)


def spec(*lines: Line, name: str = "Drink", technique: str = "shaken") -> Spec:
    return Spec(name, lines, technique=technique)


def line(ingredient: str, quantity: float | None = 30.0, **more) -> Line:
    return Line(f"{quantity} {ingredient}", ingredient, quantity=quantity, **more)


def drink(*bottles, spec_lines, within="close", serves=1):
    (found,) = tonight(snapshot(KNOWLEDGE, bottles, [spec(*spec_lines)]), within, serves)
    return found


def test_a_kind_of_the_wanted_thing_is_the_wanted_thing():
    found = drink(bottle(1, "london-dry-gin", 700), spec_lines=[line("gin", 60)])
    assert (found.verdict, found.serves, found.runs_out) == ("ready", 11, "london-dry-gin")
    assert found.lines[0].why == "London dry gin is a kind of gin."


def test_the_general_kind_is_only_a_stand_in_for_the_special_one():
    found = drink(bottle(1, "gin", 700), spec_lines=[line("london-dry-gin", 60)])
    assert found.verdict == "stand_in"
    assert found.lines[0].closeness == 0.9
    why = "Gin stands in for London dry gin: the label does not say which kind."
    assert found.lines[0].why == why
    assert drink(
        bottle(1, "gin", 700), spec_lines=[line("london-dry-gin", 60)], within="exact"
    ).missing == ("london-dry-gin",)


def test_the_general_kind_stands_in_only_as_itself_not_as_its_other_kinds():
    other = Ingredient("old-tom-gin", "Old Tom gin", ("gin",), proper=True)
    tree = FamilyTree({**KNOWLEDGE.tree.ingredients, other.key: other})
    knowledge = replace(KNOWLEDGE, tree=tree)
    wanted = [spec(line("london-dry-gin", 60))]
    assert tonight(snapshot(knowledge, [bottle(1, "gin", 700)], wanted))[0].verdict == "stand_in"
    old_tom = snapshot(knowledge, [bottle(1, "old-tom-gin", 700)], wanted)
    assert tonight(old_tom)[0].verdict == "one_short"


def test_a_scope_shuts_a_stand_in_out_of_the_base():
    lines = [line("london-dry-gin", 60), line("gin", 20)]
    stock = (bottle(1, "genever", 700),)
    found = drink(*stock, spec_lines=lines)
    assert found.verdict == "stand_in"
    assert found.lines[1].why == "Genever stands in for gin: maltier."
    assert drink(*stock, spec_lines=[line("gin", 60)]).verdict == "one_short"


def test_juice_comes_from_fruit_and_syrup_from_what_is_always_there():
    found = drink(
        bottle(1, "lime", 3, 3), spec_lines=[line("lime-juice", 25), line("simple-syrup")]
    )
    assert (found.verdict, found.serves, found.runs_out) == ("ready", 3, "lime")
    assert found.lines[0].why == "Lime juice is made here from lime."
    assert found.lines[1].why == "Simple syrup is made here from white sugar and water."


def test_without_sugar_there_is_no_syrup_when_the_owner_says_so():
    bar = snapshot(KNOWLEDGE, [], [spec(line("simple-syrup"))])
    without = replace(bar, settings=Settings(not_there=frozenset({"sugar"})))
    assert tonight(bar)[0].serves is None
    assert tonight(without)[0].verdict == "one_short"


def test_a_level_below_one_serve_is_missing_and_says_how_much_is_left():
    found = drink(bottle(1, "gin", 20), spec_lines=[line("gin", 60)])
    assert (found.verdict, found.serves, found.missing) == ("one_short", 0, ("gin",))
    assert found.lines[0].why == "Only 20 ml of gin is left and 60 ml is needed."


def test_two_bottles_of_a_kind_add_up():
    stock = (bottle(1, "gin", 40), bottle(2, "london-dry-gin", 40))
    assert drink(*stock, spec_lines=[line("gin", 60)]).serves == 1


def test_lines_that_share_a_bottle_can_be_one_short_together():
    found = drink(bottle(1, "gin", 60), spec_lines=[line("gin", 45), line("gin", 30)])
    assert (found.verdict, found.missing) == ("one_short", ("gin",))


def test_more_serves_than_the_level_allows_are_short():
    lines = [line("gin", 60)]
    assert drink(bottle(1, "gin", 150), spec_lines=lines, serves=2).verdict == "ready"
    assert drink(bottle(1, "gin", 150), spec_lines=lines, serves=3).verdict == "one_short"


def test_optional_lines_and_garnishes_never_block_but_are_listed():
    lines = [line("gin", 60), line("kummel", 5, optional=True), line("lime", None, garnish=True)]
    found = drink(bottle(1, "gin", 700), spec_lines=lines)
    assert found.verdict == "ready"
    assert [each.met for each in found.lines] == [True, False, False]


def test_where_nothing_stands_in_the_reason_is_given():
    found = drink(spec_lines=[line("kummel")])
    why = "No kümmel, and nothing stands in for it: nothing else tastes of caraway like it."
    assert found.lines[0].why == why


def test_a_false_friend_is_never_offered_even_as_a_stand_in_of_a_stand_in():
    wrong = StandIn("coconut-milk", "cream-of-coconut", 0.95, 1.0, "they look alike")
    knowledge = replace(KNOWLEDGE, stand_ins=(wrong,))
    bar = snapshot(knowledge, [bottle(1, "cream-of-coconut", 500)], [spec(line("coconut-milk"))])
    assert tonight(bar, "loose")[0].verdict == "one_short"


def test_a_least_strength_shuts_out_the_weaker_bottle():
    weak, strong = bottle(1, "gin", 700), bottle(2, "gin", 100)
    strong = replace(strong, product=replace(strong.product, abv_percent=57.0))
    lines = [line("gin", 60, min_abv_percent=50.0)]
    assert drink(weak, spec_lines=lines).verdict == "one_short"
    found = drink(weak, strong, spec_lines=lines)
    assert (found.verdict, found.serves) == ("ready", 1)
    assert found.lines[0].bottle == strong


def test_what_is_past_its_use_by_date_is_not_counted_and_is_said():
    stale = replace(bottle(1, "lime-juice", 300), use_by=TODAY - timedelta(days=2))
    found = drink(stale, spec_lines=[line("lime-juice")])
    assert found.verdict == "one_short"
    assert "past its use-by date of 19 November 2026" in found.lines[0].why
    assert any("not counted" in warning for warning in found.warnings)


def test_an_old_open_bottle_and_allergens_are_warned_of():
    tree = dict(KNOWLEDGE.tree.ingredients)
    tree["gin"] = replace(tree["gin"], shelf_life_days=30)
    knowledge = replace(KNOWLEDGE, tree=FamilyTree(tree))
    old = replace(bottle(1, "gin", 700), level=Level(700, "open", date(2026, 9, 1)))
    bar = snapshot(
        knowledge, [old, bottle(2, "egg-white", 100)], [spec(line("gin"), line("egg-white"))]
    )
    warnings = " ".join(tonight(bar)[0].warnings)
    assert "opened 81 days ago" in warnings
    assert "Contains egg" in warnings
    assert "pasteurised" in warnings


@settings(max_examples=150, deadline=None)
@given(st.integers(0, 2**32))
def test_adding_a_bottle_never_loses_a_drink(seed):
    chance = Random(seed)
    bar = random_bar(chance)
    more = having(bar, chance.choice(list(bar.knowledge.tree)))
    assert makeable(bar) <= makeable(more)
    assert makeable(bar, "exact") <= makeable(more, "exact")


@settings(max_examples=100, deadline=None)
@given(st.integers(0, 2**32))
def test_loosening_closeness_never_loses_a_drink(seed):
    bar = random_bar(Random(seed))
    assert makeable(bar, "exact") <= makeable(bar, "close") <= makeable(bar, "loose")


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 2**32))
def test_taking_a_bottle_away_and_putting_it_back_restores_every_answer(seed):
    bar = random_bar(Random(seed))
    before = tonight(bar)
    without = replace(bar, bottles=bar.bottles[1:])
    tonight(without)
    assert tonight(replace(without, bottles=bar.bottles)) == before
