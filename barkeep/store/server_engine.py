"""The connection to a PostgreSQL server, and what is said when it fails."""

from __future__ import annotations

import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from sqlalchemy import URL, Connection, Engine, create_engine, event
from sqlalchemy.exc import DBAPIError, OperationalError

from barkeep.errors import UnreadableFile
from barkeep.store.address import ServerAddress
from barkeep.store.connection import APPLICATION_ID
from barkeep.store.refusals import (
    BarIsBusy,
    CannotWrite,
    ConnectionLost,
    NoServer,
    ReadOnlyBar,
)
from barkeep.translation import tr, tr_noop

CONNECT_S = 4
"""How long a server has to answer at all."""

_IDLE_MS = 60_000
"""A change in which nobody has said anything for so long is taken back: whoever began it is gone,
and others wait for it."""

NOT_INSTALLED = tr_noop(
    "the library for PostgreSQL is not here; install it by: pip install 'barkeep[team]'"
)

_HOW_TO_GIVE = tr_noop("give it as PGPASSWORD, in the file ~/.pgpass or in the address")

FORBIDDEN = {"42501", "3F000"}
"""Not allowed; no schema to write into, which is said where it may not be looked into."""
_BUSY = {"55P03", "40001", "40P01", "57014"}
"""Locked, or in each other's way."""
_LOST = {"57P01", "57P02", "57P03", "57P05", "25P03"}
"""Shut down, crashed, starting, left idle."""
_FULL = {
    "53100": tr_noop("the server's disk is full"),
    "53200": tr_noop("the server is out of memory"),
}
_NOT_A_BAR = {"42P01", "42703", "3F000"}
"""No such table, column or schema."""


def make_engine(address: ServerAddress, busy_ms: int) -> Engine:
    """An engine whose connections see one schema alone, and one state of it while they read.

    Run with the execution option `writing` a transaction begins by waiting for the bar's lock,
    for `busy_ms` at most: so writers come one after the other, as in a file, and the numbers
    of rows are in the order in which they were committed. Raises `UnreadableFile` where the
    library is missing.
    """
    url = URL.create(
        "postgresql+psycopg",
        username=address.user or None,
        password=address.password or None,
        host=address.host or None,
        port=address.port,
        database=address.database,
    )
    given = {"connect_timeout": str(CONNECT_S), "application_name": "barkeep"}
    try:
        engine = create_engine(
            url,
            isolation_level="REPEATABLE READ",
            use_native_hstore=False,  # no bar has such, and it would be asked for each time
            pool_pre_ping=True,  # a server that was started anew is met again by itself
            connect_args=given | dict(address.options),
        )
    except ImportError as error:
        raise UnreadableFile(address.name, NOT_INSTALLED) from error
    event.listen(engine, "connect", _preparing(address.schema, busy_ms))
    event.listen(engine, "begin", _locking(address.schema))
    return engine


def to_write(connection: Connection) -> Connection:
    """The connection, to be begun for writing: every statement sees what was committed before it.

    One state for all of them would be that of before the lock was waited for.
    """
    return connection.execution_options(writing=True, isolation_level="READ COMMITTED")


def _lock(connection: Connection, schema: str) -> None:
    """Wait for the bar's lock, which is held to the end of the transaction."""
    key = zlib.crc32(schema.encode()) - 2**31
    connection.exec_driver_sql("SELECT pg_advisory_xact_lock(%s, %s)", (APPLICATION_ID, key))


def _preparing(schema: str, busy_ms: int) -> Any:
    quoted = '"' + schema.replace('"', '""') + '"'
    wanted = {
        "search_path": quoted,
        "lock_timeout": str(busy_ms),
        "idle_in_transaction_session_timeout": str(_IDLE_MS),
        "client_min_messages": "warning",
    }
    said = ", ".join(["set_config(%s, %s, false)"] * len(wanted))
    values = [word for pair in wanted.items() for word in pair]

    def prepare(connection: Any, _record: object) -> None:
        try:
            connection.execute(f"SELECT {said}", values)
            connection.commit()  # else the first rollback would take this back as well
        except Exception as error:  # nobody else closes what has hardly been opened
            connection.close()
            raise OperationalError(None, None, error) from error

    return prepare


