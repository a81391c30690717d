"""From schema to schema: a temporary step proves what a later one may rely on."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from sqlalchemy import Column, Integer, MetaData, Text, inspect

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.errors import NewerBar, UnreadableFile
from barkeep.store import migrations
from barkeep.store.bottles import read_bottles, read_products
from barkeep.store.connection import APPLICATION_ID, make_engine, read_header
from barkeep.store.schema import METADATA
from barkeep.store.shoots import read_shoots
from barkeep.store.specs import read_specs, read_trials
from barkeep.store.store import Store
from tests.store.conftest import contents, fill

SCHEMA_1 = Path(__file__).with_name("schema_1.sql")
"""The tables as schema 1 had them when it was first released; never to be changed."""
ROWS_1 = Path(__file__).with_name("schema_1_rows.sql")
"""A bar as schema 1 kept it: bottles, a ledger, specs, and what undo remembers."""
NOW = migrations.schema_number()
NEXT = NOW + 1


def add_shelf(connection):
    connection.exec_driver_sql("ALTER TABLE bottle ADD COLUMN shelf TEXT DEFAULT '' NOT NULL")


def rebuild_product(connection):
    """What must be done to change a constraint; with foreign keys on it would fail or lose rows."""
    old = connection.exec_driver_sql("SELECT sql FROM sqlite_master WHERE name = 'product'")
    new = old.scalar_one().replace("CREATE TABLE product", "CREATE TABLE product_new")
    connection.exec_driver_sql(new)
    connection.exec_driver_sql("INSERT INTO product_new SELECT * FROM product")
    connection.exec_driver_sql("DROP TABLE product")
    connection.exec_driver_sql("ALTER TABLE product_new RENAME TO product")


def break_off(connection):
    connection.exec_driver_sql("CREATE TABLE half (a)")
    connection.exec_driver_sql("UPDATE bottle SET position = 77")
    raise ZeroDivisionError


def lose_products(connection):
    connection.exec_driver_sql("DELETE FROM product")


@pytest.fixture
def filled(store, path):
    fill(store)
    store.close()
    return path


def dump(path):
    with closing(sqlite3.connect(path)) as file:
        return contents(file)


def upgrade(path, *steps):
    engine = make_engine(path)
    try:
        later = (*migrations.STEPS, *steps)
        migrations.upgrade(engine, path, read_header(path).schema, later)
    finally:
        engine.dispose()


def shape(path, metadata=None):
    """Every table's columns, keys, checks, indexes and triggers, whatever their order or text."""
    engine = make_engine(path)
    if metadata is not None:
        with engine.begin() as connection:
            metadata.create_all(connection)
    look = inspect(engine)
    tables = {}
    for table in look.get_table_names():
        columns = {
            each["name"]: (str(each["type"]), each["nullable"], each["primary_key"])
            for each in look.get_columns(table)
        }
        foreign = {
            (tuple(each["constrained_columns"]), each["referred_table"])
            for each in look.get_foreign_keys(table)
        }
        checks = {each["sqltext"] for each in look.get_check_constraints(table)}
        indexes = {
            (each["name"], tuple(each["column_names"]), bool(each["unique"]))
            for each in look.get_indexes(table)
        }
        tables[table] = (columns, foreign, checks, indexes)
    with engine.connect() as connection:
        rows = connection.exec_driver_sql("SELECT sql FROM sqlite_master WHERE type = 'trigger'")
        triggers = {row[0] for row in rows}
    engine.dispose()
    return tables, triggers


def test_a_step_is_run_and_stamped_with_a_copy_of_before(filled):
    before = dump(filled)
    upgrade(filled, add_shelf)
    header = read_header(filled)
    assert (header.schema, header.application_id) == (NEXT, APPLICATION_ID)
    copy = filled.with_name(f"signal-box.bar.before-schema-{NEXT}")
    assert dump(copy) == before and read_header(copy).schema == NOW


def test_an_upgraded_bar_equals_a_fresh_one(filled, tmp_path):
    upgrade(filled, add_shelf)
    newer = MetaData()
    for table in METADATA.sorted_tables:
        table.to_metadata(newer)
    newer.tables["bottle"].append_column(Column("shelf", Text, nullable=False, server_default=""))
    fresh = tmp_path / "fresh.bar"
    tables, _ = shape(fresh, newer)
    assert shape(filled)[0] == tables
    newer.tables["product"].append_column(Column("other", Integer))
    assert shape(filled)[0] != shape(tmp_path / "other.bar", newer)[0]


