"""Bring bottles in from a list: each row is shown, and repaired where it stands, before any."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from functools import partial

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QMessageBox,
    QProgressBar,
    QSplitter,
    QTableView,
    QWidget,
)

from barkeep.application.bottle_imports import (
    NO_BOTTLE,
    BottlePreview,
    ImportedBottles,
    has_ready_answers,
    look_at_bottles,
    sorted_out,
    terms_of,
    with_ready_answers,
)
from barkeep.application.done import Done, Step
from barkeep.application.imports import NamedText, Progress
from barkeep.desktop.importing.bottle_details import BottleDetails
from barkeep.desktop.importing.bottle_rows import (
    COLUMNS,
    GROUP_WORDS,
    BottleRow,
    rows_of,
)
from barkeep.desktop.importing.repair_form import RepairForm
from barkeep.desktop.ingredients.own_ingredient import Way
from barkeep.desktop.ingredients.teaching import Teach, teach_by_keys, teacher
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.screens.background import Background, LongQuestion
from barkeep.desktop.screens.list_stack import prepare_view, set_widths
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.row_table import RowFilter, RowTable
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner, question_before_losing
from barkeep.documents.bottles_csv import BottlesFile, ListedBottle, ListedRow, repaired, rest_csv
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import capitalised
from barkeep.errors import UserError, spoken_list
from barkeep.translation import tr, tr_noop

Write = Callable[[Sequence[ListedBottle], Progress], Done[ImportedBottles]]
"""Brings bottles into the bar; called on another thread than the bar's own."""
Save = Callable[[str, str], object]
"""Writes a text to a file that the user named."""

LIST = tr_noop("Lists of bottles (*.csv)")
LOSING = tr_noop("Import bottles")
UNREPAIRED = tr_noop(
    "{count:,} row still needs a repair and would not come in. Write it to a file for later, or "
    "discard it and import the others?"
)
SEVERAL_UNREPAIRED = tr_noop(
    "{count:,} rows still need a repair and would not come in. Write them to a file for later, or "
    "discard them and import the others?"
)
ROW_WRITTEN = tr_noop("{rows:,} row was written to {file}.")
ROWS_WRITTEN = tr_noop("{rows:,} rows were written to {file}.")
IMPORT_ONE, IMPORT_SEVERAL = (
    tr_noop("&Import {bottles:,} bottle"),
    tr_noop("&Import {bottles:,} bottles"),
)
CAME_IN = tr_noop("{bottles:,} bottle came in")
SEVERAL_CAME_IN = tr_noop("{bottles:,} bottles came in")
LEFT_OUT = tr_noop("{rows:,} row was left out")
SEVERAL_LEFT_OUT = tr_noop("{rows:,} rows were left out")
BOTTLE, INGREDIENT = 1, 2
"""The columns that share the room the others leave."""
INGREDIENT_WIDTH = 116


