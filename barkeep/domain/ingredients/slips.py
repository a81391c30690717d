"""Words of names as fingers slip: a letter left out or one too many, or two changed about.

*Tequilla*, *grapefriut*, *lemmon*, *pinapple*: such a word is hardly anything else, where one word
of all names is as near as that. Whatever else is misspelt, or is short, may well be another word,
and is asked about.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

LEAST_LETTERS = 6
"""A shorter word is too near too many others, but where two of its letters are changed about."""


def slips_of(words: Iterable[str]) -> Mapping[str, tuple[str, ...]]:
    """What is left of each word with no letter or any one letter left out -> the words."""
    found: dict[str, tuple[str, ...]] = {}
    for word in words:
        if len(word) >= LEAST_LETTERS - 1 and word.isalpha():
            for form in _shorter(word):
                found[form] = (*found.get(form, ()), word)
    return found


def put_right(word: str, slips: Mapping[str, tuple[str, ...]]) -> str | None:
    """The one word that a folded word is a slip of, None where there is none or more than one.

    >>> put_right("tequilla", slips_of(["tequila", "vanilla"]))
    'tequila'
    """
    if len(word) < LEAST_LETTERS - 1 or not word.isalpha():
        return None
    near = {each for form in _shorter(word) for each in slips.get(form, ())}
    short = len(word) < LEAST_LETTERS
    near = {each for each in near if not short or len(each) >= len(word)}
    near = {each for each in near if each[0] == word[0]}
    likely = {each for each in near if _is_a_slip(word, each)}
    if not likely:
        likely = {each for each in near if _lacks_a_letter(word, each)}
    return likely.pop() if len(likely) == 1 else None


def one_letter_off(word: str, slips: Mapping[str, tuple[str, ...]]) -> frozenset[str]:
    """The words that differ from a folded word by one letter, left out, added or another.

    >>> sorted(one_letter_off("bourbn", slips_of(["bourbon", "bonbon"])))
    ['bourbon']
    """
    if len(word) < LEAST_LETTERS - 1:
        return frozenset()
    near = {each for form in _shorter(word) for each in slips.get(form, ())}
    return frozenset(each for each in near if each != word and _is_one_off(word, each))


def put_right_beside(words: Sequence[str], at: int, known: Iterable[str]) -> frozenset[str]:
    """Which of the known words one of a row is hardly anything but a slip of: *lemn juice*.

    A shorter word than is put right alone may be one, since the others of the row tell the name;
    a letter too many is one only where it is doubled: *limne* may be lime or lemon.
    """
    word = words[at]
    if len(words) < 2 or len(word) < LEAST_LETTERS - 2 or not word.isalpha():
        return frozenset()
    near = (each for each in known if len(each) > 2 and each[0] == word[0] and each != word)
    near = (each for each in near if len(each) >= len(word) or _is_a_slip(word, each))
    return frozenset(each for each in near if _is_one_off(word, each) or _is_a_slip(word, each))


def whole_names_near(word: str, names: Iterable[str]) -> frozenset[str]:
    """Which whole names of one word a word of eight letters or more differs from by two at most.

    >>> sorted(whole_names_near("grenedine", ["grenadine", "gentian"]))
    ['grenadine']
    """
    if len(word) < LEAST_OF_A_NAME or not word.isalpha():
        return frozenset()
    near = (each for each in names if each[:1] == word[0] and len(each) >= LEAST_OF_A_NAME)
    near = (each for each in near if abs(len(each) - len(word)) <= _MOST_OFF)
    return frozenset(each for each in near if each != word and _steps(word, each) <= _MOST_OFF)


LEAST_OF_A_NAME = 8
"""Letters from which a whole name may be two letters off."""
_MOST_OFF = 2


def _steps(word: str, other: str) -> int:
    """How many letters are to be put in, taken out or changed to make one word of another."""
    row = list(range(len(other) + 1))
    for at, mark in enumerate(word, start=1):
        before, row[0] = row[0], at
        for place, wanted in enumerate(other, start=1):
            before, row[place] = (
                row[place],
                min(row[place] + 1, row[place - 1] + 1, before + (mark != wanted)),
            )
    return row[-1]


def without_vowels_of(word: str, words: Iterable[str]) -> frozenset[str]:
    """Which words are written so where vowels are left out: *elderflwr*, *brndy*, *vrmth*.

    >>> sorted(without_vowels_of("brndy", ["brandy", "brownie"]))
    ['brandy']
    """
    if len(word) < _LEAST_LEFT or not word.isalpha():
        return frozenset()
    bones = _bones(word)
    near = (each for each in words if len(each) > len(word) and each[0] == word[0])
    return frozenset(each for each in near if _bones(each) == bones and _is_within(word, each))


_LEAST_LEFT = 4
_VOWEL = frozenset("aeiou")


def _bones(word: str) -> str:
    return "".join(mark for mark in word if mark not in _VOWEL)


def _is_within(word: str, other: str) -> bool:
    """Whether the letters of a word stand in another in the same order."""
    letters = iter(other)
    return all(mark in letters for mark in word)


def slips_beside(word: str, words: Iterable[str]) -> frozenset[str]:
    """Which of some words a short one is a letter off, or has two letters of changed about.

    >>> sorted(slips_beside("ray", ["rye", "corn"]))
    []
    >>> sorted(slips_beside("rey", ["rye", "corn"]))
    ['rye']
    """
    near = {each for each in words if len(each) > 2 and each != word and each[0] == word[0]}
    return frozenset(each for each in near if _is_one_off(word, each) or _is_a_slip(word, each))


def _is_one_off(word: str, other: str) -> bool:
    start = next(
        (at for at, pair in enumerate(zip(word, other, strict=False)) if pair[0] != pair[1]), None
    )
    if start is None:
        return abs(len(word) - len(other)) == 1
    rest, others = word[start:], other[start:]
    return rest[1:] == others[1:] or rest[1:] == others or rest == others[1:]


def _lacks_a_letter(word: str, other: str) -> bool:
    """*Pinapple*, *proscecco*: whether a long word has one letter more or less than the other."""
    long = min(len(word), len(other)) >= LEAST_LETTERS
    return long and abs(len(word) - len(other)) == 1 and _is_one_off(word, other)


def _shorter(word: str) -> Iterator[str]:
    yield word
    yield from {word[:at] + word[at + 1 :] for at in range(len(word))}


def _is_a_slip(word: str, meant: str) -> bool:
    if abs(len(word) - len(meant)) == 1:
        longer, shorter = (word, meant) if len(word) > len(meant) else (meant, word)
        return any(
            longer[at] == longer[at - 1] and longer[:at] + longer[at + 1 :] == shorter
            for at in range(1, len(longer))
        )
    if len(word) != len(meant):
        return False
    other = [at for at in range(len(word)) if word[at] != meant[at]]
    if len(other) != 2 or other[1] != other[0] + 1:
        return False
    one, two = other
    return word[one] == meant[two] and word[two] == meant[one]
