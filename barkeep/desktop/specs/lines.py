"""The lines of a spec as a table: each field to change, rows to add, remove and put in order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from difflib import SequenceMatcher
from functools import partial
from typing import Any

from PySide6.QtCore import QAbstractItemModel, QMimeData, QModelIndex, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHeaderView,
    QLineEdit,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, scaled
from barkeep.desktop.screens.list_stack import prepare_view, set_widths
from barkeep.desktop.screens.name_completion import NameCompleter, Offers, Suggestion
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.specs.line_names import NamesOfLines
from barkeep.desktop.specs.reading import SeenSpec
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.delegates import ICONS_ROLE, Index, RowDelegate
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import Card, column_of, wide
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.amounts.rounding import Style
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.fields import LineFields, fields_of, text_of
from barkeep.domain.spec_text.headers import header_in
from barkeep.domain.spec_text.text import text_around
from barkeep.domain.specs.shown_lines import shown_lines
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr, tr_noop


def with_lines(text: str, spec: SeenSpec | None, lines: Sequence[str]) -> str:
    """The text with these lines of ingredients, each as near as can be to where it stood.

    Without any, the method says that it is one, or its first row would be read as a line.
    """
    rows = text.split("\n")
    if spec is None:
        return "\n".join((*rows, *lines))
    slots = sorted({seen.number for seen in spec.lines})
    if not slots:
        below = spec.first if spec.read.name else spec.first - 1
        return "\n".join((*rows[:below], *lines, *rows[below:]))
    at = _placed([rows[slot - 1] for slot in slots], lines)
    changed: list[str] = []
    before = dict(zip(slots, at[1:], strict=True))
    for number, row in enumerate(rows, 1):
        changed += at[0] if number == slots[0] else []
        changed += before.get(number, [row])
        begins = not (lines or row.strip()) and number > slots[-1] and "Method:" not in changed
        changed += ["Method:"] if begins and spec.read.method and number <= spec.last else []
    return "\n".join(changed)


def with_name(text: str, spec: SeenSpec | None, name: str) -> str:
    """The text in which the spec has this name; without one, in which it has none."""
    rows = text.split("\n")
    first = 0 if spec is None else spec.first - 1
    end = first + 1 if spec is not None and spec.read.name else first
    plain = " ".join(name.split())
    row = text_around(Spec(plain, ()), ()).rstrip("\n")
    if plain and end > first:
        header = header_in(rows[first])
        row = f"Name: {plain}" if header and header.name == "name" else row
    return "\n".join((*rows[:first], *([row] if plain else []), *rows[end:]))


def _placed(old: Sequence[str], new: Sequence[str]) -> list[list[str]]:
    """The new lines in the places of the old ones: what goes before all, then one list a place."""
    at: list[list[str]] = [[] for _ in range(len(old) + 1)]
    for what, start, end, first, last in SequenceMatcher(None, old, new, False).get_opcodes():
        lines = list(new[first:last])
        if what == "insert":
            at[start] += lines
            continue
        for place in range(start, end):
            at[place + 1] += lines[:1] if place < end - 1 else lines
            lines = lines[1:] if place < end - 1 else []
    return at


AMOUNT, UNIT_COLUMN, INGREDIENT, NOTE, OPTIONAL, GARNISH, SHOWN = range(7)
"""The columns, left to right."""

_IN_FORM = {AMOUNT: "amount", UNIT_COLUMN: "unit", INGREDIENT: "ingredient"}
_OF_LINE = {NOTE: "note", OPTIONAL: "optional", GARNISH: "garnish"}
_WORDS = (*_IN_FORM, NOTE)
_TICKS = (OPTIONAL, GARNISH)
_TITLES = (
    tr_noop("Amount"),
    tr_noop("Unit"),
    tr_noop("Ingredient"),
    tr_noop("Note"),
    tr_noop("Optional"),
    tr_noop("Garnish"),
)
LEAST_OF_INGREDIENT = 110
"""So wide its column is at least, in device-independent pixels at the usual type."""
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
    known = [line for seen in spec.lines if (line := seen.read.known) is not None]
    whole = Spec(spec.name, tuple(known))
    amounts = iter(shown_lines(whole, tree, style, units) if style != "as_written" else ())
    rows = []
    for seen in spec.lines:
        fields = fields_of(seen.read, tree, units)
        shown = next(amounts, None) if seen.read.known else None
        amount = "" if shown is None else shown.amount
        fault = faults.get(seen.number, "")
        there = [each for each in spec.lines if each.number == seen.number]
        part = next(at for at, each in enumerate(there) if each is seen)
        rows.append(
            LineRow(
                fields=fields,
                was=fields,
                number=seen.number,
                shown=amount,
                fault=fault,
                part=part,
                parts=len(there),
            )
        )
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


def _column(place: int, title: str) -> Column[LineRow]:
    return Column(
        title,
        lambda row: row.shown if place == SHOWN else _words(row.fields, place),
        right=place in (AMOUNT, SHOWN),
    )


class LineTable(RowTable[LineRow]):
    """`edited` comes when a field was changed, `moved` with a row's place and its new one."""

    edited = Signal()
    moved = Signal(int, int)

    def __init__(self, shown_title: str = "", parent: QObject | None = None) -> None:
        titles = (*_TITLES, shown_title) if shown_title else _TITLES
        super().__init__([_column(place, title) for place, title in enumerate(titles)], parent)

    def show_rows(self, rows: Sequence[LineRow]) -> None:
        """Show these; where there are as many as before, no editor and no choice is disturbed."""
        if len(rows) != len(self.rows):
            super().show_rows(rows)
        elif tuple(rows) != self.rows:
            self.rows = tuple(rows)
            last = self.index(len(rows) - 1, self.columnCount() - 1)
            self.dataChanged.emit(self.index(0, 0), last)

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
        row, column = self.rows[index.row()], index.column()
        match role:
            case Qt.ItemDataRole.DisplayRole | Qt.ItemDataRole.EditRole:
                return self.columns[column].text(row)
            case Qt.ItemDataRole.CheckStateRole if column in _TICKS:
                return _CHECKED if _value(row.fields, column) else _UNCHECKED
            case Qt.ItemDataRole.ToolTipRole:
                return plain_tip(row.fault or _words(row.fields, column)) or None
            case _ if role == ICONS_ROLE and column == INGREDIENT:
                return ("error",) if row.fault else ()
            case Qt.ItemDataRole.AccessibleTextRole if column in _TICKS:
                return _ticked(column, row.fields)
            case Qt.ItemDataRole.AccessibleDescriptionRole:
                return row.fault or None
            case Qt.ItemDataRole.TextAlignmentRole if column in (AMOUNT, SHOWN):
                return self.columns[column].alignment
        return None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        row, column = self.rows[index.row()], index.column()
        if role == Qt.ItemDataRole.CheckStateRole and column in _TICKS:
            fields = _with_value(row.fields, column, Qt.CheckState(value) == _CHECKED)
        elif role == Qt.ItemDataRole.EditRole and column in _WORDS:
            fields = _with_value(row.fields, column, " ".join(str(value).split()))
        else:
            return False
        if fields != row.fields:
            changed = replace(row, fields=fields)
            place = index.row()
            self.rows = (*self.rows[:place], changed, *self.rows[place + 1 :])
            self.dataChanged.emit(index, index)
            self.edited.emit()
        return True

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
        before = row if row >= 0 else parent.row() if parent.isValid() else len(self.rows)
        self.moved.emit(source, before - 1 if before > source else before)
        return True


