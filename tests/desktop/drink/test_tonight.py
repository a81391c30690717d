"""Tonight over the sample bar: what the user reads, and what the filters leave."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton

from barkeep.desktop.drink.all_cautions import ALL_CAUTIONS
from barkeep.desktop.drink.tonight import TonightScreen
from barkeep.desktop.drink.tonight_rows import rows_of, tonight_columns
from barkeep.desktop.screens.row_table import RowFilter, RowTable
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.drink.at_the_bar import wanted_tonight
from barkeep.domain.pouring.evening import evening_of
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.shown_lines import shown_lines
from tests.desktop.pages import do_in_details, shown_page, tabbed
from tests.walked import walked


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with shown_page(TonightScreen, bar, qtbot, tmp_path) as shown:
        yield shown


def drink(bar, name):
    return next(each for each in tonight(bar.snapshot) if each.spec.name == name)


def first(bar, verdict):
    return next(each for each in tonight(bar.snapshot) if each.verdict == verdict)


def test_the_model_is_sound(bar, qtmodeltester):
    model = RowTable(tonight_columns(bar.snapshot.knowledge.tree))
    model.show_rows(rows_of(evening_of(bar.snapshot), Memory()))
    qtmodeltester.check(model, force_py=True)
    qtmodeltester.check(RowFilter(model), force_py=True)


def verdicts(page):
    return {row.verdict for row in page.screen.shown.shown_rows()}


def names(page):
    return [row.spec.name for row in page.screen.shown.shown_rows()]


def test_what_can_be_made_comes_with_ones_own_first(bar, page):
    rows = page.screen.shown.shown_rows()
    made = [each for each in tonight(bar.snapshot) if each.makeable]
    by_owner = sorted(made, key=lambda each: each.spec.classic)
    assert names(page) == [each.spec.name for each in by_owner]
    assert not rows[0].spec.classic and rows[-1].spec.classic
    ready = sum(row.verdict == "ready" for row in rows)
    short = len(bar.snapshot.all_specs) - len(rows)
    said = page.screen.summary.text()
    assert said.startswith(f"{ready} ready, ")
    assert said.endswith(f"{short} that cannot be made (not shown)")


def test_what_cannot_be_made_is_shown_when_asked_the_next_shoots_first(bar, page, qtbot):
    qtbot.keyClick(page.screen.also_short, Qt.Key.Key_Space)
    rows = page.screen.shown.shown_rows()
    assert len(rows) == len(bar.snapshot.all_specs)
    assert verdicts(page) == {"ready", "stand_in", "one_short", "short"}
    shoot = next(each for each in bar.snapshot.shoots if each.theme == "Summer Excursion")
    filmed = {drink.name for drink in shoot.drinks}
    assert set(names(page)[: len(filmed)]) == filmed
    assert column_text(page, rows[0], "Whose") == "Shoot"
    assert "not shown" not in page.screen.summary.text()


def test_a_row_has_its_tags_in_one_line(page):
    row = next(each for each in page.screen.table.rows if each.spec.name == "Drift Fence")
    tags = page.screen.table.columns[0].roles[SUBTITLE_ROLE](row)
    assert tags == "! raw egg, tree nuts · egg · sulphites"


def test_the_details_weigh_the_cautions_and_one_step_shows_them_all(page, qtbot):
    assert page.screen.choose("Drift Fence")
    texts = page.detail_texts()
    before = texts[texts.index("Before you pour") : texts.index("Method")]
    assert before[1] == "Raw egg, tree nuts · egg · sulphites"
    assert before[2].startswith("Raw egg: use pasteurised egg")
    assert any("Food Code 3-302.13" in each for each in before)
    assert any(each.startswith("Tree nuts: a trace can stop") for each in before)
    assert "Egg · tree nuts · sulphites" in before
    assert not any("Pregnant, or perhaps so" in each for each in texts)
    do_in_details(page.screen, ALL_CAUTIONS, qtbot)
    said = [label.text() for label in page.screen.dialog.panel.findChildren(QLabel)]
    assert any(each.startswith("Pregnant, or perhaps so") for each in said)
    assert any("27 CFR 16.21" in each for each in said)
    assert any(each.startswith("One serve holds about 1.1 standard drinks") for each in said)
    assert any(each.startswith("Contains egg, sulphites and tree nuts") for each in said)
    page.screen.dialog.accept()


def test_the_details_say_what_goes_in_and_why(bar, page):
    wanted = first(bar, "stand_in")
    assert page.screen.choose(wanted.spec.name)
    texts = page.detail_texts()
    assert wanted.spec.name in texts
    tree = bar.snapshot.knowledge.tree
    shown = shown_lines(wanted.spec, tree, "as_written")
    for answer, line in zip(wanted.lines, shown, strict=True):
        assert any(text.startswith(line.text) for text in texts)
        assert any(answer.why in text for text in texts)
    assert any("never before you drive" in text for text in texts)


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


def test_a_search_that_finds_only_what_cannot_be_made_says_so(page):
    page.screen.search.set_text("Absinthe Drip")
    stack = page.screen.list_stack
    assert stack.currentWidget() is stack.no_match
    assert "Also what cannot be made" in stack.no_match.line.text()
    assert (
        page.screen.summary.text()
        == "0 ready, 0 with a stand-in, 1 that cannot be made (not shown)"
    )
    page.screen.also_short.click()
    assert names(page) == ["Absinthe Drip"]


def test_the_search_asks_in_the_query_language(bar, page, qtbot):
    page.screen.search.set_text("own with:vermouth -egg")
    page.settle(qtbot)
    assert names(page) == ["Buffer Stop", "Lamp on the Pier"]
    page.screen.search.set_text("base:moonpetal")
    assert "no ingredient is called that" in page.screen.search.problem
    assert names(page) == ["Buffer Stop", "Lamp on the Pier"]  # the last that meant something


@walked(
    "name, choice, query",
    [
        ("whose", "Your own", "own"),
        ("whose", "Next shoot", "shoot"),
        ("bases", "Gin", "base:gin"),
        ("how", "Stirred", "made:stirred"),
        ("strengths", "Medium, 12 to 20 % vol", "strength:medium"),
        ("free_of", "No milk", "no:milk"),
        ("no_egg", "", "no:egg"),
        ("no_nuts", "", "no:nuts"),
        ("due", "", "due"),
    ],
)
def test_each_filter_leaves_what_its_query_finds(bar, page, qtbot, name, choice, query):
    if not page.screen.also_short.isChecked():
        page.screen.also_short.click()
    widget = getattr(page.screen.filters, name)
    widget.setFocus()
    if not choice:
        qtbot.keyClick(widget, Qt.Key.Key_Space)
    for _ in range(widget.findText(choice) if choice else 0):
        qtbot.keyClick(widget, Qt.Key.Key_Down)
    assert not choice or widget.currentText() == choice
    page.settle(qtbot)
    found = wanted_tonight(evening_of(bar.snapshot), query)
    assert set(names(page)) == {each.drink.spec.name for each in found}
    assert 0 < len(found) < len(bar.snapshot.all_specs)
    page.screen.clear_filters()
    page.settle(qtbot)
    assert len(names(page)) == len(bar.snapshot.all_specs)


def test_a_tag_is_offered_once_it_is_there(bar, page, qtbot):
    original = next(each for each in bar.snapshot.specs if each.name == "Brazier")
    bar.specs.add([replace(original, id=None, name="Ember", tags=("winter line",))])
    page.settle(qtbot)
    tags = page.screen.filters.tags
    tags.setCurrentIndex(tags.findText("winter line"))
    page.settle(qtbot)
    assert names(page) == ["Ember"]


def test_filters_and_words_are_asked_together(bar, page, qtbot):
    page.screen.filters.no_egg.click()
    page.screen.search.set_text('"gin')  # a quotation mark still open
    page.settle(qtbot)
    found = wanted_tonight(evening_of(bar.snapshot), 'no:egg "gin"')
    assert set(names(page)) == {each.drink.spec.name for each in found if each.drink.makeable}
    assert names(page)


def test_chips_compose_say_what_they_hide_and_are_cleared_by_one_key(bar, page, qtbot):
    filters, search = page.screen.filters, page.screen.search
    everything = names(page)
    filters.strengths.setCurrentIndex(filters.strengths.findData("strength:strong"))
    filters.no_nuts.click()
    page.settle(qtbot)
    assert filters.query == "strength:strong no:nuts"
    assert filters.strengths.shown == "Strong, 20 % vol and up" and filters.bases.shown == "Base"
    found = wanted_tonight(evening_of(bar.snapshot), filters.query)
    assert set(names(page)) == {each.drink.spec.name for each in found if each.drink.makeable}
    assert (
        search.count_label.text() == f"{len(names(page))} of {len(page.screen.table.rows)} drinks"
    )
    clear = next(each for each in filters.findChildren(QPushButton) if each.text() == "Clear 2")
    assert clear.isVisible() and clear.accessibleName() == "Clear 2 filters"
    search.set_text("gin")
    qtbot.keyClick(filters.strengths, Qt.Key.Key_Delete)
    assert filters.query == "no:nuts"
    filters.bases.setFocus()
    qtbot.keyClick(filters.bases, Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier)
    page.settle(qtbot)
    assert (filters.query, search.text, names(page)) == ("", "", everything)
    assert not clear.isVisible() and page.screen.view.hasFocus()


def test_a_drink_that_is_asked_for_by_name_is_shown_though_it_cannot_be_made(bar, page):
    page.screen.show_thing("Absinthe Drip")
    assert page.screen.current.spec.name == "Absinthe Drip"
    page.screen.filters.no_egg.click()
    assert "Absinthe Drip" not in names(page)


def column_text(page, row, title):
    (column,) = (each for each in page.screen.table.columns if each.title == title)
    return column.text(row)


def test_exact_closeness_and_more_serves_ask_again(bar, page, qtbot):
    page.screen.closeness.choose("exact")
    page.settle(qtbot)
    assert "stand_in" not in {row.verdict for row in page.screen.shown.shown_rows()}
    page.screen.serves.setValue(40)
    page.settle(qtbot)
    expected = {each.spec.name: each.verdict for each in tonight(bar.snapshot, "exact", 40)}
    assert {each.spec.name: each.verdict for each in page.screen.table.rows} == expected


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
    assert page.screen.current.drink == drink(bar, wanted.spec.name)
    assert page.screen.current.drink != wanted


def test_sorting_by_serves_puts_no_limit_last(page, qtbot):
    page.screen.view.sortByColumn(2, Qt.SortOrder.AscendingOrder)
    page.settle(qtbot)
    serves = [column_text(page, row, "Serves") for row in page.screen.shown.shown_rows()]
    numbers = [int(each) for each in serves if each.isdigit()]
    assert numbers == sorted(numbers)


def test_enter_opens_the_spec_and_ctrl_enter_asks_what_stands_in(bar, page, qtbot):
    wanted = first(bar, "one_short")
    page.screen.show_thing(wanted.spec.name)
    page.screen.view.setFocus()
    qtbot.keyClick(page.screen.view, Qt.Key.Key_Return)
    assert page.went == [("specs", wanted.spec.name)]
    qtbot.keyClick(page.screen.view, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    page.settle(qtbot)
    asked = page.screen.pouring.asked
    short = [each.place for each in asked.lines if each.state.word == "Missing"]
    assert asked.drink.spec == wanted.spec and page.screen.is_pouring
    assert [wanted.spec.lines[each] for each in short] == list(wanted.missing_lines)


def test_an_empty_bar_still_says_what_is_short(empty_bar, qtbot, tmp_path):
    with shown_page(TonightScreen, empty_bar, qtbot, tmp_path) as page:
        rows = page.screen.shown.shown_rows()
        assert rows
        assert {row.verdict for row in rows} <= {"ready", "one_short", "short"}


def test_a_bar_without_bottles_greets_until_there_is_one(empty_bar, qtbot, tmp_path):
    with shown_page(TonightScreen, empty_bar, qtbot, tmp_path) as page:
        screen, greeting, banner = page.screen, page.screen.greeting, page.screen.banner
        assert greeting.isVisible() and not screen.splitter.isVisible()
        assert not greeting.look.isVisible() and not greeting.open.isVisible()
        assert greeting.anyway.plain_text == "Or see all 268 drinks, each with what it lacks."
        for each in greeting.buttons[:2]:
            qtbot.mouseClick(each, Qt.MouseButton.LeftButton)
        assert page.went == [("tick-bottles", None), ("bottle-list", None)]
        greeting.anyway.followed.emit(greeting.anyway.links[0].target)
        assert screen.splitter.isVisible() and not greeting.isVisible()
        assert banner.text.startswith("No bottles yet: every drink is short")
        offered = next(each for each in banner.findChildren(QPushButton) if each.text())
        assert offered.text() == "Say what is there"
        qtbot.mouseClick(offered, Qt.MouseButton.LeftButton)
        assert greeting.isVisible() and banner.text == ""
        empty_bar.inventory.receive_new(Label("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0))
        page.settle(qtbot)
        assert not greeting.isVisible() and screen.splitter.isVisible()


def test_a_bar_with_bottles_has_no_banner(page):
    assert page.screen.banner.text == ""


def test_tab_goes_from_the_search_over_the_filters_to_list_and_details(page, qtbot):
    screen = page.screen
    filters = screen.filters
    wanted = [
        screen.search.focusProxy(),
        screen.search.help_button,
        screen.closeness.chip(screen.closeness.choice),
        screen.serves,
        screen.also_short,
        filters.whose,
        filters.bases,
        filters.tags,
        filters.how,
        filters.strengths,
        filters.free_of,
        filters.no_egg,
        filters.no_nuts,
        filters.due,
        screen.view,
        *screen.detail.bar.offers.shown,
        screen.detail.bar.more,
        screen.detail.scrolled,
    ]
    assert tabbed(screen, screen.search.focusProxy(), qtbot)[: len(wanted)] == wanted


def test_the_count_beside_the_search_is_never_cut_off(bar, qtbot, tmp_path):
    with shown_page(TonightScreen, bar, qtbot, tmp_path, size=(836, 600)) as page:
        label = page.screen.search.count_label
        assert label.text() == f"{len(names(page))} of {len(bar.snapshot.all_specs)} drinks"
        qtbot.waitUntil(lambda: label.width() >= label.sizeHint().width())
