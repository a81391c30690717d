"""The tables of one bar, as SQLAlchemy Core metadata.

Nothing that the user made is deleted: products, bottles, what was paid, specs, trials and
shoots are hidden.
Ledger rows are only ever added, which SQLite's triggers below hold to, and those in
`server_tables`. Types and constraints are those PostgreSQL has too.
"""

from __future__ import annotations

from typing import Any, get_args

from sqlalchemy import (
    DDL,
    JSON,
    BigInteger,
    Boolean,
    CheckConstraint,
    Column,
    Date,
    DateTime,
    Float,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    event,
)
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.schema import CreateIndex
from sqlalchemy.sql.compiler import DDLCompiler

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import ShootState
from barkeep.domain.bottles.bottle import CountMethod, EntryKind
from barkeep.domain.ingredients.relations import Technique

METADATA = MetaData()


def _one_of(column: str, choices: object) -> CheckConstraint:
    words = ", ".join(f"'{word}'" for word in get_args(choices))
    return CheckConstraint(f"{column} IN ({words})")


product = Table(
    "product",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("name", Text, nullable=False),
    Column("maker", Text, nullable=False),
    Column("folded_title", Text, nullable=False),
    Column("ingredient", Text, nullable=False),
    Column("size", Float, nullable=False),
    Column("unit", Text, nullable=False),
    Column("abv_percent", Float),
    Column("sugar_g_per_l", Float),
    Column("price", Float),
    Column("barcode", Text, nullable=False),
    Column("house_made", Boolean, nullable=False),
    Column("hidden", Boolean, nullable=False),
    Column("shape", Text),
    Column("density_g_per_ml", Float),
    Column("acid_g_per_l", Float),
    CheckConstraint("size > 0"),
    CheckConstraint("abv_percent BETWEEN 0 AND 100"),
    CheckConstraint("price >= 0"),
    _one_of("unit", Unit),
)


bottle = Table(
    "bottle",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("product_id", ForeignKey("product.id"), nullable=False),
    Column("position", Integer, nullable=False),
    Column("received", Date),
    Column("made", Date),
    Column("use_by", Date),
    Column("hidden", Boolean, nullable=False),
    Column("tare_g", Float),
    Column("tare_sigma_g", Float),
    Column("full_g", Float),
    Column("dash_ml", Float),
    Index("bottle_of_product", "product_id"),
)


paid = Table(
    "paid",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("product_id", ForeignKey("product.id"), nullable=False),
    Column("day", Date, nullable=False),
    Column("amount", Float, nullable=False),
    Column("size", Float),
    Column("shop", Text, nullable=False),
    Column("hidden", Boolean, nullable=False),
    CheckConstraint("amount >= 0"),
    CheckConstraint("size > 0"),
    Index("paid_for_product", "product_id"),
)


action = Table(
    "action",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("at", DateTime, nullable=False),
    Column("label", Text, nullable=False),
    Column("state", Text, nullable=False),
    CheckConstraint("state IN ('done', 'undone', 'superseded')"),
    Index("action_in_state", "state", "id"),
)


