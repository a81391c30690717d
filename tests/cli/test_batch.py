"""`barkeep batch`: every way to say how much, and what is said of the result."""

from __future__ import annotations

import re

import pytest

from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import to_quantity
from tests.domain.making.test_batches import said_serves

KEYS = ["spec", "served", "serves", "lines", "water_ml", "total_ml", "abv_percent", "short"]


def batch(barkeep, bar, *words):
    return barkeep("--bar", bar, "batch", "Request Stop", *words, "--json").answer


def test_keys_are_stable(barkeep, bar):
    answer = batch(barkeep, bar, "--serves", "12")
    assert list(answer) == [
        *KEYS,
        "cautions",
        "notes",
        "past",
        "whole_bottles",
        "rounds",
        "left_out",
        "assumed",
        "serves_shown",
        "made_first",
        "by_rounds",
        "method",
    ]
    gin = answer["lines"][0]
    assert gin == {
        "ingredient": "London dry gin",
        "as_written": "2 oz London dry gin",
        "called": "London dry gin",
        "amount_ml": 709.76,
        "shown": "710 ml",
        "held": "",
    }
    assert answer["serves"] == 12.0
    assert any("drive" in each for each in answer["cautions"])


def test_what_is_short_is_named_with_both_amounts(barkeep, bar):
    short = {each["ingredient"]: each for each in batch(barkeep, bar, "--serves", "24")["short"]}
    assert short["Lime juice"]["need_ml"] > short["Lime juice"]["have_ml"] > 0


@pytest.mark.parametrize(
    "words",
    [("--from", "gin=23.669 oz"), ("--from", "London dry gin = 700 ml"), ("--from", "gin=70cl")],
)
def test_however_much_there_is_of_one_ingredient(barkeep, bar, words):
    answer = batch(barkeep, bar, *words)
    assert answer["lines"][0]["amount_ml"] == pytest.approx(700.0, abs=0.05)
    assert answer["serves"] == pytest.approx(700 / 59.147, abs=0.01)


def test_a_volume_and_a_vessel_with_room_agree(barkeep, bar):
    volume = batch(barkeep, bar, "--volume", "3 l")
    vessel = batch(barkeep, bar, "--vessel", "4 l", "--room", "25 %")
    assert volume["total_ml"] == vessel["total_ml"] == 3000.0
    assert volume["lines"] == vessel["lines"]


def test_a_freezer_batch_says_how_it_comes_out(barkeep, bar):
    notes = batch(barkeep, bar, "--serves", "4", "--served", "frozen")["notes"]
    assert any("in a freezer at -18 °C it turns to slush" in note for note in notes)
    assert any("would not pour even so: keep it in the fridge" in note for note in notes)


def test_the_table_reads_as_a_recipe(barkeep, bar):
    shown = barkeep("--bar", bar, "batch", "Request Stop", "--serves", "12").out
    assert shown.startswith("Request Stop, 12 serves of 162 ml, cold\n")
    assert "690 ml  Water           in place of what ice would give" in shown
    assert "Squeeze 57 ml of lime juice from 3 × lime first." in shown
    assert "For one serve the spec says: Shake with ice and double strain." in shown


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--serves", "none"), "“none” cannot be read as an amount"),
        (("--serves", "2 oz"), "write one number, such as 12"),
        (("--serves", "0"), "a number of serves is more than nothing"),
        (("--volume", "3 kg"), "“3 kg” is a weight"),
        (("--vessel", "100 ml"), "the vessel takes 90 ml and one serve is 162 ml"),
        (("--vessel", "4 l", "--room", "lots"), "write a share such as 10 % or 0.1"),
        (("--from", "gin"), "write the ingredient, = and how much"),
        (("--from", "mezcal=700 ml"), "there is no mezcal in it"),
        (("--from", "unicorn=1 l"), "There is no ingredient called “unicorn”"),
    ],
)
def test_what_cannot_be_batched_is_said(barkeep, bar, words, said):
    answer = barkeep("--bar", bar, "batch", "Request Stop", *words)
    assert answer.status == 1
    assert said in answer.err
    assert answer.out == ""


def test_a_bowl_leaves_its_usual_room_and_a_tin_takes_rounds(barkeep, bar):
    answer = batch(barkeep, bar, "--vessel", "bowl 5 l", "--tin", "large tin")
    assert answer["total_ml"] == 3750.0 == batch(barkeep, bar, "--vessel", "bowl")["total_ml"]
    rounds = answer["rounds"]  # the water is rounded to what can be measured, the rounds are not
    assert rounds["count"] * rounds["each_ml"] == pytest.approx(3750 - answer["water_ml"], abs=26)
    assert answer["whole_bottles"][0]["ingredient"] == "London dry gin"
    assert (answer["whole_bottles"][0]["count"], answer["whole_bottles"][0]["size"]) == (2, 700.0)


def test_a_tin_that_is_none_is_refused(barkeep, bar):
    ran = barkeep("--bar", bar, "batch", "Request Stop", "--serves", "4", "--tin", "coupe")
    assert "name a tin or a mixing glass" in ran.refusal


def test_no_rounds_on_ice_for_what_is_served_hot(barkeep, bar):
    words = ("--serves", "4", "--tin", "large tin", "--served", "hot")
    ran = barkeep("--bar", bar, "batch", "Request Stop", *words)
    assert "it is served hot" in ran.refusal