def _words(fields: LineFields, column: int) -> str:
    return str(_value(fields, column)) if column in _WORDS else ""


def _value(fields: LineFields, column: int) -> Any:
    if column in _IN_FORM:
        return getattr(fields, _IN_FORM[column])
    return getattr(fields.rest, _OF_LINE[column])


def _ticked(column: int, fields: LineFields) -> str:
    title = tr(_TITLES[column])
    return (
        tr("{title}: yes", title=title)
        if _value(fields, column)
        else tr("{title}: no", title=title)
    )


def _with_value(fields: LineFields, column: int, value: str | bool) -> LineFields:
    if column in _IN_FORM:
        return replace(fields, **{_IN_FORM[column]: value})  # type: ignore[arg-type]
    rest = replace(fields.rest, **{_OF_LINE[column]: value})  # type: ignore[arg-type]
    return replace(fields, rest=rest)


UNITS = ("ml", "cl", "oz", "barspoon", "tsp", "tbsp", "dash", "drop", "part", "pinch", "g")
"""Those that are offered; any that a line understands may be written."""
COLUMN_WIDTHS = {AMOUNT: 68, UNIT_COLUMN: 66, NOTE: 92, OPTIONAL: 74, GARNISH: 74, SHOWN: 82}
_NEW = LineFields()
_TAKEN_IN = "taken-in"


