"""The batch dialog over the sample bar: what it shows, and what it refuses in a sentence."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from barkeep.desktop.making.batch import BatchDialog
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.screens.window_state import WindowState
from tests.desktop.audit import cut_off, focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def dialog(bar, qtbot, tmp_path):
    state = WindowState(tmp_path / "window.ini")
    context = ScreenContext(bar, state, Background(), None, lambda _page, _thing: None)
    shown = BatchDialog(context, bar.specs.get("Request Stop"))
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    return shown


def row(dialog, name):
    table = dialog.table
    names = [table.item(each, 0).text() for each in range(table.rowCount())]
    return [table.item(names.index(name), column).text() for column in range(5)]


def test_ten_serves_to_begin_with(dialog):
    assert dialog.headline.text() == "Request Stop: 10 serves of 162 ml, cold"
    assert row(dialog, "London dry gin")[1:3] == ["591 ml", "590 ml"]
    assert row(dialog, "Water")[4] == "in place of what ice would give"
    assert "16.9 % vol" in dialog.words.text() and "Do not drive" in dialog.words.text()


def test_all_there_is_of_one_ingredient_is_offered(dialog):
    dialog.choose("from:london-dry-gin", "")
    dialog.target.setCurrentIndex(0)
    dialog.target.setCurrentIndex(dialog.target.findData("from:london-dry-gin"))
    assert dialog.amount.text() == "1015 ml"
    assert row(dialog, "London dry gin")[1] == "1015 ml"
    assert "only 210 ml there" in row(dialog, "Lime juice")[4]


def test_whole_bottles_and_rounds_through_a_tin(dialog):
    dialog.choose("from:london-dry-gin", "1400 ml")
    assert row(dialog, "London dry gin")[3] == "2 × 700 ml"
    dialog.tin.setCurrentIndex(dialog.tin.findText("large tin", Qt.MatchFlag.MatchContains))
    assert "rounds of" in dialog.words.text() and "large tin" in dialog.words.text()


def test_hot_takes_no_water_and_is_not_boiled(dialog):
    dialog.served.setCurrentIndex(dialog.served.findData("hot"))
    names = [dialog.table.item(each, 0).text() for each in range(dialog.table.rowCount())]
    assert "Water" not in names and "never boil it" in dialog.words.text()


def test_hot_takes_no_rounds_on_ice_and_says_so(dialog):
    dialog.tin.setCurrentIndex(dialog.tin.findText("large tin", Qt.MatchFlag.MatchContains))
    dialog.served.setCurrentIndex(dialog.served.findData("hot"))
    assert "takes no rounds through a tin: it is served hot" in dialog.words.text()
    assert "On ice" not in dialog.words.text() and dialog.table.rowCount()


def test_a_bowl_leaves_room(dialog):
    dialog.target.setCurrentIndex(dialog.target.findData("vessel:bowl"))
    assert dialog.amount.text() == "5000 ml"
    assert "3750 ml in all" in dialog.words.text()


@pytest.mark.parametrize(
    ("target", "amount", "said"),
    [
        ("vessel:bottle", "100 ml", "the vessel takes 95 ml and one serve is 162 ml"),
        ("serves", "0", "more than nothing"),
        ("serves", "dozens", "cannot be read"),
        ("serves", "", "cannot be read"),
        ("volume", "3 kg", "3 kg"),
        ("serves", "9000", "2000 is the most"),
    ],
)
def test_what_cannot_be_is_said_and_mended(dialog, target, amount, said):
    dialog.choose(target, amount)
    assert said in dialog.banner.text
    assert dialog.table.rowCount() == 0 and not dialog.copy_button.isEnabled()
    dialog.choose("serves", "4")
    assert dialog.table.rowCount() == 6 and dialog.copy_button.isEnabled()


def test_it_is_copied_as_text(dialog):
    dialog.copy()
    text = QGuiApplication.clipboard().text()
    assert text.startswith("Request Stop: 10 serves") and "590 ml\tLondon dry gin" in text


def test_nothing_is_cut_off_and_all_is_named(dialog, qtbot):
    dialog.resize(940, 600)
    assert not cut_off(dialog) and not focusable_without_name(dialog)
