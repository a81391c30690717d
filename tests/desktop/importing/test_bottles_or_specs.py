"""A text of free lines over the real window: where it reads like bottles, that is asked."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog, QMessageBox

from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.importing.specs import ImportSpecsDialog
from barkeep.desktop.shell.main_window import WindowHooks
from tests.desktop.pages import settle

LINES = "Hollow Lamp London dry gin 70 cl half\n2 x sweet vermouth 75 cl, sealed\n"


@pytest.fixture
def window(open_window, qtbot, tmp_path, monkeypatch):
    """The window, and `ask`: a text is chosen in it by keyboard, and the question that comes."""
    shown = open_window(WindowHooks(import_files=import_files, import_texts=import_texts))

    def ask(content: str) -> QMessageBox:
        file = tmp_path / "notes.txt"
        file.write_text(content)
        names = staticmethod(lambda *_asked: ([str(file)], ""))
        monkeypatch.setattr(QFileDialog, "getOpenFileNames", names)
        activate(shown, qtbot)
        held = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        qtbot.keyClick(shown, Qt.Key.Key_I, held)
        (box,) = (each for each in shown.findChildren(QMessageBox) if each.isVisible())
        activate(box, qtbot)
        return box

    shown.ask = ask
    return shown


def activate(window, qtbot) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()


def test_the_likely_answer_puts_the_lines_into_the_list_below_what_is_there(window, qtbot):
    window.go("bottle-list", None)
    window.current.edit.setPlainText("cognac 70 cl")
    box = window.ask(LINES)
    assert box.text() == "notes.txt reads like a list of bottles"
    assert box.informativeText() == "2 of its 2 lines name one."
    QTest.keyClick(box, Qt.Key.Key_Return)
    activate(window, qtbot)
    settle(window, qtbot)
    page = window.current
    assert page.key == "bottle-list" and page.edit.hasFocus()
    assert page.edit.toPlainText() == f"cognac 70 cl\n{LINES.strip()}"
    before = len(window.bar.snapshot.bottles)
    QTest.keyClick(page.edit, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    settle(window, qtbot)
    assert len(window.bar.snapshot.bottles) == before + 4


def test_they_are_read_as_specs_where_that_is_said_and_nothing_comes_where_neither_is(
    window, qtbot
):
    before = window.bar.snapshot
    box = window.ask(LINES)
    QTest.keyClick(box, Qt.Key.Key_Escape)
    settle(window, qtbot)
    assert window.current.key == "tonight" and window.bar.snapshot.bottles == before.bottles
    box = window.ask(LINES)
    specs = next(each for each in box.buttons() if "specs" in each.text())
    QTest.keyClick(specs, Qt.Key.Key_Space)
    settle(window, qtbot)
    (dialog,) = (each for each in window.findChildren(ImportSpecsDialog) if each.isVisible())
    assert dialog.table.rows
    dialog.reject()
