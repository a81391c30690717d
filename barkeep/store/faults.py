"""What is wrong with a bar, a place and a sentence each."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that is wrong with a bar: where, what stands there, and what ought to.

    `row` names the row by its key; `column` is empty where the whole row is
    meant, `row` too where the whole table is, and `table` where the file is.
    `expected` completes *it must be*; where it is empty `found` says it all.
    What is `foreign` can be as it is, but barkeep did not write it so.
    """

    table: str
    row: str
    column: str
    found: str
    expected: str = ""
    foreign: bool = False

    def __str__(self) -> str:
        place = ", ".join(
            each for each in (f"{self.table} {self.row}".strip(), self.column) if each
        )
        if not self.expected:
            said = tr(self.found)
            return f"{place}: {said}" if place else said
        return tr(
            "{place}: {found} stands there, and it must be {expected}",
            place=place,
            found=self.found,
            expected=tr(self.expected),
        )
