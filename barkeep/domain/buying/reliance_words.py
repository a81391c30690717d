"""What bottles carry, and which purchases belong together, in words for both faces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from barkeep.domain.buying.reliance import Carried, Reliance
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.words import plain_amount
from barkeep.errors import spoken_list

if TYPE_CHECKING:  # numpy loads slowly
    from barkeep.domain.buying.pairs import Pair

MOST_NAMED = 8
"""Drinks that are named; of more it is said how many."""


def reliance_in_words(found: Reliance) -> Iterator[str]:
    """Which low bottle matters most, and which bottles carry nothing; a sentence each."""
    if not found.carried:
        yield "There is nothing to pour from."
        return
    if found.low:
        first = found.low[0]
        lost = counted(len(first.lost), "drink")
        yield f"Of what is low {first.bottle.product.title} matters most: {lost} would be lost."
    titles = dict.fromkeys(each.bottle.product.title for each in found.nothing)
    if titles:
        verb = "carries" if len(titles) == 1 else "carry"
        yield f"{spoken_list(list(titles), 'and')} {verb} nothing that can be made."


def carried_in_words(each: Carried, currency: str) -> str:
    """What is lost without a bottle, and what a pour of it is and costs."""
    said = []
    if each.lost:
        said.append(f"lost without it: {_named(each.lost)}")
    if each.worse:
        said.append(f"with a stand-in then: {_named(each.worse)}")
    if not said:
        said.append("nothing is lost without it")
    if each.pour is not None:
        cost = price_in_words(each.cost, currency, unknown="price unknown")
        pour = plain_amount(round(each.pour, 1), each.bottle.product.unit)
        times, left = (
            counted(len(each.poured_for), "drink"),
            counted(each.serves_left or 0, "serve"),
        )
        said.append(f"poured for {times}, {pour} ({cost}) a serve, {left} left")
    else:
        said.append("poured for none")
    return "; ".join(said)


def _named(names: Sequence[str]) -> str:
    more = len(names) - MOST_NAMED
    shown = list(names) if more <= 0 else [*names[:MOST_NAMED], f"{more} more"]
    return spoken_list(shown, "and")


def pair_in_words(pair: Pair, tree: FamilyTree) -> str:
    """What two purchases turn together, and what each turns apart."""
    names = [tree.in_sentence(each.ingredient) for each in pair.bought]
    apart = " and ".join(
        f"{name} alone {counted(len(drinks), 'drink') if drinks else 'none'}"
        for name, drinks in zip(names, pair.apart, strict=True)
    )
    return f"together also {_named(pair.together)}; {apart}"
