"""Buttons of the three kinds there are: ordinary, the one primary, and quiet ones."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QToolButton

from barkeep.desktop.icons import icon_size, wear


def button(
    text: str, on_click: Callable[[], object] | None = None, picture: str | None = None
) -> QPushButton:
    """An ordinary button."""
    made = QPushButton(text)
    made.setAccessibleName(text.replace("&", ""))
    if picture is not None:
        made.setIconSize(icon_size())
        wear(made, picture)
    if on_click is not None:
        made.clicked.connect(lambda: on_click())
    return made


def primary_button(
    text: str, on_click: Callable[[], object] | None = None, picture: str | None = None
) -> QPushButton:
    """The one button of a page or dialog that does its main thing."""
    made = button(text, on_click)
    made.setProperty("primary", True)
    if picture is not None:
        made.setIconSize(icon_size())
        wear(made, picture, "on_accent")
    return made


def quiet_button(
    picture: str, name: str, on_click: Callable[[], object] | None = None
) -> QToolButton:
    """A small button with a picture only; `name` is its tooltip and accessible name."""
    made = QToolButton()
    made.setProperty("quiet", True)
    made.setAccessibleName(name)
    made.setToolTip(name)
    made.setIconSize(icon_size())
    made.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonIconOnly)
    wear(made, picture)
    if on_click is not None:
        made.clicked.connect(lambda: on_click())
    return made
