"""The best buying plan, looked for over the compiled book as `coverage` looks for it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.coverage import Chosen, best_covering
from barkeep.domain.buying.limits import SECONDS, GoOn, Limits, always
from barkeep.domain.buying.next_bottle import unweighed
from barkeep.domain.buying.plan import Plan, Step
from barkeep.domain.buying.purchase_book import Failing, PurchaseBook
from barkeep.domain.buying.shops import shop_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within

HARDLY_WORTH = 1e-3
"""What is worth nothing still decides between purchases that are worth the same."""


def buying_plan(
    snapshot: Snapshot,
    limits: Limits,
    within: Within = "close",
    *,
    worths: Mapping[str, float] | None = None,
    prices: Mapping[str, float] | None = None,
    memory: Memory | None = None,
    seconds: float = SECONDS,
    go_on: GoOn = always,
) -> Plan:
    """The purchases within the limits that are worth most.

    `worths` are those of drinks by name, 1 where none is said; `prices` those of a purchase of
    a kind that the bar knows no price of, or another one. What is best is looked for some
    `seconds` at most, and as long as `go_on` says so, which is told what the best so far is
    worth and what nothing exceeds.
    """
    book = PurchaseBook(
        snapshot, limits, within, worths=worths, prices=prices, memory=memory or Memory()
    )
    found = best_covering(book.market, book.refuted, seconds=seconds, go_on=go_on)
    return Plan(
        limits=limits,
        steps=tuple(_steps(found.chosen, book)),
        before=book.makeable_now,
        worth=found.worth,
        upper_bound=found.upper_bound,
        ended=found.ended,
        weighed=bool(worths),
        currency=snapshot.settings.currency,
        left_out=book.left_out,
        not_counted=unweighed(snapshot),
    )


def _steps(chosen: Chosen, book: PurchaseBook) -> Iterator[Step]:
    """The purchases of a set, the last ones those that the others miss least."""
    turned = [each for each in book.failing if book.turns(each, chosen)]
    makeable, before = book.makeable_now, frozenset[int]()
    for number in _in_order(chosen, turned, book):
        after = before | {number}
        opened = [
            each for each in turned if book.turns(each, after) and not book.turns(each, before)
        ]
        makeable += len(opened)
        bought = book.purchases[number]
        exactly = [each for each in opened if book.look(each.place).makes(chosen, exact=True)]
        yield Step(
            bought,
            owned=bought.ingredient in book.sourcing.supply.owned,
            shop=shop_of(bought.ingredient, book.sourcing.tree),
            unlocks=tuple(each.spec.name for each in opened),
            exactly=tuple(each.spec.name for each in exactly),
            makeable=makeable,
        )
        before = after


def _in_order(chosen: Chosen, turned: Sequence[Failing], book: PurchaseBook) -> list[int]:
    left, last = set(chosen), list[int]()

    def kept_without(number: int) -> tuple[float, int]:
        rest = frozenset(left - {number})
        kept = (each.worth or HARDLY_WORTH for each in turned if book.turns(each, rest))
        return sum(kept), number

    while left:
        last.append(max(left, key=kept_without))
        left.remove(last[-1])
    return last[::-1]
