"""Say which column of a list is what: a choice for each, the first rows, and what comes of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QTableView, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.widgets.buttons import primary_button
from barkeep.desktop.widgets.labels import copyable, text_label
from barkeep.desktop.widgets.layouts import at_left, column_of
from barkeep.documents.specs.columns import ColumnRequest, ColumnUse, SeenColumn, numbered_uses
from barkeep.documents.specs.tables import MEANING_WORDS, Meaning
from barkeep.domain.phrases import capitalised
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

LEFT_OUT = tr_noop("Left aside")
ROWS_HEIGHT = 150

TryOut = Callable[[Sequence[ColumnUse]], str]
"""What the first drink of the list is with these columns; raises a `UserError` where it is none."""


class ColumnChoices(QWidget):
    """`answered` carries the columns as the user has them, once they are to be read so."""

    answered = Signal(object)

    def __init__(
        self, request: ColumnRequest, try_out: TryOut, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._request, self._try_out = request, try_out
        self.choices = [self._choice(each) for each in request.columns]
        self.outcome = copyable("")
        self.read_button = primary_button(tr("&Read it so"), self._answer)
        self.rows = _rows_view(request, self)
        column_of(
            text_label(capitalised(request.why), wrap=True),
            self._grid(),
            text_label(tr("The first drink would be"), TypeSize.STRONG),
            self.outcome,
            at_left(self.read_button),
            text_label(tr("The first rows"), TypeSize.STRONG),
            self.rows,
            on=self,
        )
        self._show_outcome()

    @property
    def uses(self) -> tuple[ColumnUse, ...]:
        """The columns as they are chosen now."""
        return numbered_uses([choice.currentData() for choice in self.choices])

    def _grid(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(UNIT + HALF)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(0, 1)
        pairs = zip(self._request.columns, self.choices, strict=True)
        for number, (column, choice) in enumerate(pairs):
            said = text_label(_title(column), wrap=True)
            said.setBuddy(choice)
            samples = ", ".join(column.samples) or tr("empty")
            grid.addLayout(column_of(said, text_label(samples, quiet=True, wrap=True)), number, 0)
            grid.addWidget(choice, number, 1, Qt.AlignmentFlag.AlignTop)
        return grid

    def _choice(self, column: SeenColumn) -> QComboBox:
        choice = QComboBox()
        choice.addItem(tr(LEFT_OUT), None)
        for meaning, words in MEANING_WORDS.items():
            choice.addItem(capitalised(tr(words)), meaning)
        likely: Meaning | None = column.likely.meaning if column.likely else None
        choice.setCurrentIndex(max(0, choice.findData(likely)) if likely else 0)
        choice.setAccessibleName(tr("What {column} holds", column=_title(column)))
        choice.currentIndexChanged.connect(lambda _index: self._show_outcome())
        return choice

    def _show_outcome(self) -> None:
        try:
            self.outcome.setText(self._try_out(self.uses))
            self.read_button.setEnabled(True)
        except UserError as error:
            self.outcome.setText(str(error))
            self.read_button.setEnabled(False)

    def _answer(self) -> None:
        self.answered.emit(self.uses)


def _title(column: SeenColumn) -> str:
    number = tr("Column {place}", place=column.place)
    return f"{number}, {column.title}" if column.title else number


def _rows_view(request: ColumnRequest, parent: QWidget) -> QTableView:
    def text_of(place: int) -> Callable[[tuple[str, ...]], str]:
        return lambda row: row[place] if place < len(row) else ""

    columns = [
        Column(each.title or str(each.place), text_of(each.place - 1)) for each in request.columns
    ]
    table: RowTable[tuple[str, ...]] = RowTable(columns, parent)
    table.show_rows(request.rows)
    view = QTableView()
    view.setModel(table)
    prepare_view(view, tr("The first rows of {file}", file=request.file))
    view.setSortingEnabled(False)
    view.setFixedHeight(ROWS_HEIGHT)
    view.resizeColumnsToContents()
    return view
