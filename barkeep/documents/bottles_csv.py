"""Bottles out of a CSV text: rows that can be used, and the others with what is wrong in each cell.

The header names the columns in any order, in English, German, French, Italian
or Spanish; a unit may stand there in brackets. `product`, `ingredient` and
`size` must be there or are asked about in every row; the others may be. Fields
are parted by commas, semicolons or tabs.

==========  ====================================================================
product     the name on the label
maker       who makes it
ingredient  what it is, by name or key
abv         % vol: 41.2, 41,2 %, 86 proof
size        70 cl, 0.7 l, 1 kg; a bare number is ml, g or pieces
level       what is left, empty for a full bottle. Up to 1 a share: 0.4, 4/10,
            40 %, half; else an amount: 31 cl. A bare number above 1 of what is
            poured is in the unit of its size: 300 of 700 is ml, 31 of 70 cl is cl.
            ? where nobody looked: half, give or take all of it
price       24.50, 24,50 €
opened      when the seal was broken: 2026-03-31, 31 March 2026; or yes, or no
use_by      the last day it is good
sugar       g per litre
shape       one of the shapes of bottles
tare        what it weighs empty: 412 g; 412 g ± 9 g where that was worked out
house_made  yes for what is made here, else no
made        when it was made
received    when it came in, empty for today
barcode     the number under it
acid        g per litre
density     g per ml, learned by weighing
full        what it weighed when it was full
dash        what one dash of its own dasher gives, in ml
count       how many such bottles there are, empty for one. A level is that of
            the first; the others are full
==========  ====================================================================

A cell that may mean two things is not taken but asked about, with the likelier
answer; see `bottle_cells`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cache
from operator import eq
from typing import TypeVar

from barkeep.collector import collector_paused
from barkeep.documents.bottle_cells import (
    NUMBER,
    UnlikeName,
    UnsureField,
    answer,
    by_word,
    ingredient_in,
    is_currency,
    read_abv,
    read_count,
    read_dash,
    read_day,
    read_day_gone,
    read_density,
    read_grams_per_litre,
    read_ingredient,
    read_level,
    read_opened,
    read_price,
    read_shape,
    read_size,
    read_tare,
    read_weight,
    read_yes_or_no,
    says_nothing,
    words,
)
from barkeep.documents.csv_cells import csv_text
from barkeep.documents.foreign_text import Record, fields_of_header, read_records
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.units import US_UNITS, BarUnits, Unit
from barkeep.domain.bottles.barcodes import checked_gtin
from barkeep.domain.bottles.bottle import NOTHING_KNOWN, BottleFacts, Label
from barkeep.domain.bottles.containers import container_for
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.bottles.package_sizes import PackageSize
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import Problem, UserError, spoken_list
from barkeep.translation import tr, tr_noop

COLUMNS = (
    *("product", "maker", "ingredient", "abv", "size", "level", "price", "opened", "use_by"),
    *("sugar", "shape", "tare", "house_made", "made", "received", "barcode", "acid", "density"),
    *("full", "dash", "count"),
)
REQUIRED = ("product", "ingredient", "size")
NAMING = frozenset({"product", "ingredient"})
"""Columns of which one at least must be there, or the first line is no header of bottles."""
OF_BOTTLES = frozenset({"maker", "abv", "size", "level", "price", "opened", "use_by", "tare"})
"""Columns that no list of drinks has."""
PROBLEM = "problem"
"""The column that says in a file of rows left over what is wrong with each."""
OPENED_TODAY = tr_noop("No day is given, so it counts as opened today.")
EVERY = 25
"""Rows between two calls of `reached`."""

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class ListedBottle:
    """A bottle as one row of a file describes it: a product, and what the bottle has beside it.

    A product of the draft's title and size that the bar has is taken as it is.
    `level` is None for a full one, `opened` where it is not known; a `sealed`
    one was never opened, and of what is made here may be less than full. `line`
    and `columns` are where it and each field stand, from 1.
    """

    line: int
    draft: Label
    level: MeasuredLevel | None = None
    opened: date | None = None
    columns: Mapping[str, int] = field(default_factory=dict, compare=False)
    facts: BottleFacts = NOTHING_KNOWN
    sealed: bool = False
    count: int = 1
    note: str = ""


@dataclass(frozen=True, slots=True)
class CellProblem:
    """What is wrong in one cell; an empty `column` is the whole row.

    `likely` is what could stand there instead, empty where nothing is likely;
    `unknown` are words that name no ingredient known.
    """

    column: str
    message: str
    likely: str = ""
    unknown: str | None = None


@dataclass(frozen=True, slots=True)
class ListedRow:
    """One row of a file: its cells by column, and the bottle they describe or what is wrong.

    `row` counts as a spreadsheet does, `line` as an editor of texts. `aside` are
    the cells of columns that nothing is read from, `beyond` those further right
    than the header goes. `remarks` are sentences about what was taken as it
    stands and is worth a look. A line that was `written` without columns has in
    `guessed` those it said nothing of.
    """

    row: int
    line: int
    cells: Mapping[str, str]
    bottle: ListedBottle | None = None
    problems: tuple[CellProblem, ...] = ()
    remarks: tuple[str, ...] = ()
    aside: tuple[str, ...] = ()
    beyond: tuple[str, ...] = ()
    columns: Mapping[str, int] = field(default_factory=dict, compare=False)
    written: str = ""
    guessed: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Terms:
    """What a bar means by what stands in a cell; `today` is None where nobody tells."""

    tree: FamilyTree
    units: BarUnits = US_UNITS
    currency: str = "EUR"
    today: date | None = None


@dataclass(frozen=True, slots=True)
class BottlesFile:
    """What a file holds: every row that is not empty, and what is wrong with its header.

    `ignored` are the columns that mean nothing, `aside` those whose cells are
    kept beside each row, `headings` the lines of a text that only part it.
    """

    listed: tuple[ListedRow, ...] = ()
    faults: tuple[Problem, ...] = ()
    ignored: tuple[str, ...] = ()
    aside: tuple[str, ...] = ()
    headings: tuple[str, ...] = ()

    @property
    def rows(self) -> tuple[ListedBottle, ...]:
        """The bottles that can be used."""
        return tuple(each.bottle for each in self.listed if each.bottle is not None)

    @property
    def problems(self) -> tuple[Problem, ...]:
        """Every problem with its place, those of the header first; columns count from 1."""
        return (*self.faults, *(found for each in self.listed for found in placed(each)))


def placed(row: ListedRow) -> Iterator[Problem]:
    """A row's problems with their places in the file.

    That a column is missing altogether is a fault of the header, said there once.
    """
    for each in row.problems:
        if not each.column:
            yield Problem(row.line, _width_of(row) + 1, each.message)
        elif each.column in row.columns:
            place = row.columns[each.column]
            yield Problem(row.line, place, _with_likely(each), each.unknown)


def _width_of(row: ListedRow) -> int:
    return max((*row.columns.values(), len(row.aside) + len(row.columns)), default=0)


def _with_likely(problem: CellProblem) -> str:
    if not problem.likely:
        return problem.message
    message = problem.message.rstrip(".")
    return tr("{message}. Perhaps {likely}.", message=message, likely=problem.likely)


@collector_paused()
def read_bottles_csv(
    text: str,
    tree: FamilyTree,
    units: BarUnits = US_UNITS,
    *,
    currency: str = "EUR",
    today: date | None = None,
    reached: Callable[[int, int], object] = lambda _done, _of: None,
) -> BottlesFile:
    """Every bottle of a CSV text, as a bar of these `units` and this `currency` means them.

    Never raises: what cannot be used is in the problems. `reached` is told of
    how many rows so many are read.
    """
    records, fault = read_records(text)
    faults = (fault,) if fault else ()
    if not records:
        said = tr(
            "nothing is in it; the first line names the columns: {columns}",
            columns=",".join(COLUMNS),
        )
        return BottlesFile((), faults or (Problem(1, 1, said),))
    header = _header(records[0])
    faults = (*header.faults, *faults)
    if not NAMING & header.places.keys():
        return BottlesFile((), faults)
    rows: list[ListedRow] = []
    terms = Terms(tree, units, currency, today)
    names = [folded(each) for each in records[0].fields]
    for number, record in enumerate(records[1:]):
        if number % EVERY == 0:
            reached(number, len(records) - 1)
        if not _is_header_again(record, names):
            rows.append(_listed(record, header, terms))
    return BottlesFile(tuple(rows), faults, header.ignored, tuple(header.aside.values()))


def is_bottles_csv(text: str) -> bool:
    """Whether a text begins as a list of bottles does, and no other list.

    It has two of the columns that must be there by their own names, or one by any
    name beside another that only bottles have.
    """
    header = fields_of_header(text)
    if len({folded(each) for each in header} & set(REQUIRED)) >= 2:
        return True
    found = {column for column, _unit in map(_column_of, header)}
    return bool(found & NAMING) and bool(found & OF_BOTTLES)


def repaired(row: ListedRow, cells: Mapping[str, str], terms: Terms) -> ListedRow:
    """A row read again with these cells instead, which somebody has looked at."""
    kept = {column: each for column, each in cells.items() if each.strip()}
    still = {each for each in row.guessed if kept.get(each) == row.cells.get(each)}
    return row_of(replace(row, cells=kept, beyond=(), guessed=frozenset(still)), terms)


def row_of(row: ListedRow, terms: Terms, asked: Sequence[CellProblem] = ()) -> ListedRow:
    """A row that was no row of a table, read from its cells; `asked` is what is to be asked too."""
    texts = {
        column: " ".join(cell.split())
        for column, cell in row.cells.items()
        if not says_nothing(cell)
    }
    return _read(_Reading(row, list(asked), texts), terms)


def rest_csv(rows: Sequence[ListedRow], aside: Sequence[str]) -> str:
    """Rows as a CSV text with a column that says what is wrong, to be put right and read again.

    `aside` are the headers of the cells that the rows keep beside what is read.
    """
    used = [each for each in COLUMNS if each in REQUIRED or any(each in row.cells for row in rows)]
    kept = [place for place, name in enumerate(aside) if folded(name) != PROBLEM]
    written = [(*used, *(aside[place] for place in kept), PROBLEM)]
    for row in rows:
        cells = (row.cells.get(column, "") for column in used)
        others = (row.aside[place] if place < len(row.aside) else "" for place in kept)
        written.append((*cells, *others, told(row), *row.beyond))
    return csv_text(written)


def told(row: ListedRow) -> str:
    """What is wrong with a row, in one text."""
    return " ".join(_told(each) for each in row.problems)


def _told(problem: CellProblem) -> str:
    said = _with_likely(problem).rstrip(".")
    return f"{problem.column}: {said}." if problem.column else f"{said}."


# The header


@dataclass(frozen=True, slots=True)
class _Header:
    """Where each known column stands, from 0, with the unit said there; and the other columns.

    `numbers` count the columns from 1, as they are told. `again` are the places of a column
    that is there more than once.
    """

    width: int
    places: Mapping[str, int]
    numbers: Mapping[str, int]
    units: Mapping[str, str]
    again: Mapping[int, str]
    aside: Mapping[int, str]
    ignored: tuple[str, ...]
    faults: tuple[Problem, ...]


_UNIT_IN_HEADER = re.compile(r"(?P<name>.+?)[ ]*[(\[](?P<unit>[^()\[\]]+)[)\]]")
_MEASURES = frozenset({"ml", "cl", "dl", "l", "oz", "g", "kg", "cm"})
_GRAMS_PER_LITRE = frozenset({"g/l", "g per litre", "g per l"})
_UNITS_OF: Mapping[str, Callable[[str], bool]] = {
    "abv": lambda unit: unit in {"%", "% vol", "vol", "percent", "proof", "% abv", "vol%"},
    "size": lambda unit: unit in _MEASURES,
    "level": lambda unit: unit in _MEASURES | {"%", "percent"},
    "price": is_currency,
    "sugar": lambda unit: unit in _GRAMS_PER_LITRE,
    "acid": lambda unit: unit in _GRAMS_PER_LITRE,
    "tare": lambda unit: unit in {"g", "kg"},
    "full": lambda unit: unit in {"g", "kg"},
    "opened": lambda unit: unit in {"date", "day", "yes/no"},
    **dict.fromkeys(("use_by", "made", "received"), lambda unit: unit in {"date", "day"}),
}


@cache
def _columns_by_word() -> Mapping[str, str]:
    return by_word(words().columns)


def _column_of(written: str) -> tuple[str, str]:
    """The column that a header's field names, empty where it names none, and the unit with it."""
    name = folded(written.replace("_", " "))
    known = _columns_by_word()
    if name in known:
        return known[name], ""
    found = _UNIT_IN_HEADER.fullmatch(name)
    name, unit = (found["name"], found["unit"].strip()) if found else _last_word(name)
    column = known.get(name, "")
    return (column, unit) if column and _UNITS_OF.get(column, _never)(unit) else ("", "")


