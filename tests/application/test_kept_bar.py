"""A bar from what was kept of it: just what is read, and of no other state of the file."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from shutil import copy

import pytest

from barkeep.application import kept_bar, kept_verdicts, quick_form
from barkeep.application.bar import Bar
from barkeep.application.knowledge import shipped
from barkeep.application.paths import cache_folder
from barkeep.application.session import AllRead
from barkeep.desktop.drink.tonight_rows import answered
from barkeep.domain.bar.changes import EVERYTHING
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.pouring.evening import evening_of
from barkeep.domain.pouring.memory import Memory
from barkeep.errors import UnreadableFile
from barkeep.store.content import digest_of_file
from barkeep.store.store import Store

OLD_BARS = Path(__file__).parent.parent / "reference" / "old_bars"


@pytest.fixture(autouse=True)
def cache(tmp_path, monkeypatch):
    """A cache of this test's own, where the shipped knowledge is there already."""
    folder = tmp_path / "cache"
    monkeypatch.setattr(kept_bar, "cache_folder", lambda: folder)
    return folder


@pytest.fixture
def opened(clock):
    """Open a bar as commands do."""
    return lambda path: Bar.open(path, clock=clock, kept=True)


@pytest.fixture
def known(sample_bar, opened):
    """The sample bar, which was opened before."""
    with opened(sample_bar):
        return sample_bar


def counted(bar: Bar, share: float) -> int:
    """Count the first bottle; its id."""
    first = bar.snapshot.bottles[0]
    bar.counting.count({first.id: MeasuredLevel(share * first.product.size, "tenths", 5.0)})
    return first.id


def read(bar: Bar) -> AllRead:
    """All that was read of it."""
    return bar._session.all_read()


def level_of(bar: Bar, bottle: int) -> float:
    return next(each.level.amount for each in bar.snapshot.bottles if each.id == bottle)


def test_what_is_known_is_shown_without_a_look_at_the_rows(known, opened, monkeypatch):
    monkeypatch.setattr(Store, "open", None)
    with opened(known) as bar:
        assert len(bar.snapshot.bottles) > 20 and bar.path == known and not bar.is_new


@pytest.mark.parametrize("bar", ["sample", *sorted(each.name for each in OLD_BARS.iterdir())])
def test_what_is_kept_is_what_is_read(bar, sample_bar, tmp_path, opened, clock, monkeypatch):
    path = sample_bar if bar == "sample" else tmp_path / bar
    if bar != "sample":
        path.write_bytes((OLD_BARS / bar).read_bytes())
        Bar.open(path, clock=clock).close()  # upgraded
    with opened(path) as first, Bar.open(path, clock=clock) as plain:
        assert read(first) == read(plain)
    monkeypatch.setattr(Store, "open", None)
    with opened(path) as again:
        # Not only equal: 700 and 700.0 are, but are not printed the same.
        assert repr(read(again)) == repr(read(plain))
        assert again.snapshot == plain.snapshot
        assert again.snapshot.knowledge == plain.snapshot.knowledge


def test_what_a_command_wrote_is_known_to_the_next(known, opened, monkeypatch):
    with opened(known) as bar:
        bottle = counted(bar, 0.4)
        written = read(bar)
    monkeypatch.setattr(Store, "open", None)
    with opened(known) as bar:
        assert read(bar) == written
        assert level_of(bar, bottle) == pytest.approx(0.4 * bar.snapshot.bottles[0].product.size)


def test_nothing_is_kept_of_a_command_that_met_a_fault(known, opened, cache):
    before = {*(cache / "bars").iterdir()}
    with pytest.raises(ZeroDivisionError), opened(known) as bar:
        counted(bar, 0.4)
        raise ZeroDivisionError
    assert {*(cache / "bars").iterdir()} == before


def test_what_was_changed_is_read(known, opened, clock):
    with Bar.open(known, clock=clock) as other:
        bottle = counted(other, 0.35)
        level = level_of(other, bottle)
    for _time in range(2):
        with opened(known) as bar:
            assert level_of(bar, bottle) == level


def test_a_change_of_what_is_known_is_written_and_undone(known, opened):
    with opened(known) as bar:
        before = bar.snapshot.bottles
        bottle = counted(bar, 0.35)
        level = level_of(bar, bottle)
    with opened(known) as bar:
        assert level_of(bar, bottle) == level
        bar.undo()
        assert bar.snapshot.bottles == before


def test_what_another_program_wrote_since_is_not_overlooked(known, opened, clock):
    with opened(known) as bar:
        heard = []
        bar.subscribe(heard.append)
        with Bar.open(known, clock=clock) as other:
            last = other.snapshot.bottles[-1]
            other.counting.count({last.id: MeasuredLevel(0.0, "volume", 5.0)})
            level = level_of(other, last.id)
        counted(bar, 0.35)
        assert heard == [EVERYTHING]
        assert level_of(bar, last.id) == level


