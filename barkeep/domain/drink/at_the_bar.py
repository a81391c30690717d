"""Tonight as one wants it at the bar: whose drinks come first, and which of them a query finds."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Literal

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import facts_for, filmed_next, query_of
from barkeep.domain.pouring.evening import Evening, Placed
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.query import SpecFacts
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr_noop

if TYPE_CHECKING:
    from barkeep.domain.pouring.verdicts import Drink

Whose = Literal["shoot", "own", "classic"]
WHOSE: Mapping[Whose, str] = {
    "shoot": tr_noop("Next shoot"),
    "own": tr_noop("Your own"),
    "classic": tr_noop("Classics"),
}
"""Whose a drink is, in the order one wants them, and what stands above those."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """One drink of an evening and whose it is."""

    placed: Placed
    whose: Whose
    _evening: Evening = field(repr=False)

    @property
    def drink(self) -> Drink:
        """All that is poured for it, worked out when it is first asked for."""
        return self._evening.drink(self.placed.spec)


def wanted_tonight(evening: Evening, text: str = "") -> tuple[Wanted, ...]:
    """The drinks that a query finds, those of the next shoot first, then the owner's own.

    Among those of one owner they stay best verdict first. Raises `BadQuery`.
    """
    found, snapshot = list(evening.placed), evening.snapshot
    for part in query_of(text, snapshot).parts:
        facts = _facts(found, evening, part.asks)
        found = [placed for placed, each in zip(found, facts, strict=True) if part.finds(each)]
    filmed = filmed_next(snapshot)
    wanted = (Wanted(placed, whose(placed.spec, filmed), evening) for placed in found)
    return tuple(sorted(wanted, key=lambda each: list(WHOSE).index(each.whose)))


def _facts(
    found: Sequence[Placed], evening: Evening, asks: frozenset[str]
) -> tuple[SpecFacts, ...]:
    specs = [each.spec for each in found]
    if CARRIED not in asks:
        return facts_for(specs, evening.snapshot, asks)
    return facts_tonight(list(map(evening.drink, specs)), evening.snapshot, asks)


CARRIED = "allergens"
"""The fact that takes every drink as it would be poured."""


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
    if CARRIED not in asks:
        return facts
    return tuple(
        replace(each, allergens=frozenset(known.word for known in drink.minded.allergens))
        for each, drink in zip(facts, drinks, strict=True)
    )
