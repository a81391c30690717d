"""Bottles out of a list over the real window: chosen, repaired, imported and undone by keyboard."""

from __future__ import annotations

import csv

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QLineEdit, QMessageBox, QWidget
from shiboken6 import isValid

from barkeep.desktop.importing.bottles import ImportDialog
from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.ingredients.own_ingredient import KIND, NAME, OwnIngredientDialog
from barkeep.desktop.shell.main_window import WindowHooks
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle, tabbed

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

HEADER = "product,maker,ingredient,abv,size,level,price,opened,shelf\n"
GOOD = "Signal Lamp dry,Hollow Lamp,London dry gin,43,70 cl,full,24.50,no,top\n"
SHARE = "Branch Line rye,Hollow Lamp,Rye whiskey,0.5,70 cl,half,38,2026-01-31,low\n"
MISSPELT = "Fog Water,Hollow Lamp,Londn dry gin,40,70 cl,,20,03/04/2026,low\n"
UNKNOWN = "Snow Plough,Hollow Lamp,Florble,20,70 cl,,20,,low\n"


OWN = {"key": "florble", "name": "Florble", "aliases": (), "parents": ("spirit",)}


@pytest.fixture
def window(open_window):
    """The window, with its ways to take documents in."""
    return open_window(WindowHooks(import_files=import_files, import_texts=import_texts))


@pytest.fixture
def chosen(window, qtbot, tmp_path, monkeypatch):
    """Choose a file in the window by keyboard; the dialog that comes up."""

    def choose(content: str | bytes, name: str = "shelf.csv") -> ImportDialog:
        file = tmp_path / name
        file.write_bytes(content if isinstance(content, bytes) else content.encode())
        monkeypatch.setattr(
            QFileDialog, "getOpenFileNames", staticmethod(lambda *_asked: ([str(file)], ""))
        )
        with qtbot.waitActive(window):
            window.activateWindow()
        qtbot.keyClick(window, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
        settle(window, qtbot)
        return shown_dialog(window, qtbot)

    return choose


def shown_dialog(window, qtbot) -> ImportDialog:
    (dialog,) = (each for each in window.findChildren(ImportDialog) if each.isVisible())
    with qtbot.waitActive(dialog):
        dialog.activateWindow()
    settle(window, qtbot)
    return dialog


def rows(dialog) -> list[tuple[str, str, str, str]]:
    """What the list says of each row: its number, its bottle, its strength, what happens."""
    model = dialog.view.model()
    return [
        tuple(model.index(row, column).data() for column in (0, 1, 3, 4))
        for row in range(model.rowCount())
    ]


def details(dialog) -> str:
    """Everything that the pane beside the list says."""
    page = dialog.details.currentWidget().widget()
    labels = (each for each in page.findChildren(QLabel) if each.isVisible())
    return "\n".join(each.text() for each in labels if each.text())


def field(name: str) -> QLineEdit:
    """The field that has the focus, which is the one of that name."""
    focused = QApplication.focusWidget()
    assert isinstance(focused, QLineEdit), focused
    assert focused.accessibleName() == name
    return focused


def key(qtbot, which, *modifiers) -> None:
    """Press a key wherever the focus is."""
    focused = QApplication.focusWidget()
    assert focused is not None
    qtbot.keyClick(focused, which, *modifiers)


def alt(qtbot, button) -> None:
    """Press a button by the letter that is underlined on it, wherever the focus is."""
    keys = QKeySequence.mnemonic(button.text())
    assert not keys.isEmpty() and button.isEnabled() and button.window().isActiveWindow()
    focused = QApplication.focusWidget() or button.window()
    with qtbot.waitSignal(button.clicked):  # Qt draws it pressed for a moment first
        qtbot.keyClick(focused, keys[0].key(), Qt.KeyboardModifier.AltModifier)


def question(dialog) -> QMessageBox:
    (asked,) = (each for each in dialog.findChildren(QMessageBox) if each.isVisible())
    return asked


def press(asked: QMessageBox, words: str, qtbot) -> None:
    """Press one button of a question by keyboard."""
    (found,) = (each for each in asked.buttons() if each.text().replace("&", "") == words)
    found.setFocus(Qt.FocusReason.TabFocusReason)
    dialog = asked.parentWidget()
    qtbot.keyClick(found, Qt.Key.Key_Space)
    QApplication.processEvents()
    if isValid(dialog) and dialog.isVisible():
        with qtbot.waitActive(dialog):
            dialog.activateWindow()


def saving_to(monkeypatch, file) -> None:
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", staticmethod(lambda *_asked: (str(file), ""))
    )


