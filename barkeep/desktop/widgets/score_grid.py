"""Scores to be typed in: a row a taster, a column a scale."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.desktop.metrics import UNIT

Cell = tuple[int, int]
"""Taster and scale, each counted from 0."""
LEAST_ROWS, MOST_ROWS = 2, 6
"""So many rows the grid has room for, at least and at most."""
NAME_WIDTH = 150
"""The most room a taster's name takes, in device-independent pixels."""


class ScoreGrid(QTableWidget):
    """The arrow keys move, typing writes, and Tab goes on to what is after the grid."""

    def __init__(self, scales: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(0, len(scales), parent)
        self._tasters: tuple[str, ...] = ()
        self.setHorizontalHeaderLabels(list(scales))
        self.setTabKeyNavigation(False)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed | triggers.EditKeyPressed | triggers.DoubleClicked
        )
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setWordWrap(True)
        across = self.horizontalHeader()
        across.setSectionsClickable(False)
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap)
        across.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        across.setMinimumSectionSize(76)
        down = self.verticalHeader()
        down.setSectionsClickable(False)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(self.fontMetrics().height() + 2 * UNIT + 6)
        down.setMaximumWidth(NAME_WIDTH)

    @property
    def tasters(self) -> tuple[str, ...]:
        """Who has a row."""
        return self._tasters

    def show_tasters(self, tasters: Sequence[str]) -> None:
        """Give each a row; what was typed stays in its place, whatever its taster is called."""
        before = self.rowCount()
        self._tasters = tuple(tasters)
        self.setRowCount(len(tasters))
        for row, taster in enumerate(tasters):
            header = QTableWidgetItem(self._shortened(taster))
            header.setToolTip(taster)
            self.setVerticalHeaderItem(row, header)
            for column in range(self.columnCount()) if row >= before else ():
                cell = QTableWidgetItem()
                cell.setTextAlignment(Qt.AlignmentFlag.AlignCenter)
                self.setItem(row, column, cell)
        if tasters and self.currentRow() < 0:
            self.setCurrentCell(0, 0)
        self.updateGeometry()

    def _shortened(self, taster: str) -> str:
        """A name as far as there is room for it; both its ends tell it from others."""
        metrics, room = self.verticalHeader().fontMetrics(), NAME_WIDTH - 3 * UNIT
        return metrics.elidedText(taster, Qt.TextElideMode.ElideMiddle, room)

    def write(self, cell: Cell, text: str) -> None:
        """Put a text into a cell."""
        item = self.item(*cell)
        if item is not None:
            item.setText(text)

    def written(self) -> Mapping[Cell, str]:
        """What was typed, by row and column; empty cells are left out."""
        cells = [(row, at) for row in range(self.rowCount()) for at in range(self.columnCount())]
        items = ((cell, self.item(*cell)) for cell in cells)
        return {cell: item.text().strip() for cell, item in items if item and item.text().strip()}

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and self.currentItem():
            self.currentItem().setText("")
            return
        super().keyPressEvent(event)

    def sizeHint(self) -> QSize:
        rows = min(MOST_ROWS, max(LEAST_ROWS, self.rowCount()))
        height = self.horizontalHeader().sizeHint().height() + 2 * self.frameWidth()
        return QSize(360, height + rows * self.verticalHeader().defaultSectionSize())

    def minimumSizeHint(self) -> QSize:
        return QSize(240, self.sizeHint().height())
