"""Between rows and frozen values: every field lies in the column of its name.

A mapper says only what is not so: the fields that lie otherwise in their
columns, those that come from elsewhere, and the columns that are no field.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import MISSING, asdict, dataclass, fields
from functools import cache, lru_cache
from operator import attrgetter
from typing import Any, Generic, TypeVar, cast, get_type_hints

from sqlalchemy import JSON, Connection, CursorResult, Dialect, Select, Table, Text, insert
from sqlalchemy import cast as sql_cast
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.types import TypeEngine

from barkeep.shipped_data import fits

T = TypeVar("T")

Row = dict[str, Any]

Columns = Mapping[str, Sequence[Any]]
"""What stands in each column of some rows, in the rows' order."""

MANY = 500
"""No more values than these are named in one statement: SQLite refuses too many of them."""

MOST_SHARED = 20_000
"""So many values are remembered while rows are read, and then forgotten."""


class Unsound(ValueError):
    """What stands in a cell is not what can have been put there."""


@dataclass(frozen=True, slots=True)
class Kept:
    """How a value lies in its column (`put`) and how it comes out again (`take`).

    `shape` is the type of what lies there, in JSON's own types and dataclasses.
    """

    put: Callable[[Any], Any]
    take: Callable[[Any], Any]
    shape: Any

    def taken(self, found: Any) -> Any:
        """The value that lies there. Raises `Unsound` for what `put` cannot have made."""
        if found is not None and not fits(found, self.shape):
            raise Unsound
        try:
            value = self.take(found)
        except (ValueError, TypeError, LookupError) as error:
            raise Unsound from error
        if found is not None and not _holds(self.put(value), found):
            raise Unsound
        return value


def _holds(whole: Any, found: Any) -> bool:
    """Whether all that is found is in the whole; what was written before a field was there is."""
    if isinstance(found, dict) and isinstance(whole, dict):
        return all(name in whole and _holds(whole[name], found[name]) for name in found)
    if isinstance(found, list) and isinstance(whole, list):
        return len(found) == len(whole) and all(map(_holds, whole, found))
    return bool(whole == found)


WORDS = Kept(list, tuple, list[str])
"""Several words: a list in JSON, since JSON gives no tuples back and undo compares the two."""

WORDS_OR_NULL = Kept(
    lambda words: list(words) or None, lambda found: tuple(found or ()), list[str] | None
)
"""The same where none are NULL."""


def kept_records(kind: type[Any]) -> Kept:
    """Several flat values of a class, each by its fields' names."""
    return Kept(
        lambda values: [asdict(each) for each in values],
        lambda found: tuple(kind(**each) for each in found),
        list[kind],  # type: ignore[valid-type]
    )


def records_or_null(kind: type[Any]) -> Kept:
    """The same where none are NULL."""
    each = kept_records(kind)
    return Kept(
        lambda values: each.put(values) or None,
        lambda found: each.take(found or ()),
        each.shape | None,
    )


@dataclass(frozen=True, slots=True)
class Driven:
    """Rows one by one as the driver gives them, and what it calls the type of each column."""

    rows: Iterable[tuple[Any, ...]]
    types: tuple[Any, ...]


@contextmanager
def as_driven(result: CursorResult[Any]) -> Iterator[Driven]:
    """The rows of a result within this, with nothing made of what stands in them.

    Left behind they are over: a row that cannot be read would leave the file locked for as
    long as anybody holds the error.
    """
    with result as found:
        assert found.cursor is not None
        types = tuple(each[1] for each in found.cursor.description)
        yield Driven(cast(Iterable[tuple[Any, ...]], found.cursor), types)


def insert_many(connection: Connection, table: Table, columns: Columns) -> None:
    """Add rows, as many as each column has values, as the driver takes them.

    SQLAlchemy puts the values of each row together anew, which takes as long as adding it.
    """
    if not next(iter(columns.values()), ()):
        return
    dialect = connection.dialect
    compiled = _inserting(table, dialect, tuple(columns))
    names = list(compiled.positiontup or compiled.bind_names.values())
    types = {name: table.c[name].type.dialect_impl(dialect) for name in names}
    ready = [_for_driver(columns[name], types[name], dialect) for name in names]
    given: Iterable[Any] = zip(*ready, strict=True)
    if not compiled.positional:
        given = (dict(zip(names, each, strict=True)) for each in given)
    connection.exec_driver_sql(str(compiled), list(given))


@lru_cache(maxsize=64)
def _inserting(table: Table, dialect: Dialect, columns: tuple[str, ...]) -> SQLCompiler:
    compiled = insert(table).compile(dialect=dialect, column_keys=list(columns))
    assert isinstance(compiled, SQLCompiler)
    return compiled


def _for_driver(values: Sequence[Any], kind: TypeEngine[Any], dialect: Dialect) -> Sequence[Any]:
    """The values of a column as the driver takes them; what stands there often is put once."""
    put = kind.bind_processor(dialect)
    if put is None:
        return values
    if isinstance(kind, JSON):  # where 1 and true are two values, and lists cannot be looked up
        of_none = put(None)
        return [of_none if value is None else put(value) for value in values]
    known = {value: put(value) for value in set(values)}
    return list(map(known.__getitem__, values))


def in_columns(rows: Sequence[Row]) -> Columns:
    """Rows that all have the same columns, by column."""
    return {name: [row[name] for row in rows] for name in rows[0]} if rows else {}


def put_fields(value: Any, kept: Mapping[str, Kept]) -> Row:
    """Every field of a value by its name, as JSON keeps it."""
    row = {each.name: getattr(value, each.name) for each in fields(value)}
    return row | {name: each.put(row[name]) for name, each in kept.items()}


