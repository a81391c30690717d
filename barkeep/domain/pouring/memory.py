"""What the last answer settled, kept where a change to the bar cannot have touched it.

A question over hundreds of specs is asked again after every pour. What is
settled for a spec depends on its own lines and on the bottles of what those
lines can reach in the substitution graph, and on nothing else; so whatever
reaches no changed bottle still holds, and so does what only asks whether there
is enough, where there was enough before and is now. With an empty memory the answers are
the same, only slower.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, TypeVar, cast

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec

Item = TypeVar("Item", bound=Hashable)
Value = TypeVar("Value")

_ROUNDING = 1e-6
"""What a sum of amounts may be off by, as a share of it, and far more than it ever is."""


@dataclass(slots=True)
class _Settled:
    snapshot: Snapshot
    values: dict[Any, Any]


@dataclass(slots=True)
class Memory:
    """To be kept by whoever asks the same question again; for one thread at a time."""

    _settled: dict[Hashable, _Settled] = field(default_factory=dict)
    _made: dict[Hashable, tuple[tuple[object, ...], object]] = field(default_factory=dict)
    _answered: dict[Hashable, tuple[Snapshot, object]] = field(default_factory=dict)
    _reached: _Reached | None = None
    _step: _Step | None = None
    _wanted: BySpec[frozenset[str]] = field(default_factory=lambda: BySpec({}))
    """All that each spec's lines would take, for as long as it is the very same spec."""

    def once(self, what: Hashable, of: tuple[object, ...], make: Callable[[], Value]) -> Value:
        """What was made under this name last, where it was made of equal things; else made now."""
        known = self._made.get(what)
        if known is None or not _same(known[0], of):
            known = of, make()
            self._made[what] = known
        return cast(Value, known[1])

    def answer(self, question: Hashable, snapshot: Snapshot, make: Callable[[], Value]) -> Value:
        """The last answer to a question where it was of the very same picture; else made now."""
        known = self._answered.get(question)
        if known is None or known[0] is not snapshot:
            known = self._answered[question] = snapshot, make()
        return cast(Value, known[1])

    def recall(
        self,
        question: Hashable,
        snapshot: Snapshot,
        asks: Callable[[Item, Value], Iterable[str]],
        *,
        levels_matter: bool = True,
    ) -> dict[Item, Value]:
        """What still holds of the last time; the caller adds what it settles now.

        `asks` gives the ingredient keys an item with its value asks for. Where
        levels do not matter, only what came into the bar or left it counts as
        a change.
        """

        def is_touched_by(reached: _Reached) -> Callable[[Item, Value], bool]:
            return lambda item, value: any(map(reached, asks(item, value)))

        return self._recall(question, snapshot, is_touched_by, levels_matter=levels_matter)

    def _recall(
        self,
        question: Hashable,
        snapshot: Snapshot,
        is_touched_by: Callable[[_Reached], Callable[[Item, Value], bool]],
        *,
        levels_matter: bool,
    ) -> dict[Item, Value]:
        last = self._settled.get(question)
        if last is not None and last.snapshot is snapshot:
            return last.values
        values: dict[Item, Value] = {}
        step = self._step_between(last.snapshot, snapshot) if last is not None else None
        if last is not None and step is not None and step.is_in_one_world:
            values = last.values
            changed = step.changed if levels_matter else step.came_or_went
            if changed:
                values = values.copy()  # the last answer may still grow
                is_touched = is_touched_by(self._reached_by(step, changed))
                for item in [each for each, value in values.items() if is_touched(each, value)]:
                    del values[item]
        self._settled[question] = _Settled(snapshot, values)
        return values

    def _step_between(self, before: Snapshot, now: Snapshot) -> _Step:
        """From one picture to the next; several questions in turn are told of the same."""
        last = self._step
        if last is None or last.before is not before or last.now is not now:
            last = self._step = _Step(before, now)
        return last

    def _reached_by(self, step: _Step, changed: frozenset[str]) -> _Reached:
        """What could take a key that changed; told as a step is."""
        last = self._reached
        if last is None or last.step is not step or last.changed != changed:
            last = self._reached = _Reached(step, changed, self._wanted)
        return last

    def by_spec(
        self,
        question: Hashable,
        snapshot: Snapshot,
        *,
        levels_matter: bool = True,
        drawn: Callable[[Any], Mapping[str, float] | None] | None = None,
        serves: int = 1,
    ) -> BySpec[Any]:
        """What still holds of the last time for specs, which ask for all that their lines take.

        `drawn` is for what depends on whether there is enough for so many serves, and on no
        amount beyond that: by what was settled, the most of each key that a serve takes; None
        where levels bear on more. Where nothing came into the bar or left it, a level bears only
        on a spec that less than that was there for, before or now.
        """

        def is_touched_by(reached: _Reached) -> Callable[[str, tuple[Spec, Any]], bool]:
            if drawn is None or reached.step.came_or_went:
                return lambda _name, settled: reached.by(settled[0])
            takes, enough_for = drawn, reached.enough_for(serves)

            def is_touched(_name: str, settled: tuple[Spec, Any]) -> bool:
                taken = takes(settled[1])
                if taken is None:
                    return reached.by(settled[0])
                return any(taken.get(key, 0.0) > enough for key, enough in enough_for)

            return is_touched

        known: dict[str, tuple[Spec, Any]] = self._recall(
            question, snapshot, is_touched_by, levels_matter=levels_matter
        )
        return BySpec(known)


