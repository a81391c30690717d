"""The pieces every screen is built of."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QEnterEvent, QImage, QPainter, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QLineEdit,
    QPushButton,
    QTableView,
    QToolButton,
    QWidget,
)

from barkeep.desktop.look.theme import Theme
from barkeep.desktop.look.tones import read_tones
from barkeep.desktop.widgets.buttons import number_field
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import (
    LEVEL_ROLE,
    SUBTITLE_ROLE,
    VERDICT_ROLE,
    LevelDelegate,
    RowDelegate,
    VerdictDelegate,
)
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.details import DetailPanel, DetailRow, DetailSection, remove
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import ElidedLabel
from barkeep.desktop.widgets.levels import LevelGauge, LevelReading, draw_level, share_at
from barkeep.desktop.widgets.notices import SHOWN_MS, Banner, Toast
from barkeep.desktop.widgets.offered import Offered
from barkeep.desktop.widgets.search_field import SearchField
from barkeep.desktop.widgets.verdict_badge import VerdictBadge
from barkeep.domain.pouring.verdict import VERDICT_WORDS
from tests.desktop.audit import accessible_name, cut_off, focusable_without_name

LIGHT = read_tones("light")
ROOT = Path(__file__).resolve().parents[3]


@pytest.fixture(autouse=True)
def themed(qapp):
    """barkeep's own look, put back afterwards."""
    palette, sheet = qapp.palette(), qapp.styleSheet()
    theme = Theme(qapp, "light")
    yield theme
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)
    theme.deleteLater()


@pytest.fixture
def host(qtbot):
    """An active window to put things in."""
    window = QWidget()
    window.resize(800, 600)
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    return window


class StillTimer(QObject):
    """A clock that only goes when told to."""

    timeout = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.running: int | None = None

    def start(self, milliseconds: int) -> None:
        self.running = milliseconds

    def stop(self) -> None:
        self.running = None


def drawn(reading: LevelReading, width: int, height: int, around: int = 0) -> QImage:
    """A level on a plain ground, with room above and below for pointers."""
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    draw_level(painter, QRectF(0, around, width, height - 2 * around), reading, LIGHT)
    painter.end()
    return image


def inked(image: QImage, colour: str) -> list[tuple[int, int]]:
    """Where a colour is."""
    return [
        (x, y)
        for x in range(image.width())
        for y in range(image.height())
        if image.pixelColor(x, y).name() == colour
    ]


# Levels


@pytest.mark.parametrize("share", [0.1, 0.25, 0.5, 0.9, 1.0])
def test_a_gauge_is_filled_to_its_share(share):
    image = drawn(LevelReading(share), 200, 30)
    reached = max(x for x, _y in inked(image, LIGHT.liquid))
    assert reached == pytest.approx(share * 200, abs=3)


def test_a_bottle_fills_from_its_foot_and_rises_with_its_share():
    tops = []
    for share in (0.2, 0.5, 0.8):
        rows = [y for _x, y in inked(drawn(LevelReading(share), 80, 200), LIGHT.liquid)]
        assert max(rows) > 190
        tops.append(min(rows))
    assert tops[0] - tops[1] == pytest.approx(tops[1] - tops[2], abs=2)


def test_an_empty_one_holds_nothing():
    assert not inked(drawn(LevelReading(0.0), 80, 200), LIGHT.liquid)
    assert not inked(drawn(LevelReading(0.0), 200, 30), LIGHT.liquid)


def test_what_was_expected_is_marked_where_it_was():
    image = drawn(LevelReading(0.2, expected=0.6), 200, 60, around=20)
    places = [x for x, _y in inked(image, LIGHT.info)]
    assert sum(places) / len(places) == pytest.approx(120, abs=1)


def test_below_par_the_mark_turns_to_the_colour_of_danger():
    def marks(reading: LevelReading) -> tuple[bool, bool]:
        image = drawn(reading, 200, 60, around=20)
        return bool(inked(image, LIGHT.danger)), bool(inked(image, LIGHT.muted))

    assert marks(LevelReading(0.2, par=0.5)) == (True, False)
    assert marks(LevelReading(0.8, par=0.5)) == (False, True)


