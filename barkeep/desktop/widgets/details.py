"""The pane beside a list: everything about one row, wrapped and scrolled, never clipped."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.widgets.labels import PictureLabel, caption, copyable, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of
from barkeep.desktop.widgets.tips import plain_tip


def add_heading(column: QVBoxLayout, heading: str) -> None:
    """Begin a part of the page."""
    column.addSpacing(PAD)
    column.addWidget(text_label(heading, TypeSize.STRONG, wrap=True))
    line = QFrame()
    line.setFrameShape(QFrame.Shape.HLine)
    line.setFrameShadow(QFrame.Shadow.Plain)
    line.setForegroundRole(QPalette.ColorRole.Mid)
    column.addWidget(line)


def grid_of_rows() -> QGridLayout:
    """A grid whose second column takes the room there is."""
    grid = QGridLayout()
    grid.setContentsMargins(0, HALF, 0, 0)
    grid.setHorizontalSpacing(UNIT + HALF)
    grid.setVerticalSpacing(UNIT)
    grid.setColumnStretch(1, 1)
    return grid


def add_noted(
    grid: QGridLayout, number: int, words: QLabel, note: str = "", *, beside: QWidget | None = None
) -> QVBoxLayout:
    """One row of a grid: what stands at the left, words, and a smaller note below them.

    With nothing at the left the words take the whole width. What is returned is
    the column of the words, for what may follow the note.
    """
    column = column_of(words, gap=2)
    if note:
        column.addWidget(caption(note))
    if beside is None:
        grid.addLayout(column, number, 0, 1, 2)
        return column
    grid.addWidget(beside, number, 0, Qt.AlignmentFlag.AlignTop)
    grid.addLayout(column, number, 1)
    return column


@dataclass(frozen=True, slots=True)
class DetailRow:
    """One fact: a quiet label, its text, a picture before it, and a smaller note below.

    `tip` is what its text says to a pointer that rests on it. `tone` is a
    field of `Tones` that colours the picture; without a label the text takes
    the whole width.
    """

    text: str
    label: str = ""
    note: str = ""
    picture: str = ""
    tone: str = "text"
    tip: str = ""


@dataclass(frozen=True, slots=True)
class DetailSection:
    """Some facts under a heading."""

    heading: str
    rows: tuple[DetailRow, ...]


class ScrolledPage(QScrollArea):
    """One page at a time on the ground of what it lies in, as wide as that and scrolled down."""

    def __init__(self, name: str, least_width: int = 0, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(least_width)
        self.viewport().setAutoFillBackground(False)

    def show_page(self, page: QWidget) -> None:
        """Show another page; a link or button of the old one may be at work: it goes later."""
        old = self.takeWidget()
        if old is not None:
            old.hide()
            old.deleteLater()
        self.setWidget(page)
        page.setAutoFillBackground(False)  # a scroll area fills what it is given


class DetailPanel(ScrolledPage):
    """Shows one thing at a time; `show_details` takes the place of what was there."""

    def __init__(self, name: str = "Details", parent: QWidget | None = None) -> None:
        super().__init__(name, 264, parent)

    def show_details(
        self,
        title: str,
        subtitle: str = "",
        sections: Sequence[DetailSection] = (),
        *,
        top: QWidget | None = None,
        buttons: Sequence[QWidget] = (),
    ) -> None:
        """Show one thing; `top` (a badge, a gauge) and `buttons` become the panel's own."""
        page = QWidget()
        column = column_of(copyable(title, TypeSize.TITLE), on=page, margins=PAD, gap=HALF)
        if subtitle:
            column.addWidget(copyable(subtitle, quiet=True))
        if top is not None:
            column.addSpacing(UNIT)
            column.addWidget(top, 0, Qt.AlignmentFlag.AlignLeft)
        for section in sections:
            self._add_section(column, section)
        if buttons:
            column.addSpacing(PAD)
            column.addLayout(_button_rows(buttons))
        column.addStretch(1)
        self.show_page(page)
        self.verticalScrollBar().setValue(0)

    def clear(self) -> None:
        """Show nothing."""
        self.show_page(QWidget())

    def _add_section(self, column: QVBoxLayout, section: DetailSection) -> None:
        add_heading(column, section.heading)
        grid = grid_of_rows()
        for number, row in enumerate(section.rows):
            self._add_row(grid, number, row)
        column.addLayout(grid)

    def _add_row(self, grid: QGridLayout, number: int, row: DetailRow) -> None:
        text = copyable(row.text)
        text.setToolTip(plain_tip(row.tip))
        text.setAccessibleDescription(row.tip)
        drawn = PictureLabel(row.picture, 16, row.tone, row.label) if row.picture else None
        label = drawn or (text_label(row.label, quiet=True) if row.label else None)
        add_noted(grid, number, text, row.note, beside=label)


def in_pairs(widgets: Sequence[QWidget]) -> QGridLayout:
    """Two a row, one below the other: what is beside a list is narrow."""
    grid = QGridLayout()
    grid.setSpacing(UNIT)
    for place, each in enumerate(widgets):
        grid.addWidget(each, place // 2, place % 2)
    return grid


def _button_rows(buttons: Sequence[QWidget]) -> QVBoxLayout:
    """Two buttons a row: the panel is narrow and nothing may be cut off."""
    column = QVBoxLayout()
    column.setSpacing(UNIT)
    for start in range(0, len(buttons), 2):
        row = row_of(*buttons[start : start + 2], SPRING)
        column.addLayout(row)
    return column
