"""Take all pictures of the window anew: `python -m tests.take_pictures`.

Those of the README, those that tests compare the window with, and a sheet of these.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.application.sample import build
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.shell.main_window import MainWindow
from tests.desktop.looks import (
    DAY,
    KEPT,
    LOOKS,
    at_rest,
    contact_sheet,
    reduced,
    taken,
    window_over,
)

PICTURES = Path(__file__).resolve().parent.parent / "resources" / "pictures"
SHEET = "contact-sheet.png"

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
    at_rest(window, window)


def _take_for_readers(folder: Path, theme: Theme) -> None:
    build(folder / "sample.barkeep", clock=lambda: DAY)
    with (
        Bar.open(folder / "sample.barkeep", clock=lambda: DAY) as bar,
        window_over(bar, folder, theme) as window,
    ):
        for name, go in TAKEN.items():
            go(window)
            at_rest(window, window).save(str(PICTURES / name))
            print(PICTURES / name)


def _take_to_compare(folder: Path, theme: Theme) -> None:
    """What tests compare the window with, and all of it on one sheet."""
    KEPT.mkdir(parents=True, exist_ok=True)
    for old in KEPT.glob("*.png"):
        old.unlink()
    pictures = []
    for kind in LOOKS:
        for name, picture in taken(kind, folder, theme):
            pictures.append(picture)
            reduced(picture).save(str(KEPT / f"{name}.png"))
            print(KEPT / f"{name}.png")
    contact_sheet(pictures).save(str(PICTURES / SHEET))


def main() -> None:
    """Write every picture anew."""
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    app.setStyle("Fusion")
    theme = Theme(app, "light")
    for take in (_take_for_readers, _take_to_compare):
        with TemporaryDirectory() as folder:
            take(Path(folder), theme)
    theme.remove_pictures()


if __name__ == "__main__":
    main()