def test_a_doubt_shows_as_a_band():
    assert drawn(LevelReading(0.5, doubt=0.05), 80, 200) != drawn(LevelReading(0.5), 80, 200)


@pytest.mark.parametrize("size", [(80, 200), (200, 30)])
@pytest.mark.parametrize("share", [0.0, 0.3, 0.7, 1.0])
def test_a_point_stands_for_the_share_that_is_drawn_there(size, share):
    rect = QRectF(0, 0, *size)
    image = drawn(LevelReading(max(share, 0.01)), *size)
    found = inked(image, LIGHT.liquid)
    upright = size[1] > size[0]
    if share == 0.0:
        point = QPointF(size[0] / 2, size[1]) if upright else QPointF(0, 15)
    elif upright:
        point = QPointF(size[0] / 2, min(y for _x, y in found))
    else:
        point = QPointF(max(x for x, _y in found), 15)
    assert share_at(rect, point) == pytest.approx(share, abs=0.03)


def test_the_arrow_keys_pick_a_level(host, qtbot):
    gauge = LevelGauge(host, editable=True)
    gauge.show()
    gauge.show_reading(LevelReading(0.5), "Level 350 of 700 ml, 50 %")
    picked: list[float] = []
    gauge.picked.connect(picked.append)
    qtbot.keyClick(gauge, Qt.Key.Key_Up)
    qtbot.keyClick(gauge, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClick(gauge, Qt.Key.Key_End)
    qtbot.keyClick(gauge, Qt.Key.Key_Up)
    qtbot.keyClick(gauge, Qt.Key.Key_Home)
    assert picked == [0.6, 0.59, 1.0, 1.0, 0.0]


def test_a_click_picks_a_level_only_where_it_may(host, qtbot):
    for editable in (True, False):
        gauge = LevelGauge(host, editable=editable)
        gauge.resize(96, 168)
        gauge.show()
        picked: list[float] = []
        gauge.picked.connect(picked.append)
        qtbot.mouseClick(gauge, Qt.MouseButton.LeftButton, pos=gauge.rect().center())
        assert bool(picked) == editable


def test_a_gauge_says_its_level_in_words(host):
    gauge = LevelGauge(host, editable=True)
    gauge.show_reading(LevelReading(0.45), "Level 315 of 700 ml, 45 %")
    assert accessible_name(gauge) == "Level"
    assert gauge.accessibleDescription() == gauge.toolTip() == "Level 315 of 700 ml, 45 %"


# Verdicts


@pytest.mark.parametrize("verdict", VERDICT_WORDS)
def test_a_badge_has_room_for_its_word_and_says_what_it_means(verdict, host):
    badge = VerdictBadge(verdict, host)
    assert badge.accessibleName() == VERDICT_WORDS[verdict].name
    assert badge.accessibleDescription() == VERDICT_WORDS[verdict].meaning
    words = badge.fontMetrics().horizontalAdvance(VERDICT_WORDS[verdict].name)
    assert badge.sizeHint().width() >= words + 16 + 8


# Lists


@dataclass
class Shown:
    view: QTableView
    model: QStandardItemModel


@pytest.fixture
def listed(host):
    """A table with one row: words, a level, a verdict."""
    model = QStandardItemModel(1, 3)
    name, level = QStandardItem("Lamp Room dry gin"), QStandardItem("315 ml")
    verdict = QStandardItem("One short")
    name.setData("Pellow & Rudge", SUBTITLE_ROLE)
    level.setData(LevelReading(0.45), LEVEL_ROLE)
    verdict.setData("one_short", VERDICT_ROLE)
    for place, item in enumerate((name, level, verdict)):
        model.setItem(0, place, item)
    view = QTableView(host)
    view.setModel(model)
    for place, kind in enumerate((RowDelegate, LevelDelegate, VerdictDelegate)):
        view.setItemDelegateForColumn(place, kind(view))
    view.resize(700, 120)
    view.show()
    view.resizeColumnsToContents()
    return Shown(view, model)


def test_cells_have_room_for_what_they_draw(listed):
    view = listed.view
    words = view.fontMetrics().horizontalAdvance
    assert view.columnWidth(0) >= words("Lamp Room dry gin") + 16
    assert view.columnWidth(1) >= 92 + words("315 ml") + 16
    assert view.columnWidth(2) >= 24 + words("One short") + 16
    assert view.sizeHintForRow(0) >= 40


def test_cells_draw_level_and_verdict(listed):
    image = listed.view.viewport().grab().toImage()
    assert inked(image, LIGHT.liquid)
    assert inked(image, LIGHT.one_short)
    listed.model.item(0, 1).setData(LevelReading(0.0), LEVEL_ROLE)
    assert not inked(listed.view.viewport().grab().toImage(), LIGHT.liquid)


def test_the_keyboards_row_is_marked_at_its_beginning(listed, qtbot):
    before = inked(listed.view.viewport().grab().toImage(), LIGHT.accent)
    listed.view.setCurrentIndex(listed.model.index(0, 1))
    listed.view.setFocus()
    after = inked(listed.view.viewport().grab().toImage(), LIGHT.accent)
    assert not before
    assert {x for x, _y in after} == {0, 1, 2}


# Search


def test_every_key_stroke_searches(host, qtbot):
    field = SearchField("Search bottles…", host)
    field.show()
    asked: list[str] = []
    field.searched.connect(asked.append)
    field.take_focus()
    qtbot.keyClicks(host.focusWidget(), " gi")
    assert asked == ["", "g", "gi"]
    assert field.text == "gi"


def test_escape_clears_and_the_cross_goes_with_the_words(host, qtbot):
    field = SearchField("Search bottles…", host)
    field.show()
    field.take_focus()
    line = host.focusWidget()
    cross = next(each for each in line.actions() if each.text() == "Clear search")
    assert not cross.isVisible()
    qtbot.keyClicks(line, "rye")
    assert cross.isVisible()
    qtbot.keyClick(line, Qt.Key.Key_Escape)
    assert field.text == ""
    assert not cross.isVisible()


def test_the_count_is_shown_and_spoken(host):
    field = SearchField("Search bottles…", host)
    field.show_count(12, 60, "bottles")
    assert field.count_label.text() == "12 of 60 bottles"
    field.show_count(60, 60, "bottles")
    assert field.count_label.text() == "60 bottles"
    assert field.focusProxy().accessibleDescription() == "60 bottles"


def test_down_and_enter_lead_to_the_list(host, qtbot):
    field = SearchField("Search bottles…", host)
    field.show()
    field.take_focus()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Return):
        with qtbot.waitSignal(field.left):
            qtbot.keyClick(host.focusWidget(), key)


