"""The published constants of `resources/liquids.toml`, and the check of a range."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Sequence
from functools import cache
from typing import Any

from barkeep.errors import OutsideRange
from barkeep.shipped_data import Table, parse, table_of

FILE = "liquids.toml"


@cache
def _document() -> Table:
    return table_of(FILE, _read_constants, Table)


def _read_constants(text: str) -> Table:
    return parse(text, FILE)


def constants(section: str) -> Any:
    """One table of the file, as TOML gives it."""
    return _document()[section]


def within(quantity: str, value: float, low: float, high: float, *, unit: str) -> float:
    """The value, where it lies from `low` to `high`. Raises `OutsideRange` where it does not."""
    if not (math.isfinite(value) and low <= value <= high):
        raise OutsideRange(quantity=quantity, value=value, low=low, high=high, unit=unit)
    return value


def interpolated(points: Sequence[float], values: Sequence[float], at: float) -> float:
    """The value on the straight line between the two points around `at`; beyond them, the end's."""
    if at <= points[0]:
        return float(values[0])
    if at >= points[-1]:
        return float(values[-1])
    high = bisect_left(points, at)
    low = high - 1
    share = (at - points[low]) / (points[high] - points[low])
    return float(values[low] + (values[high] - values[low]) * share)


def polynomial(coefficients: Sequence[float], x: float) -> float:
    """c0 + c1 x + c2 x^2 + ..., by Horner's rule."""
    total = 0.0
    for coefficient in reversed(coefficients):
        total = total * x + coefficient
    return total
