"""Reading and writing one record as plain values, the way undo keeps them.

A record is one row, or a spec's row together with its lines. What is soft is
hidden where it would be deleted, so its row and its id stay.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
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
    func,
    insert,
    select,
    update,
)

from barkeep.domain.bar.changes import Changes, Part
from barkeep.store import bottles, knowledge, schema, seal, shoots, specs
from barkeep.store.rows import Columns, Mapper, Row, in_columns, insert_many

Key = tuple[Any, ...]


@dataclass(frozen=True, slots=True)
class RecordKind:
    """One kind of record: its table, and what a change of it changes.

    `row` gives the row of a value, without an id that the table gives. What is soft has a
    `mapper`.
    """

    table: Table
    row: Callable[[Any], Row]
    changes: Changes
    mapper: Mapper[Any] | None = None

    @classmethod
    def numbering_itself(cls, mapper: Mapper[Any], changes: Changes) -> RecordKind:
        """A soft kind, whose table gives the ids."""
        return cls(mapper.table, mapper.row, changes, mapper)

    @property
    def soft(self) -> bool:
        """Whether a record is hidden where it would be deleted."""
        return self.mapper is not None

    @property
    def lines(self) -> Table | None:
        """The table of a record's lines, None where it has none."""
        own = None if self.mapper is None else self.mapper.lines
        return None if own is None else own.table

    def named(self, key: Key) -> Row:
        """The part of a record's row that its key is."""
        return dict(zip(self.table.primary_key.columns.keys(), key, strict=True))


KINDS: Mapping[str, RecordKind] = {
    "product": RecordKind.numbering_itself(
        bottles.PRODUCT, frozenset({Part.PRODUCTS, Part.BOTTLES})
    ),
    "bottle": RecordKind.numbering_itself(bottles.BOTTLE, frozenset({Part.BOTTLES})),
    "paid": RecordKind.numbering_itself(bottles.PAID, frozenset({Part.BOTTLES})),
    "spec": RecordKind.numbering_itself(specs.SPEC, frozenset({Part.SPECS})),
    "trial": RecordKind.numbering_itself(specs.TRIAL, frozenset({Part.TRIALS})),
    "shoot": RecordKind.numbering_itself(shoots.SHOOT, frozenset({Part.SHOOTS})),
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
        _insert_lines(connection, kind.lines, {key[0]: row["lines"]}, in_columns(row["lines"]))


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


def insert_new(
    connection: Connection, kind: RecordKind, values: Sequence[Any], alike: Mapping[str, Any]
) -> tuple[int, ...]:
    """Add values as records of a kind that numbers itself; their ids, in order.

    `alike` are the columns in which all of them say this instead of their own.
    """
    assert kind.mapper is not None
    columns = kind.mapper.in_columns(values)
    columns |= {name: [each] * len(values) for name, each in alike.items()}
    ids = _insert_numbered(connection, kind.table, columns)
    if kind.mapper.lines is not None and kind.lines is not None:
        lines = kind.mapper.lines.in_columns([line for each in values for line in each.lines])
        lines_of = {each: value.lines for each, value in zip(ids, values, strict=True)}
        _insert_lines(connection, kind.lines, lines_of, lines)
    if ids:  # which follow one another
        tables = (kind.table, *(() if kind.lines is None else (kind.lines,)))
        places = ((each, _first(each).between(ids[0], ids[-1])) for each in tables)
        seal.added(connection, *places)
    return ids


def _insert_numbered(connection: Connection, table: Table, columns: Columns) -> tuple[int, ...]:
    """Add rows that the table numbers; their numbers, in order."""
    identity = _first(table)
    count = len(next(iter(columns.values()), ()))
    if count > 1 and connection.dialect.name == "sqlite":
        # It gives numbers back for one row at a time; but it has one writer, and counts on
        # from the highest.
        highest = connection.execute(select(func.coalesce(func.max(identity), 0))).scalar_one()
        insert_many(connection, table, columns)
        new = select(identity).where(identity > highest).order_by(identity)
        return tuple(connection.execute(new).scalars())
    rows = [dict(zip(columns, row, strict=True)) for row in zip(*columns.values(), strict=True)]
    statement = insert(table).returning(identity, sort_by_parameter_order=True)
    return tuple(connection.execute(statement, rows).scalars()) if rows else ()


def _insert_lines(
    connection: Connection,
    table: Table,
    lines_of: Mapping[Any, Sequence[Any]],
    columns: Columns,
) -> None:
    """Add the lines of records, by the key of each, numbered from 0; `columns` hold them all."""
    owners = [key for key, lines in lines_of.items() for _line in lines]
    positions = [place for lines in lines_of.values() for place in range(len(lines))]
    numbered = {_first(table).name: owners, "position": positions}
    insert_many(connection, table, {**columns, **numbered})


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
