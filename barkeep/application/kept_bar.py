"""A bar from what was kept of it, where its file says just what it said when that was kept.

Most commands only ask, and most ask a bar that nobody has changed since it was
last read. What was read of it is kept in a quick form under the digest of its
whole file, so that it can never be that of another state of the bar; the file
is opened, checked and read by whoever first needs more than what was read, and
to open it loads more than most commands do.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any, cast

from barkeep.application import quick_form
from barkeep.application.paths import cache_folder
from barkeep.application.session import AS_KNOWN, AllRead, Session
from barkeep.store.address import Location, ServerAddress
from barkeep.store.content import digest_of_file

if TYPE_CHECKING:
    from barkeep.application.done import Step
    from barkeep.store.steps import Way
    from barkeep.store.store import Store
    from barkeep.store.unit_of_work import UnitOfWork

MOST_KEPT = 8
"""What was read of so many bars is kept, the latest."""


def known_already(
    location: Location, clock: Callable[[], datetime]
) -> tuple[Store, AllRead] | None:
    """The store of a bar, not opened yet, and what is known of it; None where nothing is."""
    path = local_file(location)
    digest = None if path is None else digest_of_file(path)
    if path is None or digest is None:
        return None
    known = quick_form.found(AllRead, _form(digest), digest)
    if known is None:
        return None
    steps: dict[Way, Step | None] = {"undo": known.undo, "redo": known.redo}
    return cast("Store", StoreWhenNeeded(path, digest, clock, steps)), known


def is_kept(location: Location) -> bool:
    """Whether something is kept of a bar as it is now: most likely its store is not needed yet."""
    path = local_file(location)
    digest = None if path is None else digest_of_file(path)
    return digest is not None and _form(digest).exists()


def is_opened(store: Store) -> bool:
    """Whether the file of a bar is open, and not only what was kept of it known."""
    return not isinstance(store, StoreWhenNeeded) or store.is_opened


def digest_of(session: Session) -> str | None:
    """The digest of the file all of which is known; None of one that nothing is to be kept of."""
    store = session.store
    if isinstance(store, StoreWhenNeeded) and not store.is_opened:
        return store.as_known
    return session.digest_as_read()


def keep(session: Session) -> None:
    """Keep what was just read of a bar, unless another program has written to it meanwhile."""
    digest, store = session.digest_as_read(), session.store
    is_known = isinstance(store, StoreWhenNeeded) and store.as_known == digest
    if digest is not None and not is_known:
        quick_form.keep(session.all_read(), _form(digest), digest)
        forget_the_oldest(_folder(), MOST_KEPT)


class StoreWhenNeeded:
    """The store of a bar that was read before: opened by the first who asks more than this of it.

    `digest` is that of its file when it was looked at. Where the file is another by the time it
    is opened, another program has written to it: its data version says so.
    """

    def __init__(
        self,
        path: Path,
        digest: str,
        clock: Callable[[], datetime],
        steps: Mapping[Way, Step | None],
    ) -> None:
        self.at = path
        self.is_new = self.is_read_only = False
        self.as_known = digest
        """The digest of the file as it was looked at."""
        self._version_as_known: int | None = None
        self._clock = clock
        self._steps = steps

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):  # its own, and not there: opening it for that would never end
            raise AttributeError(name)
        return getattr(self._store, name)

    @property
    def is_opened(self) -> bool:
        """Whether the file is open."""
        return "_store" in self.__dict__

    def next_action(self, way: Way) -> Step | None:
        """What undo or redo would act on."""
        return self._store.next_action(way) if self.is_opened else self._steps[way]

    def data_version(self, within: UnitOfWork | None = None) -> int:
        """A number that changes when another program has written to the file."""
        version = self._store.data_version(within)
        return AS_KNOWN if version == self._version_as_known else version

    def close(self) -> None:
        """Let go of the file, where it was opened."""
        if self.is_opened:
            self._store.close()

    @property
    def path(self) -> Path:
        """The file."""
        return self.at

    @property
    def name(self) -> str:
        """How sentences call it."""
        return str(self.at)

    @cached_property
    def _store(self) -> Store:
        from barkeep.store.store import Store

        store = Store.open(self.at, self._clock, new=False)
        version = store.data_version()
        if store.digest() == self.as_known:
            self._version_as_known = version
        return store


def local_file(location: Location) -> Path | None:
    """The file of a plain path; an address is for who opens it to read."""
    if isinstance(location, ServerAddress) or (isinstance(location, str) and "://" in location):
        return None
    return Path(location).expanduser().absolute()


def _folder() -> Path:
    return cache_folder() / "bars"


def _form(digest: str) -> Path:
    return _folder() / digest


def forget_the_oldest(folder: Path, most: int) -> None:
    """Keep so many of the forms in a folder, the latest."""
    try:
        forms = [each for each in folder.iterdir() if each.name[:1] != "."]
        forms.sort(key=lambda each: each.stat().st_mtime_ns)
        for each in forms[:-most]:
            each.unlink()
    except OSError:
        return  # another program forgets them just now
