"""Long work: answers asked for off the GUI thread, and steps taken on it a little at a time."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import count
from threading import Event
from time import perf_counter
from typing import TYPE_CHECKING, Any, Generic, TypeVar

from PySide6.QtCore import QObject, Qt, QThreadPool, QTimer, Signal

from barkeep.errors import UserError

if TYPE_CHECKING:
    from barkeep.application.imports import Progress

T = TypeVar("T")
ONE_AT_A_TIME = 1
"""Answers hold Python's lock, so a second thread would only slow the window down."""

QUIET_TURNS = 2
"""What is new is painted in the first, and once more in the second if it made a scroll bar."""


@dataclass(slots=True)
class _Question:
    key: str
    ask: Callable[[], Any]
    on_answer: Callable[[Any], object]
    on_refused: Callable[[UserError], object] | None
    answer: Any = None
    error: BaseException | None = None


class Background(QObject):
    """Asks questions one after another; answers come on the GUI thread.

    None is begun before the GUI thread has done what it is at: both hold Python's lock.
    What is to be done on the GUI thread `soon` is awaited as an answer is.
    A newer question under the same key takes the place of one that waits, and
    the answer to one that already runs is thrown away. A fault in a question
    is raised on the GUI thread, where the crash dialog takes it. `idle` comes when an answer was
    given, or something done, and no other is to come.
    """

    idle = Signal()
    finishing = Signal()
    """Nobody waits any more for what runs."""
    _answered = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(ONE_AT_A_TIME)
        self._newest: dict[str, _Question] = {}
        self._waiting: dict[str, _Question] = {}
        self._running: _Question | None = None
        self._starter = QTimer(self, interval=0, singleShot=True)
        self._starter.timeout.connect(self._start_next)
        self._answered.connect(self._deliver, Qt.ConnectionType.QueuedConnection)
        self._asides: dict[str, Background] = {}
        self._soon: dict[str, Callable[[], object]] = {}
        self._turns_left = 0
        self._turns = QTimer(self, interval=0)
        self._turns.timeout.connect(self._turn)
        self._is_finished = False

    def aside(self, key: str) -> Background:
        """Where one long question may be worked on while all others go on being answered."""
        if key not in self._asides:
            self._asides[key] = made = Background(self)
            made.idle.connect(self._tell_idle)
        return self._asides[key]

    def ask(
        self,
        key: str,
        question: Callable[[], T],
        on_answer: Callable[[T], object],
        on_refused: Callable[[UserError], object] | None = None,
    ) -> None:
        """Run `question` and give what it returns to `on_answer`.

        It must not touch Qt or the bar: `ask("tonight", partial(tonight, bar.snapshot), show)`.
        """
        if self._is_finished:
            return  # a widget that is painted once more while its window goes
        asked = _Question(key, question, on_answer, on_refused)
        self._newest[key] = asked
        self._waiting.pop(key, None)
        self._waiting[key] = asked
        self._starter.start()

    def soon(self, key: str, act: Callable[[], object]) -> None:
        """Do something on this thread in a later turn: what is there by now is painted before.

        What waits under the same key is not done any more.
        """
        if not self._is_finished:
            self._soon[key] = act
            self._turns_left = QUIET_TURNS
            self._turns.start()

    def at_once(self, key: str) -> None:
        """Do now what was to be done soon under this key."""
        self._soon.pop(key, lambda: None)()

    def forget(self, key: str) -> None:
        """Want no answer under this key any more, nor what was to be done."""
        self._newest.pop(key, None)
        self._waiting.pop(key, None)
        self._soon.pop(key, None)

    def finish(self) -> None:
        """Start nothing more, want no answers, and wait for what runs."""
        self._is_finished = True
        self._starter.stop()
        self._waiting.clear()
        self._newest.clear()
        self._soon.clear()
        self.finishing.emit()
        for each in self._asides.values():
            each.finish()
        self._pool.waitForDone()

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        is_aside = any(each.is_busy for each in self._asides.values())
        return self._running is not None or bool(self._waiting or self._soon) or is_aside

    def _turn(self) -> None:
        """One thing of what waits at a time, once the turns before it are over."""
        if self._soon and self._turns_left:
            self._turns_left -= 1
        elif self._soon:
            self._turns_left = QUIET_TURNS
            self._soon.pop(next(iter(self._soon)))()
        if not self._soon:  # or it was forgotten meanwhile
            self._turns.stop()
            self._tell_idle()

    def _start_next(self) -> None:
        if self._running is not None or not self._waiting:
            return
        key = next(iter(self._waiting))
        self._running = self._waiting.pop(key)
        running = self._running
        self._pool.start(lambda: self._work(running))

    def _work(self, question: _Question) -> None:
        """On the pool's thread."""
        try:
            question.answer = question.ask()
        except BaseException as error:
            question.error = error
        self._answered.emit(question)

    def _deliver(self, question: _Question) -> None:
        self._running = None
        wanted = self._newest.get(question.key) is question
        if wanted:
            del self._newest[question.key]
        self._starter.start()
        if wanted:
            _hand_over(question)
        self._tell_idle()

    def _tell_idle(self) -> None:
        if not self.is_busy:
            self.idle.emit()


def _hand_over(question: _Question) -> None:
    if question.error is None:
        question.on_answer(question.answer)
    elif isinstance(question.error, UserError) and question.on_refused is not None:
        question.on_refused(question.error)
    else:
        raise question.error


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
    """One question at a time that can be stopped; `moved` carries how much of how much is done."""

    moved = Signal(int, int)

    def __init__(self, background: Background, parent: QObject) -> None:
        super().__init__(parent)
        self._background = background
        self._key = f"documents-{next(_NUMBERS)}"
        self._shared = _Shared()
        self.is_running = False
        """Whether an answer is still to come."""
        self._timer = QTimer(self, interval=LOOK_EVERY_MS)
        self._timer.timeout.connect(self._look)
        background.finishing.connect(self.stop)

    def ask(
        self,
        question: Callable[[Progress], T],
        on_answer: Callable[[T], object],
        on_refused: Callable[[UserError], object],
    ) -> None:
        """Run `question` with a `Progress` to call; the answer comes on the GUI thread."""
        self._shared = shared = _Shared()
        self.is_running = True
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
        self.is_running = False

    def _look(self) -> None:
        self.moved.emit(self._shared.done, self._shared.total)

    def _end(self) -> None:
        self.is_running = False
        self._timer.stop()


SLICE_S = 0.012
"""So long at a time; less than a frame at 60 a second."""


class Steps(QObject, Generic[T]):
    """Runs an iterator; what is started next takes its place. An error in it ends it."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._steps: Iterator[T] | None = None
        self._on_step: Callable[[T], object] = lambda _step: None
        self._on_done: Callable[[], object] = lambda: None
        self._timer = QTimer(self, interval=0)
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
