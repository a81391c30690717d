"""What was read of a bar, with what a change has written read again: all else stays the same."""

from __future__ import annotations

from bisect import insort
from collections.abc import Callable, Iterable, Set
from typing import Any, TypeVar

from sqlalchemy import Connection

from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.specs.spec import Spec
from barkeep.store.bottles import bottle_in_order, product_in_order, read_bottles, read_products
from barkeep.store.rows import MANY
from barkeep.store.specs import in_order, read_specs
from barkeep.store.unit_of_work import Touched

Read = TypeVar("Read", Product, Bottle, Spec)


def products_after(
    connection: Connection, before: tuple[Product, ...], touched: Touched
) -> tuple[Product, ...]:
    """The products after a change."""
    ids = _few(touched.ids.get("product"))
    if ids is None:
        return read_products(connection)
    return _put_among(before, ids, read_products(connection, ids), product_in_order)


def bottles_after(
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


def specs_after(
    connection: Connection, before: tuple[Spec, ...], touched: Touched
) -> tuple[Spec, ...]:
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
