"""One evening's book: every drink's verdict at once, and what is poured for one once it is asked.

Verdicts of the whole book are quick; what is poured, how often, why and what is to be minded
takes as long for ten drinks as verdicts do for thousands. So whoever shows a list asks for an
evening, and then for the drinks that someone looks at.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property, partial
from threading import Lock
from typing import TYPE_CHECKING

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Sourcing, Within, sourcing_for
from barkeep.domain.pouring.verdict import Verdict, Verdicts, is_makeable
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec

if TYPE_CHECKING:
    from barkeep.domain.pouring.assessment import Assessment
    from barkeep.domain.pouring.verdicts import Drink

# What works a drink out is imported where one is: a list whose verdicts are kept shows without.

FEW = 600
"""Verdicts of no more specs than these are found one by one before the arrays are loaded."""


@dataclass(frozen=True, slots=True)
class Placed:
    """One spec's verdict; `place` counts from the best on, as all drinks are ordered."""

    spec: Spec
    verdict: Verdict
    place: int

    @property
    def makeable(self) -> bool:
        """Whether it can be made tonight at all."""
        return is_makeable(self.verdict)


@dataclass(frozen=True, eq=False)
class Evening:
    """What can be made of one snapshot for so many serves, best verdict first.

    Drinks may be asked for by several threads.
    """

    snapshot: Snapshot
    placed: tuple[Placed, ...]
    _sourcing: Sourcing = field(repr=False)
    _laid_out: Callable[[Spec], Assessment] = field(repr=False)
    _drinks: BySpec[Drink] = field(repr=False)
    _one_at_a_time: Lock = field(default_factory=Lock, repr=False)

    @cached_property
    def by_name(self) -> Mapping[str, Placed]:
        """Every spec's verdict by its name."""
        return {each.spec.name: each for each in self.placed}

    def drink(self, spec: Spec) -> Drink:
        """All that is poured for one spec of the book, worked out where it is not known yet."""
        from barkeep.domain.pouring.verdicts import drink_of

        with self._one_at_a_time:
            return self._drinks.of(
                spec, lambda each: drink_of(self._laid_out(each), self.snapshot, self._sourcing)
            )

    def known(self, spec: Spec) -> Drink | None:
        """All that is poured for one spec, where that has been worked out; None where not."""
        return self._drinks.known(spec)


def evening_of(
    snapshot: Snapshot,
    within: Within = "close",
    serves: int = 1,
    memory: Memory | None = None,
    *,
    found: Verdicts | None = None,
) -> Evening:
    """The evening of a bar; takes what `tonight` takes, and says what that says.

    `found` are its verdicts, where they are known.
    """
    memory = memory or Memory()
    found = found or verdicts_of(snapshot, within, serves, memory)
    sourcing = sourcing_for(snapshot, within, memory)
    drinks: BySpec[Drink] = memory.by_spec(("tonight", within, serves), snapshot)

    def laid_out(spec: Spec) -> Assessment:
        from barkeep.domain.pouring.assessment import assess

        return assess(spec, sourcing, serves)

    of, place = (snapshot.all_specs, found), partial(_placed, snapshot.all_specs, found)
    placed = memory.once(("placed", within, serves), of, place)
    return Evening(snapshot, placed, _sourcing=sourcing, _laid_out=laid_out, _drinks=drinks)


def verdicts_of(snapshot: Snapshot, within: Within, serves: int, memory: Memory) -> Verdicts:
    """The verdicts of an evening, worked out; who has them kept loads nothing for it."""
    from barkeep.domain.pouring.verdicts import verdicts

    return verdicts(snapshot, within, serves, memory)


def evening_asked_once(snapshot: Snapshot, within: Within = "close", serves: int = 1) -> Evening:
    """The same for who asks no second time."""
    from barkeep.domain.pouring.assessment import assess
    from barkeep.domain.pouring.verdicts import verdicts_one_by_one

    if len(snapshot.all_specs) > FEW:
        return evening_of(snapshot, within, serves)
    sourcing = sourcing_for(snapshot, within)
    known: BySpec[Assessment] = BySpec({})

    def laid_out(spec: Spec) -> Assessment:
        return known.of(spec, lambda each: assess(each, sourcing, serves))

    placed = _placed(snapshot.all_specs, verdicts_one_by_one(snapshot.all_specs, laid_out))
    return Evening(snapshot, placed, _sourcing=sourcing, _laid_out=laid_out, _drinks=BySpec({}))


def _placed(specs: Sequence[Spec], found: Verdicts) -> tuple[Placed, ...]:
    return tuple(
        Placed(specs[number], found.of[number], place) for place, number in enumerate(found.order)
    )
