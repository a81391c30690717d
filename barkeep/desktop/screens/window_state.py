"""How windows, splitters and columns were left, and what was chosen for the program itself.

An INI file gives everything back as text and loses lists, so each kind of
value has its own way in and out here.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings
from PySide6.QtWidgets import QWidget

FIRST_SIZE = (1200, 780)
GEOMETRY = "window/geometry"


class WindowState:
    """Remembered values under slash-separated keys, in one INI file."""

    def __init__(self, path: Path) -> None:
        self._settings = QSettings(str(path), QSettings.Format.IniFormat)

    @property
    def folder(self) -> Path:
        """Where the file lies, and what else is kept for the window."""
        return Path(self._settings.fileName()).parent

    def data(self, key: str) -> QByteArray:
        """What Qt packed itself: geometry, a splitter, a header; empty where there is none."""
        return QByteArray.fromBase64(self.text(key).encode())

    def keep_data(self, key: str, value: QByteArray) -> None:
        """Remember what Qt packed."""
        self.keep_text(key, bytes(value.toBase64().data()).decode())

    def text(self, key: str, default: str = "") -> str:
        """A word."""
        value = self._settings.value(key, default)
        return value if isinstance(value, str) else default

    def keep_text(self, key: str, value: str) -> None:
        """Remember a word."""
        self._settings.setValue(key, value)

    def forget(self, key: str) -> None:
        """Remember this no longer, nor anything below it."""
        self._settings.remove(key)

    def write(self) -> None:
        """Bring everything to the disk now."""
        self._settings.sync()


def restore_window(window: QWidget, state: WindowState) -> None:
    """Put a window where it was left; the first time, at a size that fits the screen."""
    kept = state.data(GEOMETRY)
    if kept.isEmpty() or not window.restoreGeometry(kept):
        room = window.screen().availableSize()
        width, height = FIRST_SIZE
        window.resize(min(width, room.width()), min(height, room.height()))
