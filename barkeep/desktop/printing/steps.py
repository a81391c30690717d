"""Long work on the GUI thread, done a little at a time so that the window stays alive."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from time import perf_counter
from typing import Generic, TypeVar

from PySide6.QtCore import QObject, QTimer

T = TypeVar("T")
SLICE_S = 0.012
"""So long at a time; less than a frame at 60 a second."""


class Steps(QObject, Generic[T]):
    """Runs an iterator; what is started next takes its place. An error in it ends it."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._steps: Iterator[T] | None = None
        self._on_step: Callable[[T], object] = lambda _step: None
        self._on_done: Callable[[], object] = lambda: None
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._work)

    @property
    def running(self) -> bool:
        """Whether there is something left to do."""
        return self._steps is not None

    def start(
        self, steps: Iterator[T], on_step: Callable[[T], object], on_done: Callable[[], object]
    ) -> None:
        """Run these steps, and nothing that was started before."""
        self._steps, self._on_step, self._on_done = steps, on_step, on_done
        self._timer.start()

    def stop(self) -> None:
        """Do no more; `on_done` is not called."""
        self._steps = None
        self._timer.stop()

    def _work(self) -> None:
        until = perf_counter() + SLICE_S
        while self._steps is not None and perf_counter() < until:
            running = self._steps
            try:
                step = next(running)
            except StopIteration:
                self.stop()
                self._on_done()
                return
            except BaseException:
                self.stop()
                raise
            if self._steps is running:
                self._on_step(step)
