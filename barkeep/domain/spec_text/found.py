"""What a text holds, wherever it stands: amounts with their units, and names of ingredients."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from barkeep.domain.amounts.amount import ReadAmount
from barkeep.domain.amounts.spoken import NUMBER_WORDS, any_amount_at_start
from barkeep.domain.amounts.units import US_UNITS, BarUnits, unit_named
from barkeep.domain.ingredients.names import named
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import AmountError, NegativeAmount

LONGEST_NAME = 5
"""No ingredient's name that matters here has more words."""

WORD = re.compile(r"(?<![\w.])\.[0-9]+|[^\W_]+(?:['’.][^\W_]+)*|[¼-¾⅐-⅞]")

DIGIT = re.compile(r"\.?[0-9¼-¾⅐-⅞]")

ARTICLES = frozenset({"a", "an", "the", "of"})

_A_NUMBER_TOO = frozenset(
    {"half", "quarter", "quarters", "third", "thirds", "couple", "few", "dozen", "hundred"}
)


@dataclass(frozen=True, slots=True)
class FoundAmount:
    """An amount and where its words begin and end."""

    start: int
    end: int
    amount: ReadAmount


@dataclass(frozen=True, slots=True)
class FoundName:
    """The name of an ingredient and where its words begin and end."""

    start: int
    end: int
    key: str


def amounts_in(text: str, units: BarUnits) -> Iterator[FoundAmount]:
    """Each number with its unit, if any, and each unit that an article stands before."""
    end = 0
    for word in WORD.finditer(text):
        if word.start() < end or not (units.own or may_begin_an_amount(word.group())):
            continue
        found = amount_at(text[word.start() :], units)
        if found is None:
            continue
        said = text[word.start() : word.start() + found.end].rstrip()
        first = folded(said).split()[0]
        if first in ARTICLES and found.unit is None:
            continue
        end = word.start() + len(said)
        yield FoundAmount(word.start(), end, found)


@lru_cache(maxsize=4096)  # the same few words stand in every line
def may_begin_an_amount(word: str) -> bool:
    """Whether an amount may begin with a word: a figure, a number said, or a unit."""
    plain = word.casefold().split("-")[0]
    return (
        bool(DIGIT.match(word))
        or plain in NUMBER_WORDS | {"between", "point", "zero", "nought", "oh"}
        or _is_a_unit(plain)
    )


def _is_a_unit(word: str) -> bool:
    return unit_named(word) is not None


def amount_at(text: str, units: BarUnits) -> ReadAmount | None:
    """The amount a text begins with, None where there is none or it makes no sense."""
    try:
        return any_amount_at_start(text, units)
    except (AmountError, NegativeAmount):
        return None


def names_in(text: str, tree: FamilyTree) -> Iterator[FoundName]:
    """Each name of an ingredient in a text, the longest that begins at a word."""
    words = list(WORD.finditer(text))
    start = 0
    while start < len(words):
        taken = 1
        for count in range(min(LONGEST_NAME, len(words) - start), 0, -1):
            begins, ends = words[start].start(), words[start + count - 1].end()
            found = named(text[begins:ends], tree)
            if found and found.key:
                taken = count
                yield FoundName(begins, ends, found.key)
                break
        start += taken


def share_at(text: str) -> tuple[int, str] | None:
    """*A half*, *three quarters*: a number below one has no unit when it corrects another."""
    found = re.match(
        r"(?:an?[ ])?(?P<share>three[ -]quarters?|half|quarter|third|two[ -]thirds?)\b[ .!]*",
        text,
        re.IGNORECASE,
    )
    shares = {"half": "1/2", "quarter": "1/4", "third": "1/3"}
    if found is None:
        return None
    said = folded(found["share"])
    number = shares.get(said) or ("3/4" if said.startswith("three") else "2/3")
    return found.end(), number


@lru_cache(maxsize=4096)  # the same few words stand in every line
def is_a_number(word: str) -> bool:
    """Whether a word is a number in figures or in words; an article is none."""
    if DIGIT.match(word):
        return True
    found = amount_at(word, US_UNITS)
    return folded(word) in _A_NUMBER_TOO or (found is not None and folded(word) not in ARTICLES)
