"""Text size: chosen in the menu, kept, and followed by rows, columns and what is beside them."""

from __future__ import annotations

from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QTableView

from barkeep.desktop.look.metrics import TypeSize, font_of, scaled
from barkeep.desktop.shell.main import TEXT_SIZE
from tests.desktop.pages import settle


def row_and_type(window) -> tuple[int, int]:
    """How high a row of the shown list is, and how high its two lines of words are."""
    view = window.current.findChild(QTableView)
    words = QFontMetrics(view.font()).height()
    return view.rowHeight(0), words + QFontMetrics(font_of(TypeSize.CAPTION)).height()


def test_twice_as_large_text_has_room_in_its_rows_and_is_there_next_time(
    desktop, sample_bar, qtbot
):
    assert desktop.start(sample_bar)
    settle(desktop.window, qtbot)
    before, _ = row_and_type(desktop.window)
    rail = desktop.window.navigation.sizeHint().width()
    first = desktop.window
    first.actions_.text_sizes["largest"].trigger()
    qtbot.waitUntil(lambda: desktop.window is not None and desktop.window is not first)
    settle(desktop.window, qtbot)
    high, words = row_and_type(desktop.window)
    assert high >= words and high > before
    assert scaled(100) > 170
    assert desktop.window.actions_.text_sizes["largest"].isChecked()
    assert desktop.window.navigation.sizeHint().width() <= 2.2 * rail
    assert desktop.program.text(TEXT_SIZE, "") == "largest"
    second = desktop.window
    second.actions_.text_sizes["plain"].trigger()
    qtbot.waitUntil(lambda: desktop.window is not second)
    settle(desktop.window, qtbot)
    assert row_and_type(desktop.window)[0] == before