@pytest.mark.parametrize("written", [True, False])
def test_asked_whether_another_program_wrote_it_looks(known, opened, clock, written):
    with opened(known) as bar:
        if written:
            with Bar.open(known, clock=clock) as other:
                bottle = counted(other, 0.35)
        assert bar.refresh() is written
        assert bar.refresh() is False
        if written:
            assert bar.snapshot.bottles == other.snapshot.bottles, bottle


@pytest.mark.parametrize("length", [0, 40, 64, 20_000])
def test_a_form_that_was_cut_is_not_trusted(known, opened, cache, clock, length):
    (form,) = (cache / "bars").iterdir()
    sound = form.read_bytes()
    form.write_bytes(sound[:length])
    with opened(known) as bar, Bar.open(known, clock=clock) as plain:
        assert read(bar) == read(plain)
    assert form.read_bytes() == sound


@pytest.mark.parametrize("place", [3, 40, 70, 5_000, -1])
def test_a_form_that_was_damaged_is_not_trusted(known, opened, cache, clock, place):
    (form,) = (cache / "bars").iterdir()
    damaged = bytearray(sound := form.read_bytes())
    damaged[place] ^= 4
    form.write_bytes(bytes(damaged))
    with opened(known) as bar, Bar.open(known, clock=clock) as plain:
        assert read(bar) == read(plain)
    assert form.read_bytes() == sound


def test_the_form_of_one_bar_is_not_taken_for_another(known, opened, cache, clock, tmp_path):
    other = tmp_path / "other.bar"
    other.write_bytes(known.read_bytes())
    with Bar.open(other, clock=clock) as bar:
        bottle = counted(bar, 0.35)
        level = level_of(bar, bottle)
    with opened(other):
        pass
    first, second = sorted((cache / "bars").iterdir())
    swapped = first.read_bytes()
    first.write_bytes(second.read_bytes())
    second.write_bytes(swapped)
    with opened(other) as bar:
        assert level_of(bar, bottle) == level


def test_a_form_of_another_version_is_not_trusted(known, opened, monkeypatch):
    monkeypatch.setattr(quick_form, "__version__", "0.0.0")
    quick_form._of_what_reads_it.cache_clear()
    seen = []
    real = Store.open
    monkeypatch.setattr(
        Store, "open", lambda *given, **named: seen.append(given) or real(*given, **named)
    )
    try:
        with opened(known):
            pass
    finally:
        quick_form._of_what_reads_it.cache_clear()
    assert len(seen) == 1


def test_a_copy_of_a_known_bar_is_known(known, opened, tmp_path, monkeypatch):
    other = tmp_path / "copy.bar"
    other.write_bytes(known.read_bytes())
    monkeypatch.setattr(Store, "open", None)
    with opened(other) as bar:
        assert bar.path == other and bar.snapshot.bottles


def test_a_new_bar_is_begun_as_ever(tmp_path, opened):
    with opened(tmp_path / "new.bar") as bar:
        assert bar.is_new
    with opened(tmp_path / "new.bar") as bar:
        assert not bar.is_new and not bar.snapshot.bottles


def test_a_damaged_bar_is_refused_as_ever(known, opened):
    content = bytearray(known.read_bytes())
    content[5000:9000] = bytes(4000)
    known.write_bytes(bytes(content))
    with pytest.raises(UnreadableFile):
        opened(known)


def test_an_address_is_read_as_ever(known, opened):
    with opened(f"sqlite:///{known}") as bar:
        assert bar.snapshot.bottles


@pytest.mark.parametrize("end", ["-journal", "-wal", "-shm"])
def test_a_file_beside_it_is_left_to_who_opens_it(known, end):
    assert digest_of_file(known) is not None
    beside = Path(f"{known}{end}")
    beside.write_text("the owner's own")
    assert digest_of_file(known) is None
    assert beside.read_text() == "the owner's own"


def test_a_bar_that_is_being_written_is_left_to_who_opens_it(known):
    with closing(sqlite3.connect(known, isolation_level=None)) as writer:
        writer.execute("BEGIN EXCLUSIVE")
        assert digest_of_file(known) is None


def test_a_large_bar_is_not_kept(known, opened, cache, monkeypatch):
    monkeypatch.setattr("barkeep.store.content.MOST_BYTES", 1000)
    (form,) = (cache / "bars").iterdir()
    form.unlink()
    with opened(known):
        pass
    assert not any((cache / "bars").iterdir())


