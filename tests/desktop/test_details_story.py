"""The details in the real window: a shoot by its stops, the bar that stays, parts that fold."""

from __future__ import annotations

from collections import Counter

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from barkeep.desktop.buying.shopping import ShoppingDialog
from barkeep.desktop.making.house_made import MakeDialog
from barkeep.desktop.shell.what_if import WhatIfDialog
from barkeep.desktop.shoots.log import LogDialog
from barkeep.desktop.shoots.one_shoot import ShootPage
from barkeep.desktop.shoots.stop_line import StopLinePicture
from barkeep.desktop.widgets.folds import FoldHead
from barkeep.desktop.widgets.refilled import TickRow
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import do_in_details, offered_in_details, said_in, settle, tabbed

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
MOST_TABS = 40
PAGES = ("tonight", "bottles", "specs", "shoots", "next-bottle", "stand-ins")


@pytest.fixture
def window(open_window):
    """The window as it is at first: nobody has opened or closed a part of any details."""
    return open_window(parts_open=False)


class Hand:
    """Presses keys wherever the keyboard is, and counts them."""

    def __init__(self, window, qtbot) -> None:
        self.window, self._qtbot = window, qtbot
        self.keys: Counter[str] = Counter()
        self._what = ""

    def at(self, what: str) -> None:
        """From now on the keys are for this."""
        self._what = what

    def press(self, *keys: str) -> None:
        for key in keys:
            self.keys[self._what] += 1
            QTest.keySequence(QApplication.focusWidget() or self.window, QKeySequence(key))
            QApplication.processEvents()

    def type(self, words: str) -> None:
        self.keys[self._what] += len(words)
        self._qtbot.keyClicks(QApplication.focusWidget(), words)

    def tab_to(self, widget) -> None:
        for _ in range(MOST_TABS):
            if QApplication.focusWidget() is widget:
                return
            self.press("Tab")
        raise AssertionError(f"no Tab leads to {widget.accessibleName()}")

    def answered(self) -> None:
        """All is answered, and the window has the keyboard, as it has once no dialog is open."""
        settle(self.window, self._qtbot)
        with self._qtbot.waitActive(self.window):
            self.window.activateWindow()

    def ready(self, dialog) -> None:
        self._qtbot.waitUntil(lambda: dialog.isActiveWindow() and dialog.isAncestorOf(_focused()))


def _focused():
    return QApplication.focusWidget()


def page_of(screen) -> ShootPage:
    return next(each for each in screen.detail.findChildren(ShootPage) if each.isVisible())


def next_stop(screen):
    """The stop that is next, by the line that is drawn."""
    return page_of(screen).findChild(StopLinePicture).line.next


def first_button(screen) -> QPushButton:
    return screen.detail.bar.offers.shown[0]


def test_a_shoot_from_an_idea_to_its_log_by_what_is_next(window, bar, qtbot, capsys):
    hand = Hand(window, qtbot)
    hand.at("idea")
    hand.press("Ctrl+4")
    hand.answered()
    screen = window.current
    hand.press("Ctrl+N")
    editor = screen.dialog
    hand.ready(editor)
    hand.type("Wet Rails")
    hand.tab_to(editor.drink)
    for name in ("Request Stop", "Deckchair Special"):
        hand.type(name)
        hand.press("Return")
    hand.press("Return")
    hand.answered()
    (shoot,) = [each for each in bar.snapshot.shoots if each.theme == "Wet Rails"]
    assert shoot.names == ("Request Stop", "Deckchair Special")
    assert screen.detail.bar.title.text() == "Wet Rails"

    # Only the one thing that is next is the primary action, and a Tab and a key do it.
    gone_by = []
    while (stop := next_stop(screen)) is not None:
        assert stop.key not in gone_by  # none comes twice
        gone_by.append(stop.key)
        hand.at(stop.key)
        screen.focus_list()
        hand.tab_to(first_button(screen))
        assert first_button(screen).property("primary") is True
        hand.press("Space")
        WHAT_IS_DONE[stop.key](hand, screen)
        hand.answered()
    assert gone_by == ["shop", "film", "count"]
    line = page_of(screen).findChild(StopLinePicture).line
    assert [each.state for each in line.stops] == [
        "done",
        "not needed",
        "not needed",
        "done",
        "done",
    ]
    (logged,) = [each for each in bar.snapshot.shoots if each.theme == "Wet Rails"]
    assert logged.state == "logged" and logged.on == bar.snapshot.on
    many = len(logged.log.bottles)
    words = said_in(page_of(screen))
    assert any(f"{many} bottles, {many} of them not counted" in each for each in words)
    assert "Variances…" in offered_in_details(screen)
    with capsys.disabled():
        total = sum(hand.keys.values())
        told = ", ".join(f"{what} {many}" for what, many in hand.keys.items())
        print(f"\na shoot of two from idea to log: {total} keys, no click ({told})")


