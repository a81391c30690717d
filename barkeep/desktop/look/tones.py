"""The colour tables and what is made of them."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import cache
from typing import Literal, get_args

from PySide6.QtGui import QColor, QGuiApplication, QPalette

from barkeep.errors import KnowledgeError
from barkeep.resource_files import read_text

Scheme = Literal["light", "dark", "contrast"]
SCHEMES: tuple[Scheme, ...] = get_args(Scheme)
FILE = "palettes.toml"


@dataclass(frozen=True, slots=True)
class Tones:
    """One scheme's colours as `#rrggbb`; what each is for is its name."""

    window: str
    base: str
    raised: str
    button: str
    text: str
    muted: str
    disabled: str
    line: str
    accent: str
    on_accent: str
    highlight: str
    on_highlight: str
    link: str
    nav: str
    on_nav: str
    nav_muted: str
    nav_line: str
    lamp: str
    on_lamp: str
    ready: str
    stand_in: str
    one_short: str
    short: str
    warning: str
    danger: str
    info: str
    liquid: str
    glass: str


@cache
def read_tones(scheme: Scheme) -> Tones:
    """The table of one scheme. Raises `KnowledgeError` where a colour is missing or unreadable."""
    table = tomllib.loads(read_text(FILE)).get(scheme, {})
    for field in fields(Tones):
        value = table.get(field.name)
        if not isinstance(value, str) or not QColor(value).isValid():
            raise KnowledgeError(FILE, f"{scheme}.{field.name}", f"“{value}” is no colour")
    return Tones(**{field.name: table[field.name] for field in fields(Tones)})


SHEET_ROLES: Mapping[str, str] = {
    "hover": "light",
    "pressed": "midlight",
    "edge": "dark",
    "on_accent": "link-visited",
}
"""What the style sheet calls by a word of its own, and the role that carries that colour.

Fusion under that sheet draws nothing else with these roles.
"""


def palette_of(tones: Tones) -> QPalette:
    """The palette of a table; `Mid` is the colour of hair lines and frames."""
    role = QPalette.ColorRole
    palette = QPalette()
    for where, colour in {
        role.Window: tones.window,
        role.WindowText: tones.text,
        role.Base: tones.base,
        role.AlternateBase: tones.raised,
        role.Text: tones.text,
        role.PlaceholderText: tones.muted,
        role.Button: tones.button,
        role.ButtonText: tones.text,
        role.BrightText: tones.danger,
        role.ToolTipBase: tones.nav,
        role.ToolTipText: tones.on_nav,
        role.Light: blend(tones.accent, tones.button, 0.10),
        role.Midlight: blend(tones.accent, tones.button, 0.22),
        role.Mid: tones.line,
        role.Dark: tones.glass,
        role.Highlight: tones.highlight,
        role.HighlightedText: tones.on_highlight,
        role.Accent: tones.accent,
        role.Link: tones.link,
        role.LinkVisited: tones.on_accent,
    }.items():
        palette.setColor(where, QColor(colour))
    for where in (role.WindowText, role.Text, role.ButtonText, role.HighlightedText):
        palette.setColor(QPalette.ColorGroup.Disabled, where, QColor(tones.disabled))
    palette.setColor(QPalette.ColorGroup.Disabled, role.Highlight, QColor(tones.line))
    return palette


def tones_for(palette: QPalette) -> Tones:
    """The table a palette was made of; of a foreign one, a table of its own colours.

    There every mark takes the text colour and shape alone tells them apart.
    """
    return _tones_by_key(palette.cacheKey(), palette)


_LAST: dict[int, Tones] = {}
"""The table of the palette that was asked for last, which every painted cell asks for again."""


def _tones_by_key(key: int, palette: QPalette) -> Tones:
    if key not in _LAST:
        _LAST.clear()
        _LAST[key] = _tones_of(palette)
    return _LAST[key]


def _tones_of(palette: QPalette) -> Tones:
    found = (_hex(palette, QPalette.ColorRole.Window), _hex(palette, QPalette.ColorRole.Accent))
    for scheme in SCHEMES:
        tones = read_tones(scheme)
        if found == (tones.window, tones.accent):
            return tones
    return _plain_tones(palette)


def current_tones() -> Tones:
    """The table of what the application shows now."""
    return tones_for(QGuiApplication.palette())


def blend(one: str, other: str, share: float) -> QColor:
    """`share` of the first colour over the second."""
    top, ground = QColor(one), QColor(other)
    return QColor.fromRgbF(
        top.redF() * share + ground.redF() * (1 - share),
        top.greenF() * share + ground.greenF() * (1 - share),
        top.blueF() * share + ground.blueF() * (1 - share),
    )


def _hex(palette: QPalette, role: QPalette.ColorRole) -> str:
    return palette.color(QPalette.ColorGroup.Active, role).name()


def _plain_tones(palette: QPalette) -> Tones:
    role = QPalette.ColorRole
    window, text = _hex(palette, role.Window), _hex(palette, role.WindowText)
    base, picked = _hex(palette, role.Base), _hex(palette, role.Highlight)
    on_picked = _hex(palette, role.HighlightedText)
    grounds = dict.fromkeys(("window", "button", "nav"), window)
    grounds |= dict.fromkeys(("base", "raised"), base)
    marks = dict.fromkeys(("accent", "highlight", "lamp"), picked)
    marks |= dict.fromkeys(("on_accent", "on_highlight", "on_lamp"), on_picked)
    texts = {field.name: text for field in fields(Tones)}
    return Tones(**(texts | grounds | marks | {"link": _hex(palette, role.Link)}))
