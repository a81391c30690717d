"""What stands where a list would be: a picture, one line, and what to do about it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import PAD, UNIT, TypeSize
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.labels import Link, LinkLabel, PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, row_of
from barkeep.translation import tr, tr_noop

PICTURE = 96
TO_BOTTLES = (
    tr_noop("Begin with your shelf: "),
    Link(tr_noop("tick what you own"), "tick-bottles"),
    tr_noop(", or paste "),
    Link(tr_noop("a list"), "bottle-list"),
    ".",
)
"""How bottles come into a bar that has none."""
WIDER = tr_noop("Try fewer or other words, or a wider filter")
"""What to do where nothing matches."""


class EmptyState(QWidget):
    """`acted` says that the button was pressed, `acted_second` the other one.

    `leads` is a sentence with links below the buttons, whose targets `followed` carries.
    Pictures: *picture-empty-shelf*, *picture-no-match*, *picture-empty-glass*.
    """

    acted = Signal()
    acted_second = Signal()
    followed = Signal(str)

    def __init__(
        self,
        picture: str,
        title: str,
        line: str = "",
        action: str = "",
        second_action: str = "",
        parent: QWidget | None = None,
        *,
        leads: Sequence[str | Link] = (),
    ) -> None:
        super().__init__(parent)
        self._image = PictureLabel(picture, PICTURE, "glass")
        self.title = text_label(tr(title), TypeSize.SUBTITLE, wrap=True)
        self.line = text_label(tr(line), quiet=True, wrap=True)
        if not line:
            self.line.hide()
        self.buttons: list[QPushButton] = []
        if action:
            self.buttons.append(primary_button(action, self.acted.emit))
        if second_action:
            self.buttons.append(button(second_action, self.acted_second.emit))
        self.leads = LinkLabel([_said(each) for each in leads])
        self.leads.followed.connect(self.followed)
        self._lay_out()
        self.leads.setVisible(bool(leads))  # shown before it is laid out it would be a window

    @classmethod
    def no_match(cls, noun: str, parent: QWidget | None = None) -> EmptyState:
        """The form for a filter that leaves nothing; `acted` asks to clear it."""
        title = tr("No {noun} match", noun=tr(noun))
        return cls("picture-no-match", title, WIDER, tr_noop("Clear filter"), parent=parent)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setSpacing(UNIT)
        column.addStretch(2)
        column.addWidget(self._image, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addSpacing(UNIT)
        for label in (self.title, self.line):
            label.setAlignment(Qt.AlignmentFlag.AlignCenter)
            column.addWidget(label)
        column.addSpacing(UNIT)
        row = row_of(SPRING, *self.buttons, SPRING)
        column.addLayout(row)
        self.leads.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.addWidget(self.leads)
        column.addStretch(3)
        column.setContentsMargins(PAD, PAD, PAD, PAD)


def _said(part: str | Link) -> str | Link:
    return tr(part) if isinstance(part, str) else Link(tr(part.text), part.target)
