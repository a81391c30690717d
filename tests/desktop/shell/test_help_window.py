"""Help in the real window: F1 wherever one is, search, links and the way back by keyboard."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QPushButton, QWidget

from barkeep import __version__
from barkeep.desktop.buying.pars import ParsDialog
from barkeep.desktop.buying.shopping import ShoppingDialog
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.help import TextDialog
from barkeep.desktop.shell.help_window import HelpWindow
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.desktop.shell.settings import SettingsDialog, edit_settings
from barkeep.desktop.shoots.variances import variance_columns
from barkeep.desktop.widgets.terms import explained_by
from barkeep.desktop.widgets.tips import WIDTH
from barkeep.documents.help.pages import shipped_help, table_called
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle
from tests.write_help import keys_table

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

KEY = re.compile(r"`((?:Ctrl|Strg|Alt|Shift|Umschalt)\+[^`]+|F[0-9]{1,2}|Del|Entf)`")
MENU = re.compile(r"\*(File|Edit|View|Bar|Help)\s▸\s([^*]+)\*")


def opened_in_full(open_window) -> MainWindow:
    def nothing(*_given):
        return None

    return open_window(WindowHooks(nothing, nothing, edit_settings, nothing, new_bar=nothing))


@pytest.fixture
def full_window(open_window):
    """With everything that is offered."""
    return opened_in_full(open_window)


@pytest.fixture
def german_window(german, open_window):
    """With everything that is offered, in German."""
    return opened_in_full(open_window)


def press(key, qtbot, held=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or QApplication.activeWindow(), key, held)


def ask(window: MainWindow, qtbot) -> HelpWindow:
    """F1, wherever the keyboard is; the help that this brings forward."""
    press(Qt.Key.Key_F1, qtbot)
    help_window = shown(window)
    qtbot.waitUntil(help_window.isActiveWindow)
    return help_window


def back_to(window: QWidget, qtbot) -> None:
    """Close the help by its key, and go on where it was asked."""
    press(Qt.Key.Key_Escape, qtbot)
    QApplication.processEvents()  # the help has left before the window is asked for
    with qtbot.waitActive(window):
        window.activateWindow()


def shown(window: MainWindow) -> HelpWindow:
    help_window = window.help.shown
    assert help_window is not None and help_window.isVisible()
    return help_window


def plain(text: str) -> str:
    return text.replace("&", "").partition("\t")[0]


def keys_named(text: str) -> set[str]:
    """The keys that a text names, as they are called in the language that is spoken."""
    native = QKeySequence.SequenceFormat.NativeText
    return {
        QKeySequence.fromString(each, native).toString()
        for found in KEY.findall(text)
        for each in re.split(" or | oder ", found)
    }


def actions_of(window: MainWindow) -> list[QAction]:
    """Those of the window and of every page."""
    pages = [window.show_page(page.key).bar_actions for page in (*PAGES, *PARTS)]
    return [*window.actions_.all, *(each for some in pages for each in some)]


def test_every_key_and_menu_that_the_help_names_is_there(full_window):
    """And its table of keys is the program's; written anew by `python -m tests.write_help`."""
    actions = actions_of(full_window)
    full_window.help.show_place("keys")
    in_help = shown(full_window).findChildren(QShortcut)
    known = {keys.toString() for each in actions for keys in each.shortcuts()}
    known |= {each.key().toString() for each in in_help}
    known.add(full_window.current.more_action.shortcut().toString())
    text = "\n".join(page.text for page in shipped_help().pages.values())
    named = keys_named(text)
    assert len(named) > 40
    # The editor's own, and the dialogs' in which a name is typed.
    assert named - known - {"Ctrl+Return", "Ctrl+I"} == set()
    menus = {
        plain(menu.title()): {plain(each.text()) for each in menu.actions()}
        for menu in (each.menu() for each in full_window.menuBar().actions())
    }
    full_window.show_page("tonight")
    for menu, entry in MENU.findall(text):
        assert " ".join(entry.split()) in menus[menu], (menu, entry)
    assert table_called("keys") == keys_table(full_window)


