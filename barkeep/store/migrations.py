"""From an older schema to this one, a numbered step at a time.

Each step runs in one transaction, which begins with a copy of the file as
`<name>.before-schema-<n>` beside it. A step that fails or is killed leaves the
file as it was before that step.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Boolean,
    CheckConstraint,
    Column,
    Connection,
    Date,
    Engine,
    Float,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    inspect,
    select,
    update,
)
from sqlalchemy import column as lying_column
from sqlalchemy import table as lying_table
from sqlalchemy.exc import OperationalError

from barkeep.errors import NewerBar, UnreadableFile
from barkeep.store.backup import copy_beside
from barkeep.store.connection import APPLICATION_ID, FileHeader, header_of, raw
from barkeep.store.refusals import DamagedBar
from barkeep.store.schema import METADATA, seal
from barkeep.store.seal import seal_anew

Step = Callable[[Connection], None]


def _measured_bottles(connection: Connection) -> None:
    """Shapes, densities, tares and dashers; what undo remembers gets them too, all unknown."""
    new = {
        "product": {"shape": "TEXT", "density_g_per_ml": "FLOAT", "acid_g_per_l": "FLOAT"},
        "bottle": dict.fromkeys(("tare_g", "tare_sigma_g", "full_g", "dash_ml"), "FLOAT"),
    }
    for table, columns in new.items():
        for column, kind in columns.items():
            connection.exec_driver_sql(f"ALTER TABLE {table} ADD COLUMN {column} {kind}")
        _widen_images(connection, table, dict.fromkeys(columns, None))


def _described_specs_and_trials(connection: Connection) -> None:
    """What a spec serves, its tags and whose it is; what else a line would take; trials."""
    columns = {
        "serves": "FLOAT DEFAULT 1 NOT NULL",
        "tags": "JSON",
        "credit": "TEXT DEFAULT '' NOT NULL",
        "source": "TEXT DEFAULT '' NOT NULL",
    }
    for column, kind in columns.items():
        connection.exec_driver_sql(f"ALTER TABLE spec ADD COLUMN {column} {kind}")
    connection.exec_driver_sql("ALTER TABLE spec_line ADD COLUMN alternatives JSON")
    connection.exec_driver_sql(
        """
        CREATE TABLE trial (
            id INTEGER NOT NULL,
            spec_id INTEGER NOT NULL,
            "on" DATE NOT NULL,
            changed TEXT NOT NULL,
            notes TEXT NOT NULL,
            scores JSON NOT NULL,
            won BOOLEAN NOT NULL,
            hidden BOOLEAN NOT NULL,
            PRIMARY KEY (id),
            FOREIGN KEY(spec_id) REFERENCES spec (id)
        )
        """
    )
    connection.exec_driver_sql("CREATE INDEX trial_of_spec ON trial (spec_id)")
    described = {"serves": 1.0, "tags": None, "credit": "", "source": ""}
    _widen_images(connection, "spec", described, {"alternatives": None})


def _shoots_and_own_recipes(connection: Connection) -> None:
    """Shoots with their logs, and what the owner makes in a way of their own."""
    connection.exec_driver_sql(
        """
        CREATE TABLE shoot (
            id INTEGER NOT NULL,
            theme TEXT NOT NULL,
            "on" DATE NOT NULL,
            starts TEXT,
            state TEXT NOT NULL,
            drinks JSON NOT NULL,
            notes TEXT NOT NULL,
            ticked JSON NOT NULL,
            log JSON,
            hidden BOOLEAN NOT NULL,
            PRIMARY KEY (id),
            CHECK (state IN ('idea', 'planned', 'filmed', 'logged'))
        )
        """
    )
    connection.exec_driver_sql('CREATE INDEX shoot_on ON shoot ("on")')
    connection.exec_driver_sql(
        """
        CREATE TABLE own_recipe (
            made TEXT NOT NULL,
            inputs JSON NOT NULL,
            yields FLOAT NOT NULL,
            how TEXT NOT NULL,
            PRIMARY KEY (made),
            CHECK (yields > 0)
        )
        """
    )


def _words_of_lines(connection: Connection) -> None:
    """What a line's writer called its ingredient, and what it asks of the bottle.

    Of lines that are there already both stay empty: their texts say them.
    """
    called = "ALTER TABLE spec_line ADD COLUMN called TEXT DEFAULT '' NOT NULL"
    connection.exec_driver_sql(called)
    connection.exec_driver_sql("ALTER TABLE spec_line ADD COLUMN stated JSON")
    _widen_images(connection, "spec", {}, {"called": "", "stated": None})


def _unsettled_lines(connection: Connection) -> None:
    """The lines of specs that are kept though they are not understood; so far there are none."""
    connection.exec_driver_sql("ALTER TABLE spec ADD COLUMN unsettled JSON")
    _widen_images(connection, "spec", {"unsettled": None})


def _sealed(connection: Connection) -> None:
    """The seal, of what stands in the bar now; every step from this one on is sealed."""
    connection.exec_driver_sql(
        """
        CREATE TABLE seal (
            sealed TEXT NOT NULL,
            total BIGINT NOT NULL,
            weighed BIGINT NOT NULL,
            PRIMARY KEY (sealed)
        )
        """
    )


def _what_was_paid(connection: Connection) -> None:
    """The owner's history of prices, empty: a price that is known says nothing of when or where."""
    server = "postgresql"
    number = Integer().with_variant(BigInteger(), server)
    words = Text().with_variant(Text(collation="C"), server)
    tables = MetaData()
    Table("product", tables, Column("id", number, primary_key=True))
    paid = Table(
        "paid",
        tables,
        Column("id", number, primary_key=True),
        Column("product_id", number, ForeignKey("product.id"), nullable=False),
        Column("day", Date, nullable=False),
        Column("amount", Float, nullable=False),
        Column("size", Float),
        Column("shop", words, nullable=False),
        Column("hidden", Boolean, nullable=False),
        CheckConstraint("amount >= 0"),
        CheckConstraint("size > 0"),
        Index("paid_for_product", "product_id"),
    )
    paid.create(connection)


