"""In what two specs of one name differ."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.spec_text.differences import compared, same_spec
from barkeep.domain.spec_text.text import read_specs

TEXT = "Fog Lamp\n60 ml London dry gin\n2 dashes orange bitters\nGlass: coupe\n\nShake."


@pytest.fixture
def mine(tree):
    return read_specs(TEXT, tree)[0].spec


def test_other_words_for_the_same_are_the_same(tree, mine):
    theirs = read_specs(TEXT.replace("60 ml L", "- 60ml of L").replace("Shake.", "Shake. "), tree)
    assert same_spec(mine, theirs[0].spec)
    assert compared(mine, theirs[0].spec, tree).same


def test_what_a_dash_comes_to_is_no_difference(tree, mine):
    theirs = read_specs(TEXT, tree, BarUnits("oz", 0.5))[0].spec
    assert theirs.lines != mine.lines
    assert same_spec(mine, theirs)
    assert compared(mine, theirs, tree).same


@pytest.mark.parametrize(
    ("before", "after", "changes"),
    [
        ("60 ml", "45 ml", ["amount", "same"]),
        ("60 ml", "6 cl", ["wording", "same"]),
        ("gin", "gin, cold", ["wording", "same"]),
        ("London dry gin", "Old Tom gin", ["swapped", "same"]),
        ("2 dashes orange bitters\n", "", ["same", "left out"]),
        ("Glass", "5 ml absinthe\nGlass", ["same", "same", "added"]),
    ],
)
def test_each_line_says_what_became_of_it(tree, mine, before, after, changes):
    theirs = read_specs(TEXT.replace(before, after, 1), tree)[0].spec
    found = compared(mine, theirs, tree)
    assert [line.change for line in found.lines] == changes
    assert not found.same
    assert not same_spec(mine, theirs)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("method", "Stir."),
        ("glass", "mug"),
        ("ice", "one cube"),
        ("notes", "Mine."),
        ("serves", 4.0),
        ("tags", ("fog",)),
        ("credit", "Ada"),
        ("riff_of", "Daisy"),
    ],
)
def test_each_other_field_counts(tree, mine, field, value):
    theirs = replace(mine, **{field: value})
    (found,) = compared(mine, theirs, tree).fields
    assert found.name == field.replace("_", " ")
    assert found.theirs
    assert not same_spec(mine, theirs)


def test_the_case_of_a_parents_name_is_no_difference(mine):
    assert same_spec(replace(mine, riff_of="Daisy"), replace(mine, riff_of="DAISY"))
