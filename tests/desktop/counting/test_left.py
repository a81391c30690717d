"""An evening's counts outlive Esc, closing, a crash and a restart, and are told of as it opens."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.application.bar import Bar
from barkeep.desktop.shoots.log import COUNTED
from tests.desktop.audit import cut_off
from tests.desktop.pages import settle
from tests.walked import walked

pytestmark = pytest.mark.left_at("bottles")

Keys, Ctrl = Qt.Key, Qt.KeyboardModifier.ControlModifier


def counting(window, qtbot):
    """The count of the shelf, begun by its button."""
    page = window.show_page("bottles")
    page.count_shelf()
    settle(window, qtbot)
    return page


def opened_again(open_window, sample_bar, clock, qtbot):
    """The program started once more on what is on the disk."""
    bar = Bar.open(sample_bar, clock=clock)
    window = open_window(over=bar)
    qtbot.waitUntil(lambda: bool(window.current.banner.text))
    return window


def press_on(qtbot, parent, text):
    found = next(b for b in parent.findChildren(QPushButton) if b.text() == text)
    qtbot.waitUntil(found.isVisible)
    found.setFocus()
    qtbot.keyClick(found, Keys.Key_Space)


def answer(press):
    """Press a button of the question that is to come."""
    QTimer.singleShot(
        0,
        lambda: next(
            each for each in QApplication.activeModalWidget().buttons() if each.text() == press
        ).click(),
    )


@pytest.mark.left_at("tonight")
def test_counts_of_a_program_that_was_killed_are_told_and_gone_on_with(
    window, open_window, sample_bar, clock, qtbot
):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "473")
    levels = dict(page.count.levels)
    again = opened_again(open_window, sample_bar, clock, qtbot)  # of the first nobody took leave
    said = again.current.banner.text
    assert again.current.key == "tonight"
    assert said.startswith("3 bottles counted on 2")
    assert said.endswith(" and not written down yet.")
    assert cut_off(again) == []
    press_on(qtbot, again.current.banner, "Go on counting")
    there = again.current
    assert (there.key, there.is_counting) == ("bottles", True)
    assert dict(there.count.levels) == levels
    assert there.counting.said.text().startswith("Going on: 3 bottles counted before on 2")
    qtbot.keyClick(there.counting.view, Keys.Key_Return, Ctrl)
    there.counting.sheet.accept()
    third = open_window(over=again.bar)
    settle(third, qtbot)
    assert third.current.banner.text == ""


def test_what_was_being_typed_stands_there_again(window, open_window, sample_bar, clock, qtbot):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "4")
    bottle = page.counting.present.bottle
    qtbot.keyClick(page.counting.view, Keys.Key_Return)
    qtbot.keyClicks(page.counting.view.entry, "11,5 c")
    again = opened_again(open_window, sample_bar, clock, qtbot)
    press_on(qtbot, again.current.banner, "Go on counting")
    there = again.current.counting
    assert there.present.bottle.id == bottle.id
    assert there.view.entry.text() == "11,5 c"


def test_esc_and_closing_lose_no_count(window, open_window, sample_bar, clock, qtbot):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "47")
    qtbot.keyClick(page.counting.view, Keys.Key_Escape)
    assert page.banner.text == "2 bottles counted and not written down yet."
    answer("Leave for &later")
    window.close()
    assert not window.isVisible()
    again = opened_again(open_window, sample_bar, clock, qtbot)
    assert again.current.banner.text == "2 bottles counted and not written down yet."


def test_counts_are_thrown_away_only_on_purpose(window, open_window, sample_bar, clock, qtbot):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "47")
    press_on(qtbot, page.counting, "Start afresh")
    assert window.toast.text == "The counts of 2 bottles are thrown away"
    press_on(qtbot, window.toast, "Bring them back")
    assert len(page.count) == 2 and page.counting.view.hasFocus()
    press_on(qtbot, page.counting, "Start afresh")
    assert (len(page.count), page.unsaved()) == (0, "")
    assert page.counting.said.text() == "All counts are thrown away; nothing was written"
    again = open_window()
    settle(again, qtbot)
    assert again.current.banner.text == ""


def test_what_was_discarded_on_closing_does_not_come_back(window, open_window, qtbot):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "47")
    answer("Discard counts")
    window.close()
    again = open_window()
    settle(again, qtbot)
    assert len(again.show_page("bottles").count) == 0


def test_closing_asks_about_an_amount_that_is_being_typed(
    window, open_window, sample_bar, clock, qtbot
):
    page = counting(window, qtbot)
    qtbot.keyClick(page.counting.view, Keys.Key_Return)
    qtbot.keyClicks(page.counting.view.entry, "333 m")
    assert page.unsaved() == "“333 m” is being typed and not counted yet."
    answer("Keep counting")
    window.close()
    assert window.isVisible() and page.counting.view.entry.text() == "333 m"
    answer("Leave for &later")
    window.close()
    again = opened_again(open_window, sample_bar, clock, qtbot)
    there = counting(again, qtbot)
    assert there.counting.view.entry.text() == "333 m"
    answer("Discard counts")
    again.close()
    third = open_window(over=again.bar)
    settle(third, qtbot)
    assert third.current.banner.text == "" and third.show_page("bottles").unsaved() == ""


def test_a_bottle_poured_from_since_is_to_be_looked_at_again(
    window, open_window, sample_bar, clock, qtbot
):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "47")
    first, second = (window.bar.snapshot.bottle_by_id[each] for each in page.count.levels)
    answer("Leave for &later")
    window.close()
    with Bar.open(sample_bar, clock=clock) as other:
        other.inventory.pour(first.id, 10.0)
        other.inventory.remove(second.id)
    again = opened_again(open_window, sample_bar, clock, qtbot)
    press_on(qtbot, again.current.banner, "Go on counting")
    said = again.current.counting.said.text()
    assert said.endswith(
        f"left out, as they are gone or smaller: {second.product.title}; poured or counted "
        f"since, so look again: {first.product.title}"
    )


def test_a_removed_bottle_takes_its_count_along_and_that_is_said(window, sample_bar, clock, qtbot):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "47")
    first, _second = page.count.levels
    with Bar.open(sample_bar, clock=clock) as other:
        other.inventory.remove(first)
    window.bar.refresh()
    assert page.counting.said.text() == (
        "The counts of 1 bottle is left out, as it is gone or smaller by now"
    )


def test_the_log_of_a_shoot_outlives_a_program_that_was_killed(
    window, open_window, sample_bar, clock, qtbot
):
    page = window.show_page("shoots")
    shoot = next(each for each in window.bar.snapshot.shoots if each.theme == "Snow Plough")
    page.show_thing(shoot.id)
    settle(window, qtbot)
    page.write_log(shoot)
    log = page.dialog
    qtbot.keyClicks(log.table, "47")
    counts = [log.table.item(row, COUNTED).text() for row in range(3)]
    assert all(counts[:2])
    again = opened_again(open_window, sample_bar, clock, qtbot)
    said = again.current.banner.text
    assert said.startswith("The log of Snow Plough was begun on 2")
    assert said.endswith(" and is not written yet.")
    press_on(qtbot, again.current.banner, "Go on with the log")
    there = again.current.dialog
    assert [there.table.item(row, COUNTED).text() for row in range(3)] == counts
    assert "2 counts" in there.banner.text
    there.start_afresh()
    qtbot.keyClick(there, Keys.Key_Escape)
    third = open_window(over=again.bar)
    settle(third, qtbot)
    assert third.current.banner.text == ""
    log.start_afresh()


@walked("text", ["", "[]", '{"at": "x", "counts": 3}', '{"counts": {"a": {}}}'])
def test_a_file_that_is_no_count_is_no_count(window, open_window, text, qtbot):
    page = counting(window, qtbot)
    qtbot.keyClicks(page.counting.view, "4")
    (file,) = window.state.folder.glob("left/*/shelf-count.json")
    file.write_text(text, encoding="utf-8")
    again = open_window()
    settle(again, qtbot)
    assert again.current.banner.text == ""
    assert len(again.show_page("bottles").count) == 0
    page.forget_unsaved()
