"""What a bottle cost, by keyboard in the real window: written as it comes, read in its details."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.domain.bottles.paid import Payment
from tests.desktop.bottles.bottle_page import texts
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

Keys = Qt.Key
BOURBON = "Copperbend Straight bourbon"


def test_what_was_paid_is_written_with_the_bottle_and_read_in_its_details(window, bar, qtbot):
    product = next(each for each in bar.snapshot.products if each.title == BOURBON)
    bar.paying.note(product.id, Payment(31.0, "Tide Wine"), date(2020, 1, 2))
    window.show_page("bottles")
    settle(window, qtbot)
    screen = window.current
    screen.view.setFocus()
    qtbot.keyClick(screen.view, Keys.Key_N, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: screen.dialog is not None and screen.dialog.edits["name"].hasFocus())
    dialog = screen.dialog
    dialog.choose_product(product)

    def write(name: str, words: str) -> None:
        while QApplication.focusWidget() is not dialog.edits[name]:
            qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Tab)
        dialog.edits[name].clear()
        qtbot.keyClicks(dialog.edits[name], words)

    write("shop", "Quay Stores")
    qtbot.keyClick(dialog.edits["shop"], Keys.Key_Return)
    assert dialog.problem("paid") == "Say what was paid there, or leave the shop out."
    for words, said in {
        "-3": "Paid cannot be “-3.0”: it is nothing or more.",
        "lots": "Paid cannot be “lots”: write an amount such as 80 or 79.50.",
        "24 USD": "Paid cannot be “24 USD”: prices of this bar are in EUR.",
    }.items():
        write("paid", words)
        qtbot.keyClick(dialog.edits["paid"], Keys.Key_Return)
        assert dialog.problem("paid") == said
    write("paid", "24,50")
    qtbot.keyClick(dialog.edits["paid"], Keys.Key_Return)
    qtbot.waitUntil(lambda: not dialog.isVisible())
    settle(window, qtbot)
    assert screen.current.bottle.product.price == 24.5
    told = texts(screen.detail.widget())
    assert "24.50 EUR at Quay Stores" in told and "31.00 EUR at Tide Wine" in told
    assert told.index("Quay Stores") < told.index("Tide Wine")
    assert "It was cheapest at Quay Stores: 24.50 EUR" in told
    window.bar.undo()
    assert [each.shop for each in bar.paying.of(product.id)] == ["Tide Wine"]
