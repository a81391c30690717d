"""Whether a name that an owner gives to an ingredient would be read as that name."""

from __future__ import annotations

from barkeep.domain.amounts.units import US_UNITS, BarUnits, unit_named
from barkeep.domain.ingredients.names import ADJECTIVES
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.lines import ReadLine, read_lines

LONGEST_OWN_NAME = 80
"""Characters: more than this no line, card or table has room for."""
_NAMES_NOTHING_LIST = """
    a an the of to and or each plus with some any optional garnish garnished top topped rim rimmed
    rinse float taste serve fill finish equal parts amount glass method notes
"""
_NAMES_NOTHING = frozenset(_NAMES_NOTHING_LIST.split())
"""Words by which a line says how much or how; they name nothing by themselves."""
_AMOUNTS = {"ml": "30 ml", "g": "30 g", "each": "2"}


def why_unreadable(
    name: str, ingredient: Ingredient, tree: FamilyTree, units: BarUnits = US_UNITS
) -> str | None:
    """Why a line of a spec could not name it so, None where it could.

    `tree` holds the ingredient under this name already.
    """
    if len(name) > LONGEST_OWN_NAME:
        return f"a name has at most {LONGEST_OWN_NAME} characters"
    if not any(mark.isalpha() for mark in name):
        return "a name has letters"
    if any(mark in name for mark in "(),"):
        return "in a line, what stands in brackets or after a comma is a note; write it without"
    if all(_names_nothing(word, units) for word in folded(name).split()):
        return "in a line, such words say how much or how; write what it is"
    alone = read_lines(name, tree, units)
    if _measured(alone) and alone[0].line.ingredient != ingredient.key:
        return "a line would read an amount in it; write the name alone"
    poured = read_lines(f"{_AMOUNTS[ingredient.unit]} {name}", tree, units)
    if not _is_plainly(poured, ingredient):
        return "a line of a spec would read something else in it; choose another name"
    return None


def _names_nothing(word: str, units: BarUnits) -> bool:
    return word in _NAMES_NOTHING or word in ADJECTIVES or unit_named(word, units) is not None


def _measured(read: tuple[ReadLine, ...]) -> bool:
    return read[0].line.unit not in (None, "each")


def _is_plainly(read: tuple[ReadLine, ...], ingredient: Ingredient) -> bool:
    """Whether this was read, and nothing beside it."""
    line = read[0].line
    beside = line.note or line.optional or line.garnish or line.alternatives
    wrong = [each for each in read[0].complaints if not each.which]
    return len(read) == 1 and line.ingredient == ingredient.key and not (beside or wrong)
