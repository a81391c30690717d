"""Amounts as people write them: numbers, fractions, ranges and units.

Reading and printing only; what a unit comes to is in `barkeep.domain.amounts.measures`.
"""

from __future__ import annotations

import locale
import math
import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from barkeep.domain.amounts.units import (
    METRIC,
    US_UNITS,
    BarUnits,
    spoken_unit,
    unit_named,
)
from barkeep.errors import AmountError, NegativeAmount
from barkeep.translation import tr, tr_noop

EXAMPLES = tr_noop("write a number and a unit, such as 60 ml, 1 1/2 oz or 2 dashes")
LARGEST = 1e6
"""No amount at a bar is larger, in any unit; a larger number is a slip."""


_GLYPHS: Mapping[Fraction, str] = {
    Fraction(1, 8): "⅛",
    Fraction(1, 4): "¼",
    Fraction(1, 3): "⅓",
    Fraction(3, 8): "⅜",
    Fraction(1, 2): "½",
    Fraction(5, 8): "⅝",
    Fraction(2, 3): "⅔",
    Fraction(3, 4): "¾",
    Fraction(7, 8): "⅞",
}
_ALONE = frozenset({"dash", "drop", "splash", "float", "rinse", "pinch", "barspoon"})
"""Units that are written without a number where one is meant."""


NEAR_ENOUGH = 0.015
"""How far, as a share, a printed fraction may lie from the amount it stands for."""


_GLYPH = "[¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]"
_SLASH = r"[ ]?[/⁄][ ]?"
_WHOLE = r"[0-9]{1,9}"
_NUMBER = (
    rf"(?:{_WHOLE}[ ]+{_WHOLE}{_SLASH}{_WHOLE}"  # 1 1/2
    rf"|{_WHOLE}{_SLASH}{_WHOLE}"  # 3/4
    rf"|{_WHOLE}[ ]*{_GLYPH}|{_GLYPH}"  # 1½, ¾
    rf"|(?:{_WHOLE})?[.,][0-9]{{1,20}}|{_WHOLE})"  # .75, 1,5, 60
)
_AMOUNT = re.compile(
    rf"(?P<sign>[-−]?)[ ]?(?P<low>{_NUMBER}|\ba\b|\ban\b)"
    rf"(?:[ ]?(?P<to>[-–—]|\bto\b|\bor\b)[ ]?(?P<high>{_NUMBER}))?",
    re.IGNORECASE,
)
_INCH_MARK = re.compile(r"[ ]?[\"″]")

_CUBED = re.compile(r"[ ]?(?P<side>[cd]m)[ ]?(?:\^|\*\*)?[ ]?[3³](?!\w)", re.IGNORECASE)

_UNIT_WORD = re.compile(r"[ ]?(?P<word>[^\W\d_]+(?:\.?[ ]?[^\W\d_]+)*)(?P<stop>\.?)")


@dataclass(frozen=True, slots=True)
class Amount:
    """A number of units as written; `high` is the upper end of a range."""

    value: float
    high: float | None
    unit: str


@dataclass(frozen=True, slots=True)
class ReadAmount:
    """An amount at the start of a text. `unit` is None where none is written.

    `end` is how many characters it takes; `unit_at` where its unit begins.
    """

    value: float
    high: float | None
    unit: str | None
    end: int
    unit_at: int


_WORD = re.compile(r"[^\W\d_]+")
_SPACE = re.compile(r"\s")


def parse_amount(text: str, units: BarUnits = US_UNITS) -> Amount:
    """Read a whole text as an amount; a bare number is so many of a thing (*each*).

    What *oz* is taken for is the bar's `units`, here and wherever they are asked for.

    Raises `AmountError` or `NegativeAmount`.

    >>> parse_amount("1 1/2 oz")
    Amount(value=1.5, high=None, unit='oz')
    >>> parse_amount("2-3 dashes")
    Amount(value=2.0, high=3.0, unit='dash')
    """
    written = text.strip()
    plain = spaced(written)
    found = amount_at_start(plain, units)
    if found is None or plain[found.end :].strip(" ."):
        raise AmountError(written, EXAMPLES)
    return Amount(found.value, found.high, found.unit or "each")


