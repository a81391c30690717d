"""The one typeface that barkeep brings along, for the screen and for paper."""

from __future__ import annotations

from functools import cache

from PySide6.QtCore import QByteArray
from PySide6.QtGui import QFont, QFontDatabase, QRawFont

from barkeep.resource_files import names, read_bytes

FOLDER = "typeface"
FAMILY = "Barkeep Sans"
"""A name of its own, so that another cut of the face on the machine is never taken for it."""


@cache
def family() -> str:
    """Its name, once Qt has it. All its figures are of one width.

    Raises `FileNotFoundError` where the installation lacks a file.
    """
    for name in names(FOLDER, suffix=".ttf"):
        QFontDatabase.addApplicationFontFromData(QByteArray(read_bytes(FOLDER, name)))
    return FAMILY


def set_in_it(font: QFont) -> QFont:
    """The same font in barkeep's typeface; what that has no letter for stays in its own."""
    made = QFont(font)
    before = [each for each in font.families() if each != FAMILY]
    made.setFamilies([family(), *before])
    return made


def has_letters_of(text: str) -> bool:
    """Whether it has every letter of a text: one in another script is better set in one face."""
    if text.isascii():
        return True
    face = QRawFont.fromFont(QFont(family()))
    return all(face.supportsCharacter(ord(each)) for each in text if each.isalpha())
