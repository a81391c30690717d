"""Bottles out of a CSV text, every field that cannot be used with its place.

The header names the columns in any order: `product`, `ingredient` and `size`
must be there; `maker`, `abv`, `level`, `price` and `opened` may be. Fields
are parted by commas, semicolons or tabs.

==========  ====================================================================
product     the name on the label
maker       who makes it
ingredient  what it is, by name or key
abv         % vol: 41.2, 41,2 %
size        70 cl, 0.7 l, 1 kg; a bare number is ml, g or pieces
level       what is left, empty for a full bottle. Up to 1 a share: 0.4, 4/10,
            40 %; else an amount: 31 cl. A bare number above 1 of what is poured
            is in the unit of its size: 300 of 700 is ml, 31 of 70 cl is cl
price       24.50, 24,50 €
opened      when the seal was broken: 2026-03-31
==========  ====================================================================
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import TypeVar

from barkeep.domain.drafts import ProductDraft
from barkeep.domain.ingredient_names import match_ingredient
from barkeep.domain.ingredients import FamilyTree, Unit, folded
from barkeep.domain.levels import MeasuredLevel, parse_level
from barkeep.domain.measures import Amount, parse_amount, to_quantity
from barkeep.errors import InvalidField, Problem, UnknownName, UserError

COLUMNS = ("product", "maker", "ingredient", "abv", "size", "level", "price", "opened")
REQUIRED = ("product", "ingredient", "size")

SMALLEST_ML = 10.0
"""A bare size below this is rather litres or centilitres than millilitres; a level, a slip."""

_NUMBER = re.compile(r"[0-9]{1,7}(?:[.,][0-9]{1,4})?")
_CURRENCY = re.compile(r"^[€$£¥]\s*|\s*[€$£¥]$")

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class BottleRow:
    """A bottle as one row describes it. `level` is None for a full one.

    `columns` is where each field stands, from 1.
    """

    line: int
    draft: ProductDraft
    level: MeasuredLevel | None = None
    opened: date | None = None
    columns: Mapping[str, int] = field(default_factory=dict, compare=False)


@dataclass(frozen=True, slots=True)
class BottlesFile:
    """What a file holds: rows that can be used, what is wrong, and columns that mean nothing.

    Columns of a problem count fields from 1.
    """

    rows: tuple[BottleRow, ...]
    problems: tuple[Problem, ...]
    ignored: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class _Record:
    line: int
    fields: Sequence[str]


@dataclass
class _Row:
    """One record by column, and the problems met while it is read."""

    record: _Record
    places: Mapping[str, int]
    problems: list[Problem]

    def text(self, column: str) -> str:
        """A field's text, empty where the row or the file has none."""
        place = self.places.get(column)
        fields = self.record.fields
        return "" if place is None or place >= len(fields) else " ".join(fields[place].split())

    def read(self, column: str, how: Callable[[str], T], default: T) -> T:
        """A field read by `how`, or the default for an empty or a wrong one."""
        text = self.text(column)
        if not text:
            return default
        try:
            return how(text)
        except UserError as error:
            self.refuse(column, str(error))
            return default

    def refuse(self, column: str, message: str) -> None:
        """Note a problem at a field."""
        self.problems.append(Problem(self.record.line, self.places[column] + 1, message))


def read_bottles_csv(text: str, tree: FamilyTree) -> BottlesFile:
    """Every bottle of a CSV text. Never raises: what cannot be used is in the problems."""
    records, fault = _records(text.removeprefix("\ufeff"))
    if not records:
        expected = f"the first line names the columns: {','.join(COLUMNS)}"
        return BottlesFile((), (fault or Problem(1, 1, f"nothing is in it; {expected}"),))
    header = records[0]
    names = [folded(name) for name in header.fields]
    problems = list(_header_problems(header.line, names))
    ignored = tuple(name for name in header.fields if name and folded(name) not in COLUMNS)
    rows: list[BottleRow] = []
    if not problems:
        places = {name: place for place, name in enumerate(names) if name in COLUMNS}
        for record in records[1:]:
            row = _Row(record, places, [])
            found = _bottle(row, len(names), tree)
            problems += row.problems
            if found is not None and not row.problems:
                rows.append(found)
    problems += [fault] if fault else []
    return BottlesFile(tuple(rows), tuple(problems), ignored)


