"""What a bar tells of its changes, as a Qt signal."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QObject, Signal

from barkeep.domain.bar.changes import Changes


class Telling(Protocol):
    """What this needs of a bar."""

    def subscribe(self, callback: Callable[[Changes], None], /) -> Callable[[], None]: ...


class BarSignals(QObject):
    """`changed` carries the parts of the bar that changed, such as *bottles* or *trials*."""

    changed = Signal(object)

    def __init__(self, bar: Telling, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._unsubscribe = bar.subscribe(self.changed.emit)

    def stop(self) -> None:
        """Listen no longer; to be called before the bar closes."""
        self._unsubscribe()
