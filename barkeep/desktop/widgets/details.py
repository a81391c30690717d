"""The pane beside a list: everything about one row, wrapped and scrolled, never clipped."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QPalette
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QLabel,
    QScrollArea,
    QScrollBar,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, scaled
from barkeep.desktop.widgets.detail_bar import NO_ACTS, DetailActs, DetailBar
from barkeep.desktop.widgets.folds import FoldHead, Folds
from barkeep.desktop.widgets.labels import (
    Link,
    LinkLabel,
    PictureLabel,
    caption,
    copyable,
    text_label,
)
from barkeep.desktop.widgets.layouts import SPRING, column_of, laid_out_once, row_of, wide
from barkeep.desktop.widgets.offered import forget_words
from barkeep.desktop.widgets.terms import TermLabel, word_in
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.translation import tr, tr_noop


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

    `tip` is what its text says to a pointer that rests on it, and to those who
    do not see it where nothing else is `said` to them. `tone` is a
    field of `Tones` that colours the picture; without a label the text takes
    the whole width. Where some of the words lead somewhere, `parts` are shown
    in place of the text.
    """

    text: str
    label: str = ""
    note: str = ""
    picture: str = ""
    tone: str = "text"
    tip: str = ""
    said: str | None = None
    parts: tuple[str | Link, ...] = ()


@dataclass(frozen=True, slots=True)
class DetailSection:
    """Some facts under a heading.

    With the name of a `fold` they are shown where that is open, and `brief` says in its line what
    is in it; with a `tone`, a field of `Tones`, what is brief are tags that are always seen.
    """

    heading: str
    rows: tuple[DetailRow, ...]
    fold: str = ""
    brief: str = ""
    tone: str = ""
    opens: bool = False
    """Whether the fold is open as long as nobody has turned it."""


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


