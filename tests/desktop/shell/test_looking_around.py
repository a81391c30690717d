"""From an empty bar to the sample bar and home again, in the running program and by keys alone."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.desktop.shell.main_window import GO_HOME, SAMPLE
from tests.desktop.pages import settle

MOST_STEPS = 60
"""More than a page has places for the keyboard."""


def active(desktop, qtbot):
    """The window of the bar that is shown, with the keyboard."""
    window = desktop.window
    with qtbot.waitActive(window):
        window.activateWindow()
    settle(window, qtbot)
    return window


def press(words: str) -> None:
    """Go on with Tab until a button that says this has the keyboard, and press it."""
    for _step in range(MOST_STEPS):
        here = QApplication.focusWidget()
        if isinstance(here, QPushButton) and here.text().replace("&", "") == words:
            QTest.keyClick(here, Qt.Key.Key_Space)
            return
        QTest.keyClick(here, Qt.Key.Key_Tab)
    raise AssertionError(f"no key leads to “{words}”")


def test_looking_around_the_sample_bar_and_going_home(desktop, tmp_path, qtbot):
    own = tmp_path / "own.barkeep"
    assert desktop.start(own, new=True)
    empty = active(desktop, qtbot)
    assert empty.current.greeting.isVisible() and not empty.of_sample.isVisible()
    press("Look around the sample bar")
    qtbot.waitUntil(lambda: desktop.window is not empty)
    sample = active(desktop, qtbot)
    assert sample.of_sample.isVisible() and sample.of_sample.text == SAMPLE
    assert sample.current.summary.text().startswith("103 ready")
    assert not sample.current.greeting.isVisible()
    bottle = sample.bar.snapshot.bottles[0]
    sample.bar.inventory.empty(bottle.id)  # nothing done here is kept
    copy = sample.bar.path
    press(GO_HOME)
    qtbot.waitUntil(lambda: desktop.window is not sample)
    home = active(desktop, qtbot)
    assert home.bar.path == own and home.bar.snapshot.bottles == ()
    assert home.current.greeting.isVisible() and not home.of_sample.isVisible()
    press("Look around the sample bar")
    qtbot.waitUntil(lambda: desktop.window is not home)
    again = active(desktop, qtbot)
    assert again.bar.path != copy
    assert again.bar.snapshot.bottle_by_id[bottle.id] == bottle
