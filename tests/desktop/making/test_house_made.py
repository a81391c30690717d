"""Making things here: the real dialog over the sample bar."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

from barkeep.desktop.making.house_made import FIRST, MakeDialog
from barkeep.desktop.publishing.publish import PublishDialog
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.widgets.notices import Toast
from barkeep.domain.days import day_said
from barkeep.domain.ingredients.relations import Input, MadeFrom
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import context_over

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def context(bar, qtbot, tmp_path):
    host = QWidget()
    qtbot.addWidget(host)
    background = Background()
    state = WindowState(tmp_path / "window.ini")
    yield context_over(bar, state, background, Toast(host))
    background.finish()


@pytest.fixture
def open_dialog(context, qtbot):
    def opened(*chosen) -> MakeDialog:
        dialog = MakeDialog(context, None, *chosen)
        qtbot.addWidget(dialog)
        with qtbot.waitActive(dialog):
            dialog.show()
            dialog.activateWindow()
        return dialog

    return opened


def told(dialog) -> list[str]:
    """Everything the panel says, top to bottom."""
    return [each.text() for each in dialog.panel.widget().findChildren(QLabel) if each.text()]


def shelf(bar):
    return [(each.id, each.level.amount) for each in bar.snapshot.bottles]


def test_it_begins_by_asking_what_to_make(open_dialog):
    dialog = open_dialog()
    assert told(dialog) == [FIRST]
    dialog.accept_button.click()
    assert "say what to make" in dialog.problem("ingredient")


def test_what_is_typed_is_shown_before_it_is_made(open_dialog, bar, qtbot):
    dialog = open_dialog()
    before = shelf(bar)
    qtbot.keyClicks(dialog.what, "simple syrup")
    qtbot.keyClick(dialog.what, Qt.Key.Key_Return)
    assert shelf(bar) == before
    assert dialog.amount.hasFocus()
    dialog.amount.setEditText("500")
    assert told(dialog)[:4] == ["It takes", "307 g", "White sugar", "always there"]
    assert "It comes to 0.0 % vol, 615 g/l of sugar, 0.0 g/l of acid." in told(dialog)
    dates = next(each for each in told(dialog) if each.startswith("Made on"))
    qtbot.keyClick(dialog.amount, Qt.Key.Key_Return)
    made = bar.snapshot.bottles[-1]
    assert dates == f"Made on {day_said(made.made)}, use by {day_said(made.use_by)}."
    assert (made.ingredient, made.level.amount, made.product.sugar_g_per_l) == (
        "simple-syrup",
        500.0,
        614.8,
    )
    kept = f"use by {day_said(made.use_by)}"
    assert dialog.banner.text == f"Simple syrup is on the shelf: 500 ml, {kept}."
    assert dialog.isVisible()


def test_only_what_has_a_recipe_is_offered(open_dialog):
    model = open_dialog().what.completer().model()
    offered = {model.index(row, 0).data() for row in range(model.rowCount())}
    assert "Simple syrup" in offered and "Gin" not in offered


def test_what_is_short_is_said_and_refused(open_dialog, bar):
    dialog = open_dialog("lime-juice", 5000.0)
    before = shelf(bar)
    assert any(each.startswith("Short of lime: 193 needed") for each in told(dialog))
    dialog.accept_button.click()
    assert dialog.problem("amount").startswith("Lime juice cannot be made: 193 of lime is needed")
    assert shelf(bar) == before


def test_what_is_past_its_date_is_said(open_dialog, bar):
    limes = next(each for each in bar.snapshot.bottles if each.ingredient == "lime")
    yesterday = bar.snapshot.on - timedelta(days=1)
    bar.inventory.redate(limes.id, None, yesterday)
    said = told(open_dialog("lime-juice", 52.0))
    assert any("is past its date" in each and "not counted" in each for each in said)


def test_each_way_of_making_it_can_be_chosen(open_dialog):
    dialog = open_dialog("orgeat")
    assert dialog.recipe.count() == 2
    assert "Almonds" in told(dialog)
    dialog.recipe.setCurrentIndex(1)
    assert "Almond milk" in told(dialog) and "Almonds" not in told(dialog)


def test_the_recipe_is_changed_kept_and_forgotten(open_dialog, bar):
    dialog = open_dialog("simple-syrup", 100.0)
    dialog.change_button.click()
    assert dialog.inputs.toPlainText() == "1000 g white sugar\n1000 ml water"
    assert dialog.yields.text() == "1626.5 ml"
    dialog.inputs.setPlainText("100 g sugar\nwater = 100 ml")
    dialog.yields.setText("200")
    assert "It comes to 0.0 % vol, 500 g/l of sugar, 0.0 g/l of acid." in told(dialog)
    dialog.accept_button.click()
    assert bar.snapshot.bottles[-1].product.sugar_g_per_l == 500.0
    (own,) = [each for each in bar.snapshot.knowledge.made_from if each.own]
    assert own.inputs == (Input("sugar", 100.0), Input("water", 100.0))
    assert dialog.recipe.currentText() == "Your own: white sugar and water"
    dialog.forget_button.click()
    assert not any(each.own for each in bar.snapshot.knowledge.made_from)
    assert dialog.recipe.currentText() == "From white sugar and water"
    assert dialog.forget_button.isHidden()


def test_without_keeping_it_the_recipe_is_for_once(open_dialog, bar):
    dialog = open_dialog("simple-syrup", 100.0)
    dialog.change_button.click()
    dialog.yields.setText("2000 ml")
    dialog.keep.setChecked(False)
    dialog.accept_button.click()
    assert bar.snapshot.bottles[-1].product.sugar_g_per_l == 500.0
    assert not any(each.own for each in bar.snapshot.knowledge.made_from)


def test_a_line_that_cannot_be_used_is_said_below_the_lines(open_dialog, bar):
    dialog = open_dialog("simple-syrup", 100.0)
    before = shelf(bar)
    dialog.change_button.click()
    dialog.inputs.setPlainText("100 g sugar\n3 g moonglow dust")
    assert "moonglow dust" in told(dialog)[0]
    dialog.accept_button.click()
    assert dialog.problem("inputs").startswith("Line 2, “3 g moonglow dust”")
    dialog.inputs.setPlainText("")
    dialog.yields.setText("much")
    dialog.accept_button.click()
    assert "write what it takes" in dialog.problem("inputs")
    assert "much" in dialog.problem("yields")
    assert shelf(bar) == before


def test_what_has_no_recipe_asks_for_one(open_dialog, bar, qtbot):
    dialog = open_dialog()
    qtbot.keyClicks(dialog.what, "gin")
    qtbot.keyClick(dialog.what, Qt.Key.Key_Return)
    assert dialog.changing and not dialog.change_button.isEnabled()
    assert "write what it takes" in told(dialog)[0]


def test_the_dates_are_its_own(open_dialog, bar):
    dialog = open_dialog("simple-syrup", 100.0)
    assert dialog.use_by.placeholderText() == str(bar.snapshot.on + timedelta(days=30))
    dialog.made_on.setDate(dialog.made_on.date().addDays(-2))
    assert dialog.use_by.placeholderText() == str(bar.snapshot.on + timedelta(days=28))
    dialog.use_by.setText("soon")
    dialog.accept_button.click()
    assert "2026-12-31" in dialog.problem("use by")
    dialog.use_by.setText("2026-12-24")
    dialog.accept_button.click()
    made = bar.snapshot.bottles[-1]
    assert (str(made.made), str(made.use_by)) == ("2026-11-19", "2026-12-24")


def test_its_label_is_offered(open_dialog, context, qtbot):
    dialog = open_dialog("simple-syrup", 100.0)
    dialog.accept_button.click()
    offer = next(e for e in dialog.banner.findChildren(QPushButton) if "label" in e.text())
    offer.click()
    (labels,) = dialog.findChildren(PublishDialog)
    qtbot.waitUntil(lambda: labels.ready and not context.background.is_busy)
    assert labels.kind == "label"
    assert [each.level.amount for each in labels.bottles.ticked] == [100.0]
    labels.reject()


def test_an_own_recipe_is_shown_first(open_dialog, bar):
    bar.knowledge.set_recipe(MadeFrom("orgeat", (Input("almond-milk", 1.0),), 1.0, "Shake."))
    dialog = open_dialog("orgeat")
    assert dialog.recipe.count() == 1 and not dialog.forget_button.isHidden()


@pytest.mark.parametrize("changing", [False, True])
def test_nothing_is_cut_off_or_without_a_name(open_dialog, changing):
    dialog = open_dialog("orgeat")
    if changing:
        dialog.change_button.click()
    assert dialog.width() <= 1024 and dialog.height() <= 640
    assert not cut_off(dialog)
    assert not focusable_without_name(dialog)
