"""Backups from the command line: made, kept by themselves, listed, offered and put back."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from barkeep.domain.bar.backups import BackupName
from tests.cli.test_openings import held, old_bar

__all__ = ["held"]

PROJECT = Path(__file__).parent.parent.parent


def folder(bar: Path) -> Path:
    return bar.with_name(f"{bar.name}.backups")


def kept(bar: Path, why: str = "") -> list[str]:
    there = folder(bar).iterdir() if folder(bar).is_dir() else ()
    return sorted(each.name for each in there if why in each.name)


def rows(path: Path) -> list[str]:
    with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True)) as file:
        assert file.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        return sorted(file.iterdump())


def levels(barkeep, bar) -> dict[int, float]:
    return {
        each["id"]: each["level_ml"]
        for each in barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    }


# Made and listed


def test_a_backup_is_the_bar_as_it_is(barkeep, bar):
    before = rows(bar)
    said = barkeep("--bar", bar, "backup")
    (name,) = kept(bar, "asked for")
    assert said.status == 0 and said.err == ""
    assert said.out == (
        f"The bar is backed up to {folder(bar) / name}: 81 bottles, 21 specs and 6 shoots.\n"
    )
    assert rows(folder(bar) / name) == rows(bar) == before


def test_one_may_go_to_a_file_of_ones_own(barkeep, bar, tmp_path):
    target = tmp_path / "on a stick.barkeep"
    answer = barkeep("--bar", bar, "backup", target, "--json").answer
    assert (answer["file"], answer["bottles"]) == (str(target), 81)
    assert rows(target) == rows(bar)
    assert not folder(bar).exists()
    refusal = barkeep("--bar", bar, "backup", target).refusal
    assert refusal == (
        f"{target} cannot be written: there is a file of that name already. Nothing was changed."
    )


def test_two_of_one_second_are_two(barkeep, bar, monkeypatch):
    for _ in range(3):
        barkeep("--bar", bar, "backup")
    assert len(kept(bar)) == 3


def test_two_who_make_its_folder_at_once_both_keep_one(barkeep, bar, held):
    with held(bar, f"make {folder(bar).name}", command=("backup",)) as (one,):
        one.reach()
        assert barkeep("--bar", bar, "backup").status == 0
        one.let_go()
        status, out, err = one.answer()
    assert (status, err) == (0, "")
    first, second = kept(bar, "asked for")
    assert (out.startswith("The bar is backed up to ") and first in out) or second in out


def test_the_list_says_what_each_holds_and_when_it_changed(barkeep, bar):
    barkeep("--bar", bar, "backup")
    barkeep("--bar", bar, "count", "1", "0.4")
    barkeep("--bar", bar, "backup")
    answer = barkeep("--bar", bar, "backup", "--list", "--json").answer
    newest, oldest = answer["backups"]
    assert newest["last"] == "Count Pellow & Rudge Lamp Room dry gin"
    assert oldest["last"] == "Add shoot Summer Excursion"
    assert (newest["bottles"], newest["specs"], newest["shoots"]) == (81, 21, 6)
    assert (newest["why"], newest["problem"]) == ("asked for", None)
    assert newest["bytes"] == Path(newest["file"]).stat().st_size
    shown = barkeep("--bar", bar, "backup", "--list").out
    assert "81 bottles, 21 specs and 6 shoots" in shown and str(folder(bar)) in shown


def test_a_bar_without_backups_says_where_they_would_be(barkeep, bar):
    said = barkeep("--bar", bar, "backup", "--list")
    assert said.out == f"There is no backup in {folder(bar)} yet.\n"
    assert not folder(bar).exists()


def test_a_damaged_backup_is_listed_as_one(barkeep, bar):
    barkeep("--bar", bar, "backup")
    (name,) = kept(bar)
    (folder(bar) / name).write_bytes(b"nothing of the kind")
    (found,) = barkeep("--bar", bar, "backup", "--list", "--json").answer["backups"]
    assert found["bottles"] is None
    assert found["problem"].endswith("cannot be used: it is not a SQLite file.")


def test_the_list_takes_no_file(barkeep, bar):
    assert barkeep("--bar", bar, "backup", "--list", "x").refusal == (
        "--list cannot be “x”: it makes no backup, so it takes no file."
    )


# Kept by themselves


def test_the_first_write_of_a_day_keeps_the_bar_as_it_was(barkeep, bar):
    before = rows(bar)
    barkeep("--bar", bar, "bottles")
    assert kept(bar) == []  # reading needs none
    said = barkeep("--bar", bar, "count", "1", "0.4")
    (name,) = kept(bar, "daily")
    assert said.err == ""
    assert rows(folder(bar) / name) == before
    barkeep("--bar", bar, "undo")
    barkeep("--bar", bar, "count", "2", "0.4")
    assert kept(bar) == [name]


def test_undo_is_a_write_too(barkeep, bar):
    barkeep("--bar", bar, "count", "1", "0.4")
    shutil.rmtree(folder(bar))
    barkeep("--bar", bar, "undo")
    assert len(kept(bar, "daily")) == 1


def test_a_backup_of_yesterday_or_of_the_future_is_none_of_today(barkeep, bar):
    folder(bar).mkdir()
    for days in (-1, 30):
        name = BackupName(datetime.now() + timedelta(days=days), "daily")
        shutil.copyfile(bar, folder(bar) / str(name))
    barkeep("--bar", bar, "count", "1", "0.4")
    assert len(kept(bar, "daily")) == 3


def test_old_ones_are_thinned_and_those_asked_for_stay(barkeep, bar):
    folder(bar).mkdir()
    first = datetime.now().replace(hour=9) - timedelta(days=120)
    for day in range(120):
        for why in ("daily", "asked for") if day == 3 else ("daily",):
            shutil.copyfile(bar, folder(bar) / str(BackupName(first + timedelta(day), why)))
    other = folder(bar) / "a letter.txt"
    other.write_text("mine", encoding="utf-8")
    mine, left = folder(bar) / "film.part", folder(bar) / ".barkeep-00000000-77-abcd.part"
    left.mkdir()
    for each in (mine, left / "copy.part", left):
        if each != left:
            each.write_bytes(b"half")
        os.utime(each, (0, 0))
    barkeep("--bar", bar, "count", "1", "0.4")
    assert mine.exists() and not left.exists()  # of a program that was stopped
    assert 7 + 6 <= len(kept(bar, "daily")) <= 7 + 8 + 5
    assert len(kept(bar, "asked for")) == 1
    assert other.read_text(encoding="utf-8") == "mine"


def test_a_new_bar_and_the_sample_keep_none(barkeep, tmp_path):
    bar = tmp_path / "new.bar"
    barkeep("--bar", bar, "--new", "product", "add", "Gin", "--ingredient", "gin")
    assert kept(bar) == []
    barkeep("--bar", bar, "product", "add", "Rum", "--ingredient", "rum")
    assert len(kept(bar, "daily")) == 1
    assert barkeep("--sample", "count", "1", "0.4").err == ""


def test_an_import_keeps_the_bar_as_it_was(barkeep, bar, tmp_path):
    barkeep("--bar", bar, "count", "1", "0.4")
    before = rows(bar)
    bottles = tmp_path / "bottles.csv"
    bottles.write_text("product,ingredient,size\nOld gin,gin,700\n", encoding="utf-8")
    barkeep("--bar", bar, "import", bottles)
    (name,) = kept(bar, "before import")
    assert rows(folder(bar) / name) == before
    spec = tmp_path / "one.txt"
    spec.write_text("Lamp Black\n60 ml gin\n20 ml lime juice\n", encoding="utf-8")
    barkeep("--bar", bar, "import", spec)
    assert len(kept(bar, "before import")) == 2
    barkeep("--bar", bar, "import", spec)  # there already
    assert len(kept(bar, "before import")) == 2


def test_what_cannot_be_backed_up_is_written_all_the_same_and_said(barkeep, bar):
    folder(bar).write_text("a file in the way", encoding="utf-8")
    said = barkeep("--bar", bar, "count", "1", "0.4")
    assert said.status == 0 and "280 ml" in said.out
    assert said.err == (
        f"barkeep: No backup of {bar} could be made: {folder(bar)} cannot be written: "
        "File exists. Nothing was changed. What you did is written all the same.\n"
    )


def test_they_are_kept_where_the_owner_says(barkeep, bar, tmp_path):
    disk = tmp_path / "another disk"
    said = barkeep("--bar", bar, "setting", "backups", disk)
    assert said.refusal == f"backups cannot be “{disk}”: there is no such folder."
    disk.mkdir()
    barkeep("--bar", bar, "setting", "backups", disk)
    assert barkeep("--bar", bar, "setting", "--json").answer["settings"]["backups"] == str(disk)
    barkeep("--bar", bar, "backup")
    (own,) = disk.iterdir()
    assert own.name.startswith(f"{bar.name}.backups-")
    answer = barkeep("--bar", bar, "backup", "--list", "--json").answer
    assert answer["folders"] == [str(folder(bar)), str(own)]
    assert {Path(each["file"]).parent for each in answer["backups"]} == {own, folder(bar)}
    bar.write_bytes(b"lost" * 100)  # which no longer says where they are
    assert "Its newest good backup is “" in barkeep("--bar", bar, "bottles").refusal
    newest = Path(answer["backups"][0]["file"]).name
    barkeep("--bar", bar, "restore", newest, "--yes")
    barkeep("--bar", bar, "setting", "backups", "beside")
    assert barkeep("--bar", bar, "setting", "backups").out.startswith("backups is beside the bar.")


def test_two_bars_of_one_name_share_a_folder_and_no_backup(barkeep, bar, tmp_path):
    disk, other = tmp_path / "disk", tmp_path / "elsewhere" / bar.name
    disk.mkdir()
    other.parent.mkdir()
    shutil.copyfile(bar, other)
    for each in (bar, other):
        barkeep("--bar", each, "setting", "backups", disk)
        barkeep("--bar", each, "backup")
    assert len(list(disk.iterdir())) == 2
    asked = [
        each
        for each in barkeep("--bar", bar, "backup", "--list", "--json").answer["backups"]
        if each["why"] == "asked for"
    ]
    assert len(asked) == 1


@pytest.mark.parametrize("mode", [0o600, 0o640])
def test_what_only_the_owner_may_read_stays_so(barkeep, bar, mode):
    bar.chmod(mode)
    barkeep("--bar", bar, "backup")
    (name,) = kept(bar)
    assert (folder(bar) / name).stat().st_mode & 0o777 == mode


# Put back


@pytest.fixture
def counted(barkeep, bar) -> Path:
    """A bar with a backup, and a count since."""
    barkeep("--bar", bar, "backup")
    barkeep("--bar", bar, "count", "1", "0.4")
    return bar


def test_without_yes_the_two_are_set_side_by_side(barkeep, counted):
    (name,) = kept(counted)
    before = counted.read_bytes()
    refusal = barkeep("--bar", counted, "restore", name).refusal
    said, *table = refusal.split("\n")
    assert (
        said
        == "nothing is restored yet. --yes puts what stands right in the place of what is there:"
    )
    assert table[0].split() == [counted.name, *name.split()]
    assert [line.split()[0] for line in table[2:]] == [
        "bottles",
        "products",
        "specs",
        "shoots",
        "changed",
    ]
    assert "Count Pellow & Rudge Lamp Room dry gin" in table[-1]
    assert table[-1].rstrip().endswith("Add shoot Summer Excursion")
    assert counted.read_bytes() == before


def test_what_is_restored_is_what_was_backed_up_and_what_it_replaced_is_kept(barkeep, counted):
    (name,) = kept(counted)
    now, then = rows(counted), rows(folder(counted) / name)
    assert now != then
    answer = barkeep("--bar", counted, "restore", name[:10], "--yes", "--json").answer
    assert rows(counted) == then
    assert Path(answer["kept"]).name in kept(counted, "before restore")
    assert rows(Path(answer["kept"])) == now
    assert (answer["before"]["last"], answer["after"]["last"]) == (
        "Count Pellow & Rudge Lamp Room dry gin",
        "Add shoot Summer Excursion",
    )
    # and back again
    barkeep("--bar", counted, "restore", answer["kept"], "--yes")
    assert rows(counted) == now


def test_a_bar_that_is_gone_comes_back(barkeep, counted):
    (name,) = kept(counted)
    counted.unlink()
    answer = barkeep("--bar", counted, "restore", name, "--yes", "--json").answer
    assert (answer["kept"], answer["before"]) == (None, None)
    assert "there is no such file" in answer["problem"]
    assert len(levels(barkeep, counted)) > 60


def damaged(bar: Path, how: str) -> None:
    size = bar.stat().st_size
    with bar.open("r+b") as file:
        if how == "header":
            file.write(b"\xff" * 100)
        elif how == "pages":
            file.seek(4096)
            file.write(os.urandom(size - 4096))
        elif how == "half":
            file.truncate(size // 2)


@pytest.mark.parametrize("how", ["header", "pages", "half"])
def test_a_damaged_bar_is_offered_its_backup_which_comes_back(barkeep, counted, how):
    (name,) = kept(counted)
    then = rows(folder(counted) / name)
    damaged(counted, how)
    broken = counted.read_bytes()
    refusal = barkeep("--bar", counted, "bottles").refusal
    assert f"Its newest good backup is “{name}” of 20" in refusal
    assert refusal.endswith(f"say barkeep --bar {counted} restore '{name}'.")
    kept_as = Path(barkeep("--bar", counted, "restore", name, "--yes", "--json").answer["kept"])
    assert rows(counted) == then
    assert "unreadable" in kept_as.name and kept_as.read_bytes() == broken
    assert barkeep("--bar", counted, "bottles").status == 0


def test_the_newest_good_one_is_offered_and_not_a_newer_bad_one(barkeep, counted):
    (good,) = kept(counted)
    for minutes, bad in ((1, b"rubbish" * 900), (2, b"")):
        name = BackupName(datetime.now() + timedelta(minutes=minutes), "daily")
        (folder(counted) / str(name)).write_bytes(bad)
    damaged(counted, "header")
    assert f"Its newest good backup is “{good}”" in barkeep("--bar", counted, "tonight").refusal


def test_a_damaged_bar_without_a_backup_is_offered_none(barkeep, bar):
    damaged(bar, "header")
    assert barkeep("--bar", bar, "bottles").refusal == (
        f"{bar} cannot be used: it is not a SQLite file."
    )


HOT = """
import os, signal, sqlite3, sys
file = sqlite3.connect(sys.argv[1], isolation_level=None)
file.execute("PRAGMA cache_size = 2")
file.execute("BEGIN")
file.execute("UPDATE product SET name = name || ' half written', folded_title = folded_title || id")
os.kill(os.getpid(), signal.SIGKILL)
"""


def leave_hot(bar: Path) -> Path:
    """Leave a file as a program that was killed amid a write leaves it."""
    subprocess.run([sys.executable, "-c", HOT, str(bar)], check=False)
    journal = bar.with_name(f"{bar.name}-journal")
    assert journal.stat().st_size > 0
    return journal


def test_a_hot_journal_is_not_played_into_what_is_restored(barkeep, counted):
    (name,) = kept(counted)
    now, then = rows(counted), rows(folder(counted) / name)
    journal = leave_hot(counted)
    kept_as = Path(barkeep("--bar", counted, "restore", name, "--yes", "--json").answer["kept"])
    assert not journal.exists()
    assert rows(counted) == then
    assert rows(kept_as) == now  # what was half written was taken back first


def test_a_journal_of_an_unreadable_bar_is_not_played_into_what_is_restored(barkeep, counted):
    (name,) = kept(counted)
    then = rows(folder(counted) / name)
    journal = leave_hot(counted)
    left = journal.read_bytes()
    with counted.open("r+b") as file:
        file.write(b"\xff" * 100)
    journal.write_bytes(left[:8] + b"\xff" * 20 + left[28:])  # which cannot mend it
    barkeep("--bar", counted, "restore", name, "--yes")
    assert rows(counted) == then and not journal.exists()


def test_a_backup_that_was_left_half_written_is_put_right_before(barkeep, counted, tmp_path):
    copy = tmp_path / "stick.barkeep"
    barkeep("--bar", counted, "backup", copy)
    then = rows(copy)
    leave_hot(copy)
    barkeep("--bar", counted, "restore", copy, "--yes")
    assert rows(counted) == then


@pytest.mark.parametrize("schema", [1, 2, 3, 4])
def test_a_bar_of_an_older_schema_comes_back_upgraded(barkeep, bar, tmp_path, schema):
    old = tmp_path / "old.barkeep"
    shutil.copyfile(old_bar(schema), old)
    barkeep("--bar", bar, "restore", old, "--yes")
    assert old.read_bytes() == old_bar(schema).read_bytes()
    assert barkeep("--bar", bar, "bottles").status == 0
    assert len(list(bar.parent.glob(f"{bar.name}.before-schema-*"))) == 0


def test_what_an_upgrade_left_beside_the_bar_is_listed_and_comes_back(barkeep, tmp_path):
    bar = tmp_path / "old.barkeep"
    shutil.copyfile(old_bar(4), bar)
    barkeep("--bar", bar, "bottles")
    found = barkeep("--bar", bar, "backup", "--list", "--json").answer["backups"]
    assert {each["why"] for each in found} == {"before upgrade"}
    assert barkeep("--bar", bar, "restore", "old.barkeep.before-schema-5", "--yes").status == 0


@pytest.mark.parametrize(
    ("content", "reason"),
    [
        (b"Dear diary,\n", "it is not a SQLite file"),
        (b"", "it is empty"),
        (b"SQLite format 3\x00" + b"\x00" * 300, "it is not a SQLite file"),
    ],
)
def test_what_is_no_bar_is_not_restored(barkeep, bar, tmp_path, content, reason):
    other = tmp_path / "other"
    other.write_bytes(content)
    before = bar.read_bytes()
    assert barkeep("--bar", bar, "restore", other, "--yes").refusal == (
        f"{other} cannot be used: {reason}."
    )
    assert bar.read_bytes() == before and kept(bar) == []


@pytest.mark.parametrize(
    ("make", "reason"),
    [(os.mkdir, "it is a folder"), (os.mkfifo, "it is not an ordinary file")],
)
def test_only_a_file_is_put_in_the_place_of_a_bar(barkeep, bar, tmp_path, make, reason):
    place = tmp_path / "place"
    make(place)
    before = place.lstat()
    said = barkeep("--bar", place, "restore", bar, "--yes").refusal
    assert said == f"{place} cannot be used: {reason}."
    assert f"{place} cannot be used: {reason}." in barkeep("--bar", place, "restore", bar).err
    assert place.lstat() == before and not folder(place).exists()


def test_the_database_of_another_program_is_not_restored(barkeep, bar, tmp_path):
    other = tmp_path / "other.db"
    with closing(sqlite3.connect(other)) as file:
        file.execute("CREATE TABLE songs (name)")
    assert (
        "the database of another program"
        in barkeep("--bar", bar, "restore", other, "--yes").refusal
    )


def test_a_newer_bar_and_a_damaged_one_are_not_restored(barkeep, counted, tmp_path):
    newer, broken = tmp_path / "newer", tmp_path / "broken"
    shutil.copyfile(counted, newer)
    with closing(sqlite3.connect(newer)) as file:
        file.execute("PRAGMA user_version = 99")
    shutil.copyfile(counted, broken)
    damaged(broken, "pages")
    before = counted.read_bytes()
    assert (
        f"{newer} was written by a newer barkeep"
        in barkeep("--bar", counted, "restore", newer, "--yes").refusal
    )
    assert (
        f"{broken} cannot be used: it is damaged"
        in barkeep("--bar", counted, "restore", broken, "--yes").refusal
    )
    assert counted.read_bytes() == before


def test_a_name_that_is_none_is_refused_with_the_newest(barkeep, counted):
    (name,) = kept(counted)
    refusal = barkeep("--bar", counted, "restore", "yesterday", "--yes").refusal
    assert refusal == (
        f"There is no backup “yesterday”, neither as a file nor in {folder(counted)}. "
        f"The newest there are “{name}”."
    )


def test_a_bar_that_another_program_is_writing_is_not_restored(barkeep, counted):
    (name,) = kept(counted)
    with closing(sqlite3.connect(counted, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        refusal = barkeep("--bar", counted, "restore", name, "--yes").refusal
    assert refusal.startswith(
        f"{counted} is in use by another program just now, and nothing was changed."
    )
    assert barkeep("--bar", counted, "bottles").status == 0


def test_a_restore_waits_for_who_is_amid_writing_to_the_bar(barkeep, bar, tmp_path, held):
    copy = tmp_path / "copy.barkeep"
    assert barkeep("--bar", bar, "backup", copy).status == 0
    with (
        held(bar, f"connect {bar}", command=("restore", str(copy), "--yes")) as (restoring,),
        held(bar, f"sync {bar.name}", command=("count", "1", "0.2")) as (counting,),
    ):
        restoring.reach()
        counting.reach()
        restoring.let_go()
        counting.let_go()
        counting.answer()
        assert restoring.answer()[0] == 0
    assert rows(bar) == rows(copy)


def test_what_is_written_just_before_a_restore_writes_is_kept(barkeep, bar, tmp_path, held):
    copy = tmp_path / "copy.barkeep"
    assert barkeep("--bar", bar, "backup", copy).status == 0
    with held(bar, f"connect {bar}", command=("restore", str(copy), "--yes")) as (restoring,):
        restoring.reach()
        assert barkeep("--bar", bar, "count", "1", "0.2").status == 0
        counted = rows(bar)
        restoring.let_go()
        status, out, err = restoring.answer()
    assert (status, err) == (0, "") and rows(bar) == rows(copy)
    (newest,) = (each for each in kept(bar, "before restore") if each in out)
    assert rows(folder(bar) / newest) == counted
    assert not Path(f"{bar}-journal").exists()


def test_another_program_that_has_the_bar_open_sees_what_was_restored(barkeep, counted):
    (name,) = kept(counted)
    with closing(sqlite3.connect(counted)) as other:
        count = "SELECT count(*) FROM ledger"
        before = other.execute(count).fetchone()[0]
        barkeep("--bar", counted, "restore", name, "--yes")
        assert other.execute(count).fetchone()[0] == before - 1


# No room, no right


LIMITED = """
import resource, signal, sys
from barkeep.cli import main
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
resource.setrlimit(resource.RLIMIT_FSIZE, (100_000, 100_000))
sys.exit(main(sys.argv[1:]))
"""


def limited(*words: str | Path) -> subprocess.CompletedProcess[str]:
    """Run a command on a disk that takes no file of 100 kB; nothing is compiled to half a file."""
    return subprocess.run(
        [sys.executable, "-B", "-c", LIMITED, *map(str, words)],
        capture_output=True, text=True, check=False, cwd=PROJECT,
    )  # fmt: skip


def test_a_full_disk_is_said_and_leaves_nothing_half(barkeep, counted):
    names, before = kept(counted), counted.read_bytes()
    done = limited("--bar", counted, "backup")
    assert (done.returncode, done.stdout) == (1, "")
    assert "cannot be written: the disk is full or reported an error" in done.stderr
    done = limited("--bar", counted, "restore", names[0], "--yes")
    assert (done.returncode, done.stdout) == (1, "")
    assert "the disk is full or reported an error" in done.stderr
    assert kept(counted) == names and counted.read_bytes() == before
    assert barkeep("--bar", counted, "bottles").status == 0


def test_a_count_on_a_full_disk_says_of_both(barkeep, counted):
    shutil.rmtree(folder(counted))
    done = limited("--bar", counted, "count", "2", "0.4")
    assert f"No backup of {counted} could be made: " in done.stderr
    assert "the disk is full or reported an error" in done.stderr


# Read-only


WITHOUT_PRIVILEGES = """
import ctypes, sys
from barkeep.cli import main
header = (ctypes.c_uint32 * 2)(0x20080522, 0)  # what root may beyond others is given away
assert ctypes.CDLL(None).capset(header, (ctypes.c_uint32 * 6)()) == 0
sys.exit(main(sys.argv[1:]))
"""


@pytest.fixture
def shut_away(bar, tmp_path) -> Iterator[Path]:
    """A bar that nobody may write, in a folder like that."""
    here = tmp_path / "shut"
    here.mkdir()
    shutil.copyfile(bar, here / "home.barkeep")
    (here / "home.barkeep").chmod(0o444)
    here.chmod(0o555)
    yield here / "home.barkeep"
    here.chmod(0o755)


def unprivileged(*words: str | Path) -> subprocess.CompletedProcess[str]:
    """Run a command for which permissions hold, whoever runs the tests."""
    return subprocess.run(
        [sys.executable, "-c", WITHOUT_PRIVILEGES, *map(str, words)],
        capture_output=True, text=True, check=False, cwd=PROJECT,
    )  # fmt: skip


def test_a_read_only_bar_opens_to_be_looked_at(shut_away):
    before = shut_away.read_bytes()
    looked = unprivileged("--bar", shut_away, "bottles")
    said = f"barkeep: {shut_away} is read-only: it is open to be looked at.\n"
    assert (looked.returncode, looked.stderr) == (0, said)
    assert "Lamp Room dry gin" in looked.stdout
    refused = (
        f"barkeep: {shut_away} is read-only: it can be looked at, and nothing in it can be "
        "changed.\n"
    )
    for words in (
        ("count", "1", "0.4"),
        ("undo",),
        ("setting", "name", "Mine"),
        ("product", "add", "Gin", "--ingredient", "gin"),
    ):
        done = unprivileged("--bar", shut_away, *words)
        assert (done.returncode, done.stdout, done.stderr) == (1, "", said + refused), words
    assert shut_away.read_bytes() == before
    assert [each.name for each in shut_away.parent.iterdir()] == ["home.barkeep"]


def test_a_read_only_bar_is_neither_backed_up_beside_nor_restored(shut_away):
    done = unprivileged("--bar", shut_away, "backup")
    assert done.returncode == 1
    assert f"{folder(shut_away)} cannot be written: Permission denied" in done.stderr
    done = unprivileged("--bar", shut_away, "restore", shut_away, "--yes")
    assert done.returncode == 1
    assert "is read-only: it can be looked at, and nothing in it can be changed." in done.stderr


def test_an_old_bar_that_is_read_only_says_what_to_do(shut_away):
    shut_away.parent.chmod(0o755)
    shut_away.unlink()
    shutil.copyfile(old_bar(3), shut_away)
    shut_away.chmod(0o444)
    shut_away.parent.chmod(0o555)
    done = unprivileged("--bar", shut_away, "bottles")
    assert (done.returncode, done.stderr) == (
        1,
        f"barkeep: {shut_away} cannot be used: it is read-only, and of an older barkeep; "
        "copy it to where it can be written.\n",
    )
