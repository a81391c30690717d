"""The substitution graph: what is a what, what stands in for what, what is made from what.

The knowledge becomes one graph whose edges run from a want to what may satisfy it, kept by kind:

- *is-a*, to everything directly below the wanted kind: exact, closeness 1;
- *only-when-asked*, to what lies below it but is taken for it only by whoever
  asks: exact then, a stand-in otherwise;
- *stands-in-for*, to a stand-in: its closeness, its ratio, its scope;
- *made-from*, to a recipe and from there to **all** of its inputs.

The best derivation of a want multiplies closeness along a path and takes the
product over a recipe's inputs. Every such step can only lower the value, so
the function is superior in Knuth's sense and the best values come out in
descending order, each final when it is first reached, whatever circles the
graph holds. networkx has no such search, its Dijkstra knows no recipes, so it
stands here; what can be reached at all is networkx's to say, which is loaded for
that alone, since it takes as long to load as many a command takes. Source:
D. E. Knuth, "A generalization of Dijkstra's algorithm", Information Processing
Letters 6(1), 1977, pp. 1-5.
"""

from __future__ import annotations

import heapq
from collections.abc import Collection, Hashable, Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING, Any, Generic, NamedTuple, TypeAlias, TypeVar

from barkeep.domain.ingredients.relations import STAND_IN_STEPS, MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import FamilyTree

if TYPE_CHECKING:
    import networkx as nx

Node = TypeVar("Node", bound=Hashable)
Step = TypeVar("Step")
State: TypeAlias = tuple[str, int]
"""An ingredient and how many stand-in steps may still be taken below it."""


class Rule(NamedTuple, Generic[Node]):
    """`head` follows from all of `body` together, worth `closeness` times their product."""

    head: Node
    closeness: float
    body: tuple[Node, ...]


def best_closeness(rules: Iterable[Rule[Node]], owned: Collection[Node]) -> dict[Node, float]:
    """The best value of every node that can be derived from what is owned.

    `owned` nodes are worth 1. Circles are legal and do no harm. A rule with
    an empty body holds of itself. Closeness lies in (0, 1].

    >>> rules = [Rule("gin", 1.0, ("dry gin",)), Rule("martini", 0.9, ("gin", "vermouth"))]
    >>> best_closeness(rules, {"dry gin", "vermouth"})["martini"]
    0.9
    """
    waiting: dict[Node, list[tuple[int, Rule[Node]]]] = {}
    unmet: list[int] = []
    worth: list[float] = []
    final: dict[Node, float] = {}
    serial = 0
    heap: list[tuple[float, int, Node]] = []

    for number, rule in enumerate(rules):
        needs = set(rule.body)
        unmet.append(len(needs))
        worth.append(rule.closeness)
        for node in needs:
            waiting.setdefault(node, []).append((number, rule))
        if not needs:
            serial += 1
            heapq.heappush(heap, (-rule.closeness, serial, rule.head))
    for node in owned:
        serial += 1
        heapq.heappush(heap, (-1.0, serial, node))

    while heap:
        value, _, node = heapq.heappop(heap)
        if node in final:
            continue
        final[node] = -value
        for number, rule in waiting.get(node, ()):
            worth[number] *= final[node] ** rule.body.count(node)
            unmet[number] -= 1
            if not unmet[number] and rule.head not in final:
                serial += 1
                heapq.heappush(heap, (-worth[number], serial, rule.head))
    return final


