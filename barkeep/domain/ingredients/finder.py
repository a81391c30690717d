"""Which kinds of the family tree a typed text may mean, likeliest first, and why.

Every field, completion and command asks this: it is the only place that ranks kinds. The
text's fit to a name decides; within one fit, what is in the bar goes first, then what is
more general. After what a text names exactly come its usual kinds. Nothing is offered below
a floor: no answer is better than a far-fetched one.

A word that is only understood finds its kind and is never among the words of a `Found`.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from math import log2

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.name_search import Fit, Hit
from barkeep.translation import tr, tr_noop

NEAREST = 3
"""How many are named after a mistake."""
_THERE = 0.015
_GENERAL, _MOST_BELOW = 0.004, 32
_GROUPING = 0.005
"""No label says *juniper spirit*, so whoever types rarely means it."""
_BY_THE_PIECE = 0.003
"""Lime juice goes before lime peel: most of what a drink takes is poured."""
_ONE_BEHIND = 0.0005

_WORDS = {
    Fit.EXACT: tr_noop("it is called so"),
    Fit.BEGINS: tr_noop("its name begins so"),
    Fit.WORDS: tr_noop("its name holds these words"),
    Fit.BEGINNINGS: tr_noop("words of its name begin so"),
    Fit.LIKE: tr_noop("it is spelt much like it"),
    Fit.PARTLY: tr_noop("it shares a part of the name"),
}


@dataclass(frozen=True, slots=True)
class Found:
    """One kind a text may mean. `name` is what to show; `score` is 0 to 1 and only orders.

    `called` is another name of it by which it was found, empty where it was its own or one
    that is only understood; `kind_of` names what was typed where this is a kind of that.
    """

    key: str
    name: str
    score: float
    fit: Fit
    called: str = ""
    kind_of: str = ""
    there: bool = False

    @property
    def reasons(self) -> tuple[str, ...]:
        """Why it is offered, the strongest first, as parts of a sentence."""
        fit = (
            tr("it is a kind of {kind_of}", kind_of=self.kind_of)
            if self.kind_of
            else tr(_WORDS[self.fit])
        )
        also = (tr("it is also called {called}", called=self.called),) if self.called else ()
        return (fit, *also, *((tr("it is in the bar"),) if self.there else ()))

    @property
    def is_sure(self) -> bool:
        """Whether the whole text is in it, spelt right: what Enter may take."""
        return self.fit > Fit.LIKE


def ranked(
    text: str,
    tree: FamilyTree,
    *,
    there: Collection[str] = (),
    guess: bool = True,
    limit: int | None = None,
) -> tuple[Found, ...]:
    """The kinds a text may mean, likeliest first; `there` are the keys of what is in the bar.

    Without `guess` only what holds the whole text as it is spelt.
    """
    in_bar = with_kinds_above(there, tree)
    hits = tree.name_index.hits(text, guess=guess)
    found = [_found(hit, tree, in_bar) for hit in hits]
    found.sort(key=lambda each: (each.fit, each.score), reverse=True)
    if found and found[0].fit in (Fit.EXACT, Fit.LIKE):
        first, kinds = found[0], _usual_kinds(found[0], tree, in_bar)
        known = {each.key for each in kinds}
        found = [first, *kinds, *(each for each in found[1:] if each.key not in known)]
    return tuple(found[:limit])


def nearest(
    text: str, tree: FamilyTree, *, there: Collection[str] = (), limit: int = NEAREST
) -> tuple[Found, ...]:
    """The kinds to name after a mistake, likeliest first: none that only groups others."""
    found = ranked(text, tree, there=there)
    return tuple(each for each in found if not tree[each.key].family)[:limit]


def with_kinds_above(there: Iterable[str], tree: FamilyTree) -> frozenset[str]:
    """Keys of what is there, and of every kind that it is one of."""
    known = [key for key in there if key in tree]
    return frozenset(known).union(*map(tree.ancestors, known))


def _found(hit: Hit[str], tree: FamilyTree, in_bar: Collection[str]) -> Found:
    key, name = hit.value, tree.name(hit.value)
    called = hit.name if hit.name != name else ""
    score = hit.score + (0.0 if hit.fit is Fit.EXACT else _weight(key, tree, in_bar))
    return Found(key, name, round(score, 4), hit.fit, called=called, there=key in in_bar)


def _usual_kinds(first: Found, tree: FamilyTree, in_bar: Collection[str]) -> Sequence[Found]:
    """What lies directly below a kind, in the order of the tree, what is in the bar first."""
    fit = Fit.KIND if first.fit is Fit.EXACT else first.fit
    below = sorted(tree.children(first.key), key=lambda key: key not in in_bar)
    return [
        Found(
            key=key,
            name=tree.name(key),
            score=round(first.score - _ONE_BEHIND * (place + 1), 4),
            fit=fit,
            kind_of=tree.in_sentence(first.key),
            there=key in in_bar,
        )
        for place, key in enumerate(below)
    ]


def _weight(key: str, tree: FamilyTree, in_bar: Collection[str]) -> float:
    """What being in the bar and being general add to a score."""
    ingredient = tree[key]
    below = min(_MOST_BELOW - 1, len(tree.descendants(key)))
    weight = _GENERAL * log2(1 + below) / log2(_MOST_BELOW)
    if key in in_bar:
        weight += _THERE
    if ingredient.family:
        weight -= _GROUPING
    if ingredient.unit == "each":
        weight -= _BY_THE_PIECE
    return weight
