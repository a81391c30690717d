"""Boxes to tick, one below the other, as one field of a form."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Generic, TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from barkeep.desktop.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.widgets.labels import text_label

Key = TypeVar("Key", bound=str)


class CheckGroup(QWidget, Generic[Key]):
    """One box a key, with its words; `ticked` comes when the user ticks or unticks one."""

    ticked = Signal()

    def __init__(
        self, words: Mapping[Key, str], hint: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.boxes = {key: QCheckBox(said.replace("&", "&&")) for key, said in words.items()}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, HALF + 2, 0, 0)  # level with the label of a form
        column.setSpacing(UNIT)
        for box in self.boxes.values():
            column.addWidget(box)
            box.clicked.connect(lambda: self.ticked.emit())
        if hint:
            column.addWidget(text_label(hint, TypeSize.CAPTION, quiet=True, wrap=True))
        if self.boxes:
            self.setFocusProxy(next(iter(self.boxes.values())))

    @property
    def chosen(self) -> tuple[Key, ...]:
        """The keys that are ticked, in order."""
        return tuple(key for key, box in self.boxes.items() if box.isChecked())

    def choose(self, keys: frozenset[Key]) -> None:
        """Tick these and no others."""
        for key, box in self.boxes.items():
            box.setChecked(key in keys)
