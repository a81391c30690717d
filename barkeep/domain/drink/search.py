"""Which specs of the book a query finds; only the facts that it asks for are worked out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import allergen_words, allergens_of
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.ingredients.tasks import task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.specs.query import Query, SpecFacts, facts_of, parse_query
from barkeep.domain.specs.spec import Spec

SLOW_FACTS = frozenset({"strength"})
"""What takes about a millisecond a spec to find out."""


def search(snapshot: Snapshot, text: str, memory: Memory | None = None) -> tuple[Spec, ...]:
    """The specs that a query finds, by name. Raises `BadQuery`.

    With a `memory` strengths are worked out again only where a bottle changed.
    """
    query = query_of(text, snapshot)
    asked = facts_for(snapshot.all_specs, snapshot, query.asks, memory)
    return tuple(facts.spec for facts in asked if query.finds(facts))


def query_of(text: str, snapshot: Snapshot) -> Query:
    """What was typed as a query over this bar. Raises `BadQuery`."""
    tree = snapshot.knowledge.tree
    return parse_query(text, tree, allergen_words(tree))


def facts_for(
    specs: Sequence[Spec], snapshot: Snapshot, asks: frozenset[str], memory: Memory | None = None
) -> tuple[SpecFacts, ...]:
    """The facts of each spec that a query `asks`; the others are None or empty.

    A spec carries what any of its lines may, garnish and all.
    """
    tree = snapshot.knowledge.tree
    abv = _strengths(specs, snapshot, memory or Memory()) if "strength" in asks else {}
    due = days_until_due(snapshot) if "due" in asks else {}
    filmed = filmed_next(snapshot) if "shoot" in asks else frozenset()
    return tuple(
        facts_of(
            each,
            tree,
            abv_percent=abv.get(each),
            due_in=_due_in(each, due, snapshot.knowledge),
            allergens=_carried(each, tree) if "allergens" in asks else frozenset(),
            filmed_next=each.name in filmed,
        )
        for each in specs
    )


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
    return frozenset(
        spec.name for spec in snapshot.all_specs if spec.id in ids or spec.name in names
    )


def _carried(spec: Spec, tree: FamilyTree) -> frozenset[str]:
    return frozenset(each.word for each in allergens_of(spec.wanted, tree))


def days_until_due(snapshot: Snapshot) -> Mapping[str, int]:
    """Ingredient key -> days until its first bottle is due; below 0 where it is overdue.

    A bottle is due on the last day it is good. Bottles past it that are not poured, and
    those that are empty or always keep, are never due.
    """
    ends, found = snapshot.ends, dict[str, int]()
    for key, bottles in snapshot.usable.items():
        days = [(ends[each.id].last - snapshot.on).days for each in bottles if each.id in ends]
        if days:
            found[key] = min(days)
    return found


def _due_in(spec: Spec, due: Mapping[str, int], knowledge: Knowledge) -> int | None:
    """The days until what a spec uses is due: of juice and the like its fruit as well."""
    if not due:
        return None
    kinds = {kind for key in spec.wanted for kind in _used_for(key, knowledge)}
    return min((due[kind] for kind in kinds & due.keys()), default=None)


def _used_for(key: str, knowledge: Knowledge) -> Iterable[str]:
    """What a want is poured from, and what it is squeezed, separated or cut from."""
    yield from knowledge.tree.poured_as(key)
    recipe = knowledge.own_way.get(key)
    if recipe is not None and task_of(recipe, knowledge.tree) != "make":
        for each in recipe.inputs:
            yield from knowledge.tree.poured_as(each.ingredient)


def _strengths(
    specs: Sequence[Spec], snapshot: Snapshot, memory: Memory
) -> Mapping[Spec, float | None]:
    """The strength of each spec as served.

    None where nothing in it can be poured, or a line is not understood.
    """
    known: dict[Spec, float | None] = memory.recall(
        "strength", snapshot, lambda spec, _abv: spec.wanted
    )
    for spec in specs:
        if spec not in known:
            analysis = analyse(spec, snapshot)
            tells = analysis.served_volume_ml and not spec.unsettled
            known[spec] = analysis.abv_percent if tells else None
    return known
