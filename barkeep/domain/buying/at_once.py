"""Which single purchases turn which drinks, decided for the whole book at once.

The arrays know what every line lacks a way to (`pouring.whole_book`). A
purchase can turn a drink only where it gives a way to all of those lines; and
where its closest ways fit what is there together with what the other lines
draw, it does. That and what a purchase brings near hold whatever the levels
are, so it is worked out once for what is owned. What remains unclear is left
to `next_bottle`, which looks at such a drink by itself.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

import numpy as np

from barkeep.domain.ingredients.derivations import Derivation, Want
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.pouring.book_lines import Amounts, Ask, Flags, Numbers, spread
from barkeep.domain.pouring.made_first import made_first
from barkeep.domain.pouring.pools import Taken
from barkeep.domain.pouring.sourcing import Sourcing, any_of
from barkeep.domain.pouring.supply import purchase
from barkeep.domain.pouring.whole_book import ONE_SHORT, Decided, Drawn


@dataclass(frozen=True)
class BoughtWays:
    """The ways to meet what lines ask for that take one purchase, by its key, closest first."""

    sourcing: Sourcing
    _of_want: dict[Want, Mapping[str, tuple[Derivation, ...]]]
    _of_ask: dict[Ask, Mapping[str, tuple[Derivation, ...]]] = field(default_factory=dict)

    def of(self, ask: Ask) -> Mapping[str, tuple[Derivation, ...]]:
        """Key -> the ways to meet a line that asks for any of these."""
        if len(ask) == 1:
            return self._of_one(ask[0])
        if ask not in self._of_ask:
            wants = [self._of_one(want) for want in ask]
            keys = dict.fromkeys(key for ways in wants for key in ways)
            self._of_ask[ask] = {key: any_of(ways.get(key, ()) for ways in wants) for key in keys}
        return self._of_ask[ask]

    def _of_one(self, want: Want) -> Mapping[str, tuple[Derivation, ...]]:
        if want not in self._of_want:
            ways: dict[str, tuple[Derivation, ...]] = {}
            for each in self.sourcing.derivations.buying_one(want):
                if each.buying is not None:
                    ways[each.buying] = (*ways.get(each.buying, ()), each)
            self._of_want[want] = ways
        return self._of_want[want]


@dataclass(frozen=True, eq=False)
class _Missing:
    """The lines without a way, of the drinks that arrays can decide.

    `spec` and `number` are whose line it is and which of the required ones, `of_spec` how many
    of these lines each spec has; the others are as in `BookLines`.
    """

    spec: Numbers
    ask: Numbers
    ingredient: Numbers
    amount: Amounts
    number: Numbers
    of_spec: Numbers

    @classmethod
    def of(cls, found: Drawn) -> _Missing:
        rows = found.lines.rows
        usable = (rows.unsettled == 0) & ~rows.is_strong
        these = ~found.has_way & usable[rows.spec]
        number = np.arange(len(rows.spec)) - (np.cumsum(rows.counts) - rows.counts)[rows.spec]
        spec = rows.spec[these]
        return cls(
            spec=spec,
            ask=rows.ask[these],
            ingredient=rows.ingredient[these],
            amount=rows.amount[these],
            number=number[these],
            of_spec=np.bincount(spec, minlength=len(rows.counts)),
        )


@dataclass(frozen=True, eq=False)
class _Helps:
    """Each ask with each purchase that gives it a way: sorted by ask, then by the key's number.

    `counts` is how many there are of each ask; `first` the closest way.
    """

    keys: tuple[str, ...]
    counts: Numbers
    ask: Numbers
    key: Numbers
    first: tuple[Derivation, ...]

    @classmethod
    def of(
        cls, asks: Sequence[Ask], wanted: Iterable[int], bought: BoughtWays, sold: Sequence[str]
    ) -> _Helps:
        place = {key: number for number, key in enumerate(sold)}
        found = [
            (ask, place[key], ways[0])
            for ask in wanted
            for key, ways in bought.of(asks[ask]).items()
            if key in place
        ]
        found.sort(key=lambda each: each[:2])
        ask = np.array([each[0] for each in found], np.int64)
        return cls(
            keys=tuple(sold),
            counts=np.bincount(ask, minlength=len(asks)),
            ask=ask,
            key=np.array([each[1] for each in found], np.int64),
            first=tuple(each[2] for each in found),
        )

    def place(self, ask: Numbers, key: Numbers) -> Numbers:
        """Where each ask stands with each key; they are there."""
        width = len(self.keys)
        return np.searchsorted(self.ask * width + self.key, ask * width + key)


class Turned(NamedTuple):
    """A drink that a purchase turns: by which lines, and what has to be made of it first.

    `exactly` is whether the drink then needs no stand-in.
    """

    name: str
    exactly: bool
    lines: tuple[int, ...]
    makes: tuple[MadeFrom, ...]


@dataclass(frozen=True, eq=False)
class Turning:
    """Each drink with each purchase that gives all its lines a way, whatever the levels are.

    One row a pair, by purchase and then as the book has them: `spec` its place in the book, `key`
    the number of what is bought; `turned` what is said of it where what it takes is there, None
    where that takes a closer look. `near_spec` and `near_key`
    are the pairs where a purchase leaves a drink one short. Of `draws` one row is what a pair
    takes of one pool, `there` being what is bought of it.
    """

    keys: tuple[str, ...]
    spec: Numbers
    key: Numbers
    turned: Sequence[Turned | None]
    near_spec: Numbers
    near_key: Numbers
    pools: tuple[str, ...]
    pair: Numbers
    pool: Numbers
    amount: Amounts
    there: Amounts
    lines: Mapping[int, tuple[tuple[int, Ask], ...]]

    @cached_property
    def number(self) -> Mapping[str, int]:
        """The number of each purchase."""
        return {key: number for number, key in enumerate(self.keys)}

    @cached_property
    def place(self) -> list[int]:
        """Of each pair the place of its drink in the book."""
        places: list[int] = self.spec.tolist()
        return places

    @cached_property
    def near_place(self) -> list[int]:
        """The same of the pairs where a purchase leaves a drink one short."""
        places: list[int] = self.near_spec.tolist()
        return places

    @cached_property
    def starts(self) -> list[int]:
        """Where the pairs of each purchase begin, and after the last where they end."""
        return _starts(self.key, len(self.keys))

    @cached_property
    def near_starts(self) -> list[int]:
        """The same of the pairs where it leaves a drink one short."""
        return _starts(self.near_key, len(self.keys))

    @cached_property
    def is_clear(self) -> Flags:
        """Of each pair whether it takes no closer look where what it takes is there."""
        return np.array([each is not None for each in self.turned], np.bool_)

    def fits(self, total: Callable[[str], float]) -> Flags:
        """Of each pair whether what it takes is there, `total` being how much of a pool is."""
        there = np.array([total(key) for key in self.pools], np.float64)
        return self._taken.fits(there, serves=1)

    @cached_property
    def _taken(self) -> Taken:
        more = self.amount > self.there  # of the others what is bought is enough
        return Taken(
            len(self.spec),
            self.pair[more],
            self.pool[more],
            amount=self.amount[more],
            more=self.there[more],
        )

    def counted(self, of: Numbers, decided: Decided) -> Flags:
        """Of each pair whether its drink is decided to be short."""
        return decided.codes[of] >= ONE_SHORT


def _starts(key: Numbers, count: int) -> list[int]:
    starts: list[int] = np.searchsorted(key, np.arange(count + 1)).tolist()
    return starts


def turning(found: Drawn, bought: BoughtWays, sold: Sequence[str]) -> Turning:
    """What each of the purchases `sold` does for the drinks as they are drawn."""
    missing = _Missing.of(found)
    asks = found.lines.asks
    helps = _Helps.of(asks, np.unique(missing.ask).tolist(), bought, sold)
    width = max(1, len(sold))
    spec, key = _by_key(_helped_by_all(missing, helps, width), width)
    near_spec, near_key = _by_key(_near(missing, helps, width), width)
    pair, line = spread(spec, missing.of_spec)
    entry = helps.place(missing.ask[line], key[pair])
    whole = _Pairs(
        found, missing, helps, bought, spec=spec, key=key, pair=pair, line=line, entry=entry
    )
    pools, draws = whole.draws()
    lines = whole.lines_of_spec()
    return Turning(
        tuple(sold),
        spec=spec,
        key=key,
        turned=whole.turned(lines),
        near_spec=near_spec,
        near_key=near_key,
        pools=pools,
        pair=draws[0],
        pool=draws[1],
        amount=draws[2],
        there=draws[3],
        lines=lines,
    )


def _by_key(pairs: Numbers, width: int) -> tuple[Numbers, Numbers]:
    """The specs and the keys of pairs in one number, by key and then by spec."""
    spec, key = pairs // width, pairs % width
    order = np.argsort(key, kind="stable")
    return spec[order], key[order]


def _helped_by_all(missing: _Missing, helps: _Helps, width: int) -> Numbers:
    """Spec and key in one number, for each key that gives all asks of the spec a way."""
    asks = max(1, len(helps.counts))
    distinct = np.unique(missing.spec * asks + missing.ask)
    return _in_all(distinct // asks, distinct % asks, helps, width)


def _in_all(of: Numbers, ask: Numbers, helps: _Helps, width: int) -> Numbers:
    """Owner and key in one number, where the key gives all asks of the owner a way, each once."""
    row, entry = spread(ask, helps.counts)
    pairs, times = np.unique(of[row] * width + helps.key[entry], return_counts=True)
    all_asks = np.bincount(of, minlength=1)
    found: Numbers = pairs[times == all_asks[pairs // width]]
    return found


def _near(missing: _Missing, helps: _Helps, width: int) -> Numbers:
    """Spec and key in one number, where the key helps all that a spec lacks but one ingredient."""
    ingredients = int(missing.ingredient.max(initial=0)) + 1
    groups, place = np.unique(missing.spec * ingredients + missing.ingredient, return_inverse=True)
    of_group = groups // ingredients
    asks = max(1, len(helps.counts))
    distinct = np.unique(place * asks + missing.ask)
    helped = _in_all(distinct // asks, distinct % asks, helps, width)
    pairs, times = np.unique(of_group[helped // width] * width + helped % width, return_counts=True)
    lacking = np.bincount(of_group, minlength=1)
    found: Numbers = pairs[times == lacking[pairs // width] - 1]
    return found


@dataclass(frozen=True, eq=False)
class _Pairs:
    """Each drink with each purchase that gives all its lines a way.

    Of `pair`, `line` and `entry` one row is a line of a pair with the way it is then given.
    """

    found: Drawn
    missing: _Missing
    helps: _Helps
    bought: BoughtWays
    spec: Numbers
    key: Numbers
    pair: Numbers
    line: Numbers
    entry: Numbers

    def draws(self) -> tuple[tuple[str, ...], tuple[Numbers, Numbers, Amounts, Amounts]]:
        """What each pair takes of the pools that its purchase is mixed with, and what is bought."""
        numbers = {key: number for number, key in enumerate(self.found.pools)}
        always = self.bought.sourcing.supply.always
        drawn = [
            [
                (numbers.setdefault(key, len(numbers)), rate)
                for key, rate in way.draws.items()
                if key not in always
            ]
            for way in self.helps.first
        ]
        counts = np.array([len(some) for some in drawn], np.int64)
        pools = np.array([pool for some in drawn for pool, _rate in some], np.int64)
        rates = np.array([rate for some in drawn for _pool, rate in some], np.float64)
        row, place = spread(self.entry, counts)
        width = max(1, len(numbers))
        codes = self.pair[row] * width + pools[place]
        both, where = np.unique(codes, return_inverse=True)
        taken = self.missing.amount[self.line[row]] * rates[place]
        pair, pool = both // width, both % width
        before = self._drawn_before(pair, pool, width)
        amount: Amounts = before + np.bincount(where, taken, len(both))
        return tuple(numbers), (pair, pool, amount, self._bought(pair, pool, numbers))

    def _drawn_before(self, pair: Numbers, pool: Numbers, width: int) -> Amounts:
        """What the lines that have a way draw of the same pools."""
        found = self.found
        known = found.spec * width + found.pool
        wanted = self.spec[pair] * width + pool
        place = np.minimum(np.searchsorted(known, wanted), max(0, len(known) - 1))
        if not len(known):
            return np.zeros(len(wanted))
        return np.where(known[place] == wanted, found.amount[place], 0.0)

    def _bought(self, pair: Numbers, pool: Numbers, numbers: Mapping[str, int]) -> Amounts:
        tree, keys = self.bought.sourcing.tree, self.helps.keys
        own = np.array([numbers.get(key, -1) for key in keys], np.int64)
        sizes = np.array([purchase(key, tree).amount for key in keys], np.float64)
        key = self.key[pair]
        return np.where(own[key] == pool, sizes[key], 0.0)

    def _exactly(self) -> list[bool | None]:
        """Of each pair whether every line has an exact way, where levels do not bind."""
        found, lines = self.found, self.found.lines
        is_exact = np.array([way.exact for way in self.helps.first], np.bool_)
        bought = np.ones(len(self.spec), np.bool_)
        bought[self.pair[~is_exact[self.entry]]] = False
        others = np.ones(len(lines.specs), np.bool_)
        others[lines.rows.spec[found.has_way & ~found.has_exact]] = False
        known: list[bool | None] = bought.tolist()
        for place in np.flatnonzero(bought & ~others[self.spec]).tolist():
            key, asks = self.helps.keys[self.key[place]], self._not_exact[int(self.spec[place])]
            known[place] = None if all(self._makes_exact(ask, key) for ask in asks) else False
        return known

    def _makes_exact(self, ask: Ask, key: str) -> bool:
        return any(way.exact for way in self.bought.of(ask).get(key, ()))

    @cached_property
    def _not_exact(self) -> Mapping[int, list[Ask]]:
        """What the lines of a spec ask for whose only ways are stand-ins."""
        return self._asks_where(self.found.has_way & ~self.found.has_exact)

    def _asks_where(self, of_line: Flags) -> Mapping[int, list[Ask]]:
        lines, found = self.found.lines, dict[int, list[Ask]]()
        rows = lines.rows
        pairs = zip(rows.spec[of_line].tolist(), rows.ask[of_line].tolist(), strict=True)
        for spec, ask in pairs:
            found.setdefault(spec, []).append(lines.asks[ask])
        return found

    def lines_of_spec(self) -> Mapping[int, tuple[tuple[int, Ask], ...]]:
        """The number of each line without a way and what it asks for, by the place of the spec."""
        missing, asks = self.missing, self.found.lines.asks
        found: dict[int, list[tuple[int, Ask]]] = {}
        rows = zip(
            missing.spec.tolist(), missing.number.tolist(), missing.ask.tolist(), strict=True
        )
        for spec, number, ask in rows:
            found.setdefault(spec, []).append((number, asks[ask]))
        return {spec: tuple(some) for spec, some in found.items()}

    def turned(self, lines: Mapping[int, tuple[tuple[int, Ask], ...]]) -> list[Turned | None]:
        """What is said of each pair, None where it takes a closer look."""
        numbers = {spec: tuple(number for number, _ask in some) for spec, some in lines.items()}
        specs = self.found.lines.specs
        rows = zip(self.spec.tolist(), self._exactly(), self._made(), strict=True)
        return [
            None
            if exactly is None or made is None
            else Turned(specs[spec].name, exactly, numbers[spec], made)
            for spec, exactly, made in rows
        ]

    def _made(self) -> list[tuple[MadeFrom, ...] | None]:
        """What has to be made of each pair's purchase first, where levels do not bind.

        None where it takes a closer look: where it is a closer way to another line as well.
        """
        tree, firsts = self.bought.sourcing.tree, self.helps.first
        makes = np.array([bool(way.made) for way in firsts], np.bool_)[self.entry]
        starts = _starts(self.pair, len(self.spec))
        closer = self._is_closer()
        found: list[tuple[MadeFrom, ...] | None] = [None if each else () for each in closer]
        for pair in np.unique(self.pair[makes & ~closer[self.pair]]).tolist():
            entries = self.entry[starts[pair] : starts[pair + 1]].tolist()
            found[pair] = made_first((firsts[each] for each in entries), tree)
        return found

    def _is_closer(self) -> Flags:
        """Of each pair whether the purchase gives a line a way before the one it has.

        A line that is poured just as written has none before.
        """
        lines, sourcing = self.found.lines, self.bought.sourcing
        rows, width = lines.rows, max(1, len(self.helps.keys))
        ways_to = [sourcing.ways_for_any(ask) for ask in lines.asks]
        plain = np.array([not ways or _as_written(ways[0]) for ways in ways_to], np.bool_)
        others = ~plain[rows.ask]
        ask, of_spec = rows.ask[others], np.bincount(rows.spec[others], minlength=len(rows.counts))
        pair, line = spread(self.spec, of_spec)
        number = {key: place for place, key in enumerate(self.helps.keys)}
        closer = [
            each * width + number[key]
            for each in np.unique(ask[line]).tolist()
            for key, ways in self.bought.of(lines.asks[each]).items()
            if key in number and ways[0].rank < ways_to[each][0].rank
        ]
        found = np.zeros(len(self.spec), np.bool_)
        found[pair[np.isin(ask[line] * width + self.key[pair], closer)]] = True
        return found


def _as_written(way: Derivation) -> bool:
    return way.exact and not way.steps and not way.choice
