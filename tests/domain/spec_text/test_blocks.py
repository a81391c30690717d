"""Texts parted into specs: by one empty line, and a drink on each line."""

from __future__ import annotations

import pytest

from barkeep.domain.spec_text.text import read_specs, write_spec
from barkeep.domain.specs.garnish_notes import garnishes_in_words


def names(text, tree) -> list[str]:
    return [each.name for each in read_specs(text, tree)]


TWO = "Night Mail\n2 oz gin\nShake.\n\nSlow Mail\n2 oz white rum\n1 oz lime juice\n"


def test_one_empty_line_parts_specs_that_are_names_with_their_ingredients(tree):
    first, second = read_specs(TWO, tree)
    assert (first.name, first.method, second.name) == ("Night Mail", "Shake.", "Slow Mail")
    assert (first.problems, second.problems, second.row) == ((), (), 5)


@pytest.mark.parametrize(
    "second",
    [
        "Shake with\n2 cups ice\n",
        "Stir with ice.\nStrain into a coupe.\n",
        "For the foam\n1 oz egg white\n",
        "Then:\n1 oz soda water\n",
        "Top it up.\n2 oz soda water\n",
        "1 oz lime juice\n2 oz white rum\n",
        "Glass: coupe\n2 oz white rum\n",
    ],
)
def test_a_second_paragraph_that_is_no_name_is_no_spec(tree, second):
    assert names(f"Night Mail\n2 oz gin\n\n{second}", tree) == ["Night Mail"]


def test_a_drink_may_stand_on_one_line(tree):
    text = (
        "- Night Mail: 2 oz gin, chilled, 1 oz lemon juice,½ oz simple syrup; shake, fine-strain, "
        "coupe, garnish with lemon peel\n\nDead Letter: 4,5 cl rye whiskey; 2 dashes aromatic "
        "bitters; stir; Source: the blue book\n"
    )
    first, second = read_specs(text, tree)
    assert (first.problems, second.problems) == ((), ())
    said = [(line.amount, line.unit, line.ingredient) for line in first.spec.lines]
    assert said[:3] == [(2, "oz", "gin"), (1, "oz", "lemon-juice"), (0.5, "oz", "simple-syrup")]
    assert (first.spec.lines[0].note, first.spec.lines[3].garnish) == ("chilled", True)
    assert (first.spec.method, first.spec.glass) == ("shake, fine-strain", "coupe")
    assert [(line.amount, line.unit) for line in second.spec.lines] == [(4.5, "cl"), (2, "dash")]
    assert (second.spec.method, second.spec.source) == ("stir", "the blue book")


def test_a_problem_on_one_line_stands_where_it_is(tree):
    text = "Night Mail: 2 oz gin, 1 oz mosswater; shake"
    (read,) = read_specs(text, tree)
    (problem,) = read.problems
    assert (problem.line, text[problem.column - 1 :].split(";")[0]) == (1, "mosswater")


@pytest.mark.parametrize(
    "text",
    [
        "Glass: 2 oz coupe, 3 oz flute\n",
        "Shake: 2 oz gin, 1 oz lime juice\n",
        "Night Mail: 2 oz gin\n",
        "Night Mail: a word, another; a third\n",
    ],
)
def test_other_rows_with_a_colon_are_no_drink_on_a_line(tree, text):
    (read,) = read_specs(text, tree)
    assert read.spec is None


def test_a_drink_on_a_line_amid_other_rows_is_not_taken_apart(tree):
    (read,) = read_specs("Night Mail\n2 oz gin\n\nSyrup: 2 oz sugar, 2 oz water; stir\n", tree)
    assert read.method == "Syrup: 2 oz sugar, 2 oz water; stir"


def test_a_garnish_that_is_no_ingredient_stays_one_and_is_written_as_one(tree):
    text = "Lamp\n2 oz gin\nGarnish: a paper lantern\nNotes: Lit from below.\n"
    (read,) = read_specs(text, tree)
    assert garnishes_in_words(read.spec.notes) == ("a paper lantern",)
    assert read.remarks == (
        "No ingredient is called “a paper lantern”; it stays a garnish in words.",
    )
    assert write_spec(read.spec, tree) == text


THREE = (
    "Night Mail: 2 oz gin, 1 oz lime juice\nSlow Mail: 2 oz white rum, 1 oz lime juice\n"
    "The Long One 2 oz vodka top soda\nLate Mail: 1 oz gin, 1 oz mezcal\n"
)


def test_a_row_among_drinks_of_a_line_each_that_is_none_is_told_and_kept(tree):
    read = read_specs(THREE, tree)
    assert [each.name for each in read] == [
        *("Night Mail", "Slow Mail", "The Long One 2 oz vodka top soda", "Late Mail"),
    ]
    assert [len(each.understood.lines) for each in read] == [2, 2, 0, 2]
    assert [each.problems == () for each in read] == [True, True, False, True]
    (problem,) = read[2].problems
    assert (problem.line, problem.column) == (3, 1)
    assert problem.message.endswith("this line is kept as it is")


def test_a_row_that_tells_what_to_do_belongs_to_the_drink_before_it_and_is_told_of(tree):
    text = "Night Mail: 2 oz gin, 1 oz rye\nSlow Mail: 2 oz gin, 1 oz rye\nStir and strain.\n"
    first, second = read_specs(text, tree)
    assert (first.method, second.method) == ("", "Stir and strain.")
    assert second.remarks == ("Line 3 is taken for the method of “Slow Mail”.",)


def test_rows_under_a_single_drink_on_a_line_are_its_own(tree):
    text = "Night Mail: 2 oz gin, 1 oz lime juice\n1 oz orgeat\n\nShake it.\n"
    (read,) = read_specs(text, tree)
    assert [each.ingredient for each in read.spec.lines] == ["gin", "lime-juice", "orgeat"]
    assert (read.name, read.method) == ("Night Mail", "Shake it.")