def _records(text: str) -> tuple[list[_Record], Problem | None]:
    """The records that are not empty, each with the line it begins on, and where it breaks off."""
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=_delimiter(text))
    found: list[_Record] = []
    line = 1
    try:
        for fields in reader:
            if any(field.strip() for field in fields):
                found.append(_Record(line, fields))
            line = reader.line_num + 1
    except csv.Error as error:
        return found, Problem(line, 1, f"this is not CSV: {error}")
    return found, None


def _delimiter(text: str) -> str:
    """What parts the fields of the first line that says something."""
    first = next((line for line in text.splitlines() if line.strip()), "")
    return max(",;\t", key=first.count)


def _header_problems(line: int, names: Sequence[str]) -> Iterator[Problem]:
    for column in REQUIRED:
        if column not in names:
            yield Problem(line, 1, f"the column “{column}” is missing")
    for place, name in enumerate(names):
        if name in COLUMNS and name in names[:place]:
            yield Problem(line, place + 1, f"the column “{name}” is there twice")


def _bottle(row: _Row, columns: int, tree: FamilyTree) -> BottleRow | None:
    if any(field.strip() for field in row.record.fields[columns:]):
        message = f"this row has more fields than the header's {columns}; quote a field with commas"
        row.problems.append(Problem(row.record.line, columns + 1, message))
        return None
    for column in REQUIRED:
        if not row.text(column):
            row.refuse(column, f"{column} is empty")
    key = row.read("ingredient", lambda text: _ingredient(text, tree), "")
    unit: Unit = tree[key].unit if key else "ml"
    size = row.read("size", lambda text: _size(text, unit), 0.0) if key else 0.0
    draft = ProductDraft(
        name=row.text("product"),
        maker=row.text("maker"),
        ingredient=key,
        size=size,
        unit=unit,
        abv_percent=row.read("abv", _strength, None),
        price=row.read("price", _price, None),
    )
    opened = row.read("opened", _day, None)
    level = None
    if size:
        level = row.read("level", lambda text: _level(text, row.text("size"), draft), None)
    places = {column: place + 1 for column, place in row.places.items()}
    return BottleRow(row.record.line, draft, level, opened, places)


def _ingredient(text: str, tree: FamilyTree) -> str:
    if text in tree:
        return text
    match = match_ingredient(text, tree)
    if match.key is None:
        raise UnknownName("ingredient", text, match.nearest)
    return match.key


def _size(text: str, unit: Unit) -> float:
    bare = _NUMBER.fullmatch(text)
    size = float(text.replace(",", ".")) if bare else to_quantity(parse_amount(text), unit)
    if size <= 0:
        raise InvalidField("size", text, "it is more than nothing")
    if bare and unit == "ml" and size < SMALLEST_ML:
        raise InvalidField("size", text, "write its unit, such as 0.7 l, 70 cl or 700 ml")
    return size


def _level(text: str, size_text: str, draft: ProductDraft) -> MeasuredLevel:
    if draft.unit == "ml" and _NUMBER.fullmatch(text):
        number = float(text.replace(",", "."))
        unit = "ml" if _NUMBER.fullmatch(size_text) else parse_amount(size_text).unit
        if number > 1 and to_quantity(Amount(number, None, unit), "ml") >= SMALLEST_ML:
            text = f"{text} {unit.replace('_', ' ')}"
    return parse_level(text, draft.size, draft.unit, draft.title)


def _strength(text: str) -> float | None:
    strength = _number("abv", text.removesuffix("%").rstrip(), "write % vol, such as 41.2")
    if strength > 100:
        raise InvalidField("abv", text, "it is 0 to 100 % vol")
    return strength


def _price(text: str) -> float | None:
    return _number("price", _CURRENCY.sub("", text), "write a number, such as 24.50")


def _number(field: str, text: str, expected: str) -> float:
    if not _NUMBER.fullmatch(text):
        raise InvalidField(field, text, expected)
    return float(text.replace(",", "."))


def _day(text: str) -> date | None:
    if not re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", text):
        raise InvalidField("opened", text, "write a day as 2026-03-31")
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise InvalidField("opened", text, "there is no such day") from None
