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

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

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
    any_of,
    choices,
    thresholds,
)
from barkeep.domain.pouring.supply import Stock, purchase
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list

if TYPE_CHECKING:
    from barkeep.domain.pouring.whole_book import Decided


def next_bottle(
    snapshot: Snapshot, within: Within = "close", memory: Memory | None = None
) -> tuple[Candidate, ...]:
    """Every purchase worth naming, each once: bottles first, then what turns most.

    What can be made here from what is there is no purchase: *tonight* says to
    make it first. `memory` makes asking again after a small change quick; it
    changes no answer.
    """
    memory = memory or Memory()
    from barkeep.domain.pouring.whole_book import decide  # numpy loads slowly

    decided, sourcing = decide(snapshot, within, 1, memory)
    market = _Market(
        snapshot,
        sourcing,
        decided,
        memory.recall(("buying", within), snapshot, asked_by_want, levels_matter=False),
        _level=memory.by_spec(("short of much", within), snapshot),
        _absent=memory.by_spec(("short of kinds", within), snapshot, levels_matter=False),
    )
    found = (market.weighed(key) for key in market.tree if market.may_buy(key))
    worth = [each for each in found if each.unlocks or not market.has(each)]
    return Purchases(snapshot).rows(worth)


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


@dataclass(frozen=True)
class _Market:
    """Everything one run of the question shares between candidates."""

    snapshot: Snapshot
    sourcing: Sourcing
    decided: Decided
    _bought: dict[Want, Mapping[str, tuple[Derivation, ...]]]
    _level: BySpec[_Judged]
    _absent: BySpec[_Judged]

    @property
    def tree(self) -> FamilyTree:
        return self.sourcing.tree

    def may_buy(self, key: str) -> bool:
        """Whether a shop sells it and it is not simply there."""
        return not self.tree[key].family and key not in self.sourcing.supply.always

    def has(self, form: Form) -> bool:
        """Whether it is there, or can be made here from what is."""
        want = Want(form.ingredient, frozenset(), 1.0)
        return form.owned or any(map(_is_made, self.sourcing.derivations.of(want)))

    def weighed(self, key: str) -> Form:
        """What buying one ordinary bottle of it would do."""
        touched = self._touched.get(key, ())
        tried = [(each, self._after(each, purchase(key, self.tree))) for each in touched]
        turned = [(each, after) for each, after in tried if after.enough()]
        exactly = {each.name for each, after in turned if after.enough(exact=True)}
        unlocks = tuple(each.name for each, _after in turned)
        near = self._brought_near.get(key, ())
        reasons = [each for each, _after in turned] or near
        made = [(each.name, self._made_of(key, after)) for each, after in turned]
        return Form(
            ingredient=key,
            unlocks=unlocks,
            exactly=tuple(name for name in unlocks if name in exactly),
            nearest=tuple(each.name for each in near),
            price=self.snapshot.price_of.get(key),
            owned=key in self.sourcing.supply.owned,
            reason=tuple((each.name, self._lines_borne_on(each, key)) for each in reasons),
            makes=tuple((drink, recipes) for drink, recipes in made if recipes),
        )

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
    def _failing(self) -> tuple[_Judged, ...]:
        """The specs that cannot be made; of one that lacks a kind the levels decide nothing."""
        specs = (each for each in self.decided.not_makeable() if not each[0].unsettled)
        judged = (
            (self._absent if is_decided else self._level).of(
                spec, lambda each: _judged(each, self.sourcing)
            )
            for spec, is_decided in specs
        )
        return tuple(each for each in judged if each.fails)

    @cached_property
    def _touched(self) -> Mapping[str, list[_Judged]]:
        """Key -> the failing specs that one purchase of it might turn.

        It must bear on every line that fails alone; where none does, on any.
        """
        touched: dict[str, list[_Judged]] = {}
        for failing in self._failing:
            lines = failing.alone or failing.laid_out.numbers
            bearing = [self._bearing_on(failing, each) for each in lines]
            keys = set.intersection(*bearing) if failing.alone else set().union(*bearing)
            for key in keys:
                touched.setdefault(key, []).append(failing)
        return touched

    @cached_property
    def _brought_near(self) -> Mapping[str, list[_Judged]]:
        """Key -> the failing specs that a purchase of it leaves one short."""
        near: dict[str, list[_Judged]] = {}
        for failing in self._failing:
            wants: dict[str, set[str]] = {}
            for number in failing.alone:
                wanted = failing.laid_out.lines[number].ingredient
                bearing = self._bearing_on(failing, number)
                wants[wanted] = wants[wanted] & bearing if wanted in wants else bearing
            for key in set().union(*wants.values()) if len(wants) > 1 else ():
                if sum(key not in bearing for bearing in wants.values()) == 1:
                    near.setdefault(key, []).append(failing)
        return near

    def _bearing_on(self, failing: _Judged, number: int) -> set[str]:
        """Keys of which a purchase could help a line: a new way to it, or more of an old one."""
        laid_out = failing.laid_out
        drawn = {key for each in laid_out.choices[number] for key in each.derivation.draws}
        return drawn | self._ways_buying(laid_out, number).keys()

    def _ways_buying(
        self, laid_out: Assessment, number: int
    ) -> Mapping[str, tuple[Derivation, ...]]:
        """Key -> the ways to meet a line that take this one purchase."""
        wants = [self._ways_to_want(want) for want in laid_out.wants[number]]
        if len(wants) == 1:
            return wants[0]
        keys = dict.fromkeys(key for ways in wants for key in ways)
        return {key: any_of(ways.get(key, ()) for ways in wants) for key in keys}

    def _ways_to_want(self, want: Want) -> Mapping[str, tuple[Derivation, ...]]:
        if want not in self._bought:
            ways: dict[str, tuple[Derivation, ...]] = {}
            for each in self.sourcing.derivations.buying_one(want):
                if each.buying is not None:
                    ways[each.buying] = (*ways.get(each.buying, ()), each)
            self._bought[want] = ways
        return self._bought[want]

    def _after(self, judged: _Judged, bought: Stock) -> Assessment:
        """The spec laid out once more with the purchase in the bar."""
        before = judged.laid_out
        some = tuple(
            before.widened(each, self._bought_choices(before, each, bought.ingredient))
            for each in before.numbers
        )
        supply = self.sourcing.supply.pools_with(bought, thresholds(before.spec))
        return replace(before, choices=some, supply=supply)

    def _bought_choices(
        self, before: Assessment, number: int, key: str
    ) -> tuple[DerivationWays, ...]:
        bought = self._ways_buying(before, number).get(key, ())
        limits, supply = thresholds(before.spec), self.sourcing.supply
        return choices(
            before.lines[number], derivations=bought, limits=limits, supply=supply, tree=self.tree
        )


def _takes_making(way: Derivation, key: str) -> bool:
    return key in way.draws and bool(way.made)


def _is_made(way: Derivation) -> bool:
    """Whether it is the thing itself, made here, and nothing stands in for any of it."""
    return len(way.steps) == len(way.made) == 1 and not way.stand_ins
