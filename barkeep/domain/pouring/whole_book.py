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
asked for. `decided_by_levels` goes on with the closest way to each line that
there is enough for; of the rest one spec at a time has to be looked at
(`verdicts`). The arrays never decide what they cannot decide exactly.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TypeVar

import numpy as np

from barkeep.domain.bar.snapshot import Snapshot
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
from barkeep.domain.pouring.sourcing import Sourcing, Within, sourcing_for
from barkeep.domain.pouring.ways_to_asks import Enough, WaysToAsks
from barkeep.domain.specs.spec import Spec

Name = TypeVar("Name", bound=str)

UNDECIDED = -1
READY, STAND_IN, ONE_SHORT, SHORT = range(4)
"""What is known of a drink; the latter four are the places of the verdicts, best first."""


@dataclass(frozen=True, eq=False)
class Drawn:
    """How much each drink draws from each pool in a serve, where every line takes one way.

    One row for each spec and pool together: their numbers, and the amount in
    the pool's unit. `has_way` and `has_exact` are by line.
    """

    lines: BookLines
    ways: WaysToAsks
    has_way: Flags
    has_exact: Flags
    spec: Numbers
    pool: Numbers
    amount: Amounts

    @property
    def pools(self) -> tuple[str, ...]:
        """The key of each pool."""
        return self.ways.pools

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


def drawn(lines: BookLines, ways: WaysToAsks, way: Numbers) -> Drawn:
    """What each line draws in the way of this number, -1 for none; summed up by spec and pool."""
    rows, has_way, width = lines.rows, way >= 0, max(1, len(ways.pools))
    row, entry = spread(way[has_way], ways.draws)
    pairs = rows.spec[has_way][row] * width + ways.pool[entry]
    both, place = np.unique(pairs, return_inverse=True)
    taken = rows.amount[has_way][row] * ways.rate[entry]
    has_exact = has_way.copy()
    has_exact[has_way] = ways.exact[way[has_way]]
    return Drawn(
        lines,
        ways,
        has_way=has_way,
        has_exact=has_exact,
        spec=both // width,
        pool=both % width,
        amount=np.bincount(place, taken, len(both)).astype(np.float64),
    )


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
        places = np.flatnonzero(self.codes == UNDECIDED)
        return self.with_codes(places, np.array(codes, np.int64), np.array(lacking, np.int64))

    def with_codes(self, places: Numbers, codes: Numbers, lacking: Numbers) -> Decided:
        """The same with what is found of the specs at these places."""
        of_all, lacking_of_all = self.codes.copy(), self.lacking.copy()
        of_all[places], lacking_of_all[places] = codes, lacking
        return replace(self, codes=of_all, lacking=lacking_of_all)

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
    codes = _where_it_fits(found, found.ways.there(sourcing.supply), serves)
    return Decided(found.lines.specs, codes, found.lacking, found)


def _where_it_fits(found: Drawn, there: Amounts, serves: int) -> Numbers:
    codes: Numbers = np.where(found.fits(there, serves), found.codes, UNDECIDED)
    return codes


def decided_by_levels(found: Decided, sourcing: Sourcing, serves: int) -> Decided:
    """The same, with the drinks whose closest ways are too much for what is there.

    Each line takes the closest way that there is enough for where it is poured alone; a line is
    missing where all its ways together are too little. Where several ways together might do for
    a line, or what lines take is not there for all of them, the drink stays undecided.
    """
    places = np.flatnonzero(found.codes == UNDECIDED)
    ways, there = found.drawn.ways, found.drawn.ways.there(sourcing.supply)
    lines = found.drawn.lines.of_specs(places)
    enough = Enough.of(lines.rows, ways, there, serves)
    fitting = drawn(lines, ways, enough.way)
    codes = _where_it_fits(fitting, there, serves)
    codes[lines.rows.spec[enough.may_mix]] = UNDECIDED
    may_be_exact = lines.rows.spec[enough.may_be_exact]
    codes[may_be_exact[codes[may_be_exact] == STAND_IN]] = UNDECIDED
    return found.with_codes(places, codes, fitting.lacking)


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

    def drawn_first() -> Drawn:
        ways = WaysToAsks.of(lines.asks, sourcing)
        return drawn(lines, ways, ways.first[lines.rows.ask])

    found = memory.once(("drawn", within), owned, drawn_first)
    asked = ("decided", within, serves)
    return memory.answer(asked, snapshot, lambda: decided(found, sourcing, serves)), sourcing
