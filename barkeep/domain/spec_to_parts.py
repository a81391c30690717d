"""From a spec to the texts that a document gives of it."""

from __future__ import annotations

from barkeep.domain.amounts import US_UNITS, BarUnits
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.spec_parts import SpecParts
from barkeep.domain.spec_text import line_text
from barkeep.domain.specs import Line, Spec

GARNISH = "Garnish:"


def parts_of(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> SpecParts:
    """The texts of a spec; `serves` is left out for one serve.

    Its lines read back to what they are at a bar that means `units` by its measures.
    """
    return SpecParts(
        spec.name,
        tuple(_line(line, tree, units) for line in spec.lines),
        tuple(_method(spec.method)),
        spec.glass,
        spec.ice,
        tuple(note.strip() for note in spec.notes.splitlines() if note.strip()),
        spec.riff_of or "",
        None if spec.serves == 1.0 else spec.serves,
        spec.tags,
        spec.credit,
    )


def _line(line: Line, tree: FamilyTree, units: BarUnits) -> str:
    """A garnish says that it is one, whatever it was written under."""
    text = line_text(line, tree, units)
    said = text.casefold().startswith(GARNISH.casefold())
    return f"{GARNISH} {text}" if line.garnish and not said else text


def _method(text: str) -> list[str]:
    """Each line of a method, one empty text between paragraphs and none at the ends."""
    steps: list[str] = []
    for row in text.split("\n"):
        step = " ".join(row.split())
        if step or (steps and steps[-1]):
            steps.append(step)
    return steps[:-1] if steps and not steps[-1] else steps
