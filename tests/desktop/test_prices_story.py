"""What was paid, what an evening cost, and a search that is stopped, in the real window."""

from __future__ import annotations

import threading

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.bottles.payments import PaymentsDialog
from barkeep.desktop.drink import use_up as use_up_page
from barkeep.desktop.drink.evening import EveningDialog
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

KEYS, HELD = Qt.Key, Qt.KeyboardModifier
CTRL_SHIFT = HELD.ControlModifier | HELD.ShiftModifier


def press(qtbot, window, key, held=HELD.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or window, key, held)
    settle(window, qtbot)


def on_bottle(qtbot, window, title):
    """The Bottles page with this bottle chosen."""
    press(qtbot, window, KEYS.Key_2, HELD.ControlModifier)
    bottle = next(each for each in window.bar.snapshot.bottles if each.product.title == title)
    window.current.show_thing(bottle.id)
    window.current.focus_list()
    settle(window, qtbot)
    return bottle.product


def bought_here(bar):
    """A product whose price is known, and one whose price nobody knows yet."""
    return next(
        each.product.title
        for each in bar.snapshot.bottles
        if each.product.price is not None and not each.product.house_made
    )


def listed(dialog) -> list[list[str]]:
    table = dialog.table
    return [
        [str(table.index(row, column).data()) for column in range(len(table.columns))]
        for row in range(table.rowCount())
    ]


def test_receiving_asks_what_it_cost_and_the_answer_is_ready(window, bar, qtbot):
    window.resize(1024, 640)
    product = on_bottle(qtbot, window, bought_here(bar))
    before = bar.paying.of(product.id)
    press(qtbot, window, KEYS.Key_R, CTRL_SHIFT)
    page = window.current
    asked = f"What did this {product.title} cost? The last price is {product.price:.2f} EUR"
    assert page.banner.text.startswith(asked)
    page.banner._button.click()
    dialog = page.dialog
    assert isinstance(dialog, PaymentsDialog)
    assert (dialog.amount.text(), dialog.amount.selectedText()) == (f"{product.price:.2f}",) * 2
    assert dialog.focusWidget() is dialog.amount
    assert cut_off(dialog) == [] and focusable_without_name(dialog) == []
    qtbot.keyClicks(dialog.amount, "twenty")
    qtbot.keyClick(dialog.amount, KEYS.Key_Return)
    assert "“twenty”" in dialog.banner.text and dialog.amount.text() == "twenty"
    dialog.amount.selectAll()
    qtbot.keyClicks(dialog.amount, "31,40")
    dialog.shop.setText("Quay Stores")
    qtbot.keyClick(dialog.shop, KEYS.Key_Return)
    assert listed(dialog)[0] == ["21 November 2026", "31.40 EUR", "Quay Stores"]
    assert dialog.banner.text == "Noted; its price is 31.40 EUR"
    assert bar.snapshot.product_by_id[product.id].price == 31.4
    assert len(bar.paying.of(product.id)) == len(before) + 1
    dialog.reject()
    assert not page.banner.text


def test_an_older_payment_is_noted_and_one_forgotten_and_taken_back(window, bar, qtbot):
    product = on_bottle(qtbot, window, bought_here(bar))
    press(qtbot, window, KEYS.Key_Y, CTRL_SHIFT)
    dialog = window.current.dialog
    before = listed(dialog)
    dialog.amount.setText("19")
    dialog.on.setDate(QDate(2026, 3, 1))
    dialog.note()
    assert "1 March 2026" in [row[0] for row in listed(dialog)]
    number = next(place for place, row in enumerate(listed(dialog)) if row[0] == "1 March 2026")
    dialog.view.selectRow(number)
    dialog.forget()
    assert listed(dialog) == before
    assert dialog.banner.text.startswith("Forgotten")
    dialog.banner._button.click()
    assert len(listed(dialog)) == len(before) + 1
    assert bar.paying.of(product.id)[-1].amount == 19.0


def test_what_is_made_here_has_no_price_to_note(window, bar, qtbot):
    syrup = next(each for each in bar.snapshot.bottles if each.product.house_made)
    on_bottle(qtbot, window, syrup.product.title)
    press(qtbot, window, KEYS.Key_Y, CTRL_SHIFT)
    assert window.current.dialog is None
    assert window.current.banner.text == f"{syrup.product.title} is made here, not bought."


def test_what_an_evening_cost(window, bar, qtbot):
    bottle = next(
        each
        for each in bar.snapshot.bottles
        if each.product.price and each.level.state == "open" and each.level.amount > 100.0
    )
    press(qtbot, window, KEYS.Key_D, CTRL_SHIFT)
    empty = window.findChild(EveningDialog)
    assert empty.stack.currentWidget() is not empty.view and empty.total.isHidden()
    empty.reject()
    bar.inventory.pour(bottle.id, 60.0)
    bar.inventory.waste(bottle.id, 10.0)
    window.actions_.evening.trigger()
    dialog = window.findChildren(EveningDialog)[-1]
    cost = bottle.product.price * 60.0 / bottle.product.size
    assert listed(dialog) == [[bottle.product.title, "60 ml", f"{cost:.2f} EUR"]]
    assert dialog.total.text() == f"What is poured costs {cost:.2f} EUR."
    assert dialog.spilled.text() == f"10 ml of {bottle.product.title} was spilled: not counted."
    assert cut_off(dialog) == [] and focusable_without_name(dialog) == []
    dialog.on.setDate(QDate(2020, 1, 1))
    assert dialog.table.rowCount() == 0 and dialog.total.isHidden()
    dialog.reject()


def test_a_search_for_what_to_use_up_is_stopped(window, bar, qtbot, monkeypatch):
    """It answers with the best so far, and says that it was stopped."""
    began, stopped = threading.Event(), threading.Event()
    whole = use_up_page.use_up

    def waits_first(*asked, go_on, **named):
        began.set()
        stopped.wait()
        return whole(*asked, go_on=go_on, **named)

    monkeypatch.setattr(use_up_page, "use_up", waits_first)
    qtbot.keyClick(QApplication.focusWidget() or window, KEYS.Key_F9)
    page = window.current
    qtbot.waitUntil(began.is_set)
    assert page.stop_button.isEnabled()
    qtbot.keyClick(QApplication.focusWidget() or window, KEYS.Key_Period, HELD.ControlModifier)
    stopped.set()
    settle(window, qtbot)
    assert page.summary.text() == "It was stopped before any drink was found."
    assert not page.stop_button.isEnabled()
    monkeypatch.setattr(use_up_page, "use_up", whole)
    page.days.setValue(15)
    settle(window, qtbot)
    assert "that is proved" in page.said.text()
