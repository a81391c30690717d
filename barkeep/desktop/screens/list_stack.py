"""A list, or what stands in its place while it has nothing to show."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QStackedWidget,
    QTableView,
    QTreeView,
    QWidget,
)

from barkeep.desktop.look.metrics import scaled
from barkeep.desktop.widgets.delegates import RowDelegate, row_height
from barkeep.desktop.widgets.empty_state import EmptyState

ListView = QTableView | QTreeView


class ListStack(QStackedWidget):
    """Three pages: the view, *nothing here yet*, and *nothing matches*."""

    def __init__(
        self,
        view: ListView,
        empty: EmptyState,
        no_match: EmptyState,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.view, self.empty, self.no_match = view, empty, no_match
        self.listing: QAbstractItemView = view
        """What shows the rows: the view, or another one that was put in its place."""
        for each in (view, empty, no_match):
            self.addWidget(each)

    def show_as(self, listing: QAbstractItemView) -> None:
        """Show the rows in this view, which is one of the same rows."""
        was_shown = self.currentWidget() is self.listing
        if self.indexOf(listing) < 0:
            self.addWidget(listing)
        self.listing = listing
        if was_shown:
            self.setCurrentWidget(listing)

    def show_counts(self, shown: int, total: int) -> None:
        """Show the page that fits so many rows of so many."""
        page: QWidget = self.listing
        if not shown:
            page = self.no_match if total else self.empty
        self.setCurrentWidget(page)


def prepare_view(view: ListView, name: str) -> None:
    """Make a table or tree look and behave as every list of barkeep does."""
    view.setAccessibleName(name)
    view.setItemDelegate(RowDelegate(view))
    view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    view.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    view.setSortingEnabled(True)
    view.setWordWrap(False)
    view.setMinimumSize(240, 160)
    if isinstance(view, QTableView):
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        view.verticalHeader().hide()
        view.verticalHeader().setDefaultSectionSize(row_height(view.font()))
        view.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
    else:
        view.setRootIsDecorated(True)
        view.setUniformRowHeights(True)
    header = header_of(view)
    header.setHighlightSections(False)
    header.setStretchLastSection(True)
    header.setMinimumSectionSize(56)


def set_widths(view: QTableView, widths: Sequence[int] | Mapping[int, int]) -> None:
    """Make columns so wide, the first ones or those that are named, in pixels of plain type."""
    given = widths.items() if isinstance(widths, Mapping) else enumerate(widths)
    for column, width in given:
        view.setColumnWidth(column, scaled(width))


def header_of(view: ListView) -> QHeaderView:
    """The header over the columns."""
    return view.horizontalHeader() if isinstance(view, QTableView) else view.header()
