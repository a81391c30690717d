"""Backups and removed things in the real window: by keyboard, over a real bar."""

from __future__ import annotations

import shutil

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QFileDialog, QLabel, QMessageBox
from shiboken6 import isValid

from barkeep.application.bar import Bar
from barkeep.desktop.shell.backups import BackupsDialog, RestoreDialog
from barkeep.desktop.shell.removed import RemovedDialog
from tests.desktop.pages import settle

pytestmark = pytest.mark.left_at("bottles")

ALT = Qt.KeyboardModifier.AltModifier


def backups_dialog(window, qtbot) -> BackupsDialog:
    keys = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    qtbot.keyClick(window, Qt.Key.Key_U, keys)
    (dialog,) = window.findChildren(BackupsDialog)
    qtbot.waitUntil(dialog.isVisible)
    return dialog


def cells(dialog) -> list[list[str]]:
    table = dialog.table
    return [
        [table.index(row, column).data() for column in range(table.columnCount())]
        for row in range(table.rowCount())
    ]


def press(dialog, key, window, qtbot) -> None:
    """Press a button of a dialog by its letter."""
    dialog.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is dialog)
    buttons = dialog.findChildren(QAbstractButton)
    qtbot.keyClick(QApplication.focusWidget() or dialog, key, ALT)
    # One that is pressed by its letter stays down for a moment before it clicks.
    qtbot.waitUntil(lambda: not any(isValid(each) and each.isDown() for each in buttons))
    settle(window, qtbot)


def test_a_backup_is_made_and_listed_with_what_is_in_it(window, qtbot):
    dialog = backups_dialog(window, qtbot)
    assert dialog.table.rows == () and not dialog.restore_button.isEnabled()
    press(dialog, Qt.Key.Key_U, window, qtbot)
    (row,) = cells(dialog)
    assert row[:2] == ["2026-11-21 12:00", "asked for"]
    assert row[2].endswith(" kB")
    assert row[3:] == [
        "81 bottles, 21 specs and 6 shoots",
        "2026-11-21 12:00, Add shoot Summer Excursion",
    ]
    assert dialog.banner.text.startswith("Backed up to ")
    assert f"{window.bar.path.name}.backups" in dialog.where.text()


def restored(window, qtbot, dialog) -> RestoreDialog:
    press(dialog, Qt.Key.Key_R, window, qtbot)
    qtbot.waitUntil(lambda: any(each.isVisible() for each in dialog.findChildren(RestoreDialog)))
    return next(each for each in dialog.findChildren(RestoreDialog) if each.isVisible())


def test_one_is_set_beside_the_bar_and_put_in_its_place(window, qtbot):
    dialog = backups_dialog(window, qtbot)
    press(dialog, Qt.Key.Key_U, window, qtbot)
    before = window.bar.snapshot.bottles
    window.bar.inventory.remove(before[0].id)
    question = restored(window, qtbot, dialog)
    told = [label.text() for label in question.findChildren(QLabel)]
    assert "80" in told and "81" in told
    assert any("Remove Pellow & Rudge" in each for each in told)
    assert any("is kept as a backup first" in each for each in told)
    qtbot.keyClick(question, Qt.Key.Key_Escape)
    assert len(window.bar.snapshot.bottles) == len(before) - 1
    question = restored(window, qtbot, dialog)
    press(question, Qt.Key.Key_R, window, qtbot)
    qtbot.waitUntil(lambda: window.bar.snapshot.bottles == before)
    assert "The bar holds 81 bottles, 21 specs and 6 shoots now. What was there is kept" in (
        dialog.banner.text
    )
    assert [row[1] for row in cells(dialog)] == ["before restore", "asked for"]
    assert not window.actions_.undo.isEnabled()  # as it was when that backup was made


def test_a_document_of_the_whole_bar_goes_out_and_in(window, qtbot, tmp_path, monkeypatch):
    document = tmp_path / "all"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_args: (str(document), ""))
    window.actions_.export_everything.trigger()
    assert window.toast.text == f"The whole bar is written to {document}.json"
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args: (f"{document}.json", ""))
    before = window.bar.snapshot.bottles
    window.bar.inventory.remove(before[3].id)
    dialog = backups_dialog(window, qtbot)
    press(dialog, Qt.Key.Key_F, window, qtbot)
    qtbot.waitUntil(lambda: bool(dialog.findChildren(RestoreDialog)))
    (question,) = dialog.findChildren(RestoreDialog)
    press(question, Qt.Key.Key_R, window, qtbot)
    qtbot.waitUntil(lambda: window.bar.snapshot.bottles == before)


def test_a_file_that_is_no_bar_is_refused_in_the_dialog(window, qtbot, tmp_path, monkeypatch):
    other = tmp_path / "letter.txt"
    other.write_text("Dear diary", encoding="utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args: (str(other), ""))
    dialog = backups_dialog(window, qtbot)
    press(dialog, Qt.Key.Key_F, window, qtbot)
    assert dialog.banner.text == f"{other} cannot be used: it is not a SQLite file."


def test_where_they_are_kept_is_chosen_and_undone(window, qtbot, tmp_path, monkeypatch):
    disk = tmp_path / "disk"
    disk.mkdir()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_args: str(disk))
    dialog = backups_dialog(window, qtbot)
    assert not dialog.beside_button.isVisible()
    press(dialog, Qt.Key.Key_W, window, qtbot)
    assert window.bar.snapshot.settings.backups == str(disk)
    press(dialog, Qt.Key.Key_U, window, qtbot)
    assert [each.path.parent.parent for each in dialog.table.rows] == [disk]
    press(dialog, Qt.Key.Key_B, window, qtbot)
    assert window.bar.snapshot.settings.backups == ""


