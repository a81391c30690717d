"""Where in a document a problem of one of its specs stands."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import replace

from barkeep.domain.spec_parts import SpecParts
from barkeep.errors import Problem

_LINE = re.compile(r"line ([0-9]{1,9})")


def placed(problem: Problem, parts: SpecParts, text: str) -> Problem:
    """A problem of `read_parts` with its line and column in the document `text`, from 1.

    That is looked for by the words of the ingredient after those of the name;
    where a format hides them, it is where the spec begins.
    """
    start = _start(parts, text)
    begins = _find(parts.name, text, start)
    place, column = start if begins is None else begins, 1
    if 0 < problem.line <= len(parts.lines):
        found = _find(parts.lines[problem.line - 1], text, place)
        if found is not None:
            place, column = found, problem.column
    line = text.count("\n", 0, place) + 1
    return replace(problem, line=line, column=place - text.rfind("\n", 0, place) - 1 + column)


def _start(parts: SpecParts, text: str) -> int:
    """Where the line begins that the document's reader has told, else the document."""
    told = _LINE.fullmatch(parts.where)
    place = 0
    for _ in range(int(told[1]) - 1 if told else 0):
        place = text.find("\n", place) + 1
        if not place:
            return 0
    return place


def _find(words: str, text: str, after: int) -> int | None:
    places = (text.find(each, after) for each in _forms(words) if each)
    return next((place for place in places if place >= 0), None)


def _forms(words: str) -> Iterator[str]:
    """Words as they are, and as JSON writes them."""
    yield words
    yield json.dumps(words, ensure_ascii=False)[1:-1]
    yield json.dumps(words)[1:-1]
