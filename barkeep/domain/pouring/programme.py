"""Linear programmes: the largest of a sum, where other sums have limits and nothing is below 0.

Small ones are solved here, exactly, by the simplex method. Bland's rule
(*Mathematics of Operations Research* 2(2), 1977) never comes to the same table
twice, so that it ends. Every number given is a fraction, and a row of
fractions is a row of whole numbers once it is multiplied; pivoting as Edmonds
does (*Journal of Research of the NBS* 71B, 1967) keeps them whole over one
divisor, so that nothing is ever rounded. Large ones go to scipy's HiGHS, which
takes longer to load than most bars take to answer.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

Ended: TypeAlias = Literal["proved", "time", "cancelled"]
"""Why a search ended: nothing can be better, its time was over, or nobody wanted more of it."""
SMALL = 250
"""The most figures in a programme that is solved here: four milliseconds, or some 16 ways."""


@dataclass(frozen=True, slots=True)
class Largest:
    """The largest sum, and what each limit is worth to it: its last part times all of it."""

    sum: float
    worth: tuple[float, ...]


def largest(
    goal: Sequence[float], rows: Sequence[Sequence[float]], limits: Sequence[float]
) -> Largest:
    """The largest sum of `goal` where no sum of a row is above its limit, and nothing below 0.

    Limits are 0 or more. Raises `ArithmeticError` where nothing limits the sum.
    """
    if len(rows) * len(goal) <= SMALL:
        return _exactly(goal, rows, limits)
    return _by_highs(goal, rows, limits)


def _exactly(
    goal: Sequence[float], rows: Sequence[Sequence[float]], limits: Sequence[float]
) -> Largest:
    table = [_whole([*row, limit]) for row, limit in zip(rows, limits, strict=True)]
    given = [row[-1] for row in table]
    table.append(_whole([*(-each for each in goal), 0.0]))
    # What each column and each row stands for: first the parts of the sum, then the limits.
    columns = list(range(len(goal)))
    bases = list(range(len(goal), len(goal) + len(rows)))
    divisor = 1
    while (entering := _entering(table[-1], columns)) is not None:
        leaving = _leaving(table, entering, bases)
        divisor = _pivot(table, leaving, entering, divisor)
        columns[entering], bases[leaving] = bases[leaving], columns[entering]
    scale = divisor * _common(goal)
    worth = [0.0] * len(rows)
    for column, stands_for in enumerate(columns):
        if stands_for >= len(goal):
            number = stands_for - len(goal)
            worth[number] = table[-1][column] * given[number] / scale
    return Largest(table[-1][-1] / scale, tuple(worth))


def _by_highs(
    goal: Sequence[float], rows: Sequence[Sequence[float]], limits: Sequence[float]
) -> Largest:
    from scipy.optimize import linprog  # heavy, and most bars never need it

    solved = linprog([-each for each in goal], rows, limits, method="highs")
    if not solved.success or solved.x is None:
        raise ArithmeticError(f"the largest sum could not be found: {solved.message}")
    last = zip(solved.ineqlin.marginals, limits, strict=True)
    found = sum(each * part for each, part in zip(goal, solved.x, strict=True))
    return Largest(float(found), tuple(-float(each) * limit for each, limit in last))


def _common(numbers: Sequence[float]) -> int:
    """The least number that makes all of these whole."""
    return math.lcm(*(each.as_integer_ratio()[1] for each in numbers))


def _whole(numbers: Sequence[float]) -> list[int]:
    """The numbers times the least number that makes all of them whole."""
    times = _common(numbers)
    ratios = (each.as_integer_ratio() for each in numbers)
    return [above * (times // below) for above, below in ratios]


def _entering(goal: Sequence[int], columns: Sequence[int]) -> int | None:
    """The column to bring in, the first of those that make the sum larger; None where none does."""
    larger = [column for column in range(len(columns)) if goal[column] < 0]
    return min(larger, key=columns.__getitem__, default=None)


def _leaving(table: Sequence[Sequence[int]], entering: int, bases: Sequence[int]) -> int:
    """The row that limits a column most, of several the first."""
    found: int | None = None
    for number, base in enumerate(bases):
        taken, left = table[number][entering], table[number][-1]
        if taken <= 0:
            continue
        if found is not None:
            sooner = left * table[found][entering] - table[found][-1] * taken
            if sooner > 0 or (sooner == 0 and base > bases[found]):
                continue
        found = number
    if found is None:
        raise ArithmeticError("nothing limits the sum")
    return found


def _pivot(table: list[list[int]], leaving: int, entering: int, divisor: int) -> int:
    """Let a column and a row change places; the new divisor of the whole table."""
    row = table[leaving]
    new = row[entering]
    for number, other in enumerate(table):
        if number == leaving:
            continue
        times = other[entering]
        if times:
            changed = [
                (each * new - times * taken) // divisor
                for each, taken in zip(other, row, strict=True)
            ]
            changed[entering] = -times
        else:
            changed = [each * new // divisor for each in other]
        table[number] = changed
    row[entering] = divisor
    return new
