"""The search of the Specs page understands the query language, and says what it does not."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.specs.page import SpecsScreen
from barkeep.domain.drink.search import search
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import shown_page
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


@pytest.fixture
def screen(page):
    return page.screen


def typed(page, qtbot, text):
    """Type a search anew, wait for what it asks, and give the names that are left."""
    field = page.screen.search.focusProxy()
    page.screen.focus_search()
    qtbot.keyClicks(field, text)
    page.settle(qtbot)
    return names(page.screen)


def names(screen):
    return [row.spec.name for row in screen.shown.shown_rows()]


def wanted(bar, text):
    return sorted((spec.name for spec in search(bar.snapshot, text)), key=str.casefold)


@walked(
    "text",
    [
        "with:rum -egg",
        "tag:winter",
        "glass:coupe made:stirred berth",
        "due",
        "strength:>25",
        "rum strength:18..22",
        '"upper berth" -window',
        "zzyzx",
    ],
)
def test_what_is_typed_finds_what_the_language_says(bar, page, qtbot, text):
    found = typed(page, qtbot, text)
    assert sorted(found, key=str.casefold) == wanted(bar, text)
    assert page.screen.search.problem == ""
    total = len(bar.snapshot.all_specs)
    assert page.screen.search.count_label.text() == f"{len(found)} of {total} specs"


def test_a_bad_term_is_said_and_the_list_is_kept(bar, page, screen, qtbot):
    before = typed(page, qtbot, "berth")
    assert len(before) == 3
    qtbot.keyClicks(screen.search.focusProxy(), " strength:weak")
    assert names(screen) == before
    problem = "“strength:weak” finds nothing: write a strength such as"
    assert screen.search.problem.startswith(problem)
    assert screen.search.focusProxy().accessibleDescription().startswith(problem)
    QApplication.processEvents()
    assert cut_off(screen) == []
    qtbot.keyClick(screen.search.focusProxy(), Qt.Key.Key_Escape)
    assert screen.search.problem == ""
    assert len(names(screen)) == len(bar.snapshot.all_specs)


def test_while_strengths_are_worked_out_the_list_stays(bar, page, screen, qtbot):
    typed(page, qtbot, "berth")
    screen.search.set_text("berth strength:>22")
    assert len(names(screen)) == 3
    page.settle(qtbot)
    assert names(screen) == wanted(bar, "berth strength:>22") != []


def test_a_strength_that_is_no_longer_wanted_is_not_waited_for(page, screen, qtbot):
    screen.search.set_text("strength:>22")
    screen.search.set_text("berth")
    assert len(names(screen)) == 3
    page.settle(qtbot)
    assert len(names(screen)) == 3


def test_a_bottle_that_changes_changes_what_is_found(bar, page, screen, qtbot):
    spec = bar.specs.get("Gangway")
    found = typed(page, qtbot, "strength:>0")
    bar.specs.remove(spec.id)
    page.settle(qtbot)
    assert names(screen) == [each for each in found if each != spec.name]
    bar.undo()
    page.settle(qtbot)
    assert names(screen) == found


def test_a_term_that_is_only_begun_hides_nothing(bar, page, qtbot):
    assert typed(page, qtbot, "berth strength:") == typed(page, qtbot, "") != []


def test_what_can_be_searched_for_is_one_press_away(screen, qtbot):
    help_button = screen.search.help_button
    assert help_button.accessibleName() == "What can be searched for"
    for term in ("with:rum", "strength:&gt;25", "due, due:14", "-egg"):
        assert term in help_button.whatsThis()
    help_button.setFocus()
    qtbot.keyClick(help_button, Qt.Key.Key_Space)
    shown = [
        each for each in QApplication.topLevelWidgets() if each.isVisible() and each is not screen
    ]
    popup = [each for each in shown if "WhatsThat" in each.metaObject().className()]
    assert len(popup) == 1
    qtbot.keyClick(popup[0], Qt.Key.Key_Escape)


def test_everything_is_named(screen):
    assert focusable_without_name(screen) == []