action_image = Table(
    "action_image",
    METADATA,
    Column("action_id", ForeignKey("action.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    Column("record", Text, nullable=False),
    Column("key", JSON, nullable=False),
    Column("before", JSON(none_as_null=True)),
    Column("after", JSON(none_as_null=True)),
    sqlite_with_rowid=False,
)


ledger = Table(
    "ledger",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("bottle_id", ForeignKey("bottle.id"), nullable=False),
    Column("action_id", ForeignKey("action.id"), nullable=False),
    Column("kind", Text, nullable=False),
    Column("at", DateTime, nullable=False),
    Column("amount", Float, nullable=False),
    Column("method", Text),
    Column("sigma", Float),
    Column("note", Text, nullable=False),
    Column("reverses", ForeignKey("ledger.id")),
    _one_of("kind", EntryKind),
    _one_of("method", CountMethod),
    CheckConstraint("(kind = 'reverse') = (reverses IS NOT NULL)"),
    Index("ledger_of_bottle", "bottle_id"),
    Index("ledger_of_action", "action_id"),
    Index("ledger_reverses", "reverses"),
)


spec = Table(
    "spec",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("name", Text, nullable=False),
    Column("folded_name", Text, nullable=False),
    Column("method", Text, nullable=False),
    Column("technique", Text, nullable=False),
    Column("glass", Text, nullable=False),
    Column("ice", Text, nullable=False),
    Column("notes", Text, nullable=False),
    Column("riff_of", Text),
    Column("added", Date),
    Column("hidden", Boolean, nullable=False),
    Column("serves", Float, nullable=False, server_default="1"),
    Column("tags", JSON(none_as_null=True)),
    Column("credit", Text, nullable=False, server_default=""),
    Column("source", Text, nullable=False, server_default=""),
    Column("unsettled", JSON(none_as_null=True)),
    _one_of("technique", Technique),
)


spec_line = Table(
    "spec_line",
    METADATA,
    Column("spec_id", ForeignKey("spec.id"), primary_key=True),
    Column("position", Integer, primary_key=True),
    Column("text", Text, nullable=False),
    Column("ingredient", Text, nullable=False),
    Column("amount", Float),
    Column("amount_high", Float),
    Column("unit", Text),
    Column("quantity", Float),
    Column("optional", Boolean, nullable=False),
    Column("garnish", Boolean, nullable=False),
    Column("note", Text, nullable=False),
    Column("min_abv_percent", Float),
    Column("alternatives", JSON(none_as_null=True)),
    Column("called", Text, nullable=False, server_default=""),
    Column("stated", JSON(none_as_null=True)),
    sqlite_with_rowid=False,
)


trial = Table(
    "trial",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("spec_id", ForeignKey("spec.id"), nullable=False),
    Column("on", Date, nullable=False),
    Column("changed", Text, nullable=False),
    Column("notes", Text, nullable=False),
    Column("scores", JSON, nullable=False),
    Column("won", Boolean, nullable=False),
    Column("hidden", Boolean, nullable=False),
    Index("trial_of_spec", "spec_id"),
)


shoot = Table(
    "shoot",
    METADATA,
    Column("id", Integer, primary_key=True),
    Column("theme", Text, nullable=False),
    Column("on", Date, nullable=False),
    Column("starts", Text),
    Column("state", Text, nullable=False),
    Column("drinks", JSON, nullable=False),
    Column("notes", Text, nullable=False),
    Column("ticked", JSON, nullable=False),
    Column("log", JSON(none_as_null=True)),
    Column("hidden", Boolean, nullable=False),
    _one_of("state", ShootState),
    Index("shoot_on", "on"),
)


own_recipe = Table(
    "own_recipe",
    METADATA,
    Column("made", Text, primary_key=True),
    Column("inputs", JSON, nullable=False),
    Column("yields", Float, nullable=False),
    Column("how", Text, nullable=False),
    CheckConstraint("yields > 0"),
)


own_ingredient = Table(
    "own_ingredient",
    METADATA,
    Column("key", Text, primary_key=True),
    Column("name", Text, nullable=False),
    Column("details", JSON, nullable=False),
)


own_stand_in = Table(
    "own_stand_in",
    METADATA,
    Column("wanted", Text, primary_key=True),
    Column("offered", Text, primary_key=True),
    Column("closeness", Float, nullable=False),
    Column("ratio", Float, nullable=False),
    Column("why", Text, nullable=False),
    Column("scope", JSON, nullable=False),
    CheckConstraint("closeness > 0 AND closeness <= 1"),
    CheckConstraint("ratio > 0"),
    CheckConstraint("wanted <> offered"),
)


setting = Table(
    "setting",
    METADATA,
    Column("key", Text, primary_key=True),
    Column("value", JSON, nullable=False),
)


seal = Table(
    "seal",
    METADATA,
    Column("sealed", Text, primary_key=True),
    Column("total", BigInteger, nullable=False),
    Column("weighed", BigInteger, nullable=False),
)


Index(
    "one_product_of_a_title_and_size",
    product.c.folded_title,
    product.c.size,
    product.c.unit,
    unique=True,
    sqlite_where=~product.c.hidden,
)
Index(
    "one_spec_of_a_name",
    spec.c.folded_name,
    unique=True,
    sqlite_where=~spec.c.hidden,
)


@compiles(CreateIndex, "postgresql")
def index_of_the_same_rows(create: CreateIndex, compiler: DDLCompiler, **how: Any) -> str:
    """Let PostgreSQL's index leave out what SQLite's does.

    Said beside `sqlite_where` it would load that whole dialect at every start.
    """
    said = create.element.dialect_options
    said["postgresql"]["where"] = said["sqlite"]["where"]
    return str(compiler.visit_create_index(create, **how))  # type: ignore[no-untyped-call]


for _change in ("UPDATE", "DELETE"):
    event.listen(
        ledger,
        "after_create",
        DDL(  # type: ignore[no-untyped-call]
            f"CREATE TRIGGER ledger_refuses_{_change.lower()} BEFORE {_change} ON ledger "
            "BEGIN SELECT RAISE(ABORT, 'ledger rows are only ever added'); END"
        ).execute_if(dialect="sqlite"),
    )
