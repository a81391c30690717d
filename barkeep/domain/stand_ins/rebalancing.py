"""Amounts that bring a changed drink nearest to what it was: bounded least squares.

What is held near is ethanol, sugar, acid and volume. How much of one counts as
much as how much of another is a choice of barkeep's (*common practice* knows
none): a gram of ethanol, a gram of sugar, 0.15 g of acid (the acid of 3 ml of
lime juice) and 10 ml of volume weigh the same. Besides, to change an amount by
its whole weighs as much as one of these, so that nothing moves for nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TypeAlias

SCALES = (1.0, 1.0, 0.15, 10.0)
"""What weighs the same: g of ethanol, g of sugar, g of acid, ml."""

KEEP = 1.0
"""What changing an amount by its whole weighs, in the same measure."""

ROUNDS = 20
"""Rounding has settled long before."""


Holds: TypeAlias = tuple[float, float, float, float]
"""Grams of ethanol, sugar and acid, and ml."""


@dataclass(frozen=True, slots=True)
class ChangingLine:
    """A line whose amount may change: what a millilitre holds, and from where to where it may go.

    `start_ml` is above nothing and lies between `low_ml` and `high_ml`.
    """

    per_ml: Holds
    start_ml: float
    low_ml: float
    high_ml: float


@dataclass(frozen=True, slots=True)
class Rebalancing:
    """The parts that may change and what they should hold together."""

    parts: tuple[ChangingLine, ...]
    target: Holds

    def off(self, amounts_ml: Sequence[float]) -> Holds:
        """What these amounts hold more than they should."""
        ethanol, sugar, acid, volume = (
            sum(part.per_ml[each] * ml for part, ml in zip(self.parts, amounts_ml, strict=True))
            - self.target[each]
            for each in range(4)
        )
        return (ethanol, sugar, acid, volume)

    def distance(self, amounts_ml: Sequence[float]) -> float:
        """How far off, weighted: the root of the sum of squares."""
        scaled = zip(self.off(amounts_ml), SCALES, strict=True)
        return float(sum((off / scale) ** 2 for off, scale in scaled) ** 0.5)

    def weight(self, amounts_ml: Sequence[float]) -> float:
        """What is made least: the squared distance, and what the changes themselves weigh."""
        changes = (
            KEEP * (ml / part.start_ml - 1.0)
            for part, ml in zip(self.parts, amounts_ml, strict=True)
        )
        return self.distance(amounts_ml) ** 2 + sum(each * each for each in changes)

    @property
    def start(self) -> tuple[float, ...]:
        """The amounts before anything is changed."""
        return tuple(part.start_ml for part in self.parts)


def solve(problem: Rebalancing) -> tuple[float, ...]:
    """The amounts in ml that weigh least within their bounds."""
    import numpy as np
    from scipy.optimize import lsq_linear  # heavy, and not every start needs it

    count = len(problem.parts)
    rows = np.zeros((4 + count, count))
    wanted = np.zeros(4 + count)
    for each, scale in enumerate(SCALES):
        rows[each] = [part.per_ml[each] * part.start_ml / scale for part in problem.parts]
        wanted[each] = problem.target[each] / scale
    rows[4:] = KEEP * np.eye(count)
    wanted[4:] = KEEP
    low = [part.low_ml / part.start_ml for part in problem.parts]
    high = [part.high_ml / part.start_ml for part in problem.parts]
    shares = lsq_linear(rows, wanted, (low, high), method="bvls").x
    return tuple(
        min(part.high_ml, max(part.low_ml, float(share) * part.start_ml))
        for share, part in zip(shares, problem.parts, strict=True)
    )


def measurable(
    problem: Rebalancing,
    amounts_ml: Sequence[float],
    marks: Callable[[float], Sequence[float]],
) -> tuple[float, ...]:
    """Amounts near these that can be measured and weigh least; never worse than the start.

    `marks` gives, for an amount, the ones near it that can be measured. A line
    may also stay what it was.
    """
    best = problem.start
    found = [_nearest(ml, part, marks) for ml, part in zip(amounts_ml, problem.parts, strict=True)]
    for _ in range(ROUNDS):
        before = list(found)
        for number, part in enumerate(problem.parts):
            near = [*_within(part, marks(found[number])), part.start_ml, found[number]]
            found[number] = min(near, key=lambda ml: problem.weight(_with(found, number, ml)))
        if found == before:
            break
    return tuple(found) if problem.weight(found) < problem.weight(best) else best


def _nearest(ml: float, part: ChangingLine, marks: Callable[[float], Sequence[float]]) -> float:
    return min((*_within(part, marks(ml)), part.start_ml), key=lambda each: abs(each - ml))


def _within(part: ChangingLine, amounts_ml: Sequence[float]) -> list[float]:
    return [ml for ml in amounts_ml if part.low_ml <= ml <= part.high_ml]


def _with(amounts_ml: Sequence[float], number: int, ml: float) -> list[float]:
    return [*amounts_ml[:number], ml, *amounts_ml[number + 1 :]]
