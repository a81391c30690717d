"""One open bar: read it, change it all or nothing, undo, check."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from datetime import datetime
from pathlib import Path
from typing import Self

from sqlalchemy import Connection

from barkeep.collector import collector_paused
from barkeep.store import history
from barkeep.store.address import At, Location
from barkeep.store.connection import BUSY_MS
from barkeep.store.faults import Fault
from barkeep.store.place import Place, in_a_file, place_of
from barkeep.store.refusals import ReadOnlyBar
from barkeep.store.steps import Action, Beneath, Stamp, Way
from barkeep.store.unit_of_work import Touched, UnitOfWork

Clock = Callable[[], datetime]


class Store:
    """A bar, open until `close`; `is_new` where opening it began it. For use from one thread."""

    def __init__(self, place: Place, clock: Clock, *, is_new: bool = False) -> None:
        self.place = place
        self.is_new = is_new
        self._clock = clock

    @classmethod
    def open(
        cls,
        location: Location,
        clock: Clock = datetime.now,
        busy_ms: int = BUSY_MS,
        *,
        new: bool | None = None,
        empty_too: bool = False,
    ) -> Self:
        """Open a bar, upgrade an older one, or make a new one where there is none.

        None is ever made where `new` is False; one must be made where it is True;
        with `empty_too` one may be made in an empty file as well.
        Raises `NoBarThere`, `UnreadableFile`, `NewerBar`, `CannotWrite`,
        `BarIsHeld` or `NoServer`; what lies there is left as it is.
        """
        place = place_of(location, busy_ms)
        is_new = place.open(new=new, empty_too=empty_too)
        return cls(place, clock, is_new=is_new)

    def close(self) -> None:
        """Let go of the bar."""
        self.place.close()

    @property
    def path(self) -> Path:
        """The file that the bar is in. Raises `NotInAFile`."""
        return in_a_file(self.place.at)

    @property
    def at(self) -> At:
        """Where it is."""
        return self.place.at

    @property
    def name(self) -> str:
        """How sentences call the bar: its file, or its address without the password."""
        return self.place.name

    @property
    def is_read_only(self) -> bool:
        """Whether it is open to be looked at."""
        return self.place.is_read_only

    def open_again(self) -> None:
        """Let go of what was opened, and open what lies in its place by now.

        Raises as `open` does; what was opened then stays so.
        """
        self.place.open_again()

    @property
    def beneath(self) -> Beneath:
        """What lies in the place of what was opened."""
        return self.place.beneath

    def write_copy(self, target: Path) -> None:
        """Copy the bar that was opened to a new file, even where it is no longer in its place.

        Raises `CannotWrite` where the target exists or its folder cannot take it.
        """
        self.place.write_copy(target)

    def not_waiting(self) -> AbstractContextManager[None]:
        """Within this a bar that another program holds is refused at once."""
        return self.place.not_waiting()

    def refuse_read_only(self) -> None:
        """Raise `ReadOnlyBar` where nothing can be written."""
        if self.is_read_only:
            raise ReadOnlyBar(self.name)

    def reading(self) -> AbstractContextManager[Connection]:
        """A connection within one transaction, so that all that is read fits together."""
        return self.place.reading()

    @contextmanager
    def unit_of_work(self, label: str) -> Iterator[UnitOfWork]:
        """Change the bar: committed at the end, or not at all where anything is raised."""
        with self._writing() as connection, collector_paused():
            work = UnitOfWork(connection, label, self._clock())
            yield work
            work.finish()

    def undo_or_redo(self, way: Way, named: Action | None = None) -> tuple[Action, Touched]:
        """Take the newest action back, or do the one last taken back again.

        Only the one that is `named`, where one is. Raises `NothingToUndo`,
        `AnotherStep` or `CannotUndo`.
        """
        with self._writing() as connection:
            return history.step(connection, way, self._clock(), named)

    def next_action(self, way: Way) -> Action | None:
        """What undo or redo would act on."""
        with self.reading() as connection:
            return history.next_action(connection, way)

    def newest_action(self) -> Stamp | None:
        """The action written last, whatever became of it; None where there is none."""
        with self.reading() as connection:
            return history.newest(connection)

    def still_holds(self, written: Stamp) -> bool:
        """Whether an action that was read before is in the file."""
        with self.reading() as connection:
            return history.at(connection, written.id) == written

    def data_version(self, within: UnitOfWork | None = None) -> int:
        """A number that changes when another program has written to the bar.

        Asked `within` a change, which nobody can come between.
        """
        return self.place.data_version(within.connection if within else None)

    def digest(self) -> str | None:
        """A short number for all that is in the bar now; None where none is to be had."""
        return self.place.digest()

    def fits_its_seal(self) -> bool:
        """Whether every row is as barkeep wrote it."""
        return self.place.fits_its_seal()

    def faults(self) -> tuple[Fault, ...]:
        """What is wrong with the bar and what stands in it; nothing in a sound one."""
        return self.place.faults()

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        self.refuse_read_only()
        with self.place.writing() as connection:
            yield connection