class LinesView(QWidget):
    """Adapts one draft: what is changed is told, and shown again once the text has been read.

    `changed` carries the rows as they are to be; `renamed` the spec's name;
    `undo_wanted` and `redo_wanted` are of the draft's one history;
    `paste_wanted` carries the place below which lines are to be pasted.
    """

    changed = Signal(object)
    renamed = Signal(str)
    undo_wanted = Signal()
    redo_wanted = Signal()
    paste_wanted = Signal(int)

    def __init__(self, snapshot: Snapshot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tree, self._settings = snapshot.knowledge.tree, snapshot.settings
        self._new_at: int | None = None
        style = self._settings.shown_in
        titles = {"as_written": "", "parts": tr("Parts")}
        self.table = LineTable(titles.get(style, tr("In {unit}", unit=style)), self)
        self.view = _LinesTable()
        self.name_field = QLineEdit()
        self.add_button = button(tr("&Add line"), self.add_line, "add")
        self.remove_button = button(tr("Re&move line"), self.remove_line, "remove")
        self.up_button = button(tr("&Up"), lambda: self.move_line(-1))
        self.down_button = button(tr("&Down"), lambda: self.move_line(1))
        self._lay_out(snapshot)
        self._connect()

    def know(self, snapshot: Snapshot) -> None:
        """Name and offer what this bar knows from now on."""
        self._tree = snapshot.knowledge.tree
        delegate = _CompletingDelegate(NamesOfLines(snapshot), tr("Ingredient"), self.view)
        self.view.setItemDelegateForColumn(INGREDIENT, delegate)

    def show_spec(self, spec: SeenSpec | None) -> None:
        """Show the lines of a spec as they were read, and a new one that is still empty."""
        style = self._settings.shown_in
        rows = list(line_rows(spec, self._tree, self._settings.units, style))
        if self._new_at is not None:
            rows.insert(min(self._new_at, len(rows)), LineRow(_NEW, _NEW))
        editing = self.view.state() == QAbstractItemView.State.EditingState
        if editing and len(rows) != len(self.table.rows):
            QTimer.singleShot(0, self, lambda: self._show(rows))  # the cell's editor still closes
        else:
            self._show(rows)
        name = "" if spec is None else spec.read.name
        if " ".join(self.name_field.text().split()) != name:
            self.name_field.setText(name)

    def commit(self) -> None:
        """Take in what is being written in a cell, and leave out a line with nothing in it."""
        if self.view.state() == QAbstractItemView.State.EditingState:
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)
        self._new_at = None

    def _show(self, rows: Sequence[LineRow]) -> None:
        place, column = self._current()
        self.table.show_rows(rows)
        self._go_to(place, column)
        self._offer()

    # What the user does

    def add_line(self) -> None:
        """Begin an empty line below the chosen one and write in it."""
        rows = [row for row in self.table.rows if not row.fields.empty or row.number]
        place = min(self._current()[0] + 1, len(rows)) if rows else 0
        self._new_at = place
        rows.insert(place, LineRow(_NEW, _NEW))
        self.table.show_rows(rows)
        self._go_to(place, AMOUNT)
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)
        self.view.edit(self.table.index(place, AMOUNT))

    def remove_line(self) -> None:
        """Take the chosen line out."""
        place, _column = self._current()
        rows = list(self.table.rows)
        if 0 <= place < len(rows):
            if place == self._new_at:
                self._new_at = None
            del rows[place]
            self._tell(rows)

    def move_line(self, by: int) -> None:
        """Put the chosen line further up or down."""
        place, column = self._current()
        if 0 <= place < len(self.table.rows) and 0 <= place + by < len(self.table.rows):
            self._move(place, place + by, column)

    def _move(self, source: int, target: int, column: int = INGREDIENT) -> None:
        rows = list(self.table.rows)
        rows.insert(target, rows.pop(source))
        self._new_at = next((at for at, row in enumerate(rows) if not _written(row)), None)
        self._go_to(target, column)
        self._tell(rows)

    def _on_edited(self) -> None:
        if self._new_at is not None and _written(self.table.rows[self._new_at]):
            self._new_at = None  # it is a line like the others now
        self._tell(self.table.rows)

    def _tell(self, rows: Sequence[LineRow]) -> None:
        self.changed.emit(tuple(row for row in rows if _written(row) or row.number))

    def _current(self) -> tuple[int, int]:
        index = self.view.currentIndex()
        return (index.row(), index.column()) if index.isValid() else (len(self.table.rows) - 1, 2)

    def _go_to(self, place: int, column: int) -> None:
        index = self.table.index(max(0, min(place, len(self.table.rows) - 1)), max(0, column))
        if index.isValid() and index != self.view.currentIndex():
            self.view.setCurrentIndex(index)

    def _offer(self) -> None:
        place, count = self._current()[0], len(self.table.rows)
        self.remove_button.setEnabled(count > 0)
        self.up_button.setEnabled(0 < place < count)
        self.down_button.setEnabled(0 <= place < count - 1)

    def _connect(self) -> None:
        self.table.edited.connect(self._on_edited)
        self.table.moved.connect(lambda source, target: self._move(source, target))
        self.name_field.textEdited.connect(self.renamed)
        self.view.selectionModel().currentChanged.connect(lambda *_: self._offer())
        here, inside = (
            Qt.ShortcutContext.WidgetShortcut,
            Qt.ShortcutContext.WidgetWithChildrenShortcut,
        )
        for keys, context, act in (
            ("Alt+Up", inside, lambda: self.move_line(-1)),
            ("Alt+Down", inside, lambda: self.move_line(1)),
            ("Ins", here, self.add_line),
            ("Del", here, self.remove_line),
            (QKeySequence.StandardKey.Paste, here, self._paste),
            (QKeySequence.StandardKey.Undo, here, self.undo_wanted.emit),
            ("Ctrl+Shift+Z", here, self.redo_wanted.emit),
        ):
            shortcut = QShortcut(QKeySequence(keys), self.view)
            shortcut.setContext(context)
            shortcut.activated.connect(act)

    def _paste(self) -> None:
        self.paste_wanted.emit(self._current()[0])

    def _lay_out(self, snapshot: Snapshot) -> None:
        self.name_field.setAccessibleName(tr("Name of the drink"))
        self.name_field.setPlaceholderText(tr("Name of the drink"))
        self.name_field.setMinimumHeight(self.name_field.sizeHint().height())
        self.view.setModel(self.table)
        _prepare(self.view, snapshot)
        buttons = (self.add_button, self.remove_button, self.up_button, self.down_button)
        for each in buttons:
            each.setAutoDefault(False)
        self.up_button.setAccessibleName(tr("Move the line up"))
        self.down_button.setAccessibleName(tr("Move the line down"))
        self.up_button.setToolTip(tr("Move the line up (Alt+Up)"))
        self.down_button.setToolTip(tr("Move the line down (Alt+Down)"))
        hint = tr("Method, glass, notes and further specs are in the text.")
        column_of(
            self.name_field,
            wide(Card(self.view)),
            FlowLayout(buttons, HALF),
            text_label(hint, quiet=True, wrap=True),
            on=self,
        )


