"""What can be done with something, as values; buttons that offer it, filled again and again."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtWidgets import QAbstractButton, QLabel, QPushButton, QWidget

from barkeep.desktop.look.metrics import HALF
from barkeep.desktop.widgets.buttons import button, offer, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.layouts import column_of, row_of
from barkeep.translation import tr


@dataclass(frozen=True)
class Offered:
    """Something that can be done: what it says and does, and what it is called where that is more.

    `keys` is its shortcut, as it is written; `unless` says why it cannot be done just now, empty
    where it can; `writes` whether it changes the bar, which nothing does while that is on paper.
    """

    text: str
    act: Callable[[], object]
    picture: str = ""
    name: str = ""
    primary: bool = False
    keys: str = ""
    unless: str = ""
    writes: bool = True

    @property
    def words(self) -> str:
        """What it is called."""
        return tr(self.name) or tr(self.text).replace("&", "")

    def why_not(self, held: str) -> str:
        """Why it cannot be done, where nothing may be written for a reason; empty where it can."""
        return held if held and self.writes else tr(self.unless)


class OfferedRow(QWidget):
    """Buttons beside each other, as far as there is room where it `wraps`.

    `shown` are those offered now.
    """

    def __init__(self, *, wraps: bool = True) -> None:
        super().__init__()
        self._row = FlowLayout() if wraps else row_of()
        self._made: list[tuple[tuple[str, bool], QPushButton]] = []
        self._acts: dict[QPushButton, Callable[[], object]] = {}
        self._last: QWidget | None = None
        self.shown: tuple[QPushButton, ...] = ()
        column_of(self._row, on=self, margins=(0, HALF if wraps else 0, 0, 0), gap=0)

    def end_with(self, widget: QWidget) -> None:
        """Put a widget after the buttons, whichever they are."""
        self._last = widget
        self._row.addWidget(widget)

    def fill(self, offers: Sequence[Offered], held: str = "") -> None:
        """Offer these; those that write not, where that is `held` for a reason."""
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
            _dress(kept[1], each, held)
        before = [made for _kind, made in self._made if made in self.shown]
        self._made = [*shown, *spare]
        self.shown = tuple(made for _kind, made in shown)
        if before != list(self.shown):
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
                forget_words(made)
        if self._last is not None:
            self._row.addWidget(self._last)
        self._row.update()  # one that is shown while those around are held asks for no room


def _dress(made: QPushButton, offered: Offered, held: str) -> None:
    """Say on a button what it does now, and by which keys."""
    made.setText(tr(offered.text))
    made.setAccessibleName(offered.words)
    made.setProperty("own_tooltip", f"{offered.words} ({offered.keys})" if offered.keys else "")
    offer(made, offered.why_not(held))


def forget_words(widget: QWidget) -> None:
    """What is not shown says nothing, to whoever looks for words."""
    for each in (widget, *widget.findChildren(QWidget)):
        if isinstance(each, QLabel):
            each.clear()
        elif isinstance(each, QAbstractButton):
            each.setText("")
            each.setAccessibleName("")
