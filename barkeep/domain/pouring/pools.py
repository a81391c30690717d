"""What is taken of pools, as arrays, and who finds enough there."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from barkeep.domain.pouring.book_lines import Amounts, Flags, Numbers


@dataclass(frozen=True, eq=False)
class Taken:
    """How much each of so many owners takes of each pool for one serve.

    One row for each owner and pool together: their numbers, the amount in the pool's unit, and
    how much more of the pool there is for this owner alone.
    """

    owners: int
    owner: Numbers
    pool: Numbers
    amount: Amounts
    more: Amounts

    @cached_property
    def _most(self) -> Amounts:
        """Of each pool the most that any owner takes of it."""
        most = np.zeros(int(self.pool.max(initial=-1)) + 1)
        np.maximum.at(most, self.pool, self.amount)
        return most

    @cached_property
    def _by_pool(self) -> Numbers:
        """The rows by pool."""
        return np.argsort(self.pool, kind="stable")

    @cached_property
    def _starts(self) -> Numbers:
        """Where the rows of each pool begin in that order, and after the last where they end."""
        return np.concatenate([[0], np.cumsum(np.bincount(self.pool))])

    def fits(self, there: Amounts, serves: int) -> Flags:
        """Of each owner whether all that it takes for so many serves is there.

        `there` is the amount of each pool. Where that is as much as anyone takes of it, nobody's
        part in it need be looked at.
        """
        fits = np.ones(self.owners, np.bool_)
        most = self._most * serves
        for pool in np.flatnonzero(most > there[: len(most)]).tolist():
            rows = self._by_pool[self._starts[pool] : self._starts[pool + 1]]
            over = self.amount[rows] * serves > there[pool] + self.more[rows]
            fits[self.owner[rows[over]]] = False
        return fits
