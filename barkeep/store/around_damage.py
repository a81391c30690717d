"""Reading the rows of a damaged file: from both ends of a table, then one by one between them."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Table

from barkeep.translation import tr

MOST_TRIED, MOST_BEYOND = 100_000, 2_000
"""So many ids at most are tried one by one: between two rows, and where no end can be read."""


@dataclass(frozen=True, slots=True)
class Gap:
    """A place where rows cannot be read: `place` says which may have been there."""

    place: str
    reason: str


def columns_of(file: sqlite3.Connection, table: Table) -> tuple[str, ...]:
    """Those of the table's columns that a file has; an older schema has fewer."""
    with _bytes_for_texts(file):  # a type may be garbled as well
        found = file.execute(f'PRAGMA table_info("{table.name}")').fetchall()
    there = {letters(each[1]) for each in found}
    return tuple(each.name for each in table.columns if each.name in there)


def letters(cell: Any) -> str:
    """The letters of a text that may have come as bytes, whatever they are."""
    return cell.decode(errors="replace") if isinstance(cell, bytes) else str(cell)


def readable_rows(
    file: sqlite3.Connection, table: Table, wanted: str
) -> Iterator[tuple[Any, ...] | Gap]:
    """What is wanted of each row that can be read, in order as far as that is; then the gaps.

    Texts come as bytes, whatever letters they hold.
    """
    name = f'"{table.name}"'
    by_number = table.dialect_options["sqlite"]["with_rowid"]
    order = "rowid" if by_number else ", ".join(each.name for each in table.primary_key.columns)
    first = order.partition(",")[0]
    select = f"SELECT {first}, {wanted} FROM {name}"
    ahead: list[tuple[Any, ...]] = []
    with _bytes_for_texts(file):
        reason = _read_into(ahead, file, f"{select} ORDER BY {order}")
        yield from (row[1:] for row in ahead)
        if not reason:
            return
        back: list[tuple[Any, ...]] = []
        downwards = ", ".join(f"{each} DESC" for each in order.split(", "))
        _read_into(back, file, f"{select} ORDER BY {downwards}")
        low = ahead[-1][0] if ahead else 0
        high = back[-1][0] if back else low + MOST_BEYOND
        between = _between(file, f"{select} WHERE {first} = ?", low, high)
        seen = {row[1:] for row in ahead}
        yield from (row[1:] for row in (*between, *reversed(back)) if row[1:] not in seen)
        place = tr("after {first} {low}", first=first, low=low)
        if back:
            place = tr("after {first} {low} and before {high}", first=first, low=low, high=high)
        yield Gap(place, tr("the file is damaged ({reason})", reason=reason))


def _read_into(found: list[tuple[Any, ...]], file: sqlite3.Connection, query: str) -> str:
    """Read until it ends or cannot go on; why not, empty where it came to the end."""
    try:
        for row in file.execute(query):
            found.append(row)
    except sqlite3.DatabaseError as error:
        return str(error)
    return ""


def _between(
    file: sqlite3.Connection, query: str, low: Any, high: Any
) -> Iterator[tuple[Any, ...]]:
    if not (isinstance(low, int) and isinstance(high, int)):
        return
    for number in range(low, min(high + 1, low + MOST_TRIED)):
        found: list[tuple[Any, ...]] = []
        try:
            found.extend(file.execute(query, (number,)))
        except sqlite3.DatabaseError:
            continue
        yield from found


@contextmanager
def _bytes_for_texts(file: sqlite3.Connection) -> Iterator[None]:
    before, file.text_factory = file.text_factory, bytes
    try:
        yield
    finally:
        file.text_factory = before
