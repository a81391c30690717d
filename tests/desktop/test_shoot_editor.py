"""A shoot written by the keyboard, and what is refused below its field."""

from __future__ import annotations

from datetime import time

import pytest
from PySide6.QtCore import Qt

from barkeep.desktop.dialogs.shoot_editor import DRINKS, STARTS, THEME, ShootEditor
from barkeep.domain.shoots import Shoot
from tests.desktop.audit import focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
Keys = Qt.Key


@pytest.fixture
def editor(bar, qtbot):
    shown = ShootEditor(bar, Shoot(None, "", bar.snapshot.on))
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    return shown


def add(editor, qtbot, *names):
    for name in names:
        qtbot.keyClicks(editor.drink, name)
        qtbot.keyClick(editor.drink, Keys.Key_Return)


def names(editor):
    return [editor.table.item(row, 0).text() for row in range(editor.table.rowCount())]


def test_a_new_shoot(editor, bar, qtbot):
    qtbot.keyClicks(editor.theme, "Wet Rails")
    qtbot.keyClicks(editor.starts, "9:30")
    add(editor, qtbot, "Brazier", "Request Stop")
    editor.table.cellWidget(0, 3).setValue(4)
    editor.submit()
    shoot = next(each for each in bar.snapshot.shoots if each.theme == "Wet Rails")
    assert shoot.names == ("Brazier", "Request Stop") and shoot.starts == time(9, 30)
    assert [each.serves.tasting for each in shoot.drinks] == [4, 0]
    assert bar.undo_label == "Add shoot Wet Rails"


def test_the_order_moves_and_a_drink_goes(editor, qtbot):
    add(editor, qtbot, "Brazier", "Request Stop", "Gangway")
    editor.table.cellWidget(2, 1).setValue(7)
    qtbot.keyClick(editor.table, Keys.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert names(editor) == ["Brazier", "Gangway", "Request Stop"]
    assert editor.table.cellWidget(1, 1).value() == 7
    qtbot.keyClick(editor.table, Keys.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert names(editor) == ["Brazier", "Request Stop", "Gangway"]
    qtbot.keyClick(editor.table, Keys.Key_Delete)
    assert names(editor) == ["Brazier", "Request Stop"]


def test_refusals_stand_below_their_fields(editor, bar, qtbot):
    editor.submit()
    assert "a shoot has a theme" in editor.problem(THEME)
    qtbot.keyClicks(editor.theme, "Wet Rails")
    add(editor, qtbot, "No Such Drink")
    assert "No Such Drink" in editor.problem(DRINKS) and names(editor) == []
    editor.drink.clear()
    add(editor, qtbot, "Brazier", "Brazier")
    assert "in the running order already" in editor.problem(DRINKS)
    editor.drink.clear()
    editor.starts.setText("half past")
    editor.submit()
    assert "such as 15:00" in editor.problem(STARTS)
    assert all(each.theme != "Wet Rails" for each in bar.snapshot.shoots)
    editor.starts.setText("15:30")
    editor.submit()
    assert any(each.theme == "Wet Rails" for each in bar.snapshot.shoots)


def test_everything_has_a_name(editor, qtbot):
    add(editor, qtbot, "Brazier")
    assert not focusable_without_name(editor)
