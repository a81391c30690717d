"""What is said of a stand-in: how close it is, where it holds, and whether it is the owner's."""

from __future__ import annotations

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.ingredients.relations import Scope, StandIn
from barkeep.domain.phrases import as_sentence, begun_small
from barkeep.domain.pouring.sourcing import WITHIN
from barkeep.translation import tr, tr_about, tr_noop

SCOPE_WORDS: dict[Scope, str] = {
    "shaken": tr_noop("Only in shaken drinks"),
    "stirred": tr_noop("Only in stirred drinks"),
    "accent": tr_noop("Only as an accent, by the dash or barspoon"),
    "never_base": tr_noop("Never as the base"),
}


def closeness_word(closeness: float) -> str:
    """Exact, close from 0.8, loose from 0.6, far below that."""
    if _is_exact(closeness):
        return tr_about("closeness", "Exact")
    if closeness >= WITHIN["close"]:
        return tr_about("closeness", "Close")
    return (
        tr_about("closeness", "Loose")
        if closeness >= WITHIN["loose"]
        else tr_about("closeness", "Far")
    )


def closeness_in_words(closeness: float) -> str:
    """Its word and figure; exact needs no figure."""
    word = closeness_word(closeness)
    return word if _is_exact(closeness) else f"{word}, {closeness:.2f}"


def _is_exact(closeness: float) -> bool:
    return closeness >= WITHIN["exact"] - 1e-9


def scope_in_words(entry: StandIn) -> str:
    """Where a stand-in holds, as a sentence; nothing where it always does."""
    said = [tr(SCOPE_WORDS[each]) for each in entry.scope]
    return as_sentence(", ".join((*said[:1], *map(begun_small, said[1:])))) if said else ""


def own_for(knowledge: Knowledge, wanted: str) -> tuple[StandIn, ...]:
    """The owner's stand-ins for one ingredient, closest first."""
    found = (each for each in knowledge.stand_ins if each.own and each.wanted == wanted)
    return tuple(sorted(found, key=lambda each: (-each.closeness, each.offered)))
