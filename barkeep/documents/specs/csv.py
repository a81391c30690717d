"""Specs as CSV: one row a line of a spec, the rows of one spec together.

What a spec has once (its method, glass and so on) stands in its first row; an
empty `spec` means the one above. A method and its notes keep their line breaks
inside their field. Columns may come in any order, and only `spec` and `line`
must be there.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from barkeep.documents.foreign_text import Record, columns_in, read_records
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import Problem, UnusableFile

COLUMNS = (
    *("spec", "line", "method", "glass", "ice"),
    *("notes", "riff_of", "serves", "tags", "credit", "source"),
)
REQUIRED = ("spec", "line")
_SERVES = re.compile(r"[0-9]{1,4}(?:[.,][0-9]{1,3})?")
_OTHER_NAMES = {"riff of": "riff_of", "name": "spec", "ingredient": "line"}


@dataclass
class _Draft:
    """A spec while its rows are gone through."""

    name: str
    row: int
    lines: list[str] = field(default_factory=list)
    once: dict[str, str] = field(default_factory=dict)


def specs_csv(specs: Sequence[SpecParts]) -> str:
    """Specs as a CSV text that `parts_in_csv` reads back."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for spec in specs:
        once = (
            "\n".join(spec.method),
            spec.glass,
            spec.ice,
            "\n".join(spec.notes),
            spec.riff_of,
            f"{spec.serves:g}" if spec.serves else "",
            ", ".join(spec.tags),
            spec.credit,
            spec.source,
        )
        first, *others = spec.lines or ("",)
        writer.writerow((spec.name, first, *once))
        for line in others:
            writer.writerow((spec.name, line, *("" for _ in once)))
    return out.getvalue()


def parts_in_csv(text: str, file: str) -> tuple[SpecParts, ...]:
    """The specs of a CSV text, in order. Raises `UnusableFile` that says each problem's place."""
    records, fault = read_records(text)
    problems = [fault] if fault else []
    if not records:
        expected = f"the first line names the columns: {','.join(COLUMNS)}"
        raise UnusableFile(file, tuple(problems) or (Problem(1, 1, expected),))
    places, wrong = columns_in(records[0], COLUMNS, REQUIRED, _OTHER_NAMES)
    problems += wrong
    if problems:
        raise UnusableFile(file, tuple(problems))
    drafts = list(_drafts(records[1:], places, problems))
    parts = tuple(_finished(draft, places, problems) for draft in drafts)
    if problems:
        raise UnusableFile(file, tuple(sorted(problems, key=lambda each: each.line)))
    return parts


def _drafts(
    records: Sequence[Record], places: Mapping[str, int], problems: list[Problem]
) -> Iterator[_Draft]:
    draft: _Draft | None = None
    for record in records:
        values = {
            column: record.fields[place].strip()
            for column, place in places.items()
            if place < len(record.fields)
        }
        name = " ".join(values.pop("spec", "").split())
        if draft is None and not name:
            problems.append(Problem(record.line, places["spec"] + 1, "spec is empty"))
            continue
        if draft is None or (name and name != draft.name):
            if draft is not None:
                yield draft
            draft = _Draft(name, record.line)
        _take(draft, values)
    if draft is not None:
        yield draft


def _take(draft: _Draft, values: dict[str, str]) -> None:
    line = " ".join(values.pop("line", "").split())
    draft.lines += [line] if line else []
    for column, value in values.items():
        if value:
            draft.once.setdefault(column, value)


def _finished(draft: _Draft, places: Mapping[str, int], problems: list[Problem]) -> SpecParts:
    once = draft.once
    return SpecParts(
        name=draft.name,
        lines=tuple(draft.lines),
        method=_rows(once.get("method", "")),
        glass=once.get("glass", ""),
        ice=once.get("ice", ""),
        notes=tuple(note for note in _rows(once.get("notes", "")) if note),
        riff_of=once.get("riff_of", ""),
        serves=_serves(draft, places, problems),
        tags=tuple(tag.strip() for tag in once.get("tags", "").split(",") if tag.strip()),
        credit=once.get("credit", ""),
        source=once.get("source", ""),
        row=draft.row,
    )


def _rows(text: str) -> tuple[str, ...]:
    return tuple(" ".join(row.split()) for row in re.split(r"\r\n|\r|\n", text)) if text else ()


def _serves(draft: _Draft, places: Mapping[str, int], problems: list[Problem]) -> float | None:
    text = draft.once.get("serves", "")
    if not text:
        return None
    number = float(text.replace(",", ".")) if _SERVES.fullmatch(text) else 0.0
    if number <= 0:
        message = f"serves cannot be “{text}”: it is a number above nothing"
        problems.append(Problem(draft.row, places["serves"] + 1, message))
        return None
    return number
