"""Specs as plain text that `barkeep.domain.spec_text.text` reads back."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from barkeep.domain.amounts.amount import (
    US_UNITS,
    BarUnits,
    amount_at_start,
    show_number,
    unit_words,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.headers import RULE, header_in
from barkeep.domain.spec_text.lines import read_lines
from barkeep.domain.spec_text.reading import is_a_line, is_plainly_a_line, joined
from barkeep.domain.specs.shown_lines import names_of, worded
from barkeep.domain.specs.spec import Line, Spec


def write_spec(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A spec as text that `read_specs` reads back at the same bar.

    A line's own text is kept where it says what the line says; otherwise the
    line is written anew from its fields.
    """
    lines = [line_text(line, tree, units) for line in spec.lines]
    return _text(spec, lines, [_method_row(row, tree) for row in _rows(spec)], tree)


def text_around(spec: Spec, lines: Iterable[str]) -> str:
    """A spec as text, with the lines of its ingredients as given."""
    return _text(spec, lines, _rows(spec), None)


def write_specs(specs: Sequence[Spec], tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """Several specs as one text."""
    return "---\n".join(write_spec(spec, tree, units) for spec in specs)


def line_text(line: Line, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A line as text that reads back to it: as it was written, or else composed anew."""
    return line.text if _reads_back(line, tree, units) else composed(line, tree, units)


def composed(line: Line, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A line's text made from its fields."""
    return worded(line, names_of(line, tree), _amount_text(line, units))


def _text(spec: Spec, lines: Iterable[str], method: Sequence[str], tree: FamilyTree | None) -> str:
    name = " ".join(spec.name.split())
    misread = header_in(name) or RULE.fullmatch(name) or (tree and is_a_line(name, tree))
    head = [f"Name: {name}" if misread else name]
    head += [f"Riff of: {spec.riff_of}"] if spec.riff_of else []
    head += lines
    head += (f"{field}: {value}" for field, value in _fields(spec) if value)
    head += [f"Notes: {note}" for note in spec.notes.splitlines() if note.strip()]
    text = "\n".join(head) + "\n"
    return "\n".join((text, *method, "")) if method else text


def _fields(spec: Spec) -> Iterator[tuple[str, str]]:
    yield "Glass", spec.glass
    yield "Ice", spec.ice
    yield "Serves", "" if spec.serves == 1.0 else _exact(spec.serves)
    yield "Tags", ", ".join(spec.tags)
    yield "Credit", spec.credit
    yield "Source", spec.source


def _rows(spec: Spec) -> list[str]:
    method = joined(spec.method.split("\n"))
    return method.split("\n") if method else []


def _method_row(row: str, tree: FamilyTree) -> str:
    """A row of a method, with *Method:* before one that would be taken for something else."""
    misread = header_in(row) or RULE.fullmatch(row) or is_plainly_a_line(row, tree)
    return f"Method: {row}" if misread else row


def _amount_text(line: Line, units: BarUnits) -> str:
    if line.amount is None:
        return ""
    high = "" if line.amount_high is None else f"-{_exact(line.amount_high)}"
    unit = "" if line.unit in (None, "each") else f" {unit_words(str(line.unit), units)}"
    return f"{_exact(line.amount)}{high}{unit}"


def _exact(value: float) -> str:
    """A number that reads back to the very same."""
    shown = show_number(value, fractions=True, mark=".")
    read = amount_at_start(shown)
    return shown if read and read.value == value else f"{Decimal(repr(value)):f}"


def _reads_back(line: Line, tree: FamilyTree, units: BarUnits) -> bool:
    header = header_in(line.text)
    if header and header.name != "garnish":
        return False
    text = header.value if header else line.text
    read = read_lines(text, tree, units, garnish=header is not None)
    if len(read) != 1 or read[0].complaints:
        return False
    # The quantity follows from the rest, and from what a dash is at this bar.
    again = replace(read[0].line, text=line.text, quantity=line.quantity)
    return line.text == line.text.strip() and again == line
