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
from dataclasses import dataclass
from functools import cached_property
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.derivations import Derivation, Want
from barkeep.domain.pouring.assessment import sourcing_for
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Sourcing, Terms, Within, need
from barkeep.domain.specs.spec import Spec

Numbers: TypeAlias = NDArray[np.int64]
Amounts: TypeAlias = NDArray[np.float64]
Flags: TypeAlias = NDArray[np.bool_]
Ask: TypeAlias = tuple[Want, ...]
"""What a line asks for: any one of these will do."""

UNDECIDED = -1
READY, STAND_IN, ONE_SHORT, SHORT = range(4)
"""What is known of a drink; the latter four are the places of the verdicts, best first."""


@dataclass(frozen=True, slots=True)
class _Asking:
    """A required line: the number of its ask, what a serve takes, its ingredient's number."""

    ask: int
    amount: float
    ingredient: int


@dataclass(slots=True)
class Numbering:
    """The asks and ingredients by number, and each spec's lines as numbers.

    It grows as specs come and is kept while neither the knowledge nor the
    owner's usual pours change; a spec that is the same object is not read
    again.
    """

    asks: dict[Terms, int]
    ingredients: dict[str, int]
    _lines: dict[int, tuple[Spec, tuple[_Asking, ...]]]

    @classmethod
    def empty(cls) -> Numbering:
        """Nothing numbered yet."""
        return cls({}, {}, {})

    def lines_of(self, spec: Spec, sourcing: Sourcing) -> tuple[_Asking, ...]:
        """The required lines of a spec."""
        known = self._lines.get(id(spec))
        if known is not None and known[0] is spec:
            return known[1]
        lines = tuple(
            _Asking(
                self.asks.setdefault(terms, len(self.asks)),
                need(line, sourcing.tree),
                self.ingredients.setdefault(line.ingredient, len(self.ingredients)),
            )
            for line, terms in sourcing.terms_of(spec)
        )
        self._lines[id(spec)] = spec, lines
        return lines


@dataclass(frozen=True, eq=False)
class BookLines:
    """The required lines of all specs, one row each, a spec's rows together and in order.

    `spec` is the place of the spec in `specs`, the others are those of
    `_Asking`. `is_strong` says of a spec that a line asks for a least
    strength, `unsettled` how many lines of it nobody understands.
    """

    specs: tuple[Spec, ...]
    asks: tuple[Ask, ...]
    ingredients: tuple[str, ...]
    spec: Numbers
    ask: Numbers
    amount: Amounts
    ingredient: Numbers
    is_strong: Flags
    unsettled: Numbers


def book_lines(specs: tuple[Spec, ...], numbering: Numbering, sourcing: Sourcing) -> BookLines:
    """All specs as arrays."""
    of_spec = [numbering.lines_of(spec, sourcing) for spec in specs]
    lines = [line for some in of_spec for line in some]
    return BookLines(
        specs,
        tuple(map(sourcing.wants_of, numbering.asks)),
        tuple(numbering.ingredients),
        spec=np.repeat(np.arange(len(specs)), [len(some) for some in of_spec]),
        ask=np.array([line.ask for line in lines], np.int64),
        amount=np.array([line.amount for line in lines], np.float64),
        ingredient=np.array([line.ingredient for line in lines], np.int64),
        is_strong=np.array([_asks_strength(spec) for spec in specs], np.bool_),
        unsettled=np.array([len(spec.unsettled) for spec in specs], np.int64),
    )


def _asks_strength(spec: Spec) -> bool:
    return any(line.min_abv_percent is not None for line in spec.lines)


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
    def missing(self) -> Numbers:
        """Of each spec how many ingredients its lines without a way ask for, each once."""
        without = ~self.has_way
        return distinct(
            self.lines.spec[without], self.lines.ingredient[without], len(self.lines.specs)
        )

    def fits(self, there: Amounts, serves: int) -> Flags:
        """Of each spec whether all that its lines draw for so many serves is there.

        `there` is the amount of each pool. Lines without a way draw nothing.
        """
        over = self.amount * serves > there[self.pool]
        fits = np.ones(len(self.lines.specs), np.bool_)
        fits[self.spec[over]] = False
        return fits

    def _each(self, of_line: Flags) -> Flags:
        found = np.ones(len(self.lines.specs), np.bool_)
        found[self.lines.spec[~of_line]] = False
        return found