def _shop(hand: Hand, screen) -> None:
    dialog = screen.dialog
    assert isinstance(dialog, ShoppingDialog)
    hand.ready(dialog)
    hand.tab_to(dialog.with_pars)
    hand.press("Space")
    hand._qtbot.waitUntil(lambda: dialog.ready and not hand.window.background.is_busy)
    assert dialog.table.rowCount() == 1
    for button in (dialog.all_button, dialog.put_button):
        hand.tab_to(button)
        hand.press("Space")
    assert dialog.banner.kind == "done", dialog.banner.text
    hand._qtbot.waitUntil(lambda: dialog.ready and not dialog.table.rowCount())
    hand.press("Esc")


def _make(hand: Hand, screen) -> None:
    assert isinstance(screen.dialog, MakeDialog)
    hand.ready(screen.dialog)
    hand.press("Return", "Esc")


def _film(hand: Hand, screen) -> None:
    """It was planned for a day to come: filmed today is the likely answer."""
    assert "which is still to come" in screen.banner.text
    hand.press("Space")


def _log(hand: Hand, screen) -> None:
    dialog = screen.dialog
    assert isinstance(dialog, LogDialog)
    hand.ready(dialog)
    hand.tab_to(dialog.write_button)
    hand.press("Space")


WHAT_IS_DONE = {"shop": _shop, "prepare": _make, "film": _film, "count": _log}


def test_each_page_has_its_bar_above_what_is_scrolled(window, qtbot):
    """Its name, what is done most, and More, by the Tab key first and by a key of its own."""
    for name in PAGES:
        screen = window.show_page(name)
        settle(window, qtbot)
        screen.focus_list()
        settle(window, qtbot)
        bar, scrolled = screen.detail.bar, screen.detail.scrolled
        assert bar.title.text(), name
        assert 1 <= len(bar.offers.shown) <= 3, name
        assert bar.geometry().bottom() <= scrolled.geometry().top(), name
        stops = tabbed(screen, screen.view, qtbot)
        firsts = [*[each for each in bar.offers.shown if each.isEnabled()], bar.more, scrolled]
        assert stops[1 : len(firsts) + 1] == firsts, name
        assert focusable_without_name(screen.detail) == [], name
        assert cut_off(screen.detail) == [], name
        screen.focus_list()
        QTest.keySequence(screen.view, QKeySequence("Ctrl+D"))
        menu = QApplication.activePopupWidget()
        assert menu is bar.more.menu(), name
        keys = [each.text().partition("\t")[2] for each in menu.actions()]
        assert any(keys) or name in ("tonight", "next-bottle", "stand-ins"), name
        menu.close()
        with qtbot.waitActive(window):
            window.activateWindow()
        scrolled.verticalScrollBar().setValue(10_000)
        assert bar.y() == 0 and bar.isVisible(), name


def test_parts_open_and_close_by_keys_and_stay_so(window, open_window, qtbot):
    screen = window.show_page("specs")
    screen.show_thing("Upper Berth by the Window")
    settle(window, qtbot)
    words = "\n".join(said_in(screen.detail))
    assert "Riff of Upper Berth" in words and "Beside its parent" not in words
    assert "How sure this is" not in _seen(screen)
    heads = _heads(screen)
    figures = next(each for each in heads if each.button.text() == "What it comes to")
    assert figures.button.accessibleName() == "What it comes to, closed"
    assert "Strength" in figures.button.accessibleDescription()
    figures.button.setFocus()
    qtbot.keyClick(figures.button, Qt.Key.Key_Right)
    settle(window, qtbot)
    assert figures.button.accessibleName() == "What it comes to, open"
    assert "How sure this is" in _seen(screen)
    qtbot.keyClick(figures.button, Qt.Key.Key_Down)
    assert _focused().text() == "Family"
    qtbot.keyClick(_focused(), Qt.Key.Key_Return)
    settle(window, qtbot)
    assert "Beside its parent" in _seen(screen)
    screen.show_thing("Request Stop")  # it stays open for the next one
    settle(window, qtbot)
    assert "How sure this is" in _seen(screen)
    window.close_unasked()
    again = open_window(parts_open=False).show_page("specs")
    again.show_thing("Request Stop")
    settle(again.window(), qtbot)
    assert "How sure this is" in _seen(again)
    do_in_details(again, "Close every part", qtbot)
    settle(again.window(), qtbot)
    assert "How sure this is" not in _seen(again)
    assert not any(each.button.is_open for each in _heads(again))


def _heads(screen) -> list[FoldHead]:
    found = [each for each in screen.detail.findChildren(FoldHead) if each.isVisibleTo(screen)]
    return sorted(found, key=lambda each: each.mapTo(screen, each.rect().topLeft()).y())


def _seen(screen) -> str:
    """What labels and lines of folds say that are open."""
    labels = [each for each in screen.detail.findChildren(QLabel) if each.isVisibleTo(screen)]
    heads = [each.button for each in _heads(screen)]
    return "\n".join(each.text() for each in (*labels, *heads))


