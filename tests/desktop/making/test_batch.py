"""The batch dialog over the sample bar: what it shows, and what it refuses in a sentence."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QLabel

from barkeep.desktop.drink.all_cautions import AllCautionsDialog
from barkeep.desktop.making.batch import BatchDialog
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.pouring.supply import supply_of
from tests.cli.test_batch import OF_ICE
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import context_over
from tests.desktop.shell.test_main_window import press, settle
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def dialog(bar, qtbot, tmp_path):
    state = WindowState(tmp_path / "window.ini")
    context = context_over(bar, state, Background(), None)
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
    said = dialog.words.text()
    assert "16.9 % vol" in said and said.count("never before you drive") == 1


def test_every_caution_is_one_step_away(dialog, qtbot):
    dialog.cautions_button.setFocus()
    qtbot.keyClick(dialog.cautions_button, Qt.Key.Key_Space)
    shown = dialog.findChild(AllCautionsDialog)
    said = [label.text() for label in shown.findChildren(QLabel)]
    assert any(each.startswith("Do not drive") for each in said)
    assert any(each.startswith("Tree nuts: a trace") for each in said)
    shown.accept()


def test_all_there_is_of_one_ingredient_is_offered(dialog):
    dialog.choose("from:london-dry-gin", "")
    dialog.target.setCurrentIndex(0)
    dialog.target.setCurrentIndex(dialog.target.findData("from:london-dry-gin"))
    assert dialog.amount.text() == "1015 ml"
    assert row(dialog, "London dry gin")[1] == "1015 ml"
    assert "only 366 ml there" in row(dialog, "Lime juice")[4]
    assert "Squeeze 156 ml of lime juice from 6 × lime first." in dialog.words.text()


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
    assert "takes no rounds through a tin: it is served hot." in dialog.words.text()
    assert not OF_ICE.search(dialog.words.text().replace("through a tin", "").casefold())
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


# From the window


def opened(window, name, qtbot):
    """The dialog as Ctrl+B opens it on a spec's page."""
    window.go("specs", name)
    settle(window, qtbot)
    window.current.focus_list()
    press(qtbot, window, Qt.Key.Key_B, Qt.KeyboardModifier.ControlModifier)
    dialog = window.findChildren(BatchDialog)[-1]
    qtbot.waitUntil(dialog.isVisible)
    return dialog


def texts(dialog):
    """Everything a batch says, and what is copied of it."""
    cells = [
        dialog.table.item(row, at) for row in range(dialog.table.rowCount()) for at in range(5)
    ]
    dialog.copy()
    copied = QGuiApplication.clipboard().text().splitlines()
    return [dialog.headline.text(), dialog.words.text(), *(each.text() for each in cells), *copied]


@pytest.mark.parametrize(
    ("name", "usually"),
    [("Upper Berth", "cold"), ("Request Stop", "cold"), ("Two-Coach Local", "over ice")],
)
def test_a_batch_served_hot_says_nothing_of_ice(window, qtbot, name, usually):
    dialog = opened(window, name, qtbot)
    assert dialog.headline.text().endswith(f", {usually}")
    dialog.served.setFocus()
    while not dialog.headline.text().endswith(", hot"):
        assert dialog.served.currentIndex() < dialog.served.count() - 1
        qtbot.keyClick(dialog.served, Qt.Key.Key_Down)
    assert dialog.headline.text().endswith(", hot")
    for each in texts(dialog):
        assert OF_ICE.findall(each.casefold()) == []
    assert "Hot: use a heatproof vessel" in dialog.words.text()
    dialog.reject()


def test_a_hot_drink_begins_as_served_hot(window, qtbot):
    dialog = opened(window, "Brazier", qtbot)
    assert dialog.served.currentText() == "Served hot"
    assert dialog.headline.text().endswith(", hot")
    for each in texts(dialog):
        assert OF_ICE.findall(each.casefold()) == []
    dialog.reject()


@pytest.fixture
def of_request_stop(window, qtbot):
    """A batch of it."""
    shown = opened(window, "Request Stop", qtbot)
    yield shown
    shown.reject()


@walked("amount", ["699.99 ml", "1015.6 ml", "23.7 oz", "7 ⅞ oz", "33.35 cl"])
def test_no_more_is_shown_than_there_is_of_what_it_is_made_from(of_request_stop, amount):
    dialog = of_request_stop
    dialog.choose("from:london-dry-gin", amount)
    most_ml = to_quantity(parse_amount(amount), "ml")
    for shown in row(dialog, "London dry gin")[1:3]:
        assert 0.95 * most_ml < to_quantity(parse_amount(shown), "ml") <= most_ml
    assert "rounded down to what there is" in row(dialog, "London dry gin")[4]
    said = "Rounded down, so that no more London dry gin is measured than there is."
    assert said in dialog.words.text()
    dialog.copy()
    assert said in QGuiApplication.clipboard().text()


def test_all_there_is_offered_is_no_more_than_there_is(window, qtbot):
    gin = next(
        each
        for each in window.bar.snapshot.bottles
        if each.ingredient == "london-dry-gin" and each.level.state == "open"
    )
    window.bar.counting.count({gin.id: MeasuredLevel(315.7, "volume", 5.0)})
    dialog = opened(window, "Request Stop", qtbot)
    dialog.target.setCurrentIndex(dialog.target.findData("from:london-dry-gin"))
    have = supply_of(window.bar.snapshot).total_of_kind(
        "london-dry-gin", window.bar.snapshot.knowledge.tree
    )
    assert have % 1 > 0.5
    assert dialog.amount.text() == f"{int(have)} ml"
    assert "only" not in row(dialog, "London dry gin")[4]
    dialog.reject()
