"""Quantities rounded to what a bar can measure, and printed in ounces, ml or cl.

A printed amount lies within half a step of the quantity, reads back, and is
printed the same again.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import ROUND_FLOOR, Decimal
from fractions import Fraction
from functools import cache
from typing import Literal, get_args

from barkeep.domain.amounts.amount import Amount, show_amount
from barkeep.domain.amounts.measures import show_quantity, to_quantity
from barkeep.domain.amounts.units import US_UNITS, BarUnits, Unit

Style = Literal["as_written", "oz", "ml", "cl", "parts"]
"""How the amounts of a spec are shown; *oz* is the bar's own ounce."""
STYLES: tuple[Style, ...] = get_args(Style)


@dataclass(frozen=True, slots=True)
class Rounded:
    """So many of a unit, to the nearest `step` of it."""

    value: Fraction
    unit: str
    step: Fraction


@dataclass(frozen=True, slots=True)
class _Band:
    """From `start` on, itself a step, a volume is rounded to a `step` of `unit`, or a third."""

    start: Fraction
    unit: str
    step: Fraction
    unit_ml: Fraction
    thirds: bool = False

    @property
    def start_ml(self) -> Fraction:
        return self.start * self.unit_ml

    def nearest(self, volume_ml: Fraction) -> Fraction:
        """The step nearest to a volume, in `unit`."""
        value = volume_ml / self.unit_ml
        steps = [_to(value, self.step)]
        steps += [_to(value, Fraction(1, 3))] if self.thirds else []
        return min(steps, key=lambda each: abs(each - value))


_METRIC_ML: Sequence[tuple[str, str]] = (
    ("0", "0.05"),  # a drop
    ("0.5", "0.1"),  # the marks of a 2 ml syringe
    ("2.5", "0.5"),  # the marks of a 10 ml cylinder, and of measuring spoons
    ("10", "2.5"),  # a jigger's lines: 10, 15, 20, 22.5, 30
    ("60", "5"),  # a small jug
    ("1000", "10"),  # a litre jug
)
"""From so many ml on, rounded to so many. What the steps are marked on is *common practice*;
at worst, just above 10 and 60 ml, half a step is an eighth and a twenty-fourth of the amount."""


_SMALL: Sequence[tuple[str, str, str]] = (
    ("0", "drop", "1"),
    ("1/2", "dash", "1/2"),
    ("1", "dash", "1"),
    ("1/2", "tsp", "1/8"),
    ("3/4", "tsp", "1/4"),
)
"""Below a quarter ounce nobody pours ounces: drops, dashes, then quarters of a teaspoon, and just
above half of one an eighth, for the nearest quarter may be a fifth off."""
_OUNCES: Sequence[tuple[str, str]] = (("1/4", "1/8"), ("4", "1/4"), ("16", "1/2"), ("64", "1"))
"""From so many ounces on, rounded to such a part of one: jiggers have eighths and thirds, and
above a single serve half a step stays below a thirty-second of the amount (*common practice*)."""


def rounded(volume_ml: float, style: Style, units: BarUnits = US_UNITS) -> Rounded:
    """A volume as it can be measured in a style; in ml where the style is none for a volume."""
    exact = Fraction(volume_ml)
    bands = _bands(style, units)
    slack = exact * Fraction(1, 10**9)  # an amount that was read back may be a hair too small
    number = max(each for each, band in enumerate(bands) if band.start_ml <= exact + slack)
    band = bands[number]
    value = band.nearest(exact)
    above = bands[number + 1] if number + 1 < len(bands) else None
    if above is not None and value * band.unit_ml >= above.start_ml:
        coarser = band.step * band.unit_ml / above.unit_ml  # it is as far off as in the band below
        return Rounded(above.start, above.unit, max(above.step, coarser))
    if not value:  # no drops at all is no ounces
        last = bands[-1]
        return Rounded(value, last.unit, band.step * band.unit_ml / last.unit_ml)
    return Rounded(value, band.unit, band.step)


