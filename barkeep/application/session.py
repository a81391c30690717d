"""What all use cases of one open bar share: the store, the snapshot, and who is told."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Literal, TypeVar

from barkeep.application.done import Done, Step
from barkeep.application.knowledge import complete_knowledge
from barkeep.application.own_locale import own_region
from barkeep.collector import collector_paused
from barkeep.domain.bar.changes import EVERYTHING, Changes, Part
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.ingredients.regions import names_in
from barkeep.domain.ingredients.relations import MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import Trial
from barkeep.errors import UserError
from barkeep.store.refusals import BarIsBusy, OutOfReach, WrittenNotRead
from barkeep.store.steps import Stamp

if TYPE_CHECKING:  # loads slowly, and what was kept of a bar is shown without it
    from barkeep.application.own_backups import OwnBackups
    from barkeep.domain.buying.on_paper import OnPaper
    from barkeep.store.store import Store
    from barkeep.store.unit_of_work import Touched, UnitOfWork

T = TypeVar("T")

Subscriber = Callable[[Changes], None]

Followed = Literal["same", "written", "restored", "foreign", "replaced", "gone", "busy", "away"]
"""What another program has done to the bar: *restored* is put back to an older state.

What is *foreign* was not written by barkeep. *away* is a bar on a server that cannot be reached
just now.
"""


class OnlyOnPaper(UserError):
    """Something would be written while the bar is shown as it is not."""

    words: str
    says = "{words} Nothing is written until you go back to the bar as it is."


_UNREAD = -2
"""No number of a version of the file: all of it is still to be read."""

AS_KNOWN = -1
"""The data version of a bar of which all is known, as long as that is so."""


@dataclass(frozen=True, slots=True)
class AllRead:
    """All that is read of a bar when it is opened."""

    products: tuple[Product, ...]
    bottles: tuple[Bottle, ...]
    specs: tuple[Spec, ...]
    trials: tuple[Trial, ...]
    shoots: tuple[Shoot, ...]
    settings: Settings
    own_ingredients: tuple[Ingredient, ...]
    own_stand_ins: tuple[StandIn, ...]
    own_recipes: tuple[MadeFrom, ...]
    newest: Stamp | None
    undo: Step | None
    redo: Step | None


class Session:
    """One open bar: its snapshot is renewed after each write, then the subscribers are called.

    `known` is what would be read of it now, where that is known already.
    """

    def __init__(
        self,
        store: Store,
        shipped: Knowledge,
        clock: Callable[[], datetime],
        *,
        known: AllRead | None = None,
        backups: OwnBackups | None = None,
    ) -> None:
        self.store = store
        self._backups = backups
        self.clock = clock
        self.shipped = shipped
        self.last_step: Step | None = None
        """What was done here last; None before anything was."""
        self._paper: OnPaper | None = None
        self._paper_of: Snapshot | None = None
        """The bar as it is, of which `_paper` was made."""
        self._subscribers: list[Subscriber] = []
        self._snapshot = Snapshot(shipped, clock().date())
        self._data_version = AS_KNOWN
        if known is None:
            self._data_version = store.data_version()
            self._renew_all()
            self._newest = store.newest_action()
        else:
            self._take(known)

    @property
    def snapshot(self) -> Snapshot:
        """The bar as it is; after midnight, as of the new day."""
        today = self.clock().date()
        if self._snapshot.on != today:
            self._snapshot = self._snapshot.changed(on=today)
        return self._snapshot

    @property
    def on_paper(self) -> OnPaper | None:
        """The bar as it would be, made of how it is now; None where nobody asked for that."""
        if self._paper is not None and self._paper_of is not self.snapshot:
            self._paper_of = self.snapshot
            self._paper = self._paper.anew(self._paper_of)
        return self._paper

    def put_on_paper(self, paper: OnPaper | None) -> None:
        """Answer of the bar as it would be, and write nothing; None goes back to how it is."""
        self._paper, self._paper_of = paper, self.snapshot
        self._tell(EVERYTHING)

    def refuse_on_paper(self) -> None:
        """Raise `OnlyOnPaper` while the bar is shown as it is not."""
        if self.on_paper is not None:
            raise OnlyOnPaper(self.on_paper.in_words)

    @property
    def tree(self) -> FamilyTree:
        """The family tree with the owner's ingredients."""
        return self._snapshot.knowledge.tree

    @contextmanager
    def writing(self, label: str = "") -> Iterator[UnitOfWork]:
        """One unit of work. Give `finished` the same unit once this has ended.

        Within it the snapshot is the bar as it is, whoever wrote since it was read: what decides
        whether something may be written, such as a name that must be free, is asked there.
        """
        self.before_writing()
        with self.store.unit_of_work(label) as work, self._as_it_is(work):
            yield work

    @contextmanager
    def _as_it_is(self, work: UnitOfWork) -> Iterator[None]:
        """Have the snapshot of what another wrote; where nothing is written, it is told of later.

        The version stays that of what was told, so that all is read and told once more.
        """
        told = self._snapshot
        if self.store.data_version(work) != self._data_version:
            self._renew_all(work)
        try:
            yield
        except BaseException:
            self._snapshot = told
            raise

    @property
    def backup_folder(self) -> Path:
        """Where backups of the bar are kept."""
        from barkeep.application.kept_backups import folder_of

        return folder_of(self.store.at, self._snapshot.settings.backups)

    def before_writing(self) -> None:
        """Keep the day's backup, where that is wanted and there is none yet.

        Raises `ReadOnlyBar` or `OnlyOnPaper`.
        """
        self.refuse_on_paper()
        self.store.refuse_read_only()
        if self._backups is not None:
            self._backups.before_write(self.backup_folder, self.clock())

    def before_import(self) -> None:
        """Keep a backup of the bar as it is, where that is wanted. Raises `ReadOnlyBar`."""
        self.store.refuse_read_only()
        if self._backups is not None:
            self._backups.before_import(self.backup_folder, self.clock())

    def finished(self, work: UnitOfWork, value: Callable[[Snapshot], T]) -> Done[T]:
        """Renew the snapshot, tell the subscribers; `value` is asked of the new snapshot."""
        step = None if work.action_id is None else Step(work.action_id, work.label)
        self.last_step = step or self.last_step
        done = self.settle(work.label, work.touched, value)
        return replace(done, step=step)

    def settle(self, label: str, touched: Touched, value: Callable[[Snapshot], T]) -> Done[T]:
        """As `finished`, for what the store has done without a unit of work."""
        changes, names = touched.changes, self.tree.shown
        try:
            version = self.store.data_version()
            if version != self._data_version:
                changes = EVERYTHING
                self._renew_all()
            elif changes:
                self._renew(touched, self.snapshot)
            self._newest, self._data_version = self.store.newest_action(), version
        except BarIsBusy as error:
            self._data_version = _UNREAD
            raise WrittenNotRead(self.store.name) from error
        except OutOfReach as error:
            self._data_version = _UNREAD
            raise WrittenNotRead(self.store.name, error.short) from error
        if self.tree.shown != names:  # the region is another, and with it what things are called
            changes |= {Part.KNOWLEDGE}
        done = Done(value(self.snapshot), changes, label)
        self._tell(changes)
        return done

    def refresh(self) -> bool:
        """Read the bar anew where another program has written to it; whether it had."""
        version = self.store.data_version()
        if version == self._data_version:
            return False
        self._read_all(version)
        return True

    def follow(self) -> Followed:
        """As `refresh`, without waiting; what has become of the file since it was looked at last.

        Of one that is gone or replaced nothing is read.
        """
        beneath = self.store.beneath
        if beneath != "same":
            return beneath
        known = self._newest
        try:
            with self.store.not_waiting():
                version = self.store.data_version()
                if version == self._data_version:
                    return "same"
                is_older = known is not None and not self.store.still_holds(known)
                self._read_all(version)
                is_foreign = not self.store.fits_its_seal()
        except BarIsBusy:
            return "busy"
        except OutOfReach:
            return "away"
        if is_foreign:
            return "foreign"
        return "restored" if is_older else "written"

    def open_again(self) -> None:
        """Show what lies in the place of the file that was opened. Raises as opening does."""
        self.store.open_again()
        self._read_all(self.store.data_version())

    def _read_all(self, version: int) -> None:
        """Read everything; which version of the file that was is known only once it is read."""
        self._renew_all()
        self._newest, self._data_version = self.store.newest_action(), version
        self._tell(EVERYTHING)

    def subscribe(self, subscriber: Subscriber) -> Callable[[], None]:
        """Call `subscriber` after each write with what has changed; the result ends that."""
        self._subscribers.append(subscriber)

        def unsubscribe() -> None:
            if subscriber in self._subscribers:
                self._subscribers.remove(subscriber)

        return unsubscribe

    def _tell(self, changes: Changes) -> None:
        if changes:
            for subscriber in tuple(self._subscribers):
                subscriber(changes)

    def all_read(self) -> AllRead:
        """What was read of the bar, to be kept for the next time."""
        bar = self._snapshot
        return AllRead(
            products=bar.products,
            bottles=bar.bottles,
            specs=bar.specs,
            trials=bar.trials,
            shoots=bar.shoots,
            settings=bar.settings,
            own_ingredients=self._own_ingredients,
            own_stand_ins=self._own_stand_ins,
            own_recipes=self._own_recipes,
            newest=self._newest,
            undo=self.store.next_action("undo"),
            redo=self.store.next_action("redo"),
        )

    def digest_as_read(self) -> str | None:
        """The digest of the file all of which was read; None where another program wrote since."""
        digest = self.store.digest()
        return digest if self.store.data_version() == self._data_version else None

    def _take(self, known: AllRead) -> None:
        self._own_ingredients = known.own_ingredients
        self._own_stand_ins = known.own_stand_ins
        self._own_recipes = known.own_recipes
        self._newest = known.newest
        new = Snapshot(self.shipped, self.clock().date()).changed(
            products=known.products,
            bottles=known.bottles,
            specs=known.specs,
            trials=known.trials,
            shoots=known.shoots,
            settings=known.settings,
        )
        self._unnamed = self._whole_knowledge(new.products, new.specs)
        self._snapshot = new.changed(knowledge=self._named(new))

    def _renew_all(self, within: UnitOfWork | None = None) -> None:
        from barkeep.store.unit_of_work import Touched

        self._renew(Touched(EVERYTHING), Snapshot(self.shipped, self.clock().date()), within)

    def _renew(self, touched: Touched, new: Snapshot, within: UnitOfWork | None = None) -> None:
        """Read the parts that changed, `within` a change or not; the others stay the very same."""
        from barkeep.store import knowledge
        from barkeep.store.after_changes import renewed

        reading = nullcontext(within.connection) if within else self.store.reading()
        with reading as connection, collector_paused():
            new = renewed(connection, new, touched)
            if Part.KNOWLEDGE in touched.changes:
                self._own_ingredients = knowledge.read_own_ingredients(connection)
                self._own_stand_ins = knowledge.read_own_stand_ins(connection)
                self._own_recipes = knowledge.read_own_recipes(connection)
        if Part.KNOWLEDGE in touched.changes or self._has_strangers(new, touched):
            self._unnamed = self._whole_knowledge(new.products, new.specs)
            new = new.changed(knowledge=self._named(new))
        elif Part.SETTINGS in touched.changes and self._names(new) != new.knowledge.tree.shown:
            new = new.changed(knowledge=self._named(new))
        self._snapshot = new

    def _named(self, bar: Snapshot) -> Knowledge:
        """The knowledge with the names of the bar's region."""
        return self._unnamed.showing(self._names(bar))

    def _names(self, bar: Snapshot) -> Mapping[str, str]:
        return names_in(bar.settings.region or own_region(), self._unnamed.tree)

    def _has_strangers(self, snapshot: Snapshot, touched: Touched) -> bool:
        """Whether what was written takes a kind that is not known; all else is known already."""
        products = map(snapshot.product_by_id.get, touched.ids.get("product", ()))
        specs = map(snapshot.spec_by_id.get, touched.ids.get("spec", ()))
        used = _used(filter(None, products), filter(None, specs))
        return not used <= snapshot.knowledge.tree.ingredients.keys()

    def _whole_knowledge(self, products: tuple[Product, ...], specs: tuple[Spec, ...]) -> Knowledge:
        own = (self._own_ingredients, self._own_stand_ins)
        used = _used(products, specs)
        return complete_knowledge(self.shipped, *own, used, self._own_recipes)


class UseCases:
    """What can be done about one subject of a bar."""

    def __init__(self, session: Session) -> None:
        self._session = session


def _used(products: Iterable[Product], specs: Iterable[Spec]) -> set[str]:
    lines = [line for spec in specs for line in spec.lines]
    kinds = {line.ingredient for line in lines} | {each.ingredient for each in products}
    return kinds.union(*(line.alternatives for line in lines if line.alternatives))
