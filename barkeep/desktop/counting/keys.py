"""What a key means where bottles are counted: along the shelf, and in the log of a shoot.

A key means what it says, however soon after another it comes.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from barkeep.translation import tr, tr_noop

FULL = 10


@dataclass(frozen=True, slots=True)
class Tenths:
    """So many tenths of the bottle are left; on to the next."""

    many: int


@dataclass(frozen=True, slots=True)
class AsExpected:
    """As much is left as the ledger says; on to the next."""


@dataclass(frozen=True, slots=True)
class GoBack:
    """Back to the bottle before, whose count is taken back."""


@dataclass(frozen=True, slots=True)
class Exactly:
    """An exact amount is typed, which begins so; Enter takes it."""

    begins: str = ""


Meaning = Tenths | AsExpected | GoBack | Exactly


MEANINGS: Mapping[str, Meaning] = {
    **{str(many): Tenths(many) for many in range(10)},
    "f": Tenths(FULL),
    "e": Tenths(0),
    "Space": AsExpected(),
    "=": AsExpected(),
    "Backspace": GoBack(),
    "Enter": Exactly(),
    ".": Exactly("."),
    ",": Exactly(","),
}
"""What was typed in small letters, or the name of the key -> what it means."""


LEGEND: tuple[tuple[tuple[str, ...], str], ...] = (
    (("0", "–", "9"), tr_noop("tenths")),
    (("F",), tr_noop("full")),
    (("E",), tr_noop("empty")),
    ((tr_noop("Space"),), tr_noop("as expected")),
    ((tr_noop("Backspace"),), tr_noop("back, not counted")),
    ((tr_noop("Enter"),), tr_noop("exactly: 315 ml, 812 g on a scale, 11.5 cm high")),
    ((".",), tr_noop("a share: .45")),
)
"""Key caps and what they do; a dash between caps is no key."""


def meaning_of(typed: str) -> Meaning | None:
    """What a key means; None for one that means nothing here."""
    return MEANINGS.get(typed)


@dataclass(frozen=True, slots=True)
class InHand:
    """The bottle one is at; `counted` where it is the last, with no other to go on to."""

    row: int
    counted: bool = False


def gone_on(row: int, last: int) -> InHand:
    """The bottle to be counted after this one."""
    return InHand(row + 1) if row < last else InHand(last, counted=True)


def gone_back(held: InHand, row: int) -> int | None:
    """Whose count is taken back from `row`; None before the first bottle."""
    if held == InHand(row, counted=True):
        return row
    return row - 1 if row > 0 else None


def no_key(typed: str) -> str:
    """What to do instead of typing a letter that means nothing here."""
    return tr("{typed} is no key here; for an exact amount, Enter first, then 315 ml", typed=typed)
