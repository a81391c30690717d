"""All that a bar keeps, table by table, and a new bar filled with it.

Left out is what undo remembers, and what is worked out from the rest. A row
has the names of its columns; what is hidden is *removed*.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, insert, select

from barkeep.domain.phrases import folded
from barkeep.store import schema
from barkeep.store.knowledge import (
    ingredient_row,
    read_own_ingredients,
    read_settings,
    setting_rows,
)
from barkeep.store.rows import Row
from barkeep.store.seal import seal_anew
from barkeep.store.unit_of_work import UnitOfWork

_TABLES = {
    "products": schema.product,
    "bottles": schema.bottle,
    "paid": schema.paid,
    "ledger": schema.ledger,
    "specs": schema.spec,
    "trials": schema.trial,
    "shoots": schema.shoot,
    "own_stand_ins": schema.own_stand_in,
    "own_recipes": schema.own_recipe,
}
"""The parts that are kept as they lie, in the order that references need."""

_WORKED_OUT = ("folded_title", "folded_name", "action_id")


def read_everything(connection: Connection) -> dict[str, Any]:
    """Every part of the bar by its name, hidden rows among them, in the order of the ids."""
    parts: dict[str, Any] = {name: _rows(connection, table) for name, table in _TABLES.items()}
    lines: dict[int, list[Row]] = {}
    for line in _every(connection, schema.spec_line):
        lines.setdefault(line.pop("spec_id"), []).append(line)
        del line["position"]
    for spec in parts["specs"]:
        spec["lines"] = lines.get(spec["id"], [])
    own = read_own_ingredients(connection)
    parts["own_ingredients"] = [ingredient_row(each)["details"] for each in own]
    rows = setting_rows(read_settings(connection))
    parts["settings"] = {row["key"]: row["value"] for row in rows}
    parts["changed"] = _last_change(connection)
    return parts


def fill_with(work: UnitOfWork, parts: Mapping[str, Any]) -> None:
    """Write every part into a bar that holds nothing, within one action.

    The action is named and dated as the last change, and undo does not go behind it.
    """
    connection = work.connection
    action_id = _write_action(work, parts)
    for name, table in _TABLES.items():
        rows = [_row(name, each, action_id) for each in parts[name]]
        for row in rows:  # one by one: a reversal refers to an entry before it
            connection.execute(insert(table).values(row))
    lines = [
        {**line, "spec_id": spec["id"], "position": position}
        for spec in parts["specs"]
        for position, line in enumerate(spec["lines"])
    ]
    if lines:
        connection.execute(insert(schema.spec_line), lines)
    for each in parts["own_ingredients"]:
        row = {"key": each["key"], "name": each["name"], "details": each}
        connection.execute(insert(schema.own_ingredient).values(row))
    for key, value in parts["settings"].items():
        connection.execute(insert(schema.setting).values(key=key, value=value))
    seal_anew(connection)


def _write_action(work: UnitOfWork, parts: Mapping[str, Any]) -> int:
    """The number of the one action; of a bar in which nothing has happened there is none."""
    if parts["changed"] is None and not parts["ledger"]:
        return 0
    done = {"at": work.at, "label": work.label, "state": "superseded"} | (parts["changed"] or {})
    identity = work.connection.execute(insert(schema.action).values(done)).inserted_primary_key
    assert identity is not None
    return int(identity[0])


def _rows(connection: Connection, table: Any) -> list[Row]:
    found = _every(connection, table)
    for row in found:
        for name in _WORKED_OUT:
            row.pop(name, None)
        if "hidden" in row:
            row["removed"] = row.pop("hidden")
    return found


def _every(connection: Connection, table: Any) -> list[Row]:
    ordered = select(table).order_by(*table.primary_key.columns)
    return [dict(row) for row in connection.execute(ordered).mappings()]


def _last_change(connection: Connection) -> Row | None:
    action = schema.action
    newest = select(action.c.at, action.c.label).where(action.c.state != "undone")
    row = connection.execute(newest.order_by(action.c.id.desc()).limit(1)).mappings().first()
    return None if row is None else dict(row)


def _row(part: str, given: Row, action_id: int) -> Row:
    row = {name: value for name, value in given.items() if name != "lines"}
    if "removed" in row:
        row["hidden"] = row.pop("removed")
    if part == "products":
        row["folded_title"] = folded(f"{row['maker']} {row['name']}".strip())
    elif part == "specs":
        row["folded_name"] = folded(row["name"])
    elif part == "ledger":
        row["action_id"] = action_id
    return row
