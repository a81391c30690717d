"""Opening the file: what it is, how SQLite shall treat it, and what it says when it fails.

One user, one visible file, perhaps in a synchronised folder: rollback
journal, full synchronisation, foreign keys on. Half a millisecond a commit.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, create_engine, event
from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError, DBAPIError

from barkeep.errors import UnreadableFile
from barkeep.store.refusals import BarIsBusy, CannotWrite

APPLICATION_ID = 0x62726B70
"""“brkp” in ASCII, in the header of every bar."""


BUSY_MS = 2000
"""How long to wait for another program to finish writing."""


_MAGIC = b"SQLite format 3\x00"

_HEADER_BYTES = 100


_REASONS = {
    "SQLITE_NOTADB": "it is not a SQLite file",
    "SQLITE_CORRUPT": "it is damaged",
    "SQLITE_CANTOPEN": "it cannot be opened",
    "SQLITE_PERM": "permission is denied",
    "SQLITE_IOERR": "the disk reported an error",
}

_WRITE_REASONS = {
    "SQLITE_READONLY": "it is read-only",
    "SQLITE_FULL": "the disk is full",
}


@dataclass(frozen=True, slots=True)
class FileHeader:
    """What a SQLite file says of itself before SQLite opens it."""

    application_id: int
    schema: int


def local_path(location: str | Path) -> Path:
    """The file that a path or an `sqlite:///` URL names. Raises `UnreadableFile`."""
    if isinstance(location, Path) or "://" not in location:
        return Path(location).expanduser().absolute()
    try:
        url = make_url(location)
    except ArgumentError:
        raise UnreadableFile(location, "it is neither a path nor a database URL") from None
    shown = url.render_as_string(hide_password=True)
    if url.get_backend_name() != "sqlite":
        raise UnreadableFile(shown, "only SQLite files can hold a bar so far")
    if not url.database:
        raise UnreadableFile(shown, "it names no file")
    return Path(url.database).expanduser().absolute()


def read_header(path: Path) -> FileHeader | None:
    """The header of the file, None where there is no file yet or an empty one.

    Reads the bytes itself, so that a file that must not be touched is not.
    Raises `UnreadableFile`.
    """
    if path.is_dir():
        raise UnreadableFile(str(path), "it is a folder")
    if not path.exists():
        _refuse_unless_creatable(path)
        return None
    if not path.is_file():
        raise UnreadableFile(str(path), "it is not an ordinary file")
    start = _first_bytes(path)
    if not start:
        return None
    if len(start) < _HEADER_BYTES or not start.startswith(_MAGIC):
        raise UnreadableFile(str(path), "it is not a SQLite file")
    schema = int.from_bytes(start[60:64], "big", signed=True)
    return FileHeader(int.from_bytes(start[68:72], "big", signed=True), schema)


def refuse_unless_writable(path: Path) -> None:
    """Raise `UnreadableFile` for a file, or a folder for its journal, that cannot be written."""
    if path.exists() and not os.access(path, os.W_OK):
        raise UnreadableFile(str(path), "it is read-only")
    if not os.access(path.parent, os.W_OK):
        raise UnreadableFile(str(path), f"the folder {path.parent} is read-only")


def make_engine(path: Path, busy_ms: int = BUSY_MS) -> Engine:
    """An engine whose connections keep the rules above.

    Transactions begin explicitly, so that a rollback takes back changes of the
    schema too. Run with the execution option `writing` they begin immediately:
    two writers meet at the start, where one can wait, and not half way.
    """
    engine = create_engine(
        URL.create("sqlite", database=str(path)), connect_args={"timeout": busy_ms / 1000}
    )
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine


def raw(connection: Connection) -> sqlite3.Connection:
    """SQLite's own connection, for what must happen outside a transaction."""
    driver = connection.connection.driver_connection
    assert isinstance(driver, sqlite3.Connection)
    return driver


@contextmanager
def spoken_errors(path: Path) -> Iterator[None]:
    """Turn what SQLite says of the file into an error with a sentence.

    Anything that is not about the file (a broken constraint, wrong SQL) is a
    fault of the program and passes through.
    """
    try:
        yield
    except DBAPIError as error:
        _raise_spoken(path, error.orig, error)
        raise
    except sqlite3.Error as error:
        _raise_spoken(path, error, error)
        raise


def _raise_spoken(path: Path, error: object, cause: Exception) -> None:
    # Extended codes such as SQLITE_IOERR_WRITE begin with the plain one.
    words = str(getattr(error, "sqlite_errorname", "")).split("_")[:2]
    code = "_".join(words)
    if code in ("SQLITE_BUSY", "SQLITE_LOCKED"):
        raise BarIsBusy(str(path)) from cause
    if code in _WRITE_REASONS:
        raise CannotWrite(str(path), _WRITE_REASONS[code]) from cause
    if code in _REASONS:
        raise UnreadableFile(str(path), _REASONS[code]) from cause


def _prepare(connection: sqlite3.Connection, _record: Any) -> None:
    connection.isolation_level = None
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("PRAGMA journal_mode = DELETE").fetchall()
    connection.execute("PRAGMA synchronous = FULL")


def _begin(connection: Connection) -> None:
    writing = connection.get_execution_options().get("writing", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writing else "BEGIN")


def _first_bytes(path: Path) -> bytes:
    try:
        with path.open("rb") as file:
            return file.read(_HEADER_BYTES)
    except PermissionError:
        raise UnreadableFile(str(path), "permission is denied") from None
    except OSError as error:
        raise UnreadableFile(str(path), error.strerror or "it cannot be read") from None


def _refuse_unless_creatable(path: Path) -> None:
    if not path.parent.is_dir():
        raise UnreadableFile(str(path), f"the folder {path.parent} does not exist")
    refuse_unless_writable(path)
