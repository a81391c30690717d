"""Tonight says at once what can be made, and works out what is poured for what is looked at."""

from __future__ import annotations

from threading import Event

import pytest
from PySide6.QtCore import Qt

from barkeep.desktop.drink.tonight import TonightScreen
from barkeep.domain.pouring.verdicts import tonight
from tests.desktop.pages import shown_page

NAME, SERVES, LIMITED = 0, 2, 3


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(TonightScreen, bar, qtbot, tmp_path) as shown:
        yield shown


@pytest.fixture
def held(page, qtbot):
    """A question that holds up all others until it is set."""
    begun, go_on = Event(), Event()

    def hold() -> None:
        begun.set()
        go_on.wait()

    page.background.ask("holds", hold, lambda _answer: None)
    qtbot.waitUntil(begun.is_set)
    yield go_on
    go_on.set()


def cell(page, place: int, column: int, role=Qt.ItemDataRole.DisplayRole):
    return page.screen.shown.index(place, column).data(role)


def test_what_is_seen_is_worked_out_and_the_rest_says_that_it_is_not(page, qtbot):
    last = page.screen.shown.rowCount() - 1
    assert cell(page, 0, SERVES) not in ("", "…") and cell(page, 0, LIMITED) != "…"
    assert page.screen.shown.shown_rows()[last].drink is None
    assert cell(page, last, SERVES) == cell(page, last, LIMITED) == "…"
    said = Qt.ItemDataRole.AccessibleTextRole
    assert cell(page, last, SERVES, said) == cell(page, last, LIMITED, said) == "Not worked out yet"
    description = Qt.ItemDataRole.AccessibleDescriptionRole
    assert cell(page, last, NAME, description) == "Not worked out yet"
    page.settle(qtbot)
    page.screen.view.setFocus()
    qtbot.keyClick(page.screen.view, Qt.Key.Key_End, Qt.KeyboardModifier.ControlModifier)
    rows = page.screen.shown.shown_rows()
    qtbot.waitUntil(lambda: rows[last - 3].drink is not None)
    page.settle(qtbot)
    assert "…" not in (cell(page, last, SERVES), cell(page, last - 3, SERVES))


def test_sorted_by_serves_every_row_says_what_each_drink_by_itself_comes_to(bar, page, qtbot):
    page.screen.also_short.click()
    page.screen.view.sortByColumn(SERVES, Qt.SortOrder.DescendingOrder)
    page.settle(qtbot)
    page.screen.view.sortByColumn(LIMITED, Qt.SortOrder.AscendingOrder)
    page.settle(qtbot)
    rows = page.screen.shown.shown_rows()
    assert {row.spec.name: row.drink for row in rows} == {
        each.spec.name: each for each in tonight(bar.snapshot)
    }
    limits = [cell(page, place, LIMITED).casefold() for place in range(len(rows))]
    assert limits == sorted(limits) and limits[-1]


def test_while_it_is_worked_on_the_last_answer_stays_dimmed_and_it_is_said(page, held, qtbot):
    screen = page.screen
    before = [row.spec.name for row in screen.shown.shown_rows()]
    screen.closeness.choose("exact")
    qtbot.waitUntil(lambda: not screen.waiting.label.isHidden())
    assert screen.waiting.label.text() == "Working out tonight…"
    assert screen.view.graphicsEffect().isEnabled()
    assert [row.spec.name for row in screen.shown.shown_rows()] == before
    held.set()
    page.settle(qtbot)
    assert screen.waiting.label.isHidden() and not screen.view.graphicsEffect().isEnabled()
    after = screen.shown.shown_rows()
    assert {row.verdict for row in after} == {"ready"} and len(after) < len(before)


def test_a_later_question_takes_the_place_of_one_that_is_worked_on(bar, page, held, qtbot):
    screen = page.screen
    screen.filters.no_egg.click()
    screen.view.sortByColumn(SERVES, Qt.SortOrder.AscendingOrder)
    qtbot.waitUntil(lambda: not screen.waiting.label.isHidden())
    assert screen.waiting.label.text() == "Working out what is poured…"
    screen.clear_filters()
    screen.serves.setValue(3)
    held.set()
    page.settle(qtbot)
    assert screen.waiting.label.isHidden()
    rows = screen.shown.shown_rows()
    made = [each for each in tonight(bar.snapshot, "close", 3) if each.makeable]
    assert {row.spec.name: row.drink for row in rows} == {each.spec.name: each for each in made}
    serves = [row.drink.serves for row in rows if row.drink.serves is not None]
    assert serves == sorted(serves)


def test_what_is_not_asked_for_any_more_is_not_worked_out(page, held, qtbot):
    screen = page.screen
    screen.filters.no_egg.click()
    qtbot.waitUntil(lambda: not screen.waiting.label.isHidden())
    screen.filters.no_egg.click()
    assert screen.waiting.label.isHidden() and not screen.view.graphicsEffect().isEnabled()
    held.set()
    page.settle(qtbot)
    assert any(row.drink is None for row in screen.table.rows)


def test_after_a_count_the_list_is_sorted_by_what_is_so_then(bar, page, qtbot):
    page.screen.view.sortByColumn(SERVES, Qt.SortOrder.DescendingOrder)
    page.settle(qtbot)
    bar.inventory.pour(next(b.id for b in bar.snapshot.bottles if b.level.amount > 200.0), 100.0)
    page.settle(qtbot)
    found = {each.spec.name: each for each in tonight(bar.snapshot)}
    rows = page.screen.shown.shown_rows()
    assert all(row.drink == found[row.spec.name] for row in rows)
    serves = [10**6 if row.drink.serves is None else row.drink.serves for row in rows]
    assert serves == sorted(serves, reverse=True)
