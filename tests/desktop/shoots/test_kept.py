"""What is typed in the dialogs of a shoot outlives Cancel, Esc and the program's end."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.desktop.screens.kept import KeptTyping
from barkeep.desktop.shoots.log import COUNTED, SPILLED
from tests.desktop.audit import cut_off
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("shoots"),
]
Keys, Ctrl = Qt.Key, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def shoots(window, qtbot):
    """The page of the shoots in the real window, with what the keyboard does on it."""
    return Shoots(window, qtbot)


class Shoots:
    """The keyboard on the page of the shoots."""

    def __init__(self, window, qtbot):
        self.window, self.qtbot = window, qtbot
        window.show_page("shoots")
        settle(window, qtbot)
        self.screen = window.current

    def on(self, theme):
        shoots = self.window.bar.snapshot.shoots
        self.screen.show_thing(next(each.id for each in shoots if each.theme == theme))
        settle(self.window, self.qtbot)
        self.screen.view.setFocus()

    def press(self, key):
        """A key with Ctrl on the list; the dialog that it opens."""
        self.window.activateWindow()
        self.qtbot.waitUntil(self.window.isActiveWindow)
        self.screen.view.setFocus()
        self.qtbot.keyClick(self.screen.view, key, Ctrl)
        dialog = self.screen.dialog
        self.qtbot.waitUntil(dialog.isActiveWindow)
        return dialog

    def new(self):
        return self.press(Keys.Key_N)

    def edit(self, theme):
        self.on(theme)
        return self.press(Keys.Key_E)

    def log(self, theme="Snow Plough"):
        self.on(theme)
        return self.press(Keys.Key_G)

    def escape(self, dialog):
        self.qtbot.keyClick(dialog, Keys.Key_Escape)

    def answer(self, dialog, text):
        """Answer the question on leaving the log by the letter of its button."""
        self.qtbot.waitUntil(lambda: dialog.question is not None and dialog.question.isVisible())
        question = dialog.question
        asked = question.text()
        found = next(each for each in question.findChildren(QPushButton) if each.text() == text)
        self.qtbot.keyClick(found, Keys.Key_Space)
        return asked

    @property
    def toast(self):
        return self.window.toast.text


def names(editor):
    return [editor.table.item(row, 0).text() for row in range(editor.table.rowCount())]


def cell(log, words, column):
    rows = range(log.table.rowCount())
    row = next(row for row in rows if words in log.table.item(row, 0).text())
    return log.table.item(row, column)


def level(bar, words):
    return next(b.level.amount for b in bar.snapshot.bottles if words in b.product.title)


# The editor


def test_what_is_typed_of_a_shoot_is_on_the_disk_as_it_is_typed(shoots, bar, qtbot):
    editor, state = shoots.new(), shoots.window.context.state.folder

    def on_disk():
        """What the next program finds, however this one ends."""
        return KeptTyping(state, bar.path).left("shoot-new") or {}

    qtbot.keyClicks(editor.theme, "Wet Rails")
    qtbot.waitUntil(lambda: on_disk().get("theme") == "Wet Rails")
    qtbot.keyClicks(editor.drink, "Brazier")
    qtbot.keyClick(editor.drink, Keys.Key_Return)
    qtbot.waitUntil(lambda: [each["name"] for each in on_disk()["drinks"]] == ["Brazier"])
    editor.table.cellWidget(0, 2).stepUp()
    camera = editor.table.cellWidget(0, 2).value()
    qtbot.waitUntil(lambda: on_disk()["drinks"][0]["serves"]["camera"] == camera)
    qtbot.keyClicks(editor.notes, "Bring the lamp.")
    qtbot.waitUntil(lambda: on_disk()["notes"] == "Bring the lamp.")
    qtbot.mouseClick(editor.accept_button, Qt.MouseButton.LeftButton)
    settle(shoots.window, qtbot)
    assert on_disk() == {}


def test_a_new_shoot_is_left_by_esc_and_gone_on_with(shoots, bar, qtbot):
    editor = shoots.new()
    qtbot.keyClicks(editor.theme, "Wet Rails")
    qtbot.keyClicks(editor.drink, "Brazier")
    qtbot.keyClick(editor.drink, Keys.Key_Return)
    editor.table.cellWidget(0, 2).setValue(7)
    qtbot.keyClicks(editor.drink, "Gang")
    qtbot.keyClicks(editor.starts, "half past")
    qtbot.keyClicks(editor.notes, "Bring the lamp.")
    shoots.escape(editor.theme)
    assert not editor.isVisible() and len(bar.snapshot.shoots) == 6
    assert shoots.toast == "What you typed is kept, not saved: New shoot… goes on with it."
    again = shoots.new()
    assert again is not editor
    assert (again.theme.text(), again.starts.text()) == ("Wet Rails", "half past")
    assert names(again) == ["Brazier"] and again.table.cellWidget(0, 2).value() == 7
    assert (again.drink.text(), again.notes.toPlainText()) == ("Gang", "Bring the lamp.")
    assert again.banner.text.startswith("As you left it on 20")
    assert again.banner.text.endswith("nothing of it is saved yet.")
    again.starts.setText("9:30")
    again.drink.clear()
    qtbot.mouseClick(again.accept_button, Qt.MouseButton.LeftButton)
    settle(shoots.window, qtbot)
    assert any(each.theme == "Wet Rails" for each in bar.snapshot.shoots)
    third = shoots.new()
    assert (third.theme.text(), third.banner.text, names(third)) == ("", "", [])
    shoots.window.toast.dismiss()
    shoots.escape(third)
    assert shoots.toast == "" and shoots.new().banner.text == ""  # nothing typed, nothing kept


def test_cancel_keeps_a_change_over_the_end_of_the_program(shoots, open_window, bar, qtbot):
    """The drink has a stand-in chosen for it, which comes back as well."""
    shoots.on("Summer Excursion")
    use = next(
        each
        for each in shoots.screen.page.findChildren(QPushButton)
        if each.text().startswith("Use blanco")
    )
    qtbot.keyClick(use, Keys.Key_Space)
    settle(shoots.window, qtbot)
    editor = shoots.edit("Summer Excursion")
    editor.notes.setFocus()
    qtbot.keyClicks(editor.notes, "Bring the lamp. ")
    qtbot.mouseClick(editor.cancel_button, Qt.MouseButton.LeftButton)
    assert not editor.isVisible()
    shoots.window.close_unasked()
    later = Shoots(open_window(), qtbot)
    again = later.edit("Summer Excursion")
    assert again.notes.toPlainText().startswith("Bring the lamp. ")
    assert again.banner.text.endswith("nothing of it is saved yet.")  # and not that it changed
    again.submit()
    settle(later.window, qtbot)
    (shoot,) = [each for each in bar.snapshot.shoots if each.theme == "Summer Excursion"]
    assert shoot.notes.startswith("Bring the lamp.")
    assert [each.ingredient for drink in shoot.drinks for each in drink.chosen] == [
        "blanco-tequila"
    ]


def test_what_was_left_and_changed_elsewhere_is_told(shoots, bar, qtbot):
    editor = shoots.edit("Summer Excursion")
    editor.theme.setText("Winter Excursion")
    shoots.escape(editor)
    (shoot,) = [each for each in bar.snapshot.shoots if each.theme == "Summer Excursion"]
    bar.shoots.move(shoot.id, "idea")
    settle(shoots.window, qtbot)
    again = shoots.edit("Summer Excursion")
    assert "was changed since then" not in again.banner.text  # its state is no field of the editor
    shoots.escape(again)
    bar.specs.remove(bar.specs.get("Deckchair Special").id)
    bar.shoots.replace(replace(shoot, notes="Bring the lamp."))
    settle(shoots.window, qtbot)
    third = shoots.edit("Summer Excursion")
    assert third.theme.text() == "Winter Excursion"
    assert "The shoot was changed since then: saving puts this in its place." in third.banner.text
    assert names(third)[0] == "Deckchair Special"
    afresh = next(
        each for each in third.banner.findChildren(QPushButton) if each.text() == "Start afresh"
    )
    qtbot.keyClick(afresh, Keys.Key_Space)
    assert third.theme.text() == "Summer Excursion" and third.banner.text == ""
    assert third.notes.toPlainText() == "Bring the lamp."
    shoots.escape(third)
    assert shoots.edit("Summer Excursion").banner.text == ""


# The log


def test_a_log_is_left_for_later_and_gone_on_with(shoots, open_window, bar, qtbot):
    log = shoots.log()
    before = level(bar, "oude genever")
    log.table.setCurrentCell(cell(log, "oude genever", 0).row(), COUNTED)
    qtbot.keyClicks(log.table, "5")
    cell(log, "pisco", SPILLED).setText("20 ml")
    cell(log, "Orgeat", COUNTED).setText("plenty")
    log.made[0].setValue(3)
    shoots.escape(log.table)
    asked = shoots.answer(log, "Leave it for &later")
    assert asked == (
        "Leave 1 count, 1 spill, 1 amount that could not be read and the serves made unwritten?"
    )
    assert not log.isVisible() and level(bar, "oude genever") == before
    assert shoots.toast == "What you typed is kept, not saved: Log it… goes on with it."
    shoots.window.close_unasked()
    later = Shoots(open_window(), qtbot)
    again = later.log()
    assert cell(again, "oude genever", COUNTED).text() == "350 ml"
    assert cell(again, "pisco", SPILLED).text() == "20 ml"
    assert cell(again, "Orgeat", COUNTED).text() == "plenty"
    assert [each.value() for each in again.made] == [3, 2, 2]
    assert again.banner.text.startswith("As you left it on 20")
    assert "Nothing of it is written yet." in again.banner.text
    assert "plenty" in again.banner.text and not cut_off(again)
    cell(again, "Orgeat", COUNTED).setText("")
    again.write()
    settle(later.window, qtbot)
    assert level(bar, "oude genever") == 350.0
    (logged,) = [each for each in bar.snapshot.shoots if each.theme == "Snow Plough"]
    assert logged.log.made == (3, 2, 2)
    bar.undo()
    settle(later.window, qtbot)
    third = later.log()
    assert third.banner.text == "" and not third.draft.sheet.counted
    third.reject()


def test_what_is_being_typed_as_the_log_closes_is_no_less_typed(shoots, qtbot):
    log = shoots.log()
    qtbot.keyClick(log.table, Keys.Key_Return)
    qtbot.keyClicks(QApplication.focusWidget(), "300 ml")
    log.close()  # by the cross of its frame
    assert shoots.answer(log, "Leave it for &later") == "Leave 1 count unwritten?"
    again = shoots.log()
    assert [each.text() for each in cells(again, COUNTED) if each.text()] == ["300 ml"]
    again.start_afresh()
    again.reject()


def cells(log, column):
    return [log.table.item(row, column) for row in range(log.table.rowCount())]


def test_enter_and_esc_on_the_question_keep_counting(shoots, qtbot):
    log = shoots.log()
    log.made[1].setValue(4)
    for key in (Keys.Key_Escape, Keys.Key_Return):
        shoots.escape(log.table)
        qtbot.waitUntil(lambda: log.question is not None and log.question.isVisible())
        qtbot.keyClick(log.question, key)
        qtbot.waitUntil(lambda: log.question is None)
        assert log.isVisible() and log.made[1].value() == 4
    shoots.escape(log.table)
    shoots.answer(log, "&Discard")
    assert not log.isVisible()
    again = shoots.log()
    assert again.made[1].value() == 2 and again.banner.text == ""
    again.reject()


def test_a_log_left_for_later_says_what_is_gone_since(shoots, bar, qtbot):
    log = shoots.log()
    cell(log, "pisco", COUNTED).setText("400 ml")
    cell(log, "oude genever", COUNTED).setText("plenty")
    cell(log, "Orgeat", SPILLED).setText("200 ml")
    shoots.escape(log.table)
    shoots.answer(log, "Leave it for &later")
    for words in ("pisco", "oude genever"):
        bottle = next(each for each in bar.snapshot.bottles if words in each.product.title)
        bar.inventory.remove(bottle.id)
    orgeat = next(each for each in bar.snapshot.bottles if each.product.title == "Orgeat")
    bar.inventory.pour(orgeat.id, 250.0)
    settle(shoots.window, qtbot)
    again = shoots.log()
    assert "Not there any more, so left out: " in again.banner.text
    for words in ("pisco", "oude genever"):
        assert words in again.banner.text
    assert cell(again, "Orgeat", SPILLED).text() == "200.0 ml"
    assert "cannot have been spilled of Orgeat" in again.banner.text
    again.write()
    assert again.isVisible() and bar.undo_label.startswith("Pour")
    again.start_afresh()
    again.reject()
