"""What comes of bottles that were put on the shelf: one sentence that leads on."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from barkeep.application.done import Step
from barkeep.desktop.first_hour.enter import pressed_by_enter
from barkeep.desktop.first_hour.linked import linked
from barkeep.desktop.look.metrics import PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.details import ScrolledPage
from barkeep.desktop.widgets.labels import Link, LinkLabel, PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of
from barkeep.domain.buying.reach import Reach
from barkeep.domain.phrases import counted
from barkeep.translation import tr, tr_noop

PICTURE = 72
WORKING = tr_noop("Working out what you can make…")


class Ending(ScrolledPage):
    """`wanted` carries the page that a link leads to, `more` asks for another list."""

    wanted = Signal(str)
    more = Signal()
    undone = Signal()

    def __init__(self, more: str) -> None:
        super().__init__(tr("What came of it"), 300)
        self.came = text_label("", TypeSize.TITLE, wrap=True)
        self.reach = LinkLabel(size=TypeSize.SUBTITLE)
        self.guessed = LinkLabel()
        self.tonight = primary_button(tr("See &tonight"), lambda: self.wanted.emit("tonight"))
        self.more_button = button(more, self.more.emit)
        self.undo_button = button(tr("&Undo"), self.undone.emit)
        self.step: Step | None = None
        pressed_by_enter(self.tonight, self.more_button, self.undo_button)
        for label in (self.reach, self.guessed):
            label.followed.connect(self.wanted)
        page = QWidget()
        column_of(
            SPRING,
            row_of(SPRING, PictureLabel("picture-empty-glass", PICTURE, "glass"), SPRING),
            self.came,
            self.reach,
            self.guessed,
            UNIT,
            row_of(SPRING, self.tonight, self.more_button, self.undo_button, SPRING),
            SPRING,
            SPRING,
            on=page,
            margins=WIDE,
            gap=PAD,
        )
        for said in (self.came, self.reach, self.guessed):
            said.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.show_page(page)

    def show_came(self, bottles: int, guessed: int, step: Step | None) -> None:
        """Say what came in, and that the rest is being worked out."""
        self.step = step
        self.came.setText(tr("{bottles} came in.", bottles=counted(bottles, "bottle")))
        told = tr_noop("{guessed} levels are guessed: {count} when you like.")
        if guessed == 1:
            told = tr_noop("{guessed} level is guessed: {count} when you like.")
        count = Link(tr("count the shelf"), "bottles")
        self.guessed.show_parts(linked(told, guessed=guessed, count=count) if guessed else ())
        self.guessed.setVisible(bool(guessed))
        self.reach.show_parts((tr(WORKING),))

    def show_reach(self, found: Reach) -> None:
        """Say what can be made now, and with one more bottle; each leads to where it is shown."""
        self.reach.show_parts(
            linked(
                tr_noop("You can make {tonight}, and {one_more}."),
                tonight=Link(found.tonight_in_words, "tonight"),
                one_more=Link(found.one_more_in_words, "next-bottle"),
            )
        )

    def take_focus(self) -> None:
        """Go to what most want next."""
        self.tonight.setFocus(Qt.FocusReason.TabFocusReason)
