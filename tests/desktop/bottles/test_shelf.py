"""The shelf as a picture, from the real window: reached, read, searched, walked and arranged."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QGuiApplication, QImage, QPainter, QRegion
from PySide6.QtTest import QTest

from barkeep.application.bar import Bar
from barkeep.desktop.bottles import shelf as shelf_module
from barkeep.desktop.bottles.labels import AddBottleDialog
from barkeep.desktop.bottles.level_dialog import LevelDialog
from tests.desktop.bottles.bottle_page import bottles_page
from tests.desktop.bottles.test_page import imported
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]


def key(widget, *keys: str) -> None:
    for each in keys:
        QTest.keySequence(widget, each)


@pytest.fixture
def shelf(window, qtbot):
    """The picture, reached by keys alone."""
    window.resize(1280, 800)
    key(window, "Ctrl+2", "Ctrl+Shift+S")
    settle(window, qtbot)
    picture = window.current.shelf.picture
    assert picture.isVisible() and QGuiApplication.focusObject() is picture
    return picture


def named(shelf) -> str:
    return shelf.current.bottle.product.title


def middle(shelf, number: int) -> QPoint:
    return shelf._grid().cell(number).center().toPoint()


def test_walked_found_counted_and_turned_back(window, shelf, qtbot):
    """Home, arrows, typing ahead, Enter, a search, and back to the list, with no mouse."""
    key(shelf, "Home", "Right")
    assert (shelf.current.place, shelf.current.bottle.level.state) == (2, "sealed")
    across = shelf._grid().across
    key(shelf, "Down")
    assert shelf.current.place == 2 + across
    key(shelf, "Up", "Left", "Left")
    assert shelf.current.place == 1
    key(shelf, "End")
    assert shelf.current is shelf.rows[-1]
    seen = window.current.shelf.viewport().rect()
    cell = shelf._grid().cell(len(shelf.rows) - 1).toAlignedRect()
    assert seen.contains(cell.translated(shelf.pos()).center())
    QTest.keyClicks(shelf, "lime c")
    assert named(shelf) == "Lime cordial"
    assert window.current.current.bottle is shelf.current.bottle
    key(shelf, "Return")
    dialog = window.current.dialog
    assert isinstance(dialog, LevelDialog) and "Lime cordial" in dialog.windowTitle()
    key(dialog, "Esc")
    assert QGuiApplication.focusObject() is shelf
    key(window, "Ctrl+F")
    QTest.keyClicks(QGuiApplication.focusObject(), "gin ")
    lit = [each.bottle.product.title for each in shelf.rows if each.bottle.id in shelf.lit]
    assert 0 < len(lit) < len(shelf.rows) == len(window.bar.snapshot.bottles)
    assert f"{len(lit)} lit by the search" in shelf.accessibleDescription()
    window.current.focus_list()
    key(shelf, "End")
    assert named(shelf) == lit[-1]
    key(shelf, "Ctrl+Shift+S")
    assert window.current.view.isVisible() and window.current.view.hasFocus()


def test_what_is_typed_stands_there_until_another_key_ends_it(shelf):
    typed = shelf._typing.shown
    key(shelf, "Home")
    QTest.keyClicks(shelf, "lime ")
    assert typed.isVisible() and typed.text() == "lime " and "Lime " in named(shelf)
    QTest.keyClicks(shelf, "c")
    assert named(shelf) == "Lime cordial"
    key(shelf, "Backspace")
    assert typed.text() == "lime "
    key(shelf, "Esc")
    assert typed.isHidden() and named(shelf) == "Lime cordial"
    QTest.keyClicks(shelf, "li")
    key(shelf, "Home")
    assert typed.isHidden() and shelf.current.place == 1
    QTest.keyClicks(shelf, "s")
    first = named(shelf)
    QTest.keyClicks(shelf, "s")
    assert named(shelf) != first  # a letter again is the next with it


def test_a_code_that_nobody_has_is_no_bottle_to_be_counted(window, shelf):
    key(shelf, "Home")
    QTest.keyClicks(shelf, "4006381333931")
    key(shelf, "Return")
    dialog = window.current.dialog
    assert isinstance(dialog, AddBottleDialog)
    assert dialog.edits["barcode"].text() == "4006381333931"
    dialog.reject()


def test_moved_by_keys_and_by_dragging_and_back(window, shelf):
    first, second, third = (each.bottle.id for each in shelf.rows[:3])

    def order():
        return [each.bottle.id for each in shelf.rows[:3]]

    key(shelf, "Home", "Alt+Down")
    assert order() == [second, first, third] and shelf.current.bottle.id == first
    key(window, "Ctrl+Z")
    assert order() == [first, second, third]
    QTest.mousePress(shelf, Qt.MouseButton.LeftButton, pos=middle(shelf, 2))
    QTest.mouseMove(shelf, middle(shelf, 1))
    QTest.mouseMove(shelf, middle(shelf, 0) - QPoint(12, 0))
    shelf.grab()
    QTest.mouseRelease(shelf, Qt.MouseButton.LeftButton, pos=middle(shelf, 0))
    assert order() == [third, first, second]
    assert window.bar.snapshot.bottles[0].id == third
    assert "stands before" in window.toast.text
    key(window, "Ctrl+Z")
    assert order() == [first, second, third]
    QTest.mousePress(shelf, Qt.MouseButton.LeftButton, pos=middle(shelf, 2))
    QTest.mouseMove(shelf, middle(shelf, 0))
    key(shelf, "Esc")
    QTest.mouseRelease(shelf, Qt.MouseButton.LeftButton, pos=middle(shelf, 0))
    assert order() == [first, second, third]


def test_the_mouse_reads_chooses_and_counts(window, shelf):
    shown = window.current.bar_actions
    assert any(each.text().replace("&", "") == "Show the shelf as a list" for each in shown)
    number, row = next((n, r) for n, r in enumerate(shelf.rows) if r.due and not r.past)
    said = shelf.says_at(QPointF(middle(shelf, number)))
    assert said.startswith(row.bottle.product.title) and "; due; " in said
    past = next(
        n for n, r in enumerate(shelf.rows) if r.end and r.past and r.end.after != "past_its_best"
    )
    assert "; past; " in shelf.says_at(QPointF(middle(shelf, past)))
    window.current.search.set_text("gin")
    assert row.bottle.id not in shelf.lit
    QTest.mouseClick(shelf, Qt.MouseButton.LeftButton, pos=middle(shelf, number))
    assert window.current.search.text == ""
    assert window.current.current.bottle.id == row.bottle.id
    QTest.mouseDClick(shelf, Qt.MouseButton.LeftButton, pos=middle(shelf, number))
    assert row.bottle.product.title in window.current.dialog.windowTitle()
    key(window.current.dialog, "Esc")
    svg = shelf.as_svg().decode()
    assert row.bottle.product.name in svg and "bottles in the order of the shelf" in svg
    assert window.current.context.state.text("bottles/look") == "picture"


def test_of_five_hundred_only_what_is_seen_is_painted(qtbot, tmp_path, clock, monkeypatch):
    drawn: list[str] = []
    write = shelf_module._draw_name

    def noted(painter, room, name):
        drawn.append(name)
        write(painter, room, name)

    monkeypatch.setattr(shelf_module, "_draw_name", noted)
    with Bar.open(tmp_path / "big.bar", clock=clock) as bar:
        bar.imports.bottles([imported(number) for number in range(500)])
        with bottles_page(bar, qtbot, tmp_path) as page:
            page.screen.turn_look()
            picture = page.screen.shelf.picture
            page.settle(qtbot)
            drawn.clear()
            page.screen.shelf.grab()
            assert 0 < len(drawn) < 60
            key(picture, "End")
            assert picture.current.bottle.product.name == "Bottle 499"
            drawn.clear()
            page.screen.shelf.grab()
            assert "Bottle 499" in drawn and "Bottle 0" not in drawn and len(drawn) < 60
            page.screen.put_before(picture.current.bottle.id, picture.rows[0].bottle.id)
            assert bar.snapshot.bottles[0].product.name == "Bottle 499"


def test_every_shape_and_state_leaves_ink(window, shelf):
    """Each bottle of the sample bar, painted by itself, is not the bare ground."""
    for number, row in enumerate(shelf.rows):
        cell = shelf._grid().cell(number)
        image = QImage(cell.size().toSize(), QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        shelf.render(painter, QPoint(), QRegion(cell.toAlignedRect()))
        painter.end()
        across = {image.pixelColor(image.width() // 2, y).name() for y in range(image.height())}
        assert len(across) > 2, row.bottle.product.title
    assert QRectF(shelf.rect()).contains(shelf._grid().cell(len(shelf.rows) - 1).center())
