"""Every record goes through its row unchanged, and old bars undo what they remember."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from barkeep.domain.bottles.paid import Paid
from barkeep.store import bottles, knowledge, records, shoots, specs
from barkeep.store.connection import APPLICATION_ID
from barkeep.store.records import KINDS
from barkeep.store.store import Store

HISTORY_4 = Path(__file__).with_name("schema_4_history.sql")


@pytest.fixture
def kept(tmp_path):
    """A bar as it was written before rows were mapped by field name, with all its undo."""
    path = tmp_path / "kept.bar"
    with closing(sqlite3.connect(path)) as file:
        file.executescript(HISTORY_4.read_text(encoding="utf-8"))
        file.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        file.execute("PRAGMA user_version = 4")
    store = Store.open(path)
    yield store
    store.close()


def everything(store):
    """Kind of record -> (key, value, the row it is written as), for all there is."""
    with store.reading() as connection:
        found = {
            "product": [((each.id,), each) for each in bottles.read_products(connection)],
            "bottle": [((each.id,), each) for each in bottles.read_bottles(connection)],
            "paid": [
                ((each.id,), each)
                for product in bottles.read_products(connection)
                for each in bottles.read_paid(connection, product.id)
            ],
            "spec": [((each.id,), each) for each in specs.read_specs(connection)],
            "trial": [((each.id,), each) for each in specs.read_trials(connection)],
            "shoot": [((each.id,), each) for each in shoots.read_shoots(connection)],
            "own_recipe": [((each.made,), each) for each in knowledge.read_own_recipes(connection)],
            "own_ingredient": [
                ((each.key,), each) for each in knowledge.read_own_ingredients(connection)
            ],
            "own_stand_in": [
                ((each.wanted, each.offered), each)
                for each in knowledge.read_own_stand_ins(connection)
            ],
        }
    return {
        record: [(key, value, KINDS[record].row(value)) for key, value in values]
        for record, values in found.items()
    }


def test_a_value_is_written_as_the_row_it_was_read_from(kept):
    """Column for column and type for type: undo compares what it remembers with what is there."""
    with kept.unit_of_work("Note") as work:
        work.insert("paid", [Paid(0, 1, date(2026, 3, 1), 24.5, size=700.0, shop="Quay Stores")])
    found = everything(kept)
    assert found.keys() == KINDS.keys() - {"setting"}
    assert all(found.values())
    with kept.reading() as connection:
        for record, values in found.items():
            for key, _value, row in values:
                there = records.read(connection, KINDS[record], key)
                assert KINDS[record].named(key) | row == there
                assert records.to_image(KINDS[record].named(key) | row) == records.to_image(there)


def test_settings_are_written_as_the_rows_they_were_read_from(kept):
    with kept.reading() as connection:
        settings = knowledge.read_settings(connection)
        rows = {row["key"]: row for row in knowledge.setting_rows(settings)}
        written = [
            records.read(connection, KINDS["setting"], (key,))
            for key in ("name", "not_there", "scales", "pars")
        ]
    assert [rows[row["key"]] for row in written] == written
    assert settings.not_there == {"ice", "salt"} and settings.scales[1].name == "On theme"


def test_all_that_was_done_before_can_be_undone_and_done_again(kept):
    """What undo remembers keeps its form: nineteen actions, one of every kind of record."""
    before = everything(kept)
    with kept.reading() as connection:
        settings = knowledge.read_settings(connection)
    undone = [kept.undo_or_redo("undo")[0].label for _ in range(19)]
    assert kept.next_action("undo") is None
    assert not any(everything(kept).values())
    redone = [kept.undo_or_redo("redo")[0].label for _ in range(19)]
    assert redone == undone[::-1] and redone[-1] == "Remove Lime juice"
    assert everything(kept) == before
    with kept.reading() as connection:
        assert knowledge.read_settings(connection) == settings
