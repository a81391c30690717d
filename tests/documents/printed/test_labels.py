"""Labels and the prep list of what is made here."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from barkeep.documents.printed.labels import KEEP_CLEAN, label_content, prep_content
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product

TODAY = date(2026, 11, 21)


def syrup(left=310.0, use_by: date | None = TODAY, name="Simple syrup", made: date | None = TODAY):
    product = Product(name, "", "simple-syrup", 500.0, house_made=True, id=1)
    return Bottle(1, product, Level(left, "open"), made=made, use_by=use_by)


def prepared(knowledge, title, *bottles):
    numbered = tuple(replace(each, id=number) for number, each in enumerate(bottles, 1))
    return prep_content(title, numbered, Snapshot(knowledge, TODAY, bottles=numbered))


def test_a_label_says_name_dates_volume_and_allergens():
    label = label_content(syrup(), ("egg", "milk"))
    assert (label.name, label.made, label.use_by) == ("Simple syrup", "2026-11-21", "2026-11-21")
    assert (label.volume, label.strength) == ("310 ml", "")
    assert label.allergens == "Contains egg and milk"


def test_what_is_not_known_is_empty():
    label = label_content(syrup(use_by=None, made=None), ())
    assert (label.made, label.use_by, label.allergens) == ("", "", "")


@pytest.mark.parametrize(
    ("left", "days", "to_do"),
    [
        (10.0, -1, "Past its use-by: discard, make anew"),
        (0.0, 5, "Empty: make anew"),
        (10.0, 0, "Use today"),
        (10.0, 1, "Use within 1 day"),
        (10.0, 3, "Use within 3 days"),
        (10.0, 4, "Good"),
        (10.0, None, "No use-by date: check it"),
    ],
)
def test_what_is_to_be_done(knowledge, left, days, to_do):
    use_by = None if days is None else TODAY + timedelta(days=days)
    (row,) = prepared(knowledge, "", syrup(left, use_by)).rows
    assert row.to_do == to_do


def test_a_jar_without_a_date_that_stood_too_long_is_thrown_out(knowledge):
    keeps = knowledge.tree["simple-syrup"].shelf_life_days
    jar = syrup(use_by=None, made=TODAY - timedelta(days=keeps + 1))
    assert prepared(knowledge, "", jar).rows[0].to_do == "Past its use-by: discard, make anew"


def test_what_is_due_comes_first_with_its_recipe(knowledge):
    late = syrup(use_by=TODAY + timedelta(days=9), name="Late")
    soon = syrup(use_by=TODAY, name="Soon")
    undated = syrup(use_by=None, name="Undated")
    prep = prepared(knowledge, "Prep", undated, late, soon)
    assert [row.name for row in prep.rows] == ["Soon", "Late", "Undated"]
    assert prep.rows[0].recipe.startswith("About 1")
    assert "1000 g white sugar and 1000 ml water" in prep.rows[0].recipe
    assert prep.small_print == (KEEP_CLEAN,)


def test_without_anything_there_is_nothing_to_mind(knowledge):
    assert prepared(knowledge, "Prep").small_print == ()
