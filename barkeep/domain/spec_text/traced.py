"""A text that is taken apart and put together, and still knows where each letter was written."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache


@dataclass(frozen=True, slots=True)
class Traced:
    """A text; `places` are where each of its characters stands in what was written, from 0."""

    text: str
    places: tuple[int, ...]

    @classmethod
    def of(cls, text: str, at: int = 0) -> Traced:
        """A text as it was written, from `at` on."""
        return cls(text, tuple(range(at, at + len(text))))

    def part(self, start: int, end: int | None = None) -> Traced:
        """The characters from `start` up to `end`."""
        return Traced(self.text[start:end], self.places[start:end])

    def place(self, at: int) -> int:
        """Where a character was written; what stands behind the last, behind that."""
        if not self.places:
            return 0
        if at >= len(self.places):
            return self.places[-1] + 1
        return self.places[max(at, 0)]

    def stripped(self) -> Traced:
        """Without the space at both ends."""
        start = len(self.text) - len(self.text.lstrip())
        return self.part(start, start + len(self.text.strip()))

    def said_instead(self, start: int, end: int, words: str) -> Traced:
        """With other words in place of some, which count as written where those began."""
        at = self.place(start)
        text = self.text[:start] + words + self.text[end:]
        places = (*self.places[:start], *([at] * len(words)), *self.places[end:])
        return Traced(text, places)


def joined(parts: Iterable[Traced | str]) -> Traced:
    """Parts in a row; a plain string between two counts as written where the next one begins."""
    text, places, waiting = "", (), ""  # type: str, tuple[int, ...], str
    for part in parts:
        if isinstance(part, str):
            waiting += part
            continue
        at = part.place(0)
        text += waiting + part.text
        places += ((at,) * len(waiting)) + part.places
        waiting = ""
    last = places[-1] if places else 0
    return Traced(text + waiting, places + (last,) * len(waiting))


_SPACES = re.compile(r"\s+")

_EMPHASIS = re.compile(
    r"\*\*+|(?<!\w)__(?=\w)|(?<=\w)__(?!\w)|`|(?<=\w)!+[ ]*$"
    r"|(?<![\w*])[*_](?=\w[^*_]*[*_](?!\w))|(?<=\w)_(?![\w_])|\b(?:uh+|um+|erm?|uhm),?[ ](?=\w)",
    re.IGNORECASE,
)
"""Marks of emphasis, and sounds that say nothing."""

_SAID_TWICE = re.compile(
    r"\b(?P<word>of|the|an?|and|to|with|in|one|two|three|four|five|six|half|some|just|we|i|it)"
    r"(?:[ ]+(?P=word)\b)+",
    re.IGNORECASE,
)


_STAMMERED = re.compile(
    r"\b(?P<words>[A-Za-z'’]+(?:[ ][A-Za-z'’]+){1,3}(?<![ ]and)(?<![ ]or)(?<![ ]to))"
    r"(?:[ ]+(?P=words)\b)+",
    re.IGNORECASE,
)
"""*Quarter ounce quarter ounce of*: words that are begun again."""

_ISH = re.compile(r"(?P<number>(?:[0-9]+[ ])?[0-9./,]*[0-9¼½¾⅓⅔])[ -]?ish\b", re.IGNORECASE)


@lru_cache(maxsize=4_096)
def squeezed(text: str) -> Traced:
    """A text with every run of space as one, no small word stammered, and *2ish* as *ish 2*.

    >>> squeezed("two  two ounces of of gin").text
    'two ounces of gin'
    """
    found = Traced.of(text)
    for mark in reversed(list(_EMPHASIS.finditer(text))):
        found = joined((found.part(0, mark.start()), found.part(mark.end())))
    text = found.text
    for space in reversed([each for each in _SPACES.finditer(text) if each.group() != " "]):
        found = found.said_instead(space.start(), space.end(), " ")
    for ish in reversed(list(_ISH.finditer(found.text))):
        found = joined(
            (
                found.part(0, ish.start()),
                "ish ",
                found.part(ish.start(), ish.end("number")),
                found.part(ish.end()),
            )
        )
    for twice in reversed(list(_SAID_TWICE.finditer(found.text))):
        found = joined((found.part(0, twice.end("word")), found.part(twice.end())))
    if found.text.count(" ") < 3:
        return found  # too short to begin anything again
    words = found.text.casefold().split()
    if len(words) > len(set(words)) + 1:  # two words at least are said again
        for twice in reversed(list(_STAMMERED.finditer(found.text))):
            found = joined((found.part(0, twice.end("words")), found.part(twice.end())))
    return found
