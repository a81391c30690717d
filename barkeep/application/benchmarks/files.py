"""How long a bar's file takes to be opened, filled, changed and searched, beside bare SQLite.

Each is set beside the least that SQLite takes for the same rows: reading them
all, adding them in one transaction, looking for a word in the lines. Memory is
what the opened bar holds, beside the size of its file.
"""

from __future__ import annotations

import sqlite3
import tracemalloc
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass, replace
from pathlib import Path
from tempfile import TemporaryDirectory

from barkeep.application.bar import Bar
from barkeep.application.benchmarks.timing import best_ms, one_ms
from barkeep.application.bottle_imports import look_at_bottles
from barkeep.documents.bottles_written import bottles_csv
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import search
from barkeep.domain.pouring.memory import Memory

WORD = "gin"
STRENGTH = "strength:>25"
_BOTTLE_ROWS = ("product", "bottle", "ledger")
_SPEC_ROWS = ("spec", "spec_line")
_ALIKE = "SELECT DISTINCT spec_id FROM spec_line WHERE text LIKE ?"


@dataclass(frozen=True, slots=True)
class FileRow:
    """What is done to a file of so many specs: `ms` of CPU, and how many times bare SQLite's."""

    specs: int
    question: str
    ms: float
    against_bare: float


@dataclass(frozen=True, slots=True)
class Held:
    """What an opened bar of so many specs holds in memory, and how many times its file that is."""

    specs: int
    mb: float
    times_file: float


def file_rows(bar: Snapshot, knowledge: Knowledge) -> Iterator[FileRow | Held]:
    """What takes how long with a file that holds a bar's specs and bottles."""
    with TemporaryDirectory() as folder:
        path = Path(folder) / "invented.bar"
        yield from _filled(path, bar, knowledge)
        yield from _read(path, knowledge)


def _filled(path: Path, bar: Snapshot, knowledge: Knowledge) -> Iterator[FileRow]:
    count = len(bar.specs)
    specs = [replace(each, id=None) for each in bar.specs]
    listed = bottles_csv(bar.bottles, bar.settings.currency)
    with Bar.open(path, knowledge) as opened:
        opened.settings.change(bar.settings)
        added = one_ms(lambda: opened.specs.add(specs))
        yield FileRow(count, "adding the specs", added, added / _bare_insert_ms(path, _SPEC_ROWS))
        if not bar.bottles:
            return

        def import_bottles() -> None:
            rows = look_at_bottles(opened.snapshot, listed).new
            opened.imports.bottles([each.bottle for each in rows if each.bottle is not None])

        took = one_ms(import_bottles)
    bare = _bare_insert_ms(path, _BOTTLE_ROWS)
    yield FileRow(count, "importing the bottles", took, took / bare)


def _read(path: Path, knowledge: Knowledge) -> Iterator[FileRow | Held]:
    bare = best_ms(lambda: _bare_read(path))
    took = best_ms(lambda: Bar.open(path, knowledge).close())
    yield _held(path, knowledge)
    with Bar.open(path, knowledge) as bar:
        count = len(bar.snapshot.specs)
        memory = Memory()

        def row(question: str, ms: float, beside: float) -> FileRow:
            return FileRow(count, question, ms, ms / beside)

        yield row("opening it", took, bare)
        _ = bar.snapshot.all_specs
        notes = replace(bar.snapshot.specs[0], notes="colder")
        yield row("changing a spec", one_ms(lambda: bar.specs.replace(notes)), bare)
        yield row("taking that back", one_ms(bar.undo), bare)
        with closing(sqlite3.connect(path)) as file:
            alike = best_ms(lambda: file.execute(_ALIKE, (f"%{WORD}%",)).fetchall())

        def ask(text: str) -> Callable[[], object]:
            return lambda: search(bar.snapshot, text, memory)

        yield row(f"searching for {WORD}, first", one_ms(ask(WORD)), alike)
        yield row(f"searching for {WORD}, again", best_ms(ask(WORD)), alike)
        yield row(f"searching for {STRENGTH}, first", one_ms(ask(STRENGTH)), alike)
        yield row(f"searching for {STRENGTH}, again", best_ms(ask(STRENGTH)), alike)


def _held(path: Path, knowledge: Knowledge) -> Held:
    tracemalloc.start()
    try:
        before, _peak = tracemalloc.get_traced_memory()
        with Bar.open(path, knowledge) as bar:
            held = tracemalloc.get_traced_memory()[0] - before
            count = len(bar.snapshot.specs)
    finally:
        tracemalloc.stop()
    return Held(count, held / 1e6, held / path.stat().st_size)


def _tables(file: sqlite3.Connection) -> list[str]:
    return [row[0] for row in file.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]


def _bare_read(path: Path) -> None:
    with closing(sqlite3.connect(path)) as file:
        for table in _tables(file):
            file.execute(f"SELECT * FROM {table}").fetchall()


def _bare_insert_ms(path: Path, tables: tuple[str, ...]) -> float:
    """What the rows of some tables, and of what undo keeps, take to be added in one transaction."""
    wanted = (*tables, "action", "action_image")
    with (
        closing(sqlite3.connect(path)) as full,
        closing(sqlite3.connect(path.with_name("bare.db"))) as empty,
    ):
        made = "SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY type = 'table' DESC"
        for (statement,) in full.execute(made):
            empty.execute(statement)
        rows = {table: full.execute(f"SELECT * FROM {table}").fetchall() for table in wanted}

        def insert() -> None:
            with empty:
                for table, some in rows.items():
                    marks = ", ".join("?" * len(some[0])) if some else ""
                    empty.executemany(f"INSERT INTO {table} VALUES ({marks})", some)

        took = one_ms(insert)
    path.with_name("bare.db").unlink()
    return took
