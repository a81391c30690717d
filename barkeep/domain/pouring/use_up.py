"""What to drink before it goes: the drinks that use most of what is ageing, and the fewest of them.

Ageing is what can be poured today and whose last day is near or over.
An integer programme over all drinks that can be made and all ways to pour their lines shares the
bottles out: ready drinks use as much as they can of what is ageing, then those with stand-ins as
much of the rest; that in the fewest serves, and then with the closest stand-ins and the fewest
different drinks. A drink that is ready is never poured with a stand-in. Where nobody says how
many serves, the last of it takes the most: so nearly all that could be used is enough.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import cached_property
from typing import TYPE_CHECKING, TypeAlias

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.programme import Ended
from barkeep.domain.pouring.serves import SLACK, Way
from barkeep.domain.pouring.sourcing import (
    DerivationWays,
    Sourcing,
    Within,
    choices,
    sourcing_for,
    thresholds,
)
from barkeep.domain.pouring.supply import Pool
from barkeep.domain.pouring.verdict import Verdict
from barkeep.domain.pouring.verdicts import verdicts
from barkeep.domain.specs.spec import Spec
from barkeep.errors import InvalidField
from barkeep.translation import tr

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray
    from scipy.optimize import LinearConstraint

DAYS = 14
"""What goes off within so many days is ageing, unless it is said."""
MOST_DAYS, MOST_SERVES = 366, 99
"""More is a misprint."""
SLICES = (0.5, 1.5, 4.0)
"""How long each question of the programme may take, in seconds, and then again.

