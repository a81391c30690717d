"""One spec laid out against what there is: which lines are met, together and alone."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from itertools import chain
from math import inf

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.derivations import Derivation, Want
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.runs import Run, Serving, added, runs_of
from barkeep.domain.pouring.serves import SLACK, Serves, Way, allows, no_more_than, whole_serves
from barkeep.domain.pouring.sourcing import (
    DerivationWays,
    Sourcing,
    Within,
    choices,
    need,
    thresholds,
)
from barkeep.domain.pouring.supply import Pool
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Line, Spec


@dataclass(frozen=True, slots=True)
class LineAnswer:
    """How one line is met, or why it is not.

    `ingredient` is the key of what goes in, None where nothing does; `bottle`
    is the one to pour from, None for what is made here or always there.
    `dasher` says how many dashes to pour where the bottle's are not the
    bar's; `why` says it too. `asks` says what the line states and the bottle's
    label does not. `needed` is a garnish that gives the drink its name.
    """

    line: Line
    ingredient: str | None
    bottle: Bottle | None
    closeness: float
    ratio: float
    why: str
    derivation: Derivation | None = None
    dasher: str = ""
    asks: str = ""
    needed: bool = False

    @property
    def met(self) -> bool:
        """Whether the bar can meet it."""
        return self.ingredient is not None

    @property
    def required(self) -> bool:
        """Whether the drink cannot be made without it."""
        return self.line.required or self.needed


@dataclass(frozen=True)
class Assessment:
    """A spec's required lines with the choices for each, for so many serves.

    `wants` are for each line what it asks for, any one of which will do.
    """

    spec: Spec
    serves: int
    lines: tuple[Line, ...]
    wants: tuple[tuple[Want, ...], ...]
    choices: tuple[tuple[DerivationWays, ...], ...]
    supply: Mapping[Pool, float]

    @property
    def numbers(self) -> range:
        """The numbers of the required lines."""
        return range(len(self.lines))

    def most(self, *, exact: bool = False) -> Serves:
        """The most whole serves of all lines together."""
        return whole_serves(self._ways(self.numbers, exact), self.supply)

    def enough(self, only: Iterable[int] | None = None, *, exact: bool = False) -> bool:
        """Whether the lines numbered in `only` (all by default) allow the serves asked for."""
        numbers = self.numbers if only is None else only
        return allows(self._ways(numbers, exact), self.supply, self.serves)

    def for_serves(self, serves: int) -> Assessment:
        """The same for so many serves."""
        return self if serves == self.serves else replace(self, serves=serves)

    @cached_property
    def fails(self) -> bool:
        """Whether all lines together do not allow the serves asked for."""
        return not self.enough()

    @cached_property
    def short_alone(self) -> tuple[int, ...]:
        """The numbers of the lines that cannot be met even alone."""
        return tuple(each for each in self.numbers if not self.enough([each]))

    @cached_property
    def exact(self) -> bool:
        """Whether all lines together allow the serves asked for without a stand-in."""
        return self.enough(exact=True)

    @cached_property
    def short_lines(self) -> tuple[int, ...]:
        """The numbers of the lines that keep the drink from being made.

        First every line that cannot be met even alone; then, where the rest
        cannot be poured together, the first line whose absence lets them.
        """
        if self.exact or not self.fails:
            return ()
        short = list(self.short_alone)
        kept = [each for each in self.numbers if each not in short]
        while kept and not self.enough(kept):
            dropped = next((each for each in kept if self._enough_without(kept, each)), kept[0])
            short.append(dropped)
            kept.remove(dropped)
        return tuple(sorted(short))

    def chosen(self, numbers: Sequence[int], *, exact: bool = False) -> tuple[Derivation, ...]:
        """One derivation for each of those lines, the closest that leave the rest enough.

        Where a line can only be poured from several together, its closest.
        """
        allowed = [self._allowed(each, exact) for each in numbers]
        firsts = [some[:1] for some in allowed]
        if self._pour_together(firsts):
            allowed = firsts
        else:
            for place, some in enumerate(allowed):
                for choice in some:
                    trial = [*allowed[:place], [choice], *allowed[place + 1 :]]
                    if self._pour_together(trial):
                        allowed = trial
                        break
        return tuple(some[0].derivation for some in allowed)

    def serving(self, first: tuple[Derivation, ...], *, exact: bool) -> Serving:
        """All the serves there are, each line first in this way and then in its others in order.

        Where these ways together give no whole serve, what can be poured that is as
        good goes first; and where nothing is, what all bottles make together.
        """
        runs = self._runs(first)
        if not runs or (exact and not all(way.exact for way in runs[0].ways)):
            together = self.most(exact=exact)
            return self._with_rests(Serving(first, together), together.whole)
        whole = inf if runs[0].serves is None else float(runs[0].serves)
        found = Serving(runs[0].ways, Serves(whole, runs[0].runs_out), runs[1:])
        return self._with_rests(found, added(runs))

    def _runs(self, first: tuple[Derivation, ...]) -> tuple[Run, ...]:
        def not_first(choice: DerivationWays) -> bool:
            return not any(choice.derivation is way for way in first)

        return runs_of([sorted(some, key=not_first) for some in self.choices], self.supply)

    def _with_rests(self, found: Serving, counted: int | None) -> Serving:
        """With the serves that are neither counted yet nor poured from one bottle a line."""
        ways = self._ways(self.numbers, exact=False)
        if counted is None or no_more_than(ways, self.supply) < counted + 1 - SLACK:
            return found
        most = self.most().whole
        if most is None or most <= counted:
            return found
        whole = self.most(exact=True).whole
        if whole is None or whole >= most:
            return replace(found, rests=most - counted)
        farthest = min(each.derivation.closeness for some in self.choices for each in some)
        return replace(found, rests=most - counted, rests_closeness=farthest)

    def widened(self, number: int, more: Iterable[DerivationWays]) -> tuple[DerivationWays, ...]:
        """A line's choices with more of them, in the order they are offered."""
        both = (*self.choices[number], *more)
        return tuple(sorted(both, key=lambda choice: choice.derivation.rank))

    def _enough_without(self, kept: list[int], number: int) -> bool:
        return self.enough([each for each in kept if each != number])

    def _pour_together(self, some: Sequence[Sequence[DerivationWays]]) -> bool:
        lines = [[way for choice in each for way in choice.ways] for each in some]
        return allows(lines, self.supply, self.serves)

    def _allowed(self, number: int, exact: bool) -> list[DerivationWays]:
        return [each for each in self.choices[number] if each.derivation.exact or not exact]

    def _ways(self, numbers: Iterable[int], exact: bool) -> list[list[Way]]:
        return [
            [way for choice in self._allowed(each, exact) for way in choice.ways]
            for each in numbers
        ]


