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
    def _of_pool(self) -> list[tuple[Numbers, Amounts, Amounts]]:
        """Of each pool its rows: whose they are, how much, and how much more there is."""
        order = np.argsort(self.pool, kind="stable")
        ends = np.cumsum(np.bincount(self.pool))[:-1]
        columns = (self.owner[order], self.amount[order], self.more[order])
        return list(zip(*(np.split(each, ends) for each in columns), strict=True))

    def fits(self, there: Amounts, serves: int) -> Flags:
        """Of each owner whether all that it takes for so many serves is there.

        `there` is the amount of each pool. Where that is as much as anyone takes of it, nobody's
        part in it need be looked at.
        """
        fits = np.ones(self.owners, np.bool_)
        most = self._most * serves
        for pool in np.flatnonzero(most > there[: len(most)]).tolist():
            owner, amount, more = self._of_pool[pool]
            fits[owner[amount * serves > there[pool] + more]] = False
        return fits
