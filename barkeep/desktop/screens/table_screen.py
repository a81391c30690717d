"""A screen whose list is a table of frozen rows: search, filter, sort, and choosing a row."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Sequence
from functools import partial
from typing import Generic, TypeVar

from PySide6.QtCore import QItemSelectionModel, QModelIndex, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractItemView, QTableView, QWidget

from barkeep.desktop.screens.row_table import Column, RowFilter, RowTable
from barkeep.desktop.screens.screen import Screen, ScreenContext, Shortcut
from barkeep.desktop.widgets.buttons import offer
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.domain.phrases import folded
from barkeep.translation import tr

Row = TypeVar("Row")
OneOrMore = Shortcut | tuple[Shortcut, ...]


class TableScreen(Screen, Generic[Row]):
    """Overrides say what a row is called, what it answers to, and what its details are."""

    def __init__(
        self,
        context: ScreenContext,
        columns: Sequence[Column[Row]],
        empty: EmptyState,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(context, parent)
        self.table: RowTable[Row] = RowTable(columns, self)
        self.shown = RowFilter(self.table, self)
        self.view = QTableView()
        self.view.setModel(self.shown)
        self.set_list(self.view, empty)
        self.view.selectionModel().currentRowChanged.connect(self._on_current)
        self.search.searched.connect(self._on_searched)
        self._wanted: Hashable = None
        self._detailed: Hashable = None
        """Which row the details show."""
        self._waits = f"{self.key}-details"
        """Under which it waits for the next turn to show the details."""
        self._is_listed = False
        """Whether rows have been shown, be it none."""
        self._pressed: list[Callable[[], object]] = []
        """What was pressed for a row that was still to come."""
        self._folded: dict[int, str] = {}
        """The words of each row that has been searched, folded, by the row's id."""
        self.of_a_row: list[QAction] = []
        """What is done with the chosen row, and not offered without one."""

    # What a screen overrides

    def identity(self, row: Row) -> Hashable:
        """What stays the same when the row is asked for again."""
        raise NotImplementedError

    def words(self, row: Row) -> str:
        """Everything the search looks through, where `matcher` is not overridden."""
        raise NotImplementedError

    def accepts(self, row: Row) -> bool:
        """Whether the screen's own filters keep the row."""
        return True

    def matcher(self, _rows: Sequence[Row]) -> Callable[[Row], bool]:
        """Whether one of these rows is kept, by the search as it stands and the own filters."""
        asked = folded(self.search.text).split()
        return lambda row: self._matches(row, asked)

    def show_row(self, row: Row | None) -> None:
        """Show a row's details, or none."""
        raise NotImplementedError

    def list_actions(
        self, actions: Iterable[tuple[str, OneOrMore, str, Callable[[], object], bool]]
    ) -> None:
        """Offer actions in the Bar menu and over the list.

        Each has its words, keys, picture, what it does, and whether that is with one row.
        """
        for words, keys, picture, act, of_a_row in actions:
            does = partial(self.once_listed, act) if of_a_row else act
            all_keys = keys if isinstance(keys, tuple) else (keys,) if keys else ()
            action = self.new_action(words, does, *all_keys, picture=picture)
            self.add_bar_action(action)
            if of_a_row:
                self.of_a_row.append(action)
        self.offer_actions()
        self.view.addActions(self.bar_actions)

    def offer_actions(self) -> None:
        """Offer what can be done with the row that is chosen, or will be once rows are there."""
        is_offered = self.current is not None or not self._is_listed
        for action in self.of_a_row:
            offer(action, "" if is_offered else self._choose_one_first())

    def open_more(self) -> None:
        self.context.background.at_once(self._waits)
        super().open_more()

    # What a screen calls

    def once_listed(self, act: Callable[[], object]) -> None:
        """Do something with the chosen row; where the rows are still to come, then."""
        if self._is_listed:
            act()
        else:
            self._pressed.append(act)

    @property
    def current(self) -> Row | None:
        """The row that is chosen."""
        index = self.view.currentIndex()
        row: Row | None = self.shown.row(index) if index.isValid() else None
        return row

    @property
    def chosen(self) -> list[Row]:
        """Every row that is chosen, top to bottom; mostly the one in hand alone."""
        places = sorted({each.row() for each in self.view.selectionModel().selectedRows()})
        return [self.shown.row(self.shown.index(place, 0)) for place in places]

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these rows, keeping the choice where the row is still there."""
        kept = self._wanted if self._wanted is not None else self._current_identity()
        self._folded.clear()
        self.shown.keep_next(self.matcher(rows))
        self.table.show_rows(rows)
        self._is_listed = True
        self._go_on_with(kept)
        self._do_what_was_pressed(kept)

    def filter_again(self) -> None:
        """Search and filter once more, keeping the choice where its row still is shown."""
        if not self._is_listed:  # or a list that is still to come would be called empty
            return
        kept = self._current_identity()
        self.shown.keep(self.matcher(self.table.rows))
        self._go_on_with(kept)

    def _do_what_was_pressed(self, wanted: Hashable) -> None:
        """Once, and only with the row that was asked for: nobody has seen which is the first."""
        pressed, self._pressed = self._pressed, []
        if not pressed:
            return
        is_there = wanted is not None and wanted == self._current_identity()
        if is_there and self.isVisible() and all(each == pressed[0] for each in pressed):
            pressed[0]()
        else:
            self.banner.say(f"{self._choose_one_first()}.", "info")

    def _choose_one_first(self) -> str:
        return tr("Choose one of the {noun} first", noun=tr(self.noun))

    def _go_on_with(self, kept: Hashable) -> None:
        self.show_counts(self.shown.rowCount(), len(self.table.rows))
        if not self.choose(kept):
            self._choose_first()

    def choose(self, identity: Hashable) -> bool:
        """Choose the row that is this; whether there is one."""
        for number, row in enumerate(self.shown.shown_rows()):
            if self.identity(row) == identity:
                self._wanted = None
                self._make_current(self.shown.index(number, 0))
                return True
        return False

    def show_thing(self, thing: object) -> None:
        """Choose one row, clearing what hides it; it may only come with the next answer."""
        self.clear_filters()
        if not self.choose(thing):
            self._wanted = thing if isinstance(thing, Hashable) else None

    def _matches(self, row: Row, asked: Sequence[str]) -> bool:
        if not self.accepts(row):
            return False
        if not asked:
            return True
        if id(row) not in self._folded:
            self._folded[id(row)] = folded(self.words(row))
        words = self._folded[id(row)]
        return all(each in words for each in asked)

    def _current_identity(self) -> Hashable:
        row = self.current
        return None if row is None else self.identity(row)

    def _choose_first(self) -> None:
        if self.shown.rowCount():
            self._make_current(self.shown.index(0, 0))
        else:
            self.offer_actions()
            self._show_details()

    def _make_current(self, index: QModelIndex) -> None:
        flags = QItemSelectionModel.SelectionFlag.ClearAndSelect
        rows = QItemSelectionModel.SelectionFlag.Rows
        self.view.selectionModel().setCurrentIndex(index, flags | rows)
        self.view.scrollTo(index)

    def _on_current(self, _current: QModelIndex, _previous: QModelIndex) -> None:
        self.offer_actions()  # before the details, which offer the same
        shows_no_other = self._detailed in (None, self._current_identity())
        if self.details_wait and shows_no_other:
            self.context.background.soon(self._waits, self._show_details)
        else:
            self._show_details()

    def _show_details(self) -> None:
        self.context.background.forget(self._waits)
        self._detailed = self._current_identity()
        self.show_row(self.current)

    def _on_searched(self, _text: str) -> None:
        self.filter_again()


def one_or_many(names: Sequence[str], noun: str) -> str:
    """The one name, or how many there are: *Limes*, *3 bottles*."""
    return names[0] if len(names) == 1 else f"{len(names)} {tr(noun)}"


def sort_by(view: QTableView, column: int, *, descending: bool = False) -> None:
    """Sort a table by one column to begin with."""
    order = Qt.SortOrder.DescendingOrder if descending else Qt.SortOrder.AscendingOrder
    view.sortByColumn(column, order)


def on_activated(view: QAbstractItemView, act: Callable[[], object]) -> None:
    """Do something with the chosen row on Enter or a double click."""
    view.activated.connect(lambda _index: act())
