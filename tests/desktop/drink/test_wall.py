"""Tonight as a wall of glasses: the rows of the list, each said whole, moved over by keys."""

from __future__ import annotations

from itertools import product

import pytest
from PySide6.QtCore import QIdentityProxyModel, QModelIndex, Qt
from PySide6.QtGui import QAccessible, QFont, QFontMetrics

from barkeep.desktop.drink.wall import LETTERS, in_two_lines
from tests.desktop.count_keys import type_keys
from tests.desktop.pages import settle

NAME, SAID = Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole


@pytest.fixture
def window(open_window, qtbot):
    shown = open_window()
    shown.resize(1024, 640)
    settle(shown, qtbot)
    return shown


def names(model):
    return [model.index(row, 0, QModelIndex()).data(NAME) for row in range(model.rowCount())]


def typed(window, qtbot, *keys):
    for each in keys:
        type_keys(each)
        settle(window, qtbot)


def test_a_key_shows_the_list_as_a_wall_of_the_same_drinks(window, open_window, qtbot):
    page = window.current
    page.choose("Gangway")
    typed(window, qtbot, "<Ctrl G>")
    wall = page.wall
    assert page.list_stack.currentWidget() is wall and wall.hasFocus()
    assert names(wall.model()) == names(page.shown)
    assert wall.currentIndex().data(NAME) == page.current.spec.name == "Gangway"
    # What is seen is worked out with its picture, and nothing else is.
    seen = [row for row in page.table.rows if row.is_drawn]
    assert page.current in seen and len(seen) < len(page.table.rows) / 2
    assert page.current.picture is not None
    # Each card says all that it shows; what it is by itself as well as to who listens.
    card = wall.currentIndex().data(SAID)
    assert card.startswith("Gangway, Ready, 6 + 2 serves, Own")
    around = QAccessible.queryAccessibleInterface(wall)
    assert around.child(wall.currentIndex().row()).text(QAccessible.Text.Name) == card
    # The keys go along the shelf and down to the next, and letters to a name.
    here, across = wall.currentIndex().row(), wall.viewport().width() // wall.gridSize().width()
    assert across >= 3
    typed(window, qtbot, "<Down>")
    assert wall.currentIndex().row() == here + across
    assert page.current.spec.name == wall.currentIndex().data(NAME)
    type_keys("tide")
    settle(window, qtbot)
    assert page.current.spec.name == "Tide Table"
    assert "Tide Table" in [each.text() for each in page.detail.findChildren(type(page.heading))]
    # A search leaves what it finds, and what is chosen with it.
    typed(window, qtbot, "<Ctrl F>", *"tide", "<Enter>")
    assert wall.hasFocus() and names(wall.model()) == ["Tide Table"]
    # Enter opens the spec as in the list; the next window shows what this one did.
    typed(window, qtbot, "<Enter>")
    assert window.current.key == "specs" and window.current.current.spec.name == "Tide Table"
    window.show_page("tonight")
    page.focus_list()
    again = open_window()
    settle(again, qtbot)
    assert again.current.is_wall
    page.show_otherwise()
    assert page.list_stack.currentWidget() is page.view


def test_letters_lead_where_qt_finds_them_itself(window, qtbot):
    page = window.current
    typed(window, qtbot, "<Ctrl G>")
    cards = page.wall.model()
    starts = (cards.index(row, 0) for row in (0, 3, cards.rowCount() - 1))
    several = ("t", "TI", "tide", "wh", "", "é", "no such")
    for begin, letters in product(starts, several):
        by_qt = QIdentityProxyModel.match(cards, begin, NAME, letters, 1, LETTERS)
        assert cards.match(begin, NAME, letters, 1, LETTERS) == by_qt
    every = cards.match(cards.index(0, 0), NAME, "t", -1, LETTERS)
    assert [each.row() for each in every] == [
        row for row, name in enumerate(names(cards)) if name.lower().startswith("t")
    ]


def test_what_cannot_be_made_says_what_it_lacks(window, qtbot):
    page = window.current
    page.shown_as.choose("wall")
    page.show_thing("Vesper")
    settle(window, qtbot)
    card = page.wall.currentIndex().data(SAID)
    assert card.startswith("Vesper, One short, Vodka")
    page.search.set_text("qqqq")
    settle(window, qtbot)
    assert page.list_stack.currentWidget() is page.list_stack.no_match


@pytest.mark.parametrize(
    ("name", "lines"),
    [("Brazier", 1), ("Upper Berth by the Window", 2), ("A" * 80, 1), ("Long " * 40, 2)],
)
def test_a_name_takes_two_lines_at_most(qapp, name, lines):
    metrics = QFontMetrics(QFont())
    found = in_two_lines(name, metrics, 120)
    assert len(found) == lines
    assert all(metrics.horizontalAdvance(each) <= 120 for each in found)
