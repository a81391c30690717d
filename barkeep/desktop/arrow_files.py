"""Arrows for the style sheet, which takes pictures from files only."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QTemporaryDir

from barkeep.desktop.icons import drawing
from barkeep.desktop.tones import Tones

ARROWS = ("chevron-down", "chevron-up")


class ArrowFiles:
    """A folder that is gone with the program; each colour has files of its own."""

    def __init__(self) -> None:
        self._folder = QTemporaryDir()

    def write(self, tones: Tones) -> dict[str, str]:
        """The paths of the arrows in a scheme's text colour, by style sheet name."""
        return {name.replace("-", "_"): self._written(name, tones.text) for name in ARROWS}

    def _written(self, name: str, colour: str) -> str:
        path = self._folder.filePath(f"{name}-{colour.lstrip('#')}.svg")
        Path(path).write_text(drawing(name).replace("currentColor", colour), encoding="utf-8")
        return path
