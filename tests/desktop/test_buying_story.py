"""From a budget to bottles on the shelf and drinks tonight, in the real window by keyboard."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.desktop.buying.shopping import WHAT, ShoppingDialog
from barkeep.desktop.shell.what_if import WhatIfDialog
from barkeep.domain.pouring.verdicts import verdicts
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import said_in, settle

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

KEYS = Qt.Key
CTRL, ALT, SHIFT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
    Qt.KeyboardModifier.ShiftModifier,
)


@pytest.fixture
def small(window, qtbot):
    window.resize(1024, 640)
    settle(window, qtbot)
    return window


def press(qtbot, window, key, held=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or window, key, held)
    settle(window, qtbot)


def write(qtbot, window, text):
    """Over what stands in the field that has the focus, and Enter."""
    focused = QApplication.focusWidget()
    qtbot.keyClick(focused, KEYS.Key_A, CTRL)
    qtbot.keyClick(focused, KEYS.Key_Delete)
    qtbot.keyClicks(focused, text)
    qtbot.keyClick(focused, KEYS.Key_Return)
    settle(window, qtbot)


def back_in(window, qtbot):
    """After a dialog, which this platform does not give the window back from by itself."""
    with qtbot.waitActive(window):
        window.activateWindow()
    settle(window, qtbot)


def details(window) -> list[str]:
    return said_in(window.current.detail)


def plan_for(qtbot, window, budget: str):
    press(qtbot, window, KEYS.Key_F6)
    window.current.bottles.setFocus()
    write(qtbot, window, "0")
    press(qtbot, window, KEYS.Key_U, ALT)
    assert QApplication.focusWidget() is window.current.budget
    write(qtbot, window, budget)


def makeable(window) -> set[str]:
    bar = window.bar.snapshot
    found = verdicts(bar, "close")
    pairs = zip(bar.all_specs, found.of, strict=True)
    return {spec.name for spec, each in pairs if each in ("ready", "stand_in")}


def test_from_a_budget_to_drinks_tonight(small, qtbot):
    window = small
    before = makeable(window)
    plan_for(qtbot, window, "70 EUR")
    page = window.current
    steps = page.shown.shown_rows()
    assert page.summary.text().startswith(f"{len(steps)} purchases for ")
    assert "Nothing for 70.00 EUR does better; that is proved." in page.said.text()
    opened = [name for row in steps for name in row.step.unlocks]
    assert set(steps[0].step.unlocks) <= set(details(window))

    press(qtbot, window, KEYS.Key_A, CTRL | SHIFT)
    assert window.toast.text == f"{len(steps)} things put on the shopping list"
    press(qtbot, window, KEYS.Key_L, CTRL)
    dialog = next(each for each in window.findChildren(ShoppingDialog) if each.isVisible())
    qtbot.waitUntil(lambda: dialog.ready)
    wanted = {window.bar.snapshot.knowledge.tree.name(row.step.bought.ingredient) for row in steps}
    for row in range(dialog.table.rowCount()):
        if dialog.table.item(row, WHAT).text() in wanted:
            dialog.table.setFocus()
            dialog.table.setCurrentCell(row, WHAT)
            assert "list" in dialog.why.text()
            qtbot.keyClick(dialog.table, KEYS.Key_Space)
    assert len(dialog.table.taken()) == len(steps)
    qtbot.keyClick(dialog, KEYS.Key_B, ALT)
    qtbot.waitUntil(lambda: dialog.ready and "in the bar" in dialog.banner.text)
    assert window.bar.snapshot.settings.to_buy == ()
    qtbot.keyClick(dialog, KEYS.Key_Escape)
    back_in(window, qtbot)

    press(qtbot, window, KEYS.Key_1, CTRL)
    assert makeable(window) - before == set(opened)
    listed = {row.spec.name for row in window.current.shown.shown_rows()}
    assert set(opened) <= listed


def test_what_cannot_be_a_plan_is_said_where_it_was_typed(small, qtbot):
    for typed, said in (
        ("-5", "budget cannot be “-5”: it is more than nothing."),
        ("much", "budget cannot be “much”: write an amount such as 80 or 79.50."),
        ("", "budget cannot be “nothing”: say how many bottles, or how much may be spent."),
    ):
        plan_for(qtbot, small, typed)
        assert small.current.banner.text == said
        assert QApplication.focusWidget() is small.current.budget


def test_stop_keeps_the_best_so_far_and_says_so(small, qtbot, monkeypatch):
    from barkeep.desktop.buying import plan as page_module

    found = page_module.found_plan

    def stopped(asked, snapshot, memory, tell):
        """As it is where Stop was pressed before the search had its first look."""
        small.current.asking._shared.stop.set()
        return found(asked, snapshot, memory, tell)

    press(qtbot, small, KEYS.Key_F6)
    monkeypatch.setattr(page_module, "found_plan", stopped)
    press(qtbot, small, KEYS.Key_Return, CTRL)
    assert "It was stopped before it was known whether anything does better" in (
        small.current.said.text()
    )


def test_one_step_goes_on_the_list_once(small, qtbot):
    press(qtbot, small, KEYS.Key_F6)
    small.current.focus_list()
    press(qtbot, small, KEYS.Key_L, CTRL | SHIFT)
    name = small.bar.snapshot.knowledge.tree.name(small.current.current.step.bought.ingredient)
    assert small.toast.text == f"{name} is on the shopping list"
    press(qtbot, small, KEYS.Key_L, CTRL | SHIFT)
    assert small.toast.text == f"{name} was on the shopping list already"
    assert len(small.bar.snapshot.settings.to_buy) == 1
    press(qtbot, small, KEYS.Key_Z, CTRL)
    assert small.bar.snapshot.settings.to_buy == ()


def test_the_pictures_say_all_of_it_and_each_value_under_the_mouse(small, qtbot):
    press(qtbot, small, KEYS.Key_F6)
    page = small.current
    steps = [row.step for row in page.table.rows]
    words = page.chart.accessibleDescription()
    assert words.startswith("Now: ")
    assert f"{steps[-1].makeable} can be made" in words
    places = page.chart.places(page.chart.rect().toRectF())
    assert page.chart.says_at(places[1].center()) == page.chart.marks[1].words
    assert page.chart.says_at(QPointF(-5.0, -5.0)) == words
    page.chart.copy_image()
    assert not QGuiApplication.clipboard().image().isNull()
    press(qtbot, small, KEYS.Key_F7)
    page = small.current
    first = page.table.rows[0]
    assert page.chart.marks[0].words.startswith(f"{first.bottle.product.title}: lost without it")
    assert page.chart.marks[0].value == len(first.lost)
    press(qtbot, small, KEYS.Key_F9)
    page = small.current
    assert {each.label for each in page.chart.marks} == {
        each.bottle.product.title for each in page._found.ageing
    }


def test_what_each_bottle_carries_is_what_is_lost_without_it(small, qtbot):
    press(qtbot, small, KEYS.Key_F7)
    page = small.current
    rows = page.shown.shown_rows()
    first = rows[0]
    assert [len(each.lost) for each in rows] == sorted(
        (len(each.lost) for each in rows), reverse=True
    )
    assert set(first.lost) <= set(details(small))
    assert "matters most" in page.said.text()
    page.idle_only.click()
    assert all(each.carries_nothing for each in page.shown.shown_rows())
    page.idle_only.click()
    page.choose(first.bottle.id)
    before = makeable(small)
    press(qtbot, small, KEYS.Key_F4)
    dialog = small.findChild(WhatIfDialog)
    assert dialog.gone.text() == f"#{first.bottle.id}"
    qtbot.keyClick(dialog.gone, KEYS.Key_Return)
    settle(small, qtbot)
    assert before - makeable(small) == set(first.lost)


def test_a_bar_on_paper_answers_everywhere_and_takes_nothing(small, qtbot):
    window, snapshot = small, small.bar.snapshot
    press(qtbot, window, KEYS.Key_F4)
    dialog = window.findChild(WhatIfDialog)
    qtbot.keyClicks(dialog.also, "moonglow")
    qtbot.keyClick(dialog.also, KEYS.Key_Return)
    assert "moonglow" in dialog.problem("with")
    dialog.also.setText("vodka")
    qtbot.keyClick(dialog.also, KEYS.Key_Return)
    back_in(window, qtbot)
    said = "On paper, not as the bar is: with 700 ml of Grey Ferry Clear Signal vodka."
    for key in ("tonight", "bottles", "specs", "next-bottle", "buying-plan", "use-up"):
        page = window.show_page(key)
        settle(window, qtbot)
        assert window.on_paper.isVisible()
        assert window.on_paper.text.startswith(said)
        for action in page.bar_actions:
            if action.text() not in page.only_looks and not action.isSeparator():
                assert not action.isEnabled()
                assert said in action.toolTip()
    assert "Vodka Martini" in makeable(window)
    page = window.show_page("bottles")
    assert page.choose(min(each.id for each in window.bar.snapshot.bottles))
    assert "Clear Signal vodka" in details(window)
    pushed = page.detail.findChildren(QPushButton)
    assert {each.isEnabled() for each in pushed if each.text() == "Count…"} == {False}
    window.show_page("next-bottle")
    window.current.add_current()  # as its button does
    assert "Nothing is written until you go back" in window.current.banner.text
    assert not window.actions_.make.isEnabled()
    press(qtbot, window, KEYS.Key_L, CTRL)
    shopping = window.findChild(ShoppingDialog)
    assert shopping.banner.text == f"{said} Nothing is written."
    shopping.close()
    back_in(window, qtbot)
    press(qtbot, window, KEYS.Key_F4)
    assert not window.on_paper.isVisible()
    assert window.bar.snapshot == snapshot
    assert "Vodka Martini" not in makeable(window)
    assert window.actions_.make.isEnabled()
    window.show_page("bottles")
    assert window.current.actions_by_key["add"].isEnabled()


def test_the_parts_are_reached_by_keyboard_and_lead_to_each_other(small, qtbot):
    press(qtbot, small, KEYS.Key_5, CTRL)
    chip = small.current.parts_row.chip("next-bottle")
    chip.setFocus()
    for key in ("buying-plan", "carried", "pairs"):
        press(qtbot, small, KEYS.Key_Right)
        assert small.current.key == key
        assert QApplication.focusWidget() is small.current.parts_row.chip(key)
        assert small.actions_.pages[key].isChecked()
    small.show_page("bottles").actions_by_key["use_up"].trigger()
    settle(small, qtbot)
    assert small.current.key == "use-up"


@pytest.mark.parametrize("over", ["sample", "empty"])
def test_nothing_is_cut_off_and_all_is_named(over, request, open_window, qtbot):
    bar = request.getfixturevalue("empty_bar" if over == "empty" else "bar")
    window = open_window(over=bar)
    for size in ((1024, 640), (800, 600)):
        window.resize(*size)
        for key in ("next-bottle", "buying-plan", "carried", "pairs", "use-up"):
            window.show_page(key)
            settle(window, qtbot)
            assert cut_off(window) == []
            assert focusable_without_name(window) == []
        assert window.size().toTuple() == size
