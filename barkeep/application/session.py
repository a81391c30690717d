"""What all use cases of one open bar share: the store, the snapshot, and who is told."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager
from datetime import datetime
from typing import TypeVar

from barkeep.application.done import Done
from barkeep.application.knowledge import complete_knowledge
from barkeep.application.own_locale import own_region
from barkeep.domain.bar.changes import EVERYTHING, Changes, Part
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.ingredients.regions import names_in
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.spec import Spec
from barkeep.store.after_changes import bottles_after, products_after, specs_after
from barkeep.store.knowledge import (
    read_own_ingredients,
    read_own_recipes,
    read_own_stand_ins,
    read_settings,
)
from barkeep.store.shoots import read_shoots
from barkeep.store.specs import read_trials
from barkeep.store.store import Store
from barkeep.store.unit_of_work import Touched, UnitOfWork

T = TypeVar("T")

Subscriber = Callable[[Changes], None]


class Session:
    """One open bar: its snapshot is renewed after each write, then the subscribers are called."""

    def __init__(self, store: Store, shipped: Knowledge, clock: Callable[[], datetime]) -> None:
        self.store = store
        self.clock = clock
        self.shipped = shipped
        self._subscribers: list[Subscriber] = []
        self._snapshot = Snapshot(shipped, clock().date())
        self._data_version = store.data_version()
        self._renew_all()

    @property
    def snapshot(self) -> Snapshot:
        """The bar as it is; after midnight, as of the new day."""
        today = self.clock().date()
        if self._snapshot.on != today:
            self._snapshot = self._snapshot.changed(on=today)
        return self._snapshot

    @property
    def tree(self) -> FamilyTree:
        """The family tree with the owner's ingredients."""
        return self._snapshot.knowledge.tree

    @contextmanager
    def writing(self, label: str = "") -> Iterator[UnitOfWork]:
        """One unit of work. Give `finished` the same unit once this has ended."""
        with self.store.unit_of_work(label) as work:
            yield work

    def finished(self, work: UnitOfWork, value: Callable[[Snapshot], T]) -> Done[T]:
        """Renew the snapshot, tell the subscribers; `value` is asked of the new snapshot."""
        return self.settle(work.label, work.touched, value)

    def settle(self, label: str, touched: Touched, value: Callable[[Snapshot], T]) -> Done[T]:
        """As `finished`, for what the store has done without a unit of work."""
        changes, names = touched.changes, self.tree.shown
        if self._others_wrote():
            changes = EVERYTHING
            self._renew_all()
        elif changes:
            self._renew(touched, self.snapshot)
        if self.tree.shown != names:  # the region is another, and with it what things are called
            changes |= {Part.KNOWLEDGE}
        done = Done(value(self.snapshot), changes, label)
        self._tell(changes)
        return done

    def refresh(self) -> bool:
        """Read the bar anew where another program has written to it; whether it had."""
        if not self._others_wrote():
            return False
        self._renew_all()
        self._tell(EVERYTHING)
        return True

    def subscribe(self, subscriber: Subscriber) -> Callable[[], None]:
        """Call `subscriber` after each write with what has changed; the result ends that."""
        self._subscribers.append(subscriber)

        def unsubscribe() -> None:
            if subscriber in self._subscribers:
                self._subscribers.remove(subscriber)

        return unsubscribe

    def _others_wrote(self) -> bool:
        version = self.store.data_version()
        moved = version != self._data_version
        self._data_version = version
        return moved

    def _tell(self, changes: Changes) -> None:
        if changes:
            for subscriber in tuple(self._subscribers):
                subscriber(changes)

    def _renew_all(self) -> None:
        self._renew(Touched(EVERYTHING), Snapshot(self.shipped, self.clock().date()))

    def _renew(self, touched: Touched, new: Snapshot) -> None:
        """Read the parts that changed; the others stay the very same objects."""
        with self.store.reading() as connection:
            if Part.PRODUCTS in touched.changes:
                new = new.changed(products=products_after(connection, new.products, touched))
            if Part.BOTTLES in touched.changes:
                new = new.changed(
                    bottles=bottles_after(connection, new.bottles, new.products, touched)
                )
            if Part.SPECS in touched.changes:
                new = new.changed(specs=specs_after(connection, new.specs, touched))
            if touched.changes & {Part.SPECS, Part.TRIALS}:  # a spec takes its trials along
                new = new.changed(trials=read_trials(connection))
            if Part.SHOOTS in touched.changes:
                new = new.changed(shoots=read_shoots(connection))
            if Part.SETTINGS in touched.changes:
                new = new.changed(settings=read_settings(connection))
            if Part.KNOWLEDGE in touched.changes:
                self._own_ingredients = read_own_ingredients(connection)
                self._own_stand_ins = read_own_stand_ins(connection)
                self._own_recipes = read_own_recipes(connection)
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
    lines = {key for spec in specs for line in spec.lines for key in line.wanted}
    return lines | {product.ingredient for product in products}
