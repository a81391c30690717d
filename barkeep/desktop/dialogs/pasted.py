"""What is on the clipboard as the text of specs: a page, JSON-LD, Markdown, CSV or plain text."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.documents.recipe_jsonld import recipes_in
from barkeep.documents.spec_files import KIND_WORDS, kind_of, parts_in_file
from barkeep.documents.web_page import is_web_page
from barkeep.domain.parts_text import text_of_all
from barkeep.domain.spec_parts import SpecParts
from barkeep.errors import UserError

WHAT = "what was pasted"


@dataclass(frozen=True, slots=True)
class Pasted:
    """Specs out of a document: their text, how many they are, and what it was."""

    text: str
    specs: int
    kind: str


def pasted(text: str, markup: str = "") -> Pasted | None:
    """The specs of a document that was copied, None for plain text or what holds none.

    `markup` is the same as HTML, where whoever it was copied from gave that too.
    """
    kind = kind_of(text)
    parts: tuple[SpecParts, ...] = ()
    if kind != "text":
        parts = _parts(text)
    elif is_web_page(markup):
        kind, parts = "page", _recipes(markup)
    if not parts:
        return None
    return Pasted(text_of_all(parts), len(parts), KIND_WORDS[kind])


def _parts(text: str) -> tuple[SpecParts, ...]:
    try:
        return parts_in_file(text, WHAT)
    except UserError:
        return ()  # it goes in as it is, and what cannot be read of it is marked


def _recipes(markup: str) -> tuple[SpecParts, ...]:
    try:
        return recipes_in(markup, WHAT)
    except UserError:
        return ()
