"""What a bar in a file holds, looked at without opening it as the bar."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, func, select

from barkeep.errors import UnreadableFile
from barkeep.store.connection import (
    BUSY_MS,
    header_of,
    open_file,
    refuse_what_is_no_file,
    spoken_errors,
)
from barkeep.store.migrations import refuse_unknown
from barkeep.store.schema import METADATA, action
from barkeep.translation import tr

_COUNTED = ("bottle", "product", "spec", "shoot")


@dataclass(frozen=True, slots=True)
class Holdings:
    """How much a bar holds, hidden things left out, and its last change: when, and its name.

    A bar that nothing has happened in yet was never changed.
    """

    bottles: int
    products: int
    specs: int
    shoots: int
    changed: datetime | None
    last: str


def holdings_of(path: Path) -> Holdings:
    """What the bar in a file holds, of whatever schema it is.

    Raises `UnreadableFile`, `NewerBar` or `BarIsBusy`.
    """
    refuse_what_is_no_file(path)
    if not path.exists():
        raise UnreadableFile(str(path), tr("there is no such file"))
    with spoken_errors(path), closing(open_file(path, BUSY_MS)) as file:
        file.execute("BEGIN")
        refuse_unknown(path, header_of(file))
        try:
            return _read(file)
        except (sqlite3.OperationalError, TypeError, ValueError) as error:
            if getattr(error, "sqlite_errorcode", 0) not in (0, sqlite3.SQLITE_ERROR):
                raise  # what SQLite says of the file, not of a table that lacks something
            raise UnreadableFile(str(path), tr("it is damaged")) from error


def read_holdings(connection: Connection) -> Holdings:
    """What a bar of the newest schema holds, wherever it lies."""
    bottles, products, specs, shoots = (
        int(
            connection.execute(
                select(func.count()).where(~METADATA.tables[name].c.hidden)
            ).scalar_one()
        )
        for name in _COUNTED
    )
    done = select(action.c.at, action.c.label).where(action.c.state != "undone")
    newest = connection.execute(done.order_by(action.c.id.desc()).limit(1)).first()
    changed, last = newest or (None, "")
    return Holdings(
        bottles=bottles,
        products=products,
        specs=specs,
        shoots=shoots,
        changed=changed,
        last=last,
    )


def _read(file: sqlite3.Connection) -> Holdings:
    there = {row[0] for row in file.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    bottles, products, specs, shoots = (
        int(file.execute(f"SELECT count(*) FROM {name} WHERE NOT hidden").fetchone()[0])
        if name in there
        else 0
        for name in _COUNTED
    )
    done = "SELECT at, label FROM action WHERE state <> 'undone' ORDER BY id DESC LIMIT 1"
    at, last = file.execute(done).fetchone() or (None, "")
    return Holdings(
        bottles=bottles,
        products=products,
        specs=specs,
        shoots=shoots,
        changed=None if at is None else datetime.fromisoformat(at),
        last=str(last),
    )
