"""A state that lasts, or a mistake shown where it was made: shape, words, what to do."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QSizePolicy, QWidget

from barkeep.desktop.metrics import HALF, ICON, UNIT
from barkeep.desktop.widgets.announce import announce
from barkeep.desktop.widgets.buttons import quiet_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label

BannerKind = Literal["info", "warning", "error", "done"]
_PICTURES = {"info": "info", "warning": "warning", "error": "error", "done": "check"}
_TONES = {"info": "info", "warning": "warning", "error": "danger", "done": "ready"}


class Banner(QFrame):
    """Hidden until `say`; `dismissed` when the user closes it."""

    dismissed = Signal()

    def __init__(self, parent: QWidget | None = None, *, closable: bool = True) -> None:
        super().__init__(parent)
        self._kind: BannerKind = "info"
        self._act: Callable[[], object] | None = None
        self._image = PictureLabel("info", ICON, "info")
        self._words = text_label("", wrap=True)
        self._words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self._button = QPushButton()
        self._button.clicked.connect(self._on_act)
        self._close = quiet_button("clear", "Dismiss", self._on_close)
        if not closable:
            self._close.hide()
        row = QHBoxLayout(self)
        row.setContentsMargins(UNIT + HALF, HALF, HALF, HALF)
        row.setSpacing(UNIT)
        row.addWidget(self._image, 0, Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(self._words, 1)
        row.addWidget(self._button)
        row.addWidget(self._close)
        self.hide()

    @property
    def text(self) -> str:
        """What it says, empty while hidden."""
        return self._words.text() if not self.isHidden() else ""

    @property
    def kind(self) -> BannerKind:
        """What kind of message it is."""
        return self._kind

    def say(
        self,
        text: str,
        kind: BannerKind = "error",
        action: str = "",
        on_action: Callable[[], object] | None = None,
    ) -> None:
        """Show a message, in place of the one before."""
        self._kind, self._act = kind, on_action
        self._words.setText(text)
        self._button.setText(action)
        self._button.setVisible(bool(action))
        self.setAccessibleName(text)
        self.setProperty("banner", kind)
        self.style().unpolish(self)
        self.style().polish(self)
        self._image.show_picture(_PICTURES[kind], _TONES[kind])
        self.show()
        announce(self, text)

    def clear(self) -> None:
        """Take the message away."""
        self._act = None
        self.hide()

    def _on_act(self) -> None:
        if self._act is not None:
            self._act()

    def _on_close(self) -> None:
        self.clear()
        self.dismissed.emit()
