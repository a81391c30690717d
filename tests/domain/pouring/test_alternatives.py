"""*Rye or bourbon*: any one of a line's choices meets it exactly."""

from __future__ import annotations

from dataclasses import replace
from itertools import product
from random import Random

import pytest

from barkeep.domain.bottles.bottle import Level
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.offers import stand_in
from tests.domain.pouring.test_verdicts import KNOWLEDGE, drink, line, spec
from tests.how_much import some_of
from tests.worlds import bottle, having, makeable, random_bar, snapshot


def with_choices(chance: Random, bar):
    """The bar with some lines of its specs asking for one thing or another."""
    keys = list(bar.knowledge.tree)

    def widened(each):
        others = [key for key in chance.sample(keys, 2) if key != each.ingredient]
        return replace(each, alternatives=tuple(others) if chance.random() < 0.5 else ())

    specs = tuple(
        replace(one, lines=tuple(widened(each) for each in one.lines)) for one in bar.specs
    )
    return replace(bar, specs=specs)


def spelt_out(one: Spec) -> list[Spec]:
    """Every spec that a spec with choices amounts to, each with one choice made."""
    return [
        replace(
            one,
            name=f"{one.name} {number}",
            lines=tuple(
                replace(each, ingredient=key, alternatives=())
                for each, key in zip(one.lines, keys, strict=True)
            ),
        )
        for number, keys in enumerate(product(*(each.wanted for each in one.lines)))
    ]


def full(bar):
    """The bar with plenty in every bottle."""
    plenty = Level(10_000.0, "open")
    return replace(bar, bottles=tuple(replace(each, level=plenty) for each in bar.bottles))


@pytest.mark.parametrize("within", ["exact", "close", "loose"])
@pytest.mark.parametrize("first", some_of([0, 30], 2))
def test_a_drink_can_be_made_where_one_of_those_it_amounts_to_can(within, first):
    made = short = 0
    for seed in range(first, first + 30):
        bar = full(with_choices(Random(seed), random_bar(Random(seed))))
        there = makeable(bar, within)
        for one in bar.specs:
            each = makeable(replace(bar, specs=tuple(spelt_out(one))), within)
            assert (one.name in there) == bool(each), (seed, one.name)
            made, short = made + bool(each), short + (not each)
    assert made > 20 and short > 20


def test_what_is_left_of_two_choices_adds_up_as_two_bottles_of_a_kind_do():
    lines = [line("gin", 60, alternatives=("kummel",))]
    found = drink(bottle(1, "gin", 40), bottle(2, "kummel", 40), spec_lines=lines)
    assert (found.verdict, found.serves) == ("ready", 1)


def test_no_serve_is_lost_by_having_the_choice():
    for seed in range(40):
        bar = with_choices(Random(seed), random_bar(Random(seed)))
        for found in tonight(bar, "exact"):
            spelt = tonight(replace(bar, specs=tuple(spelt_out(found.spec))), "exact")
            most = [each.serves_in_all for each in spelt if each.makeable]
            if found.serves_in_all is not None and most:
                assert None not in most and found.serves_in_all >= max(most)


@pytest.mark.parametrize("within", ["exact", "close"])
def test_what_a_purchase_is_said_to_turn_is_what_really_buying_it_turns(within):
    claimed = 0
    for seed in some_of(range(60), 2):
        bar = with_choices(Random(seed), random_bar(Random(seed)))
        before, named = makeable(bar, within), set()
        for each in (form for row in next_bottle(bar, within) for form in row.forms):
            assert set(each.unlocks) == makeable(having(bar, each.ingredient), within) - before
            claimed += len(each.unlocks)
            named.add(each.ingredient)
        for key in set(bar.knowledge.tree) - named:
            if not bar.knowledge.tree[key].family and key not in bar.always_there:
                assert makeable(having(bar, key), within) == before
    assert claimed > 50


def test_memory_holds_for_what_any_choice_can_reach():
    for seed in range(30):
        chance = Random(seed)
        bar, memory = with_choices(chance, random_bar(Random(seed))), Memory()
        for _ in range(4):
            assert tonight(bar, "close", 1, memory) == tonight(bar, "close")
            assert next_bottle(bar, "close", memory) == next_bottle(bar, "close")
            bar = having(bar, chance.choice(list(bar.knowledge.tree)))


GIN_OR_KUMMEL = line("gin", 60, alternatives=("kummel",))


def test_the_first_choice_goes_before_the_second_and_both_are_exact():
    both = drink(bottle(1, "kummel", 700), bottle(2, "gin", 120), spec_lines=[GIN_OR_KUMMEL])
    assert (both.verdict, both.serves, both.serves_in_all) == ("ready", 2, 13)
    assert both.lines[0].ingredient == "gin"
    assert [each.poured[0].ingredient for each in both.then] == ["kummel"]
    second = drink(bottle(1, "kummel", 700), spec_lines=[GIN_OR_KUMMEL], within="exact")
    assert (second.verdict, second.lines[0].ingredient) == ("ready", "kummel")


def test_an_exact_second_choice_goes_before_a_stand_in_for_the_first():
    lines = [line("london-dry-gin", 60, alternatives=("kummel",))]
    found = drink(bottle(1, "gin", 700), bottle(2, "kummel", 700), spec_lines=lines)
    assert (found.verdict, found.lines[0].ingredient) == ("ready", "kummel")


def test_a_choice_that_is_not_there_is_named_whole():
    found = drink(spec_lines=[GIN_OR_KUMMEL])
    assert (found.verdict, found.missing) == ("one_short", ("gin",))
    why = "No gin or kümmel in the bar, and nothing close enough to stand in for it."
    assert found.lines[0].why == why


def test_either_choice_turns_it_and_is_one_purchase():
    bar = snapshot(KNOWLEDGE, [], [spec(GIN_OR_KUMMEL)])
    turning, *others = next_bottle(bar, "exact")
    assert {each.ingredient for each in turning.forms} == {"gin", "kummel", "london-dry-gin"}
    assert all(each.unlocks == ("Drink",) for each in turning.forms)
    assert turning.why == ("Turns Drink ready. Kümmel or London dry gin does the same.")
    assert all(each.unlocks == () for each in others)
    assert "egg-white" in {each.ingredient for each in others}


def test_the_second_choice_can_be_asked_about_and_is_what_is_analysed():
    asked = spec(line("kummel", 60, alternatives=("london-dry-gin",), amount=60.0, unit="ml"))
    bar = snapshot(KNOWLEDGE, [bottle(1, "genever", 700)], [asked])
    offers = stand_in(bar, "london-dry-gin", asked).stand_ins
    assert [each.ingredient for each in offers] == ["genever", "gin"]
    strong = bottle(1, "london-dry-gin", 700)
    strong = replace(strong, product=replace(strong.product, abv_percent=57.0))
    poured = analyse(asked, snapshot(KNOWLEDGE, [strong], [asked]))
    assert poured.contents[0].liquid.abv.value == 57.0