@dataclass(frozen=True)
class SubstitutionGraph:
    """The graph of one body of knowledge: the steps from each wanted key, by their kind.

    `kinds_below` are a kind of it, `only_when_asked` are where that is asked
    for. `stand_ins` come closest first, `recipes` in their order. Nothing
    stands in for what is `alone`. A key without a step of a kind is left out there.
    """

    kinds_below: Mapping[str, tuple[str, ...]]
    only_when_asked: Mapping[str, tuple[str, ...]]
    stand_ins: Mapping[str, tuple[StandIn, ...]]
    recipes: Mapping[str, tuple[MadeFrom, ...]]
    alone: frozenset[str]
    _last_bounds: dict[str, Any] = field(default_factory=dict, repr=False, compare=False)
    _reached: dict[str, frozenset[str]] = field(default_factory=dict, repr=False, compare=False)

    def reach(self, key: str) -> frozenset[str]:
        """Every key that any way to meet this one could take, itself among them."""
        if key not in self._reached:
            import networkx as nx  # loads slowly, and only what changes asks this

            start = (key, STAND_IN_STEPS)
            below = nx.descendants(self._states, start) if start in self._states else ()
            self._reached[key] = frozenset((key, *(met for met, _left in below)))
        return self._reached[key]

    @cached_property
    def _states(self) -> nx.DiGraph[State]:
        """Every rule's head with an edge to each node of its body."""
        import networkx as nx

        return nx.DiGraph((rule.head, each) for rule in self._rules for each in rule.body)

    def has_stand_in(self, wanted: str, offered: str) -> bool:
        """Whether there is an entry for just this pair."""
        return any(entry.offered == offered for entry in self.stand_ins.get(wanted, ()))

    @cached_property
    def _rules(self) -> tuple[Rule[State], ...]:
        """Every step as a rule over (key, stand-in steps left); scopes are not looked at."""
        steps = range(STAND_IN_STEPS + 1)
        return tuple(rule for left in steps for rule in self._rules_with(left))

    def bounds(self, owned: frozenset[str]) -> Mapping[State, float]:
        """The best closeness of every (key, steps left), every scope taken as met.

        So it never lies below what a line in a drink can reach. What is owned
        changes far less often than a question is asked, so the last is kept.
        """
        if self._last_bounds.get("owned") != owned:
            leaves = [(key, left) for key in owned for left in range(STAND_IN_STEPS + 1)]
            found = best_closeness(self._rules, leaves)
            self._last_bounds.update(owned=owned, found=found)
        bounds: Mapping[State, float] = self._last_bounds["found"]
        return bounds

    def _rules_with(self, left: int) -> Iterable[Rule[State]]:
        for key, kinds in (*self.kinds_below.items(), *self.only_when_asked.items()):
            for kind in kinds:
                yield Rule((key, left), 1.0, ((kind, left),))
        for key, recipes in self.recipes.items():
            for recipe in recipes:
                body = tuple((each.ingredient, left) for each in recipe.inputs)
                yield Rule((key, left), recipe.closeness, body)
        if left:
            for key, entries in self.stand_ins.items():
                for entry in entries:
                    yield Rule((key, left), entry.closeness, ((entry.offered, left - 1),))


def substitution_graph(
    tree: FamilyTree,
    *,
    stand_ins: Iterable[StandIn] = (),
    none: Iterable[NoStandIn] = (),
    made_from: Iterable[MadeFrom] = (),
) -> SubstitutionGraph:
    """Build the graph. A want with a *nothing stands in* entry gets no stand-in edges."""
    alone = frozenset(entry.wanted for entry in none)
    edges = [(above, key) for above in tree for key in tree.children(above)]
    special = {(above, key): tree.only_when_asked(key, above) for above, key in edges}
    given = tuple(stand_ins)
    pairs = {(entry.wanted, entry.offered) for entry in given}
    unasked = (
        _stands_in(edge, kinds, tree)
        for edge, kinds in special.items()
        if kinds and edge not in pairs
    )
    offers = (entry for entry in (*given, *unasked) if entry.wanted not in alone)
    closest_first = sorted(offers, key=_closest)
    return SubstitutionGraph(
        kinds_below=_grouped(edge for edge in edges if not special[edge]),
        only_when_asked=_grouped(edge for edge in edges if special[edge]),
        stand_ins=_grouped((entry.wanted, entry) for entry in closest_first),
        recipes=_grouped((recipe.made, recipe) for recipe in made_from),
        alone=alone,
    )


def _grouped(steps: Iterable[tuple[str, Step]]) -> Mapping[str, tuple[Step, ...]]:
    """Wanted key -> its steps, in their order."""
    found: dict[str, list[Step]] = {}
    for wanted, step in steps:
        found.setdefault(wanted, []).append(step)
    return {wanted: tuple(some) for wanted, some in found.items()}


def _stands_in(edge: tuple[str, str], kinds: frozenset[str], tree: FamilyTree) -> StandIn:
    """What is poured only when asked for, as a stand-in for the kind above it."""
    above, key = edge
    marked = tree.ordinary.only_when_asked
    said = min((marked[each] for each in kinds), key=lambda each: (each.closeness, each.key))
    return StandIn(above, key, said.closeness, said.ratio, why=said.why)


def _closest(entry: StandIn) -> tuple[float, str]:
    return (-entry.closeness, entry.offered)
