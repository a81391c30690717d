"""A bar from what was kept of it, where its file says just what it said when that was kept.

Most commands only ask, and most ask a bar that nobody has changed since it was
last read. What was read of it is kept in a quick form under the digest of its
whole file, so that it can never be that of another state of the bar; the file
is opened, checked and read by whoever first needs more than what was read, and
to open it loads more than most commands do.
"""

from __future__ import annotations

from collections.abc import Callable
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
    from barkeep.store.store import Store

MOST_KEPT = 8
"""What was read of so many bars is kept, the latest."""


def known_already(
    location: Location, clock: Callable[[], datetime]
) -> tuple[Store, AllRead] | None:
    """The store of a bar, not opened yet, and what is known of it; None where nothing is."""
    path = _local_file(location)
    digest = None if path is None else digest_of_file(path)
    if path is None or digest is None:
        return None
    known = quick_form.found(AllRead, _form(digest), digest)
    return None if known is None else (cast("Store", StoreWhenNeeded(path, digest, clock)), known)


def keep(session: Session) -> None:
    """Keep what was just read of a bar, unless another program has written to it meanwhile."""
    digest = session.digest_as_read()
    if digest is not None:
        quick_form.keep(session.all_read(), _form(digest), digest)
        _forget_the_oldest()


class StoreWhenNeeded:
    """The store of a bar that was read before: opened by the first who asks more than this of it.

    `digest` is that of its file when it was looked at. Where the file is another by the time it
    is opened, another program has written to it: its data version says so.
    """

    def __init__(self, path: Path, digest: str, clock: Callable[[], datetime]) -> None:
        self.at = path
        self.is_new = self.is_read_only = False
        self._version_as_known: int | None = None
        self._digest = digest
        self._clock = clock

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):  # its own, and not there: opening it for that would never end
            raise AttributeError(name)
        return getattr(self._store, name)

    def data_version(self) -> int:
        """A number that changes when another program has written to the file."""
        version = self._store.data_version()
        return AS_KNOWN if version == self._version_as_known else version

    def close(self) -> None:
        """Let go of the file, where it was opened."""
        if "_store" in self.__dict__:
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
        if store.digest() == self._digest:
            self._version_as_known = version
        return store


def _local_file(location: Location) -> Path | None:
    """The file of a plain path; an address is for who opens it to read."""
    if isinstance(location, ServerAddress) or (isinstance(location, str) and "://" in location):
        return None
    return Path(location).expanduser().absolute()


def _form(digest: str) -> Path:
    return cache_folder() / "bars" / digest


def _forget_the_oldest() -> None:
    try:
        forms = [each for each in (cache_folder() / "bars").iterdir() if each.name[:1] != "."]
        forms.sort(key=lambda each: each.stat().st_mtime_ns)
        for each in forms[:-MOST_KEPT]:
            each.unlink()
    except OSError:
        return  # another program forgets them just now
