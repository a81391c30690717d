"""What is wrong with the file of a bar, also with one that cannot be opened as a bar."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path

from barkeep.errors import UserError
from barkeep.store import migrations, soundness
from barkeep.store.connection import BUSY_MS, FileHeader, garbled_errors, open_file, read_header
from barkeep.store.faults import Fault
from barkeep.store.refusals import EMPTY, NO_FILE, NoBarThere, damaged_bar

_SAID_BETTER = re.compile(r"(CHECK constraint failed in|(?:NULL|NUMERIC|TEXT|non-\w+) value in)")
"""What SQLite says of cells, without the row; the rules of this program say which."""


@dataclass(frozen=True, slots=True)
class Looked:
    """What is wrong with a bar's file, nothing in a sound one; whether it has an older schema."""

    faults: tuple[Fault, ...]
    is_older: bool


def check_file(path: Path, busy_ms: int = BUSY_MS) -> Looked:
    """Look over everything in the file of a bar, and change nothing of it.

    A journal that a killed program left is rolled back first, as by any opening.
    Raises `NoBarThere`, `UnreadableFile` for what is no bar at all, `NewerBar` or `BarIsBusy`.
    """
    header = known_header(path, busy_ms)
    with opened_to_look(path, busy_ms) as file:
        found = list(_faults(file, "integrity_check"))
        is_older = header.schema < migrations.schema_number()
        if not is_older:
            found += soundness.missing(file)
        return Looked(tuple(found), is_older)


def known_header(path: Path, busy_ms: int = BUSY_MS) -> FileHeader:
    """The header of a file that is a bar of a known schema. Raises as `check_file` does."""
    if not path.exists():
        raise NoBarThere(str(path), NO_FILE)
    header = read_header(path, busy_ms)
    if header is None:
        raise NoBarThere(str(path), EMPTY)
    migrations.refuse_unknown(path, header)
    return header


def refuse_damaged(path: Path, file: sqlite3.Connection) -> None:
    """Raise `DamagedBar` for an open bar of any schema that is not sound."""
    said = _said_by_sqlite(file, "quick_check")
    if said or file.execute("PRAGMA foreign_key_check").fetchone() or not soundness.is_sound(file):
        found = tuple(_faults(file, "quick_check"))
        if found:
            raise damaged_bar(str(path), found)


@contextmanager
def opened_to_look(path: Path, busy_ms: int = BUSY_MS) -> Iterator[sqlite3.Connection]:
    """A bar of any schema, sound or not, within one transaction that only reads."""
    with garbled_errors(path), closing(open_file(path, busy_ms)) as file:
        file.execute("BEGIN")
        yield file


@contextmanager
def damage_spoken(bar: str, look: Callable[[], tuple[Fault, ...]]) -> Iterator[None]:
    """Turn a fault that comes of what stands in a bar into a `DamagedBar`; no other one.

    `look` finds what stands wrongly in it.
    """
    try:
        yield
    except UserError:
        raise
    except Exception as error:
        found = look()
        if found:
            raise damaged_bar(bar, found) from error
        raise


def faults_now(path: Path) -> tuple[Fault, ...]:
    """What is wrong with a file that could be opened; nothing where it cannot be looked at now."""
    try:
        with opened_to_look(path) as file:
            return tuple(_faults(file, "quick_check"))
    except (UserError, sqlite3.Error):
        return ()


def _faults(file: sqlite3.Connection, how: str) -> Iterator[Fault]:
    """What is wrong with rows, then what SQLite says of the file and no row explains."""
    said = _said_by_sqlite(file, how)
    in_rows = tuple(soundness.faults(file))
    yield from in_rows
    for each in said:
        if not (in_rows and _SAID_BETTER.match(each)):
            yield Fault("", "", "", each)


def _said_by_sqlite(file: sqlite3.Connection, how: str) -> tuple[str, ...]:
    try:
        rows = [str(row[0]) for row in file.execute(f"PRAGMA {how}")]
    except sqlite3.DatabaseError as error:  # where it cannot even look
        if getattr(error, "sqlite_errorname", "") not in ("SQLITE_CORRUPT", "SQLITE_NOTADB"):
            raise
        return (str(error),)
    lines = (line for row in rows for line in row.splitlines())
    return tuple(line for line in lines if line != "ok" and not line.startswith("***"))
