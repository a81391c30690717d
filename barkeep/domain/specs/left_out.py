"""The lines of a spec that a batch, a plan or a shopping list does not count, each named."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.garnish_notes import GARNISH, garnishes_in_words
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.translation import tr, tr_noop

WhyLeftOut = Literal["not_understood", "no_amount", "not_convertible", "optional", "garnish"]


_WHY: Mapping[WhyLeftOut, str] = {
    "not_understood": tr_noop("it is not understood"),
    "no_amount": tr_noop("it gives no amount"),
    "not_convertible": tr_noop("how much its amount comes to is not known"),
    "optional": tr_noop("it is optional"),
    "garnish": tr_noop("it is a garnish"),
}


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A line of a drink that is not counted as it is written, and why."""

    drink: str
    line: Line | UnsettledLine
    why: WhyLeftOut

    def named(self, tree: FamilyTree) -> str:
        """The line as it is written, or its ingredient where nothing is written of it."""
        if isinstance(self.line, UnsettledLine):
            return self.line.named
        return f"“{self.line.text}”" if self.line.text else names_in_sentence(self.line, tree)

    def because(self, tree: FamilyTree) -> str:
        """The line and the reason: *“salt, to taste”, for it gives no amount*."""
        return tr("{line}, for {reason}", line=self.named(tree), reason=tr(_WHY[self.why]))


def left_out_of(spec: Spec) -> Iterator[LeftOut]:
    """Every line that says no amount that could be counted, or need not be poured, in order.

    A line that is not understood is always among them; garnishes that are kept in words
    come last.
    """
    for line in spec.in_order:
        why = "not_understood" if isinstance(line, UnsettledLine) else _why(line)
        if why:
            yield LeftOut(spec.name, line, why)
    for garnish in garnishes_in_words(spec.notes):
        named = UnsettledLine(f"{GARNISH}{garnish}", len(spec.in_order), "")
        yield LeftOut(spec.name, named, "garnish")


def _why(line: Line) -> WhyLeftOut | None:
    if line.garnish:
        return "garnish"
    if line.optional:
        return "optional"
    if line.quantity is not None:
        return None
    return "no_amount" if line.amount is None else "not_convertible"
