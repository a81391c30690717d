"""A file is written over once the last written to it is kept; no two copies take one name."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing

import pytest

from barkeep.store import backup
from barkeep.store.backup import copy_into, filled_into, write_over


def filled(path, *words):
    with closing(sqlite3.connect(path)) as file, file:
        file.execute("CREATE TABLE said (word TEXT)")
        file.executemany("INSERT INTO said VALUES (?)", [(each,) for each in words])
    return path


def said(path):
    with closing(sqlite3.connect(path)) as file:
        return [word for (word,) in file.execute("SELECT word FROM said ORDER BY rowid")]


def write(path, word):
    with closing(sqlite3.connect(path)) as file, file:
        file.execute("INSERT INTO said VALUES (?)", (word,))


def names(folder):
    return sorted(each.name for each in folder.iterdir())


@pytest.mark.parametrize("times", [0, 1, 3])
def test_it_is_kept_anew_as_often_as_another_wrote_to_it_since(tmp_path, times):
    bar, other = filled(tmp_path / "bar", "old"), filled(tmp_path / "other", "new")
    copies = []

    def keep():
        copies.append(shutil.copyfile(bar, tmp_path / f"kept {len(copies)}"))
        if len(copies) <= times:
            write(bar, f"word {len(copies)}")
        return copies[-1]

    kept = write_over(bar, other, keep)
    assert said(bar) == said(other) == ["new"]
    assert said(kept) == ["old", *(f"word {each + 1}" for each in range(times))]
    assert kept == copies[-1] and len(copies) == times + 1
    assert names(tmp_path) == sorted(["bar", "other", *(each.name for each in copies)])


def test_where_it_cannot_be_kept_it_stays_and_can_be_written(tmp_path):
    bar, other = filled(tmp_path / "bar", "old"), filled(tmp_path / "other", "new")

    def keep():
        raise RuntimeError("no room")

    with pytest.raises(RuntimeError, match="no room"):
        write_over(bar, other, keep)
    write(bar, "more")
    assert said(bar) == ["old", "more"] and names(tmp_path) == ["bar", "other"]


@pytest.mark.parametrize("links", [True, False])
def test_two_copies_that_are_made_at_once_have_two_names(tmp_path, monkeypatch, links):
    """Also on a disk that knows no links."""
    old, folder = filled(tmp_path / "bar", "old"), tmp_path / "kept"
    if not links:
        monkeypatch.setattr(backup.os, "link", no_links)

    def fill(path):
        filled(path, "slow")
        assert copy_into(old, folder, "copy {}".format) == folder / "copy 1"

    assert filled_into(folder, "copy {}".format, fill) == folder / "copy 2"
    assert said(folder / "copy 1") == ["old"] and said(folder / "copy 2") == ["slow"]
    assert names(folder) == ["copy 1", "copy 2"]


def no_links(_source, target):
    raise PermissionError(1, "Operation not permitted", str(target))
