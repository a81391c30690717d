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

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from operator import itemgetter
from typing import TYPE_CHECKING, TypeAlias

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.purchases import Candidate, Form, Purchases
from barkeep.domain.ingredients.derivations import Derivation, Want
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import Assessment, asked_by_want, assess
from barkeep.domain.pouring.made_first import made_first
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import (
    DerivationWays,
    Sourcing,
    Within,
    choices,
    thresholds,
)
from barkeep.domain.pouring.supply import Stock, purchase
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list

if TYPE_CHECKING:
    from barkeep.domain.buying.at_once import BoughtWays, Turning
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
    from barkeep.domain.buying.at_once import BoughtWays, turning  # numpy loads slowly
    from barkeep.domain.pouring.whole_book import decide

    decided, sourcing = decide(snapshot, within, 1, memory)
    ways: WaysBuying = memory.recall(
        ("buying", within), snapshot, asked_by_want, levels_matter=False
    )
    bought, found = BoughtWays(sourcing, ways), decided.drawn
    sold = [key for key in sourcing.tree if may_buy(key, sourcing)]
    turned = memory.once(("turning", within), (found,), lambda: turning(found, bought, sold))
    market = _Market(
        snapshot,
        sourcing,
        decided,
        bought=bought,
        turning=turned,
        _level=memory.by_spec(("short of much", within), snapshot),
        _tried=memory.by_spec(("tried one by one", within), snapshot),
        _absent=memory.by_spec(("short of kinds", within), snapshot, levels_matter=False),
        _here=memory.once(("made here", within), (found,), dict),
    )
    forms = tuple(map(market.weighed, sold))
    worth = tuple(each for each in forms if each.unlocks or not market.has(each))
    there = (snapshot.products, snapshot.owned, snapshot.always_there, snapshot.past)
    of = (snapshot.knowledge, *there, worth)
    return memory.once(("rows", within), of, lambda: Purchases(snapshot).rows(worth))


def may_buy(key: str, sourcing: Sourcing) -> bool:
    """Whether a shop sells it and it is not simply there."""
    return not sourcing.tree[key].family and key not in sourcing.supply.always


def unweighed(snapshot: Snapshot) -> tuple[str, ...]:
    """Each drink that no purchase is said to turn, and why, in a sentence."""
    return tuple(
        f"{spec.name} is counted for no bottle until its questions are settled: "
        f"{spoken_list([each.named for each in spec.unsettled], 'and')}."
        for spec in snapshot.all_specs
        if spec.unsettled
    )


@dataclass(frozen=True)
class _Judged:
    """A spec as it stands now, whether it fails, and the lines that fail even alone."""

    laid_out: Assessment
    fails: bool
    alone: tuple[int, ...]

    @property
    def name(self) -> str:
        return self.laid_out.spec.name


def _judged(spec: Spec, sourcing: Sourcing) -> _Judged:
    """How a spec stands now."""
    laid_out = assess(spec, sourcing)
    fails = not laid_out.enough()
    return _Judged(laid_out, fails, laid_out.alone_short() if fails else ())


@dataclass(frozen=True, slots=True)
class _Turned:
    """A drink that a purchase turns, and what is said of it."""

    name: str
    exactly: bool
    lines: tuple[int, ...]
    makes: tuple[MadeFrom, ...]


