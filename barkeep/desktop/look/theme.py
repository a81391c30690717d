"""Light, dark or as the system has it: palette, style sheet and icons change together."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from string import Template
from typing import Literal, get_args

from PySide6.QtCore import QObject, Qt, QTemporaryDir, Signal
from PySide6.QtGui import QFont, QPalette
from PySide6.QtWidgets import QApplication

from barkeep.desktop.look import metrics
from barkeep.desktop.look.icons import drawing, renew
from barkeep.desktop.look.tones import Scheme, Tones, blend, palette_of, read_tones
from barkeep.resource_files import read_text

# Picture -> the field of `Tones` that colours it.
PICTURES = {"chevron-down": "text", "chevron-up": "text", "check": "on_accent"}


class StylePictures:
    """A folder that is gone after `remove`; each colour has files of its own."""

    def __init__(self) -> None:
        self._folder = QTemporaryDir()

    def write(self, tones: Tones) -> dict[str, str]:
        """The paths of the pictures in a scheme's colours, by their style sheet names."""
        return {
            name.replace("-", "_"): self._written(name, str(getattr(tones, tone)))
            for name, tone in PICTURES.items()
        }

    def remove(self) -> None:
        """Remove the folder; the interpreter's end would leave it behind."""
        self._folder.remove()

    def _written(self, name: str, colour: str) -> str:
        path = self._folder.filePath(f"{name}-{colour.lstrip('#')}.svg")
        Path(path).write_text(drawing(name).replace("currentColor", colour), encoding="utf-8")
        return path


ThemeChoice = Literal["system", "light", "dark"]
CHOICES: tuple[ThemeChoice, ...] = get_args(ThemeChoice)
STYLE_SHEET = "style.qss"

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
        self._shown: tuple[Scheme | None, ...] = ()
        """The scheme that is shown, None for the platform's own; empty before the first."""
        self._pictures = StylePictures()
        # Both are kept: Qt hands out the second as a part of the first.
        self._hints = app.styleHints()
        self._accessibility = self._hints.accessibility()
        self._hints.colorSchemeChanged.connect(self.apply)
        self._accessibility.contrastPreferenceChanged.connect(self.apply)
        self.apply()

    @property
    def scheme(self) -> Scheme:
        """What is shown; an unknown system is taken as light."""
        if self.choice != "system":
            return self.choice
        dark = self._hints.colorScheme() == Qt.ColorScheme.Dark
        return "dark" if dark else "light"

    @property
    def high_contrast(self) -> bool:
        """Whether the platform asks for its own strong colours."""
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

    def _set_type(self) -> None:
        font = QFont(self._font)
        font.setPointSizeF(self._font.pointSizeF() * TEXT_SIZES[self.text_size])
        self._app.setFont(font)

    def apply(self) -> None:
        """Redraw everything as the choice and the platform have it."""
        wanted = None if self.high_contrast else self.scheme
        if self._shown and wanted == self._shown[0]:
            return  # every widget would be polished once more, to look as it does
        self._shown = (wanted,)
        if self.high_contrast:
            self._app.setStyleSheet("")
            self._app.setPalette(QPalette())
        else:
            tones = read_tones(self.scheme)
            self._app.setPalette(palette_of(tones))
            self._app.setStyleSheet(style_sheet(tones, self._pictures.write(tones)))
        renew()
        self.changed.emit()

    def remove_pictures(self) -> None:
        """Remove the style sheet and its files: the program ends."""
        self._app.setStyleSheet("")
        self._pictures.remove()


def style_sheet(tones: Tones, pictures: Mapping[str, str]) -> str:
    """The style sheet with its measures, pictures and the few colours that are no palette role."""
    hover = blend(tones.accent, tones.button, 0.10).name()
    pressed = blend(tones.accent, tones.button, 0.22).name()
    strong = blend(tones.accent, tones.text, 0.85).name()
    return Template(read_text(STYLE_SHEET)).substitute(
        pictures,
        half=metrics.HALF,
        unit=metrics.UNIT,
        pad=metrics.PAD,
        radius=metrics.RADIUS,
        pill=metrics.PAD - 3,
        hover=hover,
        pressed=pressed,
        accent=tones.accent,
        on_accent=tones.on_accent,
        accent_hover=strong,
        edge=blend(tones.glass, tones.base, 0.8).name(),
        handle=blend(tones.glass, tones.base, 0.6).name(),
        nav=tones.nav,
        on_nav=tones.on_nav,
        nav_line=tones.nav_line,
        lamp=tones.lamp,
        info=tones.info,
        warning=tones.warning,
        danger=tones.danger,
        ready=tones.ready,
        info_ground=blend(tones.info, tones.base, 0.10).name(),
        warning_ground=blend(tones.warning, tones.base, 0.10).name(),
        danger_ground=blend(tones.danger, tones.base, 0.10).name(),
        ready_ground=blend(tones.ready, tones.base, 0.10).name(),
    )
