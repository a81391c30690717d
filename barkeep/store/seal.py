"""The seal of a bar: what shows that nothing but barkeep has changed a row of it.

For each table it keeps the sum of a checksum of every row, and the same with
each checksum times a number made of the row's key. Whatever writes brings the
sums forward by what its rows were and are, and never makes them anew from the
whole table: damage elsewhere in it would be sealed with it. Sums have no
order, so they are the same for the same rows, and where one row is another
than was written, the two sums together say which.

A checksum is the CRC-32 of the row in MessagePack, which has one form for a
value; a row is as the database's driver gives it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from itertools import islice
from operator import itemgetter, mul
from typing import Any
from zlib import crc32

from msgspec import msgpack
from sqlalchemy import (
    ColumnElement,
    Connection,
    Integer,
    Table,
    bindparam,
    delete,
    insert,
    inspect,
    select,
    type_coerce,
    update,
)
from sqlalchemy.types import NullType

from barkeep.store.around_damage import columns_of
from barkeep.store.faults import Fault
from barkeep.store.rows import MANY, as_driven
from barkeep.store.schema import METADATA, action, action_image, ledger, seal
from barkeep.translation import tr_noop

_PRIME = 2**61 - 1
"""Sums are kept modulo this, so that two of them are a whole number of the database's."""

_ANOTHER, _MISSING = tr_noop("it is not as barkeep wrote it"), tr_noop("it is missing")
_SOME_OTHERS = tr_noop("some of its rows are not as barkeep wrote them")

_encoded = msgpack.Encoder().encode

Place = tuple[Table, ColumnElement[bool]]
"""Rows of a table, by what is true of them."""


@dataclass(frozen=True, slots=True)
class Sums:
    """The sum of the checksums of rows, and of each times the number of its key."""

    total: int = 0
    weighed: int = 0

    def plus(self, other: Sums, times: int = 1) -> Sums:
        """The sums of both, or with `times` -1 of these without the others."""
        return Sums(
            (self.total + times * other.total) % _PRIME,
            (self.weighed + times * other.weighed) % _PRIME,
        )


def _sealed_tables() -> tuple[Table, ...]:
    """All tables but the seal's own."""
    return tuple(each for each in METADATA.sorted_tables if each is not seal)


# Bringing it forward


def _is_kept(connection: Connection) -> bool:
    """Whether a bar has a seal: one in a file has; a server sees to its own files."""
    return connection.dialect.name == "sqlite"


@contextmanager
def changing(connection: Connection, *places: Place) -> Iterator[None]:
    """Bring the seal forward by what is written within this in the rows at some places.

    A place must hold the same rows before and after, but for new and deleted ones.
    """
    if not _is_kept(connection):
        yield
        return
    before = _sums_at(connection, places)
    yield
    after = _sums_at(connection, places)
    _bring_forward(connection, {name: after[name].plus(before[name], -1) for name in after})


def added(connection: Connection, *places: Place) -> None:
    """Bring the seal forward by rows that have just been added, which are all at some places."""
    if _is_kept(connection):
        _bring_forward(connection, _sums_at(connection, places))


def added_by(
    connection: Connection, action_id: int, *, has_images: bool, has_entries: bool
) -> None:
    """Bring the seal forward by an action that has just been added, with all that it wrote.

    Of what it wrote it is told apart what there is: a count is to take no longer than it must.
    """
    if not _is_kept(connection):
        return
    there = (action, *((action_image,) if has_images else ()), *((ledger,) if has_entries else ()))
    sums = {}
    for table in there:
        with as_driven(connection.execute(_of_action(table), {"of": action_id})) as found:
            sums[table.name] = _sums(table, found.rows)
    _bring_forward(connection, sums)


@cache
def _of_action(table: Table) -> Any:
    """What one action has added to a table."""
    column = table.c.id if table is action else table.c.action_id
    return _as_it_lies(table).where(column == bindparam("of"))


def of_ids(column: Any, ids: Collection[Any]) -> Iterator[Place]:
    """The places of rows by what stands in one column of theirs."""
    some = list(ids)
    for start in range(0, len(some), MANY):
        yield column.table, column.in_(some[start : start + MANY])


def seal_anew(connection: Connection) -> None:
    """Seal what stands in every table: for a bar that was just filled, or that is taken as it is.

    Of the table of an older schema those columns that it has.
    """
    connection.execute(delete(seal))
    if not _is_kept(connection):
        return
    tables, sealed = inspect(connection), []
    for table in _sealed_tables():
        if not tables.has_table(table.name):
            continue
        there = {each["name"] for each in tables.get_columns(table.name)}
        columns = tuple(each.name for each in table.columns if each.name in there)
        lying = select(*(type_coerce(table.c[each], NullType()) for each in columns))
        with as_driven(connection.execute(lying)) as found:
            sums = _sums(table, found.rows, columns)
        sealed.append({"sealed": table.name, "total": sums.total, "weighed": sums.weighed})
    connection.execute(insert(seal), sealed)


def _sums_at(connection: Connection, places: Iterable[Place]) -> dict[str, Sums]:
    found: dict[str, Sums] = {}
    for table, where in places:
        with as_driven(connection.execute(_as_it_lies(table).where(where))) as lying:
            here = _sums(table, lying.rows)
        found[table.name] = found.get(table.name, Sums()).plus(here)
    return found


