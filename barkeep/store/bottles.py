"""Products, bottles and the ledger: between rows and values, each bottle with what it folds to.

Entries of the ledger are added and read, never changed.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, func, insert, select

from barkeep.domain.bottles.bottle import (
    Bottle,
    Entry,
    Label,
    Level,
    Product,
    Tare,
    active,
    fold,
)
from barkeep.domain.bottles.paid import Paid, newest_first
from barkeep.domain.phrases import folded
from barkeep.store.rows import MANY, Mapper, insert_many
from barkeep.store.schema import bottle, ledger, paid, product

PRODUCT = Mapper(
    Product,
    product,
    beside={
        "folded_title": lambda label: folded(label.title),
        "hidden": lambda _label: False,
    },
)

BOTTLE = Mapper(
    Bottle,
    bottle,
    apart=("product", "level", "tare"),
    beside={
        "product_id": lambda one: one.product.id,
        "tare_g": lambda one: one.tare.weight_g if one.tare else None,
        "tare_sigma_g": lambda one: one.tare.sigma_g if one.tare else None,
        "hidden": lambda _one: False,
    },
)

PAID = Mapper(Paid, paid, beside={"hidden": lambda _one: False})

_ENTRY = Mapper(Entry, ledger)

_PRODUCTS = select(*PRODUCT.columns)

_SHOWN_BOTTLES = (
    select(*BOTTLE.columns, bottle.c.product_id, bottle.c.tare_g, bottle.c.tare_sigma_g)
    .where(~bottle.c.hidden)
    .order_by(bottle.c.position, bottle.c.id)
)


def read_products(
    connection: Connection, ids: Collection[int] | None = None
) -> tuple[Product, ...]:
    """Every product that is not hidden, by title; of those with these ids where some are given."""
    shown = _PRODUCTS.where(~product.c.hidden)
    if ids is not None:
        shown = shown.where(product.c.id.in_(ids))
    ordered = shown.order_by(product.c.folded_title, product.c.size, product.c.id)
    return PRODUCT.every(connection, ordered)


def product_in_order(one: Product) -> tuple[str, float, int]:
    """The place of a product among those read."""
    return folded(one.title), one.size, one.id


def bottle_in_order(one: Bottle) -> tuple[int, int]:
    """The place of a bottle among those read."""
    return one.position, one.id


def read_product(connection: Connection, product_id: int) -> Product | None:
    """One product, None where there is none or it is hidden."""
    return PRODUCT.first(connection, _PRODUCTS.where(product.c.id == product_id, ~product.c.hidden))


def read_removed_product(connection: Connection, product_id: int) -> Product | None:
    """One product that is hidden, None where there is none or it is not."""
    return PRODUCT.first(connection, _PRODUCTS.where(product.c.id == product_id, product.c.hidden))


def product_named(connection: Connection, label: Label) -> Product | None:
    """The product that has the label's title and size already."""
    statement = _PRODUCTS.where(
        product.c.folded_title == folded(label.title),
        product.c.size == label.size,
        product.c.unit == label.unit,
        ~product.c.hidden,
    )
    return PRODUCT.first(connection, statement)


def read_bottles(
    connection: Connection,
    products: tuple[Product, ...] = (),
    known: Mapping[int, Level] | None = None,
    ids: Collection[int] | None = None,
) -> tuple[Bottle, ...]:
    """Every bottle that is not hidden, in the owner's order; of those with `ids` where given.

    `products` are shared where given. `known` levels are taken as they are;
    only the entries of other bottles are read.
    """
    shown = _SHOWN_BOTTLES if ids is None else _SHOWN_BOTTLES.where(bottle.c.id.in_(ids))
    rows = connection.execute(shown).all()
    by_id = _products_of(connection, rows, products or read_products(connection))
    missing = None if known is None else {row.id for row in rows} - known.keys()
    written = entries_by_bottle(connection, missing) if missing != set() else {}
    return tuple(_bottle(row, by_id[row.product_id], known or {}, written) for row in rows)


def read_bottle(connection: Connection, bottle_id: int) -> Bottle | None:
    """One bottle as the ledger has it now, None where there is none or it is hidden."""
    rows = connection.execute(_SHOWN_BOTTLES.where(bottle.c.id == bottle_id)).all()
    if not rows:
        return None
    (row,) = rows
    product = _products_of(connection, rows, ())[row.product_id]
    return _bottle(row, product, {}, entries_by_bottle(connection, {bottle_id}))


def read_paid(connection: Connection, product_id: int) -> tuple[Paid, ...]:
    """What was paid for a product, newest first, hidden payments left out."""
    own = select(*PAID.columns).where(paid.c.product_id == product_id, ~paid.c.hidden)
    return newest_first(PAID.every(connection, own))


def product_paid_for(connection: Connection, paid_id: int) -> int:
    """The id of the product that a payment was for."""
    found = connection.execute(select(paid.c.product_id).where(paid.c.id == paid_id))
    return int(found.scalar_one())


def entries_between(
    connection: Connection, begin: datetime, end: datetime
) -> Mapping[Product, Sequence[Entry]]:
    """Product -> the entries that count of its bottles from one moment until before another.

    Those of bottles and products that were removed since are among them.
    """
    moved = select(ledger.c.bottle_id).where(ledger.c.at >= begin, ledger.c.at < end).distinct()
    ids = connection.execute(moved).scalars().all()
    its = select(bottle.c.id, bottle.c.product_id).where(bottle.c.id.in_(moved))
    product_of = {row.id: row.product_id for row in connection.execute(its)}
    of = _PRODUCTS.where(product.c.id.in_(set(product_of.values())))
    by_id = {each.id: each for each in PRODUCT.every(connection, of)}
    found: dict[Product, list[Entry]] = {}
    for bottle_id, entries in entries_by_bottle(connection, ids).items():
        own = [each for each in active(entries) if begin <= each.at < end]
        found.setdefault(by_id[product_of[bottle_id]], []).extend(own)
    return found


