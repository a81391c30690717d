"""Which column of a list is what: told by the titles, or asked with the likely answer ready.

A list is long, with a row for each line of a drink, or wide, with all lines of
a drink in one row; then its columns are numbered: *amount 1*, *amount 2*.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

from barkeep.documents.foreign_text import Record
from barkeep.documents.specs.document import in_short
from barkeep.documents.specs.tables import (
    LOOKED_AT,
    MEANING_WORDS,
    OF_A_LINE,
    Meaning,
    guessed,
    has_amount,
    titled,
)
from barkeep.domain.phrases import folded
from barkeep.errors import Problem, UnusableFile, UserError, spoken_list
from barkeep.translation import tr, tr_noop

SHOWN_ROWS = 5
SAMPLES = 3
MOST_COLUMNS = 200
_GATHERED: tuple[Meaning, ...] = ("garnish", "notes", "tags", "method")
"""What several columns may hold together."""
_ANSWER = re.compile(r"(?P<meaning>[a-z_ ]+?)[ ]?(?P<number>[0-9]{0,2})[ ]?=[ ]?(?P<where>.+)")
EXAMPLE = "name=1,amount=2,unit=3,ingredient=4"


@dataclass(frozen=True, slots=True)
class ColumnUse:
    """What a column is read as; `place` counts from 1, `number` is 0 in a long list."""

    place: int
    meaning: Meaning
    number: int = 0

    @property
    def word(self) -> str:
        """As it is written in an answer: *amount2=5*."""
        return f"{self.meaning}{self.number or ''}={self.place}"


@dataclass(frozen=True, slots=True)
class SeenColumn:
    """A column to be asked about: its title, some of what stands in it, and the likely answer."""

    place: int
    title: str
    samples: tuple[str, ...]
    likely: ColumnUse | None = None


@dataclass(frozen=True, slots=True)
class ColumnRequest:
    """A list of which it is not clear what its columns are: `why` is a sentence.

    `rows` are its first ones, without its titles.
    """

    file: str
    why: str
    columns: tuple[SeenColumn, ...]
    rows: tuple[tuple[str, ...], ...]

    @property
    def likely(self) -> tuple[ColumnUse, ...]:
        """The likely answer."""
        return tuple(each.likely for each in self.columns if each.likely)


class ColumnsUnclear(UserError):
    """Columns that must be asked about; `request` says which, with the likely answer."""

    request: ColumnRequest

    def __str__(self) -> str:
        return tr("{file} cannot be used yet: {why}", file=self.request.file, why=self.request.why)


class UnusableColumns(UserError):
    """An answer about columns that cannot be used; why, in a sentence."""

    text: str
    reason: str
    says = "“{text}” does not say which column is what: {reason}."


def columns_text(uses: Sequence[ColumnUse]) -> str:
    """An answer as it is written: *name=1,amount=2*."""
    return ",".join(each.word for each in uses)


def read_columns(text: str, titles: Sequence[str] = ()) -> tuple[ColumnUse, ...]:
    """The columns that an answer names, by their numbers from 1 or by `titles`.

    Raises `UnusableColumns`.
    """
    uses: list[ColumnUse] = []
    for piece in text.split(","):
        found = _ANSWER.fullmatch(" ".join(piece.split()).casefold())
        if found is None:
            raise UnusableColumns(text, tr("“{words}” is not like “amount=2”", words=piece.strip()))
        meaning = _meaning(found["meaning"].strip().replace(" ", "_"), text)
        place = _place(found["where"].strip(), titles, text)
        uses.append(ColumnUse(place, meaning, int(found["number"] or 0)))
    checked_uses(uses, text)
    return tuple(uses)


def numbered_uses(meanings: Sequence[Meaning | None]) -> tuple[ColumnUse, ...]:
    """The columns of these meanings from the first on; those of several lines in a row numbered."""
    counts = Counter(meaning for meaning in meanings if meaning)
    wide = max(counts["ingredient"], counts["line"]) > 1
    seen: Counter[str] = Counter()
    uses: list[ColumnUse] = []
    for place, meaning in enumerate(meanings, 1):
        if meaning:
            seen[meaning] += 1
            number = seen[meaning] if wide and meaning in OF_A_LINE else 0
            uses.append(ColumnUse(place, meaning, number))
    return tuple(uses)


def _meaning(word: str, text: str) -> Meaning:
    if word == "spec":
        return "name"
    for meaning in MEANING_WORDS:
        if word == meaning:
            return meaning
    words = spoken_list(tuple(MEANING_WORDS))
    raise UnusableColumns(text, tr("“{word}” is none of {words}", word=word, words=words))


def _place(where: str, titles: Sequence[str], text: str) -> int:
    named = [place for place, title in enumerate(titles, 1) if folded(title) == folded(where)]
    if named:
        return named[0]
    if where.isdecimal() and 1 <= int(where) <= (len(titles) or MOST_COLUMNS):
        return int(where)
    raise UnusableColumns(text, tr("there is no column “{where}”", where=where))


def checked_uses(uses: Sequence[ColumnUse], text: str) -> None:
    """Raises `UnusableColumns` where an answer says too little, or something twice."""
    meanings = {each.meaning for each in uses}
    if not meanings & {"line", "ingredient"}:
        raise UnusableColumns(
            text, tr_noop("say which column holds the ingredients, as “ingredient=4”")
        )
    places = Counter(each.place for each in uses)
    twice = next((place for place, count in places.items() if count > 1), None)
    if twice is not None:
        raise UnusableColumns(text, tr("column {number} is there twice", number=twice))
    once = Counter((each.meaning, each.number) for each in uses if each.meaning not in _GATHERED)
    again = next((meaning for (meaning, _), count in once.items() if count > 1), None)
    if again is not None:
        told = tr("“{word}” is there twice", word=again)
        if again in OF_A_LINE:
            told = tr("“{word}” is there twice; number them, as “{word}1=…,{word}2=…”", word=again)
        raise UnusableColumns(text, told)


@dataclass(frozen=True, slots=True)
class Listing:
    """A list whose columns are known; `head` is its row of titles, None where it has none."""

    head: Record | None
    rows: Sequence[Record]
    uses: tuple[ColumnUse, ...]

    @property
    def titles(self) -> Sequence[str]:
        """The title of each column."""
        return self.head.fields if self.head else ()


def names_columns(titles: Sequence[str]) -> bool:
    """Whether titles are plainly those of a list of drinks."""
    meanings = {titled(each).meaning for each in titles[:MOST_COLUMNS]}
    return "name" in meanings and bool(meanings & {"line", "ingredient"})


def looks_like_lines(records: Sequence[Record]) -> bool:
    """Whether what stands in a list are lines of drinks: amounts with units, and words."""
    found = guessed(_columns(records[1:] or records), named=True)
    return "line" in found or {"unit", "amount", "ingredient"} <= set(found)


def listing(
    records: Sequence[Record], file: str, uses: Sequence[ColumnUse] | None = None
) -> Listing:
    """A list with its columns, as its titles say or as `uses` does.

    Raises `ColumnsUnclear` where neither tells, and `UnusableFile` for a column
    that is there twice.
    """
    first = records[0]
    if len(first.fields) > MOST_COLUMNS:
        message = tr("a list of drinks has at most {most} columns", most=MOST_COLUMNS)
        raise UnusableFile(file, (Problem(first.line, MOST_COLUMNS + 1, message),))
    if uses is not None:
        return _as_told(records, tuple(uses))
    told = [titled(each) for each in first.fields]
    has_head = any(each.meaning for each in told) or not any(map(has_amount, first.fields))
    rows = records[1:] if has_head else records
    known = [
        ColumnUse(place, each.meaning, each.number)
        for place, each in enumerate(told, 1)
        if each.meaning and has_head
    ]
    known = _numbered(known, first)
    meanings = {each.meaning for each in known}
    unknown = len(known) < sum(any(column) for column in _columns(rows))
    if meanings & {"line", "ingredient"} and ("name" in meanings or not unknown):
        _refuse_twice(known, first, file)
        return Listing(first, rows, tuple(known))
    if "spec" in {folded(each) for each in first.fields}:
        raise UnusableFile(file, (Problem(first.line, 1, tr("the column “line” is missing")),))
    raise ColumnsUnclear(_request(first if has_head else None, rows, known, file))


def _as_told(records: Sequence[Record], uses: tuple[ColumnUse, ...]) -> Listing:
    first = records[0]
    amounts = [each for each in uses if each.meaning in ("amount", "line")]
    cells = [_cell(first, each.place) for each in amounts]
    if any(map(has_amount, cells)):
        return Listing(None, records, uses)
    return Listing(first, records[1:], uses)


def _cell(record: Record, place: int) -> str:
    return record.fields[place - 1].strip() if place <= len(record.fields) else ""


def _numbered(known: list[ColumnUse], head: Record) -> list[ColumnUse]:
    """Columns of one title several times over, numbered: *amount, unit, amount, unit*."""
    counts = Counter(each.meaning for each in known if each.number == 0)
    seen: Counter[str] = Counter()
    found = []
    for each in known:
        own = folded(head.fields[each.place - 1]) == "line"
        if each.meaning in OF_A_LINE and not own and not each.number and counts[each.meaning] > 1:
            seen[each.meaning] += 1
            found.append(replace(each, number=seen[each.meaning]))
        else:
            found.append(each)
    return found


def _refuse_twice(known: Sequence[ColumnUse], head: Record, file: str) -> None:
    problems = []
    seen: set[tuple[str, int]] = set()
    for each in known:
        if each.meaning not in _GATHERED and (each.meaning, each.number) in seen:
            title = " ".join(head.fields[each.place - 1].split())
            message = tr("the column “{title}” is there twice", title=title)
            problems.append(Problem(head.line, each.place, message))
        seen.add((each.meaning, each.number))
    if problems:
        raise UnusableFile(file, tuple(problems))


def _request(
    head: Record | None, rows: Sequence[Record], known: Sequence[ColumnUse], file: str
) -> ColumnRequest:
    columns = _columns(rows)
    width = max(len(columns), len(head.fields) if head else 0)
    columns = [*columns, *([] for _ in range(width - len(columns)))]
    likely = _likely(columns, known)
    seen = tuple(
        SeenColumn(
            place,
            " ".join(head.fields[place - 1].split()) if head and place <= len(head.fields) else "",
            _samples(column),
            likely.get(place),
        )
        for place, column in enumerate(columns, 1)
    )
    shown = tuple(tuple(in_short(each) for each in row.fields) for row in rows[:SHOWN_ROWS])
    return ColumnRequest(file, _not_clear({each.meaning for each in known}), seen, shown)


def _not_clear(known: Collection[Meaning]) -> str:
    """What is not clear of a list of which these columns are known."""
    if not known:
        return tr("it is not clear which column is what.")
    if "line" in known or "ingredient" in known:
        return tr("it is not clear which column holds the names of the drinks.")
    return tr("it is not clear which column holds the ingredients.")


def _likely(columns: Sequence[Sequence[str]], known: Sequence[ColumnUse]) -> dict[int, ColumnUse]:
    """Column -> what it is likely to be, by its title, else by what stands in it."""
    likely = {each.place: each for each in known}
    there = {each.meaning for each in known}
    open_ones = [place for place in range(1, len(columns) + 1) if place not in likely]
    found = guessed([columns[place - 1] for place in open_ones], named="name" not in there)
    counts = Counter(meaning for meaning in found if meaning)
    seen: Counter[str] = Counter()
    for place, meaning in zip(open_ones, found, strict=True):
        if meaning is None or (meaning in there and meaning not in _GATHERED):
            continue
        number = 0
        if counts[meaning] > 1 and meaning in OF_A_LINE:
            seen[meaning] += 1
            number = seen[meaning]
        likely[place] = ColumnUse(place, meaning, number)
    return likely


def _columns(rows: Sequence[Record]) -> list[list[str]]:
    some = rows[:LOOKED_AT]
    width = min(MOST_COLUMNS, max((len(row.fields) for row in some), default=0))
    return [[_cell(row, place) for row in some] for place in range(1, width + 1)]


def _samples(column: Sequence[str]) -> tuple[str, ...]:
    distinct = dict.fromkeys(in_short(text) for text in column if text)
    return tuple(distinct)[:SAMPLES]
