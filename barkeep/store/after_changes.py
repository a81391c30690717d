"""What was read of a bar, with what a change has written read again: all else stays the same."""

from __future__ import annotations

from bisect import insort
from collections.abc import Callable, Iterable, Set
from typing import Any, TypeVar

from sqlalchemy import Connection

from barkeep.domain.bar.changes import Part
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.specs.spec import Spec
from barkeep.store.bottles import bottle_in_order, product_in_order, read_bottles, read_products
from barkeep.store.knowledge import read_settings
from barkeep.store.rows import MANY
from barkeep.store.shoots import read_shoots
from barkeep.store.specs import in_order, read_specs, read_trials
from barkeep.store.unit_of_work import Touched

Read = TypeVar("Read", Product, Bottle, Spec)


def renewed(connection: Connection, new: Snapshot, touched: Touched) -> Snapshot:
    """The snapshot with the parts that changed; the others stay the very same objects."""
    if Part.PRODUCTS in touched.changes:
        new = new.changed(products=_products(connection, new.products, touched))
    if Part.BOTTLES in touched.changes:
        new = new.changed(bottles=_bottles(connection, new.bottles, new.products, touched))
    if Part.SPECS in touched.changes:
        new = new.changed(specs=_specs(connection, new.specs, touched))
    if touched.changes & {Part.SPECS, Part.TRIALS}:  # a spec takes its trials along
        new = new.changed(trials=read_trials(connection))
    if Part.SHOOTS in touched.changes:
        new = new.changed(shoots=read_shoots(connection))
    if Part.SETTINGS in touched.changes:
        new = new.changed(settings=read_settings(connection))
    return new


def _products(
    connection: Connection, before: tuple[Product, ...], touched: Touched
) -> tuple[Product, ...]:
    """The products after a change."""
    ids = _few(touched.ids.get("product"))
    if ids is None:
        return read_products(connection)
    return _put_among(before, ids, read_products(connection, ids), product_in_order)


def _bottles(
    connection: Connection,
    before: tuple[Bottle, ...],
    products: tuple[Product, ...],
    touched: Touched,
) -> tuple[Bottle, ...]:
    """The bottles after a change: those written, those whose level moved or whose label changed."""
    labels, moved = touched.ids.get("product", frozenset()), touched.bottle_ids
    of_labels = {each.id for each in before if each.product.id in labels}
    ids = None
    if touched.ids or moved:
        ids = _few(touched.ids.get("bottle", frozenset()) | moved | of_labels)
    still = {each.id: each.level for each in before if each.id not in moved}
    found = read_bottles(connection, products, still, ids)
    return found if ids is None else _put_among(before, ids, found, bottle_in_order)


def _specs(connection: Connection, before: tuple[Spec, ...], touched: Touched) -> tuple[Spec, ...]:
    """The specs after a change."""
    ids = _few(touched.ids.get("spec"))
    if ids is None:
        return read_specs(connection)
    return _put_among(before, ids, read_specs(connection, ids), in_order)


def _few(ids: Set[int] | None) -> Set[int] | None:
    """The ids where it is quicker to read those alone, None for all there are."""
    return None if ids is None or len(ids) > MANY else ids


def _put_among(
    before: Iterable[Read], ids: Set[int], found: Iterable[Read], order: Callable[[Read], Any]
) -> tuple[Read, ...]:
    """What was read before with those of these ids as they are now, in their order."""
    among = [each for each in before if each.id not in ids]
    for each in found:
        insort(among, each, key=order)
    return tuple(among)