def test_cautions_are_never_folded_away(window, qtbot):
    """What can hurt stays as words, open or closed, on Tonight, Specs and Bottles."""
    for name, thing, tags in (
        ("tonight", "Drift Fence", "Raw egg, tree nuts · egg · sulphites"),
        ("specs", "Drift Fence", "Raw egg, tree nuts · egg · sulphites"),
    ):
        screen = window.show_page(name)
        screen.show_thing(thing)
        settle(window, qtbot)
        head = _heads(screen)[0]
        for is_open in (False, True):
            assert head.button.text() == "Before you pour"
            assert head.button.is_open is is_open
            assert head.brief.isVisible() and head.brief.text() == tags
            assert ("Raw egg: use pasteurised egg" in "\n".join(said_in(screen.detail))) is is_open
            qtbot.mouseClick(head.brief, Qt.MouseButton.LeftButton)
            settle(window, qtbot)
            head = _heads(screen)[0]
    screen = window.show_page("bottles")
    row = next(each for each in screen.table.rows if each.past)
    screen.choose(row.bottle.id)
    settle(window, qtbot)
    assert _heads(screen)[0].brief.text().startswith("Past its date")


def test_on_paper_the_details_write_nothing_and_say_why(window, bar, qtbot):
    window.what_if()
    asked = window.findChild(WhatIfDialog)
    asked.also.setText("vodka")
    qtbot.keyClick(asked.also, Qt.Key.Key_Return)
    assert bar.on_paper is not None
    settle(window, qtbot)
    for name, off, still in (
        (
            "shoots",
            {"It is filmed", "Edit…", "Remove shoot", "Repeat"},
            {"Run sheet…", "Shopping…"},
        ),
        ("specs", {"Riff…"}, {"Show in Tonight", "Batch…"}),
        ("stand-ins", {"Add a stand-in…"}, set()),
        ("next-bottle", {"Add to the shopping list"}, {"What stands in?"}),
        ("bottles", {"Count…", "Pour…"}, set()),
    ):
        screen = window.show_page(name)
        settle(window, qtbot)
        bar_of = screen.detail.bar
        assert "On paper" in bar_of.why_not.text() and bar_of.why_not.isVisible(), name
        can = _can(bar_of)
        assert {each for each in off if can[each]} == set(), name
        assert {each for each in still if not can[each]} == set(), name
    screen = window.show_page("shoots")
    do_in_details(screen, "Open every part", qtbot)
    settle(window, qtbot)
    page = page_of(screen)
    assert page.findChildren(TickRow) and not any(
        each.box.isEnabled() for each in page.findChildren(TickRow)
    )
    buttons = [each for each in page.findChildren(QPushButton) if each.isVisibleTo(page)]
    writing = [each for each in buttons if each.text().startswith(("Use ", "Later", "Pour other"))]
    assert writing and not any(each.isEnabled() for each in writing)
    window.what_if()
    settle(window, qtbot)
    assert not screen.detail.bar.why_not.text()
    assert _can(screen.detail.bar)["It is filmed"]
    assert all(each.box.isEnabled() for each in page_of(screen).findChildren(TickRow))


def _can(bar) -> dict[str, bool]:
    entries = bar.more.menu().actions()
    return {
        **{each.text(): each.isEnabled() for each in bar.offers.shown},
        **{each.text().partition("\t")[0].replace("&", ""): each.isEnabled() for each in entries},
    }


def test_the_line_of_stops_is_read_and_gone_along(window, qtbot):
    screen = window.show_page("shoots")
    settle(window, qtbot)
    picture = page_of(screen).findChild(StopLinePicture)
    assert picture.accessibleName() == "How far the shoot is"
    assert "Shop, next: 4 of 11 to buy." in picture.accessibleDescription()
    row = picture.height() / 5
    said = picture.says_at(QPointF(40.0, 3.5 * row))
    assert said.startswith("Film, later: on ") and str(screen.current.on.year) in said
    taken = []
    picture.taken.connect(taken.append)
    picture.setFocus()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Return):  # what is later is not done
        qtbot.keyClick(picture, key)
    assert taken == []
    qtbot.keyClick(picture, Qt.Key.Key_Up)
    qtbot.keyClick(picture, Qt.Key.Key_Return)
    assert taken == ["shop"] and isinstance(screen.dialog, ShoppingDialog)
    screen.dialog.close()
    assert b"Shop" in picture.as_svg()


def test_what_is_done_most_stands_in_one_row_and_the_rest_is_first_under_more(window, qtbot):
    window.resize(1024, 640)
    for page in ("tonight", "bottles", "specs", "shoots", "next-bottle", "stand-ins"):
        window.go(page, None)
        settle(window, qtbot)
        bar = window.current.detail.bar
        tops = {each.y() for each in (*bar.offers.shown, bar.more)}
        assert len(tops) == 1, page
    window.go("next-bottle", None)
    settle(window, qtbot)
    narrow = offered_in_details(window.current)
    assert [each.text() for each in window.current.detail.bar.offers.shown] == narrow[:1]
    window.resize(1600, 800)
    settle(window, qtbot)
    assert [each.text() for each in window.current.detail.bar.offers.shown] == narrow[:2]
    assert offered_in_details(window.current) == narrow
    window.resize(1024, 640)
    settle(window, qtbot)
    entry = window.current.detail.bar.more.menu().actions()[0]
    assert entry.text().partition("\t")[0] == narrow[1]
    entry.trigger()
    assert window.current.key == "stand-ins"