def _locking(schema: str) -> Any:
    def begin(connection: Connection) -> None:
        if connection.get_execution_options().get("writing", False):
            _lock(connection, schema)

    return begin


def is_lost(error: DBAPIError) -> bool:
    """Whether a connection that there was is gone, or none could be had."""
    code = code_of(error)
    return code in _LOST or code.startswith("08") or (not code and _is_of_connection(error))


@contextmanager
def spoken_errors(address: ServerAddress) -> Iterator[None]:
    """Turn what the server and its library say into an error with a sentence.

    Anything that is not about the server (a broken constraint, wrong SQL) is a fault of the
    program and passes through.
    """
    try:
        yield
    except DBAPIError as error:
        raise_spoken(address, error)
        raise


def raise_spoken(address: ServerAddress, error: DBAPIError) -> None:
    """Raise what is said of an error, where it is about the server."""
    name, code = address.name, code_of(error)
    if code in _BUSY:
        raise BarIsBusy(name) from None
    if code == "25006":
        raise ReadOnlyBar(name, tr("the server takes no changes")) from None
    if code == "42501":
        raise CannotWrite(
            name, tr("{user} may not do that in it", user=named_user(address))
        ) from None
    if code in _FULL:
        raise CannotWrite(name, _FULL[code]) from None
    if code in _NOT_A_BAR:
        reason = tr(
            "the tables of a bar are not in its schema “{schema}” any more", schema=address.schema
        )
        raise UnreadableFile(name, reason) from None
    if code.startswith("22") or (not code and type(error.orig).__name__ == "DataError"):
        reason = tr("PostgreSQL cannot keep what is in it ({said})", said=_said(address, error))
        raise CannotWrite(name, reason) from None
    if is_lost(error):
        if _was_connected(error):
            raise ConnectionLost(name) from None
        raise NoServer(name, _why_not_connected(address, error)) from None
    if not code and type(error.orig).__name__ == "ProgrammingError":
        reason = tr("the address is not understood ({said})", said=_said(address, error))
        raise UnreadableFile(name, reason) from None


def code_of(error: DBAPIError) -> str:
    """What SQL's standard calls the error; empty for one that did not come from the server."""
    return str(getattr(error.orig, "sqlstate", None) or "")


def _is_of_connection(error: DBAPIError) -> bool:
    return type(error.orig).__name__ in ("OperationalError", "ConnectionTimeout", "InterfaceError")


def _was_connected(error: DBAPIError) -> bool:
    return error.statement is not None or error.connection_invalidated


def _why_not_connected(address: ServerAddress, error: DBAPIError) -> str:
    """Why there is no connection. What the server says may be in its own language."""
    said, user = _said(address, error), named_user(address)
    asked = getattr(error.orig, "pgconn", None)
    if asked is not None and asked.needs_password:
        return tr("the server wants a password of {user}; {how}", user=user, how=tr(_HOW_TO_GIVE))
    if "password authentication failed" in said:
        return tr(
            "the server does not take the password of {user}; {how}",
            user=user,
            how=tr(_HOW_TO_GIVE),
        )
    if f'database "{address.database}" does not exist' in said:
        return tr("there is no database “{database}” on that server", database=address.database)
    if "FATAL" in str(error.orig):
        return tr("the server says “{said}”", said=said)
    return tr("no connection to the server can be made ({said})", said=said)


def named_user(address: ServerAddress) -> str:
    """Who is to be let in, as part of a sentence."""
    return tr("the user “{user}”", user=address.user) if address.user else tr("this user")


def _said(address: ServerAddress, error: DBAPIError) -> str:
    """What the server or its library says, in a few words; never the password."""
    lines = [each.strip() for each in str(error.orig).splitlines() if each.strip()]
    told = (
        [each for each in lines if " failed: " in each] or lines[:1] or [tr("it does not answer")]
    )
    for before in (" failed: ", "connection is bad: ", "FATAL:"):
        told[-1] = told[-1].rpartition(before)[2].strip()
    said = told[-1].rstrip(".")
    return said.replace(address.password, "…") if address.password else said
