"""Barkeep's answers and those of its peers, timed beside each other in one run."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import log
from typing import Protocol

from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.application.benchmarks.peers import Peer, peers
from barkeep.application.benchmarks.plain_book import plain_book
from barkeep.application.benchmarks.timing import best_ms
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import WITHIN
from barkeep.domain.pouring.verdicts import verdicts

SIZES = (262, 1_000, 10_000, 100_000)
BOTTLES = 300


@dataclass(frozen=True, slots=True)
class Row:
    """A question at a size: `ms` of CPU at best, and how many times each peer's that is.

    `against_search`, `against_sql` and `against_floor` are ratios to a plain
    networkx search, to a relational division in SQL, and to bits in arrays.
    """

    specs: int
    question: str
    ms: float
    against_search: float
    against_sql: float
    against_floor: float


@dataclass(frozen=True, slots=True)
class Growth:
    """`exponent` is the slope of log time over log specs: 1 is linear, 2 quadratic."""

    question: str
    exponent: float


def rows(
    knowledge: Knowledge,
    sizes: Sequence[int] = SIZES,
    bottles: int = BOTTLES,
    *,
    seed: int = 1,
    on: date,
) -> Iterator[Row]:
    """Each question at each size, as soon as it is timed."""
    for specs in sizes:
        bar = invented_bar(knowledge, specs, bottles, seed=seed, on=on)
        yield from _rows_of(bar)


class Timed(Protocol):
    """A question that was timed at a size."""

    @property
    def specs(self) -> int: ...
    @property
    def question(self) -> str: ...
    @property
    def ms(self) -> float: ...


def growth(found: Sequence[Timed]) -> tuple[Growth, ...]:
    """How each question grows from the smallest bar to the largest; none from one size alone."""
    questions = dict.fromkeys(row.question for row in found)
    by_question = {name: [row for row in found if row.question == name] for name in questions}
    return tuple(
        Growth(name, _slope(some[0], some[-1]))
        for name, some in by_question.items()
        if some[0].specs < some[-1].specs
    )


def _slope(first: Timed, last: Timed) -> float:
    return log(last.ms / first.ms) / log(last.specs / first.specs)


def _rows_of(bar: Snapshot) -> Iterator[Row]:
    beside = _timed_peers(bar)
    for question, (asked, timed) in _QUESTIONS.items():
        ms = timed(bar)
        ratios = {name: ms / took[asked] for name, took in beside.items()}
        yield Row(len(bar.all_specs), question, ms, **ratios)


def _timed_peers(bar: Snapshot) -> dict[str, dict[str, float]]:
    """What each peer takes for either question and for both, in ms, once it is prepared."""
    book = plain_book(bar, "close")
    found = peers(book, bar.knowledge, bar.owned, WITHIN["close"])
    return {name: _timed(peer) for name, peer in found.items()}


def _timed(peer: Peer) -> dict[str, float]:
    tonight, next_one = best_ms(peer.ready), best_ms(peer.turned)
    return {"tonight": tonight, "next bottle": next_one, "both": tonight + next_one}


_Ask = Callable[[Snapshot, Memory], object]


def _tonight(bar: Snapshot, memory: Memory) -> object:
    return verdicts(bar, memory=memory)


def _next_bottle(bar: Snapshot, memory: Memory) -> object:
    return next_bottle(bar, memory=memory)


def _both(bar: Snapshot, memory: Memory) -> object:
    return _tonight(bar, memory), _next_bottle(bar, memory)


def _afresh(ask: _Ask) -> Callable[[Snapshot], float]:
    return lambda bar: best_ms(lambda: ask(_unknown(bar), Memory()))


def _unknown(bar: Snapshot) -> Snapshot:
    """The same bar, with nothing worked out of it yet."""
    return replace(bar)


def _again(ask: _Ask) -> Callable[[Snapshot], float]:
    def timed(bar: Snapshot) -> float:
        memory = Memory()
        ask(bar, memory)
        return best_ms(lambda: ask(bar, memory))

    return timed


def _after_a_count(ask: _Ask) -> Callable[[Snapshot], float]:
    def timed(bar: Snapshot) -> float:
        memory = Memory()
        ask(bar, memory)
        now = [bar]

        def count_and_ask() -> None:
            now[0] = _counted(now[0])
            ask(now[0], memory)

        return best_ms(count_and_ask)

    return timed


def _counted(bar: Snapshot) -> Snapshot:
    """The bar after one bottle was counted a little lower; the next one each time."""
    if not bar.bottles:
        return _unknown(bar)
    first, *rest = bar.bottles
    level = replace(first.level, amount=first.level.amount * 0.9)
    return bar.changed(bottles=(*rest, replace(first, level=level)))


_QUESTIONS: Mapping[str, tuple[str, Callable[[Snapshot], float]]] = {
    "tonight, from nothing": ("tonight", _afresh(_tonight)),
    "tonight, after a count": ("tonight", _after_a_count(_tonight)),
    "next bottle, from nothing": ("next bottle", _afresh(_next_bottle)),
    "next bottle, after a count": ("next bottle", _after_a_count(_next_bottle)),
    "both, from nothing": ("both", _afresh(_both)),
    "both, after a count": ("both", _after_a_count(_both)),
    "both, asked again": ("both", _again(_both)),
}
"""Each question with the peers' one it is set beside, and how it is timed."""
