"""What bottles carry, and which purchases belong together, in words for both faces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from barkeep.domain.buying.reliance import Carried, Reliance
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.words import plain_amount
from barkeep.errors import spoken_list
from barkeep.translation import tr

if TYPE_CHECKING:  # numpy loads slowly
    from barkeep.domain.buying.pairs import Pair

MOST_NAMED = 8
"""Drinks that are named; of more it is said how many."""


def reliance_in_words(found: Reliance) -> Iterator[str]:
    """Which low bottle matters most, and which bottles carry nothing; a sentence each."""
    if not found.carried:
        yield tr("There is nothing to pour from.")
        return
    if found.low:
        first = found.low[0]
        lost = counted(len(first.lost), "drink")
        yield tr(
            "Of what is low {bottle} matters most: {lost} would be lost.",
            bottle=first.bottle.product.title,
            lost=lost,
        )
    titles = dict.fromkeys(each.bottle.product.title for each in found.nothing)
    if titles:
        bottles = spoken_list(list(titles), "and")
        if len(titles) == 1:
            yield tr("{bottle} carries nothing that can be made.", bottle=bottles)
        else:
            yield tr("{bottles} carry nothing that can be made.", bottles=bottles)


def carried_in_words(each: Carried, currency: str) -> str:
    """What is lost without a bottle, and what a pour of it is and costs."""
    said = []
    if each.lost:
        said.append(tr("lost without it: {drinks}", drinks=_named(each.lost)))
    if each.worse:
        said.append(tr("with a stand-in then: {drinks}", drinks=_named(each.worse)))
    if not said:
        said.append(tr("nothing is lost without it"))
    if each.pour is not None:
        cost = price_in_words(each.cost, currency, unknown=tr("price unknown"))
        pour = plain_amount(round(each.pour, 1), each.bottle.product.unit)
        times, left = (
            counted(len(each.poured_for), "drink"),
            counted(each.serves_left or 0, "serve"),
        )
        said.append(
            tr(
                "poured for {drinks}, {pour} ({cost}) a serve, {left} left",
                drinks=times,
                pour=pour,
                cost=cost,
                left=left,
            )
        )
    else:
        said.append(tr("poured for none"))
    return "; ".join(said)


def _named(names: Sequence[str]) -> str:
    more = len(names) - MOST_NAMED
    shown = list(names) if more <= 0 else [*names[:MOST_NAMED], tr("{more} more", more=more)]
    return spoken_list(shown, "and")


def pair_in_words(pair: Pair, tree: FamilyTree) -> str:
    """What two purchases turn together, and what each turns apart."""
    names = [tree.in_sentence(each.ingredient) for each in pair.bought]
    apart = [
        tr("{name} alone {drinks}", name=name, drinks=counted(len(drinks), "drink"))
        if drinks
        else tr("{name} alone none", name=name)
        for name, drinks in zip(names, pair.apart, strict=True)
    ]
    return tr(
        "together also {drinks}; {apart}",
        drinks=_named(pair.together),
        apart=spoken_list(apart, "and"),
    )
