"""The rows of a shopping list: what to buy, and what of it was bought, typed over."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.application.shopping import MOST_PACKAGES
from barkeep.desktop.models.amount_text import read_number
from barkeep.domain.answers.shopping import ShoppingItem
from barkeep.domain.answers.shopping_words import (
    money,
    name_in_words,
    need_in_words,
    packages_in_words,
    why_in_words,
)
from barkeep.domain.ingredients import FamilyTree
from barkeep.errors import InvalidField, UserError

WHAT, NEED, BUY, COUNT, PRICE, COST, WHY = range(7)
HEADS = ("What", "Need", "To buy", "Got", "Each", "Cost", "Why")
WIDTHS = {WHAT: 150, NEED: 70, COUNT: 48, PRICE: 62, COST: 62}
SHARE_THE_REST = (BUY, WHY)
TO_THE_RIGHT = (NEED, COUNT, PRICE, COST)
ROW_HEIGHT = 32
COUNT_TIP = "How many packages were bought: type over it"
PRICE_TIP = "What each of them cost: type over it"


@dataclass(frozen=True, slots=True)
class Taken:
    """One thing that was ticked: how many packages of it, and what each cost."""

    item: ShoppingItem
    count: int
    price: float | None


class ShoppingTable(QTableWidget):
    """`ticked` comes when something else is ticked; Space ticks, typing writes."""

    ticked = Signal()

    def __init__(self, tree: FamilyTree, parent: QWidget | None = None) -> None:
        super().__init__(0, len(HEADS), parent)
        self._tree = tree
        self._things: tuple[ShoppingItem, ...] = ()
        self.setAccessibleName("What to buy")
        self.setHorizontalHeaderLabels(list(HEADS))
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed | triggers.EditKeyPressed | triggers.DoubleClicked
        )
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        self._size_columns()
        self.itemChanged.connect(self._on_changed)

    @property
    def things(self) -> tuple[ShoppingItem, ...]:
        """What is listed, top to bottom."""
        return self._things

    @property
    def current_thing(self) -> ShoppingItem | None:
        """The thing of the row that is chosen."""
        return self._things[self.currentRow()] if 0 <= self.currentRow() < self.rowCount() else None

    @property
    def any_ticked(self) -> bool:
        """Whether something is ticked."""
        return any(map(self._is_ticked, range(self.rowCount())))

    def show_things(self, things: Sequence[ShoppingItem]) -> None:
        """List these, none ticked."""
        self.blockSignals(True)
        self._things = tuple(things)
        self.setRowCount(0)
        self.setRowCount(len(things))
        for row, thing in enumerate(things):
            self._fill(row, thing)
        self.blockSignals(False)
        if things:
            self.setCurrentCell(0, WHAT)
        self.ticked.emit()

    def tick_all(self) -> None:
        """Tick every row."""
        for row in range(self.rowCount()):
            self._cell(row, WHAT).setCheckState(Qt.CheckState.Checked)

    def taken(self) -> tuple[Taken, ...]:
        """What is ticked. Raises `InvalidField` for a cell that cannot be read, and goes to it."""
        self.setFocus()  # a cell that is still being typed in is taken as it stands
        return tuple(self._read(row) for row in range(self.rowCount()) if self._is_ticked(row))

    def sizeHint(self) -> QSize:
        return QSize(sum(WIDTHS.values()) + 300, 8 * ROW_HEIGHT)

    def _read(self, row: int) -> Taken:
        thing, name = self._things[row], self._tree.name(self._things[row].ingredient)
        for column, word in ((COUNT, "count"), (PRICE, "price")):
            try:
                _ = self._count(row) if column == COUNT else self._price(row)
            except InvalidField as error:
                self.setCurrentCell(row, column)
                raise InvalidField(f"{word} of {name}", error.value, error.expected) from None
        return Taken(thing, self._count(row), self._price(row))

    def _count(self, row: int) -> int:
        text = self._cell(row, COUNT).text().strip()
        if not text.isdecimal() or not 1 <= int(text) <= MOST_PACKAGES:
            raise InvalidField("count", text, f"it is 1 to {MOST_PACKAGES}")
        return int(text)

    def _price(self, row: int) -> float | None:
        text = self._cell(row, PRICE).text()
        price = read_number("price", text, "24.50")
        if price is not None and price < 0.0:
            raise InvalidField("price", text.strip(), "it is nothing or more")
        return price

    def _on_changed(self, cell: QTableWidgetItem) -> None:
        if cell.column() in (COUNT, PRICE):
            self._renew_cost(cell.row())
        if cell.column() == WHAT:
            self.ticked.emit()

    def _renew_cost(self, row: int) -> None:
        try:
            as_bought = replace(
                self._things[row], packages=self._count(row), price=self._price(row)
            )
            shown = money(as_bought.cost)
        except UserError:  # said when it is put into the bar
            shown = "?"
        self.blockSignals(True)
        self._cell(row, COST).setText(shown)
        self.blockSignals(False)
        self.viewport().update()

    def _fill(self, row: int, thing: ShoppingItem) -> None:
        texts = (
            name_in_words(thing, self._tree),
            need_in_words(thing),
            packages_in_words(thing),
            str(thing.packages),
            money(thing.price),
            money(thing.cost),
            why_in_words(thing),
        )
        for column, text in enumerate(texts):
            cell = QTableWidgetItem(text)
            flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
            if column in (COUNT, PRICE):
                flags |= Qt.ItemFlag.ItemIsEditable
                cell.setToolTip(COUNT_TIP if column == COUNT else PRICE_TIP)
            else:
                cell.setToolTip("\n".join(thing.why) if column == WHY else text)
            if column == WHAT:
                flags |= Qt.ItemFlag.ItemIsUserCheckable
                cell.setCheckState(Qt.CheckState.Unchecked)
            side = Qt.AlignmentFlag.AlignRight if column in TO_THE_RIGHT else 0
            cell.setTextAlignment(Qt.AlignmentFlag.AlignVCenter | (side or Qt.AlignmentFlag(0)))
            cell.setFlags(flags)
            self.setItem(row, column, cell)

    def _cell(self, row: int, column: int) -> QTableWidgetItem:
        cell = self.item(row, column)
        assert cell is not None
        return cell

    def _is_ticked(self, row: int) -> bool:
        return self._cell(row, WHAT).checkState() == Qt.CheckState.Checked

    def _size_columns(self) -> None:
        across = self.horizontalHeader()
        across.setSectionsClickable(False)
        across.setHighlightSections(False)
        across.setMinimumSectionSize(40)
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for column, width in WIDTHS.items():
            across.resizeSection(column, width)
        for column in SHARE_THE_REST:
            across.setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)
        for column in TO_THE_RIGHT:
            head = self.horizontalHeaderItem(column)
            assert head is not None
            head.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
