"""`barkeep batch`: every way to say how much, and what is said of the result."""

from __future__ import annotations

import pytest

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
    ]
    gin = answer["lines"][0]
    assert gin == {
        "ingredient": "London dry gin",
        "amount_ml": 709.76,
        "shown": "710 ml",
        "held": "",
    }
    assert answer["serves"] == 12.0
    assert any("drive" in each for each in answer["cautions"])


def test_what_is_short_is_named_with_both_amounts(barkeep, bar):
    short = {each["ingredient"]: each for each in batch(barkeep, bar, "--serves", "12")["short"]}
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
    assert any("in a freezer at -18 °C it freezes" in note for note in notes)


def test_the_table_reads_as_a_recipe(barkeep, bar):
    shown = barkeep("--bar", bar, "batch", "Request Stop", "--serves", "12").out
    assert shown.startswith("Request Stop, 12 serves of 162 ml, cold\n")
    assert "690 ml  Water           in place of what ice would give" in shown
    assert "Short of lime juice: 266 ml needed, 210 ml there." in shown


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
