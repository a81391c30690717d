"""The log after a shoot over the sample bar: extra rounds, spills, counts, one step."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QApplication

from barkeep.desktop.bottles.choose import ChooseBottle
from barkeep.desktop.screens.kept import KeptTyping
from barkeep.desktop.shoots.log import COUNTED, SPILLED, LogDialog
from tests.desktop.audit import cut_off, focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
Keys = Qt.Key
OUNCE_ML = 29.5735295625


@pytest.fixture
def shoot(bar):
    return next(each for each in bar.snapshot.shoots if each.state == "filmed")


@pytest.fixture
def kept(bar, tmp_path):
    return KeptTyping(tmp_path, bar.path)


@pytest.fixture
def dialog(bar, shoot, kept, qtbot):
    shown = LogDialog(bar, shoot, kept)
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    return shown


def row_of(dialog, words):
    rows = range(dialog.table.rowCount())
    return next(row for row in rows if words in dialog.table.item(row, 0).text())


def text(dialog, words, column):
    return dialog.table.item(row_of(dialog, words), column).text()


def put(dialog, words, column, written):
    dialog.table.item(row_of(dialog, words), column).setText(written)


def level(bar, words):
    return next(b.level.amount for b in bar.snapshot.bottles if words in b.product.title)


def test_just_its_bottles_with_expected_levels(dialog):
    assert dialog.table.rowCount() == 13
    assert text(dialog, "oude genever", 1) == "610 ml"
    assert text(dialog, "oude genever", 2) == "89 ml"
    assert text(dialog, "oude genever", 4).startswith("521 ml ±")
    assert dialog.summary.text() == "13 bottles: 0 counted, 13 as expected."


def test_a_round_is_added_in_a_keystroke(dialog, qtbot):
    qtbot.keyClicks(dialog.table, "+")
    assert [each.value() for each in dialog.made] == [3, 3, 3]
    assert text(dialog, "oude genever", 2) == "133 ml"
    qtbot.keyClicks(dialog.table, "-")
    assert text(dialog, "oude genever", 2) == "89 ml"


def test_a_count_and_a_spill_are_typed_on_a_row(dialog, qtbot):
    dialog.table.setCurrentCell(row_of(dialog, "oude genever"), 0)
    qtbot.keyClick(dialog.table, Keys.Key_Return)
    editor = QApplication.focusWidget()
    qtbot.keyClicks(editor, "500 ml")
    qtbot.keyClick(editor, Keys.Key_Return)
    qtbot.waitUntil(lambda: text(dialog, "oude genever", COUNTED) == "500 ml")
    dialog.table.setFocus()
    dialog.table.setCurrentCell(row_of(dialog, "pisco"), 0)
    qtbot.keyClicks(dialog.table, "s")
    editor = QApplication.focusWidget()
    qtbot.keyClicks(editor, "1/2 oz")
    qtbot.keyClick(editor, Keys.Key_Return)
    qtbot.waitUntil(lambda: text(dialog, "pisco", SPILLED) == "15 ml")
    assert dialog.draft.sheet.spilled.popitem()[1] == pytest.approx(OUNCE_ML / 2)


@pytest.mark.parametrize(("written", "shown"), [("0.4", "280 ml"), ("315 ml", "315 ml")])
def test_counted_by_any_means(dialog, written, shown):
    put(dialog, "oude genever", COUNTED, written)
    assert text(dialog, "oude genever", COUNTED) == shown
    assert "less than expected" in text(dialog, "oude genever", 6)
    assert "1 bottle beyond the doubt." in dialog.summary.text()


def test_a_weight_needs_what_the_empty_bottle_weighs(dialog):
    """The pisco's bottle weighs 402 g; 42 % by volume weighs 0.9437 g/ml: 410 / 0.9437 = 434."""
    put(dialog, "pisco", COUNTED, "812 g")
    assert text(dialog, "pisco", COUNTED) == "434 ml"
    put(dialog, "oude genever", COUNTED, "812 g")
    assert "weigh it once full or once empty first" in dialog.banner.text
    assert text(dialog, "oude genever", COUNTED) == "812 g"
    assert text(dialog, "pisco", COUNTED) == "434 ml"


def test_a_count_and_a_spill_are_taken_back_by_emptying_the_cell(dialog):
    put(dialog, "pisco", COUNTED, "400 ml")
    put(dialog, "pisco", SPILLED, "20 ml")
    for column in (COUNTED, SPILLED):
        put(dialog, "pisco", column, "")
    assert not dialog.draft.sheet.counted and not dialog.draft.sheet.spilled
    assert dialog.summary.text() == "13 bottles: 0 counted, 13 as expected."


def test_what_cannot_be_read_is_said_and_nothing_is_lost(dialog, bar):
    put(dialog, "pisco", COUNTED, "400 ml")
    put(dialog, "oude genever", COUNTED, "plenty")
    assert "plenty" in dialog.banner.text
    assert text(dialog, "pisco", COUNTED) == "400 ml"
    assert text(dialog, "oude genever", COUNTED) == "plenty"
    dialog.write()
    assert "plenty" in dialog.banner.text and bar.undo_label is None
    put(dialog, "oude genever", COUNTED, "")
    assert not dialog.banner.isVisible()
    dialog.write()
    assert level(bar, "pisco") == 400.0


