"""A bottle's level step by step, with how sure it was after each entry of its ledger."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import Entry, levels_after
from barkeep.domain.bottles.level_words import Comparison, difference, in_doubt, with_doubt
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class LevelStep:
    """The level around one entry, in the bottle's unit, each with its one-sigma doubt."""

    entry: Entry
    before: float
    before_sigma: float
    after: float
    after_sigma: float

    @property
    def at(self) -> datetime:
        """When it was written down."""
        return self.entry.at

    @property
    def is_count(self) -> bool:
        """Whether the level was measured and not reckoned."""
        return self.entry.kind == "count"

    @property
    def is_refill(self) -> bool:
        """Whether something came in."""
        return self.entry.kind == "receive" or (self.after > self.before and not self.is_count)

    @property
    def compared(self) -> Comparison:
        """What was expected beside what is there now."""
        return Comparison(self.before, self.before_sigma, self.after, self.after_sigma)

    def leaves(self, unit: Unit) -> str:
        """The level after it; for a count how sure it is, and how it compares with the expected."""
        if not self.is_count:
            return tr("{amount} left", amount=with_doubt(self.after, self.after_sigma, unit))
        parts = (in_doubt(self.after_sigma, unit), difference(self.compared, unit))
        return ", ".join(filter(None, parts))


def level_steps(entries: Sequence[Entry], unit: Unit) -> tuple[LevelStep, ...]:
    """A step for each active entry, oldest first."""
    found: list[LevelStep] = []
    before = before_sigma = 0.0
    for entry, level in levels_after(entries, unit):
        found.append(
            LevelStep(
                entry=entry,
                before=before,
                before_sigma=before_sigma,
                after=level.amount,
                after_sigma=level.expected_sigma,
            )
        )
        before, before_sigma = level.amount, level.expected_sigma
    return tuple(found)
