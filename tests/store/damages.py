"""A hundred ways in which what stands in a bar can be wrong though SQLite finds the file sound.

Each is one statement over a copy of the sample bar, with the table and the
column that must be named.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any


@dataclass(frozen=True)
class Damage:
    """What is set in one cell of one row; `row` picks it."""

    table: str
    column: str
    value: Any
    row: str = "id = 3"

    def __str__(self) -> str:
        return f"{self.table}.{self.column} = {self.value!r} where {self.row}"

    def do(self, path: Path) -> None:
        """Change the cell past every rule the file itself holds to."""
        with closing(sqlite3.connect(path)) as file, file:
            file.execute("PRAGMA ignore_check_constraints = ON")
            for name in ("update", "delete"):
                file.execute(f"DROP TRIGGER ledger_refuses_{name}")
            done = file.execute(
                f'UPDATE {self.table} SET "{self.column}" = {_literal(self.value)} WHERE {self.row}'
            )
            assert done.rowcount == 1, self


@dataclass(frozen=True)
class Sql:
    """A value as SQL says it."""

    text: str


def _literal(value: Any) -> str:
    if isinstance(value, Sql):
        return value.text
    if value is None:
        return "NULL"
    if isinstance(value, str):
        return "'" + value.replace("'", "''") + "'"
    return repr(value)


NO_TEXT = Sql("CAST(x'47f69d' AS TEXT)")
"""A text that is not UTF-8."""
BLOB = Sql("x'00ff10'")
ENDLESS = Sql("9e999")


def every() -> tuple[Damage, ...]:
    """All of them."""
    return tuple(_every())


def _of(table: str, row: str, **wrong: tuple[Any, ...]) -> Iterator[Damage]:
    for column, values in wrong.items():
        for value in values:
            yield Damage(table, column, value, row)


def _every() -> Iterator[Damage]:
    yield from _of(
        "product",
        "id = 3",
        name=(NO_TEXT, BLOB, ""),
        maker=(NO_TEXT, BLOB),
        ingredient=(BLOB, ""),
        size=("700 ml", BLOB, ENDLESS, 0.0, -700.0),
        unit=("litre",),
        abv_percent=("strong", 430.0, -1.0),
        sugar_g_per_l=("sweet", -3.0, ENDLESS),
        price=("cheap", -2.0, ENDLESS),
        house_made=(7, "yes"),
        hidden=(2, "no"),
        density_g_per_ml=("heavy", -1.0),
        acid_g_per_l=(BLOB, -1.0),
        shape=(BLOB,),
    )
    yield from _of(
        "bottle",
        "id = 1",
        position=("first", 1.5),
        received=("yesterday", "2026-02-30", 20260101, "2026-1-1"),
        made=("2026-13-01",),
        use_by=("soon", BLOB),
        tare_g=("light", -486.0, ENDLESS),
        tare_sigma_g=(None, "unsure", -1.0),
        full_g=("full",),
        dash_ml=("a dash", 0.0),
    )
    yield from _of(
        "ledger",
        "id = 1",
        kind=("received",),
        at=("then", "2026-08-25T", "2026-08-32 10:00:00.000000", 12),
        amount=("all", -700.0, ENDLESS, BLOB),
        note=(BLOB, NO_TEXT),
        bottle_id=("x",),
    )
    yield from _of(
        "ledger",
        "id = (SELECT max(id) FROM ledger WHERE kind = 'count')",
        method=("guess",),
        sigma=("unsure", -5.0),
        reverses=(1,),
    )
    yield from _of(
        "spec",
        "id = 3",
        name=(NO_TEXT, ""),
        method=(BLOB,),
        technique=("shaken not stirred",),
        serves=(0.0, -1.0, "two", ENDLESS),
        tags=('["winter"', '"winter"', "[1, 2]", '{"a": "b"}', NO_TEXT),
        added=("once",),
        unsettled=('[{"text": "60 ml"}]', "7"),
        hidden=("maybe",),
    )
    yield from _of(
        "spec_line",
        "spec_id = 3 AND position = 0",
        text=(BLOB,),
        ingredient=("", BLOB),
        amount=("some", -1.0, ENDLESS),
        amount_high=("more",),
        quantity=("much", -3.0),
        optional=(9,),
        min_abv_percent=(140.0, "strong"),
        alternatives=('"rye-whiskey"', "[true]", "["),
        stated=("[[]]", NO_TEXT),
    )
    yield from _of(
        "trial",
        "id = 1",
        on=("2026-99-01",),
        scores=("", "{}", '[{"taster": "Wren", "scale": "Balance", "value": "good"}]', "[3]"),
        won=("x",),
    )
    drink = {"spec_id": 1, "name": "Upper Berth", "serves": {"tests": 0, "camera": 2}}
    yield from _of(
        "shoot",
        "id = 1",
        on=("soon",),
        starts=("evening", 7),
        state=("done",),
        drinks=(
            "null",
            "[",
            json.dumps([{**drink, "serves": "two"}]),
            json.dumps([{**drink, "chosen": 4}]),
            json.dumps([drink, 7]),
        ),
        ticked=('{"a": 1}', "[1]"),
        log=('{"at": "then", "made": [2], "bottles": []}', '{"made": []}', "[]"),
    )
    yield from _of("setting", "key = 'name'", value=("7", "Tallowby", '["x"]', "null"))
    yield from _of("action", "id = 1", at=("then",), label=(BLOB,), state=("gone",))
