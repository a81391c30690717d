"""Specs put into a shoot and into order, from the real window."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import (
    QDrag,
    QDragEnterEvent,
    QDragMoveEvent,
    QDropEvent,
    QMouseEvent,
)
from PySide6.QtWidgets import QApplication, QListWidget

from barkeep.desktop.drink.to_shoot import AddToShoot
from barkeep.desktop.shoots.dragging import DrinkHead
from tests.desktop.pages import offered_in_details, settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("shoots"),
]

Keys = Qt.Key
CONTROL = Qt.KeyboardModifier.ControlModifier


def on_specs(window, qtbot, *names):
    """The Specs page with these chosen."""
    with qtbot.waitActive(window):
        window.activateWindow()
    window.show_page("specs")
    settle(window, qtbot)
    screen = window.current
    screen.choose(names[0])
    for name in names[1:]:
        rows = screen.shown.shown_rows()
        (row,) = [number for number, each in enumerate(rows) if each.spec.name == name]
        flags = screen.view.selectionModel().SelectionFlag
        screen.view.selectionModel().select(screen.shown.index(row, 0), flags.Select | flags.Rows)
    screen.view.setFocus()
    settle(window, qtbot)
    return screen


def asked(screen, qtbot):
    """The dialog, as its key opens it."""
    qtbot.keyClick(screen.view, Keys.Key_J, CONTROL)
    assert isinstance(screen.dialog, AddToShoot) and screen.dialog.isVisible()
    return screen.dialog


def drinks_of(bar, theme):
    (shoot,) = [each for each in bar.snapshot.shoots if each.theme == theme]
    return shoot.names


SUMMER = ("Deckchair Special", "Sand in the Points", "Ices on Platform Three")


def test_chosen_specs_go_into_the_next_shoot(window, bar, qtbot):
    screen = on_specs(window, qtbot, "Gangway")
    assert "Add to a shoot…" in offered_in_details(screen)
    dialog = asked(screen, qtbot)
    assert dialog.shoot.currentText() == "Summer Excursion · 25 Nov 2026"
    assert dialog.intro.text() == "Added at the end: Gangway."
    assert not dialog.theme.isVisible()
    qtbot.waitUntil(dialog.shoot.hasFocus)
    qtbot.keyClick(dialog.shoot, Keys.Key_Return)
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (*SUMMER, "Gangway")
    assert window.toast.text == "Added Gangway to Summer Excursion"
    assert window.focusWidget() is screen.view

    # One that is there keeps its place, and is told of; one undo takes the others back.
    screen = on_specs(window, qtbot, "Tide Table", "Gangway", "Daiquiri")
    dialog = asked(screen, qtbot)
    assert dialog.intro.text() == (
        "Added at the end: Daiquiri and Tide Table. There already: Gangway."
    )
    qtbot.keyClick(dialog.shoot, Keys.Key_Return)
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (*SUMMER, "Gangway", "Daiquiri", "Tide Table")
    assert window.toast.text == (
        "Added Daiquiri and Tide Table to Summer Excursion; Gangway was there already"
    )
    window.undo()
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (*SUMMER, "Gangway")

    # Where all are there nothing is to be done, and it says so.
    screen = on_specs(window, qtbot, "Gangway")
    dialog = asked(screen, qtbot)
    assert dialog.intro.text() == "There already: Gangway."
    assert not dialog.accept_button.isEnabled()
    assert "Nothing would be added" in dialog.accept_button.toolTip()

    # Another shoot is a key away; what is logged takes none.
    qtbot.keyClick(dialog.shoot, Keys.Key_Down)
    assert dialog.shoot.currentText() == "Snow Plough · 18 Nov 2026"
    qtbot.keyClick(dialog.shoot, Keys.Key_Return)
    settle(window, qtbot)
    assert drinks_of(bar, "Snow Plough") == ("Drift Fence", "White Cutting", "Brazier", "Gangway")


def test_a_new_shoot_is_begun_with_them(window, bar, qtbot):
    screen = on_specs(window, qtbot, "Gangway", "Daiquiri")
    dialog = asked(screen, qtbot)
    qtbot.keyClick(dialog.shoot, Keys.Key_End)
    assert dialog.shoot.currentText() == "A new shoot" and dialog.theme.isVisible()
    qtbot.keyClick(dialog.shoot, Keys.Key_Return)
    assert dialog.isVisible() and "a shoot has a theme" in dialog.problem("theme")
    qtbot.waitUntil(dialog.theme.hasFocus)
    qtbot.keyClicks(dialog.theme, "Signal Lamp")
    qtbot.keyClick(dialog.theme, Keys.Key_Return)
    settle(window, qtbot)
    assert drinks_of(bar, "Signal Lamp") == ("Daiquiri", "Gangway")
    assert window.toast.text == "Added Daiquiri and Gangway to Signal Lamp"
    window.undo()
    settle(window, qtbot)
    assert "Signal Lamp" not in [each.theme for each in bar.snapshot.shoots]


def test_without_a_shoot_ahead_a_new_one_stands_ready(open_window, empty_bar, qtbot):
    window = open_window(over=empty_bar)
    screen = on_specs(window, qtbot, "Daiquiri")
    dialog = asked(screen, qtbot)
    assert dialog.shoot.currentText() == "A new shoot"
    qtbot.waitUntil(dialog.theme.hasFocus)
    dialog.reject()
    assert not empty_bar.snapshot.shoots


def on_shoots(window, qtbot):
    """The Shoots page, with the one that is planned."""
    with qtbot.waitActive(window):
        window.activateWindow()
    window.show_page("shoots")
    settle(window, qtbot)
    return window.current


def drag(monkeypatch, qtbot, pressed, at, onto, to):
    """Press the mouse at a place of one widget, and let it go at one of another.

    The loop of the window system is what is replaced: it delivers these same events.
    """

    def carried(drag, action):
        data, buttons = drag.mimeData(), Qt.MouseButton.LeftButton
        none = Qt.KeyboardModifier.NoModifier
        for kind in (QDragEnterEvent, QDragMoveEvent):
            event = kind(to, action, data, buttons, none)
            QApplication.sendEvent(onto, event)
        taken.append(event.isAccepted())
        drop = QDropEvent(QPointF(to), action, data, buttons, none)
        QApplication.sendEvent(onto, drop)
        return action

    taken: list[bool] = []
    monkeypatch.setattr(QDrag, "exec", carried)
    qtbot.mousePress(pressed, Qt.MouseButton.LeftButton, pos=at)
    for far in (4, 20, 40):
        moved = QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(at + QPoint(0, far)),
            QPointF(pressed.mapToGlobal(at + QPoint(0, far))),
            Qt.MouseButton.NoButton,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        QApplication.sendEvent(pressed, moved)
    qtbot.mouseRelease(pressed, Qt.MouseButton.LeftButton, pos=at)
    return taken


def test_drinks_of_a_shoot_are_moved_by_keys_and_dragged_into_order(
    window, bar, qtbot, monkeypatch
):
    screen = on_shoots(window, qtbot)
    first, second, third = SUMMER
    later = screen.page.drinks[0].buttons["Later"]
    later.setFocus()
    qtbot.keyClick(later, Keys.Key_Down, Qt.KeyboardModifier.AltModifier)
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (second, first, third)
    assert window.toast.text == f"Moved {first}"
    qtbot.keyClick(window.focusWidget(), Keys.Key_Up, Qt.KeyboardModifier.AltModifier)
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == SUMMER

    # The last by its grip, to before the first; a line shows where it goes.
    heads = screen.page.findChildren(DrinkHead)
    page = screen.page
    grip = next(each.grip for each in heads if each.label.text() == f"3. {third}")
    top = min(each.y() for each in heads if each.isVisible())
    assert drag(monkeypatch, qtbot, grip, QPoint(3, 3), page, QPoint(40, top + 1)) == [True]
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (third, first, second)
    assert window.toast.text == f"Moved {third}"
    window.undo()
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == SUMMER

    # In the editor, where nothing is written before it is saved.
    screen.edit_current()
    editor = screen.dialog
    qtbot.waitUntil(editor.theme.hasFocus)
    table = editor.table
    table.setFocus()
    below = QPoint(10, table.viewport().height() - 2)
    row = table.visualItemRect(table.item(0, 0)).center()
    assert drag(monkeypatch, qtbot, table.viewport(), row, table.viewport(), below) == [True]
    assert [table.item(row, 0).text() for row in range(3)] == [second, third, first]
    editor.drink.setText("Gangway")
    editor.add_typed()
    table.setCurrentCell(0, 0)
    qtbot.keyClick(table, Keys.Key_Delete)
    assert [table.item(row, 0).text() for row in range(3)] == [third, first, "Gangway"]
    for order in ((second, third, first, "Gangway"), (second, third, first), SUMMER):
        qtbot.keyClick(table, Keys.Key_Z, CONTROL)
        assert tuple(table.item(row, 0).text() for row in range(table.rowCount())) == order
    qtbot.keyClick(table, Keys.Key_Z, CONTROL)
    assert table.rowCount() == 3
    table.setCurrentCell(2, 0)
    qtbot.keyClick(table, Keys.Key_Up, Qt.KeyboardModifier.AltModifier)
    editor.submit()
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (first, third, second)
    window.undo()
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == SUMMER


def test_a_logged_shoot_is_not_put_into_another_order(window, bar, qtbot):
    screen = on_shoots(window, qtbot)
    (logged,) = [each for each in bar.snapshot.shoots if each.theme == "Harbour Halt"]
    screen.show_thing(logged.id)
    settle(window, qtbot)
    heads = [each for each in screen.page.findChildren(DrinkHead) if each.isVisible()]
    assert heads and not any(each.grip.isVisible() for each in heads)


def middle_of(view, row):
    return view.visualRect(view.model().index(row, 0)).center()


def row_of_spec(screen, name):
    return [each.spec.name for each in screen.shown.shown_rows()].index(name)


def test_specs_are_dragged_onto_the_shoots(window, bar, qtbot, monkeypatch):
    screen = on_specs(window, qtbot, "Daiquiri", "Gangway")
    stops = window.navigation.findChild(QListWidget)
    shoots = [stops.item(row).text() for row in range(stops.count())].index("Shoots")
    onto, rows = stops.viewport(), screen.view.viewport()
    screen.view.scrollTo(screen.shown.index(row_of_spec(screen, "Gangway"), 0))
    place = middle_of(screen.view, row_of_spec(screen, "Gangway"))

    # Only the shoots take them.
    taken = drag(monkeypatch, qtbot, rows, place, onto, middle_of(stops, shoots - 1))
    assert taken == [False] and screen.dialog is None

    # Both that are chosen are taken along, and the next shoot stands ready.
    taken = drag(monkeypatch, qtbot, rows, place, onto, middle_of(stops, shoots))
    assert taken == [True] and screen.dialog.isVisible()
    assert screen.dialog.shoot.currentText() == "Summer Excursion · 25 Nov 2026"
    assert screen.dialog.intro.text() == "Added at the end: Daiquiri and Gangway."
    qtbot.mouseClick(screen.dialog.accept_button, Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    assert drinks_of(bar, "Summer Excursion") == (*SUMMER, "Daiquiri", "Gangway")
    assert window.current is screen and set(screen.chosen_specs()) == {"Daiquiri", "Gangway"}

    # A click on one of several chooses it alone, as ever.
    screen.view.scrollTo(screen.shown.index(row_of_spec(screen, "Gangway"), 0))
    place = middle_of(screen.view, row_of_spec(screen, "Gangway"))
    qtbot.mouseClick(rows, Qt.MouseButton.LeftButton, pos=place)
    assert screen.chosen_specs() == ("Gangway",)
    other = middle_of(screen.view, row_of_spec(screen, "Gangway") - 1)
    qtbot.mouseClick(rows, Qt.MouseButton.LeftButton, pos=other)
    assert screen.current.spec.name != "Gangway" and len(screen.chosen_specs()) == 1


def test_specs_of_another_bar_and_on_paper_are_refused(window, qtbot):
    screen = on_specs(window, qtbot, "Gangway")
    window.navigation.for_a_shoot.emit(["Gangway", "Nowhere Fizz"])
    assert screen.dialog is None
    assert screen.banner.text == "There is no spec called “Nowhere Fizz”."
    screen.hold("The bar is shown as if it were another")
    window.navigation.for_a_shoot.emit(["Gangway"])
    assert screen.dialog is None
    assert screen.banner.text == "The bar is shown as if it were another"
