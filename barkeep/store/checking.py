"""What is wrong with the file of a bar, also with one that cannot be opened as a bar."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path

from barkeep.errors import UserError
from barkeep.store import migrations, seal, soundness
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
        found = list(faults_in(file))
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
    if _said_by_sqlite(file) or not _is_as_written(file):
        found = tuple(faults_in(file))
        if found:
            raise damaged_bar(str(path), found)


def _is_as_written(file: sqlite3.Connection) -> bool:
    """Whether what barkeep wrote stands in an open bar; of one without a seal, whether it may."""
    if seal.is_sealed(file):
        return seal.fits(file)
    return not file.execute("PRAGMA foreign_key_check").fetchone() and soundness.is_sound(file)


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
            return tuple(faults_in(file))
    except (UserError, sqlite3.Error):
        return ()


def faults_in(file: sqlite3.Connection) -> Iterator[Fault]:
    """What is wrong with rows, then what SQLite says of the file and no row explains.

    Last come the rows that can be as they are, but that barkeep did not write so.
    """
    said = _said_by_sqlite(file)
    in_rows = tuple(soundness.faults(file))
    yield from in_rows
    for each in said:
        if not (in_rows and _SAID_BETTER.match(each)):
            yield Fault("", "", "", each)
    told = {each.table for each in in_rows}
    yield from (each for each in seal.faults(file) if each.table not in told)


def _said_by_sqlite(file: sqlite3.Connection) -> tuple[str, ...]:
    """What SQLite finds wrong, its indexes among it: levels are read by them."""
    try:
        rows = [str(row[0]) for row in file.execute("PRAGMA integrity_check")]
    except sqlite3.DatabaseError as error:  # where it cannot even look
        if getattr(error, "sqlite_errorname", "") not in ("SQLITE_CORRUPT", "SQLITE_NOTADB"):
            raise
        return (str(error),)
    lines = (line for row in rows for line in row.splitlines())
    return tuple(line for line in lines if line != "ok" and not line.startswith("***"))
