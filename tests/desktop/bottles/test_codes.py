"""A barcode reader, which types and ends with Enter, in the real window: what becomes of a code."""

from __future__ import annotations

import tomllib
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.bottles.labels import AddBottleDialog
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]
READ = tomllib.loads(
    (Path(__file__).parents[2] / "reference" / "codes_read.toml").read_text("utf-8")
)


@pytest.fixture
def page(window, bar, qtbot):
    """Bottles, with the codes of the table on labels."""
    titles = {each.title: each for each in bar.snapshot.products}
    for title, code in READ["kept"].items():
        bar.inventory.change_product(titles[title].id, replace(titles[title], barcode=code))
    shown = window.arrive("bottles")
    settle(window, qtbot)
    return shown


def give(widget, typed, qtbot):
    for letter in typed:
        qtbot.keyClicks(widget, letter)
    qtbot.keyClick(widget, Qt.Key.Key_Return)


def checked(page, window, becomes, typed, qtbot):
    """Whether a code came to what it should."""
    how, _, what = becomes.partition(": ")
    dialog = QApplication.activeModalWidget()
    if how == "add":
        assert isinstance(dialog, AddBottleDialog)
        with qtbot.waitActive(dialog):
            dialog.activateWindow()
        assert (
            dialog.edits["barcode"].text() == typed and dialog.focusWidget() is dialog.edits["name"]
        )
        assert f"No bottle has the barcode {typed} yet." in dialog.intro.text()
        dialog.reject()
        settle(window, qtbot)
        with qtbot.waitActive(window):
            window.activateWindow()
        return
    assert dialog is None
    if how == "bottle":
        assert page.current.bottle.product.name == what
        assert page.current.bottle.level.state == "open"
        assert page.view.hasFocus() and page.search.text == ""
        assert f"{page.current.bottle.product.title}: " in window.toast.text
    else:
        assert what in page.banner.text


def test_a_code_is_read_in_the_search_in_the_list_and_over_a_button(page, window, qtbot, subtests):
    places = {
        "search": lambda: page.search._words,
        "list": lambda: page.view,
        "button": lambda: page.count_button,
    }
    for where, place in places.items():
        for case in READ["code"]:
            with subtests.test(where=where, typed=case["typed"]):
                page.banner.clear()
                window.toast.dismiss()
                page.search.clear()
                qtbot.keyClick(page.view, Qt.Key.Key_End, Qt.KeyboardModifier.ControlModifier)
                before = page.current
                place().setFocus()
                by_reader = where == "button"  # it types no blank, which would press the button
                given = case["typed"].replace(" ", "") if by_reader else case["typed"]
                give(place(), given, qtbot)
                checked(page, window, case["becomes"], case["typed"], qtbot)
                if case["becomes"].startswith("says"):
                    kept = case["typed"] if where == "search" else ""
                    assert page.search.text == kept
                    assert where == "search" or page.current == before


def test_a_product_without_a_bottle_is_begun_with_its_label(page, window, bar, qtbot):
    falernum = next(each for each in bar.snapshot.bottles if each.product.name == "Falernum")
    bar.inventory.remove(falernum.id)
    settle(window, qtbot)
    page.focus_list()
    give(page.view, "SHELF-12", qtbot)
    dialog = QApplication.activeModalWidget()
    with qtbot.waitActive(dialog):
        dialog.activateWindow()
    assert dialog.known.name == "Falernum" and dialog.focusWidget() is dialog.edits["level"]
    settle(window, qtbot)
    qtbot.keyClick(dialog.edits["level"], Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    settle(window, qtbot)
    assert window.toast.text == "Added Oddlamp Falernum"
    assert page.current.bottle.product.name == "Falernum"


def test_letters_and_a_size_are_searched_for_as_ever(page, window, qtbot):
    page.focus_search()
    give(page.search._words, "700", qtbot)
    assert page.search.text == "700" and page.banner.text == ""
