"""The finder, from the real window by its key: what is found, gone to and done."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.shell.finder import LATELY
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.desktop.shell.settings import edit_settings
from tests.desktop.pages import settle

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def window(open_window):
    return open_window(WindowHooks(settings=edit_settings))


ASKED = Path(__file__).parents[2] / "reference" / "finder_asked.toml"


def begin(window, qtbot):
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_K, Qt.KeyboardModifier.ControlModifier)
    finder = window._finder
    qtbot.waitUntil(lambda: finder.is_ready)
    assert finder.field.hasFocus()
    return finder


def find(window, qtbot, typed):
    finder = begin(window, qtbot)
    qtbot.keyClicks(finder.field, typed)
    return finder


def enter(window, qtbot):
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    settle(window, qtbot)


def names(finder):
    return [each.thing.name for each in finder.stops.rows]


def test_what_an_owner_types_finds_what_is_meant_first(window, qtbot, subtests):
    finder = begin(window, qtbot)
    for typed, meant in tomllib.loads(ASKED.read_text("utf-8"))["asked"].items():
        with subtests.test(typed=typed):
            finder.field.clear()
            qtbot.keyClicks(finder.field, typed)
            thing = finder.lit.thing
            if meant:
                assert f"{thing.sort} {thing.name.removeprefix('Theme: ')}" in meant
            else:
                assert f"Nothing is called “{typed}”. You may:" in finder.said.text()
                assert names(finder)[0] == f"Search the specs for “{typed}”"


def test_every_command_of_every_page_is_listed_with_its_key(window, qtbot):
    finder = begin(window, qtbot)
    listed = {each.thing.name: each for each in finder.stops.rows}
    assert listed["Tonight"].keys == "Ctrl+1"
    assert listed["Add bottle"].keys == "Ctrl+N" and listed["Add bottle"].beside == "Bottles"
    assert listed["Variances"].beside == "Shoots"
    assert listed["Count bottle"].beside == "Choose a bottle first"
    assert {"Undo", "Theme: Dark", "Text size: Twice as large", "New ingredient"} <= set(listed)
    assert all(each.told for each in finder.stops.rows)


def test_enter_goes_where_the_thing_is_and_lately_used_is_first(window, qtbot):
    finder = begin(window, qtbot)
    assert finder.said.text() == "Type some of a name. Every command:"
    for typed, page, chosen in (
        ("night sleeper", "shoots", lambda screen: screen.current.theme),
        ("brazier", "specs", lambda screen: screen.current.spec.name),
        ("falernum", "bottles", lambda screen: screen.current.bottle.product.title),
    ):
        finder = find(window, qtbot, typed)
        thing = finder.lit.thing
        enter(window, qtbot)
        assert window.current.key == page
        assert chosen(window.current) == thing.name
        assert window.current.list_stack.view.hasFocus()
    finder = begin(window, qtbot)
    assert finder.said.text() == "Type some of a name. Used lately, then every command:"
    assert names(finder)[0] == "Oddlamp Falernum"
    assert names(finder)[1:3] == ["Brazier", "Night Sleeper"]
    assert "bottle:31" in json.loads(window.state.text(LATELY))


def test_enter_does_a_command_of_a_page_that_is_not_shown(window, qtbot):
    find(window, qtbot, "count shelf")
    enter(window, qtbot)
    assert window.current.key == "bottles" and window.current.is_counting


def test_a_command_that_cannot_be_given_says_why_and_stays(window, qtbot):
    finder = find(window, qtbot, "redo")
    qtbot.keyClick(finder.field, Qt.Key.Key_Return)
    assert finder.isVisible()
    assert finder.said.text() == "Redo: There is nothing to redo."


def test_it_opens_over_a_field_that_is_typed_in_and_esc_gives_the_field_back(window, qtbot):
    window.find_here()
    search = QApplication.focusWidget()
    qtbot.keyClicks(search, "gin")
    finder = find(window, qtbot, "rum")
    qtbot.keyClick(finder.field, Qt.Key.Key_Escape)
    assert not finder.isVisible()
    assert search.hasFocus() and search.text() == "gin"


def test_what_nobody_has_is_searched_for_where_one_says(window, qtbot):
    finder = find(window, qtbot, "qqzzx")
    qtbot.keyClick(finder.field, Qt.Key.Key_Down)
    enter(window, qtbot)
    assert window.current.key == "bottles" and window.current.search.text == "qqzzx"
    assert window.current.search.isAncestorOf(QApplication.focusWidget())


def test_going_elsewhere_leaves_it(window, qtbot):
    finder = begin(window, qtbot)
    qtbot.keyClick(finder.field, Qt.Key.Key_3, Qt.KeyboardModifier.ControlModifier)
    assert window.current.key == "specs" and not finder.isVisible()
