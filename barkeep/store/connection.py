"""Opening the file: what it is, how SQLite shall treat it, and what it says when it fails.

One user, one visible file, perhaps in a synchronised folder: rollback
journal, full synchronisation, foreign keys on. Half a millisecond a commit.
"""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Dialect, Engine, QueuePool, create_engine, event
from sqlalchemy.exc import DBAPIError
from sqlalchemy.util import LRUCache

from barkeep.errors import UnreadableFile
from barkeep.store.refusals import BarIsBusy, BarMoved, CannotWrite
from barkeep.translation import tr, tr_noop

_MAGIC = b"SQLite format 3\0"
"""How every SQLite file begins."""

APPLICATION_ID = 0x62726B70
"""“brkp” in ASCII, in the header of every bar."""


BUSY_MS = 2000
"""How long to wait for another program to finish writing."""


_OWN_BESIDE = {
    "-journal": (b"\xd9\xd5\x05\xf9\x20\xa1\x63\xd7",),
    "-wal": (b"\x37\x7f\x06\x82", b"\x37\x7f\x06\x83"),
}
"""How the files begin that SQLite keeps beside a database, by the end of their names."""

JOURNALS = ("-journal", "-wal", "-shm")
"""What SQLite puts behind the name of a database for the files it keeps beside it."""


_COMPILED: LRUCache[Any, Any] = LRUCache(500)
"""Statements as they were put into words: once for all files, as one file is opened many times."""


_REASONS = {
    "SQLITE_NOTADB": tr_noop("it is not a SQLite file"),
    "SQLITE_CORRUPT": tr_noop("it is damaged"),
    "SQLITE_CANTOPEN": tr_noop("it cannot be opened"),
    "SQLITE_PERM": tr_noop("permission is denied"),
    "SQLITE_IOERR": tr_noop("the disk reported an error"),
}
_WRITE_REASONS = {
    "SQLITE_READONLY": tr_noop("it is read-only"),
    "SQLITE_FULL": tr_noop("the disk is full"),
}


@dataclass(frozen=True, slots=True)
class FileHeader:
    """Whose a SQLite file says it is, and the number of its schema."""

    application_id: int
    schema: int


def read_header(path: Path, busy_ms: int = BUSY_MS) -> FileHeader | None:
    """The header of the file, None where there is no file yet or nothing in it.

    Read through SQLite, never from the bytes: where a program was killed while
    it wrote, SQLite first puts the file back to what it was before, and until
    then the bytes may name a schema that was never reached. A file that was
    left in order is not changed. Raises `UnreadableFile` or `BarIsBusy`.
    """
    refuse_what_is_no_file(path)
    _refuse_what_sqlite_would_delete(path)
    if not path.exists():
        _refuse_unless_creatable(path)
        return None
    with garbled_errors(path), closing(open_file(path, busy_ms)) as file:
        file.execute("BEGIN")  # so that what is read fits together
        has_pages = file.execute("PRAGMA page_count").fetchone()[0]
        # What has pages was something to some program, even where no table is in it.
        return header_of(file) or (FileHeader(0, 0) if has_pages else None)


def open_file(path: Path, busy_ms: int = BUSY_MS) -> sqlite3.Connection:
    """A file that is there, opened as it is: SQLite may roll back what was left half written."""
    file = sqlite3.connect(f"{path.absolute().as_uri()}?mode=rw", uri=True, timeout=busy_ms / 1000)
    file.isolation_level = None
    return file


def header_of(file: sqlite3.Connection) -> FileHeader | None:
    """What SQLite says of an open file, None where there is nothing in it."""
    application_id, schema = (
        int(file.execute(f"PRAGMA {name}").fetchone()[0])
        for name in ("application_id", "user_version")
    )
    is_marked = application_id != 0
    if is_marked or file.execute("SELECT 1 FROM sqlite_master LIMIT 1").fetchone():
        return FileHeader(application_id, schema)
    return None


def is_bar(path: Path) -> bool:
    """Whether a file says that it is a bar; asked through SQLite, as it may be open here."""
    try:
        with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True, timeout=0.1)) as file:
            return bool(file.execute("PRAGMA application_id").fetchone()[0] == APPLICATION_ID)
    except sqlite3.Error:
        return False


def is_database(path: Path) -> bool:
    """Whether a file is an SQLite one, told by its first bytes. Raises `OSError`.

    Never ask it of a file that is open here: closing it would drop SQLite's locks.
    """
    with path.open("rb") as file:
        return file.read(len(_MAGIC)) == _MAGIC


def journal_owner(path: Path, known: Path | None = None) -> Path | None:
    """The database beside which SQLite keeps a file of this name, None where there is none.

    `known` is a database that may be open here, and is not looked into.
    """
    for suffix in JOURNALS:
        if not path.name.casefold().endswith(suffix):
            continue
        owner = path.with_name(path.name[: -len(suffix)] or path.name)
        if owner.is_file() and (_same_file(owner, known) or is_database(owner)):
            return owner
    return None


