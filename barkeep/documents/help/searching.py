"""Looking for what the help says: the pages that words fit, the likeliest first."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache

from barkeep.documents.help.glossary import PAGE, word_called
from barkeep.documents.help.pages import Help, HelpPage, Section, shipped_help
from barkeep.documents.help.word_forms import WordForms, forms_of
from barkeep.translation import ENGLISH

_IN_TITLE, _IN_WORDS, _IN_HEADING, _IN_TEXT = 6.0, 5.0, 3.0, 1.0
_ASKED_FOR_A_MEANING = 1.5
"""How much the page of words counts where the whole question is one of its words."""
_BEGINS = 4
"""So many letters of a word may stand for all of it."""
_BEGUN = 0.6
"""How much of its weight a word has that is only the beginning of what stands there."""
LIKE = 0.8
"""How like a word must be that is taken for one that is nowhere."""


@dataclass(frozen=True, slots=True)
class Found:
    """A page that fits, and the section of it that fits best."""

    page: HelpPage
    section: Section

    @property
    def place(self) -> str:
        """What a link to it says."""
        slug = self.section.slug
        return f"{self.page.key}#{slug}" if slug else self.page.key


def look_up(asked: str, language: str = ENGLISH) -> tuple[Found, ...]:
    """The pages that fit a question best, none where no word of it stands anywhere."""
    index = _index(language)
    words = index.meant_by(asked)
    scored = [(index.score(page, words), page) for page in index.help.pages.values()]
    if word_called(asked, language) is not None:
        scored = [(s * _ASKED_FOR_A_MEANING if p.key == PAGE else s, p) for s, p in scored]
    best = sorted((each for each in scored if each[0] > 0), key=lambda each: -each[0])
    return tuple(Found(page, index.best_section(page, words)) for _score, page in best)


@dataclass(frozen=True, slots=True)
class _Fields:
    """The words of one page, by where they stand."""

    title: frozenset[str]
    words: frozenset[str]
    headings: frozenset[str]
    text: Mapping[str, int]

    def weight(self, word: str) -> float:
        """How much it counts here; it may be the beginning of one of them."""
        weight = _IN_TEXT * math.log1p(sum(self.text[each] for each in _fitting(word, self.text)))
        for where, much in (
            (self.title, _IN_TITLE),
            (self.words, _IN_WORDS),
            (self.headings, _IN_HEADING),
        ):
            if _fitting(word, where):
                weight += much if word in where else much * _BEGUN
        return weight


def _fitting(word: str, within: Collection[str]) -> Collection[str]:
    """The word itself where it is there, else those that begin so."""
    if word in within or len(word) < _BEGINS:
        return {word} & set(within)
    return {each for each in within if each.startswith(word)}


class _Index:
    """Every page's words, and how many pages have each."""

    def __init__(self, pages: Help, forms: WordForms) -> None:
        self.help = pages
        self._forms = forms
        self._fields = {page.key: _fields(page, forms) for page in pages.pages.values()}
        self._pages_with = Counter(
            word for each in self._fields.values() for word in each.text.keys() | each.words
        )

    def meant_by(self, asked: str) -> tuple[str, ...]:
        """The words of a question, as they stand in some page where they can be found there."""
        return tuple(each for word in self._forms.asked(asked) for each in self._meant(word))

    def _meant(self, word: str) -> tuple[str, ...]:
        """The word where it or more of it stands anywhere, else its parts, or the most like it."""
        if any(each.startswith(word) for each in self._pages_with):
            return (word,)
        if parts := self._forms.parts(word, self._pages_with):
            return parts
        return tuple(get_close_matches(word, self._pages_with, n=1, cutoff=LIKE)) or (word,)

    def score(self, page: HelpPage, words: Collection[str]) -> float:
        """How well a page fits: rare words count more."""
        fields = self._fields[page.key]
        return sum(self._rarity(each) * fields.weight(each) for each in words)

    def best_section(self, page: HelpPage, words: Collection[str]) -> Section:
        """The section that has most of the words; the first where they are all alike."""
        return max(page.sections, key=lambda each: self._score_of_section(each, words))

    def _score_of_section(self, section: Section, words: Collection[str]) -> float:
        stems = self._forms.stems
        heading, text = set(stems(section.heading)), set(stems(section.text))
        return sum(
            self._rarity(each) * (_IN_HEADING * (each in heading) + (each in text))
            for each in words
        )

    def _rarity(self, word: str) -> float:
        return math.log(1 + len(self._fields) / (1 + self._pages_with[word]))


def _fields(page: HelpPage, forms: WordForms) -> _Fields:
    return _Fields(
        frozenset(forms.stems(page.title)),
        frozenset(forms.stems(page.words)),
        frozenset(stem for each in page.sections for stem in forms.stems(each.heading)),
        Counter(forms.stems(page.text)),
    )


@cache
def _index(language: str) -> _Index:
    return _Index(shipped_help(language), forms_of(language))
