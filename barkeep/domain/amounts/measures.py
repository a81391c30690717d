"""What amounts come to: conversions, with the factors of `barkeep.domain.amounts.units`."""

from __future__ import annotations

from collections.abc import Mapping

from barkeep.domain.amounts.amount import (
    US_UNITS,
    Amount,
    BarUnits,
    parse_amount,
    show_amount,
    show_number,
    show_range,
    unit_named,
)
from barkeep.domain.amounts.units import Dimension, Unit, defined
from barkeep.errors import WrongDimension

__all__ = [
    "US_UNITS",
    "Amount",
    "BarUnits",
    "dashes_from",
    "dimension",
    "length_cm",
    "parse_amount",
    "show_amount",
    "show_quantity",
    "show_range",
    "show_volume",
    "to_quantity",
    "unit_named",
]


_SAID: Mapping[Dimension, str] = {
    "volume": "a volume",
    "mass": "a weight",
    "count": "a number of pieces",
    "part": "a share of the drink",
    "length": "a length",
    "loose": "a piece of no fixed size",
}

_WANTED: Mapping[Unit, str] = {
    "ml": "a volume such as 60 ml or 2 oz",
    "g": "a weight such as 10 g",
    "each": "a number of pieces such as 2",
}

_DIMENSION: Mapping[Unit, Dimension] = {"ml": "volume", "g": "mass", "each": "count"}


def dimension(unit: str, units: BarUnits = US_UNITS) -> Dimension:
    """What a unit measures."""
    return defined(unit, units)[0]


def to_quantity(amount: Amount, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """An amount in *ml*, *g* or *each*; of a range its lower end, of dashes the bar's own.

    Raises `WrongDimension`.

    >>> to_quantity(Amount(6.0, None, "cl"), "ml")
    60.0
    """
    return _converted(amount, _DIMENSION[unit], _WANTED[unit], units)


def length_cm(amount: Amount) -> float:
    """A length in cm, such as the height of a liquid. Raises `WrongDimension`.

    >>> length_cm(Amount(4.5, None, "in"))
    11.43
    """
    return _converted(amount, "length", "a length such as 11.5 cm or 4.5 in", US_UNITS)


def _converted(amount: Amount, wanted: Dimension, example: str, units: BarUnits) -> float:
    kind, factor = defined(amount.unit, units)
    if kind != wanted:
        shown = show_range(amount.value, amount.high, amount.unit, units)
        raise WrongDimension(shown, _SAID[kind], example)
    # 12 digits: 0.1 l is 100 ml, not 100.00000000000001.
    return float(f"{amount.value * factor:.12g}")


def dashes_from(bottle_dash_ml: float | None, dashes: float, bar_dash_ml: float) -> float:
    """How many dashes of one bottle come to so many of the bar's.

    `bottle_dash_ml` is what one dash from that bottle comes to, None for the
    bar's own: two dashes of one may be four of the other.

    >>> dashes_from(0.4, 2.0, 0.8)
    4.0
    """
    return dashes if bottle_dash_ml is None else dashes * bar_dash_ml / bottle_dash_ml


def show_volume(volume_ml: float) -> str:
    """A volume in ml as it is printed: *22.5 ml*, *315 ml*."""
    return show_amount(volume_ml, "ml")


def show_quantity(amount: float, unit: Unit) -> str:
    """An amount in an ingredient's or bottle's own unit as it is printed."""
    return show_number(amount, fractions=True) if unit == "each" else show_amount(amount, unit)
