"""The window follows its file: another's writes, and the file gone, replaced, put back or held."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.application.bar import Bar
from barkeep.desktop.shell import following
from barkeep.desktop.shell.check import CheckDialog

pytestmark = pytest.mark.left_at("bottles")

Keys = Qt.Key


@pytest.fixture(autouse=True)
def looks_at_once(monkeypatch):
    """The window looks as often as it can: no test waits for a clock."""
    monkeypatch.setattr(following, "EVERY_MS", 0)


@pytest.fixture
def other(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def rename(bar, name):
    bar.settings.change(replace(bar.snapshot.settings, name=name))


def says(qtbot, window, words):
    qtbot.waitUntil(lambda: words in window.current.banner.text)


def press_on(qtbot, parent, text):
    found = next(b for b in parent.findChildren(QPushButton) if b.text() == text)
    qtbot.waitUntil(found.isVisible)
    found.setFocus()
    qtbot.keyClick(found, Keys.Key_Space)


def test_what_another_writes_is_shown_without_being_asked_for(window, other, qtbot):
    rename(other, "Renamed elsewhere")
    qtbot.waitUntil(lambda: window.bar_name.text() == "Renamed elsewhere")
    assert window.actions_.undo.text() == "&Undo: Change settings"
    assert window.current.banner.text == ""


def test_it_is_shown_behind_a_dialog_too(window, other, qtbot):
    page = window.show_page("specs")
    page.write_new()
    rename(other, "Renamed elsewhere")
    qtbot.waitUntil(lambda: window.bar_name.text() == "Renamed elsewhere")
    assert page.editor.isVisible()
    page.editor.close()


def test_a_file_that_is_deleted_is_said_and_written_again(window, sample_bar, clock, qtbot):
    rename(window.bar, "Branch line bar")
    sample_bar.unlink()
    says(qtbot, window, f"{sample_bar} is gone: it was deleted, moved or renamed.")
    assert window.saved.text() == "Not in its file"
    rename_refused(qtbot, window, sample_bar)
    says_again(window, sample_bar)
    window.following.ask("gone")
    press_on(qtbot, window.following.question, "&Write it there again")
    assert sample_bar.exists()
    assert window.saved.text() == "Saved"
    rename(window.bar, "Written again")
    with Bar.open(sample_bar, clock=clock) as opened:
        assert opened.snapshot.settings.name == "Written again"
        assert len(opened.snapshot.bottles) == len(window.bar.snapshot.bottles)
        assert opened.check() == ()


def rename_refused(qtbot, window, file):
    """A change is refused with what is so, and nothing is lost."""
    before = window.bar.snapshot
    page = window.show_page("bottles")
    bottle = next(each for each in before.bottles if each.level.state == "open")
    page.show_thing(bottle.id)
    page.empty_current()
    assert page.banner.text.startswith(f"{file} was deleted, moved or replaced")
    assert window.bar.snapshot.bottles == before.bottles


def says_again(window, file):
    assert not file.exists()  # and nothing has made a new one there


def test_a_file_moved_away_and_back_is_the_same(window, sample_bar, tmp_path, qtbot):
    away = tmp_path / "away.barkeep"
    sample_bar.rename(away)
    says(qtbot, window, "is gone")
    away.rename(sample_bar)
    says(qtbot, window, f"{sample_bar} is back, as it was opened.")
    assert window.saved.text() == "Saved"
    rename(window.bar, "Branch line bar")
    assert window.bar_name.text() == "Branch line bar"


def test_a_file_that_another_lies_in_the_place_of_is_shown_when_wanted(
    window, sample_bar, tmp_path, clock, qtbot
):
    """As a synchronised folder does it."""
    new = tmp_path / "new.barkeep"
    shutil.copy(sample_bar, new)
    with Bar.open(new, clock=clock) as elsewhere:
        rename(elsewhere, "From another machine")
    new.replace(sample_bar)
    says(qtbot, window, f"Another file lies in the place of {sample_bar}")
    assert window.bar_name.text() != "From another machine"
    press_on(qtbot, window.current.banner, "What can be done…")
    press_on(qtbot, window.following.question, "&Show the new one")
    assert window.bar_name.text() == "From another machine"
    assert window.saved.text() == "Saved"
    rename(window.bar, "Branch line bar")
    with Bar.open(sample_bar, clock=clock) as opened:
        assert opened.snapshot.settings.name == "Branch line bar"


def test_what_is_shown_is_saved_elsewhere_when_another_file_took_its_place(
    window, sample_bar, tmp_path, clock, monkeypatch, qtbot
):
    rename(window.bar, "Branch line bar")
    saved = tmp_path / "saved.barkeep"
    monkeypatch.setattr(
        following.QFileDialog, "getSaveFileName", staticmethod(lambda *_args: (str(saved), ""))
    )
    strange = tmp_path / "strange.txt"
    strange.write_text("no bar at all", encoding="utf-8")
    strange.replace(sample_bar)
    says(qtbot, window, "Another file lies in the place of")
    window.following.ask("replaced")
    press_on(qtbot, window.following.question, "&Show the new one")
    assert "it is not a SQLite file" in window.current.banner.text
    window.following.ask("replaced")
    press_on(qtbot, window.following.question, "Save what is shown &elsewhere…")
    assert window.toast.text == f"What is shown is in {saved}"
    with Bar.open(saved, clock=clock) as opened:
        assert opened.snapshot.settings.name == "Branch line bar"
    window.following.ask("replaced")
    qtbot.keyClick(window.following.question, Keys.Key_Escape)
    assert sample_bar.read_text(encoding="utf-8") == "no bar at all"


def test_what_another_program_writes_is_shown_and_said_and_can_be_taken(window, sample_bar, qtbot):
    with closing(sqlite3.connect(sample_bar)) as file, file:
        file.execute("UPDATE product SET price = 19.5 WHERE id = 3")
    says(qtbot, window, f"Something other than barkeep changed {sample_bar}: another program, or")
    assert window.bar.snapshot.product_by_id[3].price == 19.5
    press_on(qtbot, window.current.banner, "Check this bar…")
    dialog = window.findChild(CheckDialog)
    assert "Damage or another program changed it: product 3: it is not as" in dialog.told
    press_on(qtbot, dialog, "&Take it as it is")
    assert dialog.told == "The bar is taken as it is\n• product 3: it is not as barkeep wrote it."
    dialog.close()
    assert window.bar.check() == ()


def test_a_file_put_back_to_an_older_state_is_said(window, sample_bar, tmp_path, qtbot):
    older = tmp_path / "older.barkeep"
    shutil.copy(sample_bar, older)
    rename(window.bar, "Branch line bar")
    with closing(sqlite3.connect(older)) as kept, closing(sqlite3.connect(sample_bar)) as now:
        kept.backup(now)
    says(qtbot, window, f"{sample_bar} was put back to an older state, which is what is shown now.")
    assert window.bar_name.text() != "Branch line bar"
    assert window.actions_.undo.text() != "&Undo: Change settings"


def test_a_file_copied_over_by_an_older_one_is_said(window, sample_bar, tmp_path, qtbot):
    older = tmp_path / "older.barkeep"
    shutil.copy(sample_bar, older)
    rename(window.bar, "Branch line bar")
    shutil.copyfile(older, sample_bar)
    says(qtbot, window, "was put back to an older state")
    assert window.bar_name.text() != "Branch line bar"


def impatient(bar):
    """Whoever holds the file here holds it for longer than anybody waits."""
    with bar._session.store.reading() as connection:
        connection.exec_driver_sql("PRAGMA busy_timeout = 0")


def test_a_lock_is_a_sentence_with_try_again(open_window, bar, sample_bar, qtbot, monkeypatch):
    monkeypatch.setattr(following, "EVERY_MS", 3_600_000)
    window = open_window()
    impatient(bar)
    with Bar.open(sample_bar) as other:
        rename(other, "Renamed elsewhere")
    with closing(sqlite3.connect(sample_bar, isolation_level=None)) as holder:
        holder.execute("BEGIN EXCLUSIVE")
        window.current.focus_list()
        qtbot.keyClick(QApplication.focusWidget(), Keys.Key_F5)
        assert window.current.banner.text == (
            f"{sample_bar} is in use by another program just now, and nothing was changed. "
            "Try again in a moment."
        )
        holder.rollback()
    press_on(qtbot, window.current.banner, "Try again")
    assert window.bar_name.text() == "Renamed elsewhere"
    assert window.current.banner.text == ""


def test_nobody_waits_for_who_holds_the_file_and_it_is_read_afterwards(window, sample_bar, qtbot):
    with closing(sqlite3.connect(sample_bar, isolation_level=None)) as holder:
        holder.execute("BEGIN EXCLUSIVE")
        holder.execute("UPDATE setting SET value = '\"Held\"' WHERE key = 'name'")
        assert window.bar.follow() == "busy"
        assert window.current.banner.text == ""
        holder.commit()
    qtbot.waitUntil(lambda: window.bar_name.text() == "Held")
