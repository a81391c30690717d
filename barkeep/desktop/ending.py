"""Ctrl+C in the terminal, and being told to end: the program leaves as by its menu."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

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
