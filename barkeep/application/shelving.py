"""Putting a new bottle on the shelf, whoever fills it."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from barkeep.application.bottle_checks import level_within, product_there, refuse_dates, said
from barkeep.application.session import Session
from barkeep.domain.drafts import ProductDraft
from barkeep.domain.inventory import Product
from barkeep.errors import DuplicateName
from barkeep.store import bottles as bottle_rows
from barkeep.store import products as product_rows
from barkeep.store.unit_of_work import UnitOfWork


def shelve(
    session: Session,
    work: UnitOfWork,
    product: Product,
    amount: float | None,
    use_by: date | None,
    made: date | None,
    *,
    received: date | None = None,
    note: str = "",
) -> int:
    """Add a bottle as the last on the shelf; its id. Full unless `amount` says less.

    It came in today unless `received` says when. Raises `LevelAboveSize` or `InvalidField`.
    """
    level = product.size if amount is None else level_within(amount, product)
    made, use_by = _dates(session, product, made, use_by)
    place = bottle_rows.last_position(work.connection) + 1
    at = work.at if received is None else datetime.combine(received, work.at.time())
    row = bottle_rows.bottle_row(product.id, place, at.date(), made, use_by)
    (bottle_id,) = work.insert("bottle", [row])
    work.append(bottle_id, "receive", level, at=at, note=note)
    return bottle_id


def take_in(work: UnitOfWork, checked: ProductDraft) -> Product:
    """Add a product that was checked. Raises `DuplicateName`."""
    refuse_taken(work, checked)
    (product_id,) = work.insert("product", [product_rows.product_row(checked)])
    return product_there(work, product_id)


def refuse_taken(work: UnitOfWork, draft: ProductDraft, apart_from: int | None = None) -> None:
    """Raises `DuplicateName` where another product has the title and size already."""
    taken = product_rows.product_named(work.connection, draft)
    if taken is not None and taken.id != apart_from:
        raise DuplicateName("product", f"{draft.title}, {said(draft.size, draft)}")


def _dates(
    session: Session, product: Product, made: date | None, use_by: date | None
) -> tuple[date | None, date | None]:
    """What is made here is made today and keeps as long as its ingredient, unless told."""
    if product.house_made:
        made = made or session.clock().date()
        days = session.tree[product.ingredient].shelf_life_days
        if use_by is None and days is not None:
            use_by = made + timedelta(days=days)
    refuse_dates(made, use_by)
    return made, use_by
