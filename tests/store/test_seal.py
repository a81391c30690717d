"""No row of a bar is another than barkeep wrote without being told of: the seal says which."""

from __future__ import annotations

import json
import shutil
import sqlite3
from contextlib import closing
from datetime import date

import pytest
from sqlalchemy import insert, text

from barkeep.application.bar import Bar
from barkeep.store import schema
from barkeep.store.checking import check_file
from barkeep.store.opening import take_as_it_is
from barkeep.store.refusals import ChangedBar, DamagedBar
from barkeep.store.saving import save_what_can_be
from barkeep.store.seal import seal_anew
from barkeep.store.store import Store
from tests.how_much import EVERYTHING, some_of
from tests.store.conftest import NOON, fill

TABLES = [each for each in schema.METADATA.sorted_tables if each is not schema.seal]


def alter(path, *statements):
    """What another program does to a bar that keeps to the rules of the file."""
    with closing(sqlite3.connect(path)) as file, file:
        for name in ("update", "delete"):
            file.execute(f"DROP TRIGGER IF EXISTS ledger_refuses_{name}")
        for each, *values in statements:
            file.execute(each, values)


@pytest.fixture
def full(tmp_path, _sample_file):
    """A bar with a row in every table, as barkeep wrote it."""
    path = tmp_path / "full.bar"
    shutil.copyfile(_sample_file, path)
    store = Store.open(path, lambda: NOON)
    with store.unit_of_work("Know more") as work:
        scoped = {"closeness": 0.8, "ratio": 1.0, "why": "near enough", "scope": ["shaken"]}
        for table, row in (
            (schema.own_stand_in, {"wanted": "gin", "offered": "vodka", **scoped}),
            (
                schema.own_recipe,
                {"made": "orgeat", "inputs": [["almond", 1.0]], "yields": 1.0, "how": "Soak."},
            ),
            (
                schema.own_ingredient,
                {
                    "key": "rail-bitters",
                    "name": "Rail bitters",
                    "details": {"key": "rail-bitters", "name": "Rail bitters"},
                },
            ),
        ):
            work.connection.execute(insert(table).values(row))
        seal_anew(work.connection)
    store.close()
    assert check_file(path).faults == ()
    return path


def likely(value):
    """Another value that could as well have been written."""
    if isinstance(value, int):
        return 1 - value if value in (0, 1) else value + 1
    if isinstance(value, float):
        return value * (1 + 2**-50)
    try:
        return date.fromisoformat(value[:10]).replace(day=28).isoformat() + value[10:]
    except ValueError:
        pass
    try:
        return json.dumps(json.loads(value)) + " "
    except ValueError:
        return value[:-1] + ("e" if value[-1:] != "e" else "a")


def changed_cells(path):
    """Table, row and SQL for every column that has a value: of its first row another one."""
    with closing(sqlite3.connect(path)) as file:
        for table in TABLES:
            key = [each.name for each in table.primary_key.columns]
            for column in table.columns:
                row = file.execute(
                    f'SELECT "{column.name}", {", ".join(key)} FROM {table.name} '
                    f'WHERE "{column.name}" IS NOT NULL ORDER BY {", ".join(key)} LIMIT 1'
                ).fetchone()
                if row is not None and column.name not in key and likely(row[0]) != row[0]:
                    where = " AND ".join(f"{each} = ?" for each in key)
                    change = f'UPDATE OR IGNORE {table.name} SET "{column.name}" = ? WHERE {where}'
                    yield table.name, row[1:], (change, likely(row[0]), *row[1:])


def test_a_value_that_is_another_likely_one_is_told_by_its_row(full, tmp_path):
    path, tried = tmp_path / "changed.bar", 0
    for table, key, change in some_of(list(changed_cells(full)), 6):
        shutil.copyfile(full, path)
        alter(path, ("PRAGMA ignore_check_constraints = ON",), change)
        if path.read_bytes() == full.read_bytes():
            continue
        tried += 1
        with pytest.raises(DamagedBar) as refused:
            Store.open(path)
        (found, *_others) = refused.value.faults
        assert (found.table, found.row) == (table, ", ".join(map(str, key))), change
        assert str(found) in str(refused.value)
    assert tried >= (70 if EVERYTHING else 10)


