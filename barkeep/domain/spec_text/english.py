"""What of a line is plainly English: its words, and the names it begins with."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from barkeep.domain.amounts.spoken import HOW_FULL, NUMBER_WORDS
from barkeep.domain.amounts.units import unit_named
from barkeep.domain.ingredients.languages import WORD, may_be_foreign, plain
from barkeep.domain.ingredients.names import ADJECTIVES
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded

_ENGLISH_LIST = """
    with top up off fill float rinse garnish juice zest peel twist to taste serve about over under
    into in on at and or plus then for the from optional optionally cut chilled chopped halved
    muddled expressed flamed crushed grated long each strong weak if you like needed as well such
    between two shaken stirred built blended half quarter whole rim glass circa ca approx
    approximately roughly nearly almost maybe perhaps dozen no number
"""
_ENGLISH = frozenset(_ENGLISH_LIST.split()) | ADJECTIVES | NUMBER_WORDS | frozenset(HOW_FULL)
"""Words of lines that are plainly English, so that nothing need be looked up for them."""

_LENT_LIST = """
    de di d' du del la le al blanc blanche blanca rouge rosso rosa rosato rose bianco bianca sec
    rhum ron citron menthe framboise poire peche mure cassis fraise banane vieux brun sirop canne
    anejo verde noir verte ambre secco naranja dulce fraises fraiche dorado invecchiata presse fleur
    guindilla
"""
_LENT = frozenset(_LENT_LIST.split())
"""Words that English has only within names: *crème de cassis*, *vermouth rosso*."""

_SHORT = 4

LONGEST_NAME = 5
"""No name that matters here has more words."""


@dataclass(frozen=True, slots=True)
class Word:
    """A word of the line, compared as `plain`."""

    start: int
    end: int
    plain: str


def words_in(text: str) -> list[Word]:
    """The words and numbers of a line."""
    found = (Word(each.start(), each.end(), plain(each.group())) for each in WORD.finditer(text))
    return [each for each in found if each.plain]  # a mark without its letter is no word


def is_all_english(text: str, tree: FamilyTree) -> bool:
    """Whether every word of a line is English, or lent to it and in the name it was lent for."""
    if _is_plainly_english(text, tree):
        return True  # as most lines are, and they wait for no more than this
    words = words_in(text)
    strange = [each.plain for each in words if not is_english(each.plain, tree)]
    if any(map(may_be_foreign, strange)):
        return False
    at, spoken = 0, any(each.plain in _ONLY_ENGLISH for each in words)
    while at < len(words):
        lent = any(is_lent(each.plain) for each in words[at : at + LONGEST_NAME])
        key, count = english_name(text, words[at:], tree) if lent else (None, 0)
        if not count and is_lent(words[at].plain):
            return False
        if key is not None and not spoken and _is_a_false_friend(key, words[at : at + count], tree):
            return False
        at += count or 1
    return True


_ONLY_ENGLISH = frozenset({"of", "and", "the", "with", "each", "from"})
"""Small words that no other of the languages has."""


def _is_a_false_friend(key: str, name: Sequence[Word], tree: FamilyTree) -> bool:
    """Whether a lent name means something else where it was lent from: *rhum blanc*.

    A kind's own name is none, and asks no other language.
    """
    if plain(tree[key].name) == " ".join(each.plain for each in name):
        return False
    meant = tree.may_be(" ".join(each.plain for each in name))
    return bool(meant) and meant != (key,) and all(is_lent(each.plain) for each in name)


def is_lent(word: str) -> bool:
    """Whether English has a word only within names, in one number or the other."""
    return word in _LENT or (len(word) > _SHORT and word.removesuffix("s") in _LENT)


def _is_plainly_english(text: str, tree: FamilyTree) -> bool:
    found = map(str.lower, WORD.findall(text))
    return all(
        (word in tree.words and word not in _LENT)
        or word in _ENGLISH
        or not word[0].isalpha()
        or is_a_unit(word)
        for word in found
    )


def is_english(word: str, tree: FamilyTree) -> bool:
    return (
        not word[0].isalpha()
        or word in tree.words
        or word in _ENGLISH
        or (len(word) > 1 and word.rstrip("s") in tree.words)
        or is_a_unit(word)
    )


@lru_cache(maxsize=4096)  # the same few words stand in every line
def is_a_unit(word: str) -> bool:
    return unit_named(word) is not None


def english_name(text: str, words: Sequence[Word], tree: FamilyTree) -> tuple[str | None, int]:
    """The key of the longest English name a line begins with, and its number of words."""
    for count in range(min(LONGEST_NAME, len(words)), 0, -1):
        said = folded(text[words[0].start : words[count - 1].end])
        key = tree.by_name.get(said) or tree.by_name.get(said.removesuffix("s"))
        if key is not None:
            return key, count
    return None, 0
