"""Products and bottles: between rows and values, each bottle with the fold of its ledger."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import replace
from typing import Any

from sqlalchemy import Connection, func, select

from barkeep.domain.bottles.bottle import Bottle, Entry, Label, Level, Product, Tare, fold
from barkeep.domain.phrases import folded
from barkeep.store import ledger
from barkeep.store.rows import Mapper, Row
from barkeep.store.schema import bottle, product

_PRODUCT = Mapper(
    Product,
    product,
    beside={
        "folded_title": lambda label: folded(label.title),
        "hidden": lambda _label: False,
    },
)

_BOTTLE = Mapper(
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

_PRODUCTS = select(*_PRODUCT.columns)

_SHOWN_BOTTLES = (
    select(*_BOTTLE.columns, bottle.c.product_id, bottle.c.tare_g, bottle.c.tare_sigma_g)
    .where(~bottle.c.hidden)
    .order_by(bottle.c.position, bottle.c.id)
)


def read_products(connection: Connection) -> tuple[Product, ...]:
    """Every product that is not hidden, by title."""
    shown = _PRODUCTS.where(~product.c.hidden)
    ordered = shown.order_by(product.c.folded_title, product.c.size, product.c.id)
    return tuple(_PRODUCT.value(row) for row in connection.execute(ordered))


def read_product(connection: Connection, product_id: int) -> Product | None:
    """One product, None where there is none or it is hidden."""
    statement = _PRODUCTS.where(product.c.id == product_id, ~product.c.hidden)
    row = connection.execute(statement).first()
    return None if row is None else _PRODUCT.value(row)


def product_named(connection: Connection, label: Label) -> Product | None:
    """The product that has the label's title and size already."""
    statement = _PRODUCTS.where(
        product.c.folded_title == folded(label.title),
        product.c.size == label.size,
        product.c.unit == label.unit,
        ~product.c.hidden,
    )
    row = connection.execute(statement).first()
    return None if row is None else _PRODUCT.value(row)


def product_row(label: Label) -> Row:
    """The row of a label, without its id."""
    return _PRODUCT.row(label)


def bottle_row(one: Bottle) -> Row:
    """The row of a bottle, without its id. Its level is the ledger's."""
    return _BOTTLE.row(one)


def read_bottles(
    connection: Connection,
    products: tuple[Product, ...] = (),
    known: Mapping[int, Level] | None = None,
) -> tuple[Bottle, ...]:
    """Every bottle that is not hidden, in the owner's order.

    `products` are shared where given. `known` levels are taken as they are;
    only the entries of other bottles are read.
    """
    rows = connection.execute(_SHOWN_BOTTLES).all()
    bottles = _bottles(connection, rows, products or read_products(connection))
    missing = None if known is None else {each.id for each in bottles} - known.keys()
    written = ledger.entries_by_bottle(connection, missing) if missing != set() else {}
    return tuple(_with_level(each, known or {}, written) for each in bottles)


def read_bottle(connection: Connection, bottle_id: int) -> Bottle | None:
    """One bottle as the ledger has it now, None where there is none or it is hidden."""
    rows = connection.execute(_SHOWN_BOTTLES.where(bottle.c.id == bottle_id)).all()
    if not rows:
        return None
    (empty,) = _bottles(connection, rows, ())
    return _with_level(empty, {}, ledger.entries_by_bottle(connection, {bottle_id}))


def bottles_of(connection: Connection, product_id: int) -> int:
    """How many bottles of a product there are, hidden ones left out."""
    own = select(func.count()).where(bottle.c.product_id == product_id, ~bottle.c.hidden)
    return int(connection.execute(own).scalar_one())


def last_position(connection: Connection) -> int:
    """The place of the last bottle along the shelf, -1 for a bar without bottles."""
    last = select(func.coalesce(func.max(bottle.c.position), -1))
    return int(connection.execute(last).scalar_one())


def _bottles(
    connection: Connection, rows: Collection[Any], products: Collection[Product]
) -> list[Bottle]:
    """The bottles of these rows, their levels not read yet, each with its product."""
    by_id = {each.id: each for each in products}
    unread = {row.product_id for row in rows} - by_id.keys()  # hidden ones, if any
    if unread:
        found = connection.execute(_PRODUCTS.where(product.c.id.in_(unread)))
        by_id |= {each.id: each for each in map(_PRODUCT.value, found)}
    return [_empty(row, by_id[row.product_id]) for row in rows]


def _empty(row: Any, product: Product) -> Bottle:
    tare = None if row.tare_g is None else Tare(row.tare_g, row.tare_sigma_g)
    return _BOTTLE.value(row, product=product, level=Level(), tare=tare)


def _with_level(
    empty: Bottle, known: Mapping[int, Level], written: Mapping[int, Sequence[Entry]]
) -> Bottle:
    level = known.get(empty.id) or fold(written.get(empty.id, ()), empty.product.unit)
    return replace(empty, level=level)
