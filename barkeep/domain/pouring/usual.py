"""Which of several things that are just what a line asks for is poured first.

What is safer goes first, then the line's first choice, what suits the drink,
what stands there before what would have to be made, the owner's usual pour,
and last what is open and nearest its end. Where no kind suits a light drink
better and another a dark one, the owner's usual pour goes before the kinds.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import NamedTuple

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.pour_order import Rank, turn_rank
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.ingredients.ordinary import Tiers
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line, Spec

_LIGHT = frozenset({"shaken", "blended", "swizzled"})
_DARK = frozenset({"stirred", "hot"})
_LONG_KINDS = ("juice", "mixer", "sparkling-wine")
_WORD = re.compile(r"[\w-]+")
_NOTHING_THERE: Rank = (True, True, True, True, date.max, 0.0, 0)
"""The rank of what no bottle of is there: made here, or always there."""


def is_light(spec: Spec, tree: FamilyTree) -> bool:
    """Whether a drink is shaken, blended or long; else it is stirred, hot or little but spirit."""
    if spec.technique in _LIGHT or spec.technique in _DARK:
        return spec.technique in _LIGHT
    long = [kind for kind in _LONG_KINDS if kind in tree]
    return any(tree.is_a(key, kind) for key in spec.wanted for kind in long)


def tier(key: str, wanted: str, light: bool, tree: FamilyTree) -> int:
    """How well a kind of what is wanted suits the drink, 0 best; 0 where no kind suits better."""
    roles = tree.ordinary.roles.get(wanted)
    if roles is None:
        return 0
    tiers: Tiers = roles.light if light or not roles.dark else roles.dark
    place = {kind: number for number, some in enumerate(tiers) for kind in some}
    nearest = (place[each] for each in (key, *tree.upwards(key)) if each in place)
    return next(nearest, len(tiers))


def asked_in_words(line: Line, spec: Spec, tree: FamilyTree) -> frozenset[str]:
    """The kinds below a line's that are poured only when asked for, and that its words ask for.

    The method asks too, unless another line of the drink is for that kind.
    """
    special = [tree.special_below[each] for each in line.wanted if each in tree.special_below]
    if not special:
        return frozenset()
    marked = tree.ordinary.only_when_asked
    said = _words(line.text, line.note, line.called, *line.stated)
    method = _words(spec.method)
    found = set()
    for kind in frozenset[str]().union(*special):
        spoken = [f" {each} " for each in marked[kind].words]
        if any(each in said for each in spoken) or (
            any(each in method for each in spoken)
            and not any(tree.is_a(key, kind) for key in spec.wanted)
        ):
            found.add(kind)
    return frozenset(found)


def _words(*texts: str) -> str:
    """Texts as words to look phrases up in, one blank around each."""
    return f" {' '.join(_WORD.findall(folded(' '.join(texts))))} "


@dataclass(frozen=True, slots=True)
class _Poured:
    """A kind for what is wanted: which of a line's choices that is, so many steps below it."""

    wanted: str
    offered: str
    choice: int
    steps: int
    made: int = 0


class _For(NamedTuple):
    """What a line is poured for: a light drink or a dark one, and the special kinds it asks for."""

    light: bool
    asked: frozenset[str]


