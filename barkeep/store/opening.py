"""What is done to a file before it is used as a bar: begun, or refused, or checked and upgraded.

Several programs may open one file at once. Whatever has to be written is
looked at again under SQLite's write lock, so that one of them does it and the
others wait and find it done.
"""

from __future__ import annotations

import sqlite3
from pathlib import Path

from sqlalchemy import Engine

from barkeep.domain.phrases import begun_small
from barkeep.errors import UnreadableFile
from barkeep.store import migrations, soundness
from barkeep.store.checking import faults_in, known_header, refuse_damaged
from barkeep.store.connection import (
    BUSY_MS,
    FileHeader,
    garbled_errors,
    header_of,
    make_engine,
    raw,
    read_header,
    refuse_unless_writable,
)
from barkeep.store.faults import Fault
from barkeep.store.refusals import (
    EMPTY,
    NO_FILE,
    BarIsBusy,
    BarIsHeld,
    CannotWrite,
    NoBarThere,
    damaged_bar,
)
from barkeep.store.seal import seal_anew
from barkeep.translation import tr

OPENING_WAITS = 5
"""Who opens a bar waits so many times longer than who writes to it: another may be upgrading it."""


def make_ready(
    path: Path, wait_ms: int, new: bool | None = None, *, empty_too: bool = False
) -> bool:
    """Make the file a sound bar of the newest schema; whether a new one was begun.

    A bar is begun where there is no file, but never where `new` is False; where it
    is True one must be begun, also in an empty file. With `empty_too` one may be begun
    in an empty file as well, as a first start that was killed leaves it. Waits up to `wait_ms` for
    another program to let go of it. Raises `NoBarThere`, `UnreadableFile`,
    `NewerBar`, `CannotWrite` or `BarIsHeld`.
    """
    try:
        with garbled_errors(path):
            return _make_ready(path, wait_ms, new, empty_too)
    except BarIsBusy as busy:
        raise BarIsHeld(str(path), wait_ms / 1000) from busy
    except OSError as error:  # a name that is too long, a folder that may not be looked into
        raise UnreadableFile(str(path), begun_small(error.strerror or str(error))) from error


def _make_ready(path: Path, wait_ms: int, new: bool | None, empty_too: bool) -> bool:
    is_there = path.exists()
    if new is False and not is_there:
        raise NoBarThere(str(path), NO_FILE)
    header = read_header(path, wait_ms)
    if header is not None:
        migrations.refuse_unknown(path, header)
        if new:
            raise CannotWrite(str(path), tr("there is a bar in it already"))
    if path.exists():
        refuse_unless_writable(path)
    engine = make_engine(path, wait_ms)
    try:
        may_begin = bool(new) or empty_too or not is_there
        header = header or _begin(engine, path, may_begin=may_begin)
        if header is None:
            return True
        migrations.refuse_unknown(path, header)
        # Begun, so that the sums and the rows are of one moment: others may be writing.
        with engine.connect() as connection, connection.begin():
            refuse_damaged(path, raw(connection))
        migrations.upgrade(engine, path, header.schema)
        with engine.connect() as connection:
            _refuse_incomplete(path, raw(connection))
        return False
    finally:
        engine.dispose()


def take_as_it_is(path: Path, busy_ms: int = BUSY_MS) -> tuple[Fault, ...]:
    """Seal a bar as it stands: what something else changed in it is the bar's own from now on.

    What that was; nothing else is written. Raises `DamagedBar` where more is wrong
    with it, and whatever `check_file` raises.
    """
    known_header(path, busy_ms)
    refuse_unless_writable(path)
    engine = make_engine(path, busy_ms)
    try:
        with garbled_errors(path), engine.connect() as opened:
            connection = opened.execution_options(writing=True)
            with connection.begin():
                found = tuple(faults_in(raw(connection)))
                if not all(each.foreign for each in found):
                    raise damaged_bar(str(path), found)
                if found:
                    seal_anew(connection)
                return found
    finally:
        engine.dispose()


def _begin(engine: Engine, path: Path, *, may_begin: bool) -> FileHeader | None:
    """Fill the file where it is still empty; otherwise what has been put into it meanwhile."""
    with engine.connect().execution_options(writing=True) as connection, connection.begin():
        header = header_of(raw(connection))
        if header is None:
            if not may_begin:
                raise NoBarThere(str(path), EMPTY)
            migrations.create(connection)
        return header


def _refuse_incomplete(path: Path, file: sqlite3.Connection) -> None:
    lacking = tuple(soundness.missing(file))
    if lacking:
        raise damaged_bar(str(path), lacking)
