"""A bar's bottles as the CSV text that `bottles_csv` reads back as they are.

Every figure has its unit and every day is an ISO one, so that nothing in it may
mean two things. What is in a bottle is named by its key, which no region and no
renaming changes. A level is what is expected now with its doubt, but for those
that a jug or the eye usually leaves.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date

from barkeep.documents.bottles_csv import COLUMNS
from barkeep.documents.csv_cells import csv_text
from barkeep.domain.bottles.bottle import (
    SCALE_SIGMA_G,
    SIGMAS,
    TENTHS_SIGMA,
    VOLUME_SIGMA_ML,
    Bottle,
    Tare,
)

ALWAYS = frozenset(
    {"product", "maker", "ingredient", "abv", "size", "level", "price", "opened", "use_by"}
)
"""Columns that are there even where no bottle has anything in them."""


def bottles_csv(bottles: Iterable[Bottle], currency: str) -> str:
    """Bottles as a CSV text, in their order; prices are in the bar's `currency`.

    Columns that few lists have are there where a bottle has something in them.
    """
    rows = [_cells(each, currency) for each in bottles]
    used = [each for each in COLUMNS if each in ALWAYS or any(row.get(each) for row in rows)]
    return csv_text([used, *([row[column] for column in used] for row in rows)])


def _cells(bottle: Bottle, currency: str) -> Mapping[str, str]:
    """What stands in each column, empty for nothing."""
    label = bottle.product
    return {
        "product": label.name,
        "maker": label.maker,
        "ingredient": label.ingredient,
        "abv": _said(label.abv_percent, "{} %"),
        "size": _amount(label.size, bottle),
        "level": _level(bottle),
        "price": "" if label.price is None else f"{_price(label.price)} {currency}",
        "opened": "no" if bottle.level.state == "sealed" else _day(bottle.level.opened),
        "use_by": _day(bottle.use_by),
        "sugar": _said(label.sugar_g_per_l, "{} g/l"),
        "shape": label.shape or "",
        "tare": "" if bottle.tare is None else _tare(bottle.tare),
        "house_made": "yes" if label.house_made else "",
        "made": _day(bottle.made),
        "received": _day(bottle.received),
        "barcode": label.barcode,
        "acid": _said(label.acid_g_per_l, "{} g/l"),
        "density": _said(label.density_g_per_ml, "{} g/ml"),
        "full": _said(bottle.full_g, "{} g"),
        "dash": _said(bottle.dash_ml, "{} ml"),
    }


def _number(value: float) -> str:
    """A number in full, without an exponent; what is less than any scale shows is left out."""
    return f"{value:.6f}".rstrip("0").rstrip(".")


def _rounded(doubt: float) -> str:
    """A doubt to a tenth, and never to nothing."""
    return _number(max(round(doubt, 1), 0.1))


def _said(value: float | None, how: str) -> str:
    return "" if value is None else how.format(_number(value))


def _price(value: float) -> str:
    """With two places, as prices are written, or as many as it has."""
    exact = _number(value)
    return f"{value:.2f}" if len(exact.partition(".")[2]) <= 2 else exact


def _amount(amount: float, bottle: Bottle) -> str:
    unit = bottle.product.unit
    return _number(amount) if unit == "each" else f"{_number(amount)} {unit}"


def _level(bottle: Bottle) -> str:
    """Empty for a full bottle that is sealed: nobody measured it."""
    level, size, unit = bottle.level, bottle.product.size, bottle.product.unit
    if level.state == "sealed" and level.amount == size:
        return ""
    amount = _amount(level.amount, bottle)
    if unit == "each" or not level.amount:
        return amount
    share, doubt = 100.0 * level.amount / size, level.expected_sigma
    if _is(doubt, TENTHS_SIGMA * size) and _is(share, round(share)):
        return f"{share:.0f} %"
    sure = _is(doubt, VOLUME_SIGMA_ML if unit == "ml" else SCALE_SIGMA_G)
    return amount if sure else f"{amount} ± {_rounded(SIGMAS * doubt)} {unit}"


def _is(value: float, other: float) -> bool:
    return abs(value - other) < 1e-6


def _day(day: date | None) -> str:
    return "" if day is None else day.isoformat()


def _tare(tare: Tare) -> str:
    weight = f"{_number(tare.weight_g)} g"
    return weight if tare.was_weighed else f"{weight} ± {_rounded(SIGMAS * tare.sigma_g)} g"
