"""What the keys do in every list: type to a row, find the next, copy the rows, open a row's menu.

What was typed stands below the list until another key or Esc ends it: no key's meaning hangs on
how fast it comes. A barcode reader types as anybody does, and ends with Enter; who knows codes
says so by `take_code`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from html import escape

from PySide6.QtCore import QEvent, QMimeData, QModelIndex, QObject, QPoint, Qt
from PySide6.QtGui import QAction, QContextMenuEvent, QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QLabel, QMenu

from barkeep.desktop.look.metrics import HALF, UNIT
from barkeep.desktop.widgets.keys import HELD
from barkeep.desktop.widgets.notices import announce
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
        self._typed = self._given = ""
        """What is looked for, and all that was typed since the last other key."""
        self.take_code: Callable[[str], bool] = lambda _text: False
        """Asked on Enter whether what was typed is a code, and taken as one."""
        self.shown = QLabel(view)
        self.shown.setObjectName("typed")
        self.shown.setTextFormat(Qt.TextFormat.PlainText)
        self.shown.setContentsMargins(UNIT, HALF, UNIT, HALF)
        self.shown.hide()
        self.copy = self._action(COPY, self.copy_rows)
        self.copy.setShortcut(QKeySequence(QKeySequence.StandardKey.Copy))
        self.copy_csv = self._action(COPY_CSV, self.copy_rows_as_csv)
        view.installEventFilter(self)
        view.viewport().installEventFilter(self)

    # What is done with the rows

    def find_next(self, by: int) -> bool:
        """Go to the next row that was typed to, or to the next of all; whether there is one."""
        at = self._view.currentIndex().row()
        places = self._places(at + by, by)
        found = next(
            (each for each in places if not self._typed or self._fits(each, self._typed)), None
        )
        if found is None or found == at:
            return False
        typed, given = self._typed, self._given
        self._go_to(found)
        self._say(typed, given)
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
        kind = event.type()
        if isinstance(event, QContextMenuEvent):
            return watched is self._view.viewport() and self._open_menu(event)
        if kind == QEvent.Type.MouseButtonPress or (
            kind == QEvent.Type.FocusOut and watched is self._view
        ):
            self.forget()
        elif kind == QEvent.Type.Resize and watched is self._view:
            self._place()
        elif isinstance(event, QKeyEvent) and watched is self._view:
            return self.take_key(event) if kind == QEvent.Type.KeyPress else self._wants(event)
        return False

    def _wants(self, event: QKeyEvent) -> bool:
        """Whether a key that is a shortcut elsewhere belongs to what is being typed."""
        ends = event.key() in (Qt.Key.Key_Backspace, Qt.Key.Key_Escape)
        if event.type() == QEvent.Type.ShortcutOverride and self._typed and ends:
            event.accept()
        return False

    def take_key(self, event: QKeyEvent) -> bool:
        """Whether a key was meant for the list; also of one that nobody beside it wanted."""
        key, text = event.key(), event.text()
        if key == Qt.Key.Key_Menu or (
            key == Qt.Key.Key_F10 and event.modifiers() == Qt.KeyboardModifier.ShiftModifier
        ):
            self._pop_up(self._below_row())
            return True
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_rows()
            return True
        if event.modifiers() & HELD or key in _ALONE:
            return False
        if key == Qt.Key.Key_Escape and self._given:
            self.forget()
            return True
        if key == Qt.Key.Key_Backspace and self._typed:
            self._say(self._typed[:-1], self._given[:-1])
            return True
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            given = self._given
            self.forget()
            return bool(given) and self.take_code(given)
        if (text.isprintable() and text.strip()) or (text == " " and self._typed):
            self.type_on(text)
            return True
        self.forget()
        return False

    def type_on(self, text: str) -> None:
        """Look for what was typed so far and this; what fits nothing begins anew."""
        typed, given = self._typed + text, self._given + text
        found = self._first(typed)
        if found is None and not _may_be_code(given) and (anew := self._first(text)) is not None:
            typed, found = text, anew
        if found is not None:
            self._go_to(found)
        self._say(typed, given)

    def forget(self) -> None:
        """Nothing is typed any more."""
        self._say("", "")

    # Inside

    def _action(self, words: str, act: Callable[[], object]) -> QAction:
        made = QAction(tr(words), self._view)
        made.triggered.connect(lambda: act())
        return made

    def _say(self, typed: str, given: str) -> None:
        self._typed, self._given = typed, given
        self.shown.setText(typed)
        self.shown.setVisible(bool(typed))
        if typed:
            self._place()
            announce(self._view, typed)

    def _place(self) -> None:
        self.shown.adjustSize()
        self.shown.move(HALF, self._view.height() - self.shown.height() - HALF)

    def _first(self, typed: str) -> int | None:
        """The first row from here on whose name begins so, else one with a word that does."""
        places = self._places(max(0, self._view.currentIndex().row()))
        begun = (each for each in places if folded(self._name(each)).startswith(_plain(typed)))
        words = (each for each in places if self._fits(each, typed))
        return next(begun, None) if (found := next(words, None)) is None else next(begun, found)

    def _fits(self, row: int, typed: str) -> bool:
        name, wanted = folded(self._name(row)), _plain(typed)
        return name.startswith(wanted) or f" {wanted}" in name

    def _name(self, row: int) -> str:
        """What a row is called: its first cell with a letter in it."""
        return next((cell for cell in self._cells(row) if any(map(str.isalpha, cell))), "")

    def _cells(self, row: int) -> Iterator[str]:
        """What stands in a row; of a picture, what it says to those who do not see it."""
        model = self._view.model()
        for column in self._columns():
            index = model.index(row, column)
            said = index.data(Qt.ItemDataRole.DisplayRole)
            yield str(said or index.data(Qt.ItemDataRole.AccessibleTextRole) or "")

    def _titles(self) -> list[str]:
        model, across = self._view.model(), Qt.Orientation.Horizontal
        return [str(model.headerData(each, across) or "") for each in self._columns()]

    def _columns(self) -> Iterator[int]:
        """The columns that are shown."""
        hidden = getattr(self._view, "isColumnHidden", None)
        for column in range(self._view.model().columnCount()):
            if hidden is None or not hidden(column):
                yield column

    def _chosen_rows(self) -> Iterator[list[str]]:
        places = {each.row() for each in self._view.selectionModel().selectedIndexes()}
        for place in sorted(places):
            yield [" ".join(cell.split()) for cell in self._cells(place)]

    def _places(self, start: int, by: int = 1) -> list[int]:
        """Every row that is shown, from one on and around."""
        model = self._view.model()
        many = 0 if model is None else model.rowCount()
        places = ((start + by * step) % many for step in range(many))
        hidden: Callable[[int], bool] = getattr(self._view, "isRowHidden", lambda _row: False)
        return [each for each in places if not hidden(each)]

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
        self.forget()
        self.menu().popup(self._view.viewport().mapToGlobal(at))


def keys_of(view: QAbstractItemView) -> ListKeys | None:
    """The keys of a list; None where it keeps its own."""
    return view.findChild(ListKeys)


def _plain(typed: str) -> str:
    """Folded, but with the blank that a word was ended with."""
    return folded(typed) + (" " if typed.endswith(" ") else "")


def _may_be_code(given: str) -> bool:
    return given.replace(" ", "").replace("-", "").isdigit()


def _as_table(rows: Rows) -> str:
    cells = ("".join(f"<td>{escape(cell)}</td>" for cell in row) for row in rows)
    return f"<table>{''.join(f'<tr>{each}</tr>' for each in cells)}</table>"


_ALONE = (Qt.Key.Key_Shift, Qt.Key.Key_Control, Qt.Key.Key_Alt, Qt.Key.Key_AltGr, Qt.Key.Key_Meta)
"""Keys that do nothing by themselves, and end nothing."""