class ImportDialog(RefusedInBanner, QDialog):
    """Reads, shows, has rows repaired, writes. `imported` is what came in, once it has.

    Nothing that was typed is lost unasked: rows that are left can be written
    to a file. `left_out` are those that came in neither way.
    """

    def __init__(
        self,
        *,
        named: NamedText,
        snapshot: Snapshot,
        background: Background,
        write: Write,
        save: Save,
        teach: Teach | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Import bottles"))
        self.resize(960, 600)
        self.imported: ImportedBottles | None = None
        self.step: Step | None = None
        """What takes it back."""
        self.left_out = 0
        self._named, self._snapshot = named, snapshot
        self._write, self._save, self._teach = write, save, teach
        self._found: BottlePreview | None = None
        self._rows: dict[int, ListedRow] = {}
        self._again: set[int] = set()
        self._typed: dict[int, dict[str, str]] = {}
        self._unsaved = self._saved_as_it_stands = False
        self.table: RowTable[BottleRow] = RowTable(COLUMNS, self)
        self.shown = RowFilter(self.table, self)
        self.view = QTableView()
        self.details = BottleDetails(snapshot.knowledge.tree, teachable=teach is not None)
        self.banner = Banner(closable=False)
        self.progress = QProgressBar()
        self.progress.setAccessibleName(tr("How much is done"))
        self.chips = FilterChips(tr("Show"), _chips(), "all")
        self.take_button = button("", self.take_ready_answers)
        self.save_button = button(tr("Save the &rest…"), self.save_rest)
        self.close_button = button(tr("Cancel"), self.reject)
        self.import_button = primary_button(tr("&Import"), self.import_rows)
        self.asking = LongQuestion(background, self)
        self._lay_out()
        self._connect()
        self._read()

    # What the user does

    def use_row(self) -> None:
        """Read the row that is shown as its fields say; then go to the next one to repair."""
        row = self._current()
        if row is not None and row.group == "repair":
            number = row.listed.row
            new = repaired(self._rows[number], self.details.form.cells, terms_of(self._snapshot))
            self._take([new])
            self._go_on_from(number)

    def take_ready_answers(self) -> None:
        """Take the likely answer of every row in which each problem has one."""
        self._show_working(True, tr("Reading…"))
        question = partial(with_ready_answers, self._ready(), terms_of(self._snapshot))
        self.asking.ask(question, self._on_taken, self.show_refusal)

    def decide(self, again: bool) -> None:
        """Say of the row that is shown whether it comes in beside what it looks like."""
        row = self._current()
        if row is not None and row.group == "same":
            (self._again.add if again else self._again.discard)(row.listed.row)
            self.table.replace_row(self.table.rows.index(row), replace(row, again=again))
            self._count()

    def save_rest(self) -> bool:
        """Write the rows that are to be repaired to a file, as they stand now; whether it was."""
        return self._save_rows(self._to_repair())

    def import_rows(self) -> None:
        """Bring in what is to come in, all in one step; rows that are left are asked about."""
        count = len(self._to_repair())
        if not count or self._saved_as_it_stands:
            self._import()
            return
        question = question_before_losing(
            self,
            title=LOSING,
            text=tr(UNREPAIRED if count == 1 else SEVERAL_UNREPAIRED, count=count),
            keep=tr("&Go on repairing"),
            later=tr("&Write to a file…"),
        )
        self._ask(question, self._import, self.save_rest)

    def reject(self) -> None:
        """Stop what is under way, or close; what was typed or repaired is not lost unasked."""
        if self.asking.is_running and self._found is not None:
            self.asking.stop()
        elif not self._unsaved:
            self._close()
        else:
            question = question_before_losing(
                self,
                title=LOSING,
                text=tr(
                    "Rows were repaired, and nothing has come in yet. Write all rows to a file as "
                    "they stand now, or discard the repairs?"
                ),
                keep=tr("&Go on"),
                later=tr("&Write to a file…"),
            )
            self._ask(question, self._close, lambda: self._save_rows(list(self._rows.values())))

    def read_again(self, snapshot: Snapshot) -> None:
        """Read the rows that are to be repaired again with what the bar knows now."""
        self._snapshot = snapshot
        self.details.form.offer_names(snapshot.knowledge.tree)
        terms, current = terms_of(snapshot), self._current()
        self._take([repaired(each, each.cells, terms) for each in self._to_repair()])
        self._go_on_from(current.listed.row if current is not None else 0)

    def show_refusal(self, error: UserError) -> None:
        """Say why nothing came in."""
        super().show_refusal(error)
        self._show_working(False)

    # Reading and writing

    def _read(self) -> None:
        self._show_working(True, tr("Reading…"))
        question = partial(look_at_bottles, self._snapshot, self._named.text)
        self.asking.ask(question, self._on_read, self.show_refusal)

    def _on_read(self, found: BottlePreview) -> None:
        self._found = found
        self._rows = {each.row: each for each in found.file.listed}
        self._show_working(False)
        self._show_found()
        self._say_how_it_was_read(found.file)
        self.view.selectRow(0)
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _say_how_it_was_read(self, file: BottlesFile) -> None:
        if not file.listed:
            said = "; ".join(str(each) for each in file.faults) or tr(NO_BOTTLE.message)
            self.banner.say(tr("There is nothing to import: {said}.", said=said), "error")
            return
        said_first = [self._named.read_as] if self._named.read_as else []
        columns = spoken_list([tr("“{name}”", name=each) for each in file.ignored], "and")
        ignored = [tr("Nothing is read from {columns}.", columns=columns)] if columns else []
        faults = [f"{capitalised(each.message)}." for each in file.faults]
        if said_first or ignored or faults:
            self.banner.say(" ".join((*said_first, *faults, *ignored)), "info")

    def _import(self) -> None:
        self.banner.clear()
        coming = sorted((row.listed for row in self.table.rows if row.comes_in), key=_number)
        bottles = [each.bottle for each in coming if each.bottle is not None]
        self.left_out = len(self._to_repair())
        self._show_working(True, tr("Importing…"))
        self.asking.ask(partial(self._write, bottles), self._on_written, self.show_refusal)

    def _on_written(self, done: Done[ImportedBottles]) -> None:
        self.imported, self.step = done.value, done.step
        self.accept()

    def _on_moved(self, done: int, total: int) -> None:
        self.progress.setRange(0, total)
        self.progress.setValue(done)

    def _on_taken(self, rows: Sequence[ListedRow]) -> None:
        self._show_working(False)
        self._take(rows)
        self._go_on_from(0)

    def _close(self) -> None:
        self.asking.abandon()
        super().reject()

    def _ask(
        self, question: QMessageBox, discard: Callable[[], object], write: Callable[[], bool]
    ) -> None:
        """Open a question; once it has written to a file it does what discarding does."""

        def answered(chosen: QAbstractButton) -> None:
            role = question.buttonRole(chosen)
            wanted = role == QMessageBox.ButtonRole.AcceptRole
            if role == QMessageBox.ButtonRole.DestructiveRole or (wanted and write()):
                discard()

        question.buttonClicked.connect(answered)
        question.open()

    def _save_rows(self, rows: Sequence[ListedRow]) -> bool:
        name, _kind = QFileDialog.getSaveFileName(self, tr("Save the rest"), "rest.csv", tr(LIST))
        if not name or self._found is None:
            return False
        as_typed = [replace(row, cells=self._typed.get(row.row, row.cells)) for row in rows]
        text = rest_csv(as_typed, self._found.file.aside)
        if not run_operation(self, lambda: self._save(name, text)):
            return False
        self._saved_as_it_stands = True
        written = ROW_WRITTEN if len(rows) == 1 else ROWS_WRITTEN
        self.banner.say(tr(written, rows=len(rows), file=name), "done")
        return True

    # Rows

    def _take(self, rows: Iterable[ListedRow]) -> None:
        """Put rows that were read again in the place of the old ones."""
        assert self._found is not None
        for each in rows:
            self._rows[each.row] = each
            self._typed.pop(each.row, None)
        self._changed()
        self._found = sorted_out(self._found.file, self._rows.values(), self._snapshot)
        self._show_found()

    def _changed(self) -> None:
        self._unsaved, self._saved_as_it_stands = True, False

    def _to_repair(self) -> tuple[ListedRow, ...]:
        return () if self._found is None else self._found.repair

    def _ready(self) -> tuple[ListedRow, ...]:
        """Rows with an answer to everything that was asked, in which nothing was typed."""
        typed = self._typed.keys()
        return tuple(
            each for each in self._to_repair() if each.row not in typed and has_ready_answers(each)
        )

    def _current(self) -> BottleRow | None:
        index = self.view.currentIndex()
        row: BottleRow | None = self.shown.row(index) if index.isValid() else None
        return row

    def _go_on_from(self, number: int) -> None:
        """Show this row where it is still to be repaired, else the next one, else be done."""
        numbers = [each.row for each in self._to_repair()]
        if not numbers:
            self.banner.say(tr("Every row can come in."), "done")
            self.view.selectRow(0)
            self.import_button.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        after = next((each for each in numbers if each >= number), numbers[0])
        if self.chips.choice not in ("all", "repair"):
            self.chips.choose("repair")
        place = next(at for at, row in enumerate(self.table.rows) if row.listed.row == after)
        self.view.selectRow(self.shown.place_of(place))
        self.details.focus_first()

    # What is shown

    def _show_found(self) -> None:
        assert self._found is not None
        self.table.show_rows(rows_of(self._found, self._again, self._snapshot.knowledge.tree))
        self._count()

    def _show_group(self, group: str) -> None:
        self.shown.keep(lambda row: group in ("all", row.group))
        self.view.selectRow(0)

    def _on_current(self, current: QModelIndex) -> None:
        row = self.shown.row(current) if current.isValid() else None
        typed = None if row is None else self._typed.get(row.listed.row)
        self.details.show_row(row, typed)

    def _on_typed(self) -> None:
        row = self._current()
        if row is not None and row.group == "repair":
            self._typed[row.listed.row] = self.details.form.cells
            self._changed()
            self._count()

    def _on_teach(self, words: str, way: Way) -> None:
        if self._teach is not None:
            self._teach(self, words, way, self.read_again)

    def _teach_here(self, way: Way) -> None:
        """As the buttons do, for the row that is shown."""
        row = self._current()
        if row is not None and any(each.unknown for each in row.listed.problems):
            self._on_teach(self.details.form.cells["ingredient"], way)

    def _count(self) -> None:
        groups = Counter(row.group for row in self.table.rows)
        for key, words, _about in _chips():
            count = len(self.table.rows) if key == "all" else groups[key]  # type: ignore[index]
            self.chips.chip(key).setText(f"{words} {count:,}")
        coming = sum(row.comes_in for row in self.table.rows)
        words = IMPORT_ONE if coming == 1 else IMPORT_SEVERAL
        self.import_button.setText(tr(words, bottles=coming))
        self.import_button.setEnabled(bool(coming))
        self.save_button.setVisible(bool(self._to_repair()))
        ready = len(self._ready())
        self.take_button.setVisible(bool(ready))
        self.take_button.setText(tr("Take read&y answers ({ready:,})", ready=ready))

    def _show_working(self, working: bool, words: str = "") -> None:
        self.progress.setVisible(working)
        self.progress.setRange(0, 0)
        self.progress.setFormat(f"{words} %p %")
        self._body.setEnabled(not working)
        self.close_button.setText(tr("&Stop") if working else tr("Cancel"))
        self._count()
        self.save_button.setEnabled(not working)
        if working:
            self.import_button.setEnabled(False)
            self.close_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _connect(self) -> None:
        self.asking.moved.connect(self._on_moved)
        self.chips.chosen.connect(self._show_group)
        self.view.selectionModel().currentRowChanged.connect(self._on_current)
        self.view.activated.connect(lambda _index: self.details.focus_first())
        form: RepairForm = self.details.form
        form.used.connect(self.use_row)
        form.typed.connect(self._on_typed)
        form.teach_chosen.connect(self._on_teach)
        teach_by_keys(self, self._teach_here)
        self.details.decided.connect(self.decide)

    def _lay_out(self) -> None:
        self.view.setModel(self.shown)
        prepare_view(self.view, tr("Bottles of the file"))
        header = self.view.horizontalHeader()
        header.setStretchLastSection(False)
        header.setResizeContentsPrecision(0)  # by the rows in sight: all of them take long
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(BOTTLE, QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(INGREDIENT, QHeaderView.ResizeMode.Interactive)
        set_widths(self.view, {INGREDIENT: INGREDIENT_WIDTH})
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.setHandleWidth(UNIT + HALF)
        splitter.addWidget(Card(self.view))
        splitter.addWidget(Card(self.details))
        splitter.setSizes([580, 340])
        self._body = QWidget()
        column_of(row_of(self.chips, SPRING, self.take_button), wide(splitter), on=self._body)
        column_of(
            text_label(self._named.file, TypeSize.SUBTITLE, wrap=True),
            wide(self._body),
            self.banner,
            self._buttons(),
            on=self,
            margins=PAD,
        )

    def _buttons(self) -> QHBoxLayout:
        row = row_of(self.save_button, wide(self.progress), SPRING)
        for each in (self.close_button, self.import_button):
            row.addWidget(each)
        for each in (self.take_button, self.save_button, self.close_button, self.import_button):
            each.setAutoDefault(False)
        return row


def _chips() -> tuple[tuple[str, str, str], ...]:
    """All rows, and each group of them: its key, its name, and what is said of it."""
    groups = ((key, tr(words)) for key, words in GROUP_WORDS.items())
    return (
        ("all", tr("All"), tr("Every row of the file")),
        *((key, words, tr("Only those: {group}", group=words.lower())) for key, words in groups),
    )


def _number(row: ListedRow) -> int:
    return row.row


def preview_bottles(context: ScreenContext, named: NamedText, parent: QWidget) -> None:
    """Show a list of bottles before they come in."""
    bar = context.bar
    beside = bar.beside

    def write(bottles: Sequence[ListedBottle], progress: Progress) -> Done[ImportedBottles]:
        with beside() as own:  # a bar belongs to one thread
            return own.imports.bottles(bottles, named.file, progress)

    dialog = ImportDialog(
        named=named,
        snapshot=bar.snapshot,
        background=context.background,
        write=write,
        save=bar.write_file,
        teach=teacher(bar),
        parent=parent,
    )
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: _after(context, dialog))
    dialog.open()


def _after(context: ScreenContext, dialog: ImportDialog) -> None:
    context.bar.refresh()
    if dialog.imported is None:
        return
    count, left = dialog.imported.bottles, dialog.left_out
    words = tr(CAME_IN if count == 1 else SEVERAL_CAME_IN, bottles=count)
    if left:
        rest = LEFT_OUT if left == 1 else SEVERAL_LEFT_OUT
        words = f"{words}; {tr(rest, rows=left)}"
    context.toast.say(words, tr("Undo"), partial(context.undo, dialog.step))
