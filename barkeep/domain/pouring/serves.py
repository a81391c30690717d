"""How many serves the levels allow when lines draw on the same bottles.

Each line has one or more ways to be met, each way draws amounts per serve
from pools, and pools are shared. The most serves is a linear programme:
the largest S for which every line's ways add up to S and no pool is drawn
below nothing. Where there is no choice, or lines share no pool, a division
settles it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from barkeep.domain.pouring.programme import largest
from barkeep.domain.pouring.supply import Pool

SLACK = 1e-9


@dataclass(frozen=True, slots=True)
class Way:
    """One way to meet a line: what it draws per serve from limited pools."""

    draws: Mapping[Pool, float]


@dataclass(frozen=True, slots=True)
class Serves:
    """The most serves (infinite where nothing is limited) and the pool that ends them."""

    most: float
    runs_out: Pool | None = None

    @property
    def whole(self) -> int | None:
        """Whole serves, None where nothing limits them."""
        return None if math.isinf(self.most) else math.floor(self.most + SLACK)


def most_serves(lines: Sequence[Sequence[Way]], supply: Mapping[Pool, float]) -> Serves:
    """The most serves that all lines together allow. A line without a way allows none."""
    return _fewest(_serves_of(group, supply) for group in _groups_sharing_pools(lines))


def whole_serves(lines: Sequence[Sequence[Way]], supply: Mapping[Pool, float]) -> Serves:
    """The most whole serves, mostly without the programme.

    No line can be served more often than its ways allow each on their own;
    where pouring that many whole serves out, way by way, works for all lines
    together, it is the answer.
    """
    return _fewest(_whole_of(group, supply) for group in _groups_sharing_pools(lines))


def no_more_than(lines: Sequence[Sequence[Way]], supply: Mapping[Pool, float]) -> float:
    """What the serves cannot exceed, found without the programme."""
    if not all(lines):
        return 0.0
    worth_it = (_worth_pouring(line) for line in lines if _is_limited(line))
    return min((_each_alone(line, supply).most for line in worth_it), default=math.inf)


def _fewest(found: Iterable[Serves]) -> Serves:
    return min(found, key=lambda each: each.most, default=Serves(math.inf))


def _whole_of(group: Sequence[Sequence[Way]], supply: Mapping[Pool, float]) -> Serves:
    if not all(group):
        return Serves(0.0)
    least = min((_each_alone(line, supply) for line in group), key=lambda each: each.most)
    whole = float(math.floor(least.most + SLACK))
    if _poured_out(group, supply, whole):
        return Serves(whole, least.runs_out)
    return _serves_of(group, supply)


def _each_alone(line: Sequence[Way], supply: Mapping[Pool, float]) -> Serves:
    """No more than this from one line: its ways as if they shared nothing."""
    ends = [
        min((supply.get(pool, 0.0) / need, pool) for pool, need in way.draws.items())
        for way in line
    ]
    return Serves(sum(most for most, _pool in ends), ends[0][1])


def _poured_out(
    group: Sequence[Sequence[Way]], supply: Mapping[Pool, float], serves: float
) -> bool:
    """Whether pouring each line's ways in turn, as far as each goes, makes that many serves."""
    left = {pool: supply.get(pool, 0.0) for line in group for way in line for pool in way.draws}
    for line in group:
        wanted = serves
        for way in line:
            made = min(wanted, *(left[pool] / need for pool, need in way.draws.items()))
            for pool, need in way.draws.items():
                left[pool] = max(0.0, left[pool] - made * need)
            wanted -= made
        if wanted > SLACK:
            return False
    return True


def allows(lines: Sequence[Sequence[Way]], supply: Mapping[Pool, float], serves: float) -> bool:
    """Whether all lines together allow that many serves.

    Most bars have plenty: pouring each line from the first way that still has
    enough settles it without the programme. So does a line that alone allows
    no more, and pouring what is there out, way by way.
    """
    if _plainly_allows(lines, supply, serves):
        return True
    if no_more_than(lines, supply) < serves - SLACK:
        return False
    groups = _groups_sharing_pools(lines)
    if all(_poured_out(group, supply, serves) for group in groups):
        return True
    return most_serves(lines, supply).most >= serves - SLACK


