"""Within what a plan is looked for: so many purchases, so much money, and as long as is wanted."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import isfinite
from typing import TypeAlias

from barkeep.errors import InvalidField
from barkeep.translation import tr

MOST_BOTTLES = 50
"""So many are no shopping trip any more; more is a misprint."""
SECONDS = 10.0
"""How long is looked for something better, unless it is said."""

GoOn: TypeAlias = Callable[[float, float], bool]
"""Is told what the best so far is worth and what nothing exceeds; says whether to go on."""


def always(_worth: float, _bound: float) -> bool:
    """Go on to the end."""
    return True


@dataclass(frozen=True, slots=True)
class Limits:
    """At most so many purchases, and so much money; None for no limit."""

    bottles: int | None = None
    budget: float | None = None


def checked_limits(bottles: int | None, budget: float | None) -> Limits:
    """The limits of a plan. Raises `InvalidField` where none is said or one is no limit."""
    if bottles is None and budget is None:
        raise InvalidField(
            "budget", tr("nothing"), tr("say how many bottles, or how much may be spent")
        )
    if bottles is not None and not 1 <= bottles <= MOST_BOTTLES:
        raise InvalidField("bottles", bottles, tr("it is 1 to {most}", most=MOST_BOTTLES))
    if budget is not None and not (isfinite(budget) and budget > 0.0):
        raise InvalidField("budget", f"{budget:g}", tr("it is more than nothing"))
    return Limits(bottles, budget)
