"""What was removed from the bar, and bringing it back."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from barkeep.application.done import Done
from barkeep.application.paying import follow_newest
from barkeep.application.session import UseCases
from barkeep.domain.phrases import folded
from barkeep.errors import AmbiguousName, DuplicateName, UnknownName
from barkeep.store.bottles import product_named, product_paid_for
from barkeep.store.removed import Removed, RemovedKind, product_behind, read_removed
from barkeep.store.specs import taken_names
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr_noop

_REMOVED: Mapping[RemovedKind, str] = {
    "bottle": tr_noop("removed bottle"),
    "product": tr_noop("removed product"),
    "spec": tr_noop("removed spec"),
    "trial": tr_noop("removed trial"),
    "shoot": tr_noop("removed shoot"),
    "paid": tr_noop("removed paid"),
}
"""Each kind as it is said where none is found."""


class RemovedThings(UseCases):
    """The use cases of `bar.removed`."""

    def listed(self) -> tuple[Removed, ...]:
        """Everything that was removed, the latest first."""
        with self._session.store.reading() as connection:
            return read_removed(connection)

    def bring_back(self, kind: RemovedKind, thing_id: int) -> Done[Removed]:
        """Show one thing again; a bottle brings its product along where that was removed too.

        Raises `UnknownName` for what is not removed, `DuplicateName` where
        something else has its name by now.
        """
        with self._session.writing() as work:
            found = [
                each
                for each in read_removed(work.connection)
                if (each.kind, each.id) == (kind, thing_id)
            ]
            if not found:
                raise UnknownName(_REMOVED[kind], f"#{thing_id}")
            (thing,) = found
            work.label = f"Bring back {thing.name}"
            _bring_product(work, thing)
            if kind == "spec" and taken_names(work.connection, [folded(thing.name)]):
                raise DuplicateName("spec", thing.name)
            if kind != "product":
                work.change(kind, (thing_id,), hidden=False)
            if kind == "paid":
                follow_newest(work, product_paid_for(work.connection, thing_id))
        return self._session.finished(work, lambda _bar: thing)


def _bring_product(work: UnitOfWork, thing: Removed) -> None:
    product = product_behind(work.connection, thing)
    if product is None:
        return
    if product_named(work.connection, product) is not None:
        raise DuplicateName("product", product.title)
    work.change("product", (product.id,), hidden=False)


def find_removed(things: Sequence[Removed], kind: RemovedKind, which: str) -> Removed:
    """A removed thing by its id or its name. Raises `UnknownName` or `AmbiguousName`."""
    of_kind = [each for each in things if each.kind == kind]
    plain = which.strip().removeprefix("#")
    found = [each for each in of_kind if str(each.id) == plain]
    found = found or [each for each in of_kind if folded(each.name) == folded(which)]
    if len(found) > 1:
        choices = tuple(f"#{each.id} {each.name}" for each in found)
        raise AmbiguousName(_REMOVED[kind], which, choices)
    if not found:
        raise UnknownName(_REMOVED[kind], which, tuple(each.name for each in of_kind[:3]))
    return found[0]
