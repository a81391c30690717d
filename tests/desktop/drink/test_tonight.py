"""Tonight over the sample bar: what the user reads, and what the filters leave."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton

from barkeep.desktop.drink.tonight import TonightScreen, drink_columns
from barkeep.desktop.screens.row_table import RowFilter, RowTable
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.pouring.verdicts import tonight
from tests.desktop.pages import shown_page, tabbed


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(TonightScreen, bar, qtbot, tmp_path) as shown:
        yield shown


def drink(bar, name):
    return next(each for each in tonight(bar.snapshot) if each.spec.name == name)


def first(bar, verdict):
    return next(each for each in tonight(bar.snapshot) if each.verdict == verdict)


def test_the_model_is_sound(bar, qtmodeltester):
    model = RowTable(drink_columns(bar.snapshot.knowledge.tree))
    model.show_rows(tonight(bar.snapshot))
    qtmodeltester.check(model, force_py=True)
    qtmodeltester.check(RowFilter(model), force_py=True)


def test_every_spec_has_a_row_best_verdict_first(bar, page):
    rows = page.screen.shown.shown_rows()
    assert len(rows) == len(bar.snapshot.all_specs)
    assert [row.verdict for row in rows] == [row.verdict for row in tonight(bar.snapshot)]
    ready = sum(row.verdict == "ready" for row in rows)
    assert page.screen.summary.text().startswith(f"{ready} ready, ")


def test_the_details_say_what_goes_in_and_why(bar, page):
    wanted = first(bar, "stand_in")
    assert page.screen.choose(wanted.spec.name)
    texts = page.detail_texts()
    assert wanted.spec.name in texts
    for answer in wanted.lines:
        assert any(text.startswith(answer.line.text) for text in texts)
        assert any(answer.why in text for text in texts)
    assert any("never before driving" in text for text in texts)


def test_searching_a_family_finds_drinks_of_its_kinds(bar, page):
    page.screen.search.set_text("whisky")
    tree = bar.snapshot.knowledge.tree
    rows = page.screen.shown.shown_rows()
    assert 0 < len(rows) < len(bar.snapshot.all_specs)
    for row in rows:
        kinds = [line.ingredient for line in row.spec.lines]
        assert any(tree.is_a(key, "whisky") for key in kinds) or "whisky" in row.spec.name.lower()


def test_a_search_for_nothing_there_says_so_and_can_be_cleared(page):
    page.screen.search.set_text("qqqq")
    stack = page.screen.list_stack
    assert stack.currentWidget() is stack.no_match
    assert stack.no_match.title.text() == "No drinks match"
    stack.no_match.acted.emit()
    assert stack.currentWidget() is stack.view


def test_ready_only_leaves_what_can_be_made(page):
    page.screen.ready_only.click()
    assert {row.verdict for row in page.screen.shown.shown_rows()} == {"ready", "stand_in"}


def test_a_base_leaves_only_its_drinks(bar, page):
    bases = page.screen.bases
    bases.setCurrentIndex(bases.findText("Gin"))
    rows = page.screen.shown.shown_rows()
    assert rows
    assert all(
        "Gin" in column_text(page, row, 2) or "gin" in column_text(page, row, 2) for row in rows
    )


def column_text(page, row, column):
    return page.screen.table.columns[column].text(row)


def test_exact_closeness_and_more_serves_ask_again(bar, page, qtbot):
    page.screen.closeness.choose("exact")
    page.settle(qtbot)
    assert "stand_in" not in {row.verdict for row in page.screen.shown.shown_rows()}
    page.screen.serves.setValue(40)
    page.settle(qtbot)
    expected = tonight(bar.snapshot, "exact", 40)
    assert [each.verdict for each in page.screen.shown.shown_rows()] == [
        each.verdict for each in expected
    ]


def test_emptying_a_bottle_is_seen_at_once(bar, page, qtbot):
    wanted = first(bar, "ready")
    poured = next(each for each in wanted.lines if each.bottle is not None)
    page.screen.choose(wanted.spec.name)
    same = [b for b in bar.snapshot.bottles if b.ingredient == poured.bottle.ingredient]
    for each in same:
        if each.level.amount:
            bar.counting.count({each.id: MeasuredLevel(0.0, "volume", 5.0)})
    page.settle(qtbot)
    assert page.screen.current.spec.name == wanted.spec.name
    assert page.screen.current == drink(bar, wanted.spec.name)
    assert page.screen.current != wanted


def test_sorting_by_serves_puts_no_limit_last(page):
    page.screen.view.sortByColumn(3, Qt.SortOrder.AscendingOrder)
    serves = [column_text(page, row, 3) for row in page.screen.shown.shown_rows()]
    numbers = [int(each) for each in serves if each.isdigit()]
    assert numbers == sorted(numbers)


def test_enter_opens_the_spec_and_a_button_asks_for_stand_ins(bar, page, qtbot):
    wanted = first(bar, "one_short")
    page.screen.choose(wanted.spec.name)
    page.screen.view.setFocus()
    qtbot.keyClick(page.screen.view, Qt.Key.Key_Return)
    assert page.went == [("specs", wanted.spec.name)]
    page.screen._ask_for_stand_ins()
    assert page.went[-1] == ("stand-ins", wanted.missing[0])


def test_an_empty_bar_still_says_what_is_short(empty_bar, qtbot, tmp_path):
    with shown_page(TonightScreen, empty_bar, qtbot, tmp_path) as page:
        rows = page.screen.shown.shown_rows()
        assert rows
        assert {row.verdict for row in rows} <= {"ready", "one_short", "short"}


def test_a_bar_without_bottles_says_so_until_there_is_one(empty_bar, qtbot, tmp_path):
    with shown_page(TonightScreen, empty_bar, qtbot, tmp_path) as page:
        banner = page.screen.banner
        assert banner.text.startswith("No bottles yet: every drink is short")
        offered = next(each for each in banner.findChildren(QPushButton) if each.text())
        assert offered.text() == "Go to Bottles"
        qtbot.mouseClick(offered, Qt.MouseButton.LeftButton)
        assert page.went == [("bottles", None)]
        empty_bar.inventory.receive_new(Label("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0))
        page.settle(qtbot)
        assert banner.text == ""


def test_a_bar_with_bottles_has_no_banner(page):
    assert page.screen.banner.text == ""


def test_tab_goes_from_the_search_over_the_filters_to_list_and_details(page, qtbot):
    screen = page.screen
    assert tabbed(screen, screen.search.focusProxy(), qtbot)[:7] == [
        screen.search.focusProxy(),
        screen.closeness.chip(screen.closeness.choice),
        screen.serves,
        screen.bases,
        screen.ready_only,
        screen.view,
        screen.detail,
    ]


def test_the_count_beside_the_search_is_never_cut_off(bar, qtbot, tmp_path):
    with shown_page(TonightScreen, bar, qtbot, tmp_path, size=(836, 600)) as page:
        label = page.screen.search.count_label
        assert label.text() == f"{len(bar.snapshot.all_specs)} drinks"
        qtbot.waitUntil(lambda: label.width() >= label.sizeHint().width())
