"""Fruit that is muddled or squeezed into the drink: the juice a piece of it gives.

A whole fruit, or half of one, gives what its recipe presses out of it; a wedge
what `resources/portions.toml` says of it. Where nothing presses a wedge it
gives nothing worth counting.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.ingredients.composition import shipped_portions
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line, Spec

_PRESSED = re.compile(r"\b(?:muddl|squeez|press|crush(?!ed ice)|smash)\w*", re.IGNORECASE)
_CLAUSES = re.compile(r"[.;,\n]|\bthen\b")
_ANY_FRUIT = frozenset(
    {"wedge", "wedges", "slice", "slices", "piece", "pieces", "fruit", "citrus", "half", "halves"}
    | {"all", "everything", "them", "it"}
)
"""Words that name the fruit of a drink without its name."""
_SMALL = frozenset({"in", "into", "the", "a", "an", "of", "well", "gently", "hard", "glass", "tin"})


@dataclass(frozen=True, slots=True)
class Pressed:
    """The juice that one piece gives, in ml."""

    juice: str
    ml: float


def pressed_from(key: str, knowledge: Knowledge) -> Pressed | None:
    """What one of it gives when it is pressed; None where it is no fruit to be pressed."""
    whole = knowledge.pressing.get(key)
    if whole is not None:
        return Pressed(whole.made, whole.yields / whole.inputs[0].amount)
    cut = knowledge.own_way.get(key)
    said_ml = shipped_portions().pressed_ml.get(key)
    if cut is None or said_ml is None or len(cut.inputs) != 1:
        return None
    fruit = knowledge.pressing.get(cut.inputs[0].ingredient)
    return None if fruit is None else Pressed(fruit.made, said_ml)


def is_pressed(line: Line, spec: Spec, knowledge: Knowledge) -> bool:
    """Whether a line's fruit is pressed: a whole one always is, a wedge where the words say so."""
    if line.ingredient in knowledge.pressing:
        return True
    if _PRESSED.search(f"{line.text} {line.note}"):
        return True
    named = _ANY_FRUIT | _names(line, knowledge)
    return any(_presses(clause, named) for clause in _CLAUSES.split(spec.method))


def _presses(clause: str, named: frozenset[str]) -> bool:
    """Whether a clause presses what it names, or names nothing that it presses."""
    verb = _PRESSED.search(clause)
    if verb is None:
        return False
    words = set(folded(clause[verb.end() :]).split()) - _SMALL
    return not words or bool(words & named)


def _names(line: Line, knowledge: Knowledge) -> frozenset[str]:
    said = f"{line.called} {knowledge.tree.name(line.ingredient)}"
    return frozenset(folded(said).split()) - _SMALL