def drawn(lines: BookLines, sourcing: Sourcing) -> Drawn:
    """What the closest way to each ask draws, summed up by spec and pool."""
    firsts = [_first(sourcing.ways_for_any(ask)) for ask in lines.asks]
    numbers: dict[str, int] = {}
    draws = list(_draws(firsts, numbers, sourcing.supply.always))
    counts = np.array([len(some) for some in draws], np.int64)
    pools = np.array([pool for some in draws for pool, _rate in some], np.int64)
    rates = np.array([rate for some in draws for _pool, rate in some], np.float64)
    row, entry = spread(lines.ask, counts)
    pairs = lines.spec[row] * max(1, len(numbers)) + pools[entry]
    both, place = np.unique(pairs, return_inverse=True)
    has_way = np.array([each is not None for each in firsts], np.bool_)
    has_exact = np.array([each is not None and each.exact for each in firsts], np.bool_)
    return Drawn(
        lines,
        tuple(numbers),
        has_way=has_way[lines.ask],
        has_exact=has_exact[lines.ask],
        spec=both // max(1, len(numbers)),
        pool=both % max(1, len(numbers)),
        amount=np.bincount(place, lines.amount[row] * rates[entry], len(both)).astype(np.float64),
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


def spread(numbers: Numbers, counts: Numbers) -> tuple[Numbers, Numbers]:
    """Rows of a table that stands for ragged lists, for each of some of the lists in turn.

    `numbers` name lists, `counts` are the lengths of all lists that stand one
    behind the other. Gives for each row the place in `numbers` and the place
    in the table.

    >>> spread(np.array([1, 0, 1]), np.array([1, 2]))
    (array([0, 0, 1, 2, 2]), array([1, 2, 0, 1, 2]))
    """
    lengths = counts[numbers]
    starts = (np.cumsum(counts) - counts)[numbers]
    row = np.repeat(np.arange(len(numbers)), lengths)
    within = np.arange(len(row)) - np.repeat(np.cumsum(lengths) - lengths, lengths)
    return row, starts[row] + within


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

    def undecided(self) -> list[tuple[int, Spec]]:
        """The specs that have to be looked at one by one, each with its place."""
        places: list[int] = np.flatnonzero(self.codes == UNDECIDED).tolist()
        return [(place, self.specs[place]) for place in places]

    def settle(self, place: int, code: int, lacking: int) -> None:
        """Write down what looking at one of them has found."""
        self.codes[place], self.lacking[place] = code, lacking

    def in_order(self) -> list[int]:
        """The places of all specs, best verdict first, then what lacks least, then as they were."""
        found: list[int] = np.lexsort((self.lacking, self.codes)).tolist()
        return found


def decided(found: Drawn, sourcing: Sourcing, serves: int) -> Decided:
    """Decide what can be decided for so many serves."""
    there = np.array([sourcing.supply.total(key) for key in found.pools], np.float64)
    lacking = found.missing + found.lines.unsettled
    codes = np.minimum(ONE_SHORT - 1 + lacking, SHORT)
    codes[lacking == 0] = np.where(found.all_exact, READY, STAND_IN)[lacking == 0]
    codes[~found.fits(there, serves) | found.lines.is_strong] = UNDECIDED
    return Decided(found.lines.specs, codes, lacking, found)


def decide(
    snapshot: Snapshot, within: Within, serves: int, memory: Memory
) -> tuple[Decided, Sourcing]:
    """What can be decided of a snapshot's book, with the search that goes on from there.

    What was compiled before is taken from memory where it still holds.
    """
    sourcing = sourcing_for(snapshot, within, memory)
    world = (snapshot.knowledge, sourcing.usual.house)
    numbering = memory.once(("numbers", within), world, Numbering.empty)
    specs = snapshot.all_specs
    lines = memory.once(
        ("lines", within), (*world, specs), lambda: book_lines(specs, numbering, sourcing)
    )
    owned = (lines, sourcing.supply.owned, sourcing.supply.always)
    found = memory.once(("drawn", within), owned, lambda: drawn(lines, sourcing))
    return decided(found, sourcing, serves), sourcing