def _last_word(name: str) -> tuple[str, str]:
    first, _blank, last = name.rpartition(" ")
    return first, last


def _never(_unit: str) -> bool:
    return False


def _header(record: Record) -> _Header:
    places: dict[str, int] = {}
    again: dict[int, str] = {}
    units: dict[str, str] = {}
    aside: dict[int, str] = {}
    faults: list[Problem] = []
    own = {folded(each) for each in record.fields} & set(COLUMNS)
    for place, written in enumerate(record.fields):
        column, unit = _column_of(written)
        other_word = folded(written) != column and column in own and not unit
        if not column or other_word:
            if written.strip():
                aside[place] = written.strip()
        elif column in places:
            faults.append(
                Problem(
                    record.line,
                    place + 1,
                    tr("the column “{column}” is there twice", column=column),
                )
            )
            again[place] = column
            aside[place] = written.strip()
        else:
            places[column] = place
            units[column] = unit
    faults[:0] = [
        Problem(record.line, 1, tr("the column “{column}” is missing", column=column))
        for column in REQUIRED
        if column not in places
    ]
    return _Header(
        width=_width(record),
        places=places,
        numbers={column: place + 1 for column, place in places.items()},
        units=units,
        again=again,
        aside=aside,
        ignored=tuple(name for place, name in aside.items() if place not in again),
        faults=tuple(faults),
    )


