"""Where a bar lies, and all that differs by that: in a file, or on a server."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from pathlib import Path
from typing import Literal, Protocol

from sqlalchemy import Connection

from barkeep.store.address import At, Location, ServerAddress
from barkeep.store.checking import Looked
from barkeep.store.connection import BUSY_MS
from barkeep.store.faults import Fault
from barkeep.store.file_place import FilePlace
from barkeep.store.holdings import Holdings
from barkeep.store.location import read_location
from barkeep.store.refusals import NotInAFile
from barkeep.store.server_place import ServerPlace
from barkeep.store.steps import Beneath


class Place(Protocol):
    """What is asked of the place of a bar; `FilePlace` says what each does."""

    kind: Literal["file", "database"]
    is_read_only: bool

    @property
    def at(self) -> At: ...
    @property
    def name(self) -> str: ...
    @property
    def beneath(self) -> Beneath: ...

    def open(self, *, new: bool | None, empty_too: bool) -> bool: ...
    def close(self) -> None: ...
    def open_again(self) -> None: ...
    def not_waiting(self) -> AbstractContextManager[None]: ...
    def reading(self) -> AbstractContextManager[Connection]: ...
    def writing(self) -> AbstractContextManager[Connection]: ...
    def data_version(self, within: Connection | None = None) -> int: ...
    def digest(self) -> str | None: ...
    def fits_its_seal(self) -> bool: ...
    def faults(self) -> tuple[Fault, ...]: ...

    def write_copy(self, target: Path) -> None: ...
    def looked_over(self) -> Looked: ...
    def is_there(self) -> bool: ...
    def may_be_written(self) -> bool: ...
    def holdings(self) -> Holdings: ...
    def copy_into(self, folder: Path, name: Callable[[int], str]) -> Path: ...
    def keep_as_it_is(self, folder: Path, name: Callable[[int], str]) -> Path: ...
    def put_in_place(self, ready: Path) -> None: ...


def place_of(location: Location, busy_ms: int = BUSY_MS) -> Place:
    """The place that is named, not looked at yet. Raises `UnreadableFile`."""
    at = read_location(location)
    if isinstance(at, ServerAddress):
        return ServerPlace(at, busy_ms)
    return FilePlace(at, busy_ms)


def in_a_file(at: At) -> Path:
    """The file that a bar is in. Raises `NotInAFile` for one on a server."""
    if isinstance(at, ServerAddress):
        raise NotInAFile(at.name)
    return at