# Empty states, banners, toasts


def test_an_empty_state_offers_something_to_do(host, qtbot):
    state = EmptyState("picture-empty-shelf", "Nothing here", "Add one", "Add…", "Import…", host)
    first, second = state.buttons
    with qtbot.waitSignal(state.acted):
        first.click()
    with qtbot.waitSignal(state.acted_second):
        second.click()


def test_no_match_offers_to_clear_the_filter(host, qtbot):
    state = EmptyState.no_match("bottles", host)
    assert state.title.text() == "No bottles match"
    with qtbot.waitSignal(state.acted):
        state.buttons[0].click()
    assert state.buttons[0].text() == "Clear filter"


def test_a_banner_stays_until_it_is_dismissed(host, qtbot):
    banner = Banner(host)
    assert banner.isHidden()
    done: list[str] = []
    banner.say("The disk is full.", "warning", "Try again", lambda: done.append("again"))
    assert (banner.text, banner.kind) == ("The disk is full.", "warning")
    assert accessible_name(banner) == "The disk is full."
    act, cross = banner.findChild(QPushButton), banner.findChildren(QWidget)[-1]
    act.click()
    assert done == ["again"]
    assert not banner.isHidden()
    cross.click()
    assert banner.isHidden()
    assert banner.text == ""


def test_a_toast_goes_when_its_time_is_up(host):
    timer = StillTimer()
    toast = Toast(host, timer)
    toast.say("Bottle removed")
    assert timer.running == SHOWN_MS
    assert toast.text == "Bottle removed"
    timer.timeout.emit()
    assert toast.text == ""


