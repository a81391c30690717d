"""Products and bottles: between rows and values, each bottle with the fold of its ledger."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from sqlalchemy import Connection, Select, func, select

from barkeep.domain.bottles.bottle import Bottle, Entry, Label, Level, Product, Tare, fold
from barkeep.domain.phrases import folded
from barkeep.store import ledger
from barkeep.store.records import Row
from barkeep.store.schema import bottle, product

COLUMNS = (
    product.c.id,
    product.c.name,
    product.c.maker,
    product.c.ingredient,
    product.c.size,
    product.c.unit,
    product.c.abv_percent,
    product.c.sugar_g_per_l,
    product.c.price,
    product.c.barcode,
    product.c.house_made,
    product.c.shape,
    product.c.density_g_per_ml,
    product.c.acid_g_per_l,
)


def read_products(connection: Connection) -> tuple[Product, ...]:
    """Every product that is not hidden, by title."""
    shown = select(*COLUMNS).where(~product.c.hidden)
    ordered = shown.order_by(product.c.folded_title, product.c.size, product.c.id)
    return tuple(Product(*row) for row in connection.execute(ordered))


def read_product(connection: Connection, product_id: int) -> Product | None:
    """One product, None where there is none or it is hidden."""
    statement = select(*COLUMNS).where(product.c.id == product_id, ~product.c.hidden)
    row = connection.execute(statement).first()
    return None if row is None else Product(*row)


def product_named(connection: Connection, draft: Label) -> Product | None:
    """The product that has the draft's title and size already."""
    statement = select(*COLUMNS).where(
        product.c.folded_title == folded(draft.title),
        product.c.size == draft.size,
        product.c.unit == draft.unit,
        ~product.c.hidden,
    )
    row = connection.execute(statement).first()
    return None if row is None else Product(*row)


def product_row(draft: Label) -> Row:
    """The row of a draft, without its id."""
    return {
        "name": draft.name,
        "maker": draft.maker,
        "folded_title": folded(draft.title),
        "ingredient": draft.ingredient,
        "size": draft.size,
        "unit": draft.unit,
        "abv_percent": draft.abv_percent,
        "sugar_g_per_l": draft.sugar_g_per_l,
        "price": draft.price,
        "barcode": draft.barcode,
        "house_made": draft.house_made,
        "hidden": False,
        "shape": draft.shape,
        "density_g_per_ml": draft.density_g_per_ml,
        "acid_g_per_l": draft.acid_g_per_l,
    }


def read_bottles(
    connection: Connection,
    products: tuple[Product, ...] = (),
    known: Mapping[int, Level] | None = None,
) -> tuple[Bottle, ...]:
    """Every bottle that is not hidden, in the owner's order.

    `products` are shared where given. `known` levels are taken as they are;
    only the entries of other bottles are read.
    """
    rows = connection.execute(_shown()).all()
    by_id = {each.id: each for each in products or read_products(connection)}
    bottles = tuple(_bottle(row, by_id.get(row[_OWN])) for row in rows)
    missing = None if known is None else {each.id for each in bottles} - known.keys()
    written = ledger.entries_by_bottle(connection, missing) if missing != set() else {}
    return tuple(_with_level(each, known or {}, written) for each in bottles)


def read_bottle(connection: Connection, bottle_id: int) -> Bottle | None:
    """One bottle as the ledger has it now, None where there is none or it is hidden."""
    row = connection.execute(_shown().where(bottle.c.id == bottle_id)).first()
    written = ledger.entries_by_bottle(connection, {bottle_id})
    return None if row is None else _with_level(_bottle(row, None), {}, written)


def bottles_of(connection: Connection, product_id: int) -> int:
    """How many bottles of a product there are, hidden ones left out."""
    own = select(func.count()).where(bottle.c.product_id == product_id, ~bottle.c.hidden)
    return int(connection.execute(own).scalar_one())


def last_position(connection: Connection) -> int:
    """The place of the last bottle along the shelf, -1 for a bar without bottles."""
    last = select(func.coalesce(func.max(bottle.c.position), -1))
    return int(connection.execute(last).scalar_one())


def bottle_row(
    product_id: int,
    position: int,
    received: date | None,
    made: date | None,
    use_by: date | None,
    tare: Tare | None = None,
) -> Row:
    """The row of a new bottle, without its id."""
    return {
        "product_id": product_id,
        "position": position,
        "received": received,
        "made": made,
        "use_by": use_by,
        "hidden": False,
        **measured_row(tare),
    }


def measured_row(
    tare: Tare | None, full_g: float | None = None, dash_ml: float | None = None
) -> Row:
    """The part of a bottle's row that a scale and a spoon have told."""
    return {
        "tare_g": tare.weight_g if tare else None,
        "tare_sigma_g": tare.sigma_g if tare else None,
        "full_g": full_g,
        "dash_ml": dash_ml,
    }


_OWN_COLUMNS = (
    bottle.c.id,
    bottle.c.position,
    bottle.c.received,
    bottle.c.made,
    bottle.c.use_by,
    bottle.c.tare_g,
    bottle.c.tare_sigma_g,
    bottle.c.full_g,
    bottle.c.dash_ml,
)

_OWN = len(_OWN_COLUMNS)
"""So many columns of a row are the bottle's; the rest is its label, the product's id first."""


def _shown() -> Select[Any]:
    return (
        select(*_OWN_COLUMNS, *COLUMNS)
        .join_from(bottle, product)
        .where(~bottle.c.hidden)
        .order_by(bottle.c.position, bottle.c.id)
    )


def _bottle(row: Any, shared: Product | None) -> Bottle:
    identity, position, received, made, use_by, tare_g, sigma_g, full_g, dash_ml = row[:_OWN]
    product = shared or Product(*row[_OWN:])
    tare = None if tare_g is None else Tare(tare_g, sigma_g)
    dates = (position, received, made, use_by)
    return Bottle(identity, product, Level(), *dates, tare, full_g, dash_ml)


def _with_level(
    empty: Bottle, known: Mapping[int, Level], written: Mapping[int, Sequence[Entry]]
) -> Bottle:
    level = known.get(empty.id) or fold(written.get(empty.id, ()), empty.product.unit)
    return replace(empty, level=level)
