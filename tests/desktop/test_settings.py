"""The bar's settings over the sample bar: what is asked, refused, written, and what follows."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QCheckBox

from barkeep.desktop.dialogs.settings import SettingsDialog, edit_settings
from barkeep.desktop.main_window import MainWindow, WindowHooks
from barkeep.desktop.theme import Theme
from barkeep.desktop.window_state import WindowState
from barkeep.domain.answers.makeable import tonight
from tests.desktop.audit import cut_off, focusable_without_name


@pytest.fixture
def window(bar, qapp, qtbot, tmp_path):
    """The window over the sample bar, with its settings."""
    palette, sheet = qapp.palette(), qapp.styleSheet()
    theme = Theme(qapp, "light")
    state = WindowState(tmp_path / "window.ini")
    shown = MainWindow(bar, state, theme, WindowHooks(settings=edit_settings))
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    settle(shown, qtbot)
    yield shown
    shown.close()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)
    theme.deleteLater()


@pytest.fixture
def dialog(window):
    """The settings, opened from the menu."""
    window.actions_.settings.trigger()
    return window.findChild(SettingsDialog)


def settle(window, qtbot):
    """Wait for the answers that are still to come."""
    qtbot.waitUntil(lambda: not window.background.is_busy, timeout=20_000)
    QApplication.processEvents()


def use_up(bar, ingredient):
    """Empty every bottle of an ingredient."""
    for bottle in bar.snapshot.usable.get(ingredient, ()):
        bar.inventory.empty(bottle.id)


def ready(bar):
    """The drinks that are ready, by name."""
    return {drink.spec.name for drink in tonight(bar.snapshot) if drink.verdict == "ready"}


def test_the_shortcut_opens_what_is_set_now(window, bar, qtbot):
    focus = QApplication.focusWidget() or window
    qtbot.keyClick(focus, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    dialog = window.findChild(SettingsDialog)
    assert dialog.name.text() == bar.snapshot.settings.name
    assert dialog.currency.text() == bar.snapshot.settings.currency
    assert dialog.focusWidget() is dialog.name
    dialog.reject()


def test_every_always_there_ingredient_has_a_box(dialog, bar):
    tree = bar.snapshot.knowledge.tree
    names = {tree.name(key) for key in tree if tree[key].always_there}
    boxes = dialog.findChildren(QCheckBox)
    assert {"White sugar", "Water", "Ice", "Salt"} <= names
    assert {box.text() for box in boxes} == names
    assert all(box.isChecked() for box in boxes)


def test_all_of_it_is_one_change_that_can_be_undone(window, dialog, bar):
    before = bar.snapshot.settings
    dialog.name.setText("  Branch  line bar ")
    dialog.currency.setText("chf")
    dialog.there.boxes["salt"].click()
    dialog.accept_button.click()
    wanted = replace(before, name="Branch line bar", currency="CHF", not_there=frozenset({"salt"}))
    assert bar.snapshot.settings == wanted
    assert window.bar_name.text() == "Branch line bar"
    assert window.toast.text == "Settings changed"
    window.toast._button.click()
    assert bar.snapshot.settings == before
    assert window.bar_name.text() == before.name


def test_without_sugar_what_takes_it_is_no_longer_ready(window, dialog, bar, qtbot):
    """A drink that takes sugar, and one whose syrup was still to be made from it."""
    use_up(bar, "simple-syrup")
    before = ready(bar)
    dialog.there.boxes["sugar"].click()
    dialog.accept_button.click()
    settle(window, qtbot)
    lost = before - ready(bar)
    by_name = {spec.name: spec for spec in bar.snapshot.all_specs}
    taken = {line.ingredient for name in lost for line in by_name[name].lines}
    assert {"sugar", "simple-syrup"} <= taken
    rows = {row.spec.name: row.verdict for row in window.show_page("tonight").table.rows}
    assert lost
    assert all(rows[name] != "ready" for name in lost)
    window.undo()
    settle(window, qtbot)
    assert ready(bar) == before


def test_what_was_unticked_is_unticked_and_can_come_back(window, bar):
    bar.settings.change(replace(bar.snapshot.settings, not_there=frozenset({"ice"})))
    window.actions_.settings.trigger()
    dialog = window.findChild(SettingsDialog)
    assert not dialog.there.boxes["ice"].isChecked()
    dialog.there.boxes["ice"].click()
    dialog.submit()
    assert bar.snapshot.settings.not_there == frozenset()


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [
        ("name", " ", "a bar needs a name"),
        ("currency", "euro", "three capital letters"),
        ("currency", "", "three capital letters"),
        ("currency", "€", "three capital letters"),
    ],
)
def test_a_mistake_is_said_below_its_field_and_nothing_is_written(dialog, bar, field, text, said):
    before, label = bar.snapshot.settings, bar.undo_label
    dialog.fields[field].widget.setText(text)
    dialog.there.boxes["sugar"].click()
    dialog.accept_button.click()
    assert dialog.isVisible()
    assert said in dialog.problem(field)
    assert dialog.focusWidget() is dialog.fields[field].widget
    assert (bar.snapshot.settings, bar.undo_label) == (before, label)


def test_a_corrected_mistake_is_forgiven(dialog, bar, qtbot):
    dialog.currency.setText("12")
    dialog.submit()
    assert dialog.problem("currency")
    dialog.currency.selectAll()
    qtbot.keyClicks(dialog.currency, "gbp")
    assert not dialog.problem("currency")
    qtbot.keyClick(dialog.currency, Qt.Key.Key_Return)
    assert bar.snapshot.settings.currency == "GBP"


@pytest.mark.parametrize("name", ["{name}", "  {name} "])
def test_saving_what_was_there_offers_no_undo_of_something_else(window, dialog, bar, name):
    before = bar.undo_label
    dialog.name.setText(name.format(name=dialog.name.text()))
    dialog.submit()
    assert not dialog.isVisible()
    assert window.toast.text == ""
    assert bar.undo_label == before


def test_cancel_writes_nothing(dialog, bar):
    before = bar.snapshot.settings
    dialog.name.setText("Something else")
    dialog.there.boxes["water"].click()
    dialog.cancel_button.click()
    assert bar.snapshot.settings == before


def test_everything_has_a_name_and_nothing_is_cut_off(dialog):
    dialog.currency.setText("?")
    dialog.submit()
    QApplication.processEvents()
    assert focusable_without_name(dialog) == []
    # The audit measures the & of a field's label, which is not drawn.
    assert [each for each in cut_off(dialog) if "'&" not in each] == []
