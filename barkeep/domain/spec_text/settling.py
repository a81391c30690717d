"""Lines that were kept with their questions: whether they are understood by now, and settled."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.lines import ReadLine, read_lines
from barkeep.domain.spec_text.text import for_one, question_in
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.translation import kept_in_english, tr


@dataclass(frozen=True, slots=True)
class OpenQuestion:
    """A line of a spec that was not understood; `settles` says that it would be by now.

    `asked` is its question, in the language that is spoken.
    """

    line: UnsettledLine
    settles: bool
    asked: str

    @property
    def sentence(self) -> str:
        """The line, and what is asked about it or that nothing is any more."""
        if self.settles:
            return tr("{line} is understood now and can be settled.", line=self.line.named)
        return tr("{line} is not understood. {question}", line=self.line.named, question=self.asked)


def open_questions(
    spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS
) -> tuple[OpenQuestion, ...]:
    """The questions a spec was kept with, in the order of its lines."""
    return tuple(_asked_again(each, spec, tree, units) for each in spec.unsettled)


def _asked_again(
    line: UnsettledLine, spec: Spec, tree: FamilyTree, units: BarUnits
) -> OpenQuestion:
    read = read_lines(line.text, tree, units)
    return OpenQuestion(line, bool(_all_known(read, spec)), _in_words(line, read, tree))


def _in_words(line: UnsettledLine, read: Sequence[ReadLine], tree: FamilyTree) -> str:
    """The question a line was kept with; where it would be asked so again, as it is said now."""
    with kept_in_english():
        again = question_in(read, tree)
    return question_in(read, tree) if again == line.question else line.question


def settled(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> Spec:
    """The spec with every line that is understood by now; all that was before stays as it is."""
    lines: list[Line] = []
    left: list[UnsettledLine] = []
    for each in spec.in_order:
        found = _understood(each, spec, tree, units) if isinstance(each, UnsettledLine) else (each,)
        lines += found
        if isinstance(each, UnsettledLine) and not found:
            left.append(replace(each, place=len(lines) + len(left)))
    return replace(spec, lines=tuple(lines), unsettled=tuple(left))


def _understood(
    line: UnsettledLine, spec: Spec, tree: FamilyTree, units: BarUnits
) -> tuple[Line, ...]:
    return _all_known(read_lines(line.text, tree, units), spec)


def _all_known(read: Sequence[ReadLine], spec: Spec) -> tuple[Line, ...]:
    """The lines of a text as it was read, none where a question is left."""
    known = tuple(found for each in read if (found := for_one(each, spec.serves).known))
    asked = any(each.complaints for each in read) or len(known) < len(read)
    return () if asked else known
