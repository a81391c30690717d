"""The log of a shoot while it is being written: what is typed, and what each bottle shows."""

from __future__ import annotations

from dataclasses import dataclass, replace

from barkeep.domain.amounts import parse_amount
from barkeep.domain.containers import container_of
from barkeep.domain.inventory import Bottle
from barkeep.domain.level_words import quantity, with_doubt
from barkeep.domain.levels import MeasuredLevel, parse_level
from barkeep.domain.measures import to_quantity
from barkeep.domain.reconciling import Comparison, difference
from barkeep.domain.shoot_log import ExpectedBottle, LogSheet, as_planned, expected_after
from barkeep.domain.shoots import Shoot, without_spec
from barkeep.domain.snapshot import Snapshot
from barkeep.errors import AmountError


@dataclass(frozen=True)
class LogRow:
    """One bottle of the log."""

    expected: ExpectedBottle
    counted: MeasuredLevel | None

    @property
    def bottle(self) -> Bottle:
        """The bottle itself."""
        return self.expected.bottle

    @property
    def compared(self) -> Comparison | None:
        """Counted beside expected; None where it was not counted."""
        if self.counted is None:
            return None
        each = self.expected
        return Comparison(
            each.expected, each.expected_sigma, self.counted.amount, self.counted.sigma
        )

    @property
    def texts(self) -> tuple[str, ...]:
        """Bottle, before, poured, spilled, expected, counted, difference."""
        unit, each = self.bottle.product.unit, self.expected
        compared = self.compared
        return (
            self.bottle.product.title,
            quantity(self.bottle.level.amount, unit),
            quantity(each.poured, unit) if each.poured else "",
            quantity(each.spilled, unit) if each.spilled else "",
            with_doubt(each.expected, each.expected_sigma, unit),
            quantity(self.counted.amount, unit) if self.counted else "",
            difference(compared, unit) if compared else "",
        )


class LogDraft:
    """What the user has said so far; nothing of it is written yet."""

    def __init__(self, shoot: Shoot, snapshot: Snapshot) -> None:
        self._shoot = replace(shoot, state="filmed")
        self._snapshot = snapshot
        self._others: set[int] = set()
        self.sheet: LogSheet = as_planned(shoot)
        self._leave_out_removed()

    def rows(self) -> tuple[LogRow, ...]:
        """Every bottle the shoot bears on, and those taken in besides, in shelf order."""
        found = expected_after(self._shoot, self._snapshot, self.sheet)
        shown = {each.bottle.id for each in found}
        others = tuple(
            ExpectedBottle(each, 0.0, 0.0)
            for each in self._snapshot.bottles
            if each.id in self._others - shown
        )
        return tuple(
            LogRow(each, self.sheet.counted.get(each.bottle.id)) for each in (*found, *others)
        )

    def make(self, number: int, count: int) -> None:
        """Say how many serves of a drink were really made."""
        made = list(self.sheet.made)
        made[number] = count
        self.sheet = replace(self.sheet, made=tuple(made))

    def take_in(self, bottle_id: int) -> None:
        """Show a bottle that no spec names."""
        self._others.add(bottle_id)

    def spill(self, bottle_id: int, text: str) -> None:
        """Say what was spilled of a bottle; nothing, for an empty text. Raises `AmountError`."""
        spilled = {key: each for key, each in self.sheet.spilled.items() if key != bottle_id}
        if text.strip():
            bottle = self._bottle(bottle_id)
            written = text if text.strip()[-1].isalpha() else f"{text} {bottle.product.unit}"
            units = self._snapshot.settings.units
            read = parse_amount(written)
            if read.high is not None:
                raise AmountError(text, "write one amount, such as 20 ml")
            amount = to_quantity(read, bottle.product.unit, units)
            if amount:
                spilled[bottle_id] = amount
        self.sheet = replace(self.sheet, spilled=spilled)

    def count(self, bottle_id: int, text: str) -> None:
        """Count a bottle by any of the four means; not at all, for an empty text.

        Raises `LevelError` or another `UserError`.
        """
        counted = {key: each for key, each in self.sheet.counted.items() if key != bottle_id}
        if text.strip():
            snapshot, bottle = self._snapshot, self._bottle(bottle_id)
            container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
            counted[bottle_id] = parse_level(text, container, snapshot.settings.units)
        self.sheet = replace(self.sheet, counted=counted)

    def in_words(self) -> str:
        """What would be written, in one sentence."""
        rows = self.rows()
        counted = len(self.sheet.counted)
        flagged = [row for row in rows if row.compared and row.compared.told_apart]
        said = f"{_bottles(len(rows))}: {counted} counted, {len(rows) - counted} as expected."
        if flagged:
            said += f" {_bottles(len(flagged))} beyond the doubt."
        gone = without_spec(self._shoot, self._snapshot)
        if gone:
            said += f" The spec of {' and '.join(gone)} was removed: its pours are not known."
        return said

    def _bottle(self, bottle_id: int) -> Bottle:
        return next(each for each in self._snapshot.bottles if each.id == bottle_id)

    def _leave_out_removed(self) -> None:
        gone = without_spec(self._shoot, self._snapshot)
        for number, drink in enumerate(self._shoot.drinks):
            if drink.name in gone:
                self.make(number, 0)


def _bottles(count: int) -> str:
    return "1 bottle" if count == 1 else f"{count} bottles"
