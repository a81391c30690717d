"""The pages of the help: Markdown, with the tables that come from the program put in."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from barkeep import resource_files
from barkeep.documents.help.glossary import glossary, slug
from barkeep.domain.phrases import capitalised
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Text, Texts, parse, read, read_field, table_in, tables

FOLDER, CONTENTS, TABLES = "help", "contents.toml", "tables"
_TABLE = re.compile(r"^<!-- table: (?P<name>[a-z]+) -->$", re.MULTILINE)
_HEADING = re.compile(r"^(?P<marks>#{1,3}) (?P<words>.+)$", re.MULTILINE)
_FENCE = re.compile(r"^```.*?^```$", re.MULTILINE | re.DOTALL)


@dataclass(frozen=True, slots=True)
class Section:
    """A part of a page below a heading; the first of a page has none and an empty slug."""

    heading: str
    text: str

    @property
    def slug(self) -> str:
        """How a link names it."""
        return slug(self.heading)


@dataclass(frozen=True, slots=True)
class HelpPage:
    """One page: its title, the sentence that says what it is about, and all of it in Markdown.

    `words` are others that people look for it by.
    """

    key: str
    title: str
    text: str
    words: str

    @property
    def about(self) -> str:
        """Its first paragraph, on one line."""
        return self.text.split("\n\n")[1].replace("\n", " ")

    @property
    def sections(self) -> tuple[Section, ...]:
        """What stands below each heading, that of the page itself first."""
        found = list(_headings(self.text))
        ends = [*(start for start, _after, _words in found[1:]), len(self.text)]
        parts = [
            Section(words if number else "", self.text[after:end].strip())
            for number, ((_start, after, words), end) in enumerate(zip(found, ends, strict=True))
        ]
        return tuple(parts)


def _headings(text: str) -> Iterator[tuple[int, int, str]]:
    """Where each heading starts and ends, and its words; none in a block of code."""
    fenced = [each.span() for each in _FENCE.finditer(text)]
    for found in _HEADING.finditer(text):
        if not any(start <= found.start() < end for start, end in fenced):
            yield found.start(), found.end(), found["words"]


@dataclass(frozen=True, slots=True)
class _Part:
    """Some pages below a title."""

    title: Text
    pages: Texts


@dataclass(frozen=True, slots=True)
class Help:
    """Every page by its key, the parts they stand in, and where what is told of."""

    pages: Mapping[str, HelpPage]
    parts: tuple[tuple[str, tuple[HelpPage, ...]], ...]
    where: Mapping[str, str]
    """The class of a page, dialog or panel -> the place that tells of it."""

    def place_of(self, classes: Sequence[str]) -> str | None:
        """What tells of the first of these classes that anything tells of."""
        return next((self.where[each] for each in classes if each in self.where), None)


def parted(place: str) -> tuple[str, str]:
    """A place, *page#heading*, as its page and its heading, which may be empty."""
    page, _, heading = place.partition("#")
    return page, heading


@cache
def shipped_help() -> Help:
    """What barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    file = f"{FOLDER}/{CONTENTS}"
    document = parse(resource_files.read_text(FOLDER, CONTENTS), file, "part", "words", "where")
    parts = [read(each, _Part, file, "part") for each in tables(document, "part", file)]
    words = table_in(document, "words", file)
    pages = {
        key: _page(key, read_field(words, name=key, kind=Text, file=file, place="words"))
        for part in parts
        for key in part.pages
    }
    where = table_in(document, "where", file)
    return Help(
        pages,
        tuple((part.title, tuple(pages[each] for each in part.pages)) for part in parts),
        {each: read_field(where, name=each, kind=Text, file=file, place="where") for each in where},
    )


def _page(key: str, words: str) -> HelpPage:
    name = f"{key}.md"
    text = _TABLE.sub(lambda found: table_called(found["name"]), _written(name))
    title = _HEADING.match(text)
    if title is None or len(text.split("\n\n")) < 3:
        reason = "begin it with “# ” and its title, then a sentence that says what it is about"
        raise KnowledgeError(f"{FOLDER}/{name}", "the text", reason)
    return HelpPage(key, title["words"], text, words)


def _written(*name: str) -> str:
    return resource_files.read_text(FOLDER, *name)


def table_called(name: str) -> str:
    """A table that comes from the program, as Markdown."""
    made = _MADE.get(name)
    return _written(TABLES, f"{name}.md").strip() if made is None else made()


def markdown_table(head: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    """Rows under a head, as Markdown has them.

    >>> print(markdown_table(("a", "b"), [("1|2", "x")]))
    | a | b |
    |---|---|
    | 1\\|2 | x |
    """
    rule = f"|{'---|' * len(head)}"
    return "\n".join((_row(head), rule, *map(_row, rows)))


def _row(cells: Sequence[str]) -> str:
    return "".join(("| ", " | ".join(each.replace("|", "\\|") for each in cells), " |"))


def _query() -> str:
    rows = [(f"`{written}`", finds) for written, finds in LANGUAGE]
    return f"{markdown_table(('written', 'a spec is found that'), rows)}\n\n{NO_FIELD}"


def _words() -> str:
    in_order = sorted(glossary().values(), key=lambda each: each.key)
    return "\n\n".join(
        f"## {capitalised(each.key)}\n\n{each.says} More: [{_title_of(each.page)}]({each.page})."
        for each in in_order
    )


@cache
def _title_of(place: str) -> str:
    return _written(f"{parted(place)[0]}.md").splitlines()[0].removeprefix("# ")


_MADE: Mapping[str, Callable[[], str]] = {"query": _query, "glossary": _words}
"""The tables of what the core itself knows; `tests/write_help.py` writes those of a face."""
