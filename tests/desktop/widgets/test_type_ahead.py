"""Typing to what is no page's list, in the real window: the stops at the left, and choices."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QListWidget

from barkeep.desktop.widgets.type_ahead import TypeAhead
from tests.desktop.pages import settle

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


def typed_on(widget) -> str:
    return next(each.typed for each in widget.findChildren(TypeAhead))


def test_the_stops_are_typed_to_and_esc_ends_it(window, qtbot):
    settle(window, qtbot)
    stops = next(
        each for each in window.findChildren(QListWidget) if each.accessibleName() == "Pages"
    )
    for typed, page in (("b", "bottles"), ("bu", "next-bottle"), ("st", "stand-ins")):
        stops.setFocus()
        for letter in typed:
            stops.setFocus()  # the page that is gone to takes the keyboard once it is there
            qtbot.keyClicks(stops, letter)
        settle(window, qtbot)
        assert window.current.key == page, typed
        qtbot.keyClick(stops, Qt.Key.Key_Escape)
        assert typed_on(stops) == ""


def test_a_choice_is_typed_to_by_its_words(window, qtbot):
    window.go("tonight", None)
    settle(window, qtbot)
    bases = next(
        each
        for each in window.current.findChildren(QComboBox)
        if each.itemText(0) == "Any base" and each.count() > 3
    )
    heard = []
    bases.activated.connect(heard.append)
    bases.setFocus()
    qtbot.keyClicks(bases, "rum")
    assert bases.currentText() == "Rum" and heard and typed_on(bases) == "rum"
    qtbot.keyClick(bases, Qt.Key.Key_Escape)
    assert typed_on(bases) == "" and bases.currentText() == "Rum"
    qtbot.keyClicks(bases, "xq")
    assert bases.currentText() == "Rum"
