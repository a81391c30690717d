"""Widgets in cycles are destroyed on the GUI thread only."""

from __future__ import annotations

import gc
import threading

import shiboken6
from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QWidget

from barkeep.desktop.screens.background import Background
from barkeep.desktop.shell.opening import GarbageOnThisThread


class Cyclic(QObject):
    """Holds itself, and says on which thread it went."""

    def __init__(self, went: list[int]) -> None:
        super().__init__()
        self.itself = self
        self.went = went

    def __del__(self) -> None:
        self.went.append(threading.get_ident())


def allocate() -> int:
    """Far more than it takes to set the collector off."""
    return len([[number] for number in range(200_000)])


def test_a_busy_answer_collects_nothing_and_the_gui_thread_does(qtbot):
    went: list[int] = []
    garbage = GarbageOnThisThread()
    try:
        Cyclic(went)
        background = Background()
        background.ask("busy", allocate, lambda _answer: None)
        qtbot.waitUntil(lambda: not background.is_busy)
        assert went == []
        kept = [[number] for number in range(gc.get_threshold()[0] + 1)]  # a collection is due
        garbage.collect()
        assert kept
        assert went == [threading.get_ident()]
    finally:
        garbage.stop()
    assert gc.isenabled()


def test_a_large_answer_is_looked_through_when_nobody_uses_the_window(qtbot):
    went: list[int] = []
    window = QWidget()
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    garbage = GarbageOnThisThread()
    try:
        Cyclic(went)
        answer = [[number] for number in range(100_000)]
        garbage.collect()
        assert went == [] and gc.get_freeze_count() > len(answer)
        shiboken6.delete(window)
        qtbot.waitUntil(lambda: QGuiApplication.focusWindow() is None)
        garbage.collect()
        assert went == [threading.get_ident()] and gc.get_freeze_count() == 0
    finally:
        garbage.stop()
