"""A spec in the pieces a foreign document gives: read as its text would be, and given back."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.units import TABLE, US_UNITS, BarUnits, prefixed_unit
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.headers import (
    MOST_SPEC_SERVES,
    distinct_tags,
    header_in,
    serves_in_method,
    serves_in_title,
)
from barkeep.domain.spec_text.lines import ReadLine
from barkeep.domain.spec_text.text import (
    MOST_LINES,
    Reading,
    ReadSpec,
    garnishes_to_write,
    line_text,
    reads_back,
    text_around,
)
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.errors import Problem
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class SpecParts:
    """The texts of one spec; `lines` and `method` one text for each line or step.

    `row` is the line of the document it begins on and `number` its place among
    the specs, both from 1, and 0 where the document tells no such thing; `rows`
    are the lines of the document of its ingredients, where it tells them. `known`
    is for each ingredient what it is, where the document says that in fields. An
    empty step parts two paragraphs of the method. `left_aside` is what else the
    document says of the spec and a spec has no place for, in words.
    """

    name: str
    lines: tuple[str, ...]
    method: tuple[str, ...] = ()
    glass: str = ""
    ice: str = ""
    notes: tuple[str, ...] = ()
    riff_of: str = ""
    serves: float | None = None
    tags: tuple[str, ...] = ()
    credit: str = ""
    source: str = ""
    row: int = 0
    number: int = 0
    rows: tuple[int, ...] = ()
    known: tuple[Line | None, ...] = ()
    left_aside: tuple[str, ...] = ()

    @property
    def where(self) -> str:
        """Where in the document it stood, for a message."""
        if self.row:
            return tr("line {row}", row=self.row)
        return tr("spec {number}", number=self.number) if self.number else ""


def read_parts(parts: SpecParts, tree: FamilyTree, units: BarUnits = US_UNITS) -> ReadSpec:
    """Read one spec at a bar that means `units` by its measures. Never raises.

    A problem's line is the number of the ingredient it is in, from 1, and its
    column a place in that ingredient's text; what it says names both the
    recipe and the ingredient. What concerns the whole recipe is in line 0.
    """
    reading = Reading(tree, units, 0)
    if parts.name.strip() and parts.serves is None:
        reading.take_title(parts.name, 0)
    elif parts.name.strip():
        reading.take_name(parts.name, 0)
    else:
        reading.complain(0, 1, tr("it has no name"))
    said = _said_in_fields(parts, tree, units)
    for number, text in enumerate(parts.lines[: MOST_LINES + 1], 1):
        if line := said.get(number):
            reading.lines.append(ReadLine(line, row=number))
        else:
            _take_line(reading, text, number)
    for step in parts.method:
        reading.take_method(step, 0, 1, sure=True)
    _take_fields(reading, parts)
    read = _with_known(reading.finished(), said, tree)
    told = tuple(_told(each, read.name, parts) for each in read.problems)
    return replace(read, problems=told)


def _said_in_fields(parts: SpecParts, tree: FamilyTree, units: BarUnits) -> dict[int, Line]:
    """The number of an ingredient -> what its document says it is in fields, for one serve."""
    return {
        number: line
        for number, line in enumerate(parts.known, 1)
        if line is not None and _is_usable(line, tree, units)
    }


def _with_known(read: ReadSpec, said: Mapping[int, Line], tree: FamilyTree) -> ReadSpec:
    """A spec with the lines that its document says in fields just as these are."""
    if not said:
        return read
    lines = tuple(
        ReadLine(line, matched=tree.name(line.ingredient), confidence=1.0, row=each.row)
        if (line := said.get(each.row))
        else each
        for each in read.lines
    )
    known = tuple(line for each in lines if (line := each.known))
    return replace(read, understood=replace(read.understood, lines=known), lines=lines)


def _is_usable(line: Line, tree: FamilyTree, units: BarUnits) -> bool:
    unit = line.unit
    known = unit is None or unit in TABLE or units.measure(unit) or prefixed_unit(unit) == unit
    return bool(known) and all(key in tree for key in line.wanted)


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
            reading.complain(number, 1, tr("this reads like a step of the method"))


def _take_fields(reading: Reading, parts: SpecParts) -> None:
    fields = reading.fields
    once = {
        "glass": parts.glass,
        "ice": parts.ice,
        "riff of": parts.riff_of,
        "credit": parts.credit,
        "source": parts.source,
    }
    for name, value in once.items():
        if value.strip():
            fields.once[name] = " ".join(value.split())
    fields.notes += [" ".join(note.split()) for note in parts.notes if note.strip()]
    fields.tags += distinct_tags(parts.tags)
    if parts.serves is not None:
        fields.serves = parts.serves
        if not 0.0 < parts.serves <= MOST_SPEC_SERVES:
            fields.serves = None
            message = tr(
                "serves cannot be {serves:g}: it is a number from 1 to {most:.0f}",
                serves=parts.serves,
                most=MOST_SPEC_SERVES,
            )
            reading.complain(0, 1, message)


def _told(problem: Problem, name: str, parts: SpecParts) -> Problem:
    """A problem that says for itself in which ingredient of which recipe it is."""
    where = f"“{name}”" if name else parts.where or tr("a recipe without a name")
    if problem.line:
        where = tr("ingredient {number} of {recipe}", number=problem.line, recipe=where)
    return replace(problem, message=f"{where}: {problem.message}")


GARNISH = "Garnish:"


def parts_of(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> SpecParts:
    """The texts of a spec; `serves` is left out for one serve.

    Its lines read back to what they are at a bar that means `units` by its measures.
    """
    garnishes = garnishes_to_write(spec, tree, units)
    notes = [note.strip() for note in spec.notes.splitlines() if note.strip()]
    return SpecParts(
        name=spec.name,
        lines=(*(_line(line, tree, units) for line in spec.in_order), *garnishes),
        method=tuple(_method(spec.method)),
        glass=spec.glass,
        ice=spec.ice,
        notes=tuple(notes[len(garnishes) :]),
        riff_of=spec.riff_of or "",
        serves=None if spec.serves == 1.0 and not _tells_its_serves(spec) else spec.serves,
        tags=spec.tags,
        credit=spec.credit,
        source=spec.source,
        known=_in_fields(spec, tree, units, more=len(garnishes)),
    )


def _tells_its_serves(spec: Spec) -> bool:
    """Whether its name or its method would be taken to say how many it serves."""
    return bool(serves_in_title(spec.name) or serves_in_method(spec.method))


def _in_fields(
    spec: Spec, tree: FamilyTree, units: BarUnits, *, more: int
) -> tuple[Line | None, ...]:
    """The lines whose text does not say all of them; nothing where there is none."""
    needed = [None if reads_back(line, tree, units) else line for line in spec.lines]
    return (*needed, *(None for _ in range(more))) if any(needed) else ()


def _line(line: Line | UnsettledLine, tree: FamilyTree, units: BarUnits) -> str:
    """A garnish says that it is one, whatever it was written under."""
    if isinstance(line, UnsettledLine):
        return line.text
    text = line_text(line, tree, units)
    said = text.casefold().startswith(GARNISH.casefold())
    return f"{GARNISH} {text}" if line.garnish and not said else text


def _method(text: str) -> list[str]:
    """Each line of a method, one empty text between paragraphs and none at the ends."""
    steps: list[str] = []
    for row in text.split("\n"):
        step = " ".join(row.split())
        if step or (steps and steps[-1]):
            steps.append(step)
    return steps[:-1] if steps and not steps[-1] else steps


def text_of_parts(parts: SpecParts) -> str:
    """One spec as plain text, its lines as the document gives them.

    Nothing is read, so nothing is lost that could not be.
    """
    around = Spec(
        _row(parts.name),
        (),
        "\n".join(_row(step) for step in parts.method),
        glass=_row(parts.glass),
        ice=_row(parts.ice),
        notes="\n".join(_row(note) for note in parts.notes),
        riff_of=_row(parts.riff_of) or None,
        serves=parts.serves or 1.0,
        tags=tuple(_row(tag) for tag in parts.tags),
        credit=_row(parts.credit),
        source=_row(parts.source),
    )
    return text_around(around, [row for line in parts.lines if (row := _row(line))])


def text_of_all(specs: Sequence[SpecParts]) -> str:
    """Several specs as one text."""
    return "---\n".join(text_of_parts(each) for each in specs)


def _row(text: str) -> str:
    return " ".join(text.split())
