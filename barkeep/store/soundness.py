"""Whether what stands in a bar can be what barkeep wrote: types, dates, JSON, ranges, references.

SQLite looks after its pages and not after this: any cell may hold anything. The
rules come from the schema, and from what is asked of everything before it is
written; nothing here is a judgement of taste, since a bar that breaks a rule is
not opened. They are SQL, so that looking through a whole bar costs little.
"""

from __future__ import annotations

import json
import re
import sqlite3
from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from sqlalchemy import JSON, Boolean, CheckConstraint, Column, Date, DateTime, Float, Integer, Table

from barkeep.store import knowledge, schema
from barkeep.store.around_damage import Gap, columns_of, letters, readable_rows
from barkeep.store.faults import Fault
from barkeep.store.records import KINDS
from barkeep.store.rows import Unsound
from barkeep.store.shoots import SHOOT
from barkeep.store.specs import LINE, SPEC, TRIAL
from barkeep.translation import tr, tr_noop

MOST = 1e12
"""No number of a bar is larger, least of all an endless one."""

MOST_SHOWN = 40
"""So many letters of what stands in a cell are shown."""


@dataclass(frozen=True, slots=True)
class Rule:
    """What must be true of a column: `holds` is SQL, true or NULL where it is sound."""

    column: str
    holds: str
    expected: str


_DAY = (
    "({0} GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' AND {0} >= '0001'"
    " AND date({0}, '+0 days') IS {0})"
)
_CLOCK = "substr({0}, 11) GLOB ' [0-2][0-9]:[0-5][0-9]:[0-5][0-9]"
_MOMENT = (
    "(length({0}) = 10 OR (substr({0}, 12, 2) < '24' AND ("
    + " OR ".join(f"{_CLOCK}{part}'" for part in ("", "." + "[0-9]" * 6))
    + ")))"
)

_TYPES: Mapping[type[Any], tuple[str, str]] = {
    Boolean: ("typeof({0}) = 'integer' AND {0} IN (0, 1)", tr_noop("0 or 1")),
    Integer: ("typeof({0}) = 'integer'", tr_noop("a whole number")),
    Float: (
        f"typeof({{0}}) IN ('real', 'integer') AND {{0}} BETWEEN {-MOST} AND {MOST}",
        tr_noop("a number"),
    ),
    DateTime: (
        f"typeof({{0}}) = 'text' AND {_DAY.replace('{0}', 'substr({0}, 1, 10)')} AND {_MOMENT}",
        tr_noop("a moment such as 2026-03-31 18:00:00.000000"),
    ),
    Date: (f"typeof({{0}}) = 'text' AND {_DAY}", tr_noop("a day such as 2026-03-31")),
    # SQLite keeps JSON that is one number as that number.
    JSON: (
        "(typeof({0}) = 'text' AND json_valid({0}) OR typeof({0}) IN ('integer', 'real'))",
        tr_noop("JSON"),
    ),
}
"""Kind of column -> what holds of a cell that is not NULL, and what it is called."""

_TEXT = ("typeof({0}) = 'text'", tr_noop("a text"))

_RANGES: Mapping[str, Mapping[str, tuple[str, str]]] = {
    "product": {
        "name": ("trim(name) <> ''", tr_noop("a name")),
        "ingredient": ("ingredient <> ''", tr_noop("the key of an ingredient")),
        "sugar_g_per_l": ("sugar_g_per_l >= 0", tr_noop("0 or more")),
        "acid_g_per_l": ("acid_g_per_l >= 0", tr_noop("0 or more")),
        "density_g_per_ml": ("density_g_per_ml > 0", tr_noop("more than 0")),
    },
    "bottle": {
        "tare_g": ("tare_g > 0", tr_noop("more than 0")),
        "tare_sigma_g": (
            "(tare_sigma_g IS NULL) = (tare_g IS NULL) AND coalesce(tare_sigma_g, 0) >= 0",
            tr_noop("0 or more, beside each tare"),
        ),
        "full_g": ("full_g > 0", tr_noop("more than 0")),
        "dash_ml": ("dash_ml > 0", tr_noop("more than 0")),
    },
    "ledger": {
        "amount": ("kind = 'correct' OR amount BETWEEN 0 AND 1e7", tr_noop("0 to 10,000,000")),
        "sigma": ("sigma >= 0", tr_noop("0 or more")),
        "reverses": (
            "reverses IS NULL OR coalesce((SELECT other.bottle_id = ledger.bottle_id "
            "AND other.id < ledger.id FROM ledger AS other WHERE other.id = ledger.reverses), 0)",
            tr_noop("an earlier entry of the same bottle"),
        ),
    },
    "spec": {
        "name": ("trim(name) <> ''", tr_noop("a name")),
        "serves": ("serves > 0", tr_noop("more than 0")),
    },
    "spec_line": {
        "ingredient": ("ingredient <> ''", tr_noop("the key of an ingredient")),
        "position": ("position >= 0", tr_noop("0 or more")),
        "amount": ("amount >= 0", tr_noop("0 or more")),
        "amount_high": ("amount_high >= 0", tr_noop("0 or more")),
        "quantity": ("quantity >= 0", tr_noop("0 or more")),
        "min_abv_percent": ("min_abv_percent BETWEEN 0 AND 100", tr_noop("0 to 100")),
    },
    "shoot": {
        "theme": ("trim(theme) <> ''", tr_noop("a theme")),
        "starts": (
            "starts GLOB '[0-2][0-9]:[0-5][0-9]' AND starts < '24'",
            tr_noop("a time of day such as 18:30"),
        ),
    },
}
"""What else is asked of a column before anything is written into it."""

