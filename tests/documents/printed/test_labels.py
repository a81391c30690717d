"""Labels and the prep list of what is made here."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from barkeep.documents.printed.labels import KEEP_CLEAN, label_content, prep_content
from barkeep.domain.bottles.bottle import Bottle, Level, Product

TODAY = date(2026, 11, 21)


def syrup(left=310.0, use_by: date | None = TODAY, name="Simple syrup", made: date | None = TODAY):
    product = Product(name, "", "simple-syrup", 500.0, house_made=True, id=1)
    return Bottle(1, product, Level(left, "open"), made=made, use_by=use_by)


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
    (row,) = prep_content("", [syrup(left, use_by)], knowledge, TODAY).rows
    assert row.to_do == to_do


def test_what_is_due_comes_first_with_its_recipe(knowledge):
    late = syrup(use_by=TODAY + timedelta(days=9), name="Late")
    soon = syrup(use_by=TODAY, name="Soon")
    undated = syrup(use_by=None, name="Undated")
    prep = prep_content("Prep", [undated, late, soon], knowledge, TODAY)
    assert [row.name for row in prep.rows] == ["Soon", "Late", "Undated"]
    assert prep.rows[0].recipe.startswith("About 1")
    assert "1000 g white sugar and 1000 ml water" in prep.rows[0].recipe
    assert prep.small_print == (KEEP_CLEAN,)


def test_without_anything_there_is_nothing_to_mind(knowledge):
    assert prep_content("Prep", [], knowledge, TODAY).small_print == ()
