"""A column that is filled again and again: its parts are slow to make and quick to change."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtGui import QMouseEvent, QPalette
from PySide6.QtWidgets import QAbstractButton, QCheckBox, QLabel, QPushButton, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, TypeSize
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.details import DetailLine, DetailRow, rule
from barkeep.desktop.widgets.labels import caption, copyable, text_label
from barkeep.desktop.widgets.layouts import (
    SPRING,
    at_top,
    column_of,
    laid_out_once,
    row_of,
    wide,
)

Made = TypeVar("Made", bound=QWidget)


@dataclass(frozen=True)
class Piece(Generic[Made]):
    """One part of a column; what was made for a piece serves another of its `kind`."""

    kind: Hashable
    make: Callable[[], Made]
    fill: Callable[[Made], object]


class FilledColumn(QWidget):
    """Shows pieces one below the other."""

    def __init__(self, margins: int = 0) -> None:
        super().__init__()
        self._column = column_of(SPRING, on=self, margins=margins, gap=HALF)
        self._kept: list[tuple[Hashable, QWidget]] = []

    def fill_with(self, pieces: Sequence[Piece[Any]]) -> tuple[QWidget, ...]:
        """Show these in place of those before; the widgets that show them."""
        spare: dict[Hashable, deque[QWidget]] = {}
        for kind, widget in self._kept:
            spare.setdefault(kind, deque()).append(widget)
        shown = []
        with laid_out_once(self):
            for place, piece in enumerate(pieces):
                kept = spare.get(piece.kind)
                widget = kept.popleft() if kept else piece.make()
                self._put(place, widget)
                piece.fill(widget)
                widget.show()
                shown.append((piece.kind, widget))
            left = [(kind, each) for kind, some in spare.items() for each in some]
            for _kind, widget in left:
                widget.hide()
                _forget_words(widget)
        self._kept = [*shown, *left]
        return tuple(widget for _kind, widget in shown)

    def _put(self, place: int, widget: QWidget) -> None:
        there = self._column.itemAt(place)
        if there is None or there.widget() is not widget:
            self._column.removeWidget(widget)
            self._column.insertWidget(place, widget)


def _forget_words(widget: QWidget) -> None:
    """What is not shown says nothing, to whoever looks for words."""
    for each in (widget, *widget.findChildren(QWidget)):
        if isinstance(each, QLabel):
            each.clear()
        elif isinstance(each, QAbstractButton):
            each.setText("")
            each.setAccessibleName("")


def words(
    text: str, size: TypeSize = TypeSize.BODY, *, quiet: bool = False, above: int = 0
) -> Piece[QLabel]:
    """Words that wrap, with so much more room above them."""

    def make() -> QLabel:
        made = copyable("", size, quiet=quiet)
        made.setContentsMargins(0, above, 0, 0)
        return made

    return Piece(("words", size, quiet, above), make, lambda made: made.setText(text))


def note(text: str) -> Piece[QLabel]:
    """A small quiet sentence, with some room below it."""

    def make() -> QLabel:
        made = caption()
        made.setContentsMargins(0, 0, 0, HALF)
        return made

    return Piece("note", make, lambda made: made.setText(text))


class _Heading(QWidget):
    def __init__(self) -> None:
        super().__init__()
        self.label = text_label("", TypeSize.STRONG, wrap=True)
        column_of(self.label, rule(), on=self, margins=(0, PAD, 0, 0), gap=HALF)


def heading(text: str) -> Piece[_Heading]:
    """What a part of the column begins with."""
    return Piece("heading", _Heading, lambda made: made.label.setText(text))


@dataclass(frozen=True)
class Offered:
    """A button: what it says and does, and what it is called where that says more."""

    text: str
    act: Callable[[], object]
    picture: str = ""
    name: str = ""
    primary: bool = False


class OfferedRow(QWidget):
    """Buttons beside each other, as far as there is room where it `wraps`.

    `shown` are those offered now.
    """

    def __init__(self, *, wraps: bool = True) -> None:
        super().__init__()
        self._row = FlowLayout() if wraps else row_of()
        self._made: list[tuple[tuple[str, bool], QPushButton]] = []
        self._acts: dict[QPushButton, Callable[[], object]] = {}
        self.shown: tuple[QPushButton, ...] = ()
        column_of(self._row, on=self, margins=(0, HALF if wraps else 0, 0, 0), gap=0)

    def fill(self, offers: Sequence[Offered]) -> None:
        """Offer these."""
        spare, shown = list(self._made), []
        for each in offers:
            kind = (each.picture, each.primary)
            kept = next((made for made in spare if made[0] == kind), None)
            if kept is None:
                kept = (kind, self._new(each))
            else:
                spare.remove(kept)
            shown.append(kept)
            self._acts[kept[1]] = each.act
            kept[1].setText(each.text)
            kept[1].setAccessibleName(each.name or each.text)
        self._made = [*shown, *spare]
        self.shown = tuple(made for _kind, made in shown)
        self._lay_out()

    def _new(self, offered: Offered) -> QPushButton:
        make = primary_button if offered.primary else button
        made: QPushButton = make("", lambda: self._acts[made](), offered.picture or None)
        return made

    def _lay_out(self) -> None:
        while self._row.takeAt(0) is not None:
            pass
        for _kind, made in self._made:
            self._row.addWidget(made)
            made.setVisible(made in self.shown)
            if made not in self.shown:
                _forget_words(made)


def offered_row(offers: Sequence[Offered]) -> Piece[OfferedRow]:
    """Buttons beside each other."""
    return Piece("offers", OfferedRow, lambda made: made.fill(offers))


class FactRow(DetailLine):
    """A fact, and what can be done about it below its words."""

    def __init__(self) -> None:
        super().__init__()
        self.offers = OfferedRow()
        self.add_below(self.offers)

    def fill_fact(self, row: DetailRow, offers: Sequence[Offered]) -> None:
        """Show a fact and what is offered."""
        self.fill(row, "", 0)
        self.offers.fill(offers)
        self.offers.setVisible(bool(offers))


def fact(row: DetailRow, offers: Sequence[Offered] = ()) -> Piece[FactRow]:
    """A fact with its picture and note, and what can be done about it."""
    return Piece("fact", FactRow, lambda made: made.fill_fact(row, offers))


class TickRow(QWidget):
    """A box with words that wrap beside it; a click on the words ticks it too."""

    def __init__(self) -> None:
        super().__init__()
        self.box = QCheckBox()
        self._act: Callable[[bool], object] = lambda _done: None
        self.box.toggled.connect(lambda done: self._act(done))
        self._words = text_label("", wrap=True)
        self._offers = OfferedRow(wraps=False)
        row_of(at_top(self.box), wide(self._words), at_top(self._offers), on=self)

    def fill(
        self, text: str, act: Callable[[bool], object], offers: Sequence[Offered], *, done: bool
    ) -> None:
        """Show a step, which is quieter once it is done."""
        with QSignalBlocker(self.box):
            self.box.setChecked(done)
        self._act = act
        self.box.setAccessibleName(text)
        role = QPalette.ColorRole
        self._words.setForegroundRole(role.PlaceholderText if done else role.WindowText)
        self._words.setText(text)
        self._offers.fill(offers)
        self._offers.setVisible(bool(offers))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self.box.toggle()
        event.accept()


def tick(
    text: str, act: Callable[[bool], object], offers: Sequence[Offered] = (), *, done: bool
) -> Piece[TickRow]:
    """A step to be ticked off, and what can be done about it."""
    return Piece("tick", TickRow, lambda made: made.fill(text, act, offers, done=done))