@lru_cache(maxsize=4_096)
def amount_at_start(text: str, units: BarUnits = US_UNITS) -> ReadAmount | None:
    """The amount a text begins with, None where it does not begin with one.

    Raises `AmountError` or `NegativeAmount` for one that makes no sense.
    """
    found = _AMOUNT.match(text)
    if found is None:
        # A unit word by itself is one of it: "splash of soda water".
        return _lone_unit(text, units)
    number = found.group()
    low = _number(found["low"], number)
    high = None if found["high"] is None else _number(found["high"], number)
    if high is not None and found["to"] == "-" and high < 1.0 <= low and "." not in found["high"]:
        low, high = low + high, None  # the American 1-1/2
    if high is not None and high <= low:
        raise AmountError(
            number.strip(), tr_noop("a range runs from the smaller number to the larger")
        )
    unit, end = unit_at(text, found.end(), units)
    if found["sign"] and low > 0:
        raise NegativeAmount(text[:end].strip())
    if unit is None and found["low"].isalpha():
        return None  # the article of a name, not a number
    if unit is None and _glued(text, found.end()):
        return None  # 151-proof, 7th: part of a name
    return ReadAmount(value=low, high=high, unit=unit, end=end, unit_at=found.end())


def unit_at(text: str, start: int, units: BarUnits = US_UNITS) -> tuple[str | None, int]:
    """The unit that stands at `start` and where it ends; None where none does.

    Inches are only understood at the end of the text: *1 in* may go on as prose.
    """
    unit, length = _unit_at_start(text[start:], units)
    return unit, start + length


@lru_cache(maxsize=4_096)
def _unit_at_start(text: str, units: BarUnits) -> tuple[str | None, int]:
    cubed = _CUBED.match(text)
    if cubed:
        return unit_named(f"{cubed['side']}3"), cubed.end()
    found = _UNIT_WORD.match(text)
    if found is None:
        mark = _INCH_MARK.match(text)
        return ("in", mark.end()) if mark and _ends(text, mark.end()) else (None, 0)
    ends = [each.end() for each in _WORD.finditer(found["word"])]
    for end in reversed(ends[:3]):  # the longest unit has three words
        unit = unit_named(found["word"][:end], units)
        stop = found.start("word") + end
        if unit is not None and (unit != "in" or _ends(text, stop)):
            return unit, stop + (text[stop : stop + 1] == ".")
    return None, 0


def show_amount(value: float, unit: str, units: BarUnits = US_UNITS) -> str:
    """An amount as it is printed, such as *1 ½ oz*, *22.5 ml* or *2 dashes*.

    The nearest eighth or third where one is near enough, else a decimal.
    Pieces are printed without a unit, and the bar's own ounce is just *oz*.

    >>> show_amount(1.5, "oz")
    '1 ½ oz'
    """
    number = show_number(value, fractions=unit not in METRIC)
    if unit == "each":
        return number
    return f"{number} {spoken_unit(unit, units, plural=value > 1.0 and number != '1')}"


def show_range(value: float, high: float | None, unit: str, units: BarUnits = US_UNITS) -> str:
    """An amount or a range as it is printed, such as *2–3 dashes*."""
    if high is None:
        return show_amount(value, unit, units)
    return f"{show_number(value, fractions=unit not in METRIC)}–{show_amount(high, unit, units)}"


def show_number(value: float, *, fractions: bool, mark: str | None = None) -> str:
    """A number with a fraction glyph where one is near enough, else with three digits.

    `mark` is the decimal mark; left out, it is that of the user's locale.
    """
    digits = _three_digits(value)
    if fractions:
        # The digits may lie near a fraction where the value just did not.
        near = _near_fraction(value) or _near_fraction(float(digits))
        if near:
            return near
    return digits.replace(".", mark or decimal_mark())


def decimal_mark() -> str:
    """The decimal mark of the user's locale where it is read back, else a point."""
    mark = str(locale.localeconv()["decimal_point"])
    return mark if mark in (".", ",") else "."


