"""One line of a spec: text -> amount, ingredient and notes; and back."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from functools import partial

from barkeep.domain.amounts import (
    EXAMPLES,
    US_UNITS,
    Amount,
    BarUnits,
    ReadAmount,
    amount_at_start,
    spaced,
)
from barkeep.domain.ingredient_names import ADJUSTED, Match, bare_name, find_name, suggestions
from barkeep.domain.ingredients import FamilyTree, Ingredient
from barkeep.domain.line_quantities import quantity_of
from barkeep.domain.measures import dimension
from barkeep.domain.specs import Line
from barkeep.errors import AmountError, NegativeAmount, WrongDimension, spoken_list

LONGEST = 300
"""Characters; a line of a spec is never longer."""

_TOP = re.compile(
    r"(?:(?P<verb>top(?:ped)?|fill(?:ed)?)(?:[ ]up|[ ]off)?[ ]with|(?P<short>top))[ :]+",
    re.IGNORECASE,
)
_PART_OF = re.compile(
    r"(?:the[ ])?(?P<part>juice|zest|peel)[ ](?:of|from)[ ]"
    r"(?:a[ ](?P<half>half)|(?P<word>half|one|two)(?:[ ]an?)?)?[ ]*",
    re.IGNORECASE,
)
_PERCENT = r"[0-9]{1,3}(?:[.,][0-9]+)?)[ ]?%(?:[ ]?(?:vol|abv))?"
_LEAST = re.compile(
    rf"(?:at[ ]least|min(?:imum)?\.?|over)[ ](?P<least>{_PERCENT}"
    rf"|(?P<more>{_PERCENT}[ ]or[ ](?:more|above|stronger)",
    re.IGNORECASE,
)
_AFTER_AMOUNT = re.compile(
    r"[ ]*(?:\((?P<aside>[^()]*)\)[ ]*(?=\w))?(?:(?:of|each)[ ]+)?(?:(?:the|an?)[ ]+)?",
    re.IGNORECASE,
)
_BULLET = re.compile(r"(?:[-*•·–][ ]+|[•·])")
_TELLING = frozenset({"optional", "garnish", "for garnish", "as garnish", "to garnish"})
_COUNTS = {"half": 0.5, "one": 1.0, "two": 2.0}


@dataclass(frozen=True, slots=True)
class ReadLine:
    """A line as it was read. `ingredient` is None where none is known by that name.

    `quantity` is in the ingredient's own unit; see `barkeep.domain.specs.Line`.
    """

    text: str
    amount: float | None = None
    amount_high: float | None = None
    unit: str | None = None
    ingredient: str | None = None
    matched: str | None = None
    confidence: float = 0.0
    optional: bool = False
    garnish: bool = False
    note: str = ""
    quantity: float | None = None
    min_abv_percent: float | None = None


@dataclass(frozen=True, slots=True)
class Complaint:
    """What is wrong with a line, and at which character from 0.

    `say` tells it; looking for the nearest names is only paid for when it is told.
    """

    at: int
    say: Callable[[], str]


@dataclass(frozen=True, slots=True)
class LineReading:
    """A line and what is wrong with it."""

    line: ReadLine
    complaints: tuple[Complaint, ...] = ()


@dataclass
class _Draft:
    """A line while it is being taken apart; `at` is where `rest` begins in the text."""

    line: ReadLine
    rest: str
    at: int
    units: BarUnits
    amount: Amount | None = None
    amount_at: int = 0
    notes: list[str] = field(default_factory=list)


def read_line(
    text: str, tree: FamilyTree, units: BarUnits = US_UNITS, *, garnish: bool = False
) -> LineReading:
    """Read one line at a bar that means `units` by its measures.

    Never raises; what cannot be used is in the complaints.
    """
    plain = spaced(text)
    start = len(plain) - len(plain.lstrip())
    bullet = _BULLET.match(plain, start)
    start = bullet.end() if bullet else start
    line = ReadLine(text.strip()[:LONGEST], garnish=garnish)
    draft = _Draft(line, plain[start:].rstrip(), start, units)
    if len(text) > LONGEST:
        too_long = f"a line has at most {LONGEST} characters"
        return LineReading(draft.line, (Complaint(0, lambda: too_long),))
    try:
        _take_front(draft)
    except (AmountError, NegativeAmount) as error:
        return LineReading(draft.line, (Complaint(start, partial(str, error)),))
    return _finish(draft, tree)


def _take_front(draft: _Draft) -> None:
    """Take *top with*, *juice of* and the amount off the front."""
    top = _TOP.match(draft.rest)
    if top:
        _advance(draft, top.end())
        draft.notes.append("to fill" if (top["verb"] or "").startswith("fill") else "to top")
    part = _PART_OF.match(draft.rest)
    if part:
        _advance(draft, part.end())
        draft.notes.append(part["part"].lower())
        word = (part["half"] or part["word"] or "").lower()
        if word:
            _set_amount(draft, Amount(_COUNTS[word], None, "each"), draft.at)
            return
    found = amount_at_start(draft.rest, draft.units)
    if found:
        _take_amount(draft, found)
        return
    article = re.match(r"an?[ ]+(?=\w)", draft.rest, re.IGNORECASE)
    if article or part:
        _set_amount(draft, Amount(1.0, None, "each"), draft.at)
        _advance(draft, article.end() if article else 0)


def _take_amount(draft: _Draft, found: ReadAmount) -> None:
    _set_amount(draft, Amount(found.value, found.high, found.unit or "each"), draft.at)
    end = _end_of_twin(draft, found.end)
    after = _AFTER_AMOUNT.match(draft.rest, end)
    if after and after["aside"]:
        draft.notes.append(after["aside"].strip())
    _advance(draft, after.end() if after else end)


def _end_of_twin(draft: _Draft, start: int) -> int:
    """Where the same amount in another unit ends, if one follows: *2 oz / 60 ml*."""
    slash = re.compile(r"[ ]*[/=≈][ ]*").match(draft.rest, start)
    twin = amount_at_start(draft.rest[slash.end() :], draft.units) if slash else None
    if slash is None or twin is None or twin.unit is None:
        return start
    end = slash.end() + twin.end
    draft.notes.append(draft.rest[slash.end() : end])
    return end


def _set_amount(draft: _Draft, amount: Amount, at: int) -> None:
    draft.amount, draft.amount_at = amount, at


def _advance(draft: _Draft, count: int) -> None:
    draft.rest, draft.at = draft.rest[count:], draft.at + count


def _finish(draft: _Draft, tree: FamilyTree) -> LineReading:
    amount = draft.amount
    if amount is not None:
        draft.line = replace(
            draft.line, amount=amount.value, amount_high=amount.high, unit=amount.unit
        )
    match, notes = _find(draft, tree)
    line = _with_notes(draft.line, [*draft.notes, *notes])
    if match is None or match.key is None:
        return LineReading(line, (Complaint(draft.at, partial(_unknown, draft.rest, tree)),))
    line = replace(line, ingredient=match.key, matched=match.matched, confidence=match.confidence)
    return _measured(line, draft, tree[match.key])


def _find(draft: _Draft, tree: FamilyTree) -> tuple[Match | None, tuple[str, ...]]:
    """The ingredient: *2 slices orange* may be an orange slice, *8 leaves of mint* mint leaves."""
    found, notes = find_name(draft.rest, tree)
    amount = draft.amount
    if amount is None or found is None or dimension(amount.unit) not in ("loose", "count"):
        return found, notes
    if amount.unit == "each" or found.matched is None:
        return found, notes
    whole, _ = find_name(f"{found.matched} {amount.unit}", tree)
    if whole is None or whole.confidence < ADJUSTED or whole.key is None:
        return found, notes
    draft.amount = Amount(amount.value, amount.high, "each")
    return replace(whole, confidence=min(whole.confidence, found.confidence)), notes


def _with_notes(line: ReadLine, notes: list[str]) -> ReadLine:
    """Sort the notes: *optional* and a least strength mean something, the rest is kept."""
    kept: list[str] = []
    for note in _single(notes):
        least = _LEAST.fullmatch(note)
        if note.casefold() == "optional":
            line = replace(line, optional=True)
        elif note.casefold() in _TELLING:
            line = replace(line, garnish=True)
        elif least:
            number = float((least["least"] or least["more"]).replace(",", "."))
            line = replace(line, min_abv_percent=number)
        else:
            kept.append(note)
    return replace(line, note=", ".join(dict.fromkeys(kept)))


def _single(notes: list[str]) -> list[str]:
    """Notes one by one: *(at least 50 %, optional)* is two, *(sweet, aged)* stays one."""
    found: list[str] = []
    for note in notes:
        parts = [each.strip() for each in note.split(",")]
        telling = any(each.casefold() in _TELLING or _LEAST.fullmatch(each) for each in parts)
        found += parts if telling else [note]
    return [each for each in found if each]


def _measured(line: ReadLine, draft: _Draft, ingredient: Ingredient) -> LineReading:
    """The line with its quantity in the ingredient's own unit."""
    if draft.amount is None:
        if draft.rest[:1].isdigit() and line.confidence < ADJUSTED:
            return LineReading(
                line, (Complaint(draft.at, lambda: f"this amount cannot be read; {EXAMPLES}"),)
            )
        return LineReading(line)
    if (draft.amount.high or draft.amount.value) <= 0:
        nothing = f"“{draft.amount.value:g}” is nothing; an amount is above nothing"
        return LineReading(line, (Complaint(draft.amount_at, lambda: nothing),))
    try:
        quantity, note = quantity_of(draft.amount, ingredient, None, draft.units)
    except WrongDimension as error:
        # A word that is neither the name's nor an adjective stands where the unit should.
        stranger = draft.rest.split()[0] if line.confidence < ADJUSTED else None
        told = partial(_wrong, error, ingredient, stranger)
        return LineReading(line, (Complaint(draft.amount_at, told),))
    if note and note not in line.note:
        line = replace(line, note=f"{line.note}, {note}" if line.note else note)
    return LineReading(replace(line, quantity=quantity))


def as_line(read: ReadLine) -> Line | None:
    """The line of a spec, None where its ingredient is not known."""
    if read.ingredient is None:
        return None
    return Line(
        read.text,
        read.ingredient,
        read.amount,
        read.amount_high,
        read.unit,
        read.quantity,
        read.optional,
        read.garnish,
        read.note,
        read.min_abv_percent,
    )


def _unknown(rest: str, tree: FamilyTree) -> str:
    name = bare_name(rest)[:60]
    if not name.strip(" ()"):
        return "an ingredient is missing here"
    nearest = suggestions(rest, tree)
    message = f"no ingredient is called “{name}”"
    return f"{message}; the nearest are {spoken_list(nearest, 'and')}" if nearest else message


def _wrong(error: WrongDimension, ingredient: Ingredient, stranger: str | None) -> str:
    if error.given == "a number of pieces":
        if stranger:
            return f"“{stranger}” is no unit that is known; {ingredient.name} takes {error.wanted}"
        return f"“{error.text}” needs a unit: {ingredient.name} takes {error.wanted}"
    return f"{ingredient.name} takes {error.wanted}, and “{error.text}” is {error.given}"
