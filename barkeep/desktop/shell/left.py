"""What was typed the last time and is in no ledger yet, to be told as the window opens."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from barkeep.application.bar import Bar
from barkeep.desktop.screens.kept import COUNT, LIST, LOG, KeptTyping, when_left
from barkeep.domain.phrases import counted
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Left:
    """One thing that was left: under which name, on which page, and what is said and offered."""

    name: str
    page: str
    said: str
    act: str


def what_was_left(state_folder: Path, bar: Bar) -> tuple[Left, ...]:
    """All that was left of this bar's counts, lists and logs, the oldest first."""
    return tuple(_left(KeptTyping(state_folder, bar.kept_beside), bar))


def _left(kept: KeptTyping, bar: Bar) -> Iterator[Left]:
    for name in kept.names():
        values = kept.left(name)
        try:
            when = when_left(values or {})
            if name == COUNT and values is not None:
                said = _count_left(len(values["counts"]), when)
                yield Left(name, "bottles", said, tr("Go on counting"))
            elif name == LIST and values is not None and values["text"].strip():
                said = tr(
                    "A list of bottles was left on {when} and is not on the shelf yet.", when=when
                )
                yield Left(name, "bottle-list", said, tr("Go on with the list"))
            elif name.startswith(LOG):
                shoot = bar.snapshot.shoot_by_id.get(int(name.removeprefix(LOG)))
                if shoot is not None and shoot.log is None:
                    said = tr(
                        "The log of {theme} was begun on {when} and is not written yet.",
                        theme=shoot.theme,
                        when=when,
                    )
                    yield Left(name, "shoots", said, tr("Go on with the log"))
        except (KeyError, TypeError, ValueError):  # somebody else has written it
            continue


def _count_left(many: int, when: str) -> str:
    """Of a count; where none is finished, an amount was being typed."""
    if not many:
        return tr("A count was begun on {when} and is not written down yet.", when=when)
    bottles = counted(many, "bottle")
    return tr("{bottles} counted on {when} and not written down yet.", bottles=bottles, when=when)
