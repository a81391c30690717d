"""A shoot written by the keyboard, and what is refused below its field."""

from __future__ import annotations

from datetime import time

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QToolButton

from barkeep.desktop.screens.kept import KeptTyping
from barkeep.desktop.shoots.editor import DRINKS, NOTES, STARTS, THEME, ShootEditor
from barkeep.domain.bar.shoots import Shoot
from tests.desktop.audit import cut_off, focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
Keys = Qt.Key


@pytest.fixture
def editor(bar, qtbot, tmp_path):
    kept = KeptTyping(tmp_path, bar.path)
    shown = ShootEditor(bar, Shoot(None, "", bar.snapshot.on), kept)
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


def test_a_refused_drink_has_the_cursor_and_the_start_is_refused_with_it(editor, qtbot):
    editor.table.setFocus()
    editor.drink.setText("No Such Drink")
    editor.starts.setText("half past")
    editor.submit()
    assert editor.problem(DRINKS) and editor.problem(STARTS)
    assert editor.starts.hasFocus()
    editor.starts.clear()
    editor.submit()
    assert editor.problem(DRINKS) and editor.drink.hasFocus()


def test_the_letter_of_the_drinks_leads_to_the_name(editor, qtbot):
    qtbot.keyClick(editor, Keys.Key_R, Qt.KeyboardModifier.AltModifier)
    assert editor.drink.hasFocus()


def test_everything_has_a_name(editor, qtbot):
    add(editor, qtbot, "Brazier")
    assert not focusable_without_name(editor)


def test_the_order_moves_by_mouse(editor, qtbot):
    add(editor, qtbot, "Brazier", "Request Stop", "Gangway")

    def click(name):
        (found,) = [
            each for each in editor.findChildren(QToolButton) if each.accessibleName() == name
        ]
        qtbot.mouseClick(found, Qt.MouseButton.LeftButton)

    click("Move the drink up")
    assert names(editor) == ["Brazier", "Gangway", "Request Stop"]
    click("Move the drink down")
    assert names(editor) == ["Brazier", "Request Stop", "Gangway"]
    click("Take the drink out")
    assert names(editor) == ["Brazier", "Request Stop"]


@pytest.mark.parametrize("text", ["15:00+02:00", "15:00:30", "25:00", "15"])
def test_a_start_is_an_hour_and_minutes(editor, bar, qtbot, text):
    editor.theme.setText("Wet Rails")
    editor.starts.setText(text)
    editor.submit()
    assert "such as 15:00" in editor.problem(STARTS)
    assert all(each.theme != "Wet Rails" for each in bar.snapshot.shoots)


def test_it_fits_a_small_window(editor, qtbot):
    add(editor, qtbot, "Brazier", "Request Stop", "Gangway", "Upper Berth")
    editor.submit()
    assert editor.problem(THEME)
    assert editor.height() < 640 and editor.width() < 1024
    assert not cut_off(editor)


def test_labels_stand_beside_the_first_line_of_their_fields(editor, qtbot):
    """A label as high as a whole table would push the buttons off a small screen."""

    def middle(widget):
        return widget.mapTo(editor, widget.rect().center()).y()

    label = editor.fields[DRINKS].label
    assert abs(middle(label) - middle(editor.drink)) <= 2
    assert editor.fields[NOTES].label.height() <= editor.notes.height()
