"""What is understood of a text of specs, where it is not, and what might have been meant."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass

from barkeep.domain.ingredient_names import bare_name, suggestions
from barkeep.domain.ingredients import FamilyTree, folded
from barkeep.domain.spec_lines import ReadLine
from barkeep.domain.spec_text import ReadSpec, read_specs
from barkeep.domain.specs import Spec
from barkeep.domain.unit_names import US_UNITS, BarUnits
from barkeep.errors import DuplicateName, Problem

UNKNOWN = "no ingredient is called"
"""How a reader's sentence about an ingredient it does not know begins."""


@dataclass(frozen=True, slots=True)
class Fix:
    """Write `text` in the place of `length` characters; line and column count from 1."""

    line: int
    column: int
    length: int
    text: str


@dataclass(frozen=True, slots=True)
class Fault:
    """One place that cannot be used: where, why, and what might have been meant."""

    line: int
    column: int
    length: int
    message: str
    fixes: tuple[Fix, ...] = ()


@dataclass(frozen=True, slots=True)
class SeenLine:
    """A line that was read, and the number it has in the text, from 1."""

    number: int
    read: ReadLine


@dataclass(frozen=True, slots=True)
class SeenSpec:
    """One spec of a text, from line `first` to line `last`."""

    read: ReadSpec
    first: int
    last: int
    lines: tuple[SeenLine, ...]
    faults: tuple[Fault, ...]

    @property
    def name(self) -> str:
        """Its name, or words for one that has none yet."""
        return self.read.name or "No name yet"


@dataclass(frozen=True, slots=True)
class Seen:
    """Everything that was read of a text."""

    specs: tuple[SeenSpec, ...] = ()

    @property
    def faults(self) -> tuple[Fault, ...]:
        """Every place that cannot be used, from the top."""
        return tuple(fault for spec in self.specs for fault in spec.faults)

    @property
    def usable(self) -> tuple[Spec, ...]:
        """The specs, where all of them can be used; otherwise none."""
        whole = tuple(each.read.spec for each in self.specs if each.read.spec is not None)
        return whole if len(whole) == len(self.specs) and not self.faults else ()

    def at(self, line: int) -> SeenSpec | None:
        """The spec in which a line stands, or the one before it."""
        before = [each for each in self.specs if each.first <= line]
        return before[-1] if before else next(iter(self.specs), None)


def see(
    text: str, tree: FamilyTree, taken: Collection[str] = (), units: BarUnits = US_UNITS
) -> Seen:
    """Read a text; `taken` holds the folded names that other specs have already."""
    lines = text.split("\n")
    read = read_specs(text, tree, units)
    starts = _first_lines(read, lines)
    ends = [*(start - 1 for start in starts[1:]), len(lines)][: len(starts)]
    used = set(taken)
    specs = []
    for each, first, last in zip(read, starts, ends, strict=True):
        faults = [_fault(problem, lines, tree) for problem in each.problems]
        name = folded(each.name)
        if name and name in used:
            message = str(DuplicateName("spec", each.name))
            faults.insert(0, Fault(first, 1, len(lines[first - 1]), message))
        used.add(name)
        specs.append(
            SeenSpec(each, first, last, tuple(_numbered(each, lines, first)), tuple(faults))
        )
    return Seen(tuple(specs))


def _first_lines(read: Sequence[ReadSpec], lines: Sequence[str]) -> list[int]:
    """The number of the line each spec begins on: its name's, or that of its first problem."""
    starts: list[int] = []
    for each in read:
        after = starts[-1] + 1 if starts else 1
        if each.name:
            starts.append(_find(each.name, lines, after) or after)
        else:
            starts.append(max(after, each.problems[0].line if each.problems else after))
    return starts


def _numbered(read: ReadSpec, lines: Sequence[str], first: int) -> Iterator[SeenLine]:
    after = first + 1 if read.name else first
    for line in read.lines:
        number = _find(line.text, lines, after)
        if number is None and line.garnish:  # one of several on a line of garnishes
            number = _find(line.text.partition(":")[2], lines, first, within=True)
        elif number is not None:
            after = number + 1
        yield SeenLine(number or first, line)


def _find(words: str, lines: Sequence[str], after: int, *, within: bool = False) -> int | None:
    """The number of the first line from `after` on that says this, or has it `within`."""
    wanted = _bare(words)
    for number in range(after, len(lines) + 1):
        line = _bare(lines[number - 1])
        if wanted == line or (within and wanted in line):
            return number
    return None


def _bare(words: str) -> str:
    return " ".join(words.split())


def _fault(problem: Problem, lines: Sequence[str], tree: FamilyTree) -> Fault:
    """A problem with its length, and names to choose from where an ingredient is not known."""
    line = lines[problem.line - 1] if problem.line <= len(lines) else ""
    rest = line[problem.column - 1 :]
    name = bare_name(rest)
    length = max(1, len(rest.rstrip()))
    whole = Fault(problem.line, problem.column, length, _sentence(problem.message))
    if not name or UNKNOWN not in problem.message:
        return whole
    fixes = tuple(
        Fix(problem.line, problem.column, len(name), _in_sentence(each, tree))
        for each in suggestions(rest, tree)
    )
    message = f"No ingredient is called “{name}”."
    return Fault(problem.line, problem.column, len(name), message, fixes)


def _sentence(message: str) -> str:
    return message[:1].upper() + message[1:].rstrip(".") + "."


def _in_sentence(name: str, tree: FamilyTree) -> str:
    key = tree.by_name.get(folded(name))
    return tree.in_sentence(key) if key and tree.name(key) == name else name
