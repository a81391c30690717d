"""All rows of a bar from one place into another, whatever keeps each of the two."""

from __future__ import annotations

from sqlalchemy import Connection, select

from barkeep.store.rows import in_columns, insert_many
from barkeep.store.schema import METADATA


def copy_rows(source: Connection, target: Connection) -> None:
    """Write every row of one bar, with what undo remembers, into tables that are empty."""
    for table in METADATA.sorted_tables:
        ordered = select(table).order_by(*table.primary_key.columns)
        rows = [dict(row) for row in source.execute(ordered).mappings()]
        insert_many(target, table, in_columns(rows))
