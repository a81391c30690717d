"""Rows and columns of widgets, each put together at once, and the card that frames a list."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QLayout, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import PAD, UNIT, WIDE

Margins = int | tuple[int, int, int, int]
"""Of all four sides, or left, top, right and bottom, in device-independent pixels."""
DIALOG: Margins = (WIDE, PAD, WIDE, PAD)
"""Around what stands in a dialog."""


@dataclass(frozen=True, slots=True)
class Slot:
    """A part that takes its `share` of the room left over, or keeps to one side of its place."""

    part: QWidget | QLayout | None
    share: int = 0
    side: Qt.AlignmentFlag | None = None


Part = QWidget | QLayout | Slot | int
"""What a row or a column is put together of; a number is so much room, in pixels."""
SPRING = Slot(None, 1)
"""Nothing, which takes the room left over."""
Box = TypeVar("Box", bound=QBoxLayout)


def wide(part: QWidget | QLayout) -> Slot:
    """A part that takes the room left over."""
    return Slot(part, 1)


def at_top(part: QWidget) -> Slot:
    """A part that is no higher than it must be, at the top of its row."""
    return Slot(part, side=Qt.AlignmentFlag.AlignTop)


def at_left(part: QWidget) -> Slot:
    """A part that is no wider than it must be, at the left of its column."""
    return Slot(part, side=Qt.AlignmentFlag.AlignLeft)


def column_of(
    *parts: Part, on: QWidget | None = None, margins: Margins = 0, gap: int | None = UNIT
) -> QVBoxLayout:
    """Parts from top to bottom, as the layout of `on` where there is one.

    Between them is the `gap`, the style's own where that is None.
    """
    return _filled(QVBoxLayout() if on is None else QVBoxLayout(on), parts, margins, gap)


def row_of(
    *parts: Part, on: QWidget | None = None, margins: Margins = 0, gap: int | None = UNIT
) -> QHBoxLayout:
    """As `column_of`, from left to right."""
    return _filled(QHBoxLayout() if on is None else QHBoxLayout(on), parts, margins, gap)


def add_parts(layout: QBoxLayout, *parts: Part) -> None:
    """Put parts after those that are there."""
    for part in parts:
        if isinstance(part, int):
            layout.addSpacing(part)
            continue
        slot = part if isinstance(part, Slot) else Slot(part)
        if isinstance(slot.part, QLayout):
            layout.addLayout(slot.part, slot.share)
        elif slot.part is None:
            layout.addStretch(slot.share)
        else:
            layout.addWidget(slot.part, slot.share, slot.side or Qt.AlignmentFlag(0))


def _filled(layout: Box, parts: Iterable[Part], margins: Margins, gap: int | None) -> Box:
    sides = (margins,) * 4 if isinstance(margins, int) else margins
    layout.setContentsMargins(*sides)
    if gap is not None:
        layout.setSpacing(gap)
    add_parts(layout, *parts)
    return layout


@contextmanager
def laid_out_once(*widgets: QWidget) -> Iterator[None]:
    """Lay widgets out when all is done: each part that is shown in one would lay it out anew.

    Within another of these, the outer one lays them out.
    """
    layouts = [layout for each in widgets if (layout := each.layout()) is not None]
    for layout in layouts:
        layout.setEnabled(False)
    try:
        yield
    finally:
        for layout in reversed(layouts):
            layout.setEnabled(True)
            layout.invalidate()
        for each in reversed(widgets):
            each.updateGeometry()  # or those around would go by what it asked for before
        around = None if (holder := widgets[0].parentWidget()) is None else holder.layout()
        if around is None or around.isEnabled():
            layouts[0].activate()


class Card(QFrame):
    """A rounded frame; it carries the corners that tables and scroll areas cannot."""

    def __init__(self, content: QWidget) -> None:
        super().__init__()
        self.setProperty("card", True)
        column_of(content, on=self, margins=1, gap=0)
