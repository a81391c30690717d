"""Specs as plain text: read with located problems, and written so that they read back.

A spec is its name, then a line for each ingredient and, if wanted, *Glass:*,
*Ice:*, *Garnish:*, *Notes:* and *Riff of:*; after an empty line comes the
method. Several specs in one text are parted by a line of dashes or by two
empty lines; a line of ingredients within a method is taken for a sign that
they were not.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal
from functools import partial

from barkeep.domain.amounts import (
    US_UNITS,
    BarUnits,
    amount_at_start,
    show_number,
    unit_words,
)
from barkeep.domain.ingredient_names import ADJUSTED
from barkeep.domain.ingredients import FamilyTree, folded
from barkeep.domain.shown_lines import worded
from barkeep.domain.spec_lines import LineReading, ReadLine, as_line, read_line
from barkeep.domain.specs import Line, Spec
from barkeep.domain.technique import begins_a_method, technique_of
from barkeep.errors import Problem

_NEWLINE = re.compile(r"\r\n|\r|\n")
_RULE = re.compile(r"-{3,}|={3,}")
_HEADER = re.compile(
    r"\s*(?P<name>glass(?:ware)?|ice|garnish|notes?|riff of|method|instructions"
    r"|ingredients(?=\s*:\s*$))\s*:"
    r"\s*(?P<value>.*)",
    re.IGNORECASE,
)
HOW_PARTED = "part specs with a line of --- or two empty lines"
_BETWEEN = re.compile(r"\s*(?:,|&|\+|;|\band\b)\s*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class ReadSpec:
    """One spec of a text as it was read. `spec` is None where there are problems.

    `row` is the line of the text it begins on, from 1.
    """

    spec: Spec | None
    name: str
    lines: tuple[ReadLine, ...]
    method: str
    glass: str
    problems: tuple[Problem, ...]
    row: int = 1


@dataclass(frozen=True, slots=True)
class _Row:
    """One line of the text; numbers count from 1."""

    number: int
    text: str

    @property
    def empty(self) -> bool:
        return not self.text.strip()


@dataclass
class _Reading:
    """A spec while its rows are gone through."""

    tree: FamilyTree
    units: BarUnits
    name: str = ""
    lines: list[ReadLine] = field(default_factory=list)
    method: list[str] = field(default_factory=list)
    headers: dict[str, list[str]] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)


def read_specs(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> tuple[ReadSpec, ...]:
    """Every spec of a text, in order, at a bar that means `units` by its measures.

    Never raises: what is wrong is in each spec's problems.
    """
    return tuple(_read_one(rows, tree, units) for rows in _blocks(text))


def names_twice(specs: Iterable[ReadSpec]) -> Iterator[Problem]:
    """A problem for each spec of a text whose name an earlier one of it has."""
    first: dict[str, int] = {}
    for each in specs:
        row = first.setdefault(folded(each.name), each.row)
        if each.name and row != each.row:
            message = f"“{each.name}” is in this text twice; it is also on line {row}"
            yield Problem(each.row, 1, message)


def _blocks(text: str) -> Iterator[list[_Row]]:
    """The rows of each spec, without the empty ones around them."""
    rows: list[_Row] = []
    for number, line in enumerate(_NEWLINE.split(text.removeprefix("\ufeff")), 1):
        row = _Row(number, line)
        parted = _RULE.fullmatch(line.strip()) or (row.empty and rows and rows[-1].empty)
        if parted:
            yield from _trimmed(rows)
            rows = []
        elif rows or not row.empty:
            rows.append(row)
    yield from _trimmed(rows)


def _trimmed(rows: list[_Row]) -> Iterator[list[_Row]]:
    while rows and rows[-1].empty:
        rows = rows[:-1]
    if rows:
        yield rows


def _read_one(rows: Sequence[_Row], tree: FamilyTree, units: BarUnits) -> ReadSpec:
    reading = _Reading(tree, units)
    rest = _take_name(reading, rows)
    in_method = False
    for row in rest:
        header = _HEADER.fullmatch(row.text)
        if header and header["name"].casefold() not in ("method", "instructions"):
            _take_header(reading, header)
        elif header or in_method:
            in_method = True
            _take_method(reading, row, header["value"] if header else row.text)
        elif row.empty:
            in_method = bool(reading.lines)
        else:
            in_method = _take_line(reading, row)
    return _finished(reading, rows[0])


def _take_name(reading: _Reading, rows: Sequence[_Row]) -> Sequence[_Row]:
    """The name is the first row, unless that is plainly something else."""
    first = rows[0]
    if _HEADER.fullmatch(first.text) or _is_a_line(first.text, reading.tree):
        message = "a spec begins with the name of the drink on a line of its own"
        reading.problems.append(Problem(first.number, 1, message))
        return rows
    reading.name = " ".join(first.text.split())
    return rows[1:]


def _is_a_line(text: str, tree: FamilyTree) -> bool:
    """Whether a text has a number, a unit and a known ingredient."""
    if not any(mark.isnumeric() for mark in text[:20]):
        return False
    line = read_line(text, tree).line
    return line.ingredient is not None and line.unit not in (None, "each")


def _take_header(reading: _Reading, header: re.Match[str]) -> None:
    name, value = header["name"].casefold(), " ".join(header["value"].split())
    name = {"note": "notes", "glassware": "glass"}.get(name, name)
    if name == "garnish" and value:
        _take_garnish(reading, value)
    elif value:
        reading.headers.setdefault(name, []).append(value)


def _take_garnish(reading: _Reading, value: str) -> None:
    """Garnishes that are ingredients become lines; anything else is kept as a note."""
    for text, read in _garnishes(value, reading):
        if read.complaints:
            reading.headers.setdefault("notes", []).append(f"Garnish: {text}")
        else:
            reading.lines.append(replace(read.line, text=f"Garnish: {read.line.text}"))


def _garnishes(value: str, reading: _Reading) -> Sequence[tuple[str, LineReading]]:
    """The garnishes of one line: its parts where each is one, else all of it, else some."""
    read = partial(read_line, tree=reading.tree, units=reading.units, garnish=True)
    parts = [(part, read(part)) for part in _BETWEEN.split(value) if part]
    whole = read(value)
    understood = [not each.complaints for _, each in parts]
    if all(understood) or (whole.complaints and any(understood)):
        return parts
    return [(value, whole)]


def _take_line(reading: _Reading, row: _Row) -> bool:
    """Take a line in; whether it turned out to begin the method instead."""
    read = read_line(row.text, reading.tree, reading.units)
    if read.complaints and reading.lines and begins_a_method(row.text):
        reading.method.append(row.text)
        return True
    reading.lines.append(read.line)
    for complaint in read.complaints:
        reading.problems.append(Problem(row.number, complaint.at + 1, complaint.say()))
    return False


def _take_method(reading: _Reading, row: _Row, text: str) -> None:
    """Take a row of the method in; of several in a row that are none the first is told."""
    plain = " ".join(text.split())
    stray = _is_plainly_a_line(plain, reading.tree)
    if stray and not (reading.method and _is_plainly_a_line(reading.method[-1], reading.tree)):
        begun = any(each.strip() for each in reading.method)
        message = (
            f"this looks like a line of another spec; {HOW_PARTED}"
            if begun
            else "this looks like an ingredient; it belongs above the empty line before the method"
        )
        column = len(row.text) - len(row.text.lstrip()) + 1
        reading.problems.append(Problem(row.number, column, message))
    reading.method.append(plain)


def _is_plainly_a_line(text: str, tree: FamilyTree) -> bool:
    """Whether a text is an amount, a unit and a name with hardly a word beside them."""
    if not _is_a_line(text, tree):
        return False
    read = read_line(text, tree)
    return not read.complaints and read.line.confidence >= ADJUSTED


def _finished(reading: _Reading, first: _Row) -> ReadSpec:
    headers = {name: values[-1] for name, values in reading.headers.items()}
    method = _joined(reading.method)
    lines = tuple(line for each in reading.lines if (line := as_line(each)))
    if not any(line.required for line in lines) and not reading.problems:
        message = "a spec needs at least one line such as “60 ml London dry gin”"
        reading.problems.append(Problem(first.number, 1, message))
    spec = Spec(
        reading.name,
        lines,
        method,
        technique_of(method),
        headers.get("glass", ""),
        headers.get("ice", ""),
        "\n".join(reading.headers.get("notes", ())),
        headers.get("riff of"),
    )
    return ReadSpec(
        None if reading.problems else spec,
        reading.name,
        tuple(reading.lines),
        method,
        spec.glass,
        tuple(reading.problems),
        first.number,
    )


def _joined(rows: Sequence[str]) -> str:
    """A method's rows: paragraphs parted by one empty line, no space at the ends."""
    return re.sub(r"\n{2,}", "\n\n", "\n".join(" ".join(row.split()) for row in rows)).strip()


