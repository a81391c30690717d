"""What the keys do in every list: type to a row, find the next, copy the rows, open a row's menu.

What was typed stands below the list until another key or Esc ends it (`type_ahead`). A barcode
reader types as anybody does, and ends with Enter; who knows codes says so by `take_code`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial
from html import escape

from PySide6.QtCore import (
    QAbstractItemModel,
    QEvent,
    QMimeData,
    QModelIndex,
    QObject,
    QPoint,
    Qt,
)
from PySide6.QtGui import QAction, QContextMenuEvent, QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QMenu

from barkeep.desktop.look.metrics import UNIT
from barkeep.desktop.widgets.keys import HELD
from barkeep.desktop.widgets.type_ahead import TypeAhead, begins_a_word, begun_with
from barkeep.documents.csv_cells import as_text, csv_text
from barkeep.domain.phrases import folded
from barkeep.translation import tr, tr_noop

CSV = "text/csv"
COPY, COPY_CSV = tr_noop("&Copy rows"), tr_noop("Copy rows as CS&V")
Rows = Sequence[Sequence[str]]


class ListKeys(QObject):
    """The keys of one list; what stands in its cells is what is copied and typed to."""

    def __init__(self, view: QAbstractItemView) -> None:
        super().__init__(view)
        self._view = view
        self.take_code: Callable[[str], bool] = lambda _text: False
        """Asked on Enter whether what was typed is a code, and taken as one."""
        self._typing = TypeAhead(view, self._first, self._go_to)
        self._typing.is_kept = _may_be_code
        self.shown = self._typing.shown
        """Says what is looked for."""
        self.copy = self._action(COPY, self.copy_rows)
        self.copy.setShortcut(QKeySequence(QKeySequence.StandardKey.Copy))
        self.copy_csv = self._action(COPY_CSV, self.copy_rows_as_csv)
        view.installEventFilter(self)
        view.viewport().installEventFilter(self)

    # What is done with the rows

    def find_next(self, by: int) -> bool:
        """Go to the next row that was typed to, or to the next of all; whether there is one."""
        at, typed, given = self._view.currentIndex().row(), self._typing.typed, self._typing.given
        named = self._named(self._places(at + by, by))
        found = next(
            (row for row, name in named if not typed or begins_a_word(folded(name), typed)), None
        )
        if found is None or found == at:
            return False
        self._go_to(found)
        self._typing.say(typed, given)
        return True

    def copy_rows(self) -> int:
        """Put the chosen rows on the clipboard, and how many: with tabs, as a table, and as CSV."""
        rows = list(self._chosen_rows())
        if rows:
            data = QMimeData()
            data.setText("\n".join("\t".join(map(as_text, row)) for row in rows))
            data.setHtml(_as_table(rows))
            data.setData(CSV, csv_text([self._titles(), *rows]).encode())
            QGuiApplication.clipboard().setMimeData(data)
        return len(rows)

    def copy_rows_as_csv(self) -> int:
        """Put the chosen rows on the clipboard as a CSV file's text with titles, and how many."""
        rows = list(self._chosen_rows())
        if rows:
            QGuiApplication.clipboard().setText(csv_text([self._titles(), *rows]))
        return len(rows)

    def menu(self) -> QMenu:
        """What can be done with the row in hand, and copying it."""
        menu = QMenu(self._view)
        menu.setToolTipsVisible(True)  # which say why something is not offered
        menu.addActions(self._view.actions())
        if not menu.isEmpty():
            menu.addSeparator()
        menu.addActions([self.copy, self.copy_csv])
        menu.aboutToHide.connect(menu.deleteLater)
        return menu

    # Qt

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QContextMenuEvent):
            return watched is self._view.viewport() and self._open_menu(event)
        if event.type() == QEvent.Type.MouseButtonPress:
            self._typing.forget()
        elif isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            return watched is self._view and self.take_key(event)
        return False

    def take_key(self, event: QKeyEvent) -> bool:
        """Whether a key was meant for the list; also of one that nobody beside it wanted."""
        key = event.key()
        if key == Qt.Key.Key_Menu or (
            key == Qt.Key.Key_F10 and event.modifiers() == Qt.KeyboardModifier.ShiftModifier
        ):
            self._pop_up(self._below_row())
            return True
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_rows()
            return True
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers() & HELD:
            given = self._typing.given
            self._typing.forget()
            return bool(given) and self.take_code(given)
        return self._typing.takes(event)

    # Inside

    def _action(self, words: str, act: Callable[[], object]) -> QAction:
        made = QAction(tr(words), self._view)
        made.triggered.connect(lambda: act())
        return made

    def _first(self, typed: str) -> int | None:
        """The first row from here on whose name begins so, else one with a word that does."""
        here = max(0, self._view.currentIndex().row())
        return begun_with(typed, self._named(self._places(here)))

    def _named(self, rows: Iterable[int]) -> Iterator[tuple[int, str]]:
        """Rows with what each is called: its first cell with a letter in it."""
        cells_of = self._reader()
        for row in rows:
            yield row, next((cell for cell in cells_of(row) if any(map(str.isalpha, cell))), "")

    def _reader(self) -> Callable[[int], Iterator[str]]:
        """Reads the cells of a row; of a picture, what it says to those who do not see it."""
        model, columns = self._view.model(), tuple(self._columns())
        words_at: Callable[[int, int], str] = getattr(model, "words_at", partial(_words_at, model))
        return lambda row: (words_at(row, column) for column in columns)

    def _titles(self) -> list[str]:
        model, across = self._view.model(), Qt.Orientation.Horizontal
        return [str(model.headerData(each, across) or "") for each in self._columns()]

    def _columns(self) -> Iterator[int]:
        """The columns that are shown."""
        hidden, model = getattr(self._view, "isColumnHidden", None), self._view.model()
        for column in range(0 if model is None else model.columnCount()):
            if hidden is None or not hidden(column):
                yield column

    def _chosen_rows(self) -> Iterator[list[str]]:
        places = {each.row() for each in self._view.selectionModel().selectedIndexes()}
        cells_of = self._reader()
        for place in sorted(places):
            yield [" ".join(cell.split()) for cell in cells_of(place)]

    def _places(self, start: int, by: int = 1) -> Iterator[int]:
        """Every row that is shown, from one on and around."""
        model = self._view.model()
        many = 0 if model is None else model.rowCount()
        places = ((start + by * step) % many for step in range(many))
        hidden: Callable[[int], bool] = getattr(self._view, "isRowHidden", lambda _row: False)
        return (each for each in places if not hidden(each))

    def _go_to(self, row: int) -> None:
        index: QModelIndex = self._view.model().index(row, 0)
        self._view.setCurrentIndex(index)
        self._view.scrollTo(index)

    def _below_row(self) -> QPoint:
        place = self._view.visualRect(self._view.currentIndex())
        return QPoint(max(0, place.left()) + UNIT, max(0, place.bottom()))

    def _open_menu(self, event: QContextMenuEvent) -> bool:
        self._pop_up(event.pos())
        return True

    def _pop_up(self, at: QPoint) -> None:
        self._typing.forget()
        self.menu().popup(self._view.viewport().mapToGlobal(at))


def keys_of(view: QAbstractItemView) -> ListKeys | None:
    """The keys of a list; None where it keeps its own."""
    return view.findChild(ListKeys)


def _may_be_code(given: str) -> bool:
    return given.replace(" ", "").replace("-", "").isdigit()


def _words_at(model: QAbstractItemModel, row: int, column: int) -> str:
    """What a cell of any model says; one that says it by itself is asked thousands in a moment."""
    index = model.index(row, column)
    said = index.data(Qt.ItemDataRole.DisplayRole)
    return str(said or index.data(Qt.ItemDataRole.AccessibleTextRole) or "")


def _as_table(rows: Rows) -> str:
    cells = ("".join(f"<td>{escape(cell)}</td>" for cell in row) for row in rows)
    return f"<table>{''.join(f'<tr>{each}</tr>' for each in cells)}</table>"
