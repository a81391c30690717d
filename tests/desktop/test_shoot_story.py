"""One shoot in the real window: planned, saved by a stand-in, made, bought, filmed, logged."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.desktop.buying.shopping import ShoppingDialog
from barkeep.desktop.drink.camera_sheet import CameraSheet
from barkeep.desktop.making.house_made import MakeDialog
from barkeep.desktop.publishing import output as publish_output
from barkeep.desktop.shoots.log import SPILLED, LogDialog
from barkeep.desktop.shoots.run_sheet import RunSheetDialog
from barkeep.domain.days import day_said
from tests.desktop.buying.test_shopping import tick
from tests.desktop.pages import do_in_details, offered_in_details, said_in, settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("shoots"),
]


OUNCE_ML = 29.5735295625
"""NIST Handbook 44, appendix C: the US fluid ounce."""
DRINKS = ("Request Stop", "Sand in the Points", "Deckchair Special")
Keys = Qt.Key


def levels(bar):
    """Title and id -> level, in the bottle's unit."""
    return {(each.product.title, each.id): each.level.amount for each in bar.snapshot.bottles}


def gone(before, after, title):
    """What all bottles of a title have less of."""
    return sum(before[key] - after[key] for key in before if key[0] == title)


def said(page):
    return said_in(page)


def button(page, text):
    return next(each for each in page.findChildren(QPushButton) if each.text() == text)


def click(page, qtbot, text):
    qtbot.mouseClick(button(page, text), Qt.MouseButton.LeftButton)


