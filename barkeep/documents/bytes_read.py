"""The text of a file that anyone may have written: UTF-8, UTF-16, or Windows-1252 as a guess."""

from __future__ import annotations

import codecs
import re
from dataclasses import dataclass

from barkeep.errors import UnreadableFile
from barkeep.translation import tr, tr_noop

NO_TEXT = tr_noop("it is no text in UTF-8, UTF-16 or Windows-1252")
_NO_LETTER = re.compile(r"[\x00-\x08\x0e-\x19\x1b-\x1f]")
_PLAIN = re.compile(r"[\n\r 0-9A-Za-z]")
_LOOKED_AT = 4096
"""Bytes; how a file of UTF-16 without a mark begins tells what it is."""
_MOST_SHOWN = 5


@dataclass(frozen=True, slots=True)
class DecodedText:
    """The text of a file. `read_as` is a sentence where its letters were not plain UTF-8."""

    text: str
    read_as: str = ""


def decoded(content: bytes, file: str) -> DecodedText:
    """The text of a file's bytes. Raises `UnreadableFile` for what is none.

    Only Windows-1252 is a guess, since any bytes might be that; its sentence
    shows the letters that came of it.
    """
    wide = _utf_16(content)
    if wide is not None:
        try:
            text = content.decode(wide).removeprefix("\ufeff")
        except UnicodeDecodeError:
            raise UnreadableFile(
                file, tr("it is UTF-16 text that breaks off or is damaged")
            ) from None
        return DecodedText(_checked(text, file), tr("It was read as UTF-16."))
    try:
        return DecodedText(content.decode("utf-8-sig"))
    except UnicodeDecodeError:
        pass
    try:
        text = content.decode("cp1252")
    except UnicodeDecodeError:
        raise UnreadableFile(file, NO_TEXT) from None
    return DecodedText(_checked(text, file), _guessed(text))


def _utf_16(content: bytes) -> str | None:
    """Which UTF-16 a file is in: by its mark, else by where its empty bytes stand."""
    if content.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return "utf-16"
    start = content[:_LOOKED_AT]
    first, second = start[0::2].count(0), start[1::2].count(0)
    pairs = len(start) // 2
    if pairs and second > 0.4 * pairs and first < 0.05 * pairs:
        return "utf-16-le"
    if pairs and first > 0.4 * pairs and second < 0.05 * pairs:
        return "utf-16-be"
    return None


def _checked(text: str, file: str) -> str:
    """A text, unless it is a picture or the like whose bytes happened to be letters."""
    if _NO_LETTER.search(text) or (text and not _PLAIN.search(text)):
        raise UnreadableFile(file, NO_TEXT)
    return text


def _guessed(text: str) -> str:
    others = list(dict.fromkeys(mark for mark in text if ord(mark) > 127))
    shown = " ".join(others[:_MOST_SHOWN])
    more = " …" if len(others) > _MOST_SHOWN else ""
    said = tr(
        "It is not UTF-8 and was read as Windows-1252, which is a guess; look at these letters"
    )
    return f"{said}: {shown}{more}"
