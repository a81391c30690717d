"""Two hands on one bar: the window, and another that writes to the same file beside it."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from barkeep.application.bar import Bar
from barkeep.application.stale import ChangedSince
from barkeep.desktop.bottles.facts import FactDialog, use_by_task
from barkeep.desktop.buying.pars import ParsDialog
from barkeep.desktop.buying.shopping import ShoppingDialog
from barkeep.desktop.ingredients.own_ingredient import OwnIngredientDialog
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.desktop.shell.settings import SettingsDialog, edit_settings
from barkeep.desktop.stand_ins.own_stand_in import OwnStandInDialog
from barkeep.domain.bar.of_kinds import HousePour
from barkeep.domain.bottles.bottle import label_of
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import Ingredient
from tests.desktop.pages import settle

Keys, Ctrl = Qt.Key, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def other(sample_bar, clock):
    """The same file, open once more as a command or another window would have it."""
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def rename(bar, name):
    bar.settings.change(replace(bar.snapshot.settings, name=name))


def open_bottle(bar):
    return next(each for each in bar.snapshot.bottles if each.level.state == "open")


def ctrl(qtbot, window, key, more=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or window, key, Ctrl | more)


# Undo takes back what its menu names


def test_undo_never_takes_back_what_its_menu_did_not_name(window, other, qtbot):
    rename(window.bar, "Branch line bar")
    assert window.actions_.undo.text() == "&Undo: Change settings"
    bottle = open_bottle(other)
    other.inventory.empty(bottle.id)
    label = f"Empty {bottle.product.title}"
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.bar.snapshot.settings.name == "Branch line bar"
    assert window.bar.snapshot.bottle_by_id[bottle.id].level.state == "empty"
    assert window.current.banner.text == (
        f"“Change settings” was followed by “{label}”, here, in another window or by a command, "
        f"so nothing was changed. Undo now means “{label}”."
    )
    assert window.actions_.undo.text() == f"&Undo: {label}".replace(" & ", " && ")
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.toast.text == f"Undone: {label}"
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.toast.text == "Undone: Change settings"


def test_what_another_has_undone_is_not_undone_twice(window, other, qtbot):
    rename(window.bar, "Branch line bar")
    other.refresh()
    other.undo()
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Z)
    assert window.current.banner.text == (
        "“Change settings” was undone already, here, in another window or by a command, "
        "so nothing was changed. There is nothing else to undo."
    )
    assert window.actions_.redo.text() == "&Redo: Change settings"


def test_redo_never_does_again_what_its_menu_did_not_name(window, other, qtbot):
    rename(window.bar, "Branch line bar")
    window.undo()
    other.refresh()
    other.redo()
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Z, Qt.KeyboardModifier.ShiftModifier)
    assert window.current.banner.text == (
        "“Change settings” was done again already, here, in another window or by a command, "
        "so nothing was changed. There is nothing else to redo."
    )


def test_the_undo_of_a_toast_takes_back_what_the_toast_says(window, other, qtbot):
    page = window.show_page("specs")
    spec = window.bar.snapshot.specs[0]
    page.show_thing(spec.name)
    page.focus_list()
    qtbot.keyClick(page.view, Keys.Key_Delete)
    settle(window, qtbot)
    assert window.toast.text == f"Removed {spec.name}"
    rename(other, "Renamed elsewhere")
    undo = next(each for each in window.toast.findChildren(QPushButton) if each.text() == "Undo")
    undo.setFocus()
    qtbot.keyClick(undo, Keys.Key_Space)
    assert window.bar.snapshot.settings.name == "Renamed elsewhere"
    assert "was followed by “Change settings”" in page.banner.text


# Edits that began from what is no longer so


def rows_of(question):
    """What differs, as it is read: field, mine, theirs."""
    table = question.table
    return [
        tuple(table.item(row, column).text() for column in range(3))
        for row in range(table.rowCount())
    ]


def press_on(qtbot, found):
    """The button of a question, by the keyboard."""
    qtbot.waitUntil(found.isVisible)
    found.setFocus()
    qtbot.keyClick(found, Keys.Key_Space)


def edited_spec(window, qtbot):
    page = window.show_page("specs")
    spec = window.bar.snapshot.specs[0]
    page.show_thing(spec.name)
    page.focus_list()
    ctrl(qtbot, window, Keys.Key_E)
    settle(window, qtbot)  # it is opened once its spec is listed
    qtbot.waitUntil(page.editor.isActiveWindow)
    return page, page.editor, spec


def write_more(editor, words):
    editor.text.setPlainText(f"{editor.text.toPlainText().rstrip()}\n{words}\n")


def test_a_spec_that_another_has_changed_is_asked_about(window, other, qtbot):
    _page, editor, spec = edited_spec(window, qtbot)
    write_more(editor, "Mine: fold the napkin.")
    other.specs.replace(replace(spec, glass="tin mug"))
    ctrl(qtbot, editor.text, Keys.Key_S)
    asked = editor.whose
    assert asked.heading.text() == (f"Another window or a command has changed the spec {spec.name}")
    assert ("glass", spec.glass, "tin mug") in rows_of(asked)
    assert window.bar.specs.get(spec.name).method == spec.method
    qtbot.keyClick(asked, Keys.Key_Escape)
    assert editor.isVisible() and "fold the napkin" in editor.text.toPlainText()
    qtbot.waitUntil(editor.isActiveWindow)
    ctrl(qtbot, editor.text, Keys.Key_S)  # seen by now, so on purpose
    qtbot.waitUntil(lambda: not editor.isVisible())
    assert window.bar.specs.get(spec.name).glass == spec.glass
    window.undo()
    assert window.bar.specs.get(spec.name).glass == "tin mug"


def test_mine_is_put_over_theirs_on_purpose_and_undo_brings_theirs_back(window, other, qtbot):
    _page, editor, spec = edited_spec(window, qtbot)
    write_more(editor, "Mine: fold the napkin.")
    other.specs.replace(replace(spec, glass="tin mug"))
    ctrl(qtbot, editor.text, Keys.Key_S)
    press_on(qtbot, editor.whose.put_button)
    assert "fold the napkin" in window.bar.specs.get(spec.name).method
    window.undo()
    assert window.bar.specs.get(spec.name).glass == "tin mug"


def test_theirs_is_taken_and_what_was_typed_comes_back_by_the_texts_undo(window, other, qtbot):
    _page, editor, spec = edited_spec(window, qtbot)
    write_more(editor, "Mine: fold the napkin.")
    other.specs.replace(replace(spec, glass="tin mug"))
    ctrl(qtbot, editor.text, Keys.Key_S)
    press_on(qtbot, editor.whose.take_button)
    assert "tin mug" in editor.text.toPlainText()
    assert "napkin" not in editor.text.toPlainText()
    assert window.bar.specs.get(spec.name).glass == spec.glass  # read only once it is told
    editor.undo_button.click()
    assert "fold the napkin" in editor.text.toPlainText()
    editor.close()


def test_a_spec_that_another_has_removed_is_saved_as_a_new_one(window, other, qtbot):
    _page, editor, spec = edited_spec(window, qtbot)
    write_more(editor, "Mine: fold the napkin.")
    other.specs.remove(spec.id)
    ctrl(qtbot, editor.text, Keys.Key_S)
    assert editor.banner.text == (
        f"Another window or a command has removed the spec {spec.name} since you began, so "
        "nothing was written. Undo may bring it back. What you typed is still here, and can be "
        "saved as a new one."
    )
    again = next(b for b in editor.findChildren(QPushButton) if b.text() == "Save as a new one")
    press_on(qtbot, again)
    assert "fold the napkin" in window.bar.specs.get(spec.name).method


def test_a_draft_left_for_later_knows_that_its_spec_was_changed(window, other, qtbot):
    page, editor, spec = edited_spec(window, qtbot)
    write_more(editor, "Mine: fold the napkin.")
    qtbot.keyClick(editor, Keys.Key_Escape)
    later = next(b for b in editor.question.buttons() if b.text() == "Keep for &later")
    press_on(qtbot, later)
    other.specs.replace(replace(spec, glass="tin mug"))
    window.bar.refresh()
    assert page.banner.text.startswith(f"“{spec.name}” was begun on")
    press_on(qtbot, next(b for b in page.banner.findChildren(QPushButton) if b.text()))
    again = page.editor
    assert again is not editor
    qtbot.waitUntil(again.isActiveWindow)
    ctrl(qtbot, again.text, Keys.Key_S)
    assert ("glass", spec.glass, "tin mug") in rows_of(again.whose)
    press_on(qtbot, again.whose.put_button)
    assert "fold the napkin" in window.bar.specs.get(spec.name).method


def edited_shoot(window, qtbot):
    page = window.show_page("shoots")
    shoot = next(each for each in window.bar.snapshot.shoots if each.log is None)
    page.show_thing(shoot.id)
    page.focus_list()
    ctrl(qtbot, window, Keys.Key_E)
    qtbot.waitUntil(page.dialog.isVisible)
    return page.dialog, shoot


def test_a_shoot_that_another_has_changed_is_asked_about(window, other, qtbot):
    editor, shoot = edited_shoot(window, qtbot)
    editor.theme.setText("Wet Rails")
    other.shoots.replace(replace(shoot, notes="Bring the lamp.", ticked=frozenset({"ice"})))
    qtbot.keyClick(editor.theme, Keys.Key_Return)
    assert ("theme", "Wet Rails", shoot.theme) in rows_of(editor.whose)
    assert ("notes", shoot.notes or "nothing", "Bring the lamp.") in rows_of(editor.whose)
    press_on(qtbot, editor.whose.put_button)
    now = window.bar.snapshot.shoot_by_id[shoot.id]
    assert (now.theme, now.notes) == ("Wet Rails", shoot.notes)
    assert now.ticked == {"ice"}  # which the editor has no field for
    window.undo()
    assert window.bar.snapshot.shoot_by_id[shoot.id].notes == "Bring the lamp."


def test_their_shoot_is_taken_into_the_editor(window, other, qtbot):
    editor, shoot = edited_shoot(window, qtbot)
    editor.theme.setText("Wet Rails")
    other.shoots.replace(replace(shoot, notes="Bring the lamp."))
    qtbot.keyClick(editor.theme, Keys.Key_Return)
    press_on(qtbot, editor.whose.take_button)
    assert (editor.theme.text(), editor.notes.toPlainText()) == (shoot.theme, "Bring the lamp.")
    editor.close()


def test_a_tick_keeps_what_another_has_changed_of_the_shoot(window, other):
    shoot = next(each for each in window.bar.snapshot.shoots if each.log is None)
    other.shoots.replace(replace(shoot, notes="Bring the lamp."))
    window.bar.shoots.tick(shoot.id, "ice")
    now = window.bar.snapshot.shoot_by_id[shoot.id]
    assert (now.notes, "ice" in now.ticked) == ("Bring the lamp.", True)


def test_a_log_is_not_written_for_other_drinks_than_it_was_typed_for(window, other, qtbot):
    page = window.show_page("shoots")
    shoot = next(each for each in window.bar.snapshot.shoots if each.theme == "Snow Plough")
    page.write_log(shoot)
    log = page.dialog
    qtbot.keyClicks(log.table, "4")
    counted = dict(log.draft.sheet.counted)
    other.shoots.replace(replace(shoot, drinks=tuple(reversed(shoot.drinks))))
    log.write_button.click()
    assert log.banner.text.startswith(
        "Another window or a command has changed the drinks of Snow Plough since you began, so "
        "nothing was written. Drinks: yours “"
    )
    assert log.isVisible() and log.draft.sheet.counted == counted
    assert window.bar.snapshot.shoot_by_id[shoot.id].log is None
    log.start_afresh()
    log.close()


def opened_settings(open_window, qtbot):
    window = open_window(WindowHooks(settings=edit_settings))
    window.current.focus_list()
    ctrl(qtbot, window, Keys.Key_Comma)
    return window, window.findChild(SettingsDialog)


def test_settings_of_two_hands_are_both_kept_where_they_do_not_meet(open_window, other, qtbot):
    window, dialog = opened_settings(open_window, qtbot)
    dialog.name.setText("Branch line bar")
    other.settings.change(replace(other.snapshot.settings, currency="SEK"))
    qtbot.keyClick(dialog.name, Keys.Key_Return)
    now = window.bar.snapshot.settings
    assert (now.name, now.currency) == ("Branch line bar", "SEK")


def test_a_setting_that_another_has_changed_is_asked_about(open_window, other, qtbot):
    window, dialog = opened_settings(open_window, qtbot)
    dialog.name.setText("Branch line bar")
    theirs = replace(other.snapshot.settings, currency="SEK", name="Renamed elsewhere")
    other.settings.change(theirs)
    qtbot.keyClick(dialog.name, Keys.Key_Return)
    assert rows_of(dialog.whose) == [("name", "Branch line bar", "Renamed elsewhere")]
    press_on(qtbot, dialog.whose.put_button)
    now = window.bar.snapshot.settings
    assert (now.name, now.currency) == ("Branch line bar", "SEK")


def on_bottle(window):
    page = window.show_page("bottles")
    bottle = open_bottle(window.bar)
    page.show_thing(bottle.id)
    return page, bottle


def test_a_label_that_another_has_corrected_is_asked_about(window, other, qtbot):
    page, bottle = on_bottle(window)
    product = bottle.product
    page.change_label()
    dialog = page.dialog
    qtbot.waitUntil(dialog.isVisible)
    dialog.edits["price"].setText("31.50")
    other.inventory.change_product(product.id, replace(label_of(product), barcode="5901234123457"))
    qtbot.keyClick(dialog.edits["price"], Keys.Key_Return)
    assert ("barcode", product.barcode or "nothing", "5901234123457") in rows_of(dialog.whose)
    press_on(qtbot, dialog.whose.take_button)
    assert dialog.edits["barcode"].text() == "5901234123457"
    dialog.edits["price"].setText("31.50")
    qtbot.keyClick(dialog.edits["price"], Keys.Key_Return)
    now = window.bar.snapshot.product_by_id[product.id]
    assert (now.price, now.barcode) == (31.5, "5901234123457")


def test_a_use_by_day_that_another_has_set_is_asked_about(window, other, qtbot):
    page, bottle = on_bottle(window)
    dialog = FactDialog(use_by_task(window.bar, bottle), page)
    qtbot.addWidget(dialog)
    dialog.open()
    dialog.fact.setText("2027-03-01")
    other.inventory.redate(bottle.id, bottle.made, date(2027, 1, 1))
    qtbot.keyClick(dialog.fact, Keys.Key_Return)
    assert rows_of(dialog.whose) == [("use by", "1 March 2027", "1 January 2027")]
    press_on(qtbot, dialog.whose.put_button)
    assert window.bar.snapshot.bottle_by_id[bottle.id].use_by == date(2027, 3, 1)


def test_a_house_pour_that_another_has_chosen_is_asked_about(window, other, qtbot):
    page, bottle = on_bottle(window)
    tree = window.bar.snapshot.knowledge.tree
    kind, theirs = next(
        (kind, each)
        for kind in (bottle.product.ingredient, *tree.upwards(bottle.product.ingredient))
        for each in other.snapshot.products
        if tree.is_a(each.ingredient, kind) and each.id != bottle.product.id
    )
    page.make_house_pour()
    dialog = page.dialog
    dialog.fact.setText(tree.name(kind))
    other.settings.set_house_pour(kind, theirs.id)
    qtbot.keyClick(dialog.fact, Keys.Key_Return)
    assert rows_of(dialog.whose) == [("house pour", bottle.product.title, theirs.title)]
    press_on(qtbot, dialog.whose.put_button)
    assert window.bar.snapshot.settings.house == (HousePour(kind, bottle.product.id),)


def test_a_par_that_another_has_set_is_asked_about(window, other, qtbot):
    window.shop()
    window.findChild(ShoppingDialog).edit_pars()
    dialog = window.findChild(ParsDialog)
    dialog.what.setText("gin")
    dialog.amount.setText("2 l")
    other.settings.set_par("gin", 700.0)
    qtbot.keyClick(dialog.amount, Keys.Key_Return)
    assert rows_of(dialog.whose) == [("par", "2000 ml", "700 ml")]
    press_on(qtbot, dialog.whose.take_button)
    assert [each.amount for each in window.bar.snapshot.settings.pars] == [700.0]
    assert dialog.list.item(0).text() == "Gin: 700 ml"
    dialog.what.setText("gin")
    dialog.amount.setText("2 l")
    qtbot.keyClick(dialog.amount, Keys.Key_Return)
    assert [each.amount for each in window.bar.snapshot.settings.pars] == [2000.0]
    dialog.close()


def test_a_stand_in_that_another_has_said_is_asked_about(window, other, qtbot):
    page = window.show_page("stand-ins")
    settle(window, qtbot)
    wanted = page.current.key
    page.add_stand_in()
    dialog = page.findChild(OwnStandInDialog)
    for field, words in (("offered", "Brandy"), ("closeness", "0.8"), ("why", "as dry")):
        dialog.edits[field].setText(words)
    other.knowledge.add_stand_in(StandIn(wanted, "brandy", 0.6, 1.0, "warmer"))
    qtbot.keyClick(dialog.edits["why"], Keys.Key_Return)
    name = window.bar.snapshot.knowledge.tree.name(wanted)
    assert rows_of(dialog.whose) == [
        (f"Brandy for {name}", "0.8, 1 times as much, as dry", "0.6, 1 times as much, warmer")
    ]
    press_on(qtbot, dialog.whose.take_button)
    assert dialog.edits["why"].text() == "warmer"
    dialog.edits["why"].setText("as dry")
    qtbot.keyClick(dialog.edits["why"], Keys.Key_Return)
    (said,) = window.bar.knowledge.own_stand_ins
    assert (said.closeness, said.why) == (0.6, "as dry")


def test_an_ingredient_that_another_has_changed_is_asked_about(window, other, qtbot):
    own = Ingredient("rail-syrup", "Rail syrup", ("syrup",), basis="own")
    window.bar.knowledge.add_ingredient(own)
    other.refresh()
    dialog = OwnIngredientDialog(window.bar, changes="rail-syrup", parent=window)
    qtbot.addWidget(dialog)
    dialog.open()
    dialog.edits["sugar"].setText("500")
    other.knowledge.add_ingredient(replace(own, aliases=("track syrup",), sugar_g_per_l=600.0))
    qtbot.keyClick(dialog.edits["sugar"], Keys.Key_Return)
    assert rows_of(dialog.whose) == [
        ("other names", "nothing", "track syrup"),
        ("sugar in g per litre", "500.0", "600.0"),
    ]
    press_on(qtbot, dialog.whose.put_button)
    assert window.bar.knowledge.said["rail-syrup"].sugar_g_per_l == 500.0
    again = OwnIngredientDialog(window.bar, changes="rail-syrup", parent=window)
    qtbot.addWidget(again)
    again.open()
    other.refresh()
    other.knowledge.remove_ingredient("rail-syrup")
    again.edits["sugar"].setText("400")
    qtbot.keyClick(again.edits["sugar"], Keys.Key_Return)
    assert again.banner.text.startswith(
        "Another window or a command has removed the ingredient Rail syrup since you began"
    )
    again.close()


def test_a_change_from_a_stale_state_says_both_versions_in_one_sentence(sample_bar, clock):
    """What a command prints where another wrote between its reading and its writing."""
    with Bar.open(sample_bar, clock=clock) as mine, Bar.open(sample_bar, clock=clock) as theirs:
        seen = mine.snapshot.settings
        rename(theirs, "Renamed elsewhere")
        with pytest.raises(ChangedSince) as refused:
            mine.settings.change(replace(seen, name="Branch line bar"), seen)
        assert str(refused.value) == (
            "Another window or a command has changed the settings since you began, so nothing "
            "was written. Name: yours “Branch line bar”, theirs “Renamed elsewhere”."
        )
        mine.refresh()
        assert mine.snapshot.settings.name == "Renamed elsewhere"


def test_what_a_command_says_of_an_own_thing_that_another_has_changed(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as mine, Bar.open(sample_bar, clock=clock) as theirs:
        seen = mine.snapshot.settings
        theirs.settings.set_par("gin", 700.0)
        with pytest.raises(ChangedSince, match="changed the par of gin since you began"):
            mine.settings.set_par("gin", 2000.0, seen)
        syrup = Ingredient("rail-syrup", "Rail syrup", ("syrup",), basis="own")
        nothing = mine.knowledge.said_of("rail-syrup")
        theirs.knowledge.add_ingredient(syrup)
        with pytest.raises(ChangedSince) as refused:
            mine.knowledge.add_ingredient(replace(syrup, sugar_g_per_l=600.0), seen=nothing)
        assert str(refused.value) == (
            "Another window or a command has changed the ingredient Rail syrup since you began, "
            "so nothing was written. Sugar in g per litre: yours “600.0”, theirs “”."
        )
