"""Words of a line that name nothing: `resources/line_words.toml`."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from barkeep import resource_files
from barkeep.domain.phrases import folded
from barkeep.shipped_data import parse, read

FILE = "line_words.toml"


@dataclass(frozen=True, slots=True)
class LineWords:
    """The file as it is written; its own head says what each list holds."""

    small: str
    doing: str
    done: str
    things: str
    how: str
    begins: str
    turns: str


@cache
def shipped_line_words() -> LineWords:
    """The shipped lists, read once. Raises `KnowledgeError` for a broken resource."""
    return read(parse(resource_files.read_text(FILE), FILE), LineWords, FILE, "the text")


@cache
def _beside() -> frozenset[str]:
    """The forms of words that may stand right behind a name and make no other of it."""
    lists = shipped_line_words()
    found = {*_listed(lists.small), *_listed(lists.done)}
    for word in _listed(lists.doing):
        found |= {form for form in _forms_of_doing(word) if form.endswith(("ed", "ing"))}
    for word in _listed(lists.how):
        found |= {word, *_forms_of_how(word)}
    return frozenset(found)


def may_follow_a_name(word: str) -> bool:
    """Whether a word, folded, right behind a name is no part of another: *gin poured*."""
    return word.strip(".'") in _beside()


@cache
def _bidden() -> frozenset[str]:
    return frozenset(_listed(shipped_line_words().doing))


@cache
def _beginnings() -> frozenset[str]:
    return frozenset(_listed(shipped_line_words().begins))


def begins_what_is_told(word: str) -> bool:
    """Whether what a word, folded, begins behind a name only tells of it: *for*, *because*."""
    return word.strip(".'") in _beginnings()


@cache
def _turning() -> frozenset[str]:
    return frozenset(_listed(shipped_line_words().turns))


def turns(word: str) -> bool:
    """Whether a word, folded, takes back, puts right or changes what is told: *not*, *smoked*."""
    return word.strip(".'") in _turning()


def says_to_do(word: str) -> bool:
    """Whether a word, folded, is the plain form of something that is done: *give*, *slap*."""
    return word in _bidden()


@cache
def _words() -> frozenset[str]:
    """Every form of every word, folded, hyphens as the space they are folded to."""
    lists = shipped_line_words()
    found = {*_listed(lists.small), *_listed(lists.done)}
    for word in _listed(lists.doing):
        found |= {word, *_forms_of_doing(word)}
    for word in _listed(lists.things):
        found |= {word, *_plurals(word)}
    for word in _listed(lists.how):
        found |= {word, *_forms_of_how(word)}
    return frozenset(part for each in found for part in (each, *each.split()))


def _listed(words: str) -> list[str]:
    return [folded(each) for each in words.split()]


def _plurals(word: str) -> Iterator[str]:
    yield f"{word}s"
    yield f"{word}'s"
    if word.endswith(("s", "x", "ch", "sh")):
        yield f"{word}es"
    elif word.endswith("y"):
        yield f"{word[:-1]}ies"
    elif word.endswith("f"):
        yield f"{word[:-1]}ves"


def _forms_of_doing(word: str) -> Iterator[str]:
    yield from _plurals(word)
    stem = word[:-1] if word.endswith("e") else word
    yield from (f"{stem}ed", f"{stem}ing", f"{word}{word[-1]}ed", f"{word}{word[-1]}ing")
    if word.endswith("y"):
        yield f"{word[:-1]}ied"


def _forms_of_how(word: str) -> Iterator[str]:
    stem = word[:-1] if word.endswith("e") else word
    yield from (f"{word}ly", f"{stem}er", f"{stem}est", f"{word}ish", f"{stem}y", f"{stem}ly")
    yield from (f"{word}{word[-1]}er", f"{word}{word[-1]}est")
    if word.endswith("y"):
        yield from (f"{word[:-1]}{ending}" for ending in ("ily", "ier", "iest"))


def tells_nothing_else(word: str) -> bool:
    """Whether a word, folded, stands about an amount and a name without changing the thing."""
    plain = word.strip(".'")
    return plain in _words() or plain.removesuffix("'s") in _words()
