"""What ingredients and measures are called in other languages: `resources/languages`.

The words are search words only: barkeep's own names stay the English ones, and none of these is
ever shown or offered. The files are read when the first word is met that no English name has.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache
from itertools import product
from typing import Literal

from barkeep import resource_files
from barkeep.domain.phrases import folded
from barkeep.shipped_data import Texts, parse, read, table_in

FOLDER = "languages"

Role = Literal[
    "name",
    "unsure",
    "unit",
    "number",
    "adjective",
    "head",
    "of",
    "the",
    "and",
    "or",
    "to",
    "each",
    "hedge",
    "part",
    "top",
    "after",
    "rim",
    "of them",
    "such as",
    "years",
    "with",
    "garnish",
    "note",
]
"""What a phrase does in a line."""

_LETTER = "(?:[^\\W\\d_]|[\u0300-\u036f])"
WORD = re.compile(
    rf"{_LETTER}{{1,6}}['’](?={_LETTER}|[0-9½]|$)|{_LETTER}+|[0-9]+(?:[.,/][0-9]+)*|[¼-¾⅐-⅞]"
)
"""A word, one that leans on the next (*d'*), or a number."""

_HEADERS = re.compile(r"^\[headers\]\n(?:(?!\[).*\n?)*", re.MULTILINE)

_TOLD = re.compile(r'^told = """.*?"""', re.MULTILINE | re.DOTALL)

_ROLES: Mapping[str, Role] = {
    "of": "of",
    "the": "the",
    "and": "and",
    "or": "or",
    "to": "to",
    "each": "each",
    "a few": "number",
    "about 10": "number",
    "juice of": "part",
    "zest of": "part",
    "peel of": "part",
    "top with": "top",
    "garnish with": "top",
    "equal parts of": "top",
    "in equal parts": "after",
    "on top": "after",
    "to top": "after",
    "for garnish": "after",
    "to taste": "after",
    "a little": "after",
    "for the rim": "rim",
    "rinse": "after",
    "to muddle": "after",
    "rinse the glass with": "top",
    "rim the glass with": "top",
    "salt rim": "top",
    "sugar rim": "top",
    "of them": "of them",
    "for stirring": "after",
    "such as": "such as",
    "years": "years",
    "years old": "years",
    "with": "with",
    "garnish": "garnish",
    "optional": "note",
    "preferably": "note",
}
"""What the English phrases of the files do; any other says how sure the amount is."""


@dataclass(frozen=True, slots=True)
class Unsure:
    """Words that mean different things in different places, and what settles it."""

    words: Texts
    may_be: Texts
    settled: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Language:
    """One file as it is written; its own head says what each table holds."""

    key: str
    ingredients: Mapping[str, Texts]
    units: Mapping[str, Texts]
    numbers: Mapping[str, Texts]
    phrases: Mapping[str, Texts]
    adjectives: Mapping[str, Texts]
    heads: Mapping[str, Texts]
    headers: Mapping[str, Texts]
    weak: Texts
    told: str = ""
    actions: Texts = ()
    unsure: tuple[Unsure, ...] = ()
    endings: Texts = ()
    capitals: bool = False
    links: Texts = ()
    of_what: Mapping[str, Texts] = field(default_factory=dict)
    units_of_mixers: Mapping[str, Texts] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Phrase:
    """Words of a language, folded, and what they are in English.

    `keys` are the ingredients they name, or English names of such, several where
    they are unsure; `behind` are words that end the line, after what stands between.
    """

    words: tuple[str, ...]
    role: Role
    english: str
    keys: tuple[str, ...] = ()
    behind: tuple[str, ...] = ()
    settled: Mapping[str, str] = field(default_factory=dict)
    of_mixers: str = ""


@dataclass(frozen=True)
class Vocabulary:
    """What one language can say.

    `phrases` lists them by their first word, the longest first. `backs` and
    `fronts` are the parts of a compound (*Limetten|scheibe*), and `links` stands
    between them where they are words of their own (*jus de …*). `told` are words that tell
    something of a thing, or only join, and name nothing.
    """

    key: str
    capitals: bool
    phrases: Mapping[str, tuple[Phrase, ...]]
    weak: frozenset[str]
    told: frozenset[str]
    heads: Mapping[str, str]
    fronts: Mapping[str, str]
    links: tuple[tuple[str, ...], ...]

    @property
    def compounds(self) -> bool:
        """Whether what a thing is made of stands before it in the same word."""
        return not self.links


@cache
def shipped_languages() -> tuple[Language, ...]:
    """The shipped languages, read once. Raises `KnowledgeError` for a broken resource."""
    return tuple(read_language(resource_files.read_text(FOLDER, each), each) for each in _files())


def _files() -> tuple[str, ...]:
    return resource_files.names(FOLDER, suffix=".toml")


def read_language(text: str, file: str) -> Language:
    """One file. Raises `KnowledgeError`."""
    return read(parse(text, file), Language, file, "the text", key=file.removesuffix(".toml"))


def words_of(text: str) -> tuple[str, ...]:
    """The words of a text as they are compared: no case, no accents.

    >>> words_of("Jus d’Œillet, 2 cl")
    ('jus', "d'", 'oeillet', '2', 'cl')
    """
    return tuple(WORD.findall(plain(text)))


def plain(word: str) -> str:
    """One word as it is compared."""
    return folded(word).replace("œ", "oe").replace("æ", "ae")


@cache
def header_words() -> Mapping[str, str]:
    """A word that heads a field of a spec, folded -> the field's English name.

    Only that table of each file is read: the first row of any text asks for it.
    """
    return {
        " ".join(words_of(form)): name
        for each in _files()
        for name, said in _headers_in(resource_files.read_text(FOLDER, each), each).items()
        for word in said
        for form in _spellings(word)
    }


@cache
def action_words() -> frozenset[str]:
    """The words, folded, that say what is done in a method, of every language."""
    return frozenset(
        plain(form)
        for each in shipped_languages()
        for word in each.actions
        for form in _spellings(word)
    )


def _headers_in(text: str, file: str) -> Mapping[str, Texts]:
    found = _HEADERS.search(text)
    written = parse(found.group() if found else "", file)
    return {name: tuple(said) for name, said in table_in(written, "headers", file).items()}


@cache
def vocabularies() -> tuple[Vocabulary, ...]:
    """What each shipped language can say."""
    return tuple(map(_vocabulary, shipped_languages()))


@cache
def meanings() -> Mapping[str, frozenset[str]]:
    """What an ingredient is called in any language, folded -> all that it may be."""
    found: dict[str, set[str]] = {}
    for each in vocabularies():
        for phrases in each.phrases.values():
            for phrase in phrases:
                weak = len(phrase.words) > 1 and " ".join(phrase.words) in each.weak
                if phrase.keys and not weak:
                    found.setdefault(" ".join(phrase.words), set()).update(phrase.keys)
    return {name: frozenset(keys) for name, keys in found.items()}


@cache
def _written() -> frozenset[str]:
    """Every word that stands in the files: quickly had, before they are understood."""
    texts = (_TOLD.sub("", resource_files.read_text(FOLDER, each)) for each in _files())
    found = {word for text in texts for word in re.findall(r"[^\W\d_]+", text)}
    return frozenset(word.casefold() if word.isascii() else plain(word) for word in found)


def may_be_foreign(word: str) -> bool:
    """Whether a word, folded, may be one of the files' in any ending, spelling or compound.

    Cheap; it is asked for each word that is not English, and most of those are names.
    """
    known = _written()
    typed = word.replace("ae", "a").replace("oe", "o").replace("ue", "u")
    for form in {word, typed}:
        if any(form[: len(form) - cut] in known for cut in range(min(3, len(form)))):
            return True
        if any(form[:at] in known and form[at:] in known for at in range(3, len(form) - 2)):
            return True
    return False


def _vocabulary(language: Language) -> Vocabulary:
    found: dict[str, list[Phrase]] = {}
    for phrase in _phrases(language):
        found.setdefault(phrase.words[0], []).append(phrase)
    return Vocabulary(
        key=language.key,
        capitals=language.capitals,
        phrases={
            first: tuple(sorted(each, key=lambda phrase: -len(phrase.words)))
            for first, each in found.items()
        },
        weak=frozenset(
            " ".join(words) for each in language.weak for words in _forms(each, language)
        ),
        told=frozenset(words_of(language.told)),
        heads={plain(word): english for word, english in _each(language.heads)},
        fronts={
            form: english
            for word, english in _each(language.of_what)
            for form in map(plain, _spellings(word))
        },
        links=tuple(words_of(each) for each in language.links),
    )


def _phrases(language: Language) -> Iterator[Phrase]:
    for each in language.unsure:
        for said in each.words:
            for words in _forms(said, language):
                yield Phrase(words, "unsure", "", keys=each.may_be, settled=each.settled)
    for key, names in language.ingredients.items():
        yield from _said(names, "name", "", language, keys=(key,))
    yield from _unit_phrases(language)
    for number, figures in language.numbers.items():
        yield from _said(figures, "number", number, language)
    for english, phrases in language.phrases.items():
        yield from _said(phrases, _ROLES.get(english, "hedge"), english, language)
    for english, adjectives in language.adjectives.items():
        yield from _said(adjectives, "adjective", english, language)
    for english, heads in language.heads.items() if language.links else ():
        yield from _said(heads, "head", english, language)


def _unit_phrases(language: Language) -> Iterator[Phrase]:
    longer = {plain(word): unit for word, unit in _each(language.units_of_mixers)}
    for word, unit in _each(language.units):
        for words in _forms(word, language):
            yield Phrase(words, "unit", unit, of_mixers=longer.get(plain(word), ""))


def _said(
    said: Iterable[str],
    role: Role,
    english: str,
    language: Language,
    keys: tuple[str, ...] = (),
) -> Iterator[Phrase]:
    for each in said:
        before, _, behind = each.partition("…")
        for words in _forms(before, language):
            yield Phrase(words, role, english, keys=keys, behind=words_of(behind))


def _each(table: Mapping[str, Texts]) -> Iterator[tuple[str, str]]:
    return ((word, english) for english, words in table.items() for word in words)


def _forms(text: str, language: Language) -> Iterator[tuple[str, ...]]:
    """The words of a text in all their endings and spellings."""
    if "~" not in text:
        yield from map(words_of, _spellings(text))
        return
    choices = [_endings(written, language) for written in text.split()]
    for choice in product(*choices):
        yield tuple(word for words in choice for word in words)


def _endings(written: str, language: Language) -> list[tuple[str, ...]]:
    stem = written.removesuffix("~")
    endings = ("", *language.endings) if written != stem else ("",)
    return [words_of(form) for ending in endings for form in _spellings(stem + ending)]


def _spellings(written: str) -> tuple[str, ...]:
    """A word, and how it is typed where the keyboard has no umlauts."""
    plainly = written.casefold()
    typed = plainly.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue")
    return (written,) if typed == plainly else (written, typed)
