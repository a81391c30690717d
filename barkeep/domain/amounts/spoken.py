"""Amounts as they are said: *half an ounce*, *an ounce and a half*, *two to three dashes*.

| said                              | read as        |
|-----------------------------------|----------------|
| two ounces, forty-five ml         | 2 oz, 45 ml    |
| half an ounce, a half ounce       | 0.5 oz         |
| three-quarters of an ounce        | 0.75 oz        |
| one and a half ounces             | 1.5 oz         |
| an ounce and a half               | 1.5 oz         |
| two to three dashes, two or three | 2 to 3 dashes  |
| a couple of dashes                | 2 dashes       |
| a few drops                       | 3 drops        |
| a dozen (mint leaves)             | 12, no unit    |
| six (mint leaves)                 | 6, no unit     |
| equal parts                       | 1 part         |
| a dash or two                     | 1 to 2 dashes  |
| a hundred and twenty ml           | 120 ml         |
| seven point five ml               | 7.5 ml         |
| 1 and 1/2 oz, two and 1/2 oz      | 1.5, 2.5 oz    |
| between 10 and 15 ml              | 10 to 15 ml    |
| 2 x 25 ml                         | 50 ml          |
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from unicodedata import numeric

from barkeep.domain.amounts.amount import ReadAmount, amount_at_start, unit_at
from barkeep.domain.amounts.units import US_UNITS, BarUnits

A_FEW = 3.0
"""What *a few* is taken for (*common practice*)."""


_ONES = "one two three four five six seven eight nine ten eleven twelve"
_TEENS = "thirteen fourteen fifteen sixteen seventeen eighteen nineteen"
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety"
_NUMBERS: Mapping[str, float] = {
    **{word: float(value) for value, word in enumerate(f"{_ONES} {_TEENS}".split(), 1)},
    **{word: 10.0 * value for value, word in enumerate(_TENS.split(), 2)},
    "hundred": 100.0,
}
_SHARES: Mapping[str, float] = {
    "half": 1 / 2,
    "halves": 1 / 2,
    "third": 1 / 3,
    "thirds": 1 / 3,
    "quarter": 1 / 4,
    "quarters": 1 / 4,
    "fourth": 1 / 4,
    "fourths": 1 / 4,
    "eighth": 1 / 8,
    "eighths": 1 / 8,
}

HOW_FULL = (
    *("scant", "generous", "heaping", "heaped", "level", "rounded", "good", "healthy", "light"),
    *("heavy", "big", "large", "small", "short", "long", "thin", "thick", "fat", "full", "nice"),
    *("solid", "hefty", "proper", "decent", "tiny", "modest", "wee", "rough", "lazy", "tight"),
    *("fine", "quick", "bold", "stiff", "barely", "skinny", "little", "lavish", "liberal", "whole"),
)
"""What is said of a measure between the number and its name: *a generous splash*."""

NUMBER_WORDS = frozenset(
    {*_NUMBERS, *_SHARES, "couple", "few", "dozen", "equal", "a", "an", "the", "of", "each"}
    | {"to", "or", "and"}
)
"""The words that numbers are said with, or stand beside."""

_WORD = re.compile(r"[^\W\d_]+")
_GAP = re.compile(r"[ -]*")


@dataclass(frozen=True, slots=True)
class _Said:
    """A number that was said and where it ends."""

    value: float
    end: int


def any_amount_at_start(text: str, units: BarUnits = US_UNITS) -> ReadAmount | None:
    """The amount a text begins with, in words or in figures; None where it begins with none.

    What an ounce is taken for is the bar's `units`.

    Raises as `barkeep.domain.amounts.amount.amount_at_start` does.
    """
    first = _FIRST.match(text)
    if first and first["word"] and _UNIT_OR_TWO.match(text):
        one = amount_at_start(f"a {text}", units)  # dash or two
        said = spoken_at_start(f"a {text}", units) if one and one.unit else None
        if said is not None and said.high is not None:
            return replace(said, end=said.end - 2, unit_at=said.unit_at - 2)
    if first is None or (first["word"] and first["word"].casefold() not in _BEGIN):
        return amount_at_start(text, units)  # no word that a number is said with
    return (
        _so_many_times(text, units) or spoken_at_start(text, units) or amount_at_start(text, units)
    )


_UNIT_OR_TWO = re.compile(r"[^\W\d_]+[ ]or[ ](?:two|three|four)\b", re.IGNORECASE)

_FIRST = re.compile(
    r"[ -]*(?:(?P<word>[^\W\d_]+)|(?=[0-9]{1,4}[ ]*(?:and\b|dozen\b|[x×*])))", re.IGNORECASE
)
"""What an amount that is not all in figures begins with."""

_NOUGHTS = ("zero", "nought", "oh", "o")

_BEGIN = frozenset(
    {
        *_NUMBERS,
        "zero",
        "nought",
        "oh",
        *_SHARES,
        "a",
        "an",
        "couple",
        "few",
        "dozen",
        "equal",
        "between",
        "point",
    }
)


_TIMES = re.compile(r"(?P<times>[0-9]{1,2})[ ]?[x×*][ ]?(?=[0-9.¼½¾])", re.IGNORECASE)


def _so_many_times(text: str, units: BarUnits) -> ReadAmount | None:
    """*2 x 25 ml*, which is 50 ml."""
    times = _TIMES.match(text)
    once = amount_at_start(text[times.end() :], units) if times else None
    if times is None or once is None or once.unit is None or once.high is not None:
        return None
    return ReadAmount(
        value=float(times["times"]) * once.value,
        high=None,
        unit=once.unit,
        end=times.end() + once.end,
        unit_at=times.end() + once.unit_at,
    )


def spoken_at_start(text: str, units: BarUnits = US_UNITS) -> ReadAmount | None:
    """The amount in words that a text begins with; None where it begins with none.

    >>> spoken_at_start("three-quarters of an ounce of gin").value
    0.75
    """
    before = _unit_before_share(text, units)
    return before or _equal_parts(text) or _between(text, units) or _range_or_number(text, units)


def _unit_before_share(text: str, units: BarUnits) -> ReadAmount | None:
    """*An ounce and a half*: the rest of the number comes after its unit."""
    number = _article(text, 0) or _number(text, 0)
    if number is None:
        return None
    begins = _gap(text, number.end)
    unit, end = unit_at(text, begins, units)
    more = None if unit is None else _or_maybe(text, end)
    high = None if more is None else _number(text, more)
    if unit is not None and high is not None and high.value > number.value:  # a dash or two
        return ReadAmount(
            value=number.value, high=high.value, unit=unit, end=high.end, unit_at=begins
        )
    joined = _words(text, end, "and")
    share = None if unit is None or joined is None else _share(text, joined)
    if unit is None or share is None:
        return None
    again, _ = unit_at(text, _gap(text, _of_a(text, share.end)), units)
    if again is not None:
        return None  # two ounces and half an ounce of what follows
    return ReadAmount(
        value=number.value + share.value, high=None, unit=unit, end=share.end, unit_at=begins
    )


def _or_maybe(text: str, at: int) -> int | None:
    """Past *or*, *maybe*, *or maybe* …, which lead to the upper end of a range."""
    after = _words(text, at, "or")
    for word in ("maybe", "perhaps", "possibly", "even"):
        further = _words(text, at if after is None else after, word)
        if further is not None:
            return further
    return after


def _equal_parts(text: str) -> ReadAmount | None:
    equal = _words(text, 0, "equal")
    if equal is None:
        return None
    begins = _gap(text, equal)
    unit, end = unit_at(text, begins)
    return (
        ReadAmount(value=1.0, high=None, unit=unit, end=end, unit_at=begins)
        if unit == "part"
        else None
    )


def _between(text: str, units: BarUnits) -> ReadAmount | None:
    """*Between 10 and 15 ml*, a unit after the first number or not."""
    begins = _words(text, 0, "between")
    if begins is None:
        return None
    begins = _gap(text, begins)
    low = _unit_before_share(text[begins:], units) or _at(text, begins, units)
    joined = None if low is None else _words(text, begins + low.end, "and")
    high = None
    if joined is not None:
        behind = text[_gap(text, joined) :]
        high = _unit_before_share(behind, units) or _at(behind, 0, units)
    if low is None or joined is None or high is None or high.value <= low.value:
        return None
    ahead = _gap(text, joined)
    return ReadAmount(
        value=low.value,
        high=high.value,
        unit=high.unit,
        end=ahead + high.end,
        unit_at=ahead + high.unit_at,
    )


def _at(text: str, start: int, units: BarUnits) -> ReadAmount | None:
    return _range_or_number(text[start:], units) or amount_at_start(text[start:], units)


def _range_or_number(text: str, units: BarUnits) -> ReadAmount | None:
    low = _quantity(text, 0)
    if low is None:
        return None
    joined = _words(text, low.end, "to") or _words(text, low.end, "or")
    high = None if joined is None else _quantity(text, joined) or _one_of(text, joined, units)
    if high is not None and high.value <= low.value:
        high = None
    last = high or low
    begins = _gap(text, _of_a(text, last.end))
    unit, end = unit_at(text, begins, units)
    if unit is None and last.value < 1.0:
        return None  # half a lime: the reader of pieces knows that
    ends = end if unit else last.end
    return ReadAmount(
        value=low.value,
        high=None if high is None else high.value,
        unit=unit,
        end=ends,
        unit_at=begins,
    )


def _one_of(text: str, at: int, units: BarUnits) -> _Said | None:
    """The *an* of *three quarters to an ounce*."""
    one = _article(text, at)
    return one if one and unit_at(text, _gap(text, one.end), units)[0] else None


def _quantity(text: str, at: int) -> _Said | None:
    """*Two*, *one and a half*, *three quarters*, *a couple*, *a few*."""
    vague = _dozens(text, at) or _vague(text, at)
    if vague is not None:
        return vague
    number = _whole_in_figures(text, at) or _number(text, at)
    if number is None or _share(text, number.end, bare=True):
        return _share(text, at)
    joined = _words(text, number.end, "and")
    share = None if joined is None else _share(text, joined) or _fraction(text, joined)
    return number if share is None else _Said(number.value + share.value, share.end)


_FRACTION = re.compile(
    r"(?P<over>[1-9])[ ]?[/⁄][ ]?(?P<under>[2-9])(?![0-9])|(?P<glyph>[¼½¾⅓⅔⅛⅜⅝⅞])"
)

_FIGURES = re.compile(
    r"[0-9]{1,4}(?=[ ]+dozen\b|[ ]+and[ ]+(?:[1-9][ ]?[/⁄]|[¼½¾⅓⅔⅛⅜⅝⅞]|an?[ ](?:half|quarter)))",
    re.I,
)


def _fraction(text: str, at: int) -> _Said | None:
    """*1/2* or *½* behind *and*."""
    begins = _gap(text, at)
    found = _FRACTION.match(text, begins)
    if found is None:
        return None
    value = numeric(found["glyph"]) if found["glyph"] else int(found["over"]) / int(found["under"])
    return _Said(value, found.end())


def _whole_in_figures(text: str, at: int) -> _Said | None:
    """The *1* of *1 and 1/2*: other figures are read where figures are."""
    found = _FIGURES.match(text, _gap(text, at))
    return _Said(float(found.group()), found.end()) if found else None


def _vague(text: str, at: int) -> _Said | None:
    begins = _words(text, at, "a") or at
    for word, value in (("couple", 2.0), ("few", A_FEW), ("dozen", 12.0)):
        end = _words(text, begins, word)
        if end is not None:
            return _Said(value, end)
    return None


def _dozens(text: str, at: int) -> _Said | None:
    """*Two dozen*, *1 dozen*, *half a dozen*."""
    number = _whole_in_figures(text, at) or _number(text, at) or _share(text, at)
    end = _words(text, _of_a(text, number.end), "dozen") if number else None
    return _Said(number.value * 12.0, end) if number and end is not None else None


def _share(text: str, at: int, bare: bool = False) -> _Said | None:
    """*Half*, *a half*, *three quarters*; `bare`, without the number in front."""
    front = None if bare else _article(text, at) or _number(text, at)
    times, begins = (front.value, front.end) if front else (1.0, at)
    found = _WORD.match(text, _gap(text, begins))
    share = _SHARES.get(found.group().casefold()) if found else None
    return None if found is None or share is None else _Said(times * share, found.end())


def _number(text: str, at: int) -> _Said | None:
    """*Two*, *forty-five*, *a hundred and twenty*, *seven point five*."""
    nought = next((end for each in _NOUGHTS if (end := _words(text, at, each))), None)
    front = _words(text, at if nought is None else nought, "point")
    whole = _Said(0.0, at if nought is None else nought) if front is not None else _whole(text, at)
    point = None if whole is None else _words(text, whole.end, "point")
    if whole is None or point is None:
        return whole
    digits, end = "", point
    while (one := _whole(text, end)) is not None and one.value < 10.0:
        digits, end = f"{digits}{one.value:.0f}", one.end
    return _Said(whole.value + float(f"0.{digits}"), end) if digits else whole


def _whole(text: str, at: int) -> _Said | None:
    """*A hundred and twenty*, *one hundred*, *forty-five*."""
    front = _article(text, at) or _below_a_hundred(text, at)
    hundred = None if front is None else _words(text, front.end, "hundred")
    if front is None or hundred is None or front.value >= 10.0:
        return _below_a_hundred(text, at)
    joined = _words(text, hundred, "and") or hundred
    rest = _below_a_hundred(text, joined)
    if rest is None or rest.value >= 100.0:
        return _Said(front.value * 100.0, hundred)
    return _Said(front.value * 100.0 + rest.value, rest.end)


def _below_a_hundred(text: str, at: int) -> _Said | None:
    """*Two*, *forty-five*, and *hundred* alone."""
    found = _WORD.match(text, _gap(text, at))
    value = _NUMBERS.get(found.group().casefold()) if found else None
    if found is None or value is None:
        return None
    if value >= 20.0 and found.group().casefold() in _TENS.split():
        ones = _WORD.match(text, _gap(text, found.end()))
        more = _NUMBERS.get(ones.group().casefold(), 10.0) if ones else 10.0
        if ones and more < 10.0:
            return _Said(value + more, ones.end())
    if value < 10.0:  # one fifty, two twenty-five: so many hundred and fifty
        tens = _WORD.match(text, _gap(text, found.end()))
        if tens and tens.group().casefold() in _TENS.split():
            more_said = _below_a_hundred(text, found.end())
            if more_said is not None:
                return _Said(value * 100.0 + more_said.value, more_said.end)
    return _Said(value, found.end())


def _article(text: str, at: int) -> _Said | None:
    end = _words(text, at, "an")
    end = end if end is not None else _words(text, at, "a")
    return None if end is None else _Said(1.0, end)


def _of_a(text: str, at: int) -> int:
    """Past *of*, *an* and *of an*, which stand between a number and its unit."""
    after = _words(text, at, "of")
    at = at if after is None else after
    article = _article(text, at)
    return article.end if article else at


def _words(text: str, at: int, word: str) -> int | None:
    """Where a word that stands at `at` ends, None where another one does."""
    found = _WORD.match(text, _gap(text, at))
    return found.end() if found and found.group().casefold() == word else None


def _gap(text: str, at: int) -> int:
    found = _GAP.match(text, at)
    return found.end() if found else at
