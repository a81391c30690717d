"""Levels as they are said: as precise as a level deserves, and no more."""

from __future__ import annotations

from collections.abc import Mapping

from barkeep.domain.ingredients import Unit
from barkeep.domain.inventory import SIGMAS, CountMethod

METHODS: Mapping[CountMethod, str] = {
    "tenths": "judged in tenths",
    "volume": "measured by volume",
    "weight": "weighed",
    "height": "by the height of the liquid",
}


def number(amount: float, unit: Unit) -> str:
    """A number as precise as the unit deserves: whole ml and grams, pieces to a tenth.

    >>> number(314.7, "ml"), number(4.25, "ml"), number(2.0, "each")
    ('315', '4.2', '2')
    """
    shown = round(amount, 1 if unit == "each" or 0 < abs(amount) < 10 else 0) + 0.0
    return f"{shown:g}" if abs(shown) < 1e5 else f"{shown:.0f}"


def quantity(amount: float, unit: Unit) -> str:
    """An amount with its unit; pieces need none."""
    return number(amount, unit) if unit == "each" else f"{number(amount, unit)} {unit}"


def doubt_of(sigma: float) -> float:
    """What stands after ±: two sigmas, which 19 of 20 levels lie within."""
    return SIGMAS * sigma


def in_doubt(sigma: float, unit: Unit) -> str:
    """*± 12 ml*; empty for no doubt at all."""
    return f"± {quantity(doubt_of(sigma), unit)}" if sigma else ""


def with_doubt(amount: float, sigma: float, unit: Unit) -> str:
    """A level and what stands after ±: *372 ml ± 12*; pieces are in no doubt."""
    shown = quantity(amount, unit)
    return f"{shown} ± {number(doubt_of(sigma), unit)}" if sigma else shown


def certainty(method: CountMethod | None, sigma: float | None, unit: Unit) -> str:
    """How a level was measured and how far it may be off; empty for one nobody measured."""
    how = METHODS[method] if method else ""
    doubt = in_doubt(sigma or 0.0, unit)
    return ", ".join(part for part in (how, doubt) if part)