Nothing stops a question that is being worked on, so whoever wants to stop waits for one slice.
"""
GoOn: TypeAlias = Callable[[], bool]
"""Says whether to go on."""


def always() -> bool:
    """Go on to the end."""
    return True


PIECE = 30.0
"""One piece counts as so many ml: about the juice of a lime (*common practice*)."""
NEARLY_ALL = 0.95
"""Without a number of serves it is enough to use so much of what could be used at all."""
NEARLY = 1e-6


@dataclass(frozen=True, slots=True)
class Use:
    """So much of one ageing bottle, in the unit of what is in it."""

    bottle: Bottle
    amount: float


@dataclass(frozen=True, slots=True)
class UsedIn:
    """One drink to make, so often, and what it uses of what is ageing."""

    spec: Spec
    verdict: Verdict
    serves: int
    uses: tuple[Use, ...]


@dataclass(frozen=True, slots=True)
class Ageing:
    """One ageing bottle: its last day, how much the drinks use, and what is then left."""

    bottle: Bottle
    last: date
    used: float
    left: float


@dataclass(frozen=True, slots=True)
class UseUp:
    """The drinks, ready ones first, then what uses most; and what becomes of each bottle.

    `ageing` is in the order of the last days. `serves` is how many were asked for, None for as
    many as it takes; `on` the day it is asked, `days` how far it looks ahead; `ended` says
    whether it is proved that nothing uses more, or why it is not.
    """

    drinks: tuple[UsedIn, ...]
    ageing: tuple[Ageing, ...]
    ended: Ended
    on: date
    days: int
    serves: int | None

    @property
    def proved_best(self) -> bool:
        """Whether nothing uses more, or as much in less."""
        return self.ended == "proved"

    @property
    def idle(self) -> tuple[Ageing, ...]:
        """The ageing bottles that nothing is poured from."""
        return tuple(each for each in self.ageing if each.used <= SLACK)


def use_up(
    snapshot: Snapshot,
    serves: int | None = None,
    *,
    within: Within = "close",
    days: int = DAYS,
    memory: Memory | None = None,
    go_on: GoOn = always,
) -> UseUp:
    """The drinks that use most of what goes off within so many days, in the fewest serves.

    With `serves` in no more than so many. Once `go_on` says no, the best so far is the answer.
    Raises `InvalidField`.
    """
    if serves is not None and not 1 <= serves <= MOST_SERVES:
        raise InvalidField("serves", serves, tr("it is 1 to {most}", most=MOST_SERVES))
    if not 0 <= days <= MOST_DAYS:
        raise InvalidField("days", days, tr("it is 0 to {most}", most=MOST_DAYS))
    ageing = _ageing(snapshot, days)
    evening = _evening(snapshot, within, ageing, memory or Memory())
    poured, ended = evening.most_used(serves, go_on)
    used = evening.shared_out(poured)
    of_bottle = {each.id: 0.0 for each in ageing}
    for each in used:
        for use in each.uses:
            of_bottle[use.bottle.id] += use.amount
    return UseUp(
        drinks=tuple(sorted(used, key=_ready_first)),
        ageing=tuple(
            Ageing(
                each,
                snapshot.ends[each.id].last,
                used=of_bottle[each.id],
                left=max(0.0, each.level.amount - of_bottle[each.id]),
            )
            for each in ageing
        ),
        ended=ended,
        on=snapshot.on,
        days=days,
        serves=serves,
    )


def _ready_first(each: UsedIn) -> tuple[object, ...]:
    return (
        each.verdict != "ready",
        -sum(use.amount for use in each.uses),
        each.spec.name.casefold(),
    )


def _ageing(snapshot: Snapshot, days: int) -> tuple[Bottle, ...]:
    """What can be poured today and goes off soon or is past its best, the first to go first."""
    until = snapshot.on + timedelta(days=days)
    found = [
        each
        for some in snapshot.usable.values()
        for each in some
        if each.id in snapshot.ends
        and snapshot.ends[each.id].last <= until
        and each.ingredient not in snapshot.always_there
    ]
    return tuple(sorted(found, key=lambda each: (snapshot.ends[each.id].last, each.id)))


@dataclass(frozen=True, slots=True)
class _Pouring:
    """One way to pour one line of one drink, by their numbers."""

    drink: int
    line: int
    derivation: Derivation
    way: Way


@dataclass(frozen=True)
class _Evening:
    """The drinks that use something ageing, with every way to pour each of their lines."""

    drinks: tuple[tuple[Spec, Verdict], ...]
    pourings: tuple[_Pouring, ...]
    pools: Mapping[Pool, float]
    limits: tuple[float, ...]
    ageing: frozenset[int]
    sourcing: Sourcing

    @cached_property
    def names(self) -> tuple[Pool, ...]:
        """Every pool that is drawn on."""
        return tuple(sorted({pool for each in self.pourings for pool in each.way.draws}))

    @cached_property
    def ageing_in(self) -> Mapping[Pool, float]:
        """How much of each pool is ageing."""
        found = {
            pool: sum(each.level.amount for each in self._ageing_stocks(pool))
            for pool in self.names
        }
        return {pool: amount for pool, amount in found.items() if amount > 0.0}

    def most_used(self, serves: int | None, go_on: GoOn) -> tuple[tuple[int, ...], Ended]:
        """How often each pouring is poured, and whether it is proved that nothing uses more."""
        if not self.drinks or not self.ageing_in:
            return (0,) * len(self.pourings), "proved"
        import numpy as np
        from scipy.optimize import LinearConstraint  # loads slowly

        made = _Columns(len(self.drinks), len(self.pourings), len(self.ageing_in))
        most, share = (MOST_SERVES, NEARLY_ALL) if serves is None else (serves, 1.0)
        ml = [self._ml(each) for each in self.ageing_in]
        farther = [1.0 - each.derivation.closeness for each in self.pourings]
        fewest = made.row(serves=1.0)
        rows = [*self._rows(made, float(most)), LinearConstraint(fewest, 0.0, float(most))]
        goals = (
            (-made.row(used_ready=ml), share),
            (-made.row(used=ml), share),
            (fewest, 1.0),
            (made.row(poured=farther, made=1e-3), 1.0),
        )
        upper = made.row(
            serves=float(most),
            poured=float(most),
            used=list(self.ageing_in.values()),
            used_ready=list(self.ageing_in.values()),
            made=1.0,
        )
        whole = made.row(serves=1.0, poured=1.0, made=1.0)
        found: NDArray[np.float64] | None = None
        ended: Ended = "proved"
        for goal, kept in goals:
            better, this_ended = _least(goal, rows, whole=whole, upper=upper, go_on=go_on)
            ended = this_ended if ended == "proved" or this_ended == "cancelled" else ended
            if better is None:
                break
            found = better
            if ended == "cancelled":
                break
            rows.append(LinearConstraint(goal, -np.inf, kept * float(goal @ found) + 1e-4))
        poured = made.row() if found is None else found
        return tuple(poured[made.poured].round().astype(np.int64).tolist()), ended

    def _ml(self, pool: Pool) -> float:
        return PIECE if self.sourcing.tree[pool[0]].unit == "each" else 1.0

    def _rows(self, made: _Columns, most: float) -> Iterator[LinearConstraint]:
        """Each line of a drink is poured as often as that is made, from what is there."""
        import numpy as np
        from scipy.optimize import LinearConstraint

        lines: dict[tuple[int, int], list[float]] = {}
        nothing = [0.0] * len(self.pourings)
        for number, each in enumerate(self.pourings):
            lines.setdefault((each.drink, each.line), nothing.copy())[number] = 1.0
        for (drink, _line), poured in lines.items():
            row = made.row(poured=poured)
            row[drink] = -1.0
            yield LinearConstraint(row, 0.0, 0.0)
        for drink in range(len(self.drinks)):
            row = made.row()
            row[drink], row[made.made][drink] = 1.0, -most
            yield LinearConstraint(row, -np.inf, 0.0)
        for pool in self.names:
            drawn = [each.way.draws.get(pool, 0.0) for each in self.pourings]
            there = self.pools.get(pool, 0.0) + NEARLY
            yield LinearConstraint(made.row(poured=drawn), -np.inf, there)
        for place, pool in enumerate(self.ageing_in):
            drawn = [-each.way.draws.get(pool, 0.0) for each in self.pourings]
            ready = [
                amount if self.drinks[each.drink][1] == "ready" else 0.0
                for amount, each in zip(drawn, self.pourings, strict=True)
            ]
            this = [float(each == place) for each in range(len(self.ageing_in))]
            yield LinearConstraint(made.row(poured=drawn, used=this), -np.inf, 0.0)
            yield LinearConstraint(made.row(poured=ready, used_ready=this), -np.inf, 0.0)

    # What it comes to

    def shared_out(self, poured: Sequence[int]) -> tuple[UsedIn, ...]:
        """Each drink that is made with what it uses, the first of a kind to go used up first."""
        shelf = _Shelf({pool: self._ageing_stocks(pool) for pool in self.ageing_in})
        found = []
        for number, (spec, verdict) in enumerate(self.drinks):
            of_drink = [
                (each, times)
                for each, times in zip(self.pourings, poured, strict=True)
                if each.drink == number and times
            ]
            serves = sum(times for each, times in of_drink if each.line == 0)
            if serves:
                found.append(UsedIn(spec, verdict, serves, shelf.taken_for(of_drink)))
        return tuple(found)

    def _ageing_stocks(self, pool: Pool) -> tuple[Bottle, ...]:
        stocks = self.sourcing.supply.stocks_in(pool, self.limits)
        bottles = (each.bottle for each in stocks if each.bottle is not None)
        return tuple(each for each in bottles if each.id in self.ageing)


def _least(
    goal: NDArray[np.float64],
    rows: Sequence[LinearConstraint],
    *,
    whole: NDArray[np.float64],
    upper: NDArray[np.float64],
    go_on: GoOn,
) -> tuple[NDArray[np.float64] | None, Ended]:
    """The least sum of `goal` within the rows, as good as is found in time, and how it ended."""
    import numpy as np
    from scipy.optimize import Bounds, milp

    best: NDArray[np.float64] | None = None
    for seconds in SLICES:
        if not go_on():
            return best, "cancelled"
        solved = milp(
            goal,
            integrality=whole.astype(np.int64),
            bounds=Bounds(0.0, upper),
            constraints=rows,
            options={"time_limit": seconds, "mip_rel_gap": 0.0},
        )
        if solved.x is not None and (best is None or goal @ solved.x < goal @ best):
            best = solved.x
        if solved.status == 0:
            return best, "proved"
    return best, "time"


@dataclass(frozen=True, slots=True)
class _Columns:
    """The columns of the programme.

    Serves of each drink and of each pouring; how much is used of each ageing pool, in all and by
    ready drinks; and whether a drink is made at all.
    """

    drinks: int
    pourings: int
    pools: int

    @property
    def poured(self) -> slice:
        """Where the pourings stand."""
        return slice(self.drinks, self.drinks + self.pourings)

    @property
    def made(self) -> slice:
        """Where it stands whether drinks are made."""
        return slice(self._size - self.drinks, self._size)

    @property
    def _size(self) -> int:
        return 2 * self.drinks + self.pourings + 2 * self.pools

    def row(self, **values: float | Sequence[float]) -> NDArray[np.float64]:
        """A value for each column, 0 where none is given."""
        import numpy as np

        first = self.drinks + self.pourings
        places = {
            "serves": slice(0, self.drinks),
            "poured": self.poured,
            "used": slice(first, first + self.pools),
            "used_ready": slice(first + self.pools, first + 2 * self.pools),
            "made": self.made,
        }
        row = np.zeros(self._size)
        for name, value in values.items():
            row[places[name]] = value
        return row


class _Shelf:
    """What is left of the ageing bottles while drinks are poured."""

    def __init__(self, bottles: Mapping[Pool, tuple[Bottle, ...]]) -> None:
        self._bottles = bottles
        self._left = {each.id: each.level.amount for some in bottles.values() for each in some}

    def taken_for(self, pourings: Iterable[tuple[_Pouring, int]]) -> tuple[Use, ...]:
        """What is taken of each bottle for these, each poured so often."""
        taken: dict[int, Use] = {}
        for each, times in pourings:
            for pool, amount in each.way.draws.items():
                for use in self._taken(pool, amount * times):
                    before = taken.get(use.bottle.id, Use(use.bottle, 0.0))
                    taken[use.bottle.id] = Use(use.bottle, before.amount + use.amount)
        return tuple(taken.values())

    def _taken(self, pool: Pool, amount: float) -> Iterator[Use]:
        for bottle in self._bottles.get(pool, ()):
            used = min(amount, self._left[bottle.id])
            if used > SLACK:
                self._left[bottle.id] -= used
                amount -= used
                yield Use(bottle, used)


def _ways_of(
    spec: Spec, verdict: Verdict, limits: tuple[float, ...], sourcing: Sourcing
) -> Iterator[tuple[DerivationWays, ...]]:
    """Of each required line the ways it may be poured; of a ready drink only what is just it."""
    for line in spec.required_lines:
        found = sourcing.ways_to(line, spec)
        allowed = (each for each in found if each.exact or verdict != "ready")
        yield choices(
            line,
            derivations=allowed,
            limits=limits,
            supply=sourcing.supply,
            tree=sourcing.tree,
        )


def _evening(
    snapshot: Snapshot, within: Within, ageing: Sequence[Bottle], memory: Memory
) -> _Evening:
    found = verdicts(snapshot, within, memory=memory)
    sourcing = sourcing_for(snapshot, within, memory)
    keys = {each.ingredient for each in ageing}
    made = [
        (spec, verdict)
        for spec, verdict in zip(snapshot.all_specs, found.of, strict=True)
        if verdict in ("ready", "stand_in")
    ]
    limits = tuple(sorted({each for spec, _verdict in made for each in thresholds(spec)}))
    drinks: list[tuple[Spec, Verdict]] = []
    pourings: list[_Pouring] = []
    for spec, verdict in made if ageing else ():
        ways = list(_ways_of(spec, verdict, limits, sourcing))
        if any(not keys.isdisjoint(each.derivation.draws) for some in ways for each in some):
            for line, some in enumerate(ways):
                pourings += (
                    _Pouring(len(drinks), line, each.derivation, way)
                    for each in some
                    for way in each.ways
                )
            drinks.append((spec, verdict))
    return _Evening(
        tuple(drinks),
        tuple(pourings),
        pools=sourcing.supply.pools(limits),
        limits=limits,
        ageing=frozenset(each.id for each in ageing),
        sourcing=sourcing,
    )
