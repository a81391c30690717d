"""A column that is filled again and again: its parts are slow to make and quick to change."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtGui import QMouseEvent, QPalette
from PySide6.QtWidgets import QCheckBox, QLabel, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, TypeSize
from barkeep.desktop.widgets.buttons import offer
from barkeep.desktop.widgets.details import DetailLine, DetailRow, rule
from barkeep.desktop.widgets.folds import FoldHead
from barkeep.desktop.widgets.labels import caption, copyable, text_label
from barkeep.desktop.widgets.layouts import (
    SPRING,
    at_top,
    column_of,
    laid_out_once,
    row_of,
    wide,
)
from barkeep.desktop.widgets.offered import Offered, OfferedRow, forget_words

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
                forget_words(widget)
        self._kept = [*shown, *left]
        return tuple(widget for _kind, widget in shown)

    def _put(self, place: int, widget: QWidget) -> None:
        there = self._column.itemAt(place)
        if there is None or there.widget() is not widget:
            self._column.removeWidget(widget)
            self._column.insertWidget(place, widget)


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


def offered_row(offers: Sequence[Offered], held: str = "") -> Piece[OfferedRow]:
    """Buttons beside each other; those that write are off while that is `held` for a reason."""
    return Piece("offers", OfferedRow, lambda made: made.fill(offers, held))


class _TurnedHead(FoldHead):
    """The line of a fold in a column that is filled again: what it turns is told anew each time."""

    def __init__(self) -> None:
        super().__init__()
        self._turn: Callable[[bool], object] = lambda _is_open: None
        self.wanted.connect(lambda is_open: self._turn(is_open))

    def fill(
        self, words: str, brief: str, turn: Callable[[bool], object], *, is_open: bool
    ) -> None:
        """Show what is in the fold, and turn it by this."""
        self._turn = turn
        self.show_fold(words, brief, is_open=is_open)


def fold_line(
    words: str, brief: str, turn: Callable[[bool], object], *, is_open: bool
) -> Piece[_TurnedHead]:
    """What a part of the column begins with that opens and closes."""
    return Piece("fold", _TurnedHead, lambda made: made.fill(words, brief, turn, is_open=is_open))


class FactRow(DetailLine):
    """A fact, and what can be done about it below its words."""

    def __init__(self) -> None:
        super().__init__()
        self.offers = OfferedRow()
        self.add_below(self.offers)

    def fill_fact(self, row: DetailRow, offers: Sequence[Offered], held: str) -> None:
        """Show a fact and what is offered."""
        self.fill(row, "", 0)
        self.offers.fill(offers, held)
        self.offers.setVisible(bool(offers))


def fact(row: DetailRow, offers: Sequence[Offered] = (), held: str = "") -> Piece[FactRow]:
    """A fact with its picture and note, and what can be done about it."""
    return Piece("fact", FactRow, lambda made: made.fill_fact(row, offers, held))


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
        self,
        text: str,
        act: Callable[[bool], object],
        offers: Sequence[Offered],
        held: str = "",
        *,
        done: bool,
    ) -> None:
        """Show a step, which is quieter once it is done, and cannot be ticked while it is held."""
        offer(self.box, held)
        with QSignalBlocker(self.box):
            self.box.setChecked(done)
        self._act = act
        self.box.setAccessibleName(text)
        role = QPalette.ColorRole
        self._words.setForegroundRole(role.PlaceholderText if done else role.WindowText)
        self._words.setText(text)
        self._offers.fill(offers, held)
        self._offers.setVisible(bool(offers))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self.box.isEnabled():
            self.box.toggle()
        event.accept()


def tick(
    text: str,
    act: Callable[[bool], object],
    offers: Sequence[Offered] = (),
    held: str = "",
    *,
    done: bool,
) -> Piece[TickRow]:
    """A step to be ticked off, and what can be done about it."""
    return Piece("tick", TickRow, lambda made: made.fill(text, act, offers, held, done=done))
