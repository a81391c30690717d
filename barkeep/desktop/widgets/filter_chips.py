"""One choice of a few, as a row of chips: closeness, for one."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QSizePolicy, QWidget

from barkeep.desktop.metrics import HALF, UNIT
from barkeep.desktop.widgets.labels import text_label

CLOSENESS = (
    ("exact", "Exact", "Only what the spec asks for"),
    ("close", "Close", "Also close stand-ins, 0.8 and better"),
    ("loose", "Loose", "Also loose stand-ins, 0.6 and better"),
)
"""The chips of the closeness filter: key, word, explanation."""


class FilterChips(QWidget):
    """`chosen` carries the key of the chip the user picked; the arrow keys walk the row."""

    chosen = Signal(str)

    def __init__(
        self,
        title: str,
        chips: Sequence[tuple[str, str, str]],
        choice: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(title)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        self._buttons: dict[str, QPushButton] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(HALF)
        row.addWidget(text_label(title, quiet=True))
        row.addSpacing(UNIT - HALF)
        for key, word, explanation in chips:
            row.addWidget(self._chip(title, key, word, explanation))
        self._buttons[choice].setChecked(True)
        self._lead_tab_to_the_choice()
        self._group.buttonToggled.connect(self._on_toggled)

    @property
    def choice(self) -> str:
        """The key of the chip that is on."""
        return next(key for key, each in self._buttons.items() if each.isChecked())

    def choose(self, key: str) -> None:
        """Put another chip on; tells as a click would."""
        self._buttons[key].setChecked(True)

    def chip(self, key: str) -> QPushButton:
        """The button of one chip."""
        return self._buttons[key]

    def _chip(self, title: str, key: str, word: str, explanation: str) -> QPushButton:
        made = QPushButton(word)
        made.setProperty("chip", True)
        made.setCheckable(True)
        made.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        made.setToolTip(explanation)
        made.setAccessibleName(f"{title}: {word}")
        made.setAccessibleDescription(explanation)
        self._group.addButton(made)
        self._buttons[key] = made
        return made

    def _on_toggled(self, button: QPushButton, on: bool) -> None:
        if on:
            self._lead_tab_to_the_choice()
            self.chosen.emit(next(key for key, each in self._buttons.items() if each is button))

    def _lead_tab_to_the_choice(self) -> None:
        # Qt does this itself, but only once the row has had the focus.
        for each in self._buttons.values():
            strong, click = Qt.FocusPolicy.StrongFocus, Qt.FocusPolicy.ClickFocus
            each.setFocusPolicy(strong if each.isChecked() else click)
