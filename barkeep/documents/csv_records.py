"""Records out of a CSV text, whatever parts their fields."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.errors import Problem


@dataclass(frozen=True, slots=True)
class Record:
    """The fields of one record; `line` is the one it begins on, from 1."""

    line: int
    fields: Sequence[str]


def read_records(text: str) -> tuple[list[Record], Problem | None]:
    """The records that are not empty, and where the text breaks off if it does.

    Fields are parted by commas, semicolons or tabs, whichever the first line has most of.
    """
    plain = text.removeprefix("\ufeff")
    reader = csv.reader(io.StringIO(plain, newline=""), delimiter=_delimiter(plain))
    found: list[Record] = []
    line = 1
    try:
        for fields in reader:
            if any(field.strip() for field in fields):
                found.append(Record(line, fields))
            line = reader.line_num + 1
    except csv.Error as error:
        return found, Problem(line, 1, f"this is not CSV: {error}")
    return found, None


def fields_of_header(text: str) -> tuple[str, ...]:
    """The fields of the first line that says something, as far as it is CSV; none where it is not.

    >>> fields_of_header("spec;line\\nFog Lamp;60 ml gin")
    ('spec', 'line')
    """
    first = _first_line(text.removeprefix("\ufeff"))
    try:
        return tuple(next(csv.reader([first], delimiter=_delimiter(first)), ()))
    except csv.Error:
        return ()


def _delimiter(text: str) -> str:
    """What parts the fields of the first line that says something."""
    return max(",;\t", key=_first_line(text).count)


def _first_line(text: str) -> str:
    start = next((place for place, mark in enumerate(text) if not mark.isspace()), 0)
    return text[start:].split("\n", 1)[0].rstrip("\r")
