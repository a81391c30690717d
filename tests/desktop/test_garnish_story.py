"""Garnishes and batches in the real window, by keyboard, over a small bar of fresh things."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel

from barkeep.application.bar import Bar
from barkeep.desktop.making.batch import BatchDialog
from tests import small_bar
from tests.desktop.pages import settle
from tests.desktop.shell.test_main_window import press
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    """The small bar as a file."""
    return small_bar.build(tmp_path_factory.mktemp("small"))


@pytest.fixture
def window(built, tmp_path, open_window):
    """The window over a copy of the small bar."""
    copy = tmp_path / "copy.barkeep"
    copy.write_bytes(built.read_bytes())
    with Bar.open(copy) as small:
        yield open_window(over=small)


def read_of(window, qtbot, name):
    """What Tonight's details say of a drink that is searched for by keyboard."""
    press(qtbot, window, Qt.Key.Key_1, CTRL)
    settle(window, qtbot)
    page = window.current
    if not page.also_short.isChecked():
        page.also_short.setFocus()
        press(qtbot, window, Qt.Key.Key_Space)
        settle(window, qtbot)
    press(qtbot, window, Qt.Key.Key_F, CTRL)
    press(qtbot, window, Qt.Key.Key_A, CTRL)
    qtbot.keyClicks(QApplication.focusWidget(), name)
    settle(window, qtbot)
    qtbot.waitUntil(lambda: page.current is not None and page.current.spec.name == name)
    settle(window, qtbot)
    told = page.detail.widget().findChildren(QLabel)
    labels = [each for each in told if each.isVisibleTo(page.detail)]
    return [said for each in labels for said in (each.text(), each.accessibleName()) if said]


@walked(
    ("name", "states", "told"),
    [
        ("Harrow Sour", ["To cut", "To cut from lemon."], []),
        ("Cherry Sour", ["There"], []),
        (
            "Salt Margin",
            ["There"],
            ["The drink is its garnish, salt rim (there): each sip is taken through the salt."],
        ),
        (
            "Gibson",
            [
                "Missing",
                "No cocktail onion in the bar, and nothing close enough to stand in for it.",
            ],
            [
                "The drink is its garnish, cocktail onion (missing): "
                "the onion is what gives it its name and its savour.",
                "Without its cocktail onion it is a Dry Martini.",
            ],
        ),
        ("Cream Step", ["Missing"], ["Grated nutmeg (garnish): missing."]),
        (
            "Paper Boat",
            [],
            ["A paper lantern (garnish): not known here, so see to it yourself."],
        ),
    ],
)
def test_a_garnish_is_there_to_cut_or_missing(window, qtbot, name, states, told):
    texts = read_of(window, qtbot, name)
    for each in (*states, *told):
        assert any(each in text for text in texts), each


def test_a_batch_is_reached_by_keyboard_and_says_what_is_squeezed(window, qtbot):
    window.go("specs", "Moth")
    settle(window, qtbot)
    window.current.focus_list()
    press(qtbot, window, Qt.Key.Key_B, CTRL)
    dialog = window.findChildren(BatchDialog)[-1]
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.amount)
    qtbot.keyClicks(QApplication.focusWidget(), "4")
    assert dialog.headline.text() == "Moth: 4 serves of 121 ml, cold"
    words = dialog.words.text()
    assert "Squeeze 89 ml of lemon juice from 3 × lemon first." in words
    assert "Separate 128 ml of egg white from 4 × whole egg first." in words
    assert "Shake it as it is served, in 2 rounds of 2 serves" in words
    assert "Water" not in [dialog.table.item(row, 0).text() for row in range(4)]
    dialog.reject()
