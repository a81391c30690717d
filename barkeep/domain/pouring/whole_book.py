"""Which drinks can be made, decided for the whole book at once.

Every line asks for something; the asks are numbered, however many lines share
one, and the lines become arrays. A way to each ask is searched for once. Then
a drink is decided where

- every line has a way, and what the closest ways of all its lines draw
  together is there: it can be made; exactly, where every line has an exact
  way, and otherwise with a stand-in;
- some lines have no way at all, and what the closest ways of the others draw
  together is there: just those lines are missing.

Whatever is neither is `UNDECIDED`: a level may bind, or a least strength is
asked for, and one spec at a time has to be looked at (`verdicts`). The arrays
never decide what they cannot decide exactly.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TypeVar

import numpy as np

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.pouring.assessment import sourcing_for
from barkeep.domain.pouring.book_lines import (
    Amounts,
    BookLines,
    Flags,
    Numbering,
    Numbers,
    spread,
)
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.pools import Taken
from barkeep.domain.pouring.sourcing import Sourcing, Within
from barkeep.domain.specs.spec import Spec

Name = TypeVar("Name", bound=str)

UNDECIDED = -1
READY, STAND_IN, ONE_SHORT, SHORT = range(4)
"""What is known of a drink; the latter four are the places of the verdicts, best first."""


@dataclass(frozen=True, eq=False)
class Drawn:
    """How much each drink draws from each pool in a serve, where every line takes its closest way.

    One row for each spec and pool together: their numbers, and the amount in
    the pool's unit. `has_way` and `has_exact` are by line.
    """

    lines: BookLines
    pools: tuple[str, ...]
    has_way: Flags
    has_exact: Flags
    spec: Numbers
    pool: Numbers
    amount: Amounts

    @cached_property
    def all_exact(self) -> Flags:
        """Of each spec whether every line has an exact way."""
        return self._each(self.has_exact)

    @cached_property
    def lacking(self) -> Numbers:
        """Of each spec how many ingredients its lines without a way ask for, each once.

        And how many lines nobody understands.
        """
        rows, without = self.lines.rows, ~self.has_way
        missing = distinct(rows.spec[without], rows.ingredient[without], len(self.lines.specs))
        return missing + rows.unsettled

    @cached_property
    def codes(self) -> Numbers:
        """Of each spec what is known of it where all that its lines draw is there."""
        codes = np.minimum(ONE_SHORT - 1 + self.lacking, SHORT)
        lacks_nothing = self.lacking == 0
        codes[lacks_nothing] = np.where(self.all_exact, READY, STAND_IN)[lacks_nothing]
        codes[self.lines.rows.is_strong] = UNDECIDED
        return codes

    def fits(self, there: Amounts, serves: int) -> Flags:
        """Of each spec whether all that its lines draw for so many serves is there.

        `there` is the amount of each pool. Lines without a way draw nothing.
        """
        return self._taken.fits(there, serves)

    @cached_property
    def _taken(self) -> Taken:
        none = np.zeros(len(self.amount))
        return Taken(len(self.lines.specs), self.spec, self.pool, amount=self.amount, more=none)

    def _each(self, of_line: Flags) -> Flags:
        found = np.ones(len(self.lines.specs), np.bool_)
        found[self.lines.rows.spec[~of_line]] = False
        return found


def drawn(lines: BookLines, sourcing: Sourcing) -> Drawn:
    """What the closest way to each ask draws, summed up by spec and pool."""
    firsts = [_first(sourcing.ways_for_any(ask)) for ask in lines.asks]
    numbers: dict[str, int] = {}
    draws = list(_draws(firsts, numbers, sourcing.supply.always))
    counts = np.array([len(some) for some in draws], np.int64)
    pools = np.array([pool for some in draws for pool, _rate in some], np.int64)
    rates = np.array([rate for some in draws for _pool, rate in some], np.float64)
    rows = lines.rows
    row, entry = spread(rows.ask, counts)
    pairs = rows.spec[row] * max(1, len(numbers)) + pools[entry]
    both, place = np.unique(pairs, return_inverse=True)
    has_way = np.array([each is not None for each in firsts], np.bool_)
    has_exact = np.array([each is not None and each.exact for each in firsts], np.bool_)
    return Drawn(
        lines,
        tuple(numbers),
        has_way=has_way[rows.ask],
        has_exact=has_exact[rows.ask],
        spec=both // max(1, len(numbers)),
        pool=both % max(1, len(numbers)),
        amount=np.bincount(place, rows.amount[row] * rates[entry], len(both)).astype(np.float64),
    )


def _first(ways: Sequence[Derivation]) -> Derivation | None:
    return ways[0] if ways else None


def _draws(
    firsts: Sequence[Derivation | None], numbers: dict[str, int], always: frozenset[str]
) -> Iterator[list[tuple[int, float]]]:
    for way in firsts:
        yield [
            (numbers.setdefault(key, len(numbers)), rate)
            for key, rate in (way.draws.items() if way else ())
            if key not in always
        ]


def distinct(of: Numbers, what: Numbers, count: int) -> Numbers:
    """Of each of `count` owners how many different numbers of `what` belong to it.

    >>> distinct(np.array([0, 0, 2]), np.array([7, 7, 7]), 3)
    array([1, 0, 1])
    """
    width = int(what.max(initial=0)) + 1
    return np.bincount(np.unique(of * width + what) // width, minlength=count)


@dataclass(frozen=True, eq=False)
class Decided:
    """What the arrays decide: a code for each spec, and how many things it lacks.

    Of an undecided spec `lacking` says nothing. `drawn` is what it was decided on.
    """

    specs: tuple[Spec, ...]
    codes: Numbers
    lacking: Numbers
    drawn: Drawn

    @cached_property
    def undecided(self) -> list[tuple[int, Spec]]:
        """The specs that have to be looked at one by one, each with its place."""
        places: list[int] = np.flatnonzero(self.codes == UNDECIDED).tolist()
        return [(place, self.specs[place]) for place in places]

    def settled(self, codes: Sequence[int], lacking: Sequence[int]) -> Decided:
        """The same with what looking at each of the undecided has found."""
        places = [place for place, _spec in self.undecided]
        of_all = self.codes.copy(), self.lacking.copy()
        of_all[0][places], of_all[1][places] = codes, lacking
        return replace(self, codes=of_all[0], lacking=of_all[1])

    @property
    def said(self) -> tuple[bytes, bytes]:
        """What it says of all specs, to be set beside what another says."""
        return self.codes.tobytes(), self.lacking.tobytes()

    def named(self, names: Sequence[Name]) -> tuple[Name, ...]:
        """Of each spec the name of its code, once all are settled."""
        return tuple(np.array(names, np.object_)[self.codes].tolist())

    def in_order(self) -> tuple[int, ...]:
        """The places of all specs, best verdict first, then what lacks least, then as they were."""
        keys = self.codes * (self.lacking.max(initial=0) + 1) + self.lacking
        small = keys.astype(np.min_scalar_type(keys.max(initial=0)))  # sorted in one or two passes
        return tuple(np.argsort(small, kind="stable").tolist())


def decided(found: Drawn, sourcing: Sourcing, serves: int) -> Decided:
    """Decide what can be decided for so many serves."""
    there = np.array([sourcing.supply.total(key) for key in found.pools], np.float64)
    codes = np.where(found.fits(there, serves), found.codes, UNDECIDED)
    return Decided(found.lines.specs, codes, found.lacking, found)


def decide(
    snapshot: Snapshot, within: Within, serves: int, memory: Memory
) -> tuple[Decided, Sourcing]:
    """What can be decided of a snapshot's book, with the search that goes on from there.

    What was compiled before is taken from memory where it still holds.
    """
    sourcing = sourcing_for(snapshot, within, memory)
    world = (snapshot.knowledge, sourcing.usual.house)
    numbering = memory.once(("numbers", within), world, Numbering)
    specs = snapshot.all_specs
    lines = memory.once(
        ("lines", within), (*world, specs), lambda: numbering.book_lines(specs, sourcing)
    )
    owned = (lines, sourcing.supply.owned, sourcing.supply.always)
    found = memory.once(("drawn", within), owned, lambda: drawn(lines, sourcing))
    asked = ("decided", within, serves)
    return memory.answer(asked, snapshot, lambda: decided(found, sourcing, serves)), sourcing
