"""Counting after a shoot: along the shelf, one key a bottle, written in one go at the end."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QProgressBar, QPushButton, QVBoxLayout, QWidget

from barkeep.desktop.counting.legend import CountingLegend
from barkeep.desktop.counting.rows import (
    CountRow,
    ShelfCount,
    Typed,
    as_expected,
    at_share,
    bottles_in_words,
    count_columns,
    exact_in_words,
    exactly,
    on_the_shelf,
    row_in_words,
    tenths,
)
from barkeep.desktop.counting.sheet import CountSheet
from barkeep.desktop.counting.view import CountingView
from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.screens.counting_haste import Haste, JudgedDigit
from barkeep.desktop.screens.list_stack import ListStack
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.card import Card
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import ElidedLabel, text_label
from barkeep.desktop.widgets.notices import announce
from barkeep.errors import UserError

FULL = 10


class CountingPage(QWidget):
    """`left` asks to go back to the list, `confirmed` to show what would be written."""

    left = Signal()
    confirmed = Signal()

    def __init__(
        self, context: ScreenContext, count: ShelfCount, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._context = context
        self._count = count
        self.sheet: CountSheet | None = None
        self.haste = Haste()
        self.heading = text_label("Count the shelf", TypeSize.TITLE)
        self.summary = text_label("", quiet=True)
        self.said = ElidedLabel()
        self.progress = QProgressBar()
        self.everything = _chip("Sealed, empty and pantry too", self._on_everything)
        self.leave_button = button("Leave", self.left.emit)
        self.confirm_button = primary_button("Confirm…", self.confirmed.emit, "check")
        self.table: RowTable[CountRow] = RowTable(count_columns(), self)
        self.view = CountingView()
        self.legend = CountingLegend()
        self.pages = self._prepare_pages()
        self._lay_out()
        self._listen()

    # What the Bottles page calls

    def begin(self) -> None:
        """Go to the first bottle that is not counted yet."""
        self.refresh()
        many = len(self._count)
        self.say(
            f"Going on: {bottles_in_words(many)} counted before, not written down yet"
            if many
            else "A digit for the tenths that are left, or Enter for ml, a weight or a height; "
            "nothing is written before you confirm"
        )
        rows = self.table.rows
        first = next((n for n, row in enumerate(rows) if row.typed is None), 0)
        self.view.go_to(first)
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def refresh(self) -> None:
        """Ask the snapshot again, staying with the present bottle."""
        present = self.present
        self.haste.forget()
        self.view.close_entry()
        snapshot = self._context.bar.snapshot
        rows = self._count.rows(snapshot, everything=self.everything.isChecked())
        self.table.show_rows(rows)
        self.pages.show_counts(len(rows), len(snapshot.bottles))
        kept = present.bottle.id if present else None
        place = next((n for n, row in enumerate(rows) if row.bottle.id == kept), 0)
        self.view.go_to(place)
        self._sum_up()

    def confirm(self, write: Callable[[], object]) -> None:
        """Show what would be written, and write it once that is confirmed."""
        if self.view.is_entering and not self._take_exactly(self.view.entry.text()):
            return
        if not len(self._count):
            self.say("Nothing is counted yet, so there is nothing to confirm")
            return
        snapshot = self._context.bar.snapshot
        rows = self._count.counted_rows(snapshot)
        left_out = sum(
            on_the_shelf(each) and each.id not in self._count for each in snapshot.bottles
        )
        self.sheet = CountSheet(rows, left_out, self)
        self.sheet.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.sheet.accepted.connect(write)
        self.sheet.finished.connect(self._on_sheet_closed)
        self.sheet.open()

    @property
    def present(self) -> CountRow | None:
        """The row of the bottle in hand."""
        number = self.view.row
        return self.table.rows[number] if 0 <= number < len(self.table.rows) else None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)

    # What the keys do

    def _on_tenths(self, many: int) -> None:
        row = self.present
        if row is None or self._goes_on(str(many)):
            return
        number = self.view.row
        if row.bottle.product.unit == "each":  # pieces are counted, not judged
            self.view.open_entry(str(many), select=False)
        else:
            self._take(tenths(row.bottle, many))
            self.haste.remember(JudgedDigit(number, str(many), row.typed), self.view.row)

    def _goes_on(self, typed: str) -> bool:
        """Whether an amount is being typed, of which a digit has just been judged by itself.

        Then that is taken back, and the amount goes on where amounts are typed.
        """
        hasty = self.haste.taken_back(self.view.row)
        if hasty is None:
            return False
        bottle = self.table.rows[hasty.row].bottle
        if hasty.before is None:
            self._count.drop(bottle.id)
        else:
            self._count.take(bottle.id, hasty.before)
        self._show_again(hasty.row)
        self.view.go_to(hasty.row)
        text = hasty.digit + typed
        self.view.open_entry(text, select=False)
        self._on_exact_edited(text)
        self.say(f"{bottle.product.title}: an amount, so no tenths; Enter takes it, Esc does not")
        return True

    def _on_full(self) -> None:
        row = self.present
        if row is not None:
            self._take(tenths(row.bottle, FULL))

    def _on_expected(self) -> None:
        row = self.present
        if row is not None:
            self._take(as_expected(row.bottle))

    def _on_skipped(self) -> None:
        row = self.present
        if row is not None:
            self._move_on(f"{row.bottle.product.title}: skipped")

    def _on_cleared(self) -> None:
        row = self.present
        if row is None:
            return
        was_counted = row.typed is not None
        self._count.drop(row.bottle.id)
        self._show_again(self.view.row)
        self.view.go_to(self.view.row - 1)
        title = row.bottle.product.title
        self.say(f"{title}: not counted after all" if was_counted else f"Back from {title}")

    def _on_exact_wanted(self) -> None:
        row = self.present
        if row is not None:
            text = row.typed.words if row.typed and _is_amount(row.typed) else ""
            self.view.open_entry(text)
            self._on_exact_edited(text)

    def _on_exact(self, text: str) -> None:
        self._take_exactly(text)

    def _on_exact_edited(self, text: str) -> None:
        """How it reads so far; while it is being typed, a mistake is no mistake yet."""
        row = self.present
        try:
            typed = self._read(row, text) if row and text.strip() else None
        except UserError:
            typed = None
        words = exact_in_words(typed, row.bottle) if row and typed else ""
        self.view.show_reading(words)

    def _on_picked(self, number: int, share: float) -> None:
        """The mouse stays with its bottle: a second click may put it right."""
        row = self.table.rows[number]
        self._count.take(row.bottle.id, at_share(row.bottle, share))
        self._show_again(number)
        self.say(row_in_words(self.table.rows[number]))

    def _on_everything(self, _on: bool) -> None:
        self.refresh()
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_exactly(self, text: str) -> bool:
        row = self.present
        if row is None:
            return False
        try:
            typed = self._read(row, text)
        except UserError as error:
            self.view.refuse(str(error))
            return False
        self.view.close_entry()
        self._take(typed)
        return True

    def _read(self, row: CountRow, text: str) -> Typed:
        return exactly(row.bottle, text, self._context.bar.snapshot)

    def _take(self, typed: Typed) -> None:
        number = self.view.row
        self._count.take(self.table.rows[number].bottle.id, typed)
        self._show_again(number)
        self._move_on(row_in_words(self.table.rows[number]))

    def _move_on(self, said: str) -> None:
        last = len(self.table.rows) - 1
        if self.view.row >= last:
            self.say(f"{said}. That was the last bottle: Ctrl+Enter to confirm")
            return
        self.view.go_to(self.view.row + 1)
        self.say(said)

    def _show_again(self, number: int) -> None:
        """Draw one row anew; it stays in place whatever the toggle says."""
        self.haste.forget()
        row = self.table.rows[number]
        fresh = self._count.row(row)
        self.table.replace_row(number, fresh)
        self._sum_up()

    def _on_sheet_closed(self, _result: int) -> None:
        self.sheet = None
        if self.isVisible():
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _sum_up(self) -> None:
        rows, many = self.table.rows, len(self._count)
        flagged = sum(row.flagged for row in rows)
        words = f"{many} of {bottles_in_words(len(rows))} counted"
        self.summary.setText(f"{words} · {flagged} beyond doubt" if flagged else words)
        self.progress.setMaximum(max(1, len(rows)))
        self.progress.setValue(many)
        self.progress.setAccessibleDescription(words)
        self.confirm_button.setText(f"Confirm {bottles_in_words(many)}…" if many else "Confirm…")

    def say(self, words: str) -> None:
        """Say what has just happened, to be seen and heard."""
        self.said.setText(words)
        self.said.setAccessibleName(words)
        announce(self.view, words)

    # How it is put together

    def _prepare_pages(self) -> ListStack:
        self.view.setModel(self.table)
        self.view.prepare_columns()
        empty = EmptyState("picture-empty-shelf", "No bottles yet", "There is nothing to count")
        none_open = EmptyState(
            "picture-empty-glass",
            "No open bottles",
            "Sealed, empty and pantry ones can be counted as well",
            "Show all",
        )
        none_open.acted.connect(lambda: self.everything.setChecked(True))
        return ListStack(self.view, empty, none_open)

    def _lay_out(self) -> None:
        self.progress.setTextVisible(False)
        self.progress.setAccessibleName("Bottles counted")
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self.heading)
        words.addWidget(self.summary)
        top = QHBoxLayout()
        top.setSpacing(UNIT)
        top.addLayout(words, 1)
        for each in (self.everything, self.leave_button, self.confirm_button):
            each.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # a click leaves the keys to the list
            top.addWidget(each)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(UNIT)
        column.addLayout(top)
        column.addWidget(self.progress)
        column.addWidget(self.said)
        column.addWidget(Card(self.pages), 1)
        column.addWidget(self.legend)
        column.addSpacing(HALF)

    def _listen(self) -> None:
        view = self.view
        view.tenths_typed.connect(self._on_tenths)
        view.full_typed.connect(self._on_full)
        view.expected_typed.connect(self._on_expected)
        view.skipped.connect(self._on_skipped)
        view.cleared.connect(self._on_cleared)
        view.exact_wanted.connect(self._on_exact_wanted)
        view.exact_given.connect(self._on_exact)
        view.exact_edited.connect(self._on_exact_edited)
        view.other_typed.connect(self._goes_on)
        view.picked.connect(self._on_picked)


def _chip(words: str, on_toggled: Callable[[bool], object]) -> QPushButton:
    made = QPushButton(words)
    made.setProperty("chip", True)
    made.setCheckable(True)
    made.setAccessibleName(words)
    made.toggled.connect(on_toggled)
    return made


def _is_amount(typed: Typed) -> bool:
    """Whether the words of a count are an amount that can be typed again."""
    return any(letter.isdigit() for letter in typed.words) and "tenth" not in typed.words
