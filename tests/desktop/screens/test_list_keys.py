"""The keys of every list, in the real window: typing to a row, the next one, copying, the menu."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QMenu

from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]
CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


def page_by_key(window, qtbot, number):
    """A page gone to by its key, from wherever the keyboard is."""
    key = Qt.Key(Qt.Key.Key_0.value + number)
    settle(window, qtbot)
    if not window.isActiveWindow():  # a dialog was closed, and offscreen nobody gives it back
        with qtbot.waitActive(window):
            window.activateWindow()
    qtbot.keyClick(window, key, CONTROL)
    settle(window, qtbot)
    return window.current


def menu_words(menu):
    return [each.text().replace("&", "") for each in menu.actions() if not each.isSeparator()]


def test_a_page_has_its_list_in_hand_on_arrival(window, qtbot, subtests):
    for number in (2, 3, 4, 5, 6, 1):
        with subtests.test(number=number):
            page = page_by_key(window, qtbot, number)
            assert page.list_stack.view.hasFocus()
            assert page.list_stack.view.currentIndex().isValid()


def test_letters_go_to_a_row_however_slowly_they_come(window, qtbot, subtests):
    page = page_by_key(window, qtbot, 2)
    for typed, name in (
        ("lamp", "Lamp Room dry gin"),
        ("CREME DE CAC", "White crème de cacao"),
        ("cachaca", "Green Field cachaça"),
        ("oud", "Malt Floor oude genever"),
    ):
        with subtests.test(typed=typed):
            qtbot.keyClick(page.view, Qt.Key.Key_Home, CONTROL)
            for letter in typed:
                qtbot.keyClicks(page.view, letter)
            assert page.current.bottle.product.name == name
            assert page.list_keys.shown.text() == typed


def test_a_letter_that_fits_nothing_begins_anew_and_esc_ends(window, qtbot):
    page = page_by_key(window, qtbot, 2)
    qtbot.keyClicks(page.view, "ginfal")
    assert page.current.bottle.product.name == "Falernum"
    assert page.list_keys.shown.text() == "fal"
    qtbot.keyClick(page.view, Qt.Key.Key_Escape)
    assert not page.list_keys.shown.isVisible()


def test_sharp_s_is_typed_as_it_is_said(window, qtbot):
    bar = window.bar
    kept = bar.snapshot.bottles[0].product
    bar.inventory.change_product(kept.id, replace(kept, name="Großer Gießbach gin"))
    page = page_by_key(window, qtbot, 2)
    qtbot.keyClicks(page.view, "grosser giess")
    assert page.current.bottle.product.name == "Großer Gießbach gin"


def test_f3_goes_to_the_next_that_was_typed_and_back(window, qtbot):
    page = page_by_key(window, qtbot, 2)
    qtbot.keyClicks(page.view, "gin")
    met = []
    for keys in ((), (), (SHIFT,)):
        qtbot.keyClick(page.view, Qt.Key.Key_F3, *keys)
        met.append(page.current.bottle)
    assert all("gin" in each.product.name.casefold() for each in met)
    assert met[0].id == met[2].id != met[1].id


def test_rows_are_copied_for_spreadsheets_and_none_is_run(window, qtbot):
    page = page_by_key(window, qtbot, 2)
    qtbot.keyClick(page.view, Qt.Key.Key_Home, CONTROL)
    qtbot.keyClick(page.view, Qt.Key.Key_Down, SHIFT)
    qtbot.keyClick(page.view, Qt.Key.Key_C, CONTROL)
    data = QGuiApplication.clipboard().mimeData()
    rows = [line.split("\t") for line in data.text().split("\n")]
    assert len(rows) == 2 and "Lamp Room dry gin" in rows[0]
    written = list(csv.reader(io.StringIO(bytes(data.data("text/csv").data()).decode())))
    assert written[0][1] == "Bottle" and written[1:] == rows
    assert data.html().count("<tr>") == 2


def test_the_menu_key_opens_what_a_right_click_does(window, qtbot):
    for number, first in ((2, "Count bottle…"), (3, "New spec…"), (4, "New shoot…")):
        page = page_by_key(window, qtbot, number)
        for key in ((Qt.Key.Key_Menu,), (Qt.Key.Key_F10, SHIFT)):
            qtbot.keyClick(page.view, *key)
            menu = QApplication.activePopupWidget()
            assert isinstance(menu, QMenu)
            words = menu_words(menu)
            assert words[0] == first and words[-2:] == ["Copy rows", "Copy rows as CSV"]
            qtbot.keyClick(menu, Qt.Key.Key_Escape)


def test_several_are_removed_in_one_step_and_one_undo_brings_them_back(window, qtbot):
    bar = window.bar
    for number, there in (
        (2, lambda: bar.snapshot.bottles),
        (4, lambda: bar.snapshot.shoots),
    ):
        page = page_by_key(window, qtbot, number)
        before = there()
        qtbot.keyClick(page.view, Qt.Key.Key_Home, CONTROL)
        qtbot.keyClick(page.view, Qt.Key.Key_Down, SHIFT)
        qtbot.keyClick(page.view, Qt.Key.Key_Delete)
        settle(window, qtbot)
        assert len(there()) == len(before) - 2
        assert window.toast.text == f"Removed 2 {page.noun}"
        qtbot.keyClick(page.view, Qt.Key.Key_Z, CONTROL)
        settle(window, qtbot)
        assert there() == before


def test_f2_edits_the_row_in_hand(window, qtbot):
    for number, title in ((2, "Change the label"), (4, "Change ")):
        page = page_by_key(window, qtbot, number)
        qtbot.keyClick(page.view, Qt.Key.Key_F2)
        dialog = QApplication.activeModalWidget()
        assert dialog is not None, (number, page.view.hasFocus(), page.key)
        assert dialog.windowTitle().startswith(title)
        dialog.close()
