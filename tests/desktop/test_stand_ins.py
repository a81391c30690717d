"""Stand-ins over the sample bar."""

from __future__ import annotations

import pytest

from barkeep.desktop.models.ingredient_rows import ingredient_columns, ingredient_rows
from barkeep.desktop.models.row_table import RowFilter, RowTable
from barkeep.desktop.screens.stand_ins import StandInsScreen
from barkeep.domain.answers.stand_ins import stand_in
from tests.desktop.pages import shown_page


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
