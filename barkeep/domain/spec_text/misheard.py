"""What speech is taken down as that sounds like something else: *mess cal*, *to ounces*.

| taken down as                    | was said            |
|----------------------------------|---------------------|
| to ounces of rye, for dashes     | two, four           |
| ate mint leaves                  | eight               |
| an ounce of mess cal             | mezcal              |
| one ounce sweet for mouth        | sweet vermouth      |
| half announce of simple serum    | half an ounce, syrup |

The words are in `resources/misheard.toml`; the numbers and measures that sound alike are here,
since they are only taken so beside others.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import pairwise

from barkeep import resource_files
from barkeep.domain.amounts.spoken import NUMBER_WORDS
from barkeep.domain.spec_text.traced import Traced
from barkeep.shipped_data import Texts, parse, read

FILE = "misheard.toml"


@dataclass(frozen=True, slots=True)
class _Misheard:
    """The file as it is written; its own head says what the table holds."""

    sounds_like: Mapping[str, Texts]


@dataclass(frozen=True, slots=True)
class _Heard:
    """What is taken down, in small letters, with what was said, and how it is looked for.

    `beginnings` are the first two words of each, or its only one.
    """

    meant: Mapping[str, str]
    beginnings: frozenset[str]
    hints: frozenset[str]
    pattern: re.Pattern[str]


@cache
def _shipped() -> _Heard:
    """The shipped table, read once. Raises `KnowledgeError` for a broken resource."""
    written = read(parse(resource_files.read_text(FILE), FILE), _Misheard, FILE, "the text")
    meant = {
        heard: said for said, taken_down in written.sounds_like.items() for heard in taken_down
    }
    any_of_them = "|".join(map(re.escape, sorted(meant, key=len, reverse=True)))
    return _Heard(
        meant=meant,
        beginnings=frozenset(" ".join(heard.split()[:2]) for heard in meant),
        hints=frozenset(heard.split()[0] for heard in meant) | _NUMBER_HINTS | _MEASURE_HINTS,
        pattern=re.compile(rf"(?<![\w'’-])(?:{any_of_them})(?![\w'’-])", re.IGNORECASE),
    )


_COUNTED = (
    r"(?:ounces|oz|dashes|drops|parts|barspoons|teaspoons|tablespoons|cups|sprigs|slices|wedges"
    r"|cubes|mint[ ]lea(?:ves|fs)|basil[ ]leaves|egg[ ](?:whites|yolks|quites)|eggs|limes|lemons"
    r"|raspberries|strawberries|blackberries|cherries|olives|sugar[ ]cubes)\b"
)
_BEGINS = r"(?:^|(?<=[,;.][ ])|(?<=\band[ ])|(?<=\bthen[ ]))"
_NUMBERS: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(rf"{_BEGINS}too?[ ](?={_COUNTED})", re.I), "two "),
    (re.compile(rf"{_BEGINS}fore?[ ](?={_COUNTED})", re.I), "four "),
    (re.compile(rf"{_BEGINS}(?:tree|free)[ ](?={_COUNTED})", re.I), "three "),
    (re.compile(rf"{_BEGINS}ate[ ](?=\w)", re.I), "eight "),
    (re.compile(rf"{_BEGINS}won[ ](?=\w)", re.I), "one "),
    (re.compile(r"\bhalf[ ](?:(?:and|in|on|a)[ ]ounce|announce)\b", re.I), "half an ounce"),
    (re.compile(r"\bquarters?[ ](?:announce|in[ ]ounce|and[ ]ounce)\b", re.I), "quarter ounce"),
    (re.compile(rf"{_BEGINS}(?:announce|a[ ]nounce)[ ](?=of\b|and\b)", re.I), "an ounce "),
    (
        re.compile(
            r"(?<=\bone[ ])once(?=[ ]of\b)|(?<=\btwo[ ])once(?=[ ]of\b)|(?<=\ban[ ])once(?=[ ]of\b)"
            r"|(?<=\bquarter[ ])once\b|(?<=\bhalf[ ])once\b",
            re.I,
        ),
        "ounce",
    ),
)
_MEASURED = re.compile(
    r"(?<=[\w¼½¾][ ])(?:(?P<ml>m[ .]l|mll|mml|mils's|mills|mill's|miles|milz|meals|mil's|em[ ]el)"
    r"|(?P<cl>c[ .]l|see[ ]el|cee[ ]el)|(?P<oz>o[ .]z|ozz|0z|ounce's|ouncies|announces|ounzes?"
    r"|ouces?|ounes))\b(?![ ]of[ ]ice)",
    re.IGNORECASE,
)
"""Measures as they are spelt or sound, behind a number."""

_MEASURE_HINTS = frozenset(
    {
        "m",
        "c",
        "o",
        "m.l",
        "c.l",
        "o.z",
        "mills",
        "mill's",
        "miles",
        "milz",
        "meals",
        "mil's",
        "em",
        "see",
    }
    | {"cee", "ounce's", "ouncies", "announces", "ozz", "0z", "mll", "mml", "mils's"}
    | {"ounze", "ounzes", "ouce", "ouces", "ounes"}
)

_GLUED = re.compile(
    r"\b(?P<tens>twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
    r"(?P<ones>one|two|three|four|five|six|seven|eight|nine)\b",
    re.IGNORECASE,
)
"""*Fortyfive*, taken down as one word."""

_NUMBER_HINTS = frozenset(
    {"to", "too", "for", "fore", "tree", "free", "ate", "won", "once", "announce", "nounce"}
    | {"in", "on", "and"}
)


def _may_be_heard(words: Sequence[str]) -> bool:
    plain = [each.strip(".;:()!?") for each in words]
    beginnings = _shipped().beginnings
    return any(
        one in beginnings or f"{one} {other}" in beginnings for one, other in pairwise([*plain, ""])
    )


def as_said(said: Traced) -> Traced:
    """The line as it was said, where it was taken down by its sound."""
    spoken = said.text.casefold().replace(",", " ").split()
    words = frozenset(spoken)
    heard = _shipped()
    if words.isdisjoint(heard.hints) and "ty" not in said.text:
        return said
    if _may_be_heard(spoken):
        for found in reversed(list(heard.pattern.finditer(said.text))):
            meant = heard.meant[found.group().casefold()]
            said = said.said_instead(found.start(), found.end(), meant)
    spelt = not words.isdisjoint(_MEASURE_HINTS)
    for found in reversed(list(_MEASURED.finditer(said.text)) if spelt else []):
        before = said.text[: found.start()].split()[-1].strip(",.")
        if before[-1:].isnumeric() or before.casefold() in NUMBER_WORDS | {"five", "point"}:
            unit = "ml" if found["ml"] else "cl" if found["cl"] else "oz"
            said = said.said_instead(*found.span(), unit)
    for found in reversed(list(_GLUED.finditer(said.text)) if "ty" in said.text else []):
        said = said.said_instead(*found.span(), f"{found['tens']}-{found['ones']}")
    if not words.isdisjoint(_NUMBER_HINTS):
        for pattern, number in _NUMBERS:
            for found in reversed(list(pattern.finditer(said.text))):
                said = said.said_instead(found.start(), found.end(), number)
    return said
