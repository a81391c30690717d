"""One open bar file: read it, change it all or nothing, undo, check."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import Self

from sqlalchemy import Connection, Engine

from barkeep.store import history
from barkeep.store.connection import (
    BUSY_MS,
    local_path,
    make_engine,
    spoken_errors,
)
from barkeep.store.history import Action, Way
from barkeep.store.looking import is_read_only, see_that_it_is_sound
from barkeep.store.opening import file_faults, make_ready
from barkeep.store.refusals import ReadOnlyBar
from barkeep.store.unit_of_work import Touched, UnitOfWork

Clock = Callable[[], datetime]


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

    @classmethod
    def open(
        cls, location: str | Path, clock: Clock = datetime.now, busy_ms: int = BUSY_MS
    ) -> Self:
        """Open a bar, make a new one where there is none, upgrade an older one.

        Raises `UnreadableFile`, `NewerBar` or `BarIsHeld`; such a file is left
        as it is.
        """
        path = local_path(location)
        if is_read_only(path):
            see_that_it_is_sound(path, busy_ms)
            return cls(path, make_engine(path, busy_ms), clock, is_read_only=True)
        is_new = make_ready(path, busy_ms * _OPENING_WAITS)
        return cls(path, make_engine(path, busy_ms), clock, is_new=is_new)

    def close(self) -> None:
        """Let go of the file."""
        self._engine.dispose()

    def refuse_read_only(self) -> None:
        """Raise `ReadOnlyBar` where nothing can be written."""
        if self.is_read_only:
            raise ReadOnlyBar(str(self.path))

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A connection within one transaction, so that all that is read fits together."""
        with spoken_errors(self.path), self._engine.connect() as connection:
            yield connection

    @contextmanager
    def unit_of_work(self, label: str) -> Iterator[UnitOfWork]:
        """Change the bar: committed at the end, or not at all where anything is raised."""
        with self._writing() as connection:
            work = UnitOfWork(connection, label, self._clock())
            yield work
            work.finish()

    def undo_or_redo(self, way: Way) -> tuple[Action, Touched]:
        """Take the newest action back, or do the one last taken back again.

        Raises `NothingToUndo` or `CannotUndo`.
        """
        with self._writing() as connection:
            return history.step(connection, way, self._clock())

    def next_action(self, way: Way) -> Action | None:
        """What undo or redo would act on."""
        with self.reading() as connection:
            return history.next_action(connection, way)

    def data_version(self) -> int:
        """A number that changes when another program has written to the file."""
        with self.reading() as connection:
            return int(connection.exec_driver_sql("PRAGMA data_version").scalar_one())

    def faults(self) -> tuple[str, ...]:
        """What SQLite finds wrong with the file, in its own words; nothing in a sound one."""
        with self.reading() as connection:
            return file_faults(connection)

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        self.refuse_read_only()
        with spoken_errors(self.path), self._engine.connect() as connection:
            connection = connection.execution_options(writing=True)
            with connection.begin():
                yield connection
