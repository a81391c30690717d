"""From a spec's lines to the ways the bar can meet them, with how much a serve takes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from itertools import product as cross_product
from typing import TYPE_CHECKING, Literal, NamedTuple

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.derivations import (
    Derivation,
    Derivations,
    Want,
    closest_per_leaves,
    scopes_of,
)
from barkeep.domain.ingredients.relations import Role, Scope
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.serves import Way
from barkeep.domain.pouring.supply import Supply, supply_of
from barkeep.domain.pouring.usual import UsualPours, usual_pours
from barkeep.domain.specs.spec import Line, Spec, role

if TYPE_CHECKING:
    from barkeep.domain.ingredients.graph import SubstitutionGraph


Within = Literal["exact", "close", "loose"]


WITHIN: Mapping[Within, float] = {"exact": 1.0, "close": 0.8, "loose": 0.6}
"""The least closeness each word allows: a choice of barkeep, no published scale exists."""


TOP_UP_ML = 90.0
"""What *top with* is taken to pour where a line gives no amount (*common practice*)."""
PIECES_POURED = 1.0
"""How many pieces a line takes that counts something and gives no amount."""


class Terms(NamedTuple):
    """What a line asks for, as it decides the wants: lines of the same terms have the same."""

    wanted: tuple[str, ...]
    scopes: frozenset[Scope]
    floor: float
    least: float | None
    asked: frozenset[str]


@dataclass(frozen=True)
class Sourcing:
    """The ways to meet lines from one supply, remembered for lines that ask the same."""

    graph: SubstitutionGraph
    tree: FamilyTree
    supply: Supply
    floor: float
    usual: UsualPours
    known: dict[Want, tuple[Derivation, ...]] = field(default_factory=dict, repr=False)

    @cached_property
    def derivations(self) -> Derivations:
        """The search over what is owned."""
        return Derivations(self.graph, self.tree, self.supply.owned)

    def wants(self, line: Line, spec: Spec) -> tuple[Want, ...]:
        """What a line asks for, as the search takes it; any one of them will do."""
        return self.wants_of(self.terms(line, spec, role(line, spec, self.tree)))

    def wants_of(self, terms: Terms) -> tuple[Want, ...]:
        """The wants of which any one will do."""
        wanted, scopes, floor, least, asked = terms
        strong = None if least is None else self.supply.strong(least) | self._sold(least)
        return tuple(Want(key, scopes, floor, strong, asked=asked) for key in wanted)

    def terms(self, line: Line, spec: Spec, does: Role) -> Terms:
        """What decides the wants of a line that does this in the drink."""
        # With a stand-in for the garnish that gives it its name it is another drink.
        floor = WITHIN["exact"] if line.garnish and spec.requires(line) else self.floor
        scopes, asked = scopes_of(spec.technique, does), self.usual.asked(line, spec)
        return Terms(line.wanted, scopes, floor, least=line.min_abv_percent, asked=asked)

    def plain_terms(self, key: str, scopes: frozenset[Scope]) -> Terms:
        """The same of a line that asks for one kind and nothing beyond it."""
        return Terms((key,), scopes, self.floor, least=None, asked=frozenset())

    def _sold(self, least_abv: float) -> frozenset[str]:
        """Keys of everything that is usually this strong when bought."""
        tree = self.tree
        return frozenset(key for key in tree if (tree[key].abv_percent or 0.0) >= least_abv)

    def ways_to(self, line: Line, spec: Spec) -> tuple[Derivation, ...]:
        """Every derivation of a line from what is owned, as they are poured."""
        return self.ways_as_poured(self.wants(line, spec), spec)

    def ways_as_poured(self, wants: tuple[Want, ...], spec: Spec) -> tuple[Derivation, ...]:
        """Every derivation of a line of the spec that wants these, as they are poured."""
        return self.usual.in_order(self.ways_for_any(wants), spec, wants[0].asked)

    def ways_for_any(self, wants: tuple[Want, ...]) -> tuple[Derivation, ...]:
        """Every derivation of any of these wants from what is owned, closest first."""
        return any_of(self.ways_for(want) for want in wants)

    def ways_for(self, want: Want) -> tuple[Derivation, ...]:
        """Every derivation of a want from what is owned, closest first."""
        if want not in self.known:
            self.known[want] = self.derivations.of(want)
        return self.known[want]


def sourcing_for(snapshot: Snapshot, within: Within, memory: Memory | None = None) -> Sourcing:
    """The search that answers for this snapshot's bottles."""
    kept = memory or Memory()
    return kept.answer(("sourcing", within), snapshot, lambda: _sourcing(snapshot, within, kept))


