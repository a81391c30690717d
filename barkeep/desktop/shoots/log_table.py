"""The bottles of a log: one key a bottle, and cells to type an exact amount or a spill in."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHeaderView,
    QLineEdit,
    QStyleOptionViewItem,
    QTableWidget,
    QWidget,
)

from barkeep.desktop.widgets.delegates import RowDelegate
from barkeep.desktop.widgets.keys import HELD, typed_key

CELL_WIDTH = 76

COLUMNS = ("Bottle", "Before", "Poured", "Spilled", "Expected", "Counted", "Difference")
SPILLED, COUNTED = 3, 5

RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter

EndEdit = QAbstractItemDelegate.EndEditHint


class _CellDelegate(RowDelegate):
    """Remembers the field of the cell that is being typed in; an older one may still be going."""

    editor: QLineEdit | None = None

    def createEditor(
        self,
        parent: QWidget,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> QWidget:
        made = super().createEditor(parent, option, index)
        self.editor = made if isinstance(made, QLineEdit) else None
        return made


class LogTable(QTableWidget):
    """Says what was typed; what it means is the dialog's affair."""

    typed = Signal(str)
    """A key, as `typed_key` names it."""
    entered = Signal(int)
    """Enter has ended the typing in a cell of this column."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(0, len(COLUMNS), parent)
        self._given_up: QWidget | None = None
        self._cells = _CellDelegate(self)
        self.setItemDelegate(self._cells)
        self.setHorizontalHeaderLabels(COLUMNS)
        self.setAccessibleName("Bottles of the shoot")
        self.verticalHeader().hide()
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.DoubleClicked)
        self._prepare_header()

    def edit_cell(self, row: int, column: int, begins: str = "") -> None:
        """Type in a cell, over what it says, or on from what was begun."""
        item = self.item(row, column)
        if item is None:
            return
        self.setCurrentCell(row, column)
        self.editItem(item)
        if begins and self._cells.editor is not None:
            self._cells.editor.setText(begins)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self.state() == QAbstractItemView.State.EditingState:
            event.ignore()  # the Enter that ends the typing passes through here as well
            return
        typed = "" if event.modifiers() & HELD else typed_key(event)
        ends = {"Home": 0, "End": self.rowCount() - 1}
        if typed in ends:
            self.setCurrentCell(ends[typed], max(0, self.currentColumn()))
        elif not typed:
            super().keyPressEvent(event)
        elif not event.isAutoRepeat():  # a key held down counts one bottle
            self.typed.emit(typed)

    def commitData(self, editor: QWidget) -> None:
        if editor is not self._given_up:  # as it goes it may lose the focus, and ask once more
            super().commitData(editor)

    def closeEditor(self, editor: QWidget, hint: EndEdit) -> None:
        self._given_up = editor if hint == EndEdit.RevertModelCache else None
        column = self.currentColumn()
        super().closeEditor(editor, hint)
        if hint == EndEdit.SubmitModelCache:
            self.entered.emit(column)

    def _prepare_header(self) -> None:
        header = self.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for place in range(1, len(COLUMNS)):
            above = self.horizontalHeaderItem(place)
            assert above is not None  # all of them have just been set
            above.setTextAlignment(RIGHT)
        header.setMinimumSectionSize(CELL_WIDTH)  # room to type in
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
