"""In what order bottles that would do alike are used up."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date

from barkeep.domain.bottles.bottle import Bottle

OVERPROOF_PERCENT, OVERPROOF_TIMES = 50.0, 1.2
"""A label this strong, and so many times its kind's usual, is overproof (*common practice*)."""


@dataclass(frozen=True, slots=True)
class Turn:
    """What decides a bottle's turn among others that would do alike.

    `off` is past its best, `house` the owner's usual pour, `strong` a label much
    above what its kind is, `last` the last day it is good.
    """

    off: bool = False
    house: bool = False
    strong: bool = False
    last: date | None = None


Rank = tuple[bool, bool, bool, bool, date, float, int]


def turn_rank(bottle: Bottle, turn: Turn) -> Rank:
    """What sorts bottles as they are used up.

    Sound before past its best, the owner's usual pour, the ordinary strength,
    open before sealed, then what goes off first, then the emptiest.
    """
    return (
        turn.off,
        not turn.house,
        turn.strong,
        bottle.level.state == "sealed",
        turn.last or date.max,
        bottle.level.amount,
        bottle.id,
    )


def pour_order(
    bottles: Iterable[Bottle], turn_of: Callable[[Bottle], Turn] | None = None
) -> tuple[Bottle, ...]:
    """The bottles in the order they are used up; by their own dates where nothing else is known."""
    turn = turn_of or _by_its_date
    return tuple(sorted(bottles, key=lambda each: turn_rank(each, turn(each))))


def _by_its_date(bottle: Bottle) -> Turn:
    return Turn(last=bottle.use_by)


def is_overproof(abv_percent: float | None, usual_percent: float | None) -> bool:
    """Whether a label's strength is far above what its kind usually has."""
    if abv_percent is None or usual_percent is None:
        return False
    return abv_percent >= max(OVERPROOF_PERCENT, OVERPROOF_TIMES * usual_percent)