def test_a_whole_shoot(window, bar, qtbot, tmp_path, monkeypatch):
    start = levels(bar)
    window.show_page("shoots")
    settle(window, qtbot)
    screen = window.current

    # Planned: three specs, three serves each.
    screen.view.setFocus()
    qtbot.keyClick(screen.view, Keys.Key_N, Qt.KeyboardModifier.ControlModifier)
    editor = screen.dialog
    qtbot.waitUntil(editor.theme.hasFocus)
    qtbot.keyClicks(editor.theme, "Wet Rails")
    today = bar.snapshot.on
    editor.on.setDate(QDate(today.year, today.month, today.day))
    for name in DRINKS:
        qtbot.keyClicks(editor.drink, name)
        qtbot.keyClick(editor.drink, Keys.Key_Return)
    for row in range(len(DRINKS)):
        for column in (1, 2, 3):
            editor.table.cellWidget(row, column).setValue(1)
    qtbot.mouseClick(editor.accept_button, Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    (shoot,) = [each for each in bar.snapshot.shoots if each.theme == "Wet Rails"]
    assert shoot.names == DRINKS and shoot.state == "idea"
    assert all(each.serves.total == 3 for each in shoot.drinks)

    # Checked: two lines run out; a stand-in saves one.
    words = said(screen.page)
    assert "No: 2 lines run out." in words
    assert "Sand in the Points lacks 88.7 ml of mezcal, for 3 of 3 serves." in words
    do_in_details(screen, "Use blanco tequila in Sand in the Points", qtbot)
    settle(window, qtbot)
    words = said(screen.page)
    assert "No: one line runs out." in words
    assert any("in place of mezcal" in each for each in words)
    assert levels(bar) == start

    # A syrup is made: half a batch of 790 ml takes three of its six sticks.
    screen.make("cinnamon-syrup")
    making = screen.dialog
    assert isinstance(making, MakeDialog)
    making.amount.setEditText("395 ml")
    qtbot.mouseClick(making.accept_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: len(levels(bar)) == len(start) + 1)
    making.close()
    made = levels(bar)
    assert gone(start, made, "Cinnamon sticks") == 3.0
    assert sum(made.values()) == pytest.approx(sum(start.values()) - 3.0 + 395.0)

    # What is still short is bought, and goes into the bar.
    do_in_details(screen, "Shopping…", qtbot)
    shopping = screen.dialog
    assert isinstance(shopping, ShoppingDialog)
    shopping.with_pars.setChecked(False)
    qtbot.waitUntil(lambda: shopping.ready and not window.background.is_busy)
    tick(shopping, "Maraschino liqueur", qtbot)
    shopping.put_into_bar()
    qtbot.waitUntil(lambda: len(levels(bar)) == len(start) + 2)
    shopping.close()
    settle(window, qtbot)
    (bought,) = set(levels(bar)) - set(made)
    assert levels(bar)[bought] == 700.0
    assert "Yes: every serve can be poured." in said(screen.page)
    before = levels(bar)

    # The run sheet as a PDF.
    do_in_details(screen, "Plan it", qtbot)
    settle(window, qtbot)
    do_in_details(screen, "Run sheet…", qtbot)
    sheet = screen.dialog
    assert isinstance(sheet, RunSheetDialog)
    qtbot.waitUntil(lambda: sheet.ready and not window.background.is_busy)
    file = tmp_path / "run-sheet.pdf"
    monkeypatch.setattr(
        publish_output.QFileDialog, "getSaveFileName", lambda *_args: (str(file), "")
    )
    sheet.save_pdf()
    qtbot.waitUntil(lambda: file.exists() and not window.background.is_busy)
    sheet.close()
    pages = PdfReader(io.BytesIO(file.read_bytes())).pages
    printed = " ".join(" ".join(each.extract_text() for each in pages).split())
    assert "Wet Rails" in printed and all(name in printed for name in DRINKS)
    assert "blanco tequila" in printed.lower()

    # On camera, stepped through by keys and a tap.
    do_in_details(screen, "On camera", qtbot)
    camera = screen.dialog
    assert isinstance(camera, CameraSheet)
    qtbot.keyClick(camera, Keys.Key_Space)
    assert camera.step.text == "2 oz London dry gin" and camera.step.below == "60 ml"
    qtbot.mouseClick(camera, Qt.MouseButton.LeftButton, pos=camera.rect().center())
    assert camera.step.text == "¾ oz lime juice"
    qtbot.keyClick(camera, Keys.Key_N)
    assert camera.drink.name == "Sand in the Points"
    qtbot.keyClick(camera, Keys.Key_Escape)

    # Logged with another round of all, a spill and a count; to the millilitre.
    do_in_details(screen, "It is filmed", qtbot)
    settle(window, qtbot)
    do_in_details(screen, "Log it…", qtbot)
    log = screen.dialog
    assert isinstance(log, LogDialog)
    log.draft.count(54, "150 ml")
    log.add_round()
    gin = next(
        row for row in range(log.table.rowCount()) if "dry gin" in log.table.item(row, 0).text()
    )
    log.table.item(gin, SPILLED).setText("20 ml")
    qtbot.mouseClick(log.write_button, Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    logged = levels(bar)
    ounces = {
        "Pellow & Rudge Lamp Room dry gin": 8.0,
        "Hollow Lamp Split Pin blanco tequila": 4 * 2.1,
        "Marrow Hill Tarpaulin white rum": 8.0,
        "Oddlamp Falernum": 4 * 0.75,
        bought[0]: 4 * 0.5,
    }
    for title, poured in ounces.items():
        spilled = 20.0 if "dry gin" in title else 0.0
        assert gone(before, logged, title) == pytest.approx(poured * OUNCE_ML + spilled), title
    assert logged[("Honey syrup", 54)] == 150.0
    assert any("Honey syrup" in each.title for each in shoot_log(bar).bottles)

    # Undone in one step, and logged again as planned.
    window.undo()
    settle(window, qtbot)
    assert levels(bar) == before
    do_in_details(screen, "Log it…", qtbot)
    qtbot.mouseClick(screen.dialog.write_button, Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    assert gone(before, levels(bar), "Marrow Hill Tarpaulin white rum") == pytest.approx(
        6 * OUNCE_ML
    )
    assert shoot_log(bar).made == (3, 3, 3)


def test_a_day_to_come_cannot_be_filmed_yet(window, bar, qtbot):
    window.show_page("shoots")
    settle(window, qtbot)
    screen = window.current
    (ahead,) = [each for each in bar.snapshot.shoots if each.state == "planned"]
    screen.show_thing(ahead.id)
    settle(window, qtbot)
    filmed = button(screen.detail, "It is filmed")
    filmed.setFocus()
    qtbot.keyClick(filmed, Keys.Key_Space)
    settle(window, qtbot)
    assert screen.banner.text == (
        f"{ahead.theme} is on {day_said(ahead.on)}, which is still to come, "
        "so it cannot be filmed yet; nothing is changed. "
        "Where it was filmed earlier, give it that day first."
    )
    assert screen.current.state == "planned"
    today = bar.snapshot.on
    assert button(screen.banner, "Filmed today").hasFocus()
    qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Space)
    settle(window, qtbot)
    assert (screen.current.state, screen.current.on) == ("filmed", today)
    assert screen.banner.text == ""
    assert (
        window.toast.text
        == f"{ahead.theme}: filmed today, {day_said(today)}, not on {day_said(ahead.on)}"
    )
    assert screen.view.hasFocus() and button(screen.detail, "Log it…").isVisible()
    speaks_of_its_log(screen)
    window.undo()
    settle(window, qtbot)
    assert (screen.current.state, screen.current.on) == ("planned", ahead.on)

    # By the key of the log both in one go.
    screen.view.setFocus()
    qtbot.keyClick(screen.view, Keys.Key_G, Qt.KeyboardModifier.ControlModifier)
    assert "there is nothing to log" in screen.banner.text
    qtbot.keyClick(QApplication.focusWidget(), Keys.Key_Space)
    settle(window, qtbot)
    assert (screen.current.state, screen.current.on) == ("filmed", today)
    assert isinstance(screen.dialog, LogDialog) and screen.dialog.isVisible()
    screen.dialog.reject()


def speaks_of_its_log(screen):
    """Of the sample's shoot ahead, of which three lines were not there, once it is filmed."""
    words = said(screen.page)
    assert words[words.index("The log") + 1] == (
        "It is filmed; its log is still to be written, and cannot take 3 lines as planned."
    )
    assert (
        "Not all is taken from a bottle: Sand in the Points lacks 88.7 ml of mezcal, for 3 of 3 "
        "serves." in words
    )
    assert (
        "Where something else was poured, choose it for that line before the log is written."
        in words
    )
    assert words[words.index("1 oz mezcal") + 1] == "Not taken from a bottle"
    at = words.index("As planned it takes")
    assert "Marrow Hill Tarpaulin white rum: 177 ml" in words[at:]
    gone = ("Can it all be poured?", "Runs out", "Mise en place", "To draw from", "Or leave out")
    assert not [each for each in words if each.startswith(gone)]
    offered = [each.text() for each in screen.page.findChildren(QPushButton)]
    offered += offered_in_details(screen)
    assert not {"Shopping…", "Make…"} & {*offered} and "Pour otherwise…" in offered
    assert not [each for each in offered if each.startswith("Use ")]


def test_a_log_that_is_refused_keeps_what_was_typed(window, bar, qtbot):
    window.show_page("shoots")
    settle(window, qtbot)
    screen = window.current
    (filmed,) = [each for each in bar.snapshot.shoots if each.state == "filmed"]
    screen.show_thing(filmed.id)
    settle(window, qtbot)
    do_in_details(screen, "Log it…", qtbot)
    log = screen.dialog
    qtbot.waitUntil(log.table.hasFocus)
    qtbot.keyClicks(log.table, "75+")
    log.table.item(2, SPILLED).setText("5 ml")
    log.made[0].setValue(99)  # more than there is for
    qtbot.mouseClick(log.write_button, Qt.MouseButton.LeftButton)
    assert log.isVisible() and log.banner.text and bar.undo_label is None
    assert len(log.draft.sheet.counted) == 2 and log.draft.sheet.spilled
    assert log.draft.sheet.made == (99, 3, 3)
    log.reject()
    assert log.question.text() == "Leave 2 counts, 1 spill and the serves made unwritten?"
    click(log.question, qtbot, "&Discard")


def shoot_log(bar):
    (shoot,) = [each for each in bar.snapshot.shoots if each.theme == "Wet Rails"]
    assert shoot.state == "logged"
    return shoot.log
