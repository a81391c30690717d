"""Every way a want can be met from what there is, each with its path and what it draws.

The search walks the substitution graph from the want, never through the same
kind twice, and gives up on a branch as soon as its closeness cannot reach the
floor any more. What is said of one pair bars another and a recipe takes all
its inputs at once, so networkx's simple paths would not do. The search may
take things that are not owned (`to_buy`): one of them is how *next bottle* and
*stand-ins* look beyond the shelf, several how a buying plan does.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cache, cached_property, partial
from typing import TYPE_CHECKING, TypeAlias

from barkeep.domain.ingredients.relations import (
    STAND_IN_STEPS,
    MadeFrom,
    Role,
    Scope,
    StandIn,
    Technique,
)
from barkeep.domain.ingredients.tree import FamilyTree

if TYPE_CHECKING:
    from barkeep.domain.ingredients.graph import State, SubstitutionGraph


EXACT = 1.0 - 1e-9
"""Closeness from which a derivation counts as the wanted thing itself."""

_NOISE = 1e-12
"""Amounts that differ by no more are the same, reckoned in another order."""


@dataclass(frozen=True, slots=True)
class KindOf:
    """`kind` is a kind of the wanted thing."""

    wanted: str
    kind: str


@dataclass(frozen=True, slots=True)
class Replace:
    """A stand-in is taken."""

    entry: StandIn


@dataclass(frozen=True, slots=True)
class Make:
    """It is made here, each input met in its own way."""

    recipe: MadeFrom
    parts: tuple[Derivation, ...]


Step: TypeAlias = KindOf | Replace | Make


@dataclass(frozen=True, slots=True)
class Derivation:
    """One way to meet a want.

    `draws` maps the key of each thing taken to how much of it, in its own
    unit, one unit of the want takes. `to_buy` are those of them that are not
    owned. `offered` is what goes into the drink; `ratio` is how much of it
    replaces one unit of the want. `choice` is the place of
    the want among what its line asks for: 0 unless it says *rye or bourbon*.
    """

    wanted: str
    offered: str
    closeness: float
    ratio: float
    draws: Mapping[str, float]
    steps: tuple[Step, ...] = ()
    to_buy: frozenset[str] = frozenset()
    choice: int = 0

    @property
    def buying(self) -> str | None:
        """The one thing it takes that is not owned; None for none or several."""
        return next(iter(self.to_buy)) if len(self.to_buy) == 1 else None

    @property
    def exact(self) -> bool:
        """Whether it is the wanted thing itself."""
        return self.closeness >= EXACT

    @property
    def rank(self) -> tuple[float, int, int, str]:
        """Sorts derivations as they are offered.

        Closest, then the line's first choice, then shortest, then by key.
        """
        return (-self.closeness, self.choice, len(self.steps), self.offered)

    @property
    def leaves(self) -> frozenset[str]:
        """The keys of everything it takes."""
        return frozenset(self.draws)

    @property
    def made(self) -> tuple[Make, ...]:
        """What is made on the way, in order, those inside a recipe apart."""
        return tuple(step for step in self.steps if isinstance(step, Make))

    @property
    def stand_ins(self) -> tuple[StandIn, ...]:
        """Every stand-in it takes, in the order of its steps, those inside a recipe after it."""
        return tuple(entry for step in self.steps for entry in _taken_by(step))


def _taken_by(step: Step) -> tuple[StandIn, ...]:
    match step:
        case Replace(entry):
            return (entry,)
        case Make(_, parts):
            return tuple(entry for part in parts for entry in part.stand_ins)
        case KindOf():
            return ()


@dataclass(frozen=True, slots=True)
class Want:
    """What is asked for: an ingredient, the conditions its drink meets, and a floor.

    `scopes` are the stand-in conditions that hold; None takes every scope as
    met, for a question outside any drink. `strong` lists the only keys that
    may be poured for it where a line asks for a least strength. `asked` are
    the kinds that it takes though they are poured only when asked for.
    """

    ingredient: str
    scopes: frozenset[Scope] | None = None
    floor: float = 0.0
    strong: frozenset[str] | None = None
    asked: frozenset[str] = frozenset()


@cache
def scopes_of(technique: Technique, role: Role) -> frozenset[Scope]:
    """The stand-in conditions that hold for a line of this role in this drink."""
    held: set[Scope] = set()
    if technique == "shaken":
        held.add("shaken")
    if technique == "stirred":
        held.add("stirred")
    if role == "accent":
        held.add("accent")
    if role != "base":
        held.add("never_base")
    return frozenset(held)


@dataclass(frozen=True)
class Derivations:
    """The search over one substitution graph and one set of owned keys."""

    graph: SubstitutionGraph
    tree: FamilyTree
    owned: frozenset[str]

    @cached_property
    def _bounds(self) -> Mapping[State, float]:
        return self.graph.bounds(self.owned)

    def of(self, want: Want) -> tuple[Derivation, ...]:
        """Every way to meet it from what is owned, closest first."""
        return closest_per_leaves(_Search(self, want, buying=0).run())

    def buying_one(self, want: Want) -> tuple[Derivation, ...]:
        """The ways to meet it that take exactly one thing not owned, closest first."""
        return self.buying_some(want, 1)

    def buying_some(self, want: Want, most: int) -> tuple[Derivation, ...]:
        """The ways to meet it that take one thing not owned or up to so many, closest first."""
        found = _Search(self, want, buying=most).run()
        return closest_per_leaves(each for each in found if each.to_buy)

    def bound(self, key: str, left: int) -> float:
        """No way to meet `key` with `left` stand-in steps is closer than this."""
        return self._bounds.get((key, left), 0.0)


@dataclass(frozen=True, slots=True)
class _Place:
    """Where a search stands: the kind, steps left, closeness so far, and the way here.

    `origin` is what was asked for before the search went down to its kinds:
    the want itself, or the last stand-in taken. `unspecific` marks the
    general kind taken for a special one: a label that says no more than *rum*
    may stand in for white rum, but that makes no dark rum white. `taken` is
    the last stand-in taken, if any.
    """

    key: str
    origin: str
    left: int
    closeness: float
    ratio: float
    steps: tuple[Step, ...]
    seen: frozenset[str]
    unspecific: bool = False
    taken: StandIn | None = None

    def down_to(self, kind: str) -> _Place:
        """The place of a kind below."""
        steps = (*self.steps, KindOf(self.key, kind))
        return replace(self, key=kind, steps=steps, seen=self.seen | {kind})

    def instead(self, entry: StandIn, unspecific: bool) -> _Place:
        """The place of a stand-in, with one stand-in step less to go."""
        return _Place(
            key=entry.offered,
            origin=entry.offered,
            left=self.left - 1,
            closeness=self.closeness * entry.closeness,
            ratio=self.ratio * entry.ratio,
            steps=(*self.steps, Replace(entry)),
            seen=self.seen | {entry.offered},
            unspecific=unspecific,
            taken=entry,
        )


def _start(key: str, left: int, seen: frozenset[str] = frozenset()) -> _Place:
    return _Place(
        key=key, origin=key, left=left, closeness=1.0, ratio=1.0, steps=(), seen=seen | {key}
    )


_Parts: TypeAlias = tuple[tuple[Derivation, ...], float]


@dataclass(frozen=True, slots=True)
class _Search:
    """One walk for one want, which may take so many things that are not owned (`buying`)."""

    world: Derivations
    want: Want
    buying: int

    def run(self) -> Iterator[Derivation]:
        return self._from(_start(self.want.ingredient, STAND_IN_STEPS))

    def _from(self, place: _Place) -> Iterator[Derivation]:
        if self._hopeless(place) or self._mistaken(place):
            return
        if self._may_pour(place.key):
            yield self._pour(place)
        if place.unspecific:
            return
        asked_for = filter(partial(self._asked, place.key), self._special_below(place.key))
        for kind in (*self.world.graph.kinds_below.get(place.key, ()), *asked_for):
            if kind not in place.seen and not self._spoken_for(place, kind):
                yield from self._from(place.down_to(kind))
        for entry in self._stand_ins(place):
            unspecific = self.world.tree.is_a(entry.wanted, entry.offered)
            yield from self._from(place.instead(entry, unspecific))
        if self.want.strong is None:
            for recipe in self.world.graph.recipes.get(place.key, ()):
                yield from self._make(place, recipe)

    def _special_below(self, key: str) -> tuple[str, ...]:
        return self.world.graph.only_when_asked.get(key, ())

    def _asked(self, above: str, kind: str) -> bool:
        """Whether the want takes a kind that is poured only when asked for."""
        if self.want.strong is not None:
            return True
        return self.world.tree.only_when_asked(kind, above) <= self.want.asked

    def _spoken_for(self, place: _Place, kind: str) -> bool:
        """Whether an entry says what this kind, below a stand-in taken, is worth itself.

        Bourbon may stand in for rye, but a wheated one does so by its own
        entry. An owner's word for the kind above goes before a shipped one.
        """
        if place.taken is None:
            return False
        return any(
            entry.offered == kind and (entry.own or not place.taken.own)
            for wanted in {place.taken.wanted, self.want.ingredient}
            for entry in self.world.graph.stand_ins.get(wanted, ())
        )

    def _hopeless(self, place: _Place) -> bool:
        best = 1.0 if self.buying else self.world.bound(place.key, place.left)
        return best == 0.0 or place.closeness * best < self.want.floor - 1e-9

    def _mistaken(self, place: _Place) -> bool:
        return self.world.tree.mistaken(self.want.ingredient, place.key) is not None

    def _may_pour(self, key: str) -> bool:
        if key in self.world.owned:
            return self.want.strong is None or key in self.want.strong
        return self.buying > 0 and not self.world.tree[key].family

    def _stand_ins(self, place: _Place) -> Iterator[StandIn]:
        """The stand-ins that may be taken here.

        What is said of the kind that was asked for goes before what is said of
        a kind below it: its own entry for the same stand-in, or that nothing
        stands in. Going down to a kind opens no way up again to what that kind
        only shares a name with. And what is said of a pair goes before any
        chain of stand-ins from the one to the other.
        """
        graph, tree = self.world.graph, self.world.tree
        if not place.left or place.origin in graph.alone:
            return
        below = place.key != place.origin
        chained = place.origin != self.want.ingredient
        for entry in graph.stand_ins.get(place.key, ()):
            overruled = (
                (below and graph.has_stand_in(place.origin, entry.offered))
                or (below and tree.is_a(entry.wanted, entry.offered))
                or (chained and graph.has_stand_in(self.want.ingredient, entry.offered))
            )
            if entry.offered not in place.seen and not overruled and self._in_scope(entry):
                yield entry

    def _in_scope(self, entry: StandIn) -> bool:
        return self.want.scopes is None or self.want.scopes.issuperset(entry.scope)

    def _pour(self, place: _Place) -> Derivation:
        bought = frozenset() if place.key in self.world.owned else frozenset({place.key})
        return Derivation(
            wanted=self.want.ingredient,
            offered=place.key,
            closeness=place.closeness,
            ratio=place.ratio,
            draws={place.key: place.ratio},
            steps=place.steps,
            to_buy=bought,
        )

    def _make(self, place: _Place, recipe: MadeFrom) -> Iterator[Derivation]:
        worth = place.closeness * recipe.closeness
        if worth < self.want.floor - 1e-9:
            return
        for parts, closeness in self._together(place, recipe, worth):
            yield Derivation(
                wanted=self.want.ingredient,
                offered=place.key,
                closeness=closeness,
                ratio=place.ratio,
                draws=_drawn(recipe, parts, place.ratio),
                steps=(*place.steps, Make(recipe, parts)),
                to_buy=_bought(parts),
            )

    def _together(self, place: _Place, recipe: MadeFrom, worth: float) -> list[_Parts]:
        """Every choice of a way per input, above the floor and buying no more than it may."""
        chosen: list[_Parts] = [((), worth)]
        for taken in recipe.inputs:
            ways = self._input(taken.ingredient, place, worth)
            chosen = [
                ((*parts, way), closeness * way.closeness)
                for parts, closeness in chosen
                for way in ways
                if closeness * way.closeness >= self.want.floor - 1e-9
                and len(_bought((*parts, way))) <= self.buying
            ]
        return chosen

    def _input(self, key: str, place: _Place, worth: float) -> tuple[Derivation, ...]:
        """The ways to meet one input: no line of a drink, so no scoped stand-in holds for it."""
        if key in place.seen:
            return ()
        want = Want(key, frozenset(), self.want.floor / worth)
        search = _Search(self.world, want, self.buying)
        return closest_per_leaves(search._from(_start(key, place.left, place.seen)))


def _bought(parts: Iterable[Derivation]) -> frozenset[str]:
    return frozenset[str]().union(*(each.to_buy for each in parts))


def _drawn(recipe: MadeFrom, parts: tuple[Derivation, ...], ratio: float) -> dict[str, float]:
    drawn: dict[str, float] = {}
    for taken, part in zip(recipe.inputs, parts, strict=True):
        share = ratio * taken.amount / recipe.yields
        for key, amount in part.draws.items():
            drawn[key] = drawn.get(key, 0.0) + share * amount
    return drawn


def closest_per_leaves(found: Iterable[Derivation]) -> tuple[Derivation, ...]:
    """Keep the closest way for each set of things taken; ties go to the shorter way.

    A farther way to the same things is kept too where it takes less of one of
    them: where a bottle is nearly empty, it alone may be enough.
    """
    kept: dict[frozenset[str], list[Derivation]] = {}
    for each in sorted(found, key=lambda each: each.rank):
        closer = kept.setdefault(each.leaves, [])
        if all(_takes_less(each, other) for other in closer):
            closer.append(each)
    return tuple(
        sorted((each for some in kept.values() for each in some), key=lambda each: each.rank)
    )


def _takes_less(way: Derivation, other: Derivation) -> bool:
    """Whether it takes less of one of the things that both take."""
    return any(amount < other.draws[key] - _NOISE for key, amount in way.draws.items())
