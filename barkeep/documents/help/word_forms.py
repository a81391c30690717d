"""Words as they are compared in a search: without what is only their form, by language."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

from barkeep.domain.phrases import folded
from barkeep.translation import ENGLISH

_SHORTEST = 3
"""Letters that are left of a word, and of each part of one that is put together."""


@dataclass(frozen=True, slots=True)
class WordForms:
    """How a language changes its words.

    `says_nothing` are words of a question that say nothing of what it is about, `endings` what a
    word may end in, `spelled` other ways to write a letter, `joints` what stands between two
    words that are written as one; none where they are not.
    """

    says_nothing: frozenset[str]
    endings: tuple[str, ...]
    spelled: Mapping[str, str]
    joints: tuple[str, ...]

    def asked(self, text: str) -> list[str]:
        """The stems of a question that say what it is about; all of them where none does."""
        nothing = {self.stem(each) for each in self.says_nothing}
        every = list(self.stems(text))
        return [each for each in every if each not in nothing] or every

    def stems(self, text: str) -> Iterator[str]:
        """Each word of a text without what is only its form."""
        for each in re.findall(r"[^\W_]+", folded(text)):
            yield self.stem(each)

    def stem(self, word: str) -> str:
        """A word without what is only its form: *weighing*, *weighed* and *weighs* are one.

        >>> words = ("drinks", "batches", "stopped", "filming", "glass", "recipes")
        >>> [forms_of("en").stem(each) for each in words]
        ['drink', 'batch', 'stop', 'film', 'glass', 'recip']
        >>> [forms_of("de").stem(each) for each in ("flaschen", "mengen", "fuellstand", "zahlung")]
        ['flasch', 'meng', 'fullstand', 'zahl']
        """
        for written, letter in self.spelled.items():
            word = word.replace(written, letter)
        for ending in self.endings:
            if word.endswith(ending) and len(word) - len(ending) >= _SHORTEST:
                if word.endswith("ss"):
                    continue
                word = word.removesuffix(ending)
                if len(word) > _SHORTEST and word[-1] == word[-2] and word[-1] not in "ls":
                    word = word[:-1]
                break
        return word

    def parts(self, word: str, known: Collection[str]) -> tuple[str, ...]:
        """The known words that one is put together of, by its longest beginning.

        The last one twice, for it says what the whole is. The beginning alone where only that
        is known; nothing where nothing is.

        >>> forms_of("de").parts("einkaufspreis", {"einkauf", "preis", "ein"})
        ('einkauf', 'preis', 'preis')
        """
        if not self.joints:
            return ()
        alone: tuple[str, ...] = ()
        for end in range(len(word) - 1, _SHORTEST - 1, -1):
            first = self.stem(word[:end])
            if word[:end] not in known and first not in known:
                continue
            begun = word[:end] if word[:end] in known else first
            for joint in self.joints:
                rest = word[end:].removeprefix(joint)
                if len(rest) >= _SHORTEST and rest in known:
                    return begun, rest, rest
            if not alone and end > _SHORTEST:
                alone = (begun,)
        return alone


# fmt: off
_ENGLISH = WordForms(
    frozenset((
        "a", "an", "and", "are", "at", "be", "came", "can", "do", "does", "for", "from", "has",
        "have", "how", "i", "in", "is", "it", "me", "my", "of", "on", "or", "our", "so",
        "something", "the", "there", "they", "to", "was", "what", "when", "where", "which",
        "who", "will", "with", "you", "your",
    )),
    endings=("ings", "ing", "ies", "ied", "es", "ed", "s", "y", "e"),
    spelled={},
    joints=(),
)
_GERMAN = WordForms(
    frozenset((
        "aber", "alle", "alles", "als", "am", "an", "auch", "auf", "aus", "bei", "beim", "bin",
        "da", "das", "dass", "dem", "den", "der", "des", "die", "ein", "eine", "einen", "einem",
        "einer", "er", "es", "etwas", "für", "geht", "gibt", "habe", "haben", "hat", "ich", "im",
        "in", "ins", "ist", "kann", "können", "mache", "machen", "man", "mein", "meine", "meinen",
        "meiner", "mich", "mir", "mit", "muss", "nach", "noch", "oder", "sehe", "sich", "sie",
        "sind", "so", "soll", "um", "und", "uns", "unser", "unsere", "viel", "vom", "von", "vor",
        "wann", "war", "was", "wenn", "wer", "wie", "wir", "wird", "wo", "zu", "zum", "zur",
    )),
    endings=("ungen", "ung", "en", "ern", "er", "em", "es", "e", "n", "s"),
    spelled={"ae": "a", "oe": "o", "ue": "u"},
    joints=("", "s", "n", "en", "er", "e"),
)
# fmt: on


def forms_of(language: str) -> WordForms:
    """Those of a language; the English ones where no others are known."""
    return _KNOWN.get(language, _ENGLISH)


_KNOWN: Mapping[str, WordForms] = {ENGLISH: _ENGLISH, "de": _GERMAN}
