"""The pieces of a foreign document as plain text that an editor can go on with."""

from __future__ import annotations

from collections.abc import Sequence

from barkeep.domain.spec_parts import SpecParts
from barkeep.domain.spec_text import text_around
from barkeep.domain.specs import Spec


def text_of_parts(parts: SpecParts) -> str:
    """One spec as plain text, its lines as the document gives them.

    Nothing is read, so nothing is lost that could not be.
    """
    around = Spec(
        _row(parts.name),
        (),
        "\n".join(_row(step) for step in parts.method),
        glass=_row(parts.glass),
        ice=_row(parts.ice),
        notes="\n".join(_row(note) for note in parts.notes),
        riff_of=_row(parts.riff_of) or None,
        serves=parts.serves or 1.0,
        tags=tuple(_row(tag) for tag in parts.tags),
        credit=_row(parts.credit),
    )
    return text_around(around, [row for line in parts.lines if (row := _row(line))])


def text_of_all(specs: Sequence[SpecParts]) -> str:
    """Several specs as one text."""
    return "---\n".join(text_of_parts(each) for each in specs)


def _row(text: str) -> str:
    return " ".join(text.split())
