"""Shop for shoots, pars and what was put on the list, and put what was bought into the bar."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import TypeVar

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.application.done import Done, Step
from barkeep.application.shopping import MOST_PACKAGES, bought_of
from barkeep.desktop.buying.pars import ParsDialog
from barkeep.desktop.look.metrics import HALF, PAD, TypeSize, dialog_size, scaled
from barkeep.desktop.screens.form_dialog import read_number
from barkeep.desktop.screens.list_stack import look_like_a_list
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.screen import NOT_WRITTEN, ScreenContext
from barkeep.desktop.widgets.buttons import (
    accept_by_keys,
    button,
    day_field,
    day_in,
    hold,
    offer,
    primary_button,
)
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.delegates import LowRowDelegate
from barkeep.desktop.widgets.fields import labelled
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.desktop.widgets.terms import explain
from barkeep.desktop.widgets.ticks import Tickable, TickList
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.buying.shopping import (
    ShoppingItem,
    ShoppingList,
    list_as_text,
    name_in_words,
    need_in_words,
    packages_in_words,
    shopping_for,
    still_to_film,
    total_in_words,
    why_in_words,
)
from barkeep.domain.days import day_short
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import price_in_words
from barkeep.errors import InvalidField, UserError
from barkeep.translation import tr, tr_about, tr_noop

T = TypeVar("T")
WHAT, NEED, BUY, COUNT, PRICE, COST, WHY = range(7)
HEADS = (
    tr_noop("What"),
    tr_noop("Need"),
    tr_noop("To buy"),
    tr_noop("Got"),
    tr_noop("Each"),
    tr_noop("Cost"),
    tr_noop("Why"),
)
WIDTHS = {WHAT: 150, NEED: 70, COUNT: 48, PRICE: 62, COST: 62}
SHARE_THE_REST = (BUY, WHY)
TO_THE_RIGHT = (NEED, COUNT, PRICE, COST)
ROW_HEIGHT = 32
COUNT_TIP = tr_noop("How many packages were bought: type over it")
PRICE_TIP = tr_noop("What each of them cost: type over it")


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
        self.things: tuple[ShoppingItem, ...] = ()
        """What is listed, top to bottom."""
        self.setAccessibleName(tr("What to buy"))
        self.setHorizontalHeaderLabels([tr(each) for each in HEADS])
        look_like_a_list(self, low=True)
        self.setItemDelegate(LowRowDelegate(self))
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed | triggers.EditKeyPressed | triggers.DoubleClicked
        )
        self._size_columns()
        self.itemChanged.connect(self._on_changed)

    @property
    def current_thing(self) -> ShoppingItem | None:
        """The thing of the row that is chosen."""
        return self.things[self.currentRow()] if 0 <= self.currentRow() < self.rowCount() else None

    @property
    def any_ticked(self) -> bool:
        """Whether something is ticked."""
        return any(map(self._is_ticked, range(self.rowCount())))

    def show_things(self, things: Sequence[ShoppingItem]) -> None:
        """List these, none ticked."""
        self.blockSignals(True)
        self.things = tuple(things)
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
        return QSize(scaled(sum(WIDTHS.values()) + 300), scaled(8 * ROW_HEIGHT))

    def _read(self, row: int) -> Taken:
        thing, name = self.things[row], name_in_words(self.things[row], self._tree)
        for column, word in ((COUNT, tr_about("of packages", "count")), (PRICE, tr("price"))):
            try:
                _ = self._count(row) if column == COUNT else self._price(row)
            except InvalidField as error:
                self.setCurrentCell(row, column)
                raise InvalidField(
                    tr("{word} of {name}", word=word, name=name), error.value, error.expected
                ) from None
        return Taken(thing, self._count(row), self._price(row))

    def _count(self, row: int) -> int:
        text = self._cell(row, COUNT).text().strip()
        if not text.isdecimal() or not 1 <= int(text) <= MOST_PACKAGES:
            raise InvalidField("count", text, tr("it is 1 to {most}", most=MOST_PACKAGES))
        return int(text)

    def _price(self, row: int) -> float | None:
        text = self._cell(row, PRICE).text()
        price = read_number("price", text, "24.50")
        if price is not None and price < 0.0:
            raise InvalidField("price", text.strip(), tr("it is nothing or more"))
        return price

    def _on_changed(self, cell: QTableWidgetItem) -> None:
        if cell.column() in (COUNT, PRICE):
            self._renew_cost(cell.row())
        if cell.column() == WHAT:
            self.ticked.emit()

    def _renew_cost(self, row: int) -> None:
        try:
            as_bought = replace(self.things[row], packages=self._count(row), price=self._price(row))
            shown = price_in_words(as_bought.cost)
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
            price_in_words(thing.price),
            price_in_words(thing.cost),
            why_in_words(thing),
        )
        for column, text in enumerate(texts):
            cell = QTableWidgetItem(text)
            flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
            if column in (COUNT, PRICE):
                flags |= Qt.ItemFlag.ItemIsEditable
                cell.setToolTip(tr(COUNT_TIP) if column == COUNT else tr(PRICE_TIP))
            else:
                cell.setToolTip(plain_tip("\n".join(thing.why) if column == WHY else text))
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
            across.resizeSection(column, scaled(width))
        for column in SHARE_THE_REST:
            across.setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)
        for column in TO_THE_RIGHT:
            head = self.horizontalHeaderItem(column)
            assert head is not None
            head.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)


QUESTION = "shopping"
SIZE = (1000, 600)
LIST_WIDTH = 256
FEW_SHOOTS = 7
"""So many are seen at a glance, and need no search."""
NOT_PUT_ON = tr_noop("Only what you put on the list yourself, or from a plan, can be taken off it")
HOW = tr_noop("Tick what you bought; how many you got and what each cost can be typed over.")


class ShoppingDialog(RefusedInBanner, QDialog):
    """What to buy, ticked and put into the bar; the dialog stays open.

    `shoots` are the ids of the shoots to shop for; None ticks all that are
    still to be filmed.
    """

    def __init__(
        self,
        context: ScreenContext,
        parent: QWidget | None = None,
        shoots: Collection[int] | None = None,
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Shopping list"))
        self.resize(dialog_size(*SIZE))
        self._bar, self._background = context.bar, context.background
        self._tree = self._bar.snapshot.knowledge.tree
        self._found: ShoppingList | None = None
        self.heading = text_label(tr("Shopping list"), TypeSize.SUBTITLE)
        self.shoots: TickList[Shoot] = TickList(tr("Shoots to shop for"), "shoots")
        self.with_pars = QCheckBox(tr("&Pars, and what I listed"))
        self.with_pars.setChecked(True)
        explain(self.with_pars, "par")
        self.pars_button = button(tr("Pa&rs…"), self.edit_pars)
        explain(self.pars_button, "par")
        self.table = ShoppingTable(self._tree)
        self.total = text_label("", TypeSize.STRONG, wrap=True)
        self.why = text_label("", quiet=True, wrap=True)
        self.banner = Banner()
        self.on = day_field(self._bar.snapshot.on, latest=self._bar.snapshot.on)
        self.shop = QLineEdit()
        self.all_button = button(tr("Tick all of the l&ist"), self.table.tick_all)
        self.copy_button = button(tr("&Copy list"), self.copy_list)
        self.off_button = button(tr("Ta&ke off the list"), self.take_off_list)
        self.close_button = button(tr("C&lose"), self.reject)
        self.put_button = primary_button(tr("Put into the &bar"), self.put_into_bar, "check")
        self._prepare()
        self._lay_out()
        self._offer(shoots)
        self._connect()
        self._mind_paper()
        self.renew()

    @property
    def ready(self) -> bool:
        """Whether the table shows the list of what is chosen."""
        return self._found is not None

    # What the user does

    def renew(self) -> None:
        """Ask what to buy for what is chosen now, off the GUI thread."""
        self._found = None
        self.total.setText(tr("Working out what to buy…"))
        self._offer_buttons()
        question = partial(
            shopping_for, self.shoots.ticked, self._bar.snapshot, pars=self.with_pars.isChecked()
        )
        self._background.ask(QUESTION, question, self._show, self.show_refusal)

    def put_into_bar(self) -> None:
        """Receive what is ticked, in one step."""
        try:
            taken = self.table.taken()
        except UserError as error:
            self.show_refusal(error)
            return
        received = day_in(self.on)
        bought = [
            replace(
                bought_of(
                    each.item,
                    count=each.count,
                    price=each.price,
                    received=received,
                    tree=self._tree,
                ),
                shop=self.shop.text().strip(),
            )
            for each in taken
        ]
        run_operation(self, lambda: self._bar.shopping.receive(bought), self._finish)

    def take_off_list(self) -> None:
        """Take the chosen thing off the list, where it was put on it by hand or from a plan."""
        thing = self.table.current_thing
        if thing is not None and self._is_put_on(thing):
            off = ToBuy(thing.ingredient, 0)
            run_operation(
                self,
                lambda: self._bar.shopping.add([off]),
                partial(
                    self._say_done,
                    tr("Off the list: {what}", what=self._tree.in_sentence(off.ingredient)),
                ),
            )

    def copy_list(self) -> None:
        """Put the list on the clipboard as text."""
        if self._found is not None:
            QGuiApplication.clipboard().setText(list_as_text(self._found, self._tree))
            self.banner.say(tr("The list was copied"), "done")

    def edit_pars(self) -> None:
        """Ask for the pars."""
        dialog = ParsDialog(self._bar, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.changed.connect(self.renew)
        dialog.open()

    def done(self, result: int) -> None:
        """No answer is wanted by a dialog that is closed."""
        self._background.forget(QUESTION)
        super().done(result)

    # Showing

    def _show(self, found: ShoppingList) -> None:
        self._found = found
        self.table.show_things(found.items)
        self.total.setText("\n".join((total_in_words(found), *found.not_counted, *found.faded)))
        self._show_why()
        self._offer_buttons()

    def _show_why(self) -> None:
        thing = self.table.current_thing
        if thing is None:
            self.why.setText("")
            offer(self.off_button, tr(NOT_PUT_ON))
            return
        offer(self.off_button, "" if self._is_put_on(thing) else tr(NOT_PUT_ON))
        what = f"{name_in_words(thing, self._tree)}, {packages_in_words(thing)}"
        self.why.setText(f"{what}: {why_in_words(thing)}.")

    def _is_put_on(self, thing: ShoppingItem) -> bool:
        """Whether it was put on the list by hand, or from a plan."""
        return any(each.ingredient == thing.ingredient for each in self._listed)

    @property
    def _listed(self) -> tuple[ToBuy, ...]:
        return self._bar.snapshot.settings.to_buy

    def _mind_paper(self) -> None:
        """Say where the list is of a bar as it is not, and write nothing."""
        paper = self._bar.on_paper
        if paper is not None:
            said = f"{paper.in_words} {tr(NOT_WRITTEN)}"
            self.banner.say(said, "warning")
            for each in (self.put_button, self.off_button, self.pars_button):
                hold(each, said)

    def _finish(self, done: Done[tuple[Bottle, ...]]) -> None:
        count = len(done.value)
        said = (
            tr("1 package is in the bar")
            if count == 1
            else tr("{count} packages are in the bar", count=count)
        )
        self._say_done(said, done)

    def _say_done(self, said: str, done: Done[T]) -> None:
        self.banner.say(said, "done", tr("Undo"), partial(self._undo, done.step))
        self.renew()

    def _undo(self, step: Step | None) -> None:
        self.banner.clear()
        run_operation(self, lambda: self._bar.undo(step), lambda _done: self.renew())

    def _offer_buttons(self) -> None:
        listed = self.ready and bool(self.table.things)
        self.table.setEnabled(self.ready)
        self.copy_button.setEnabled(listed)
        self.all_button.setEnabled(listed)
        ticked = listed and self.table.any_ticked
        offer(self.put_button, "" if ticked else tr("Tick what you bought first"))

    # Building

    def _offer(self, ids: Collection[int] | None) -> None:
        ahead = still_to_film(self._bar.snapshot)
        things = [
            Tickable(each, f"{each.theme}, {day_short(each.on)}", ", ".join(each.names))
            for each in ahead
        ]
        ticked = [each.title for each in things if ids is None or each.thing.id in ids]
        self.shoots.offer(things, ticked)
        self.shoots.search.setVisible(len(things) > FEW_SHOOTS)

    def _connect(self) -> None:
        self.shoots.changed.connect(self.renew)
        self.with_pars.toggled.connect(lambda _on: self.renew())
        self.table.ticked.connect(self._offer_buttons)
        self.table.currentCellChanged.connect(lambda *_cells: self._show_why())

    def _prepare(self) -> None:
        self.on.setAccessibleName(tr("Bought on"))
        self.shop.setAccessibleName(tr_about("where it was bought", "Shop"))
        self.shop.setPlaceholderText(tr("Shop, if wanted"))
        self.shop.setToolTip(tr("Where what is ticked was bought; kept with what it cost"))
        self.shoots.setFixedWidth(scaled(LIST_WIDTH))
        for each in (
            self.pars_button,
            self.all_button,
            self.copy_button,
            self.off_button,
            self.close_button,
        ):
            each.setAutoDefault(False)
        self.put_button.setAutoDefault(False)  # Enter ends the typing in a cell

    def _lay_out(self) -> None:
        left = column_of(
            text_label(tr("For these shoots"), TypeSize.STRONG),
            wide(self.shoots),
            self.with_pars,
            self.pars_button,
        )
        with_list = (self.copy_button, self.all_button, self.off_button)
        right = column_of(
            self.total,
            text_label(tr(HOW), quiet=True, wrap=True),
            wide(Card(self.table)),
            self.why,
            FlowLayout(with_list, asks_for_one_row=True),
        )
        column_of(
            self.heading,
            wide(row_of(left, wide(right), gap=PAD)),
            self.banner,
            HALF,
            self._buttons(),
            on=self,
            margins=DIALOG,
        )

    def _buttons(self) -> QHBoxLayout:
        where = (labelled(tr("Bough&t on"), self.on), labelled(tr("&at"), self.shop))
        bought = FlowLayout(where, asks_for_one_row=True)
        return row_of(wide(bought), self.close_button, self.put_button)
