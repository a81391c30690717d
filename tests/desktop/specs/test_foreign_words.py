"""A German spec and a Spanish name, by keyboard in the real window: pasted, asked, saved, found."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from barkeep.desktop.bottles.labels import AddBottleDialog
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

Keys = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier

GERMAN = """Gleisdreieck

Zutaten:
5 cl weißer Rum
Saft einer halben Limette
1 oz jugo de limón
mit Sodawasser auffüllen
Garnitur: eine Limettenscheibe
Glas: coupe

Zubereitung:
Alles schütteln.
"""


@pytest.fixture
def window(bar, qtbot, qapp, tmp_path):
    """The whole window over the sample bar."""
    palette, sheet = qapp.palette(), qapp.styleSheet()
    shown = MainWindow(bar, WindowState(tmp_path / "window.ini"), Theme(qapp, "light"))
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    yield shown
    shown.close()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)


def go(window, page, qtbot):
    window.show_page(page)
    qtbot.waitUntil(lambda: not window.background.is_busy, timeout=20_000)
    return window.current


def said(widget) -> str:
    return "\n".join(each.text() for each in widget.findChildren(QLabel) if each.isVisible())


def test_a_german_spec_is_pasted_asked_about_and_saved_in_its_own_words(window, bar, qtbot):
    def key(pressed, held=Qt.KeyboardModifier.NoModifier):
        qtbot.keyClick(QApplication.focusWidget(), pressed, held)

    screen = go(window, "specs", qtbot)
    QGuiApplication.clipboard().setText(GERMAN)
    screen.view.setFocus()
    key(Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
    editor = screen.editor
    key(Keys.Key_V, CTRL)
    key(Keys.Key_S, CTRL)
    qtbot.waitUntil(lambda: "“jugo de limón”" in said(editor))
    offered = {each.text() for each in editor.findChildren(QPushButton) if each.isVisible()}
    assert {"lime juice", "lemon juice"} <= offered
    assert "Gleisdreieck" not in {spec.name for spec in bar.snapshot.specs}

    editor.text.go_to(6, 6)
    key(Keys.Key_End, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClicks(QApplication.focusWidget(), "Zitronensaft")
    key(Keys.Key_S, CTRL)
    spec = bar.specs.get("Gleisdreieck")
    assert [(line.text, line.amount, line.unit, line.ingredient) for line in spec.lines] == [
        ("5 cl weißer Rum", 5.0, "cl", "white-rum"),
        ("Saft einer halben Limette", 0.5, "each", "lime"),
        ("1 oz Zitronensaft", 1.0, "oz", "lemon-juice"),
        ("mit Sodawasser auffüllen", None, None, "soda-water"),
        ("Garnish: eine Limettenscheibe", 1.0, "each", "lime-wedge"),
    ]
    assert (spec.glass, spec.method) == ("coupe", "Alles schütteln.")


def test_a_foreign_name_in_a_bottles_form_is_the_kind_it_names(window, qtbot):
    screen = go(window, "bottles", qtbot)
    screen.actions_by_key["add"].trigger()
    dialog = screen.dialog
    assert isinstance(dialog, AddBottleDialog)
    field = dialog.edits["ingredient"]
    with qtbot.waitActive(dialog):
        dialog.activateWindow()
    field.setFocus()
    qtbot.waitUntil(field.hasFocus)
    qtbot.keyClicks(field, "succo di limone")
    qtbot.keyClick(QApplication.activePopupWidget() or field, Keys.Key_Tab)
    qtbot.waitUntil(lambda: field.text() == "Lemon juice")
    dialog.reject()
