"""What a document of specs gives: its specs in pieces, and what of it no spec has a place for."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.spec_text.parts import SpecParts

MOST_SHOWN = 60
"""Characters of what was left aside that are said; more would hide the rest."""


@dataclass(frozen=True, slots=True)
class Document:
    """The specs of a document in order, and in words what of it belongs to none of them.

    `remarks` are sentences about how it was read.
    """

    parts: tuple[SpecParts, ...]
    left_aside: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()


def in_short(text: str) -> str:
    """The beginning of a text, on one line.

    >>> in_short("Grey\\n and dry.")
    'Grey and dry.'
    """
    row = " ".join(text[: 4 * MOST_SHOWN].split())
    if len(row) <= MOST_SHOWN and len(text) <= 4 * MOST_SHOWN:
        return row
    return row[: MOST_SHOWN - 1].rsplit(" ", 1)[0].rstrip(" ,;:") + " …"
