"""One open bar, as the desktop and the command line see it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime
from functools import cached_property
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from barkeep.application import kept_bar
from barkeep.application.done import Done
from barkeep.application.knowledge import NOT_KNOWN, shipped
from barkeep.application.session import Session, Subscriber
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot

if TYPE_CHECKING:  # each room, and the store, is loaded by whoever enters it first
    from barkeep.application.bottles import Inventory
    from barkeep.application.counting import Counting
    from barkeep.application.imports import Imports
    from barkeep.application.making import HouseMaking
    from barkeep.application.owner_knowledge import OwnerKnowledge
    from barkeep.application.settings import BarSettings
    from barkeep.application.shoots import Shoots
    from barkeep.application.shopping import Shopping
    from barkeep.application.specs import Specs, Trials
    from barkeep.store.history import Way


class Bar:
    """The use cases of one bar. To be used from one thread; its snapshots may go anywhere."""

    def __init__(self, session: Session) -> None:
        self._session = session

    @classmethod
    def open(
        cls,
        location: str | Path,
        knowledge: Knowledge | None = None,
        clock: Callable[[], datetime] = datetime.now,
        *,
        kept: bool = False,
    ) -> Self:
        """Open the bar in a file, or make a new one there.

        Where it may be `kept`, a bar that is as it was when it was last read is
        not read again: its file is opened when more is asked of it. Raises
        `UnreadableFile`, `NewerBar` or another `UserError`; the file is then as
        it was.
        """
        known = shipped() if knowledge is None else knowledge
        found = kept_bar.known_already(location, clock) if kept else None
        if found is not None:
            store, all_read = found
            return cls(Session(store, known, clock, all_read))
        from barkeep.store.store import Store  # loads slowly, and what is known needs none

        store = Store.open(location, clock)
        try:
            session = Session(store, known, clock)
            if kept:
                kept_bar.keep(session)
            return cls(session)
        except BaseException:
            store.close()
            raise

    def beside(self) -> Bar:
        """The same bar opened once more, for what another thread does with it.

        This one learns of that by `refresh`.
        """
        return Bar.open(self.path, self._session.shipped, self._session.clock)

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
    def shopping(self) -> Shopping:
        """What is to be bought, and what came."""
        from barkeep.application.shopping import Shopping

        return Shopping(self._session)

    @cached_property
    def imports(self) -> Imports:
        """Bottles and specs out of files."""
        from barkeep.application.imports import Imports

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
        """The file the bar lives in."""
        return self._session.store.path

    @property
    def is_new(self) -> bool:
        """Whether opening it began it."""
        return self._session.store.is_new

    @property
    def snapshot(self) -> Snapshot:
        """The bar as it is now; frozen, and renewed after each change."""
        return self._session.snapshot

    def subscribe(self, callback: Subscriber) -> Callable[[], None]:
        """Call back after each write with what has changed; the result ends that."""
        return self._session.subscribe(callback)

    def refresh(self) -> bool:
        """Read anew what another program may have written; whether there was anything."""
        return self._session.refresh()

    @property
    def undo_label(self) -> str | None:
        """What `undo` would take back, None where there is nothing."""
        return self._label("undo")

    @property
    def redo_label(self) -> str | None:
        """What `redo` would do again, None where there is nothing."""
        return self._label("redo")

    def undo(self) -> Done[None]:
        """Take the newest action back. Raises `NothingToUndo` or `CannotUndo`."""
        return self._step("undo")

    def redo(self) -> Done[None]:
        """Do again what was undone last. Raises `NothingToUndo` or `CannotUndo`."""
        return self._step("redo")

    def back_up(self, target: str | Path) -> Path:
        """Copy the whole bar to a new file, safely while it is open. Raises `CannotWrite`."""
        from barkeep.store.backup import copy_bar

        path = Path(target).expanduser().absolute()
        copy_bar(self.path, path)
        return path

    def write_file(self, path: str | Path, content: str | bytes) -> Path:
        """Write a file the user named, whole and never over a bar. Raises `CannotWrite`."""
        from barkeep.application.written_files import write_file

        return write_file(path, content, self.path)

    def check(self) -> tuple[str, ...]:
        """What is wrong with the file or what it says, in sentences; nothing in a sound bar."""
        return tuple(_findings(self._session))

    def _label(self, way: Way) -> str | None:
        action = self._session.store.next_action(way)
        return None if action is None else action.label

    def _step(self, way: Way) -> Done[None]:
        action, touched = self._session.store.undo_or_redo(way)
        return self._session.settle(action.label, touched, lambda _bar: None)


def _findings(session: Session) -> Iterator[str]:
    """What is wrong with the file, its references, and what its ledgers say."""
    from barkeep.application.shelving import ROUNDING
    from barkeep.store.bottles import read_bottles
    from barkeep.store.knowledge import read_own_ingredients

    yield from (f"The file is damaged: {fault}." for fault in session.store.faults())
    with session.store.reading() as connection:
        written, own = read_bottles(connection), read_own_ingredients(connection)
    for bottle in written:
        held, product = bottle.level.amount, bottle.product
        if held > product.size + ROUNDING:
            said = f"{held:g} of {product.size:g} {product.unit}"
            yield f"The ledger of {product.title} (#{bottle.id}) says it holds {said}."
    if written != session.snapshot.bottles:
        yield "The bottles on the screen are not those in the file; open the bar again."
    known = session.shipped.tree.ingredients.keys() | {each.key for each in own}
    strangers = session.snapshot.knowledge.tree.ingredients.keys() - known
    yield from (f"The ingredient “{key}” is {NOT_KNOWN}." for key in sorted(strangers))