class _LinesTable(QTableView):
    """The ingredient has what room the other columns leave, or scrolls rather than vanishes."""

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        header, least = self.horizontalHeader(), scaled(LEAST_OF_INGREDIENT)
        others = (each for each in range(header.count()) if each != INGREDIENT)
        room = self.viewport().width() - sum(map(header.sectionSize, others))
        modes = QHeaderView.ResizeMode
        header.setSectionResizeMode(
            INGREDIENT, modes.Stretch if room >= least else modes.Interactive
        )
        if room < least:
            header.resizeSection(INGREDIENT, least)


class _CompletingDelegate(RowDelegate):
    """Edits a cell with names to choose from."""

    def __init__(
        self, offered: Sequence[Suggestion] | Offers | None, name: str, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._offered, self._name = offered, name

    def createEditor(
        self, parent: QWidget, _option: QStyleOptionViewItem, _index: Index
    ) -> QLineEdit:
        field = QLineEdit(parent)
        field.setFrame(False)
        field.setAccessibleName(self._name)
        if self._offered is not None:
            free = not isinstance(self._offered, Offers)
            completer = NameCompleter(self._offered, field, free=free)
            field.setCompleter(completer)
            finish = partial(self._finish_later, field)
            completer.activated.connect(finish)
            # While names are offered, Enter goes past the delegate and to the field alone.
            field.returnPressed.connect(lambda: finish() if _offers(completer) else None)
        return field

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Index) -> None:
        editor.setProperty(_TAKEN_IN, True)
        super().setModelData(editor, model, index)

    def _finish_later(self, field: QLineEdit, _chosen: str = "") -> None:
        """Take the cell in once the names have closed and the chosen one is written."""
        QTimer.singleShot(0, field, partial(self._finish, field))

    def _finish(self, field: QLineEdit) -> None:
        if not field.property(_TAKEN_IN):
            self.commitData.emit(field)
            self.closeEditor.emit(field, QAbstractItemDelegate.EndEditHint.NoHint)