def test_a_toast_waits_while_the_pointer_is_over_it(host):
    timer = StillTimer()
    toast = Toast(host, timer)
    toast.say("Bottle removed")
    place = QPointF(4, 4)
    QApplication.sendEvent(toast, QEnterEvent(place, place, place))
    assert timer.running is None
    QApplication.sendEvent(toast, QEvent(QEvent.Type.Leave))
    assert timer.running == SHOWN_MS


def test_a_toasts_button_acts_once_and_ends_it(host):
    toast = Toast(host, StillTimer())
    done: list[str] = []
    toast.say("Bottle removed", "Undo", lambda: done.append("undone"))
    toast.findChild(QPushButton).click()
    assert done == ["undone"]
    assert toast.text == ""


def test_a_new_toast_takes_the_place_and_the_action_of_the_old(host):
    toast = Toast(host, StillTimer())
    toast.say("One", "Undo", lambda: pytest.fail("the first one's action"))
    toast.say("Two")
    assert toast.text == "Two"
    assert toast.findChild(QPushButton).isHidden()


@pytest.mark.parametrize("width", [360, 800, 1600])
@pytest.mark.parametrize("words", ["Saved", "A bottle was counted again and again. " * 4])
def test_a_toast_is_bottom_centre_and_whole(host, width, words):
    toast = Toast(host, StillTimer())
    toast.say(words, "Undo", lambda: None)
    host.resize(width, 500)
    assert abs(toast.geometry().center().x() - host.rect().center().x()) <= 1
    assert host.rect().contains(toast.geometry())
    assert toast.geometry().bottom() > 450
    assert cut_off(toast) == []


def test_escape_in_a_toast_sends_it_away(host, qtbot):
    toast = Toast(host, StillTimer())
    toast.say("Bottle removed", "Undo", lambda: None)
    qtbot.keyClick(toast, Qt.Key.Key_Escape)
    assert toast.isHidden()


# Chips, details, labels


def test_one_chip_is_on_and_the_arrow_keys_walk(host, qtbot):
    chips = FilterChips("Stand-ins", CLOSENESS, "close", host)
    chips.show()
    told: list[str] = []
    chips.chosen.connect(told.append)
    chips.chip("close").setFocus()
    qtbot.keyClick(chips.chip("close"), Qt.Key.Key_Right)
    assert (chips.choice, told) == ("loose", ["loose"])
    qtbot.keyClick(chips.chip("loose"), Qt.Key.Key_Left)
    assert (chips.choice, told) == ("close", ["loose", "close"])
    chips.choose("exact")
    assert told[-1] == "exact"
    assert [chips.chip(key).isChecked() for key, *_rest in CLOSENESS] == [True, False, False]


def test_tab_lands_on_the_chip_that_is_on(host, qtbot):
    before = QLineEdit(host)
    chips = FilterChips("Stand-ins", CLOSENESS, "loose", host)
    chips.move(0, 60)
    before.show()
    chips.show()
    before.setFocus()
    qtbot.keyClick(before, Qt.Key.Key_Tab)
    assert chips.chip("loose").hasFocus()
    chips.choose("exact")
    before.setFocus()
    qtbot.keyClick(before, Qt.Key.Key_Tab)
    assert chips.chip("exact").hasFocus()


def test_chips_keep_their_words_where_there_is_no_room(host):
    chips = FilterChips("Stand-ins", CLOSENESS, "close", host)
    chips.resize(60, 30)
    chips.show()
    chips.adjustSize()
    assert cut_off(chips) == []


def sections() -> tuple[DetailSection, ...]:
    long = "A very long explanation of why this stands in for that, word after word. " * 5
    rows = (
        DetailRow(long, picture="verdict-ready", tone="ready", label="Ready", note=long),
        DetailRow("Pellow & Rudge", "Maker"),
        DetailRow(long),
    )
    return (DetailSection("What goes in", rows), DetailSection("Method", rows))


