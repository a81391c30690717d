"""What is understood of a text of specs, where it is not, and what might have been meant."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.names import bare_name, suggestions
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, folded
from barkeep.domain.spec_text.lines import ReadLine, unknown_name
from barkeep.domain.spec_text.text import ReadSpec, read_specs
from barkeep.domain.specs.spec import Spec
from barkeep.errors import DuplicateName, Problem
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Fix:
    """Write `text` in the place of `length` characters; line and column count from 1."""

    line: int
    column: int
    length: int
    text: str


@dataclass(frozen=True, slots=True)
class Fault:
    """One place that cannot be used: where, why, and what might have been meant.

    `unknown` are the words that name no ingredient that is known, where that is why;
    `asks` says that it is a question about a line, which may be kept with its spec.
    """

    line: int
    column: int
    length: int
    message: str
    fixes: tuple[Fix, ...] = ()
    unknown: str = ""
    asks: bool = False


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
        return self.read.name or tr("No name yet")


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

    @property
    def with_questions(self) -> tuple[Spec, ...]:
        """The specs with their lines that are not understood, where nothing else is wrong.

        None where everything is understood: then there is nothing to be kept so.
        """
        kept = [spec for each in self.specs if (spec := each.read.with_questions) is not None]
        may = bool(self.faults) and all(each.asks for each in self.faults)
        return tuple(kept) if may and len(kept) == len(self.specs) else ()

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
    starts = [each.row for each in read]
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
        numbered = tuple(SeenLine(line.row, line) for line in each.lines)
        specs.append(
            SeenSpec(read=each, first=first, last=last, lines=numbered, faults=tuple(faults))
        )
    return Seen(tuple(specs))


def _fault(problem: Problem, lines: Sequence[str], tree: FamilyTree) -> Fault:
    """A problem with its length, and names to choose from where an ingredient is not known."""
    line = lines[problem.line - 1] if problem.line <= len(lines) else ""
    rest = line[problem.column - 1 :]
    name = bare_name(rest)
    length = max(1, len(rest.rstrip()))
    message = as_sentence(problem.message)
    answers = (Fix(problem.line, 1, len(line), problem.answer),) if problem.answer else ()
    whole = Fault(
        line=problem.line,
        column=problem.column,
        length=length,
        message=message,
        fixes=answers,
        asks=problem.asks,
    )
    if problem.unknown is None or not name.strip(" ()"):
        return whole
    fixes = tuple(
        Fix(problem.line, problem.column, len(name), _in_sentence(each, tree))
        for each in suggestions(problem.unknown, tree)
    )
    if problem.message.startswith(unknown_name(problem.unknown, ())):
        message = tr("No ingredient is called “{name}”.", name=name)  # the fixes name the nearest
    unknown = bare_name(problem.unknown)
    return replace(whole, length=len(name), message=message, fixes=fixes, unknown=unknown)


def _in_sentence(name: str, tree: FamilyTree) -> str:
    key = tree.by_name.get(folded(name))
    return tree.in_sentence(key) if key and tree.name(key) == name else name
