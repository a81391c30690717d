"""How far a bar reaches: what can be made tonight, and what one more bottle would add."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.phrases import counted
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within
from barkeep.domain.pouring.verdict import how_many
from barkeep.domain.pouring.verdicts import verdicts
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Reach:
    """How many drinks are ready, are so with a stand-in, and are one purchase away.

    `one_more` counts each drink once, whichever purchase would turn it.
    """

    ready: int
    stand_in: int
    one_more: int

    @property
    def tonight(self) -> int:
        """How many can be made at all."""
        return self.ready + self.stand_in

    @property
    def tonight_in_words(self) -> str:
        """*12 tonight*, with how many of them take a stand-in."""
        if not self.stand_in:
            return tr("{drinks} tonight", drinks=self.tonight)
        if self.stand_in == self.tonight:
            return tr("{drinks} tonight, with a stand-in", drinks=self.tonight)
        return tr(
            "{drinks} tonight ({some} of them with a stand-in)",
            drinks=self.tonight,
            some=self.stand_in,
        )

    @property
    def one_more_in_words(self) -> str:
        """*9 with one more bottle*."""
        return tr("{drinks} with one more bottle", drinks=self.one_more)

    @property
    def in_words(self) -> str:
        """The whole sentence."""
        return tr(
            "You can make {tonight}, and {one_more}.",
            tonight=self.tonight_in_words,
            one_more=self.one_more_in_words,
        )


def reach(snapshot: Snapshot, within: Within = "close", memory: Memory | None = None) -> Reach:
    """What the pages Tonight and Buying would show of this bar, counted."""
    memory = memory or Memory()
    ready, stand_in, _short = how_many(verdicts(snapshot, within, 1, memory).of)
    bought = next_bottle(snapshot, within, memory)
    return Reach(ready, stand_in, len({name for each in bought for name in each.unlocks}))


def shelf_in_words(bottles: int, guessed: int) -> str:
    """How many bottles came in, and of how many the level is a guess."""
    said = tr("{bottles} came in.", bottles=counted(bottles, "bottle"))
    if not guessed:
        return said
    if guessed == 1:
        guess = tr("{guessed} level is guessed: count the shelf when you like.", guessed=guessed)
    else:
        guess = tr("{guessed} levels are guessed: count the shelf when you like.", guessed=guessed)
    return f"{said} {guess}"