def test_a_german_window_has_german_help(german_window, qtbot):
    """Its table of keys is the window's; written anew by `python -m tests.write_help`."""
    window = german_window
    assert table_called("keys", "de") == keys_table(window, "de")
    english, german = shipped_help().pages, shipped_help("de").pages
    for key in english:
        in_english = {QKeySequence(each).toString() for each in KEY.findall(english[key].text)}
        if key != "keys":
            assert keys_named(german[key].text) == in_english, key
    tonight = window.show_page("tonight")
    settle(window, qtbot)
    tonight.closeness.chip("close").setFocus()
    assert tonight.closeness.whatsThis().startswith("Nähe: Wie nah ein Ersatz kommt")
    help_window = ask(window, qtbot)
    assert help_window.place == "glossary#closeness"
    assert help_window.page.textCursor().block().text() == "Nähe"
    press(Qt.Key.Key_F, qtbot, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(QApplication.focusWidget(), "Fuellstand wiegen")
    assert help_window.contents.item(1).text().startswith("Das Regal zählen")
    press(Qt.Key.Key_Return, qtbot)
    assert help_window.page.toPlainText().startswith("Das Regal zählen\n")
    window.help.show_place("buying#the-shopping-list")
    assert help_window.page.textCursor().block().text() == "Die Einkaufsliste"
    help_window.search.clear()
    rows = map(help_window.contents.item, range(help_window.contents.count()))
    assert [each.text() for each in rows][:2] == ["Zum Anfang", "Die erste Stunde"]
    back_to(window, qtbot)
    window.show_changes()
    assert "spricht Deutsch" in window.findChild(TextDialog).text.toPlainText()


def test_f1_tells_of_the_page_or_part_that_is_shown(full_window, qtbot):
    wanted = {
        "tonight": "Tonight",
        "bottles": "Bottles",
        "specs": "Specs",
        "shoots": "Planning a shoot",
        "next-bottle": "Buying",
        "stand-ins": "Stand-ins, and what never can",
        "use-up": "Use up",
        "buying-plan": "Buying",
        "carried": "Buying",
        "pairs": "Buying",
        "tick-bottles": "The first hour",
        "bottle-list": "The first hour",
    }
    assert set(wanted) == {page.key for page in (*PAGES, *PARTS)}
    for key, title in wanted.items():
        page = full_window.show_page(key)
        settle(full_window, qtbot)
        page.focus_search()
        help_window = ask(full_window, qtbot)
        assert help_window.windowTitle() == f"{title} – help – barkeep"
        assert help_window.page.toPlainText().startswith(f"{title}\n")
        assert help_window.contents.currentItem().text() == title
        back_to(full_window, qtbot)
        assert not help_window.isVisible()


def test_f1_works_in_a_dialog_and_in_one_over_it(full_window, qtbot):
    full_window.actions_.shopping.trigger()
    shopping = full_window.findChild(ShoppingDialog)
    qtbot.waitUntil(shopping.isActiveWindow)
    assert ask(full_window, qtbot).place == "buying#the-shopping-list"
    back_to(shopping, qtbot)
    shopping.pars_button.click()
    pars = shopping.findChild(ParsDialog)
    qtbot.waitUntil(pars.isActiveWindow)
    pars.what.setFocus()
    assert ask(full_window, qtbot).place == "buying#the-shopping-list"
    back_to(pars, qtbot)
    pars.amount.setFocus()
    assert ask(full_window, qtbot).place == "glossary#par"
    back_to(pars, qtbot)
    pars.reject()
    shopping.reject()
    full_window.actions_.settings.trigger()
    settings = full_window.findChild(SettingsDialog)
    qtbot.waitUntil(settings.isActiveWindow)
    assert ask(full_window, qtbot).place == "settings"


@pytest.mark.left_at("tonight")
def test_what_is_looked_for_is_read_and_followed_by_keyboard(window, qtbot):
    help_window = ask(window, qtbot)
    assert help_window.place == "tonight"
    press(Qt.Key.Key_F, qtbot, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(QApplication.focusWidget(), "vermouth going off")
    assert plain(help_window.contents.item(1).text()) == "Use up"
    press(Qt.Key.Key_Return, qtbot)
    assert help_window.place.startswith("use-up")
    assert QApplication.focusWidget() is help_window.contents
    help_window.page.setFocus()
    press(Qt.Key.Key_Tab, qtbot)  # to the first link
    press(Qt.Key.Key_Return, qtbot)
    assert help_window.place == "cautions"
    press(Qt.Key.Key_Left, qtbot, Qt.KeyboardModifier.AltModifier)
    assert help_window.place.startswith("use-up")
    press(Qt.Key.Key_Right, qtbot, Qt.KeyboardModifier.AltModifier)
    assert help_window.place == "cautions"
    help_window.search.set_text("xyzzy")
    assert help_window.contents.item(0).text() == "Nothing in the help has these words"
    help_window.search.clear()
    assert help_window.contents.currentItem().text() == "Cautions"
    assert focusable_without_name(help_window) == []
    assert cut_off(help_window) == []


def test_a_heading_that_is_asked_for_is_at_the_top(window):
    window.help.show_place("counting#what-the-difference-means")
    page = shown(window).page
    assert page.textCursor().block().text() == "What the difference means"
    assert page.verticalScrollBar().value() > 0
    window.help.show_place("counting")
    assert page.verticalScrollBar().value() == 0


def test_help_goes_with_its_window(window, qtbot):
    help_window = ask(window, qtbot)
    window.close_unasked()
    assert not help_window.isVisible()


@pytest.mark.left_at("tonight")
def test_words_are_explained_where_they_are_said(window, qtbot):
    tonight = window.current
    chips = tonight.closeness
    assert explained_by(chips) == "closeness" and "It is a judgement" in chips.whatsThis()
    chips.chip("close").setFocus()
    assert ask(window, qtbot).place == "glossary#closeness"
    assert "Closeness\nHow near a stand-in comes" in shown(window).page.toPlainText()
    back_to(window, qtbot)
    window.show_page("bottles")
    settle(window, qtbot)
    (ledger,) = [
        each
        for each in window.current.detail.findChildren(QPushButton)
        if each.isVisible() and each.text().startswith("Ledger")
    ]
    assert ledger.toolTip().startswith("Ledger: Everything that happened to a bottle")
    assert ledger.accessibleDescription().endswith(ledger.toolTip().replace("\n", " "))
    assert max(map(len, ledger.toolTip().splitlines())) <= WIDTH
    assert ledger.focusPolicy() & Qt.FocusPolicy.TabFocus
    ledger.setFocus(Qt.FocusReason.TabFocusReason)
    assert ask(window, qtbot).place == "glossary#ledger"


def test_what_a_field_explains_stays_when_it_is_refused(window, qtbot):
    window.actions_.shopping.trigger()
    shopping = window.findChild(ShoppingDialog)
    for each in (shopping.with_pars, shopping.pars_button):
        assert explained_by(each) == "par" and each.accessibleDescription().startswith("Par: ")
    shopping.pars_button.click()
    pars = shopping.findChild(ParsDialog)
    pars.what.setText("gin")
    pars.amount.setText("a lot")
    pars.submit()
    assert pars.problem("par")
    assert pars.amount.accessibleDescription() == pars.problem("par")
    pars.forgive("par")
    assert pars.amount.accessibleDescription().startswith("Par: The least you want")
    assert "The least you want" in pars.amount.toolTip()
    heads = RowTable(variance_columns())
    doubt = [each.title for each in heads.columns].index("Doubt")
    across = Qt.Orientation.Horizontal
    tip = heads.headerData(doubt, across, Qt.ItemDataRole.ToolTipRole)
    assert tip.startswith("Doubt: How far off a figure may be")
    assert heads.headerData(0, across, Qt.ItemDataRole.WhatsThisRole) is None
    assert heads.headerData(0, across, Qt.ItemDataRole.ToolTipRole) == heads.columns[0].title


def test_what_is_new_is_told_once_after_an_upgrade(bar, theme, qtbot, tmp_path):
    state = WindowState(tmp_path / "window.ini")

    def opened() -> MainWindow:
        made = MainWindow(bar, state, theme, WindowHooks())
        qtbot.addWidget(made, before_close_func=MainWindow.close_unasked)
        with qtbot.waitActive(made):
            made.show()
            made.activateWindow()
        settle(made, qtbot)
        return made

    first = opened()
    assert first.current.banner.text == ""  # nothing is new to who has just come
    first.close_unasked()
    state.keep_text("window/version", "0.1.0")
    second = opened()
    assert second.current.banner.text == f"barkeep is now {__version__}."
    (act,) = [
        each
        for each in second.current.banner.findChildren(QPushButton)
        if each.text() == "What is new"
    ]
    act.click()
    assert __version__ in second.findChild(TextDialog).text.toPlainText()
    second.close_unasked()
    third = opened()
    assert third.current.banner.text == ""