OF_ICE = re.compile(r"\b(?:ice|iced|chill\w*|cold|frozen|freez\w*|fridge|tin|melt\w*|dilut\w*)\b")
"""Words that a batch served hot has no use for."""


@pytest.mark.parametrize("name", ["Upper Berth", "Request Stop", "Two-Coach Local", "Brazier"])
def test_a_batch_served_hot_says_nothing_of_ice(barkeep, bar, name):
    words = ("--bar", bar, "batch", name, "--serves", "6", "--served", "hot")
    shown, answer = barkeep(*words).out, barkeep(*words, "--json").answer
    texts = [*answer["notes"], *answer["cautions"], *(each["held"] for each in answer["lines"])]
    for text in (*texts, *shown.splitlines()):
        assert OF_ICE.findall(text.casefold()) == []
    assert (answer["served"], answer["water_ml"]) == ("hot", 0.0)
    assert shown.splitlines()[0].endswith(", hot")
    assert any(each.startswith("Hot: use a heatproof vessel") for each in answer["cautions"])
    assert "! Hot: use a heatproof vessel" in shown
    assert any(each.startswith("Warm it gently and never boil it") for each in answer["notes"])


@pytest.mark.parametrize("name", ["Brazier", "Irish Coffee", "Hot Toddy"])
def test_a_hot_drink_is_served_hot_where_nobody_says(barkeep, bar, name):
    words = ("--bar", bar, "batch", name, "--serves", "6")
    assert barkeep(*words).out.splitlines()[0].endswith(", hot")
    assert barkeep(*words, "--json").answer == barkeep(*words, "--served", "hot", "--json").answer
    assert barkeep(*words, "--served", "cold", "--json").answer["served"] == "cold"


def test_no_ice_is_counted_on_that_gives_no_water(barkeep, bar):
    words = ("--bar", bar, "batch", "--serves", "6", "--served", "over_ice")
    notes = barkeep(*words, "Brazier", "--json").answer["notes"]
    assert not any("counted on" in each for each in notes)
    notes = barkeep(*words, "Request Stop", "--json").answer["notes"]
    assert any("counted on for part of the water" in each for each in notes)


ODD = ("gin=699.99 ml", "gin=1015.6 ml", "gin=23.7 oz", "gin=7 ⅞ oz", "gin=33.3 cl", "gin=1.9 l")


@pytest.mark.parametrize("given", [*ODD, "lime juice=209.5 ml", "orange bitters=2.4 ml"])
def test_no_more_is_shown_than_there_is_of_what_it_is_made_from(barkeep, bar, given):
    name, text = given.split("=")
    most_ml = to_quantity(parse_amount(text), "ml")
    words = ("--bar", bar, "batch", "Request Stop", "--from", given)
    answer, shown = barkeep(*words, "--json").answer, barkeep(*words).out
    line = next(each for each in answer["lines"] if name in each["ingredient"].casefold())
    assert 0.98 * most_ml - 0.1 < line["amount_ml"] <= most_ml
    measure = to_quantity(parse_amount(line["shown"]), "ml")
    assert 0.95 * most_ml - 0.1 < measure <= most_ml
    (row,) = [each for each in shown.splitlines() if f"  {line['ingredient']}" in each]
    assert row.strip().startswith(line["shown"])
    said = f"Rounded down, so that no more {name.replace('gin', 'London dry gin')} is measured than"
    assert any(each.startswith(said) for each in answer["notes"]) == (measure < most_ml)
    assert ("rounded down to what there is" in row) == (measure < most_ml)
    serves = said_serves(shown.splitlines()[0])
    exact = barkeep("--bar", bar, "batch", "Request Stop", "--serves", "1", "--json").answer
    one = next(each for each in exact["lines"] if each["ingredient"] == line["ingredient"])
    assert max(serves, answer["serves"]) * (one["amount_ml"] - 0.005) <= most_ml


def test_no_measure_is_above_what_stands_in_the_bar(barkeep, bar):
    """By hand: 9.4 serves of 22.2 ml are 208.5 ml, near 210, of which there are just 209."""
    barkeep("--bar", bar, "count", "Lime juice", "209 ml")
    words = ("--bar", bar, "batch", "Request Stop", "--serves", "9.4")
    line = next(
        each
        for each in barkeep(*words, "--json").answer["lines"]
        if each["ingredient"] == "Lime juice"
    )
    assert line["shown"] == "208 ml"
    assert "Short of lime juice" not in barkeep(*words).out
    assert "rounded down to what there is" in barkeep(*words).out


def test_what_is_there_is_rounded_down_too(barkeep, bar):
    barkeep("--bar", bar, "count", "Lime juice", "209.7 ml")
    words = ("--bar", bar, "batch", "Request Stop", "--serves", "24")
    said = "Short of lime juice: 532 ml needed, 365 ml there, counting what is made first."
    assert said in barkeep(*words).out


def test_boiling_water_is_there_as_water_is(barkeep, bar):
    """It is nothing but water, which always is."""
    answer = barkeep("--bar", bar, "batch", "Grog", "--serves", "8", "--json").answer
    assert "boiling water" in {each["ingredient"].lower() for each in answer["lines"]}
    assert "boiling water" not in {each["ingredient"].lower() for each in answer["short"]}