def test_a_read_only_bar_says_so_and_refuses_each_write(
    sample_bar, open_window, qtbot, monkeypatch, clock
):
    monkeypatch.setattr("barkeep.store.looking.os.access", lambda _path, _mode: False)
    with Bar.open(sample_bar, clock=clock) as bar:
        window = open_window(over=bar)
        assert window.saved.text() == "Read-only"
        window.undo()
        dialog = backups_dialog(window, qtbot)
        assert not dialog.restore_button.isEnabled()
        assert dialog.file_button.toolTip() == "The bar is read-only"
        dialog.close()
        monkeypatch.setattr(
            "barkeep.desktop.shell.main_window.QFileDialog.getSaveFileName",
            lambda *_args: ("", ""),
        )
        removed = bar.snapshot.bottles[0]
        window.actions_.removed.trigger()
        (dialog,) = window.findChildren(RemovedDialog)
        assert not dialog.back_button.isEnabled()
        assert bar.snapshot.bottles[0] == removed


def test_what_was_removed_is_brought_back_and_undone(window, qtbot):
    bottle, spec = window.bar.snapshot.bottles[0], window.bar.snapshot.specs[0]
    window.bar.inventory.remove(bottle.id)
    window.bar.specs.remove(spec.id)
    window.actions_.removed.trigger()
    (dialog,) = window.findChildren(RemovedDialog)
    assert {(row[0], row[1]) for row in cells(dialog)} == {
        ("bottle", bottle.product.title),
        ("spec", spec.name),
    }
    place = [row[0] for row in cells(dialog)].index("bottle")
    dialog.view.selectRow(place)
    press(dialog, Qt.Key.Key_B, window, qtbot)
    assert dialog.banner.text == f"{bottle.product.title} is back"
    assert bottle in window.bar.snapshot.bottles
    assert [row[0] for row in cells(dialog)] == ["spec"]
    assert window.bar.undo_label == f"Bring back {bottle.product.title}"
    window.undo()
    assert bottle not in window.bar.snapshot.bottles


def test_a_name_that_is_taken_by_now_is_refused_in_the_dialog(window, qtbot):
    spec = window.bar.snapshot.specs[0]
    window.bar.specs.remove(spec.id)
    window.bar.specs.add([spec])
    window.actions_.removed.trigger()
    (dialog,) = window.findChildren(RemovedDialog)
    press(dialog, Qt.Key.Key_B, window, qtbot)
    taken = f"There is already a spec called “{spec.name}”; choose another name."
    assert dialog.banner.text == taken


# The whole program


def test_the_program_keeps_the_days_backup_and_says_where_it_cannot(desktop, sample_bar, qtbot):
    folder = sample_bar.with_name(f"{sample_bar.name}.backups")
    assert desktop.start(sample_bar)
    assert not folder.exists()
    bar = desktop.window.bar
    bar.inventory.remove(bar.snapshot.bottles[0].id)
    (kept,) = folder.iterdir()
    assert kept.name.endswith(" daily.barkeep")
    shutil.rmtree(folder)
    folder.write_text("in the way", encoding="utf-8")
    assert desktop.start(sample_bar)  # another day, another program
    bar = desktop.window.bar
    bar.inventory.remove(bar.snapshot.bottles[0].id)
    assert desktop.window.toast.text.startswith(f"No backup of {sample_bar} could be made: ")


def test_a_damaged_bar_is_offered_its_backup_at_the_start(desktop, sample_bar, monkeypatch):
    with Bar.open(sample_bar) as bar:
        backup = bar.backups.make()
        bottles = bar.snapshot.bottles
    sample_bar.write_bytes(b"\xff" * 5000)
    told: list[str] = []

    def choose(box: QMessageBox) -> int:
        told.append(box.informativeText())
        next(each for each in box.buttons() if each.text() == "Restore that backup").click()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", choose)
    assert desktop.start(sample_bar)
    assert f"Its newest good backup is “{backup.name}” of " in told[0]
    assert desktop.window.bar.snapshot.bottles == bottles


@pytest.mark.parametrize("agreed", [True, False])
def test_a_damaged_bar_that_is_opened_from_the_window_is_offered_its_backup(
    desktop, sample_bar, tmp_path, monkeypatch, agreed
):
    other = tmp_path / "other.barkeep"
    shutil.copyfile(sample_bar, other)
    with Bar.open(other) as bar:
        bar.backups.make()
    other.write_bytes(b"\xff" * 5000)
    assert desktop.start(sample_bar)
    word = "Restore that backup" if agreed else "Cancel"
    monkeypatch.setattr(
        QMessageBox,
        "exec",
        lambda box: next(each for each in box.buttons() if each.text() == word).click() or 0,
    )
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_args: (str(other), ""))
    desktop.window.actions_.open_bar.trigger()
    shown = desktop.window
    assert shown.bar.path == (other if agreed else sample_bar)
    if not agreed:
        assert "Its newest good backup is “" in shown.current.banner.text
        assert other.read_bytes() == b"\xff" * 5000