def _width(header: Record) -> int:
    """How many fields the header has up to its last that says something."""
    return max((place + 1 for place, each in enumerate(header.fields) if each.strip()), default=0)


def _is_header_again(record: Record, names: Sequence[str]) -> bool:
    """Whether a row only says once more what the columns, by these folded `names`, are called."""
    # From the end: the last columns are rarely filled, and tell a row at once.
    alike = map(eq, map(folded, reversed(record.fields)), reversed(names))
    return len(record.fields) == len(names) and all(alike)


# Rows


def _listed(record: Record, header: _Header, terms: Terms) -> ListedRow:
    fields = [" ".join(each.split()) if each else "" for each in record.fields]
    cells = {
        column: _with_unit(column, fields[place], header.units[column], terms)
        for column, place in header.places.items()
        if place < len(fields) and fields[place] and not says_nothing(fields[place])
    }
    row = ListedRow(
        row=record.row,
        line=record.line,
        cells=cells,
        aside=tuple(fields[place] if place < len(fields) else "" for place in header.aside),
        beyond=_beyond(fields, header.width),
        columns=header.numbers,
    )
    twice = tuple(_said_otherwise(fields, cells, header))
    return _read(_Reading(row, list(twice), cells), terms)


def _beyond(fields: Sequence[str], width: int) -> tuple[str, ...]:
    found = fields[width:]
    return tuple(found) if any(found) else ()