@pytest.mark.parametrize(
    ("statement", "told"),
    [
        ("DELETE FROM spec_line WHERE spec_id = 3 AND position = 1", "spec_line: some of its rows"),
        ("DELETE FROM ledger WHERE id = 403", "ledger 403: it is missing"),
        ("UPDATE bottle SET position = 99 - position", "bottle: some of its rows are not as"),
        (
            "INSERT INTO own_stand_in VALUES ('rye-whiskey', 'brandy', 0.9, 1.0, 'mine', '[]')",
            "own_stand_in rye-whiskey, brandy: it is not as barkeep wrote it",
        ),
        ("UPDATE setting SET value = '\"Other\"' WHERE key = 'name'", "setting name: it is not"),
        ("DELETE FROM seal WHERE sealed = 'shoot'", "shoot: some of its rows are not as"),
        ("DELETE FROM seal", ""),
        ("UPDATE seal SET total = total + 1 WHERE sealed = 'trial'", "trial: some of its rows"),
    ],
)
def test_what_another_program_changed_is_told_and_taken_once_that_is_agreed(full, statement, told):
    alter(full, (statement,))
    with pytest.raises(ChangedBar) as refused:
        Store.open(full)
    said = str(refused.value)
    assert f"damage or another program changed it ({told}" in said and "\n" not in said
    (first, *_others) = take_as_it_is(full)
    assert told in str(first)
    assert check_file(full).faults == () == take_as_it_is(full)
    Store.open(full).close()


def test_what_breaks_a_rule_cannot_be_taken(full):
    alter(full, ("UPDATE product SET price = 'cheap' WHERE id = 3",))
    before = full.read_bytes()
    with pytest.raises(DamagedBar, match="“cheap” stands there"):
        take_as_it_is(full)
    assert full.read_bytes() == before


def test_what_is_saved_of_a_changed_bar_names_what_may_be_wrong(full, tmp_path):
    alter(full, ("UPDATE product SET size = 750 WHERE id = 3",))
    saved = save_what_can_be(full, tmp_path / "saved.bar")
    said = "product 3: it is not as barkeep wrote it; what stands there is kept as it is"
    assert list(map(str, saved.lost)) == [said]
    assert check_file(tmp_path / "saved.bar").faults == ()


def test_damage_elsewhere_in_a_table_is_not_sealed_by_the_next_write(store, path):
    first, second = fill(store)
    with store.reading() as connection:
        connection.exec_driver_sql("SELECT 1")
    alter(path, (f"UPDATE bottle SET position = 7 WHERE id = {first}",))
    with store.unit_of_work("Move it") as work:
        work.change("bottle", (second,), position=5)
    assert [str(each) for each in check_file(path).faults] == [
        f"bottle {first}: it is not as barkeep wrote it"
    ]


def test_an_index_that_is_wrong_is_found_before_anything_is_read_by_it(full, knowledge):
    with closing(sqlite3.connect(full)) as file:
        (page,) = file.execute(
            "SELECT rootpage FROM sqlite_master WHERE name = 'action_in_state'"
        ).fetchone()
    content = bytearray(full.read_bytes())
    at = content.index(b"superseded", (page - 1) * 4096, page * 4096)
    content[at : at + 5] = b"duper"
    full.write_bytes(content)
    with pytest.raises(DamagedBar):
        Bar.open(full, knowledge)


def test_every_kind_of_write_brings_the_seal_forward(store, path):
    first, _second = fill(store)
    with store.unit_of_work("Draft") as work:
        work.label = "Another name"
        work.change("bottle", (first,), position=9)
        work.append(first, "pour", 60.0)
        work.put("setting", ("name",), {"value": "Signal box"})
    for way in ("undo", "undo", "redo"):
        store.undo_or_redo(way)
        assert check_file(path).faults == ()
    with store.unit_of_work("Goes another way") as work:
        work.put("setting", ("name",), {"value": "Yard"})
    with store.unit_of_work("Away") as work:
        work.put("setting", ("name",), None)
        work.put("spec", (1,), None)
    assert check_file(path).faults == ()
    with store.reading() as connection:
        assert connection.execute(text("SELECT count(*) FROM seal")).scalar() == len(TABLES)
