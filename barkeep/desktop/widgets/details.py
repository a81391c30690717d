"""The pane beside a list: everything about one row, wrapped and scrolled, never clipped."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.labels import PictureLabel, caption, copyable, text_label
from barkeep.desktop.widgets.layouts import column_of, row_of
from barkeep.desktop.widgets.tips import plain_tip


def add_heading(column: QVBoxLayout, heading: str) -> None:
    """Begin a part of the page."""
    column.addSpacing(PAD)
    column.addWidget(text_label(heading, TypeSize.STRONG, wrap=True))
    column.addWidget(rule())


def rule() -> QFrame:
    """A thin line from side to side."""
    line = QFrame()
    line.setFrameShape(QFrame.Shape.HLine)
    line.setFrameShadow(QFrame.Shadow.Plain)
    line.setForegroundRole(QPalette.ColorRole.Mid)
    return line


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


class _Row(QWidget):
    """One fact, with the heading above it where it is the first; what it does not have is hidden.

    It is filled again and again: widgets are slow to make and quick to change.
    """

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._heading = text_label("", TypeSize.STRONG, wrap=True)
        self._line = rule()
        self._picture = PictureLabel("info", 16)
        self.label = text_label("", quiet=True)
        self._text, self._note = copyable(""), caption()
        grid = grid_of_rows()
        grid.addWidget(self._picture, 0, 0, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(self.label, 0, 0, Qt.AlignmentFlag.AlignTop)
        grid.addLayout(column_of(self._text, self._note, gap=2), 0, 1)
        self._column = column_of(self._heading, self._line, grid, on=self, gap=HALF)

    def fill(self, row: DetailRow, heading: str, label_width: int) -> None:
        """Show a fact; the quiet labels of a section are as wide as the widest of them."""
        self._column.setContentsMargins(0, PAD if heading else 0, 0, 0)
        _say(self._heading, heading)
        self._line.setVisible(bool(heading))
        self._picture.setVisible(bool(row.picture))
        if row.picture:
            self._picture.show_picture(row.picture, row.tone)
            self._picture.setToolTip(plain_tip(row.label))
            self._picture.setAccessibleName(row.label)
        _say(self.label, "" if row.picture else row.label)
        self.label.setMinimumWidth(label_width)
        self._text.setText(row.text)
        self._text.setToolTip(plain_tip(row.tip))
        self._text.setAccessibleDescription(row.tip)
        _say(self._note, row.note)
        self.show()

    def empty(self) -> None:
        """Show nothing, and say nothing."""
        self.hide()
        for each in (self._heading, self.label, self._text, self._note):
            each.clear()


def _say(label: QLabel, words: str) -> None:
    label.setText(words)
    label.setVisible(bool(words))


class _DetailPage(QWidget):
    """Title, subtitle, what stands below them, facts under headings, and buttons."""

    def __init__(self) -> None:
        super().__init__()
        self._title, self._subtitle = copyable("", TypeSize.TITLE), copyable("", quiet=True)
        self._top, self._facts, self._foot = (column_of(gap=HALF) for _ in range(3))
        self._rows: list[_Row] = []
        self._above: QWidget | None = None
        self._buttons: tuple[QWidget, ...] = ()
        self._button_row: QWidget | None = None
        column = column_of(self._title, self._subtitle, on=self, margins=PAD, gap=HALF)
        for part in (self._top, self._facts, self._foot):
            column.addLayout(part)
        column.addStretch(1)

    def fill(self, title: str, subtitle: str, sections: Sequence[DetailSection]) -> None:
        """Show one thing."""
        _say(self._title, title)
        _say(self._subtitle, subtitle)
        number = 0
        for section in sections:
            width = self._label_width(section)
            for place, row in enumerate(section.rows or (NO_FACT,)):
                self._row(number).fill(row, "" if place else section.heading, width)
                number += 1
        for row_left in self._rows[number:]:
            row_left.empty()

    def put(self, above: QWidget | None, buttons: Sequence[QWidget]) -> None:
        """Put a badge or a gauge below the title, and buttons at the end; they become its own."""
        if above is not self._above:
            _remove(self._above)
            self._above = above
            if above is not None:
                self._top.setContentsMargins(0, UNIT, 0, 0)
                self._top.addWidget(above, 0, Qt.AlignmentFlag.AlignLeft)
        if tuple(buttons) != self._buttons:
            _remove(self._button_row)
            self._buttons, self._button_row = tuple(buttons), None
            if buttons:
                self._button_row = QWidget()
                row_of(FlowLayout(buttons), on=self._button_row, margins=(0, PAD, 0, 0))
                self._foot.addWidget(self._button_row)

    def _row(self, number: int) -> _Row:
        if number == len(self._rows):
            self._rows.append(made := _Row(self))
            self._facts.addWidget(made)
        return self._rows[number]

    def _label_width(self, section: DetailSection) -> int:
        words = [row.label for row in section.rows if row.label and not row.picture]
        if not words:
            return 0
        metrics = self.fontMetrics()
        return max(map(metrics.horizontalAdvance, words))


def _remove(widget: QWidget | None) -> None:
    """Take something out; it may be at work, so it goes later."""
    if widget is not None:
        widget.hide()
        widget.setParent(None)
        widget.deleteLater()


NO_FACT = DetailRow("")


class DetailPanel(ScrolledPage):
    """Shows one thing at a time; `show_details` takes the place of what was there.

    The page is made once and then filled with each thing.
    """

    def __init__(self, name: str = "Details", parent: QWidget | None = None) -> None:
        super().__init__(name, 264, parent)
        self._filled: _DetailPage | None = None

    def show_page(self, page: QWidget) -> None:
        self._filled = page if isinstance(page, _DetailPage) else None
        super().show_page(page)

    def show_details(
        self,
        title: str,
        subtitle: str = "",
        sections: Sequence[DetailSection] = (),
        *,
        top: QWidget | None = None,
        buttons: Sequence[QWidget] = (),
    ) -> None:
        """Show one thing; `top` (a badge, a gauge) and `buttons` become the panel's own.

        Those that are there already stay as they are.
        """
        page = self._filled or _DetailPage()
        page.fill(title, subtitle, sections)
        page.put(top, buttons)
        if page is not self._filled:
            self.show_page(page)
        page.show()
        self.verticalScrollBar().setValue(0)

    def clear(self) -> None:
        """Show nothing."""
        if self._filled is None:
            self.show_page(QWidget())
            return
        self._filled.fill("", "", ())
        self._filled.hide()


def in_pairs(widgets: Sequence[QWidget]) -> QGridLayout:
    """Two a row, one below the other: what is beside a list is narrow."""
    grid = QGridLayout()
    grid.setSpacing(UNIT)
    for place, each in enumerate(widgets):
        grid.addWidget(each, place // 2, place % 2)
    return grid
