"""Tonight as one wants it at the bar: whose drinks come first, and which of them a query finds."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import facts_for, filmed_next, query_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.query import SpecFacts
from barkeep.domain.specs.spec import Spec

Whose = Literal["shoot", "own", "classic"]
WHOSE: Mapping[Whose, str] = {
    "shoot": "Next shoot",
    "own": "Your own",
    "classic": "Classics",
}
"""Whose a drink is, in the order one wants them, and what stands above those."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """One drink and whose it is."""

    drink: Drink
    whose: Whose


def wanted_tonight(
    drinks: Sequence[Drink], snapshot: Snapshot, text: str = "", memory: Memory | None = None
) -> tuple[Wanted, ...]:
    """The drinks that a query finds, those of the next shoot first, then the owner's own.

    Among those of one owner they stay in the order given. Raises `BadQuery`.
    """
    query = query_of(text, snapshot)
    facts = facts_tonight(drinks, snapshot, query.asks, memory)
    filmed = filmed_next(snapshot)
    found = (
        Wanted(drink, whose(drink.spec, filmed))
        for drink, each in zip(drinks, facts, strict=True)
        if query.finds(each)
    )
    return tuple(sorted(found, key=lambda each: list(WHOSE).index(each.whose)))


def whose(spec: Spec, filmed: Collection[str]) -> Whose:
    """Whose a spec is; `filmed` are the names of those of the next shoot."""
    if spec.name in filmed:
        return "shoot"
    return "classic" if spec.classic else "own"


def facts_tonight(
    drinks: Sequence[Drink], snapshot: Snapshot, asks: frozenset[str], memory: Memory | None = None
) -> tuple[SpecFacts, ...]:
    """What a query may ask of each drink; it carries what would be poured tonight."""
    facts = facts_for([each.spec for each in drinks], snapshot, asks, memory)
    return tuple(
        replace(each, allergens=frozenset(known.word for known in drink.minded.allergens))
        for each, drink in zip(facts, drinks, strict=True)
    )
