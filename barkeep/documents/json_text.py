"""JSON out of a file that anyone may have written: bounded in size and depth, and never a crash."""

from __future__ import annotations

import json
import re
from typing import Any

from barkeep.errors import UnreadableFile

DEEPEST = 60
"""No honest document nests deeper; a deeper one would only exhaust the machine."""

LARGEST_CHARACTERS = 50_000_000


# A text without its end is one up to the end of all, so that nothing is gone through twice.
_STRING_OR_BRACKET = re.compile(r'"(?:[^"\\]++|\\.)*+"?|[\[\]{}]', re.DOTALL)


def read_json(text: str, file: str) -> Any:
    """The value of a JSON text. Raises `UnreadableFile` that says what is wrong and where."""
    if len(text) > LARGEST_CHARACTERS:
        raise UnreadableFile(file, f"it has more than {LARGEST_CHARACTERS:,} characters")
    _refuse_depth(text, file)
    try:
        # Not strict: saved pages hold line breaks inside their texts.
        plain = text.removeprefix("\ufeff")
        return json.loads(plain, parse_constant=_refuse_constant, strict=False)
    except json.JSONDecodeError as error:
        place = (error.lineno, error.colno)
        raise UnreadableFile(file, error.msg, *place, overall="it is not JSON") from None
    except ValueError as error:  # a number of thousands of digits, NaN
        raise UnreadableFile(file, str(error), overall="it is not JSON") from None


def _refuse_depth(text: str, file: str) -> None:
    # Before parsing: the parser itself would recurse as deep as the text does.
    depth = 0
    for found in _STRING_OR_BRACKET.finditer(text):
        mark = found.group()
        if mark in "[{":
            depth += 1
            if depth > DEEPEST:
                line = text.count("\n", 0, found.start()) + 1
                raise UnreadableFile(file, f"it is nested more than {DEEPEST} deep", line)
        elif mark in "]}":
            depth -= 1


def _refuse_constant(word: str) -> float:
    raise ValueError(f"{word} is no number of JSON")
