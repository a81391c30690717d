"""Rows come back as the values that went in, also many of them."""

from __future__ import annotations

import time

from sqlalchemy import insert
from sqlalchemy.dialects import postgresql
from sqlalchemy.schema import CreateIndex, CreateTable

from barkeep.domain.specs import Line, Spec, without_id
from barkeep.store import schema
from barkeep.store.specs import read_specs, spec_row


def test_ten_thousand_specs_are_read_in_two_queries(store, monkeypatch):
    """Whole, in order and quickly; the bound is several times what it takes alone."""
    specs = [
        Spec(
            f"Spec {number:05}",
            tuple(Line(f"{part} oz gin", "gin", part, None, "oz", 30.0) for part in range(1, 6)),
            technique="shaken",
        )
        for number in range(10_000)
    ]
    with store.unit_of_work("Many") as work:
        work.insert("spec", [spec_row(spec) for spec in specs])
    statements = []
    with store.reading() as connection:
        execute = connection.execute
        monkeypatch.setattr(
            connection, "execute", lambda sql: (statements.append(sql), execute(sql))[1]
        )
        begun = time.perf_counter()
        found = read_specs(connection)
        took = time.perf_counter() - begun
    print(f"10,000 specs in {took:.3f} s")
    assert [without_id(spec) for spec in found] == specs
    assert len(statements) == 2
    assert took < 3


def test_undo_of_many_additions_is_one_statement_a_kind(store):
    specs = [Spec(f"Spec {number}", (Line("gin", "gin"),)) for number in range(3000)]
    with store.unit_of_work("Many") as work:
        work.insert("spec", [spec_row(spec) for spec in specs])
    store.undo_or_redo("undo")
    with store.reading() as connection:
        assert read_specs(connection) == ()
    store.undo_or_redo("redo")
    with store.reading() as connection:
        assert len(read_specs(connection)) == 3000


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
