"""A bar in a file: what is SQLite's alone of opening, reading, writing and copying it."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager, nullcontext
from os.path import samestat
from pathlib import Path
from typing import Literal, TypeVar

from sqlalchemy import Connection, Engine

from barkeep.errors import UnreadableFile
from barkeep.store import backup, content, seal
from barkeep.store.checking import Looked, check_file, damage_spoken, faults_now
from barkeep.store.connection import (
    BUSY_MS,
    make_engine,
    raw,
    refuse_what_is_no_file,
    spoken_errors,
)
from barkeep.store.faults import Fault
from barkeep.store.holdings import Holdings, holdings_of
from barkeep.store.looking import is_read_only, see_that_it_is_sound
from barkeep.store.opening import OPENING_WAITS, make_ready
from barkeep.store.steps import Beneath
from barkeep.translation import tr

T = TypeVar("T")


class FilePlace:
    """A file, and from `open` to `close` the bar in it."""

    kind: Literal["file", "database"] = "file"

    def __init__(self, path: Path, busy_ms: int = BUSY_MS) -> None:
        self.at = path
        self.is_read_only = False
        self._busy_ms = busy_ms
        self._file: os.stat_result | None = None

    @property
    def name(self) -> str:
        """How sentences call it."""
        return str(self.at)

    def open(self, *, new: bool | None, empty_too: bool) -> bool:
        """Open the bar, upgraded or begun as `Store.open` says; whether it was begun."""
        is_new = False
        if new is not True and is_read_only(self.at):
            see_that_it_is_sound(self.at, self._busy_ms)
            self.is_read_only = True
        else:
            is_new = make_ready(self.at, self._busy_ms * OPENING_WAITS, new, empty_too=empty_too)
        self._engine, self._file = self._opened()
        return is_new

    def close(self) -> None:
        """Let go of the file."""
        self._engine.dispose()

    def open_again(self) -> None:
        """Let go of the file that was opened, and open what lies in its place by now.

        Raises as `open` does; the file that was opened then stays so.
        """
        if self.beneath == "gone":
            raise UnreadableFile(self.name, tr("there is no such file"))
        make_ready(self.at, BUSY_MS * OPENING_WAITS, new=False)
        self._engine.dispose()
        self._engine, self._file = self._opened()

    @property
    def beneath(self) -> Beneath:
        """What lies in the place of the file that was opened."""
        now = _file_at(self.at)
        if now is None:
            return "gone"
        return "same" if self._file is not None and samestat(now, self._file) else "replaced"

    @contextmanager
    def not_waiting(self) -> Iterator[None]:
        """Within this a file that another program holds is refused at once."""
        before = self._waiting(0)
        try:
            yield
        finally:
            self._waiting(before)

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A connection within one transaction."""
        with self._told(), self._engine.connect() as connection:
            yield connection

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """A connection whose writes are committed at the end, or none of them."""
        with self._told(), self._engine.connect() as connection:
            connection = connection.execution_options(writing=True)
            with connection.begin():
                yield connection

    def data_version(self, within: Connection | None = None) -> int:
        """A number that changes when another program has written to the file.

        Asked `within` a change, which nobody can come between.
        """
        with nullcontext(within) if within is not None else self.reading() as connection:
            return int(connection.exec_driver_sql("PRAGMA data_version").scalar_one())

    def digest(self) -> str | None:
        """A short number for all that is in the bar now; None for a large one."""
        with self.reading() as connection, connection.begin():
            return content.digest(raw(connection))

    def fits_its_seal(self) -> bool:
        """Whether every row is as barkeep wrote it."""
        # Begun, so that the sums and the rows are of one moment: others may be writing.
        with self.reading() as connection, connection.begin():
            return seal.fits(raw(connection))

    def faults(self) -> tuple[Fault, ...]:
        """What is wrong with the file and what stands in it."""
        return self.looked_over().faults

    def write_copy(self, target: Path) -> None:
        """Copy the bar to a new file; while it is open, the one that was opened.

        Raises `CannotWrite` where the target exists or its folder cannot take it.
        """
        if self._file is None or self.beneath == "same":
            backup.copy_bar(self.at, target)
            return
        with self.reading() as connection:
            backup.copy_open(raw(connection), target, self._file.st_mode)

    # Whether it is open or not

    def looked_over(self) -> Looked:
        """What is wrong with what lies there, as `check_file` says it."""
        return check_file(self.at)

    def is_there(self) -> bool:
        """Whether anything lies there."""
        return self.at.exists() and self.at.stat().st_size > 0

    def may_be_written(self) -> bool:
        """Whether the file and its folder take what is written.

        Raises `UnreadableFile` where what lies there can be no bar's file.
        """
        refuse_what_is_no_file(self.at)
        return not is_read_only(self.at)

    def holdings(self) -> Holdings:
        """What the bar holds. Raises `UnreadableFile`, `NewerBar` or `BarIsBusy`."""
        return holdings_of(self.at)

    def copy_into(self, folder: Path, name: Callable[[int], str]) -> Path:
        """Copy the bar into the folder of its backups. Raises as `backup.copy_into` does."""
        return backup.copy_into(self.at, folder, name)

    def keep_as_it_is(self, folder: Path, name: Callable[[int], str]) -> Path:
        """Keep what cannot be read as a bar, byte by byte. Raises `CannotWrite`."""
        return backup.keep_as_it_is(self.at, folder, name)

    def write_over(self, ready: Path, keep: Callable[[], T]) -> T:
        """As `put_in_place`, once `keep` has kept the last that anybody wrote; what that gives.

        Raises `UnreadableFile` for what is no bar.
        """
        return backup.write_over(self.at, ready, keep)

    def put_in_place(self, ready: Path) -> None:
        """Make the bar hold what another file holds. Raises `CannotWrite` or `BarIsBusy`."""
        backup.put_in_place(ready, self.at)

    # Inside

    def _opened(self) -> tuple[Engine, os.stat_result | None]:
        return make_engine(self.at, self._busy_ms), _file_at(self.at)

    def _waiting(self, busy_ms: int) -> int:
        """From now on wait so long for another program; how long it was before."""
        with self._told(), self._engine.connect() as connection:
            before = raw(connection).execute("PRAGMA busy_timeout").fetchone()[0]
            raw(connection).execute(f"PRAGMA busy_timeout = {busy_ms}").fetchall()
            return int(before)

    @contextmanager
    def _told(self) -> Iterator[None]:
        """What goes wrong with the file, or comes of what stands in it, in a sentence."""
        with damage_spoken(self.name, lambda: faults_now(self.at)), spoken_errors(self.at):
            yield


def _file_at(path: Path) -> os.stat_result | None:
    """What tells the file at a path from any other, None for no file."""
    try:
        return path.stat()
    except OSError:
        return None
