"""One bottle found by a part of its name."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.bottles.choose import ID_ROLE, ChooseBottle
from tests.desktop.audit import cut_off, focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
Keys = Qt.Key


@pytest.fixture
def dialog(bar, qtbot):
    made = ChooseBottle(bar.snapshot.bottles)
    qtbot.addWidget(made)
    with qtbot.waitActive(made):
        made.show()
        made.activateWindow()
    return made


def shown(dialog):
    items = [dialog.view.item(row) for row in range(dialog.view.count())]
    return [each.text() for each in items if not each.isHidden()]


def test_found_by_the_keyboard_and_taken_by_enter(dialog, bar, qtbot):
    qtbot.keyClicks(QApplication.focusWidget(), "black FERNET")
    assert shown(dialog) == ["Teasel Weir Black Kettle fernet"]
    with qtbot.waitSignal(dialog.chosen) as taken:
        qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Return)
    (bottle,) = (each for each in bar.snapshot.bottles if each.id == taken.args[0])
    assert bottle.product.title == "Teasel Weir Black Kettle fernet"
    assert not dialog.isVisible()


def test_the_down_key_leads_into_the_list_and_enter_takes_once(dialog, qtbot):
    taken = []
    dialog.chosen.connect(taken.append)
    qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Down)
    assert dialog.view.hasFocus()
    qtbot.keyClick(dialog.view, Keys.Key_Down)
    wanted = dialog.view.item(1).data(ID_ROLE)
    qtbot.keyClick(dialog.view, Keys.Key_Return)
    assert taken == [wanted]


def test_nothing_found_is_counted_and_cannot_be_taken(dialog, bar, qtbot):
    dialog.search.set_text("no such thing")
    assert dialog.search.count_label.text() == f"0 of {len(bar.snapshot.bottles)} bottles"
    assert not dialog.take_button.isEnabled()
    with qtbot.assertNotEmitted(dialog.chosen):
        dialog.take()
    assert dialog.isVisible()
    dialog.search.clear()
    assert len(shown(dialog)) == len(bar.snapshot.bottles) and dialog.take_button.isEnabled()


def test_all_is_named_and_nothing_is_cut_off(dialog):
    assert not focusable_without_name(dialog)
    assert not cut_off(dialog)
