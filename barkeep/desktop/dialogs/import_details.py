"""Beside the list of an import: one spec, yours and theirs side by side, and its fate."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.spec_imports import Choice, Decision
from barkeep.application.spec_preview import Differing, Incoming, Unreadable
from barkeep.desktop.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.models.import_rows import ImportRow
from barkeep.desktop.widgets.filter_chips import FilterChips
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.domain.spec_differences import ComparedLine, LineChange
from barkeep.domain.specs import Spec

NOTHING = "–"
CHANGE_WORDS: dict[LineChange, str] = {
    "same": "the same",
    "wording": "worded otherwise",
    "amount": "another amount",
    "swapped": "another ingredient",
    "added": "only in theirs",
    "left out": "only in yours",
}
_PICTURES: dict[LineChange, tuple[str, str]] = {
    "same": ("check", "ready"),
    "wording": ("info", "info"),
    "amount": ("scale", "warning"),
    "swapped": ("stand-ins", "warning"),
    "added": ("add", "warning"),
    "left out": ("remove", "warning"),
}
_CHOICES: tuple[tuple[Choice, str, str], ...] = (
    ("keep_mine", "Keep mine", "Yours stays as it is; theirs does not come in"),
    ("take_theirs", "Take theirs", "Theirs takes the place of yours; undo brings yours back"),
    ("add", "Keep both", "Theirs comes in beside yours, under another name"),
)


class ImportDetails(QScrollArea):
    """`decided` carries the row that is shown and the decision the user took for it."""

    decided = Signal(object, object)

    def __init__(self, text_of: Callable[[Spec], str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._text_of = text_of
        self.chips: FilterChips | None = None
        self.name_field: QLineEdit | None = None
        self.setAccessibleName("The chosen spec")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(330)
        self.viewport().setAutoFillBackground(False)

    def show_row(self, row: ImportRow | None) -> None:
        """Show one spec, or nothing."""
        self.chips = self.name_field = None
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(PAD, PAD, PAD, PAD)
        column.setSpacing(UNIT)
        if row is not None:
            column.addWidget(text_label(row.name, TypeSize.SUBTITLE, wrap=True))
            if row.where:
                column.addWidget(text_label(_begun(row.where), quiet=True, wrap=True))
            self._add_thing(column, row)
        column.addStretch(1)
        old = self.takeWidget()
        if old is not None:  # one of its chips may be telling of its click just now
            old.hide()
            old.deleteLater()
        self.setWidget(page)
        page.setAutoFillBackground(False)  # a scroll area fills what it is given

    def _add_thing(self, column: QVBoxLayout, row: ImportRow) -> None:
        thing = row.thing
        if isinstance(thing, Unreadable):
            self._add_problems(column, thing)
        elif isinstance(thing, Differing):
            self._add_choice(column, row, thing)
            column.addLayout(_side_by_side(thing))
            _add_remarks(column, thing.incoming.remarks)
        else:
            self._add_new(column, thing)

    def _add_new(self, column: QVBoxLayout, thing: Incoming) -> None:
        _add_remarks(column, thing.remarks)
        rows = self._text_of(thing.spec).partition("\n")[2]
        column.addWidget(_selectable(rows.strip("\n")))

    def _add_problems(self, column: QVBoxLayout, thing: Unreadable) -> None:
        for problem in thing.problems:
            row = QHBoxLayout()
            row.setSpacing(UNIT)
            picture = PictureLabel("error", 16, "danger", "Cannot be used")
            row.addWidget(picture, 0, Qt.AlignmentFlag.AlignTop)
            row.addWidget(text_label(_begun(str(problem)), wrap=True), 1)
            column.addLayout(row)
        if thing.text:
            column.addSpacing(UNIT)
            column.addWidget(text_label("As it was found", TypeSize.STRONG))
            column.addWidget(_selectable(thing.text.strip("\n")))

    def _add_choice(self, column: QVBoxLayout, row: ImportRow, thing: Differing) -> None:
        if not thing.replaceable:
            words = "Yours is a classic that barkeep brings along; it stays as it is."
            column.addWidget(text_label(words, quiet=True, wrap=True))
        chips = [each for each in _CHOICES if thing.replaceable or each[0] != "take_theirs"]
        self.chips = FilterChips("Do", chips, row.decision.choice)
        self.name_field = QLineEdit(row.decision.name or thing.free_name)
        self.name_field.setAccessibleName("Name under which theirs comes in")
        self.name_field.setVisible(row.decision.choice == "add")
        self.chips.chosen.connect(lambda _choice: self._decide(row))
        self.name_field.textEdited.connect(lambda _text: self._decide(row))
        column.addWidget(self.chips, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.name_field)
        column.addSpacing(HALF)

    def _decide(self, row: ImportRow) -> None:
        assert self.chips is not None
        assert self.name_field is not None
        choice: Choice = next(each[0] for each in _CHOICES if each[0] == self.chips.choice)
        self.name_field.setVisible(choice == "add")
        name = self.name_field.text() if choice == "add" else ""
        self.decided.emit(row, Decision(choice, name))


def _side_by_side(thing: Differing) -> QGridLayout:
    """Yours left, theirs right; a picture before each line says what became of it."""
    grid = QGridLayout()
    grid.setHorizontalSpacing(UNIT + HALF)
    grid.setVerticalSpacing(UNIT)
    grid.setColumnStretch(1, 1)
    grid.setColumnStretch(2, 1)
    for place, words in ((1, "Yours"), (2, "Theirs")):
        grid.addWidget(text_label(words, TypeSize.STRONG), 0, place)
    for line in thing.comparison.lines:
        _add_line(grid, line)
    for field in thing.comparison.fields:
        heading = text_label(_begun(field.name), TypeSize.CAPTION, quiet=True)
        grid.addWidget(heading, grid.rowCount(), 1, 1, 2)
        _add_pair(grid, "warning", "warning", f"{field.name} differs", field.mine, field.theirs)
    return grid


def _add_line(grid: QGridLayout, line: ComparedLine) -> None:
    picture, tone = _PICTURES[line.change]
    _add_pair(grid, picture, tone, CHANGE_WORDS[line.change], line.mine, line.theirs)


def _add_pair(
    grid: QGridLayout, picture: str, tone: str, meaning: str, mine: str, theirs: str
) -> None:
    row, top = grid.rowCount(), Qt.AlignmentFlag.AlignTop
    grid.addWidget(PictureLabel(picture, 16, tone, meaning), row, 0, top)
    for place, words in ((1, mine), (2, theirs)):
        grid.addWidget(_selectable(words or NOTHING), row, place, top)


def _add_remarks(column: QVBoxLayout, remarks: Sequence[str]) -> None:
    for remark in remarks:
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addWidget(PictureLabel("info", 16, "info", "Remark"), 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(text_label(remark, wrap=True), 1)
        column.addLayout(row)


def _begun(words: str) -> str:
    """Words as a sentence begins; the capitals of names stay."""
    return words[:1].upper() + words[1:]


def _selectable(words: str) -> QWidget:
    label = text_label(words, wrap=True)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    label.setMinimumWidth(40)
    return label
