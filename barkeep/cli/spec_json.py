"""Specs as JSON gives them, with stable keys."""

from __future__ import annotations

from collections.abc import Sequence

from barkeep.cli.output import iso, rounded
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.lines import ReadLine, read_line
from barkeep.domain.spec_text.text import ReadSpec
from barkeep.domain.specs.shown_lines import ShownLine, without_garnish
from barkeep.domain.specs.spec import Line, Spec


def read_json(spec: ReadSpec, tree: FamilyTree) -> dict[str, object]:
    """A spec as it was read from a text."""
    return {
        "name": spec.name,
        "lines": [_line_json(line, tree) for line in spec.lines],
        "method": spec.method,
        "glass": spec.glass,
        "problems": [
            {"line": each.line, "column": each.column, "message": each.message}
            for each in spec.problems
        ],
        **_service(spec.spec),
    }


def spec_json(
    spec: Spec, tree: FamilyTree, shown: Sequence[ShownLine] | None = None
) -> dict[str, object]:
    """A spec of the book: as it is read, with the day it came in and what it is a riff of.

    `shown` adds to each line its amount as it is shown.
    """
    lines = tuple(_as_read(line, tree) for line in spec.lines)
    found = {
        **read_json(ReadSpec(spec, lines), tree),
        "added": iso(spec.added),
        "riff_of": spec.riff_of,
    }
    if shown is not None:
        pairs = zip(lines, shown, strict=True)
        found["lines"] = [{**_line_json(line, tree), "shown": each.amount} for line, each in pairs]
    return found


def _service(spec: Spec | None) -> dict[str, object]:
    """What a spec says beside its lines; null where it has problems and is no spec yet."""
    return {
        "ice": spec and spec.ice,
        "notes": spec and spec.notes,
        "serves": spec and spec.serves,
        "tags": spec and list(spec.tags),
        "credit": spec and spec.credit,
        "source": spec and spec.source,
    }


def _as_read(line: Line, tree: FamilyTree) -> ReadLine:
    """A line with the name in its text that was taken for its ingredient."""
    again = read_line(without_garnish(line.text), tree)
    matched, confidence = tree.name(line.ingredient), 1.0
    if again.line.ingredient == line.ingredient:
        matched, confidence = again.matched or matched, again.confidence
    return ReadLine(line, matched=matched, confidence=confidence)


def _line_json(read: ReadLine, tree: FamilyTree) -> dict[str, object]:
    line = read.line
    return {
        "text": line.text,
        "amount": rounded(line.amount, 4),
        "amount_high": rounded(line.amount_high, 4),
        "unit": line.unit,
        "ingredient": tree.name(line.ingredient) if line.ingredient else None,
        "matched": read.matched,
        "confidence": read.confidence,
        "optional": line.optional,
        "garnish": line.garnish,
        "note": line.note,
        "alternatives": [tree.name(key) for key in line.alternatives],
        "guesses": [
            {"ingredient": each.matched, "confidence": each.confidence} for each in read.guesses
        ],
    }
