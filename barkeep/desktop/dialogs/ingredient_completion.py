"""Which ingredient someone is in the middle of writing, and the names it could become."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import islice

from barkeep.domain.ingredients import FamilyTree, folded

LEAST_LETTERS = 2
OFFERED = 10
LAST = "\U0010ffff"
"""Sorts after every letter."""
BETWEEN_SPECS = "---"
LABELS_OF_INGREDIENTS = frozenset({"garnish", "optional"})


@dataclass(frozen=True, slots=True, order=True)
class _Name:
    """A name as it is found, as it is written, whose it is, and whether it is a second name."""

    found: str
    alias: bool
    written: str
    key: str


class IngredientNames:
    """Every name of a family tree that may be written on a line, found by its beginning."""

    def __init__(self, tree: FamilyTree) -> None:
        own = (_Name(folded(tree.name(key)), False, tree.in_sentence(key), key) for key in tree)
        others = (
            _Name(folded(alias), True, alias, key) for key in tree for alias in tree[key].aliases
        )
        self._names = sorted((*own, *others))
        self._found = [name.found for name in self._names]

    def beginning_with(self, words: str) -> tuple[str, ...]:
        """The names that begin with `words`, then those in which a later word does.

        One name an ingredient, its own before others.
        """
        wanted = folded(words)
        if len(wanted) < LEAST_LETTERS:
            return ()
        start, end = bisect_left(self._found, wanted), bisect_left(self._found, wanted + LAST)
        inside = f" {wanted}"
        later = [name for name in self._names if inside in name.found]
        offered: dict[str, str] = {}
        for names in (self._names[start:end], later):
            for name in sorted(names, key=lambda each: (each.alias, each.found)):
                offered.setdefault(name.key, name.written)
        return tuple(islice(offered.values(), OFFERED))

    def unfinished(self, before_cursor: str) -> tuple[str, tuple[str, ...]]:
        """The end of a line that could become a name, as written, and the names it could become.

        The longest such end wins: in *30 ml dry ver* it is *dry ver*. Nothing
        where the line already ends in the only name it could be.
        """
        start = len(before_cursor) - len(before_cursor.lstrip())
        if before_cursor[-1:].isspace():
            start = len(before_cursor)
        while start < len(before_cursor):
            tail = before_cursor[start:]
            names = self.beginning_with(tail)
            if names:
                return ("", ()) if _is_finished(tail, names) else (tail, names)
            start = _next_word(before_cursor, start)
        return ("", ())


def takes_ingredient(lines: Sequence[str], number: int) -> bool:
    """Whether line `number` of a text is one that names an ingredient.

    It stands below a name and above the first blank line, and is no *Glass:* or *Notes:*.
    """
    named = has_lines = in_method = blank = False
    for line in lines[:number]:
        empty = not line.strip()
        if line.startswith(BETWEEN_SPECS) or (empty and blank):
            named = has_lines = in_method = False
        elif empty:
            in_method = in_method or has_lines
        else:
            named, has_lines = True, named
        blank = empty
    if not named or in_method:
        return False
    label, colon, _ = lines[number].partition(":")
    return not colon or label.strip().casefold() in LABELS_OF_INGREDIENTS


def _is_finished(tail: str, names: tuple[str, ...]) -> bool:
    return len(names) == 1 and folded(names[0]) == folded(tail)


def _next_word(text: str, start: int) -> int:
    """Where the next word begins, the end of the text where there is none."""
    blank = text.find(" ", start)
    while 0 <= blank < len(text) and text[blank] == " ":
        blank += 1
    return blank if blank > 0 else len(text)