def test_each_step_has_its_own_copy_and_only_new_ones_run(filled):
    upgrade(filled, add_shelf)
    upgrade(filled, break_off, rebuild_product)
    names = {each.name for each in filled.parent.iterdir()}
    copies = {f"signal-box.bar.before-schema-{number}" for number in (NEXT, NEXT + 1)}
    assert names == {"signal-box.bar", *copies}
    assert read_header(filled).schema == NEXT + 1


def test_a_step_that_fails_leaves_the_bar_as_it_was(filled):
    before = filled.read_bytes()
    with pytest.raises(ZeroDivisionError):
        upgrade(filled, break_off)
    assert filled.read_bytes() == before
    Store.open(filled).close()


def test_a_failing_second_step_keeps_the_first(filled):
    with pytest.raises(ZeroDivisionError):
        upgrade(filled, add_shelf, break_off)
    assert read_header(filled).schema == NEXT


def test_a_step_that_loses_references_is_taken_back(filled):
    before = dump(filled)
    with pytest.raises(UnreadableFile, match="would lose 2 references"):
        upgrade(filled, lose_products)
    assert dump(filled) == before


def test_a_table_is_rebuilt_without_losing_what_refers_to_it(filled):
    with closing(sqlite3.connect(filled)) as file:
        before = file.execute("SELECT count(*) FROM bottle JOIN product").fetchone()
    upgrade(filled, rebuild_product)
    with closing(sqlite3.connect(filled)) as file:
        assert file.execute("SELECT count(*) FROM bottle JOIN product").fetchone() == before
        assert file.execute("PRAGMA foreign_key_check").fetchall() == []


def test_foreign_keys_are_on_again_after_a_step(filled):
    engine = make_engine(filled)
    migrations.upgrade(engine, filled, NOW, (*migrations.STEPS, add_shelf))
    with engine.connect() as connection:
        assert connection.exec_driver_sql("PRAGMA foreign_keys").scalar_one() == 1
    engine.dispose()


def test_a_copy_of_before_is_never_written_over(filled):
    taken = filled.with_name(f"signal-box.bar.before-schema-{NEXT}")
    taken.write_text("mine", encoding="utf-8")
    upgrade(filled, add_shelf)
    assert taken.read_text(encoding="utf-8") == "mine"
    second = filled.with_name(f"signal-box.bar.before-schema-{NEXT}-2")
    assert read_header(second).schema == NOW


def test_a_newer_schema_is_refused_before_any_step(filled):
    with closing(sqlite3.connect(filled)) as file:
        file.execute(f"PRAGMA user_version = {NEXT + 1}")
    before = filled.read_bytes()
    with pytest.raises(NewerBar):
        upgrade(filled, add_shelf)
    assert filled.read_bytes() == before


@pytest.fixture
def old(tmp_path):
    """A bar of schema 1 with something of everything in it."""
    path = tmp_path / "old.bar"
    with closing(sqlite3.connect(path)) as file:
        file.executescript(SCHEMA_1.read_text(encoding="utf-8"))
        file.executescript(ROWS_1.read_text(encoding="utf-8"))
        file.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        file.execute("PRAGMA user_version = 1")
    return path


def test_the_first_schema_still_becomes_the_newest(old, tmp_path):
    fresh = tmp_path / "fresh.bar"
    Store.open(old).close()
    Store.open(fresh).close()
    assert shape(old) == shape(fresh)
    assert read_header(old).schema == read_header(fresh).schema == migrations.schema_number()


def rows_of(path):
    """Table -> its rows, each by column."""
    with closing(sqlite3.connect(path)) as file:
        file.row_factory = sqlite3.Row
        tables = [
            row[0] for row in file.execute("SELECT name FROM sqlite_master WHERE type='table'")
        ]
        return {
            name: [dict(row) for row in file.execute(f"SELECT * FROM {name}")] for name in tables
        }


