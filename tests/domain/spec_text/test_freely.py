"""What is said in no usual order, said again in it, or left to be asked about."""

from __future__ import annotations

from barkeep.application.knowledge import shipped
from barkeep.domain.amounts.units import US_UNITS
from barkeep.domain.spec_text.freely import put_apart, said_freely
from barkeep.domain.spec_text.lines import read_lines
from barkeep.domain.spec_text.traced import Traced
from tests.walked import walked

TREE = shipped().tree


def freely(text: str) -> list[str]:
    return [each.text for each in said_freely(Traced.of(text), TREE, US_UNITS)]


@walked(
    ("text", "again"),
    [
        (
            "we used the old tom gin two ounces of that",
            ["two ounces old tom gin, we used the, of that"],
        ),
        (
            "six maybe eight mint leaves",
            ["6-8 mint leaves"],
        ),
        (
            "dark rum one ounce light rum half an ounce",
            ["one ounce dark rum", "half an ounce light rum"],
        ),
        (
            "rum: dark 1 oz, light 1/2 oz",
            ["1 oz dark rum, rum", "1/2 oz white rum"],
        ),
        (
            "1 tsp citric acid + 1/2 tsp malic",
            ["1 tsp citric acid", "1/2 tsp malic acid"],
        ),
        ("gin two ounces lime cordial half", ["two ounces gin", "0.5 oz lime cordial"]),
        ("just enough soda to fill the glass", ["soda, just enough, to fill the glass"]),
        ("one egg white or thirty mils aquafaba", ["one egg white, or thirty mils aquafaba"]),
    ],
)
def test_a_line_is_said_again_in_the_usual_order(text, again):
    assert freely(text) == again


@walked(
    "text",
    [
        "2 oz root beer barrel",  # a word beside a name makes another
        "30 ml orange squash",
        "1 oz light coconut milk",
        "2 oz dark and light rum",  # a list
        "60 ml gin, 30 ml of which navy strength",  # a part of it
        "1 oz rum blend: 1/2 oz Jamaican, 1/2 oz Demerara",
        "two ounces of rye actually two ounces of bourbon",  # a correction
        "not 2 oz gin",
        "of the 2 oz gin",
        "dash 2 dashes orange bitters",
        "2 oz smoked pineapple juice",  # done to it
        "For the raspberry syrup:",  # a heading
        "2 oz zorbly gin and zimt",  # nobody knows
        "don't add 2 dashes bitters",  # left out
        "skip the 2 oz gin",
        "mint leaves give them a miss",
        "two ounces of gin replace it with vodka",
    ],
)
def test_what_may_be_another_thing_is_not(text):
    assert freely(text) == []


@walked(
    "text",
    [
        "Grey Ferry gin, 1 oz honey",
        "two fingers of whiskey",
        "2 oz rum (1 oz light, 1 oz dark)",
        "2 oz gin (or 3)",
        "1 oz bitters",
        "20 ml dragon lime juice",
        "2 oz peachy bourbon",
        "2 dashes bitter",
        "1 oz peper vodka",
        "2 oz rey whiskey",
        "2 oz Virgin rum",
        "two ounces of gin it's a vodka",
        "two ounces of rum a dark one and a light one",
        "2 oz olives in brine",
        "two (3) oz gin",
        "never add 2 oz gin",
    ],
)
def test_a_line_that_was_once_taken_for_something_else_is_asked_about(text):
    assert any(each.complaints for each in read_lines(text, TREE))


@walked(
    ("text", "better"),
    [
        ("two ouncesof darkrum", "two ounces of dark rum"),
        ("2 oz reposado tequilla", "2 oz reposado tequila"),
        ("1oz grapefriut juice", "1oz grapefruit juice"),
        ("2 oz bourbon, lovely", "2 oz bourbon, lovely"),
        ("2 oz bourbun", "2 oz bourbun"),  # may be anything, and is asked about
        ("1 oz pinapple juice", "1 oz pineapple juice"),
        ("1 teaspooon sugar", "1 teaspoon sugar"),
        ("3 oz ginger beeer", "3 oz ginger beer"),
    ],
)
def test_words_run_together_and_slips_of_the_keys_are_put_right(text, better):
    assert put_apart(Traced.of(text), TREE).text == better


def test_what_was_mistyped_is_called_as_it_was_written():
    (read,) = read_lines("2 oz reposado tequilla", TREE)
    assert not read.complaints
    assert (read.line.ingredient, read.line.called) == ("reposado-tequila", "reposado tequilla")