def write_spec(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A spec as text that `read_specs` reads back at the same bar.

    A line's own text is kept where it says what the line says; otherwise the
    line is written anew from its fields.
    """
    return text_around(spec, [line_text(line, tree, units) for line in spec.lines])


def text_around(spec: Spec, lines: Iterable[str]) -> str:
    """A spec as text, with the lines of its ingredients as given."""
    head = [spec.name]
    if spec.riff_of:
        head.append(f"Riff of: {spec.riff_of}")
    head += lines
    for name, value in (("Glass", spec.glass), ("Ice", spec.ice)):
        if value:
            head.append(f"{name}: {value}")
    head += [f"Notes: {note}" for note in spec.notes.splitlines() if note.strip()]
    text = "\n".join(head)
    method = _joined(spec.method.split("\n"))
    return f"{text}\n\n{method}\n" if method else f"{text}\n"


def write_specs(specs: Sequence[Spec], tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """Several specs as one text."""
    return "---\n".join(write_spec(spec, tree, units) for spec in specs)


def line_text(line: Line, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A line as text that reads back to it: as it was written, or else composed anew."""
    return line.text if _reads_back(line, tree, units) else composed(line, tree, units)


def composed(line: Line, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """A line's text made from its fields."""
    return worded(line, tree.name(line.ingredient), _amount_text(line, units))


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
    header = _HEADER.fullmatch(line.text)
    if header and header["name"].casefold() == "garnish":
        read = read_line(header["value"], tree, units, garnish=True)
        again = replace(read.line, text=line.text)
    else:
        read = read_line(line.text, tree, units)
        again = read.line
    # The quantity follows from the rest, and from what a dash is at this bar.
    return not read.complaints and as_line(replace(again, quantity=line.quantity)) == line
