"""The shopping list and the pars, by the keyboard, over the sample bar."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QApplication

from barkeep.desktop.buying.pars import NONE_YET, ParsDialog
from barkeep.desktop.buying.shopping import BUY, COST, COUNT, NEED, PRICE, WHAT, WHY, ShoppingDialog
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.domain.bar.pars import Par
from barkeep.domain.buying.shopping import shopping_for, still_to_film
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import context_over

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


KEYS = Qt.Key
ALT = Qt.KeyboardModifier.AltModifier


@pytest.fixture
def open_dialog(qtbot, tmp_path: Path):
    """Opens the dialog over a bar, and waits for its first list."""
    background = Background()

    def opened(bar, shoots=None) -> ShoppingDialog:
        state = WindowState(tmp_path / "window.ini")

        context = context_over(bar, state, background, None)
        dialog = ShoppingDialog(context, None, shoots)
        qtbot.addWidget(dialog)
        with qtbot.waitActive(dialog):
            dialog.show()
            dialog.activateWindow()
        settle(dialog, qtbot)
        return dialog

    yield opened
    background.finish()


@pytest.fixture
def dialog(bar, open_dialog):
    return open_dialog(bar)


def settle(dialog, qtbot):
    qtbot.waitUntil(lambda: dialog.ready and not dialog._background.is_busy)


def press(qtbot, dialog, key, held=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or dialog, key, held)
    buttons = dialog.findChildren(QAbstractButton)
    qtbot.waitUntil(lambda: not any(each.isDown() for each in buttons))


def cell(dialog, name, column) -> str:
    return dialog.table.item(row_of(dialog, name), column).text()


def row_of(dialog, name) -> int:
    names = [dialog.table.item(row, WHAT).text() for row in range(dialog.table.rowCount())]
    return names.index(name)


def tick(dialog, name, qtbot):
    dialog.table.setFocus()
    dialog.table.setCurrentCell(row_of(dialog, name), WHAT)
    qtbot.keyClick(dialog.table, KEYS.Key_Space)


def type_over(dialog, name, column, text, qtbot):
    dialog.table.setFocus()
    dialog.table.setCurrentCell(row_of(dialog, name), column)
    qtbot.keyClick(dialog.table, KEYS.Key_F2)
    editor = QApplication.focusWidget()
    editor.selectAll()
    qtbot.keyClicks(editor, text)
    qtbot.keyClick(editor, KEYS.Key_Return)
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.table)


def levels(bar):
    return {each.id: each.level.amount for each in bar.snapshot.bottles}


# The list


def test_it_lists_what_the_shoots_ahead_are_short_of_and_why(dialog):
    assert cell(dialog, "Mezcal", NEED) == "88.7 ml"
    assert cell(dialog, "Mezcal", BUY) == "1 × 700 ml Hollow Lamp Pit Oven mezcal"
    assert cell(dialog, "Mezcal", COST) == "42.00"
    assert cell(dialog, "Mezcal", WHY) == "88.7 ml short for Summer Excursion’s Sand in the Points"
    assert cell(dialog, "Lime", WHY).startswith("1 short to cut 3 × lime wedge for Summer Exc")
    assert dialog.total.text() == "86.10 EUR for 4 things."
    assert not dialog.put_button.isEnabled()


def test_the_reason_of_the_chosen_row_is_read_in_full(dialog):
    dialog.table.setCurrentCell(row_of(dialog, "Mezcal"), NEED)
    assert dialog.why.text() == (
        "Mezcal, 1 × 700 ml Hollow Lamp Pit Oven mezcal: "
        "88.7 ml short for Summer Excursion’s Sand in the Points."
    )


def test_only_the_ticked_shoots_are_shopped_for(bar, dialog, qtbot):
    dialog.shoots.view.setFocus()
    press(qtbot, dialog, KEYS.Key_Space)
    settle(dialog, qtbot)
    assert dialog.total.text() == "There is nothing to buy."
    assert dialog.table.rowCount() == 0 and not dialog.copy_button.isEnabled()


def test_none_ticked_where_the_shoot_given_is_not_ahead(bar, open_dialog):
    (filmed,) = [each for each in bar.snapshot.shoots if each.state == "filmed"]
    ahead = still_to_film(bar.snapshot)
    assert open_dialog(bar, [filmed.id]).table.rowCount() == 0
    assert open_dialog(bar, [each.id for each in ahead]).table.rowCount() == 4


def test_the_list_is_copied_as_text(dialog, qtbot):
    press(qtbot, dialog, KEYS.Key_C, ALT)
    lines = QGuiApplication.clipboard().text().splitlines()
    assert "Mezcal: 1 × 700 ml Hollow Lamp Pit Oven mezcal (42.00 EUR)" in lines
    assert lines[-1] == "86.10 EUR for 4 things."


# Putting it into the bar


def test_what_is_ticked_comes_into_the_bar_in_one_step_and_undo_takes_it_back(bar, dialog, qtbot):
    before = levels(bar)
    type_over(dialog, "Mezcal", COUNT, "2", qtbot)
    type_over(dialog, "Mezcal", PRICE, "39,90", qtbot)
    assert cell(dialog, "Mezcal", COST) == "79.80"
    tick(dialog, "Mezcal", qtbot)
    tick(dialog, "Elderflower liqueur", qtbot)
    dialog.on.setDate(QDate(2026, 11, 19))
    press(qtbot, dialog, KEYS.Key_B, ALT)
    settle(dialog, qtbot)
    came = [each for each in bar.snapshot.bottles if each.id not in before]
    assert [each.level.amount for each in came] == [500.0, 700.0, 700.0]
    assert {each.received for each in came} == {date(2026, 11, 19)}
    prices = {each.title: each.price for each in bar.snapshot.products}
    assert prices["Hollow Lamp Pit Oven mezcal"] == 39.9
    assert dialog.banner.text == "3 packages are in the bar"
    assert [each.ingredient for each in dialog.table.things] == ["lime", "maraschino-liqueur"]
    dialog.banner._button.click()
    settle(dialog, qtbot)
    assert levels(bar) == before
    assert dialog.table.rowCount() == 4


@pytest.mark.parametrize(
    ("column", "text", "said"),
    [
        (COUNT, "0", "count of Mezcal cannot be “0”: it is 1 to 99"),
        (COUNT, "many", "count of Mezcal cannot be “many”: it is 1 to 99"),
        (PRICE, "-3", "price of Mezcal cannot be “-3”: it is nothing or more"),
        (PRICE, "cheap", "price of Mezcal cannot be “cheap”: it is a number such as 24.50"),
    ],
)
def test_a_cell_that_cannot_be_read_is_said_and_nothing_comes_in(
    bar, dialog, qtbot, column, text, said
):
    before = levels(bar)
    dialog.all_button.click()
    type_over(dialog, "Mezcal", column, text, qtbot)
    assert cell(dialog, "Mezcal", COST) == "?"
    dialog.put_button.click()
    assert said in dialog.banner.text
    assert levels(bar) == before
    assert dialog.table.currentColumn() == column


def test_what_the_bar_has_no_product_of_comes_in_as_a_new_one(bar, open_dialog, qtbot):
    bar.settings.set_par("armagnac", 700.0)
    dialog = open_dialog(bar)
    assert cell(dialog, "Armagnac", PRICE) == "" and "1 has no known price" in dialog.total.text()
    tick(dialog, "Armagnac", qtbot)
    type_over(dialog, "Armagnac", PRICE, "18", qtbot)
    dialog.put_button.click()
    settle(dialog, qtbot)
    (product,) = [each for each in bar.snapshot.products if each.ingredient == "armagnac"]
    assert (product.title, product.size, product.price) == ("Armagnac", 700.0, 18.0)
    assert "Armagnac" not in _names(dialog)


def _names(dialog):
    return [dialog.table.item(row, WHAT).text() for row in range(dialog.table.rowCount())]


def test_a_cell_still_being_typed_in_is_taken_as_it_stands(bar, dialog, qtbot):
    tick(dialog, "Mezcal", qtbot)
    dialog.table.setCurrentCell(row_of(dialog, "Mezcal"), COUNT)
    qtbot.keyClick(dialog.table, KEYS.Key_3)
    press(qtbot, dialog, KEYS.Key_B, ALT)
    settle(dialog, qtbot)
    assert dialog.banner.text == "3 packages are in the bar"


# Pars


def test_pars_are_set_by_typing_and_come_on_the_list(bar, dialog, qtbot):
    press(qtbot, dialog, KEYS.Key_R, ALT)
    pars = dialog.findChild(ParsDialog)
    qtbot.waitUntil(lambda: QApplication.focusWidget() is pars.what)
    assert pars.list.item(0).text() == NONE_YET
    qtbot.keyClicks(pars.what, "gin")
    pars.what.completer().popup().hide()
    qtbot.keyClicks(pars.amount, "3 bottles")
    pars.accept_button.click()
    assert pars.list.item(0).text() == "Gin: 2100 ml"
    assert bar.snapshot.settings.pars == (Par("gin", 2100.0),)
    settle(dialog, qtbot)
    assert cell(dialog, "Gin", WHY).startswith("par is 3 bottles, and ")
    dialog.with_pars.click()
    settle(dialog, qtbot)
    assert "Gin" not in _names(dialog)
    pars.list.setCurrentRow(0)
    pars.remove_button.click()
    assert bar.snapshot.settings.pars == ()
    bar.undo()
    assert bar.snapshot.settings.pars == (Par("gin", 2100.0),)


@pytest.mark.parametrize(
    ("what", "amount", "field", "said"),
    [
        ("unicorn", "3", "ingredient", "There is no ingredient called “unicorn”"),
        ("gin", "3 kg", "par", "“3 kg” is a weight"),
        ("gin", "", "par", "cannot be read as an amount"),
        ("ice", "5", "par", "it counts as always there"),
    ],
)
def test_a_par_that_cannot_be_is_said_below_its_field(bar, qtbot, what, amount, field, said):
    pars = ParsDialog(bar)
    qtbot.addWidget(pars)
    pars.show()
    pars.what.setText(what)
    pars.amount.setText(amount)
    pars.accept_button.click()
    assert said in pars.problem(field)
    assert bar.snapshot.settings.pars == ()


# Manners


def test_everything_has_a_name_and_nothing_is_cut_off(bar, dialog, qtbot):
    bar.settings.set_par("gin", 2100.0)
    pars = ParsDialog(bar)
    qtbot.addWidget(pars)
    pars.show()
    for each in (dialog, pars):
        assert focusable_without_name(each) == []
        assert cut_off(each) == []
    dialog.resize(976, 560)
    qtbot.waitUntil(lambda: dialog.width() == 976)
    assert cut_off(dialog) == []
    assert dialog.table.horizontalScrollBar().maximum() == 0


def test_the_table_says_what_the_answer_says(bar, dialog):
    found = shopping_for(still_to_film(bar.snapshot), bar.snapshot)
    assert dialog.table.things == found.items
