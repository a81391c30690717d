"""Wrapped words in which some can be followed, by mouse or by Tab and Enter."""

from __future__ import annotations

import html
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QLabel, QWidget

from barkeep.desktop.metrics import TypeSize, set_type
from barkeep.desktop.tones import current_tones


@dataclass(frozen=True, slots=True)
class Link:
    """Words that lead to `target`."""

    text: str
    target: str


class LinkLabel(QLabel):
    """`followed` carries the target of the link the user took."""

    followed = Signal(str)

    def __init__(
        self,
        parts: Sequence[str | Link],
        size: TypeSize = TypeSize.BODY,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._parts = tuple(parts)
        set_type(self, size)
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setWordWrap(True)
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.LinksAccessibleByMouse
            | Qt.TextInteractionFlag.LinksAccessibleByKeyboard
        )
        self.setAccessibleName(self.plain_text)
        self.linkActivated.connect(self.followed)
        self._write()

    @property
    def plain_text(self) -> str:
        """What it says."""
        return "".join(part if isinstance(part, str) else part.text for part in self._parts)

    @property
    def links(self) -> tuple[Link, ...]:
        """What can be followed."""
        return tuple(part for part in self._parts if isinstance(part, Link))

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        forward = event.reason() == Qt.FocusReason.TabFocusReason
        if self.links and (forward or event.reason() == Qt.FocusReason.BacktabFocusReason):
            self.focusNextPrevChild(forward)  # straight to a link, not to the words first

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._write()

    def _write(self) -> None:
        # A rich text keeps the link colour it was first read with, so the theme is written in.
        colour = current_tones().link
        self.setText("".join(_marked_up(part, colour) for part in self._parts))


def _marked_up(part: str | Link, colour: str) -> str:
    if isinstance(part, str):
        return html.escape(part)
    target, words = html.escape(part.target), html.escape(part.text)
    return f'<a href="{target}" style="color: {colour}">{words}</a>'
