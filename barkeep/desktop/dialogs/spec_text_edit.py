"""Where a spec is written: plain text that underlines problems and completes ingredients."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QMimeData, QModelIndex, QStringListModel, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QKeySequence, QTextCharFormat, QTextCursor
from PySide6.QtWidgets import QCompleter, QListView, QPlainTextEdit, QTextEdit, QWidget

from barkeep.desktop.dialogs.ingredient_completion import IngredientNames, takes_ingredient
from barkeep.desktop.dialogs.pasted import pasted
from barkeep.desktop.dialogs.spec_reading import Fault, Fix
from barkeep.desktop.tones import current_tones

EXAMPLE = """Name of the drink
60 ml London dry gin
20 ml lemon juice
2 dashes orange bitters
Garnish: lemon peel
Glass: coupe

Shake with ice and strain."""
WIDEST_LIST = 420
MOST_SEEN = 8
BESIDE_NAMES = 32
OFFER_STYLE = """
QListView { background: palette(base); color: palette(text); border: 1px solid palette(dark);
  padding: 4px; outline: none; }
QListView::item { padding: 4px 8px; border-radius: 4px; }
QListView::item:selected, QListView::item:hover { background: palette(highlight);
  color: palette(highlighted-text); }
"""


class SpecTextEdit(QPlainTextEdit):
    """`line_entered` carries the number, from 1, of the line the cursor has come to.

    `was_pasted` carries what a document on the clipboard was turned into.
    """

    line_entered = Signal(int)
    was_pasted = Signal(object)

    def __init__(self, names: IngredientNames, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._names = names
        self._faults: tuple[Fault, ...] = ()
        self._unfinished = ""
        self.setPlaceholderText(EXAMPLE)
        self.setAccessibleName("Text of the spec")
        self.setTabChangesFocus(True)
        self._offers = QStringListModel(self)
        self._completer = QCompleter(self._offers, self)
        self._completer.setWidget(self)
        self._completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self._completer.activated.connect(self._complete)
        self._completer.setMaxVisibleItems(MOST_SEEN)
        self.offer_list.setAccessibleName("Ingredients")
        self.offer_list.setStyleSheet(OFFER_STYLE)
        self._line = 1
        self.cursorPositionChanged.connect(self._tell_line)

    @property
    def offer_list(self) -> QListView:
        """The list of names that drops down under the cursor."""
        popup = self._completer.popup()
        assert isinstance(popup, QListView)
        return popup

    @property
    def offers(self) -> tuple[str, ...]:
        """The names that are offered now."""
        return tuple(self._offers.stringList()) if self.offer_list.isVisible() else ()

    @property
    def line(self) -> int:
        """The line the cursor is in, from 1."""
        return self.textCursor().blockNumber() + 1

    def show_faults(self, faults: Sequence[Fault]) -> None:
        """Underline these places, and no others."""
        self._faults = tuple(faults)
        self.setExtraSelections([self._underlined(fault) for fault in self._faults])

    def go_to(self, line: int, column: int = 1) -> None:
        """Put the cursor there, both counted from 1, and the focus in the text."""
        cursor = self._cursor_at(line, column)
        self.setTextCursor(cursor)
        self.ensureCursorVisible()
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def select_line(self, line: int) -> None:
        """Select a whole line, so that typing takes its place."""
        cursor = self._cursor_at(line, 1)
        cursor.movePosition(QTextCursor.MoveOperation.EndOfBlock, QTextCursor.MoveMode.KeepAnchor)
        self.setTextCursor(cursor)

    def apply_fix(self, fix: Fix) -> None:
        """Put a suggestion in the place of what was written; Ctrl+Z takes it back."""
        cursor = self._cursor_at(fix.line, fix.column)
        cursor.movePosition(
            QTextCursor.MoveOperation.Right, QTextCursor.MoveMode.KeepAnchor, fix.length
        )
        cursor.insertText(fix.text)
        self.setTextCursor(cursor)
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def rewrite(self, text: str) -> None:
        """Make the whole text this one, changing only what differs; one step of undo."""
        old = self.toPlainText()
        if text == old:
            return
        start = _alike(old, text)
        rest = _alike(old[start:][::-1], text[start:][::-1])
        cursor = QTextCursor(self.document())
        cursor.beginEditBlock()
        cursor.setPosition(_places(old[:start]))
        end = _places(old[: len(old) - rest])
        cursor.setPosition(end, QTextCursor.MoveMode.KeepAnchor)
        cursor.insertText(text[start : len(text) - rest])
        cursor.endEditBlock()

    def insertFromMimeData(self, source: QMimeData) -> None:
        """Paste; a document is turned into the text of its specs, below what is there."""
        found = pasted(source.text(), source.html() if source.hasHtml() else "")
        if found is None:
            super().insertFromMimeData(source)
            return
        old = self.toPlainText()
        all_of_it = self.textCursor().selectedText().replace("\u2029", "\n") == old
        kept = "" if all_of_it or not old.strip() else f"{old.rstrip()}\n---\n"
        self.rewrite(f"{kept}{found.text}")
        self.go_to(kept.count("\n") + 1)
        self.was_pasted.emit(found)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self.offer_list.isVisible() and self._taken_by_offers(event):
            return
        undoes = event.matches(QKeySequence.StandardKey.Undo)
        super().keyPressEvent(event)
        writes = event.text().isprintable() and bool(event.text()) and not undoes
        if writes or event.key() == Qt.Key.Key_Backspace:
            self._offer()
        elif event.key() not in _MODIFIERS:
            self.offer_list.hide()

    def focusNextPrevChild(self, forward: bool) -> bool:
        # Tab never arrives as a key press: it is taken for moving on before.
        if forward and self.offer_list.isVisible():
            self._complete_chosen()
            return True
        return super().focusNextPrevChild(forward)

    def _taken_by_offers(self, event: QKeyEvent) -> bool:
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and self.offer_list.currentIndex().isValid():
            self._complete_chosen()
        elif event.key() == Qt.Key.Key_Escape:
            self.offer_list.hide()
        else:
            return False
        return True

    def _complete_chosen(self) -> None:
        """Write the name that is chosen in the list, or else its first."""
        chosen = self.offer_list.currentIndex()
        self._complete(str(chosen.data()) if chosen.isValid() else self.offers[0])

    def _offer(self) -> None:
        """Drop down the names that the word at the cursor could become."""
        cursor = self.textCursor()
        lines = self.toPlainText().split("\n")
        number = cursor.blockNumber()
        names: tuple[str, ...] = ()
        if cursor.atBlockEnd() and takes_ingredient(lines, number):
            before = lines[number][: cursor.positionInBlock()]
            self._unfinished, names = self._names.unfinished(before)
        if not names:
            self.offer_list.hide()
            return
        self._offers.setStringList(list(names))
        place = self.cursorRect()
        words = self.offer_list.sizeHintForColumn(0)
        scroll = self.offer_list.verticalScrollBar().sizeHint().width()
        place.setWidth(min(WIDEST_LIST, words + scroll + BESIDE_NAMES))
        self._completer.complete(place)
        self.offer_list.setCurrentIndex(QModelIndex())  # Enter is a new line until one is chosen

    def _complete(self, name: str) -> None:
        self.offer_list.hide()
        cursor = self.textCursor()
        cursor.movePosition(
            QTextCursor.MoveOperation.Left,
            QTextCursor.MoveMode.KeepAnchor,
            len(self._unfinished),
        )
        cursor.insertText(name)
        self.setTextCursor(cursor)

    def _underlined(self, fault: Fault) -> QTextEdit.ExtraSelection:
        cursor = self._cursor_at(fault.line, fault.column)
        left = cursor.block().length() - 1 - cursor.positionInBlock()
        cursor.movePosition(
            QTextCursor.MoveOperation.Right,
            QTextCursor.MoveMode.KeepAnchor,
            max(0, min(left, fault.length)),
        )
        if not cursor.hasSelection():
            cursor.select(QTextCursor.SelectionType.LineUnderCursor)
        selection = QTextEdit.ExtraSelection()
        wave = QTextCharFormat()
        wave.setUnderlineStyle(QTextCharFormat.UnderlineStyle.WaveUnderline)
        wave.setUnderlineColor(QColor(current_tones().danger))
        wave.setToolTip(fault.message)
        selection.cursor = cursor
        selection.format = wave
        return selection

    def _cursor_at(self, line: int, column: int) -> QTextCursor:
        block = self.document().findBlockByNumber(max(0, line - 1))
        if not block.isValid():
            block = self.document().lastBlock()
        cursor = QTextCursor(block)
        inside = min(max(0, column - 1), block.length() - 1)
        cursor.setPosition(block.position() + inside)
        return cursor

    def _tell_line(self) -> None:
        if self.line != self._line:
            self._line = self.line
            self.line_entered.emit(self._line)


def _alike(one: str, other: str) -> int:
    """How many characters two texts have in common from the front."""
    pairs = enumerate(zip(one, other, strict=False))
    return next((at for at, (left, right) in pairs if left != right), min(len(one), len(other)))


def _places(text: str) -> int:
    """How many places of a cursor a text takes: Qt counts in UTF-16."""
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


_MODIFIERS = (Qt.Key.Key_Shift, Qt.Key.Key_Control, Qt.Key.Key_Alt, Qt.Key.Key_Meta)
