"""Which specs of the book a query finds; only the facts that it asks for are worked out.

What costs little to find out is asked first, and the dear facts only of what
is then left. What a spec says of itself stays with the snapshots of a bar.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from operator import attrgetter

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import allergen_words, allergens_of
from barkeep.domain.ingredients.tasks import task_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.query import Query, SpecFacts, facts_of, parse_query
from barkeep.domain.specs.spec import Spec

SLOW_FACTS = frozenset({"strength"})
"""What takes about a millisecond a spec to find out."""


def search(snapshot: Snapshot, text: str, memory: Memory | None = None) -> tuple[Spec, ...]:
    """The specs that a query finds, by name. Raises `BadQuery`.

    With a `memory` strengths are worked out again only where a bottle changed.
    """
    found: Sequence[Spec] = snapshot.all_specs
    for part in query_of(text, snapshot).parts:
        facts = facts_for(found, snapshot, part.asks, memory)
        found = [each.spec for each in part.found(facts)]
    return tuple(found)


def query_of(text: str, snapshot: Snapshot) -> Query:
    """What was typed as a query over this bar. Raises `BadQuery`."""
    return parse_query(text, snapshot.knowledge.tree, snapshot.once(_allergen_words))


def _allergen_words(snapshot: Snapshot) -> Mapping[str, frozenset[str]]:
    return allergen_words(snapshot.knowledge.tree)


def facts_for(
    specs: Sequence[Spec], snapshot: Snapshot, asks: frozenset[str], memory: Memory | None = None
) -> tuple[SpecFacts, ...]:
    """The facts of each spec that a query `asks`; the others are None or empty.

    A spec carries what any of its lines may, garnish and all.
    """
    whole = specs is snapshot.all_specs
    facts = snapshot.once(_plain_facts) if whole else _facts_of_each(specs, snapshot)
    if not asks:
        return facts
    abv = _strengths(specs, snapshot, memory or Memory()) if "strength" in asks else {}
    due = _Due(days_until_due(snapshot) if "due" in asks else {}, snapshot.knowledge)
    filmed = filmed_next(snapshot) if "shoot" in asks else frozenset()
    carried = _carried(specs, snapshot) if "allergens" in asks else {}
    return tuple(
        SpecFacts(
            each.spec,
            each.own_words,
            each.asked,
            abv_percent=abv.get(each.spec.name),
            due_in=due.of(each.asked),
            allergens=carried.get(each.spec.name, frozenset()),
            filmed_next=each.spec.name in filmed,
        )
        for each in facts
    )


def _plain_facts(snapshot: Snapshot) -> tuple[SpecFacts, ...]:
    """What each spec of the book says of itself."""
    return _facts_of_each(snapshot.all_specs, snapshot)


def _facts_of_each(specs: Sequence[Spec], snapshot: Snapshot) -> tuple[SpecFacts, ...]:
    known: BySpec[SpecFacts] = snapshot.by_spec("facts")
    return tuple(known.each(specs, facts_of))


def filmed_next(snapshot: Snapshot) -> frozenset[str]:
    """The names of the specs of the next shoot, of all shoots on its day; none without one."""
    ahead = [
        each
        for each in snapshot.shoots
        if each.state in ("idea", "planned") and each.on >= snapshot.on
    ]
    day = min((each.on for each in ahead), default=None)
    drinks = [drink for each in ahead if each.on == day for drink in each.drinks]
    ids = {drink.spec_id for drink in drinks if drink.spec_id is not None}
    names = {drink.name for drink in drinks if drink.spec_id is None}
    if not drinks:
        return frozenset()
    return frozenset(
        spec.name for spec in snapshot.all_specs if spec.id in ids or spec.name in names
    )


def _carried(specs: Sequence[Spec], snapshot: Snapshot) -> Mapping[str, frozenset[str]]:
    """The allergens of each spec, by its name."""
    tree = snapshot.knowledge.tree
    known: BySpec[frozenset[str]] = snapshot.by_spec("allergens")

    def carried(spec: Spec) -> frozenset[str]:
        return frozenset(each.word for each in allergens_of(spec.wanted, tree))

    return dict(zip(map(attrgetter("name"), specs), known.each(specs, carried), strict=True))


def days_until_due(snapshot: Snapshot) -> Mapping[str, int]:
    """Ingredient key -> days until its first bottle is due; below 0 where it is overdue.

    A bottle is due on the last day it is good. What is past that and not counted
    is not used, and what is empty or always keeps is never due.
    """
    found: dict[str, int] = {}
    for key, bottles in snapshot.usable.items():
        ends = (snapshot.ends.get(each.id) for each in bottles)
        days = [(end.last - snapshot.on).days for end in ends if end is not None]
        if days:
            found[key] = min(days)
    return found


@dataclass(frozen=True, slots=True)
class _Due:
    """The days until each kind is due, and what that comes to for what is asked for."""

    days: Mapping[str, int]
    knowledge: Knowledge
    _known: dict[str, int | None] = field(default_factory=dict)

    def of(self, asked: Collection[str]) -> int | None:
        """The days until any of it is due: of juice and the like its fruit as well."""
        if not self.days:
            return None
        found = (self._of_one(key) for key in asked)
        return min((days for days in found if days is not None), default=None)

    def _of_one(self, key: str) -> int | None:
        if key not in self._known:
            used = self.days.keys() & set(_used_for(key, self.knowledge))
            self._known[key] = min((self.days[each] for each in used), default=None)
        return self._known[key]


def _used_for(key: str, knowledge: Knowledge) -> Iterable[str]:
    """What a want is poured from, and what it is squeezed, separated or cut from."""
    yield from knowledge.tree.poured_as(key)
    recipe = knowledge.own_way.get(key)
    if recipe is not None and task_of(recipe, knowledge.tree) != "make":
        for each in recipe.inputs:
            yield from knowledge.tree.poured_as(each.ingredient)


def _strengths(
    specs: Sequence[Spec], snapshot: Snapshot, memory: Memory
) -> Mapping[str, float | None]:
    """The strength of each spec as served, by its name; None where none can be said."""
    from barkeep.domain.drink.analysis import strength_of  # loads more than all other facts do

    known: BySpec[float | None] = memory.by_spec("strength", snapshot)
    strengths = known.each(specs, lambda spec: strength_of(spec, snapshot))
    return dict(zip(map(attrgetter("name"), specs), strengths, strict=True))
