"""When a bottle on the page is past its last day, or due."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from barkeep.desktop.bottles.rows import bottle_rows
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bottles.bottle import Level
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from tests.worlds import TODAY, bottle, snapshot

GIN = Knowledge(FamilyTree({"gin": Ingredient("gin", "Gin", abv_percent=40.0)}))


@pytest.mark.parametrize(
    ("days", "past", "due"),
    [(-1, True, True), (0, False, True), (3, False, True), (4, False, False), (None, False, False)],
)
def test_what_is_within_three_days_of_its_date_is_due(days, past, due):
    last = None if days is None else TODAY + timedelta(days=days)
    there = replace(bottle(1, "gin", 300.0), use_by=last)
    nothing = replace(there, id=2, level=Level(0.0, "empty"))
    full, empty = bottle_rows(snapshot(GIN, [there, nothing]))
    assert (full.past, full.due) == (past, due)
    assert not empty.past and not empty.due
