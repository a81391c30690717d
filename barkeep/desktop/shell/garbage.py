"""Python's cycle collector, kept to the GUI thread.

A cycle may hold a widget, and whichever thread collects the cycle destroys the
widget; Qt objects must go on the thread they live on. Answers are worked out
on another thread and allocate a great deal, so left to itself the collector
would mostly run there.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

EVERY_MS = 1000


class GarbageOnThisThread(QObject):
    """Collects on the thread it was made on, as often as Python would, until `stop`."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        gc.disable()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self.collect)
        self._timer.start(EVERY_MS)

    def collect(self) -> None:
        """Collect the oldest generation that is due, if any."""
        due = [
            generation
            for generation, (count, limit) in enumerate(
                zip(gc.get_count(), gc.get_threshold(), strict=True)
            )
            if limit and count > limit
        ]
        if due:
            gc.collect(due[-1])

    def stop(self) -> None:
        """Let Python collect by itself again."""
        self._timer.stop()
        gc.enable()
