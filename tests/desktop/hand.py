"""A user's hand in the real window, whose keys and clicks are counted."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

KEY_S, CLICK_S = 0.3, 1.2


@dataclass
class Hand:
    """Each key goes to whatever has the focus by then; `seconds` is a keystroke-level estimate.

    0.3 s a key and 1.2 s a click are both generous (*common practice*).
    """

    keys: int = 0
    clicks: int = 0

    def key(self, key, held=Qt.KeyboardModifier.NoModifier, times=1):
        for _again in range(times):
            QTest.keyClick(QApplication.focusWidget(), key, held)
            self.keys += 1

    def type(self, text: str):
        for letter in text:
            QTest.keyClicks(QApplication.focusWidget(), letter)
            self.keys += 1

    def click(self, button: QPushButton):
        assert button.isVisible() and button.isEnabled()
        QTest.mouseClick(button, Qt.MouseButton.LeftButton)
        self.clicks += 1

    def seconds(self) -> float:
        return KEY_S * self.keys + CLICK_S * self.clicks
