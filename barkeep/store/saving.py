"""What can still be read of a damaged bar, put into a new one; what could not is named.

A row goes over with all that is sound in it. Where a cell that may be empty is
not sound the row goes over without it; where any other is not, and where a row
refers to one that is lost, it is left out. What could be undone does not go
over: the new bar begins with what was saved.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from sqlalchemy import Table

from barkeep.domain.phrases import folded
from barkeep.errors import UnreadableFile
from barkeep.store import schema
from barkeep.store.backup import refuse_taken_name, told_of
from barkeep.store.checking import known_header, opened_to_look
from barkeep.store.connection import raw
from barkeep.store.faults import Fault
from barkeep.store.history import begin_here
from barkeep.store.seal import faults, seal_anew
from barkeep.store.soundness import ReadRow, rows_of
from barkeep.store.store import Store
from barkeep.store.unfinished import unfinished_in
from barkeep.translation import tr, tr_noop

Cells = dict[str, Any]

_EMPTY: Mapping[str, Any] = {
    **dict.fromkeys(("maker", "barcode", "note", "notes", "method", "glass", "ice"), ""),
    **dict.fromkeys(("credit", "source", "changed", "label", "how", "called", "shop"), ""),
    **dict.fromkeys(("hidden", "house_made", "optional", "garnish", "won", "position"), 0),
    "ticked": "[]",
    "technique": "unknown",
    "serves": 1,
}
"""What a column that cannot be NULL holds where nothing was said."""

_LONG_AGO = "1970-01-01 00:00:00.000000"
"""When an action was done of which nobody can tell."""

_UNIQUE = {"product": ("folded_title", "size", "unit"), "spec": ("folded_name",)}
"""What no two rows that are shown have in common."""


@dataclass(frozen=True, slots=True)
class Lost:
    """What was wrong with a cell, a row or a place, and in words what became of it."""

    fault: Fault
    became: str

    def __str__(self) -> str:
        return f"{self.fault}; {self.became}"


@dataclass(slots=True)
class Salvage:
    """What of a bar can be saved, by table and key, and what cannot."""

    rows: dict[str, dict[tuple[Any, ...], Cells]] = field(default_factory=dict)
    lost: list[Lost] = field(default_factory=list)

    @property
    def counts(self) -> Mapping[str, int]:
        """How many rows of each table can be saved."""
        return {name: len(rows) for name, rows in self.rows.items()}


def what_can_be_saved(path: Path) -> Salvage:
    """Read all that can be read of a bar of any schema, sound or not; its file is not changed.

    Raises `NoBarThere`, `UnreadableFile` for what is no bar, `NewerBar` or `BarIsBusy`.
    """
    known_header(path)
    found = Salvage()
    with opened_to_look(path) as file:
        for table in schema.METADATA.sorted_tables:
            if table in (schema.action_image, schema.seal):
                continue
            found.rows[table.name] = {}
            for row in rows_of(file, table):
                if isinstance(row, Fault):
                    found.lost.append(Lost(row, tr("what stood there is lost")))
                else:
                    found.lost.extend(_take(found, table, row))
        told = {each.fault.table for each in found.lost}
        for fault in faults(file):
            if fault.table in found.rows.keys() - told:
                found.lost.append(Lost(fault, tr("what stands there is kept as it is")))
    return found


def save_what_can_be(path: Path, target: Path) -> Salvage:
    """Write a new bar with all that can be read of one; what was saved, and what was not.

    The target appears whole or not at all. Raises what `what_can_be_saved`
    does, and `CannotWrite` where the target exists or its folder cannot take it.
    """
    refuse_taken_name(target, path)
    found = what_can_be_saved(path)
    if not any(found.rows.values()):
        raise UnreadableFile(str(path), tr("nothing of it can be read"))
    with told_of(target), unfinished_in(target.parent) as partial:
        _write(partial, found)
        partial.replace(os.path.realpath(target))
    return found


def _write(path: Path, found: Salvage) -> None:
    store = Store.open(path)
    try:
        with store.unit_of_work("Save what can be read") as work:
            file = raw(work.connection)
            for name, rows in found.rows.items():
                for cells in rows.values():
                    columns = ", ".join(f'"{each}"' for each in cells)
                    places = ", ".join("?" * len(cells))
                    file.execute(
                        f'INSERT INTO "{name}" ({columns}) VALUES ({places})', tuple(cells.values())
                    )
            seal_anew(work.connection)
            begin_here(work)
    finally:
        store.close()


def _take(found: Salvage, table: Table, row: ReadRow) -> Iterator[Lost]:
    """Take a row as far as it is sound; what was lost of it."""
    cells, lost = dict(row.cells), []
    for fault in row.faults:
        column = table.c[fault.column]
        if column.name == "action_id":
            continue  # told below, where one is put in its place
        if column.name.startswith("folded_"):
            became = tr("it was worked out anew")
        elif column.name == "name" and table.name in _UNIQUE and not column.primary_key:
            cells["name"] = f"Unreadable name {row.key[0]}"
            became = tr("it is called “{name}” now", name=cells["name"])
        elif (table.name, column.name) in (("action", "at"), ("action", "state")):
            cells[column.name] = _LONG_AGO if column.name == "at" else "superseded"
            became = tr("when it was is not known")
        elif column.primary_key or (column.foreign_keys and column.name != "reverses"):
            yield Lost(fault, _left_out(table))
            return
        elif column.nullable and column.name != "reverses":
            cells[column.name] = None
            became = tr("that cell is left empty")
        elif column.name in _EMPTY:
            cells[column.name] = _EMPTY[column.name]
            became = tr("it is kept as if nothing had been said there")
        else:
            yield Lost(fault, _left_out(table))
            return
        lost.append(Lost(fault, became))
    if table is schema.bottle and None in (cells.get("tare_g"), cells.get("tare_sigma_g")):
        cells |= {name: None for name in ("tare_g", "tare_sigma_g") if name in cells}
    missing = _refers_to_lost(found, table, cells)
    if missing:
        said = Fault(table.name, _key(row), missing, tr_noop("what it belongs to cannot be read"))
        yield Lost(said, _left_out(table))
        return
    yield from lost
    yield from _made_unique(found, table, row, cells)
    found.rows[table.name][row.key] = cells


def _refers_to_lost(found: Salvage, table: Table, cells: Cells) -> str:
    """The column that refers to a row which is not saved, empty where none does.

    An action of which nothing can be read is made up, since levels hang on its entries.
    """
    for column in table.columns:
        for reference in column.foreign_keys:
            other, wanted = reference.column.table.name, cells.get(column.name)
            if wanted is None or (wanted,) in found.rows[other]:
                continue
            if other == "action" and isinstance(wanted, int):
                found.rows[other][(wanted,)] = {
                    "id": wanted,
                    "at": cells["at"],
                    "label": "",
                    "state": "superseded",
                }
                continue
            return column.name
    return ""


def _made_unique(found: Salvage, table: Table, row: ReadRow, cells: Cells) -> Iterator[Lost]:
    """Work the folded names out, and hide what has the same as another that is shown."""
    if table is schema.product:
        cells["folded_title"] = folded(f"{cells['maker']} {cells['name']}".strip())
    if table is schema.spec:
        cells["folded_name"] = folded(cells["name"])
    columns = _UNIQUE.get(table.name)
    if columns is None or cells["hidden"]:
        return
    same = [cells[each] for each in columns]
    if any(
        not other["hidden"] and [other[each] for each in columns] == same
        for other in found.rows[table.name].values()
    ):
        cells["hidden"] = 1
        said = Fault(table.name, _key(row), "", tr_noop("another one has the same name"))
        yield Lost(said, tr("this one is kept, but hidden"))


def _key(row: ReadRow) -> str:
    return ", ".join(str(each) for each in row.key)


def _left_out(table: Table) -> str:
    if table is schema.ledger:
        return tr("the entry is left out, so count that bottle again")
    return tr("the row is left out")
