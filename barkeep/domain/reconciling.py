"""Whether what was counted can be told apart from what was expected.

Both are in doubt: the count by its means, the expected level by the last
count's and by every pour since. Only a difference beyond two sigmas of both
together says that something is gone, or was never poured.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot

from barkeep.domain.ingredients import Unit
from barkeep.domain.inventory import variance
from barkeep.domain.level_words import doubt_of, quantity, with_doubt

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
    return f"{_gap(compared, unit)} than expected" if compared.told_apart else "as expected"


def reason(compared: Comparison, unit: Unit) -> str:
    """How the difference compares with the doubt: *7 ml less, within ± 30 ml*."""
    doubt = f"± {quantity(compared.doubt, unit)}"
    if compared.told_apart:
        return f"beyond the doubt of {doubt}" if compared.doubt else "counted exactly"
    if compared.is_exact:
        return "to the drop" if unit == "ml" else "exactly"
    return f"{_gap(compared, unit)}, within {doubt}"


def sentence(compared: Comparison, unit: Unit) -> str:
    """What a count comes to: *50 ml ± 10, 45 ml less than expected (95 ml): beyond …*."""
    counted = with_doubt(compared.counted, compared.counted_sigma, unit)
    found = f"{counted}, {difference(compared, unit)} ({quantity(compared.expected, unit)})"
    plain = compared.is_exact or not compared.doubt  # pieces: the numbers say it all
    return found if plain else f"{found}: {reason(compared, unit)}"


def _gap(compared: Comparison, unit: Unit) -> str:
    return f"{quantity(abs(compared.variance), unit)} {'less' if compared.variance > 0 else 'more'}"
