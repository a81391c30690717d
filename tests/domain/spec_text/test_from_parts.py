"""A spec from the pieces of a document is read as its text would be."""

from __future__ import annotations

import pytest

from barkeep.domain.spec_text.parts import SpecParts, read_parts
from barkeep.domain.spec_text.text import MOST_LINES, read_specs

PARTS = SpecParts(
    "Snow  Punch",
    (
        "3 oz rye or bourbon",
        " ",
        "2 oz each of lemon juice and simple syrup",
        "Garnish: lemon peel",
    ),
    ("Stir with ice.", "2 oz gin", "", "Glass: any."),
    "punch cup",
    "none",
    ("Good cold.",),
    "Buffer Stop",
    4.0,
    ("winter", "Winter", "#house"),
    "The Signal Box",
    "line 9",
)


def test_every_piece_is_read(tree):
    read = read_parts(PARTS, tree)
    assert read.problems == ()
    spec = read.spec
    assert (spec.name, spec.glass, spec.ice, spec.serves) == (
        "Snow Punch",
        "punch cup",
        "none",
        4.0,
    )
    assert (spec.notes, spec.riff_of, spec.credit) == (
        "Good cold.",
        "Buffer Stop",
        "The Signal Box",
    )
    assert (spec.tags, spec.technique) == (("winter", "house"), "stirred")
    assert spec.method == "Stir with ice.\n2 oz gin\n\nGlass: any."
    assert [line.ingredient for line in spec.lines] == [
        *("rye-whiskey", "lemon-juice", "simple-syrup", "lemon-peel"),
    ]
    assert spec.lines[0].quantity == pytest.approx(22.18, abs=0.01)
    assert spec.lines[3].garnish
    assert [line.row for line in read.lines] == [1, 3, 3, 4]


def test_it_is_what_the_same_words_are_as_a_text(tree):
    text = "Post\n2 oz rye\n1 oz lemon juice\nGarnish: mint\nGlass: coupe\nServes: 2\n\nShake.\n"
    (written,) = read_specs(text, tree)
    parts = SpecParts(
        "Post", ("2 oz rye", "1 oz lemon juice", "Garnish: mint"), ("Shake.",), "coupe", serves=2.0
    )
    assert read_parts(parts, tree).spec == written.spec


def test_a_problem_names_the_ingredient_and_the_recipe(tree):
    parts = SpecParts("Late Letter", ("2 oz gin", "1 oz bourban", "30 g gin", "Stir it well"))
    read = read_parts(parts, tree)
    assert read.spec is None
    assert [(each.line, each.column) for each in read.problems] == [(2, 6), (3, 1), (4, 1)]
    bourbon, weight, step = (each.message for each in read.problems)
    assert bourbon.startswith("ingredient 2 of “Late Letter”: no ingredient is called “bourban”")
    assert weight.startswith("ingredient 3 of “Late Letter”: Gin takes a volume")
    assert step == "ingredient 4 of “Late Letter”: this reads like a step of the method"


def test_what_is_wrong_with_all_of_it_names_where_it_stands(tree):
    read = read_parts(SpecParts("", ("2 oz gin",), serves=-1.0, number=3), tree)
    assert [each.message for each in read.problems] == [
        "spec 3: it has no name",
        "spec 3: serves cannot be -1: it is a number from 1 to 1000",
    ]
    (nothing,) = read_parts(SpecParts("Empty", ()), tree).problems
    assert nothing.message.startswith("“Empty”: a spec needs at least one line")


def test_a_recipe_that_never_ends_is_told_once(tree):
    read = read_parts(SpecParts("Long", ("2 oz gin",) * (MOST_LINES + 50)), tree)
    (problem,) = read.problems
    assert problem.line == MOST_LINES + 1 and "at most 100 ingredients" in problem.message