def titles(bar) -> list[str]:
    return [each.product.title for each in bar.snapshot.bottles]


def test_rows_are_repaired_by_keyboard_imported_and_undone_in_one_step(window, bar, qtbot, chosen):
    before = bar.snapshot.bottles
    dialog = chosen(HEADER + GOOD + SHARE + MISSPELT)
    assert rows(dialog) == [
        ("3", "Hollow Lamp Branch Line rye", "0.5", "To repair"),
        ("4", "Hollow Lamp Fog Water", "40", "To repair"),
        ("2", "Hollow Lamp Signal Lamp dry", "43 %", "Comes in"),
    ]
    assert dialog.banner.text == "Nothing is read from “shelf”."
    assert dialog.import_button.text() == "&Import 1 bottle"
    assert dialog.view.hasFocus()
    assert "“0.5” for abv is not clear: write 50 % where it is a share" in details(dialog)

    key(qtbot, Qt.Key.Key_Return)
    assert field("Strength").text() == "50 %"
    key(qtbot, Qt.Key.Key_Return)
    assert field("Ingredient").text() == "London dry gin"
    assert "There is no ingredient" in details(dialog) or "“Londn" in details(dialog)
    assert "write 2026-04-03 or 2026-03-04" in details(dialog)
    for _ in range(5):
        key(qtbot, Qt.Key.Key_Tab)
    opened = field("Opened")
    assert opened.text() == "2026-04-03"
    opened.selectAll()
    qtbot.keyClicks(opened, "4 March 2026")
    key(qtbot, Qt.Key.Key_Return)
    assert [each[3] for each in rows(dialog)] == ["Comes in"] * 3
    assert dialog.banner.text == "Every row can come in."
    assert dialog.import_button.hasFocus()
    key(qtbot, Qt.Key.Key_Space)
    settle(window, qtbot)

    assert titles(bar)[len(before) :] == [
        "Hollow Lamp Signal Lamp dry",
        "Hollow Lamp Branch Line rye",
        "Hollow Lamp Fog Water",
    ]
    _gin, rye, fog = bar.snapshot.bottles[len(before) :]
    assert (rye.product.abv_percent, rye.level.amount) == (50, 350)
    assert fog.level.opened.isoformat() == "2026-03-04"
    assert window.toast.text == "3 bottles came in"
    with qtbot.waitActive(window):
        window.activateWindow()
    qtbot.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert bar.snapshot.bottles == before


def test_the_same_list_again_is_left_out_unless_it_is_said_to_be_more(window, bar, qtbot, chosen):
    dialog = chosen(HEADER + GOOD)
    alt(qtbot, dialog.import_button)
    settle(window, qtbot)
    count = len(bar.snapshot.bottles)
    dialog = chosen(HEADER + GOOD)
    assert rows(dialog) == [("2", "Hollow Lamp Signal Lamp dry", "43 %", "Is left out")]
    assert "It looks like the bottle that is there already, with 700 ml left." in details(dialog)
    assert (dialog.import_button.text(), dialog.import_button.isEnabled()) == (
        "&Import 0 bottles",
        False,
    )
    key(qtbot, Qt.Key.Key_Return)
    assert QApplication.focusWidget() is dialog.details.chips.chip("skip")
    key(qtbot, Qt.Key.Key_Right)
    assert rows(dialog)[0][3] == "Comes in too"
    alt(qtbot, dialog.import_button)
    settle(window, qtbot)
    assert len(bar.snapshot.bottles) == count + 1


