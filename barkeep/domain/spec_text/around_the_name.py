"""What stands before and after the name in a line of a spec: marks, amounts, and what is done.

| written                         | taken as                                  |
|---------------------------------|-------------------------------------------|
| 1) 45 ml red bitter, • lime     | the mark is no part of the line           |
| optional: …, garnish with …     | optional, a garnish                       |
| top with soda, float 15 ml rum  | a note                                    |
| juice of half a lime            | 0.5 of a lime, noted *juice*              |
| 30 ml (1 oz) gin, 1 oz / 30 ml  | the first amount, the other a note        |
| 6/8 pcs raspberries             | a range of pieces                         |
| gin 2 oz, gin: 60 ml            | the amount after the name                 |
| dark rum float, absinthe, rinse | one float, one rinse                      |
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from barkeep.domain.amounts.amount import Amount, BarUnits, ReadAmount, unit_at
from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.errors import AmountError, NegativeAmount

_MARK = re.compile(r"(?:[-*•·–—▪◦▢☐][ ]+|[•·▪◦▢☐]|\(?[0-9]{1,2}\)[ ]*|[0-9]{1,2}\.[ ]+)")

_OPTIONAL = re.compile(r"optional(?:ly)?[ ]*[:,–-][ ]*", re.IGNORECASE)

_GARNISH = re.compile(
    r"(?:(?:for|as|to)[ ](?:a[ ]|the[ ])?)?garnish(?:[ ]*[:–-]|[ ]with\b|[ ]of\b)[ ]*",
    re.IGNORECASE,
)

_TOP = re.compile(
    r"(?:(?P<verb>top(?:ped)?|fill(?:ed)?)(?:[ ]up|[ ]off)?[ ]with|(?P<short>top))[ :]+",
    re.IGNORECASE,
)

_LOOSE = re.compile(r"(?P<word>float|rinse)(?:[ ]with|[ ]on)?[ :]+(?!of\b)", re.IGNORECASE)

_PART_OF = re.compile(
    r"(?:the[ ])?(?P<part>juice|zest|peel)[ ](?:of|from)[ ]+(?:the[ ](?=\w))?", re.IGNORECASE
)

_OF_AN_EGG = re.compile(
    r"(?P<count>.{0,12}?)(?:the[ ])?\b(?P<part>white|yolk)s?[ ](?:of|from)[ ]"
    r"(?:an?[ ]|one[ ])?eggs?\b",
    re.IGNORECASE,
)

_HALF_A = re.compile(r"(?:a[ ])?(?P<share>half|quarter)[ ](?:of[ ])?an?[ ]+", re.IGNORECASE)

_SHARES = {"half": 0.5, "quarter": 0.25}

_HOW_FULL = re.compile(
    r"(?:an?[ ])?(?P<how>scant|generous|heaping|heaped|level|rounded|good|healthy|light|heavy|big"
    r"|large|small|short|long|thin|thick)[ ](?=\w)",
    re.IGNORECASE,
)

_PIECES = re.compile(r"(?P<low>[0-9]{1,2})/(?P<high>[0-9]{1,2})(?=[ ]*[^\W\d_])")

_PLAIN_FRACTIONS = {(1, 2), (1, 3), (2, 3), (1, 4), (3, 4), (1, 8), (3, 8), (5, 8), (7, 8)}

_PIECE_UNITS = frozenset(
    {"piece", "leaf", "sprig", "slice", "wedge", "wheel", "cube", "stick", "twist", "peel", "each"}
)

_AFTER_AMOUNT = re.compile(
    r"[ ]*(?:\((?P<aside>[^()]*)\)[ ]*(?=\w))?(?P<each>(?:of[ ]+)?each\b[ :]*)?"
    r"(?:of[ ]+)?(?:(?:the|an?)[ ]+)?",
    re.IGNORECASE,
)

_TWIN = re.compile(r"[ ]*[/=≈][ ]*")

_NUMBER_WORDS = (
    "an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty"
    "|sixty|half|quarter|few|couple|dash|pinch|splash"
)

_MAY_BEGIN = re.compile(rf"(?<![^ (:–—-])(?=[0-9.¼½¾⅓⅔⅛⅜⅝⅞]|(?:{_NUMBER_WORDS})\b)", re.IGNORECASE)

_NOT_BEFORE = re.compile(
    r"(?:^|.*[ ,(])(?:into|of|with|about|over|in|to|for|at|by|from|least|and|or|plus|a|cut)[ ]*$",
    re.IGNORECASE,
)

_REST_IS_NOTES = re.compile(r"[ ]*(?:$|[,(;].*)")

_LOOSE_AFTER = re.compile(
    r"(?:[ ]*[,(–-][ ]*|[ ])(?:(?:to|as|for)[ ](?:an?[ ]|the[ ])?)?(?P<word>float|rinse)"
    r"(?:[ ]on[ ]top|[ ](?:the[ ])?glass)?[ ]*\)?[ ]*$",
    re.IGNORECASE,
)


@dataclass
class Draft:
    """A line while it is being taken apart; `at` is where `rest` begins in the text.

    `each` says that the amount is of each of the things that follow, and
    `by_the_piece` that its unit is what one piece is called: *2 slices orange*.
    """

    rest: str
    at: int
    units: BarUnits
    amount: Amount | None = None
    amount_at: int = 0
    notes: list[str] = field(default_factory=list)
    optional: bool = False
    garnish: bool = False
    each: bool = False
    by_the_piece: bool = False

    def advance(self, count: int) -> None:
        """Leave so many characters behind."""
        self.rest, self.at = self.rest[count:], self.at + count

    def take(self, pattern: re.Pattern[str]) -> re.Match[str] | None:
        """Leave behind what a pattern finds at the start."""
        found = pattern.match(self.rest)
        if found:
            self.advance(found.end())
        return found


def begun(plain: str, units: BarUnits) -> Draft:
    """A line without the space, bullet or number in front of it."""
    draft = Draft(plain.rstrip(), 0, units)
    draft.advance(len(draft.rest) - len(draft.rest.lstrip(" ")))
    draft.take(_MARK)
    draft.advance(len(draft.rest) - len(draft.rest.lstrip(" ")))
    return draft


def take_around(draft: Draft) -> None:
    """Take everything off that stands around the name.

    Raises `AmountError` or `NegativeAmount`.
    """
    draft.optional = bool(draft.take(_OPTIONAL))
    draft.garnish = bool(draft.take(_GARNISH))
    top = draft.take(_TOP)
    if top:
        draft.notes.append(
            "to fill" if (top["verb"] or "").lower().startswith("fill") else "to top"
        )
    _take_front(draft)
    if draft.amount is None:
        _take_after(draft)
    _take_loose(draft)


def _take_front(draft: Draft) -> None:
    """Take *juice of* and the amount off the front."""
    loose = _LOOSE.match(draft.rest)
    if loose and _amount(draft.rest[loose.end() :], draft.units):
        draft.notes.append(loose["word"].lower())
        draft.advance(loose.end())
    if _take_egg(draft):
        return
    part = draft.take(_PART_OF)
    if part:
        draft.notes.append(part["part"].lower())
    if _take_half(draft) or _take_scant(draft):
        return
    found = _amount(draft.rest, draft.units)
    if found:
        _take_amount(draft, found)
        return
    article = re.match(r"an?[ ]+(?=\w)", draft.rest, re.IGNORECASE)
    if article or part:
        _set(draft, Amount(1.0, None, "each"), draft.at)
        draft.advance(article.end() if article else 0)


def _take_half(draft: Draft) -> bool:
    """*Half a lime*; half an ounce is a spoken amount."""
    half = _HALF_A.match(draft.rest)
    if half is None or unit_at(draft.rest, half.end(), draft.units)[0]:
        return False
    _set(draft, Amount(_SHARES[half["share"].lower()], None, "each"), draft.at)
    draft.advance(half.end())
    return True


def _take_scant(draft: Draft) -> bool:
    """*A generous splash of*, *scant ounce*: one of a unit, and how full."""
    how = _HOW_FULL.match(draft.rest)
    unit, end = unit_at(draft.rest, how.end(), draft.units) if how else (None, 0)
    if how is None or unit is None or unit == "each" or not draft.rest[end:].strip(" "):
        return False
    draft.notes.append(how["how"].lower())
    _take_amount(draft, ReadAmount(value=1.0, high=None, unit=unit, end=end, unit_at=how.end()))
    return True


def _take_egg(draft: Draft) -> bool:
    """*The white of one egg*, *2 whites of eggs*."""
    egg = _OF_AN_EGG.match(draft.rest) if "egg" in draft.rest.casefold() else None
    count = egg["count"].strip() if egg else ""
    found = _amount(count, draft.units) if count else None
    if egg is None or (count and (found is None or found.unit or count[found.end :].strip(" "))):
        return False
    number = Amount(found.value, found.high, "each") if found else Amount(1.0, None, "each")
    _set(draft, number, draft.at)
    draft.at += egg.start("part")
    draft.rest = f"egg {egg['part'].lower()}{draft.rest[egg.end() :]}"
    return True


def _amount(text: str, units: BarUnits) -> ReadAmount | None:
    """An amount at the start: also a range of pieces, and one that says how full the spoon is."""
    pieces = _PIECES.match(text)
    if pieces:
        low, high = int(pieces["low"]), int(pieces["high"])
        unit, end = unit_at(text, pieces.end(), units)
        if unit in _PIECE_UNITS and 0 < low < high and (low, high) not in _PLAIN_FRACTIONS:
            return ReadAmount(
                value=float(low), high=float(high), unit=unit, end=end, unit_at=pieces.end()
            )
    return any_amount_at_start(text, units)


def _take_amount(draft: Draft, found: ReadAmount) -> None:
    unit, end = found.unit, found.end
    if unit is None:
        how = re.compile(rf"[ ]+{_HOW_FULL.pattern}", re.IGNORECASE).match(draft.rest, end)
        full, after_unit = unit_at(draft.rest, how.end(), draft.units) if how else (None, end)
        if how and full and full != "each":
            draft.notes.append(how["how"].lower())
            unit, end = full, after_unit
    _set(draft, Amount(found.value, found.high, unit or "each"), draft.at)
    end = _end_of_twin(draft, end)
    after = _AFTER_AMOUNT.match(draft.rest, end)
    if after and after["aside"]:
        draft.notes.append(after["aside"].strip())
    draft.each = bool(after and after["each"])
    draft.advance(after.end() if after else end)


def _end_of_twin(draft: Draft, start: int) -> int:
    """Where the same amount in another unit ends, if one follows: *2 oz / 60 ml*."""
    slash = _TWIN.match(draft.rest, start)
    twin = _amount(draft.rest[slash.end() :], draft.units) if slash else None
    if slash is None or twin is None or twin.unit is None:
        return start
    end = slash.end() + twin.end
    draft.notes.append(draft.rest[slash.end() : end])
    return end


def _take_after(draft: Draft) -> None:
    """Take an amount that comes after the name, with the colon or dash before it."""
    for place, name, found, end in _amounts_after(draft):
        _set(draft, Amount(found.value, found.high, found.unit or "each"), draft.at + place)
        tail = draft.rest[end:].strip()
        tail = tail.removeprefix(")").strip() if draft.rest[place - 1] == "(" else tail
        draft.rest = f"{name}{'' if tail[:1] in ',;' else ' '}{tail}".rstrip()
        return


def _amounts_after(draft: Draft) -> Iterator[tuple[int, str, ReadAmount, int]]:
    """Each amount that stands at the end or before the notes: its place, the name, its end."""
    for begins in _MAY_BEGIN.finditer(draft.rest):
        place = begins.start()
        name = draft.rest[:place].rstrip(" ,:(–—-.")
        if not name or "," in name or "(" in name or _NOT_BEFORE.match(draft.rest[:place]):
            continue
        try:
            found = _amount(draft.rest[place:], draft.units)
        except (AmountError, NegativeAmount):
            continue
        if found is None:
            continue
        end, before = place + found.end, draft.rest[len(name) : place].strip()
        rest = draft.rest[end:]
        if before == "(":
            closed = rest.lstrip(" ").startswith(")")
            rest = rest.lstrip(" ")[1:] if closed else "not closed"
        if (found.unit or before in (":", "-", "–", "—")) and _REST_IS_NOTES.fullmatch(rest):
            yield place, name, found, end


def _take_loose(draft: Draft) -> None:
    """Take *float* or *rinse* off the end: a unit where there is no amount, else a note."""
    said = draft.rest.casefold()
    loose = _LOOSE_AFTER.search(draft.rest) if "float" in said or "rinse" in said else None
    if loose is None or not draft.rest[: loose.start()].strip(" "):
        return
    word = loose["word"].lower()
    if draft.amount is None:
        _set(draft, Amount(1.0, None, word), draft.at + loose.start("word"))
    elif word != draft.amount.unit:
        draft.notes.append(loose.group().strip(" ,()–-"))
    draft.rest = draft.rest[: loose.start()].rstrip(" ")


def _set(draft: Draft, amount: Amount, at: int) -> None:
    draft.amount, draft.amount_at = amount, at
