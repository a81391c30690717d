"""Language: chosen in the menu, spoken by a window made anew, kept, and English again after."""

from __future__ import annotations

from PySide6.QtWidgets import QMenuBar

from barkeep.desktop.shell.main import LANGUAGE
from tests.desktop.pages import settle


def menus_of(window) -> list[str]:
    return [each.text() for each in window.findChild(QMenuBar).actions()]


def test_another_language_is_spoken_at_once_and_next_time(desktop, sample_bar, qtbot):
    assert desktop.start(sample_bar)
    settle(desktop.window, qtbot)
    first, english = desktop.window, menus_of(desktop.window)
    first.actions_.languages["de"].trigger()
    qtbot.waitUntil(lambda: desktop.window is not None and desktop.window is not first)
    settle(desktop.window, qtbot)
    assert menus_of(desktop.window) != english
    assert desktop.window.actions_.languages["de"].isChecked()
    assert desktop.program.text(LANGUAGE, "") == "de"
    second = desktop.window
    second.actions_.languages["en"].trigger()
    qtbot.waitUntil(lambda: desktop.window is not second)
    settle(desktop.window, qtbot)
    assert menus_of(desktop.window) == english
