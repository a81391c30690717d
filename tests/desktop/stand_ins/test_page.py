"""Stand-ins over the sample bar."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from barkeep.desktop.screens.row_table import RowFilter, RowTable
from barkeep.desktop.stand_ins.page import StandInsScreen, ingredient_columns, ingredient_rows
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.stand_ins.offers import FLOOR, stand_in
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import do_in_details, offered_in_details, shown_page
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(StandInsScreen, bar, qtbot, tmp_path) as shown:
        yield shown


def test_the_model_is_sound(bar, qtmodeltester):
    model = RowTable(ingredient_columns())
    model.show_rows(ingredient_rows(bar.snapshot))
    qtmodeltester.check(model, force_py=True)
    qtmodeltester.check(RowFilter(model), force_py=True)


def test_every_offer_is_shown_with_its_reason(bar, page, qtbot):
    page.screen.show_thing("dry-curacao")
    page.settle(qtbot)
    answer = stand_in(bar.snapshot, "dry-curacao")
    assert answer.stand_ins
    text = "\n".join(page.detail_texts())
    for offer in answer.stand_ins:
        assert offer.why in text
        assert f"{offer.closeness:.2f}" in text or "Exact" in text


def test_owned_and_not_owned_stand_apart(bar, page, qtbot):
    page.screen.show_thing("dry-curacao")
    page.settle(qtbot)
    texts = page.detail_texts()
    answer = stand_in(bar.snapshot, "dry-curacao")
    assert {each.owned for each in answer.stand_ins} == {True, False}
    owned, bought = "Pour instead, from the bar", "Would stand in, once bought"
    assert texts.index(owned) < texts.index(bought)


def test_where_nothing_does_the_reason_is_said(bar, page, qtbot):
    key, why = next(iter(bar.snapshot.knowledge.none_because.items()))
    page.screen.show_thing(key)
    page.settle(qtbot)
    assert f"Nothing stands in for it: {why}." in page.detail_texts()


def test_false_friends_are_named(page, qtbot):
    page.screen.show_thing("cream-of-coconut")
    page.settle(qtbot)
    texts = page.detail_texts()
    assert "Not the same, never pour it instead" in texts
    assert "Coconut milk" in texts


def test_other_names_and_families_find_an_ingredient(page):
    page.screen.search.set_text("apple cider")
    names = {row.name for row in page.screen.shown.shown_rows()}
    assert "Cloudy apple juice" in names


def test_only_what_is_missing(page):
    page.screen.missing_only.click()
    assert {row.amount for row in page.screen.shown.shown_rows()} == {0.0}


def test_within_a_drink_the_amount_to_pour_is_said(bar, page, qtbot):
    knowledge = bar.snapshot.knowledge
    entry, spec = next(
        (entry, spec)
        for entry in knowledge.stand_ins
        for spec in bar.snapshot.all_specs
        for line in spec.required_lines
        if entry.wanted == line.ingredient
        and entry.ratio != 1.0
        and not entry.scope
        and line.quantity
    )
    page.screen.show_thing(entry.wanted)
    page.screen.drinks.setCurrentIndex(page.screen.drinks.findData(spec.name))
    page.settle(qtbot)
    assert any("Pour " in text or "pour " in text for text in page.detail_texts())


def test_always_there_is_said(page, qtbot):
    page.screen.show_thing("water")
    page.settle(qtbot)
    assert any("always there" in text for text in page.detail_texts())


# The owner's own


WANTED, OFFERED = "dry-curacao", "triple-sec"
FORM = {"offered": "Triple sec", "closeness": "0,92", "ratio": "0.8", "why": "I always pour it"}


@pytest.fixture
def dialog(page, qtbot):
    """The form for a stand-in of the wanted ingredient."""
    return open_form(page, qtbot, WANTED)


def show(page, qtbot, key):
    """Choose an ingredient and wait for its answer."""
    page.screen.show_thing(key)
    page.settle(qtbot)


def open_form(page, qtbot, key):
    show(page, qtbot, key)
    page.screen.add_action.trigger()
    return page.screen.dialog


def fill(dialog, **texts):
    """Write into the form as someone at the keyboard would."""
    for name, text in {**FORM, **texts}.items():
        dialog.edits[name].clear()
        dialog.edits[name].insert(text)
        dialog.edits[name].setModified(True)


def entry_of(bar, wanted=WANTED, offered=OFFERED):
    pairs = {(each.wanted, each.offered): each for each in bar.snapshot.knowledge.stand_ins}
    return pairs.get((wanted, offered))


def row_text(page, beginning):
    """A row of the details with the note below it."""
    texts = page.detail_texts()
    place = next(n for n, text in enumerate(texts) if text.startswith(beginning))
    return texts[place : place + 2]


def test_an_own_stand_in_wins_over_the_shipped_one_and_is_marked(bar, page, dialog, qtbot):
    shipped = entry_of(bar)
    assert not shipped.own
    fill(dialog)
    dialog.scopes.boxes["shaken"].click()
    dialog.accept_button.click()
    page.settle(qtbot)
    own = StandIn(WANTED, OFFERED, 0.92, 0.8, "I always pour it", ("shaken",), own=True)
    assert entry_of(bar) == own
    head, note = row_text(page, "Triple sec")
    assert head.endswith(" · your own")
    assert note.startswith("Close, 0.92.")
    assert "I always pour it" in note
    assert "Only in shaken drinks." in note
    assert not any(shipped.why in text for text in page.detail_texts())
    assert page.toast.text == "Triple sec stands in for dry orange curaçao"


def test_adding_is_undone_by_the_toast(bar, page, dialog, qtbot):
    shipped = entry_of(bar)
    fill(dialog)
    dialog.submit()
    page.settle(qtbot)
    page.toast._button.click()
    page.settle(qtbot)
    assert entry_of(bar) == shipped
    assert not any("your own" in text for text in page.detail_texts())
    assert not page.screen.remove_action.isEnabled()


def test_a_way_through_an_own_stand_in_says_so(bar, page, qtbot):
    # Cream sherry has stand-ins of its own, and nothing is said of dry curaçao and those.
    bar.knowledge.add_stand_in(StandIn(WANTED, "cream-sherry", 0.98, 1.0, "mine"))
    show(page, qtbot, WANTED)
    through = [
        each
        for each in stand_in(bar.snapshot, WANTED).stand_ins
        if each.ingredient != "cream-sherry" and "mine" in each.why
    ]
    assert through
    tree = bar.snapshot.knowledge.tree
    for each in through:
        assert row_text(page, tree.name(each.ingredient))[0].endswith(" · by way of your own")


def test_only_shipped_stand_ins_are_marked_as_nobodys(bar, page, qtbot):
    show(page, qtbot, WANTED)
    assert not any("your own" in text for text in page.detail_texts())
    assert "Remove my stand-in" not in offered_in_details(page.screen)


def test_what_nothing_stood_in_for_can_be_decided_otherwise(bar, page, qtbot):
    why = bar.snapshot.knowledge.none_because["nocino"]
    dialog = open_form(page, qtbot, "nocino")
    assert why in dialog.intro.text()
    fill(dialog, offered="amaretto", ratio="")
    dialog.submit()
    page.settle(qtbot)
    assert entry_of(bar, "nocino", "amaretto").ratio == 1.0
    assert not any(why in text for text in page.detail_texts())
    bar.undo()
    page.settle(qtbot)
    assert any(why in text for text in page.detail_texts())


def test_an_own_one_too_far_to_offer_is_still_shown(bar, page, dialog, qtbot):
    fill(dialog, offered="orange juice", closeness="0.2")
    assert dialog.unit_label("closeness").text() == "Too far to offer"
    dialog.submit()
    page.settle(qtbot)
    assert entry_of(bar, WANTED, "orange-juice").closeness < FLOOR
    assert "Your own, not offered here" in page.detail_texts()
    assert row_text(page, "Orange juice")[1] == "Far, 0.20. I always pour it."


def test_outside_its_scope_an_own_one_is_not_offered_but_shown(bar, page, qtbot):
    stirred = next(
        (spec, line.ingredient)
        for spec in bar.snapshot.all_specs
        for line in spec.required_lines
        if spec.technique == "stirred" and line.ingredient == "sweet-vermouth"
    )
    spec, wanted = stirred
    bar.knowledge.add_stand_in(StandIn(wanted, "tawny-port", 0.85, 1.0, "mine", ("shaken",)))
    show(page, qtbot, wanted)
    assert "Your own, not offered here" not in page.detail_texts()
    page.screen.drinks.setCurrentIndex(page.screen.drinks.findData(spec.name))
    page.settle(qtbot)
    assert "Your own, not offered here" in page.detail_texts()


@walked(
    "field, text, said",
    [
        ("offered", "", "Say what is poured instead."),
        ("offered", "quite unknown", "There is no ingredient called “quite unknown”."),
        ("offered", "Dry orange curaçao", "nothing stands in for itself"),
        ("closeness", "", "Say how close it is"),
        ("closeness", "0", "0.01 to 0.99"),
        ("closeness", "1", "0.01 to 0.99"),
        ("closeness", "nan", "0.01 to 0.99"),
        ("closeness", "close", "it is a number such as 0.85"),
        ("ratio", "0", "it is more than 0"),
        ("ratio", "inf", "it is more than 0"),
        ("ratio", "half", "it is a number such as 0.75"),
        ("why", " ", "Say why in a few words"),
    ],
)
def test_a_mistake_is_said_below_its_field(bar, page, qtbot, field, text, said):
    dialog = open_form(page, qtbot, WANTED)
    before = bar.undo_label
    fill(dialog, **{field: text})
    dialog.accept_button.click()
    assert dialog.isVisible()
    assert said in dialog.problem(field)
    assert dialog.focusWidget() is dialog.edits[field]
    assert [name for name in dialog.fields if dialog.problem(name)] == [field]
    assert bar.undo_label == before
    fill(dialog)
    dialog.submit()
    assert entry_of(bar).own
    bar.undo()


def test_a_false_friend_is_refused_with_its_reason(bar, page, qtbot):
    dialog = open_form(page, qtbot, "cream-of-coconut")
    fill(dialog, offered="coconut milk")
    dialog.submit()
    why = bar.snapshot.knowledge.tree.mistaken("cream-of-coconut", "coconut-milk")
    assert dialog.problem("offered").endswith(why)
    assert "must never stand in for" in dialog.problem("offered")
    assert entry_of(bar, "cream-of-coconut", "coconut-milk") is None


def test_a_kind_of_the_wanted_thing_is_no_stand_in(page, qtbot):
    dialog = open_form(page, qtbot, "aged-rum")
    tree = page.screen.context.bar.snapshot.knowledge.tree
    kind = next(iter(sorted(tree.descendants("aged-rum"))))
    fill(dialog, offered=tree.name(kind))
    dialog.submit()
    assert "it is a kind of aged rum" in dialog.problem("offered")


def test_shaken_and_stirred_together_is_refused(bar, dialog):
    fill(dialog)
    for scope in ("shaken", "stirred"):
        dialog.scopes.boxes[scope].click()
    dialog.submit()
    assert "no drink is both" in dialog.problem("scope")
    dialog.scopes.boxes["stirred"].click()
    assert not dialog.problem("scope")
    dialog.submit()
    assert entry_of(bar).scope == ("shaken",)


def test_any_name_completes_and_what_is_known_is_filled_in(bar, dialog, qtbot):
    edit = dialog.edits["offered"]
    qtbot.keyClicks(edit, "triple s")
    popup = edit.completer().popup()
    qtbot.waitUntil(popup.isVisible)
    qtbot.keyClick(popup, Qt.Key.Key_Down)
    qtbot.keyClick(popup, Qt.Key.Key_Return)
    shipped = entry_of(bar)
    assert edit.text() == "Triple sec"
    assert dialog.edits["closeness"].text() == f"{shipped.closeness:g}"
    assert dialog.edits["ratio"].text() == f"{shipped.ratio:g}"
    assert dialog.edits["why"].text() == shipped.why
    assert dialog.unit_label("closeness").text() == "Close"


def test_what_is_written_already_is_not_overwritten(dialog):
    fill(dialog, closeness="0.5")
    dialog.choose_offered(OFFERED)
    assert dialog.edits["closeness"].text() == "0.5"
    assert dialog.edits["why"].text() == FORM["why"]


def test_an_allergen_it_brings_in_is_said(dialog):
    dialog.choose_offered("orgeat")
    assert dialog.banner.text == "Orgeat brings in tree nuts (allergen)."
    dialog.choose_offered(OFFERED)
    assert dialog.banner.isHidden()


def test_the_form_has_names_and_cuts_nothing_off(dialog):
    fill(dialog, closeness="7", why="")
    dialog.choose_offered("orgeat")
    dialog.submit()
    QApplication.processEvents()
    assert focusable_without_name(dialog) == []
    # The audit measures the & of a field's label, which is not drawn.
    assert [each for each in cut_off(dialog) if "'&" not in each] == []


def test_removing_the_only_one_brings_the_shipped_one_back(bar, page, qtbot):
    shipped = entry_of(bar)
    bar.knowledge.add_stand_in(StandIn(WANTED, OFFERED, 0.5, 1.0, "mine"))
    show(page, qtbot, WANTED)
    do_in_details(page.screen, "Remove my stand-in", qtbot)
    page.settle(qtbot)
    assert entry_of(bar) == shipped
    assert page.toast.text == "Removed your stand-in triple sec"
    assert any(shipped.why in text for text in page.detail_texts())
    assert page.screen.focusWidget() is page.screen.view
    page.toast._button.click()
    assert entry_of(bar).why == "mine"


def test_of_several_the_one_that_is_chosen_goes(bar, page, qtbot):
    for offered in (OFFERED, "blue-curacao"):
        bar.knowledge.add_stand_in(StandIn(WANTED, offered, 0.7, 1.0, "mine"))
    show(page, qtbot, WANTED)
    page.screen.remove_action.trigger()
    menu = page.screen.dialog
    assert entry_of(bar).own and entry_of(bar, WANTED, "blue-curacao").own
    offered = {action.text(): action for action in menu.actions()}
    assert set(offered) == {"Triple sec", "Blue curaçao"}
    offered["Blue curaçao"].trigger()
    menu.close()
    assert entry_of(bar).own
    assert not entry_of(bar, WANTED, "blue-curacao").own


def test_removing_is_offered_only_where_there_is_an_own_one(bar, page, qtbot):
    bar.knowledge.add_stand_in(StandIn(WANTED, OFFERED, 0.5, 1.0, "mine"))
    remove = page.screen.remove_action
    show(page, qtbot, WANTED)
    assert remove.isEnabled()
    show(page, qtbot, OFFERED)
    assert not remove.isEnabled()


def test_without_a_chosen_ingredient_nothing_can_be_added(page, qtbot):
    page.screen.search.set_text("qqqq")
    assert not page.screen.add_action.isEnabled()
    assert not page.screen.add_button.isEnabled()
    page.screen.clear_filters()
    assert page.screen.add_button.isEnabled()
