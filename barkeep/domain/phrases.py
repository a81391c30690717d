"""Phrases looked for in free words: a method, a note, a glass.

A phrase is plain words. `flam*` is any word that begins so, `*` any one word,
`...` up to four words. Case, accents and hyphens do not count, and a phrase
never runs over a comma or a full stop.

What every sentence needs is here too: its capital, its full stop, and a price.
"""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property, lru_cache

from barkeep.translation import tr, tr_about

_WORD = r"[\w']"
_PATTERNS = {"*": rf"{_WORD}+ ", "...": rf"(?:{_WORD}+ ){{0,4}}"}
_NOTHING = "(?!)"


_SAID_NOT = re.compile(
    r"\b(?:no|not|never|without|avoid|avoids|avoiding|don't|instead of|rather than|free of)"
    r"(?: (?:be|set|use|using|add|adding|any|a|an|the|it))* $"
)
_BEFORE = 40
"""How many letters before a phrase are looked at for a *not*: more than its longest wording."""


def is_findable(phrase: str) -> bool:
    """Whether a phrase says enough to be looked for: a word of three letters, no open end."""
    tokens = folded(phrase).split()
    return max(map(len, _literals(phrase)), default=0) >= 3 and "..." not in (tokens[0], tokens[-1])


@dataclass(frozen=True)
class Phrases:
    """`said` are the phrases looked for; inside one of `unless`, a phrase does not count."""

    said: tuple[str, ...]
    unless: tuple[str, ...] = ()

    def found_in(self, words: str) -> bool:
        """Whether `words`, folded already, say one of the phrases and not the contrary.

        >>> flame = Phrases(("flame*", "set * alight"), unless=("flame grapes",))
        >>> [flame.found_in(each) for each in ("flamed peel", "never set it alight")]
        [True, False]
        """
        if not any(map(words.__contains__, self._stems)):  # asked of every drink, by every caution
            return False
        left = self._disarming.sub(";", words)
        return any(_is_meant(left, match.start()) for match in self._saying.finditer(left))

    @cached_property
    def _stems(self) -> tuple[str, ...]:
        """Pieces of which one must be there as it is: much quicker to look for than a phrase."""
        often = Counter(piece for phrase in self.said for piece in set(_literals(phrase)))
        stems = {
            max(_literals(phrase), key=lambda piece: (len(piece) >= 3, often[piece], len(piece)))
            for phrase in self.said
        }
        kept: list[str] = []
        for stem in sorted(stems, key=lambda stem: (len(stem), stem)):
            if not any(shorter in stem for shorter in kept):
                kept.append(stem)
        return tuple(kept)

    @cached_property
    def _saying(self) -> re.Pattern[str]:
        return _any_of(self.said)

    @cached_property
    def _disarming(self) -> re.Pattern[str]:
        return _any_of(self.unless)


def _literals(phrase: str) -> list[str]:
    return [token.rstrip("*") for token in folded(phrase).split() if token != "..."]


def _any_of(phrases: Iterable[str]) -> re.Pattern[str]:
    choices = "|".join(map(_pattern, phrases))
    return re.compile(rf"(?<!\w)(?:{choices})(?!\w)" if choices else _NOTHING)


def _pattern(phrase: str) -> str:
    return "".join(map(_token_pattern, folded(phrase).split())).removesuffix(" ")


def _token_pattern(token: str) -> str:
    if token in _PATTERNS:
        return _PATTERNS[token]
    ending = rf"{_WORD}*" if token.endswith("*") else ""
    return f"{re.escape(token.rstrip('*'))}{ending} "


def _is_meant(words: str, start: int) -> bool:
    return _SAID_NOT.search(words[max(start - _BEFORE, 0) : start]) is None


def folded(name: str) -> str:
    """Fold a name for comparison: no case, no accents, single spaces.

    >>> folded("  Crème  de Cassis ")
    'creme de cassis'
    """
    return _folded_before(name) if len(name) <= _SHORT else _folded(name)


_SHORT = 60
"""Characters; the names of the same few things are compared over and over."""


def _folded(name: str) -> str:
    letters = name.replace("’", "'")
    if not letters.isascii():
        letters = unicodedata.normalize("NFKD", letters).translate(_WITHOUT_MARKS)
    return " ".join(letters.casefold().replace("-", " ").split())


class _WithoutMarks(dict[int, int | None]):
    """Letters by their numbers as they are, None for a mark over one; each looked up once."""

    def __missing__(self, letter: int) -> int | None:
        self[letter] = found = None if unicodedata.combining(chr(letter)) else letter
        return found


_WITHOUT_MARKS = _WithoutMarks()
_folded_before = lru_cache(maxsize=16_384)(_folded)


def capitalised(words: str) -> str:
    """Words as a sentence begins; the capitals of names stay.

    >>> capitalised("gin and Old Sidings rum")
    'Gin and Old Sidings rum'
    """
    return words[:1].upper() + words[1:]


def as_sentence(words: str) -> str:
    """Words as one sentence, with its capital and its full stop."""
    return capitalised(words).rstrip(".") + "."


def begun_small(words: str) -> str:
    """Words as they stand inside a sentence, where the language begins them small there.

    >>> begun_small("Pour 3 dashes")
    'pour 3 dashes'
    """
    begins = tr_about("how words begin inside a sentence: small, or as written", "small")
    return with_small_letter(words) if begins == "small" else words


def with_small_letter(words: str) -> str:
    """Words with a small first letter in whatever is spoken, as names of ingredients have it.

    >>> with_small_letter("Lime juice")
    'lime juice'
    """
    return words[:1].lower() + words[1:]


def counted(number: int, word: str, words: str | None = None) -> str:
    """A number with its noun.

    >>> counted(2, "serve"), counted(1, "glass", "glasses")
    ('2 serves', '1 glass')
    """
    return f"{number} {tr(word if number == 1 else words or word + 's')}"


def price_in_words(amount: float | None, currency: str = "", unknown: str = "") -> str:
    """A price or a cost with two decimals; `unknown` where it is not known.

    >>> price_in_words(19.5, "EUR"), price_in_words(None, "EUR", "not known")
    ('19.50 EUR', 'not known')
    """
    return unknown if amount is None else f"{amount:.2f} {currency}".strip()
