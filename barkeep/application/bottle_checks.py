"""What every use case asks of a bottle before it writes to the ledger."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from math import isfinite
from typing import TYPE_CHECKING

from barkeep.domain.drafts import ProductDraft
from barkeep.domain.inventory import Bottle, Product
from barkeep.errors import (
    InvalidField,
    LevelAboveSize,
    NegativeAmount,
    NotEnoughLeft,
    UnknownName,
)
from barkeep.store import bottles as bottle_rows
from barkeep.store import products as product_rows
from barkeep.store.unit_of_work import UnitOfWork

if TYPE_CHECKING:
    from barkeep.domain.levels import MeasuredLevel

ROUNDING = 1e-6
"""A level may exceed a size, or a pour what is left, by this much: arithmetic, not a mistake."""


def product_there(work: UnitOfWork, product_id: int) -> Product:
    """The product as it is within the transaction. Raises `UnknownName`."""
    product = product_rows.read_product(work.connection, product_id)
    if product is None:
        raise UnknownName("product", f"#{product_id}")
    return product


def bottle_there(work: UnitOfWork, bottle_id: int) -> Bottle:
    """The bottle as it is within the transaction. Raises `UnknownName`."""
    bottle = bottle_rows.read_bottle(work.connection, bottle_id)
    if bottle is None:
        raise no_bottle(bottle_id)
    return bottle


def count_one(work: UnitOfWork, bottle: Bottle, measured: MeasuredLevel) -> None:
    """Append one count, in the bottle's unit. Raises `LevelAboveSize` or `NegativeAmount`."""
    amount = measured.amount
    if amount < 0:
        raise NegativeAmount(said(amount, bottle))
    level = level_within(amount, bottle.product, may_be_nothing=True)
    work.append(bottle.id, "count", level, method=measured.method, sigma=measured.sigma)


def level_within(level: float, product: Product, may_be_nothing: bool = False) -> float:
    """A level in the product's unit, at most its size. Raises `InvalidField`, `LevelAboveSize`."""
    if not isfinite(level) or level < 0 or (level == 0 and not may_be_nothing):
        raise InvalidField("level", level, "a bottle holds more than nothing")
    if level > product.size + ROUNDING:
        raise LevelAboveSize(level, product.size, product.unit, product.title)
    return min(level, product.size)


def taken_from(bottle: Bottle, amount: float) -> float:
    """What is poured where `amount` of the bottle's unit is asked for.

    Raises `InvalidField` for nothing or less, `NotEnoughLeft` for more than is left.
    """
    if not isfinite(amount) or amount <= 0:
        raise InvalidField("amount", amount, "it is more than nothing")
    left, product = bottle.level.amount, bottle.product
    if amount > left + ROUNDING:
        raise NotEnoughLeft(amount, left, product.unit, product.title)
    # A hair less than all of it is all of it, or the bottle would never be empty.
    return left if amount > left - ROUNDING else amount


def refuse_dates(made: date | None, use_by: date | None) -> None:
    """Raises `InvalidField` where a use-by day lies before the day of making."""
    if made and use_by and use_by < made:
        raise InvalidField("use by", use_by, f"it was made on {made}, after that")


def refuse_repeats(bottle_ids: Sequence[int]) -> None:
    """Raises `InvalidField` where a bottle is named twice, or none is."""
    if not bottle_ids:
        raise InvalidField("bottles", "", "name at least one")
    for bottle_id in bottle_ids:
        if bottle_ids.count(bottle_id) > 1:
            raise InvalidField("bottles", f"#{bottle_id}", "each is named once")


def no_bottle(bottle_id: int) -> UnknownName:
    """The error for a bottle that is not there, to be raised."""
    return UnknownName("bottle", f"#{bottle_id}")


def said(amount: float, of: Bottle | ProductDraft) -> str:
    """An amount with the unit of the bottle or product it is of, for a message."""
    unit = of.product.unit if isinstance(of, Bottle) else of.unit
    return f"{amount:g} {unit}"