def _widen_images(
    connection: Connection,
    record: str,
    added: Mapping[str, object],
    added_to_lines: Mapping[str, object] | None = None,
) -> None:
    """Give the records that undo remembers the columns that the table has now.

    Without them a remembered record equals none in the file, and undo would
    take it for changed in another way.
    """
    images = select(*_IMAGES.columns).where(_IMAGES.c.record == record)
    for row in connection.execute(images).all():
        wider = {
            name: _wider(getattr(row, name), added, added_to_lines or {})
            for name in ("before", "after")
        }
        its = (_IMAGES.c.action_id == row.action_id, _IMAGES.c.position == row.position)
        connection.execute(update(_IMAGES).where(*its).values(wider))


_IMAGES = lying_table(
    "action_image",
    *map(lying_column, ("action_id", "position", "record")),
    *(lying_column(name, JSON(none_as_null=True)) for name in ("before", "after")),
)
"""What undo remembers, as it has lain since the first schema."""


def _wider(
    image: Mapping[str, Any] | None,
    added: Mapping[str, object],
    added_to_lines: Mapping[str, object],
) -> Mapping[str, object] | None:
    if image is None:
        return None
    row = {**image, **added}
    if added_to_lines:
        row["lines"] = [{**line, **added_to_lines} for line in row["lines"]]
    return row


STEPS: tuple[Step, ...] = (
    _measured_bottles,
    _described_specs_and_trials,
    _shoots_and_own_recipes,
    _words_of_lines,
    _unsettled_lines,
    _sealed,
    _what_was_paid,
)
"""The first step makes schema 2 out of schema 1, and so on. A released step never changes."""


def schema_number(steps: Sequence[Step] = STEPS) -> int:
    """The schema that the steps lead to."""
    return 1 + len(steps)


def create(connection: Connection, steps: Sequence[Step] = STEPS) -> None:
    """Write the newest schema into an empty file, within the caller's transaction."""
    METADATA.create_all(connection, checkfirst=False)
    seal_anew(connection)
    connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
    _stamp(connection, schema_number(steps))


def refuse_unknown(
    bar: Path | str, found: FileHeader | None, steps: Sequence[Step] = STEPS
) -> None:
    """Raise for what no step can begin at.

    `UnreadableFile` for the file of another program and for a schema that
    never was, `NewerBar` for a schema beyond the last step.
    """
    if found is None or found.application_id != APPLICATION_ID:
        raise UnreadableFile(str(bar), "it is the database of another program")
    known = schema_number(steps)
    if found.schema > known:
        raise NewerBar(str(bar), found.schema, known)
    if found.schema < 1:
        reason = f"it names the schema {found.schema}, which there never was"
        raise UnreadableFile(str(bar), reason)


def upgrade(engine: Engine, path: Path, found: int, steps: Sequence[Step] = STEPS) -> None:
    """Run the steps that the file has not seen; `found` is the schema it has.

    Another program may run them at the same time: each step is left out where
    the other has done it. Raises `NewerBar`, and `UnreadableFile` where a step
    breaks a reference between rows.
    """
    refuse_unknown(path, FileHeader(APPLICATION_ID, found), steps)
    while found < schema_number(steps):
        found = _run_next(engine, path, found, steps)


def _run_next(engine: Engine, path: Path, expected: int, steps: Sequence[Step]) -> int:
    """Run the step after `expected`, unless the file is past it; the schema it has then."""
    with engine.connect().execution_options(writing=True) as connection:
        # Inside a transaction this would do nothing, and rebuilding a table
        # with foreign keys on deletes the rows that refer to it.
        raw(connection).execute("PRAGMA foreign_keys = OFF")
        try:
            with connection.begin():
                # Only now can no other program change it any more.
                header = header_of(raw(connection))
                refuse_unknown(path, header, steps)
                assert header is not None
                if header.schema != expected:
                    return header.schema
                _run(connection, path, expected + 1, steps[expected - 1])
                return expected + 1
        finally:
            raw(connection).execute("PRAGMA foreign_keys = ON")


def _run(connection: Connection, path: Path, number: int, step: Step) -> None:
    copy_beside(path, f"before-schema-{number}")
    try:
        step(connection)
    except (OperationalError, ValueError, TypeError, LookupError) as error:
        if (
            getattr(getattr(error, "orig", None), "sqlite_errorname", "SQLITE_ERROR")
            != "SQLITE_ERROR"
        ):
            raise  # of the disk, not of what stands in the file
        reason = f"its tables are not those of schema {number - 1}, which it names"
        raise DamagedBar(str(path), f"it is damaged ({reason})") from error
    broken = connection.exec_driver_sql("PRAGMA foreign_key_check").fetchall()
    if broken:
        reason = f"the upgrade to schema {number} would lose {len(broken)} references"
        raise UnreadableFile(str(path), reason)
    if inspect(connection).has_table(seal.name):
        seal_anew(connection)
    _stamp(connection, number)


def _stamp(connection: Connection, number: int) -> None:
    connection.exec_driver_sql(f"PRAGMA user_version = {number}")
