"""A backup or a restore that is killed anywhere: the bar, or its old self, is whole.

Real processes. Ordinarily a kill at each kind of step; with `ENDURANCE=full` one before each step.
"""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from barkeep.domain.bar.backups import read_name
from tests.cli.kill_points import BAR, Kills
from tests.cli.test_openings import MOST, dump, kill
from tests.how_much import EVERYTHING

pytestmark = pytest.mark.endurance

WAYS = ("killed", "torn", "powerless") if EVERYTHING else ("killed",)


@pytest.fixture
def origin(barkeep, bar, tmp_path) -> Path:
    """A folder with a bar, a backup of it, and a count since."""
    folder = tmp_path / "origin"
    folder.mkdir()
    shutil.copyfile(bar, folder / BAR)
    barkeep("--bar", folder / BAR, "backup", folder / "old.barkeep")
    barkeep("--bar", folder / BAR, "count", "1", "0.4")
    shutil.rmtree(folder / f"{BAR}.backups")
    return folder


def killed(origin: Path, *words: str) -> list[tuple[Path, str | None]]:
    """The folders after a kill at each place and, of each way, after one that was not killed."""
    old, places = str(origin), []
    plans = [Kills(old, str(origin.parent / how), [*words], [], how=how, most=MOST) for how in WAYS]
    for reports in kill(plans):
        *killed, alive = reports
        assert (alive["first_status"], alive["first"]["status"]) == (0, 0)
        assert len(killed) > 2 and all(each["first_status"] == -9 for each in killed)
        places += [(Path(each["folder"]), each["killed_at"]) for each in reports]
    return places


def opened(barkeep, bar: Path) -> None:
    """The next opening puts right what was left half done; it loses nothing."""
    said = barkeep("--bar", bar, "bottles")
    assert (said.status, said.err) == (0, "")


def backups(folder: Path) -> list[Path]:
    """What has the name of a backup."""
    inside = folder / f"{BAR}.backups"
    return [each for each in inside.glob("*") if read_name(each.name)] if inside.is_dir() else []


@pytest.mark.parametrize("words", [("backup",), ("backup", "{folder}/new.barkeep")])
def test_a_backup_that_has_its_name_is_whole(barkeep, origin, words):
    before = dump(origin / BAR)
    for folder, where in killed(origin, *words):
        made = [*backups(folder), *folder.glob("new.barkeep")]
        assert all(dump(each) == before for each in made), (folder, where)
        assert dump(folder / BAR) == before, (folder, where)
        assert made or where is not None


def test_a_restore_is_done_or_not_and_what_it_replaces_is_kept(barkeep, origin):
    before, after = dump(origin / BAR), dump(origin / "old.barkeep")
    words = ("restore", "{folder}/old.barkeep", "--yes")
    seen = set()
    for folder, where in killed(origin, *words):
        opened(barkeep, folder / BAR)
        now = dump(folder / BAR)
        seen.add(now == after)
        assert now in (before, after), (folder, where)
        assert all(dump(each) == before for each in backups(folder)), (folder, where)
        assert now == before or backups(folder), (folder, where)
        assert dump(folder / "old.barkeep") == after, (folder, where)
    assert seen == {True, False}


def test_a_restore_over_what_cannot_be_read_keeps_that_or_is_done(barkeep, origin):
    after = dump(origin / "old.barkeep")
    broken = b"\xff" * 200 + (origin / BAR).read_bytes()[200:]
    (origin / BAR).write_bytes(broken)
    words = ("restore", "{folder}/old.barkeep", "--yes")
    done = 0
    for folder, where in killed(origin, *words):
        if (folder / BAR).read_bytes() == broken:
            continue
        done += 1
        assert dump(folder / BAR) == after, (folder, where)
        (kept,) = backups(folder)
        assert "unreadable" in kept.name and kept.read_bytes() == broken
    assert done


def test_an_import_of_everything_is_done_or_not(barkeep, origin):
    before = dump(origin / BAR)
    barkeep("--bar", origin / "old.barkeep", "export", "--everything", origin / "all.json")
    words = ("import", "{folder}/all.json", "--yes")
    *early, (last, _) = killed(origin, *words)
    right = dump(last / BAR)
    assert right != before
    for folder, where in early:
        opened(barkeep, folder / BAR)
        assert dump(folder / BAR) in (before, right), (folder, where)


def test_a_days_first_write_that_is_killed_amid_its_backup_is_not_done_and_comes_next(
    barkeep, origin
):
    before = dump(origin / BAR)
    for folder, where in killed(origin, "count", "2", "0.4"):
        assert all(dump(each) == before for each in backups(folder)), (folder, where)
        barkeep("--bar", folder / BAR, "count", "3", "0.4")
        assert backups(folder)
        with closing(sqlite3.connect(folder / BAR)) as file:
            (counts,) = file.execute("SELECT count(*) FROM action WHERE label LIKE 'Count%'")
        assert counts[0] in (2, 3)
        assert not list(folder.glob(f"{BAR}-*"))