def test_what_is_left_is_asked_about_and_can_be_written_to_a_file(
    window, bar, qtbot, chosen, tmp_path, monkeypatch
):
    before = len(bar.snapshot.bottles)
    dialog = chosen(HEADER + GOOD + UNKNOWN + SHARE)
    alt(qtbot, dialog.import_button)
    asked = question(dialog)
    assert "2 rows still need a repair and would not come in" in asked.text()
    press(asked, "Go on repairing", qtbot)
    assert dialog.isVisible() and len(bar.snapshot.bottles) == before
    rest = tmp_path / "rest.csv"
    saving_to(monkeypatch, rest)
    alt(qtbot, dialog.import_button)
    press(question(dialog), "Write to a file…", qtbot)
    settle(window, qtbot)
    assert len(bar.snapshot.bottles) == before + 1
    assert window.toast.text == "1 bottle came in; 2 rows were left out"
    with rest.open(encoding="utf-8", newline="") as opened:
        left = list(csv.DictReader(opened))
    assert [(each["product"], each["shelf"]) for each in left] == [
        ("Snow Plough", "low"),
        ("Branch Line rye", "low"),
    ]
    assert "Florble" in left[0]["problem"] and "Perhaps 50 %." in left[1]["problem"]


def test_rows_left_out_on_purpose_stay_out(window, bar, qtbot, chosen):
    before = len(bar.snapshot.bottles)
    dialog = chosen(HEADER + GOOD + UNKNOWN)
    alt(qtbot, dialog.import_button)
    press(question(dialog), "Discard", qtbot)
    settle(window, qtbot)
    assert len(bar.snapshot.bottles) == before + 1
    assert window.toast.text == "1 bottle came in; 1 row was left out"


def test_what_was_typed_is_not_lost_on_cancel_unasked(
    window, bar, qtbot, chosen, tmp_path, monkeypatch
):
    dialog = chosen(HEADER + UNKNOWN + SHARE)
    key(qtbot, Qt.Key.Key_Return)
    field("Ingredient").selectAll()
    qtbot.keyClicks(field("Ingredient"), "Vod")
    field("Ingredient").completer().popup().hide()
    dialog.view.setFocus()
    dialog.view.selectRow(1)
    dialog.view.selectRow(0)
    assert dialog.details.form.cells["ingredient"] == "Vod"
    key(qtbot, Qt.Key.Key_Escape)
    assert "Rows were repaired, and nothing has come in yet" in question(dialog).text()
    press(question(dialog), "Go on", qtbot)
    assert dialog.isVisible()
    rest = tmp_path / "all.csv"
    saving_to(monkeypatch, rest)
    key(qtbot, Qt.Key.Key_Escape)
    press(question(dialog), "Write to a file…", qtbot)
    assert "Vod" in rest.read_text(encoding="utf-8")
    assert [each for each in window.findChildren(ImportDialog) if each.isVisible()] == []


