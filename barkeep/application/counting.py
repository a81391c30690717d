"""Counting: measured levels into the ledger, and how each compares with what was expected."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from barkeep.application.bottle_checks import bottle_there, count_one, refuse_repeats
from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.domain.inventory import Bottle
from barkeep.domain.reconciling import Comparison, difference, sentence
from barkeep.domain.snapshot import Snapshot

if TYPE_CHECKING:
    from barkeep.domain.levels import MeasuredLevel


@dataclass(frozen=True, slots=True)
class Counted:
    """One bottle of a count, as it is now, and the count beside what was expected before it."""

    bottle: Bottle
    compared: Comparison

    @property
    def expected(self) -> float:
        """What the ledger said, in the bottle's unit."""
        return self.compared.expected

    @property
    def counted(self) -> float:
        """What was found, in the bottle's unit."""
        return self.compared.counted

    @property
    def variance(self) -> float:
        """What is gone without a pour, in the bottle's unit; below nothing, what is too much."""
        return self.compared.variance

    @property
    def told_apart(self) -> bool:
        """Whether the variance is more than the doubt of both levels explains."""
        return self.compared.told_apart

    @property
    def verdict(self) -> str:
        """*45 ml less than expected*, or *as expected* within the doubt."""
        return difference(self.compared, self.bottle.product.unit)

    @property
    def sentence(self) -> str:
        """What was found, what was expected, and whether the two can be told apart."""
        return sentence(self.compared, self.bottle.product.unit)


def count_bottles(
    session: Session, levels: Mapping[int, MeasuredLevel] | Iterable[tuple[int, MeasuredLevel]]
) -> Done[tuple[Counted, ...]]:
    """Write down measured levels, all of them or none, by bottle id.

    Raises `LevelAboveSize`, `NegativeAmount`, `UnknownName`, and
    `InvalidField` for a bottle counted twice or no bottle at all.
    """
    pairs = tuple(levels.items() if isinstance(levels, Mapping) else levels)
    refuse_repeats([bottle_id for bottle_id, _level in pairs])
    before: dict[int, Bottle] = {}
    with session.writing() as work:
        for bottle_id, measured in pairs:
            bottle = before[bottle_id] = bottle_there(work, bottle_id)
            work.label = f"Count {bottle.product.title}"
            count_one(work, bottle, measured)
        if len(pairs) > 1:
            work.label = f"Count {len(pairs)} bottles"
    measured_by_id = dict(pairs)
    return session.finished(work, lambda bar: _counted(bar, before, measured_by_id))


def _counted(
    bar: Snapshot, before: Mapping[int, Bottle], levels: Mapping[int, MeasuredLevel]
) -> tuple[Counted, ...]:
    now = {each.id: each for each in bar.bottles}
    return tuple(
        Counted(
            now[bottle_id],
            Comparison(
                bottle.level.amount,
                bottle.level.expected_sigma,
                now[bottle_id].level.amount,
                levels[bottle_id].sigma,
            ),
        )
        for bottle_id, bottle in before.items()
    )
