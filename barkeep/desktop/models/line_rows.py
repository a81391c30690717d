"""The lines of the spec that is being written, as rows in which each field can be changed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QMimeData, QModelIndex, QObject, Qt, Signal

from barkeep.desktop.dialogs.spec_reading import SeenSpec
from barkeep.desktop.models.row_table import Index
from barkeep.desktop.widgets.roles import ICONS_ROLE
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.line_fields import LineFields, fields_of, text_of
from barkeep.domain.printing import Style
from barkeep.domain.shown_lines import shown_lines
from barkeep.domain.spec_lines import as_line
from barkeep.domain.specs import Spec
from barkeep.domain.unit_names import BarUnits

AMOUNT, UNIT, INGREDIENT, NOTE, OPTIONAL, GARNISH, SHOWN = range(7)
"""The columns, left to right."""
_WORDS = {AMOUNT: "amount", UNIT: "unit", INGREDIENT: "ingredient", NOTE: "note"}
_TICKS = {OPTIONAL: "optional", GARNISH: "garnish"}
_TITLES = ("Amount", "Unit", "Ingredient", "Note", "Optional", "Garnish")
_DRAGGED = "application/x-barkeep-line"
_CHECKED, _UNCHECKED = Qt.CheckState.Checked, Qt.CheckState.Unchecked


@dataclass(frozen=True, slots=True)
class LineRow:
    """One line: its fields now and as they were read.

    `number` is the line of the text it stands on, 0 where it is not in the text
    yet; it is the `part`th from 0 of the `parts` that stand there. `shown` is its
    amount as the bar likes to see it; `fault` what is wrong.
    """

    fields: LineFields
    was: LineFields
    number: int = 0
    shown: str = ""
    fault: str = ""
    part: int = 0
    parts: int = 1


def line_rows(
    spec: SeenSpec | None, tree: FamilyTree, units: BarUnits, style: Style
) -> tuple[LineRow, ...]:
    """The lines of a spec as they were read, those that cannot be used among them."""
    if spec is None:
        return ()
    faults = {each.line: each.message for each in reversed(spec.faults)}
    known = [line for seen in spec.lines if (line := as_line(seen.read)) is not None]
    whole = Spec(spec.name, tuple(known))
    amounts = iter(shown_lines(whole, tree, style, units) if style != "as_written" else ())
    rows = []
    for seen in spec.lines:
        fields = fields_of(seen.read, tree, units)
        shown = next(amounts, None) if seen.read.ingredient is not None else None
        amount = "" if shown is None else shown.amount
        fault = faults.get(seen.number, "")
        there = [each for each in spec.lines if each.number == seen.number]
        part = next(at for at, each in enumerate(there) if each is seen)
        rows.append(LineRow(fields, fields, seen.number, amount, fault, part, len(there)))
    return tuple(rows)


def texts_of(rows: Sequence[LineRow], lines: Sequence[str]) -> tuple[str, ...]:
    """The rows as lines of a text; what nobody changed is left as it stands in `lines`.

    Two garnishes that share a line keep it while both are there as they were.
    """
    texts: list[str] = []
    left = list(rows)
    while left:
        row = left[0]
        if row.number and _as_they_stood(left[: row.parts], row):
            texts.append(lines[row.number - 1])
            left = left[row.parts :]
        else:
            texts.append(text_of(row.fields))
            left = left[1:]
    return tuple(text for text in texts if text.strip())


def _as_they_stood(rows: Sequence[LineRow], first: LineRow) -> bool:
    """Whether these are all the parts of one line of the text, in order and unchanged."""
    alike = all(row.number == first.number and row.fields == row.was for row in rows)
    return alike and [row.part for row in rows] == list(range(first.parts))


class LineTable(QAbstractTableModel):
    """`edited` comes when a field was changed, `moved` with a row's place and its new one."""

    edited = Signal()
    moved = Signal(int, int)

    def __init__(self, shown_title: str = "", parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[LineRow, ...] = ()
        self._titles = (*_TITLES, shown_title) if shown_title else _TITLES

    @property
    def rows(self) -> tuple[LineRow, ...]:
        """The rows, top to bottom."""
        return self._rows

    def show_rows(self, rows: Sequence[LineRow]) -> None:
        """Show these; where there are as many as before, no editor and no choice is disturbed."""
        if len(rows) != len(self._rows):
            self.beginResetModel()
            self._rows = tuple(rows)
            self.endResetModel()
        elif tuple(rows) != self._rows:
            self._rows = tuple(rows)
            last = self.index(len(rows) - 1, len(self._titles) - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 (Qt's signature)
        return 0 if parent.isValid() else len(self._titles)

    def flags(self, index: Index) -> Qt.ItemFlag:
        if not index.isValid():
            return Qt.ItemFlag.ItemIsDropEnabled
        usual = super().flags(index) | Qt.ItemFlag.ItemIsDragEnabled
        if index.column() in _WORDS:
            return usual | Qt.ItemFlag.ItemIsEditable
        return usual | Qt.ItemFlag.ItemIsUserCheckable if index.column() in _TICKS else usual

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row, column = self._rows[index.row()], index.column()
        match role:
            case Qt.ItemDataRole.DisplayRole | Qt.ItemDataRole.EditRole:
                return row.shown if column == SHOWN else _words(row.fields, column)
            case Qt.ItemDataRole.CheckStateRole if column in _TICKS:
                return _CHECKED if getattr(row.fields, _TICKS[column]) else _UNCHECKED
            case Qt.ItemDataRole.ToolTipRole:
                return row.fault or _words(row.fields, column) or None
            case _ if role == ICONS_ROLE and column == INGREDIENT:
                return ("error",) if row.fault else ()
            case Qt.ItemDataRole.AccessibleTextRole if column in _TICKS:
                return f"{_TITLES[column]}: {'yes' if _ticked(row, column) else 'no'}"
            case Qt.ItemDataRole.AccessibleDescriptionRole:
                return row.fault or None
            case Qt.ItemDataRole.TextAlignmentRole if column in (AMOUNT, SHOWN):
                return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        row, column = self._rows[index.row()], index.column()
        if role == Qt.ItemDataRole.CheckStateRole and column in _TICKS:
            ticked = Qt.CheckState(value) == _CHECKED
            fields = replace(row.fields, **{_TICKS[column]: ticked})  # type: ignore[arg-type]
        elif role == Qt.ItemDataRole.EditRole and column in _WORDS:
            words = " ".join(str(value).split())
            fields = replace(row.fields, **{_WORDS[column]: words})  # type: ignore[arg-type]
        else:
            return False
        if fields != row.fields:
            changed = replace(row, fields=fields)
            place = index.row()
            self._rows = (*self._rows[:place], changed, *self._rows[place + 1 :])
            self.dataChanged.emit(index, index)
            self.edited.emit()
        return True

    def headerData(
        self,
        section: int,
        orientation: Qt.Orientation,
        role: int = Qt.ItemDataRole.DisplayRole,
    ) -> Any:
        if orientation != Qt.Orientation.Horizontal or section >= len(self._titles):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self._titles[section]
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if section in (AMOUNT, SHOWN) else None
            return (side or Qt.AlignmentFlag.AlignLeft) | Qt.AlignmentFlag.AlignVCenter
        return None

    # Dragging a row elsewhere

    def supportedDropActions(self) -> Qt.DropAction:
        return Qt.DropAction.MoveAction

    def mimeTypes(self) -> list[str]:
        return [_DRAGGED]

    def mimeData(self, indexes: Sequence[QModelIndex]) -> QMimeData:
        data = QMimeData()
        data.setData(_DRAGGED, str(indexes[0].row()).encode())
        return data

    def dropMimeData(
        self, data: QMimeData, action: Qt.DropAction, row: int, _column: int, parent: Index
    ) -> bool:
        if action != Qt.DropAction.MoveAction or not data.hasFormat(_DRAGGED):
            return False
        source = int(bytes(data.data(_DRAGGED).data()))
        before = row if row >= 0 else parent.row() if parent.isValid() else len(self._rows)
        self.moved.emit(source, before - 1 if before > source else before)
        return True


def _words(fields: LineFields, column: int) -> str:
    return str(getattr(fields, _WORDS[column])) if column in _WORDS else ""


def _ticked(row: LineRow, column: int) -> bool:
    return bool(getattr(row.fields, _TICKS[column]))
