"""Fixtures for tests of the desktop."""

from __future__ import annotations

import gc
from functools import partial

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication
from shiboken6 import isValid

from barkeep.application.bar import Bar
from barkeep.desktop.look.language import Language
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import PAGE, MainWindow, WindowHooks
from tests.desktop.pages import keep_every_part_open, settle
from tests.desktop.patience import WAIT_MS


@pytest.fixture(autouse=True)
def garbage_on_the_gui_thread():
    """As in the program: a widget in a cycle must not be destroyed by an answer's thread."""
    gc.disable()
    yield
    gc.collect(1)
    gc.enable()
    _delete_windows_left_over()


def _delete_windows_left_over() -> None:
    """Another look would restyle what a test left half taken apart, which takes long as well."""
    if QApplication.instance() is None:
        return
    for widget in QApplication.topLevelWidgets():
        if isValid(widget) and widget.parent() is None:
            widget.hide()
            widget.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.fixture
def qtbot(qtbot):
    """As it comes, but every wait has the one generous limit."""
    for name in ("waitUntil", "waitSignal", "waitSignals", "waitActive", "waitExposed"):
        setattr(qtbot, name, partial(getattr(qtbot, name), timeout=WAIT_MS))
    return qtbot


@pytest.fixture
def bar(sample_bar, clock):
    """The sample bar, open."""
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


@pytest.fixture
def empty_bar(tmp_path, clock):
    """A bar with nothing in it."""
    with Bar.open(tmp_path / "empty.bar", clock=clock) as opened:
        yield opened


@pytest.fixture
def theme(qapp):
    """barkeep's own look, put back afterwards."""
    palette, sheet, font = qapp.palette(), qapp.styleSheet(), qapp.font()
    made = Theme(qapp, "light")
    yield made
    _delete_windows_left_over()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)
    qapp.setFont(font)
    made.deleteLater()


@pytest.fixture
def german(qapp):
    """The program speaks German until the test ends."""
    language = Language(qapp, "de")
    yield language
    language.leave()


@pytest.fixture
def left_at(request) -> str:
    """The page that a window was left at, where a mark says so, and opens with.

    Where Tonight is no matter, its answer and its details take as long as the rest of a test.
    """
    said = request.node.get_closest_marker("left_at")
    return "" if said is None else said.args[0]


@pytest.fixture
def open_window(bar, theme, qtbot, tmp_path, left_at):
    """Opens real windows over the sample bar or another, all remembering in one file."""
    windows: list[MainWindow] = []

    def open_one(
        hooks: WindowHooks | None = None, over: Bar | None = None, *, parts_open: bool = True
    ) -> MainWindow:
        state = WindowState(tmp_path / "window.ini")
        if parts_open:
            keep_every_part_open(state)
        if left_at and not state.text(PAGE):
            state.keep_text(PAGE, left_at)
        window = MainWindow(over or bar, state, theme, hooks or WindowHooks())
        qtbot.addWidget(window, before_close_func=MainWindow.close_unasked)
        windows.append(window)
        with qtbot.waitActive(window):
            window.show()
            window.activateWindow()
        settle(window, qtbot)
        return window

    yield open_one
    for window in windows:
        window.close_unasked()


@pytest.fixture
def window(open_window):
    """The real window over the sample bar, without hooks."""
    return open_window()
