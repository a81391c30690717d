"""The least list: what is bought of all that a line lets one choose from, and what covers what.

An integer programme over all that is to be bought: the fewest packages, then the least money,
then what lines name first, then what is less special. Where a price is not known another thing
is rather bought. Last, what is bought anyway is poured before more of another kind.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from barkeep.domain.buying.packages import Package

LEVELS = 5
"""What is made least in turn: packages, money, places of the choices, what is special, and what
is poured as the kind it is bought as."""
NOISE = 1e-6


@dataclass(frozen=True, slots=True)
class Kind:
    """An ingredient and the least strength it must have."""

    ingredient: str
    least_abv: float | None = None


@dataclass(frozen=True, slots=True)
class Wanted:
    """So much of any one of these kinds, in their unit; the one that is rather taken first."""

    kinds: tuple[Kind, ...]
    amount: float


@dataclass(frozen=True, slots=True)
class Least:
    """The least list: for each thing wanted the kind to buy, and how many packages of each kind.

    `poured` is how much goes to what is wanted as the first of two kinds out of packages of the
    second, `kept` how much of each is left over for what has to be kept.
    """

    chosen: tuple[Kind, ...]
    packages: Mapping[Kind, int]
    poured: Mapping[tuple[Kind, Kind], float]
    kept: Mapping[Kind, float]


def least_list(
    wanted: Sequence[Wanted],
    kept: Mapping[Kind, float],
    packages: Mapping[Kind, Package],
    fits: Callable[[Package, Kind], bool],
    *,
    special: Callable[[Kind], float] = lambda _kind: 0.0,
    at_least: Mapping[Kind, int] | None = None,
) -> Least:
    """What to buy of all that is wanted.

    `kept` is how much must be left over of each kind, in which one package counts for every kind
    it fits. `packages` has that of each kind; a package of another kind may fit as well. How
    `special` a kind is decides between packages that are as good. Of each kind in `at_least` so
    many packages that fit it are bought in any case.
    """
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp  # loads slowly

    kinds = list(packages)
    parts = [
        (number, kind, place)
        for number, each in enumerate(wanted)
        for kind in each.kinds
        for place, other in enumerate(kinds)
        if fits(packages[other], kind)
    ]
    options = [(number, kind) for number, each in enumerate(wanted) for kind in each.kinds]
    # Columns: packages of each kind, what is kept of each, how much of which package goes to
    # what is wanted as which kind, and whether a thing is bought as a kind.
    first_kept, first_part = len(kinds), 2 * len(kinds)
    first_option = first_part + len(parts)
    size = first_option + len(options)
    rows, low, high = list[list[float]](), list[float](), list[float]()

    def row(values: Mapping[int, float], least: float, most: float) -> None:
        rows.append([values.get(each, 0.0) for each in range(size)])
        low.append(least)
        high.append(most)

    for place, kind in enumerate(kinds):
        taken = {first_part + n: 1.0 for n, part in enumerate(parts) if part[2] == place}
        row({**taken, first_kept + place: 1.0, place: -packages[kind].size}, -np.inf, 0.0)
    for n, (number, kind) in enumerate(options):
        given = {first_part + m: 1.0 for m, part in enumerate(parts) if part[:2] == (number, kind)}
        row({**given, first_option + n: -wanted[number].amount}, 0.0, 0.0)
    for number in range(len(wanted)):
        which = {first_option + n: 1.0 for n, each in enumerate(options) if each[0] == number}
        row(which, 1.0, 1.0)
    for kind, many in (at_least or {}).items():
        do_for_it = {place: 1.0 for place, other in enumerate(kinds) if fits(packages[other], kind)}
        row(do_for_it, float(many), np.inf)
    for kind, amount in kept.items():
        fitting = {
            first_kept + place: 1.0
            for place, other in enumerate(kinds)
            if fits(packages[other], kind)
        }
        row(fitting, amount, np.inf)
    goals = np.zeros((LEVELS, size))
    goals[0, : len(kinds)] = 1.0
    goals[1, : len(kinds)] = _costs([packages[each] for each in kinds])
    for n, (number, kind) in enumerate(options):
        goals[2, first_option + n] = wanted[number].kinds.index(kind)
    goals[3, : len(kinds)] = [special(each) for each in kinds]
    goals[4, first_kept:first_part] = 1.0
    for n, (_number, kind, place) in enumerate(parts):
        goals[4, first_part + n] = 1.0 if kinds[place] == kind else 0.0
    whole = np.zeros(size, np.int64)
    whole[: len(kinds)] = 1
    whole[first_option:] = 1
    upper = np.full(size, np.inf)
    upper[first_option:] = 1.0
    limits = [LinearConstraint(np.array(rows), low, high)]
    found = np.zeros(size)
    for goal in goals:
        solved = milp(goal, integrality=whole, bounds=Bounds(0.0, upper), constraints=limits)
        if solved.x is None:
            raise ArithmeticError(f"the list could not be solved: {solved.message}")
        found = solved.x
        limits.append(LinearConstraint(goal, -np.inf, float(goal @ found) + 1e-4))
    taken_as = {
        number: kind for n, (number, kind) in enumerate(options) if found[first_option + n] > 0.5
    }
    poured: dict[tuple[Kind, Kind], float] = {}
    for n, (_number, kind, place) in enumerate(parts):
        if (amount := float(found[first_part + n])) > NOISE:
            both = kind, kinds[place]
            poured[both] = poured.get(both, 0.0) + amount
    return Least(
        tuple(taken_as[number] for number in range(len(wanted))),
        {kind: round(float(found[place])) for place, kind in enumerate(kinds)},
        poured,
        {kind: float(found[first_kept + place]) for place, kind in enumerate(kinds)},
    )


def _costs(packages: Sequence[Package]) -> list[float]:
    """What each costs; what nobody knows more than all that is known together."""
    known = [each.price for each in packages if each.price is not None]
    unknown = 1.0 + sum(known)
    return [unknown if each.price is None else each.price for each in packages]
