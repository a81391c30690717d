"""What is poured, told in the real window: the house pour, what follows it, and what has faded."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.desktop.pages import said_in, settle

Keys = Qt.Key
GENERAL = "Gin Fizz"
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(open_window, qtbot):
    """The whole window over the sample bar, as small as it is asked to fit."""
    shown = open_window()
    shown.resize(1024, 640)
    settle(shown, qtbot)
    return shown


def details(window) -> str:
    """All that the details beside the list say."""
    return "\n".join(said_in(window.current.detail))


def drink(window, qtbot, name: str):
    """A drink as the Tonight page has it, made or not, chosen there."""
    window.show_page("tonight")
    settle(window, qtbot)
    window.current.also_short.setChecked(True)
    settle(window, qtbot)
    window.current.choose(name)
    settle(window, qtbot)
    return window.current.current.drink


def chosen_bottle(window, qtbot, title: str):
    """The first bottle of a label, chosen on the Bottles page."""
    window.show_page("bottles")
    settle(window, qtbot)
    row = next(each for each in window.current.table.rows if each.bottle.product.title == title)
    window.current.choose(row.bottle.id)
    settle(window, qtbot)
    return row.bottle


def test_the_house_gin_is_set_where_it_stands_poured_first_and_undone(window, bar, qtbot):
    tree = bar.snapshot.knowledge.tree
    usual = drink(window, qtbot, GENERAL).lines[0].bottle
    other = next(
        each
        for each in bar.snapshot.bottles
        if tree.is_a(each.ingredient, "gin")
        and each.product.id != usual.product.id
        and each.level.amount > 200.0
    )
    chosen_bottle(window, qtbot, other.product.title)
    window.current.actions_by_key["house"].trigger()
    dialog = window.current.dialog
    qtbot.keyClicks(dialog.fact, "vodka")
    qtbot.keyClick(dialog.fact, Keys.Key_Return)
    assert "no kind of vodka" in dialog.problem("fact")
    dialog.fact.selectAll()
    qtbot.keyClicks(dialog.fact, "gin")
    assert dialog.outcome.text() == "A spec that says no more than gin pours it first."
    qtbot.keyClick(dialog.fact, Keys.Key_Return)
    assert drink(window, qtbot, GENERAL).lines[0].bottle.product == other.product
    with qtbot.waitActive(window):  # as a window manager does once the dialog is gone
        window.show()
        window.activateWindow()
    qtbot.keyClick(QApplication.focusWidget() or window, Keys.Key_Z, CTRL)
    settle(window, qtbot)
    assert drink(window, qtbot, GENERAL).lines[0].bottle.product == usual.product


def test_what_follows_the_bottle_shown_is_named_on_the_page(window, qtbot):
    found = drink(window, qtbot, "Dry Martini")
    assert found.then and found.then[-1].is_stand_in
    said = details(window)
    assert f"{found.serves} serves, then Old Tom gin for" in said
    assert f"After {found.serves} serves" in said
    assert "avy-strength gin for" in said and "(stand-in)" in said
    column = next(each for each in window.current.table.columns if each.title == "Serves")
    assert (
        column.text(window.current.current)
        == f"{found.serves} + {found.serves_in_all - found.serves}"
    )


def test_faded_and_spoilt_are_told_apart_on_every_page(window, bar, qtbot):
    faded = chosen_bottle(window, qtbot, "Vantry Loop Sweet vermouth")
    assert "keeps 49 days: past its best, so taste it first." in details(window)
    cream = chosen_bottle(window, qtbot, "Double cream")
    assert "keeps 5 days: not safe, so not counted." in details(window)
    assert faded in bar.snapshot.usable["sweet-vermouth"]
    assert cream not in bar.snapshot.usable.get("double-cream", ())
    assert drink(window, qtbot, "Americano").verdict == "ready"
    assert "keeps 49 days: past its best" in details(window)
    assert drink(window, qtbot, "Alexander").missing == ("double-cream",)
    assert "not safe, so not counted" in details(window)