def test_a_click_on_write_takes_no_count_that_cannot_be_read(dialog, bar, qtbot):
    dialog.table.setCurrentCell(row_of(dialog, "pisco"), 0)
    qtbot.keyClick(dialog.table, Keys.Key_Return)
    qtbot.keyClicks(QApplication.focusWidget(), "900 mlx")
    qtbot.mouseClick(dialog.write_button, Qt.MouseButton.LeftButton)
    assert "900 mlx" in dialog.banner.text and bar.undo_label is None
    assert text(dialog, "pisco", COUNTED) == "900 mlx"


def test_a_spill_is_one_amount(dialog):
    put(dialog, "pisco", SPILLED, "20-30 ml")
    assert "write one amount" in dialog.banner.text and not dialog.draft.sheet.spilled


def test_a_bottle_that_goes_takes_what_could_not_be_read_along(dialog, bar):
    put(dialog, "oude genever", COUNTED, "plenty")
    for field in dialog.made:
        field.setValue(0)
    for field in dialog.made:
        field.setValue(1)
    assert not dialog.banner.isVisible()
    dialog.write()
    assert bar.undo_label == "Log shoot Snow Plough"


def test_written_undone_and_written_again(dialog, bar, shoot, kept, qtbot):
    before = {each.id: each.level for each in bar.snapshot.bottles}
    put(dialog, "pisco", COUNTED, "400 ml")
    put(dialog, "oude genever", SPILLED, "20 ml")
    dialog.write()
    assert bar.undo_label == "Log shoot Snow Plough"
    assert level(bar, "pisco") == 400.0
    assert level(bar, "oude genever") == pytest.approx(610 - 3 * OUNCE_ML - 20)
    assert level(bar, "Orgeat") == pytest.approx(302.5 - OUNCE_ML)
    again = LogDialog(bar, shoot, kept)
    qtbot.addWidget(again)
    again.write()
    assert "logged on" in again.banner.text and level(bar, "pisco") == 400.0
    bar.undo()
    assert {each.id: each.level for each in bar.snapshot.bottles} == before
    again.write()
    assert level(bar, "pisco") == pytest.approx(575 - 3 * OUNCE_ML)


def test_more_spilled_than_there_is_writes_nothing(dialog, bar):
    put(dialog, "Orgeat", SPILLED, "2 l")
    dialog.write()
    assert "Orgeat" in dialog.banner.text and dialog.isVisible()
    assert bar.undo_label is None and level(bar, "Orgeat") == 302.5


def test_a_bottle_besides(dialog, bar, qtbot):
    dialog.add_bottle()
    choice = dialog.findChild(ChooseBottle)
    choice.search.set_text("fernet")
    qtbot.waitUntil(lambda: "fernet" in choice.view.currentItem().text())
    choice.take()
    put(dialog, "fernet", COUNTED, "100 ml")
    dialog.write()
    assert level(bar, "fernet") == 100.0


def test_a_removed_spec_pours_nothing_and_says_so(bar, shoot, kept, qtbot):
    bar.specs.remove(bar.specs.get("Brazier").id)
    dialog = LogDialog(bar, shoot, kept)
    qtbot.addWidget(dialog)
    assert "The spec of Brazier was removed" in dialog.summary.text()
    dialog.write()
    logged = next(each for each in bar.snapshot.shoots if each.theme == "Snow Plough")
    assert logged.log.made == (2, 2, 0)


def test_everything_has_a_name(dialog):
    assert not focusable_without_name(dialog)


def test_names_of_sixty_letters_cut_nothing_off(bar, shoot, kept, qtbot):
    long = "A drink with a name of sixty letters that goes on and on too"
    drinks = tuple(replace(each, name=f"{long} {each.name}") for each in shoot.drinks)
    dialog = LogDialog(bar, replace(shoot, drinks=drinks), kept)
    qtbot.addWidget(dialog)
    dialog.resize(1024, 640)
    dialog.show()
    put(dialog, "oude genever", COUNTED, "300 ml")
    assert not cut_off(dialog) and dialog.width() == 1024
    assert not dialog.table.horizontalScrollBar().isVisible()


def test_a_spill_of_more_than_was_left_is_asked_about_where_it_is_typed(dialog, bar):
    put(dialog, "Orgeat", SPILLED, "2 l")
    assert "2000 ml cannot have been spilled of" in dialog.banner.text
    assert "is left after what was poured" in dialog.banner.text
    assert text(dialog, "Orgeat", SPILLED) == "2 l" and not dialog.draft.sheet.spilled
    put(dialog, "Orgeat", SPILLED, "20 ml")
    assert text(dialog, "Orgeat", SPILLED) == "20 ml" and not dialog.banner.isVisible()


def test_serves_that_take_more_than_there_is_are_asked_about(dialog, bar, qtbot):
    before = level(bar, "oude genever")
    for field in dialog.made:
        field.setValue(40)
    assert "Not all is taken from a bottle: " in dialog.summary.text()
    dialog.write_button.setFocus()
    qtbot.keyClick(dialog.write_button, Keys.Key_Space)
    qtbot.waitUntil(lambda: "The serves made take more than there is" in dialog.banner.text)
    assert "There is enough for" in dialog.banner.text
    assert level(bar, "oude genever") == before and bar.undo_label is None
    pour = next(
        each
        for each in dialog.banner.findChildren(QAbstractButton)
        if each.text() == "Pour what there is"
    )
    pour.setFocus()
    qtbot.keyClick(pour, Keys.Key_Space)
    qtbot.waitUntil(lambda: level(bar, "oude genever") == 0.0)
