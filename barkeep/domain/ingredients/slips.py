"""Words of names as they are mistyped: one letter too many, too few, another, or two changed about.

A slip is only put right where one word of all names is as near as that, and the first letter is
its own: *tequilla*, *grapefriut*, *bourbn*. A short word is never put right, since it may as well
be another.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

LEAST_LETTERS = 5
"""A shorter word is too near too many others."""

_LEAST_TO_CHANGE_ONE = 6
"""With one letter for another a word of five may be another word: *grape*, *crape*."""


def slips_of(words: Iterable[str]) -> Mapping[str, tuple[str, ...]]:
    """What is left of each word with no letter or any one letter left out -> the words."""
    found: dict[str, tuple[str, ...]] = {}
    for word in words:
        if len(word) >= LEAST_LETTERS and word.isalpha():
            for form in _shorter(word):
                found[form] = (*found.get(form, ()), word)
    return found


def put_right(word: str, slips: Mapping[str, tuple[str, ...]]) -> str | None:
    """The one word that a folded word is a slip of, None where there is none or more than one.

    >>> put_right("tequilla", slips_of(["tequila", "vanilla"]))
    'tequila'
    """
    if len(word) < LEAST_LETTERS or not word.isalpha():
        return None
    near = {each for form in _shorter(word) for each in slips.get(form, ())}
    likely = {each for each in near if each[0] == word[0] and _is_a_slip(word, each)}
    return likely.pop() if len(likely) == 1 else None


def _shorter(word: str) -> Iterator[str]:
    yield word
    yield from {word[:at] + word[at + 1 :] for at in range(len(word))}


def _is_a_slip(word: str, meant: str) -> bool:
    if abs(len(word) - len(meant)) == 1:
        longer, shorter = (word, meant) if len(word) > len(meant) else (meant, word)
        return shorter in _shorter(longer)
    if len(word) != len(meant):
        return False
    other = [at for at in range(len(word)) if word[at] != meant[at]]
    if len(other) == 2:
        one, two = other
        changed_about = word[one] == meant[two] and word[two] == meant[one]
        return two == one + 1 and changed_about
    return len(other) == 1 and len(word) >= _LEAST_TO_CHANGE_ONE
