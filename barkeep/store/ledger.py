"""The ledger's rows: added, read, never changed."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime

from sqlalchemy import Connection, func, insert, select

from barkeep.domain.bottles.bottle import Entry
from barkeep.store.rows import Mapper
from barkeep.store.schema import ledger

_ENTRY = Mapper(Entry, ledger)

_MANY = 500  # SQLite refuses statements with too many parameters.


def append(connection: Connection, entry: Entry, action_id: int) -> Entry:
    """Add one entry; it comes back with its number."""
    row = {**_ENTRY.row(entry), "action_id": action_id}
    identity = connection.execute(insert(ledger).values(row)).inserted_primary_key
    assert identity is not None
    return replace(entry, id=int(identity[0]))


def entries_of(connection: Connection, bottle_id: int) -> tuple[Entry, ...]:
    """Every entry of one bottle, oldest first, reversals among them."""
    return tuple(_entries(connection, (bottle_id,)))


def entries_by_bottle(
    connection: Connection, bottle_ids: Collection[int] | None = None
) -> Mapping[int, Sequence[Entry]]:
    """Bottle id -> its entries, oldest first; of every bottle where none are named."""
    grouped: dict[int, list[Entry]] = {}
    for entry in _entries(connection, bottle_ids):
        grouped.setdefault(entry.bottle_id, []).append(entry)
    return grouped


def reverse(connection: Connection, action_id: int, at: datetime) -> frozenset[int]:
    """Take back the entries of an action, newest first; the bottles they belong to."""
    own = _by_action(connection, action_id)
    return _reverse_each(connection, reversed(own), action_id, at)


def restore(connection: Connection, action_id: int, at: datetime) -> frozenset[int]:
    """Reverse the latest reversals of an action's entries; the bottles they belong to."""
    own = {entry_id for entry_id, _ in _by_action(connection, action_id)}
    latest = (
        select(func.max(ledger.c.id), ledger.c.bottle_id, ledger.c.reverses)
        .where(ledger.c.action_id == action_id, ledger.c.reverses.is_not(None))
        .group_by(ledger.c.reverses, ledger.c.bottle_id)
        .order_by(ledger.c.reverses)
    )
    reversals = [(row[0], row[1]) for row in connection.execute(latest) if row[2] in own]
    return _reverse_each(connection, reversals, action_id, at)


def _by_action(connection: Connection, action_id: int) -> list[tuple[int, int]]:
    own = (
        select(ledger.c.id, ledger.c.bottle_id)
        .where(ledger.c.action_id == action_id, ledger.c.reverses.is_(None))
        .order_by(ledger.c.id)
    )
    return [(row[0], row[1]) for row in connection.execute(own)]


def _reverse_each(
    connection: Connection, entries: Iterable[tuple[int, int]], action_id: int, at: datetime
) -> frozenset[int]:
    bottle_ids = set()
    for entry_id, bottle_id in entries:
        reversal = Entry(0, bottle_id, "reverse", at, reverses=entry_id)
        append(connection, reversal, action_id)
        bottle_ids.add(bottle_id)
    return frozenset(bottle_ids)


def _entries(connection: Connection, bottle_ids: Collection[int] | None) -> Iterable[Entry]:
    statement = select(*_ENTRY.columns).order_by(ledger.c.id)
    if bottle_ids is not None and len(bottle_ids) <= _MANY:
        statement = statement.where(ledger.c.bottle_id.in_(bottle_ids))
    for row in connection.execute(statement):
        if bottle_ids is None or row.bottle_id in bottle_ids:
            yield _ENTRY.value(row)
