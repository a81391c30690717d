"""Which side things begin at: what is painted is turned about where words run from the right.

Words are written by `write`: on the side where they belong, each in its own direction, so that
*12 + 8* never becomes *8 + 12*.
"""

from __future__ import annotations

import unicodedata
from functools import cache
from typing import TypeVar

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QGuiApplication, QPainter
from PySide6.QtWidgets import QStyle

Place = TypeVar("Place", QRect, QRectF)


def runs_left(painter: QPainter) -> bool:
    """Whether what is painted begins at the right."""
    return painter.layoutDirection() == Qt.LayoutDirection.RightToLeft


def on_its_side(painter: QPainter, place: Place, whole: Place) -> Place:
    """A place within a whole, both as from the left, where it is painted."""
    return turned_about(place, whole) if runs_left(painter) else place


def turned_about(place: Place, whole: Place) -> Place:
    """The place as far from the right of the whole as it was from the left."""
    made = type(place)(place)
    made.moveLeft(whole.left() + whole.right() - place.right())
    return made


def point_turned_about(point: QPointF, whole: QRectF) -> QPointF:
    """The point as far from the right of the whole as it was from the left."""
    return QPointF(whole.left() + whole.right() - point.x(), point.y())


def write(
    painter: QPainter, place: Place, side: Qt.AlignmentFlag, text: str, *, wrap: bool = False
) -> None:
    """Words in a place, at the side where lines begin or end, read as they are written."""
    direction = painter.layoutDirection()
    painter.setLayoutDirection(Qt.LayoutDirection.LayoutDirectionAuto)
    painter.drawText(place, _flags_of(direction, side, wrap), text)
    painter.setLayoutDirection(direction)


@cache
def _flags_of(direction: Qt.LayoutDirection, side: Qt.AlignmentFlag, wrap: bool) -> int:
    """A side where words run this way, as a painter takes it: every cell of a list asks for it."""
    about = QStyle.visualAlignment(direction, side) | Qt.AlignmentFlag.AlignAbsolute
    return about.value | (Qt.TextFlag.TextWordWrap.value if wrap else 0)


READ_FROM_LEFT = "\u200e"
"""No letter: what stands before it and after is read from the left."""


def as_written(text: str) -> str:
    """Words for who draws them in the direction of the window, such as Qt's own buttons.

    A mark at either end, *Pour…* or *…?*, stays where it was written.
    """
    if QGuiApplication.isRightToLeft() and not _runs_left(text):
        return f"{READ_FROM_LEFT}{text}{READ_FROM_LEFT}"
    return text


def _runs_left(text: str) -> bool:
    """Whether the first letter with a direction is one of a script that runs from the right."""
    strong = (unicodedata.bidirectional(each) for each in text)
    return next((each in ("R", "AL") for each in strong if each in ("L", "R", "AL")), False)


def turn_about(painter: QPainter, whole: QRectF) -> None:
    """Paint mirrored from here on, where what is painted begins at the right; no words."""
    if runs_left(painter):
        painter.translate(whole.left() + whole.right(), 0.0)
        painter.scale(-1.0, 1.0)
