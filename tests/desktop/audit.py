"""What every window is held to: names for those who do not see it, and no text cut off."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractSpinBox,
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QMenu,
    QMenuBar,
    QScrollBar,
    QToolButton,
    QWidget,
)

from barkeep.desktop.widgets.labels import ElidedLabel

BY_THEMSELVES = (QMenu, QMenuBar, QScrollBar)
"""Kinds that are named by what they hold."""
ICON_ONLY = Qt.ToolButtonStyle.ToolButtonIconOnly


def focusable_without_name(root: QWidget) -> list[str]:
    """The widgets a keyboard can reach but a screen reader could not name."""
    return [
        described(each)
        for each in root.findChildren(QWidget)
        if _reachable(each) and not accessible_name(each)
    ]


def accessible_name(widget: QWidget) -> str:
    """What a screen reader would call it."""
    interface = QAccessible.queryAccessibleInterface(widget)
    return "" if interface is None else interface.text(QAccessible.Text.Name)


def cut_off(root: QWidget) -> list[str]:
    """Visible labels and buttons whose text is larger than they are."""
    return [described(each) for each in root.findChildren(QWidget) if _is_cut(each)]


def shortcuts_of(actions: list[QAction]) -> list[str]:
    """Every key sequence of the actions, as portable text."""
    return [keys.toString() for action in actions for keys in action.shortcuts()]


def mnemonics(menu: QMenu) -> list[str]:
    """The underlined letters of a menu's visible entries."""
    texts = [each.text() for each in menu.actions() if each.isVisible()]
    return [letter for text in texts for letter in _mnemonic(text)]


def described(widget: QWidget) -> str:
    """A widget in a failure message: its class, name, and what it says."""
    text = getattr(widget, "text", lambda: "")()
    return f"{type(widget).__name__} {widget.objectName()!r} {text!r} {widget.size().toTuple()}"


def _reachable(widget: QWidget) -> bool:
    if isinstance(widget, BY_THEMSELVES) or not widget.isVisible():
        return False
    inside = isinstance(widget, QLineEdit) and isinstance(
        widget.parent(), QAbstractSpinBox | QComboBox
    )
    return not inside and widget.focusPolicy() != Qt.FocusPolicy.NoFocus


def _is_cut(widget: QWidget) -> bool:
    if not widget.isVisible() or isinstance(widget, ElidedLabel):
        return False
    if isinstance(widget, QLabel) and widget.text():
        return _label_is_cut(widget)
    if isinstance(widget, QAbstractButton) and widget.text():
        return _button_is_cut(widget)
    return False


def _label_is_cut(label: QLabel) -> bool:
    if label.wordWrap():
        return label.height() < label.heightForWidth(label.width())
    words = label.text().replace("&", "") if label.buddy() else label.text()
    return label.width() < label.fontMetrics().horizontalAdvance(words)


def _button_is_cut(button: QAbstractButton) -> bool:
    if isinstance(button, QToolButton) and button.toolButtonStyle() == ICON_ONLY:
        return False
    frame = 0 if isinstance(button, QCheckBox) else 8
    words = button.fontMetrics().horizontalAdvance(button.text().replace("&", ""))
    return button.width() < words + frame


def _mnemonic(text: str) -> Iterator[str]:
    plain = text.replace("&&", "")
    place = plain.find("&")
    if 0 <= place < len(plain) - 1:
        yield plain[place + 1].lower()
