"""One thin table model for every list: rows are frozen values, columns say how to show them.

A model adapts and nothing else. It never asks the bar and never computes; a
screen hands it rows, and each column reads its text and sort key off a row.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QSortFilterProxyModel, Qt

from barkeep.desktop.widgets.delegates import SORT_ROLE, VALUE_ROLE, Index
from barkeep.desktop.widgets.tips import plain_tip

Row = TypeVar("Row")


@dataclass(frozen=True)
class Column(Generic[Row]):
    """How one column shows a row.

    `key` sorts (the text does, where it is left out); `roles` adds what a
    delegate paints from, by item data role.
    """

    title: str
    text: Callable[[Row], str]
    key: Callable[[Row], Any] | None = None
    right: bool = False
    tooltip: Callable[[Row], str] | None = None
    roles: Mapping[int, Callable[[Row], Any]] = field(default_factory=dict)

    @property
    def alignment(self) -> Qt.AlignmentFlag:
        """Numbers to the right, words to the left; the header follows its column."""
        side = Qt.AlignmentFlag.AlignRight if self.right else Qt.AlignmentFlag.AlignLeft
        return side | Qt.AlignmentFlag.AlignVCenter

    def sort_key(self, row: Row) -> Any:
        """What the row sorts by in this column."""
        return self.text(row).casefold() if self.key is None else self.key(row)


class RowTable(QAbstractTableModel, Generic[Row]):
    """A table of frozen rows."""

    def __init__(self, columns: Sequence[Column[Row]], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.columns = tuple(columns)
        """The columns, left to right."""
        self.rows: tuple[Row, ...] = ()
        """The rows as they stand, in the model's own order."""

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these rows instead."""
        self.beginResetModel()
        self.rows = tuple(rows)
        self.endResetModel()

    def replace_row(self, number: int, row: Row) -> None:
        """Show one row anew without disturbing the view."""
        self.rows = (*self.rows[:number], row, *self.rows[number + 1 :])
        last = max(0, len(self.columns) - 1)
        self.dataChanged.emit(self.index(number, 0), self.index(number, last))

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row, column = self.rows[index.row()], self.columns[index.column()]
        if role in column.roles:
            return column.roles[role](row)
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return column.text(row)
            case Qt.ItemDataRole.TextAlignmentRole:
                return column.alignment
            case Qt.ItemDataRole.ToolTipRole:
                return plain_tip(column.tooltip(row)) if column.tooltip else None
            case _ if role == VALUE_ROLE:
                return row
            case _ if role == SORT_ROLE:
                return column.sort_key(row)
        return None

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal or section >= len(self.columns):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.columns[section].title
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return self.columns[section].alignment
        return None


class RowFilter(QSortFilterProxyModel):
    """Sorts by each column's key and keeps the rows a predicate accepts."""

    def __init__(self, source: RowTable[Any], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._accepts: Callable[[Any], bool] = lambda _row: True
        self.setSourceModel(source)

    def keep(self, accepts: Callable[[Any], bool]) -> None:
        """Show only the rows the predicate accepts."""
        self.beginFilterChange()
        self._accepts = accepts
        self.endFilterChange(QSortFilterProxyModel.Direction.Rows)

    def row(self, index: Index) -> Any:
        """The row behind a proxy index."""
        return self.data(index, VALUE_ROLE)

    def shown_rows(self) -> tuple[Any, ...]:
        """The rows as the view shows them, top to bottom."""
        return tuple(self.row(self.index(number, 0)) for number in range(self.rowCount()))

    def filterAcceptsRow(self, source_row: int, source_parent: Index) -> bool:
        source = self.sourceModel()
        assert isinstance(source, RowTable)
        return self._accepts(source.rows[source_row])

    def lessThan(self, left: Index, right: Index) -> bool:
        source = self.sourceModel()
        first, second = source.data(left, SORT_ROLE), source.data(right, SORT_ROLE)
        return bool(first < second)
