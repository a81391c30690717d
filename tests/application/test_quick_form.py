"""The quick form of the shipped knowledge: equal to what was read, and never trusted blindly."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from random import Random

import pytest

from barkeep.application import quick_form, sample, sample_copy
from barkeep.application.knowledge import KnowledgeForm, _form_of, read_shipped, shipped
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.shipped_data import packed, unpacked

ASKS = "from barkeep.application.knowledge import shipped as s; print(len(s().tree))"


@pytest.fixture
def file(tmp_path):
    return tmp_path / "cache" / "knowledge"


def never():
    raise AssertionError("it was read anew")


def kept(file, read=never):
    return quick_form.kept(Knowledge, file, read)


@pytest.fixture
def written(file):
    """A form that is there."""
    assert kept(file, shipped) == shipped()
    return file


def test_the_tree_of_a_form_is_the_one_that_was_read(tmp_path):
    """What was worked out of it is kept beside it, so it must be what would be worked out."""
    read = read_shipped()
    form = quick_form.kept(KnowledgeForm, tmp_path / "form", lambda: _form_of(read))
    again = quick_form.kept(KnowledgeForm, tmp_path / "form", never)
    assert form.knowledge == again.knowledge == read
    tree = again.knowledge.tree
    assert tree.by_name == read.tree.by_name
    assert tree.by_name == FamilyTree(tree.ingredients).by_name
    assert all(tree.ancestors(key) == read.tree.ancestors(key) for key in read.tree)
    assert [*tree] == [*read.tree], "and in the same order"


def test_what_is_kept_equals_what_is_read(written):
    found, read = kept(written), read_shipped()
    assert found == read
    assert [*found.tree] == [*read.tree], "and in the same order"
    assert found.graph.stand_ins == read.graph.stand_ins
    assert [type(each) for each in found.classics] == [type(each) for each in read.classics]


def test_a_damaged_form_is_read_anew_and_mended(written):
    chance, sound = Random(5), written.read_bytes()
    for _ in range(12):
        place = chance.randrange(len(sound))
        damaged = bytearray(sound)
        damaged[place] ^= 1 << chance.randrange(8)
        written.write_bytes(bytes(damaged))
        assert kept(written, shipped) is shipped()
        assert written.read_bytes() == sound


@pytest.mark.parametrize("length", [0, 1, 40, 63, 64, 65, 5_000])
def test_a_form_that_was_cut_is_read_anew(written, length):
    written.write_bytes(written.read_bytes()[:length])
    assert kept(written, shipped) is shipped()
    assert kept(written) == shipped()


def test_a_form_of_other_bytes_with_a_sound_checksum_is_read_anew(written):
    content = packed({"tree": "an oak"})
    fingerprint = written.read_bytes()[:32]
    written.write_bytes(fingerprint + quick_form._digest(content) + content)
    assert kept(written, shipped) is shipped()


@pytest.mark.parametrize("changed", ["__version__", "_code", "data"])
def test_a_stale_form_is_read_anew(written, changed, monkeypatch):
    if changed == "__version__":
        monkeypatch.setattr(quick_form, "__version__", "0.0.0")
    elif changed == "_code":
        monkeypatch.setattr(quick_form, "_code", lambda: iter(["domain/new.py 1 1\n"]))
    else:
        read = quick_form.resource_files.read_bytes
        monkeypatch.setattr(
            quick_form.resource_files,
            "read_bytes",
            lambda *parts, **top: read(*parts, **top) + b"#",
        )
    quick_form._of_what_reads_it.cache_clear()  # as in another process
    try:
        assert kept(written, shipped) is shipped()
        assert kept(written) == shipped(), "and is of now from then on"
    finally:
        quick_form._of_what_reads_it.cache_clear()


def test_where_it_cannot_be_kept_it_is_read_each_time(tmp_path):
    (tmp_path / "cache").write_text("a file where the folder should be")
    assert kept(tmp_path / "cache" / "knowledge", shipped) is shipped()
    assert kept(tmp_path / "cache" / "knowledge", shipped) is shipped()


def test_a_folder_in_its_place_is_left_alone(file):
    file.mkdir(parents=True)
    assert kept(file, shipped) is shipped()
    assert [each.name for each in file.parent.iterdir()] == ["knowledge"]


def test_two_starts_at_once_leave_one_sound_form(tmp_path):
    env = {**os.environ, "XDG_CACHE_HOME": str(tmp_path)}

    def start(_number):
        return subprocess.run(
            [sys.executable, "-c", ASKS], env=env, capture_output=True, text=True, check=True
        ).stdout

    with ThreadPoolExecutor(4) as four:
        assert {*four.map(start, range(4))} == {f"{len(shipped().tree)}\n"}
    assert {each.name for each in (tmp_path / "barkeep").iterdir()} == {"knowledge", "tables"}
    assert not list(tmp_path.rglob(".*")), "nothing unfinished is left"
    form = quick_form.kept(KnowledgeForm, tmp_path / "barkeep" / "knowledge", never)
    assert form.knowledge == shipped()


def test_other_bytes_are_no_knowledge():
    with pytest.raises(ValueError, match="these bytes are no Knowledge"):
        unpacked(b"\xc1", Knowledge)


def test_what_is_of_another_day_is_made_anew(file):
    made = [quick_form.kept(bytes, file, lambda: b"one", of="2026-11-21")]
    made.append(quick_form.kept(bytes, file, never, of="2026-11-21"))
    made.append(quick_form.kept(bytes, file, lambda: b"other", of="2026-11-22"))
    assert made == [b"one", b"one", b"other"]


def test_a_sample_that_was_built_before_is_the_one_that_would_be_built(tmp_path, clock):
    def told(path):
        with closing(sqlite3.connect(path)) as file:
            return list(file.iterdump())

    sample.build(tmp_path / "sample.bar", clock)
    for _time in range(2):
        with sample_copy.throw_away(clock) as copy:
            assert told(copy) == told(tmp_path / "sample.bar")
