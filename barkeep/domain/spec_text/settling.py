"""Lines that were kept with their questions: whether they are understood by now, and settled."""

from __future__ import annotations

from dataclasses import dataclass, replace

from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.lines import read_lines
from barkeep.domain.spec_text.text import for_one
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine


@dataclass(frozen=True, slots=True)
class OpenQuestion:
    """A line of a spec that was not understood; `settles` says that it would be by now."""

    line: UnsettledLine
    settles: bool

    @property
    def sentence(self) -> str:
        """The line, and what is asked about it or that nothing is any more."""
        if self.settles:
            return f"{self.line.named} is understood now and can be settled."
        return f"{self.line.named} is not understood. {self.line.question}"


def open_questions(
    spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS
) -> tuple[OpenQuestion, ...]:
    """The questions a spec was kept with, in the order of its lines."""
    return tuple(
        OpenQuestion(each, bool(_understood(each, spec, tree, units))) for each in spec.unsettled
    )


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
    """The lines it is read as, none where a question is left."""
    read = read_lines(line.text, tree, units)
    known = tuple(found for each in read if (found := for_one(each, spec.serves).known))
    asked = any(each.complaints for each in read) or len(known) < len(read)
    return () if asked else known
