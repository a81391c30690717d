"""The window in German, and in a language of brackets: nothing stands outside of them but data."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QLabel,
    QLineEdit,
    QWidget,
)

from barkeep.application.bar import Bar
from barkeep.desktop.look.language import LANGUAGES
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.translation import speak_through
from tests.desktop.pages import settle

MENUS = ["Datei", "Bearbeiten", "Ansicht", "Bar", "Hilfe"]
TITLES = ["Heute Abend", "Flaschen", "Rezepte", "Drehs", "Einkauf", "Ersatz"]


@pytest.fixture
def in_brackets():
    """Whatever goes through the translation stands in brackets, once."""
    speak_through(lambda words, _about: words if words.startswith("⟦") else f"⟦{words}⟧")
    yield
    speak_through(None)


def test_the_window_is_read_in_german(german, window, qtbot):
    assert [plain(each.text()) for each in window.menuBar().actions()] == MENUS
    read = []
    for page in PAGES:
        window.show_page(page.key)
        settle(window, qtbot)
        read.append(window.current.heading.text())
    assert read == TITLES
    window.show_page("tonight")
    settle(window, qtbot)
    assert re.match(r"\d+ machbar, \d+ mit Ersatz", window.current.summary.text())
    qtbot.keyClick(window, Qt.Key.Key_K, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(QApplication.focusWidget(), "dunkel")
    assert window._finder.lit.thing.name == "Aussehen: Dunkel"
    assert window.actions_.languages["en"].text() == "English"  # each by its own name


def test_all_that_is_no_data_can_be_said_in_another_language(in_brackets, window, qtbot):
    data = data_of(window.bar)
    unsaid = dict.fromkeys(f"menu: {each}" for each in outside(menu_words(window), data))
    for page in (*PAGES, *PARTS):
        window.show_page(page.key)
        settle(window, qtbot)
        found = outside(words_on(window.current), data)
        unsaid |= dict.fromkeys(f"{page.key}: {each}" for each in found)
    assert list(unsaid) == []


def plain(words: str) -> str:
    return re.sub(r"&(?=\w)", "", words)


def menu_words(window) -> Iterator[str]:
    for action in window.menuBar().findChildren(QAction) + list(window.actions_.all):
        if action.text() not in LANGUAGES.values():
            yield action.text()


def words_on(part: QWidget) -> Iterator[str]:
    """What labels, buttons, fields without a text, headers of lists and actions say."""
    for each in part.findChildren(QWidget):
        if isinstance(each, QLabel | QAbstractButton):
            yield each.text()
        elif isinstance(each, QLineEdit):
            yield each.placeholderText()
        elif isinstance(each, QAbstractItemView):
            yield from headers_of(each)
    for action in part.findChildren(QAction):
        yield action.text()


def headers_of(view: QAbstractItemView) -> Iterator[str]:
    model = view.model()
    root = view.rootIndex()
    for column in range(0 if model is None else model.columnCount(root)):
        yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")


WRITTEN = re.compile(
    r"\b(?:oz|ml|cl|kg|kB|kcal|kJ|tsp|dash|dashes|drop|drops|vol|EUR)\b"
    r"|\b(?:Ctrl|Shift|Alt|Esc|Del|Return|Enter|Space|Tab|Home|End|Up|Down|Left|Right)\b"
)
"""What stands in a spec's line and on a key."""
SAID = re.compile(r"⟦[^⟦⟧]*⟧")
A_WORD = re.compile(r"[^\W\d_]{3}")


def outside(words: Iterable[str], data: re.Pattern[str]) -> Iterator[str]:
    """What is said neither in brackets nor by the bar."""
    for each in dict.fromkeys(words):
        rest = data.sub(" ", re.sub(r"<[^>]*>", " ", each))
        while (less := SAID.sub(" ", rest)) != rest:
            rest = less
        if A_WORD.search(WRITTEN.sub(" ", data.sub(" ", plain(rest)))):
            yield each


def data_of(opened: Bar) -> re.Pattern[str]:
    """All that is the bar's own: what has a name in it, and what its owner or the book wrote."""
    bar = opened.snapshot
    tree = bar.knowledge.tree
    data = {bar.settings.name, *(name for key in tree for name in tree[key].all_names)}
    data |= {name for key in tree for name in (tree.name(key), tree.in_sentence(key))}
    data |= {words for each in bar.products for words in (each.name, each.maker, each.title)}
    for each in bar.bottles:
        data |= {entry.note for entry, _left in opened.inventory.history(each.id)}
    for spec in bar.all_specs:
        data |= {spec.name, spec.method, spec.notes, *spec.tags}
    data |= {words for shoot in bar.shoots for words in (shoot.theme, shoot.notes)}
    longest_first = sorted(map(re.escape, filter(None, data)), key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(longest_first)})(?!\w)", re.IGNORECASE)