class DetailLine(QWidget):
    """One fact, with the heading above it where it is the first; what it does not have is hidden.

    It is filled again and again: widgets are slow to make and quick to change.
    """

    def __init__(self, follow: Callable[[str], object] | None = None) -> None:
        super().__init__()
        self._follow = follow
        self._linked: LinkLabel | None = None
        self._heading = TermLabel("", TypeSize.STRONG)
        self._heading.setWordWrap(True)
        self._line = rule()
        self._head: FoldHead | None = None
        self._turned: Callable[[bool], object] = lambda _is_open: None
        self._picture = PictureLabel("info", 16)
        self.label = text_label("", quiet=True)
        self._text, self._note = copyable(""), caption()
        self._body = QWidget()
        grid = grid_of_rows()
        self._body.setLayout(grid)
        grid.addWidget(self._picture, 0, 0, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(self.label, 0, 0, Qt.AlignmentFlag.AlignTop)
        self._words = column_of(self._text, self._note, gap=2)
        grid.addLayout(self._words, 0, 1)
        self._column = column_of(self._heading, self._line, self._body, on=self, gap=HALF)

    def add_below(self, widget: QWidget) -> None:
        """Put something below the words."""
        self._words.addWidget(widget)

    def fill(self, row: DetailRow, heading: str, label_width: int) -> None:
        """Show a fact; the quiet labels of a section are as wide as the widest of them."""
        with laid_out_once(self, self._body):
            if self._head is not None and not self._head.isHidden():
                self._head.hide()
                forget_words(self._head)
            self._fill(row, heading, label_width)
        self.show()

    def fill_head(
        self, section: DetailSection, turned: Callable[[bool], object], *, is_open: bool
    ) -> None:
        """Show the line of a fold in place of a heading, and nothing of what is in it."""
        with laid_out_once(self, self._body):
            self._fill(NO_FACT, "", 0)
            self._body.hide()
            self._column.setContentsMargins(0, UNIT, 0, 0)
            if self._head is None:
                self._head = FoldHead()
                self._head.wanted.connect(lambda is_open: self._turned(is_open))
                self._column.insertWidget(0, self._head)
            self._turned = turned
            brief = section.brief
            self._head.show_fold(section.heading, brief, section.tone, is_open=is_open)
            self._head.show()
            self._line.setVisible(is_open)
        self.show()

    def _fill(self, row: DetailRow, heading: str, label_width: int) -> None:
        self._column.setContentsMargins(0, PAD if heading else 0, 0, 0)
        self._body.show()
        say(self._heading, heading)
        self._heading.explain(word_in(heading))
        self._line.setVisible(bool(heading))
        self._picture.setVisible(bool(row.picture))
        if row.picture:
            self._picture.show_picture(row.picture, row.tone)
            self._picture.setToolTip(plain_tip(row.label))
            self._picture.setAccessibleName(row.label)
        say(self.label, "" if row.picture else row.label)
        self.label.setMinimumWidth(label_width)
        say(self._text, "" if row.parts else row.text)
        _explain(self._text, row)
        self._link(row)
        say(self._note, row.note)

    def _link(self, row: DetailRow) -> None:
        """Words that lead somewhere have a label of their own, once there are any."""
        if row.parts and self._linked is None:
            self._linked = LinkLabel()
            if self._follow is not None:
                self._linked.followed.connect(self._follow)
            self._words.insertWidget(0, self._linked)
        if self._linked is not None:
            self._linked.show_parts(row.parts)
            _explain(self._linked, row)
            self._linked.setVisible(bool(row.parts))

    def empty(self) -> None:
        """Show nothing, and say nothing."""
        self.hide()
        for each in (self._heading, self.label, self._text, self._note):
            each.clear()
        if self._head is not None:
            forget_words(self._head)
        if self._linked is not None:
            self._linked.show_parts(())


def _explain(label: QLabel, row: DetailRow) -> None:
    label.setToolTip(plain_tip(row.tip))
    label.setAccessibleDescription(row.tip if row.said is None else row.said)


def say(label: QLabel, words: str) -> None:
    """Put words into a label, which is hidden without any."""
    label.setText(words)
    label.setVisible(bool(words))


ROWS_READY = 10
"""Rows that are made before anything is shown in them."""


class DetailSections(QWidget):
    """Facts under headings, filled again and again; `followed` carries where a link leads."""

    followed = Signal(str)

    def __init__(self, folds: Folds | None = None) -> None:
        super().__init__()
        self._column = column_of(on=self, gap=HALF)
        self._rows: list[DetailLine] = []
        self._folds = folds or Folds(parent=self)
        self._sections: tuple[DetailSection, ...] = ()
        self._folds.turned.connect(self._fill)

    def fill(self, sections: Sequence[DetailSection]) -> None:
        """Show these; of a fold that is closed its line alone."""
        self._sections = tuple(sections)
        self._fill()

    def make_ready(self) -> None:
        """Have as many rows as most things need, before there is anything to show."""
        with laid_out_once(self):
            for number in range(ROWS_READY):
                self._row(number).empty()

    def _fill(self) -> None:
        number = 0
        with laid_out_once(self):
            for section in self._sections:
                number = self._fill_section(section, number)
            for row_left in self._rows[number:]:
                row_left.empty()

    def _fill_section(self, section: DetailSection, number: int) -> int:
        """Show one from a row on; the row after it."""
        heading = section.heading
        if section.fold:
            is_open = self._folds.is_open(section.fold, section.opens)
            turn = partial(self._folds.turn, section.fold)
            self._row(number).fill_head(section, turn, is_open=is_open)
            number += 1
            if not is_open:
                return number
            heading = ""
        width = self._label_width(section)
        for place, row in enumerate(section.rows or (NO_FACT,)):
            self._row(number).fill(row, "" if place else heading, width)
            number += 1
        return number

    def _row(self, number: int) -> DetailLine:
        if number == len(self._rows):
            self._rows.append(made := DetailLine(self.followed.emit))
            self._column.addWidget(made)
            self._folds.grow()
        return self._rows[number]

    def _label_width(self, section: DetailSection) -> int:
        words = [row.label for row in section.rows if row.label and not row.picture]
        if not words:
            return 0
        metrics = self.fontMetrics()
        return max(map(metrics.horizontalAdvance, words))


class _DetailPage(QWidget):
    """What is said of a thing below its name, and facts under headings."""

    def __init__(self, folds: Folds, follow: Callable[[str], object]) -> None:
        super().__init__()
        self._subtitle = copyable("", quiet=True)
        self._top = column_of(gap=HALF)
        self._facts = DetailSections(folds)
        self._facts.followed.connect(follow)
        self._above: QWidget | None = None
        self._beside: QWidget | None = None
        head = column_of(self._subtitle, gap=HALF)
        head.addLayout(self._top)
        head.addStretch(1)
        self._head = row_of(head)
        self._head.setStretch(0, 1)
        column_of(self._head, self._facts, SPRING, on=self, margins=(PAD, HALF, PAD, PAD), gap=HALF)

    def fill(self, subtitle: str, sections: Sequence[DetailSection]) -> None:
        """Show one thing."""
        say(self._subtitle, subtitle)
        self._facts.fill(sections)

    def make_ready(self) -> None:
        """Make what it will be filled in."""
        self._facts.make_ready()

    def put(self, above: QWidget | None, beside: QWidget | None) -> None:
        """Put a badge or a gauge at the top, and a picture beside it; they become its own."""
        if beside is not self._beside:
            remove(self._beside)
            self._beside = beside
            if beside is not None:
                self._head.addWidget(beside, 0, Qt.AlignmentFlag.AlignTop)
        if above is not self._above:
            remove(self._above)
            self._above = above
            if above is not None:
                self._top.setContentsMargins(0, UNIT, 0, 0)
                is_wide = bool(above.sizePolicy().expandingDirections() & Qt.Orientation.Horizontal)
                side = Qt.AlignmentFlag(0) if is_wide else Qt.AlignmentFlag.AlignLeft
                self._top.addWidget(above, 0, side)


def remove(widget: QWidget | None) -> None:
    """Take something out; it may be at work, so it goes later.

    Until then it keeps its parent: without one it would be destroyed with the last name
    for it, in the midst of what Qt is still doing with it.
    """
    if widget is not None:
        widget.hide()
        widget.deleteLater()


NO_FACT = DetailRow("")


class DetailPanel(QWidget):
    """Shows one thing at a time; `show_details` takes the place of what was there.

    Its name and what is done with it most stand in a bar that stays; the page below is scrolled,
    made once and then filled with each thing. `folds` says which parts of it are open, and
    `followed` carries where a link leads.
    """

    followed = Signal(str)

    def __init__(self, name: str = tr_noop("Details"), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.folds = Folds(parent=self)
        self.bar = DetailBar(self.folds)
        self.scrolled = ScrolledPage(tr(name), scaled(264))
        self._filled: _DetailPage | None = None
        column_of(self.bar, wide(self.scrolled), on=self, gap=0)
        self.setFocusProxy(self.scrolled)

    def show_page(self, page: QWidget) -> None:
        """Show another page below the bar."""
        self._filled = page if isinstance(page, _DetailPage) else None
        self.scrolled.show_page(page)

    def show_bar(self, title: str, acts: DetailActs) -> None:
        """Say what the page is of, and what is done with that; without a title there is no bar."""
        self.bar.fill(title, acts)
        if (layout := self.layout()) is not None:
            layout.activate()  # or a title of two lines would have the room of one

    def show_details(
        self,
        title: str,
        subtitle: str = "",
        sections: Sequence[DetailSection] = (),
        *,
        top: QWidget | None = None,
        beside: QWidget | None = None,
        acts: DetailActs = NO_ACTS,
    ) -> None:
        """Show one thing; `top` (a badge, a gauge) and `beside` become the panel's own.

        Those that are there already stay as they are.
        """
        page = self._filled or _DetailPage(self.folds, self.followed.emit)
        self.show_bar(title, acts)
        with laid_out_once(page):
            page.fill(subtitle, sections)
            page.put(top, beside)
        if page is not self._filled:
            self.show_page(page)
        page.show()
        self.scroll_to(0)

    def make_ready(self) -> None:
        """Make what things are shown in, before the first is, unless that is another page."""
        if self.scrolled.widget() is None:
            page = _DetailPage(self.folds, self.followed.emit)
            page.make_ready()
            self.show_page(page)
            page.hide()

    def clear(self) -> None:
        """Show nothing."""
        self.show_bar("", NO_ACTS)
        if self._filled is None:
            self.show_page(QWidget())
            return
        self._filled.fill("", ())
        self._filled.hide()

    def widget(self) -> QWidget | None:
        """The page below the bar."""
        return self.scrolled.widget()

    def verticalScrollBar(self) -> QScrollBar:
        """That of the page."""
        return self.scrolled.verticalScrollBar()

    def scroll_to(self, down: int) -> None:
        """Scroll the page so far down, in device-independent pixels."""
        self.verticalScrollBar().setValue(down)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """The menu key opens More from anywhere in the details that has no menu of its own."""
        if self.bar.isVisible():
            self.bar.pop_up(event.globalPos())
        event.accept()