def _plainly_allows(
    lines: Sequence[Sequence[Way]], supply: Mapping[Pool, float], serves: float
) -> bool:
    drawn: dict[Pool, float] = {}
    for line in lines:
        for way in line:
            after = {pool: drawn.get(pool, 0.0) + need * serves for pool, need in way.draws.items()}
            if all(supply.get(pool, 0.0) >= each for pool, each in after.items()):
                drawn.update(after)
                break
        else:
            return False
    return True


def _groups_sharing_pools(lines: Sequence[Sequence[Way]]) -> list[list[Sequence[Way]]]:
    """Lines in groups that share no pool with each other; unlimited lines left out."""
    groups: list[tuple[set[Pool], list[Sequence[Way]]]] = []
    for ways in lines:
        if not _is_limited(ways):
            continue
        line = _worth_pouring(ways)
        pools = {pool for way in line for pool in way.draws}
        members = [line]
        apart = []
        for known, others in groups:
            if known & pools:
                pools |= known
                members = others + members
            else:
                apart.append((known, others))
        groups = [*apart, (pools, members)]
    return [members for _, members in groups]


def _is_limited(line: Sequence[Way]) -> bool:
    return all(way.draws for way in line)


def _worth_pouring(line: Sequence[Way]) -> Sequence[Way]:
    """A line's ways without those that draw all another one draws, and no less of it."""
    pools = [pool for way in line for pool in way.draws]
    if len(set(pools)) == len(pools):
        return line  # ways that share nothing
    kept: list[Way] = []
    for way in line:
        if not any(_needs_all_of(way, other) for other in kept):
            kept = [other for other in kept if not _needs_all_of(other, way)]
            kept.append(way)
    return kept


def _needs_all_of(way: Way, other: Way) -> bool:
    draws, least = way.draws, other.draws
    return draws.keys() >= least.keys() and all(draws[pool] >= least[pool] for pool in least)


def _serves_of(group: Sequence[Sequence[Way]], supply: Mapping[Pool, float]) -> Serves:
    if not all(group):
        return Serves(0.0)
    if all(len(line) == 1 for line in group):
        return _without_choice([line[0] for line in group], supply)
    if len(group) == 1 and _is_simple(group[0]):
        return _by_division(group[0], supply)
    return _by_programme(group, supply)


def _without_choice(ways: Sequence[Way], supply: Mapping[Pool, float]) -> Serves:
    drawn: dict[Pool, float] = {}
    for way in ways:
        for pool, need in way.draws.items():
            drawn[pool] = drawn.get(pool, 0.0) + need
    most = {pool: supply.get(pool, 0.0) / need for pool, need in drawn.items()}
    first = min(most, key=lambda pool: (most[pool], pool))
    return Serves(most[first], first)


def _is_simple(line: Sequence[Way]) -> bool:
    """Whether no two of its ways draw on the same pool and each draws on one."""
    pools = [pool for way in line for pool in way.draws]
    return len(pools) == len(line) == len(set(pools))


def _by_division(line: Sequence[Way], supply: Mapping[Pool, float]) -> Serves:
    served = 0.0
    first: Pool | None = None
    for way in line:
        ((pool, need),) = way.draws.items()
        served += supply.get(pool, 0.0) / need
        first = first or pool
    return Serves(served, first)


def _by_programme(group: Sequence[Sequence[Way]], supply: Mapping[Pool, float]) -> Serves:
    ways = [(number, way) for number, line in enumerate(group) for way in line]
    pools = sorted({pool for _, way in ways for pool in way.draws})
    # Columns: serves, then how many serves each way makes. Of these no line makes fewer.
    met = [
        [1.0, *(-1.0 if number == line else 0.0 for number, _ in ways)]
        for line in range(len(group))
    ]
    drawn = [[0.0, *(way.draws.get(pool, 0.0) for _, way in ways)] for pool in pools]
    goal = [1.0] + [0.0] * len(ways)
    there = [supply.get(pool, 0.0) for pool in pools]
    found = largest(goal, met + drawn, [0.0] * len(met) + there)
    # The pool whose last drop is worth most is the one that ends the serves.
    worth = found.worth[len(met) :]
    tightest = max(range(len(pools)), key=lambda each: (worth[each], -each))
    return Serves(found.sum, pools[tightest])