_IN_WORDS: Mapping[str, str] = {
    "abv_percent BETWEEN 0 AND 100": tr_noop("0 to 100"),
    "size > 0": tr_noop("more than 0"),
    "yields > 0": tr_noop("more than 0"),
    "ratio > 0": tr_noop("more than 0"),
    "price >= 0": tr_noop("0 or more"),
    "amount >= 0": tr_noop("0 or more"),
    "closeness > 0 AND closeness <= 1": tr_noop("more than 0 and at most 1"),
    "wanted <> offered": tr_noop("another ingredient than what is offered"),
    "(kind = 'reverse') = (reverses IS NOT NULL)": tr_noop("reverse where it names another entry"),
}
"""The file's own rules in words; what is one of several words says so itself."""


@dataclass(frozen=True, slots=True)
class ReadRow:
    """One row of a damaged bar: what stands in it by column, and what of that is wrong."""

    key: tuple[Any, ...]
    cells: Mapping[str, Any]
    faults: tuple[Fault, ...]


def is_sound(file: sqlite3.Connection) -> bool:
    """Whether no row of an open bar breaks a rule of its own table.

    Nothing is said of references, which SQLite tells more quickly, nor of
    letters and of what lies inside JSON.
    """
    for table in schema.METADATA.sorted_tables:
        columns = columns_of(file, table)
        if columns:
            own = (each for each in _own_rules(table) if each.column in columns)
            broken = " OR ".join(f"NOT coalesce({each.holds}, 1)" for each in own)
            if file.execute(f'SELECT 1 FROM "{table.name}" WHERE {broken} LIMIT 1').fetchone():
                return False
    return True


def missing(file: sqlite3.Connection) -> Iterator[Fault]:
    """The tables and columns of the newest schema that an open bar lacks."""
    for table in schema.METADATA.sorted_tables:
        there = columns_of(file, table)
        if not there:
            yield Fault(table.name, "", "", tr_noop("this table is missing"))
        else:
            for column in table.columns:
                if column.name not in there:
                    yield Fault(table.name, "", column.name, tr_noop("this column is missing"))


def faults(file: sqlite3.Connection) -> Iterator[Fault]:
    """Everything that stands wrongly in the tables of an open bar of any schema, row by row."""
    for table in schema.METADATA.sorted_tables:
        for row in rows_of(file, table):
            yield from (row,) if isinstance(row, Fault) else row.faults


def rows_of(file: sqlite3.Connection, table: Table) -> Iterator[ReadRow | Fault]:
    """Every row of a table that can be read, and a fault for each place where none can."""
    columns = columns_of(file, table)
    if not columns:
        return
    ruled = _of(table, columns)
    wanted = [f'"{each}"' for each in columns]
    wanted += [f"coalesce({each.holds}, 1)" for each in ruled]
    for found in readable_rows(file, table, ", ".join(wanted)):
        if isinstance(found, Gap):
            yield Fault(table.name, found.place, "", tr("{reason} here", reason=found.reason))
        else:
            yield _row(table, columns, ruled, found)


def _row(
    table: Table, columns: tuple[str, ...], ruled: tuple[Rule, ...], found: tuple[Any, ...]
) -> ReadRow:
    raw = dict(zip(columns, found, strict=False))
    wrong: dict[str, str] = {}
    for rule, holds in zip(ruled, found[len(columns) :], strict=True):
        if not holds:
            wrong.setdefault(rule.column, rule.expected)
    cells: dict[str, Any] = {}
    for name, cell in raw.items():
        cells[name] = cell
        if isinstance(cell, bytes) and name not in wrong:
            try:
                cells[name] = cell.decode()
            except UnicodeDecodeError:
                wrong[name] = tr_noop("a text in UTF-8")
    for name, expected in _wrong_json(table.name, cells, wrong.keys()):
        wrong[name] = expected
    key = tuple(cells[each.name] for each in table.primary_key.columns)
    row = ", ".join(_shown(each).strip("“”") for each in key)
    told = (
        Fault(table.name, row, name, found=_shown(raw[name]), expected=wrong[name])
        for name in wrong
    )
    return ReadRow(key, cells, tuple(told))


