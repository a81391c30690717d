"""Which one bottle to buy next: what each would turn to ready, and why.

A candidate is every ingredient a shop sells that is not in the bar, and one
that is there but too low where buying more would turn a drink. The claim is
exact: adding one ordinary bottle of it and asking *tonight* again gives these
drinks and no others. A drink with a line that is not understood is never
among them, since nobody knows what else it takes; `unweighed` names each. To
keep it quick the search asks, per line that fails
now, which single purchases could meet it; only those are weighed.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from operator import attrgetter, itemgetter
from typing import TYPE_CHECKING, TypeAlias

from barkeep.collector import collector_paused
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.purchases import Candidate, Form, Purchases
from barkeep.domain.ingredients.derivations import Derivation, Want
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import Assessment, assess, laid_out_once, most_drawn
from barkeep.domain.pouring.made_first import made_first
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import (
    DerivationWays,
    Sourcing,
    Within,
    asked_by_want,
    choices,
    thresholds,
)
from barkeep.domain.pouring.supply import Stock, purchase
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr

if TYPE_CHECKING:
    from barkeep.domain.buying.at_once import BoughtWays, Turned, Turning
    from barkeep.domain.pouring.book_lines import Ask, Flags
    from barkeep.domain.pouring.whole_book import Decided


WaysBuying: TypeAlias = dict[Want, Mapping[str, tuple[Derivation, ...]]]
"""Of each want the ways that take one purchase, by its key."""


def next_bottle(
    snapshot: Snapshot, within: Within = "close", memory: Memory | None = None
) -> tuple[Candidate, ...]:
    """Every purchase worth naming, each once: bottles first, then what turns most.

    What can be made here from what is there is no purchase: *tonight* says to
    make it first. `memory` makes asking again after a small change quick; it
    changes no answer.
    """
    memory = memory or Memory()
    asked = ("next bottle", within)
    return memory.answer(asked, snapshot, lambda: _next_bottle(snapshot, within, memory))


@collector_paused()
def _next_bottle(snapshot: Snapshot, within: Within, memory: Memory) -> tuple[Candidate, ...]:
    from barkeep.domain.buying.at_once import BoughtWays, turning  # numpy loads slowly
    from barkeep.domain.pouring.whole_book import decide

    decided, sourcing = decide(snapshot, within, 1, memory)
    ways: WaysBuying = memory.recall(
        ("buying", within), snapshot, asked_by_want, levels_matter=False
    )
    bought, found = BoughtWays(sourcing, ways), decided.drawn

    def turned() -> Turning:
        sold = [key for key in sourcing.tree if may_buy(key, sourcing)]
        return turning(found, bought, sold)

    turns = memory.once(("turning", within), (found,), turned)
    market = _Market(
        snapshot,
        sourcing,
        decided,
        bought=bought,
        turning=turns,
        _laid_out=laid_out_once(snapshot, within, memory),
        _alone=memory.by_spec(("one by one", within), snapshot, drawn=attrgetter("drawn")),
        _absent=memory.by_spec(("short of kinds", within), snapshot, levels_matter=False),
        _here=memory.once(("made here", within), (found,), dict),
    )
    last = memory.once(("weighed", within), (turns, snapshot.price_of), _Last)
    forms = market.weighed(last)

    def worth_naming() -> tuple[Form, ...]:
        return tuple(each for each in forms if each.unlocks or not market.has(each))

    worth = memory.once(("worth naming", within), (found, forms), worth_naming)
    there = (snapshot.products, snapshot.owned, snapshot.always_there, snapshot.past)
    of = (snapshot.knowledge, *there, worth)
    return memory.once(("rows", within), of, lambda: Purchases(snapshot).rows(worth))


def may_buy(key: str, sourcing: Sourcing) -> bool:
    """Whether a shop sells it and it is not simply there."""
    return not sourcing.tree[key].family and key not in sourcing.supply.always


def unweighed(snapshot: Snapshot) -> tuple[str, ...]:
    """Each drink that no purchase is said to turn, and why, in a sentence."""
    return tuple(
        tr(
            "{drink} is counted for no bottle until its questions are settled: {questions}.",
            drink=spec.name,
            questions=spoken_list([each.named for each in spec.unsettled], "and"),
        )
        for spec in snapshot.all_specs
        if spec.unsettled
    )


@dataclass(frozen=True, slots=True)
class _Singly:
    """What looking at drinks one by one finds for a purchase, by their places in the book.

    Beside each drink that it leaves one short stand the numbers of the lines it bears on.
    """

    turned: tuple[tuple[int, Turned], ...] = ()
    near: tuple[tuple[int, tuple[int, ...]], ...] = ()


@dataclass(frozen=True, slots=True)
class _Alone:
    """What looking at one drink finds: what each purchase that turns it does, by its key.

    `near` holds the lines that each purchase bears on which leaves it one short; `drawn` is as in
    `most_drawn`, the ways with a purchase as well.
    """

    drawn: Mapping[str, float] | None
    turned: Mapping[str, Turned] = field(default_factory=dict)
    near: Mapping[str, tuple[int, ...]] = field(default_factory=dict)


@dataclass
class _Last:
    """What was weighed last: the form of each purchase, and what it came from.

    `turns` and `nears` say of each pair of a `Turning` whether it counts as it stands; None
    before anything was weighed.
    """

    turns: Flags | None = None
    nears: Flags | None = None
    singly: Mapping[str, _Singly] = field(default_factory=dict)
    forms: tuple[Form, ...] = ()

    def changed(
        self, pairs: Turning, turns: Flags, nears: Flags, singly: Mapping[str, _Singly]
    ) -> Collection[int]:
        """The numbers of the purchases whose form comes from other things now."""
        if self.turns is None or self.nears is None:
            return range(len(pairs.keys))
        keys = singly.keys() | self.singly.keys()
        differing = (key for key in keys if singly.get(key) != self.singly.get(key))
        return {
            *pairs.key[turns != self.turns].tolist(),
            *pairs.near_key[nears != self.nears].tolist(),
            *(pairs.number[key] for key in differing),
        }


@dataclass(frozen=True)
class _Market:
    """Everything one run of the question shares between candidates."""

    snapshot: Snapshot
    sourcing: Sourcing
    decided: Decided
    bought: BoughtWays
    turning: Turning
    _laid_out: BySpec[Assessment]
    _alone: BySpec[_Alone]
    _absent: BySpec[Assessment]
    _here: dict[str, bool]

    @property
    def tree(self) -> FamilyTree:
        return self.sourcing.tree

    def has(self, form: Form) -> bool:
        """Whether it is there, or can be made here from what is."""
        return form.owned or self._is_made_here(form.ingredient)

    def _is_made_here(self, key: str) -> bool:
        if key not in self._here:
            want = Want(key, frozenset(), 1.0)
            self._here[key] = any(map(_is_made, self.sourcing.derivations.of(want)))
        return self._here[key]

    def weighed(self, last: _Last) -> tuple[Form, ...]:
        """What buying one ordinary bottle of each would do.

        A form that was weighed last is taken where nothing that it came from has changed.
        """
        pairs = self.turning
        short = pairs.counted(pairs.spec, self.decided)
        turns = short & pairs.fits(self.sourcing.supply.total) & pairs.is_clear
        nears = pairs.counted(pairs.near_spec, self.decided)
        singly = self._one_by_one(short & ~turns)
        if changed := last.changed(pairs, turns, nears, singly):
            forms = dict(enumerate(last.forms))
            turning, near = turns.tolist(), nears.tolist()
            for number in changed:
                alone = singly.get(pairs.keys[number], _Singly())
                forms[number] = self._form(number, turning, near, alone)
            last.forms = tuple(forms[number] for number in range(len(pairs.keys)))
        last.turns, last.nears, last.singly = turns, nears, singly
        return last.forms

    def _form(
        self, number: int, turns: Sequence[bool], nears: Sequence[bool], singly: _Singly
    ) -> Form:
        """What buying one ordinary bottle would do; `turns` and `nears` are as in `_Last`."""
        pairs, key = self.turning, self.turning.keys[number]
        turned = [*self._turned_at_once(number, turns), *singly.turned]
        starts, near_lines = pairs.near_starts, dict(singly.near)
        near = [
            pairs.near_place[each]
            for each in range(starts[number], starts[number + 1])
            if nears[each]
        ]
        if singly.turned:
            turned.sort(key=itemgetter(0))
        if near_lines:
            near = sorted((*near, *near_lines))
        drinks = [each for _place, each in turned]
        reasons = [(each.name, each.lines) for each in drinks]
        if not drinks:
            reasons = [
                (self._name(place), near_lines.get(place) or self._borne_on(place, key))
                for place in near
            ]
        return Form(
            ingredient=key,
            unlocks=tuple(each.name for each in drinks),
            exactly=tuple(each.name for each in drinks if each.exactly),
            nearest=tuple(map(self._name, near)),
            price=self.snapshot.price_of.get(key),
            owned=key in self.sourcing.supply.owned,
            reason=tuple(reasons),
            makes=tuple((each.name, each.makes) for each in drinks if each.makes),
        )

    def _name(self, place: int) -> str:
        return self.decided.specs[place].name

    def _turned_at_once(self, number: int, turns: Sequence[bool]) -> Iterator[tuple[int, Turned]]:
        pairs = self.turning
        for each in range(pairs.starts[number], pairs.starts[number + 1]):
            turned = pairs.turned[each]
            if turns[each] and turned is not None:
                yield pairs.place[each], turned

    def _one_by_one(self, unclear: Flags) -> Mapping[str, _Singly]:
        """What looking at drinks finds: at those that no array decides, and at `unclear` pairs."""
        pairs = self.turning
        turned: dict[str, list[tuple[int, Turned]]] = {}
        near: dict[str, list[tuple[int, tuple[int, ...]]]] = {}
        for each in unclear.nonzero()[0].tolist():
            place, key = pairs.place[each], pairs.keys[int(pairs.key[each])]
            found = self._looked_at(self._absent.of(self.decided.specs[place], self._assess), key)
            if found is not None:
                turned.setdefault(key, []).append((place, found))
        undecided = self.decided.undecided
        looked_at = self._alone.each((spec for _place, spec in undecided), self._look_at)
        for (place, _spec), alone in zip(undecided, looked_at, strict=True):
            for key, found in alone.turned.items():
                turned.setdefault(key, []).append((place, found))
            for key, lines in alone.near.items():
                near.setdefault(key, []).append((place, lines))
        return {
            key: _Singly(tuple(turned.get(key, ())), tuple(near.get(key, ())))
            for key in turned.keys() | near.keys()
        }

    def _assess(self, spec: Spec) -> Assessment:
        return assess(spec, self.sourcing)

    def _look_at(self, spec: Spec) -> _Alone:
        """What purchases do for a drink that no array decides."""
        if spec.unsettled:
            return _Alone({})
        found = self._laid_out.of(spec, self._assess)
        if not found.fails:
            return _Alone(most_drawn(found, self.tree))
        keys = self._may_turn(found)
        tried = ((key, self._looked_at(found, key)) for key in keys)
        return _Alone(
            turned={key: turned for key, turned in tried if turned is not None},
            near=self._leaving_one_short(found),
            drawn=most_drawn(
                found, self.tree, lambda number: self._bought(found.wants[number], keys)
            ),
        )

    def _may_turn(self, failing: Assessment) -> Sequence[str]:
        """The keys of purchases that might turn a drink.

        Each bears on every line that fails alone; where none does, on any.
        """
        bearing = [self._bearing_on(failing, each) for each in _to_be_helped(failing)]
        keys = set.intersection(*bearing) if failing.short_alone else set().union(*bearing)
        return [key for key in keys if may_buy(key, self.sourcing)]

    def _bought(self, ask: Ask, keys: Sequence[str]) -> Iterator[Derivation]:
        """The ways to an ask that take one of these purchases."""
        for key in keys:
            yield from self.bought.of(ask).get(key, ())

    def _looked_at(self, failing: Assessment, key: str) -> Turned | None:
        """What really buying one does for a drink, None where it does not turn it."""
        from barkeep.domain.buying.at_once import Turned

        after = self._after(failing, purchase(key, self.tree))
        if after.fails:
            return None
        exactly, made = after.exact, self._made_of(key, after)
        return Turned(failing.spec.name, exactly, self._lines_borne_on(failing, key), made)

    def _borne_on(self, place: int, key: str) -> tuple[int, ...]:
        """The numbers of the lines of a drink decided by arrays that a purchase bears on."""
        lines = self.turning.lines[place]
        return tuple(number for number, ask in lines if key in self.bought.of(ask))

    def _lines_borne_on(self, failing: Assessment, key: str) -> tuple[int, ...]:
        """The numbers of the lines that fail by themselves, else of any, that a purchase helps."""
        lines = _to_be_helped(failing)
        return tuple(each for each in lines if key in self._bearing_on(failing, each))

    def _made_of(self, key: str, turned: Assessment) -> tuple[MadeFrom, ...]:
        """What has to be made of a purchase before a drink it turns."""
        if not any(_takes_making(each.derivation, key) for some in turned.choices for each in some):
            return ()
        ways = turned.chosen(turned.numbers, exact=turned.exact)
        return made_first((way for way in ways if key in way.draws), self.tree)

    def _leaving_one_short(self, failing: Assessment) -> Mapping[str, tuple[int, ...]]:
        """Key of each purchase that leaves a failing drink one short -> the lines it bears on."""
        wants: dict[str, set[str]] = {}
        for number in failing.short_alone:
            wanted = failing.lines[number].ingredient
            bearing = self._bearing_on(failing, number)
            wants[wanted] = wants[wanted] & bearing if wanted in wants else bearing
        return {
            key: self._lines_borne_on(failing, key)
            for key in (set().union(*wants.values()) if len(wants) > 1 else ())
            if sum(key not in bearing for bearing in wants.values()) == 1
            and may_buy(key, self.sourcing)
        }

    def _bearing_on(self, failing: Assessment, number: int) -> set[str]:
        """Keys of which a purchase could help a line: a new way to it, or more of an old one."""
        drawn = {key for each in failing.choices[number] for key in each.derivation.draws}
        return drawn | self.bought.of(failing.wants[number]).keys()

    def _after(self, before: Assessment, bought: Stock) -> Assessment:
        """The spec laid out once more with the purchase in the bar."""
        some = tuple(
            before.widened(each, self._bought_choices(before, each, bought.ingredient))
            for each in before.numbers
        )
        supply = self.sourcing.supply.pools_with((bought,), thresholds(before.spec))
        return replace(before, choices=some, supply=supply)

    def _bought_choices(
        self, before: Assessment, number: int, key: str
    ) -> tuple[DerivationWays, ...]:
        bought = self.bought.of(before.wants[number]).get(key, ())
        limits, supply = thresholds(before.spec), self.sourcing.supply
        return choices(
            before.lines[number], derivations=bought, limits=limits, supply=supply, tree=self.tree
        )


def _to_be_helped(failing: Assessment) -> Sequence[int]:
    """The numbers of the lines that fail by themselves, else of all."""
    return failing.short_alone or failing.numbers


def _takes_making(way: Derivation, key: str) -> bool:
    return key in way.draws and bool(way.made)


def _is_made(way: Derivation) -> bool:
    """Whether it is the thing itself, made here, and nothing stands in for any of it."""
    return len(way.steps) == len(way.made) == 1 and not way.stand_ins