def _with_unit(column: str, cell: str, unit: str, terms: Terms) -> str:
    """A cell with the unit that the header says, where it has none itself."""
    if not unit or not NUMBER.fullmatch(cell):
        return cell
    if column == "price":
        return cell if unit.upper() == terms.currency else f"{cell} {unit}"
    if column in ("size", "level", "tare", "full"):
        return f"{cell} {'%' if unit == 'percent' else unit}"
    return f"{cell} proof" if unit == "proof" else cell


def _said_otherwise(
    fields: Sequence[str], cells: Mapping[str, str], header: _Header
) -> Iterator[CellProblem]:
    for place, column in header.again.items():
        other = fields[place] if place < len(fields) else ""
        first = fields[header.places[column]] if header.places[column] < len(fields) else ""
        if not says_nothing(other) and other != first:
            message = tr(
                "the column is there twice, with “{first}” and “{other}”", first=first, other=other
            )
            yield CellProblem(column, message, cells.get(column, other))


@dataclass
class _Reading:
    """One row while its cells are read; `texts` are those that say something, by their columns."""

    row: ListedRow
    problems: list[CellProblem]
    texts: Mapping[str, str]
    remarks: list[str] = field(default_factory=list)

    def text(self, column: str) -> str:
        """A cell's text, empty where there is none or it says that nothing is known."""
        return self.texts.get(column, "")

    def likely_text(self, column: str) -> str:
        """A cell's text, or its likely answer where it was asked about."""
        asked = (each.likely for each in self.problems if each.column == column)
        return next(asked, self.text(column))

    def read(self, column: str, how: Callable[[str], T], default: T) -> T:
        """A cell read by `how`, or the default for an empty or a wrong one.

        What is asked about is read on as its likely answer, so that all that is
        wrong with a row is said at once.
        """
        text = self.texts.get(column, "")
        if not (text or self.problems):
            return default
        try:
            if text:
                return how(text)
        except UserError as error:
            likely = error.likely if isinstance(error, UnsureField | UnlikeName) else ""
            unknown = text if isinstance(error, UnlikeName) else None
            self.refuse(CellProblem(column, str(error), likely, unknown))
        likely = self.likely_text(column) if self.problems else text
        try:
            return how(likely) if likely != text else default
        except UserError:
            return default

    def refuse(self, problem: CellProblem) -> None:
        """Note a problem, the first there is at its cell."""
        if all(each.column != problem.column for each in self.problems):
            self.problems.append(problem)


