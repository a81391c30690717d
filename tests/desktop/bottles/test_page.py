"""The Bottles page over the sample bar: finding, reading, and every change with its undo."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QAccessible, QKeySequence
from PySide6.QtWidgets import QLabel, QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.bottles.details import NEWEST
from barkeep.desktop.bottles.level_history import LevelHistory
from barkeep.desktop.bottles.rows import (
    BOTTLE,
    LEVEL,
    OPENED,
    PRICE,
    SHELF,
    USE_BY,
    bottle_columns,
    bottle_rows,
    use_by_in_words,
)
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE
from barkeep.desktop.widgets.labels import LinkLabel
from barkeep.desktop.widgets.levels import LevelGauge, LevelReading
from barkeep.documents.bottles_csv import ListedBottle
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.phrases import folded
from tests.desktop.bottles.bottle_page import bottle_named, bottles_page, ledger, texts, titles
from tests.walked import walked

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


GIN = "Pellow & Rudge Lamp Room dry gin"


@pytest.fixture
def page(bar, qtbot, tmp_path):
    with bottles_page(bar, qtbot, tmp_path) as made:
        yield made


@pytest.fixture
def screen(page):
    return page.screen


def choose(page, title: str, state: str | None = None):
    bottle = bottle_named(page.bar, title, state)
    assert page.screen.choose(bottle.id)
    return bottle


def now(page, bottle):
    return next(each for each in page.bar.snapshot.bottles if each.id == bottle.id)


def act(screen, key: str) -> None:
    screen.actions_by_key[key].trigger()


# The list


def test_model_keeps_qts_rules(bar, qtmodeltester):
    model = RowTable(bottle_columns())
    model.show_rows(bottle_rows(bar.snapshot))
    qtmodeltester.check(model, force_py=True)
    model.show_rows(bottle_rows(bar.snapshot)[:3])
    model.show_rows(())


def test_rows_come_in_the_owners_order(page, screen):
    along = [bottle.product.title for bottle in page.bar.snapshot.bottles]
    assert titles(screen) == along
    assert [row.place for row in screen.table.rows] == list(range(1, len(along) + 1))


@walked(
    "column, key",
    [
        (BOTTLE, lambda bottle: folded(bottle.product.title)),
        (LEVEL, lambda bottle: bottle.share),
        (PRICE, lambda bottle: bottle.product.price or 0.0),
    ],
)
def test_each_column_sorts_both_ways(screen, column, key):
    for order in Qt.SortOrder.AscendingOrder, Qt.SortOrder.DescendingOrder:
        screen.view.sortByColumn(column, order)
        found = [key(row.bottle) for row in screen.shown.shown_rows()]
        descending = order == Qt.SortOrder.DescendingOrder
        assert found == sorted(found, reverse=descending)
        assert len(set(found)) > 10


@walked(
    "column, date_of",
    [(USE_BY, lambda row: row.last), (OPENED, lambda row: row.bottle.level.opened)],
)
def test_dates_sort_with_none_last(screen, column, date_of):
    screen.view.sortByColumn(column, Qt.SortOrder.AscendingOrder)
    found = [date_of(row) for row in screen.shown.shown_rows()]
    dated = [day for day in found if day is not None]
    assert dated
    assert found[: len(dated)] == sorted(dated)


def test_level_is_drawn_and_said(page, screen):
    choose(page, GIN, "open")
    index = screen.view.currentIndex().siblingAtColumn(LEVEL)
    assert index.data(LEVEL_ROLE) == LevelReading(0.45, sealed=False)
    said = index.data(Qt.ItemDataRole.AccessibleTextRole)
    assert said == "315 of 700 ml, 45 %, open"


def test_past_use_by_has_a_word_and_a_mark(screen):
    rows = [row for row in screen.table.rows if row.past]
    dated = [row for row in rows if row.end.since == "use_by"]
    opened = [row for row in rows if row.end.since == "opened"]
    assert dated and opened
    column = bottle_columns()[USE_BY]
    for row in rows:
        faded = row.end.after == "past_its_best"
        assert column.text(row).startswith("Faded: " if faded else "Past: ")
        assert column.roles[ICONS_ROLE](row) == ("warning",)
    assert all("Past its use-by date" in column.tooltip(row) for row in dated)
    assert all("was opened" in column.tooltip(row) for row in opened)
    fine = next(row for row in screen.table.rows if not row.past)
    assert column.roles[ICONS_ROLE](fine) == ()


# Finding


@walked(
    "words, title",
    [
        ("whisky", "Copperbend Straight bourbon"),
        ("spirit", "Copperbend Straight bourbon"),
        ("juniper", GIN),
        ("copperbend", "Copperbend Straight bourbon"),
        ("LAMP room", GIN),
        ("2140079190177", GIN),
        ("pellow dry gin", GIN),
    ],
)
def test_search_finds(screen, qtbot, words, title):
    line = screen.search.findChild(QLineEdit)
    line.clear()
    qtbot.keyClicks(line, words)
    found = titles(screen)
    assert title in found
    assert len(found) < len(screen.table.rows)
    assert screen.search.count_label.text() == f"{len(found)} of {len(screen.table.rows)} bottles"


def test_search_without_a_match_offers_to_clear(screen):
    screen.search.set_text("no such bottle anywhere")
    assert screen.list_stack.currentWidget() is screen.list_stack.no_match
    screen.list_stack.no_match.buttons[0].click()
    assert screen.list_stack.currentWidget() is screen.view
    assert len(titles(screen)) == len(screen.table.rows)


def test_kinds_part_the_shelf(screen):
    screen.kinds.chip("pantry").click()
    pantry = screen.shown.shown_rows()
    assert {row.bottle.product.unit for row in pantry} <= {"g", "each"}
    screen.kinds.chip("bottles").click()
    bottles = screen.shown.shown_rows()
    assert {row.bottle.product.unit for row in bottles} == {"ml"}
    assert pantry
    assert len(pantry) + len(bottles) == len(screen.table.rows)


@walked("state", ["open", "sealed", "empty"])
def test_states_filter(screen, state):
    screen.states.chip(state).click()
    shown = {row.bottle.level.state for row in screen.shown.shown_rows()}
    assert shown <= {state}
    expected = sum(row.bottle.level.state == state for row in screen.table.rows)
    assert len(titles(screen)) == expected


def test_low_or_due_are_few_and_so(screen):
    screen.states.chip("low").click()
    rows = screen.shown.shown_rows()
    assert 0 < len(rows) < len(screen.table.rows)
    assert all(row.low or row.due for row in rows)


def test_another_page_can_ask_for_a_bottle(page, screen):
    screen.kinds.choose("pantry")
    gin = bottle_named(page.bar, GIN)
    screen.show_thing(gin.id)
    assert screen.current.bottle.id == gin.id
    screen.show_thing("bourbon")
    assert set(titles(screen)) == {"Copperbend Straight bourbon"}


# The details


def test_details_say_everything_about_a_bottle(page, screen):
    gin = choose(page, GIN, "open")
    shown = texts(screen.detail)
    for words in ("315 ml", "of 700 ml, 45 % full", "London dry gin", "43 % vol", "24.50 EUR"):
        assert words in shown
    assert gin.product.barcode in shown
    steps = page.bar.inventory.history(gin.id)
    assert f"Ledger, {len(steps)} entries" in shown
    assert "Counted 315 ml" in shown
    assert "judged in tenths, ± 70 ml" in shown
    assert "leaves 570 ml; Request Stop, trial 1" in shown
    gauge = screen.detail.findChild(LevelGauge)
    assert gauge.reading.share == pytest.approx(0.45)
    line = screen.detail.findChild(LevelHistory)
    assert line.accessibleDescription().startswith("From 700 ml on ")


def test_details_warn_of_dates_and_allergens(page, screen):
    tree = page.bar.snapshot.knowledge.tree
    past = [row for row in screen.table.rows if row.past]
    for row, said in zip(past, map(use_by_in_words, past), strict=True):
        screen.choose(row.bottle.id)
        assert said and said in texts(screen.detail)
    assert any("Past its use-by date" in use_by_in_words(row) for row in past)
    milky = next(
        row for row in screen.table.rows if "milk" in tree[row.bottle.ingredient].allergens
    )
    screen.choose(milky.bottle.id)
    assert "Usually contains milk" in texts(screen.detail)


def test_a_long_ledger_is_shown_on_demand(page, screen):
    gin = choose(page, GIN, "open")
    for _pour in range(NEWEST):
        page.bar.inventory.pour(gin.id, 1.0, "a drop")
    assert texts(screen.detail).count("a drop") == NEWEST
    assert "Received 700 ml" not in texts(screen.detail)
    links = screen.detail.findChildren(LinkLabel)
    link = next(each for each in links if each.plain_text.startswith("Show all"))
    link.linkActivated.emit(link.links[0].target)
    assert "Received 700 ml" in texts(screen.detail)


@pytest.mark.parametrize("size", [(840, 640), (1096, 760)])
def test_details_fit_beside_the_list(bar, qtbot, tmp_path, size):
    with bottles_page(bar, qtbot, tmp_path, size) as page:
        for row in page.screen.table.rows:
            page.screen.choose(row.bottle.id)
            panel = page.screen.detail
            assert panel.widget().minimumSizeHint().width() <= panel.scrolled.viewport().width(), (
                row
            )


def test_long_names_keep_their_whole_words_within_reach(page, screen):
    name = "Very Slowly Distilled Gin from the Farthest Signal Box on the Whole Branch Line"
    draft = Label(name, "Pellow & Rudge", "london-dry-gin", 700.0)
    bottle = page.bar.inventory.receive(page.bar.inventory.add_product(draft).value.id).value
    screen.choose(bottle.id)
    index = screen.view.currentIndex().siblingAtColumn(BOTTLE)
    assert index.data(Qt.ItemDataRole.ToolTipRole) == f"Pellow & Rudge {name}"
    title = next(each for each in screen.detail.findChildren(QLabel) if each.text() == name)
    assert title.wordWrap()
    assert title.height() >= title.heightForWidth(title.width())


# Changes without a dialog


def test_open_and_undo(page, screen, sample_bar, clock):
    sealed = choose(page, GIN, "sealed")
    act(screen, "open")
    assert now(page, sealed).level.state == "open"
    assert page.toast.text == f"Opened {GIN}"
    assert ledger(sample_bar, sealed.id, clock)[-1].kind == "open"
    page.toast._button.click()
    assert now(page, sealed).level.state == "sealed"
    assert screen.current.bottle.id == sealed.id


def test_opening_an_open_bottle_says_why_not(page, screen):
    choose(page, GIN, "open")
    act(screen, "open")
    assert "is open already" in screen.banner.text
    screen.view.setCurrentIndex(screen.shown.index(4, 0))
    assert screen.banner.text == ""


def test_empty_and_undo(page, screen):
    gin = choose(page, GIN, "open")
    act(screen, "empty")
    assert now(page, gin).level.state == "empty"
    page.bar.undo()
    assert now(page, gin).level.amount == 315.0
    assert "315 ml" in texts(screen.detail)


def test_remove_and_undo(page, screen):
    gin = choose(page, GIN, "open")
    act(screen, "remove")
    assert gin.id not in {each.id for each in page.bar.snapshot.bottles}
    assert page.toast.text == f"Removed {GIN}"
    page.toast._button.click()
    assert now(page, gin).level.amount == 315.0


def test_receive_another_is_chosen_at_the_end_of_the_shelf(page, screen):
    choose(page, GIN, "open")
    act(screen, "again")
    newest = screen.current
    assert newest.bottle.product.title == GIN
    assert newest.place == len(screen.table.rows)
    assert newest.bottle.level.state == "sealed"


def test_move_along_the_shelf(page, screen):
    before = titles(screen)
    screen.view.setCurrentIndex(screen.shown.index(3, 0))
    act(screen, "up")
    moved = titles(screen)
    assert moved[2:4] == [before[3], before[2]]
    assert screen.current.place == 3
    act(screen, "down")
    assert titles(screen) == before
    page.bar.undo()
    assert titles(screen) == moved


def test_moving_passes_the_neighbour_in_view(page, screen):
    screen.kinds.choose("pantry")
    before = titles(screen)
    screen.view.setCurrentIndex(screen.shown.index(1, 0))
    act(screen, "up")
    assert titles(screen)[:2] == [before[1], before[0]]


def test_moving_asks_for_the_order_of_the_shelf(page, screen):
    before = [each.id for each in page.bar.snapshot.bottles]
    screen.view.sortByColumn(LEVEL, Qt.SortOrder.AscendingOrder)
    act(screen, "up")
    assert "order of the shelf" in screen.banner.text
    assert [each.id for each in page.bar.snapshot.bottles] == before
    screen.banner._button.click()
    assert screen.shown.sortColumn() == SHELF
    assert screen.banner.text == ""


def test_the_ends_of_the_shelf_stay(page, screen):
    screen.view.setCurrentIndex(screen.shown.index(0, 0))
    label = page.bar.undo_label
    act(screen, "up")
    assert page.bar.undo_label == label


# Changes with a dialog


def test_pour_with_a_note(page, screen, qtbot, sample_bar, clock):
    gin = choose(page, GIN, "open")
    act(screen, "pour")
    dialog = screen.dialog
    qtbot.keyClicks(dialog.amount, "2 oz")
    assert dialog.outcome.text() == "Leaves 256 of 700 ml"
    assert dialog.gauge.reading.expected == pytest.approx(0.45)
    qtbot.keyClicks(dialog.note, "trial 3")
    qtbot.keyClick(dialog.note, Qt.Key.Key_Return)
    assert screen.dialog is None
    last = ledger(sample_bar, gin.id, clock)[-1]
    assert (last.kind, last.note) == ("pour", "trial 3")
    assert last.amount == pytest.approx(59.147, abs=0.001)
    assert page.toast.text.startswith("Poured 59 ml of")
    page.toast._button.click()
    assert now(page, gin).level.amount == 315.0


def test_a_bare_number_is_in_the_bottles_unit(page, screen, qtbot):
    gin = choose(page, GIN, "open")
    act(screen, "waste")
    qtbot.keyClicks(screen.dialog.amount, "15")
    screen.dialog.accept_button.click()
    assert now(page, gin).level.amount == 300.0
    assert page.toast.text == f"Wasted 15 ml of {GIN}"


def test_pouring_more_than_is_left_is_refused_in_its_field(page, screen, qtbot):
    gin = choose(page, GIN, "open")
    act(screen, "pour")
    dialog = screen.dialog
    qtbot.keyClicks(dialog.amount, "400 ml")
    assert "85 ml more than the ledger says" in dialog.outcome.text()
    dialog.accept_button.click()
    assert dialog.isVisible()
    assert "Count it first" in dialog.problem("amount")
    assert dialog.amount.property("invalid") is True
    dialog.amount.clear()
    qtbot.keyClicks(dialog.amount, "40 ml")
    assert dialog.problem("amount") == ""
    dialog.accept_button.click()
    assert now(page, gin).level.amount == 275.0


@pytest.mark.parametrize(("text", "level"), [("+20 ml", 335.0), ("-15", 300.0), ("−1 cl", 305.0)])
def test_correct(page, screen, text, level):
    gin = choose(page, GIN, "open")
    act(screen, "correct")
    screen.dialog.amount.setText(text)  # no key types a real minus sign
    screen.dialog.accept_button.click()
    assert now(page, gin).level.amount == level


def test_a_correction_needs_its_sign(page, screen, qtbot):
    choose(page, GIN, "open")
    act(screen, "correct")
    dialog = screen.dialog
    qtbot.keyClicks(dialog.amount, "30 ml")
    dialog.accept_button.click()
    assert "begin with + for more" in dialog.problem("amount")


@walked(
    ("text", "reason"),
    [
        ("1.4", "a share of the bottle is 0 to 1"),
        ("-3", "below nothing"),
        ("30 g", "less than"),
        ("3 each", "is a number of pieces"),
        ("50 cm", "above the whole bottle"),
        ("900 ml", "is more than"),
        ("", "Write an amount such as"),
        ("lots", "cannot be read as an amount"),
    ],
)
def test_count_says_below_the_field_what_is_wrong(page, screen, qtbot, text, reason):
    gin = choose(page, GIN, "open")
    label = page.bar.undo_label
    act(screen, "count")
    dialog = screen.dialog
    qtbot.keyClicks(dialog.amount, text)
    dialog.accept_button.click()
    assert dialog.isVisible()
    assert reason in dialog.problem("amount")
    assert dialog.amount.accessibleDescription() == dialog.problem("amount")
    shown = dialog.fields["amount"].problem
    assert shown.height() >= shown.heightForWidth(shown.width())
    assert page.bar.undo_label == label
    assert now(page, gin).level.amount == 315.0
    dialog.reject()


def test_count_by_the_gauge(page, screen, qtbot, sample_bar, clock):
    gin = choose(page, GIN, "open")
    act(screen, "count")
    dialog = screen.dialog
    dialog.gauge.setFocus()
    qtbot.keyClick(dialog.gauge, Qt.Key.Key_Home)
    assert dialog.amount.text() == "0"
    for _tenth in range(3):
        qtbot.keyClick(dialog.gauge, Qt.Key.Key_Up)
    assert dialog.amount.text() == "0.3"
    assert dialog.outcome.text() == (
        "0.3: 210 ml ± 70. 105 ml less than expected: beyond the doubt of ± 99 ml"
    )
    dialog.accept_button.click()
    last = ledger(sample_bar, gin.id, clock)[-1]
    assert (last.kind, last.amount, last.method) == ("count", 210.0, "tenths")


def test_escape_changes_nothing(page, screen, qtbot):
    choose(page, GIN, "open")
    label = page.bar.undo_label
    act(screen, "pour")
    dialog = screen.dialog
    qtbot.keyClicks(dialog.amount, "20 ml")
    qtbot.keyClick(dialog.amount, Qt.Key.Key_Escape)
    assert screen.dialog is None
    assert page.bar.undo_label == label


def test_add_a_bottle_of_a_known_product(page, screen, qtbot):
    many = len(page.bar.snapshot.products)
    act(screen, "add")
    dialog = screen.dialog
    product = bottle_named(page.bar, GIN).product
    qtbot.keyClicks(dialog.edits["name"], "lamp")
    popup = dialog.edits["name"].completer()
    offered = [popup.completionModel().index(n, 0) for n in range(popup.completionCount())]
    index = next(each for each in offered if each.data().startswith(GIN))
    popup.activated[QModelIndex].emit(index)
    assert dialog.known == product
    assert dialog.edits["strength"].text() == "43"
    assert not dialog.edits["size"].isEnabled()
    qtbot.keyClicks(dialog.edits["level"], "0.5")
    qtbot.keyClicks(dialog.edits["use by"], "2027-01-31")
    dialog.accept_button.click()
    added = screen.current.bottle
    assert (added.product, added.level.amount) == (product, 350.0)
    assert str(added.use_by) == "2027-01-31"
    assert len(page.bar.snapshot.products) == many
    page.toast._button.click()
    assert added.id not in {each.id for each in page.bar.snapshot.bottles}


def test_another_name_is_another_product(page, screen, qtbot):
    act(screen, "add")
    dialog = screen.dialog
    dialog.choose_product(bottle_named(page.bar, GIN).product)
    qtbot.keyClicks(dialog.edits["name"], " II")
    assert dialog.known is None
    assert dialog.edits["size"].isEnabled()


def test_add_a_new_product(page, screen, qtbot):
    before = page.bar.snapshot
    act(screen, "add")
    dialog = screen.dialog
    alias = next(
        (alias, key)
        for key in before.knowledge.tree
        for alias in before.knowledge.tree[key].aliases
        if before.knowledge.tree[key].unit == "ml"
    )
    written = {"name": "Night Sleeper", "maker": "Hollow Lamp", "ingredient": alias[0]}
    written |= {"size": "50 cl", "strength": "41,5 %", "price": "19.90"}
    for name, text in written.items():
        qtbot.keyClicks(dialog.edits[name], text)
    dialog.accept_button.click()
    assert not dialog.isVisible()
    product = screen.current.bottle.product
    assert (product.title, product.ingredient) == ("Hollow Lamp Night Sleeper", alias[1])
    assert (product.size, product.abv_percent, product.price) == (500.0, 41.5, 19.9)
    page.toast._button.click()
    assert page.bar.snapshot.products == before.products
    assert page.bar.snapshot.bottles == before.bottles


def test_a_jar_is_taken_in_by_the_weight_on_it(page, screen, qtbot):
    act(screen, "add")
    dialog = screen.dialog
    for name, text in {"name": "Late Blossom", "ingredient": "honey", "size": "340 g"}.items():
        qtbot.keyClicks(dialog.edits[name], text)
    assert dialog.unit_label("size").text() == "= 237 ml"
    dialog.accept_button.click()
    assert screen.current.bottle.product.size == pytest.approx(237.26, abs=0.01)
    act(screen, "add")
    dialog = screen.dialog
    for name, text in {"name": "Cubes", "ingredient": "sugar cube", "size": "500 g"}.items():
        qtbot.keyClicks(dialog.edits[name], text)
    dialog.accept_button.click()
    assert "about 125 pieces; write how many there are." in dialog.problem("size")
    dialog.edits["size"].setText("125")
    assert dialog.unit_label("size").text() == "pieces"
    dialog.accept_button.click()
    assert screen.current.bottle.product.size == 125.0


def test_every_mistake_of_the_form_is_said_in_its_field(page, screen, qtbot):
    act(screen, "add")
    dialog = screen.dialog
    wrong = {"ingredient": "London dri gin", "size": "-3", "strength": "forty", "price": "x"}
    wrong |= {"use by": "tomorrow"}
    for name, text in wrong.items():
        qtbot.keyClicks(dialog.edits[name], text)
    dialog.accept_button.click()
    assert dialog.isVisible()
    for name in ("name", *wrong):
        assert dialog.problem(name), name
    assert "London dry gin" in dialog.problem("ingredient")
    assert dialog.focusWidget() is dialog.edits["name"]
    assert dialog.problem("maker") == ""


def test_what_the_bar_refuses_is_said_in_its_field(page, screen, qtbot):
    gin = bottle_named(page.bar, GIN).product
    act(screen, "add")
    dialog = screen.dialog
    written = {"name": gin.name, "maker": gin.maker, "ingredient": "London dry gin"}
    for name, text in (written | {"size": "700", "strength": "43"}).items():
        qtbot.keyClicks(dialog.edits[name], text)
    dialog.accept_button.click()
    assert "already a product" in dialog.problem("name")
    dialog.edits["name"].setText("Another gin")
    dialog.forgive("name")
    dialog.edits["strength"].setText("140")
    dialog.accept_button.click()
    assert "0 to 100 % vol" in dialog.problem("strength")


def test_ingredients_complete_on_aliases(page, screen):
    tree = page.bar.snapshot.knowledge.tree
    key, alias = next((key, tree[key].aliases[0]) for key in tree if tree[key].aliases)
    act(screen, "add")
    dialog = screen.dialog
    completer = dialog.edits["ingredient"].completer()
    completer.setCompletionPrefix(alias)
    offered = [completer.completionModel().index(n, 0) for n in range(completer.completionCount())]
    index = next(each for each in offered if each.data().startswith(alias))
    completer.activated[QModelIndex].emit(index)
    assert dialog.edits["ingredient"].text() == tree.name(key)
    assert completer.pathFromIndex(index) == tree.name(key)


# The whole page


def test_an_empty_bar_offers_a_beginning(qtbot, tmp_path, clock):
    with (
        Bar.open(tmp_path / "new.bar", clock=clock) as bar,
        bottles_page(bar, qtbot, tmp_path) as page,
    ):
        screen = page.screen
        empty = screen.list_stack.empty
        assert screen.list_stack.currentWidget() is empty
        assert empty.title.text() == "No bottles yet"
        with qtbot.waitSignal(screen.import_wanted):
            empty.buttons[1].click()
        for key in ("open", "pour", "remove", "again", "up"):
            act(screen, key)  # with nothing chosen, nothing happens
        assert bar.undo_label is None
        empty.buttons[0].click()
        dialog = screen.dialog
        for name, text in {"name": "First", "ingredient": "London dry gin"}.items():
            qtbot.keyClicks(dialog.edits[name], text)
        dialog.accept_button.click()
        assert screen.list_stack.currentWidget() is screen.view
        assert titles(screen) == ["First"]


def test_shortcuts_work_and_are_unique(page, screen, qtbot):
    gin = choose(page, GIN, "sealed")
    screen.focus_list()
    qtbot.keyClick(screen.view, "O", CTRL_SHIFT)
    assert now(page, gin).level.state == "open"
    keys = [each.toString() for action in screen.bar_actions for each in action.shortcuts()]
    assert len(keys) == len(set(keys))
    standard = (
        QKeySequence.StandardKey.Undo,
        QKeySequence.StandardKey.Redo,
        QKeySequence.StandardKey.Find,
        QKeySequence.StandardKey.Print,
        QKeySequence.StandardKey.Copy,
    )
    taken = {each.toString() for key in standard for each in QKeySequence.keyBindings(key)}
    assert not taken & set(keys)


CTRL_SHIFT = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


def test_the_context_menu_is_part_of_the_bar_menu(screen):
    listed = [action for action in screen.view.actions() if not action.isSeparator()]
    assert listed
    assert set(listed) <= set(screen.bar_actions)
    for action in screen.bar_actions:
        assert action.isSeparator() or action.text()


def test_everything_that_takes_the_focus_has_a_name(page, screen):
    choose(page, GIN, "open")
    for key in ("add", "pour", "count"):
        act(screen, key)
    found = [each for each in page.host.findChildren(QWidget) if takes_focus(each)]
    assert len(found) > 20
    for widget in found:
        spoken = QAccessible.queryAccessibleInterface(widget)
        assert spoken.text(QAccessible.Text.Name), widget


def takes_focus(widget: QWidget) -> bool:
    tabbed = widget.focusPolicy() & Qt.FocusPolicy.TabFocus == Qt.FocusPolicy.TabFocus
    own = not widget.objectName().startswith("qt_") and widget.focusProxy() is None
    return tabbed and own and widget.isVisible()


def test_five_hundred_bottles_are_shown_found_and_changed(qtbot, tmp_path, clock):
    """How long it takes is printed by `tests/benchmarks/test_large_bars.py`."""
    with Bar.open(tmp_path / "big.bar", clock=clock) as bar:
        bar.imports.bottles([imported(number) for number in range(500)])
        with bottles_page(bar, qtbot, tmp_path) as page:
            screen = page.screen
            assert len(titles(screen)) == 500
            screen.search.set_text("bourb")
            assert len(titles(screen)) == 167
            screen.search.set_text("")
            assert len(titles(screen)) == 500
            act(screen, "open")
            assert [each.level.state for each in bar.snapshot.bottles].count("open") == 1


def imported(number: int):
    kind = ("bourbon", "london-dry-gin", "dry-vermouth")[number % 3]
    draft = Label(f"Bottle {number}", "Hollow Lamp", kind, 700.0, price=float(number))
    return ListedBottle(number + 1, draft)
