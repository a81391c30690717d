"""How the window behaves as a window: no strays, no growing, and nothing lost on closing."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication, QDialog, QMenu, QMessageBox, QWidget

from barkeep.desktop.shell.main_window import MainWindow
from barkeep.desktop.shell.navigation import PAGES
from barkeep.domain.bottles.counting import ShelfCount
from tests.desktop.pages import settle, tabbed

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def window(open_window, qtbot) -> MainWindow:
    """A window over the sample bar, in its usual size."""
    made = open_window()
    made.resize(1024, 640)
    settle(made, qtbot)
    return made


class Strays(QObject):
    """Notes every widget that is shown as a window of its own and should not be."""

    def __init__(self) -> None:
        super().__init__()
        self.met: list[str] = []

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        shown = event.type() == QEvent.Type.Show and isinstance(watched, QWidget)
        if shown and watched.isWindow() and not isinstance(watched, (MainWindow, QDialog, QMenu)):
            self.met.append(f"{type(watched).__name__} {watched.accessibleName()}")
        return False


@pytest.fixture
def strays(qapp):
    watching = Strays()
    qapp.installEventFilter(watching)
    yield watching
    qapp.removeEventFilter(watching)


def test_nothing_but_the_window_is_ever_shown_as_one(strays, window, qtbot):
    for page in PAGES:
        window.show_page(page.key)
        settle(window, qtbot)
    screen = window.show_page("bottles")
    for number in range(screen.shown.rowCount()):
        screen.view.setCurrentIndex(screen.shown.index(number, 0))
    settle(window, qtbot)
    assert strays.met == []


# The count


@pytest.fixture
def counting(window, qtbot):
    """The Bottles page, being counted, with two bottles counted."""
    screen = window.show_page("bottles")
    settle(window, qtbot)
    screen.count_shelf()
    qtbot.keyClicks(screen.counting.view, "34")
    return screen


def test_the_window_keeps_its_size_through_a_count(window, qtbot):
    screen = window.show_page("bottles")
    settle(window, qtbot)
    before = window.size()
    sizes = []
    for _turn in range(2):
        for step in (screen.count_shelf, screen.leave_count):
            step()
            settle(window, qtbot)
            sizes.append(window.size())
    screen.count_shelf()
    qtbot.keyClicks(screen.counting.view, "34")
    screen.write_counts()
    screen.counting.sheet.write_button.click()
    settle(window, qtbot)
    assert not screen.is_counting
    assert {*sizes, window.size()} == {before}


def answer(qtbot, press: str) -> list[str]:
    """Once the question is there, note it and press a button, or Esc."""
    asked: list[str] = []

    def reply() -> None:
        box = QApplication.activeModalWidget()
        assert isinstance(box, QMessageBox)
        asked.append(box.text())
        if press == "Esc":
            qtbot.keyClick(box, Qt.Key.Key_Escape)
        else:
            next(each for each in box.buttons() if each.text() == press).click()

    QTimer.singleShot(0, reply)
    return asked


@pytest.mark.parametrize("press", ["Keep counting", "Esc"])
def test_closing_amid_a_count_asks_and_can_be_thought_better_of(window, counting, qtbot, press):
    asked = answer(qtbot, press)
    window.close()
    assert asked == ["2 counted bottles are not confirmed yet."]
    assert window.isVisible()
    assert len(counting.count) == 2
    qtbot.keyClicks(counting.counting.view, "5")
    assert len(counting.count) == 3


def test_counts_are_discarded_where_that_is_wanted(window, counting, qtbot):
    counting.leave_count()  # off the page they are as unconfirmed as on it
    asked = answer(qtbot, "Discard counts")
    window.close()
    assert asked
    assert not window.isVisible()


def test_one_bottle_is_one_bottle_and_none_asks_nothing(window, counting):
    for bottle in list(counting.count.levels)[1:]:
        counting.counting.count = counting.count.dropped(bottle)
    assert counting.unsaved() == "1 counted bottle is not confirmed yet."
    counting.counting.count = ShelfCount()
    assert counting.unsaved() == ""
    window.close()
    assert not window.isVisible()


# Tab


def test_tab_goes_over_the_bottles_page_as_the_eye_does(window, qtbot):
    screen = window.show_page("bottles")
    settle(window, qtbot)
    wanted = [
        screen.add_button,
        screen.count_button,
        screen.search.focusProxy(),
        screen.look_button,
        screen.kinds.chip("all"),
        screen.states.chip("any"),
        screen.view,
        *screen.detail.bar.offers.shown,
        screen.detail.bar.more,
        screen.detail.scrolled,
    ]
    stops = tabbed(screen, screen.add_button, qtbot)
    assert stops[: len(wanted)] == wanted
    assert all(screen.detail.isAncestorOf(each) for each in stops[len(wanted) :])
    assert len(stops) > len(wanted)


def test_tab_goes_over_the_count_as_the_eye_does(window, counting, qtbot):
    count = counting.counting
    buttons = [count.everything, count.afresh_button, count.leave_button, count.confirm_button]
    wanted = [*buttons, count.view]
    assert tabbed(counting, count.everything, qtbot)[:5] == wanted


def pressed_at_first(window, qtbot, *keys):
    """The Specs page, with keys pressed before the first answer has brought its rows."""
    page = window.current
    page.focus_list()
    assert not page.table.rows
    for key, modifiers in keys:
        qtbot.keyClick(page.view, key, modifiers)
    settle(window, qtbot)
    return page


EDIT = (Qt.Key.Key_E, Qt.KeyboardModifier.ControlModifier)
REMOVE = (Qt.Key.Key_Delete, Qt.KeyboardModifier.NoModifier)


def test_what_is_pressed_for_a_spec_that_is_still_to_be_listed_is_done_then(window, qtbot):
    spec = window.bar.snapshot.specs[1]
    window.go("specs", spec.name)
    page = pressed_at_first(window, qtbot, EDIT, EDIT)
    assert page.editor.text.toPlainText().startswith(spec.name)
    page.editor.close()


@pytest.mark.parametrize("keys", [(EDIT,), (REMOVE,)])
def test_what_is_pressed_for_no_spec_before_any_is_listed_asks_for_one(window, qtbot, keys):
    before = window.bar.snapshot.specs
    window.show_page("specs")
    page = pressed_at_first(window, qtbot, *keys)
    assert page.banner.text == "Choose one of the specs first."
    assert page.editor is None and window.bar.snapshot.specs == before


def test_two_things_pressed_for_a_spec_that_is_still_to_be_listed_ask_which(window, qtbot):
    spec = window.bar.snapshot.specs[1]
    window.go("specs", spec.name)
    page = pressed_at_first(window, qtbot, EDIT, REMOVE)
    assert page.banner.text == "Choose one of the specs first."
    assert page.editor is None and spec in window.bar.snapshot.specs


def test_what_is_searched_before_any_spec_is_listed_says_of_none_that_there_are_none(window, qtbot):
    page = window.show_page("specs")
    page.search.set_text("lemon")
    assert page.list_stack.currentWidget() is page.view
    settle(window, qtbot)
    assert 0 < page.shown.rowCount() < len(page.table.rows)
