"""What a bar is named by, read: a path, an `sqlite:///` URL or the address of a server."""

from __future__ import annotations

from pathlib import Path

from barkeep.errors import UnreadableFile
from barkeep.store.address import (
    NEITHER,
    At,
    Location,
    ServerAddress,
    is_on_a_server,
    read_address,
    without_password,
)
from barkeep.translation import tr


def read_location(location: Location) -> At:
    """The file or the address that is named. Raises `UnreadableFile`."""
    if isinstance(location, ServerAddress):
        return location
    if isinstance(location, str) and is_on_a_server(location):
        return read_address(location)
    return local_path(location)


def local_path(location: str | Path) -> Path:
    """The file that a path or an `sqlite:///` URL names. Raises `UnreadableFile`."""
    if isinstance(location, Path) or "://" not in location:
        return Path(location).expanduser().absolute()
    from sqlalchemy.engine import make_url  # loads slowly, and a path needs none of it
    from sqlalchemy.exc import ArgumentError

    try:
        url = make_url(location)
    except (ArgumentError, ValueError):  # a port that is no number is the latter
        raise UnreadableFile(without_password(location), NEITHER) from None
    shown = url.render_as_string(hide_password=True)
    if url.get_backend_name() != "sqlite":
        raise UnreadableFile(shown, tr("only a SQLite file or a PostgreSQL server can hold a bar"))
    if url.host or url.query:
        raise UnreadableFile(shown, tr("write it as sqlite:/// and the path, with nothing more"))
    if not url.database:
        raise UnreadableFile(shown, tr("it names no file"))
    return Path(url.database).expanduser().absolute()
