"""One open bar file: read it, change it all or nothing, undo, check."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import Self

from sqlalchemy import Connection, Engine, inspect

from barkeep.errors import UnreadableFile
from barkeep.store import history, migrations
from barkeep.store.connection import (
    APPLICATION_ID,
    BUSY_MS,
    FileHeader,
    local_path,
    make_engine,
    read_header,
    refuse_unless_writable,
    spoken_errors,
)
from barkeep.store.history import Action, Way
from barkeep.store.unit_of_work import Touched, UnitOfWork

Clock = Callable[[], datetime]


class Store:
    """A bar file, open until `close`. For use from one thread."""

    def __init__(self, path: Path, engine: Engine, clock: Clock) -> None:
        self.path = path
        self._engine = engine
        self._clock = clock

    @classmethod
    def open(
        cls, location: str | Path, clock: Clock = datetime.now, busy_ms: int = BUSY_MS
    ) -> Self:
        """Open a bar, make a new one where there is none, upgrade an older one.

        Raises `UnreadableFile`, `NewerBar` or `BarIsBusy`; such a file is left
        as it is.
        """
        path = local_path(location)
        header = read_header(path)
        if header is not None:
            _refuse_strangers(path, header)
            refuse_unless_writable(path)
        engine = make_engine(path, busy_ms)
        try:
            with spoken_errors(path):
                _make_ready(engine, path, header)
        except BaseException:
            engine.dispose()
            raise
        return cls(path, engine, clock)

    def close(self) -> None:
        """Let go of the file."""
        self._engine.dispose()

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
            return _faults(connection)

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        with spoken_errors(self.path), self._engine.connect() as connection:
            connection = connection.execution_options(writing=True)
            with connection.begin():
                yield connection


def _refuse_strangers(path: Path, header: FileHeader) -> None:
    if header.application_id == APPLICATION_ID:
        migrations.refuse_newer(path, header.schema)
    elif header.application_id != 0:
        raise UnreadableFile(str(path), "it is the database of another program")


def _make_ready(engine: Engine, path: Path, header: FileHeader | None) -> None:
    if header is None or header.application_id == 0:
        _fill_empty(engine, path)
        return
    with engine.connect() as connection:
        faults = _faults(connection)
    if faults:
        raise UnreadableFile(str(path), f"it is damaged ({faults[0]})")
    migrations.upgrade(engine, path, header.schema)


def _fill_empty(engine: Engine, path: Path) -> None:
    with engine.connect().execution_options(writing=True) as connection, connection.begin():
        if inspect(connection).get_table_names():
            raise UnreadableFile(str(path), "it is the database of another program")
        migrations.create(connection)


def _faults(connection: Connection) -> tuple[str, ...]:
    found = [str(row[0]) for row in connection.exec_driver_sql("PRAGMA quick_check")]
    faults = [] if found == ["ok"] else found
    for row in connection.exec_driver_sql("PRAGMA foreign_key_check"):
        faults.append(f"row {row[1]} of {row[0]} refers to a {row[2]} that is not there")
    return tuple(faults)