_INSIDE: Mapping[str, Mapping[str, Callable[[Any], object]]] = {
    **{
        name: {column: kept.taken for column, kept in mapper.kept.items()}
        for name, mapper in (
            ("spec", SPEC),
            ("spec_line", LINE),
            ("trial", TRIAL),
            ("shoot", SHOOT),
            ("own_stand_in", knowledge.STAND_IN),
            ("own_recipe", knowledge.RECIPE),
        )
    },
    "own_ingredient": {"details": knowledge.taken_ingredient},
}
"""Table and column -> what reads what lies there, and raises where it cannot."""


def _wrong_json(
    table: str, cells: Mapping[str, Any], apart_from: Collection[str]
) -> Iterator[tuple[str, str]]:
    """The columns of one row whose JSON is not what was put there, and what it must be."""
    readers = dict(_INSIDE.get(table, {}))
    if table == "setting":
        readers["value"] = lambda found: knowledge.taken_settings({cells["key"]: found})
    if table == "action_image":
        readers |= dict.fromkeys(("before", "after"), lambda found: _image(cells, found))
        readers["key"] = _key_of_image
    for column, read in readers.items():
        if column in cells and column not in apart_from and cells[column] is not None:
            is_json = isinstance(schema.METADATA.tables[table].c[column].type, JSON)
            is_text = isinstance(cells[column], str)
            try:
                read(json.loads(cells[column]) if is_json and is_text else cells[column])
            except (ValueError, TypeError, LookupError, AttributeError):
                yield column, tr_noop("as barkeep writes it")


def _key_of_image(found: Any) -> None:
    if not (isinstance(found, list) and found):
        raise Unsound


def _image(cells: Mapping[str, Any], found: Any) -> None:
    """Refuse what cannot be a record that undo puts back."""
    kind = KINDS[cells["record"]]
    columns = {*kind.table.columns.keys(), *(("lines",) if kind.lines is not None else ())}
    if found is not None and not found.keys() <= columns:
        raise Unsound


def _shown(cell: Any) -> str:
    """What stands in a cell, in a sentence."""
    if cell is None:
        return "nothing"
    if isinstance(cell, int | float):
        return f"{cell:g}" if isinstance(cell, float) else str(cell)
    text = "".join(
        each if each.isprintable() else "\N{REPLACEMENT CHARACTER}" for each in letters(cell)
    )
    return f"“{text[:MOST_SHOWN]}{'…' if len(text) > MOST_SHOWN else ''}”"


def _of(table: Table, columns: tuple[str, ...]) -> tuple[Rule, ...]:
    """What must be true of those columns of a table that a file has."""
    return tuple(each for each in _rules(table) if each.column in columns)


@cache
def _rules(table: Table) -> tuple[Rule, ...]:
    return (*_own_rules(table), *_referring(table))


@cache
def _own_rules(table: Table) -> tuple[Rule, ...]:
    return (*_typed(table), *_checked(table), *_ranged(table))


def _typed(table: Table) -> Iterator[Rule]:
    for column in table.columns:
        named = f'"{table.name}"."{column.name}"'
        kind = _kind(column)
        said = (each for type_, each in _TYPES.items() if isinstance(kind, type_))
        holds, expected = next(said, _TEXT)
        sound = holds.format(named)
        may_be_null = column.nullable and not column.primary_key
        yield Rule(
            column.name,
            f"({named} IS NULL OR ({sound}))" if may_be_null else f"({sound})",
            expected,
        )


def _kind(column: Column[Any]) -> object:
    """The type of a column; that of a reference is what it refers to."""
    for reference in column.foreign_keys:
        return reference.column.type
    return column.type


def _referring(table: Table) -> Iterator[Rule]:
    for column in table.columns:
        for reference in column.foreign_keys:
            named, other = f'"{table.name}"."{column.name}"', reference.column.table.name
            there = f'EXISTS (SELECT 1 FROM "{other}" AS it WHERE it.id = {named})'
            words = f"the id of {'an' if other[0] in 'aeiou' else 'a'} {other} that is there"
            yield Rule(column.name, f"({named} IS NULL OR {there})", words)


def _checked(table: Table) -> Iterator[Rule]:
    """The constraints of the schema, each said of the first column in it."""
    for check in table.constraints:
        if isinstance(check, CheckConstraint):
            text = str(check.sqltext)
            words = re.findall(r"\w+", text)
            column = next(each for each in words if each in table.columns)
            choices = text.partition(" IN ")[2].strip("()").replace("'", "")
            yield Rule(column, f"({text})", _IN_WORDS.get(text) or f"one of {choices}")


def _ranged(table: Table) -> Iterator[Rule]:
    for column, (holds, expected) in _RANGES.get(table.name, {}).items():
        yield Rule(column, f"({holds})", expected)