def test_an_upgraded_bar_keeps_every_row(old):
    before = rows_of(old)
    Store.open(old).close()
    after = rows_of(old)
    assert before.keys() <= after.keys()
    for table, rows in before.items():
        assert len(after[table]) == len(rows) > 0, table
        for was, now in zip(rows, after[table], strict=True):
            for column in was.keys() - {"before", "after"}:
                assert now[column] == was[column], (table, column)
            added = now.keys() - was.keys()
            assert all(now[column] is None for column in added if column in MEASURED), table
    assert rows_of(old.with_name("old.bar.before-schema-2")) == before


MEASURED = (
    *("shape", "density_g_per_ml", "acid_g_per_l"),
    *("tare_g", "tare_sigma_g", "full_g", "dash_ml"),
)


def test_an_upgraded_bar_reads_as_it_did(old):
    store = Store.open(old)
    with store.reading() as connection:
        gin, syrup = read_bottles(connection)
    store.close()
    assert (gin.product.title, gin.product.price) == ("Hollow Lamp London dry gin", 26.0)
    assert (gin.level.amount, gin.level.method, gin.level.sigma) == (355.0, "tenths", 35.0)
    assert (gin.tare, gin.dash_ml, gin.product.shape) == (None, None, None)
    assert syrup.product.house_made and syrup.level.amount == 500.0


def test_what_was_done_before_an_upgrade_can_still_be_undone_and_redone(old):
    """What undo remembers has the new columns too, or it would equal nothing in the file."""
    labels = ("Pour 45 ml", "Remove rum", "Change product gin", "Add product rum")
    store = Store.open(old)
    assert [store.undo_or_redo("undo")[0].label for _ in labels] == list(labels)
    with store.reading() as connection:
        _syrup, gin = read_bottles(connection)  # the label's change moved it to the front
        assert (gin.product.price, gin.level.amount) == (24.5, 400.0)
        assert len(read_products(connection)) == 2
    assert [store.undo_or_redo("redo")[0].label for _ in labels] == list(reversed(labels))
    with store.reading() as connection:
        gin, _syrup = read_bottles(connection)
        assert (gin.product.price, gin.level.amount) == (26.0, 355.0)
    store.close()


