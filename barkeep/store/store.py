"""One open bar file: read it, change it all or nothing, undo, check."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from os.path import samestat
from pathlib import Path
from typing import Literal, Self

from sqlalchemy import Connection, Engine

from barkeep.errors import UnreadableFile
from barkeep.store import content, history, seal
from barkeep.store.backup import copy_open
from barkeep.store.checking import check_file, damage_spoken
from barkeep.store.connection import (
    BUSY_MS,
    local_path,
    make_engine,
    raw,
    spoken_errors,
)
from barkeep.store.faults import Fault
from barkeep.store.looking import is_read_only, see_that_it_is_sound
from barkeep.store.opening import make_ready
from barkeep.store.refusals import ReadOnlyBar
from barkeep.store.steps import Action, Stamp, Way
from barkeep.store.unit_of_work import Touched, UnitOfWork

Clock = Callable[[], datetime]

Beneath = Literal["same", "replaced", "gone"]
"""Whether the file that was opened is still in its place, or another, or none."""


_OPENING_WAITS = 5
"""Who opens a bar waits so many times longer than who writes to it: another may be upgrading it."""


class Store:
    """A bar file, open until `close`; `is_new` where opening began it. For use from one thread.

    One that `is_read_only` is there to be looked at.
    """

    def __init__(
        self,
        path: Path,
        engine: Engine,
        clock: Clock,
        *,
        is_new: bool = False,
        is_read_only: bool = False,
    ) -> None:
        self.path = path
        self.is_new = is_new
        self.is_read_only = is_read_only
        self._engine = engine
        self._clock = clock
        self._file = _file_at(path)

    @classmethod
    def open(
        cls,
        location: str | Path,
        clock: Clock = datetime.now,
        busy_ms: int = BUSY_MS,
        *,
        new: bool | None = None,
        empty_too: bool = False,
    ) -> Self:
        """Open a bar, upgrade an older one, or make a new one where there is no file.

        None is ever made where `new` is False; one must be made where it is True;
        with `empty_too` one may be made in an empty file as well.
        Raises `NoBarThere`, `UnreadableFile`, `NewerBar`, `CannotWrite` or
        `BarIsHeld`; such a file is left as it is.
        """
        path = local_path(location)
        if new is not True and is_read_only(path):
            see_that_it_is_sound(path, busy_ms)
            return cls(path, make_engine(path, busy_ms), clock, is_read_only=True)
        is_new = make_ready(path, busy_ms * _OPENING_WAITS, new, empty_too=empty_too)
        return cls(path, make_engine(path, busy_ms), clock, is_new=is_new)

    def close(self) -> None:
        """Let go of the file."""
        self._engine.dispose()

    def open_again(self, busy_ms: int = BUSY_MS) -> None:
        """Let go of the file that was opened, and open what lies in its place by now.

        Raises as `open` does; the file that was opened then stays so.
        """
        if self.beneath == "gone":
            raise UnreadableFile(str(self.path), "there is no such file")
        make_ready(self.path, busy_ms * _OPENING_WAITS, new=False)
        self._engine.dispose()
        self._engine, self._file = make_engine(self.path, busy_ms), _file_at(self.path)

    @property
    def beneath(self) -> Beneath:
        """What lies in the place of the file that was opened."""
        now = _file_at(self.path)
        if now is None:
            return "gone"
        return "same" if self._file is not None and samestat(now, self._file) else "replaced"

    def write_copy(self, target: Path) -> None:
        """Copy the file that was opened to a new one, even where it is no longer in its place.

        Raises `CannotWrite` where the target exists or its folder cannot take it.
        """
        mode = 0o600 if self._file is None else self._file.st_mode
        with self.reading() as connection:
            copy_open(raw(connection), target, mode)

    @contextmanager
    def not_waiting(self) -> Iterator[None]:
        """Within this a file that another program holds is refused at once."""
        with self._engine.connect() as connection:
            before = raw(connection).execute("PRAGMA busy_timeout").fetchone()[0]
            raw(connection).execute("PRAGMA busy_timeout = 0").fetchall()
        try:
            yield
        finally:
            with self._engine.connect() as connection:
                raw(connection).execute(f"PRAGMA busy_timeout = {before}").fetchall()

    def refuse_read_only(self) -> None:
        """Raise `ReadOnlyBar` where nothing can be written."""
        if self.is_read_only:
            raise ReadOnlyBar(str(self.path))

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A connection within one transaction, so that all that is read fits together."""
        with self._told(), self._engine.connect() as connection:
            yield connection

    @contextmanager
    def unit_of_work(self, label: str) -> Iterator[UnitOfWork]:
        """Change the bar: committed at the end, or not at all where anything is raised."""
        with self._writing() as connection:
            work = UnitOfWork(connection, label, self._clock())
            yield work
            work.finish()

    def undo_or_redo(self, way: Way, named: Action | None = None) -> tuple[Action, Touched]:
        """Take the newest action back, or do the one last taken back again.

        Only the one that is `named`, where one is. Raises `NothingToUndo`,
        `AnotherStep` or `CannotUndo`.
        """
        with self._writing() as connection:
            return history.step(connection, way, self._clock(), named)

    def next_action(self, way: Way) -> Action | None:
        """What undo or redo would act on."""
        with self.reading() as connection:
            return history.next_action(connection, way)

    def newest_action(self) -> Stamp | None:
        """The action written last, whatever became of it; None where there is none."""
        with self.reading() as connection:
            return history.newest(connection)

    def still_holds(self, written: Stamp) -> bool:
        """Whether an action that was read before is in the file."""
        with self.reading() as connection:
            return history.at(connection, written.id) == written

    def data_version(self) -> int:
        """A number that changes when another program has written to the file."""
        with self.reading() as connection:
            return int(connection.exec_driver_sql("PRAGMA data_version").scalar_one())

    def digest(self) -> str | None:
        """A short number for all that is in the bar now; None for a large one."""
        with self.reading() as connection:
            return content.digest(raw(connection))

    def fits_its_seal(self) -> bool:
        """Whether every row is as barkeep wrote it."""
        with self.reading() as connection:
            return seal.fits(raw(connection))

    def faults(self) -> tuple[Fault, ...]:
        """What is wrong with the file and what stands in it; nothing in a sound one."""
        return check_file(self.path).faults

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        self.refuse_read_only()
        with self._told(), self._engine.connect() as connection:
            connection = connection.execution_options(writing=True)
            with connection.begin():
                yield connection

    @contextmanager
    def _told(self) -> Iterator[None]:
        """What goes wrong with the file, or comes of what stands in it, in a sentence."""
        with damage_spoken(self.path), spoken_errors(self.path):
            yield


def _file_at(path: Path) -> os.stat_result | None:
    """What tells the file at a path from any other, None for no file."""
    try:
        return path.stat()
    except OSError:
        return None
