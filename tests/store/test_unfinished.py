"""What is left of copies that were broken off is cleared away by the next one, and nothing else."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest

from barkeep.store.backup import copy_bar
from barkeep.store.unfinished import unfinished_in

BREAK_OFF = """
import os, sys
from pathlib import Path
from barkeep.store.unfinished import unfinished_in
with unfinished_in(Path(sys.argv[1])) as partial:
    partial.write_bytes(b"half of it")
    os._exit(9)
"""


def names(folder):
    return sorted(each.name for each in folder.iterdir())


def test_what_a_stopped_program_left_is_cleared_by_the_next_copy(store, path):
    command = [sys.executable, "-c", BREAK_OFF, str(path.parent)]
    assert subprocess.run(command, check=False).returncode == 9
    (left,) = [each for each in names(path.parent) if each != path.name]
    assert left.startswith(".barkeep-")
    copy_bar(path, path.with_name("copy.bar"))
    assert names(path.parent) == ["copy.bar", path.name]


@pytest.mark.parametrize("name", [".barkeep-film.part", "copy.bar.part", "copy.bar.77.part"])
def test_what_only_looks_like_one_stays(store, path, name):
    mine = path.with_name(name)
    mine.write_bytes(b"mine")
    os.utime(mine, (0, 0))
    copy_bar(path, path.with_name("copy.bar"))
    assert mine.read_bytes() == b"mine"


def test_those_that_may_still_be_made_stay(tmp_path):
    elsewhere = tmp_path / ".barkeep-00000000-1-abcd.part"
    elsewhere.mkdir()
    with unfinished_in(tmp_path) as first, unfinished_in(tmp_path) as second:
        assert first.parent.is_dir() and second.parent.is_dir() and elsewhere.is_dir()
    assert names(tmp_path) == [elsewhere.name]
    os.utime(elsewhere, (0, 0))
    with unfinished_in(tmp_path):
        assert not elsewhere.exists()
