"""A long question of documents: asked off the GUI thread, its progress shown, stoppable."""

from __future__ import annotations

from collections.abc import Callable
from itertools import count
from threading import Event
from typing import TypeVar

from PySide6.QtCore import QObject, QTimer, Signal

from barkeep.application.spec_imports import Progress
from barkeep.desktop.screens.background import Background
from barkeep.errors import UserError

T = TypeVar("T")

LOOK_EVERY_MS = 40

_NUMBERS = count(1)


class _Shared:
    """What the thread that answers writes and the GUI thread reads."""

    def __init__(self) -> None:
        self.done = self.total = 0
        self.stop = Event()

    def tell(self, done: int, total: int) -> bool:
        """The question's `Progress`."""
        self.done, self.total = done, total
        return not self.stop.is_set()


class LongQuestion(QObject):
    """One question at a time; `moved` carries how much of how much is done."""

    moved = Signal(int, int)

    def __init__(self, background: Background, parent: QObject) -> None:
        super().__init__(parent)
        self._background = background
        self._key = f"documents-{next(_NUMBERS)}"
        self._shared = _Shared()
        self._running = False
        self._timer = QTimer(self)
        self._timer.setInterval(LOOK_EVERY_MS)
        self._timer.timeout.connect(self._look)

    @property
    def is_running(self) -> bool:
        """Whether an answer is still to come."""
        return self._running

    def ask(
        self,
        question: Callable[[Progress], T],
        on_answer: Callable[[T], object],
        on_refused: Callable[[UserError], object],
    ) -> None:
        """Run `question` with a `Progress` to call; the answer comes on the GUI thread."""
        self._shared = shared = _Shared()
        self._running = True
        self._timer.start()

        def answered(answer: T) -> None:
            self._end()
            on_answer(answer)

        def refused(error: UserError) -> None:
            self._end()
            on_refused(error)

        self._background.ask(self._key, lambda: question(shared.tell), answered, refused)

    def stop(self) -> None:
        """Let it end without having done anything; that it has arrives as a refusal."""
        self._shared.stop.set()

    def abandon(self) -> None:
        """Stop, and want to hear no more."""
        self.stop()
        self._background.forget(self._key)
        self._timer.stop()
        self._running = False

    def _look(self) -> None:
        self.moved.emit(self._shared.done, self._shared.total)

    def _end(self) -> None:
        self._running = False
        self._timer.stop()
