"""Draw the program's picture in the sizes a desktop asks for: `python -m tests.draw_icons`."""

from __future__ import annotations

import os
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtGui import QGuiApplication, QImage

from barkeep.application.desktop_entry import SIZES
from barkeep.desktop.look.icons import pixmap

ICONS = Path(__file__).resolve().parent.parent / "resources" / "desktop" / "icons"


def drawn(size: int) -> QImage:
    """The picture, so many pixels wide."""
    return pixmap("barkeep", "#000000", size).toImage()


def write() -> None:
    """Draw all of them."""
    _application = QGuiApplication.instance() or QGuiApplication([])
    for size in SIZES:
        drawn(size).save(str(ICONS / f"{size}.png"))


if __name__ == "__main__":
    write()
