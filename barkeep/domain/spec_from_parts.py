"""A spec from the pieces that a foreign document gives, read as its text would be."""

from __future__ import annotations

from dataclasses import replace

from barkeep.domain.amounts import US_UNITS, BarUnits
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.spec_headers import MOST_SERVES, distinct_tags, header_in
from barkeep.domain.spec_parts import SpecParts
from barkeep.domain.spec_reading import MOST_LINES, Reading, ReadSpec
from barkeep.errors import Problem


def read_parts(parts: SpecParts, tree: FamilyTree, units: BarUnits = US_UNITS) -> ReadSpec:
    """Read one spec at a bar that means `units` by its measures. Never raises.

    A problem's line is the number of the ingredient it is in, from 1, and its
    column a place in that ingredient's text; what it says names both the
    recipe and the ingredient. What concerns the whole recipe is in line 0.
    """
    reading = Reading(tree, units, 0)
    if parts.name.strip():
        reading.take_name(parts.name, 0)
    else:
        reading.complain(0, 1, "it has no name")
    for number, text in enumerate(parts.lines[: MOST_LINES + 1], 1):
        _take_line(reading, text, number)
    for step in parts.method:
        reading.take_method(step, 0, 1, sure=True)
    _take_fields(reading, parts)
    read = reading.finished()
    told = tuple(_told(each, read.name, parts) for each in read.problems)
    return replace(read, problems=told)


def _take_line(reading: Reading, text: str, number: int) -> None:
    """Take an ingredient in; one that says *Garnish:* is one."""
    plain = " ".join(text.split())
    header = header_in(plain)
    if header and header.name == "garnish":
        reading.take_header(header, number)
    elif plain:
        begun = len(reading.method)
        if reading.take_line(plain, number):
            del reading.method[begun:]
            reading.complain(number, 1, "this reads like a step of the method")


def _take_fields(reading: Reading, parts: SpecParts) -> None:
    fields = reading.fields
    once = {
        "glass": parts.glass,
        "ice": parts.ice,
        "riff of": parts.riff_of,
        "credit": parts.credit,
    }
    for name, value in once.items():
        if value.strip():
            fields.once[name] = " ".join(value.split())
    fields.notes += [" ".join(note.split()) for note in parts.notes if note.strip()]
    fields.tags += distinct_tags(parts.tags)
    if parts.serves is not None:
        fields.serves = parts.serves
        if not 0.0 < parts.serves <= MOST_SERVES:
            fields.serves = None
            highest = f"{MOST_SERVES:.0f}"
            message = f"serves cannot be {parts.serves:g}: it is a number from 1 to {highest}"
            reading.complain(0, 1, message)


def _told(problem: Problem, name: str, parts: SpecParts) -> Problem:
    """A problem that says for itself in which ingredient of which recipe it is."""
    recipe = f"“{name}”" if name else parts.where or "a recipe without a name"
    where = f"ingredient {problem.line} of {recipe}" if problem.line else recipe
    return replace(problem, message=f"{where}: {problem.message}")
