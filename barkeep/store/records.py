"""Reading and writing one record as plain values, the way undo keeps them.

A record is one row, or a spec's row together with its lines. What is soft is
hidden where it would be deleted, so its row and its id stay.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Connection,
    Date,
    DateTime,
    Table,
    and_,
    bindparam,
    delete,
    insert,
    select,
    update,
)

from barkeep.domain.bar.changes import Changes, Part
from barkeep.store import bottles, knowledge, schema, seal, shoots, specs
from barkeep.store.rows import Row, insert_many

Key = tuple[Any, ...]


@dataclass(frozen=True, slots=True)
class RecordKind:
    """One kind of record: its table, the table of its lines, and what a change of it changes.

    `row` gives the row of a value, without an id that the table gives.
    """

    table: Table
    row: Callable[[Any], Row]
    changes: Changes
    soft: bool = False
    lines: Table | None = None

    def named(self, key: Key) -> Row:
        """The part of a record's row that its key is."""
        return dict(zip(self.table.primary_key.columns.keys(), key, strict=True))


KINDS: Mapping[str, RecordKind] = {
    "product": RecordKind(
        schema.product,
        bottles.PRODUCT.row,
        frozenset({Part.PRODUCTS, Part.BOTTLES}),
        soft=True,
    ),
    "bottle": RecordKind(schema.bottle, bottles.BOTTLE.row, frozenset({Part.BOTTLES}), soft=True),
    "spec": RecordKind(
        schema.spec,
        specs.SPEC.row,
        frozenset({Part.SPECS}),
        soft=True,
        lines=schema.spec_line,
    ),
    "trial": RecordKind(schema.trial, specs.TRIAL.row, frozenset({Part.TRIALS}), soft=True),
    "shoot": RecordKind(schema.shoot, shoots.SHOOT.row, frozenset({Part.SHOOTS}), soft=True),
    "own_recipe": RecordKind(schema.own_recipe, knowledge.RECIPE.row, frozenset({Part.KNOWLEDGE})),
    "own_ingredient": RecordKind(
        schema.own_ingredient, knowledge.ingredient_row, frozenset({Part.KNOWLEDGE})
    ),
    "own_stand_in": RecordKind(
        schema.own_stand_in, knowledge.STAND_IN.row, frozenset({Part.KNOWLEDGE})
    ),
    "setting": RecordKind(schema.setting, dict, frozenset({Part.SETTINGS})),
}


def read(connection: Connection, kind: RecordKind, key: Key) -> Row | None:
    """The record as it is, None where there is none."""
    found = connection.execute(select(kind.table).where(_is(kind.table, key))).mappings().first()
    if found is None:
        return None
    row = dict(found)
    if kind.lines is not None:
        row["lines"] = _read_lines(connection, kind.lines, key)
    return row


def write(connection: Connection, kind: RecordKind, key: Key, row: Row | None) -> None:
    """Make the record what `row` says; None hides what is soft and deletes the rest."""
    places: list[seal.Place] = [(kind.table, _is(kind.table, key))]
    if kind.lines is not None:
        places.append((kind.lines, _first(kind.lines) == key[0]))
    with seal.changing(connection, *places):
        if row is None:
            _take_away(connection, kind, key)
        else:
            _write(connection, kind, key, row)


def _write(connection: Connection, kind: RecordKind, key: Key, row: Row) -> None:
    own = {name: value for name, value in row.items() if name != "lines"}
    changed = connection.execute(update(kind.table).where(_is(kind.table, key)).values(own))
    if not changed.rowcount:
        connection.execute(insert(kind.table).values(own))
    if kind.lines is not None:
        connection.execute(delete(kind.lines).where(_first(kind.lines) == key[0]))
        insert_lines(connection, kind, {key: row["lines"]})


def set_hidden(connection: Connection, kind: RecordKind, keys: list[Key], hidden: bool) -> int:
    """Hide soft records, or show them again; how many were not so already."""
    identity = _first(kind.table)
    statement = (
        update(kind.table)
        .where(identity == bindparam("identity"), kind.table.c.hidden != hidden)
        .values(hidden=hidden)
    )
    with seal.changing(connection, *seal.of_ids(identity, [key[0] for key in keys])):
        return connection.execute(statement, [{"identity": key[0]} for key in keys]).rowcount


def insert_new(connection: Connection, kind: RecordKind, rows: list[Row]) -> tuple[int, ...]:
    """Add records of a kind that numbers itself; their ids, in order. Takes the rows apart."""
    lines = [] if kind.lines is None else [row.pop("lines") for row in rows]
    identity = _first(kind.table)
    statement = insert(kind.table).returning(identity, sort_by_parameter_order=True)
    ids = tuple(connection.execute(statement, rows).scalars())
    if lines:
        pairs = zip(ids, lines, strict=True)
        insert_lines(connection, kind, {(each,): some for each, some in pairs})
    seal.added(connection, *seal.of_ids(identity, ids))
    if kind.lines is not None:
        seal.added(connection, *seal.of_ids(_first(kind.lines), ids))
    return ids


def insert_lines(
    connection: Connection, kind: RecordKind, lines_of: Mapping[Key, list[Row]]
) -> None:
    """Add the lines of records, numbered from 0."""
    assert kind.lines is not None
    owner = _first(kind.lines).name
    rows = [
        {**line, owner: key[0], "position": position}
        for key, lines in lines_of.items()
        for position, line in enumerate(lines)
    ]
    insert_many(connection, kind.lines, rows)


def to_image(row: Row | None) -> Row | None:
    """The record in JSON's own types."""
    if row is None:
        return None
    return {
        name: value.isoformat() if isinstance(value, date) else value for name, value in row.items()
    }


def from_image(kind: RecordKind, image: Row | None) -> Row | None:
    """The record out of JSON's types."""
    if image is None:
        return None
    row = dict(image)
    for column in kind.table.columns:
        value = row.get(column.name)
        if value is not None and isinstance(column.type, DateTime):
            row[column.name] = datetime.fromisoformat(value)
        elif value is not None and isinstance(column.type, Date):
            row[column.name] = date.fromisoformat(value)
    return row


def _take_away(connection: Connection, kind: RecordKind, key: Key) -> None:
    here = _is(kind.table, key)
    if kind.soft:
        connection.execute(update(kind.table).where(here).values(hidden=True))
    else:
        connection.execute(delete(kind.table).where(here))


def _read_lines(connection: Connection, table: Table, key: Key) -> list[Row]:
    order = select(table).where(_first(table) == key[0]).order_by(table.c.position)
    own = (_first(table).name, "position")
    return [
        {name: value for name, value in line.items() if name not in own}
        for line in connection.execute(order).mappings()
    ]


def _first(table: Table) -> Any:
    return next(iter(table.primary_key.columns))


def _is(table: Table, key: Key) -> ColumnElement[bool]:
    columns = table.primary_key.columns
    return and_(*(column == value for column, value in zip(columns, key, strict=True)))
