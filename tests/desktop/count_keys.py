"""Keys as a hand types them: each goes to whatever has the focus by then.

A run of keys is written as it is typed, `75<Space><Enter>315 ml<Enter>`; what stands in angle
brackets is one named key, `<pad 7>` one of the number pad, `<held 7>` one that is not let go
at once, `<Ctrl 7>` one with Ctrl held, `<shifted 7>` one that a keyboard has above another.
"""

from __future__ import annotations

import re

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

KEY = Qt.Key

NONE = Qt.KeyboardModifier.NoModifier

NAMED = {
    "Space": KEY.Key_Space,
    "Back": KEY.Key_Backspace,
    "Enter": KEY.Key_Return,
    "Esc": KEY.Key_Escape,
    "Up": KEY.Key_Up,
    "Down": KEY.Key_Down,
    "Home": KEY.Key_Home,
    "End": KEY.Key_End,
}

HELD = {
    "pad": Qt.KeyboardModifier.KeypadModifier,
    "Ctrl": Qt.KeyboardModifier.ControlModifier,
    "shifted": Qt.KeyboardModifier.ShiftModifier,
    "Alt": Qt.KeyboardModifier.AltModifier,
}

REPEATS = 6
"""How often a key that is not let go comes again."""


def type_keys(keys: str, pause_ms: int = 0) -> None:
    """Type a run of keys, each this many milliseconds after the one before."""
    for number, token in enumerate(re.findall(r"<[^>]+>|.", keys)):
        if pause_ms and number:
            QTest.qWait(pause_ms)
        _type(token)
        QApplication.processEvents()


def _type(token: str) -> None:
    """One key, to the widget that has the focus."""
    target = QApplication.focusWidget()
    assert target is not None, "no widget has the focus"
    how, _, name = token.strip("<>").rpartition(" ") if len(token) > 1 else ("", "", token)
    if name in NAMED:
        key = KEY.Key_Enter if (how, name) == ("pad", "Enter") else NAMED[name]
    else:
        key = KEY(ord(name.upper()))
    if how == "held":
        _hold(target, key, name)
    elif how == "shifted" or not name.isascii():
        _press(target, key, name, HELD.get(how, NONE))
    elif how or name in NAMED:
        QTest.keyClick(target, key, HELD.get(how, NONE))
    else:
        QTest.keyClick(target, name)


def _hold(target: QWidget, key: Qt.Key, name: str) -> None:
    """Down for a while: the same key comes again and again, and says that it repeats."""
    for number in range(REPEATS):
        _press(target, key, "" if name in NAMED else name, repeats=number > 0)


def _press(
    target: QWidget, key: Qt.Key, text: str, held: Qt.KeyboardModifier = NONE, *, repeats=False
) -> None:
    """A key with just this text, which on another keyboard may come with Shift held."""
    for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
        if target.isVisible():
            QApplication.sendEvent(target, QKeyEvent(kind, key, held, text, repeats))
