"""Counting after a shoot: along the shelf, one key a bottle, written in one go at the end."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHeaderView,
    QProgressBar,
    QPushButton,
    QTableView,
    QWidget,
)

from barkeep.desktop.counting.kept import CountLeft, KeptCount
from barkeep.desktop.counting.keys import (
    FULL,
    LEGEND,
    AsExpected,
    Exactly,
    GoBack,
    InHand,
    Meaning,
    Tenths,
    gone_back,
    gone_on,
    no_key,
)
from barkeep.desktop.counting.rows import (
    COUNTED,
    DIFFERENCE,
    EXPECTED,
    LEVEL,
    bottles_in_words,
    count_columns,
    exact_in_words,
    row_in_words,
    totals_in_words,
)
from barkeep.desktop.counting.view import CountingView
from barkeep.desktop.look.metrics import HALF, TypeSize, scaled
from barkeep.desktop.screens.kept import START_AFRESH
from barkeep.desktop.screens.list_stack import ListStack, prepare_view
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.empty_state import TO_BOTTLES, EmptyState
from barkeep.desktop.widgets.keys import KeyLegend
from barkeep.desktop.widgets.labels import ElidedLabel, quiet_line, text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.terms import explain
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.counting import (
    CountRow,
    ShelfCount,
    Typed,
    as_expected,
    at_share,
    exactly,
    tenths,
)
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

SIZE = (720, 520)
MEANING = tr_noop("One undo takes all of it back. 19 times in 20 a level lies within its ±.")
WIDTHS = {EXPECTED: 96, COUNTED: 130, DIFFERENCE: 240}


class CountSheet(QDialog):
    """Accepted writes, rejected goes on counting."""

    def __init__(
        self, rows: Sequence[CountRow], left_out: int, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Confirm the count"))
        asked = tr("Write down the count of {bottles}?", bottles=bottles_in_words(len(rows)))
        self.heading = text_label(asked, TypeSize.SUBTITLE, wrap=True)
        self.totals = text_label(totals_in_words(rows), TypeSize.STRONG, wrap=True)
        self.rest = text_label(_rest(left_out), quiet=True, wrap=True)
        self.table: RowTable[CountRow] = RowTable(count_columns(), self)
        self.table.show_rows(rows)
        self.view = QTableView()
        write = tr_noop("Write 1 count" if len(rows) == 1 else "Write {n} counts")
        self.write_button = primary_button(tr(write, n=len(rows)), self.accept, "check")
        self.back_button = button(tr("Go on counting"), self.reject)
        self._prepare_view()
        self._lay_out()
        self.write_button.setDefault(True)
        self.write_button.setFocus()
        self.resize(*SIZE)
        accept_by_keys(self)

    def _prepare_view(self) -> None:
        view = self.view
        view.setModel(self.table)
        prepare_view(view, tr("What will be written"))
        view.setSortingEnabled(False)
        view.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        view.setColumnHidden(LEVEL, True)
        view.verticalHeader().setDefaultSectionSize(scaled(48))
        header = view.horizontalHeader()
        header.setStretchLastSection(False)
        header.setSectionsClickable(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column, width in WIDTHS.items():
            header.resizeSection(column, width)

    def _lay_out(self) -> None:
        self.back_button.setAutoDefault(False)
        column_of(
            self.heading,
            self.totals,
            self.rest,
            HALF,
            wide(Card(self.view)),
            HALF,
            row_of(SPRING, self.back_button, self.write_button),
            on=self,
            margins=DIALOG,
        )
        self.view.setFocusPolicy(Qt.FocusPolicy.TabFocus)


def _rest(left_out: int) -> str:
    if not left_out:
        return f"{tr('Every open bottle is counted.')} {tr(MEANING)}"
    told = tr_noop("{bottles} open but not counted keep what the ledger says.")
    if left_out == 1:
        told = tr_noop("{bottles} open but not counted keeps what the ledger says.")
    return f"{tr(told, bottles=bottles_in_words(left_out))} {tr(MEANING)}"


KEYS = (
    *LEGEND,
    (("↑", "↓"), tr_noop("move")),
    ((tr_noop("Ctrl"), "Enter"), tr_noop("confirm")),
    ((tr_noop("Esc"),), tr_noop("leave")),
)

MARKS = (("down", "info", tr_noop("expected")), ("up", "text", tr_noop("counted")))


class CountingPage(QWidget):
    """`left` asks to go back to the list, `confirmed` to show what would be written."""

    left = Signal()
    confirmed = Signal()

    def __init__(
        self, context: ScreenContext, kept: KeptCount, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._context, self._kept = context, kept
        self.sheet: CountSheet | None = None
        self._in_hand = InHand(0)
        self.heading = text_label(tr("Count the shelf"), TypeSize.TITLE)
        self.summary = quiet_line()
        explain(self.summary, "beyond doubt")
        self.said = ElidedLabel()
        self.progress = QProgressBar()
        self.everything = _chip(tr("Sealed, empty and pantry too"), self._on_everything)
        self.afresh_button = button(tr(START_AFRESH), self.ask_to_start_afresh)
        self.leave_button = button(tr("Leave"), self._leave)
        self.confirm_button = primary_button(tr("Confirm…"), self.confirmed.emit, "check")
        self.table: RowTable[CountRow] = RowTable(count_columns(), self)
        self.view = CountingView(self.settle)
        self.legend = KeyLegend(KEYS, MARKS)
        self.pages = self._prepare_pages()
        self._lay_out()
        self._listen()

    # What the Bottles page calls

    @property
    def count(self) -> ShelfCount:
        """What was counted so far."""
        return self._kept.count

    @count.setter
    def count(self, count: ShelfCount) -> None:
        if count != self.count:
            self._keep(count)

    def begin(self) -> None:
        """Go to the first bottle that is not counted yet."""
        self.refresh()
        many = len(self.count)
        rows = self.table.rows
        if not rows:
            self.say(tr("Nothing to count here yet; Esc goes back to the list"))
            self.take_focus()
            return
        left, self._kept.left = self._kept.left, None
        self.say(
            _going_on(many, left)
            if many or (left and left.said)
            else tr(
                "A digit for the tenths that are left, or Enter for ml, a weight or a height; "
                "nothing is written before you confirm"
            )
        )
        first = next((n for n, row in enumerate(rows) if row.typed is None), 0)
        self.view.go_to(first)
        self.take_focus()
        if left is not None and left.typing is not None:
            self._go_on_typing(*left.typing)

    def take_focus(self) -> None:
        """The keys go to the list, or to what can be done where it has no bottle."""
        shown = self.pages.currentWidget()
        buttons = shown.buttons if isinstance(shown, EmptyState) else []
        first = buttons[0] if buttons else self.leave_button
        target = self.view if shown is self.view else first
        target.setFocus(Qt.FocusReason.OtherFocusReason)

    def refresh(self) -> None:
        """Ask the snapshot again, staying with the present bottle."""
        present = self.present
        typing = self.view.entry.text() if self.view.is_entering else None
        self.view.close_entry()
        snapshot = self._context.bar.snapshot
        rows = self.count.rows(
            snapshot.bottles, snapshot.knowledge.tree, everything=self.everything.isChecked()
        )
        self.table.show_rows(rows)
        self.pages.show_counts(len(rows), len(snapshot.bottles))
        kept = present.bottle.id if present else None
        place = next((n for n, row in enumerate(rows) if row.bottle.id == kept), 0)
        self.view.go_to(place)
        if typing is not None and self.present and self.present.bottle.id == kept:
            self.view.open_entry(typing, select=False)
        self._sum_up()

    def confirm(self, write: Callable[[], object]) -> None:
        """Show what would be written, and write it once that is confirmed."""
        if not self.settle():
            return
        if not len(self.count):
            self.say(tr("Nothing is counted yet, so there is nothing to confirm"))
            return
        snapshot = self._context.bar.snapshot
        rows = self.count.counted_rows(snapshot.bottles, snapshot.knowledge.tree)
        self.sheet = CountSheet(rows, self.count.left_out(snapshot.bottles), self)
        self.sheet.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.sheet.accepted.connect(write)
        self.sheet.finished.connect(self._on_sheet_closed)
        self.sheet.open()

    def ask_to_start_afresh(self) -> None:
        """Throw the counts away, and offer to have them back."""
        before = self.count
        if not len(before):
            self.say(tr("Nothing is counted yet, so there is nothing to throw away"))
            return
        self.start_afresh()
        bottles = bottles_in_words(len(before))
        gone = tr("The counts of {bottles} are thrown away", bottles=bottles)
        self._context.toast.say(gone, tr("Bring them back"), lambda: self._bring_back(before))

    def _bring_back(self, before: ShelfCount) -> None:
        """Take up the counts that were thrown away, beside those made since."""
        self.count = ShelfCount({**before.typed, **self.count.typed})
        self.refresh()
        self.say(tr("{bottles} counted again", bottles=bottles_in_words(len(self.count))))
        self.take_focus()

    def start_afresh(self) -> None:
        """Throw the counts away."""
        self.forget()
        self.refresh()
        self.say(tr("All counts are thrown away; nothing was written"))
        self.take_focus()

    @property
    def present(self) -> CountRow | None:
        """The row of the bottle in hand."""
        number = self.view.row
        return self.table.rows[number] if 0 <= number < len(self.table.rows) else None

    @property
    def typing(self) -> str:
        """The amount that is being typed, empty where none is."""
        return self.view.entry.text().strip() if self.view.is_entering else ""

    def forget(self) -> None:
        """Keep neither a count nor the amount that is being typed."""
        self.view.close_entry()
        self._keep(ShelfCount())

    def settle(self) -> bool:
        """Take over an amount that is being typed; False while it cannot be read."""
        text = self.typing
        if text:
            return self._take_exactly(text)
        self.view.close_entry()
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self._leave()
            return
        super().keyPressEvent(event)

    def _leave(self) -> None:
        if self.settle():
            self.left.emit()

    # What outlives the program

    def _keep(self, count: ShelfCount) -> None:
        """Keep a count, and the amount that is being typed."""
        typing, row = self.typing, self.present
        self._kept.keep(count, (row.bottle.id, typing) if row is not None and typing else None)

    def _keep_typing(self) -> None:
        self._keep(self.count)

    def _go_on_typing(self, bottle_id: int, text: str) -> None:
        place = [row.bottle.id for row in self.table.rows]
        if bottle_id in place:
            self.view.go_to(place.index(bottle_id))
            self.view.open_entry(text, select=False)
            self._on_exact_edited(text)

    # What the keys do

    def _on_meant(self, meaning: Meaning) -> None:
        row = self.present
        if row is None:
            return
        match meaning:
            case Tenths(many) if _is_in_pieces(row) and 0 < many < FULL:
                self._type_pieces(row, many)
            case Tenths(many):
                self._take(tenths(row.bottle, many))
            case AsExpected():
                self._take(as_expected(row.bottle))
            case GoBack():
                self._go_back()
            case Exactly(begins):
                self._type_exactly(row, begins)

    def _type_pieces(self, row: CountRow, many: int) -> None:
        """Pieces are counted, not judged."""
        self._type_exactly(row, str(many))
        self.say(tr("{title}: how many pieces? Enter takes them", title=row.bottle.product.title))

    def _type_exactly(self, row: CountRow, begins: str) -> None:
        """Go on from what was begun, or from the amount that was typed before."""
        before = row.typed.words if row.typed and row.typed.is_amount else ""
        self.view.open_entry(begins or before, select=not begins)
        self._on_exact_edited(begins or before)

    def _go_back(self) -> None:
        number = gone_back(self._in_hand, self.view.row)
        if number is None:
            self.say(tr("This is the first bottle: there is none to go back to"))
            return
        row = self.table.rows[number]
        was_counted = row.typed is not None
        self.count = self.count.dropped(row.bottle.id)
        self._show_again(number)
        self.view.go_to(number)
        self._in_hand = InHand(number)
        title = row.bottle.product.title
        told = tr_noop("{title}: not counted after all" if was_counted else "Back to {title}")
        self.say(tr(told, title=title))

    def _on_exact_edited(self, text: str) -> None:
        """How it reads so far; while it is being typed, a mistake is no mistake yet."""
        row = self.present
        try:
            typed = self._read(row, text) if row and text.strip() else None
        except UserError:
            typed = None
        words = exact_in_words(typed, row.bottle) if row and typed else ""
        self.view.show_reading(words)
        self._keep_typing()

    def _on_picked(self, number: int, share: float) -> None:
        """The mouse stays with its bottle: a second click may put it right."""
        row = self.table.rows[number]
        self.count = self.count.taken(row.bottle.id, at_share(row.bottle, share))
        self._show_again(number)
        self.say(row_in_words(self.table.rows[number]))

    def _on_everything(self, _on: bool) -> None:
        self.refresh()
        self.take_focus()

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
        snapshot = self._context.bar.snapshot
        container = container_of(row.bottle, snapshot.knowledge.tree, snapshot.bottles)
        return exactly(text, container, snapshot.settings.units)

    def _take(self, typed: Typed) -> None:
        number = self.view.row
        self.count = self.count.taken(self.table.rows[number].bottle.id, typed)
        self._show_again(number)
        self._move_on(row_in_words(self.table.rows[number]))

    def _move_on(self, said: str) -> None:
        self._in_hand = gone_on(self.view.row, len(self.table.rows) - 1)
        if self._in_hand.counted:
            self.say(tr("{said}. That was the last bottle: Ctrl+Enter to confirm", said=said))
            return
        self.view.go_to(self._in_hand.row)
        self.say(said)

    def _show_again(self, number: int) -> None:
        """Draw one row anew; it stays in place whatever the toggle says."""
        row = self.table.rows[number]
        fresh = self.count.row(row)
        self.table.replace_row(number, fresh)
        self._sum_up()

    def _on_sheet_closed(self, _result: int) -> None:
        self.sheet = None
        if self.isVisible():
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _sum_up(self) -> None:
        rows, many = self.table.rows, len(self.count)
        flagged = sum(row.flagged for row in rows)
        words = self._none_shown()
        if rows:
            words = tr("{n} of {bottles} counted", n=many, bottles=bottles_in_words(len(rows)))
        beyond = tr("{n} beyond doubt", n=flagged) if flagged else ""
        self.summary.setText(" · ".join(filter(None, (words, beyond))))
        self.progress.setMaximum(max(1, len(rows)))
        self.progress.setUpdatesEnabled(False)  # or it would be painted now, and all else with it
        self.progress.setValue(many)
        self.progress.setUpdatesEnabled(True)
        self.progress.setAccessibleDescription(words)
        confirm = tr("Confirm {bottles}…", bottles=bottles_in_words(many))
        self.confirm_button.setText(confirm if many else tr("Confirm…"))

    def _none_shown(self) -> str:
        """In place of *0 of 0*: what there is besides."""
        there = len(self._context.bar.snapshot.bottles)
        if not there:
            return tr("Nothing to count")
        return tr("{bottles}, none open", bottles=bottles_in_words(there))

    def say(self, words: str) -> None:
        """Say what has just happened, to be seen and heard."""
        self.said.setText(words)
        self.said.setAccessibleName(words)
        announce(self.view, words)

    # How it is put together

    def _prepare_pages(self) -> ListStack:
        self.view.setModel(self.table)
        self.view.prepare_columns()
        empty = EmptyState(
            "picture-empty-shelf",
            tr("No bottles yet"),
            tr("Each is counted here, one after the other, and there is none"),
            leads=TO_BOTTLES,
        )
        empty.followed.connect(lambda page: self._context.go(page, None))
        none_open = EmptyState(
            "picture-empty-glass",
            tr("No open bottles"),
            tr("Sealed, empty and pantry ones can be counted as well"),
            tr("Show all"),
        )
        none_open.acted.connect(lambda: self.everything.setChecked(True))
        return ListStack(self.view, empty, none_open)

    def _lay_out(self) -> None:
        self.progress.setTextVisible(False)
        self.progress.setAccessibleName(tr("Bottles counted"))
        buttons = FlowLayout(asks_for_one_row=True)
        for each in (
            self.everything,
            self.afresh_button,
            self.leave_button,
            self.confirm_button,
        ):
            each.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # a click leaves the keys to the list
            buttons.addWidget(each)
        top = row_of(wide(column_of(self.heading, self.summary, gap=2)), buttons)
        column_of(top, self.progress, self.said, wide(Card(self.pages)), self.legend, HALF, on=self)

    def _listen(self) -> None:
        view = self.view
        view.meant.connect(self._on_meant)
        view.exact_given.connect(self._take_exactly)
        view.exact_edited.connect(self._on_exact_edited)
        view.entry.cancelled.connect(self._keep_typing)
        view.other_typed.connect(lambda typed: self.say(no_key(typed)))
        view.picked.connect(self._on_picked)


def _going_on(many: int, left: CountLeft | None) -> str:
    bottles = bottles_in_words(many)
    if left is None:
        return tr("Going on: {bottles} counted before, not written down yet", bottles=bottles)
    told = tr_noop("Going on: {bottles} counted before on {when}, not written down yet")
    words = tr(told, bottles=bottles, when=left.when)
    return f"{words}; {left.said}" if left.said else words


def _chip(words: str, on_toggled: Callable[[bool], object]) -> QPushButton:
    made = QPushButton(words)
    made.setProperty("chip", True)
    made.setCheckable(True)
    made.setAccessibleName(words)
    made.toggled.connect(on_toggled)
    return made


def _is_in_pieces(row: CountRow) -> bool:
    return row.bottle.product.unit == "each"