@dataclass(frozen=True, slots=True)
class UsualPours:
    """The owner's usual pours and the turns of what stands there.

    `house` is the kind poured for a general one; `turns` the rank of the first bottle of each key.
    """

    house: Mapping[str, str]
    turns: Mapping[str, Rank]
    tree: FamilyTree
    _ordered: dict[tuple[object, ...], tuple[str, ...]] = field(
        default_factory=dict, repr=False, compare=False
    )

    def may_ask(self, wanted: str) -> bool:
        """Whether `asked` can find anything for a line that wants this and nothing else."""
        return wanted in self.tree.special_below or wanted in self.house

    def asked(self, line: Line, spec: Spec) -> frozenset[str]:
        """The kinds poured only when asked for that the line or its usual pour asks for."""
        found = asked_in_words(line, spec, self.tree)
        for wanted in line.wanted:
            if wanted in self.house:
                found |= self.tree.only_when_asked(self.house[wanted], wanted)
        return found

    def in_order(
        self, ways: Iterable[Derivation], spec: Spec, asked: frozenset[str]
    ) -> tuple[Derivation, ...]:
        """Ways to meet a line as they are poured: what is just it first, then the closest.

        `asked` are the kinds that it takes though they are poured only when asked for.
        """
        some = tuple(ways)
        if len(some) < 2:
            return some
        meant = _For(is_light(spec, self.tree), asked)
        return tuple(sorted(some, key=lambda each: self._rank_of_way(each, meant)))

    def kinds_in_order(self, line: Line, spec: Spec) -> tuple[str, ...]:
        """The kinds that stand there and are just what a line asks for, as they are poured.

        What is poured only when asked for is not among them where the line does not ask.
        """
        meant = _For(is_light(spec, self.tree), self.asked(line, spec))
        strong = line.min_abv_percent is not None
        asking = (line.wanted, meant, strong)
        if asking not in self._ordered:
            self._ordered[asking] = self._in_order(line.wanted, meant, strong)
        return self._ordered[asking]

    def _in_order(self, wants: Sequence[str], meant: _For, strong: bool) -> tuple[str, ...]:
        tree = self.tree
        ranked: dict[str, tuple[object, ...]] = {}
        for choice, wanted in enumerate(wants):
            for steps, kinds in enumerate(self._levels_below(wanted)):
                for key in kinds:
                    unasked = not tree.only_when_asked(key, wanted) <= meant.asked
                    if key in self.turns and (strong or not unasked):
                        rank = self._rank(_Poured(wanted, key, choice, steps), meant)
                        ranked.setdefault(key, rank)
        return tuple(sorted(ranked, key=lambda key: ranked[key]))

    def _levels_below(self, wanted: str) -> Iterator[tuple[str, ...]]:
        """What is safer, then a kind and all below it, level by level."""
        safer = self.tree.ordinary.rather.get(wanted)
        yield from () if safer is None else self.tree.downwards(safer)
        yield from self.tree.downwards(wanted)

    def _rank_of_way(self, way: Derivation, meant: _For) -> tuple[object, ...]:
        closeness = 1.0 if way.exact else way.closeness
        poured = _Poured(way.wanted, way.offered, way.choice, len(way.steps), made=len(way.made))
        return (-closeness, *self._rank(poured, meant))

    def _rank(self, of: _Poured, meant: _For) -> tuple[object, ...]:
        tree, ordinary = self.tree, self.tree.ordinary
        rather = ordinary.rather.get(of.wanted)
        is_safer = rather is not None and tree.is_a(of.offered, rather)
        is_house = self.house.get(of.wanted) == of.offered
        special = tree.only_when_asked(of.offered, of.wanted)
        asked = bool(special) and special <= meant.asked
        roles = ordinary.roles.get(of.wanted)
        first = asked or (is_house and (roles is None or not roles.dark))
        turn = self.turns.get(of.offered, _NOTHING_THERE)
        return (
            not is_safer,
            of.choice,
            -1 if first else tier(of.offered, of.wanted, meant.light, tree),
            of.made,
            turn[0] and not of.made,
            0 if of.wanted in ordinary.roles else of.steps,
            not is_house,
            turn,
            of.steps,
            of.offered,
        )


def usual_pours(snapshot: Snapshot) -> UsualPours:
    """The owner's usual pours that are there, and what stands there in the order it is used up."""
    return snapshot.once(_usual_pours)


def _usual_pours(snapshot: Snapshot) -> UsualPours:
    there = snapshot.by_kind(_products)
    return UsualPours(
        house={
            each.kind: key
            for each in snapshot.settings.house
            for key, products in there.items()
            if each.product in products
        },
        turns=snapshot.by_kind(_turn_of_first),
        tree=snapshot.knowledge.tree,
    )


def _products(_snapshot: Snapshot, bottles: tuple[Bottle, ...]) -> frozenset[int]:
    return frozenset(each.product.id for each in bottles)


def _turn_of_first(snapshot: Snapshot, bottles: tuple[Bottle, ...]) -> Rank:
    return turn_rank(bottles[0], snapshot.turn_of(bottles[0]))
