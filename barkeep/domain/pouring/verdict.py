"""A verdict: how a drink stands tonight, what that is called, and how many stand so."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Literal, NamedTuple, get_args

from barkeep.translation import tr, tr_noop

Verdict = Literal["ready", "stand_in", "one_short", "short"]
VERDICTS: tuple[Verdict, ...] = get_args(Verdict)


def is_makeable(verdict: Verdict) -> bool:
    """Whether a drink of this verdict can be made at all."""
    return verdict in ("ready", "stand_in")


@dataclass(frozen=True, slots=True)
class VerdictWords:
    """What a verdict is called, what stands above all drinks of it, and what it means."""

    english: tuple[str, str, str]

    @property
    def name(self) -> str:
        """What it is called in a word or two."""
        return tr(self.english[0])

    @property
    def heading(self) -> str:
        """What stands above all drinks of it."""
        return tr(self.english[1])

    @property
    def meaning(self) -> str:
        """What it means, as a sentence without its full stop."""
        return tr(self.english[2])


VERDICT_WORDS: Mapping[Verdict, VerdictWords] = {
    "ready": VerdictWords((tr_noop("Ready"), tr_noop("Ready"), tr_noop("Everything is here"))),
    "stand_in": VerdictWords(
        (
            tr_noop("Stand-in"),
            tr_noop("Ready with stand-ins"),
            tr_noop("Can be made with a stand-in"),
        )
    ),
    "one_short": VerdictWords(
        (tr_noop("One short"), tr_noop("One short"), tr_noop("One ingredient is missing"))
    ),
    "short": VerdictWords(
        (
            tr_noop("Short"),
            tr_noop("Short of more"),
            tr_noop("More than one ingredient is missing"),
        )
    ),
}


class HowMany(NamedTuple):
    """How many drinks are ready, are so with stand-ins, and cannot be made."""

    ready: int
    stand_in: int
    short: int


def how_many(verdicts_of: Iterable[Verdict]) -> HowMany:
    """Drinks of these verdicts counted by what can be made of them."""
    by = Counter(verdicts_of)
    ready, stand_in = by["ready"], by["stand_in"]
    return HowMany(ready, stand_in, by.total() - ready - stand_in)


@dataclass(frozen=True, slots=True)
class Verdicts:
    """Every spec's verdict: `of` by the spec's place in the snapshot's book.

    `order` holds those places, best verdict first, then what lacks least, then by name.
    """

    of: tuple[Verdict, ...]
    order: tuple[int, ...]
