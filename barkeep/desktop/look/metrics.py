"""The one type scale and the one spacing grid that every screen keeps to."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import QSize
from PySide6.QtGui import QFont, QFontMetricsF
from PySide6.QtWidgets import QApplication, QWidget

HALF = 4
"""Between things that belong together, in device-independent pixels."""
UNIT = 8
"""The grid; between neighbours."""
PAD = 16
"""Inside cards and pages."""
WIDE = 24
"""Between groups."""
RADIUS = 6
"""Of every rounded corner."""
ICON = 20
"""The edge of an icon beside text."""
ROW = 40
"""The least height of a list row."""
DRAWN_FOR = 15.0
"""How high a line of the type is that rows, columns and margins beside words were drawn for."""


def scaled(pixels: float) -> int:
    """So many pixels, and as many times more as the type is larger than what they were drawn for.

    Whatever has words in it is measured so: a row, a column, what stands beside a list.
    """
    return round(pixels * max(1.0, QFontMetricsF(QApplication.font()).height() / DRAWN_FOR))


def dialog_width(pixels: float) -> int:
    """How wide a dialog must be for its words, or as wide as the screen lets it be."""
    screen = QApplication.primaryScreen().availableGeometry().width() - 2 * PAD
    return min(scaled(pixels), max(screen, round(pixels)))


def dialog_size(width: float, height: float) -> QSize:
    """How large a dialog must be for its words, or as large as the screen lets it be."""
    screen = QApplication.primaryScreen().availableGeometry().height() - 2 * PAD
    return QSize(dialog_width(width), min(scaled(height), max(screen, round(height))))


class TypeSize(Enum):
    """The steps of the type scale: a factor on the platform's own size, and a weight."""

    CAPTION = (0.9, QFont.Weight.Normal)
    BODY = (1.0, QFont.Weight.Normal)
    STRONG = (1.0, QFont.Weight.DemiBold)
    SUBTITLE = (1.15, QFont.Weight.DemiBold)
    TITLE = (1.6, QFont.Weight.DemiBold)
    DISPLAY = (2.2, QFont.Weight.Normal)

    @property
    def factor(self) -> float:
        """How many times the platform's font size."""
        return self.value[0]


def font_of(size: TypeSize, base: QFont | None = None) -> QFont:
    """The font of one step, scaled from `base` or the application's font."""
    font = QFont(QApplication.font() if base is None else base)
    if font.pointSizeF() > 0:
        font.setPointSizeF(font.pointSizeF() * size.factor)
    else:
        font.setPixelSize(round(font.pixelSize() * size.factor))
    font.setWeight(size.value[1])
    return font


def set_style(widget: QWidget, name: str, value: object) -> None:
    """Set a property that the style sheet looks at, and draw the widget anew."""
    widget.setProperty(name, value)
    widget.style().unpolish(widget)
    widget.style().polish(widget)


def set_type(widget: QWidget, size: TypeSize) -> None:
    """Give a widget one step of the scale."""
    widget.setFont(font_of(size))
