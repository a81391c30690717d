"""A bottle to buy comes on the shopping list from where it is seen to be missing, by few keys.

What each way takes is printed (`-s`).
"""

from __future__ import annotations

from contextlib import contextmanager

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.buying.shopping import NEED, WHAT, WHY, ShoppingDialog
from tests.desktop.first_hour.test_first_hour_story import Hand
from tests.desktop.pages import said_in, settle

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

KEYS = Qt.Key
CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
MOST_KEYS = 10


def listed_rows(dialog: ShoppingDialog) -> dict[str, tuple[str, str]]:
    """What the list shows, each with its need and why."""
    cell = dialog.table.item
    rows = range(dialog.table.rowCount())
    return {cell(row, WHAT).text(): (cell(row, NEED).text(), cell(row, WHY).text()) for row in rows}


@contextmanager
def shopping_list(window, qtbot, hand):
    """The list as it is opened by its key; the window is in hand again after it."""
    hand.key(KEYS.Key_L, CTRL)
    (dialog,) = (each for each in window.findChildren(ShoppingDialog) if each.isVisible())
    qtbot.waitUntil(lambda: dialog.ready)
    yield dialog
    dialog.reject()
    with qtbot.waitActive(window):
        window.activateWindow()
    settle(window, qtbot)


def test_from_next_bottle_three_keys_put_it_on_the_list_and_one_takes_it_off(window, qtbot):
    hand = Hand()
    settle(window, qtbot)
    with shopping_list(window, qtbot, Hand()) as dialog:
        before = listed_rows(dialog)
    assert "Vodka" not in before

    hand.key(KEYS.Key_5, CTRL)
    settle(window, qtbot)
    assert window.current.key == "next-bottle"
    assert said_in(window.current.detail)[0] == "Vodka"  # which turns most ready
    hand.key(KEYS.Key_L, CTRL | SHIFT)
    assert QApplication.activeModalWidget() is None  # done in place, and undone in place
    assert window.toast.text == "Vodka is on the shopping list"
    with shopping_list(window, qtbot, hand) as dialog:
        after = listed_rows(dialog)
    print(f"\nfrom Next bottle: {hand.keys} keys")
    assert after == {**before, "Vodka": ("as listed", "you put it on the list")}
    assert hand.keys == 3 and hand.clicks == 0

    hand.key(KEYS.Key_Z, CTRL)
    with shopping_list(window, qtbot, Hand()) as dialog:
        assert listed_rows(dialog) == before


def test_from_what_tonight_says_is_missing_it_is_found_in_next_bottle(window, qtbot):
    hand = Hand()
    settle(window, qtbot)
    window.current.also_short.click()
    window.current.search_for("Corpse Reviver No. 2")
    settle(window, qtbot)
    lacking = "No absinthe in the bar, and nothing close enough to stand in for it."
    assert lacking in said_in(window.current.detail)

    hand.key(KEYS.Key_5, CTRL)
    settle(window, qtbot)
    for letter in "absin":  # a list finds what is typed over it
        hand.key(KEYS[f"Key_{letter.upper()}"])
    settle(window, qtbot)
    assert said_in(window.current.detail)[0] == "Absinthe"
    hand.key(KEYS.Key_L, CTRL | SHIFT)
    assert window.toast.text == "Absinthe is on the shopping list"
    with shopping_list(window, qtbot, hand) as dialog:
        assert listed_rows(dialog)["Absinthe"] == ("as listed", "you put it on the list")
    print(f"\nfrom a line missing Tonight: {hand.keys} keys")
    assert hand.keys <= MOST_KEYS and hand.clicks == 0
