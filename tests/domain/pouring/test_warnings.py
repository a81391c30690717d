"""What is said before pouring: of what goes in, of what is done, of what is old."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from barkeep.domain.bottles.bottle import Level
from barkeep.domain.cautions.cautions import cautions_for, occasion_of, shipped_cautions
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.spec import Line, Spec
from tests.worlds import TODAY, bottle, snapshot

TEXTS = {rule.caution.text: rule.caution for rule in shipped_cautions()}


@pytest.fixture
def warned(knowledge):
    """The warnings for one drink of these lines, with these bottles."""

    def ask(*keys: str, stock=(), on=TODAY, within="close", **more) -> tuple[str, ...]:
        lines = tuple(Line(key, key, quantity=30.0) for key in keys)
        drink = Spec("Trial", lines, **{"technique": "shaken", **more})
        bar = snapshot(replace(knowledge, classics=()), stock, [drink])
        (found,) = tonight(replace(bar, on=on), within)
        return found.warnings

    return ask


def keys_of(warnings) -> list[str]:
    return [TEXTS[each].key for each in warnings if each in TEXTS]


def test_danger_comes_first_then_allergens_then_care(warned):
    found = warned("egg-white", "gin", method="Flame a peel over it.")
    assert keys_of(found) == ["flame", "raw-egg"]
    assert [each.split()[0] for each in found] == ["Fire:", "Contains", "Raw"]
    assert found[1].startswith("Contains egg, which can cause allergic reactions")


def test_a_plain_drink_has_nothing_said_of_it(warned):
    assert warned("gin", "lime-juice", method="Shake.") == ()


def test_notes_and_what_is_true_of_every_drink_are_left_to_the_analysis(warned, tree):
    strong = Spec("Trial", (Line("overproof", "overproof-rum"), Line("tonic", "tonic-water")))
    asked = occasion_of(strong, ["overproof-rum", "tonic-water"], tree)
    said = {each.key for each in cautions_for(asked, tree, general=True)}
    assert {"strong-spirit", "quinine", "driving", "pregnancy"} <= said
    assert warned("overproof-rum", "tonic-water") == ()


@pytest.mark.parametrize("place", ["glass", "notes"])
def test_the_specs_own_words_count(warned, place):
    assert keys_of(warned("gin", "lime-juice", **{place: "copper mug"})) == ["copper-and-acid"]


def test_what_is_poured_counts_and_not_what_was_asked_for(warned):
    (egg,) = [bottle(1, "egg-white", 300)]
    (carton,) = [bottle(1, "pasteurised-egg-white", 300)]
    assert keys_of(warned("egg-white", stock=[egg])) == ["raw-egg"]
    assert keys_of(warned("egg-white", stock=[carton])) == []
    assert any("Contains egg" in each for each in warned("egg-white", stock=[carton]))


def test_a_stand_in_that_brings_an_allergen_says_so(warned):
    oats = [bottle(1, "oat-milk", 500)]
    found = warned("milk", stock=oats, within="loose")
    assert found[0].startswith("Contains gluten, which can cause")
    assert found[1:] == ("A stand-in or choice of bottle brings in gluten.",)
    assert len(warned("oat-milk", stock=oats)) == 1


def test_so_does_a_choice_of_bottle_but_not_where_the_whole_family_carries_it(warned):
    (contains, brought) = warned("beer", stock=[bottle(1, "wheat-beer", 500)])
    assert "gluten and wheat" in contains
    assert brought == "A stand-in or choice of bottle brings in wheat."
    assert len(warned("dry-sherry", stock=[bottle(1, "fino-sherry", 300)])) == 1


def test_what_is_made_here_carries_what_it_is_made_from(warned):
    stock = [bottle(1, "almonds", 1000), bottle(2, "orange-flower-water", 100)]
    (contains,) = warned("orgeat", stock=stock)
    assert "tree nuts" in contains


def test_making_things_here_raises_no_caution_that_the_drink_itself_does_not(knowledge):
    """Tea takes boiling water, but iced tea is not hot; and so on over all the classics."""
    tree = knowledge.tree
    made = {recipe.made for recipe in knowledge.made_from}
    made.add("pasteurised-egg-white")  # it would go before the raw egg
    bought = [key for key in tree if key not in made and not tree[key].family]
    bar = snapshot(knowledge, [bottle(number, key, 1000) for number, key in enumerate(bought, 1)])
    drinks = tonight(bar)
    assert sum(bool(keys_of(drink.warnings)) for drink in drinks) > 30
    for drink in drinks:
        asked = occasion_of(drink.spec, {line.ingredient for line in drink.spec.lines}, tree)
        cautions = [each.key for each in cautions_for(asked, tree) if each.level != "note"]
        assert keys_of(drink.warnings) == cautions, drink.spec.name


def test_a_bottle_open_too_long_is_named(warned):
    opened = replace(bottle(1, "fino-sherry", 400), level=Level(400, "open", date(2026, 10, 22)))
    (_contains, age) = warned("dry-sherry", stock=[opened])
    assert "was opened 30 days ago and keeps " in age and "past its best" in age
    fresh = replace(opened, level=Level(400, "open", TODAY))
    assert len(warned("dry-sherry", stock=[fresh])) == 1


def test_a_stale_bottle_of_the_kind_is_named_once(warned):
    stale = replace(bottle(1, "blood-orange-juice", 400), use_by=TODAY - timedelta(days=1))
    past = "Hollow Lamp blood-orange-juice 1 is past its use-by date of 20 November 2026"
    said = f"{past}: not safe, so not counted."
    assert warned("orange-juice", "orange-juice", stock=[stale]) == (said,)
    assert warned("blood-orange-juice", stock=[stale]) == (said,)
    assert warned("lime-juice", stock=[stale]) == ()
