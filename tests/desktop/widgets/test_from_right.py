"""A window that runs from the right: words begin at the right, and marks stay where they stand."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QPushButton, QStyleOptionButton, QWidget

from barkeep.desktop.look.sides import READ_FROM_LEFT, as_written
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.labels import copyable, text_label


@pytest.fixture
def from_right(qapp):
    qapp.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    yield
    qapp.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def ink(widget: QWidget) -> tuple[int, int]:
    """The first and the last column of a widget in which something is drawn."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    ground = image.pixelColor(0, 0).value()
    drawn = [
        x
        for x in range(image.width())
        if any(abs(image.pixelColor(x, y).value() - ground) > 60 for y in range(image.height()))
    ]
    return drawn[0], drawn[-1]


def test_labels_begin_at_the_right_whether_they_wrap_or_can_be_marked(qtbot, from_right):
    for label in (
        text_label("Shoots"),
        text_label("Two of them.", wrap=True),
        copyable("Two of them."),
    ):
        qtbot.addWidget(label)
        label.resize(300, 40)
        first, last = ink(label)
        assert last > 280 and first > 150, label.text()


def test_a_mark_at_the_end_stays_at_the_end(qtbot, from_right):
    made = button("&Pour…")
    qtbot.addWidget(made)
    option = QStyleOptionButton()
    made.initStyleOption(option)
    assert option.text == f"{READ_FROM_LEFT}&Pour…{READ_FROM_LEFT}" and made.text() == "&Pour…"
    assert as_written("\u05de\u05d5\u05d6\u05d2…") == "\u05de\u05d5\u05d6\u05d2…"


def test_rows_of_chips_begin_at_the_right(qtbot, from_right):
    holder, chips = QWidget(), [QPushButton(each) for each in ("One", "Two")]
    qtbot.addWidget(holder)
    holder.setLayout(FlowLayout(chips))
    holder.resize(600, 60)
    holder.show()
    assert chips[0].geometry().right() == holder.rect().right()
    assert chips[1].geometry().right() < chips[0].geometry().left()


def test_from_the_left_nothing_is_added():
    assert as_written("Pour…") == "Pour…"
