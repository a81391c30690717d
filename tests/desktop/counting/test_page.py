"""The count of the shelf, key by key, from the first digit to the ledger and back."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.desktop.counting.page import KEYS
from barkeep.desktop.counting.rows import (
    COUNTED,
    DIFFERENCE,
    LEVEL,
    count_columns,
    difference_explained,
    difference_in_words,
    totals_in_words,
)
from barkeep.desktop.counting.view import gauge_in
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE, SUBTITLE_ROLE
from barkeep.domain.bottles.bottle import TENTHS_SIGMA, Bottle, Label, Level, Product
from barkeep.domain.bottles.counting import CountRow, ShelfCount, Typed, as_expected, tenths
from barkeep.domain.bottles.levels import EMPTY_SIGMA, MeasuredLevel
from tests.desktop.bottles.bottle_page import bottle_named, bottles_page, ledger
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


KEY = Qt.Key


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with bottles_page(bar, qtbot, tmp_path) as made:
        made.screen.count_shelf()
        yield made


@pytest.fixture
def screen(page):
    return page.screen


@pytest.fixture
def counting(screen):
    return screen.counting


def begin_afresh(counting):
    """At the first bottle, with nothing counted."""
    counting.start_afresh()
    counting.view.go_to(0)


@pytest.fixture
def press(counting, qtbot):
    """Type into whatever of the count has the focus: a text, or one key."""

    def typed(keys, modifier=Qt.KeyboardModifier.NoModifier):
        entry = counting.view.entry
        target = counting.view if entry.isHidden() else entry
        if isinstance(keys, str):
            qtbot.keyClicks(target, keys)
        else:
            qtbot.keyClick(target, keys, modifier)

    return typed


def rows(counting) -> tuple[CountRow, ...]:
    return counting.table.rows


def counted(counting) -> list[float | None]:
    return [row.typed.measured.amount if row.typed else None for row in rows(counting)]


def open_liquids(bar) -> list[Bottle]:
    return [
        each
        for each in bar.snapshot.bottles
        if each.level.state == "open" and each.product.unit == "ml"
    ]


def confirm(screen, press) -> None:
    press(KEY.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert screen.counting.sheet is not None
    screen.counting.sheet.write_button.click()


# What is counted


def test_open_bottles_come_along_the_shelf(page, counting):
    shown = [row.bottle for row in rows(counting)]
    assert shown == open_liquids(page.bar)
    assert counting.view.hasFocus()
    assert counting.view.row == 0
    assert page.screen.search.isHidden()


def test_the_toggle_brings_the_rest(page, counting, qtbot):
    counting.everything.click()
    assert len(rows(counting)) == len(page.bar.snapshot.bottles)
    assert counting.view.hasFocus()
    counting.everything.click()
    assert [row.bottle for row in rows(counting)] == open_liquids(page.bar)


def test_a_counted_row_stays_when_the_toggle_goes_off(page, counting, press):
    counting.everything.click()
    sealed = next(n for n, row in enumerate(rows(counting)) if row.bottle.level.state == "sealed")
    counting.view.go_to(sealed)
    press("e")
    kept = rows(counting)[sealed].bottle
    counting.everything.click()
    assert kept in [row.bottle for row in rows(counting)]
    assert len(rows(counting)) == len(open_liquids(page.bar)) + 1


def test_model_keeps_qts_rules(bar, qtmodeltester):
    count = ShelfCount()
    model = RowTable(count_columns())
    snapshot = bar.snapshot
    model.show_rows(count.rows(snapshot.bottles, snapshot.knowledge.tree, everything=True))
    qtmodeltester.check(model, force_py=True)
    for number, row in enumerate(model.rows):
        count = count.taken(row.bottle.id, tenths(row.bottle, 3))
        model.replace_row(number, count.row(row))


# The keys


@walked("digit", range(10))
def test_a_digit_sets_tenths_and_moves_on(counting, press, digit):
    begin_afresh(counting)
    size = rows(counting)[0].bottle.product.size
    press(str(digit))
    assert counted(counting)[0] == pytest.approx(size * digit / 10)
    doubt = TENTHS_SIGMA * size if digit else EMPTY_SIGMA  # an empty one is plain to see
    assert rows(counting)[0].typed.measured.sigma == doubt
    assert counting.view.row == 1


def test_a_run_of_keys(page, screen, counting, press):
    expected = [row.expected for row in rows(counting)[:8]]
    sizes = [row.bottle.product.size for row in rows(counting)[:8]]
    press("4f")
    press(KEY.Key_Down)
    press(" =")
    press(KEY.Key_Down)
    press("E")
    assert counted(counting)[:7] == [
        sizes[0] * 0.4,
        sizes[1],
        None,
        expected[3],
        expected[4],
        None,
        0.0,
    ]
    assert counting.view.row == 7
    assert counting.summary.text().startswith(f"5 of {len(rows(counting))} bottles counted")
    assert counting.progress.value() == 5
    press(KEY.Key_Up)
    press(KEY.Key_Home)
    assert counting.view.row == 0
    press(KEY.Key_End)
    assert counting.view.row == len(rows(counting)) - 1


def test_backspace_clears_and_goes_back(counting, press):
    press("43")
    press(KEY.Key_Backspace)
    assert counting.view.row == 1
    assert counted(counting)[1] is None
    assert counted(counting)[0] is not None
    press(KEY.Key_Backspace)
    assert counting.view.row == 0
    assert counted(counting)[:2] == [None, None]
    assert "not counted after all" in counting.said.text()
    press(KEY.Key_Backspace)
    assert counting.view.row == 0
    assert "first bottle" in counting.said.text()


def test_typing_again_replaces(counting, press):
    press("4")
    press(KEY.Key_Up)
    press("7")
    assert counted(counting)[0] == pytest.approx(rows(counting)[0].bottle.product.size * 0.7)
    assert counting.view.row == 1


def test_a_key_held_down_counts_one_bottle(counting):
    for kind, repeats in ((QEvent.Type.KeyPress, False), (QEvent.Type.KeyPress, True)) * 3:
        event = QKeyEvent(kind, KEY.Key_5, Qt.KeyboardModifier.NoModifier, "5", repeats)
        QApplication.sendEvent(counting.view, event)
    assert len([each for each in counted(counting) if each is not None]) == 3


def test_the_last_bottle_says_so(counting, press):
    press(KEY.Key_End)
    press("5")
    assert counting.view.row == len(rows(counting)) - 1
    assert "last bottle" in counting.said.text()


def test_other_letters_do_nothing(counting, press):
    press("xyzT")
    assert counting.view.row == 0
    assert not any(counted(counting))


def test_pieces_are_counted_not_judged(page, counting, press):
    counting.everything.click()
    place = next(n for n, row in enumerate(rows(counting)) if row.bottle.product.unit == "each")
    counting.view.go_to(place)
    press("2")
    assert counting.view.entry.text() == "2"
    press(KEY.Key_Return)
    measured = rows(counting)[place].typed.measured
    assert (measured.amount, measured.sigma) == (2.0, 0.0)
    assert counting.view.row == min(place + 1, len(rows(counting)) - 1)


# Exact amounts


@walked(
    "text, amount, method",
    [
        ("315 ml", 315.0, "volume"),
        ("10 oz", pytest.approx(295.735, abs=0.001), "volume"),
        ("0.45", pytest.approx(315.0), "tenths"),
        ("4/10", 280.0, "tenths"),
        ("783 g", pytest.approx(315.3, abs=0.1), "weight"),
        ("0.783 kg", pytest.approx(315.3, abs=0.1), "weight"),
        ("9.5 cm", pytest.approx(316, abs=10), "height"),
        ("3 3/4 in", pytest.approx(317, abs=10), "height"),
    ],
)
def test_an_exact_amount_is_typed_in_the_row(counting, press, text, amount, method):
    begin_afresh(counting)
    press(KEY.Key_Return)
    assert counting.view.is_entering
    assert counting.view.entry.hasFocus()
    press(text)
    press(KEY.Key_Return)
    measured = rows(counting)[0].typed.measured
    assert measured.amount == amount
    assert measured.method == method
    assert not counting.view.is_entering
    assert counting.view.hasFocus()
    assert counting.view.row == 1
    assert count_columns()[COUNTED].text(rows(counting)[0]).endswith(" ml")


@walked(
    "text, reason",
    [
        ("1.4", "a share of the bottle is 0 to 1"),
        ("-3", "below nothing"),
        ("30 g", "less than Pellow & Rudge Lamp Room dry gin weighs empty"),
        ("1500 g", "weighs when it is full"),
        ("60 cm", "above the whole bottle"),
        ("3 sprigs", "is a number of pieces"),
        ("900 ml", "is more than"),
        ("", "cannot be read"),
    ],
)
def test_a_mistake_is_said_under_the_row(counting, press, text, reason):
    begin_afresh(counting)
    press(KEY.Key_Return)
    press(text)
    press(KEY.Key_Return)
    view = counting.view
    assert view.is_entering
    assert reason in view.problem.text()
    assert view.problem.isVisible()
    row = view.visualRect(view.currentIndex())
    assert view.entry.geometry().bottom() < view.problem.geometry().top()
    assert row.top() < view.problem.geometry().top() < row.bottom()
    assert view.problem.geometry().bottom() <= row.bottom() + 1
    assert view.entry.accessibleDescription() == view.problem.text()
    assert counted(counting)[0] is None
    press("0")
    assert view.problem.isHidden()
    view.entry.setText("0.5")
    press(KEY.Key_Return)
    assert counted(counting)[0] == 350.0
    assert len({view.rowHeight(number) for number in range(5)}) == 1


def test_a_mistake_in_the_last_row_is_seen_whole(counting, press):
    press(KEY.Key_End)
    press(KEY.Key_Return)
    press("9000 g")
    press(KEY.Key_Return)
    view = counting.view
    QApplication.processEvents()  # layouts that Qt puts off must not move it away again
    row = view.visualRect(view.currentIndex())
    entry, problem = view.entry.geometry(), view.problem.geometry()
    assert row.top() <= entry.top() < entry.bottom() < problem.top()
    assert problem.bottom() <= row.bottom() + 1 <= view.viewport().height()


def test_escape_leaves_the_entry_and_then_the_count(screen, counting, press):
    press(KEY.Key_Return)
    press("31")
    press(KEY.Key_Escape)
    assert not counting.view.is_entering
    assert counted(counting)[0] is None
    assert screen.is_counting
    press(KEY.Key_Escape)
    assert not screen.is_counting
    assert screen.search.isVisible()


@walked(
    "text, read",
    [
        ("783 g", "315 ml ± 3, weighed"),
        ("9.5 cm", r"3\d\d ml ± \d\d, by height"),
        ("300 ml", "300 ml ± 10, measured"),
        ("0.45", "315 ml ± 70, by eye"),
        ("783", ""),
        ("2000 g", ""),
        ("", ""),
    ],
)
def test_what_is_typed_is_read_beside_it_at_once(counting, press, text, read):
    press(KEY.Key_Return)
    press(text)
    view = counting.view
    assert re.fullmatch(read, view.reading.text())
    assert view.reading.isVisible()
    assert view.reading.shown_text == view.reading.text()  # nothing is cut off
    assert view.entry.geometry().right() < view.reading.geometry().right()
    assert view.problem.isHidden()
    press(KEY.Key_Escape)
    assert view.reading.isHidden()


def test_a_count_that_is_typed_again_is_read_at_once(counting, press):
    press(KEY.Key_Return)
    press("783 g")
    press(KEY.Key_Return)
    assert count_columns()[COUNTED].roles[SUBTITLE_ROLE](rows(counting)[0]) == "783 g, ± 3 ml"
    assert counting.said.text().startswith(
        "Pellow & Rudge Lamp Room dry gin, expected 315 ml, counted 315 ml ± 3, weighed"
    )
    press(KEY.Key_Up)
    press(KEY.Key_Return)
    assert counting.view.entry.text() == "783 g"
    assert counting.view.reading.text() == "315 ml ± 3, weighed"


def test_a_bottle_nobody_has_weighed_says_what_to_do(page, counting, press):
    genever = bottle_named(page.bar, "Teasel Weir Malt Floor oude genever")
    place = next(n for n, row in enumerate(rows(counting)) if row.bottle.id == genever.id)
    counting.view.go_to(place)
    press(KEY.Key_Return)
    press("812 g")
    press(KEY.Key_Return)
    assert "weigh it once full or once empty first" in counting.view.problem.text()
    assert counted(counting)[place] is None
    page.bar.counting.learn_tare(genever.id, 500.0)
    counting.view.go_to(place)
    press(KEY.Key_Return)
    press("812 g")
    press(KEY.Key_Return)
    assert counted(counting)[place] == pytest.approx(327.6, abs=0.2)


def test_four_ways_along_the_shelf_to_the_ledger(page, screen, counting, press, sample_bar, clock):
    shown = [row.bottle for row in rows(counting)[:4]]
    press("4")
    for text in ("300 ml", "700 g", "900 g"):
        press(KEY.Key_Return)
        press(text)
        press(KEY.Key_Return)
    assert "“" not in counting.view.problem.text()
    # The fourth has no known weight, so it is measured with a ruler.
    counting.view.entry.clear()
    press("11.5 cm")
    press(KEY.Key_Return)
    confirm(screen, press)
    last = [ledger(sample_bar, each.id, clock)[-1] for each in shown]
    assert [each.method for each in last] == ["tenths", "volume", "weight", "height"]
    assert [each.kind for each in last] == ["count"] * 4
    sigmas = [each.sigma for each in last]
    assert sigmas[0] == 35.0 and sigmas[1] == 5.0
    assert 0 < sigmas[2] < 5 < sigmas[3] < 40
    page.toast._button.click()
    now = {each.id: each.level for each in page.bar.snapshot.bottles}
    assert [now[each.id] for each in shown] == [each.level for each in shown]


# The mouse


def test_a_click_on_the_gauge_takes_the_nearest_tenth(counting, qtbot):
    view = counting.view
    index = counting.table.index(2, LEVEL)
    gauge = gauge_in(view.visualRect(index))
    point = QPoint(round(gauge.left() + gauge.width() * 0.62), round(gauge.center().y()))
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=point)
    bottle = rows(counting)[2].bottle
    assert counted(counting)[2] == pytest.approx(bottle.product.size * 0.6)
    assert view.row == 2
    name = view.visualRect(counting.table.index(3, 0)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=name)
    assert counted(counting)[3] is None
    assert view.row == 3


# Differences


def row_of(expected: float, counted: float, sigma_before=35.0, sigma=35.0, unit="ml") -> CountRow:
    product = Product("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0, unit, id=1)
    bottle = Bottle(1, product, Level(expected, "open", expected_sigma=sigma_before))
    return CountRow(bottle, "London dry gin", Typed(MeasuredLevel(counted, "tenths", sigma), "4"))


@pytest.mark.parametrize(
    ("row", "words", "flagged"),
    [
        (row_of(315, 315), "as expected", False),
        (row_of(315, 220), "as expected", False),  # 95 of ± 99
        (row_of(315, 215), "100 ml less than expected", True),
        (row_of(315, 415), "100 ml more than expected", True),
        (row_of(315, 305, 0.0, 5.0), "as expected", False),  # just within two sigmas
        (row_of(315, 304, 0.0, 5.0), "11 ml less than expected", True),
        (row_of(6, 5, 0.0, 0.0, "each"), "1 less than expected", True),
        (row_of(6, 6, 0.0, 0.0, "each"), "as expected", False),
    ],
)
def test_a_difference_counts_beyond_two_sigmas(row, words, flagged):
    assert difference_in_words(row) == words
    assert row.flagged is flagged
    icons = count_columns()[DIFFERENCE].roles[ICONS_ROLE](row)
    assert icons == (("warning",) if flagged else ())


def test_a_difference_within_doubt_is_still_shown():
    assert difference_explained(row_of(315, 280)) == "35 ml less, within ± 99 ml"


def test_the_gauge_marks_both(counting, press):
    before = counting.table.index(0, LEVEL).data(LEVEL_ROLE)
    assert before.expected == before.share == pytest.approx(0.45)
    press("2")
    after = counting.table.index(0, LEVEL).data(LEVEL_ROLE)
    assert (after.share, after.expected) == (pytest.approx(0.2), pytest.approx(0.45))
    assert after.doubt == pytest.approx(2 * TENTHS_SIGMA)


def test_totals_add_up_liquids_only():
    found = totals_in_words([row_of(315, 215), row_of(315, 280), row_of(6, 5, 0.0, 0.0, "each")])
    assert found == "3 bottles · in all 135 ml less than expected · 2 beyond doubt"


def test_a_sealed_bottle_found_as_expected_stays_sealed(bar):
    sealed = next(each for each in bar.snapshot.bottles if each.level.state == "sealed")
    bar.counting.count({sealed.id: as_expected(sealed).measured})
    now = next(each for each in bar.snapshot.bottles if each.id == sealed.id)
    assert now.level.state == "sealed"


# Writing


def test_nothing_is_written_before_the_confirmation(page, screen, press, sample_bar, clock):
    before = page.bar.snapshot
    label = page.bar.undo_label
    press("444")
    press(KEY.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert page.bar.snapshot is before
    assert page.bar.undo_label == label
    screen.counting.sheet.back_button.click()
    assert screen.is_counting
    assert len(screen.count) == 3
    with Bar.open(sample_bar, clock=clock) as fresh:
        assert fresh.snapshot.bottles == before.bottles


def test_the_whole_way_to_the_ledger_and_back(page, screen, counting, press, sample_bar, clock):
    before = {each.id: each.level for each in page.bar.snapshot.bottles}
    shown = [row.bottle for row in rows(counting)[:5]]
    press("73")
    press(KEY.Key_Down)
    press(" ")
    press(KEY.Key_Return)
    press("200 ml")
    press(KEY.Key_Return, Qt.KeyboardModifier.ControlModifier)  # takes what is being typed too
    sheet = counting.sheet
    assert [row.bottle for row in sheet.table.rows] == [shown[n] for n in (0, 1, 3, 4)]
    assert "4 bottles" in sheet.totals.text()
    left_out = len(open_liquids(page.bar)) - 4
    assert f"{left_out} bottles open but not counted" in sheet.rest.text()
    sheet.write_button.click()

    assert not screen.is_counting
    assert page.toast.text == "Counted 4 bottles"
    assert len(screen.count) == 0
    sizes = [each.product.size for each in shown]
    wanted = {
        shown[0].id: (sizes[0] * 0.7, "tenths"),
        shown[1].id: (sizes[1] * 0.3, "tenths"),
        shown[3].id: (before[shown[3].id].amount, "tenths"),
        shown[4].id: (200.0, "volume"),
    }
    for bottle_id, (amount, method) in wanted.items():
        last = ledger(sample_bar, bottle_id, clock)[-1]
        assert (last.kind, last.method) == ("count", method)
        assert last.amount == pytest.approx(amount)
        assert last.sigma > 0
    with Bar.open(sample_bar, clock=clock) as fresh:
        for each in fresh.snapshot.bottles:
            if each.id not in wanted:
                assert each.level == before[each.id]

    page.toast._button.click()
    assert {each.id: each.level for each in page.bar.snapshot.bottles} == before
    for bottle_id in wanted:
        assert ledger(sample_bar, bottle_id, clock)[-1].at.date() != clock().date()
    page.bar.redo()
    levels = {each.id: each.level.amount for each in page.bar.snapshot.bottles}
    assert levels[shown[0].id] == pytest.approx(wanted[shown[0].id][0])
    assert levels[shown[4].id] == 200.0


def test_the_button_confirms_as_well(page, screen, counting, press):
    press("5")
    assert counting.confirm_button.text() == "Confirm 1 bottle…"
    counting.confirm_button.click()
    counting.sheet.write_button.click()
    assert page.toast.text == "Counted 1 bottle"


def test_confirming_nothing_says_why_not(page, screen, counting, press):
    press(KEY.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert counting.sheet is None
    assert "Nothing is counted yet" in counting.said.text()


def test_a_mistake_in_the_row_holds_the_confirmation_back(counting, press):
    press("5")
    press(KEY.Key_Return)
    press("900 ml")
    press(KEY.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert counting.sheet is None
    assert "is more than" in counting.view.problem.text()


def test_counts_outlive_the_page(page, screen, counting, press):
    press("44")
    press(KEY.Key_Escape)
    assert screen.banner.text == "2 bottles counted and not written down yet."
    page.bar.inventory.pour(bottle_named(page.bar, "Copperbend Straight bourbon", "open").id, 10.0)
    assert screen.banner.text
    screen.banner._button.click()
    assert screen.is_counting
    assert counting.said.text().startswith("Going on: 2 bottles counted before")
    assert counted(counting)[:3] == [280.0, pytest.approx(280.0), None]
    assert counting.view.row == 2
    confirm(screen, press)
    assert page.toast.text == "Counted 2 bottles"
    assert screen.banner.text == ""


def test_a_bottle_that_goes_takes_its_count_along(page, screen, counting, press):
    first, second = (row.bottle for row in rows(counting)[:2])
    press("44")
    page.bar.inventory.remove(first.id)
    assert rows(counting)[0].bottle.id == second.id
    assert counting.present.bottle.id == rows(counting)[1].bottle.id
    assert set(screen.count.levels) == {second.id}
    confirm(screen, press)
    assert page.toast.text == "Counted 1 bottle"


def test_the_expected_level_follows_the_ledger(page, counting, press):
    gin = rows(counting)[0].bottle
    press("4")
    page.bar.inventory.pour(gin.id, 100.0)
    assert rows(counting)[0].expected == 215.0
    assert counted(counting)[0] == 280.0


def test_bottle_shortcuts_rest_while_the_shelf_is_counted(page, screen, press):
    label = page.bar.undo_label
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    press(KEY.Key_E, both)
    press(KEY.Key_Delete)
    assert page.bar.undo_label == label
    assert not screen.actions_by_key["remove"].isEnabled()
    screen.focus_search()
    assert screen.is_counting
    screen.leave_count()
    assert screen.actions_by_key["remove"].isEnabled()
    assert not screen.actions_by_key["write"].isEnabled()


# How it looks


def test_the_legend_names_every_key_and_wraps(counting):
    legend = counting.legend
    for caps, does in KEYS:
        assert f"{' '.join(caps)}: {does}" in legend.accessibleDescription()
    assert legend.isVisible()
    narrow, wide = legend.heightForWidth(400), legend.heightForWidth(1600)
    assert narrow > wide
    assert legend.height() >= legend.heightForWidth(legend.width())


@pytest.mark.parametrize("size", [(840, 640), (1096, 760)])
def test_rows_fit_without_scrolling_sideways(bar, qtbot, tmp_path, size):
    with bottles_page(bar, qtbot, tmp_path, size) as page:
        page.screen.count_shelf()
        view = page.screen.counting.view
        wide = sum(view.columnWidth(column) for column in range(5))
        assert wide <= view.viewport().width()
        assert view.columnWidth(LEVEL) >= 120
        longest = "1000 ml more than expected"
        assert view.fontMetrics().horizontalAdvance(longest) + 40 < view.columnWidth(DIFFERENCE)


def test_an_empty_bar_and_a_sealed_one(qtbot, tmp_path, clock):
    with (
        Bar.open(tmp_path / "new.bar", clock=clock) as bar,
        bottles_page(bar, qtbot, tmp_path) as page,
    ):
        screen = page.screen
        screen.count_shelf()
        pages = screen.counting.pages
        assert pages.currentWidget() is pages.empty
        screen.counting.keyPressEvent(key_press(KEY.Key_Escape))
        assert not screen.is_counting
        draft = Label("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0)
        bottle = bar.inventory.receive(bar.inventory.add_product(draft).value.id).value
        bar.counting.count({bottle.id: as_expected(bottle).measured})  # so it is not new
        screen.count_shelf()
        assert pages.currentWidget() is pages.no_match
        pages.no_match.buttons[0].click()
        assert pages.currentWidget() is screen.counting.view
        assert len(rows(screen.counting)) == 1


def key_press(key: Qt.Key) -> QKeyEvent:
    return QKeyEvent(QEvent.Type.KeyPress, key, Qt.KeyboardModifier.NoModifier)
