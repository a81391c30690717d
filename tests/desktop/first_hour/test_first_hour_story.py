"""An owner's first hour in the real window: thirty bottles pasted, thirty ticked, what comes of it.

Keys and clicks are counted and printed (`-s`), with what they would take.
"""

from __future__ import annotations

from functools import partial

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.shell.main_window import GO_HOME, SAMPLE, WindowHooks
from tests.desktop.hand import Hand
from tests.desktop.pages import settle

SHELF = """\
## Gin
- Pellow Gate London dry gin 70 cl half full
- Marsh Pike Old Tom, 50 cl, 1/4
- Quay Lamp sloe gin 35cl
Rest:
2 x red bitter aperitivo
sweet vermouth
dry vermouth, opened 3 October 2026
aromatic bitters
Orange bitters 100ml full
Bourbon (Copper Lane), 1 l, 3/4 full
Cherry Tree bourbon 70cl
Rye whiskey 100 proof 750ml
Rum, white, Marsh Pike, 70cl
Dark rum (Coal Yard) 700 ml
vodka 40% 1L
Tequila blanco 100% agave
Mezcal
Cognac 70 cl
Londn gin
triple sec 50cl sealed
Maraschino liqueur - nearly empty
Creme de cassis
half a bottle of amaretto
Absinthe 0.7l 1/4
the good stuff from Dad
tonic water 6 x 200 ml
ginger beer 330 ml
6 limes
4 lemons
"""
MOST_S = 120


@pytest.fixture
def window(open_window, empty_bar):
    """The real window over an empty bar; what was asked of the program is in `asked`."""
    asked: list[str] = []
    hooks = WindowHooks(
        open_bar=lambda _path: None,
        import_files=import_files,
        import_texts=import_texts,
        look_around=partial(asked.append, "look around"),
    )
    shown = open_window(hooks, empty_bar)
    shown.asked = asked
    return shown


def told(window, qtbot) -> str:
    settle(window, qtbot)
    return window.current.ending.reach.plain_text