def test_only_the_latest_are_kept(known, opened, cache, clock, monkeypatch):
    monkeypatch.setattr(kept_bar, "MOST_KEPT", 3)
    for share in (0.1, 0.2, 0.3, 0.4):
        with Bar.open(known, clock=clock) as bar:
            counted(bar, share)
        with opened(known):
            pass
    assert len([*(cache / "bars").iterdir()]) == 3
    monkeypatch.setattr(Store, "open", None)
    with opened(known):
        pass


def test_where_nothing_can_be_kept_the_bar_is_read(sample_bar, opened, cache):
    cache.write_text("a file where the folder should be")
    for _time in range(2):
        with opened(sample_bar) as bar:
            assert bar.snapshot.bottles


def test_two_commands_at_once_keep_one_sound_form(sample_bar, tmp_path):
    shipped()  # so that what is shared by all tests is there, and only the bar is read
    (tmp_path / "own" / "barkeep").mkdir(parents=True)
    copy(cache_folder() / "knowledge", tmp_path / "own" / "barkeep" / "knowledge")
    env = {**os.environ, "XDG_CACHE_HOME": str(tmp_path / "own")}

    def ask(_number):
        command = [sys.executable, "-m", "barkeep", "--bar", str(sample_bar), "bottles"]
        return subprocess.run(command, env=env, capture_output=True, text=True, check=True).stdout

    with ThreadPoolExecutor(2) as two:
        (first,) = {*two.map(ask, range(2))}
    assert len([*(tmp_path / "own" / "barkeep" / "bars").iterdir()]) == 1
    assert ask(0) == first


def test_what_would_be_undone_and_redone_is_known_without_the_file(known, opened, clock):
    with Bar.open(known, clock=clock) as bar:
        counted(bar, 0.35)
        counted(bar, 0.45)
        bar.undo()
        steps = bar.next_step("undo"), bar.next_step("redo")
    with opened(known):
        pass
    with opened(known) as bar:
        assert (bar.next_step("undo"), bar.next_step("redo")) == steps
        assert None not in steps and not bar.is_opened
        bar.redo()
        assert bar.is_opened and bar.next_step("redo") is None


@pytest.fixture
def verdicts_cache(cache, monkeypatch):
    """What is kept of verdicts lies in this test's own cache as well."""
    monkeypatch.setattr(kept_verdicts, "cache_folder", lambda: cache)
    return cache


def answer_of(bar: Bar, within="close", serves=1):
    """Tonight as the window asks for it at first, and whether it was kept."""
    kept = bar.kept_verdicts()
    was_kept = kept.found(bar.snapshot, within, serves) is not None
    answer = answered(bar.snapshot, within, serves, Memory(), kept=kept)
    return [(row.spec, row.verdict) for row in answer.rows], was_kept


def test_a_first_answer_is_kept_for_just_that_bar_day_and_question(known, opened, verdicts_cache):
    def plain(snapshot, within="close", serves=1):
        found = evening_of(snapshot, within, serves)
        return [(each.spec, each.verdict) for each in found.placed]

    with opened(known) as bar:
        assert answer_of(bar) == (plain(bar.snapshot), False)
    with opened(known) as bar:
        assert answer_of(bar) == (plain(bar.snapshot), True)
        assert answer_of(bar, "exact") == (plain(bar.snapshot, "exact"), False)
        assert answer_of(bar, serves=9) == (plain(bar.snapshot, serves=9), False)
        assert not bar.is_opened
    with opened(known) as bar:
        kept = bar.kept_verdicts()
        tomorrow = bar.snapshot.changed(on=bar.snapshot.on + timedelta(days=1))
        assert kept.found(tomorrow, "close", 1) is None
        counted(bar, 0.0)
        assert kept.found(bar.snapshot, "close", 1) is None
        assert answer_of(bar) == (plain(bar.snapshot), False)
    with opened(known) as bar:  # which reads it, since it was changed
        assert answer_of(bar) == (plain(bar.snapshot), True)


@pytest.mark.parametrize("place", [3, 70, -1])
def test_a_first_answer_that_was_damaged_is_worked_out_again(known, opened, verdicts_cache, place):
    with opened(known) as bar:
        right, _kept = answer_of(bar)
    (form,) = (verdicts_cache / "verdicts").iterdir()
    damaged = bytearray(form.read_bytes())
    damaged[place] ^= 4
    form.write_bytes(bytes(damaged))
    with opened(known) as bar:
        assert answer_of(bar) == (right, False)
        assert answer_of(bar) == (right, True)


def test_of_a_bar_that_is_opened_without_it_nothing_is_kept(known, clock, verdicts_cache):
    with Bar.open(known, clock=clock) as bar:
        assert bar.kept_verdicts() is None
        bar.keep()
    assert not (verdicts_cache / "verdicts").exists()
