"""Whether free lines that might be specs rather list bottles: then that is asked, not guessed.

A bottle has a size of a bottle, or a level; a line of a spec begins with what is poured of it,
and a spec has a name and a method. Bare names say neither, and list bottles where there is
nothing but them.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from barkeep.documents.bottle_lines import read_bottle_lines
from barkeep.documents.bottles_csv import ListedRow, Terms
from barkeep.documents.specs.files import holds_specs, kind_of

LOOKED_AT = 200
"""Lines; what a longer text is shows in its first ones."""
A_BOTTLE_ML = 100.0
"""No bottle that is listed holds less, and hardly a line of a spec pours more."""
ENOUGH = 2 / 3
"""So many of the lines name a bottle."""

_BULLET = r"^\s*(?:>\s*)*(?:[-*+•·–—▪]\s+|[0-9]{1,3}[.)]\s+)?"
_NUMBER = r"(?:[0-9]+(?:[.,/][0-9]+)?(?:\s+[0-9]/[0-9])?\s*[¼½¾⅓⅔]?|[¼½¾⅓⅔]|half\s+an?|an?)"
_POURED = re.compile(
    rf"{_BULLET}(?:{_NUMBER}\s*(?:heaping\s+|big\s+|short\s+)?"
    r"(?:dash(?:es)?|parts?|tsp|tbsp|teaspoons?|tablespoons?|bar\s?spoons?|bsp|drops?"
    r"|splash(?:es)?|pinch(?:es)?|shots?|jiggers?|cups?|spoons?|sprigs?|leaves|slices?|wedges?"
    r"|twists?)\b|(?:shake|stir|build|strain|double[- ]strain|fine[- ]strain|muddle|top|garnish"
    r"|serve[sd]?|pour|blend|combine|add)\b|(?:glass|method|directions|instructions|ice)\s*:)",
    re.IGNORECASE,
)
"""How a line of a spec begins that no list of bottles has."""
_MEASURED = re.compile(rf"{_BULLET}{_NUMBER}\s*[a-z]", re.IGNORECASE)
"""A line that begins with an amount."""

_TICKED = re.compile(r"^\s*(?:[-*+•]\s+)?(?:\[[ xX✓✔]\]|[☐☑✓✔✗☒])")


@dataclass(frozen=True, slots=True)
class ListsBottles:
    """So many of the lines that were looked at name a bottle."""

    bottles: int
    lines: int


def lists_bottles(text: str, file: str, terms: Terms) -> ListsBottles | None:
    """What of a text that may hold specs reads like bottles; None where it reads like specs."""
    if kind_of(text, file) not in ("text", "markdown") or not holds_specs(text, file):
        return None
    lines = [each for each in text.splitlines() if each.strip()][:LOOKED_AT]
    if any(map(_POURED.match, lines)):
        return None
    rows = read_bottle_lines("\n".join(lines), terms).listed
    little = [each for each in rows if _is_little(each)]
    named = [each for each in rows if each.bottle is not None and each not in little]
    if not named or len(named) < ENOUGH * len(rows) or any(map(_begins_measured, little)):
        return None
    sure = [each for each in named if _is_kept(each)]
    if not sure and (len(named) < len(rows) or len(rows) == 1):
        return None
    has_a_title = rows[0].bottle is None
    if has_a_title and all(map(_begins_measured, sure)):
        return None
    return ListsBottles(len(named), len(rows))


def _begins_measured(row: ListedRow) -> bool:
    return _MEASURED.match(row.written) is not None


def _is_little(row: ListedRow) -> bool:
    """Whether a line says less than a bottle, as one of a spec does; or a miniature."""
    if row.bottle is None or "size" in row.guessed:
        return False
    draft = row.bottle.draft
    return draft.unit == "ml" and draft.size < A_BOTTLE_ML


def _is_kept(row: ListedRow) -> bool:
    """Whether a line says how large a bottle is, what is left of it, or that it is there."""
    if _TICKED.match(row.written):
        return True
    is_liquid = row.bottle is not None and row.bottle.draft.unit == "ml"
    return is_liquid and not {"size", "level"} <= row.guessed
