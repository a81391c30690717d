"""What stands wrongly in a bar is found and named, refused as a whole, and saved but for itself."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing

import pytest

from barkeep.application.bar import Bar
from barkeep.store.checking import check_file
from barkeep.store.migrations import schema_number
from barkeep.store.refusals import CannotWrite, DamagedBar
from barkeep.store.saving import save_what_can_be
from barkeep.store.specs import read_trials
from barkeep.store.store import Store
from tests.how_much import some_of
from tests.store import damages

TABLES = sorted({each.table for each in damages.every()})


def of(table):
    return [each for each in damages.every() if each.table == table]


@pytest.fixture
def copies(_sample_file, tmp_path):
    """A fresh copy of the sample bar each time one is asked for."""
    path = tmp_path / "copy.bar"

    def copy():
        shutil.copyfile(_sample_file, path)
        return path

    return copy


def test_there_are_more_than_a_hundred():
    assert len(damages.every()) == len(set(map(str, damages.every()))) > 100


@pytest.mark.parametrize("table", TABLES)
def test_it_is_found_and_named_and_the_bar_is_left_alone(copies, knowledge, table):
    for damage in of(table):
        path = copies()
        damage.do(path)
        before = path.read_bytes()
        with pytest.raises(DamagedBar) as error:
            Bar.open(path, knowledge)
        found = error.value.faults
        assert (found[0].table, damage.column in {each.column for each in found}) == (table, True)
        assert len(found) <= 2, damage
        assert str(found[0]) in str(error.value) and "\n" not in str(error.value)
        assert check_file(path).faults == found
        assert path.read_bytes() == before


@pytest.mark.parametrize("table", TABLES)
def test_all_else_is_saved(copies, table, tmp_path):
    whole = save_what_can_be(copies(), tmp_path / "whole.bar").counts
    for number, damage in enumerate(some_of(list(of(table)), 3)):
        path, target = copies(), tmp_path / f"{number}.bar"
        damage.do(path)
        saved = save_what_can_be(path, target)
        assert saved.lost and saved.lost[0].fault.table == table, damage
        assert check_file(target).faults == ()
        rows_lost = sum(whole.values()) - sum(saved.counts.values())
        assert rows_lost <= len(saved.lost), (damage, list(map(str, saved.lost)))
        Store.open(target).close()


def test_a_sound_bar_is_saved_whole_but_for_its_undo(copies, tmp_path):
    path, target = copies(), tmp_path / "new.bar"
    saved = save_what_can_be(path, target)
    assert saved.lost == []
    with closing(sqlite3.connect(path)) as old, closing(sqlite3.connect(target)) as new:
        for table in saved.counts:
            select = f"SELECT * FROM {table}"
            if table == "action":
                select = "SELECT id, at, label FROM action"
            assert old.execute(select).fetchall() == new.execute(select).fetchall()
        assert new.execute("SELECT count(*) FROM action_image").fetchone() == (0,)


def test_what_is_saved_takes_the_place_of_no_file(copies, tmp_path):
    with pytest.raises(CannotWrite, match="there is a file of that name already"):
        save_what_can_be(copies(), tmp_path / "copy.bar")


def test_rows_on_both_sides_of_a_destroyed_page_are_saved(copies, tmp_path):
    path, target = copies(), tmp_path / "new.bar"
    with closing(sqlite3.connect(path)) as file:
        leaf = "SELECT pageno FROM dbstat WHERE name = 'ledger' AND pagetype = 'leaf' ORDER BY path"
        try:
            pages = [row[0] for row in file.execute(leaf)]
        except sqlite3.OperationalError:
            pages = []
    content = bytearray(path.read_bytes())
    if not pages:  # this SQLite does not tell: the pages that hold the ledger's words
        pages = [at // 4096 + 1 for at in range(0, len(content), 4096) if _is_ledger(content, at)]
    start = (pages[len(pages) // 2] - 1) * 4096
    content[start : start + 4096] = b"\xff" * 4096
    path.write_bytes(content)
    with pytest.raises(DamagedBar):
        Store.open(path)
    saved = save_what_can_be(path, target)
    assert 250 < saved.counts["ledger"] < 403
    assert any("the file is damaged" in str(each) for each in saved.lost)
    assert check_file(target).faults == ()
    assert saved.counts["bottle"] == 81


def _is_ledger(content, at):
    page = content[at : at + 4096]
    return page[:1] == b"\x0d" and (page.count(b"receive2026") + page.count(b"count2026")) > 5


def test_a_file_that_names_a_schema_it_has_not_is_damaged(copies):
    path = copies()
    with closing(sqlite3.connect(path)) as file:
        file.execute("PRAGMA user_version = 3")
    with pytest.raises(DamagedBar, match="its tables are not those of schema 3, which it names"):
        Store.open(path)
    with closing(sqlite3.connect(path)) as file:
        file.execute(f"PRAGMA user_version = {schema_number()}")
        file.execute("DROP TABLE trial")
    with pytest.raises(DamagedBar, match=r"damaged \(trial: this table is missing\)"):
        Store.open(path)


def test_damage_that_comes_while_a_bar_is_open_is_named_too(copies):
    path = copies()
    store = Store.open(path)
    with closing(sqlite3.connect(path)) as file, file:
        file.execute("UPDATE trial SET scores = '[3]' WHERE id = 1")
    with pytest.raises(DamagedBar, match="trial 1, scores"), store.reading() as connection:
        read_trials(connection)
    store.close()
