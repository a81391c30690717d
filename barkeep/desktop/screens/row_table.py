"""One thin table model for every list: rows are frozen values, columns say how to show them.

A model adapts and nothing else. It never asks the bar and never computes; a
screen hands it rows, and each column reads its text and sort key off a row.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, Generic, TypeVar, cast

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, Qt, Signal

from barkeep.desktop.widgets.delegates import (
    CELL_ROLE,
    ICONS_ROLE,
    SUBTITLE_ROLE,
    VALUE_ROLE,
    Cell,
    Index,
)
from barkeep.desktop.widgets.tips import broken, plain_tip
from barkeep.translation import tr

Row = TypeVar("Row")
DISPLAY = Qt.ItemDataRole.DisplayRole.value
ALIGNMENT = Qt.ItemDataRole.TextAlignmentRole.value
TOOLTIP = Qt.ItemDataRole.ToolTipRole.value
SAID = Qt.ItemDataRole.AccessibleTextRole.value
"""As Qt asks for them: numbers, of which it asks several for every cell it paints."""
LINE_END = "\u2028"
"""As a painter takes the end of a line within words."""
NO_COLUMN = -1
"""Nothing is sorted by."""


@dataclass(frozen=True)
class Column(Generic[Row]):
    """How one column shows a row.

    `key` sorts (the text does, where it is left out); `roles` adds what a
    delegate paints from, by item data role. `known` says whether what it tells
    of a row has been worked out; always, where it is left out. `about` is what the
    head says of itself to whoever asks. Title and `about` are translated by the table.
    """

    title: str
    text: Callable[[Row], str]
    key: Callable[[Row], Any] | None = None
    right: bool = False
    tooltip: Callable[[Row], str] | None = None
    roles: Mapping[int, Callable[[Row], Any]] = field(default_factory=dict)
    known: Callable[[Row], bool] | None = None
    about: str = ""

    @cached_property
    def alignment(self) -> Qt.AlignmentFlag:
        """Numbers to the right, words to the left; the header follows its column."""
        return self.side | Qt.AlignmentFlag.AlignVCenter

    @property
    def side(self) -> Qt.AlignmentFlag:
        """Where its words begin."""
        return Qt.AlignmentFlag.AlignRight if self.right else Qt.AlignmentFlag.AlignLeft

    def sort_key(self, row: Row) -> Any:
        """What the row sorts by in this column."""
        return self.text(row).casefold() if self.key is None else self.key(row)


class RowTable(QAbstractTableModel, Generic[Row]):
    """A table of frozen rows.

    `look_at` is told each row that is looked at before what a column says of it is known;
    who has worked that out says so by `tell`, which emits `told` with the rows' numbers.
    """

    told = Signal(object)

    def __init__(self, columns: Sequence[Column[Row]], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.columns = tuple(columns)
        """The columns, left to right."""
        self.answered = self._answered()
        """The roles of which a cell may say something: Qt asks for many more."""
        self.rows: tuple[Row, ...] = ()
        """The rows as they stand, in the model's own order."""
        self.look_at: Callable[[Row], object] | None = None
        self._said: dict[int, dict[tuple[int, int], Any]] = {}
        """What has been said of the rows that were looked at, by row, column and role."""

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these rows instead."""
        self.beginResetModel()
        self.rows = tuple(rows)
        self.answered = self._answered()
        self._said.clear()
        self.endResetModel()

    def _answered(self) -> frozenset[int]:
        own = {role for column in self.columns for role in column.roles}
        return frozenset({DISPLAY, ALIGNMENT, TOOLTIP, VALUE_ROLE, CELL_ROLE, *own})

    def replace_row(self, number: int, row: Row) -> None:
        """Show one row anew without disturbing the view."""
        self.rows = (*self.rows[:number], row, *self.rows[number + 1 :])
        self._said.pop(number, None)
        last = max(0, len(self.columns) - 1)
        self.dataChanged.emit(self.index(number, 0), self.index(number, last))

    def tell(self, numbers: Sequence[int]) -> None:
        """Show these rows with what has been worked out of them."""
        for number in numbers:
            self._said.pop(number, None)
        self.told.emit(numbers)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self.rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        return self.value(index.row(), index.column(), role) if index.isValid() else None

    def value(self, number: int, place: int, role: int) -> Any:
        """What the row of this number says in the column at this place."""
        row, column = self.rows[number], self.columns[place]
        if role == ALIGNMENT:
            return column.alignment
        if role == VALUE_ROLE:
            return row
        if role == CELL_ROLE:
            return self._cell(number, place)
        if role == TOOLTIP:
            return plain_tip(column.tooltip(row)) if column.tooltip else None
        say = column.text if role == DISPLAY else column.roles.get(role)
        if say is None:
            return None
        if role == DISPLAY and column.known is not None and self.look_at and not column.known(row):
            self.look_at(row)
        said = self._said.setdefault(number, {})
        if (place, role) not in said:
            said[place, role] = say(row)
        return said[place, role]

    def _cell(self, number: int, place: int) -> Cell:
        """All that is drawn of a cell; its words first, for they look at what is not known."""
        words = str(self.value(number, place, DISPLAY))
        said = self._said[number]
        if (place, CELL_ROLE) not in said:
            said[place, CELL_ROLE] = Cell(
                words.replace("\n", LINE_END),
                self.value(number, place, SUBTITLE_ROLE) or "",
                tuple(self.value(number, place, ICONS_ROLE) or ()),
                self.columns[place].side,
            )
        return cast(Cell, said[place, CELL_ROLE])

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal or section >= len(self.columns):
            return None
        column = self.columns[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return tr(column.title)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return column.alignment
        if role == Qt.ItemDataRole.ToolTipRole:
            return broken(tr(column.about)) or tr(column.title)  # which a narrow column cuts off
        if role == Qt.ItemDataRole.WhatsThisRole:
            return broken(tr(column.about)) or None
        return None


class RowFilter(QAbstractTableModel):
    """The rows of a table that are kept, in the order of one column's keys.

    It holds the numbers of the table's rows and nothing else: a column's keys are read once
    for each change of the rows, and sorting or keeping moves numbers. `is_ready` says whether
    all that sorting and keeping look at is known; while it is not, the rows stay as they are,
    and whoever gets to know calls `arrange`.
    """

    def __init__(self, source: RowTable[Any], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._source = source
        self._accepts: Callable[[Any], bool] = lambda _row: True
        self._column, self._order = NO_COLUMN, Qt.SortOrder.AscendingOrder
        self._ranks: dict[int, list[int]] = {}
        self._shown: list[int] = []
        self._places: dict[int, int] = {}
        self._show(range(len(source.rows)))
        self.is_ready: Callable[[], bool] = lambda: True
        source.modelAboutToBeReset.connect(self.beginResetModel)
        source.modelReset.connect(self._on_reset)
        source.dataChanged.connect(self._on_changed)
        source.told.connect(self._on_told)

    def keep(self, accepts: Callable[[Any], bool]) -> None:
        """Show only the rows the predicate accepts."""
        self.keep_next(accepts)
        if self.is_ready():
            self.arrange()

    def keep_next(self, accepts: Callable[[Any], bool]) -> None:
        """Show only the rows the predicate accepts, from the next change of the table on."""
        self._accepts = accepts

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        self._column, self._order = column, order
        if self.is_ready():
            self.arrange()

    def arrange(self) -> None:
        """Keep and sort the rows as it was asked last; what is chosen stays so if it is kept."""
        arranged = self._arranged()
        if arranged == self._shown:
            return
        self.layoutAboutToBeChanged.emit()
        before = self.persistentIndexList()
        numbers = [self._shown[each.row()] for each in before]
        self._show(arranged)
        places = map(self.place_of, numbers)
        now = [self._index(place, each) for place, each in zip(places, before, strict=True)]
        self.changePersistentIndexList(before, now)
        self.layoutChanged.emit()

    def kept(self) -> list[Any]:
        """The rows that are accepted as it was asked last, whether they are shown yet or not."""
        return list(filter(self._accepts, self._source.rows))

    def lacking(self, rows: Iterable[Any]) -> list[Any]:
        """Those of some rows of which that is not known yet by which rows are sorted."""
        column = self._source.columns[self._column] if self._column != NO_COLUMN else None
        known = None if column is None else column.known
        return [] if known is None else [row for row in rows if not known(row)]

    def row(self, index: Index) -> Any:
        """The row at an index."""
        return self._source.rows[self._shown[index.row()]]

    def shown_rows(self) -> tuple[Any, ...]:
        """The rows as the view shows them, top to bottom."""
        rows = self._source.rows
        return tuple(rows[number] for number in self._shown)

    def words_at(self, place: int, column: int) -> str:
        """What a cell says, in the words it is read by."""
        number, source = self._shown[place], self._source
        said = source.value(number, column, DISPLAY) or source.value(number, column, SAID)
        return str(said or "")

    def place_of(self, number: int) -> int:
        """Where the table's row of this number is shown; -1 where it is not."""
        return self._places.get(number, -1)

    def sortColumn(self) -> int:
        """The column that was sorted by last; -1 for none."""
        return self._column

    def sortOrder(self) -> Qt.SortOrder:
        """Which way was sorted last."""
        return self._order

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self._shown)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self._source.columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role not in self._source.answered or not index.isValid():
            return None
        return self._source.value(self._shown[index.row()], index.column(), role)

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        return self._source.headerData(section, orientation, role)

    def _show(self, numbers: Iterable[int]) -> None:
        self._shown = list(numbers)
        self._places = {number: place for place, number in enumerate(self._shown)}

    def _on_reset(self) -> None:
        self._ranks.clear()
        self._show(self._arranged())
        self.endResetModel()

    def _on_changed(self, first: Index, last: Index) -> None:
        """Some rows are others: they may move, or not be kept."""
        self._ranks.clear()
        if self.is_ready():
            self.arrange()
        self._renew(range(first.row(), last.row() + 1))

    def _on_told(self, numbers: Sequence[int]) -> None:
        """Of some rows more is known: they stay where they stand."""
        for place, column in enumerate(self._source.columns):
            if column.known is not None:
                self._ranks.pop(place, None)
        self._renew(numbers)

    def _renew(self, numbers: Iterable[int]) -> None:
        last = max(0, self.columnCount() - 1)
        for place in map(self.place_of, numbers):
            if place >= 0:
                self.dataChanged.emit(self.index(place, 0), self.index(place, last))

    def _arranged(self) -> list[int]:
        accepts, rows = self._accepts, self._source.rows
        kept = [number for number, row in enumerate(rows) if accepts(row)]
        if not 0 <= self._column < len(self._source.columns):
            return kept
        ranks = self._ranks_of(self._column)
        is_down = self._order == Qt.SortOrder.DescendingOrder
        return sorted(kept, key=ranks.__getitem__, reverse=is_down)

    def _ranks_of(self, column: int) -> list[int]:
        """Of each row the place of its key in a column; equal keys have the same."""
        if column not in self._ranks:
            key = self._source.columns[column].sort_key
            self._ranks[column] = ranked([key(row) for row in self._source.rows])
        return self._ranks[column]

    def _index(self, place: int, like: QModelIndex) -> QModelIndex:
        return QModelIndex() if place < 0 else self.index(place, like.column())


def ranked(keys: Sequence[Any]) -> list[int]:
    """Of each key its place among all, the least first; equal keys share one.

    >>> ranked(["b", "a", "b"])
    [1, 0, 1]
    """
    ranks, before, rank = [0] * len(keys), None, -1
    for number in sorted(range(len(keys)), key=keys.__getitem__):
        if rank < 0 or keys[number] != before:
            rank, before = rank + 1, keys[number]
        ranks[number] = rank
    return ranks
