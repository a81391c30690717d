"""Two hands on one bar: the window, and another that writes to the same file beside it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.application.bar import Bar

Keys, Ctrl = Qt.Key, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def other(sample_bar, clock):
    """The same file, open once more as a command or another window would have it."""
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def rename(bar, name):
    bar.settings.change(replace(bar.snapshot.settings, name=name))


def open_bottle(bar):
    return next(each for each in bar.snapshot.bottles if each.level.state == "open")


def ctrl(qtbot, window, key, more=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or window, key, Ctrl | more)


# Undo takes back what its menu names


def test_undo_never_takes_back_what_its_menu_did_not_name(window, other, qtbot):
    rename(window.bar, "Branch line bar")
    assert window.actions_.undo.text() == "&Undo: Change settings"
    bottle = open_bottle(other)
    other.inventory.empty(bottle.id)
    label = f"Empty {bottle.product.title}"
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.bar.snapshot.settings.name == "Branch line bar"
    assert window.bar.snapshot.bottle_by_id[bottle.id].level.state == "empty"
    assert window.current.banner.text == (
        f"“Change settings” was followed by “{label}”, here, in another window or by a command, "
        f"so nothing was changed. Undo now means “{label}”."
    )
    assert window.actions_.undo.text() == f"&Undo: {label}".replace(" & ", " && ")
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.toast.text == f"Undone: {label}"
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.toast.text == "Undone: Change settings"


def test_what_another_has_undone_is_not_undone_twice(window, other, qtbot):
    rename(window.bar, "Branch line bar")
    other.refresh()
    other.undo()
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.current.banner.text == (
        "“Change settings” was undone already, here, in another window or by a command, "
        "so nothing was changed. There is nothing else to undo."
    )
    assert window.actions_.redo.text() == "&Redo: Change settings"


def test_redo_never_does_again_what_its_menu_did_not_name(window, other, qtbot):
    rename(window.bar, "Branch line bar")
    window.undo()
    other.refresh()
    other.redo()
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Z, Qt.KeyboardModifier.ShiftModifier)
    assert window.current.banner.text == (
        "“Change settings” was done again already, here, in another window or by a command, "
        "so nothing was changed. There is nothing else to redo."
    )


def test_the_undo_of_a_toast_takes_back_what_the_toast_says(window, other, qtbot):
    page = window.show_page("specs")
    spec = window.bar.snapshot.specs[0]
    page.show_thing(spec.name)
    page.remove_current()
    assert window.toast.text == f"Removed {spec.name}"
    rename(other, "Renamed elsewhere")
    undo = next(each for each in window.toast.findChildren(QPushButton) if each.text() == "Undo")
    undo.setFocus()
    qtbot.keyClick(undo, Keys.Key_Space)
    assert window.bar.snapshot.settings.name == "Renamed elsewhere"
    assert "was followed by “Change settings”" in page.banner.text
