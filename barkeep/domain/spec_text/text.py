"""Specs as plain text, read with located problems.

A spec is its name, then a line for each ingredient and, if wanted, *Glass:*,
*Ice:*, *Garnish:*, *Serves:*, *Tags:*, *Credit:*, *Source:*, *Notes:* and
*Riff of:*; after an empty line comes the method. Several specs in one text are
parted by a line of dashes or by two empty lines; a line of ingredients within
a method is taken for a sign that they were not. A name, or a row of a method,
that would be taken for something else has *Name:* or *Method:* before it.

`barkeep.domain.spec_text.writing` writes the same form.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from barkeep.domain.amounts.amount import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.headers import RULE, header_in
from barkeep.domain.spec_text.reading import HOW_PARTED, Hints, Reading, ReadSpec, is_a_line
from barkeep.domain.spec_text.writing import (
    composed,
    line_text,
    text_around,
    write_spec,
    write_specs,
)
from barkeep.errors import Problem

__all__ = [
    "HOW_PARTED",
    "ReadSpec",
    "composed",
    "each_spec",
    "line_text",
    "names_twice",
    "read_specs",
    "text_around",
    "write_spec",
    "write_specs",
]


MOST_SPECS = 20_000
"""Specs of one text; a book never holds more, and other texts only look like one."""

_NEWLINE = re.compile(r"\r\n|\r|\n")


@dataclass(frozen=True, slots=True)
class _Row:
    """One line of the text; numbers count from 1."""

    number: int
    text: str

    @property
    def empty(self) -> bool:
        return not self.text.strip()

    @property
    def column(self) -> int:
        """Where its words begin, from 1."""
        return len(self.text) - len(self.text.lstrip()) + 1


def read_specs(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> tuple[ReadSpec, ...]:
    """Every spec of a text, in order, at a bar that means `units` by its measures.

    Never raises: what is wrong is in each spec's problems.
    """
    return tuple(each_spec(text, tree, units))


def each_spec(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> Iterator[ReadSpec]:
    """As `read_specs`, one spec at a time."""
    hints = Hints()
    for count, rows in enumerate(_blocks(text)):
        row = rows[0].number
        if count == MOST_SPECS:
            message = f"a text holds at most {MOST_SPECS:,} specs; from here on it is not read"
            yield ReadSpec(
                spec=None,
                name="",
                lines=(),
                method="",
                glass="",
                problems=(Problem(row, 1, message),),
                row=row,
            )
            return
        yield _read_one(rows, Reading(tree, units, row, hints))


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
        parted = RULE.fullmatch(line.strip()) or (row.empty and rows and rows[-1].empty)
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


def _read_one(rows: Sequence[_Row], reading: Reading) -> ReadSpec:
    in_method = False
    for row in _after_name(reading, rows):
        header = None if row.empty else header_in(row.text)
        if header and header.name == "method":
            in_method = True
            reading.take_method(header.value, row.number, row.column, sure=bool(header.value))
        elif header:
            reading.take_header(header, row.number)
        elif in_method:
            reading.take_method(row.text, row.number, row.column)
        elif row.empty:
            in_method = bool(reading.lines)
        else:
            in_method = reading.take_line(row.text, row.number)
    return reading.finished()


def _after_name(reading: Reading, rows: Sequence[_Row]) -> Sequence[_Row]:
    """The rows after the name, which is the first unless that is plainly something else."""
    first = rows[0]
    header = header_in(first.text)
    if header and header.name == "name" and header.value:
        reading.take_name(header.value, first.number)
        return rows[1:]
    if header or is_a_line(first.text, reading.tree):
        message = "a spec begins with the name of the drink on a line of its own"
        reading.complain(first.number, 1, message)
        return rows
    reading.take_name(first.text, first.number)
    return rows[1:]
