"""CSV and JSON out of a file that anyone may have written: located faults, and never a crash.

JSON is bounded in size and depth; whatever parts the fields of CSV, they are read.
"""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from barkeep.documents.csv_cells import read_cell
from barkeep.errors import Problem, UnreadableFile
from barkeep.translation import tr

DEEPEST = 60
"""No honest document nests deeper; a deeper one would only exhaust the machine."""
LARGEST_CHARACTERS = 50_000_000


# A text without its end is one up to the end of all, so that nothing is gone through twice.
_STRING_OR_BRACKET = re.compile(r'"(?:[^"\\]++|\\.)*+"?|[\[\]{}]', re.DOTALL)

_SEPARATOR = re.compile(r"sep=(?P<mark>[,;\t])\r?\n", re.IGNORECASE)


def read_json(text: str, file: str) -> Any:
    """The value of a JSON text. Raises `UnreadableFile` that says what is wrong and where."""
    if len(text) > LARGEST_CHARACTERS:
        raise UnreadableFile(
            file, tr("it has more than {most:,} characters", most=LARGEST_CHARACTERS)
        )
    _refuse_depth(text, file)
    try:
        # Not strict: saved pages hold line breaks inside their texts.
        plain = text.removeprefix("\ufeff")
        return json.loads(plain, parse_constant=_refuse_constant, strict=False)
    except json.JSONDecodeError as error:
        place = (error.lineno, error.colno)
        raise UnreadableFile(file, error.msg, *place, overall=tr("it is not JSON")) from None
    except ValueError as error:  # a number of thousands of digits, NaN
        raise UnreadableFile(file, str(error), overall=tr("it is not JSON")) from None


def _refuse_depth(text: str, file: str) -> None:
    # Before parsing: the parser itself would recurse as deep as the text does.
    depth = 0
    for found in _STRING_OR_BRACKET.finditer(text):
        mark = found.group()
        if mark in "[{":
            depth += 1
            if depth > DEEPEST:
                line = text.count("\n", 0, found.start()) + 1
                raise UnreadableFile(
                    file, tr("it is nested more than {most} deep", most=DEEPEST), line
                )
        elif mark in "]}":
            depth -= 1


def _refuse_constant(word: str) -> float:
    raise ValueError(f"{word} is no number of JSON")


@dataclass(frozen=True, slots=True)
class Record:
    """The fields of one record; `line` is the one it begins on, from 1.

    `row` is the record's number as a spreadsheet counts them, empty ones too.
    """

    line: int
    fields: Sequence[str]
    row: int = 0


def read_records(text: str) -> tuple[list[Record], Problem | None]:
    """The records that are not empty, and where the text breaks off if it does.

    Fields are parted by commas, semicolons or tabs, whichever the first line has most of,
    unless that line says which: *sep=;*, as some spreadsheets write it.
    """
    plain, said, before = _without_separator(text.removeprefix("\ufeff"))
    reader = csv.reader(io.StringIO(plain, newline=""), delimiter=said or _delimiter(plain))
    found: list[Record] = []
    line = before + 1
    try:
        for row, fields in enumerate(reader, 1):
            if any(field.strip() for field in fields):
                found.append(Record(line, [read_cell(each) for each in fields], row))
            line = before + reader.line_num + 1
    except csv.Error as error:
        return found, Problem(line, 1, tr("this is not CSV: {error}", error=error))
    return found, None


def fields_of_header(text: str) -> tuple[str, ...]:
    """The fields of the first line that says something, as far as it is CSV; none where it is not.

    >>> fields_of_header("spec;line\\nFog Lamp;60 ml gin")
    ('spec', 'line')
    """
    plain, said, _lines = _without_separator(text.removeprefix("\ufeff"))
    first = _first_line(plain)
    try:
        return tuple(next(csv.reader([first], delimiter=said or _delimiter(first)), ()))
    except csv.Error:
        return ()


def _without_separator(text: str) -> tuple[str, str, int]:
    """A text without the line that says what parts its fields, that mark, and its lines."""
    said = _SEPARATOR.match(text)
    return (text[said.end() :], said["mark"], 1) if said else (text, "", 0)


def _delimiter(text: str) -> str:
    """What parts the fields of the first line that says something."""
    return max(",;\t", key=_first_line(text).count)


def _first_line(text: str) -> str:
    start = next((place for place, mark in enumerate(text) if not mark.isspace()), 0)
    return text[start:].split("\n", 1)[0].rstrip("\r")
