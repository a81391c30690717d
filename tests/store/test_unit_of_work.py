"""All or nothing, also when the process is killed."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy.exc import IntegrityError

from barkeep.errors import UnreadableFile
from barkeep.store.backup import copy_bar, copy_beside
from barkeep.store.bottles import read_bottles
from barkeep.store.specs import read_specs
from barkeep.store.store import Store
from tests.engines import on_both
from tests.store.conftest import contents, fill, rows

REPOSITORY = Path(__file__).resolve().parents[2]


def dump(path):
    with closing(sqlite3.connect(path)) as file:
        return contents(file)


@on_both
def test_an_exception_leaves_nothing(store):
    ids = fill(store)
    before = rows(store)
    with pytest.raises(ZeroDivisionError), store.unit_of_work("Half") as work:
        work.append(ids[0], "pour", 60.0)
        work.change("bottle", (ids[1],), position=9)
        work.put("setting", ("name",), {"key": "name", "value": "Signal box"})
        work.put("bottle", (ids[0],), None)
        raise ZeroDivisionError
    assert rows(store) == before
    assert store.next_action("undo").label == "Fill"


@on_both
def test_a_refused_row_leaves_nothing(store):
    fill(store)
    before = rows(store)
    with store.reading() as connection:
        (spec,) = read_specs(connection)
    with pytest.raises(IntegrityError), store.unit_of_work("Twice") as work:
        work.put("setting", ("name",), {"key": "name", "value": "Signal box"})
        work.insert("spec", [spec])
    assert rows(store) == before


@on_both
def test_a_unit_without_a_change_is_no_action(store):
    ids = fill(store)
    before = rows(store)
    with store.unit_of_work("Nothing") as work:
        work.change("bottle", (ids[0],), position=0)
    assert not work.touched.changes
    assert rows(store) == before


@on_both
def test_touched_names_what_was_written(store):
    ids = fill(store)
    with store.unit_of_work("Two") as work:
        work.append(ids[1], "open")
        work.put("setting", ("name",), {"key": "name", "value": "Signal box"})
    assert work.touched.changes == {"bottles", "settings"}
    assert work.touched.bottle_ids == {ids[1]}


CHILD = """
import os, signal, sys
from barkeep.store.store import Store
store = Store.open(sys.argv[1])
with store.unit_of_work("Killed") as work:
    for _ in range(2000):
        work.append(1, "pour", 0.01)
    work.put("bottle", (2,), None)
    # Force changed pages into the file, so that a journal must undo them.
    work.connection.exec_driver_sql("PRAGMA cache_size = 1")
    for _ in range(2000):
        work.append(1, "pour", 0.01)
    print("written", flush=True)
    os.kill(os.getpid(), signal.SIGKILL)
"""


def test_a_killed_process_leaves_nothing_of_its_change(store, path):
    fill(store)
    store.close()
    before = dump(path)
    env = {**os.environ, "PYTHONPATH": str(REPOSITORY)}
    command = [sys.executable, "-c", CHILD, str(path)]
    child = subprocess.run(command, env=env, capture_output=True, text=True, check=False)
    assert child.stdout == "written\n", child.stderr
    assert child.returncode == -signal.SIGKILL
    assert path.with_name(path.name + "-journal").exists()
    again = Store.open(path)
    with again.reading() as connection:
        assert [each.level.amount for each in read_bottles(connection)] == [700.0, 700.0]
    again.close()
    assert dump(path) == before
    assert [each.name for each in path.parent.iterdir()] == [path.name]


def test_a_copy_is_taken_while_the_bar_is_open(store, path):
    fill(store)
    copy = copy_beside(path, "copy")
    assert copy.name == "signal-box.bar.copy"
    assert dump(copy) == dump(path)
    before = dump(copy)
    with store.unit_of_work("Open") as work:
        work.append(1, "open")
    second = copy_beside(path, "copy")
    assert second.name == "signal-box.bar.copy-2"
    assert (dump(copy), dump(second)) == (before, dump(path)) and before != dump(path)


def test_a_copy_of_what_was_copied_already_is_not_taken_twice(store, path):
    fill(store)
    assert copy_beside(path, "copy") == copy_beside(path, "copy")
    names = sorted(each.name for each in path.parent.iterdir())
    assert names == ["signal-box.bar", "signal-box.bar.copy"]


def test_a_bar_that_has_just_gone_is_refused_as_a_copy_is_begun(tmp_path):
    with pytest.raises(UnreadableFile, match="it cannot be opened"):
        copy_bar(tmp_path / "gone.bar", tmp_path / "copy")
    assert list(tmp_path.iterdir()) == []


def test_a_copy_that_fails_leaves_no_part(path, tmp_path):
    path.write_bytes(b"SQLite format 3\x00" + os.urandom(4080))
    with pytest.raises(Exception, match="cannot be used"):
        copy_bar(path, tmp_path / "copy")
    assert [each.name for each in tmp_path.iterdir()] == [path.name]