def kept_for(owner: Path) -> str:
    """Why a name is no other file's."""
    return tr("SQLite keeps this name for the journal of {name}", name=owner.name)


def _same_file(path: Path, known: Path | None) -> bool:
    return known is not None and known.exists() and path.samefile(known)


def refuse_what_is_no_file(path: Path) -> None:
    """Raise `UnreadableFile` where a folder, a pipe or a device lies in the place of a file."""
    if path.is_dir():
        raise UnreadableFile(str(path), tr("it is a folder"))
    if path.exists() and not path.is_file():
        raise UnreadableFile(str(path), tr("it is not an ordinary file"))


def refuse_unless_writable(path: Path) -> None:
    """Raise `UnreadableFile` for a file, or a folder for its journal, that cannot be written."""
    if path.exists() and not os.access(path, os.W_OK):
        raise UnreadableFile(str(path), tr("it is read-only"))
    if not os.access(path.parent, os.W_OK):
        raise UnreadableFile(str(path), tr("the folder {parent} is read-only", parent=path.parent))


def make_engine(path: Path, busy_ms: int = BUSY_MS) -> Engine:
    """An engine whose connections keep the rules above.

    Transactions begin explicitly, so that a rollback takes back changes of the
    schema too. Run with the execution option `writing` they begin immediately:
    two writers meet at the start, where one can wait, and not half way. Put together
    by hand, since every engine that `create_engine` makes learns the statements anew.
    """
    dialect, how = _dialect(), {"timeout": busy_ms / 1000, "check_same_thread": False}
    engine = Engine(
        QueuePool(lambda: dialect.connect(str(path), **how), dialect=dialect),
        dialect,
        URL.create("sqlite", database=str(path)),
        execution_options={"compiled_cache": _COMPILED},
    )
    event.listen(engine, "connect", _prepare)
    event.listen(engine, "begin", _begin)
    return engine


@cache
def _dialect() -> Dialect:
    """What SQLAlchemy knows of this SQLite, and learns of how each type is read and written."""
    engine = create_engine("sqlite://", json_serializer=_as_json)
    engine.connect().close()
    engine.dispose()
    return engine.dialect


def _as_json(value: Any) -> str:
    """A value as JSON. Undo keeps the key of each record, mostly one number: quicker said so."""
    if type(value) is list and len(value) == 1 and type(value[0]) is int:
        return f"[{value[0]}]"
    return json.dumps(value)


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


@contextmanager
def garbled_errors(path: Path) -> Iterator[None]:
    """As `spoken_errors`, where nothing but SQLite speaks: it may quote bytes that are no text."""
    try:
        with spoken_errors(path):
            yield
    except UnicodeDecodeError as error:
        raise UnreadableFile(str(path), _REASONS["SQLITE_CORRUPT"]) from error


def _raise_spoken(path: Path, error: object, cause: Exception) -> None:
    # Extended codes such as SQLITE_IOERR_WRITE begin with the plain one.
    words = str(getattr(error, "sqlite_errorname", "")).split("_")[:2]
    code = "_".join(words)
    if getattr(error, "sqlite_errorname", "") == "SQLITE_READONLY_DBMOVED":
        raise BarMoved(str(path)) from cause
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


def _refuse_unless_creatable(path: Path) -> None:
    if not path.parent.is_dir():
        raise UnreadableFile(
            str(path), tr("the folder {parent} does not exist", parent=path.parent)
        )
    try:
        owner = journal_owner(path)
    except OSError as error:
        raise UnreadableFile(str(path), error.strerror or tr("it cannot be read")) from None
    if owner is not None:
        raise UnreadableFile(str(path), kept_for(owner))
    refuse_unless_writable(path)


def _refuse_what_sqlite_would_delete(path: Path) -> None:
    """Raise for a file beside the bar that only has the name of one of SQLite's."""
    for ending, beginnings in _OWN_BESIDE.items():
        beside = path.with_name(path.name + ending)
        start = _first_bytes(beside)
        # A journal that is over may have been emptied, or its beginning zeroed; one that a
        # lost machine was writing may have a part of its beginning.
        begun = start.rstrip(b"\x00")
        if begun and not any(own.startswith(begun[: len(own)]) for own in beginnings):
            reason = tr(
                "{name} beside it would be lost, as SQLite keeps a file of that name; "
                "give that one another name first",
                name=beside.name,
            )
            raise UnreadableFile(str(path), reason)


def _first_bytes(beside: Path) -> bytes:
    try:
        with beside.open("rb") as file:
            return file.read(8)
    except FileNotFoundError:  # or it has just been deleted by who wrote
        return b""
    except OSError as error:
        reason = error.strerror or tr("it cannot be read")
        raise UnreadableFile(str(beside), reason[:1].lower() + reason[1:]) from None