def bottles_of(connection: Connection, product_id: int) -> int:
    """How many bottles of a product there are, hidden ones left out."""
    own = select(func.count()).where(bottle.c.product_id == product_id, ~bottle.c.hidden)
    return int(connection.execute(own).scalar_one())


def last_position(connection: Connection) -> int:
    """The place of the last bottle along the shelf, -1 for a bar without bottles."""
    last = select(func.coalesce(func.max(bottle.c.position), -1))
    return int(connection.execute(last).scalar_one())


def _products_of(
    connection: Connection, rows: Collection[Any], products: Collection[Product]
) -> Mapping[int, Product]:
    """The products of these bottles' rows by their ids, `products` among them."""
    by_id = {each.id: each for each in products}
    unread = {row.product_id for row in rows} - by_id.keys()  # hidden ones, if any
    if unread:
        found = PRODUCT.every(connection, _PRODUCTS.where(product.c.id.in_(unread)))
        by_id |= {each.id: each for each in found}
    return by_id


def _bottle(
    row: Any, of: Product, known: Mapping[int, Level], written: Mapping[int, Sequence[Entry]]
) -> Bottle:
    """The bottle of a row, its level known or what its entries come to."""
    bottle_id, tare_g = row.id, row.tare_g
    tare = None if tare_g is None else Tare(tare_g, row.tare_sigma_g)
    level = known.get(bottle_id) or fold(written.get(bottle_id, ()), of.unit)
    return BOTTLE.value(row, product=of, level=level, tare=tare)


def append_entry(connection: Connection, entry: Entry, action_id: int) -> Entry:
    """Add one entry; it comes back with its number."""
    row = {**_ENTRY.row(entry), "action_id": action_id}
    identity = connection.execute(insert(ledger).values(row)).inserted_primary_key
    assert identity is not None
    return replace(entry, id=int(identity[0]))


def append_entries(
    connection: Connection, ledgers: Mapping[int, Sequence[Entry]], action_id: int
) -> None:
    """Add entries to the ledgers of bottles, by the bottles' ids and in their order."""
    some = [entry for entries in ledgers.values() for entry in entries]
    bottle_ids = [bottle_id for bottle_id, entries in ledgers.items() for _entry in entries]
    columns = _ENTRY.in_columns(some)
    columns |= {"bottle_id": bottle_ids, "action_id": [action_id] * len(some)}
    insert_many(connection, ledger, columns)


def entries_of(connection: Connection, bottle_id: int) -> tuple[Entry, ...]:
    """Every entry of one bottle, oldest first, reversals among them."""
    return tuple(_entries(connection, (bottle_id,)))


def entries_by_bottle(
    connection: Connection, bottle_ids: Collection[int] | None = None
) -> Mapping[int, Sequence[Entry]]:
    """Bottle id -> its entries, oldest first; of every bottle where none are named."""
    grouped: dict[int, list[Entry]] = {}
    for entry in _entries(connection, bottle_ids):
        grouped.setdefault(entry.bottle_id, []).append(entry)
    return grouped


def reverse_entries(connection: Connection, action_id: int, at: datetime) -> frozenset[int]:
    """Take back the entries of an action, newest first; the bottles they belong to."""
    own = _by_action(connection, action_id)
    return _reverse_each(connection, reversed(own), action_id, at)


def restore_entries(connection: Connection, action_id: int, at: datetime) -> frozenset[int]:
    """Reverse the latest reversals of an action's entries; the bottles they belong to."""
    own = {entry_id for entry_id, _ in _by_action(connection, action_id)}
    latest = (
        select(func.max(ledger.c.id), ledger.c.bottle_id, ledger.c.reverses)
        .where(ledger.c.action_id == action_id, ledger.c.reverses.is_not(None))
        .group_by(ledger.c.reverses, ledger.c.bottle_id)
        .order_by(ledger.c.reverses)
    )
    reversals = [(row[0], row[1]) for row in connection.execute(latest) if row[2] in own]
    return _reverse_each(connection, reversals, action_id, at)


def _by_action(connection: Connection, action_id: int) -> list[tuple[int, int]]:
    own = (
        select(ledger.c.id, ledger.c.bottle_id)
        .where(ledger.c.action_id == action_id, ledger.c.reverses.is_(None))
        .order_by(ledger.c.id)
    )
    return [(row[0], row[1]) for row in connection.execute(own)]


def _reverse_each(
    connection: Connection, entries: Iterable[tuple[int, int]], action_id: int, at: datetime
) -> frozenset[int]:
    bottle_ids = set()
    for entry_id, bottle_id in entries:
        reversal = Entry(0, bottle_id, "reverse", at, reverses=entry_id)
        append_entry(connection, reversal, action_id)
        bottle_ids.add(bottle_id)
    return frozenset(bottle_ids)


def _entries(connection: Connection, bottle_ids: Collection[int] | None) -> Iterable[Entry]:
    statement = select(*_ENTRY.columns).order_by(ledger.c.id)
    if bottle_ids is not None and len(bottle_ids) <= MANY:
        statement = statement.where(ledger.c.bottle_id.in_(bottle_ids))
    for row in connection.execute(statement).all():
        if bottle_ids is None or row.bottle_id in bottle_ids:
            yield _ENTRY.value(row)
