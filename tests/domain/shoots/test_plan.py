"""Whether a shoot can be poured, as it will be on that day, and what would save it."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.shoots import ChosenPour, ServeCounts, Shoot, ShootDrink
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.shoots.plan import as_of, draws_of, plan, rescued, shortfall
from barkeep.domain.specs.spec import Line, Spec
from tests import worlds
from tests.worlds import TODAY

INGREDIENTS = (
    Ingredient("gin", "gin"),
    Ingredient("rum", "rum"),
    Ingredient("rye", "rye"),
    Ingredient("lime-juice", "lime juice", shelf_life_days=2),
    Ingredient("lime", "lime", unit="each", typical_size=1.0),
)
TREE = FamilyTree({each.key: each for each in INGREDIENTS})
KNOWLEDGE = Knowledge(
    TREE, (StandIn("gin", "rum", 0.7, 1.25, "both burn"), StandIn("gin", "rye", 0.65, 1.0, "so"))
)
GIN, JUICE = Line("60 ml gin", "gin", 60.0, None, "ml", 60.0), Line("lime juice", "lime-juice")
ONE = Spec("One", (GIN,), id=1)
TWO = Spec("Two", (replace(GIN, quantity=30.0), replace(JUICE, quantity=20.0)), id=2)


def bar(gin=240.0, rum=700.0, rye=0.0, juice=40.0, use_by=None, specs=(ONE, TWO)):
    bottles = [
        worlds.bottle(number, key, amount)
        for number, (key, amount) in enumerate(
            (("gin", gin), ("rum", rum), ("rye", rye), ("lime-juice", juice)), 1
        )
    ]
    bottles[3] = replace(bottles[3], use_by=use_by)
    return worlds.snapshot(KNOWLEDGE, bottles, specs)


def shoot(one=2, two=2, on=TODAY, **more):
    drinks = tuple(
        ShootDrink(number, name, ServeCounts(0, serves, 0))
        for number, name, serves in ((1, "One", one), (2, "Two", two))
    )
    return Shoot(7, "Night train", on, drinks, **more)


def test_all_drinks_draw_on_the_same_bottles():
    answer = plan(shoot(), bar(gin=180.0))
    assert answer.possible and answer.verdict == "Yes: every serve can be poured."
    drawn = {each.bottle.ingredient: each.amount for each in answer.menu.draws}
    assert drawn == pytest.approx({"gin": 180.0, "lime-juice": 40.0})
    assert answer.rescues == () and answer.removed == ()
    assert not plan(shoot(), bar(gin=179.0)).possible


def test_what_runs_out_is_said_with_how_much_and_what_to_drop():
    answer = plan(shoot(one=2, two=0), bar(gin=90.0))
    assert answer.verdict == "No: one line runs out."
    (line,) = answer.menu.lacking
    assert (line.short, line.unmet) == pytest.approx((30.0, 0.5))
    assert shortfall(line, bar()) == "One lacks 30 ml of gin, for 0.5 of 2 serves."
    assert answer.menu.drop == (1, 0)


def test_two_lines_that_run_out_are_counted():
    assert plan(shoot(), bar(gin=0.0)).verdict == "No: 2 lines run out."


def test_rescues_are_the_closest_that_reach_and_save_when_taken():
    answer = plan(shoot(one=2, two=0), bar(gin=0.0, rye=100.0))
    (rescue,) = answer.rescues  # the rye would run out in its turn
    assert (rescue.name, rescue.wanted, rescue.closeness) == ("One", "gin", 0.7)
    assert rescue.chosen == ChosenPour(0, "rum", 1.25)
    assert rescue.why == "Rum stands in for gin: both burn."
    saved = plan(rescued(answer.shoot, rescue), bar(gin=0.0, rye=100.0))
    assert saved.possible
    assert [(each.bottle.ingredient, each.amount) for each in saved.menu.draws] == [("rum", 150.0)]
    more = plan(shoot(one=1, two=0), bar(gin=0.0, rye=100.0)).rescues
    assert [each.chosen.ingredient for each in more] == ["rum", "rye"]


def test_a_rescue_counts_on_what_the_other_drinks_take():
    """Both lack gin and there is rum for just one of them."""
    answer = plan(shoot(one=1, two=1), bar(gin=0.0, rum=80.0))
    first = answer.rescues[0]
    then = plan(rescued(answer.shoot, first), bar(gin=0.0, rum=80.0))
    assert not then.possible and then.rescues == ()


def test_within_close_or_loose_pours_stand_ins_nobody_chose():
    short = bar(gin=0.0)
    assert not plan(shoot(), short, "close").possible
    assert plan(shoot(), short, "loose").possible


def test_a_chosen_bottle_is_poured_from_first():
    two = bar(specs=(ONE,))
    other = worlds.bottle(9, "gin", 500.0)
    two = replace(two, bottles=(*two.bottles, other))
    plain = shoot(two=0)
    chosen = replace(plain.drinks[0], chosen=(ChosenPour(0, "gin", 1.0, 9),))
    drawn = plan(replace(plain, drinks=(chosen,)), two).menu.draws
    assert [(each.bottle.id, each.amount) for each in drawn] == [(9, 120.0)]
    assert [each.bottle.id for each in plan(plain, two).menu.draws] == [1]


def test_what_is_past_its_date_by_then_is_not_counted_on():
    soon, later = TODAY + timedelta(days=2), TODAY + timedelta(days=3)
    bottles = bar(use_by=soon)
    assert plan(shoot(on=soon), bottles).past == ()
    answer = plan(shoot(on=later), bottles)
    assert [each.ingredient for each in answer.past] == ["lime-juice"]
    assert [each.line.ingredient for each in answer.menu.lacking] == ["lime-juice"]
    assert answer.on == later


def test_a_filmed_shoot_poured_what_was_good_then_and_a_missed_one_is_of_today():
    yesterday = TODAY - timedelta(days=1)
    bottles = bar(use_by=yesterday)
    assert plan(shoot(on=yesterday, state="filmed"), bottles).possible
    missed = plan(shoot(on=yesterday, state="planned"), bottles)
    assert missed.on == TODAY and not missed.possible
    assert as_of(shoot(on=date(2026, 12, 1)), bottles).on == date(2026, 12, 1)


def test_a_removed_spec_is_named_and_the_rest_is_weighed():
    answer = plan(shoot(), bar(specs=(TWO,)))
    assert answer.removed == ("One",) and not answer.possible
    assert answer.verdict == (
        "The spec of One was removed: put another in its place or take it out."
    )
    assert {each.order.spec.name for each in answer.menu.lines} == {"Two"}


def test_a_rescue_is_for_its_own_drink_though_one_before_it_was_removed():
    answer = plan(shoot(), bar(gin=0.0, specs=(TWO,)))
    assert {(each.drink, each.name) for each in answer.rescues} == {(1, "Two")}
    saved = rescued(answer.shoot, answer.rescues[0])
    assert saved.drinks[0].chosen == () and saved.drinks[1].chosen


def test_a_shoot_without_drinks_says_so():
    empty = plan(Shoot(1, "Idea", TODAY), bar())
    assert empty.verdict == "No drink is planned yet."
    assert empty.menu.draws == ()


def test_draws_follow_the_serves_made_and_leave_out_what_was_not_there():
    drawn = draws_of(shoot(), bar(), (3, 1))
    assert {each.bottle.ingredient: each.amount for each in drawn} == pytest.approx(
        {"gin": 210.0, "lime-juice": 20.0}
    )
    assert draws_of(shoot(), bar(), (0, 0)) == ()
    short = draws_of(shoot(), bar(gin=70.0), (2, 0))
    assert [each.amount for each in short] == pytest.approx([70.0])


@pytest.mark.parametrize(
    ("pieces", "serves", "taken"), [(0.25, 1, 1.0), (0.25, 5, 2.0), (1.0, 3, 3.0), (0.25, 16, 4.0)]
)
def test_what_is_counted_is_taken_in_whole_pieces(pieces, serves, taken):
    line = Line("lime", "lime", pieces, None, "each", pieces)
    limes = worlds.bottle(1, "lime", 4.0)
    limes = replace(limes, product=replace(limes.product, unit="each", size=10.0))
    with_limes = worlds.snapshot(KNOWLEDGE, [limes], [Spec("One", (line,), id=1)])
    (draw,) = draws_of(shoot(two=0), with_limes, (serves, 0))
    assert draw.amount == taken
