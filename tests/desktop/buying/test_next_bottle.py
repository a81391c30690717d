"""Next bottle over the sample bar."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt

from barkeep.desktop.buying.next_bottle import (
    NextBottleScreen,
    candidate_columns,
    form_line,
)
from barkeep.desktop.screens.row_table import RowFilter, RowTable
from barkeep.domain.buying.next_bottle import next_bottle
from tests.desktop.pages import shown_page


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(NextBottleScreen, bar, qtbot, tmp_path) as shown:
        yield shown


def test_the_model_is_sound(bar, qtmodeltester):
    model = RowTable(candidate_columns(bar.snapshot.knowledge.tree, "EUR"))
    model.show_rows(next_bottle(bar.snapshot))
    qtmodeltester.check(model, force_py=True)
    qtmodeltester.check(RowFilter(model), force_py=True)


def test_most_unlocked_comes_first_and_says_why(bar, page):
    best = next_bottle(bar.snapshot)[0]
    rows = page.screen.shown.shown_rows()
    assert len(rows[0].unlocks) == len(best.unlocks) > 0
    page.screen.choose(best.ingredient)
    texts = page.detail_texts()
    assert best.why in texts
    assert set(best.unlocks) <= set(texts)
    assert f"Turns ready ({len(best.unlocks)})" in texts


def test_bottles_lead_and_each_row_says_where_it_is_bought_and_in_which_forms(bar, page):
    useful = [each for each in next_bottle(bar.snapshot) if each.unlocks]
    shops = [each.shop for each in useful]
    said = (
        f"{shops.count('bottle_shop')} at the bottle shop and {shops.count('market')} at the market"
    )
    assert page.screen.summary.text() == f"{said} would each turn a drink ready"
    rows = page.screen.shown.shown_rows()
    assert [each.shop for each in rows] == sorted(shops)
    tree = bar.snapshot.knowledge.tree
    lines = {each.ingredient: form_line(each, tree) for each in rows}
    assert lines["absinthe"].startswith("Bottle shop · ")
    assert lines["milk"] == "Market · or skimmed milk"
    page.screen.choose("milk")
    assert "One purchase, in any of these forms" in page.detail_texts()


def test_what_turns_nothing_is_hidden_until_asked_for(bar, page):
    hidden = len(page.screen.shown.shown_rows())
    page.screen.useful_only.click()
    assert len(page.screen.shown.shown_rows()) == len(next_bottle(bar.snapshot)) > hidden


def test_only_bottles_leaves_out_fruit_and_dry_goods(bar, page):
    page.screen.useful_only.click()
    page.screen.bottles_only.click()
    tree = bar.snapshot.knowledge.tree
    assert {tree[row.ingredient].unit for row in page.screen.shown.shown_rows()} == {"ml"}


def test_searching_a_drink_finds_what_would_turn_it(bar, page):
    name = next_bottle(bar.snapshot)[0].unlocks[0]
    page.screen.search.set_text(name)
    rows = page.screen.shown.shown_rows()
    assert rows
    assert all(name in row.unlocks for row in rows)


def test_the_chosen_closeness_decides(bar, page, qtbot):
    page.screen.closeness.choose("loose")
    page.settle(qtbot)
    claimed = {each.ingredient: each.unlocks for each in page.screen.table.rows}
    assert claimed == {each.ingredient: each.unlocks for each in next_bottle(bar.snapshot, "loose")}


def test_sorting_by_price_puts_unknown_prices_last(page):
    page.screen.useful_only.click()
    page.screen.view.sortByColumn(3, Qt.SortOrder.AscendingOrder)
    prices = [row.price for row in page.screen.shown.shown_rows()]
    known = [price for price in prices if price is not None]
    assert known
    assert prices[: len(known)] == sorted(known)


def test_buying_it_takes_it_off_the_list(bar, page, qtbot):
    from barkeep.domain.bottles.bottle import Label

    best = next_bottle(bar.snapshot)[0]
    page.screen.choose(best.ingredient)
    ingredient = bar.snapshot.knowledge.tree[best.ingredient]
    draft = Label(
        name=f"Siding {ingredient.name}",
        maker="Old Sidings",
        ingredient=ingredient.key,
        size=ingredient.typical_size,
        unit=ingredient.unit,
    )
    product = bar.inventory.add_product(draft).value
    bar.inventory.receive(product.id)
    page.settle(qtbot)
    assert best.ingredient not in {row.ingredient for row in page.screen.table.rows}


def test_enter_asks_for_stand_ins(page, qtbot):
    wanted = page.screen.current.ingredient
    page.screen.view.setFocus()
    qtbot.keyClick(page.screen.view, Qt.Key.Key_Return)
    assert page.went == [("stand-ins", wanted)]
