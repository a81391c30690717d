"""The one sheet before a count is written: every bottle, every difference, and the totals."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.counting.rows import (
    COUNTED,
    DIFFERENCE,
    EXPECTED,
    LEVEL,
    bottles_in_words,
    count_columns,
    totals_in_words,
)
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.card import Card
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.bottles.counting import CountRow

SIZE = (720, 520)
MEANING = "One undo takes all of it back. A level lies within its ± 19 times in 20."
WIDTHS = {EXPECTED: 96, COUNTED: 130, DIFFERENCE: 240}


class CountSheet(QDialog):
    """Accepted writes, rejected goes on counting."""

    def __init__(
        self, rows: Sequence[CountRow], left_out: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        many = bottles_in_words(len(rows))
        self.setWindowTitle("Confirm the count")
        self.heading = text_label(f"Write down the count of {many}?", TypeSize.SUBTITLE, wrap=True)
        self.totals = text_label(totals_in_words(rows), TypeSize.STRONG, wrap=True)
        self.rest = text_label(_rest(left_out), quiet=True, wrap=True)
        self.table: RowTable[CountRow] = RowTable(count_columns(), self)
        self.table.show_rows(rows)
        self.view = QTableView()
        self.write_button = primary_button(f"Write {_counts(len(rows))}", self.accept, "check")
        self.back_button = button("Go on counting", self.reject)
        self._prepare_view()
        self._lay_out()
        self.write_button.setDefault(True)
        self.write_button.setFocus()
        self.resize(*SIZE)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            QShortcut(QKeySequence(keys), self, self.accept)

    def _prepare_view(self) -> None:
        view = self.view
        view.setModel(self.table)
        prepare_view(view, "What will be written")
        view.setSortingEnabled(False)
        view.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        view.setColumnHidden(LEVEL, True)
        view.verticalHeader().setDefaultSectionSize(48)
        header = view.horizontalHeader()
        header.setStretchLastSection(False)
        header.setSectionsClickable(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column, width in WIDTHS.items():
            header.resizeSection(column, width)

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.setSpacing(UNIT)
        buttons.addStretch(1)
        buttons.addWidget(self.back_button)
        buttons.addWidget(self.write_button)
        self.back_button.setAutoDefault(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(WIDE, PAD, WIDE, PAD)
        column.setSpacing(UNIT)
        column.addWidget(self.heading)
        column.addWidget(self.totals)
        column.addWidget(self.rest)
        column.addSpacing(HALF)
        column.addWidget(Card(self.view), 1)
        column.addSpacing(HALF)
        column.addLayout(buttons)
        self.view.setFocusPolicy(Qt.FocusPolicy.TabFocus)


def _counts(many: int) -> str:
    return "1 count" if many == 1 else f"{many} counts"


def _rest(left_out: int) -> str:
    if not left_out:
        return f"Every open bottle is counted. {MEANING}"
    words = bottles_in_words(left_out)
    kept = "keeps" if left_out == 1 else "keep"
    return f"{words} open but not counted {kept} what the ledger says. {MEANING}"