def take_fields(found: Row, kept: Mapping[str, Kept], made: type[Any]) -> Row:
    """The fields of a value of a class by their names, as far as they are there.

    Raises `Unsound` for what is no field of it, or of another type.
    """
    wanted = _types_of(made)  # type: ignore[arg-type]
    for name, value in found.items():
        if name not in wanted or not (name in kept or fits(value, wanted[name])):
            raise Unsound
    return found | {name: each.taken(found[name]) for name, each in kept.items() if name in found}


@cache
def _types_of(made: type[Any]) -> Mapping[str, Any]:
    return get_type_hints(made)


_NO = object()
"""In place of what NULL stands for, in a column that has none."""


class _Shared(dict[tuple[Any, ...], T]):
    """Rows with their values, each made when it is asked for first."""

    def __init__(self, made: Callable[[tuple[Any, ...]], T]) -> None:
        self._made = made

    def __missing__(self, row: tuple[Any, ...]) -> T:
        if len(self) > MOST_SHARED:
            self.clear()
        self[row] = value = self._made(row)
        return value


class Mapper(Generic[T]):
    """The values of one class and the rows of one table.

    `kept` are the fields that lie otherwise in their columns. `apart` are
    those without a column, which are given by name when a row is read.
    `beside` works out the columns that are no field from a value to be written.
    `lines` is the mapper of a value's `lines`, which lie in a table of their own.
    """

    def __init__(
        self,
        made: type[T],
        table: Table,
        *,
        kept: Mapping[str, Kept] | None = None,
        apart: Collection[str] = (),
        beside: Mapping[str, Callable[[Any], Any]] | None = None,
        lines: Mapper[Any] | None = None,
    ) -> None:
        every = fields(made)  # type: ignore[arg-type]
        own = [each for each in every if each.name not in apart]
        self._made = made
        self.kept = kept or {}
        self._beside = beside or {}
        self.table = table
        self.lines = lines
        self._names = tuple(each.name for each in own)
        self._takes = [
            (
                self._names.index(name),
                each.taken,
                each.taken(None) if table.c[name].nullable else _NO,
            )
            for name, each in self.kept.items()
        ]
        self._width = len(self._names)
        self._apart = [(place, each.name) for place, each in enumerate(every) if each.name in apart]
        self._named = [(place, each.name) for place, each in enumerate(every) if each.kw_only]
        self._unnamed = [place for place, each in enumerate(every) if not each.kw_only]
        self._usual = {each.name: each.default for each in every if each.default is not MISSING}
        self._written = tuple(name for name in self._names if name != "id")
        self._values_of = attrgetter(*self._written)
        self.columns = tuple(table.c[name] for name in self._names)
        self.columns_as_text = tuple(
            sql_cast(each, Text) if isinstance(each.type, JSON) else each for each in self.columns
        )

    def value(self, row: Sequence[Any], **apart: Any) -> T:
        """The value of a row that begins with `columns`, which are in the order of the fields."""
        values = list(row[: self._width])
        for place, take, of_null in self._takes:
            found = values[place]
            values[place] = of_null if found is None and of_null is not _NO else take(found)
        for place, name in self._apart:
            values.insert(place, apart[name] if name in apart else self._usual[name])
        if not self._named:
            return self._made(*values)  # half the time of naming each
        named = {name: values[place] for place, name in self._named}
        return self._made(*[values[place] for place in self._unnamed], **named)

    def sharing(self, dialect: Dialect, types: Sequence[Any]) -> Mapping[tuple[Any, ...], T]:
        """Rows of `columns_as_text` as the driver gives them, of these `types` -> their values.

        Of two rows that are equal the same one: a book says the same line over and over.
        For values of which no field is apart.
        """
        found = ((place, self._out_of(place, dialect, each)) for place, each in enumerate(types))
        takes = [(place, take) for place, take in found if take is not None]

        def value(row: tuple[Any, ...]) -> T:
            values = list(row)
            for place, take in takes:
                values[place] = take(values[place])
            return self._made(*values)

        return _Shared(value)

    def _out_of(self, place: int, dialect: Dialect, driven: Any) -> Callable[[Any], Any] | None:
        """What makes a field of what the driver gives for a column, None where it is the same."""
        kept, column = self.kept.get(self._names[place]), self.columns[place]
        if kept is None:
            return column.type.dialect_impl(dialect).result_processor(dialect, driven)
        return lambda text: kept.taken(None if text is None else json.loads(text))

    def every(self, connection: Connection, statement: Select[Any]) -> tuple[T, ...]:
        """The value of each row of a statement, in its order.

        All rows are fetched first: a row that cannot be read would leave the file locked
        for as long as anybody holds the error.
        """
        return tuple(self.value(row) for row in connection.execute(statement).all())

    def first(self, connection: Connection, statement: Select[Any]) -> T | None:
        """The value of the first row of a statement, None where it has none."""
        row = connection.execute(statement).first()
        return None if row is None else self.value(row)

    def row(self, value: Any) -> Row:
        """The row of a value, without the id, which the table or the key gives."""
        row = dict(zip(self._written, self._values_of(value), strict=True))
        for name, each in self.kept.items():
            row[name] = each.put(row[name])
        for column, work_out in self._beside.items():
            row[column] = work_out(value)
        if self.lines is not None:
            row["lines"] = [self.lines.row(line) for line in value.lines]
        return row

    def in_columns(self, values: Sequence[Any]) -> dict[str, Sequence[Any]]:
        """The rows of several values by column, without their ids and their lines."""
        found = {name: list(map(attrgetter(name), values)) for name in self._written}
        for name, each in self.kept.items():
            found[name] = list(map(each.put, found[name]))
        for column, work_out in self._beside.items():
            found[column] = list(map(work_out, values))
        return dict(found)