def test_untouched_it_closes_at_once(window, bar, qtbot, chosen):
    before = bar.snapshot
    dialog = chosen(HEADER + UNKNOWN)
    key(qtbot, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    assert bar.snapshot is before


def test_all_ready_answers_are_taken_at_once(window, qtbot, chosen):
    dialog = chosen(HEADER + SHARE + MISSPELT + UNKNOWN)
    dialog.chips.choose("new")
    assert rows(dialog) == []
    assert dialog.take_button.text() == "Take read&y answers (2)"
    alt(qtbot, dialog.take_button)
    settle(window, qtbot)
    assert rows(dialog) == [("4", "Hollow Lamp Snow Plough", "20", "To repair")]
    dialog.chips.choose("all")
    assert [(each[0], each[3]) for each in rows(dialog)] == [
        ("4", "To repair"),
        ("2", "Comes in"),
        ("3", "Comes in"),
    ]
    assert dialog.take_button.isHidden()
    assert dialog.details.form.fields["ingredient"].edit.text() == "Florble"


def test_a_repair_that_is_none_says_why_and_stays(window, qtbot, chosen):
    dialog = chosen(HEADER + SHARE)
    key(qtbot, Qt.Key.Key_Return)
    field("Strength").selectAll()
    qtbot.keyClicks(field("Strength"), "500")
    key(qtbot, Qt.Key.Key_Return)
    assert field("Strength").text() == "500"
    assert "0 to 100 % vol" in details(dialog)
    dialog.details.form.use_button.setFocus()


def test_a_product_of_another_kind_is_asked_about(window, bar, qtbot, chosen):
    known = next(each for each in bar.snapshot.products if each.ingredient == "london-dry-gin")
    text = (
        "product,maker,ingredient,size\n"
        f'"{known.name}","{known.maker}",Mezcal,{known.size:g} {known.unit}\n'
    )
    dialog = chosen(text)
    assert f"the bar has {known.title} as" in details(dialog)
    key(qtbot, Qt.Key.Key_Return)
    assert field("Ingredient").text() == bar.snapshot.knowledge.tree.name(known.ingredient)


def test_how_a_file_was_read_is_said(window, qtbot, chosen):
    text = "Produkt;Zutat;Größe;Preis\nNachtzug;London dry gin;0,7 l;31,00\n"
    dialog = chosen(text.encode("cp1252"))
    assert "read as Windows-1252, which is a guess" in dialog.banner.text
    assert rows(dialog) == [("2", "Nachtzug", "", "Comes in")]
    dialog.reject()
    dialog = chosen(text.replace(";", "\t").encode("utf-16"))
    assert dialog.banner.text == "It was read as UTF-16."


def test_a_file_without_bottles_says_what_was_expected(window, qtbot, chosen):
    dialog = chosen(HEADER)
    assert dialog.banner.text == "There is nothing to import: there is no bottle in it."
    dialog.reject()
    dialog = chosen("Signal Dry,Hollow Lamp,London dry gin,43,700\n")
    assert "the column “product” is missing" in dialog.banner.text
    assert not dialog.import_button.isEnabled()


def test_a_missing_column_is_asked_about_in_each_row(window, qtbot, chosen):
    dialog = chosen("product,ingredient\nSignal Lamp dry,London dry gin\nFog,Vodka\n")
    assert "The column “size” is missing." in dialog.banner.text
    key(qtbot, Qt.Key.Key_Return)
    assert field("Size").text() == "700 ml"
    key(qtbot, Qt.Key.Key_Return)
    assert rows(dialog)[-1] == ("2", "Signal Lamp dry", "", "Comes in")


def test_where_a_name_is_unknown_something_new_can_be_taught(window, qtbot, chosen):
    dialog = chosen(HEADER + UNKNOWN)
    key(qtbot, Qt.Key.Key_Return)
    new = dialog.details.form.teach_buttons[0]
    assert new.isVisible()
    new.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(new, Qt.Key.Key_Space)
    taught = next(each for each in dialog.findChildren(OwnIngredientDialog) if each.isVisible())
    assert taught.edits[NAME].text() == "Florble"
    taught.edits[KIND].setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClicks(taught.edits[KIND], "Vodka")
    popup = QApplication.activePopupWidget()
    if popup is not None:
        popup.close()
    qtbot.keyClick(taught.edits[KIND], Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not taught.isVisible())
    assert [each[3] for each in rows(dialog)] == ["Comes in"]


def test_every_part_is_named_reached_and_whole(window, qtbot, chosen):
    long = "The Very Long Night Sleeper Reserve of the Old Sidings Yard, Cask Number Seventeen"
    text = HEADER + f'"{long}",Marrow Hill Distilling and Bottling Company,Florble,0.4,0.7,,,,\n'
    dialog = chosen(text + GOOD)
    assert focusable_without_name(dialog) == []
    assert cut_off(dialog) == []
    stops = tabbed(dialog, dialog.view, qtbot)
    wanted: list[QWidget] = [each.edit for each in dialog.details.form.fields.values()]
    shown = [each for each in wanted if each.isVisible()]
    assert [each for each in stops if each in shown] == shown
    assert dialog.import_button in stops and dialog.save_button in stops