@dataclass(frozen=True)
class _Step:
    """What is another thing in one picture of the bar than in the one before."""

    before: Snapshot
    now: Snapshot

    @cached_property
    def is_in_one_world(self) -> bool:
        """Whether all is the same but for the bottles, the specs and what stands around them."""
        return _same_world(self.before, self.now)

    @cached_property
    def came_or_went(self) -> frozenset[str]:
        """The keys of what can be used in only one of both."""
        return self.before.owned ^ self.now.owned

    @cached_property
    def changed(self) -> frozenset[str]:
        """These, and the keys of whatever was counted, poured or bought."""
        return self.came_or_went | _changed_keys(self.before, self.now)

    def least(self, key: str) -> float:
        """How much of a key there is in the picture that has less of it, in its unit."""
        both = (self.before.usable, self.now.usable)
        return min(sum(each.level.amount for each in usable.get(key, ())) for usable in both)


@dataclass(frozen=True)
class _Reached:
    """Whether any way to meet a key could take one of those that changed."""

    step: _Step
    changed: frozenset[str]
    _wanted: BySpec[frozenset[str]]
    _known: dict[str, bool] = field(default_factory=dict)
    _specs: BySpec[bool] = field(default_factory=lambda: BySpec({}))

    def by(self, spec: Spec) -> bool:
        """The same of whatever any line of a spec would take."""
        return self._specs.of(spec, lambda each: any(map(self, self._wanted.of(each, _wanted_by))))

    def enough_for(self, serves: int) -> Sequence[tuple[str, float]]:
        """Each key that changed, and how much of it a serve may take where it never is too low."""
        times = serves * (1.0 + _ROUNDING)
        return [(key, self.step.least(key) / times) for key in self.changed]

    def __call__(self, key: str) -> bool:
        if key not in self._known:
            reach = self.step.now.knowledge.graph.reach(key)
            self._known[key] = not reach.isdisjoint(self.changed)
        return self._known[key]


def _wanted_by(spec: Spec) -> frozenset[str]:
    return spec.wanted


def _same(before: tuple[object, ...], now: tuple[object, ...]) -> bool:
    return all(one is other or one == other for one, other in zip(before, now, strict=True))


def _same_world(before: Snapshot, now: Snapshot) -> bool:
    return (
        before.knowledge is now.knowledge
        and before.on == now.on
        and before.always_there == now.always_there
        and before.settings.house == now.settings.house
        and before.settings.keeps == now.settings.keeps
    )


def _changed_keys(before: Snapshot, now: Snapshot) -> frozenset[str]:
    return _differing(before.usable, now.usable) | _differing(before.past, now.past)


def _differing(
    before: Mapping[str, tuple[Bottle, ...]], now: Mapping[str, tuple[Bottle, ...]]
) -> frozenset[str]:
    keys = before.keys() | now.keys()
    return frozenset(key for key in keys if before.get(key) != now.get(key))
