"""Levels in words: what was counted beside what was expected, as precise as a level deserves."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import hypot

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import SIGMAS, CountMethod, variance
from barkeep.domain.bottles.levels import is_guess
from barkeep.translation import tr, tr_noop

METHODS: Mapping[CountMethod, str] = {
    "tenths": tr_noop("judged in tenths"),
    "volume": tr_noop("measured by volume"),
    "weight": tr_noop("weighed"),
    "height": tr_noop("by the height of the liquid"),
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


def percent(share: float) -> str:
    """A share in percent; never a full nothing for a drop, nor all of it for less."""
    if 0 < share < 0.01:
        return tr("under 1 %")
    return f"{min(share, 0.99) if 0 < share < 1 else share:.0%}".replace("%", " %")


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


GUESSED = tr_noop("guessed, nobody looked")


def certainty(
    method: CountMethod | None, sigma: float | None, unit: Unit, size: float = 0.0
) -> str:
    """How a level was measured and how far it may be off; empty for one nobody measured.

    In a bottle of `size` a level as unsure as a guess is called one.
    """
    how = tr(METHODS[method]) if method else ""
    how = tr(GUESSED) if how and is_guess(sigma, size) else how
    doubt = in_doubt(sigma or 0.0, unit)
    return ", ".join(part for part in (how, doubt) if part)


_ROUNDING = 1e-6


@dataclass(frozen=True, slots=True)
class Comparison:
    """An expected and a counted level, each with its one-sigma doubt, in the bottle's unit."""

    expected: float
    expected_sigma: float
    counted: float
    counted_sigma: float

    @property
    def variance(self) -> float:
        """Expected less counted: positive where something is missing."""
        return variance(self.expected, self.counted)

    @property
    def doubt(self) -> float:
        """How large a difference the doubt of both explains."""
        return doubt_of(hypot(self.expected_sigma, self.counted_sigma))

    @property
    def told_apart(self) -> bool:
        """Whether the difference is more than the doubt explains."""
        return abs(self.variance) > self.doubt + _ROUNDING

    @property
    def is_exact(self) -> bool:
        """Whether there is no difference at all."""
        return abs(self.variance) <= _ROUNDING


def difference(compared: Comparison, unit: Unit) -> str:
    """*45 ml less than expected*, or *as expected* where that cannot be told apart."""
    if not compared.told_apart:
        return tr("as expected")
    amount = quantity(abs(compared.variance), unit)
    if compared.variance > 0:
        return tr("{amount} less than expected", amount=amount)
    return tr("{amount} more than expected", amount=amount)


def reason(compared: Comparison, unit: Unit) -> str:
    """How the difference compares with the doubt: *7 ml less, within ± 30 ml*."""
    doubt = f"± {quantity(compared.doubt, unit)}"
    if compared.told_apart:
        if compared.doubt:
            return tr("beyond the doubt of {doubt}", doubt=doubt)
        return tr("counted exactly")
    if compared.is_exact:
        return tr("to the drop") if unit == "ml" else tr("exactly")
    amount = quantity(abs(compared.variance), unit)
    if compared.variance > 0:
        return tr("{amount} less, within {doubt}", amount=amount, doubt=doubt)
    return tr("{amount} more, within {doubt}", amount=amount, doubt=doubt)


def sentence(compared: Comparison, unit: Unit) -> str:
    """What a count comes to: *50 ml ± 10, 45 ml less than expected (95 ml): beyond …*."""
    counted = with_doubt(compared.counted, compared.counted_sigma, unit)
    found = f"{counted}, {difference(compared, unit)} ({quantity(compared.expected, unit)})"
    plain = compared.is_exact or not compared.doubt  # pieces: the numbers say it all
    return found if plain else f"{found}: {reason(compared, unit)}"
