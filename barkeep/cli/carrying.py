"""`barkeep carries`, `pairs` and `use-up`: what bottles are worth, and what to drink first."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from barkeep.application.finding import find_bottle
from barkeep.cli.arguments import WITHIN, Arguments, argument, command, whole_number
from barkeep.cli.on_paper import ON_PAPER, of_snapshot
from barkeep.cli.output import Answer, iso, rounded, wrapped
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.reliance import Carried, Reliance, reliance
from barkeep.domain.buying.reliance_words import (
    carried_in_words,
    pair_in_words,
    reliance_in_words,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence
from barkeep.domain.pouring.use_up import DAYS, Ageing, UsedIn, UseUp, use_up
from barkeep.domain.pouring.use_up_words import ageing_in_words, drink_in_words, use_up_in_words

if TYPE_CHECKING:  # numpy loads slowly
    from barkeep.domain.buying.pairs import Pair

PAIRS_SHOWN = 10
"""Pairs that a person is shown; JSON gives them all."""

# What each bottle carries


@command(
    argument("bottle", metavar="BOTTLE", nargs="?", help="one bottle (default: all)"),
    WITHIN,
    *ON_PAPER,
)
@of_snapshot
def carries(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """What could not be made without each bottle, what a pour costs, and how many are left."""
    found = reliance(snapshot, arguments.within)
    shown = found.carried
    if arguments.bottle is not None:
        wanted = find_bottle(snapshot, arguments.bottle, rather_open=True)
        shown = tuple(each for each in shown if each.bottle.id == wanted.id)
    tree = snapshot.knowledge.tree
    return Answer(
        lambda: {
            "bottles": [_carried_json(each, tree) for each in shown],
            "makeable": found.makeable,
            "low": [each.bottle.id for each in found.low],
            "nothing": [each.bottle.id for each in found.nothing],
        },
        _carried_shown(shown, found),
    )


def _carried_json(each: Carried, tree: FamilyTree) -> dict[str, object]:
    return {
        "id": each.bottle.id,
        "bottle": each.bottle.product.title,
        "ingredient": tree.name(each.bottle.ingredient),
        "level": rounded(each.bottle.level.amount, 2),
        "unit": each.bottle.product.unit,
        "lost": list(each.lost),
        "worse": list(each.worse),
        "poured_for": list(each.poured_for),
        "pour": rounded(each.pour, 2),
        "cost": rounded(each.cost, 2),
        "serves_left": each.serves_left,
    }


def _carried_shown(shown: tuple[Carried, ...], found: Reliance) -> Iterator[str]:
    whole = len(shown) == len(found.carried)
    for each in shown:
        if not (whole and each.carries_nothing):
            yield f"#{each.bottle.id} {each.bottle.product.title}"
            yield from wrapped(as_sentence(carried_in_words(each, found.currency)), "      ")
    if not shown and found.carried:
        yield "It holds nothing that can be poured."
    if whole:
        yield ""
        for said in reliance_in_words(found):
            yield from wrapped(said, "")


# Pairs


@command(WITHIN, *ON_PAPER)
@of_snapshot
def paired(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """Which two purchases turn drinks that neither turns alone."""
    from barkeep.domain.buying.pairs import pairs  # numpy loads slowly

    found, tree = pairs(snapshot, arguments.within), snapshot.knowledge.tree
    return Answer(
        lambda: {"pairs": [_pair_json(each, tree) for each in found]}, _pairs_shown(found, tree)
    )


def _pair_json(pair: Pair, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredients": [tree.name(each.ingredient) for each in pair.bought],
        "together": list(pair.together),
        "apart": [list(each) for each in pair.apart],
        "prices": [rounded(each.price, 2) for each in pair.bought],
    }


def _pairs_shown(found: tuple[Pair, ...], tree: FamilyTree) -> Iterator[str]:
    for pair in found[:PAIRS_SHOWN]:
        one, other = (tree.name(each.ingredient) for each in pair.bought)
        yield f"{one} and {other}"
        yield from wrapped(as_sentence(pair_in_words(pair, tree)), "      ")
    if not found:
        yield "No two purchases turn a drink that neither turns alone."
    elif len(found) > PAIRS_SHOWN:
        yield f"{len(found) - PAIRS_SHOWN} more pairs turn a drink; --json lists them all."


# What to drink first


@command(
    argument("--serves", type=int, metavar="N", help="in no more serves (default: what it takes)"),
    argument(
        "--days",
        type=whole_number,
        default=DAYS,
        metavar="N",
        help=f"what goes off within so many days (default: {DAYS})",
    ),
    WITHIN,
    *ON_PAPER,
)
@of_snapshot
def used_up(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """The drinks that use most of what is ageing, ready ones first, in the fewest serves."""
    found = use_up(snapshot, arguments.serves, within=arguments.within, days=arguments.days)
    return Answer(lambda: _use_up_json(found), _use_up_shown(found))


def _use_up_json(found: UseUp) -> dict[str, object]:
    return {
        "drinks": [_used_in_json(each) for each in found.drinks],
        "left": [_ageing_json(each) for each in found.ageing],
        "proved_best": found.proved_best,
        "days": found.days,
    }


def _used_in_json(each: UsedIn) -> dict[str, object]:
    return {
        "spec": each.spec.name,
        "verdict": each.verdict,
        "serves": each.serves,
        "uses": [
            {
                "id": use.bottle.id,
                "bottle": use.bottle.product.title,
                "amount": rounded(use.amount, 2),
                "unit": use.bottle.product.unit,
            }
            for use in each.uses
        ],
    }


def _ageing_json(each: Ageing) -> dict[str, object]:
    return {
        "id": each.bottle.id,
        "bottle": each.bottle.product.title,
        "last_day": iso(each.last),
        "used": rounded(each.used, 2),
        "left": rounded(each.left, 2),
        "unit": each.bottle.product.unit,
    }


def _use_up_shown(found: UseUp) -> Iterator[str]:
    for each in found.drinks:
        yield from wrapped(drink_in_words(each), "", 98)
    if found.drinks:
        yield ""
    for bottle in found.ageing:
        yield f"  {bottle.bottle.product.title}, {ageing_in_words(bottle, found)}"
    if found.ageing:
        yield ""
    for said in use_up_in_words(found):
        yield from wrapped(said, "")
