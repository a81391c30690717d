"""Around the program: the window until the bar is read, leaving when told to, and garbage."""

from __future__ import annotations

import gc
import signal
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtGui import QGuiApplication, QPaintEvent
from PySide6.QtWidgets import QApplication, QMainWindow, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import UNIT, TypeSize
from barkeep.desktop.screens.window_state import WindowState, restore_window
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.translation import tr

PICTURE = 96


class OpeningWindow(QMainWindow):
    """`painted` comes once, after the first paint."""

    painted = Signal()

    def __init__(self, state: WindowState) -> None:
        super().__init__()
        self.setWindowTitle("barkeep")
        self._was_painted = False
        centre = QWidget()
        column = QVBoxLayout(centre)
        column.setSpacing(UNIT)
        column.addStretch(2)
        column.addWidget(PictureLabel("barkeep", PICTURE), 0, Qt.AlignmentFlag.AlignHCenter)
        self.label = text_label(tr("Opening the bar…"), TypeSize.TITLE)
        column.addWidget(self.label, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addStretch(3)
        self.setCentralWidget(centre)
        restore_window(self, state)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._was_painted:
            self._was_painted = True
            self.painted.emit()


ENDING = (signal.SIGINT, signal.SIGTERM)


@contextmanager
def ended_by_signals(app: QApplication) -> Iterator[None]:
    """Leave the event loop on SIGINT and SIGTERM; for the main thread.

    Python calls a handler only once it runs itself: something must call it now
    and then, as the collector of garbage does each second.
    """

    def end(_number: int, _frame: object) -> None:
        # Not `quit`: that asks every window, and here nobody may be there to answer.
        QTimer.singleShot(0, partial(app.exit, 0))

    before = {each: signal.signal(each, end) for each in ENDING}
    try:
        yield
    finally:
        for each, handler in before.items():
            signal.signal(each, handler)


EVERY_MS = 1000
OLD = 2
"""The oldest generation, which holds nearly everything."""
AN_ANSWER = 20_000
"""Things made since the last time; what a user does in a second makes far fewer."""


def _due() -> list[int]:
    """The generations that Python would collect, youngest first."""
    return [
        generation
        for generation, (count, limit) in enumerate(
            zip(gc.get_count(), gc.get_threshold(), strict=True)
        )
        if limit and count > limit
    ]


class GarbageOnThisThread(QObject):
    """Collects on the thread it was made on, as often as Python would, until `stop`.

    A cycle may hold a widget, and whichever thread collects the cycle destroys
    the widget; Qt objects must go on the thread they live on. Answers are worked
    out on another thread and allocate a great deal, so left to itself the
    collector would mostly run there.

    Looking through a large answer would hold the window, and an answer is no garbage: after
    one, all that is there is set aside unseen, and looked through when nobody uses the window.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        gc.disable()
        self._is_set_aside = False
        self._timer = QTimer(self)
        self._timer.timeout.connect(self.collect)
        self._timer.start(EVERY_MS)

    def collect(self) -> None:
        """Collect the oldest generation that is due, if any; the very old ones out of use only."""
        if QGuiApplication.focusWindow() is None:
            self._bring_back()
            for generation in _due()[-1:]:
                gc.collect(generation)
        elif gc.get_count()[0] > AN_ANSWER:
            self._set_aside()
        else:
            for generation in _due()[-1:]:
                gc.collect(min(generation, OLD - 1))
                if generation == OLD:
                    self._set_aside()

    def _set_aside(self) -> None:
        gc.freeze()
        self._is_set_aside = True

    def _bring_back(self) -> None:
        if self._is_set_aside:
            gc.unfreeze()
            self._is_set_aside = False
            gc.collect()

    def stop(self) -> None:
        """Let Python collect by itself again."""
        self._timer.stop()
        gc.unfreeze()
        gc.enable()
