"""A line of a spec as the bar meets it, in a word, a picture and a colour; and a drink's base."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.garnishes import Standing, garnish_of
from barkeep.domain.specs.called import kind_beside
from barkeep.domain.specs.spec import Line
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.domain.pouring.assessment import LineAnswer
    from barkeep.domain.specs.shown_lines import ShownLine

POUR_KEYS = "Ctrl+Return"
"""They ask how a drink is poured, and pour it so once that is asked."""


@dataclass(frozen=True, slots=True)
class LineState:
    """What is said of a line; `tone` is a field of `Tones` that colours the picture."""

    english: str
    picture: str
    tone: str

    @property
    def word(self) -> str:
        """How it stands, in a word or a few."""
        return tr(self.english)


THERE = LineState(tr_noop("There"), "verdict-ready", "ready")
STAND_IN = LineState(tr_noop("Stand-in"), "verdict-stand-in", "stand_in")
MISSING = LineState(tr_noop("Missing"), "verdict-short", "short")
NOT_UNDERSTOOD = LineState(tr_noop("Not understood"), "warning", "warning")
NOT_NEEDED = LineState(tr_noop("Not there, and not needed"), "info", "muted")
TO_CUT = LineState(tr_noop("To cut"), "verdict-ready", "ready")
TO_MAKE = LineState(tr_noop("To make"), "verdict-ready", "ready")
GARNISH_MISSING = LineState(tr_noop("Missing"), "info", "muted")
_OF_GARNISH: Mapping[Standing, LineState] = {
    "there": THERE,
    "cut": TO_CUT,
    "made": TO_MAKE,
    "stand_in": STAND_IN,
    "missing": GARNISH_MISSING,
}


def line_state(answer: LineAnswer, tree: FamilyTree) -> LineState:
    """Whether a line is met, by a stand-in, or not."""
    if answer.line.garnish and (answer.met or not answer.required):
        return _OF_GARNISH[garnish_of(answer, tree).standing]
    if not answer.met:
        return MISSING if answer.required else NOT_NEEDED
    return STAND_IN if answer.closeness < 1.0 else THERE


def reason(answer: LineAnswer, tree: FamilyTree) -> str:
    """Which kind the line means where its words say another, why it is met, and from where."""
    through_steps = answer.derivation is not None and bool(answer.derivation.steps)
    from_bottle = ""
    if answer.bottle is not None and through_steps:
        from_bottle = tr("From {title}.", title=answer.bottle.product.title)
    said = (kind_in_words(answer.line, tree), answer.why, from_bottle)
    return " ".join(each for each in said if each)


def kind_in_words(line: Line, tree: FamilyTree) -> str:
    """The kind a line means, where its words say another: *Cloudy apple juice.*; else empty."""
    kind = kind_beside(line, tree)
    return f"{capitalised(kind)}." if kind else ""


def duty(line: Line) -> str:
    """What a line that may be left out is for; not translated yet."""
    if line.garnish:
        return "" if line.text.casefold().startswith("garnish") else tr_noop("garnish")
    return tr_noop("optional") if line.optional else ""


def with_duty(line: Line, text: str) -> str:
    """A text of a line, and what the line is for where the text does not say it."""
    what_for = duty(line)
    return f"{text} ({tr(what_for)})" if what_for and what_for not in text.casefold() else text


def written(line: ShownLine) -> str:
    """How a line is written where it is shown otherwise, else empty."""
    return tr("Written: {written}", written=line.written) if line.written else ""


ANY_BASE = (tr_noop("Any base"), None)
"""The first choice of a box of bases."""


def kinds_by_name(keys: Iterable[str], tree: FamilyTree) -> tuple[tuple[str, str], ...]:
    """Name and key of each kind that occurs, by name."""
    named = ((tree.name(key), key) for key in set(keys))
    return tuple(sorted(named, key=lambda each: each[0].casefold()))
