"""Bottles: between rows and the domain's values, each with the fold of its ledger."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

from sqlalchemy import Connection, Select, func, select

from barkeep.domain.inventory import Bottle, Level, Product
from barkeep.store import ledger
from barkeep.store.products import COLUMNS, read_products
from barkeep.store.records import Row
from barkeep.store.schema import bottle, product


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
    levels = dict(known or {})
    missing = None if known is None else {row[0] for row in rows} - known.keys()
    if missing is None or missing:
        levels |= ledger.levels(connection, missing)
    return tuple(_bottle(row, by_id.get(row[5]), levels) for row in rows)


def read_bottle(connection: Connection, bottle_id: int) -> Bottle | None:
    """One bottle as the ledger has it now, None where there is none or it is hidden."""
    row = connection.execute(_shown().where(bottle.c.id == bottle_id)).first()
    return None if row is None else _bottle(row, None, ledger.levels(connection, {bottle_id}))


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
) -> Row:
    """The row of a new bottle, without its id."""
    return {
        "product_id": product_id,
        "position": position,
        "received": received,
        "made": made,
        "use_by": use_by,
        "hidden": False,
    }


def _shown() -> Select[Any]:
    own = (bottle.c.id, bottle.c.position, bottle.c.received, bottle.c.made, bottle.c.use_by)
    return (
        select(*own, *COLUMNS)
        .join_from(bottle, product)
        .where(~bottle.c.hidden)
        .order_by(bottle.c.position, bottle.c.id)
    )


def _bottle(row: Any, shared: Product | None, levels: Mapping[int, Level]) -> Bottle:
    identity, position, received, made, use_by, *label = row
    level = levels.get(identity) or Level()
    return Bottle(identity, shared or Product(*label), level, position, received, made, use_by)
