"""Which purchases together are worth most: at most so many of them, or for so much money.

A target, such as a drink, has a worth and several needs; it is covered once all of them are met.
A need is met by any one of its options, and an option is a purchase, or several that only help
together. Needs may promise too much, since levels bind where nobody looks at every set: whoever
asks gives `refute`, which says of a set which targets it does not cover after all, each with a
further need that any set covering it meets. The answer is one that nothing refutes.

First purchases are taken one by one, with credit for targets that are only partly met, and
exchanged one for one while that gains anything. Then HiGHS looks for something better, on the
strong formulation: a target is covered no further than each of its needs is met, rather than than
all of them are on average. Its bound says how much better anything could be; where time runs
out before the bound is reached, the best that was found is given and not called the best there is.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property, partial
from queue import Empty, SimpleQueue
from threading import Thread
from time import monotonic
from typing import TypeAlias

import numpy as np
from scipy.sparse import csr_array

from barkeep.domain.buying.limits import GoOn, Limits, always
from barkeep.domain.pouring.book_lines import Amounts, Flags, Numbers
from barkeep.domain.pouring.programme import Ended

Option: TypeAlias = frozenset[int]
"""Purchases by their numbers that meet a need together."""
Need: TypeAlias = frozenset[Option]
"""What is met by any one of its options."""
Chosen: TypeAlias = frozenset[int]
"""Purchases by their numbers."""
Refute: TypeAlias = Callable[[Chosen, Sequence[int]], Mapping[int, Need]]
"""Of the targets (by number) that a set seems to cover those it does not, with a need unmet."""

CREDITS = (1.0, 2.0, 3.0)
"""A target that lacks k more is worth as much as 1 / (k + 1) to one of these powers."""
LOOK_UP_SECONDS = 0.1
"""How often it is asked whether anybody still waits for the programme."""
SOLVED, OUT_OF_TIME = 0, 1
"""What `milp` calls its ends."""
NEARLY = 1e-6
"""Sums of worths that differ by less are the same."""


@dataclass(frozen=True, slots=True)
class Target:
    """What is worth so much (above 0) once all needs are met."""

    worth: float
    needs: tuple[Need, ...]


@dataclass(frozen=True, slots=True)
class Covering:
    """A set of purchases, what it is worth, and what no set can be worth more than."""

    chosen: Chosen
    worth: float
    upper_bound: float
    ended: Ended

    @property
    def proved_best(self) -> bool:
        """Whether nothing can be better."""
        return self.ended == "proved"


@dataclass(frozen=True)
class Market:
    """The purchases by number, each at its cost, the ones rather taken first; and the targets."""

    costs: tuple[float, ...]
    targets: tuple[Target, ...]
    limits: Limits

    def affordable(self, chosen: Collection[int]) -> bool:
        """Whether a set is within the limits."""
        many, budget = self.limits.bottles, self.limits.budget
        if many is not None and len(chosen) > many:
            return False
        return budget is None or self.cost(chosen) <= budget + NEARLY

    @property
    def in_whole_ones(self) -> bool:
        """Whether every worth is a whole number."""
        return all(each.worth.is_integer() for each in self.targets)

    def cost(self, chosen: Iterable[int]) -> float:
        """What a set costs."""
        return sum(self.costs[each] for each in chosen)

    def with_needs(self, more: Mapping[int, Need]) -> Market:
        """The same with a further need of some targets."""
        targets = list(self.targets)
        for number, need in more.items():
            each = targets[number]
            targets[number] = replace(each, needs=(*each.needs, need))
        return replace(self, targets=tuple(targets))


def best_covering(
    market: Market,
    refute: Refute = lambda _chosen, _claimed: {},
    *,
    seconds: float = math.inf,
    go_on: GoOn = always,
) -> Covering:
    """The set of purchases within the limits that is worth most, found in about so many seconds."""
    search = _Search(market, refute, until=monotonic() + seconds, go_on=go_on)
    ended = search.run()
    chosen = search.tidied()
    bound = search.worth if ended == "proved" else max(search.bound, search.worth)
    if market.in_whole_ones:
        bound = float(math.floor(bound + NEARLY))
    return Covering(chosen, search.worth, bound, ended)


@dataclass
class _Search:
    """The search while it goes on: what is known of the targets, and the best set so far."""

    market: Market
    refute: Refute
    until: float
    go_on: GoOn
    chosen: Chosen = frozenset()
    worth: float = 0.0
    bound: float = math.inf

    def run(self) -> Ended:
        self.bound = sum(each.worth for each in self.market.targets)
        self._look_at(frozenset())
        while (ended := self._ended()) is None and self._look_at(_taken_one_by_one(self._table)):
            pass  # what was refuted is known the next time
        return ended or self._programmes()

    def _programmes(self) -> Ended:
        """Ask the programme until nothing of what it finds is refuted.

        First with parts of purchases, which is quick and says what nothing exceeds.
        """
        for whole in (False, True):
            while (ended := self._ended()) is None:
                left, made = self.until - monotonic(), _columns(self._table)
                solve = partial(_solved, made, left, whole=whole)
                found = _watched(solve, lambda: self.go_on(self.worth, self.bound))
                if found is None:
                    return "cancelled"
                self.bound = min(self.bound, found.bound)
                refuted = found.chosen is not None and self._look_at(found.chosen)
                if not whole:
                    break
                if found.finished and not refuted:
                    self.bound = min(self.bound, self.worth)
        return ended or "time"

    def _ended(self) -> Ended | None:
        if self._least_better() > self.bound + NEARLY:
            return "proved"
        if not self.go_on(self.worth, self.bound):
            return "cancelled"
        return "time" if monotonic() >= self.until else None

    def _least_better(self) -> float:
        """What a better set is worth at least: where all worths are whole, a whole one more."""
        return self.worth + (1.0 if self.market.in_whole_ones else 2 * NEARLY)

    def _look_at(self, chosen: Chosen) -> bool:
        """Keep a set where it is better than the best; whether something of it was refuted."""
        worth, refuted = self._really(chosen)
        if worth > self.worth + NEARLY:
            self.chosen, self.worth = chosen, worth
        if refuted:
            self.market = self.market.with_needs(refuted)
            self._tables.clear()
        return bool(refuted)

    def _really(self, chosen: Chosen) -> tuple[float, Mapping[int, Need]]:
        """What a set is worth, and what it only seems to cover."""
        claimed = np.flatnonzero(self._table.covered(chosen)).tolist()
        refuted = self.refute(chosen, claimed)
        kept = (self.market.targets[each].worth for each in claimed if each not in refuted)
        return sum(kept), refuted

    _tables: list[_Table] = field(default_factory=list)

    @property
    def _table(self) -> _Table:
        if not self._tables:
            self._tables.append(_Table(self.market))
        return self._tables[0]

    # What is given out

    def tidied(self) -> Chosen:
        """The best set without what adds nothing, each purchase the one that is rather taken."""
        chosen = set(self.chosen)
        for each in sorted(chosen, reverse=True):
            if self._as_good(frozenset(chosen - {each})):
                chosen.remove(each)
        for each in sorted(chosen, reverse=True):
            rest = frozenset(chosen - {each})
            gains = self._table.gains(rest)
            needed = self.worth - self._table.worth_of(rest) - NEARLY
            rather = np.flatnonzero(gains[:each] >= needed).tolist()
            for other in rather:
                if other not in chosen and self._as_good(rest | {other}):
                    chosen = {*rest, other}
                    break
        return frozenset(chosen)

    def _as_good(self, chosen: Chosen) -> bool:
        seems = self.market.affordable(chosen) and self._table.worth_of(chosen)
        least = self.worth - NEARLY
        return bool(seems) and seems >= least and self._really(chosen)[0] >= least


class _Table:
    """The targets of a market as arrays."""

    def __init__(self, market: Market) -> None:
        self.market = market
        numbers: dict[Need, int] = {}
        of_target = [
            sorted({numbers.setdefault(need, len(numbers)) for need in each.needs})
            for each in market.targets
        ]
        self.needs: tuple[Need, ...] = tuple(numbers)
        self.worths: Amounts = np.array([each.worth for each in market.targets], np.float64)
        self.target: Numbers = np.repeat(
            np.arange(len(of_target)), [len(each) for each in of_target]
        )
        self.need: Numbers = np.array([each for some in of_target for each in some], np.int64)
        self.asked = _ones(self.target, self.need, (len(of_target), max(1, len(self.needs))))
        shape = max(1, len(self.needs))
        self._free: Flags = np.zeros(shape, np.bool_)
        self._free[[number for number, need in enumerate(self.needs) if frozenset() in need]] = True
        self._single = self._by_itself()

    @cached_property
    def _several(self) -> tuple[tuple[int, Option], ...]:
        """The needs by number with each option that takes several purchases."""
        return tuple(
            (number, option)
            for number, need in enumerate(self.needs)
            for option in need
            if len(option) > 1
        )

    def _by_itself(self) -> csr_array:
        """Each need with each purchase that meets it alone."""
        return self._pairs(
            (number, each)
            for number, need in enumerate(self.needs)
            for option in need
            if len(option) == 1
            for each in option
        )

    def _helping(self, chosen: Chosen) -> csr_array:
        """Each need with each purchase that meets it, where a set is bought already."""
        if not self._several:
            return self._single
        rests = ((number, option - chosen) for number, option in self._several)
        last = {(number, each) for number, rest in rests if len(rest) == 1 for each in rest}
        both = csr_array(self._single + self._pairs(last))
        both.data[:] = 1.0
        return both

    def _pairs(self, found: Iterable[tuple[int, int]]) -> csr_array:
        ordered = sorted(found)
        need = np.array([each for each, _ in ordered], np.int64)
        purchase = np.array([each for _, each in ordered], np.int64)
        return _ones(need, purchase, (max(1, len(self.needs)), max(1, len(self.market.costs))))

    def met(self, chosen: Chosen) -> Flags:
        """Of each need whether a set meets it."""
        bought = np.zeros(max(1, len(self.market.costs)))
        bought[sorted(chosen)] = 1.0
        met: Flags = (self._single @ bought > 0.0) | self._free
        for number, option in self._several:
            met[number] |= option <= chosen
        return met

    def lacking(self, met: Flags) -> Numbers:
        """Of each target how many needs are not met."""
        return np.bincount(
            self.target, (~met)[self.need].astype(np.float64), len(self.worths)
        ).astype(np.int64)

    def covered(self, chosen: Chosen) -> Flags:
        """Of each target whether a set covers it."""
        covered: Flags = self.lacking(self.met(chosen)) == 0
        return covered

    def worth_of(self, chosen: Chosen) -> float:
        """What a set is worth."""
        return float(self.worths[self.covered(chosen)].sum())

    def gains(self, chosen: Chosen, credit: float | None = None) -> Amounts:
        """What each purchase more is worth to a set; with `credit` also what it brings near."""
        met = self.met(chosen)
        lacking = self.lacking(met)
        unmet = _ones(self.target[~met[self.need]], self.need[~met[self.need]], self.asked.shape)
        helped = (unmet @ self._helping(chosen)).tocoo()
        target, purchase, times = helped.row, helped.col, helped.data
        left = lacking[target] - times
        if credit is None:
            gained = np.where(left == 0, self.worths[target], 0.0)
        else:
            before, after = (lacking[target] + 1.0) ** -credit, (left + 1.0) ** -credit
            gained = self.worths[target] * (after - before)
        each = np.bincount(purchase, gained, max(1, len(self.market.costs)))
        return each.astype(np.float64)


def _ones(rows: Numbers, columns: Numbers, shape: tuple[int, int]) -> csr_array:
    return csr_array((np.ones(len(rows)), (rows, columns)), shape=shape)


# Taken one by one


def _taken_one_by_one(table: _Table) -> Chosen:
    """The best of several ways to take purchases one by one, with exchanges."""
    ways = [
        (credit, per_price)
        for credit in CREDITS
        for per_price in ((False, True) if table.market.limits.budget is not None else (False,))
    ]
    starts = {_filled(table, frozenset(), credit, per_price): None for credit, per_price in ways}
    found = [_exchanged(table, each) for each in starts]
    return max(found, key=lambda each: (table.worth_of(each), sorted(each, reverse=True)))


def _filled(table: _Table, chosen: Chosen, credit: float, per_price: bool) -> Chosen:
    """A set with more taken while there is room, what gains most first."""
    market = table.market
    costs = np.array([*market.costs, 0.0][: max(1, len(market.costs))])
    while True:
        gains = table.gains(chosen, credit)
        room = [market.affordable({*chosen, each}) for each in range(len(market.costs))]
        gains[[*sorted(chosen), *(each for each, fits in enumerate(room) if not fits)]] = 0.0
        if not market.costs or gains.max() <= NEARLY:
            return chosen
        rated = gains / np.maximum(costs, NEARLY) if per_price else gains
        chosen |= {int(rated.argmax())}


def _exchanged(table: _Table, chosen: Chosen) -> Chosen:
    """A set with one purchase after another exchanged, as long as that gains anything."""
    worth = table.worth_of(chosen)
    while True:
        found = [_without_one(table, chosen - {each}) for each in sorted(chosen)]
        better = max(found, key=table.worth_of, default=chosen)
        if table.worth_of(better) <= worth + NEARLY:
            return chosen
        chosen, worth = better, table.worth_of(better)


def _without_one(table: _Table, chosen: Chosen) -> Chosen:
    """The best set that is this one and one purchase more, and what still fits beside it."""
    market, gains = table.market, table.gains(chosen)
    gains[sorted(chosen)] = 0.0
    order = np.argsort(-gains, kind="stable").tolist()
    fitting = (each for each in order if gains[each] > 0.0 and market.affordable({*chosen, each}))
    best = next(fitting, None)
    return _filled(table, chosen if best is None else chosen | {best}, CREDITS[-1], per_price=False)


# The programme


@dataclass(frozen=True, slots=True)
class _Found:
    """What the programme gave: a set or none, what none exceeds, and whether that is all."""

    chosen: Chosen | None
    bound: float
    finished: bool


def _solved(made: _Columns, seconds: float, *, whole: bool) -> _Found:
    """The set that is worth most, looked for about so many seconds.

    Unless purchases are `whole` no set is given, but what none exceeds.
    """
    from scipy.optimize import Bounds, LinearConstraint, milp  # loads slowly

    if not made.worths.size:
        return _Found(frozenset(), 0.0, finished=True)
    result = milp(
        -made.worths,
        constraints=LinearConstraint(made.rows, -np.inf, made.most),
        integrality=made.whole if whole else None,
        bounds=Bounds(0.0, 1.0),
        options={"time_limit": max(0.05, seconds), "mip_rel_gap": 0.0},
    )
    if result.status not in (SOLVED, OUT_OF_TIME):
        raise ArithmeticError(f"the best purchases could not be found: {result.message}")
    finished = result.status == SOLVED
    highest = result.mip_dual_bound if whole else result.fun
    bound = math.inf if highest is None else -float(highest)
    if not whole:
        return _Found(None, bound if finished else math.inf, finished)
    chosen = None if result.x is None else made.meant(result.x.tolist())
    return _Found(chosen, bound, finished)


def _watched(solve: Callable[[], _Found], go_on: Callable[[], bool]) -> _Found | None:
    """What is solved on a thread of its own; None where it is no longer wanted meanwhile.

    The programme cannot be stopped: where nobody waits for it, it ends with its time.
    """
    done: SimpleQueue[_Found | BaseException] = SimpleQueue()

    def run() -> None:
        try:
            done.put(solve())
        except BaseException as error:
            done.put(error)

    Thread(target=run, daemon=True).start()
    while True:
        try:
            found = done.get(timeout=LOOK_UP_SECONDS)
        except Empty:
            if not go_on():
                return None
            continue
        if isinstance(found, BaseException):
            raise found
        return found


@dataclass(frozen=True, eq=False)
class _Columns:
    """The programme: most of `worths`, where no row is above its `most`."""

    worths: Amounts
    whole: Numbers
    rows: csr_array
    most: Amounts
    kept: tuple[int, ...]

    def meant(self, values: Sequence[float]) -> Chosen:
        """The purchases that the values of the columns say are taken."""
        taken = zip(self.kept, values, strict=False)  # further columns are no purchases
        return frozenset(each for each, value in taken if value > 0.5)


def _columns(table: _Table) -> _Columns:
    market, kept = table.market, _worth_taking(table)
    place = {each: number for number, each in enumerate(kept)}
    needs = [_among(need, place) for need in table.needs]
    groups = _alike(table, needs)
    several: dict[Option, int] = {}
    for need in dict.fromkeys(need for some in groups for need in some):
        for option in sorted((each for each in need if len(each) > 1), key=sorted):
            several.setdefault(option, len(kept) + len(several))
    first = len(kept) + len(several)
    entries: list[tuple[int, int, float]] = []
    most: list[float] = []

    def row(parts: Iterable[tuple[int, float]], limit: float) -> None:
        entries.extend((len(most), column, each) for column, each in parts)
        most.append(limit)

    for option, column in several.items():
        for each in option:
            row(((column, 1.0), (each, -1.0)), 0.0)
    for number, some in enumerate(groups):
        for need in some:
            helping = [next(iter(each)) if len(each) == 1 else several[each] for each in need]
            row(((first + number, 1.0), *((each, -1.0) for each in helping)), 0.0)
    if market.limits.bottles is not None:
        row(((each, 1.0) for each in range(len(kept))), float(market.limits.bottles))
    if market.limits.budget is not None:
        costs = ((number, market.costs[each]) for number, each in enumerate(kept))
        row(costs, market.limits.budget)
    columns = first + len(groups)
    rows, places, values = (
        np.array([each[0] for each in entries], np.int64),
        np.array([each[1] for each in entries], np.int64),
        np.array([each[2] for each in entries], np.float64),
    )
    return _Columns(
        worths=np.array([0.0] * first + list(groups.values())),
        whole=np.array([1] * len(kept) + [0] * (columns - len(kept))),
        rows=csr_array((values, (rows, places)), shape=(len(most), columns)),
        most=np.array(most),
        kept=kept,
    )


def _among(need: Need, place: Mapping[int, int]) -> Need:
    """A need with the options that can be taken, as columns; none holds all of another."""
    options = [
        frozenset(place[each] for each in option) for option in need if place.keys() >= option
    ]
    return frozenset(each for each in options if not any(other < each for other in options))


def _alike(table: _Table, needs: Sequence[Need]) -> Mapping[frozenset[Need], float]:
    """The needs that targets have, with what all targets that have just these are worth."""
    groups: dict[frozenset[Need], float] = {}
    of_target: list[list[Need]] = [[] for _ in table.market.targets]
    for target, need in zip(table.target.tolist(), table.need.tolist(), strict=True):
        of_target[target].append(needs[need])
    for some, each in zip(of_target, table.market.targets, strict=True):
        open_needs = _only_hardest(need for need in some if frozenset() not in need)
        if all(open_needs) and _could_fit(open_needs, table.market.limits):
            groups[open_needs] = groups.get(open_needs, 0.0) + each.worth
    return groups


def _only_hardest(needs: Iterable[Need]) -> frozenset[Need]:
    """Needs without each that is met wherever another one is."""
    some = frozenset(needs)
    return frozenset(each for each in some if not any(other < each for other in some))


def _could_fit(needs: Iterable[Need], limits: Limits) -> bool:
    """Whether needs that share no purchase are no more than may be bought."""
    seen: set[int] = set()
    count = 0
    for need in sorted(needs, key=lambda each: (len(each), sorted(map(sorted, each)))):
        purchases = frozenset[int]().union(*need)
        if seen.isdisjoint(purchases):
            count += min(len(option) for option in need)
            seen |= purchases
    return limits.bottles is None or count <= limits.bottles


def _worth_taking(table: _Table) -> tuple[int, ...]:
    """The purchases without each that another one does all for, at no higher cost."""
    market = table.market
    asked = set(table.need.tolist())
    does: dict[int, set[tuple[int, Option]]] = {}
    for number in sorted(asked):
        for option in table.needs[number]:
            for each in option:
                does.setdefault(each, set()).add((number, option - {each}))
    budget = market.limits.budget is not None
    kept: list[int] = []

    def first(each: int) -> tuple[int, float, int]:
        return -len(does[each]), market.costs[each] if budget else 0.0, each

    for each in sorted(does, key=first):
        better = (
            does[each] <= does[other] and (not budget or market.costs[other] <= market.costs[each])
            for other in kept
        )
        if market.affordable({each}) and not any(better):
            kept.append(each)
    return tuple(sorted(kept))
