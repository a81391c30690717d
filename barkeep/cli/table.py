"""Readable tables for a terminal."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence

BAR_CELLS = 10


def table(head: Sequence[str], rows: Iterable[Sequence[str]], right: str = "") -> str:
    """Rows under a head, columns aligned by what they take on screen.

    `right` holds a letter for each column: *r* is set to the right, anything
    else to the left; letters may be left out at the end.
    """
    body = [tuple(row) for row in rows]
    widths = [max(map(width, column)) for column in zip(head, *body, strict=True)]
    rule = tuple("─" * each for each in widths)
    return "\n".join(_row(row, widths, right) for row in (tuple(head), rule, *body))


def width(text: str) -> int:
    """How many cells a text takes on screen.

    >>> width("½ oz"), width("梅酒")
    (4, 4)
    """
    return sum(map(_cells, text))


def level_bar(share: float) -> str:
    """A level drawn in ten cells; only an empty bottle has none filled.

    >>> level_bar(0.42)
    '████░░░░░░'
    """
    cells = min(BAR_CELLS, round(share * BAR_CELLS))
    if share > 0.0:
        cells = max(1, cells)
    return "█" * cells + "░" * (BAR_CELLS - cells)


def _row(cells: Sequence[str], widths: Sequence[int], right: str) -> str:
    shown = []
    for place, (cell, wide) in enumerate(zip(cells, widths, strict=True)):
        gap = " " * (wide - width(cell))
        shown.append(gap + cell if right[place : place + 1] == "r" else cell + gap)
    return "  ".join(shown).rstrip()


def _cells(mark: str) -> int:
    if unicodedata.combining(mark):
        return 0
    return 2 if unicodedata.east_asian_width(mark) in "WF" else 1
