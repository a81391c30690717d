"""Garnishes that no ingredient is called after: kept in words among the notes of a spec.

*Garnish: a paper lantern* is such a note. Whatever is printed or published of
the spec gives it as a garnish.
"""

from __future__ import annotations

from collections.abc import Iterable

from barkeep.translation import tr

GARNISH = "Garnish: "


def garnish_notes(garnishes: Iterable[str]) -> tuple[str, ...]:
    """The notes that keep garnishes in words."""
    return tuple(f"{GARNISH}{each}" for each in garnishes)


def is_garnish_note(note: str) -> bool:
    """Whether a note is a garnish in words."""
    return note.startswith(GARNISH) and bool(note[len(GARNISH) :].strip())


def garnishes_in_words(notes: str) -> tuple[str, ...]:
    """The garnishes that the notes of a spec keep.

    >>> garnishes_in_words("Garnish: a paper lantern\\nBetter in winter.")
    ('a paper lantern',)
    """
    rows = (row for row in notes.splitlines() if is_garnish_note(row))
    return tuple(row[len(GARNISH) :].strip() for row in rows)


def other_notes(notes: str) -> tuple[str, ...]:
    """The notes of a spec that are no garnish, without empty ones."""
    rows = (row.strip() for row in notes.splitlines())
    return tuple(row for row in rows if row and not is_garnish_note(row))


def unknown_garnish(garnish: str) -> str:
    """What is said of a garnish that is kept in words."""
    return tr("No ingredient is called “{garnish}”; it stays a garnish in words.", garnish=garnish)
