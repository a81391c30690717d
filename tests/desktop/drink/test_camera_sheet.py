"""The sheet on camera: keys, taps, what is read, and that everything fits."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QFontMetrics

from barkeep.application.publishing import camera_drinks, camera_drinks_of
from barkeep.desktop.drink.camera_sheet import (
    AHEAD,
    CAPITAL_SHARE,
    DONE,
    LIST_GAP,
    NOW,
    CameraSheet,
)
from barkeep.documents.printed.camera import CameraDrink, CameraStep

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)
Keys = Qt.Key


@pytest.fixture
def sheet(bar, qtbot):
    shoot = next(each for each in bar.snapshot.shoots if each.state == "filmed")
    return shown(camera_drinks_of(shoot, bar.snapshot), qtbot)


def shown(drinks, qtbot, size=(1024, 640)):
    made = CameraSheet(drinks)
    made.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
    qtbot.addWidget(made)
    made.resize(*size)
    made.show()
    return made


def test_stepped_by_keys(sheet, qtbot):
    assert sheet.step.text == "Drift Fence" and "2 serves" in sheet.step.below
    for key, text in (
        (Keys.Key_Space, "1 ½ oz oude genever"),
        (Keys.Key_Right, "½ oz dry vermouth"),
        (Keys.Key_Backspace, "1 ½ oz oude genever"),
        (Keys.Key_N, "White Cutting"),
        (Keys.Key_Up, "Drift Fence"),
        (Keys.Key_PageUp, "Drift Fence"),
    ):
        qtbot.keyClick(sheet, key)
        assert sheet.step.text == text
    qtbot.keyClick(sheet, Keys.Key_Escape)
    assert not sheet.isVisible()


def test_a_tap_anywhere_goes_on_and_at_the_left_back(sheet, qtbot):
    for where in (QPoint(1000, 20), QPoint(500, 600)):
        qtbot.mouseClick(sheet, Qt.MouseButton.LeftButton, pos=where)
    assert sheet.step.line == 1
    qtbot.mouseClick(sheet, Qt.MouseButton.LeftButton, pos=QPoint(20, 300))
    assert sheet.step.line == 0


def test_the_list_marks_what_is_done_and_the_reader_hears_it(sheet, qtbot):
    for _ in range(2):
        qtbot.keyClick(sheet, Keys.Key_Space)
    assert [mark for mark, _line in sheet.marks()] == [DONE, NOW, AHEAD, AHEAD, AHEAD]
    assert sheet.marks()[1][1] == "½ oz (15 ml) dry vermouth"
    assert sheet.accessibleName() == "½ oz dry vermouth 15 ml"
    assert sheet.place.startswith("Drink 1 of 3: Drift Fence")


def test_the_last_step_of_all_stays(sheet, qtbot):
    for _ in range(200):
        sheet.go_on()
    assert sheet.drink.name == "Brazier"
    assert sheet.step is sheet.drink.steps[-1]


def test_raw_egg_is_said(bar):
    (drink,) = camera_drinks([(bar.specs.get("Drift Fence"), 1)], bar.snapshot)
    words = " ".join(each.text for each in drink.steps)
    assert "Allergens: " in words and "egg" in words


def test_a_stand_in_is_read_out(bar):
    from barkeep.domain.shoots.plan import plan, rescued

    shoot = next(each for each in bar.snapshot.shoots if each.state == "planned")
    saved = rescued(shoot, plan(shoot, bar.snapshot).rescues[0])
    drink = camera_drinks_of(saved, bar.snapshot)[1]
    assert "1 ⅛ oz (32.5 ml) blanco tequila, in place of mezcal" in drink.lines


@pytest.mark.parametrize("size", [(480, 320), (1024, 600), (1024, 640), (1920, 1080)])
def test_everything_fits(qtbot, size):
    name = "a liqueur with a name of about sixty letters, from a far valley"
    lines = tuple(f"¾ oz (22.5 ml) {name}" for _ in range(14))
    steps = tuple(CameraStep(f"¾ oz {name}", "22.5 ml", number) for number in range(14))
    sheet = shown([CameraDrink(name, lines, (CameraStep(name), *steps))], qtbot, size)
    sheet.go_on()
    sheet.grab()
    wrap = int(Qt.TextFlag.TextWordWrap)
    area = sheet.text_area()
    used = QFontMetrics(sheet.text_font()).boundingRect(area, wrap, sheet.step.text)
    assert used.height() <= area.height() and used.width() <= area.width()
    room, metrics = sheet.list_area(), QFontMetrics(sheet.list_font())
    each = [metrics.boundingRect(room, wrap, f"{mark} {line}") for mark, line in sheet.marks()]
    assert max(used.width() for used in each) <= room.width()
    if size != (480, 320):
        assert sum(used.height() + LIST_GAP for used in each) <= room.height()


def fits(sheet):
    """Whether the large type is within its room, and the share of a capital in the height."""
    room = sheet.text_area().adjusted(0, 0, 0, -sheet._below_height())
    metrics = QFontMetrics(sheet.text_font())
    used = metrics.boundingRect(room, int(Qt.TextFlag.TextWordWrap), sheet.step.text)
    inside = used.height() <= room.height() and used.width() <= room.width()
    return inside, metrics.capHeight() / sheet.height()


@pytest.mark.parametrize("size", [(1024, 640), (1920, 1080)])
def test_every_step_of_the_book_is_whole_and_its_capitals_large(bar, qtbot, size):
    """A 25th of the height: 10 mm on a screen 25 cm high, for two metres (common practice)."""
    drinks = camera_drinks([(each, 1) for each in bar.snapshot.all_specs], bar.snapshot)
    sheet = shown(drinks, qtbot, size)
    for number, drink in enumerate(drinks):
        for place in range(len(drink.steps)):
            sheet._go(number, place)
            inside, share = fits(sheet)
            assert inside and share >= CAPITAL_SHARE, sheet.step


def test_a_very_long_step_grows_smaller_and_is_not_cut_off(qtbot):
    words = "Shake hard with plenty of ice until the tin is frosted, then strain. " * 6
    sheet = shown([CameraDrink("Long", (), (CameraStep(words.strip()),))], qtbot)
    inside, share = fits(sheet)
    assert inside and share < CAPITAL_SHARE


def test_a_resize_keeps_the_place(sheet, qtbot):
    for _ in range(2):
        qtbot.keyClick(sheet, Keys.Key_Space)
    before, large = sheet.step, sheet.text_font().pixelSize()
    sheet.resize(1920, 1080)
    assert sheet.step is before and sheet.text_font().pixelSize() > large


def test_nothing_to_show(qtbot):
    sheet = shown([], qtbot)
    sheet.go_on()
    sheet.go_back()
    sheet.grab()
    assert sheet.step.text == "No drink to show"


@pytest.mark.parametrize("size", [(1024, 640), (480, 320)])
def test_the_drink_is_drawn_where_no_letter_is_smaller_for_it(bar, qtbot, size):
    (drink,) = camera_drinks([(bar.specs.get("Drift Fence"), 1)], bar.snapshot)
    bare = shown([replace(drink, picture=None)], qtbot, size)
    sheet = shown([drink], qtbot, size)
    assert sheet.list_font() == bare.list_font() and sheet.text_font() == bare.text_font()
    area = sheet.list_area()
    whole, without = sheet.grab(area).toImage(), bare.grab(area).toImage()
    assert (whole == without) == (size == (480, 320))
    assert sheet.accessibleDescription().endswith(drink.picture.in_words)
    long = replace(drink, lines=drink.lines * 8)
    full = shown([long], qtbot, size).grab(area).toImage()
    assert full == shown([replace(long, picture=None)], qtbot, size).grab(area).toImage()
