"""All bottles go out of the window by a list, and the window takes them in again."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog

from barkeep.desktop.importing.bottles import ImportDialog
from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.shell.main_window import WindowHooks
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]


def test_the_bottles_go_out_by_menu_and_are_known_when_they_come_back(
    open_window, bar, qtbot, tmp_path, monkeypatch
):
    window = open_window(WindowHooks(import_files=import_files, import_texts=import_texts))
    asked = []

    def named(_parent, title, offered, _kinds):
        asked.append((title, offered))
        return str(tmp_path / "shelf"), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", staticmethod(named))
    file = tmp_path / "shelf.csv"
    monkeypatch.setattr(
        QFileDialog, "getOpenFileNames", staticmethod(lambda *_asked: ([str(file)], ""))
    )
    with qtbot.waitActive(window):
        window.activateWindow()
    menu = window.actions_.export_bottles.associatedObjects()[0]
    menu.popup(window.mapToGlobal(window.rect().center()))
    qtbot.keyClick(menu, Qt.Key.Key_E)
    assert asked == [("Export bottles", str(bar.path.with_name("bottles.csv")))]
    assert window.toast.text == f"All bottles are written to {file}"

    qtbot.keyClick(window, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    settle(window, qtbot)
    (dialog,) = (each for each in window.findChildren(ImportDialog) if each.isVisible())
    model = dialog.view.model()
    assert model.rowCount() == len(bar.snapshot.bottles)
    assert {model.index(row, 4).data() for row in range(model.rowCount())} == {"Is left out"}
