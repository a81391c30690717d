"""Whatever has a name, found by what is typed: commands, bottles, drinks, shoots and kinds.

Each sort of thing is looked for as `name_search` looks for any name. What fits better goes
first; within one fit what was used lately, then what is called just so, then commands, what is
in the bar or the book, and kinds last. A guess is given only where little is found as it is spelt.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.finder import Found, ranked
from barkeep.domain.name_search import ENOUGH, Fit, Named, NameIndex
from barkeep.domain.phrases import folded

Sort = Literal["command", "bottle", "drink", "shoot", "ingredient"]
_BEFORE: Mapping[Sort, int] = {"command": 2, "bottle": 1, "drink": 1, "shoot": 1, "ingredient": 0}
"""Within one fit, the greater first."""
MOST_FOUND = 40


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing that has a name: a command, or what a page shows.

    `identity` is what a page is asked to show: a bottle's or shoot's id, a drink's name, an
    ingredient's key, a command's own word. `also` are further names it answers to; `unless` is
    why a command cannot be given just now.
    """

    sort: Sort
    name: str
    identity: object
    also: tuple[str, ...] = ()
    unless: str = ""

    @property
    def key(self) -> str:
        """What it is remembered by."""
        return f"{self.sort}:{self.identity}"


@dataclass(frozen=True, slots=True)
class _Hit:
    thing: Thing
    fit: Fit
    closeness: float

    def rank(self, written: str, recent: Mapping[str, int]) -> tuple[Any, ...]:
        """The greater, the likelier it is meant by a text, which is `written` folded."""
        thing = self.thing
        names = map(folded, (thing.name, *thing.also))
        return (
            self.fit,
            recent.get(thing.key, 0),
            written in names,
            _BEFORE[thing.sort],
            not thing.unless,
            self.closeness,
            thing.sort == "bottle",
        )


class ByName:
    """All that has a name in one bar; what did not change is not made ready again."""

    def __init__(self) -> None:
        self._known: dict[Sort, tuple[Any, NameIndex[Thing]]] = {}
        self._snapshot: Snapshot | None = None
        self._all: dict[str, Thing] = {}

    def know(self, snapshot: Snapshot, commands: Sequence[Thing]) -> None:
        """Look among the commands and what this bar holds from now on."""
        self._snapshot = snapshot
        self._make_ready("command", tuple(commands), lambda: commands)
        self._make_ready("bottle", snapshot.bottles, lambda: map(_bottle, snapshot.bottles))
        self._make_ready(
            "drink",
            snapshot.all_specs,
            lambda: (Thing("drink", each.name, each.name) for each in snapshot.all_specs),
        )
        self._make_ready(
            "shoot",
            snapshot.shoots,
            lambda: (Thing("shoot", each.theme, each.id) for each in snapshot.shoots),
        )

    def found(self, text: str, lately: Sequence[str] = ()) -> tuple[Thing, ...]:
        """What a text may mean, likeliest first; `lately` are keys of things, the last used first.

        For no text: what was used lately, then every command.
        """
        if not text.strip():
            return self._at_first(lately)
        hits = _without_guesses(list(self._hits(text)))
        recent = {key: place for place, key in enumerate(reversed(lately), 1)}
        written = folded(text)
        hits.sort(key=lambda hit: hit.rank(written, recent), reverse=True)
        return tuple(hit.thing for hit in hits[:MOST_FOUND])

    def _at_first(self, lately: Sequence[str]) -> tuple[Thing, ...]:
        used = tuple(filter(None, map(self._of_key, lately)))
        commands, _index = self._known["command"]
        return (*used, *(each for each in commands if each not in used))

    def _of_key(self, key: str) -> Thing | None:
        if key.startswith("ingredient:") and self._snapshot is not None:
            tree, identity = self._snapshot.knowledge.tree, key.removeprefix("ingredient:")
            return Thing("ingredient", tree.name(identity), identity) if identity in tree else None
        return self._all.get(key)

    def _hits(self, text: str) -> Iterator[_Hit]:
        for _of, index in self._known.values():
            for hit in index.hits(text):
                yield _Hit(hit.value, hit.fit, hit.closeness)
        assert self._snapshot is not None
        there = self._snapshot.usable
        for each in ranked(text, self._snapshot.knowledge.tree, there=there):
            if not each.kind_of:
                shown = f"{each.called} ({each.name})" if each.called else each.name
                thing = Thing("ingredient", shown, each.key)
                yield _Hit(thing, _own_fit(each, text), each.score)

    def _make_ready(self, sort: Sort, of: Any, things: Callable[[], Iterable[Thing]]) -> None:
        known = self._known.get(sort)
        if known is not None and (known[0] is of or known[0] == of):
            return
        made = tuple(things())
        self._all = {key: each for key, each in self._all.items() if each.sort != sort}
        self._all |= {each.key: each for each in made}
        named = (Named(each, (each.name, *each.also)) for each in made)
        self._known[sort] = of, NameIndex(named)


def _bottle(bottle: Bottle) -> Thing:
    product = bottle.product
    return Thing("bottle", product.title, bottle.id, also=(product.name,))


def _own_fit(found: Found, text: str) -> Fit:
    """Another name of a kind does not go before the names of what is in the bar."""
    is_own = folded(found.name).startswith(folded(text))
    return found.fit if is_own else min(found.fit, Fit.WORDS)


def _without_guesses(hits: list[_Hit]) -> list[_Hit]:
    """What is spelt so; where that is little also what is spelt like it, and else a part of it."""
    sure = [hit for hit in hits if hit.fit > Fit.LIKE]
    if len(sure) >= ENOUGH or any(hit.fit is Fit.EXACT for hit in sure):
        return sure
    return [hit for hit in hits if hit.fit > Fit.PARTLY] or hits
