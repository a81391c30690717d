"""The pages of the help: Markdown, with the tables that come from the program put in."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from barkeep import resource_files
from barkeep.documents.help.glossary import PAGE, Word, glossary, slug
from barkeep.domain.phrases import capitalised, folded
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Text, Texts, parse, read, read_field, table_in, tables
from barkeep.translation import ENGLISH

FOLDER, CONTENTS, TABLES = "help", "contents.toml", "tables"
TRANSLATED = ("de",)
"""What the help is written in besides English: a folder named so beside the English files."""
_TABLE = re.compile(r"^<!-- table: (?P<name>[a-z]+) -->$", re.MULTILINE)
_HEADING = re.compile(r"^(?P<marks>#{1,3}) (?P<words>.+)$", re.MULTILINE)
_FENCE = re.compile(r"^```.*?^```$", re.MULTILINE | re.DOTALL)


@dataclass(frozen=True, slots=True)
class Section:
    """A part of a page below a heading; the first of a page has none and an empty slug.

    The slug is how a link names it: by the English heading, in every language.
    """

    heading: str
    text: str
    slug: str


@dataclass(frozen=True, slots=True)
class HelpPage:
    """One page: its title, the sentence that says what it is about, and all of it in Markdown.

    `words` are others that people look for it by, `slugs` how links name its sections where
    they are not called as its headings are.
    """

    key: str
    title: str
    text: str
    words: str
    slugs: tuple[str, ...] = ()

    @property
    def about(self) -> str:
        """Its first paragraph, on one line."""
        return self.text.split("\n\n")[1].replace("\n", " ")

    @property
    def sections(self) -> tuple[Section, ...]:
        """What stands below each heading, that of the page itself first."""
        found = list(_headings(self.text))
        ends = [*(start for start, _after, _words in found[1:]), len(self.text)]
        names = ["", *(words for _start, _after, words in found[1:])]
        texts = [
            self.text[after:end].strip()
            for (_start, after, _words), end in zip(found, ends, strict=True)
        ]
        slugs = self.slugs or tuple(map(slug, names))
        return tuple(map(Section, names, texts, slugs))

    def number_of(self, heading: str) -> int:
        """Which section a link means by a heading; 0, the first, where none is called so."""
        slugs = [each.slug for each in self.sections]
        return slugs.index(heading) if heading in slugs else 0


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
def shipped_help(language: str = ENGLISH) -> Help:
    """What barkeep brings along; a page is in English where the language has none.

    Raises `KnowledgeError` for a broken resource.
    """
    file = f"{FOLDER}/{CONTENTS}"
    document = _contents(ENGLISH)
    where = table_in(document, "where", file)
    said = _contents(language)
    parts = [read(each, _Part, file, "part") for each in tables(said, "part", file)]
    words = table_in(said, "words", file)
    pages = {
        key: _page(key, read_field(words, name=key, kind=Text, file=file, place="words"), language)
        for part in parts
        for key in part.pages
    }
    return Help(
        pages,
        tuple((part.title, tuple(pages[each] for each in part.pages)) for part in parts),
        {each: read_field(where, name=each, kind=Text, file=file, place="where") for each in where},
    )


@cache
def _contents(language: str) -> Mapping[str, object]:
    text = resource_files.read_said(FOLDER, CONTENTS, language=language)
    return parse(text, f"{FOLDER}/{CONTENTS}", "part", "words", "where")


def _page(key: str, words: str, language: str) -> HelpPage:
    text = _text(key, language)
    title = _HEADING.match(text)
    if title is None or len(text.split("\n\n")) < 3:
        reason = "begin it with “# ” and its title, then a sentence that says what it is about"
        raise KnowledgeError(f"{FOLDER}/{key}.md", "the text", reason)
    slugs = () if language == ENGLISH else _slugs(key, language)
    if slugs and len(slugs) != len(list(_headings(text))):
        reason = "give it as many headings as the English page has, in the same order"
        raise KnowledgeError(f"{FOLDER}/{language}/{key}.md", "the text", reason)
    return HelpPage(key, title["words"], text, words, slugs=slugs)


def _text(key: str, language: str) -> str:
    """All of a page, with its tables."""
    written = _written(f"{key}.md", language=language)
    return _TABLE.sub(lambda found: table_called(found["name"], language), written)


def _slugs(key: str, language: str) -> tuple[str, ...]:
    """How links name the sections of a page in any language."""
    if key == PAGE:
        return ("", *(slug(word.key) for word in _in_order(language)))
    headings = [words for _start, _after, words in _headings(_text(key, ENGLISH))]
    return ("", *map(slug, headings[1:]))


def _written(*name: str, language: str) -> str:
    return resource_files.read_said(FOLDER, *name, language=language)


def table_called(name: str, language: str = ENGLISH) -> str:
    """A table that comes from the program, as Markdown."""
    made = _MADE.get(name)
    return _table_written(name, language) if made is None else made(language)


def _table_written(name: str, language: str) -> str:
    return _written(TABLES, f"{name}.md", language=language).strip()


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


def _query(language: str) -> str:
    if language in TRANSLATED:
        return _table_written("query", language)
    rows = [(f"`{written}`", finds) for written, finds in LANGUAGE]
    return f"{markdown_table(('written', 'a spec is found that'), rows)}\n\n{NO_FIELD}"


def _words(language: str) -> str:
    more = _MORE.get(language, "More")
    return "\n\n".join(
        f"## {capitalised(each.name)}\n\n"
        f"{each.says} {more}: [{_title_of(each.page, language)}]({each.page})."
        for each in _in_order(language)
    )


_MORE: Mapping[str, str] = {"de": "Mehr"}


def _in_order(language: str) -> Sequence[Word]:
    return sorted(glossary(language).values(), key=lambda each: folded(each.name))


@cache
def _title_of(place: str, language: str) -> str:
    written = _written(f"{parted(place)[0]}.md", language=language)
    return written.splitlines()[0].removeprefix("# ")


_MADE: Mapping[str, Callable[[str], str]] = {"query": _query, "glossary": _words}
"""The tables of what the core itself knows; `tests/write_help.py` writes those of a face."""