def _read(reading: _Reading, terms: Terms) -> ListedRow:
    """The row with its bottle, or with what is wrong."""
    row = reading.row
    if row.beyond:
        said = ", ".join(f"“{each}”" for each in row.beyond if each)
        width = _width_of(row)
        message = tr(
            "this row has more fields than the header's {width}; quote a field with commas "
            "({said} stands beyond)",
            width=width,
            said=said,
        )
        reading.refuse(CellProblem("", message))
        return replace(row, bottle=None, problems=tuple(reading.problems), remarks=())
    bottle = _bottle(reading, terms)
    problems = tuple(reading.problems)
    return replace(
        row,
        bottle=None if problems else bottle,
        problems=problems,
        remarks=tuple(reading.remarks),
    )


def _bottle(reading: _Reading, terms: Terms) -> ListedBottle:
    tree, text = terms.tree, reading.text
    beside = f"{text('maker')} {text('product')}"
    _ask_for_what_is_missing(reading, tree)
    key = reading.read("ingredient", lambda cell: read_ingredient(cell, tree, beside), "")
    kind = tree[key] if key else None
    unit: Unit = "ml" if kind is None else kind.unit
    usual = None if kind is None else kind.abv_percent
    size = 0.0
    if kind is not None:
        found = reading.read(
            "size", lambda cell: read_size(cell, key, tree, terms.units), PackageSize(0.0)
        )
        size = found.amount
        if found.said:
            reading.remarks.append(found.said)
    draft = Label(
        name=text("product"),
        maker=text("maker"),
        ingredient=key,
        size=size,
        unit=unit,
        abv_percent=reading.read("abv", lambda cell: read_abv(cell, usual), None),
        sugar_g_per_l=reading.read("sugar", lambda cell: read_grams_per_litre(cell, "sugar"), None),
        price=reading.read("price", lambda cell: read_price(cell, terms.currency), None),
        barcode=reading.read("barcode", checked_gtin, ""),
        house_made=reading.read(
            "house_made", lambda cell: read_yes_or_no("house_made", cell), False
        ),
        shape=reading.read("shape", read_shape, None),
        density_g_per_ml=reading.read("density", read_density, None),
        acid_g_per_l=reading.read("acid", lambda cell: read_grams_per_litre(cell, "acid"), None),
    )
    opened = reading.read("opened", lambda cell: read_opened(cell, terms.today), None)
    facts = _facts(reading, terms)
    if facts.made and facts.use_by and facts.use_by < facts.made:
        reading.refuse(
            CellProblem("use_by", tr("it was made on {made}, after that", made=facts.made))
        )
    level = _level(reading, draft, facts, terms) if size else None
    if size:
        _look_at_seal(reading, draft, level, opened)
    return ListedBottle(
        line=reading.row.line,
        draft=draft,
        level=level,
        opened=opened,
        columns=reading.row.columns,
        facts=facts,
        sealed=answer(reading.text("opened")) == "no",
        count=_count(reading, level),
        note=_note(reading.row),
    )