def _sourcing(snapshot: Snapshot, within: Within, memory: Memory) -> Sourcing:
    knowledge = snapshot.knowledge
    known: dict[Want, tuple[Derivation, ...]] = memory.recall(
        ("ways", within), snapshot, asked_by_want, levels_matter=False
    )
    floor = WITHIN[within]
    return Sourcing(
        graph=knowledge.graph,
        tree=knowledge.tree,
        supply=supply_of(snapshot),
        floor=floor,
        usual=usual_pours(snapshot),
        known=known,
    )


def asked_by_want(want: Want, _found: object) -> Iterable[str]:
    """What a want asks for, as `Memory` is told it."""
    return (want.ingredient,)


def any_of(choices: Iterable[tuple[Derivation, ...]]) -> tuple[Derivation, ...]:
    """The ways to meet each choice of a line as the ways to meet the line, closest first."""
    found = tuple(choices)
    if len(found) == 1:
        return found[0]
    return closest_per_leaves(
        replace(each, choice=number) for number, ways in enumerate(found) for each in ways
    )


def need(line: Line, tree: FamilyTree) -> float:
    """How much of its ingredient a serve takes, in the ingredient's unit.

    A line without an amount takes `TOP_UP_ML` where it is poured and one
    piece where it is counted.
    """
    if line.quantity is not None:
        return line.quantity
    return TOP_UP_ML if tree[line.ingredient].unit == "ml" else PIECES_POURED


def thresholds(spec: Spec) -> tuple[float, ...]:
    """The least strengths a spec's lines ask for, in % vol, lowest first."""
    asked = {line.min_abv_percent for line in spec.lines if line.min_abv_percent is not None}
    return tuple(sorted(asked))


@dataclass(frozen=True, slots=True)
class DerivationWays:
    """One derivation of a line, and the ways to pour a serve of it."""

    derivation: Derivation
    ways: tuple[Way, ...]


def choices(
    line: Line,
    derivations: Iterable[Derivation],
    limits: tuple[float, ...],
    supply: Supply,
    tree: FamilyTree,
) -> tuple[DerivationWays, ...]:
    """A line's derivations with what a serve draws from the pools.

    With least strengths asked anywhere in the spec an ingredient falls into
    strength classes; each allowed class is then a way of its own.
    """
    amount = need(line, tree)
    lowest = _class_of(line.min_abv_percent, limits)
    return tuple(
        DerivationWays(
            each, tuple(_ways(each, amount=amount, limits=limits, lowest=lowest, supply=supply))
        )
        for each in derivations
    )


def _ways(
    derivation: Derivation, amount: float, limits: tuple[float, ...], lowest: int, supply: Supply
) -> Iterator[Way]:
    per_serve = {
        key: amount * each
        for key, each in derivation.draws.items()
        if amount * each > 0.0 and key not in supply.always
    }
    if not limits:
        yield Way({(key, 0): each for key, each in per_serve.items()})
        return
    allowed = range(lowest, len(limits) + 1)
    for pools in cross_product(*([(key, each) for each in allowed] for key in per_serve)):
        yield Way({pool: per_serve[pool[0]] for pool in pools})


def _class_of(least: float | None, limits: tuple[float, ...]) -> int:
    return 0 if least is None else limits.index(least) + 1
