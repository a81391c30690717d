"""Pairs of purchases that turn much together and little apart."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.limits import Limits
from barkeep.domain.buying.packages import Purchase
from barkeep.domain.buying.purchase_book import Failing, PurchaseBook
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within


@dataclass(frozen=True, slots=True)
class Pair:
    """Two purchases: the drinks that only both `together` turn, and what each turns `apart`."""

    bought: tuple[Purchase, Purchase]
    together: tuple[str, ...]
    apart: tuple[tuple[str, ...], tuple[str, ...]]

    @property
    def gain(self) -> int:
        """How many more drinks they turn together than apart, beside those each turns."""
        return len(self.together) - sum(map(len, self.apart))


def pairs(
    snapshot: Snapshot, within: Within = "close", memory: Memory | None = None
) -> tuple[Pair, ...]:
    """Every pair that turns a drink which neither turns alone, most gain first.

    Of pairs that turn the same drinks together only the one that is rather bought is named.
    """
    book = PurchaseBook(snapshot, Limits(bottles=2), within, memory=memory or Memory())
    together: dict[frozenset[int], list[str]] = {}
    alone: dict[int, list[str]] = {}
    for failing in book.failing:
        for number in book.turned_by_one(failing):
            alone.setdefault(number, []).append(failing.spec.name)
        for pair in dict.fromkeys(_pairs_for(failing, book)):
            together.setdefault(pair, []).append(failing.spec.name)
    named: dict[tuple[str, ...], Pair] = {}
    for one, other in sorted(map(_in_order, together)):
        drinks = tuple(together[frozenset((one, other))])
        found = Pair(
            (book.purchases[one], book.purchases[other]),
            drinks,
            (tuple(alone.get(one, ())), tuple(alone.get(other, ()))),
        )
        named.setdefault(drinks, found)
    return tuple(sorted(named.values(), key=lambda each: (-each.gain, -len(each.together))))


def _in_order(pair: frozenset[int]) -> tuple[int, int]:
    one, other = sorted(pair)
    return one, other


def _pairs_for(failing: Failing, book: PurchaseBook) -> Iterator[frozenset[int]]:
    """The pairs that turn a drink which neither of the two turns alone.

    Any such pair holds an option of whatever need is looked at first.
    """
    for option in book.lacking(failing, frozenset()):
        pairs_of = [option] if len(option) == 2 else []
        if len(option) == 1 and not book.turns(failing, option):
            rests = (each - option for each in book.lacking(failing, option))
            pairs_of = [option | rest for rest in rests if len(rest) == 1]
        for pair in pairs_of:
            apart = any(book.turns(failing, frozenset({each})) for each in pair)
            if not apart and book.turns(failing, pair):
                yield pair
