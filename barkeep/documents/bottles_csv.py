"""Bottles out of a CSV text, every field that cannot be used with its place.

The header names the columns in any order: `product`, `ingredient` and `size`
must be there; the others may be. Fields are parted by commas, semicolons or
tabs.

==========  ====================================================================
product     the name on the label
maker       who makes it
ingredient  what it is, by name or key
abv         % vol: 41.2, 41,2 %, 86 proof
size        70 cl, 0.7 l, 1 kg; a bare number is ml, g or pieces
level       what is left, empty for a full bottle. Up to 1 a share: 0.4, 4/10,
            40 %; else an amount: 31 cl. A bare number above 1 of what is poured
            is in the unit of its size: 300 of 700 is ml, 31 of 70 cl is cl
price       24.50, 24,50 €
opened      when the seal was broken: 2026-03-31
==========  ====================================================================
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import partial
from typing import TypeVar

from barkeep.documents.foreign_text import Record, columns_in, read_records
from barkeep.domain.amounts.amount import Amount, parse_amount
from barkeep.domain.amounts.measures import quantity_in, to_quantity
from barkeep.domain.amounts.units import OUNCES, US_UNITS, BarUnits, Unit
from barkeep.domain.bottles.bottle import NOTHING_KNOWN, SCALE_SIGMA_G, BottleFacts, Label, Tare
from barkeep.domain.bottles.containers import Container, container_for
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level, read_weight_g
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.domain.ingredients.names import match_ingredient
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import folded
from barkeep.errors import InvalidField, Problem, UnknownName, UserError

COLUMNS = (
    *("product", "maker", "ingredient", "abv", "size", "level", "price", "opened"),
    *("sugar", "shape", "tare"),
)
REQUIRED = ("product", "ingredient", "size")


SMALLEST_ML = 10.0
"""A bare size below this is rather litres or centilitres than millilitres; a level, a slip."""


_NUMBER = re.compile(r"[0-9]{1,7}(?:[.,][0-9]{1,4})?")
_CURRENCY = re.compile(r"^[€$£¥]\s*|\s*[€$£¥]$")


T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class ListedBottle:
    """A bottle as one row of a file describes it: a product, and what the bottle has beside it.

    A product of the draft's title and size that the bar has is taken as it is.
    `level` is None for a full one, `opened` where it is not known. `line` and
    `columns` are where it and each field stand, from 1.
    """

    line: int
    draft: Label
    level: MeasuredLevel | None = None
    opened: date | None = None
    columns: Mapping[str, int] = field(default_factory=dict, compare=False)
    facts: BottleFacts = NOTHING_KNOWN


@dataclass(frozen=True, slots=True)
class BottlesFile:
    """What a file holds: rows that can be used, what is wrong, and columns that mean nothing.

    Columns of a problem count fields from 1.
    """

    rows: tuple[ListedBottle, ...]
    problems: tuple[Problem, ...]
    ignored: tuple[str, ...] = ()


@dataclass
class _Row:
    """One record by column, and the problems met while it is read."""

    record: Record
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
            unknown = error.name if isinstance(error, UnknownName) else None
            self.refuse(column, str(error), unknown)
            return default

    def refuse(self, column: str, message: str, unknown: str | None = None) -> None:
        """Note a problem at a field; `unknown` is as in `Problem`."""
        place = self.places[column] + 1
        self.problems.append(Problem(self.record.line, place, message, unknown))


def read_bottles_csv(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> BottlesFile:
    """Every bottle of a CSV text, amounts as a bar of these `units` means them.

    Never raises: what cannot be used is in the problems.
    """
    records, fault = read_records(text)
    if not records:
        expected = f"the first line names the columns: {','.join(COLUMNS)}"
        return BottlesFile((), (fault or Problem(1, 1, f"nothing is in it; {expected}"),))
    header = records[0]
    places, problems = columns_in(header, COLUMNS, REQUIRED)
    ignored = tuple(name for name in header.fields if name and folded(name) not in COLUMNS)
    rows: list[ListedBottle] = []
    if not problems:
        for record in records[1:]:
            row = _Row(record, places, [])
            found = _bottle(row, len(header.fields), tree, units)
            problems += row.problems
            if found is not None and not row.problems:
                rows.append(found)
    problems += [fault] if fault else []
    return BottlesFile(tuple(rows), tuple(problems), ignored)


def _bottle(row: _Row, columns: int, tree: FamilyTree, units: BarUnits) -> ListedBottle | None:
    if any(field.strip() for field in row.record.fields[columns:]):
        message = f"this row has more fields than the header's {columns}; quote a field with commas"
        row.problems.append(Problem(row.record.line, columns + 1, message))
        return None
    for column in REQUIRED:
        if not row.text(column):
            row.refuse(column, f"{column} is empty")
    key = row.read("ingredient", lambda text: _ingredient(text, tree), "")
    unit: Unit = tree[key].unit if key else "ml"
    size = row.read("size", lambda text: _size(text, unit, units), 0.0) if key else 0.0
    draft = Label(
        name=row.text("product"),
        maker=row.text("maker"),
        ingredient=key,
        size=size,
        unit=unit,
        abv_percent=row.read("abv", _strength, None),
        sugar_g_per_l=row.read("sugar", _sugar, None),
        price=row.read("price", _price, None),
        shape=row.read("shape", _shape, None),
    )
    opened = row.read("opened", _day, None)
    tare = row.read("tare", _tare, None)
    level = None
    if size:
        container = container_for(draft, tree, tare)
        of_size = partial(_level, row.text("size"), container, units)
        level = row.read("level", of_size, None)
    places = {column: place + 1 for column, place in row.places.items()}
    return ListedBottle(
        line=row.record.line,
        draft=draft,
        level=level,
        opened=opened,
        columns=places,
        facts=BottleFacts(tare=tare),
    )


def _ingredient(text: str, tree: FamilyTree) -> str:
    if text in tree:
        return text
    match = match_ingredient(text, tree)
    if match.key is None:
        raise UnknownName("ingredient", text, match.nearest)
    return match.key


def _size(text: str, unit: Unit, units: BarUnits) -> float:
    bare = _NUMBER.fullmatch(text)
    size = float(text.replace(",", ".")) if bare else quantity_in(text, unit, units)
    if size <= 0:
        raise InvalidField("size", text, "it is more than nothing")
    if bare and unit == "ml" and size < SMALLEST_ML:
        raise InvalidField("size", text, "write its unit, such as 0.7 l, 70 cl or 700 ml")
    return size


def _level(
    size_text: str, container: Container, units: BarUnits, text: str
) -> MeasuredLevel | None:
    if container.unit == "ml" and _NUMBER.fullmatch(text):
        number = float(text.replace(",", "."))
        unit = "ml" if _NUMBER.fullmatch(size_text) else parse_amount(size_text, units).unit
        if number > 1 and to_quantity(Amount(number, None, unit), "ml", units) >= SMALLEST_ML:
            text = f"{text} {OUNCES.get(unit, unit.replace('_', ' '))}"
    return parse_level(text, container, units)


def _sugar(text: str) -> float | None:
    plain = re.sub(r"\s*g\s*/\s*l$", "", text, flags=re.IGNORECASE)
    return _number("sugar", plain, "write g per litre, such as 240")


def _shape(text: str) -> str | None:
    shapes = shipped_shapes()
    by_name = {folded(name): key for key in shapes for name in (key, shapes[key].name)}
    key = by_name.get(folded(text))
    if key is None:
        raise InvalidField("shape", text, f"it is one of {', '.join(shapes)}")
    return key


def _tare(text: str) -> Tare | None:
    weight_g = float(text.replace(",", ".")) if _NUMBER.fullmatch(text) else read_weight_g(text)
    if weight_g <= 0:
        raise InvalidField("tare", text, "an empty bottle weighs more than nothing")
    return Tare(weight_g, SCALE_SIGMA_G)


def _strength(text: str) -> float | None:
    return read_strength(text, "abv")


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