def test_thirty_bottles_come_in_from_a_list_in_under_two_minutes(window, qtbot):
    hand, greeting = Hand(), window.current.greeting
    hand.click(greeting.listed)
    page = window.current
    assert page.key == "bottle-list" and page.edit.hasFocus()
    QApplication.clipboard().setText(SHELF)
    hand.key(Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    settle(window, qtbot)
    assert page.said.text().startswith("28 lines · ")
    assert "4 to answer" in page.said.text() and "headings: Gin and Rest" in page.said.text()
    hand.key(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    asked = []
    while page.found.asked:
        assert len(asked) < 9, asked
        line = page._current()
        asked.append((line.words, page.question.edit.text()))
        if page.question.edit.text():
            hand.key(Qt.Key.Key_Return)
        else:
            hand.click(page.question.leave)
    assert asked == [
        ("Cherry Tree bourbon 70cl", "Bourbon"),
        ("Londn gin", "London dry gin"),
        ("Maraschino liqueur - nearly empty", "10 %"),
        ("the good stuff from Dad", ""),
    ]
    assert "1 left out" in page.said.text()
    assert page.add_button.hasFocus() and page.add_button.text() == "&Add 33 to the shelf"
    hand.key(Qt.Key.Key_Return)
    assert len(window.bar.snapshot.bottles) == 33
    said = told(window, qtbot)
    print(f"\na list: {hand.keys} keys, {hand.clicks} clicks, {hand.seconds():.0f} s: {said}")
    assert hand.seconds() < MOST_S
    made, more = page.ending.reach.links
    page.ending.reach.followed.emit(more.target)
    assert window.current.key == "next-bottle"
    window.go("bottle-list", None)
    page.ending.reach.followed.emit(made.target)
    settle(window, qtbot)
    assert window.current.key == "tonight" and not window.current.greeting.isVisible()
    ready, stand_in = (
        int(each.split()[0]) for each in window.current.summary.text().split(", ")[:2]
    )
    assert made.text.startswith(f"{ready + stand_in} tonight")
    window.undo()
    assert window.bar.snapshot.bottles == ()


def test_thirty_kinds_are_ticked_in_under_two_minutes_and_undone_as_one_step(window, qtbot):
    hand = Hand()
    hand.click(window.current.greeting.first)
    page = window.current
    assert page.key == "tick-bottles" and page.view.hasFocus()
    for _kind in range(30):
        hand.key(Qt.Key.Key_Space)
        hand.key(Qt.Key.Key_Right)
    assert page.summary.text() == "30 ticked"
    hand.key(Qt.Key.Key_Return)
    bottles = window.bar.snapshot.bottles
    assert [each.level.state for each in bottles].count("sealed") == 2  # what soon goes flat
    assert len({each.ingredient for each in bottles}) == 30
    assert page.ending.came.text() == "30 bottles came in."
    assert page.ending.guessed.plain_text == (
        "28 levels are guessed: count the shelf when you like."
    )
    said = told(window, qtbot)
    print(f"\nticks: {hand.keys} keys, {hand.clicks} clicks, {hand.seconds():.0f} s: {said}")
    assert hand.seconds() < MOST_S
    hand.click(page.ending.undo_button)
    assert window.bar.snapshot.bottles == () and page.view.hasFocus()
    QTest.keyClicks(page.view, "verm")
    assert page.view.current_key == "sweet-vermouth"
    assert page.view._typing.shown.text() == "verm"  # until another key ends it
    QTest.keyClick(page.view, Qt.Key.Key_Space)
    assert page.view.ticked == ("sweet-vermouth",) and page.view._typing.shown.isHidden()
    QTest.keyClick(page.view, Qt.Key.Key_Space)
    hand.click(page.add_button) if page.add_button.isEnabled() else None
    assert window.bar.snapshot.bottles == ()


def test_what_is_typed_is_there_again_and_the_same_list_brings_nothing_twice(
    window, open_window, empty_bar, qtbot
):
    window.go("bottle-list", None)
    page = window.current
    page.edit.setPlainText("gin 70 cl\nvodka 1 l")
    settle(window, qtbot)
    again = open_window(WindowHooks(), empty_bar)
    assert "A list of bottles was left" in again.current.banner.text
    again.go("bottle-list", None)
    settle(again, qtbot)
    assert again.current.edit.toPlainText() == "gin 70 cl\nvodka 1 l"
    again.current.go_on()
    assert len(empty_bar.snapshot.bottles) == 2
    again.current.begin_again()
    again.current.edit.setPlainText("gin 70 cl")
    settle(again, qtbot)
    assert again.current.said.text() == "1 line · 0 bottles to come in · 1 there already"
    assert not again.current.add_button.isEnabled()
    again.current.take_in_after_all()
    again.current.go_on()
    assert len(empty_bar.snapshot.bottles) == 3


def test_the_sample_bar_is_asked_for_and_says_that_it_is_a_copy(window, open_window, bar):
    Hand().click(window.current.greeting.look)
    assert window.asked == ["look around"]
    went: list[str] = []
    sample = open_window(WindowHooks(go_home=partial(went.append, "home")), bar)
    assert sample.of_sample.isVisible() and sample.of_sample.text == SAMPLE
    home = next(
        each for each in sample.of_sample.findChildren(QPushButton) if each.text() == GO_HOME
    )
    Hand().click(home)
    assert went == ["home"]


def test_every_page_of_an_empty_bar_has_buttons_and_actions_that_are_heard(window, qtbot):
    from barkeep.desktop.shell.navigation import PAGES, PARTS

    deaf = []
    for page in (*PAGES, *PARTS):
        window.show_page(page.key)
        settle(window, qtbot)
        for each in window.current.findChildren(QPushButton):
            heard = each.receivers("2clicked(bool)") + each.receivers("2toggled(bool)")
            if not heard and each.menu() is None and each.group() is None:
                deaf.append(f"{page.key}: {each.text() or each.accessibleName()}")
    actions = [each for each in window.actions_.all if not each.isSeparator()]
    deaf += [each.text() for each in actions if not _is_heard(each)]
    assert deaf == []


def _is_heard(action) -> bool:
    sent = ("2triggered(bool)", "2toggled(bool)")
    group = action.actionGroup()
    return any(map(action.receivers, sent)) or group is not None
