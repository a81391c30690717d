"""The lines of a spec as a table: each field to change, rows to add, remove and put in order."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import (
    QAbstractItemModel,
    QModelIndex,
    QPersistentModelIndex,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QStyleOptionViewItem,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.dialogs.spec_reading import SeenSpec
from barkeep.desktop.metrics import HALF, UNIT
from barkeep.desktop.models.line_rows import (
    AMOUNT,
    GARNISH,
    INGREDIENT,
    NOTE,
    OPTIONAL,
    SHOWN,
    LineRow,
    LineTable,
    line_rows,
)
from barkeep.desktop.models.line_rows import UNIT as UNIT_COLUMN
from barkeep.desktop.models.name_completion import (
    NameCompleter,
    Suggestion,
    ingredient_names,
)
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.card import Card
from barkeep.desktop.widgets.delegates import RowDelegate
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.line_fields import LineFields
from barkeep.domain.snapshot import Snapshot

Index = QModelIndex | QPersistentModelIndex
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
        titles = {"as_written": "", "parts": "Parts"}
        self.table = LineTable(titles.get(style, f"In {style}"), self)
        self.view = QTableView()
        self.name_field = QLineEdit()
        self.add_button = button("&Add line", self.add_line, "add")
        self.remove_button = button("Re&move line", self.remove_line, "remove")
        self.up_button = button("&Up", lambda: self.move_line(-1))
        self.down_button = button("&Down", lambda: self.move_line(1))
        self._lay_out(snapshot)
        self._connect()

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
        self.name_field.setAccessibleName("Name of the drink")
        self.name_field.setPlaceholderText("Name of the drink")
        self.view.setModel(self.table)
        _prepare(self.view, snapshot)
        buttons = QHBoxLayout()
        buttons.setSpacing(HALF)
        for each in (self.add_button, self.remove_button, self.up_button, self.down_button):
            each.setAutoDefault(False)
            buttons.addWidget(each)
        self.up_button.setAccessibleName("Move the line up")
        self.down_button.setAccessibleName("Move the line down")
        self.up_button.setToolTip("Move the line up (Alt+Up)")
        self.down_button.setToolTip("Move the line down (Alt+Down)")
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(UNIT)
        column.addWidget(self.name_field)
        column.addWidget(Card(self.view), 1)
        column.addLayout(buttons)
        hint = "Method, glass, notes and further specs are in the text."
        column.addWidget(text_label(hint, quiet=True, wrap=True))


class _CompletingDelegate(RowDelegate):
    """Edits a cell with names to choose from."""

    def __init__(self, offered: Sequence[Suggestion], name: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._offered, self._name = tuple(offered), name

    def createEditor(
        self, parent: QWidget, _option: QStyleOptionViewItem, _index: Index
    ) -> QLineEdit:
        field = QLineEdit(parent)
        field.setFrame(False)
        field.setAccessibleName(self._name)
        if self._offered:
            completer = NameCompleter(self._offered, field)
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
    prepare_view(view, "Lines of the spec")
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
    for column, width in COLUMN_WIDTHS.items():
        view.setColumnWidth(column, width)
    units = [Suggestion(each, each, each) for each in UNITS]
    for column, name, offered in (
        (AMOUNT, "Amount", ()),
        (UNIT_COLUMN, "Unit", units),
        (INGREDIENT, "Ingredient", _ingredients(snapshot)),
        (NOTE, "Note", ()),
    ):
        view.setItemDelegateForColumn(column, _CompletingDelegate(offered, name, view))


def _ingredients(snapshot: Snapshot) -> list[Suggestion]:
    """Every name of the tree, then what is on the shelf: that writes its kind and names itself."""
    tree = snapshot.knowledge.tree
    found = [
        Suggestion(each.shown, tree.in_sentence(str(each.value)), each.value)
        for each in ingredient_names(tree)
    ]
    owned = {bottle.product.id: bottle.product for bottle in snapshot.bottles}
    for product in sorted(owned.values(), key=lambda each: each.title.casefold()):
        kind = tree.in_sentence(product.ingredient)
        title = product.title.translate(str.maketrans("(),", "   "))
        found.append(Suggestion(f"{product.title}: {kind}", f"{kind} ({title})", product))
    return found
