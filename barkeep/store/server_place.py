"""A bar on a PostgreSQL server: what is PostgreSQL's alone of opening, reading and writing it."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, nullcontext, suppress
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Literal, TypeVar

from sqlalchemy import Connection, Engine, RootTransaction
from sqlalchemy.exc import DBAPIError, IntegrityError

from barkeep.errors import NewerBar, UnreadableFile, UserError
from barkeep.store import backup, server_tables
from barkeep.store.address import ServerAddress
from barkeep.store.checking import Looked, check_file, damage_spoken
from barkeep.store.connection import BUSY_MS
from barkeep.store.connection import make_engine as file_engine
from barkeep.store.copying import copy_rows
from barkeep.store.faults import Fault
from barkeep.store.holdings import Holdings, read_holdings
from barkeep.store.migrations import create, refuse_unknown, schema_number
from barkeep.store.opening import OPENING_WAITS
from barkeep.store.refusals import (
    BarIsBusy,
    BarIsHeld,
    CannotWrite,
    ConnectionLost,
    NoBarThere,
    WrittenOrNot,
    damaged_bar,
)
from barkeep.store.server_engine import (
    FORBIDDEN,
    code_of,
    is_lost,
    make_engine,
    named_user,
    spoken_errors,
    to_write,
)
from barkeep.store.steps import Beneath
from barkeep.translation import tr

T = TypeVar("T")

_ASIDE = 2**40
"""More changes than any bar sees: what a version is moved by once it is not known any more."""

_ASKED_FOR_S, _ASKED_EVERY_S = 4.0, 0.1
"""How long, and how often, a server that comes back is asked what became of a change."""


class ServerPlace:
    """An address, and from `open` to `close` the bar there."""

    kind: Literal["file", "database"] = "database"

    def __init__(self, address: ServerAddress, busy_ms: int = BUSY_MS) -> None:
        self.at = address
        self.is_read_only = False
        self._busy_ms = busy_ms
        self._engine: Engine | None = None
        self._own = 0
        """How many of the changes that are counted there were made from here."""

    @property
    def name(self) -> str:
        """How sentences call it."""
        return self.at.name

    @property
    def beneath(self) -> Beneath:
        """Nothing takes the place of a bar on a server."""
        return "same"

    def open(self, *, new: bool | None, empty_too: bool) -> bool:
        """Open the bar, upgraded or begun as `Store.open` says; whether it was begun.

        A schema that is there and empty is as an empty file. Raises `NoBarThere`,
        `UnreadableFile`, `NewerBar`, `CannotWrite`, `BarIsHeld` or `NoServer`.
        """
        self._engine = make_engine(self.at, self._busy_ms)
        try:
            with self._told():
                return self._made_ready(self._engine, new, empty_too)
        except BarIsBusy as busy:
            self.close()
            raise BarIsHeld(self.name, self._busy_ms * OPENING_WAITS / 1000) from busy
        except BaseException:
            self.close()
            raise

    def close(self) -> None:
        """Let go of the connections."""
        if self._engine is not None:
            self._engine.dispose()
            self._engine = None

    def open_again(self) -> None:
        """Connect anew."""
        with self._used() as engine:
            engine.dispose()

    @contextmanager
    def not_waiting(self) -> Iterator[None]:
        """Who reads waits for nobody here."""
        yield

    @contextmanager
    def reading(self) -> Iterator[Connection]:
        """A connection within one transaction, which sees one state."""
        with self._told(), self._used() as engine, engine.connect() as connection:
            yield connection

    @contextmanager
    def writing(self) -> Iterator[Connection]:
        """A connection whose writes are committed at the end, or none of them."""
        with self._changing() as connection:
            yield connection
        self._own += 1

    def data_version(self, within: Connection | None = None) -> int:
        """A number that changes when another than this has written to the bar."""
        with nullcontext(within) if within is not None else self.reading() as connection:
            return server_tables.changes_so_far(connection) - self._own

    def digest(self) -> str | None:
        """Nothing that is read of it is kept."""
        return None

    def fits_its_seal(self) -> bool:
        """A server sees to its own files, so a bar on one has no seal."""
        return True

    def faults(self) -> tuple[Fault, ...]:
        """What stands wrongly in it, told by what says it of files."""
        with self.reading() as connection:
            lacking = tuple(server_tables.missing(server_tables.look(connection, self.at.schema)))
        if lacking:
            return lacking
        with TemporaryDirectory(prefix="barkeep-", ignore_cleanup_errors=True) as folder:
            copy = Path(folder) / "copy"
            try:
                self._fill(copy)
            except IntegrityError as error:  # a rule that somebody has taken off the server
                return (Fault("", "", "", str(error.orig)),)
            return check_file(copy).faults

    # Whether it is open or not

    def write_copy(self, target: Path) -> None:
        """Copy the bar to a new file. Raises as `backup.copy_bar` does."""
        backup.write_filled(target, self._fill)

    def looked_over(self) -> Looked:
        """What is wrong with the bar, opened or not. Raises as `open` does."""
        with self.reading() as connection:
            found = server_tables.look(connection, self.at.schema)
            self._refuse(found, new=False, empty_too=False)
        is_older = found.header is not None and found.header.schema < schema_number()
        return Looked(() if is_older else self.faults(), is_older)

    def is_there(self) -> bool:
        """Whether anything lies there."""
        with self.reading() as connection:
            return server_tables.look(connection, self.at.schema).header is not None

    def may_be_written(self) -> bool:
        """Whether the server and the user's rights let it be written."""
        with self.reading() as connection:
            found = server_tables.look(connection, self.at.schema)
            return found.header is None or found.may_be_written

    def holdings(self) -> Holdings:
        """What the bar holds. Raises `UnreadableFile` or `NoServer`."""
        with self.reading() as connection:
            if server_tables.look(connection, self.at.schema).header is None:
                raise UnreadableFile(self.name, tr("there is no bar in it"))
            return read_holdings(connection)

    def copy_into(self, folder: Path, name: Callable[[int], str]) -> Path:
        """Copy the bar to a file in the folder of its backups."""
        return backup.filled_into(folder, name, self._fill)

    def keep_as_it_is(self, _folder: Path, _name: Callable[[int], str]) -> Path:
        """What cannot be read as a bar cannot be kept from here. Raises `CannotWrite`."""
        raise CannotWrite(
            self.name, tr("what is there cannot be read as a bar; keep it by pg_dump first")
        )

    def put_in_place(self, ready: Path) -> None:
        """Make the bar hold what a file holds, all of it or nothing; others see it at once."""
        self.write_over(ready, lambda: None)

    def write_over(self, ready: Path, keep: Callable[[], T]) -> T:
        """The same, once `keep` has kept what is there and nobody else can write; what it gives."""
        source = file_engine(ready)
        try:
            with source.connect() as filled, self._changing() as connection:
                kept = keep()
                found = server_tables.look(connection, self.at.schema)
                if found.header is None:
                    self._begin(connection, make_schema=not found.is_there)
                server_tables.empty(connection)
                copy_rows(filled, connection)
                server_tables.number_on(connection)
                return kept
        finally:
            source.dispose()

    # Inside

    def _made_ready(self, engine: Engine, new: bool | None, empty_too: bool) -> bool:
        with engine.connect() as connection:
            found = server_tables.look(connection, self.at.schema)
        self._refuse(found, new, empty_too)
        is_new = found.header is None
        if found.header is None or found.header.schema < schema_number():
            found, is_new = self._begun_or_upgraded(new, empty_too)
        lacking = tuple(server_tables.missing(found))
        if lacking:
            raise damaged_bar(self.name, lacking)
        self.is_read_only = not found.may_be_written
        return is_new

    def _begun_or_upgraded(
        self, new: bool | None, empty_too: bool
    ) -> tuple[server_tables.Found, bool]:
        """What is there once it was begun or upgraded, by this or by another; whether begun here.

        Looked at again under the bar's lock: of several that open it one does it, and the
        others wait and find it done.
        """
        engine = make_engine(self.at, self._busy_ms * OPENING_WAITS)
        try:
            with to_write(engine.connect()) as connection, connection.begin():
                found = server_tables.look(connection, self.at.schema)
                self._refuse(found, new, empty_too)
                is_new = found.header is None
                if found.header is None:
                    self._begin(connection, make_schema=not found.is_there)
                elif found.header.schema < schema_number():
                    server_tables.upgrade(connection, found.header.schema)
                return server_tables.look(connection, self.at.schema), is_new
        finally:
            engine.dispose()

    def _refuse(self, found: server_tables.Found, new: bool | None, empty_too: bool) -> None:
        """Raise for what cannot be opened, or begun."""
        schema = self.at.schema
        if found.is_there and not found.may_be_read:
            reason = tr(
                "{user} may not look into its schema “{schema}”",
                user=named_user(self.at),
                schema=schema,
            )
            raise UnreadableFile(self.name, reason)
        if found.header is None:
            if found.is_there and new is not True and not empty_too:
                raise NoBarThere(
                    self.name, tr("the schema “{schema}” in that database is empty", schema=schema)
                )
            if new is False:
                raise NoBarThere(
                    self.name, tr("there is no schema “{schema}” in that database", schema=schema)
                )
            return
        if found.is_foreign:
            reason = tr("its schema “{schema}” holds the tables of another program", schema=schema)
            raise UnreadableFile(self.name, reason)
        refuse_unknown(self.name, found.header)
        if new:
            raise CannotWrite(self.name, tr("there is a bar in it already"))
        if found.header.schema < schema_number() and not found.may_be_written:
            reason = tr("it is of an older barkeep, and may only be looked at")
            raise UnreadableFile(self.name, reason)

    def _begin(self, connection: Connection, *, make_schema: bool) -> None:
        schema, user = self.at.schema, named_user(self.at)
        try:
            server_tables.begin(connection, schema if make_schema else None)
        except DBAPIError as error:
            if code_of(error) not in FORBIDDEN:
                raise
            may_not = (
                tr("{user} may not make the schema “{schema}”; ", user=user, schema=schema)
                if make_schema
                else tr("{user} may not write into “{schema}”; ", user=user, schema=schema)
            )
            can = tr("who looks after the server can make one for that user: ")
            made_so = f'CREATE SCHEMA "{schema}" AUTHORIZATION "{self.at.user or "…"}"'
            raise CannotWrite(self.name, f"{may_not}{can}{made_so}") from None

    @contextmanager
    def _changing(self) -> Iterator[Connection]:
        """One change, which is counted."""
        with (
            self._told(),
            self._used() as engine,
            to_write(engine.connect()) as connection,
            connection.begin() as change,
        ):
            yield connection
            there, number = server_tables.count_this_change(connection)
            if there != schema_number():  # another barkeep has upgraded it since it was opened
                raise NewerBar(self.name, there, schema_number())
            self._commit(engine, change, number)

    def _commit(self, engine: Engine, change: RootTransaction, number: int) -> None:
        """Commit; where the connection breaks just then, find out whether that was done."""
        try:
            change.commit()
        except DBAPIError as error:
            if not is_lost(error):
                raise
            became = _what_became_of(engine, number)
            if became == "committed":
                return
            if became == "aborted":
                raise ConnectionLost(self.name) from None
            self._own -= _ASIDE  # it may be counted or not: whatever the version was, it is another
            raise WrittenOrNot(self.name) from None

    def _fill(self, file: Path) -> None:
        """Write all that is in the bar into a new file."""
        target = file_engine(file)
        try:
            to_fill = target.connect().execution_options(writing=True)
            with self.reading() as source, to_fill as connection, connection.begin():
                create(connection)
                copy_rows(source, connection)
        finally:
            target.dispose()

    @contextmanager
    def _used(self) -> Iterator[Engine]:
        """The engine; one for just now where the bar is not open."""
        if self._engine is not None:
            yield self._engine
            return
        engine = make_engine(self.at, self._busy_ms)
        try:
            yield engine
        finally:
            engine.dispose()

    @contextmanager
    def _told(self) -> Iterator[None]:
        """What goes wrong with the server, or comes of what stands in the bar, in a sentence."""
        with damage_spoken(self.name, self._faults_now), spoken_errors(self.at):
            yield

    def _faults_now(self) -> tuple[Fault, ...]:
        """What stands wrongly in a bar that could be opened; nothing where it cannot be told."""
        with suppress(UserError):
            return self.faults()
        return ()


def _what_became_of(engine: Engine, number: int) -> str | None:
    """*committed* or *aborted*; None where nobody can say in time."""
    give_up = time.monotonic() + _ASKED_FOR_S
    while time.monotonic() < give_up:
        with suppress(DBAPIError), engine.connect() as connection:
            said = connection.exec_driver_sql("SELECT txid_status(%s)", (number,)).scalar()
            if said != "in progress":
                return said
        time.sleep(_ASKED_EVERY_S)
    return None
