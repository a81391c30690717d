"""barkeep's words with what they mean: one glossary, for every face."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from barkeep import resource_files
from barkeep.domain.phrases import folded
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Text, Texts, by_key, parse
from barkeep.translation import ENGLISH

FILE = "glossary.toml"
PAGE, FIRST_PAGE = "glossary", "first-hour"
"""The page of the help that has every word, and the one to begin with."""


@dataclass(frozen=True, slots=True)
class Word:
    """One word: what it means in a sentence or three, and the place of the help that tells more.

    The key is the English word, by which screens and links name it in every language.
    """

    key: str
    says: Text
    page: Text
    also: Texts = ()
    word: Text = ""

    @property
    def name(self) -> str:
        """The word as its language writes it."""
        return self.word or self.key

    @property
    def place(self) -> str:
        """Where it stands on the page of words."""
        return f"{PAGE}#{slug(self.key)}"


@cache
def glossary(language: str = ENGLISH) -> Mapping[str, Word]:
    """Every word by its key, in the order of the English file; in English where it has no other.

    Raises `KnowledgeError` for a broken file.
    """
    if language == ENGLISH:
        return read_glossary(resource_files.read_text(FILE))
    english = glossary()
    return {**english, **read_glossary(resource_files.read_said(FILE, language=language))}


def read_glossary(text: str, file: str = FILE) -> Mapping[str, Word]:
    """Words out of a TOML text. Raises `KnowledgeError`, also where two are asked for alike."""
    words = by_key(parse(text, file), Word, file)
    seen: dict[str, str] = {}
    for word in words.values():
        for name in (word.name, *word.also):
            if seen.setdefault(folded(name), word.key) != word.key:
                raise KnowledgeError(file, word.key, f"“{name}” is “{seen[folded(name)]}” too")
    return words


def word_called(name: str, language: str = ENGLISH) -> Word | None:
    """The word that is asked for by a name, such as *Pars* or *beyond doubt*; its key always is."""
    return _by_name(language).get(folded(name))


@cache
def _by_name(language: str) -> Mapping[str, Word]:
    words = glossary(language).values()
    names = {folded(name): word for word in words for name in (word.name, *word.also)}
    return {folded(word.key): word for word in words} | names


def slug(heading: str) -> str:
    """A heading as a link names it.

    >>> slug("What the verdicts mean"), slug("Can it all be poured?")
    ('what-the-verdicts-mean', 'can-it-all-be-poured')
    """
    plain = "".join(each if each.isalnum() else " " for each in folded(heading))
    return "-".join(plain.split())
