"""Which lines of a spec meet the ice, and which are added once it has done its work.

Read off the lines (*top with*, *float*), off the method (*shake all but the
soda*, *float the rum on top*, *rinse a glass*) and off the ingredient: what is
carbonated is never shaken or stirred with ice, whatever the text leaves out.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from barkeep.domain.ingredients import FamilyTree, folded
from barkeep.domain.specs import Line, Spec, Technique

CARBONATED = ("mixer", "sparkling-wine", "beer", "cider", "alcohol-free-sparkling-wine")
"""Kinds that are carbonated, with everything below them."""
ON_TOP_NOTES = ("to top", "to fill", "float", "floated", "on top")
LAST_UNITS = ("float", "rinse")

_APART = re.compile(
    r"\b(?:(?:all|everything)\s+(?:but|except)(?:\s+for)?|(?:float|sink)(?:ing)?"
    r"|top(?:ping)?(?:\s+(?:up|off))?\s+with|dash(?=\s+the\b)|pour\s+in"
    r"(?=[^.;]*\bon\s+top\b))\s+(?P<what>[^.,;]*?)"
    r"(?=\s+(?:with|briefly|hard|long|over|on|down|in|into|and)\b|[.,;]|$)",
    re.IGNORECASE,
)
_ON_ICE = re.compile(r"\bice\b", re.IGNORECASE)
_NO_ICE = ("none", "no ice", "without", "up", "straight up")
_SMALL_WORDS = frozenset({"the", "rest", "lightly", "whipped", "well", "chilled", "cold"})


def is_carbonated(key: str, tree: FamilyTree) -> bool:
    """Whether an ingredient has bubbles."""
    return any(tree.is_a(key, kind) for kind in CARBONATED)


def meets_ice(spec: Spec, technique: Technique) -> bool:
    """Whether the drink is mixed on ice at all: a built one only where ice is named."""
    if technique == "hot":
        return False
    if technique not in ("built", "unknown"):
        return True
    if spec.ice:
        return folded(spec.ice) not in _NO_ICE
    return technique == "unknown" or bool(_ON_ICE.search(spec.method))


def added_after_ice(spec: Spec, technique: Technique, tree: FamilyTree) -> frozenset[int]:
    """The numbers of the lines that no ice thins, from 0."""
    if not meets_ice(spec, technique):
        return frozenset(range(len(spec.lines)))
    apart = {
        number
        for number, line in enumerate(spec.lines)
        if _is_last(line) or (is_carbonated(line.ingredient, tree) and technique != "blended")
    }
    for found in _APART.finditer(spec.method):
        apart |= _named(found["what"], spec.lines, tree)
    return frozenset(apart)


def _is_last(line: Line) -> bool:
    return line.unit in LAST_UNITS or any(note in line.note for note in ON_TOP_NOTES)


def _named(words: str, lines: Iterable[Line], tree: FamilyTree) -> set[int]:
    """The lines a clause names: those that answer to most of its words, garnishes apart."""
    wanted = _words(words) - _SMALL_WORDS
    if not wanted:
        return set()
    shared = {
        number: len(wanted & _names(line, tree))
        for number, line in enumerate(lines)
        if not line.garnish
    }
    most = max(shared.values(), default=0)
    return {number for number, count in shared.items() if count == most > 0}


def _names(line: Line, tree: FamilyTree) -> set[str]:
    kinds = (line.ingredient, *tree.ancestors(line.ingredient))
    found = _words(line.text)
    for kind in kinds:
        for name in tree[kind].all_names:
            found |= _words(name)
    return found


def _words(text: str) -> set[str]:
    return set(re.findall(r"[^\W\d_]{3,}", folded(text)))
