"""A drink poured out serve by serve: what the first bottles give, and what follows them.

Each line is poured in one way until that gives no whole serve more; then the
line that ran out goes on to its next way, and the others stay. So the serves
of all runs are never more than the levels allow, and fewer where only the
rests of several bottles together make another.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.pouring.serves import Serves, Way, most_serves
from barkeep.domain.pouring.sourcing import DerivationWays
from barkeep.domain.pouring.supply import Pool


@dataclass(frozen=True, slots=True)
class Run:
    """So many whole serves (None without end) with one way a line, and what ends them."""

    serves: int | None
    ways: tuple[Derivation, ...]
    runs_out: Pool | None

    @property
    def closeness(self) -> float:
        """That of the farthest of its ways."""
        return min((each.closeness for each in self.ways), default=1.0)


@dataclass(frozen=True, slots=True)
class Serving:
    """All the serves of a drink: `most` from its `first` ways, and the runs after those.

    `rests` are the serves beyond all runs that the rests of several bottles
    make together, at `rests_closeness`.
    """

    first: tuple[Derivation, ...]
    most: Serves
    then: tuple[Run, ...] = ()
    rests: int = 0
    rests_closeness: float = 1.0


def runs_of(
    lines: Sequence[Sequence[DerivationWays]], supply: Mapping[Pool, float]
) -> tuple[Run, ...]:
    """The runs of a drink whose lines are each met in these ways, in this order."""
    options = [[(each.derivation, way) for each in some for way in each.ways] for some in lines]
    if not all(options):
        return ()
    left, places, found = dict(supply), [0] * len(options), list[Run]()
    while True:
        now = [some[place] for some, place in zip(options, places, strict=True)]
        most = most_serves([[way] for _derivation, way in now], left)
        run = Run(most.whole, tuple(derivation for derivation, _way in now), most.runs_out)
        if run.serves != 0:
            _add(run, found)
        if run.serves is None or run.runs_out is None:
            return tuple(found)
        _draw([way for _derivation, way in now], run.serves, left)
        after = _next(options, places, run.runs_out)
        if after is None:
            return tuple(found)
        places[after] += 1


def _add(run: Run, found: list[Run]) -> None:
    """Add a run; one in which the same things go in as in the last belongs to that.

    Other strengths of one kind are such, and juice that is squeezed once its bottle is empty.
    """
    if found and list(map(what_goes_in, found[-1].ways)) == list(map(what_goes_in, run.ways)):
        before = found.pop()
        run = Run(added([before, run]), before.ways, run.runs_out)
    found.append(run)


def what_goes_in(way: Derivation) -> tuple[str, float]:
    """By which two ways of a line are told apart where a drink is poured."""
    return way.offered, way.closeness


def added(runs: Iterable[Run]) -> int | None:
    """The serves of all of them, None where nothing limits one."""
    serves = [each.serves for each in runs]
    return None if None in serves else sum(each or 0 for each in serves)


def _draw(ways: Sequence[Way], serves: int, left: dict[Pool, float]) -> None:
    for way in ways:
        for pool, need in way.draws.items():
            left[pool] = max(0.0, left.get(pool, 0.0) - serves * need)


def _next(
    options: Sequence[Sequence[tuple[Derivation, Way]]], places: Sequence[int], ended: Pool
) -> int | None:
    """The line to go on to its next way: the last that draws on what ended and has another."""
    for number in reversed(range(len(options))):
        _derivation, way = options[number][places[number]]
        if ended in way.draws and places[number] + 1 < len(options[number]):
            return number
    return None