def test_an_upgrade_that_breaks_off_leaves_schema_1(old, monkeypatch):
    before = old.read_bytes()
    monkeypatch.setattr(migrations, "_widen_images", lambda *_given: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        Store.open(old)
    assert old.read_bytes() == before and read_header(old).schema == 1


SPEC_1 = {
    "id": 1,
    "name": "Snow Plough",
    "folded_name": "snow plough",
    "method": "Shake.",
    "technique": "shaken",
    "glass": "coupe",
    "ice": "cubed",
    "notes": "",
    "riff_of": None,
    "added": "2026-11-01",
    "hidden": False,
    "lines": [
        {
            "text": "60 ml gin",
            "ingredient": "gin",
            "amount": 60.0,
            "amount_high": None,
            "unit": "ml",
            "quantity": 60.0,
            "optional": False,
            "garnish": False,
            "note": "",
            "min_abv_percent": None,
        }
    ],
}
"""What undo remembered of the spec of `ROWS_1` before schema 3."""


@pytest.fixture(params=[1, 2])
def before_trials(old, request):
    """A bar of schema 1 or 2 in which a spec was changed last."""
    before = {**SPEC_1, "method": "Stir."}
    with closing(sqlite3.connect(old)) as file, file:
        file.execute("INSERT INTO action VALUES (6, '2026-11-21', 'Change spec', 'done')")
        file.execute(
            "INSERT INTO action_image VALUES (6, 0, 'spec', '[1]', ?, ?)",
            (json.dumps(before), json.dumps(SPEC_1)),
        )
    if request.param == 2:
        engine = make_engine(old)
        migrations.upgrade(engine, old, 1, migrations.STEPS[:1])
        engine.dispose()
    assert read_header(old).schema == request.param
    return old


def test_a_spec_from_before_trials_serves_one_and_says_no_more(before_trials):
    store = Store.open(before_trials)
    with store.reading() as connection:
        (spec,) = read_specs(connection)
        assert read_trials(connection) == ()
    store.close()
    assert (spec.name, spec.serves, spec.tags) == ("Snow Plough", 1.0, ())
    assert (spec.credit, spec.source, spec.lines[0].alternatives) == ("", "", ())
    assert read_header(before_trials).schema == migrations.schema_number()
    assert shape(before_trials) == shape(before_trials.with_name("fresh.bar"), METADATA)


def test_a_spec_changed_before_trials_can_be_changed_back(before_trials):
    store = Store.open(before_trials)
    for way, method in (("undo", "Stir."), ("redo", "Shake."), ("undo", "Stir.")):
        assert store.undo_or_redo(way)[0].label == "Change spec"
        with store.reading() as connection:
            (spec,) = read_specs(connection)
        assert (spec.method, spec.serves, spec.lines[0].quantity) == (method, 1.0, 60.0)
    store.close()


@pytest.fixture
def before_shoots(before_trials):
    """A bar of schema 3 in which a spec was changed last."""
    engine = make_engine(before_trials)
    found = read_header(before_trials).schema
    migrations.upgrade(engine, before_trials, found, migrations.STEPS[:2])
    engine.dispose()
    assert read_header(before_trials).schema == 3
    return before_trials


def test_a_bar_from_before_shoots_gets_them_and_loses_nothing(before_shoots):
    before = {line for line in dump(before_shoots).splitlines() if line.startswith("INSERT")}
    engine = make_engine(before_shoots)
    migrations.upgrade(engine, before_shoots, 3, migrations.STEPS[:3])
    engine.dispose()
    after = {line for line in dump(before_shoots).splitlines() if line.startswith("INSERT")}
    assert after == before
    Store.open(before_shoots).close()
    assert shape(before_shoots) == shape(before_shoots.with_name("fresh.bar"), METADATA)
    copy = before_shoots.with_name("old.bar.before-schema-4")
    assert read_header(copy).schema == 3


def test_a_spec_changed_before_shoots_can_be_changed_back_after_them(before_shoots):
    store = Store.open(before_shoots)
    shoot = Shoot(None, "Night train", date(2026, 11, 21), (ShootDrink(1, "Snow Plough"),))
    with store.unit_of_work("Add shoot") as work:
        work.insert("shoot", [shoot])
    labels = ("Add shoot", "Change spec")
    assert [store.undo_or_redo("undo")[0].label for _ in labels] == list(labels)
    with store.reading() as connection:
        assert read_shoots(connection) == ()
        assert read_specs(connection)[0].method == "Stir."
    assert [store.undo_or_redo("redo")[0].label for _ in labels] == list(reversed(labels))
    with store.reading() as connection:
        (found,) = read_shoots(connection)
        assert (found.theme, found.names) == ("Night train", ("Snow Plough",))
        assert read_specs(connection)[0].method == "Shake."
    store.close()


def test_a_line_from_before_its_words_has_none_and_undo_knows_of_it(before_shoots):
    store = Store.open(before_shoots)
    with store.reading() as connection:
        (line,) = read_specs(connection)[0].lines
    assert (line.text, line.called, line.stated) == ("60 ml gin", "", ())
    for way, method in (("undo", "Stir."), ("redo", "Shake.")):
        assert store.undo_or_redo(way)[0].label == "Change spec"
        with store.reading() as connection:
            (spec,) = read_specs(connection)
        assert (spec.method, spec.lines) == (method, (line,))
    store.close()


def test_what_a_line_calls_its_ingredient_and_asks_of_it_is_kept(before_shoots):
    store = Store.open(before_shoots)
    with store.reading() as connection:
        (spec,) = read_specs(connection)
    (line,) = spec.lines
    asked = replace(line, called="Hollow Lamp dry gin", stated=("8 year", "smoked"))
    with store.unit_of_work("Change spec") as work:
        work.put("spec", (1,), replace(spec, lines=(asked,)))
    for way, expected in (("undo", line), ("redo", asked)):
        store.undo_or_redo(way)
        with store.reading() as connection:
            assert read_specs(connection)[0].lines == (expected,)
    store.close()


@pytest.mark.parametrize(
    "row",
    [
        "INSERT INTO shoot VALUES (1, 'A', '2026-11-21', NULL, 'cut', '[]', '', '[]', NULL, 0)",
        "INSERT INTO own_recipe VALUES ('grenadine', '[]', 0, 'Stir.')",
    ],
)
def test_the_upgraded_tables_refuse_what_makes_no_sense(before_shoots, row):
    Store.open(before_shoots).close()
    with closing(sqlite3.connect(before_shoots)) as file, pytest.raises(sqlite3.IntegrityError):
        file.execute(row)
