"""Pages that are built before anybody goes to them, and details that come after their list."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.desktop.shell.navigation import PAGES
from tests.desktop.pages import said_in, settle, tabbed

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

Keys, Ctrl = Qt.Key, Qt.KeyboardModifier.ControlModifier


def first_visit(window, number, qtbot):
    """What is read in the details of a first row, and where the Tab key goes from the list."""
    qtbot.keyClick(QApplication.focusWidget() or window, getattr(Keys, f"Key_{number}"), Ctrl)
    settle(window, qtbot)
    page = window.current
    stops = [each.accessibleName() for each in tabbed(page, page.view, qtbot)]
    return page.key, said_in(page.detail), page.summary.text(), stops


def test_a_page_built_ahead_is_as_one_that_is_built_on_its_first_visit(window, open_window, qtbot):
    one_by_one = [first_visit(window, number, qtbot) for number in range(2, 7)]
    ahead = open_window()
    ahead.prepare_pages()
    assert ahead.built("bottles") is None  # nothing at once
    settle(ahead, qtbot)
    for page in PAGES:
        built = ahead.built(page.key)
        assert built is not None and built.was_shown == (page.key == "tonight")
    for number, seen in enumerate(one_by_one, 2):
        assert seen[1], "a page says nothing of its first row"
        assert first_visit(ahead, number, qtbot) == seen


def test_nobody_is_asked_about_a_page_that_was_not_visited(
    window, open_window, sample_bar, clock, qtbot
):
    page = window.show_page("bottles")
    page.count_shelf()
    qtbot.keyClicks(page.counting.view, "47")
    with Bar.open(sample_bar, clock=clock) as bar:
        again = open_window(over=bar)
        again.prepare_pages()
        settle(again, qtbot)
        assert again.built("bottles").unsaved() == "2 counted bottles are not confirmed yet."
        asked = []
        QTimer.singleShot(0, lambda: [asked.append(each) for each in _questions()])
        again.close()
        assert not asked and not again.isVisible()


def _questions():
    """The question that is shown, which is sent away."""
    shown = QApplication.activeModalWidget()
    if shown is not None:
        shown.reject()
        yield shown


def test_more_offers_what_fits_the_row_though_its_details_are_still_to_come(window, qtbot):
    page = window.arrive("bottles")
    qtbot.keyClick(page.view, Keys.Key_D, Ctrl)
    menu = page.detail.bar.more.menu()
    assert menu.isVisible()
    assert page.detail.bar.title.text() == page.current.bottle.product.name
    menu.close()
