"""A list, or what stands in its place while it has nothing to show."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from math import floor

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QPushButton,
    QStackedWidget,
    QStyle,
    QTableView,
    QTreeView,
    QWidget,
)

from barkeep.desktop.look.metrics import UNIT, scaled
from barkeep.desktop.widgets.delegates import RowDelegate, row_height
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.list_keys import ListKeys

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

    @property
    def offered(self) -> list[QPushButton]:
        """What can be done where the list is empty; nothing while it is shown."""
        shown = self.currentWidget()
        return shown.buttons if isinstance(shown, EmptyState) else []

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


def prepare_view(view: ListView, name: str, *, own_keys: bool = False) -> None:
    """Make a table or tree look and behave as every list of barkeep does.

    One with `own_keys` takes what is typed itself.
    """
    if not own_keys:
        ListKeys(view)
    view.setAccessibleName(name)
    view.setItemDelegate(RowDelegate(view))
    view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    view.setSortingEnabled(True)
    view.setMinimumSize(240, 160)
    look_like_a_list(view)
    if isinstance(view, QTreeView):
        view.setRootIsDecorated(True)
        view.setUniformRowHeights(True)
    header = header_of(view)
    header.setStretchLastSection(True)
    header.setMinimumSectionSize(56)


def look_like_a_list(view: ListView, *, low: bool = False) -> None:
    """The look of every table, in a page or a dialog; `low` rows have one line of words."""
    view.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    view.setWordWrap(False)
    header_of(view).setHighlightSections(False)
    header_of(view).setTextElideMode(Qt.TextElideMode.ElideRight)
    if isinstance(view, QTableView):
        view.setShowGrid(False)
        view.setTabKeyNavigation(False)
        rows = view.verticalHeader()
        rows.hide()
        rows.setDefaultSectionSize(
            view.fontMetrics().height() + 2 * UNIT if low else row_height(view.font())
        )
        rows.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)


def set_widths(
    view: QTableView, widths: Sequence[int] | Mapping[int, int], whole: Collection[int] = ()
) -> None:
    """Make columns so wide, the first ones or those that are named, in pixels of plain type.

    Where they have not all room beside each other, each is narrower, as far as it can be;
    those of numbers never are, nor those that must stay `whole`.
    """
    given = widths.items() if isinstance(widths, Mapping) else enumerate(widths)
    wanted = {column: scaled(width) for column, width in given}
    for column, width in wanted.items():
        view.setColumnWidth(column, width)
    FittedColumns(view, wanted, whole)


NARROWEST = 0.72
"""Of what a column wants to have: with less its words say too little."""


UNTOLD = 84
"""How wide a column wants to be of which nothing was said, in pixels of plain type."""


class FittedColumns(QObject):
    """Keeps the columns of a table within its width, until someone sets one by hand."""

    def __init__(self, view: QTableView, wanted: Mapping[int, int], whole: Collection[int]) -> None:
        super().__init__(view)
        self._view, self._wanted, self._whole = view, dict(wanted), frozenset(whole)
        self.by_hand = False
        """Whether a column is as wide as someone made it."""
        self._fits = False
        view.viewport().installEventFilter(self)
        header_of(view).sectionResized.connect(self._on_resized)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize and not self.by_hand:
            self.fit()
        return super().eventFilter(watched, event)

    def fit(self) -> None:
        """Make the columns as wide as they want to be and there is room for."""
        self.by_hand, self._fits = False, True
        for column, width in self._widths(self._view.viewport().width()).items():
            self._view.setColumnWidth(column, width)
        self._fits = False

    def _widths(self, room: int) -> dict[int, int]:
        header = header_of(self._view)
        wanted = {
            column: self._wants(column)
            for column in range(header.count())
            if not header.isSectionHidden(column)
        }
        least = {column: self._least(column, width) for column, width in wanted.items()}
        over, slack = sum(wanted.values()) - room, sum(wanted.values()) - sum(least.values())
        share = min(1.0, max(0, over) / slack) if slack else 0.0
        return {
            column: floor(width - (width - least[column]) * share)
            for column, width in wanted.items()
        }

    def _wants(self, column: int) -> int:
        """What was said of it; over numbers the title is read in full, in whatever language."""
        wanted = self._wanted.get(column, scaled(UNTOLD))
        if not self._holds_numbers(column):
            return wanted
        header, metrics = header_of(self._view), QStyle.PixelMetric
        titled = header.sectionSizeFromContents(column).width()
        mark = header.style().pixelMetric(metrics.PM_HeaderMarkSize, None, header)
        margin = header.style().pixelMetric(metrics.PM_HeaderMargin, None, header)
        return max(wanted, titled - mark - 2 * margin)  # the mark stands over the words

    def _holds_numbers(self, column: int) -> bool:
        header, role = header_of(self._view), Qt.ItemDataRole.TextAlignmentRole
        side = header.model().headerData(column, Qt.Orientation.Horizontal, role)
        return side is not None and bool(Qt.AlignmentFlag.AlignRight & side)

    def _least(self, column: int, wanted: int) -> int:
        """How narrow a column may become: half a number is another one."""
        if self._holds_numbers(column) or column in self._whole:
            return wanted
        titled = header_of(self._view).sectionSizeFromContents(column).width()
        return max(round(wanted * NARROWEST), min(wanted, titled))

    def _on_resized(self, column: int, _before: int, _now: int) -> None:
        header = header_of(self._view)
        is_last = header.visualIndex(column) == header.count() - 1  # which takes what is left
        if not self._fits and not is_last and column in self._wanted:
            self.by_hand = True


def fitted_of(view: ListView) -> FittedColumns | None:
    """What keeps its columns within its width, where they were given widths."""
    return view.findChild(FittedColumns)


def header_of(view: ListView) -> QHeaderView:
    """The header over the columns."""
    return view.horizontalHeader() if isinstance(view, QTableView) else view.header()
