"""A spec while it is being read, from a text or from the pieces of a document."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from functools import partial

from barkeep.domain.amounts.amount import BarUnits
from barkeep.domain.ingredients.names import ADJUSTED, SUGGESTIONS, guesses
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.headers import Header, HeaderFields
from barkeep.domain.spec_text.lines import (
    LONGEST,
    Complaint,
    ReadLine,
    read_line,
    read_lines,
    unknown_name,
)
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.technique import begins_a_method, technique_of
from barkeep.errors import Problem

HOW_PARTED = "part specs with a line of --- or two empty lines"
MOST_LINES = 100
"""Ingredients of one spec; a longer text is no spec, and reading it all would only take time."""
MOST_STEPS = 500
"""Lines of one method, for the same reason."""
MOST_PROBLEMS = 100
"""Of one spec; whoever puts these right is told of the next ones."""
MOST_HINTS = 200
"""Unknown names of one text for which the nearest known ones are looked up."""
LONGEST_NAME = 200
_BETWEEN = re.compile(r"[ ]?(?:,|&|\+|;|\band\b)[ ]?", re.IGNORECASE)


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


@dataclass
class Hints:
    """How many more unknown names of a text are worth looking up."""

    left: int = MOST_HINTS


@dataclass
class Reading:
    """A spec while its rows are gone through; `row` is where it begins."""

    tree: FamilyTree
    units: BarUnits
    row: int = 1
    hints: Hints = field(default_factory=Hints)
    name: str = ""
    lines: list[ReadLine] = field(default_factory=list)
    method: list[str] = field(default_factory=list)
    fields: HeaderFields = field(default_factory=HeaderFields)
    problems: list[Problem] = field(default_factory=list)
    _full: set[str] = field(default_factory=set)
    _stray: bool = False

    def complain(self, row: int, column: int, message: str, unknown: str | None = None) -> None:
        """Note a problem; row and column count from 1. `unknown` is as in `Problem`."""
        if len(self.problems) == MOST_PROBLEMS:
            message = f"more than {MOST_PROBLEMS} things cannot be used; this is the first not told"
            unknown = None
        if len(self.problems) <= MOST_PROBLEMS:
            self.problems.append(Problem(row, column, message, unknown))

    def take_name(self, name: str, row: int) -> None:
        """Take the name in."""
        self.name = " ".join(name.split())
        if len(self.name) > LONGEST_NAME:
            self.complain(row, 1, f"the name of a drink has at most {LONGEST_NAME} characters")
            self.name = self.name[:LONGEST_NAME].rstrip()

    def take_header(self, header: Header, row: int) -> None:
        """Take a field in, a garnish as lines of its own."""
        if header.name == "garnish":
            if header.value:
                self._take_garnish(header.value, row)
            return
        wrong = self.fields.take(header, self.units)
        if wrong:
            self.complain(row, header.at + 1, wrong)

    def take_line(self, text: str, row: int) -> bool:
        """Take a line in; whether it turned out to begin the method instead."""
        if len(self.lines) >= MOST_LINES:
            self._refuse_more(row, MOST_LINES, "ingredients")
            return False
        read = read_lines(text, self.tree, self.units)
        wrong = any(each.complaints for each in read)
        if wrong and self.lines and begins_a_method(text):
            self.method.append(text)
            return True
        for each in read:
            line = replace(each, row=row, complaints=())
            for complaint in each.complaints:
                line, message = self._told(line, complaint)
                self.complain(row, complaint.at + 1, message, complaint.unknown)
            self.lines.append(line)
        return False

    def take_method(self, text: str, row: int, column: int, *, sure: bool = False) -> None:
        """Take a row of the method in, unless `sure`, with a look whether it is one.

        Of several in a row that are none the first is told.
        """
        if len(self.method) >= MOST_STEPS:
            self._refuse_more(row, MOST_STEPS, "lines of method")
            return
        plain = " ".join(text.split())
        before, self._stray = self._stray, not sure and is_plainly_a_line(plain, self.tree)
        if self._stray and not before:
            begun = any(each.strip() for each in self.method)
            message = (
                f"this looks like a line of another spec; {HOW_PARTED}"
                if begun
                else "this looks like an ingredient; it belongs above the empty line "
                "before the method"
            )
            self.complain(row, column, message)
        self.method.append(plain)

    def finished(self) -> ReadSpec:
        """The spec as it was read."""
        method, fields = joined(self.method), self.fields
        serves = fields.serves or 1.0
        read = tuple(_for_one(line, serves) for line in self.lines)
        lines = tuple(line for each in read if (line := each.known))
        if not any(line.required for line in lines) and not self.problems:
            message = "a spec needs at least one line such as “60 ml London dry gin”"
            self.complain(self.row, 1, message)
        spec = Spec(
            name=self.name,
            lines=lines,
            method=method,
            technique=technique_of(method),
            glass=fields.once.get("glass", ""),
            ice=fields.once.get("ice", ""),
            notes="\n".join(fields.notes),
            riff_of=fields.once.get("riff of"),
            serves=serves,
            tags=tuple(fields.tags),
            credit=fields.once.get("credit", ""),
            source=fields.once.get("source", ""),
        )
        problems = tuple(self.problems)
        whole = None if problems else spec
        return ReadSpec(
            spec=whole,
            name=self.name,
            lines=read,
            method=method,
            glass=spec.glass,
            problems=problems,
            row=self.row,
        )

    def _take_garnish(self, value: str, row: int) -> None:
        """Garnishes that are ingredients become lines; anything else is kept as a note."""
        for text, read in self._garnishes(value):
            if read.complaints:
                self.fields.notes.append(f"Garnish: {text}")
            elif len(self.lines) >= MOST_LINES:
                self._refuse_more(row, MOST_LINES, "ingredients")
            else:
                line = replace(read.line, text=f"Garnish: {read.line.text}")
                self.lines.append(replace(read, line=line, row=row))

    def _garnishes(self, value: str) -> Sequence[tuple[str, ReadLine]]:
        """The garnishes of one line: its parts where each is one, else all of it, else some."""
        read = partial(read_line, tree=self.tree, units=self.units, garnish=True)
        whole = read(value)
        in_one = not whole.complaints and not whole.line.note
        if len(value) > LONGEST or in_one:
            return [(value, whole)]
        parts = [(part, read(part)) for part in _BETWEEN.split(value) if part]
        understood = [not each.complaints and each.confidence >= ADJUSTED for _, each in parts]
        if all(understood) or (whole.complaints and any(understood)):
            return parts
        return [(value, whole)]

    def _refuse_more(self, row: int, most: int, things: str) -> None:
        if things not in self._full:
            self._full.add(things)
            message = f"a spec has at most {most} {things}; the rest of this one is not read"
            self.complain(row, 1, message)

    def _told(self, line: ReadLine, complaint: Complaint) -> tuple[ReadLine, str]:
        """What is wrong; of a name that is not known with what may be meant, while hints last."""
        if complaint.unknown is None:
            return line, complaint.say()
        if self.hints.left <= 0:
            return line, unknown_name(complaint.unknown, ())
        self.hints.left -= 1
        found = guesses(complaint.unknown, self.tree)
        likely = [each for each in found if each.key and not self.tree[each.key].family]
        nearest = tuple(likely[:SUGGESTIONS])
        names = [self.tree.name(str(each.key)) for each in nearest]
        return replace(line, guesses=nearest), unknown_name(complaint.unknown, names)


def is_a_line(text: str, tree: FamilyTree) -> bool:
    """Whether a text has a number, a unit and a known ingredient."""
    if not any(mark.isnumeric() for mark in text[:20]):
        return False
    return _has_all(read_line(text, tree).line)


def is_plainly_a_line(text: str, tree: FamilyTree) -> bool:
    """Whether a text is an amount, a unit and a name with hardly a word beside them."""
    if not any(mark.isnumeric() for mark in text[:20]):
        return False
    read = read_line(text, tree)
    return _has_all(read.line) and not read.complaints and read.confidence >= ADJUSTED


def _has_all(line: Line) -> bool:
    return bool(line.ingredient) and line.unit not in (None, "each")


def joined(rows: Sequence[str]) -> str:
    """A method's rows: paragraphs parted by one empty line, no space at the ends."""
    return re.sub(r"\n{2,}", "\n\n", "\n".join(" ".join(row.split()) for row in rows)).strip()


def _for_one(read: ReadLine, serves: float) -> ReadLine:
    """A line whose quantity is for one serve of so many."""
    line = read.line
    if serves == 1.0 or line.quantity is None:
        return read
    each = float(f"{line.quantity / serves:.12g}")
    return replace(read, line=replace(line, quantity=each))
