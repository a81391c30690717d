"""That an answer is being worked on, said once it takes longer than two frames."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QGraphicsOpacityEffect, QLabel, QWidget

from barkeep.desktop.look.metrics import TypeSize
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import row_of
from barkeep.desktop.widgets.notices import announce

TWO_FRAMES_MS = 33
DIMMED = 0.5
"""How much is seen of what the answer will replace."""


class Waiting(QWidget):
    """Says what is being worked on, and dims what stands there from before until it has come."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._label = text_label("", TypeSize.CAPTION, quiet=True)
        row_of(self._label, on=self, gap=0)
        self._label.hide()
        self._waits: dict[str, str] = {}
        self._dims: QGraphicsOpacityEffect | None = None
        self._timer = QTimer(self, interval=TWO_FRAMES_MS, singleShot=True)
        self._timer.timeout.connect(self._say)

    @property
    def label(self) -> QLabel:
        """What says it."""
        return self._label

    def dim(self, widget: QWidget) -> None:
        """Dim this while something is waited for."""
        self._dims = QGraphicsOpacityEffect(widget)
        self._dims.setOpacity(DIMMED)
        self._dims.setEnabled(False)
        widget.setGraphicsEffect(self._dims)

    def begin(self, what: str, words: str) -> None:
        """Something is being worked on: *Working out the serves…*."""
        self._waits.pop(what, None)
        self._waits[what] = words
        if not self._label.isHidden():
            self._say()
        elif not self._timer.isActive():
            self._timer.start()

    def end(self, what: str) -> None:
        """It has come, or is not wanted any more."""
        self._waits.pop(what, None)
        if not self._waits:
            self._timer.stop()
            self._label.hide()
            self._set_dimmed(False)
        elif not self._label.isHidden():
            self._say()

    def _say(self) -> None:
        words = next(reversed(self._waits.values()))
        if self._label.isHidden():
            announce(self, words)
        self._label.setText(words)
        self._label.show()
        self._set_dimmed(True)

    def _set_dimmed(self, on: bool) -> None:
        if self._dims is not None and self._dims.isEnabled() != on:
            self._dims.setEnabled(on)
