"""The log after a shoot: serves really made, spills and counts of just its bottles, in one step."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QSpinBox,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.look.metrics import PAD, UNIT, TypeSize
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.buttons import button, number_field, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.delegates import RowDelegate
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.notices import Banner, announce
from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.bar.shoots import MOST_SERVES, Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.level_words import Comparison, difference, quantity, with_doubt
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.domain.shoots.drinks import without_spec
from barkeep.domain.shoots.log import ExpectedBottle, LogSheet, as_planned, expected_after
from barkeep.errors import AmountError, UserError

if TYPE_CHECKING:
    from barkeep.application.bar import Bar


@dataclass(frozen=True)
class LogRow:
    """One bottle of the log."""

    expected: ExpectedBottle
    counted: MeasuredLevel | None

    @property
    def bottle(self) -> Bottle:
        """The bottle itself."""
        return self.expected.bottle

    @property
    def compared(self) -> Comparison | None:
        """Counted beside expected; None where it was not counted."""
        if self.counted is None:
            return None
        each = self.expected
        return Comparison(
            each.expected, each.expected_sigma, self.counted.amount, self.counted.sigma
        )

    @property
    def texts(self) -> tuple[str, ...]:
        """Bottle, before, poured, spilled, expected, counted, difference."""
        unit, each = self.bottle.product.unit, self.expected
        compared = self.compared
        return (
            self.bottle.product.title,
            quantity(self.bottle.level.amount, unit),
            quantity(each.poured, unit) if each.poured else "",
            quantity(each.spilled, unit) if each.spilled else "",
            with_doubt(each.expected, each.expected_sigma, unit),
            quantity(self.counted.amount, unit) if self.counted else "",
            difference(compared, unit) if compared else "",
        )


class LogDraft:
    """What the user has said so far; nothing of it is written yet."""

    def __init__(self, shoot: Shoot, snapshot: Snapshot) -> None:
        self._shoot = replace(shoot, state="filmed")
        self._snapshot = snapshot
        self._others: set[int] = set()
        self.sheet: LogSheet = as_planned(shoot)
        self._leave_out_removed()

    def rows(self) -> tuple[LogRow, ...]:
        """Every bottle the shoot bears on, and those taken in besides, in shelf order."""
        found = expected_after(self._shoot, self._snapshot, self.sheet)
        shown = {each.bottle.id for each in found}
        others = tuple(
            ExpectedBottle(each, 0.0, 0.0)
            for each in self._snapshot.bottles
            if each.id in self._others - shown
        )
        return tuple(
            LogRow(each, self.sheet.counted.get(each.bottle.id)) for each in (*found, *others)
        )

    def make(self, number: int, count: int) -> None:
        """Say how many serves of a drink were really made."""
        made = list(self.sheet.made)
        made[number] = count
        self.sheet = replace(self.sheet, made=tuple(made))

    def take_in(self, bottle_id: int) -> None:
        """Show a bottle that no spec names."""
        self._others.add(bottle_id)

    def spill(self, bottle_id: int, text: str) -> None:
        """Say what was spilled of a bottle; nothing, for an empty text. Raises `AmountError`."""
        spilled = {key: each for key, each in self.sheet.spilled.items() if key != bottle_id}
        if text.strip():
            bottle = self._bottle(bottle_id)
            written = text if text.strip()[-1].isalpha() else f"{text} {bottle.product.unit}"
            units = self._snapshot.settings.units
            read = parse_amount(written)
            if read.high is not None:
                raise AmountError(text, "write one amount, such as 20 ml")
            amount = to_quantity(read, bottle.product.unit, units)
            if amount:
                spilled[bottle_id] = amount
        self.sheet = replace(self.sheet, spilled=spilled)

    def count(self, bottle_id: int, text: str) -> None:
        """Count a bottle by any of the four means; not at all, for an empty text.

        Raises `LevelError` or another `UserError`.
        """
        counted = {key: each for key, each in self.sheet.counted.items() if key != bottle_id}
        if text.strip():
            snapshot, bottle = self._snapshot, self._bottle(bottle_id)
            container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
            counted[bottle_id] = parse_level(text, container, snapshot.settings.units)
        self.sheet = replace(self.sheet, counted=counted)

    def in_words(self) -> str:
        """What would be written, in one sentence."""
        rows = self.rows()
        counted = len(self.sheet.counted)
        flagged = [row for row in rows if row.compared and row.compared.told_apart]
        said = f"{_bottles(len(rows))}: {counted} counted, {len(rows) - counted} as expected."
        if flagged:
            said += f" {_bottles(len(flagged))} beyond the doubt."
        gone = without_spec(self._shoot, self._snapshot)
        if gone:
            said += f" The spec of {' and '.join(gone)} was removed: its pours are not known."
        return said

    def _bottle(self, bottle_id: int) -> Bottle:
        return self._snapshot.bottle_by_id[bottle_id]

    def _leave_out_removed(self) -> None:
        gone = without_spec(self._shoot, self._snapshot)
        for number, drink in enumerate(self._shoot.drinks):
            if drink.name in gone:
                self.make(number, 0)


def _bottles(count: int) -> str:
    return "1 bottle" if count == 1 else f"{count} bottles"


SIZE, CELL_WIDTH = (940, 600), 76

COLUMNS = ("Bottle", "Before", "Poured", "Spilled", "Expected", "Counted", "Difference")

SPILLED, COUNTED = 3, 5

HINT = (
    "Type a count on a bottle: 0.4, 315 ml, 812 g or 11.5 cm; one left empty is accepted as "
    "expected. S writes a spill, + adds a round of every drink, - takes one away."
)

DIGITS = "0123456789.,"

RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class LogDialog(QDialog):
    """`logged` carries what was done once it is written."""

    logged = Signal(object)

    def __init__(self, bar: Bar, shoot: Shoot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bar, self._shoot = bar, shoot
        self.draft = LogDraft(shoot, bar.snapshot)
        self.setWindowTitle(f"Log {shoot.theme}")
        self.banner = Banner(closable=False)
        self.made: list[QSpinBox] = []
        self.table = QTableWidget(0, len(COLUMNS))
        self.summary = text_label("", quiet=True, wrap=True)
        self.another = button("Another &bottle…", self.add_bottle)
        self.write_button = primary_button("&Write the log", self.write, "check")
        self.cancel_button = button("Cancel", self.reject)
        self._filling = False
        self._unread: dict[tuple[int, int], tuple[str, UserError]] = {}
        self._lay_out()
        self.resize(*SIZE)
        self._fill()
        if self.table.rowCount():
            self.table.setCurrentCell(0, COUNTED)
        self.table.setFocus()

    # What the user does

    def add_round(self, by: int = 1) -> None:
        """One serve more, or less, of every drink."""
        for field in self.made:
            field.setValue(field.value() + by)

    def edit(self, column: int, text: str = "") -> None:
        """Begin to write a spill or a count on the present bottle."""
        row = max(0, self.table.currentRow())
        item = self.table.item(row, column)
        if item is None:
            return
        self.table.setCurrentCell(row, column)
        self.table.editItem(item)
        editor = self.table.findChild(QWidget, "qt_editor") or self.table.focusWidget()
        if text and editor is not None and hasattr(editor, "setText"):
            editor.setText(text)

    def add_bottle(self) -> None:
        """Count a bottle that the specs do not name as well."""
        from barkeep.desktop.bottles.choose import ChooseBottle

        shown = {each.bottle.id for each in self.draft.rows()}
        others = [each for each in self._bar.snapshot.bottles if each.id not in shown]
        dialog = ChooseBottle(others, self)
        dialog.chosen.connect(self._on_another)
        dialog.open()

    def write(self) -> None:
        """Write everything in one transaction."""
        self.table.setCurrentCell(self.table.currentRow(), 0)  # what is being typed is taken
        if self._unread:  # also where the click on the button has ended the typing
            self._say_unread()
            return
        self.banner.clear()
        identity = self._shoot.id
        if identity is None:
            return
        log = partial(self._bar.shoots.log, identity, self.draft.sheet)
        run_operation(self, log, self._finish, self._refuse)

    def show_refusal(self, error: UserError) -> None:
        """Say why not, above the bottles."""
        self._refuse(error)

    def clear_refusal(self) -> None:
        """Take the reason away."""
        self.banner.clear()

    # The rest

    def _finish(self, done: object) -> None:
        self.logged.emit(done)
        self.accept()

    def _refuse(self, error: UserError) -> None:
        self.banner.say(str(error), "error")
        announce(self.table, str(error))

    def _on_another(self, bottle_id: int) -> None:
        self.draft.take_in(bottle_id)
        self._fill()
        self.table.setCurrentCell(self._row_of(bottle_id), COUNTED)

    def _row_of(self, bottle_id: int) -> int:
        rows = self.draft.rows()
        return next((at for at, row in enumerate(rows) if row.bottle.id == bottle_id), 0)

    def _on_made(self, number: int, count: int) -> None:
        self.draft.make(number, count)
        self._fill()
        self._say_unread()  # a bottle that goes takes its typing along

    def _on_changed(self, item: QTableWidgetItem) -> None:
        if self._filling or item.column() not in (SPILLED, COUNTED):
            return
        row = self.draft.rows()[item.row()]
        take: Callable[[int, str], object] = (
            self.draft.spill if item.column() == SPILLED else self.draft.count
        )
        place = (row.bottle.id, item.column())
        self._unread.pop(place, None)
        try:
            take(row.bottle.id, item.text())
        except UserError as error:
            take(row.bottle.id, "")
            self._unread[place] = (item.text(), error)
        self._say_unread()
        self._fill()

    def _say_unread(self) -> None:
        """Say why what was typed last could not be read; it stays to be mended or emptied."""
        if self._unread:
            self._refuse(list(self._unread.values())[-1][1])
        else:
            self.banner.clear()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        pressed = isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress
        if watched is self.table and pressed:
            assert isinstance(event, QKeyEvent)
            return self._take_key(event)
        return super().eventFilter(watched, event)

    def _take_key(self, event: QKeyEvent) -> bool:
        if self.table.state() == QAbstractItemView.State.EditingState:
            return False  # the Return that ends writing passes through the table as well
        text = event.text()
        if text and text in DIGITS:
            self.edit(COUNTED, text)
        elif text in ("s", "S"):
            self.edit(SPILLED)
        elif text == "+":
            self.add_round()
        elif text == "-":
            self.add_round(-1)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.edit(COUNTED)
        else:
            return False
        return True

    def _fill(self) -> None:
        kept = self.table.currentRow(), self.table.currentColumn()
        self._filling = True
        rows = self.draft.rows()
        shown = {row.bottle.id for row in rows}
        self._unread = {key: each for key, each in self._unread.items() if key[0] in shown}
        self.table.setRowCount(len(rows))
        for number, row in enumerate(rows):
            self._fill_row(number, row)
        self._filling = False
        self.table.setCurrentCell(*kept)
        self.summary.setText(self.draft.in_words())
        self.write_button.setEnabled(bool(rows))

    def _fill_row(self, number: int, row: LogRow) -> None:
        for column, read in enumerate(row.texts):
            text = (
                self._unread[place][0]
                if (place := (row.bottle.id, column)) in self._unread
                else read
            )
            item = QTableWidgetItem(text)
            flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
            if column in (SPILLED, COUNTED):
                flags |= Qt.ItemFlag.ItemIsEditable
            item.setFlags(flags)
            item.setToolTip(text)
            if column:
                item.setTextAlignment(RIGHT)
            self.table.setItem(number, column, item)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(PAD, PAD, PAD, PAD)
        column.setSpacing(UNIT)
        column.addWidget(text_label(f"Log {self._shoot.theme}", TypeSize.SUBTITLE, wrap=True))
        column.addWidget(text_label("Serves really made", TypeSize.STRONG))
        column.addLayout(self._serves())
        column.addWidget(text_label(HINT, quiet=True, wrap=True))
        column.addWidget(self.banner)
        self._prepare_table()
        column.addWidget(self.table, 1)
        column.addWidget(self.summary)
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addWidget(self.another)
        row.addStretch(1)
        row.addWidget(self.cancel_button)
        row.addWidget(self.write_button)
        for each in (self.another, self.cancel_button, self.write_button):
            each.setAutoDefault(False)
        column.addLayout(row)

    def _serves(self) -> FlowLayout:
        flow = FlowLayout()
        flow.setSpacing(UNIT)
        for number, drink in enumerate(self._shoot.drinks):
            field = number_field(f"Serves of {drink.name}", 0, 3 * MOST_SERVES)
            field.setValue(drink.serves.total)
            field.valueChanged.connect(partial(self._on_made, number))
            self.made.append(field)
            part = QWidget()
            row = QHBoxLayout(part)
            row.setContentsMargins(0, 0, UNIT, 0)
            row.addWidget(text_label(drink.name))
            row.addWidget(field)
            flow.addWidget(part)
        return flow

    def _prepare_table(self) -> None:
        self.table.setHorizontalHeaderLabels(COLUMNS)
        self.table.setAccessibleName("Bottles of the shoot")
        self.table.verticalHeader().hide()
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.DoubleClicked)
        self.table.setItemDelegate(RowDelegate(self.table))
        header = self.table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for place in range(1, len(COLUMNS)):
            above = self.table.horizontalHeaderItem(place)
            assert above is not None  # all of them have just been set
            above.setTextAlignment(RIGHT)
        header.setMinimumSectionSize(CELL_WIDTH)  # room to type in
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.table.itemChanged.connect(self._on_changed)
        self.table.installEventFilter(self)
