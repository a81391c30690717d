"""The specs of documents alone, for tests that do not ask what was left aside."""

from __future__ import annotations

from barkeep.documents.specs.csv import csv_document
from barkeep.documents.specs.markdown import markdown_document
from barkeep.domain.spec_text.parts import SpecParts


def parts_in_csv(text: str, file: str) -> tuple[SpecParts, ...]:
    """The specs of a list."""
    return csv_document(text, file).parts


def parts_in_markdown(text: str) -> tuple[SpecParts, ...]:
    """The specs of a Markdown text."""
    return markdown_document(text, "a.md").parts
