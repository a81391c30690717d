"""The window over a team's bar, on a PostgreSQL server."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QMessageBox, QPushButton

from barkeep.application.bar import Bar
from barkeep.desktop.shell import following
from barkeep.desktop.shell.server_bar import ServerBarDialog
from barkeep.store.address import read_address
from barkeep.store.place import place_of
from tests import servers
from tests.desktop.pages import settle

Keys = Qt.Key


@pytest.fixture(autouse=True)
def looks_at_once_and_keeps_here(monkeypatch, tmp_path):
    """No test waits for a clock, and none keeps anything in the folders of whoever runs it."""
    monkeypatch.setattr(following, "EVERY_MS", 0)
    monkeypatch.setattr(following, "RESTS", 0)
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))


def says(qtbot, window, words):
    qtbot.waitUntil(lambda: words in window.current.banner.text)


def shown_by(desktop, qtbot):
    window = desktop.window
    with qtbot.waitActive(window):
        window.activateWindow()
    settle(window, qtbot)
    return window


def rename(address, name):
    with Bar.open(address, new=False) as other:
        other.settings.change(replace(other.snapshot.settings, name=name))


def test_it_follows_others_and_a_server_that_goes_and_comes_back(
    desktop, own_server, sample_bar, qtbot
):
    server = own_server
    server.run(f"GRANT CREATE ON DATABASE bars TO {servers.LOCKED}", "bars")
    bare = server.as_user(servers.LOCKED).new_bar()
    address = bare.replace("@", f":{servers.PASSWORD}@")
    place_of(address).put_in_place(sample_bar)
    assert desktop.start(address)
    window, name = shown_by(desktop, qtbot), read_address(address).name
    assert window.windowTitle() == f"{window.bar.snapshot.settings.name} ({name}) – barkeep"
    assert window.saved.toolTip() == f"Every change is in {name} at once"
    assert servers.PASSWORD not in name

    rename(address, "Renamed elsewhere")
    qtbot.waitUntil(lambda: window.bar_name.text() == "Renamed elsewhere")
    assert window.actions_.undo.text() == "&Undo: Change settings"

    server.stop("immediate")
    says(qtbot, window, f"{name} cannot be reached just now.")
    assert window.saved.text() == "Out of reach"
    window.current.focus_list()
    qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Z, Qt.KeyboardModifier.ControlModifier)
    says(qtbot, window, "cannot be used just now: no connection to the server can be made")
    assert window.bar_name.text() == "Renamed elsewhere"

    server.start()
    says(qtbot, window, f"{name} can be reached again.")
    assert window.saved.text() == "Saved"
    window.current.focus_list()
    qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.toast.text == "Undone: Change settings"
    with Bar.open(address, new=False) as other:
        assert other.snapshot == window.bar.snapshot
    kept = [each for each in desktop.state.folder.rglob("*") if each.is_file()]
    assert kept and not any(servers.PASSWORD.encode() in each.read_bytes() for each in kept)


def press_alt(qtbot, window, *keys):
    """Go through a menu by its letters."""
    qtbot.keyClick(window.menuBar(), keys[0], Qt.KeyboardModifier.AltModifier)
    for key in keys[1:]:
        qtbot.waitUntil(lambda: QApplication.activePopupWidget() is not None)
        qtbot.keyClick(QApplication.activePopupWidget(), key)


@pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
def test_one_is_opened_and_begun_from_the_menu_by_keyboard(desktop, server, sample_bar, qtbot):
    address = server.new_bar()
    assert desktop.start(sample_bar)
    window = shown_by(desktop, qtbot)
    press_alt(qtbot, window, Keys.Key_F, Keys.Key_R)
    dialog = window.findChild(ServerBarDialog)
    qtbot.waitUntil(dialog.isActiveWindow)
    qtbot.keyClicks(dialog.address, "postgresql://here")
    qtbot.keyClick(dialog.address, Keys.Key_Return)
    assert dialog.problem("address") == "Postgresql://here/ cannot be used: it names no database."
    dialog.address.clear()
    qtbot.keyClicks(dialog.address, address)
    qtbot.keyClick(dialog.address, Keys.Key_Return)
    says(qtbot, window, f"There is no bar in {read_address(address).name}: there is no schema")

    press_alt(qtbot, window, Keys.Key_F, Keys.Key_R)
    dialog = window.findChildren(ServerBarDialog)[-1]
    qtbot.waitUntil(dialog.isActiveWindow)
    qtbot.keyClicks(dialog.address, address)
    qtbot.keyClick(dialog.new, Keys.Key_Space)
    qtbot.keyClick(dialog.address, Keys.Key_Return)
    qtbot.waitUntil(lambda: desktop.window is not window)
    new = shown_by(desktop, qtbot)
    assert new.windowTitle() == f"My bar ({read_address(address).name}) – barkeep"
    with Bar.open(address, new=False) as other:
        assert other.snapshot == new.bar.snapshot


def test_one_that_cannot_be_reached_says_why_and_another_may_be_named(
    desktop, server, tmp_path, qtbot
):
    """The address stands in the dialog as it was given, but for its password, which is hidden."""
    wrong = f"postgresql://team:{servers.PASSWORD}@/bars?host={tmp_path}"
    right, told = server.new_bar(), []

    def look():
        front = QApplication.activeModalWidget()
        if isinstance(front, QMessageBox):
            told.append(front.informativeText())
            (button,) = (
                each for each in front.findChildren(QPushButton) if "&server" in each.text()
            )
            qtbot.keyClick(button, Keys.Key_Space)
        elif isinstance(front, ServerBarDialog):
            told.append(front.address.text())
            front.address.setText(right)
            front.new.setChecked(True)
            timer.stop()
            qtbot.keyClick(front.address, Keys.Key_Return)

    timer = QTimer(interval=0)
    timer.timeout.connect(look)
    timer.start()
    assert desktop.start(wrong)
    name = f"postgresql://team@/bars?host={tmp_path}"
    assert told[0].startswith(f"{name} cannot be used just now: no connection to the server")
    assert told[1] == name
    assert desktop.window.bar.is_new and desktop.window.bar.where == read_address(right).name