@pytest.mark.parametrize("width", [264, 340, 700])
def test_details_wrap_and_are_never_cut(host, qtbot, width):
    panel = DetailPanel("Bottle", host)
    panel.resize(width, 400)
    panel.show()
    often = [Offered(words, lambda: None) for words in ("Count…", "Pour…", "Receive")]
    acts = DetailActs(tuple(often))
    panel.show_details("Outer Buoy navy-strength gin", "Grey Ferry", sections(), acts=acts)
    qtbot.waitUntil(lambda: panel.widget().height() > 400)
    assert panel.widget().width() <= panel.scrolled.viewport().width()
    assert cut_off(panel) == []


def test_new_details_take_the_place_of_the_old(host):
    panel = DetailPanel("Bottle", host)
    panel.show_details("One", "", sections())
    panel.show_details("Two")
    assert said_by(panel) == ["Two"]
    panel.show_details("Three", "", sections())
    afresh = DetailPanel("Bottle", host)
    afresh.show_details("Three", "", sections())
    assert said_by(panel) == said_by(afresh) and len(said_by(panel)) > 3
    panel.clear()
    assert said_by(panel) == []
    assert not any(each.isVisibleTo(panel) for each in panel.findChildren(QLabel))


def said_by(panel) -> list[str]:
    """What the details say, top to bottom; what is made for other facts says nothing."""
    labels = panel.findChildren(QLabel)
    return [each.text() for each in labels if each.text()]


def test_an_elided_label_explains_itself_only_where_it_must(host):
    label = ElidedLabel("A name that is rather long for where it stands", host)
    label.show()
    label.resize(90, 20)
    assert label.shown_text.endswith("…")
    assert label.toolTip() == label.text()
    label.resize(600, 20)
    assert label.shown_text == label.text()
    assert label.toolTip() == ""


def test_a_number_field_keeps_its_text_off_the_frame(host):
    field = number_field("Serves", 1, 99, host)
    assert (field.minimum(), field.maximum(), accessible_name(field)) == (1, 99, "Serves")
    assert field.findChild(QLineEdit).textMargins().left() >= 4


def test_whatever_takes_the_focus_has_a_name(host):
    SearchField("Search bottles…", host).show()
    FilterChips("Stand-ins", CLOSENESS, "close", host).show()
    LevelGauge(host, editable=True).show()
    panel = DetailPanel("Bottle", host)
    panel.show()
    banner = Banner(host)
    banner.say("Something", "error", "Do it", lambda: None)
    toast = Toast(host, StillTimer())
    toast.say("Something", "Undo", lambda: None)
    assert focusable_without_name(host) == []


class TestSearchProblems:
    def test_a_problem_is_said_below_the_words_and_taken_back(self, qtbot):
        field = SearchField("Search…")
        qtbot.addWidget(field)
        field.show()
        field.show_problem("That finds nothing.")
        label = next(each for each in field.findChildren(QLabel) if each.text() == field.problem)
        assert label.isVisible() and label.y() > 0
        assert field.focusProxy().accessibleDescription() == "That finds nothing."
        field.show_count(3, 9, "specs")
        assert field.focusProxy().accessibleDescription() == "That finds nothing."
        field.show_problem("")
        assert not label.isVisible()
        field.show_count(3, 9, "specs")
        assert field.focusProxy().accessibleDescription() == "3 of 9 specs"

    def test_help_is_there_only_where_there_is_some(self, qtbot):
        plain = SearchField("Search…")
        qtbot.addWidget(plain)
        assert plain.findChildren(QToolButton) == plain.focusProxy().findChildren(QToolButton)


class TestTakenOut:
    def test_it_stays_whole_until_qt_is_done_with_it(self, host):
        """Without a parent the last name for it took it away in the midst of Qt's work."""
        gone: list[str] = []
        removed = QLabel("Beside its parent", host)
        removed.destroyed.connect(lambda: gone.append("destroyed"))
        remove(removed)
        assert removed.isHidden()
        del removed
        assert gone == []
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        assert gone == ["destroyed"]

    def test_no_widget_of_the_desktop_is_left_without_a_parent(self):
        """Layouts may be; `parts` moves two of them."""
        found = {
            path.name
            for path in (ROOT / "barkeep" / "desktop").rglob("*.py")
            if "setParent(None)" in path.read_text(encoding="utf-8")
        }
        assert found == {"parts.py"}
