"""Tooltips say what they are given, letter by letter."""

from __future__ import annotations

import html
import textwrap

WIDTH = 64
"""Of a tooltip of several sentences, in letters: Qt itself breaks none of its lines."""


def plain_tip(text: str) -> str:
    """A text as a tooltip of Qt's shows it unchanged.

    Qt takes a tooltip for markup where it begins to look like it, and a name may: *Fog <b>Lamp*.
    """
    if "<" not in text and "&lt;" not in text:
        return text
    return f"<qt>{html.escape(text).replace(chr(10), '<br>')}</qt>"


def broken(text: str) -> str:
    """Sentences in lines that are read at a glance."""
    return textwrap.fill(text, WIDTH)
