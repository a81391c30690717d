"""Enter presses the button that has the focus, as it does in a dialog."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QPushButton


def pressed_by_enter(*buttons: QPushButton) -> None:
    """Let Enter press a button that has the focus, as Space does."""
    for each in buttons:
        for key in ("Return", "Enter"):
            shortcut = QShortcut(QKeySequence(key), each)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(each.click)