def show_as(quantity: float, unit: Unit, style: Style, units: BarUnits = US_UNITS) -> str:
    """A quantity in an ingredient's own unit as it is printed in a style.

    Weights and pieces stay what they are; small volumes among ounces become
    spoons, dashes or drops.

    >>> show_as(22.18, "ml", "oz"), show_as(22.18, "ml", "ml"), show_as(1.6, "ml", "oz")
    ('¾ oz', '22.5 ml', '2 dashes')
    """
    if unit != "ml":
        return show_quantity(quantity, unit)
    found = rounded(quantity, style, units)
    return show_amount(float(found.value), found.unit, units)


def _to(value: Fraction, step: Fraction) -> Fraction:
    """The nearest multiple of a step; the larger one of two as near."""
    return (value / step + Fraction(1, 2)) // 1 * step


@cache
def _bands(style: Style, units: BarUnits) -> tuple[_Band, ...]:
    if style == "oz":
        small = [(start, unit, step, False) for start, unit, step in _SMALL]
        ounces = [(start, units.ounce, step, step == "1/8") for start, step in _OUNCES]
        return tuple(
            _Band(
                start=Fraction(start),
                unit=unit,
                step=Fraction(step),
                unit_ml=_ml(unit, units),
                thirds=thirds,
            )
            for start, unit, step, thirds in (*small, *ounces)
        )
    unit = "cl" if style == "cl" else "ml"
    size = _ml(unit, units)
    return tuple(
        _Band(Fraction(start) / size, unit, Fraction(step) / size, size)
        for start, step in _METRIC_ML
    )


def _ml(unit: str, units: BarUnits) -> Fraction:
    """What a unit comes to, exactly as the table of units writes it."""
    return Fraction(repr(to_quantity(Amount(1.0, None, unit), "ml", units)))


_EIGHTH = 0.125


def down_to(value: float, places: int) -> float:
    """A number with so many decimal places and never more than it was.

    Twelve digits are looked at: what is behind them is the noise of arithmetic.

    >>> down_to(11.8399, 2), down_to(700.0, 2)
    (11.83, 700.0)
    """
    exact = Decimal(f"{value:.12g}")
    return float(exact.quantize(Decimal(1).scaleb(-places), ROUND_FLOOR))


def down_in_digits(value: float, digits: int) -> float:
    """A number above 0 with so many digits that count, whole ones all kept.

    >>> down_in_digits(11.8399, 4), down_in_digits(11839.9, 4)
    (11.83, 11839.0)
    """
    return down_to(value, max(0, digits - 1 - math.floor(math.log10(value))))


NOISE_PLACES = 3
"""Behind so many decimals of an amount is arithmetic, which must not take another fruit."""


def whole_up(amount: float) -> float:
    """So many whole pieces as hold an amount.

    >>> whole_up(3.0000001), whole_up(3.01)
    (3.0, 4.0)
    """
    return float(math.ceil(round(amount, NOISE_PLACES)))


def whole_with_spare(amount: float, spare: float) -> float:
    """So many whole pieces as hold an amount, and none more that what is to spare does not fill.

    >>> [whole_with_spare(each, 0.15 * each) for each in (4.0, 4.6, 7.0)]
    [4.0, 5.0, 8.0]
    """
    filled = float(math.floor(round(amount + spare, NOISE_PLACES)))
    return max(whole_up(amount), filled)


def rounded_down(amount: float, unit: Unit) -> float:
    """An amount that can be measured out and printed, and is no more than it was.

    Whole ml and grams, eighths of a piece, and two digits of what is less than
    ten ml or grams or than an eighth.

    >>> rounded_down(1015.6, "ml"), rounded_down(4.27, "g"), rounded_down(0.7, "each")
    (1015.0, 4.2, 0.625)
    """
    if amount <= 0.0:
        return 0.0
    if unit == "each" and amount >= _EIGHTH:
        return down_to(amount / _EIGHTH, 0) * _EIGHTH
    return down_in_digits(amount, 2)
