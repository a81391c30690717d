"""What this is, in which version, under which licence, and where it keeps its things."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QDialog, QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from barkeep import __version__
from barkeep.application import paths
from barkeep.desktop.faults import versions
from barkeep.desktop.metrics import PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label

WORDS = "What is in the bar, what it makes tonight, what stands in, and what to buy next."
QT_WORDS = "Drawn with Qt for Python, which is free software under the LGPL version 3."


class AboutDialog(QDialog):
    """`details` is what *Copy details* puts on the clipboard."""

    def __init__(self, bar_path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle("About barkeep")
        self._places = (
            ("Bar", bar_path),
            ("Window and log", paths.state_folder()),
            ("Settings", paths.config_folder()),
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(WIDE, WIDE, WIDE, PAD)
        column.setSpacing(PAD)
        column.addLayout(self._head())
        column.addWidget(text_label(QT_WORDS, quiet=True, wrap=True))
        column.addLayout(self._facts())
        column.addLayout(self._buttons())
        self.setMinimumWidth(520)

    @property
    def details(self) -> str:
        """Versions and places, one a line."""
        return "\n".join((versions(), *(f"{name}: {path}" for name, path in self._places)))

    def copy(self) -> None:
        """Put the details on the clipboard."""
        QGuiApplication.clipboard().setText(self.details)

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(PAD)
        row.addWidget(PictureLabel("barkeep", 64), 0, Qt.AlignmentFlag.AlignTop)
        words = QVBoxLayout()
        words.addWidget(text_label(f"barkeep {__version__}", TypeSize.TITLE))
        words.addWidget(text_label(WORDS, wrap=True))
        row.addLayout(words, 1)
        return row

    def _facts(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(PAD)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(1, 1)
        rows = [("Versions", ", ".join(versions().splitlines()))]
        rows += [(name, str(path)) for name, path in self._places]
        for number, (name, text) in enumerate(rows):
            shown = text_label(text.replace("/", "/\u200b"), wrap=True)
            grid.addWidget(text_label(name, quiet=True), number, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(shown, number, 1)
        return grid

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addWidget(button("&Copy details", self.copy))
        row.addWidget(button("About &Qt", QApplication.aboutQt))
        row.addStretch(1)
        close = primary_button("C&lose", self.accept)
        close.setDefault(True)
        row.addWidget(close)
        return row
