"""I have a list: lines are pasted or dropped, and what is doubtful in them is asked in place."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import QMimeData, QModelIndex, Qt, Signal
from PySide6.QtWidgets import (
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QSplitter,
    QTableView,
    QWidget,
)

from barkeep.desktop.first_hour.enter import pressed_by_enter
from barkeep.desktop.first_hour.lines import (
    COLUMNS,
    Answers,
    ReadLine,
    ReadList,
    lines_to_show,
    read_list,
)
from barkeep.desktop.first_hour.taking_in import TakingIn
from barkeep.desktop.ingredients.own_ingredient import Way
from barkeep.desktop.ingredients.teaching import teach_buttons, teacher
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, scaled
from barkeep.desktop.screens.kept import LIST, KeptTyping
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.screens.name_completion import (
    NameCompleter,
    ingredient_names,
)
from barkeep.desktop.screens.row_table import RowFilter, RowTable
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import button, offer, primary_button
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, Card, Slot, column_of, row_of, wide
from barkeep.documents.bytes_read import decoded
from barkeep.documents.foreign_text import LARGEST_CHARACTERS
from barkeep.domain.bar.changes import Changes
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import capitalised
from barkeep.errors import UnreadableFile, UserError
from barkeep.translation import tr, tr_noop

EXAMPLE = tr_noop(
    "Paste your list, or drop a file: a bottle a line, in your own words.\n\n"
    "London dry gin 70 cl half full\n2 x tonic water\n"
    "sweet vermouth, opened 3 May 2026\nrum, white, 1 l, 3/4"
)
READING = "first-hour-list"
"""Under which it is asked how the list is understood."""
ASKS = {
    "ingredient": tr_noop("What it is"),
    "product": tr_noop("Name"),
    "size": tr_noop("Size"),
    "level": tr_noop("Level"),
    "opened": tr_noop("Opened"),
    "price": tr_noop("Price"),
    "abv": tr_noop("Strength"),
}


class ListEdit(QPlainTextEdit):
    """Takes text, and files that are dropped on it; Tab leaves it. `refused` says why not."""

    refused = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setPlaceholderText(tr(EXAMPLE))
        self.setAccessibleName(tr("Your list, a bottle a line"))
        self.setTabChangesFocus(True)
        self.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)

    def canInsertFromMimeData(self, source: QMimeData) -> bool:
        return _file_in(source) is not None or super().canInsertFromMimeData(source)

    def insertFromMimeData(self, source: QMimeData) -> None:
        file = _file_in(source)
        if file is None:
            super().insertFromMimeData(source)
            return
        try:
            self.textCursor().insertText(_read(file))
        except UserError as error:
            self.refused.emit(error)


def _file_in(source: QMimeData) -> Path | None:
    files = [Path(url.toLocalFile()) for url in source.urls() if url.isLocalFile()]
    return files[0] if len(files) == 1 else None


def _read(file: Path) -> str:
    try:
        if file.stat().st_size > LARGEST_CHARACTERS:
            raise UnreadableFile(file.name, tr("it is too large"))
        return decoded(file.read_bytes(), file.name).text
    except OSError as error:
        why = error.strerror.lower() if error.strerror else tr("it cannot be read")
        raise UnreadableFile(file.name, why) from None


class BottleListScreen(TakingIn):
    """The list on one side, and how each of its lines is understood on the other.

    What is asked stands below, with the likely answer in its field: Enter takes it.
    """

    key = "bottle-list"
    title = tr_noop("I have a list")
    noun = "lines"
    more = tr_noop("Another &list")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        super().__init__(context, parent)
        self.answers = Answers()
        self.found = ReadList()
        self._kept = KeptTyping(context.state.folder, context.bar.kept_beside)
        self.edit = ListEdit()
        self.edit.refused.connect(self.show_refusal)
        self.table: RowTable[ReadLine] = RowTable(COLUMNS, self)
        self.shown = RowFilter(self.table, self)
        self.view = QTableView()
        self.question = _Question()
        self.said = text_label("", quiet=True, wrap=True)
        self.add_button = primary_button("", self.go_on, "add")
        self.tick_button = button(
            tr("&Tick what you own"), lambda: context.go("tick-bottles", None)
        )
        self.add_header_button(self.tick_button)
        self.add_header_button(self.add_button)
        self.of_the_form = (self.tick_button, self.add_button)
        self._lay_out_form()
        self.edit.textChanged.connect(self._on_text)
        self.view.selectionModel().currentRowChanged.connect(self._on_current)
        self.view.activated.connect(lambda _index: self.question.take_focus())
        self.question.answered.connect(self.answer)
        self.question.left_out.connect(self.leave_out)
        self.question.taken_in.connect(self.take_in_after_all)
        self.question.teach_chosen.connect(self._teach)
        self.add_bar_action(
            self.new_action(
                tr("&Put the list on the shelf"), self.go_on, "Ctrl+Return", "Ctrl+Enter"
            )
        )
        pressed_by_enter(self.add_button, self.tick_button)
        pressed_by_enter(self.question.accept, self.question.leave, self.question.take)
        self._say_found()
        left = self._kept.left(LIST)
        if left is not None:
            self.edit.setPlainText(str(left.get("text", "")))

    # What the user does

    def go_on(self) -> None:
        """Go to what is still asked; where nothing is, put the bottles on the shelf."""
        if self._is_reading:
            self._goes_on = True
            return
        if self.found.asked:
            self._go_to_question(0)
        elif self.found.coming:
            self.put_on_shelf(self.found.coming)
        else:
            self.edit.setFocus()
            self.banner.say(tr("The list is empty: write or paste a bottle a line first."), "info")

    def answer(self) -> None:
        """Take the answer in the field, and go to the next question."""
        line = self._current()
        if line is not None and line.asked is not None and line.state == "asked":
            text = self.question.edit.text().strip()
            self._decide(self.answers.telling(line.words, line.asked.column, text or "none"))

    def leave_out(self) -> None:
        """Leave the line out, which stays in the list and says so."""
        line = self._current()
        if line is not None:
            self._decide(self.answers.leaving_out(line.words))

    def take_in_after_all(self) -> None:
        """Take in a line that was left out, or that looks like a bottle that is there."""
        line = self._current()
        if line is not None:
            self._decide(self.answers.taking(line.words))

    def refresh(self, changes: Changes) -> None:
        self.question.offer_names(self.context.bar.snapshot)
        self._read_again()

    def forget(self) -> None:
        self.answers = Answers()
        self._kept.drop(LIST)
        self.edit.blockSignals(True)
        self.edit.clear()
        self.edit.blockSignals(False)
        self.found = ReadList()
        self._say_found()

    def go_on_with(self, name: str) -> None:
        self.begin_again()

    def show_thing(self, thing: object) -> None:
        super().show_thing(thing)
        if isinstance(thing, str):  # lines from elsewhere, below those that are there
            self.edit.appendPlainText(thing.strip("\n"))

    def focus_list(self) -> None:
        if self.is_done:
            self.ending.take_focus()
        else:
            self.edit.setFocus()

    # Inside

    _is_reading = _goes_on = False
    """Whether the list is being read, and the user wants to go on once it is."""
    _after = -1
    """Among what is asked the place that was answered last; -1 for none."""

    def _on_text(self) -> None:
        self._kept.keep(LIST, {"text": self.edit.toPlainText()})
        self.banner.clear()
        self._read_again()

    def _decide(self, answers: Answers) -> None:
        line = self._current()
        asked = [each.words for each in self.found.asked]
        self._after = asked.index(line.words) if line and line.words in asked else -1
        self.answers = answers
        snapshot, text = self.context.bar.snapshot, self.edit.toPlainText()
        self._show(read_list(snapshot, text, answers))

    def _read_again(self) -> None:
        self._is_reading = True
        question = partial(
            read_list, self.context.bar.snapshot, self.edit.toPlainText(), self.answers
        )
        self.context.background.ask(READING, question, self._show)

    def _show(self, found: ReadList) -> None:
        self.found, self._is_reading = found, False
        self.table.show_rows(lines_to_show(found))
        self._say_found()
        self.view.selectRow(0)
        after, self._after = self._after, -1
        goes_on, self._goes_on = self._goes_on, False
        if after >= 0 and found.asked:
            self._go_to_question(min(after, len(found.asked) - 1))
        elif after >= 0:
            self.add_button.setFocus(Qt.FocusReason.OtherFocusReason)
        elif goes_on:
            self.go_on()

    def _go_to_question(self, place: int) -> None:
        self.view.selectRow(self.shown.place_of(place))
        self.question.take_focus()

    def _say_found(self) -> None:
        found = self.found
        self.said.setText(found.in_words)
        self.said.setVisible(bool(found.in_words))
        asked, count = len(found.asked), sum(each.count for each in found.coming)
        words = tr("&Add {count} to the shelf", count=count)
        if asked:
            words = tr("&Answer {asked} first", asked=asked)
        self.add_button.setText(words if found.lines else tr("&Add to the shelf"))
        offer(self.add_button, "" if asked or count else tr("Paste or type a list first"))
        self.question.show_line(self._current())

    def _current(self) -> ReadLine | None:
        index = self.view.currentIndex()
        line: ReadLine | None = self.shown.row(index) if index.isValid() else None
        return line

    def _on_current(self, _current: QModelIndex) -> None:
        self.question.show_line(self._current())

    def _teach(self, words: str, way: Way) -> None:
        teacher(self.context.bar)(self, words, way, lambda _snapshot: self._read_again())

    def _lay_out_form(self) -> None:
        self.view.setModel(self.shown)
        prepare_view(self.view, tr("How your list is understood"))
        header = self.view.horizontalHeader()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        understood = QWidget()
        column_of(wide(Card(self.view)), self.question, on=understood)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.setHandleWidth(UNIT + HALF)
        splitter.addWidget(Card(self.edit))
        splitter.addWidget(understood)
        splitter.setStretchFactor(1, 1)
        splitter.setSizes([280, 600])
        column_of(self.said, wide(splitter), on=self.form)


class _Question(QWidget):
    """What is asked of a line, its likely answer in the field, and what else may be done.

    `teach_chosen` carries words that name nothing known, and as what they are to be taught.
    """

    answered = Signal()
    left_out = Signal()
    taken_in = Signal()
    teach_chosen = Signal(str, str)

    def __init__(self) -> None:
        super().__init__()
        self.heading = text_label("", TypeSize.STRONG, wrap=True)
        self.message = text_label("", wrap=True)
        self.label = QLabel()
        self.edit = QLineEdit()
        self.edit.setMaximumWidth(scaled(320))
        self.accept = button(tr("A&ccept"), self.answered.emit)
        self.leave = button(tr("Leave &out"), self.left_out.emit)
        self.take = button(tr("Take it &in"), self.taken_in.emit)
        self.edit.returnPressed.connect(self.answered)
        self.teach_row = QWidget()
        self._buttons_of_teaching = row_of(on=self.teach_row)
        self._names: NameCompleter | None = None
        self._words = ""
        column_of(
            self.heading,
            self.message,
            row_of(self.label, Slot(self.edit, 3), self.accept, self.take, self.leave, SPRING),
            self.teach_row,
            on=self,
            margins=(PAD, HALF, PAD, HALF),
            gap=HALF,
        )
        for each in teach_buttons("", lambda _words, way: self.teach_chosen.emit(self._words, way)):
            self._buttons_of_teaching.addWidget(each)
        self._buttons_of_teaching.addStretch(1)
        self.label.setBuddy(self.edit)

    def offer_names(self, snapshot: Snapshot) -> None:
        """Offer the kinds that the bar knows by now while one is typed."""
        self._names = NameCompleter(ingredient_names(snapshot.knowledge.tree), self)
        self._names.picked.connect(self.answered)

    def show_line(self, line: ReadLine | None) -> None:
        """Show what is asked of a line, or what becomes of it."""
        asked = None if line is None else line.asked
        self.setVisible(line is not None)
        if line is None:
            return
        self.heading.setText(tr("Line {line}: {words}", line=line.row.line, words=line.words))
        column = "" if asked is None else asked.column
        said = f"{capitalised(asked.message.rstrip('.?'))}." if asked else _told(line)
        self.message.setText(said)
        for each in (self.label, self.edit, self.accept):
            each.setVisible(asked is not None)
        self.label.setText(tr(ASKS.get(column, capitalised(column))))
        self.edit.setAccessibleName(self.label.text())
        self.edit.setAccessibleDescription(said)
        self.edit.setText("" if asked is None else asked.likely)
        names = self._names if column == "ingredient" else None
        self.edit.setCompleter(names)  # type: ignore[arg-type]
        self.take.setVisible(line.state in ("there", "out"))
        self.leave.setVisible(line.state != "out")
        self._words = "" if asked is None else asked.unknown or ""
        self.teach_row.setVisible(bool(self._words))

    def take_focus(self) -> None:
        """Go to the answer, its text marked, or to what else can be done."""
        if self.edit.isVisibleTo(self):
            self.edit.setFocus(Qt.FocusReason.OtherFocusReason)
            self.edit.selectAll()
        else:
            (self.take if self.take.isVisibleTo(self) else self.leave).setFocus()


def _told(line: ReadLine) -> str:
    """What becomes of a line that nothing is asked of."""
    said = {
        "there": tr("It looks like a bottle that is there already, so it does not come in."),
        "out": tr("It is left out, as you said."),
        "in": tr("It comes in."),
    }.get(line.state, "")
    return " ".join((said, *line.row.remarks))
