"""All ways to what lines ask for as arrays, and which of them there is enough for."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from barkeep.domain.pouring.book_lines import Amounts, Ask, Flags, Numbers, Rows, spread
from barkeep.domain.pouring.sourcing import Sourcing
from barkeep.domain.pouring.supply import Supply

_ROUNDING = 1e-6
"""Serves that are nearer to too few than this are looked at one by one."""


@dataclass(frozen=True, eq=False)
class WaysToAsks:
    """The ways to each ask, those of an ask together and closest first.

    Of each ask `counts` says how many ways it has; of each way `exact` whether nothing stands in,
    `draws` from how many pools it draws; of each of those `pool` is the pool's number, `rate`
    how much of it one unit of the ask takes. What is always there is no pool.
    """

    pools: tuple[str, ...]
    counts: Numbers
    exact: Flags
    draws: Numbers
    pool: Numbers
    rate: Amounts

    @classmethod
    def of(cls, asks: Iterable[Ask], sourcing: Sourcing) -> WaysToAsks:
        ways = [sourcing.ways_for_any(ask) for ask in asks]
        each = [way for some in ways for way in some]
        numbers: dict[str, int] = {}
        draws = [
            [
                (numbers.setdefault(key, len(numbers)), rate)
                for key, rate in way.draws.items()
                if key not in sourcing.supply.always
            ]
            for way in each
        ]
        return cls(
            tuple(numbers),
            counts=np.array([len(some) for some in ways], np.int64),
            exact=np.array([way.exact for way in each], np.bool_),
            draws=np.array([len(some) for some in draws], np.int64),
            pool=np.array([pool for some in draws for pool, _rate in some], np.int64),
            rate=np.array([rate for some in draws for _pool, rate in some], np.float64),
        )

    @cached_property
    def first(self) -> Numbers:
        """Of each ask the number of its closest way, -1 where it has none."""
        return np.where(self.counts > 0, np.cumsum(self.counts) - self.counts, -1)

    def there(self, supply: Supply) -> Amounts:
        """How much there is of each pool, in its unit."""
        return np.array([supply.total(key) for key in self.pools], np.float64)


@dataclass(frozen=True, eq=False)
class Enough:
    """The closest way to each line that there is enough for, where it is poured alone.

    `way` is its number, -1 for none. `may_mix` are the lines of those without one that several
    ways together might do for, `may_be_exact` those for which a stand-in is enough and several
    ways without one might be as well.
    """

    way: Numbers
    may_mix: Flags
    may_be_exact: Flags

    @classmethod
    def of(cls, rows: Rows, ways: WaysToAsks, there: Amounts, serves: int) -> Enough:
        line, way = spread(rows.ask, ways.counts)
        each, draw = spread(way, ways.draws)
        need = rows.amount[line[each]] * ways.rate[draw]
        taken = need > 0.0
        most = np.full(len(way), np.inf)  # so many serves a way makes of a line alone
        np.minimum.at(most, each[taken], there[ways.pool[draw[taken]]] / need[taken])
        fits = np.flatnonzero(most >= serves)
        found, first = np.unique(line[fits], return_index=True)
        closest = np.full(len(rows.ask), -1, np.int64)
        closest[found] = way[fits[first]]
        has_way = closest >= 0
        is_exact = has_way & ways.exact[closest] if len(ways.exact) else has_way
        almost = serves - _ROUNDING
        of_all = np.bincount(line, most, len(rows.ask))
        of_exact = np.bincount(line, np.where(ways.exact[way], most, 0.0), len(rows.ask))
        return cls(
            closest,
            may_mix=~has_way & (of_all >= almost),
            may_be_exact=has_way & ~is_exact & (of_exact >= almost),
        )
