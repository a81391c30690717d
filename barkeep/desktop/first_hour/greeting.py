"""What an empty bar says first: how bottles come into it, and where else one may look."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from barkeep.desktop.first_hour.enter import pressed_by_enter
from barkeep.desktop.first_hour.linked import linked
from barkeep.desktop.look.metrics import PAD, UNIT, WIDE, TypeSize, scaled
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.details import ScrolledPage
from barkeep.desktop.widgets.labels import Link, LinkLabel, PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of
from barkeep.translation import tr, tr_noop

PICTURE = 72
TICK, LISTED = tr_noop("&Tick what you own"), tr_noop("I have a &list")
LOOK, OPEN = tr_noop("Look around the sample &bar"), tr_noop("Open a ba&r…")
WIDEST = 620
ANYWAY = "anyway"


class Greeting(ScrolledPage):
    """`wanted` carries the key of the page that was asked for; `shown_anyway` asks for the drinks.

    What needs the window is offered by `offer_bars`.
    """

    wanted = Signal(str)
    shown_anyway = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("What to begin with"), 300, parent)
        self.first = primary_button(TICK, lambda: self.wanted.emit("tick-bottles"))
        self.listed = button(LISTED, lambda: self.wanted.emit("bottle-list"))
        self.look = button(LOOK)
        self.open = button(OPEN)
        pressed_by_enter(*self.buttons)
        self.anyway = LinkLabel()
        self.anyway.followed.connect(lambda _target: self.shown_anyway.emit())
        self._grid = QGridLayout()
        self.show_page(self._page())
        self.offer_bars(None, None)

    def say_drinks(self, drinks: int) -> None:
        """Say how many drinks wait for bottles."""
        self.anyway.show_parts(
            linked(
                tr_noop("Or see all {n} drinks, each with {lack}."),
                n=drinks,
                lack=Link(tr("what it lacks"), ANYWAY),
            )
        )

    def offer_bars(
        self, look_around: Callable[[], object] | None, open_bar: Callable[[], object] | None
    ) -> None:
        """Offer the sample bar and another bar, where the window can show them."""
        for each, act in ((self.look, look_around), (self.open, open_bar)):
            each.setVisible(act is not None)
            place = self._grid.indexOf(each) + 1
            item = self._grid.itemAt(place)
            said = None if item is None else item.widget()
            if said is not None:
                said.setVisible(act is not None)
            if act is not None:
                each.clicked.connect(act)

    def _page(self) -> QWidget:
        offers = (
            (
                self.first,
                tr("Pictures of what drinks ask for most: go over your shelf and tick it."),
            ),
            (
                self.listed,
                tr("Paste or drop it, a bottle a line, in any words. What is doubtful is asked."),
            ),
            (
                self.look,
                tr(
                    "A copy to try everything on. Nothing of it is kept, and your bar stays as it "
                    "is."
                ),
            ),
            (self.open, tr("One that is in a file already.")),
        )
        self._grid.setHorizontalSpacing(PAD)
        self._grid.setVerticalSpacing(UNIT)
        self._grid.setColumnStretch(1, 1)
        for number, (each, said) in enumerate(offers):
            words = text_label(said, quiet=True, wrap=True)
            self._grid.addWidget(each, number, 0)
            self._grid.addWidget(words, number, 1)
            each.setAccessibleDescription(said)
        inner = QWidget()
        inner.setMaximumWidth(scaled(WIDEST))
        column_of(
            row_of(
                PictureLabel("picture-empty-shelf", PICTURE, "glass"),
                column_of(
                    text_label(tr("What stands on your shelf?"), TypeSize.TITLE, wrap=True),
                    text_label(
                        tr("Tell barkeep what you have, and it says what you can make tonight."),
                        quiet=True,
                        wrap=True,
                    ),
                ),
                gap=PAD,
            ),
            UNIT,
            self._grid,
            UNIT,
            self.anyway,
            on=inner,
            gap=PAD,
        )
        page = QWidget()
        column_of(
            SPRING,
            row_of(SPRING, inner, SPRING),
            SPRING,
            SPRING,
            on=page,
            margins=WIDE,
        )
        return page

    def take_focus(self) -> None:
        """Go to what most begin with."""
        self.first.setFocus(Qt.FocusReason.TabFocusReason)

    @property
    def buttons(self) -> tuple[QPushButton, ...]:
        """What may be begun with, those that are not offered among them."""
        return (self.first, self.listed, self.look, self.open)
