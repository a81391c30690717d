"""Backups of a bar: made when asked for, listed, and one of them put in the bar's place."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path

from barkeep.application.kept_backups import (
    Comparison,
    KeptBackup,
    Restored,
    back_up,
    backups_of,
    prepared,
    replace_bar,
)
from barkeep.application.knowledge import shipped
from barkeep.application.session import Session, UseCases
from barkeep.documents.bytes_read import decoded
from barkeep.documents.everything import everything_json, is_everything, parts_of, read_everything
from barkeep.domain.phrases import begun_small
from barkeep.errors import KnowledgeError, NewerBar, UnreadableFile
from barkeep.store.address import At
from barkeep.store.backup import copy_bar
from barkeep.store.everything import fill_with
from barkeep.store.everything import read_everything as read_all
from barkeep.store.store import Store
from barkeep.translation import tr

_LOOKED_AT = 1000
"""Bytes of a file that tell what it is."""

Clock = Callable[[], datetime]


class Backups(UseCases):
    """The use cases of `bar.backups`."""

    @property
    def folder(self) -> Path:
        """Where they are kept; it need not be there yet."""
        return self._session.backup_folder

    def listed(self) -> tuple[KeptBackup, ...]:
        """Every backup of the bar, the newest first."""
        return backups_of(self._session.store.at)

    def make(self) -> Path:
        """Keep a backup now; its file. Raises `CannotWrite`, `UnreadableFile` or `BarIsBusy`."""
        return back_up(self._session.store.at, self.folder, "asked for", self._session.clock())

    def everything(self) -> str:
        """The whole bar as one JSON document, which a restore or an import takes back.

        Left out is what undo remembers. Raises `UnreadableFile` for what no document can hold.
        """
        with self._session.store.reading() as connection:
            parts = read_all(connection)
        return everything_json(parts, self._session.store.name)


def compare(bar: At, file: Path, clock: Clock = datetime.now) -> Comparison:
    """A bar, whatever its state, beside what a file would put in its place.

    As `restore`, it may be asked on any thread; an open bar learns of that by `refresh`.
    Raises `UnreadableFile` for a file that is no sound bar, and `NewerBar`.
    """
    with prepared(bar, file, _filling(clock)) as (_ready, comparison):
        return comparison


def restore(bar: At, file: Path, folder: Path, clock: Clock = datetime.now) -> Restored:
    """Put what a file holds in the place of a bar, which may be damaged or gone.

    What it replaces is kept in `folder` first. Raises as `compare` does, and
    `CannotWrite` or `BarIsBusy`; the bar is then as it was.
    """
    with prepared(bar, file, _filling(clock)) as (ready, comparison):
        return Restored(comparison, replace_bar(bar, ready, folder, clock()))


def _filling(clock: Clock) -> Callable[[Path, Path], None]:
    return lambda file, ready: _fill(file, ready, clock)


def _fill(file: Path, ready: Path, clock: Clock) -> None:
    """Make the bar of a file, brought to the newest schema, and see that it can be opened."""
    if file.stat().st_size == 0:
        raise UnreadableFile(str(file), tr("it is empty"))
    text = _document_in(file)
    if text is None:
        copy_bar(file, ready)
    with _said_of(file, ready):
        store = Store.open(ready, clock)
        try:
            if text is not None:
                parts = parts_of(read_everything(text, str(file)))
                with store.unit_of_work("Import everything") as work:
                    fill_with(work, parts)
            Session(store, shipped(), clock)
        finally:
            store.close()


def _document_in(file: Path) -> str | None:
    """The text of a whole bar's document, None for a file that is none."""
    try:
        with file.open("rb") as opened:
            if not is_everything(opened.read(_LOOKED_AT).decode("utf-8", "replace")):
                return None
        return decoded(file.read_bytes(), str(file)).text
    except OSError as error:
        raise UnreadableFile(
            str(file), begun_small(error.strerror or tr("it cannot be read"))
        ) from error


@contextmanager
def _said_of(file: Path, ready: Path) -> Iterator[None]:
    """Name the file that was given in place of the one that was made of it."""
    try:
        yield
    except NewerBar as error:
        raise NewerBar(str(file), error.found, error.known) from error
    except UnreadableFile as error:
        if error.file != str(ready):
            raise
        raise UnreadableFile(str(file), error.reason) from error
    except KnowledgeError as error:
        raise UnreadableFile(
            str(file), tr("what it says of ingredients: {error}", error=error)
        ) from error
