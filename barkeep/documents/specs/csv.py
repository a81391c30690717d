"""Specs as CSV: written as one row a line of a spec; read from lists of many shapes.

What a spec has once (its method, glass and so on) stands in its first row; an
empty name means the one above. A method and its notes keep their line breaks
inside their field. Which column is what is told by `barkeep.documents.specs.columns`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import PurePath

from barkeep.documents.csv_cells import csv_text
from barkeep.documents.foreign_text import Record, read_records
from barkeep.documents.specs.columns import ColumnUse, Listing, listing
from barkeep.documents.specs.document import Document, in_short
from barkeep.documents.specs.tables import OF_A_LINE, Meaning, composed
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import Problem, UnusableFile
from barkeep.translation import tr

COLUMNS = (
    *("spec", "line", "method", "glass", "ice"),
    *("notes", "riff_of", "serves", "tags", "credit", "source"),
)
_SERVES = re.compile(
    r"(?P<number>[0-9]{1,4}(?:[.,][0-9]{1,3})?)"
    r"[ ]?(?:serv\w*|drinks?|cocktails?|people|persons?|portions?|pers\.?)?[ .]*",
    re.IGNORECASE,
)
_GATHERED: tuple[Meaning, ...] = ("method", "notes", "tags", "garnish")
"""What later rows of a spec may add to; of anything else there is one."""


@dataclass
class _Draft:
    """A spec while its rows are gone through; `rows` are those of its lines."""

    name: str
    row: int
    lines: list[str] = field(default_factory=list)
    rows: list[int] = field(default_factory=list)
    once: dict[Meaning, str] = field(default_factory=dict)
    gathered: dict[Meaning, dict[str, None]] = field(default_factory=dict)
    left_aside: list[str] = field(default_factory=list)


def specs_csv(specs: Sequence[SpecParts]) -> str:
    """Specs as a CSV text that `parts_in_csv` reads back."""
    rows: list[Sequence[str]] = [COLUMNS]
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
        rows.append((spec.name, first, *once))
        rows.extend((spec.name, line, *("" for _ in once)) for line in others)
    return csv_text(rows)


def csv_document(text: str, file: str, uses: Sequence[ColumnUse] | None = None) -> Document:
    """The specs of a list, whose columns are what its titles say or what `uses` says.

    Raises `UnusableFile` that says each problem's place, and `ColumnsUnclear`
    where it must be asked which column is what.
    """
    records, fault = read_records(text)
    problems = [fault] if fault else []
    if not records:
        expected = tr("the first line names the columns: {columns}", columns=",".join(COLUMNS))
        raise UnusableFile(file, tuple(problems) or (Problem(1, 1, expected),))
    if problems:
        raise UnusableFile(file, tuple(problems))
    found = listing(records, file, uses)
    drafts = list(_drafts(found, file, problems))
    parts = tuple(_finished(draft, found, problems) for draft in drafts)
    if problems:
        raise UnusableFile(file, tuple(sorted(problems, key=lambda each: each.line)))
    return Document(parts, tuple(_unread(found)), tuple(_remarks(found, file)))


def records_of(text: str) -> Sequence[Record]:
    """The records of a list as far as it is one, to be looked at."""
    return read_records(text)[0]


def _remarks(found: Listing, file: str) -> Iterator[str]:
    if not any(each.meaning == "name" for each in found.uses):
        yield tr(
            "No column holds a name; the drink is called after its file, “{name}”.",
            name=_stem(file),
        )


def _stem(file: str) -> str:
    words = re.sub(r"[_\W]+", " ", PurePath(file).stem).strip()
    return words[:1].upper() + words[1:]


def _unread(found: Listing) -> Iterator[str]:
    """Columns that hold something and are read as nothing, in words."""
    used = {each.place for each in found.uses}
    width = max((len(row.fields) for row in found.rows), default=0)
    for place in range(1, width + 1):
        if place in used:
            continue
        texts = (_cell(row, place) for row in found.rows)
        distinct = dict.fromkeys(text for text in texts if text)
        if distinct:
            titles = found.titles
            title = " ".join(titles[place - 1].split()) if place <= len(titles) else ""
            yield tr(
                "the column “{title}” ({texts})",
                title=title or place,
                texts=in_short(", ".join(list(distinct)[:4])),
            )


def _cell(record: Record, place: int) -> str:
    return record.fields[place - 1].strip() if place <= len(record.fields) else ""


def _drafts(found: Listing, file: str, problems: list[Problem]) -> Iterator[_Draft]:
    names = [each.place for each in found.uses if each.meaning == "name"]
    wide = len({each.number for each in found.uses if each.meaning in ("line", "ingredient")}) > 1
    draft = None if names else _Draft(_stem(file), found.rows[0].line if found.rows else 1)
    for record in found.rows:
        _refuse_extra(record, found, problems)
        name = " ".join(_cell(record, names[0]).split()) if names else ""
        if draft is None and not name:
            title = found.titles[names[0] - 1] if found.head else tr("name")
            message = tr("{title} is empty", title=title.strip())
            problems.append(Problem(record.line, names[0], message))
            continue
        if draft is None or (name and (wide or name != draft.name)):
            if draft is not None:
                yield draft
            draft = _Draft(name, record.line)
        _take(draft, record, found)
    if draft is not None:
        yield draft


def _refuse_extra(record: Record, found: Listing, problems: list[Problem]) -> None:
    """A row that is longer than the titles has lost the quotes around a comma."""
    width = len(found.titles)
    extra = [text for text in record.fields[width:] if text.strip()]
    if width and extra:
        message = tr(
            "“{text}” stands beyond the last column; "
            "put a text that holds what parts the columns in double quotes",
            text=in_short(extra[0]),
        )
        problems.append(Problem(record.line, width + 1, message))


def _take(draft: _Draft, record: Record, found: Listing) -> None:
    groups: dict[int, dict[Meaning, str]] = {}
    for use in found.uses:
        text = _cell(record, use.place)
        if not text or use.meaning == "name":
            continue
        if use.meaning in OF_A_LINE:
            groups.setdefault(use.number, {})[use.meaning] = text
        elif use.meaning in _GATHERED:
            draft.gathered.setdefault(use.meaning, {})[text] = None
        elif draft.once.setdefault(use.meaning, text) != text:
            draft.left_aside.append(
                tr(
                    "{what} “{text}” of line {line}",
                    what=tr(use.meaning),
                    text=in_short(text),
                    line=record.line,
                )
            )
    for number in sorted(groups):
        cells = groups[number]
        amount, unit = cells.get("amount", ""), cells.get("unit", "")
        name = cells.get("line") or cells.get("ingredient", "")
        line = composed(amount, unit, name, cells.get("remark", ""))
        if line:
            draft.lines.append(line)
            draft.rows.append(record.line)


def _finished(draft: _Draft, found: Listing, problems: list[Problem]) -> SpecParts:
    once, gathered = draft.once, draft.gathered
    garnishes = [f"Garnish: {' '.join(each.split())}" for each in gathered.get("garnish", ())]
    between = "," if {"spec", "line"} <= {folded(each) for each in found.titles} else "[,;]"
    tags = (tag for each in gathered.get("tags", ()) for tag in re.split(between, each))
    return SpecParts(
        name=draft.name,
        lines=(*draft.lines, *garnishes),
        method=tuple(row for each in gathered.get("method", ()) for row in _rows(each)),
        glass=once.get("glass", ""),
        ice=once.get("ice", ""),
        notes=tuple(row for each in gathered.get("notes", ()) for row in _rows(each) if row),
        riff_of=once.get("riff_of", ""),
        serves=_serves(draft, found, problems),
        tags=tuple(tag.strip() for tag in tags if tag.strip()),
        credit=once.get("credit", ""),
        source=once.get("source", ""),
        row=draft.row,
        rows=(*draft.rows, *(draft.row for _ in garnishes)),
        left_aside=tuple(draft.left_aside),
    )


def _rows(text: str) -> tuple[str, ...]:
    return tuple(" ".join(row.split()) for row in re.split(r"\r\n|\r|\n", text)) if text else ()


def _serves(draft: _Draft, found: Listing, problems: list[Problem]) -> float | None:
    text = draft.once.get("serves", "")
    if not text:
        return None
    said = _SERVES.fullmatch(text)
    number = float(said["number"].replace(",", ".")) if said else 0.0
    if number <= 0:
        place = next(each.place for each in found.uses if each.meaning == "serves")
        message = tr("serves cannot be “{text}”: it is a number above nothing", text=text)
        problems.append(Problem(draft.row, place, message))
        return None
    return number
