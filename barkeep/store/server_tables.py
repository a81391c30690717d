"""A bar's tables on a PostgreSQL server: begun, upgraded, told apart from other tables.

What SQLite keeps in the header of its file lies in a table of one row here, with the number of
changes so far. All of it is done within the caller's transaction, which holds the bar's lock.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from sqlalchemy import BigInteger, Column, Connection, Integer, MetaData, Table, Text, func, select
from sqlalchemy.schema import CreateSchema

from barkeep.store.connection import APPLICATION_ID, FileHeader
from barkeep.store.faults import Fault
from barkeep.store.migrations import STEPS, Step, schema_number
from barkeep.store.schema import METADATA
from barkeep.translation import tr_noop

_HEADER = Table(
    "about_this_bar",
    MetaData(),
    Column("application_id", BigInteger, nullable=False),
    Column("schema_number", Integer, nullable=False),
    Column("changes", BigInteger, nullable=False),
)
"""One row: whose the tables are, their schema, and how often they were written to."""

_LEDGER_IS_ONLY_ADDED_TO = (
    "CREATE FUNCTION ledger_refuses() RETURNS trigger LANGUAGE plpgsql AS "
    "$$BEGIN RAISE EXCEPTION 'ledger rows are only ever added'; END$$",
    "CREATE TRIGGER ledger_refuses BEFORE UPDATE OR DELETE ON ledger "
    "FOR EACH ROW EXECUTE FUNCTION ledger_refuses()",
)


_MAY_INSERT = func.has_table_privilege(_HEADER.name, "UPDATE")


@dataclass(frozen=True, slots=True)
class Found:
    """What is in a schema: whether it is there, its tables' columns, and the bar's header.

    The header is None where there is no table at all; `is_foreign` where there are others.
    """

    is_there: bool
    may_be_read: bool
    may_be_written: bool
    columns: Mapping[str, frozenset[str]]
    header: FileHeader | None
    is_foreign: bool


def look(connection: Connection, schema: str) -> Found:
    """What is in the schema of that name now."""
    row = connection.exec_driver_sql(
        "SELECT has_schema_privilege(oid, 'USAGE'), pg_is_in_recovery()"
        " OR current_setting('transaction_read_only') = 'on'"
        " FROM pg_namespace WHERE nspname = %s",
        (schema,),
    ).first()
    may_be_read, takes_nothing = row or (False, False)
    columns = _columns(connection, schema) if may_be_read else {}
    header, may_be_written = None, False
    is_foreign = bool(columns) and columns.get(_HEADER.name) != frozenset(_HEADER.columns.keys())
    if columns and not is_foreign:
        found = connection.execute(select(_HEADER, _MAY_INSERT)).first()
        is_foreign = found is None or found[0] != APPLICATION_ID
        header = FileHeader(*found[:2]) if found else FileHeader(0, 0)
        may_be_written = bool(found and found[-1]) and not takes_nothing
    elif is_foreign:
        header = FileHeader(0, 0)
    return Found(
        is_there=row is not None,
        may_be_read=may_be_read,
        may_be_written=may_be_written,
        columns=columns,
        header=header,
        is_foreign=is_foreign,
    )


def _columns(connection: Connection, schema: str) -> Mapping[str, frozenset[str]]:
    rows = connection.exec_driver_sql(
        "SELECT c.relname, array_agg(a.attname::text) FROM pg_class c"
        " JOIN pg_namespace n ON n.oid = c.relnamespace"
        " LEFT JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped"
        " WHERE n.nspname = %s AND c.relkind IN ('r', 'p', 'v', 'm', 'f') GROUP BY c.relname",
        (schema,),
    )
    return {table: frozenset(some) for table, some in rows}


def missing(found: Found) -> Iterator[Fault]:
    """The tables and columns of the newest schema that are not there."""
    for table in METADATA.sorted_tables:
        there = found.columns.get(table.name)
        if there is None:
            yield Fault(table.name, "", "", tr_noop("this table is missing"))
            continue
        for column in table.columns:
            if column.name not in there:
                yield Fault(table.name, "", column.name, tr_noop("this column is missing"))


def begin(connection: Connection, schema: str | None, steps: Sequence[Step] = STEPS) -> None:
    """Write the tables of the newest schema; `schema` is made too where it is named."""
    if schema is not None:
        connection.execute(CreateSchema(schema))
    _as_kept_here().create_all(connection, checkfirst=False)
    for each in _LEDGER_IS_ONLY_ADDED_TO:
        connection.exec_driver_sql(each)
    _HEADER.create(connection)
    first = {"application_id": APPLICATION_ID, "schema_number": schema_number(steps), "changes": 0}
    connection.execute(_HEADER.insert().values(first))


def upgrade(connection: Connection, found: int, steps: Sequence[Step] = STEPS) -> None:
    """Run the steps that the tables, which have the schema `found`, have not seen."""
    for step in steps[found - 1 :]:
        step(connection)
    connection.execute(_HEADER.update().values(schema_number=schema_number(steps)))


def changes_so_far(connection: Connection) -> int:
    """How often the bar was written to."""
    return int(connection.execute(select(_HEADER.c.changes)).scalar_one())


def count_this_change(connection: Connection) -> tuple[int, int]:
    """Count one more change; which schema the tables have by now, and the change's own number.

    By that the server can be asked what became of it.
    """
    more = _HEADER.update().values(changes=_HEADER.c.changes + 1)
    found = connection.execute(more.returning(_HEADER.c.schema_number, func.txid_current())).one()
    return int(found[0]), int(found[1])


def empty(connection: Connection) -> None:
    """Take all rows away, those of the ledger too; for who puts a whole bar in their place."""
    connection.exec_driver_sql("ALTER TABLE ledger DISABLE TRIGGER USER")
    for table in reversed(METADATA.sorted_tables):
        connection.execute(table.delete())
    connection.exec_driver_sql("ALTER TABLE ledger ENABLE TRIGGER USER")


def number_on(connection: Connection) -> None:
    """Let the next rows be numbered after those that were written with their numbers."""
    for table in METADATA.sorted_tables:
        (key, *more) = table.primary_key.columns
        if key.name == "id" and not more:
            of = func.pg_get_serial_sequence(table.name, key.name)
            last = select(func.coalesce(func.max(key), 0) + 1).scalar_subquery()
            connection.execute(select(func.setval(of, last, False)))


def _as_kept_here() -> MetaData:
    """The tables as PostgreSQL shall keep them.

    Texts are in the order of their letters' numbers, as SQLite and Python have it, whatever
    the server's language; whole numbers are as large as SQLite's.
    """
    metadata = MetaData()
    for table in METADATA.sorted_tables:
        table.to_metadata(metadata)
    for table in metadata.sorted_tables:
        for column in table.columns:
            if isinstance(column.type, Text):
                column.type = Text(collation="C")
            elif column.foreign_keys or isinstance(column.type, Integer):
                column.type = BigInteger()
    return metadata
