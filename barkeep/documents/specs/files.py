"""Specs in and out of files: what kind each is, where its problems stand, how it is written."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.documents.bottles_csv import is_bottles_csv
from barkeep.documents.everything import HOW_TO_RESTORE, is_everything
from barkeep.documents.foreign_text import fields_of_header
from barkeep.documents.specs.columns import MOST_COLUMNS, ColumnUse, looks_like_lines, names_columns
from barkeep.documents.specs.csv import csv_document, records_of, specs_csv
from barkeep.documents.specs.document import Document
from barkeep.documents.specs.jsonld import is_web_page, recipe_text, recipes_in
from barkeep.documents.specs.markdown import is_markdown, markdown, markdown_document
from barkeep.documents.specs.own_json import is_own_json, parts_in_json, specs_json
from barkeep.documents.specs.web_page import page_document
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.parts import SpecParts, parts_of, read_parts
from barkeep.domain.spec_text.text import ReadSpec, read_specs, write_specs
from barkeep.domain.specs.spec import Spec
from barkeep.errors import Problem, UnreadableFile, spoken_list
from barkeep.translation import tr, tr_noop

Kind = Literal["page", "json", "jsonld", "csv", "markdown", "text"]
KIND_WORDS: Mapping[Kind, str] = {
    "page": tr_noop("a web page"),
    "json": tr_noop("barkeep’s own JSON"),
    "jsonld": tr_noop("JSON-LD"),
    "csv": tr_noop("CSV"),
    "markdown": tr_noop("Markdown"),
    "text": tr_noop("plain text"),
}
SUFFIXES = (".txt", ".md", ".json", ".jsonld", ".html", ".htm", ".csv")
"""What files of specs are called, as they are offered for choice."""


_OF_BOTTLES = frozenset({"product", "ingredient", "size"})
_BOTTLES_ONLY = frozenset({"product", "size", "level", "price", "opened", "maker", "tare"})
_SPECS_ONLY = frozenset({"amount", "unit", "method", "glass", "line"})
_LOOKED_AT = 20_000
_MARKDOWN = (".md", ".markdown")
_LISTS = (".csv", ".tsv")


def kind_of(text: str, file: str = "") -> Kind:
    """What a text is: by how it begins, and where that says nothing, by the file's suffix."""
    start = text.lstrip("\ufeff \t\r\n")[:1]
    if start == "<" and is_web_page(text):
        return "page"
    if start in ("{", "["):
        return "json" if is_own_json(text) else "jsonld"
    if is_specs_csv(text) or names_columns(fields_of_header(text)):
        return "csv"
    suffix = _suffix(file)
    if is_markdown(text, named_so=suffix in _MARKDOWN):
        return "markdown"
    return "csv" if suffix in _LISTS else "text"


def is_specs_csv(text: str) -> bool:
    """Whether a text is CSV whose header has the columns `spec` and `line`."""
    header = {folded(each) for each in fields_of_header(text)[:MOST_COLUMNS]}
    return {"spec", "line"} <= header


def holds_specs(text: str, file: str = "") -> bool:
    """Whether a text is one of specs, and not a list of bottles."""
    kind = kind_of(text, file)
    fields = fields_of_header(text)
    header = {folded(each) for each in fields[:MOST_COLUMNS]}
    if kind == "text":
        return not is_bottles_csv(text)
    if kind != "csv" or is_specs_csv(text):
        return True
    if is_bottles_csv(text) and not header & _SPECS_ONLY:
        return False
    return names_columns(fields) or looks_like_lines(records_of(text[:_LOOKED_AT]))


def parts_in_file(text: str, file: str) -> tuple[SpecParts, ...]:
    """The specs of a document that is not plain text, in order; see `document_in`."""
    return document_in(text, file).parts


def document_in(text: str, file: str, uses: Sequence[ColumnUse] | None = None) -> Document:
    """A document that is not plain text; `uses` says which columns of a list are what.

    Raises `UnreadableFile` or `UnusableFile`, which name the place, and
    `ColumnsUnclear` where `uses` must be asked for.
    """
    readers: Mapping[Kind, Callable[[], Document]] = {
        "page": lambda: page_document(text, file),
        "jsonld": lambda: Document(recipes_in(text, file)),
        "json": lambda: Document(parts_in_json(text, file)),
        "csv": lambda: csv_document(text, file, uses),
        "markdown": lambda: markdown_document(text, file),
    }
    kind = "csv" if uses else kind_of(text, file)
    if is_everything(text):
        raise UnreadableFile(
            file, tr("it holds a whole bar and no list of specs; {do}", do=tr(HOW_TO_RESTORE))
        )
    if kind == "text":
        raise ValueError("plain text is read by barkeep.domain.spec_text.text")
    return readers[kind]()


def specs_in(
    text: str, file: str, tree: FamilyTree, units: BarUnits, *, uses: Sequence[ColumnUse] = ()
) -> tuple[tuple[ReadSpec, ...], Document]:
    """Every spec of a document of any kind as it was read, and what of it was left aside.

    A problem stands where it is in the document. Raises as `document_in` does.
    """
    if not uses and kind_of(text, file) == "text":
        return read_specs(text, tree, units), Document(())
    document = document_in(text, file, uses or None)
    return tuple(read_placed(each, text, tree, units) for each in document.parts), document


def read_placed(parts: SpecParts, text: str, tree: FamilyTree, units: BarUnits) -> ReadSpec:
    """A spec out of a document `text`, its problems where they stand in that."""
    read = read_parts(parts, tree, units)
    return replace(read, problems=tuple(placed(each, parts, text) for each in read.problems))


def _suffix(file: str) -> str:
    return f".{file.rsplit('.', 1)[-1].casefold()}" if "." in file else ""


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
        elif parts.rows:
            return replace(problem, line=parts.rows[problem.line - 1], column=1)
    line = text.count("\n", 0, place) + 1
    return replace(problem, line=line, column=place - text.rfind("\n", 0, place) - 1 + column)


def _start(parts: SpecParts, text: str) -> int:
    """Where the line begins that the document's reader has told, else the document."""
    place = 0
    for _ in range(parts.row - 1):
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


Write = Callable[[Sequence[Spec], FamilyTree, BarUnits], str]


@dataclass(frozen=True, slots=True)
class ExportFormat:
    """One kind of file; barkeep reads each of them back."""

    suffix: str
    title: str
    write: Write


def _of_parts(
    write: Callable[[Sequence[SpecParts]], str],
) -> Write:
    return lambda specs, tree, units: write([parts_of(spec, tree, units) for spec in specs])


EXPORT_FORMATS: Mapping[str, ExportFormat] = {
    each.suffix: each
    for each in (
        ExportFormat(".txt", "plain text", write_specs),
        ExportFormat(".md", "Markdown", _of_parts(markdown)),
        ExportFormat(".json", "barkeep’s own JSON", _of_parts(specs_json)),
        ExportFormat(".jsonld", "JSON-LD", _of_parts(recipe_text)),
        ExportFormat(".csv", "CSV", _of_parts(specs_csv)),
    )
}
"""Suffix -> format, in the order they are offered."""


def exported(specs: Sequence[Spec], file: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """The text of a file of this name, which reads back at a bar of the same `units`.

    Raises `UnreadableFile` for a suffix nobody knows.
    """
    known = EXPORT_FORMATS.get(_suffix(file))
    if known is None:
        names = spoken_list(tuple(EXPORT_FORMATS))
        raise UnreadableFile(
            file, tr("its name must end in {names}, which says what it will be", names=names)
        )
    return known.write(specs, tree, units)