def _count(reading: _Reading, level: MeasuredLevel | None) -> int:
    count = reading.read("count", read_count, 1)
    if count > 1 and level is not None:
        said = tr("The level is that of one bottle; the other counts as full.")
        if count > 2:
            said = tr(
                "The level is that of one bottle; the other {others} count as full.",
                others=count - 1,
            )
        reading.remarks.append(said)
    return count


def _note(row: ListedRow) -> str:
    """What is written in the ledger of a bottle that came out of a line of words."""
    if not row.written:
        return ""
    said = f"listed as “{row.written}”"
    what = [each for each in ("size", "level") if each in row.guessed]
    return f"{said}; {spoken_list(what, 'and')} guessed" if what else said


_OF_FACTS = frozenset({"received", "made", "use_by", "tare", "full", "dash"})
"""The columns of what is known of one bottle beside its label and its level."""


def _facts(reading: _Reading, terms: Terms) -> BottleFacts:
    if reading.texts.keys().isdisjoint(_OF_FACTS) and not reading.problems:
        return NOTHING_KNOWN
    today, units = terms.today, terms.units
    return BottleFacts(
        received=reading.read(
            "received", lambda cell: read_day_gone(cell, today, "received"), None
        ),
        made=reading.read("made", lambda cell: read_day_gone(cell, today, "made"), None),
        use_by=reading.read("use_by", lambda cell: read_day(cell, today, "use_by"), None),
        tare=reading.read("tare", read_tare, None),
        full_g=reading.read("full", lambda cell: read_weight("full", cell), None),
        dash_ml=reading.read("dash", lambda cell: read_dash(cell, units), None),
    )


def _ask_for_what_is_missing(reading: _Reading, tree: FamilyTree) -> None:
    for column in REQUIRED:
        if not reading.text(column):
            likely = _usual(column, reading, tree)
            reading.refuse(CellProblem(column, tr("{column} is empty", column=tr(column)), likely))


def _usual(column: str, reading: _Reading, tree: FamilyTree) -> str:
    """What an empty cell would likely hold: the kind that a label names, the usual size of one."""
    kind = ingredient_in(reading.text("ingredient"), tree)
    if column == "product":
        return kind
    named = ingredient_in(reading.text("product"), tree)
    if column == "ingredient":
        return named
    key = tree.by_name.get(folded(kind or named))
    return "" if key is None else show_quantity(tree[key].typical_size, tree[key].unit)


def _level(
    reading: _Reading, draft: Label, facts: BottleFacts, terms: Terms
) -> MeasuredLevel | None:
    container = container_for(draft, terms.tree, facts.tare)
    size_text = reading.likely_text("size")
    return reading.read(
        "level", lambda cell: read_level(cell, size_text, container, terms.units), None
    )


def _look_at_seal(
    reading: _Reading, draft: Label, level: MeasuredLevel | None, opened: date | None
) -> None:
    """A sealed bottle is full, unless it was filled here; an open one was opened some day."""
    begun = level is not None and level.amount < draft.size
    said = answer(reading.text("opened"))
    if said == "no" and draft.house_made:
        return
    if draft.house_made and reading.text("made") and not reading.text("opened"):
        return  # it has been open since the day it was made
    if said == "no" and begun:
        message = tr("it is said never to have been opened, and something is gone")
        reading.refuse(CellProblem("opened", message, "yes"))
    elif "level" in reading.row.guessed:
        return
    elif said == "yes" or (begun and opened is None and level is not None and level.amount):
        reading.remarks.append(OPENED_TODAY)