def _near_fraction(value: float) -> str:
    """The whole number, eighth or third a value is as good as; empty where none is near."""
    if value <= 0.0:
        return ""
    whole = math.floor(value)
    near = min(
        (Fraction(whole), Fraction(whole + 1), *(whole + each for each in _GLYPHS)),
        key=lambda each: abs(float(each) - value),
    )
    if abs(float(near) - value) > NEAR_ENOUGH * value:
        return ""
    whole, rest = math.floor(near), near - math.floor(near)
    if not rest:
        return str(whole)
    return f"{whole} {_GLYPHS[rest]}" if whole else _GLYPHS[rest]


def spaced(text: str) -> str:
    """The text with every kind of space a plain one; as long as it was."""
    return _SPACE.sub(" ", text)


def _three_digits(value: float) -> str:
    """A decimal with three digits that count, never an exponent, whole digits all kept."""
    if value <= 0.0:
        return "0"
    places = min(6, max(0, 2 - math.floor(math.log10(value))))
    shown = f"{value:.{places}f}"
    return shown.rstrip("0").rstrip(".") if "." in shown else shown


_WITH_COMMA = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}")
_WITH_POINT = re.compile(r"[1-9][0-9]{0,2}\.[0-9]{2}0")
"""What may be thousands as well as a decimal."""
_DECIMAL = re.compile(r"[0-9]+(?:\.[0-9]+)?")


def _number(text: str, written: str) -> float:
    if text.casefold() in ("a", "an"):
        return 1.0
    if _WITH_COMMA.fullmatch(text):
        plain = text.replace(",", "")
        expected = tr(
            "write {whole} for thousands or {decimal} for a decimal",
            whole=plain,
            decimal=text.replace(",", "."),
        )
        raise AmountError(written.strip(), expected)
    if _WITH_POINT.fullmatch(text):
        plain = text.replace(".", "")
        expected = tr(
            "write {whole} for thousands or {decimal} for a decimal",
            whole=plain,
            decimal=f"{float(text):g}",
        )
        raise AmountError(written.strip(), expected)
    try:
        words = [text] if _DECIMAL.fullmatch(text) else _number_words(text)
        value = sum(map(_plain_number, words))
    except ZeroDivisionError:
        raise AmountError(written.strip(), tr_noop("nothing can be divided by zero")) from None
    if value > LARGEST:
        raise AmountError(
            written.strip()[:30], tr("no amount here is above {most:.0f}", most=LARGEST)
        )
    return value


def _number_words(text: str) -> list[str]:
    whole_slashes = re.sub(r"[ ]?[/⁄][ ]?", "/", text)
    return re.sub(rf"({_GLYPH})", r" \1", whole_slashes).split()


def _plain_number(word: str) -> float:
    if "/" in word:
        over, under = word.split("/")
        return int(over) / int(under)
    if not word.isascii() and re.fullmatch(_GLYPH, word):
        return float(Fraction(unicodedata.numeric(word)).limit_denominator(10))
    return float(word.replace(",", "."))


def _lone_unit(text: str, units: BarUnits) -> ReadAmount | None:
    """One of a unit that needs no number: *splash of soda water*, *dash orange bitters*.

    A measure of the owner's own needs none either: *ladle gin*.
    """
    own, end = unit_at(text, 0, units)
    if own is not None and units.measure(own) is not None and text[end : end + 1] == " ":
        return ReadAmount(value=1.0, high=None, unit=own, end=end, unit_at=0)
    found = re.match(r"(?P<word>[^\W\d_]+)(?P<of>[ ]of)?[ ]", text)
    unit = unit_named(found["word"], units) if found else None
    if found is None or unit is None or not (found["of"] or unit in _ALONE):
        return None
    if found["word"].casefold() in (f"{unit}s", "ounces", "mils", "litres", "dashes"):
        raise AmountError(
            found["word"],
            tr("how many {units}? {examples}", units=found["word"], examples=tr(EXAMPLES)),
        )
    return ReadAmount(value=1.0, high=None, unit=unit, end=found.end("word"), unit_at=0)


def _ends(text: str, end: int) -> bool:
    return not text[end:].strip(" .")


def _glued(text: str, end: int) -> bool:
    ratio = text[end : end + 1] == ":" and text[end + 1 : end + 2].isdigit()  # 2:1 simple
    return ratio or (end < len(text) and (text[end].isalnum() or text[end] in "-–'’%"))
