"""Bottles out of a file: all of them or none."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

import pytest

from barkeep.domain.bottles.bottle import NOTHING_KNOWN, BottleFacts, Label, Tare
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.errors import UnusableFile
from tests.application.conftest import gin_draft


@dataclass(frozen=True)
class Row:
    line: int
    draft: Label
    level: MeasuredLevel | None = None
    opened: date | None = None
    columns: Mapping[str, int] = field(default_factory=dict)
    facts: BottleFacts = NOTHING_KNOWN
    sealed: bool = False
    count: int = 1
    note: str = ""


def test_rows_become_products_and_bottles_in_one_action(bar, gin):
    half = MeasuredLevel(350.0, "tenths", 35.0)
    rows = [
        Row(2, gin_draft(), half, date(2026, 10, 1)),
        Row(3, gin_draft(name="dry gin", ingredient="London dry gin")),
        Row(4, gin_draft(name="dry gin", ingredient="London dry gin"), half),
    ]
    done = bar.imports.bottles(rows, "bottles.csv")
    assert (done.value.products, done.value.bottles) == (1, 3)
    assert done.label == "Import 3 bottles"
    _, known, sealed, counted = bar.snapshot.bottles
    assert known.product.id == gin.product.id
    assert (known.level.amount, known.level.opened) == (350.0, date(2026, 10, 1))
    assert (sealed.level.amount, sealed.level.state) == (700.0, "sealed")
    assert (counted.level.amount, counted.level.state) == (350.0, "open")
    bar.undo()
    assert bar.snapshot.bottles == (gin,) and len(bar.snapshot.products) == 1


def test_every_row_that_cannot_be_used_is_named_and_nothing_is_written(bar, gin):
    rows = [
        Row(2, gin_draft(name="dry gin", ingredient="gin")),
        Row(3, gin_draft(name="moss", ingredient="moss")),
        Row(4, gin_draft(size=-1.0)),
        Row(5, gin_draft(), MeasuredLevel(800.0, "volume", 5.0)),
        Row(6, gin_draft(), None, date(2027, 1, 1), {"ingredient": 2, "opened": 5}),
        Row(7, gin_draft(ingredient="bourbon"), columns={"ingredient": 2}),
        Row(8, gin_draft(name="dry gin", ingredient="bourbon"), columns={"ingredient": 2}),
    ]
    before = bar.snapshot
    with pytest.raises(UnusableFile) as refused:
        bar.imports.bottles(rows, "bottles.csv")
    assert [(problem.line, problem.column) for problem in refused.value.problems] == [
        *((3, 1), (4, 1), (5, 1), (6, 5), (7, 2), (8, 2)),
    ]
    assert str(refused.value).startswith("bottles.csv, line 3, column 1: There is no ingredient")
    assert "still to come" in refused.value.problems[3].message
    assert (
        "“bourbon”: the bar has Tansy Lock navy-strength gin as navy-strength gin."
        in refused.value.problems[4].message
    )
    assert refused.value.problems[5].message == (
        "bourbon here, gin on line 2, for the same product."
    )
    assert bar.snapshot is before
    assert bar.undo_label == "Receive Tansy Lock navy-strength gin"


def test_an_empty_file_is_no_action(bar):
    assert bar.imports.bottles([]).value.bottles == 0
    assert bar.undo_label is None


def test_a_bottle_comes_in_with_what_it_weighs_empty(bar, reopen):
    bar.imports.bottles(
        [Row(2, gin_draft(), facts=BottleFacts(tare=Tare(520.0, 1.0))), Row(3, gin_draft())]
    )
    bar.close()
    weighed, other = reopen().snapshot.bottles
    assert (weighed.tare, other.tare) == (Tare(520.0, 1.0), None)
