"""Tooltips say what they are given, letter by letter."""

from __future__ import annotations

import html


def plain_tip(text: str) -> str:
    """A text as a tooltip of Qt's shows it unchanged.

    Qt takes a tooltip for markup where it begins to look like it, and a name may: *Fog <b>Lamp*.
    """
    if "<" not in text and "&lt;" not in text:
        return text
    return f"<qt>{html.escape(text).replace(chr(10), '<br>')}</qt>"
