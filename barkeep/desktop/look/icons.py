"""barkeep's own pictures: SVG files, recoloured for the palette and as sharp as the screen.

A file draws in `currentColor`, and in `currentPaper` where it must show the
ground through.
"""

from __future__ import annotations

from functools import cache
from typing import Protocol
from weakref import WeakKeyDictionary

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QGuiApplication, QIcon, QPainter, QPalette, QPixmap, QPixmapCache
from PySide6.QtSvg import QSvgRenderer
from shiboken6 import isValid

from barkeep.desktop.look.metrics import ICON, scaled
from barkeep.desktop.look.tones import current_tones, tones_for
from barkeep.resource_files import read_text

SIZES = (16, ICON)
"""Of menus, and of buttons and lists, in device-independent pixels of plain type."""


class Wearer(Protocol):
    """A button, an action: whatever takes an icon."""

    def setIcon(self, icon: QIcon, /) -> None: ...


_worn_by: WeakKeyDictionary[Wearer, tuple[str, str]] = WeakKeyDictionary()
"""Which picture an object wears, and in which tone, for as long as the object lives."""


@cache
def drawing(name: str) -> str:
    """The text of a picture's file. Raises `FileNotFoundError`."""
    return read_text("icons", f"{name}.svg")


def pixmap(
    name: str, colour: str, size: int = ICON, ratio: float = 1.0, paper: str = "#ffffff"
) -> QPixmap:
    """One picture in one colour, `size` device-independent pixels wide.

    Raises `FileNotFoundError` for a picture there is not.
    """
    key = f"barkeep:{name}:{colour}:{paper}:{size}:{ratio}"
    found = QPixmap()
    if QPixmapCache.find(key, found):
        return found
    text = drawing(name).replace("currentColor", colour).replace("currentPaper", paper)
    edge = round(size * ratio)
    image = QPixmap(edge, edge)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(QByteArray(text.encode())).render(painter, QRectF(0, 0, edge, edge))
    painter.end()
    image.setDevicePixelRatio(ratio)
    QPixmapCache.insert(key, image)
    return image


def icon(name: str, palette: QPalette | None = None) -> QIcon:
    """A picture for buttons, menus and lists, with its selected and disabled forms."""
    colours = QGuiApplication.palette() if palette is None else palette
    tones = tones_for(colours)
    made = QIcon()
    forms = {
        QIcon.Mode.Normal: tones.text,  # and of one that is active, as Qt has it
        QIcon.Mode.Selected: tones.on_highlight,
        QIcon.Mode.Disabled: tones.disabled,
    }
    for mode, colour in forms.items():
        _add(made, name=name, mode=mode, colour=colour, paper=tones.base)
    return made


def icon_in(name: str, colour: str, paper: str = "#ffffff") -> QIcon:
    """A picture that keeps one colour in every form: on an accent, on the navigation."""
    made = QIcon()
    for mode in (QIcon.Mode.Normal, QIcon.Mode.Selected):
        _add(made, name=name, mode=mode, colour=colour, paper=paper)
    return made


def wear(target: Wearer, name: str, tone: str = "") -> None:
    """Give an object a picture that follows the theme from now on.

    `tone` is a field of `Tones` that colours it in every form; without one it
    has the colour of text.
    """
    _worn_by[target] = (name, tone)
    target.setIcon(_worn(name, tone))


def wearers() -> tuple[Wearer, ...]:
    """All that wears a picture."""
    return tuple(_worn_by)


def renew(*targets: Wearer) -> None:
    """Redraw what objects wear, all where none is named, after the palette has changed.

    An object can outlive its Qt part for a while; such a one wears nothing.
    """
    for target in targets or wearers():
        worn = _worn_by.get(target)
        if worn is not None and isValid(target):
            target.setIcon(_worn(*worn))


def _worn(name: str, tone: str) -> QIcon:
    return icon_in(name, str(getattr(current_tones(), tone))) if tone else icon(name)


def app_icon() -> QIcon:
    """The program's own picture, from 16 to 256 pixels."""
    made = QIcon()
    for size in (16, 24, 32, 48, 64, 128, 256):
        made.addPixmap(pixmap("barkeep", "#000000", size))
    return made


def _add(made: QIcon, name: str, mode: QIcon.Mode, colour: str, paper: str) -> None:
    ratios = {1.0, *(screen.devicePixelRatio() for screen in QGuiApplication.screens())}
    for ratio in sorted(ratios):
        for size in sorted({*SIZES, *map(scaled, SIZES)}):
            image = pixmap(name, colour=colour, size=size, ratio=ratio, paper=paper)
            made.addPixmap(image, mode)  # which Qt takes for what is on as well
