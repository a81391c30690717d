"""Files the user names: whole or not at all, never over a bar, links and permissions kept."""

from __future__ import annotations

import os
import stat

import pytest

from barkeep.application.written_files import write_file
from barkeep.store.refusals import CannotWrite


@pytest.fixture
def write(sample_bar):
    """Write as the face of an open sample bar does."""
    return lambda path, content: write_file(path, content, sample_bar)


def refusal(write, path) -> str:
    with pytest.raises(CannotWrite) as refused:
        write(path, b"new")
    return str(refused.value)


@pytest.fixture
def folder(tmp_path):
    """A folder with nothing in it, beside the bar."""
    made = tmp_path / "out"
    made.mkdir()
    return made


def test_a_file_is_written_whole_in_place_of_the_old_one(write, folder):
    target = folder / "a.txt"
    target.write_text("old", "utf-8")
    assert write(target, "½ oz\r\n") == target
    assert target.read_bytes() == "½ oz\r\n".encode()
    assert [each.name for each in folder.iterdir()] == ["a.txt"]


def test_a_new_file_has_the_usual_permissions(write, folder):
    target = write(folder / "a.txt", "new")
    mask = os.umask(0)
    os.umask(mask)
    assert stat.S_IMODE(target.stat().st_mode) == 0o666 & ~mask


@pytest.mark.parametrize("mode", [0o600, 0o640, 0o755])
def test_an_old_files_permissions_are_kept(write, folder, mode):
    target = folder / "a.txt"
    target.write_text("old", "utf-8")
    target.chmod(mode)
    write(target, "new")
    assert stat.S_IMODE(target.stat().st_mode) == mode


def test_a_link_stays_one_and_what_it_leads_to_is_written(write, folder):
    target, link = folder / "a.txt", folder / "link.txt"
    link.symlink_to("a.txt")
    for text in ("new", "newer"):  # the first time it leads nowhere yet
        assert write(link, text) == link
        assert link.is_symlink()
        assert target.read_text("utf-8") == text


def test_a_file_that_cannot_be_written_leaves_nothing(write, folder):
    (folder / "folder").mkdir()
    (folder / "round").symlink_to("round")
    os.mkfifo(folder / "pipe")
    before = sorted(each.name for each in folder.iterdir())
    assert "No such file or directory" in refusal(write, folder / "missing" / "a.txt")
    assert "it is a folder" in refusal(write, folder / "folder")
    assert "Too many levels of symbolic links" in refusal(write, folder / "round")
    assert "it is not an ordinary file" in refusal(write, folder / "pipe")
    assert sorted(each.name for each in folder.iterdir()) == before


def test_a_write_that_fails_half_way_leaves_the_old_file(write, folder, monkeypatch):
    target = folder / "a.txt"
    target.write_text("old", "utf-8")

    def full(_number):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    assert "No space left on device" in refusal(write, target)
    assert target.read_text("utf-8") == "old"
    assert [each.name for each in folder.iterdir()] == ["a.txt"]


def test_a_bar_that_is_gone_is_known_by_its_name(write, sample_bar):
    sample_bar.unlink()
    assert "it is the bar that is open" in refusal(write, sample_bar)
