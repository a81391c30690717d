"""All rows of a bar from one place into another, whatever keeps each of the two."""

from __future__ import annotations

from sqlalchemy import Connection, select

from barkeep.store.rows import in_columns, insert_many
from barkeep.store.schema import METADATA, seal
from barkeep.store.seal import seal_anew


def copy_rows(source: Connection, target: Connection) -> None:
    """Write every row of one bar, with what undo remembers, into tables that are empty.

    The seal is of how one place keeps its rows, and is made anew.
    """
    for table in METADATA.sorted_tables:
        if table is seal:
            continue
        ordered = select(table).order_by(*table.primary_key.columns)
        rows = [dict(row) for row in source.execute(ordered).mappings()]
        insert_many(target, table, in_columns(rows))
    seal_anew(target)
