"""The book of a bar: the owner's specs and the classics, by name; an own spec hides a classic's.

A change of a few specs is worked into the book as it was.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import takewhile
from operator import is_

from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.quantities import at_bar
from barkeep.domain.specs.spec import Spec

MOST_WORKED_IN = 200
"""More changes than these are not worked in one by one: the book is put together anew."""


@dataclass(frozen=True, slots=True)
class BookOf:
    """What the book is put together with: `classics` by their names, as `listed` gives them."""

    classics: Mapping[str, Spec]
    units: BarUnits
    tree: FamilyTree

    def whole(self, own: Sequence[Spec]) -> tuple[Spec, ...]:
        """The book with all of the owner's specs."""
        names = {listed(spec) for spec in own}
        classics = (each for name, each in self.classics.items() if name not in names)
        specs = (at_bar(self.units, each, self.tree) for each in (*own, *classics))
        return tuple(sorted(specs, key=listed))

    def changed(
        self, book: tuple[Spec, ...], before: Sequence[Spec], own: Sequence[Spec]
    ) -> tuple[Spec, ...]:
        """The book of the owner's specs as they are now, out of the one they had before."""
        gone, come = _differing(before, own)
        if len(gone) + len(come) > MOST_WORKED_IN:
            return self.whole(own)
        found = list(book)
        for spec in gone:
            place = _place(found, spec)
            if place is None or found[place].id != spec.id:
                return self.whole(own)
            del found[place]
        names = {listed(spec) for spec in come}
        shown = [self.classics[name] for name in map(listed, gone) if name in self.classics]
        for spec in (*come, *(each for each in shown if listed(each) not in names)):
            place = _place(found, spec)
            if place is not None and not found[place].classic:
                return self.whole(own)  # two of one name stand in the owner's order
            start = bisect_left(found, listed(spec), key=listed)
            end = start if place is None else start + 1
            found[start:end] = [at_bar(self.units, spec, self.tree)]
        return tuple(found)


def listed(spec: Spec) -> str:
    """A spec's name as the book is ordered by."""
    return spec.name.casefold()


def _place(book: Sequence[Spec], spec: Spec) -> int | None:
    name = listed(spec)
    place = bisect_left(book, name, key=listed)
    return place if place < len(book) and listed(book[place]) == name else None


def _differing(before: Sequence[Spec], now: Sequence[Spec]) -> tuple[list[Spec], list[Spec]]:
    """The specs that are in the one and not in the other."""
    start = _alike(before, now)
    end = _alike(before[start:][::-1], now[start:][::-1])
    old, new = before[start : len(before) - end], now[start : len(now) - end]
    were, are = {id(spec) for spec in old}, {id(spec) for spec in new}
    gone = [spec for spec in old if id(spec) not in are]
    return gone, [spec for spec in new if id(spec) not in were]


def _alike(before: Sequence[Spec], now: Sequence[Spec]) -> int:
    """How many at the beginning are the very same."""
    return sum(takewhile(bool, map(is_, before, now)))
