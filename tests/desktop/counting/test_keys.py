"""What a bartender types along the shelf and in a shoot's log, begun at the real main window.

One table for both places: a key means the same in both, and how fast keys come means nothing.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from barkeep.desktop.counting.rows import COUNTED as COUNTED_ON_SHELF
from barkeep.desktop.shell.main_window import MainWindow
from barkeep.desktop.shoots.log import COUNTED as COUNTED_IN_LOG
from barkeep.desktop.shoots.log import SPILLED
from barkeep.desktop.widgets.keys import KeyLegend
from barkeep.domain.bottles.bottle import Bottle, Label
from tests.desktop.count_keys import type_keys
from tests.desktop.pages import do_in_details
from tests.how_much import some_of

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]


EXPECTED = "as expected"

RUNS: dict[str, tuple[str, dict[int, float | str], int]] = {
    # what is typed, what is counted then (of the bottle, in words, or as expected), where one is
    "a run of keys": ("758F36", {0: 0.7, 1: 0.5, 2: 0.8, 3: 1.0, 4: 0.3, 5: 0.6}, 6),
    "one digit": ("7", {0: 0.7}, 1),
    "nought is empty": ("0", {0: 0.0}, 1),
    "ten is two bottles": ("10", {0: 0.1, 1: 0.0}, 2),
    "small and capital": ("fFeE", {0: 1.0, 1: 1.0, 2: 0.0, 3: 0.0}, 4),
    "as expected": ("<Space><Space>", {0: EXPECTED, 1: EXPECTED}, 2),
    "mixed": ("7<Space>5E<Space>f", {0: 0.7, 1: EXPECTED, 2: 0.5, 3: 0.0, 4: EXPECTED, 5: 1.0}, 6),
    "taken back": ("7<Back>", {}, 0),
    "taken back and right": ("7<Back>5", {0: 0.5}, 1),
    "two taken back": ("75<Back><Back>3", {0: 0.3}, 1),
    "nothing to take back": ("<Back><Back>4", {0: 0.4}, 1),
    "millilitres": ("<Enter>315 ml<Enter>", {0: "315 ml"}, 1),
    "no space": ("<Enter>315ml<Enter>", {0: "315 ml"}, 1),
    "ounces": ("<Enter>10 oz<Enter>", {0: "296 ml"}, 1),
    "a share with a point": (".45<Enter>", {0: 0.45}, 1),
    "a share with a comma": (",45<Enter>", {0: 0.45}, 1),
    "a share after Enter": ("<Enter>.45<Enter>", {0: 0.45}, 1),
    "a share with nought and comma": ("<Enter>0,45<Enter>", {0: 0.45}, 1),
    "a share with nought and point": ("<Enter>0.45<Enter>", {0: 0.45}, 1),
    "a digit after an amount": ("<Enter>315 ml<Enter>7", {0: "315 ml", 1: 0.7}, 2),
    "an amount after digits": ("75<Enter>250 ml<Enter>F", {0: 0.7, 1: 0.5, 2: "250 ml", 3: 1.0}, 4),
    "wrong in an amount": ("<Enter>325<Back><Back>15 ml<Enter>", {0: "315 ml"}, 1),
    "an amount taken back": ("<Enter>315 ml<Enter><Back>8", {0: 0.8}, 1),
    "given up": ("<Enter>315 ml<Esc>", {}, 0),
    "given up and typed": ("<Enter>315<Esc>7", {0: 0.7}, 1),
    "a share given up": (".4<Esc>4", {0: 0.4}, 1),
    "given up over a count": ("7<Up><Enter>315 ml<Esc>", {0: 0.7}, 0),
    "letters in an amount": ("<Enter>7F<Esc>", {}, 0),
    "an amount with pad": ("<pad Enter><pad 3><pad 1><pad 5> ml<pad Enter>", {0: "315 ml"}, 1),
    "the number pad": ("<pad 7><pad 5>", {0: 0.7, 1: 0.5}, 2),
    "the point of the pad": ("<pad .><pad 4><pad 5><pad Enter>", {0: 0.45}, 1),
    "the comma of the pad": ("<pad ,><pad 4><pad 5><pad Enter>", {0: 0.45}, 1),
    "digits above the letters": ("<shifted 7><shifted 5>", {0: 0.7, 1: 0.5}, 2),
    "shifted letters": ("<shifted F><shifted E>", {0: 1.0, 1: 0.0}, 2),
    "a digit held down": ("<held 7>", {0: 0.7}, 1),
    "a letter held down": ("<held f>5", {0: 1.0, 1: 0.5}, 2),
    "Space held down": ("<held Space>", {0: EXPECTED}, 1),
    "Backspace held down": ("755<held Back>", {0: 0.7, 1: 0.5}, 2),
    "Ctrl with a digit": ("<Ctrl 7>", {}, 0),
    "other letters": ("xyq7", {0: 0.7}, 1),
    "a digit of another kind": ("²٣7", {0: 0.7}, 1),
    "counted again": ("7<Up>3", {0: 0.3}, 1),
    "one passed over": ("7<Down>3", {0: 0.7, 2: 0.3}, 3),
    "back over what is counted": ("75<Up><Up>9<Back>", {1: 0.5}, 0),
}
"""Written down before the code was read; `<pad 7>` and the like as in `count_keys`."""

ENDS: dict[str, tuple[str, list[float | str | None], int]] = {
    # the same, for the last two bottles and how far one is from the last
    "the last": ("<End>4", [None, 0.4], 0),
    "the last taken back": ("<End>4<Back>", [None, None], 0),
    "the last two": ("<End><Up>F4", [1.0, 0.4], 0),
    "the last two taken back": ("<End><Up>F4<Back><Back>", [None, None], 1),
    "the last one again": ("<End>4<Back>6", [None, 0.6], 0),
    "the last, exactly": ("<End><Enter>100 ml<Enter>", [None, "100 ml"], 0),
}


@pytest.fixture
def window(open_window, qtbot) -> MainWindow:
    """The window over the sample bar."""
    return small(open_window(parts_open=False), qtbot)


def small(shown: MainWindow, qtbot) -> MainWindow:
    shown.resize(1024, 640)
    settle(shown, qtbot)
    return shown


def activate(shown: QWidget, qtbot) -> None:
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()


def settle(window, qtbot) -> None:
    qtbot.waitUntil(lambda: not window.background.is_busy, timeout=20_000)
    QApplication.processEvents()


@dataclass(frozen=True)
class Place:
    """Where bottles are counted: what its cells say, which bottle one is at, all its words.

    `afresh` leaves it with nothing counted and goes there again.
    """

    cells: Callable[[], list[str]]
    row: Callable[[], int]
    bottles: list[Bottle]
    expected: list[float]
    words: Callable[[], list[str]]
    afresh: Callable[[], Place]


def count_shelf(window, qtbot) -> None:
    """As the Bar menu does."""
    window.show_page("bottles")
    settle(window, qtbot)
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(window, Qt.Key.Key_C, both)
    settle(window, qtbot)


def shelf(window, qtbot) -> Place:
    """Count the shelf, from the Bottles page."""
    count_shelf(window, qtbot)
    counting = window.current.counting
    rows = counting.table.rows
    assert rows

    def cells() -> list[str]:
        model = counting.view.model()
        return [str(model.index(n, COUNTED_ON_SHELF).data()) for n in range(model.rowCount())]

    def afresh() -> Place:
        counting.start_afresh()
        type_keys("<Esc>")
        assert not window.current.is_counting
        return shelf(window, qtbot)

    return Place(
        cells,
        lambda: counting.view.row,
        [each.bottle for each in rows],
        [each.expected for each in rows],
        lambda: said(counting),
        afresh,
    )


def log(window, qtbot) -> Place:
    """The log of the shoot that is filmed, from the Shoots page."""
    window.show_page("shoots")
    settle(window, qtbot)
    screen = window.current
    (filmed,) = [each for each in window.bar.snapshot.shoots if each.state == "filmed"]
    screen.show_thing(filmed.id)
    settle(window, qtbot)
    do_in_details(screen, "Log it…", qtbot)
    dialog = screen.dialog
    activate(dialog, qtbot)
    qtbot.waitUntil(dialog.table.hasFocus)
    rows = dialog.table.model()
    left = [each.expected for each in dialog.draft.rows()]

    def afresh() -> Place:
        dialog.start_afresh()
        type_keys("<Esc>")
        assert not dialog.isVisible()
        return log(window, qtbot)

    return Place(
        lambda: [
            str(rows.index(n, COUNTED_IN_LOG, QModelIndex()).data() or "")
            for n in range(rows.rowCount())
        ],
        lambda: dialog.table.currentRow(),
        [each.bottle for each in left],
        [each.expected for each in left],
        lambda: said(dialog),
        afresh,
    )


def said(widget: QWidget) -> list[str]:
    """Every word it shows."""
    return [each.text() for each in widget.findChildren(QLabel) if each.isVisible()]


PLACES = {"shelf": shelf, "log": log}


@pytest.fixture(params=list(PLACES))
def place(request, window, qtbot) -> Place:
    return PLACES[request.param](window, qtbot)


def read(place: Place, row: int, counted: float | str) -> str:
    """What the cell says for a share of the bottle, an amount, or what is expected."""
    if isinstance(counted, str) and counted != EXPECTED:
        return counted
    product = place.bottles[row].product
    amount = place.expected[row] if counted == EXPECTED else product.size * float(counted)
    return f"{amount:.0f} ml" if product.unit == "ml" else f"{amount:.0f}"


TRIED_IN = {"shelf": list(RUNS), "log": some_of(list(RUNS), 4)}
"""The log counts by the same keys as the shelf, so that a few of the runs tell."""


@pytest.mark.parametrize("name", PLACES)
def test_runs_of_keys(name, window, qtbot, subtests):
    place = PLACES[name](window, qtbot)
    for run in TRIED_IN[name]:
        with subtests.test(run):
            keys, counted, row = RUNS[run]
            before = place.cells()
            type_keys(keys)
            wanted = [
                read(place, n, counted[n]) if n in counted else untouched
                for n, untouched in enumerate(before)
            ]
            assert place.cells() == wanted
            assert place.row() == row
        place = place.afresh()


def test_the_last_bottles(place, subtests):
    for name, (keys, counted, from_last) in ENDS.items():
        with subtests.test(name):
            before = place.cells()
            last = len(before) - 1
            type_keys(keys)
            assert place.cells()[-2:] == [
                before[n] if each is None else read(place, n, each)
                for n, each in zip((last - 1, last), counted, strict=True)
            ]
            assert place.row() == last - from_last
        place = place.afresh()


def test_pauses_between_keys_mean_nothing(place):
    """A second from one to the next, or none at all."""
    type_keys("73<Back>F", pause_ms=1000)
    assert place.cells()[:2] == [read(place, 0, 0.7), read(place, 1, 1.0)]
    type_keys("<Enter>25", pause_ms=1000)
    type_keys("0 ml<Enter>8")
    assert place.cells()[2:4] == ["250 ml", read(place, 3, 0.8)]


def test_pieces_in_the_log_are_counted_not_judged(window, qtbot):
    place = log(window, qtbot)
    pieces = next(n for n, each in enumerate(place.bottles) if each.product.unit == "each")
    type_keys("<Down>" * pieces + "4<Enter>")
    assert place.cells()[pieces] == "4"
    assert place.row() == pieces + 1


def test_a_round_and_a_spill_between_the_counts(window, qtbot):
    place = log(window, qtbot)
    dialog = window.current.dialog
    type_keys("7+S20 ml<Enter>5")
    assert place.cells()[:2] == [read(place, 0, 0.7), read(place, 1, 0.5)]
    assert [each.value() for each in dialog.made] == [3, 3, 3]
    assert dialog.table.item(1, SPILLED).text() == "20 ml"


def test_a_letter_that_means_nothing_says_what_to_do(place):
    type_keys("3m")
    assert any("m is no key here" in each and "Enter first" in each for each in place.words())


def test_both_legends_say_every_key(window, qtbot):
    told = []
    for shown in (shelf, log):
        shown(window, qtbot)
        legends = [w for t in QApplication.topLevelWidgets() for w in t.findChildren(KeyLegend)]
        told += [each.accessibleDescription() for each in legends if each.isVisible()]
    shared = ("0 – 9: tenths", "F: full", "E: empty", "Space: as expected", "Backspace: back")
    for words in told[0], told[-1]:
        for key in (*shared, "Enter: exactly"):
            assert key in words
    assert "S: a spill" in told[-1]


def test_escape_in_the_log_asks_before_counts_are_lost(window, qtbot):
    place = log(window, qtbot)
    dialog = window.current.dialog
    type_keys("75<Enter>12 whatever<Enter><Esc>")
    question = dialog.question
    assert question.text() == "Leave 2 counts and 1 amount that could not be read unwritten?"
    assert question.defaultButton().text() == "&Keep counting"
    activate(question, qtbot)
    QTest.keyClick(question, Qt.Key.Key_Return)
    assert dialog.isVisible() and dialog.question is None
    assert place.cells()[:3] == [read(place, 0, 0.7), read(place, 1, 0.5), "12 whatever"]
    activate(dialog, qtbot)
    type_keys("<Esc>")
    activate(dialog.question, qtbot)
    QTest.keyClick(dialog.question, Qt.Key.Key_Escape)
    assert dialog.isVisible()
    QTest.mouseClick(dialog.cancel_button, Qt.MouseButton.LeftButton)
    discard = next(each for each in dialog.question.buttons() if each.text() == "&Discard")
    QTest.mouseClick(discard, Qt.MouseButton.LeftButton)
    assert not dialog.isVisible()
    assert window.bar.undo_label is None


def test_escape_in_a_cell_gives_up_that_cell_alone(window, qtbot, subtests):
    """Qt warns, and so fails this, of a field that is no longer of the list."""
    place = log(window, qtbot)
    for keys in (
        "<Enter>31<Esc>",
        ".4<Esc>",
        "S20 ml<Esc>",
        "<Enter>plenty<Enter><Enter>more<Esc><Enter><Esc>",
        "5<Up><Enter>31<Esc><Enter>40 ml<Esc>",
        "<Enter>40 ml<Enter><Enter><Esc>S<Esc>",
    ):
        with subtests.test(keys):
            dialog = window.current.dialog
            type_keys(keys)
            assert dialog.isVisible() and dialog.question is None
            assert dialog.table.hasFocus()
        place = place.afresh()


def test_escape_leaves_an_untouched_log_at_once(window, qtbot):
    log(window, qtbot)
    dialog = window.current.dialog
    type_keys("7<Back><Esc>")
    assert not dialog.isVisible()


def test_escape_leaves_the_shelf_and_its_counts_are_still_there(window, qtbot):
    shelf(window, qtbot)
    type_keys("75<Esc>")
    screen = window.current
    assert not screen.is_counting
    assert "2 bottles counted and not written down yet." in screen.banner.text
    again = shelf(window, qtbot)
    assert again.cells()[:2] == [read(again, 0, 0.7), read(again, 1, 0.5)]


def test_five_bottles_that_were_just_bought_are_counted_sealed_as_they_are(
    empty_bar, open_window, qtbot
):
    draft = Label("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0)
    product = empty_bar.inventory.add_product(draft).value
    for _each in range(5):
        empty_bar.inventory.receive(product.id)
    window = small(open_window(over=empty_bar, parts_open=False), qtbot)
    count_shelf(window, qtbot)
    assert window.current.counting.summary.text() == "0 of 5 bottles counted"
    assert not window.current.counting.everything.isChecked()
    type_keys("F<Space><Space><Space><Space>")
    type_keys("<Ctrl Enter>")
    settle(window, qtbot)
    type_keys("<Enter>")
    settle(window, qtbot)
    assert not window.current.is_counting
    window.activateWindow()  # as a window manager does once the dialog is gone
    bottles = empty_bar.snapshot.bottles
    assert all(each.level.counted for each in bottles)
    assert [each.level.state for each in bottles].count("sealed") >= 4
    # What was counted and is sealed still is not new: the next count begins without it.
    count_shelf(window, qtbot)
    words = said(window.current.counting)
    assert "5 bottles, none open" in words and not any("0 of 0" in each for each in words)
    type_keys("<Esc>")
    assert not window.current.is_counting
    count_shelf(window, qtbot)
    type_keys("<Space>")  # shows all of them
    type_keys("F<Space>")
    assert window.current.counting.summary.text().startswith("2 of 5 bottles counted")


# An amount that is being typed, and something else is done


@pytest.fixture
def begun(window, qtbot):
    """The count of the shelf in the real window, an amount begun for its first bottle."""
    page = window.show_page("bottles")
    window.current.count_shelf()
    type_keys("<Enter>333 ml")
    assert page.counting.view.is_entering
    return page


def click_on(page, row, qtbot):
    view = page.counting.view
    place = view.visualRect(view.model().index(row, 0)).center()
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)


def counted_ml(page):
    return {key: round(each.amount) for key, each in page.count.levels.items()}


def test_a_click_on_another_bottle_takes_it_over(begun, qtbot):
    first = begun.counting.present.bottle.id
    click_on(begun, 2, qtbot)
    assert counted_ml(begun) == {first: 333}
    assert begun.counting.view.row == 2


def test_a_click_does_not_lose_what_cannot_be_read(begun, qtbot, window):
    type_keys(" of it")
    click_on(begun, 2, qtbot)
    view = begun.counting.view
    assert (view.row, view.entry.text(), counted_ml(begun)) == (0, "333 ml of it", {})
    assert "333 ml of it" in view.problem.text()


@pytest.mark.parametrize("leave", ["button", "menu"])
def test_leaving_takes_it_over(begun, leave, window):
    first = begun.counting.present.bottle.id
    if leave == "button":
        begun.counting.leave_button.click()
    else:
        begun.actions_by_key["leave"].trigger()
    assert not begun.is_counting and counted_ml(begun) == {first: 333}
    assert "1 bottle counted and not written down yet." in begun.banner.text


def test_leaving_waits_for_what_cannot_be_read(begun, window):
    type_keys(" of it")
    begun.counting.leave_button.click()
    assert begun.is_counting and begun.counting.view.entry.text() == "333 ml of it"


def test_another_change_of_the_bar_leaves_it_as_it_is(begun, window):
    settings = window.bar.snapshot.settings
    window.bar.settings.change(replace(settings, currency="GBP"))
    assert begun.counting.view.is_entering
    assert begun.counting.view.entry.text() == "333 ml"
