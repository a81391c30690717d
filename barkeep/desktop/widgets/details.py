"""The pane beside a list: everything about one row, wrapped and scrolled, never clipped."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of


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


def selectable(label: QLabel) -> QLabel:
    """Let a label's words be marked and copied."""
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


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


class DetailPanel(QScrollArea):
    """Shows one thing at a time; `show_details` takes the place of what was there."""

    def __init__(self, name: str = "Details", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(264)
        self.viewport().setAutoFillBackground(False)

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
        column = column_of(
            _selectable(text_label(title, TypeSize.TITLE, wrap=True)),
            on=page,
            margins=PAD,
            gap=HALF,
        )
        if subtitle:
            column.addWidget(_selectable(text_label(subtitle, quiet=True, wrap=True)))
        if top is not None:
            column.addSpacing(UNIT)
            column.addWidget(top, 0, Qt.AlignmentFlag.AlignLeft)
        for section in sections:
            self._add_section(column, section)
        if buttons:
            column.addSpacing(PAD)
            column.addLayout(_button_rows(buttons))
        column.addStretch(1)
        self.setWidget(page)
        page.setAutoFillBackground(False)  # a scroll area fills what it is given
        self.verticalScrollBar().setValue(0)

    def clear(self) -> None:
        """Show nothing."""
        blank = QWidget()
        self.setWidget(blank)
        blank.setAutoFillBackground(False)

    def _add_section(self, column: QVBoxLayout, section: DetailSection) -> None:
        column.addSpacing(WIDE - PAD + UNIT)
        column.addWidget(text_label(section.heading, TypeSize.STRONG, wrap=True))
        column.addWidget(_hair_line())
        grid = QGridLayout()
        grid.setContentsMargins(0, HALF, 0, 0)
        grid.setHorizontalSpacing(UNIT + HALF)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(1, 1)
        for number, row in enumerate(section.rows):
            self._add_row(grid, number, row)
        column.addLayout(grid)

    def _add_row(self, grid: QGridLayout, number: int, row: DetailRow) -> None:
        text = _selectable(text_label(row.text, wrap=True))
        text.setToolTip(row.tip)
        text.setAccessibleDescription(row.tip)
        words = column_of(text, gap=2)
        if row.note:
            note = text_label(row.note, TypeSize.CAPTION, quiet=True, wrap=True)
            words.addWidget(_selectable(note))
        top = Qt.AlignmentFlag.AlignTop
        if row.picture:
            grid.addWidget(PictureLabel(row.picture, 16, row.tone, row.label), number, 0, top)
            grid.addLayout(words, number, 1)
        elif row.label:
            label = text_label(row.label, quiet=True)
            grid.addWidget(label, number, 0, top)
            grid.addLayout(words, number, 1)
        else:
            grid.addLayout(words, number, 0, 1, 2)


def show_page(area: QScrollArea, page: QWidget) -> None:
    """Show another page; a link or button of the old one may be at work just now: it goes later."""
    old = area.takeWidget()
    if old is not None:
        old.hide()
        old.deleteLater()
    area.setWidget(page)
    page.setAutoFillBackground(False)  # a scroll area fills what it is given


def _selectable(label: QLabel) -> QLabel:
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
    return label


def _hair_line() -> QFrame:
    line = QFrame()
    line.setFrameShape(QFrame.Shape.HLine)
    line.setFrameShadow(QFrame.Shadow.Plain)
    line.setForegroundRole(QPalette.ColorRole.Mid)
    return line


def _button_rows(buttons: Sequence[QWidget]) -> QVBoxLayout:
    """Two buttons a row: the panel is narrow and nothing may be cut off."""
    column = QVBoxLayout()
    column.setSpacing(UNIT)
    for start in range(0, len(buttons), 2):
        row = row_of(*buttons[start : start + 2], SPRING)
        column.addLayout(row)
    return column