def laid_out_once(snapshot: Snapshot, within: Within, memory: Memory) -> BySpec[Assessment]:
    """The specs that any question laid out for one serve against this very picture."""
    return memory.answer(("laid out", within), snapshot, lambda: BySpec({}))


def most_drawn(
    laid_out: Assessment,
    tree: FamilyTree,
    more: Callable[[int], Iterable[Derivation]] = lambda _number: (),
) -> Mapping[str, float] | None:
    """How much of each key a serve takes at most, in its unit.

    A line that is poured in several ways takes no more than in the one that takes most. `more`
    gives further ways to meet the line of a number. None for a spec that asks for a least
    strength: which bottles do is a matter of levels as well.
    """
    if thresholds(laid_out.spec):
        return None
    drawn: dict[str, float] = {}
    for number in laid_out.numbers:
        rates: dict[str, float] = {}
        owned = (choice.derivation for choice in laid_out.choices[number])
        for way in chain(owned, more(number)):
            for key, rate in way.draws.items():
                rates[key] = max(rate, rates.get(key, 0.0))
        amount = need(laid_out.lines[number], tree)
        for key, rate in rates.items():
            drawn[key] = drawn.get(key, 0.0) + amount * rate
    return drawn


def assess(spec: Spec, sourcing: Sourcing, serves: int = 1) -> Assessment:
    """Lay a spec's required lines out against the supply."""
    limits = thresholds(spec)
    supply, tree = sourcing.supply, sourcing.tree
    lines = spec.required_lines
    wants = tuple(sourcing.wants(line, spec) for line in lines)
    some = tuple(
        choices(
            line,
            derivations=sourcing.ways_as_poured(each, spec),
            limits=limits,
            supply=supply,
            tree=tree,
        )
        for line, each in zip(lines, wants, strict=True)
    )
    return Assessment(
        spec=spec,
        serves=serves,
        lines=lines,
        wants=wants,
        choices=some,
        supply=supply.pools(limits),
    )
