"""Amounts behind a lead-in, by keyboard in the real window: pasted, asked about, saved, batched."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel

from barkeep.desktop.look.theme import Theme
from barkeep.desktop.making.batch import BatchDialog
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow
from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.spec_text.text import read_specs

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


Keys = Qt.Key

CTRL = Qt.KeyboardModifier.ControlModifier

SWALLOWED = """Down Distant
~2 oz gin
and 20 ml lime juice
(optional) 2 dashes saline solution
simple syrup, as it needs
Harbour 2 oz rye

Shake with ice.
"""


@pytest.fixture
def window(bar, qtbot, qapp, tmp_path):
    """The whole window over the sample bar, on the Specs page."""
    palette, sheet = qapp.palette(), qapp.styleSheet()
    shown = MainWindow(bar, WindowState(tmp_path / "window.ini"), Theme(qapp, "light"))
    qtbot.addWidget(shown)
    activate(shown, qtbot)
    shown.show_page("specs")
    settle(shown, qtbot)
    yield shown
    shown.close()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)


def activate(shown, qtbot):
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()


def settle(shown, qtbot):
    qtbot.waitUntil(lambda: not shown.background.is_busy, timeout=20_000)


def said(widget) -> str:
    return "\n".join(each.text() for each in widget.findChildren(QLabel) if each.isVisible())


def test_what_was_not_understood_is_asked_and_what_a_batch_leaves_out_is_named(window, bar, qtbot):
    def key(pressed, held=Qt.KeyboardModifier.NoModifier):
        qtbot.keyClick(QApplication.focusWidget(), pressed, held)

    screen = window.current
    QGuiApplication.clipboard().setText(SWALLOWED)
    screen.view.setFocus()
    key(Keys.Key_N, CTRL)
    editor_is_there = lambda: screen.editor is not None and screen.editor.text.hasFocus()  # noqa: E731
    qtbot.waitUntil(editor_is_there)
    editor = screen.editor
    key(Keys.Key_V, CTRL)
    key(Keys.Key_S, CTRL)
    qtbot.waitUntil(lambda: "“2 oz” was not understood as the amount" in said(editor))
    names = [spec.name for spec in bar.snapshot.specs]
    assert "Down Distant" not in names

    editor.text.go_to(6, 1)
    key(Keys.Key_End, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClicks(QApplication.focusWidget(), "2 oz Harbour rye")
    key(Keys.Key_S, CTRL)
    lines = bar.specs.get("Down Distant").lines
    assert [(each.amount, each.unit, each.note) for each in lines] == [
        (2.0, "oz", "about"),
        (20.0, "ml", ""),
        (2.0, "dash", ""),
        (None, None, "as it needs"),
        (2.0, "oz", "Harbour"),
    ]
    assert [each.optional for each in lines] == [False, False, True, False, False]
    settle(window, qtbot)
    activate(window, qtbot)

    screen.show_thing("Down Distant")
    settle(window, qtbot)
    screen.focus_list()
    key(Keys.Key_B, CTRL)
    batch = window.findChild(BatchDialog)
    qtbot.waitUntil(batch.isVisible)
    for words in (
        "Not in the batch: “(optional) 2 dashes saline solution”, for it is optional.",
        "Not in the batch: “simple syrup, as it needs”, for it gives no amount.",
    ):
        assert words in said(batch)
    batch.reject()


def test_a_shoot_names_the_line_whose_amount_it_guesses(window, bar, qtbot):
    text = "Bare Post\n2 oz gin\nsimple syrup, as it needs\n\nShake.\n"
    (read,) = read_specs(text, bar.snapshot.knowledge.tree)
    bar.specs.add([read.spec])
    shoot = bar.shoots.add(
        Shoot(None, "Bare night", date(2099, 1, 2), (ShootDrink(None, "Bare Post"),))
    ).value
    window.show_page("shoots")
    settle(window, qtbot)
    window.current.show_thing(shoot.id)
    settle(window, qtbot)
    words = "90 ml a serve is guessed in Bare Post: “simple syrup, as it needs”"
    qtbot.waitUntil(lambda: words in said(window))