@dataclass(frozen=True)
class _Market:
    """Everything one run of the question shares between candidates."""

    snapshot: Snapshot
    sourcing: Sourcing
    decided: Decided
    bought: BoughtWays
    turning: Turning
    _level: BySpec[_Judged]
    _tried: BySpec[Mapping[str, _Turned]]
    _absent: BySpec[_Judged]
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

    def weighed(self, key: str) -> Form:
        """What buying one ordinary bottle of it would do."""
        turned, near = self._turned.get(key, ()), self._brought_near.get(key, ())
        reasons = [(each.name, each.lines) for each in turned]
        if not turned:
            reasons = [(self._name(each), self._borne_on(each, key)) for each in near]
        return Form(
            ingredient=key,
            unlocks=tuple(each.name for each in turned),
            exactly=tuple(each.name for each in turned if each.exactly),
            nearest=tuple(map(self._name, near)),
            price=self.snapshot.price_of.get(key),
            owned=key in self.sourcing.supply.owned,
            reason=tuple(reasons),
            makes=tuple((each.name, each.makes) for each in turned if each.makes),
        )

    def _name(self, place: int) -> str:
        return self.decided.specs[place].name

    @cached_property
    def _turned(self) -> Mapping[str, list[_Turned]]:
        """Key -> the drinks that a purchase of it turns, as the book has them."""
        found: dict[str, list[tuple[int, _Turned]]] = {}
        for place, key, turned in (*self._turned_at_once(), *self._turned_one_by_one()):
            found.setdefault(key, []).append((place, turned))
        in_order = {key: sorted(some, key=itemgetter(0)) for key, some in found.items()}
        return {key: [turned for _place, turned in some] for key, some in in_order.items()}

    def _turned_at_once(self) -> Iterator[tuple[int, str, _Turned]]:
        """Of the drinks that arrays decide; where those leave it open each is looked at."""
        pairs = self.turning
        fits = pairs.fits(self.sourcing.supply.total).tolist()
        specs, keys = pairs.spec.tolist(), pairs.key.tolist()
        for each in pairs.counted(pairs.spec, self.decided).tolist():
            place, key = specs[each], pairs.keys[keys[each]]
            exactly, made = pairs.exactly[each], pairs.made[each]
            turned: _Turned | None
            if fits[each] and exactly is not None and made is not None:
                turned = _Turned(self._name(place), exactly, pairs.numbers[place], made)
            else:
                judged = self._absent.of(self.decided.specs[place], self._judged)
                turned = self._looked_at(judged, key)
            if turned is not None:
                yield place, key, turned

    def _turned_one_by_one(self) -> Iterator[tuple[int, str, _Turned]]:
        """Of the drinks that are looked at one by one."""
        for place, failing in self._failing.items():
            for key, turned in self._tried.of(failing.laid_out.spec, self._try).items():
                yield place, key, turned

    def _try(self, spec: Spec) -> Mapping[str, _Turned]:
        """What each purchase that might turn a drink does for it.

        It must bear on every line that fails alone; where none does, on any.
        """
        failing = self._level.of(spec, self._judged)
        lines = failing.alone or failing.laid_out.numbers
        bearing = [self._bearing_on(failing, each) for each in lines]
        keys = set.intersection(*bearing) if failing.alone else set().union(*bearing)
        sold = (key for key in keys if may_buy(key, self.sourcing))
        tried = ((key, self._looked_at(failing, key)) for key in sold)
        return {key: turned for key, turned in tried if turned is not None}

    def _looked_at(self, failing: _Judged, key: str) -> _Turned | None:
        """What really buying one does for a drink, None where it does not turn it."""
        after = self._after(failing, purchase(key, self.tree))
        if not after.enough():
            return None
        exactly, made = after.enough(exact=True), self._made_of(key, after)
        return _Turned(failing.name, exactly, self._lines_borne_on(failing, key), made)

    def _judged(self, spec: Spec) -> _Judged:
        return _judged(spec, self.sourcing)

    def _borne_on(self, place: int, key: str) -> tuple[int, ...]:
        """The numbers of the lines of a drink that a purchase bears on."""
        if place in self._failing:
            return self._lines_borne_on(self._failing[place], key)
        lines = self.turning.lines[place]
        return tuple(number for number, ask in lines if key in self.bought.of(ask))

    def _lines_borne_on(self, failing: _Judged, key: str) -> tuple[int, ...]:
        """The numbers of the lines that fail by themselves, else of any, that a purchase helps."""
        lines = failing.alone or failing.laid_out.numbers
        return tuple(each for each in lines if key in self._bearing_on(failing, each))

    def _made_of(self, key: str, turned: Assessment) -> tuple[MadeFrom, ...]:
        """What has to be made of a purchase before a drink it turns."""
        if not any(_takes_making(each.derivation, key) for some in turned.choices for each in some):
            return ()
        ways = turned.chosen(turned.numbers, exact=turned.enough(exact=True))
        return made_first((way for way in ways if key in way.draws), self.tree)

    @cached_property
    def _failing(self) -> Mapping[int, _Judged]:
        """The specs that no array decides and that cannot be made, by their places."""
        judged = (
            (place, self._level.of(spec, self._judged))
            for place, spec in self.decided.undecided()
            if not spec.unsettled
        )
        return {place: each for place, each in judged if each.fails}

    @cached_property
    def _brought_near(self) -> Mapping[str, list[int]]:
        """Key -> the places of the failing drinks that a purchase of it leaves one short."""
        near: dict[str, list[int]] = {}
        pairs = self.turning
        counted = pairs.counted(pairs.near_spec, self.decided)
        specs, keys = pairs.near_spec[counted].tolist(), pairs.near_key[counted].tolist()
        for place, key in zip(specs, keys, strict=True):
            near.setdefault(pairs.keys[key], []).append(place)
        for place, failing in self._failing.items():
            for key in self._leaving_one_short(failing):
                near.setdefault(key, []).append(place)
        return {key: sorted(places) for key, places in near.items()}

    def _leaving_one_short(self, failing: _Judged) -> Iterator[str]:
        wants: dict[str, set[str]] = {}
        for number in failing.alone:
            wanted = failing.laid_out.lines[number].ingredient
            bearing = self._bearing_on(failing, number)
            wants[wanted] = wants[wanted] & bearing if wanted in wants else bearing
        for key in set().union(*wants.values()) if len(wants) > 1 else ():
            if sum(key not in bearing for bearing in wants.values()) == 1:
                yield key

    def _bearing_on(self, failing: _Judged, number: int) -> set[str]:
        """Keys of which a purchase could help a line: a new way to it, or more of an old one."""
        laid_out = failing.laid_out
        drawn = {key for each in laid_out.choices[number] for key in each.derivation.draws}
        return drawn | self.bought.of(laid_out.wants[number]).keys()

    def _after(self, judged: _Judged, bought: Stock) -> Assessment:
        """The spec laid out once more with the purchase in the bar."""
        before = judged.laid_out
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


def _takes_making(way: Derivation, key: str) -> bool:
    return key in way.draws and bool(way.made)


def _is_made(way: Derivation) -> bool:
    """Whether it is the thing itself, made here, and nothing stands in for any of it."""
    return len(way.steps) == len(way.made) == 1 and not way.stand_ins
