"""What has to be made before a drink can be begun, and how long that takes, in words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from barkeep.domain.amounts.amount import show_number
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tasks import is_made_first
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.specs.called import named_by
from barkeep.errors import spoken_list
from barkeep.translation import tr


def made_first(derivations: Iterable[Derivation], tree: FamilyTree) -> tuple[MadeFrom, ...]:
    """Every recipe that must be done first, each once, what goes into another before it."""
    found = (recipe for each in derivations for recipe in _recipes(each))
    return tuple(dict.fromkeys(each for each in found if is_made_first(each, tree)))


def make_first(answers: Iterable[LineAnswer], tree: FamilyTree) -> str:
    """What a drink's lines need made first: *make honey syrup first (10 min)*; else empty."""
    needed = [each for each in answers if each.required and each.derivation is not None]
    ways = (each.derivation for each in needed if each.derivation is not None)
    named = named_by([each.line for each in needed], tree)
    return first_in_words(made_first(ways, tree), named)


def first_in_words(recipes: Sequence[MadeFrom], tree: FamilyTree) -> str:
    """*make tea syrup and lemon cordial first (20 min, then 1 h to stand)*; empty for none."""
    if not recipes:
        return ""
    names = spoken_list([tree.in_sentence(each.made) for each in recipes], "and")
    took = f"{show_number(sum(each.minutes for each in recipes), fractions=False)} min"
    # What is made side by side stands side by side.
    if stands := max(each.rest_hours for each in recipes):
        took += tr(", then {hours} to stand", hours=hours_in_words(stands))
    return tr("make {names} first ({took})", names=names, took=took)


def hours_in_words(hours: float) -> str:
    """*12 h*, *30 min*."""
    if hours < 1.0:
        return f"{hours * 60.0:.0f} min"
    return f"{show_number(hours, fractions=False)} h"


def _recipes(derivation: Derivation) -> Iterator[MadeFrom]:
    for step in derivation.made:
        for part in step.parts:
            yield from _recipes(part)
        yield step.recipe
