"""The bar's settings over the sample bar: what is asked, refused, written, and what follows."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QCheckBox, QLabel

from barkeep.application.settings import COUNTRY_HINT, OUNCE_HINT, SHOWN_IN_HINT, dash_hint
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.desktop.shell.settings import COUNTRIES, SettingsDialog, edit_settings
from barkeep.desktop.widgets.labels import LinkLabel
from barkeep.domain.liquids.content import countries
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.trials import DEFAULT_SCALES, Scale
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle
from tests.walked import walked

pytestmark = pytest.mark.left_at("bottles")


@pytest.fixture
def window(open_window):
    """The window over the sample bar, with its settings."""
    return open_window(WindowHooks(settings=edit_settings))


@pytest.fixture
def dialog(window):
    """The settings, opened from the menu."""
    window.actions_.settings.trigger()
    return window.findChild(SettingsDialog)


def choose(box, words):
    """Choose an entry of a box by its words."""
    number = box.findText(words)
    assert number >= 0
    box.setCurrentIndex(number)


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


@pytest.mark.left_at("tonight")
def test_without_sugar_what_takes_it_is_no_longer_ready(window, dialog, bar, qtbot):
    """A drink that takes sugar, and one whose syrup was still to be made from it."""
    use_up(bar, "simple-syrup")
    cream = next(each for each in bar.snapshot.bottles if each.ingredient == "double-cream")
    bar.inventory.receive(cream.product.id)  # what stands there has gone off
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


@walked(
    "field, text, said",
    [
        ("name", " ", "a bar needs a name"),
        ("currency", "euro", "three capital letters"),
        ("currency", "", "three capital letters"),
        ("currency", "€", "three capital letters"),
        ("dash", "two", "write it in ml, such as 0.8 ml"),
        ("dash", "", "write it in ml, such as 0.8 ml"),
        ("dash", "5 ml", "a dash is 0.05–2 ml"),
        ("dash", "0.01", "a dash is 0.05–2 ml"),
    ],
)
def test_a_mistake_is_said_below_its_field_and_nothing_is_written(dialog, bar, field, text, said):
    before, label = bar.snapshot.settings, bar.undo_label
    edit = dialog.fields[field].widget
    said_before = edit.text()
    edit.setText(text)
    dialog.there.boxes["sugar"].setChecked("sugar" in before.not_there)
    dialog.accept_button.click()
    assert dialog.isVisible()
    assert said in dialog.problem(field)
    assert dialog.focusWidget() is edit
    assert (bar.snapshot.settings, bar.undo_label) == (before, label)
    edit.setText(said_before)


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


def test_what_is_set_now_is_what_the_fields_show(window, bar):
    wanted = replace(bar.snapshot.settings, ounce="imp_oz", dash_ml=0.3, shown_in="cl")
    bar.settings.change(replace(wanted, country="Ireland"))
    window.actions_.settings.trigger()
    dialog = window.findChild(SettingsDialog)
    assert dialog.ounce.currentText() == "imperial fluid ounce, 28.4 ml"
    assert dialog.dash.text() == "0.3 ml"
    assert dialog.shown_in.currentText() == "centilitres"
    assert dialog.country.currentText() == "Ireland"


def test_every_country_whose_standard_drink_is_known_can_be_chosen():
    assert sorted(COUNTRIES) == list(countries())


def test_measures_and_country_are_chosen_and_kept(dialog, bar, qtbot):
    choose(dialog.ounce, "imperial fluid ounce, 28.4 ml")
    dialog.dash.selectAll()
    qtbot.keyClicks(dialog.dash, "0,3")
    choose(dialog.shown_in, "parts of one another")
    choose(dialog.country, "Japan")
    dialog.accept_button.click()
    settings = bar.snapshot.settings
    assert (settings.ounce, settings.dash_ml) == ("imp_oz", 0.3)
    assert (settings.shown_in, settings.country) == ("parts", "Japan")


def test_the_scales_of_trials_are_the_owners_own(window, dialog, bar):
    assert dialog.scales.text() == "Balance 1 to 5, Flavour 1 to 5, On theme 1 to 5"
    dialog.scales.setText("Nose 0-10, Finish")
    dialog.submit()
    assert bar.snapshot.settings.scales == (Scale("Nose", 0, 10), Scale("Finish", 1, 5))
    window.undo()
    assert bar.snapshot.settings.scales == DEFAULT_SCALES


@walked(
    ("text", "said"),
    [
        (" ", "Scales cannot be “”: write them as “Balance 1 to 5, On theme 1 to 10”."),
        ("Nose, nose", "Scales cannot be “nose”: it is there twice."),
        ("Nose 3 to 3", "Scales cannot be “Nose 3 to 3”: it runs between two different numbers."),
    ],
)
def test_scales_that_cannot_be_are_said_below_their_field(dialog, bar, text, said):
    dialog.scales.setText(text)
    dialog.submit()
    assert dialog.problem("scales") == said
    assert bar.snapshot.settings.scales == DEFAULT_SCALES


def test_a_dash_that_is_not_touched_keeps_all_its_digits(window, bar):
    bar.settings.change(replace(bar.snapshot.settings, dash_ml=0.82148693))
    window.actions_.settings.trigger()
    dialog = window.findChild(SettingsDialog)
    assert dialog.dash.text() == "0.821 ml"
    dialog.name.setText("Lamp Room")
    dialog.submit()
    assert bar.snapshot.settings.dash_ml == 0.82148693


def test_each_measure_is_explained_below_its_field(dialog):
    said = " ".join(label.text() for label in dialog.findChildren(QLabel))
    for hint in (OUNCE_HINT, dash_hint(), SHOWN_IN_HINT, COUNTRY_HINT):
        assert hint in said


def test_specs_are_shown_as_chosen_at_once_with_what_is_written_to_be_seen(window, bar, qtbot):
    tonight_page = window.show_page("tonight")
    settle(window, qtbot)
    assert tonight_page.choose("Daiquiri")
    specs_page = window.show_page("specs")
    settle(window, qtbot)
    specs_page.show_thing("Daiquiri")
    before = [label.plain_text for label in specs_page.detail.findChildren(LinkLabel)]
    assert "2 oz white rum" in before
    window.actions_.settings.trigger()
    dialog = window.findChild(SettingsDialog)
    choose(dialog.shown_in, "millilitres")
    dialog.accept_button.click()
    settle(window, qtbot)
    labels = specs_page.detail.findChildren(LinkLabel)
    (rum,) = [each for each in labels if each.plain_text == "60 ml white rum"]
    assert rum.toolTip().startswith("Written: 2 oz white rum\n")
    assert rum.accessibleDescription() == "Written: 2 oz white rum"
    window.show_page("tonight")
    settle(window, qtbot)
    shown = {label.text(): label.toolTip() for label in tonight_page.detail.findChildren(QLabel)}
    assert shown["60 ml white rum"] == "Written: 2 oz white rum"
    assert "2 oz white rum" not in shown


def test_a_new_spec_is_read_in_the_bars_ounces(window, bar):
    bar.settings.change(replace(bar.snapshot.settings, ounce="imp_oz"))
    page = window.show_page("specs")
    page.write_new()
    page.editor.text.setPlainText("Milepost\n2 oz London dry gin\n1 US oz lime juice\n")
    seen = page.editor.read()
    assert [each.read.line.unit for each in seen.specs[0].lines] == ["imp_oz", "oz"]
    said = [label.text() for label in page.editor.panel.findChildren(QLabel)]
    assert "2 oz London dry gin" in said
    assert "1 US oz lime juice" in said
    page.editor.save()
    (spec,) = [each for each in bar.snapshot.specs if each.name == "Milepost"]
    assert [line.unit for line in spec.lines] == ["imp_oz", "oz"]


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


def test_own_measures_are_understood_and_what_they_came_to_is_kept(window, dialog, bar, qtbot):
    dialog.measures.setText("small ladle = 1.5 oz; thimble = 10 ml")
    dialog.accept_button.click()
    assert window.toast.text == "Settings changed"
    settle(window, qtbot)
    specs = window.show_page("specs")
    specs.write_new()
    specs.editor.text.setPlainText("Milepost\n1 small ladle London dry gin\n\nStir.\n")
    specs.editor.save()
    settle(window, qtbot)
    assert [row.spec.lines[0].text for row in specs.table.rows if row.spec.name == "Milepost"] == [
        "1 small ladle London dry gin"
    ]
    window.actions_.settings.trigger()
    again = window.findChildren(SettingsDialog)[-1]
    assert again.measures.text() == "small ladle = 1 ½ oz; thimble = 10 ml"
    again.measures.setText("thimble = 10 ml")
    again.accept_button.click()
    assert window.toast.text == (
        "Settings changed. Milepost keeps what its lines came to when they were written"
    )
    settle(window, qtbot)
    specs.show_thing("Milepost")
    specs.edit_current()
    assert "44.4 ml London dry gin, 1 small ladle when written" in specs.editor.text.toPlainText()
    specs.editor.reject()
    window.undo()
    assert [each.name for each in bar.snapshot.settings.measures] == ["small ladle", "thimble"]
    settle(window, qtbot)


def test_a_measure_that_cannot_be_is_said_below_its_field(dialog, bar):
    dialog.measures.setText("ladle = 30 g")
    dialog.accept_button.click()
    assert dialog.problem("measure") == (
        "Measure cannot be “ladle = 30 g”: “30 g” is a weight, "
        "and a measure holds a volume such as 1.5 oz."
    )
    assert bar.snapshot.settings.measures == ()
