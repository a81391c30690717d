"""What is left in a bottle, read from how someone measured it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from barkeep.domain.amounts import Amount, amount_at_start, spaced
from barkeep.domain.ingredients import Unit
from barkeep.domain.inventory import TENTHS_SIGMA, VOLUME_SIGMA_ML, CountMethod
from barkeep.domain.measures import to_quantity
from barkeep.errors import AmountError, LevelAboveSize, WrongDimension

_LEVEL_WANTED: Mapping[Unit, str] = {
    "ml": "a share of the bottle such as 0.4 or 4/10, or a volume such as 315 ml",
    "g": "a weight such as 250 g, or a share such as 0.4",
    "each": "a number of pieces such as 4",
}
WEIGHT_SIGMA_G = 1.0
"""One-sigma doubt of a kitchen scale (*common practice*)."""

_ROUNDING = 1e-6
_PERCENT = re.compile(r"(?P<number>[0-9]{1,3}(?:[.,][0-9]+)?)[ ]?%")


@dataclass(frozen=True, slots=True)
class MeasuredLevel:
    """A level in the bottle's unit, how it was measured, and its one-sigma doubt."""

    amount: float
    method: CountMethod
    sigma: float


def parse_level(text: str, size: float, unit: Unit, bottle_title: str) -> MeasuredLevel:
    """Read what is left in a bottle of `size` (in `unit`).

    A bare number up to 1, `4/10` and `40 %` are shares of the bottle; pieces
    are counted, so for them a whole number is just that many.

    Raises `AmountError`, `NegativeAmount`, `WrongDimension` or `LevelAboveSize`.
    """
    plain = spaced(text.strip())
    share = _share(plain, unit)
    if share is not None:
        amount, method, sigma = share * size, "tenths", TENTHS_SIGMA * size
        return MeasuredLevel(_within(amount, size, unit, bottle_title), "tenths", sigma)
    found = amount_at_start(plain)
    if found is None or plain[found.end :].strip(" ."):
        raise AmountError(text.strip()[:60], f"write {_LEVEL_WANTED[unit]}")
    if found.high is not None:
        raise AmountError(text.strip(), "a level is one number, not a range")
    if found.unit is None and unit == "ml":
        expected = "a share of the bottle is 0 to 1, and a volume needs a unit, such as 315 ml"
        raise AmountError(text.strip(), expected)
    try:
        amount = to_quantity(Amount(found.value, None, found.unit or unit), unit)
    except WrongDimension as wrong:
        raise WrongDimension(text.strip(), wrong.given, _LEVEL_WANTED[unit]) from None
    method, sigma = _MEASURED[unit]
    return MeasuredLevel(_within(amount, size, unit, bottle_title), method, sigma)


_MEASURED: Mapping[Unit, tuple[CountMethod, float]] = {
    "ml": ("volume", VOLUME_SIGMA_ML),
    "g": ("weight", WEIGHT_SIGMA_G),
    "each": ("volume", 0.0),
}


def _share(text: str, unit: Unit) -> float | None:
    """The share of a bottle that a text names, None where it names an amount instead."""
    percent = _PERCENT.fullmatch(text)
    if percent:
        return float(percent["number"].replace(",", ".")) / 100.0
    found = amount_at_start(text)
    if found is None or found.unit or found.high is not None or text[found.end :].strip():
        return None
    pieces = unit == "each" and found.value == int(found.value)  # 1 is one piece, not all
    return None if found.value > 1.0 or pieces else found.value


def _within(amount: float, size: float, unit: Unit, bottle_title: str) -> float:
    if amount > size + _ROUNDING:
        raise LevelAboveSize(float(f"{amount:.6g}"), size, unit, bottle_title)
    return min(amount, size)
