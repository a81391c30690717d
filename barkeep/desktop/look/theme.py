"""Light, dark, strong contrast or as the system has it: all that is drawn changes together."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial
from math import inf
from pathlib import Path
from string import Template
from time import perf_counter
from typing import Literal, get_args

from PySide6.QtCore import QEvent, QObject, Qt, QTemporaryDir, QTimer, Signal
from PySide6.QtGui import QPixmapCache
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import isValid

from barkeep.desktop.look import metrics
from barkeep.desktop.look.icons import drawing, renew, wearers
from barkeep.desktop.look.tones import SHEET_ROLES, Scheme, Tones, palette_of, read_tones
from barkeep.desktop.look.typeface import set_in_it
from barkeep.resource_files import read_text

# Picture -> the field of `Tones` that colours it.
PICTURES = {"chevron-down": "text", "chevron-up": "text", "check": "on_accent"}


class StylePictures:
    """The style sheet's pictures, in a folder that is gone after `remove`."""

    def __init__(self) -> None:
        self._folder = QTemporaryDir()

    def write(self, tones: Tones) -> dict[str, str]:
        """Draw the pictures in a scheme's colours; their paths by their style sheet names.

        The paths are always the same: what was drawn from them is forgotten.
        """
        paths = {
            name.replace("-", "_"): self._written(name, str(getattr(tones, tone)))
            for name, tone in PICTURES.items()
        }
        QPixmapCache.clear()
        return paths

    def remove(self) -> None:
        """Remove the folder; the interpreter's end would leave it behind."""
        self._folder.remove()

    def _written(self, name: str, colour: str) -> str:
        path = self._folder.filePath(f"{name}.svg")
        Path(path).write_text(drawing(name).replace("currentColor", colour), encoding="utf-8")
        return path


ThemeChoice = Literal["system", "light", "dark", "contrast"]
CHOICES: tuple[ThemeChoice, ...] = get_args(ThemeChoice)
STYLE_SHEET = "style.qss"
TICK, CHEVRON, DROP = 16, 13, 25
"""The edges of a box to tick and of an arrow, and how wide its button is, for plain type."""
SLICE_S = 0.004
"""So long at a time what is not seen is drawn anew."""

TextSize = Literal["plain", "larger", "large", "largest"]
TEXT_SIZES: Mapping[TextSize, float] = {"plain": 1.0, "larger": 1.25, "large": 1.5, "largest": 2.0}
"""How many times as large as the system's all type is set."""