def _offers(completer: NameCompleter) -> bool:
    popup = completer.popup()
    return popup is not None and popup.isVisible()


def _written(row: LineRow) -> bool:
    return not row.fields.empty


def _prepare(view: QTableView, snapshot: Snapshot) -> None:
    prepare_view(view, tr("Lines of the spec"))
    view.setSortingEnabled(False)
    view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
    triggers = QAbstractItemView.EditTrigger
    view.setEditTriggers(
        triggers.DoubleClicked
        | triggers.EditKeyPressed
        | triggers.AnyKeyPressed
        | triggers.SelectedClicked
    )
    view.setDragDropMode(QAbstractItemView.DragDropMode.InternalMove)
    view.setDragDropOverwriteMode(False)
    view.setDropIndicatorShown(True)
    view.setDefaultDropAction(Qt.DropAction.MoveAction)
    header = view.horizontalHeader()
    header.setStretchLastSection(False)
    header.setMinimumSectionSize(40)
    header.setSectionResizeMode(INGREDIENT, QHeaderView.ResizeMode.Stretch)
    set_widths(view, COLUMN_WIDTHS)
    own = (each.name for each in snapshot.settings.measures)
    units = [Suggestion(each, each, each) for each in (*UNITS, *own)]
    for column, name, offered in (
        (AMOUNT, tr("Amount"), None),
        (UNIT_COLUMN, tr("Unit"), units),
        (INGREDIENT, tr("Ingredient"), NamesOfLines(snapshot)),
        (NOTE, tr("Note"), None),
    ):
        view.setItemDelegateForColumn(column, _CompletingDelegate(offered, name, view))
