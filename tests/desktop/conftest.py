"""Fixtures for tests of the desktop."""

from __future__ import annotations

import gc

import pytest
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication
from shiboken6 import isValid

from barkeep.application.bar import Bar


@pytest.fixture(autouse=True)
def garbage_on_the_gui_thread():
    """As in the program: a widget in a cycle must not be destroyed by an answer's thread."""
    gc.disable()
    yield
    gc.collect(1)
    gc.enable()
    _delete_windows_left_over()


def _delete_windows_left_over() -> None:
    """A later test's theme would restyle what an earlier one left half taken apart."""
    if QApplication.instance() is None:
        return
    for widget in QApplication.topLevelWidgets():
        if isValid(widget) and widget.parent() is None:
            widget.hide()
            widget.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


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
