"""The lines of a spec as parts of one another."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.domain.amounts.amount import Amount, parse_amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.amounts.rounding import rounded
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.specs.ratios import as_parts, parts_in_words, parts_of
from barkeep.domain.specs.spec import Line, Spec
from tests.walked import walked

TREE = FamilyTree(
    {
        each.key: each
        for each in (Ingredient("gin", "gin"), Ingredient("mint", "mint leaf", unit="each"))
    }
)


def line(text, ingredient="gin"):
    """A line of so much of something."""
    amount = parse_amount(text)
    unit = TREE[ingredient].unit
    quantity = to_quantity(amount, unit)
    return Line(text, ingredient, amount.value, amount.high, amount.unit, quantity)


@walked(
    ("written", "parts"),
    [
        ("2 oz, 3/4 oz, 3/4 oz", "2 parts, ¾ part, ¾ part"),
        ("1 1/2 oz, 3/4 oz, 3/4 oz", "2 parts, 1 part, 1 part"),
        ("60 ml, 22.5 ml, 22.5 ml", "2 parts, ¾ part, ¾ part"),
        ("30 ml, 30 ml, 30 ml", "1 part, 1 part, 1 part"),
        ("4.5 cl, 3 cl, 1.5 cl", "3 parts, 2 parts, 1 part"),
        ("60 ml, 15 ml, 15 ml, 7.5 ml", "4 parts, 1 part, 1 part, ½ part"),
        ("2 oz, 1/3 oz", "3 parts, ½ part"),
        ("0.33 oz, 0.67 oz", "1 part, 2 parts"),
        ("1.8 oz, 0.6 oz", "3 parts, 1 part"),
        ("2 oz, 30 ml, 1 tbsp", "2 parts, 1 part, ½ part"),
        ("1 jigger, 1 pony", "3 parts, 2 parts"),
        ("47 ml, 23 ml", "4 ¾ parts, 2 ¼ parts"),
        ("57.5 ml, 27.5 ml", "23 parts, 11 parts"),
        ("2 oz, 1-2 oz", "2 parts, 1–2 parts"),
    ],
)
def test_ratios_are_the_ones_that_are_easiest_to_read(written, parts):
    assert ", ".join(as_parts([line(each) for each in written.split(", ")], TREE)) == parts


def test_dashes_spoons_and_pieces_stay_as_they_are_written():
    lines = [line("2 oz"), line("2 dashes"), line("1 tsp"), line("8", "mint"), line("1 oz")]
    assert as_parts(lines, TREE) == ("2 parts", None, None, None, "1 part")


def test_there_are_no_parts_of_one_line_nor_of_parts():
    assert as_parts([line("2 oz"), line("2 dashes")], TREE) == (None, None)
    share = Line("1 part gin", "gin", 1.0, None, "part", 30.0)
    assert as_parts([share, line("2 oz"), line("1 oz")], TREE) == (None, None, None)
    open_end = Line("top with gin", "gin")
    assert as_parts([open_end, line("1 oz")], TREE) == (None, None)


UNITS = ("oz", "ml", "cl", "imp_oz", "jigger")
AMOUNT = st.tuples(st.integers(1, 60).map(lambda each: each / 8), st.sampled_from(UNITS))
VOLUMES = st.lists(AMOUNT, min_size=2, max_size=7)


@given(VOLUMES)
@settings(max_examples=400, deadline=None)
def test_parts_read_back_within_half_a_step_and_are_printed_the_same(amounts):
    lines = [line(f"{value} {unit.replace('_', ' ')}") for value, unit in amounts]
    parts = parts_of(lines, TREE)
    if parts is None:  # so little of something that no jug shows it
        assert any(not rounded(each.quantity, "ml").value for each in lines)
        return
    shown = as_parts(lines, TREE)
    again = []
    for each, words in zip(lines, shown, strict=True):
        read = parse_amount(words)
        assert read.unit == "part"
        volume_ml = read.value * parts.part_ml
        step_ml = float(rounded(each.quantity, "ml").step)
        assert abs(volume_ml - each.quantity) <= step_ml / 2 * (1 + 1e-9) + 1e-6
        again.append(replace(each, amount=volume_ml, unit="ml", quantity=volume_ml))
    assert as_parts(again, TREE) == shown


@given(VOLUMES)
def test_the_order_of_the_lines_does_not_matter(amounts):
    lines = [line(f"{value} {unit.replace('_', ' ')}") for value, unit in amounts]
    assert as_parts(lines[::-1], TREE) == as_parts(lines, TREE)[::-1]


@pytest.mark.parametrize(
    ("written", "serves", "units", "words"),
    [
        ("2 oz, 3/4 oz, 3/4 oz", 1.0, US_UNITS, "1 part = 1 oz"),
        ("1 oz, 1/2 oz", 1.0, US_UNITS, "1 part = ½ oz"),
        ("1 oz, 1/2 oz", 1.0, BarUnits("imp_oz"), "1 part = ½ US oz"),
        ("60 ml, 30 ml", 1.0, US_UNITS, "1 part = 30 ml"),
        ("2 oz, 30 ml", 2.0, US_UNITS, "1 part = 60 ml"),
        ("2 parts, 1 part", 1.0, US_UNITS, ""),
    ],
)
def test_a_part_is_said_in_words(written, serves, units, words):
    lines = tuple(line_in(each) for each in written.split(", "))
    drink = Spec("Fog Lamp", lines, serves=serves)
    assert parts_in_words(drink, TREE, units) == words


def test_a_spec_of_one_measure_says_why_it_has_no_parts():
    drink = Spec("Fog Lamp", (line("2 oz"), line("2 dashes")))
    assert parts_in_words(drink, TREE).startswith("Not shown in parts: that takes two lines")


def line_in(text):
    """A line, of parts too, which come to nothing by themselves."""
    if "part" not in text:
        return line(text)
    amount = parse_amount(text)
    return Line(text, "gin", amount.value, None, "part", 30.0 * amount.value)


def test_a_part_comes_to_a_volume():
    parts = parts_of([line("2 oz"), line("1 oz")], TREE)
    assert parts.part_ml == to_quantity(Amount(1.0, None, "oz"), "ml")
