"""Rows come back as the values that went in, also many of them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from sqlalchemy import insert
from sqlalchemy.dialects import postgresql
from sqlalchemy.schema import CreateIndex, CreateTable

from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.trials import Score, Trial
from barkeep.store import schema
from barkeep.store.specs import read_spec, read_specs, read_trial, read_trials
from tests.engines import on_both
from tests.worlds import without_id


def test_ten_thousand_specs_are_read_in_two_queries(store, monkeypatch):
    """Whole and in order; how long it takes is printed by `tests/benchmarks/test_large_bars.py`."""
    specs = [
        Spec(
            f"Spec {number:05}",
            tuple(Line(f"{part} oz gin", "gin", part, None, "oz", 30.0) for part in range(1, 6)),
            technique="shaken",
            tags=("house", "winter") if number % 3 else (),
            credit="Ada",
        )
        for number in range(10_000)
    ]
    with store.unit_of_work("Many") as work:
        work.insert("spec", specs)
    statements = []
    with store.reading() as connection:
        execute = connection.execute
        monkeypatch.setattr(
            connection, "execute", lambda sql: (statements.append(sql), execute(sql))[1]
        )
        found = read_specs(connection)
    assert [without_id(spec) for spec in found] == specs
    assert len(statements) == 2


@on_both
def test_undo_of_many_additions_is_one_statement_a_kind(store):
    specs = [Spec(f"Spec {number}", (Line("gin", "gin"),)) for number in range(3000)]
    with store.unit_of_work("Many") as work:
        work.insert("spec", specs)
    store.undo_or_redo("undo")
    with store.reading() as connection:
        assert read_specs(connection) == ()
    store.undo_or_redo("redo")
    with store.reading() as connection:
        assert len(read_specs(connection)) == 3000


@on_both
def test_a_hidden_name_is_free(store):
    rows = {"method": "", "technique": "built", "glass": "", "ice": "", "notes": ""}
    named = {**rows, "name": "A", "folded_name": "a"}
    with store.unit_of_work("Two") as work:
        for hidden in (True, True, False):
            work.connection.execute(insert(schema.spec).values({**named, "hidden": hidden}))
        assert len(read_specs(work.connection)) == 1


def test_the_schema_can_be_said_in_postgresql():
    dialect = postgresql.dialect()
    text = ""
    for table in schema.METADATA.sorted_tables:
        text += str(CreateTable(table).compile(dialect=dialect))
        for index in table.indexes:
            text += str(CreateIndex(index).compile(dialect=dialect))
    assert "CREATE UNIQUE INDEX one_spec_of_a_name ON spec (folded_name) WHERE NOT hidden" in text
    assert "SERIAL NOT NULL" in text and "WITHOUT ROWID" not in text


@on_both
def test_everything_a_spec_says_comes_back(store):
    line = Line("60 ml rye or bourbon", "rye", 60, None, "ml", 60.0, alternatives=("bourbon",))
    spec = Spec("Milepost", (line,), serves=2.5, tags=("house",), credit="Ada", source="a book")
    with store.unit_of_work("Add") as work:
        (spec_id,) = work.insert("spec", [spec])
    with store.reading() as connection:
        assert without_id(read_spec(connection, spec_id)) == spec
        assert read_specs(connection)[0] == read_spec(connection, spec_id)


@on_both
def test_trials_come_back_oldest_first_and_go_with_their_spec(store):
    scores = (Score("Ada", "On theme", 3.5), Score("Ben", "Balance", -1.0))
    with store.unit_of_work("Add") as work:
        (spec_id,) = work.insert("spec", [Spec("Milepost", ())])
        late = Trial(None, spec_id, date(2026, 11, 9), scores, "Long.\nDry.", "less lemon", True)
        early = Trial(None, spec_id, date(2026, 11, 2))
        ids = work.insert("trial", [late, early])
    with store.reading() as connection:
        found = read_trials(connection)
        assert found == (replace(early, id=ids[1]), replace(late, id=ids[0]))
        assert read_trial(connection, ids[0]) == found[1]
    with store.unit_of_work("Remove") as work:
        work.put("spec", (spec_id,), None)
        assert read_trials(work.connection) == () and read_trial(work.connection, ids[0]) is None
    store.undo_or_redo("undo")
    with store.reading() as connection:
        assert read_trials(connection) == found
    assert store.undo_or_redo("undo")[1].changes == {"specs", "trials"}