class Theme(QObject):
    """The look of one application. `changed` comes after everything has been redrawn."""

    changed = Signal()

    def __init__(
        self, app: QApplication, choice: ThemeChoice = "system", text_size: TextSize = "plain"
    ) -> None:
        super().__init__(app)
        self._app, self._font = app, app.font()
        self.text_size: TextSize = text_size
        """How large the user wants all type."""
        self._set_type()
        self.choice = choice
        """What the user chose."""
        self._shown: Scheme | None = None
        """The scheme that is shown; None before the first."""
        self._pictures = StylePictures()
        self._to_draw: list[Callable[[], object]] = []
        """What draws anew that is not seen, and still has the colours of the theme before."""
        self._drawing = QTimer(self, interval=0)
        self._drawing.timeout.connect(self._draw_some)
        # Both are kept: Qt hands out the second as a part of the first.
        self._hints = app.styleHints()
        self._accessibility = self._hints.accessibility()
        self._hints.colorSchemeChanged.connect(self.apply)
        self._accessibility.contrastPreferenceChanged.connect(self.apply)
        self.apply()

    @property
    def scheme(self) -> Scheme:
        """What is shown: what was chosen, else what the system asks for; light if it is unknown."""
        if self.choice != "system":
            return self.choice
        if self.system_wants_contrast:
            return "contrast"
        dark = self._hints.colorScheme() == Qt.ColorScheme.Dark
        return "dark" if dark else "light"

    @property
    def system_wants_contrast(self) -> bool:
        """Whether the system's user has asked it for strong contrast."""
        preference = self._accessibility.contrastPreference()
        return preference == Qt.ContrastPreference.HighContrast

    def choose(self, choice: ThemeChoice) -> None:
        """Show another theme at once."""
        self.choice = choice
        self.apply()

    def choose_text_size(self, size: TextSize) -> None:
        """Set all type of what is built from now on so large."""
        self.text_size = size
        self._set_type()
        self._shown = None  # what is drawn beside words is as large as they are
        self.apply()

    def _set_type(self) -> None:
        font = set_in_it(self._font)
        font.setPointSizeF(self._font.pointSizeF() * TEXT_SIZES[self.text_size])
        self._app.setFont(font)

    def apply(self) -> None:
        """Redraw everything as the choice and the platform have it."""
        if self._shown == self.scheme:
            return  # every widget would be polished once more, to look as it does
        self._shown = self.scheme
        tones = read_tones(self.scheme)
        self._app.setPalette(palette_of(tones))
        sheet = style_sheet(tones, self._pictures.write(tones))
        if self._app.styleSheet() != sheet:
            self._app.setStyleSheet(sheet)
            self._draw_anew(())
        else:
            self._draw_anew(self._app.allWidgets())
        self.changed.emit()

    def _draw_anew(self, widgets: Sequence[QWidget]) -> None:
        """Have widgets take their colours from the palette, and all pictures drawn in them.

        What is seen comes now, the rest soon. Setting the sheet once more would colour widgets
        too, but polishes each as often as it has others around it, and measures them all anew.
        """
        windows = self._app.topLevelWidgets()
        for window in windows:
            # Qt paints a window that wants it before what lies in it does, and then all once more.
            window.setAttribute(Qt.WidgetAttribute.WA_UpdatesDisabled)
            # Qt tells them only while the event loop runs; what lies in them takes it from them.
            self._app.sendEvent(window, QEvent(QEvent.Type.ApplicationPaletteChange))
        now: list[Callable[[], object]] = []
        later: list[Callable[[], object]] = []
        for widget in widgets:
            (now if widget.isVisible() else later).append(partial(_take_colours, widget))
        for each in wearers():
            is_seen = isinstance(each, QWidget) and isValid(each) and each.isVisible()
            (now if is_seen else later).append(partial(renew, each))
        for draw in now:
            draw()
        for window in windows:
            if isValid(window):
                window.setAttribute(Qt.WidgetAttribute.WA_UpdatesDisabled, False)
                window.update()
        self._to_draw = later
        self._drawing.start()

    def finish(self) -> None:
        """Draw anew what is not seen yet: someone is about to see it."""
        self._draw_some(inf)

    def _draw_some(self, most_s: float = SLICE_S) -> None:
        until = perf_counter() + most_s
        while self._to_draw and perf_counter() < until:
            self._to_draw.pop()()
        if not self._to_draw:
            self._drawing.stop()

    def remove_pictures(self) -> None:
        """Take back the style sheet, its files and the type: the program ends."""
        self._drawing.stop()
        self._to_draw = []
        self._app.setStyleSheet("")
        self._app.setFont(self._font)
        self._pictures.remove()


def _take_colours(widget: QWidget) -> None:
    if isValid(widget):
        widget.style().polish(widget)
        widget.update()


def style_sheet(tones: Tones, pictures: Mapping[str, str]) -> str:
    """The style sheet with its measures and pictures; the same for light and dark.

    What lies on the dark ground of the navigation has no role, and one colour in both; with
    strong contrast it has another.
    """
    return Template(read_text(STYLE_SHEET)).substitute(
        pictures,
        half=metrics.HALF,
        unit=metrics.UNIT,
        pad=metrics.PAD,
        radius=metrics.RADIUS,
        pill=metrics.PAD - 3,
        tick=metrics.scaled(TICK),
        tick_inside=metrics.scaled(TICK) - 2,
        chevron=metrics.scaled(CHEVRON),
        drop=metrics.scaled(DROP),
        nav_line=tones.nav_line,
        lamp=tones.lamp,
        **{word: f"palette({role})" for word, role in SHEET_ROLES.items()},
    )
