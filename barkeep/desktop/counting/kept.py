"""A count of the shelf that is not confirmed yet: kept as it grows, and taken up again."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

from barkeep.application.bar import Bar
from barkeep.desktop.screens.kept import COUNT, KeptTyping, when_left
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.counting import ShelfCount, Typed
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.errors import spoken_list
from barkeep.translation import tr

COUNTS, TYPING = "counts", "typing"
TYPED, TITLE, LEVEL = "typed", "title", "level"


@dataclass(frozen=True, slots=True)
class CountLeft:
    """What was left: the count, by title the bottles it no longer fits, and those that moved.

    `gone` are off the shelf or smaller than was counted; `moved` have another level by now than
    when they were counted. `typing` is the bottle and the amount that was being typed.
    """

    count: ShelfCount
    gone: tuple[str, ...]
    moved: tuple[str, ...]
    typing: tuple[int, str] | None
    when: str

    @property
    def said(self) -> str:
        """Of what came back, what is no longer as it was; empty where all of it is."""
        parts = []
        if self.gone:
            gone = spoken_list(self.gone, "and")
            parts.append(tr("left out, as they are gone or smaller: {gone}", gone=gone))
        if self.moved:
            moved = spoken_list(self.moved, "and")
            parts.append(tr("poured or counted since, so look again: {moved}", moved=moved))
        return "; ".join(parts)


class KeptCount:
    """What was counted so far; it outlives a change of page, and the program's end."""

    def __init__(self, state_folder: Path, bar: Bar) -> None:
        self._bar, self._kept = bar, KeptTyping(state_folder, bar.kept_beside)
        values, bottles = self._kept.left(COUNT), bar.snapshot.bottles
        self.left = None if values is None else count_left(values, bottles)
        """What was left the last time, until somebody goes on with it."""
        self.count = ShelfCount() if self.left is None else self.left.count

    def keep(self, count: ShelfCount, typing: tuple[int, str] | None = None) -> None:
        """Keep a count, and the bottle and the amount that is being typed."""
        self.count = count
        if not len(count) and typing is None:
            self._kept.drop(COUNT)
        else:
            self._kept.keep(COUNT, as_values(count, self._bar.snapshot.bottle_by_id, typing))


def as_values(
    count: ShelfCount, bottles: Mapping[int, Bottle], typing: tuple[int, str] | None
) -> Mapping[str, Any]:
    """A count in plain values, each bottle with its title and the level it had."""
    return {
        COUNTS: {
            str(bottle_id): {
                TYPED: asdict(each),
                TITLE: bottles[bottle_id].product.title,
                LEVEL: bottles[bottle_id].level.amount,
            }
            for bottle_id, each in count.typed.items()
            if bottle_id in bottles
        },
        TYPING: list(typing) if typing else None,
    }


def count_left(values: Mapping[str, Any], bottles: Iterable[Bottle]) -> CountLeft | None:
    """The count that was left, as far as it fits these bottles; None for what is no count."""
    try:
        along = {each.id: each for each in bottles}
        kept = {int(key): each for key, each in values[COUNTS].items()}
        found = ShelfCount({key: _typed(each[TYPED]) for key, each in kept.items()})
        count = found.kept_for(along.values())
        moved = [
            kept[key][TITLE] for key in count.typed if kept[key][LEVEL] != along[key].level.amount
        ]
        gone = [each[TITLE] for key, each in kept.items() if key not in count]
        typing = values[TYPING]
        return CountLeft(
            count=count,
            gone=tuple(gone),
            moved=tuple(moved),
            typing=(int(typing[0]), str(typing[1])) if typing else None,
            when=when_left(values),
        )
    except (KeyError, TypeError, ValueError, AttributeError):  # somebody else has written it
        return None


def _typed(values: Mapping[str, Any]) -> Typed:
    return Typed(**{**values, "measured": MeasuredLevel(**values["measured"])})
