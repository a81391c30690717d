"""Lines that may be meant otherwise, by keyboard in the real window: asked, and put right."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

PASTED = """Guest Book
750 ml gin per 12 guests
½ oz cinnamon
2 oz chilli-infused tequila

Stir.
"""


@pytest.fixture
def window(bar, qtbot, qapp, tmp_path):
    """The whole window over the sample bar, on the Specs page."""
    palette, sheet = qapp.palette(), qapp.styleSheet()
    shown = MainWindow(bar, WindowState(tmp_path / "window.ini"), Theme(qapp, "light"))
    shown.resize(1024, 640)
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    shown.show_page("specs")
    qtbot.waitUntil(lambda: not shown.background.is_busy, timeout=20_000)
    yield shown
    shown.close()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)


def said(widget) -> str:
    return "\n".join(each.text() for each in widget.findChildren(QLabel) if each.isVisible())


def button(editor, words) -> QPushButton:
    there = editor.findChildren(QPushButton)
    return next(each for each in there if each.isVisible() and words in each.text())


def test_the_likely_line_of_each_question_is_taken_with_a_key(window, bar, qtbot):
    def key(pressed, held=Qt.KeyboardModifier.NoModifier):
        qtbot.keyClick(QApplication.focusWidget(), pressed, held)

    screen = window.current
    QGuiApplication.clipboard().setText(PASTED)
    screen.view.setFocus()
    key(Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
    editor = screen.editor
    key(Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    asked = (
        "“per 12 guests” says that this is for 12; write what goes into one",
        "“cinnamon” may be cinnamon syrup or cinnamon liqueur",
        "“chilli-infused tequila” is more than tequila; likely a new ingredient",
    )
    qtbot.waitUntil(lambda: all(each in said(editor) for each in asked))
    for likely in ("62.5 ml gin", "½ oz cinnamon syrup"):
        button(editor, likely).setFocus()
        key(Qt.Key.Key_Space)
        qtbot.waitUntil(lambda likely=likely: likely in editor.text.toPlainText().split("\n"))
    assert "guests" not in editor.text.toPlainText()
    assert "more than tequila" in said(editor)
