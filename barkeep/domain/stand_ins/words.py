"""What is said of a stand-in: how close it is, where it holds, and whether it is the owner's."""

from __future__ import annotations

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.ingredients.relations import Scope, StandIn
from barkeep.domain.pouring.sourcing import WITHIN

SCOPE_WORDS: dict[Scope, str] = {
    "shaken": "Only in shaken drinks",
    "stirred": "Only in stirred drinks",
    "accent": "Only as an accent, by the dash or barspoon",
    "never_base": "Never as the base",
}


def closeness_word(closeness: float) -> str:
    """Exact, close from 0.8, loose from 0.6, far below that."""
    if closeness >= WITHIN["exact"] - 1e-9:
        return "Exact"
    if closeness >= WITHIN["close"]:
        return "Close"
    return "Loose" if closeness >= WITHIN["loose"] else "Far"


def closeness_in_words(closeness: float) -> str:
    """Its word and figure; exact needs no figure."""
    word = closeness_word(closeness)
    return word if word == "Exact" else f"{word}, {closeness:.2f}"


def scope_in_words(entry: StandIn) -> str:
    """Where a stand-in holds, as a sentence; nothing where it always does."""
    said = ", ".join(SCOPE_WORDS[each] for each in entry.scope)
    return f"{said.capitalize()}." if said else ""


def own_for(knowledge: Knowledge, wanted: str) -> tuple[StandIn, ...]:
    """The owner's stand-ins for one ingredient, closest first."""
    found = (each for each in knowledge.stand_ins if each.own and each.wanted == wanted)
    return tuple(sorted(found, key=lambda each: (-each.closeness, each.offered)))