_FORWARD = (
    update(seal)
    .where(seal.c.sealed == bindparam("of"))
    .values(
        total=(seal.c.total + bindparam("more")) % _PRIME,
        weighed=(seal.c.weighed + bindparam("more_weighed")) % _PRIME,
    )
)


def _bring_forward(connection: Connection, by: Mapping[str, Sums]) -> None:
    moved = [
        {"of": name, "more": sums.total, "more_weighed": sums.weighed}
        for name, sums in by.items()
        if sums != Sums()
    ]
    if moved:
        connection.execute(_FORWARD, moved)


@cache
def _as_it_lies(table: Table) -> Any:
    """All columns of a table, with nothing made of what the driver gives."""
    return select(*(type_coerce(each, NullType()) for each in table.columns))


def _sums(table: Table, rows: Iterable[Any], columns: Sequence[str] = ()) -> Sums:
    """The sums of rows of all columns of a table, or of some of them in an older bar."""
    total = weighed = 0
    waiting = iter(rows)
    while some := list(islice(waiting, MANY)):
        checksums = list(_checksums(some))
        total += sum(checksums)
        weighed += sum(map(mul, checksums, _numbers(table, some, columns)))
    return Sums(total % _PRIME, weighed % _PRIME)


def _checksums(values: Iterable[Any]) -> Iterator[int]:
    return map(crc32, map(_encoded, values))


def _numbers(table: Table, rows: Iterable[Any], columns: Sequence[str] = ()) -> Iterator[int]:
    """The number that the key of each row is: an id, or else a checksum of the key."""
    keys = map(_key_of(table, columns), rows)
    return keys if _is_numbered(table) else _checksums(keys)


@cache
def _key_of(table: Table, columns: Sequence[str]) -> Callable[[Any], Any]:
    """What takes the key out of a row: the id, or else all of the key as a tuple."""
    first, *others = _places_of_key(table, columns)
    if _is_numbered(table):
        return itemgetter(first)
    return itemgetter(first, *others) if others else itemgetter(slice(first, first + 1))


def _places_of_key(table: Table, columns: Sequence[str]) -> list[int]:
    named = columns or tuple(table.columns.keys())
    return [named.index(each.name) for each in table.primary_key.columns]


@cache
def _is_numbered(table: Table) -> bool:
    key = table.primary_key.columns
    return len(key) == 1 and isinstance(next(iter(key)).type, Integer)


# Looking at it


def is_sealed(file: sqlite3.Connection) -> bool:
    """Whether an open bar has a seal, as those of older schemas have not."""
    return bool(columns_of(file, seal))


def fits(file: sqlite3.Connection) -> bool:
    """Whether every row of an open bar that has a seal is as barkeep wrote it."""
    return not any(_misfits(file))


def faults(file: sqlite3.Connection) -> Iterator[Fault]:
    """Every place of an open bar where a row is not as barkeep wrote it; none without a seal."""
    if is_sealed(file):
        for table, columns in _misfits(file):
            yield _where(file, table, columns)


def _misfits(file: sqlite3.Connection) -> Iterator[tuple[Table, tuple[str, ...]]]:
    """The tables whose sums are others than the seal has, with those columns that are there."""
    kept = _kept(file)
    for table in _sealed_tables():
        columns = columns_of(file, table)
        if columns:
            try:
                total = _total(file.execute(_query(table, columns)))
            except (sqlite3.DatabaseError, UnicodeError):  # letters that are none
                total = None
            if table.name not in kept or kept[table.name].total != total:
                yield table, columns


def _total(rows: Iterable[Any]) -> int:
    """The sum of the checksums alone, which is quick."""
    return sum(_checksums(rows)) % _PRIME


def _kept(file: sqlite3.Connection) -> dict[Any, Sums]:
    """The sums of each table; none where the seal itself cannot be read."""
    try:
        rows = file.execute(_query(seal, tuple(seal.columns.keys()))).fetchall()
    except (sqlite3.DatabaseError, UnicodeError):
        return {}
    return {name: Sums(total, weighed) for name, total, weighed in rows}


def _where(file: sqlite3.Connection, table: Table, columns: tuple[str, ...]) -> Fault:
    """The row that is another, where it is a single one and not its key."""
    said = Fault(table.name, "", "", _SOME_OTHERS, foreign=True)
    try:
        rows = file.execute(_query(table, columns)).fetchall()
        sums = _sums(table, rows, columns)
        difference = sums.plus(_kept(file)[table.name], -1)
    except (sqlite3.DatabaseError, LookupError, TypeError, ValueError):
        return said
    if not difference.total:
        return said
    wanted = difference.weighed * pow(difference.total, -1, _PRIME) % _PRIME
    places = _places_of_key(table, columns)
    for row, number in zip(rows, _numbers(table, rows, columns), strict=True):
        if number == wanted:
            key = ", ".join(str(row[each]) for each in places)
            return Fault(table.name, key, "", _ANOTHER, foreign=True)
    if _is_numbered(table) and 0 < wanted < 2**32:
        return Fault(table.name, str(wanted), "", _MISSING, foreign=True)
    return said


def _query(table: Table, columns: Sequence[str]) -> str:
    named = ", ".join(f'"{each}"' for each in columns)
    return f'SELECT {named} FROM "{table.name}"'
