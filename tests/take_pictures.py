"""Take the pictures of the README from the sample bar: `python -m tests.take_pictures`."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QCoreApplication, QElapsedTimer, QEventLoop, QSize, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.application.sample import build
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks

PICTURES = Path(__file__).resolve().parent.parent / "resources" / "pictures"
SIZE = QSize(1280, 800)
DAY = datetime(2026, 11, 21, 12, 0)
QUIET_MS, MOST_MS = 400, 60_000
"""A window that has worked on nothing for so long is shown as it stays; longer is a fault."""

Key = Qt.Key


def _press(window: MainWindow, key: Qt.Key, held: Qt.KeyboardModifier | None = None) -> None:
    target = QApplication.focusWidget() or window
    QTest.keyClick(target, key, held or Qt.KeyboardModifier.NoModifier)


def _page(number: int) -> Callable[[MainWindow], None]:
    key = Key(Key.Key_0.value + number)
    return lambda window: _press(window, key, Qt.KeyboardModifier.ControlModifier)


def _tonight(window: MainWindow) -> None:
    _page(1)(window)
    _settle(window)
    for _ in range(5):  # to a drink in a coupe
        _press(window, Key.Key_Down)


def _counting(window: MainWindow) -> None:
    _page(2)(window)
    _settle(window)
    window.current.count_shelf()
    _settle(window)
    for key in (Key.Key_4, Key.Key_7, Key.Key_5):
        _press(window, key)


def _plan(window: MainWindow) -> None:
    _page(5)(window)
    _settle(window)
    _press(window, Key.Key_F6)


TAKEN: dict[str, Callable[[MainWindow], None]] = {
    "tonight.png": _tonight,
    "shoots.png": _page(4),
    "buying.png": _plan,
    "counting.png": _counting,
}


def _settle(window: MainWindow) -> None:
    """Let it work until it has had nothing to do for a while."""
    quiet, whole = QElapsedTimer(), QElapsedTimer()
    quiet.start()
    whole.start()
    while quiet.elapsed() < QUIET_MS:
        QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents, 50)
        if window.background.is_busy:
            quiet.restart()
        if whole.elapsed() > MOST_MS:
            raise TimeoutError("the window is still at work")


@contextmanager
def _window(folder: Path) -> Iterator[MainWindow]:
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    build(folder / "sample.barkeep", clock=lambda: DAY)
    theme = Theme(app, "light")
    with Bar.open(folder / "sample.barkeep", clock=lambda: DAY) as bar:
        window = MainWindow(bar, WindowState(folder / "window.ini"), theme, WindowHooks())
        window.resize(SIZE)
        window.show()
        window.activateWindow()
        _settle(window)
        yield window
        window.close_unasked()
    theme.remove_pictures()


def main() -> None:
    """Write every picture anew."""
    with TemporaryDirectory() as folder, _window(Path(folder)) as window:
        for name, go in TAKEN.items():
            go(window)
            _settle(window)
            window.grab().save(str(PICTURES / name))
            print(PICTURES / name)


if __name__ == "__main__":
    main()
