"""One drink of a shoot on its page: its serves, its lines as poured, and what can be done."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from barkeep.desktop.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.models.shoot_lines import PouredLine, poured_lines
from barkeep.desktop.models.shoot_rows import ShootAnswer, serves_in_words
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.flow_layout import FlowLayout
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.sections import grid_of_rows, selectable
from barkeep.domain.shoots import spec_of

OTHERWISE = "Pour otherwise…"


class DrinkPart(QWidget):
    """Signals carry what the user wants changed; a logged shoot only shows and batches."""

    as_written_wanted = Signal(int)
    otherwise_wanted = Signal(QPoint)
    batch_wanted = Signal()
    moved = Signal(int)

    def __init__(self, answer: ShootAnswer, number: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._drink = drink = answer.shoot.drinks[number]
        self._logged = answer.shoot.log is not None
        self.buttons: dict[str, QPushButton] = {}
        there = spec_of(drink, answer.snapshot) is not None
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(HALF)
        self._say(f"{number + 1}. {drink.name}", size=TypeSize.STRONG)
        removed = "" if there else " Its spec was removed."
        self._say(f"{serves_in_words(drink.serves)}.{removed}", quiet=True)
        if there:
            self._add_lines(poured_lines(answer, number))
        self._add_buttons(there, number, len(answer.shoot.drinks) - 1)

    @property
    def first_button(self) -> QPushButton | None:
        """The first of its buttons, None where it has none."""
        return next(iter(self.buttons.values()), None)

    def is_named_in(self, name: str) -> bool:
        """Whether an accessible name is that of something of this drink."""
        return name.startswith(f"{self._drink.name}: ")

    def _add_lines(self, lines: Sequence[PouredLine]) -> None:
        grid = grid_of_rows()
        for row, line in enumerate(lines):
            self._add_line(grid, row, line)
        self._column.addLayout(grid)

    def _add_line(self, grid: QGridLayout, row: int, line: PouredLine) -> None:
        top = Qt.AlignmentFlag.AlignTop
        if not self._logged:
            state = line.state
            grid.addWidget(PictureLabel(state.picture, 16, state.tone, state.word), row, 0, top)
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(selectable(text_label(line.text, wrap=True)))
        note = line.note if line.chosen or not self._logged else ""
        if note:
            words.addWidget(selectable(text_label(note, TypeSize.CAPTION, quiet=True, wrap=True)))
        if line.chosen and not self._logged:
            back = button("Pour as written", partial(self.as_written_wanted.emit, line.place))
            back.setAccessibleName(f"{self._drink.name}: pour {line.name} as written")
            beside = QHBoxLayout()
            beside.addWidget(back)
            beside.addStretch(1)
            words.addLayout(beside)
        grid.addLayout(words, row, 1)

    def _add_buttons(self, there: bool, number: int, last: int) -> None:
        row = FlowLayout()
        row.setSpacing(UNIT)
        changeable = not self._logged
        acts: tuple[tuple[bool, str, Callable[[], object]], ...] = (
            (there, "Batch…", self.batch_wanted.emit),
            (there and changeable, OTHERWISE, self._ask_otherwise),
            (number > 0 and changeable, "Earlier", lambda: self.moved.emit(-1)),
            (number < last and changeable, "Later", lambda: self.moved.emit(1)),
        )
        for wanted, text, act in acts:
            if wanted:
                made = button(text, act)
                made.setAccessibleName(f"{self._drink.name}: {text}")
                self.buttons[text] = made
                row.addWidget(made)
        self._column.addSpacing(HALF)
        self._column.addLayout(row)

    def _ask_otherwise(self) -> None:
        """Ask for the menu right below the button, wherever the mouse may be."""
        asked = self.buttons[OTHERWISE]
        self.otherwise_wanted.emit(asked.mapToGlobal(asked.rect().bottomLeft()))

    def _say(self, text: str, *, quiet: bool = False, size: TypeSize = TypeSize.BODY) -> None:
        self._column.addWidget(selectable(text_label(text, size, quiet=quiet, wrap=True)))
