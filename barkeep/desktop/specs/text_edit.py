"""Where a spec is written: plain text that underlines problems and completes ingredients."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QMimeData, QModelIndex, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QKeySequence,
    QTextCharFormat,
    QTextCursor,
)
from PySide6.QtWidgets import QCompleter, QPlainTextEdit, QTextEdit, QWidget

from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.screens.name_completion import TEXT, OfferedNames
from barkeep.desktop.screens.offer_list import OfferDelegate, OfferList
from barkeep.desktop.specs.line_names import IngredientNames
from barkeep.desktop.specs.reading import Fault, Fix
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.documents.specs.files import KIND_WORDS, kind_of, parts_in_file
from barkeep.documents.specs.jsonld import is_web_page
from barkeep.domain.spec_text.parts import SpecParts, text_of_all
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

BETWEEN_SPECS = "---"
LABELS_OF_INGREDIENTS = frozenset({"garnish", "optional"})


def takes_ingredient(lines: Sequence[str], number: int) -> bool:
    """Whether line `number` of a text is one that names an ingredient.

    It stands below a name and above the first blank line, and is no *Glass:* or *Notes:*.
    """
    named = has_lines = in_method = blank = False
    for line in lines[:number]:
        empty = not line.strip()
        if line.startswith(BETWEEN_SPECS) or (empty and blank):
            named = has_lines = in_method = False
        elif empty:
            in_method = in_method or has_lines
        else:
            named, has_lines = True, named
        blank = empty
    if not named or in_method:
        return False
    label, colon, _ = lines[number].partition(":")
    return not colon or label.strip().casefold() in LABELS_OF_INGREDIENTS


WHAT = tr_noop("what was pasted")


@dataclass(frozen=True, slots=True)
class Pasted:
    """Specs out of a document: their text, how many they are, and what it was."""

    text: str
    specs: int
    kind: str


def pasted(text: str, markup: str = "") -> Pasted | None:
    """The specs of a document that was copied, None for plain text or what holds none.

    `markup` is the same as HTML, where whoever it was copied from gave that too.
    """
    kind = kind_of(text)
    parts: tuple[SpecParts, ...] = ()
    if kind != "text":
        parts = _parts(text)
    elif is_web_page(markup):
        kind, parts = "page", _recipes(markup)
    if not parts:
        return None
    return Pasted(text_of_all(parts), len(parts), tr(KIND_WORDS[kind]))


def _parts(text: str) -> tuple[SpecParts, ...]:
    try:
        return parts_in_file(text, tr(WHAT))
    except UserError:
        return ()  # it goes in as it is, and what cannot be read of it is marked


def _recipes(markup: str) -> tuple[SpecParts, ...]:
    try:
        return parts_in_file(markup, tr(WHAT))
    except UserError:
        return ()


EXAMPLE = tr_noop(
    "Name of the drink\n60 ml London dry gin\n20 ml lemon juice\n2 dashes orange bitters\n"
    "Garnish: lemon peel\nGlass: coupe\n\nShake with ice and strain."
)
WIDEST_LIST = 420
MOST_SEEN = 8
BESIDE_NAMES = 32


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
        self.setPlaceholderText(tr(EXAMPLE))
        self.setAccessibleName(tr("Text of the spec"))
        self.setTabChangesFocus(True)
        self._offers = OfferedNames(parent=self)
        self.offer_list = OfferList()
        """The list of names that drops down under the cursor."""
        self._completer = QCompleter(self._offers, self)
        self._completer.setWidget(self)
        self._completer.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self._completer.setPopup(self.offer_list)
        self._completer.activated[QModelIndex].connect(self._on_chosen)  # type: ignore[index]
        self._completer.setMaxVisibleItems(MOST_SEEN)
        self.offer_list.setItemDelegate(OfferDelegate(self.offer_list))
        self.offer_list.setAccessibleName(tr("Ingredients"))
        self._line = 1
        self.cursorPositionChanged.connect(self._tell_line)

    @property
    def offers(self) -> tuple[str, ...]:
        """The names that are offered now."""
        if not self.offer_list.isVisible():
            return ()
        return tuple(each.text for each in self._offers.suggestions)

    @property
    def line(self) -> int:
        """The line the cursor is in, from 1."""
        return self.textCursor().blockNumber() + 1

    def know(self, names: IngredientNames) -> None:
        """Offer these names from now on."""
        self._names = names

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
        self._complete(str(chosen.data(TEXT)) if chosen.isValid() else self.offers[0])

    def _on_chosen(self, index: QModelIndex) -> None:
        self._complete(str(index.data(TEXT)))

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
        self._offers.offer(self._names.offered(self._unfinished))
        self.offer_list.begin(offers_first=False)
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
        wave.setToolTip(plain_tip(fault.message))
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
