"""Pictures for the style sheet, which takes them from files only."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QTemporaryDir

from barkeep.desktop.icons import drawing
from barkeep.desktop.tones import Tones

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
