"""One open bar, as the desktop and the command line see it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import suppress
from datetime import datetime
from functools import cached_property
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from barkeep.application import kept_bar
from barkeep.application.done import Done, Step
from barkeep.application.knowledge import shipped
from barkeep.application.own_backups import OwnBackups
from barkeep.application.paths import default_bar, file_of
from barkeep.application.session import Followed, Session, Subscriber
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.errors import InvalidField, UserError
from barkeep.store.address import At, Location
from barkeep.store.refusals import NoBarThere
from barkeep.translation import tr

if TYPE_CHECKING:  # each room, and the store, is loaded by whoever enters it first
    from barkeep.application.backups import Backups
    from barkeep.application.bottles import Inventory
    from barkeep.application.counting import Counting
    from barkeep.application.kept_verdicts import KeptVerdicts
    from barkeep.application.making import HouseMaking
    from barkeep.application.owner_knowledge import OwnerKnowledge
    from barkeep.application.paying import Paying
    from barkeep.application.pouring import Pouring
    from barkeep.application.removed import RemovedThings
    from barkeep.application.settings import BarSettings
    from barkeep.application.shoots import Shoots
    from barkeep.application.shopping import Shopping
    from barkeep.application.specs import Specs, Trials
    from barkeep.application.taking_in import Imports
    from barkeep.domain.buying.on_paper import OnPaper
    from barkeep.store.steps import Stamp, Way


def usual_bar() -> Path:
    """The file of the bar in the data folder, which the very first start begins.

    Also in an empty file, as a first start that was killed leaves it. Raises `NoBarThere`
    where other bars are in that folder, or backups of this one, and it is gone or empty.
    """
    path = default_bar()
    is_gone = not path.exists()
    if is_gone or path.stat().st_size == 0:
        from barkeep.application.likely_bars import bars_beside

        if others := bars_beside(path):
            why = tr("it is empty, though other bars are beside it")
            if is_gone:
                why = tr("it is gone, though other bars are beside it")
            likely = tuple(map(str, others))
            raise NoBarThere(str(path), why, likely)
        if not is_gone:
            _refuse_where_it_was_more(path)
    return path


def _refuse_where_it_was_more(empty: Path) -> None:
    from barkeep.application.kept_backups import beside

    if beside(empty).exists():
        raise NoBarThere(str(empty), tr("it is empty, though there are backups of it"))


class Bar:
    """The use cases of one bar. To be used from one thread; its snapshots may go anywhere."""

    def __init__(
        self,
        session: Session,
        told: Callable[[str], object] | None = None,
        *,
        kept: bool = False,
    ) -> None:
        self._session = session
        self._told = told
        self._is_kept = kept

    @classmethod
    def open(
        cls,
        location: Location,
        knowledge: Knowledge | None = None,
        clock: Callable[[], datetime] = datetime.now,
        told: Callable[[str], object] | None = None,
        *,
        new: bool | None = None,
        empty_too: bool = False,
        kept: bool = False,
    ) -> Self:
        """Open the bar in a file or on a server, or make a new one where there is none.

        None is ever made where `new` is False; one must be made where it is True,
        also in a file that is empty; with `empty_too` one may be made there. With
        `told` a backup is kept before a day's first write and before an import; it is
        called with a sentence where none could be made. Where it may be `kept`, a bar
        that is as it was when it was last read is not read again: its file is opened
        when more is asked of it. It is kept by `keep`, and at the end of a `with`.
        Raises `NoBarThere`, `UnreadableFile`, `NewerBar` or another `UserError`;
        the file is then as it was.
        """
        known = shipped() if knowledge is None else knowledge
        found = kept_bar.known_already(location, clock) if kept and not new else None
        if found is not None:
            store, all_read = found
            backups = None if told is None else OwnBackups(store.at, told)
            session = Session(store, known, clock, known=all_read, backups=backups)
            return cls(session, told, kept=True)
        from barkeep.store.store import Store  # loads slowly, and what is known needs none

        try:
            store = Store.open(location, clock, new=new, empty_too=empty_too)
        except NoBarThere as error:
            from barkeep.application.likely_bars import with_likely

            raise with_likely(error) from None
        try:
            backups = None if told is None else OwnBackups(store.at, told)
            session = Session(store, known, clock, backups=backups)
            return cls(session, told, kept=kept)
        except BaseException:
            store.close()
            raise

    @staticmethod
    def at_location(location: Location) -> At:
        """The file or the address that is named as a bar. Raises `UnreadableFile`."""
        from barkeep.store.location import read_location

        return read_location(location)

    def beside(self) -> Bar:
        """The same bar opened once more, for what another thread does with it.

        This one learns of that by `refresh`. Raises `OnlyOnPaper`.
        """
        self._session.refuse_on_paper()
        shipped, clock = self._session.shipped, self._session.clock
        return Bar.open(self.at, shipped, clock, self._told, new=False)

    def close(self) -> None:
        """Let go of the file."""
        self._session.store.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        if error is None:  # or what was read may not be what is written by now
            with suppress(UserError):  # what was to be done is done
                self.keep()
        self.close()

    @cached_property
    def inventory(self) -> Inventory:
        """Bottles and products: what is on the shelf."""
        from barkeep.application.bottles import Inventory

        return Inventory(self._session)

    @cached_property
    def counting(self) -> Counting:
        """Levels as they were measured."""
        from barkeep.application.counting import Counting

        return Counting(self._session)

    @cached_property
    def pouring(self) -> Pouring:
        """Drinks poured out."""
        from barkeep.application.pouring import Pouring

        return Pouring(self._session)

    @cached_property
    def shopping(self) -> Shopping:
        """What is to be bought, and what came."""
        from barkeep.application.shopping import Shopping

        return Shopping(self._session)

    @cached_property
    def imports(self) -> Imports:
        """Bottles and specs out of files."""
        from barkeep.application.taking_in import Imports

        return Imports(self._session)

    @cached_property
    def house(self) -> HouseMaking:
        """What is made here."""
        from barkeep.application.making import HouseMaking

        return HouseMaking(self._session)

    @cached_property
    def specs(self) -> Specs:
        """The owner's drinks."""
        from barkeep.application.specs import Specs

        return Specs(self._session)

    @cached_property
    def trials(self) -> Trials:
        """How they tasted."""
        from barkeep.application.specs import Trials

        return Trials(self._session)

    @cached_property
    def shoots(self) -> Shoots:
        """What is filmed."""
        from barkeep.application.shoots import Shoots

        return Shoots(self._session)

    @cached_property
    def knowledge(self) -> OwnerKnowledge:
        """What the owner knows beyond what is shipped."""
        from barkeep.application.owner_knowledge import OwnerKnowledge

        return OwnerKnowledge(self._session)

    @cached_property
    def settings(self) -> BarSettings:
        """What the owner chose for this bar."""
        from barkeep.application.settings import BarSettings

        return BarSettings(self._session)

    @property
    def path(self) -> Path:
        """The file the bar lives in. Raises `NotInAFile`."""
        return self._session.store.path

    @property
    def at(self) -> At:
        """The file, or the address of the server, that the bar lives in."""
        return self._session.store.at

    @property
    def where(self) -> str:
        """The same as sentences have it, without a password."""
        return self._session.store.name

    @property
    def kept_beside(self) -> Path:
        """The bar's file, or a path that stands for it here: what is kept of it goes by that."""
        return file_of(self.at)

    def offered(self, ending: str) -> Path:
        """A file to be offered for what is written of the bar: of its name, beside it.

        `ending` is what the name ends in. Of a bar on a server it is in the user's own folder.
        """
        file = self.kept_beside
        if isinstance(self.at, Path):
            return file.with_name(f"{file.stem}{ending}")
        return Path.home() / f"{self.at.database}{ending}"

    @property
    def is_opened(self) -> bool:
        """Whether its file is open; else it is opened when more is asked than was kept of it."""
        return kept_bar.is_opened(self._session.store)

    def keep(self) -> None:
        """Keep what was read of it, so that it need not be read the next time, where it may be."""
        if self._is_kept and self.is_opened:
            kept_bar.keep(self._session)

    def kept_verdicts(self) -> KeptVerdicts | None:
        """The verdicts kept of the bar as it is now; None of one that nothing may be kept of."""
        from barkeep.application.kept_verdicts import KeptVerdicts

        as_it_is = self._is_kept and self.on_paper is None
        digest = kept_bar.digest_of(self._session) if as_it_is else None
        return None if digest is None else KeptVerdicts(self.snapshot, digest)

    @property
    def is_read_only(self) -> bool:
        """Whether it is open to be looked at only, since the file or its folder is read-only."""
        return self._session.store.is_read_only

    @property
    def is_new(self) -> bool:
        """Whether opening it began it."""
        return self._session.store.is_new

    @property
    def snapshot(self) -> Snapshot:
        """The bar as it is now, or would be on paper; frozen, and renewed after each change."""
        paper = self._session.on_paper
        return self._session.snapshot if paper is None else paper.snapshot

    @property
    def on_paper(self) -> OnPaper | None:
        """What the bar is on paper, while every question is asked of that; None as it is."""
        return self._session.on_paper

    def what_if(self, bought: Sequence[str], gone: Sequence[str]) -> OnPaper:
        """Ask every question as if there were what is `bought`, and without what is `gone`.

        Nothing can be written until `as_it_is`. Raises as `read_on_paper` does, and
        `InvalidField` where neither says anything.
        """
        from barkeep.application.on_paper import read_on_paper  # nobody starts with it

        paper = read_on_paper(self._session.snapshot, bought, gone)
        if not paper.is_changed:
            raise InvalidField("with", "nothing", tr("say what there would be, or what would not"))
        self._session.put_on_paper(paper)
        return paper

    def as_it_is(self) -> None:
        """Ask of the bar as it is again."""
        self._session.put_on_paper(None)

    def subscribe(self, callback: Subscriber) -> Callable[[], None]:
        """Call back after each write with what has changed; the result ends that."""
        return self._session.subscribe(callback)

    def refresh(self) -> bool:
        """Read anew what another program may have written; whether there was anything."""
        return self._session.refresh()

    def next_step(self, way: Way) -> Step | None:
        """What `undo` would take back, or `redo` do again; None where there is nothing."""
        return self._session.store.next_action(way)

    def follow(self) -> Followed:
        """As `refresh`, without waiting for anybody; what has become of the file meanwhile."""
        return self._session.follow()

    def open_again(self) -> None:
        """Show the file that lies in the place of the one that was opened. Raises a `UserError`."""
        self._session.open_again()

    @property
    def is_in_place(self) -> bool:
        """Whether the file that was opened still lies where it was opened."""
        return self._session.store.beneath == "same"

    def newest_step(self) -> Stamp | None:
        """What was done to the bar last and when, whatever became of it; None for nothing."""
        return self._session.store.newest_action()

    @property
    def last_step(self) -> Step | None:
        """What was done last by this bar and nobody else; None before anything was."""
        return self._session.last_step

    @property
    def undo_label(self) -> str | None:
        """What `undo` would take back, None where there is nothing."""
        return self._label("undo")

    @property
    def redo_label(self) -> str | None:
        """What `redo` would do again, None where there is nothing."""
        return self._label("redo")

    def undo(self, named: Step | None = None) -> Done[None]:
        """Take the newest action back, which is the one that is `named` or none.

        Raises `NothingToUndo`, `AnotherStep` or `CannotUndo`.
        """
        return self._step("undo", named)

    def redo(self, named: Step | None = None) -> Done[None]:
        """Do again what was undone last, which is the one that is `named` or none.

        Raises as `undo` does.
        """
        return self._step("redo", named)

    @cached_property
    def backups(self) -> Backups:
        """Copies of the bar: made, listed, put back."""
        from barkeep.application.backups import Backups

        return Backups(self._session)

    @cached_property
    def paying(self) -> Paying:
        """What was paid for products, and what a day cost."""
        from barkeep.application.paying import Paying

        return Paying(self._session)

    @cached_property
    def removed(self) -> RemovedThings:
        """What was removed, to be brought back."""
        from barkeep.application.removed import RemovedThings

        return RemovedThings(self._session)

    def back_up(self, target: str | Path) -> Path:
        """Copy the whole bar to a new file, safely while it is open. Raises `CannotWrite`."""
        path = Path(target).expanduser().absolute()
        self._session.store.write_copy(path)
        return path

    def put_back(self) -> None:
        """Write the bar that was opened where its file has gone from, and open it there.

        Raises `CannotWrite` where another file lies there by now.
        """
        self._session.store.write_copy(self.path)
        self.open_again()

    def write_file(self, path: str | Path, content: str | bytes) -> Path:
        """Write a file the user named, whole and never over a bar. Raises `CannotWrite`."""
        from barkeep.application.written_files import write_file

        return write_file(path, content, self.at if isinstance(self.at, Path) else None)

    def check(self) -> tuple[str, ...]:
        """What is wrong with the file or what it says, in sentences; nothing in a sound bar."""
        from barkeep.application.findings import findings

        return tuple(findings(self._session))

    def _label(self, way: Way) -> str | None:
        action = self.next_step(way)
        return None if action is None else action.label

    def _step(self, way: Way, named: Step | None) -> Done[None]:
        self._session.before_writing()
        action, touched = self._session.store.undo_or_redo(way, named)
        return self._session.settle(action.label, touched, lambda _bar: None)
