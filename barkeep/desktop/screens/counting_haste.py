"""A digit that was judged at once, and was only the first of an amount: *315* without Enter."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from time import monotonic

from barkeep.desktop.counting.rows import Typed

HASTE_S = 1.0
"""Nobody walks on to the next bottle and judges it in so little; a choice of barkeep."""


@dataclass(frozen=True, slots=True)
class JudgedDigit:
    """A digit taken for tenths of the bottle in `row`, and what was counted of it before."""

    row: int
    digit: str
    before: Typed | None


class Haste:
    """Remembers the last digit for a moment. `clock` is in seconds."""

    def __init__(self, clock: Callable[[], float] = monotonic) -> None:
        self.clock = clock
        self._judged: JudgedDigit | None = None
        self._at_s = 0.0
        self._next_row = -1

    def remember(self, judged: JudgedDigit, next_row: int) -> None:
        """A digit has been judged, and `next_row` is the present one since."""
        self._judged, self._at_s, self._next_row = judged, self.clock(), next_row

    def forget(self) -> None:
        """Something else has happened: the digit stays judged."""
        self._judged = None

    def taken_back(self, row: int) -> JudgedDigit | None:
        """The digit that what is typed now, in `row`, goes on from; None where it was meant."""
        judged = self._judged
        self.forget()
        if judged is None or row != self._next_row:
            return None
        return judged if self.clock() - self._at_s < HASTE_S else None
