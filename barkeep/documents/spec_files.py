"""What kind of document of specs a text is, and the specs it holds."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Literal

from barkeep.documents.csv_records import fields_of_header
from barkeep.documents.recipe_jsonld import recipes_in
from barkeep.documents.spec_json import is_own_json, parts_in_json
from barkeep.documents.spec_markdown import parts_in_markdown
from barkeep.documents.specs_csv import parts_in_csv
from barkeep.documents.web_page import is_web_page
from barkeep.domain.ingredients import folded
from barkeep.domain.spec_parts import SpecParts

Kind = Literal["page", "json", "jsonld", "csv", "markdown", "text"]
KIND_WORDS: Mapping[Kind, str] = {
    "page": "a web page",
    "json": "barkeep’s own JSON",
    "jsonld": "JSON-LD",
    "csv": "CSV",
    "markdown": "Markdown",
    "text": "plain text",
}
SUFFIXES = (".txt", ".md", ".json", ".jsonld", ".html", ".htm", ".csv")
"""What files of specs are called, as they are offered for choice."""

_HEADING = re.compile(r"#{1,6}[ \t]+\S")
_MARKDOWN = (".md", ".markdown")
_LISTS = (".csv", ".tsv")


def kind_of(text: str, file: str = "") -> Kind:
    """What a text is: by how it begins, and where that says nothing, by the file's suffix."""
    start = text.lstrip("\ufeff \t\r\n")[:1]
    if start == "<" and is_web_page(text):
        return "page"
    if start in ("{", "["):
        return "json" if is_own_json(text) else "jsonld"
    if is_specs_csv(text):
        return "csv"
    first = next((row for row in text.removeprefix("\ufeff").splitlines() if row.strip()), "")
    if _HEADING.match(first.strip()):
        return "markdown"
    suffix = _suffix(file)
    if suffix in _MARKDOWN and any(_HEADING.match(row) for row in text.splitlines()):
        return "markdown"
    return "csv" if suffix in _LISTS else "text"


def is_specs_csv(text: str) -> bool:
    """Whether a text is CSV whose header has the columns `spec` and `line`."""
    header = {folded(each) for each in fields_of_header(text)}
    return {"spec", "line"} <= header


def holds_specs(text: str, file: str = "") -> bool:
    """Whether a text is one of specs, and not a list of bottles."""
    kind = kind_of(text, file)
    if kind == "text":
        header = {folded(each) for each in fields_of_header(text)}
        return len(header & {"product", "ingredient", "size"}) < 2
    return kind != "csv" or is_specs_csv(text)


def parts_in_file(text: str, file: str) -> tuple[SpecParts, ...]:
    """The specs of a document that is not plain text, in order.

    Raises `UnreadableFile` or `UnusableFile`, which name the place.
    """
    readers: Mapping[Kind, Callable[[], tuple[SpecParts, ...]]] = {
        "page": lambda: recipes_in(text, file),
        "jsonld": lambda: recipes_in(text, file),
        "json": lambda: parts_in_json(text, file),
        "csv": lambda: parts_in_csv(text, file),
        "markdown": lambda: parts_in_markdown(text),
    }
    kind = kind_of(text, file)
    if kind == "text":
        raise ValueError("plain text is read by barkeep.domain.spec_text")
    return readers[kind]()


def _suffix(file: str) -> str:
    return f".{file.rsplit('.', 1)[-1].casefold()}" if "." in file else ""
