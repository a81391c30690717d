"""Bring specs in from documents: everything is shown before anything is written."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QProgressBar,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.done import Done
from barkeep.application.spec_imports import Choice, Decision, ImportedSpecs
from barkeep.application.spec_preview import NamedText, Preview, Progress, preview
from barkeep.desktop.background import Background
from barkeep.desktop.dialogs.import_details import ImportDetails
from barkeep.desktop.dialogs.import_work import Work
from barkeep.desktop.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.models.import_rows import (
    GROUP_WORDS,
    ImportRow,
    decided,
    import_columns,
    import_rows,
)
from barkeep.desktop.models.row_table import RowFilter, RowTable
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.widgets.banner import Banner
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.card import Card
from barkeep.desktop.widgets.filter_chips import FilterChips
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.spec_text import write_spec
from barkeep.errors import UserError, spoken_list

if TYPE_CHECKING:
    from barkeep.desktop.main_window import MainWindow

Write = Callable[[Preview, dict[int, Decision], Progress], Done[ImportedSpecs]]
"""Brings a preview into the bar; called on another thread than the bar's own."""
COLUMN_WIDTHS = {1: 116, 2: 152}
_FOR_ALL: tuple[tuple[Choice | None, str], ...] = (
    (None, "as chosen for each"),
    ("keep_mine", "keep mine"),
    ("take_theirs", "take theirs"),
    ("add", "keep both"),
)


class ImportSpecsDialog(QDialog):
    """Reads, shows, writes; each can be stopped. `imported` is what came in, once it has."""

    def __init__(
        self,
        texts: Sequence[NamedText],
        snapshot: Snapshot,
        background: Background,
        write: Write,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle("Import specs")
        self.resize(960, 600)
        self.imported: ImportedSpecs | None = None
        self._texts, self._snapshot, self._write = tuple(texts), snapshot, write
        self._found = Preview()
        tree, units = snapshot.knowledge.tree, snapshot.settings.units
        self.table: RowTable[ImportRow] = RowTable(import_columns(), self)
        self.shown = RowFilter(self.table, self)
        self.view = QTableView()
        self.details = ImportDetails(lambda spec: write_spec(spec, tree, units))
        self.banner = Banner(closable=False)
        self.summary = text_label("", quiet=True, wrap=True)
        self.progress = QProgressBar()
        self.progress.setAccessibleName("How much is done")
        self.chips: FilterChips | None = None
        self.for_all = QComboBox()
        self.cancel_button = button("Cancel", self._cancel)
        self.import_button = primary_button("&Import", self.write)
        self.work = Work(background, self)
        self._lay_out()
        self._connect()
        self._read()

    def show_refusal(self, error: UserError) -> None:
        """Say why nothing came in."""
        self.banner.say(str(error), "error")
        self._show_working(False)

    def clear_refusal(self) -> None:
        """Take it away again."""
        self.banner.clear()

    def reject(self) -> None:
        """Close; what is under way leaves nothing behind."""
        self.work.abandon()
        super().reject()

    def choose_for_all(self, choice: Choice | None) -> None:
        """Decide for every spec that differs; theirs never takes the place of a classic."""
        if choice:
            rows = [decided(row, Decision(choice)) for row in self.table.rows]
            current = self.view.currentIndex().row()
            self.table.show_rows(rows)
            self.view.selectRow(max(0, current))
            self._count()

    def write(self) -> None:
        """Bring in what is to come in; all of it, or nothing."""
        self.banner.clear()
        decisions = {row.place: row.decision for row in self.table.rows if row.place >= 0}
        self._show_working(True, "Importing…")
        self.work.ask(
            partial(self._write, self._found, decisions), self._on_written, self.show_refusal
        )

    # Inside

    def _read(self) -> None:
        self._show_working(True, "Reading…")
        question = partial(preview, self._snapshot, self._texts)
        self.work.ask(question, self._on_read, self.show_refusal)

    def _on_read(self, found: Preview) -> None:
        self._found = found
        self._show_working(False)
        rows = import_rows(found, one_file=len(self._texts) == 1)
        self._offer_groups(rows)
        self.table.show_rows(rows)
        self.for_all.setVisible(bool(found.differing))
        self._for_all_label.setVisible(bool(found.differing))
        self._count()
        self._say_what_is_there(found)
        self.view.selectRow(0)
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_written(self, done: Done[ImportedSpecs]) -> None:
        self.imported = done.value
        self.accept()

    def _on_moved(self, done: int, total: int) -> None:
        self.progress.setRange(0, total)
        self.progress.setValue(done)

    def _cancel(self) -> None:
        """Stop what is under way; with nothing under way, or nothing read yet, close."""
        if self.work.is_running and self.table.rows:
            self.work.stop()
        else:
            self.reject()

    def _on_decided(self, row: ImportRow, decision: Decision) -> None:
        for number, each in enumerate(self.table.rows):
            if each.place == row.place and each.group == row.group:
                self.table.replace_row(number, decided(each, decision))
        self.for_all.setCurrentIndex(0)
        self._count()

    def _on_current(self, current: QModelIndex) -> None:
        self.details.show_row(self.shown.row(current) if current.isValid() else None)

    def _show_group(self, group: str) -> None:
        self.shown.keep(lambda row: group in ("all", row.group))
        self.view.selectRow(0)

    def _offer_groups(self, rows: Sequence[ImportRow]) -> None:
        counts = {key: sum(row.group == key for row in rows) for key in GROUP_WORDS}
        chips = [("all", f"All {len(rows):,}", "Every spec that is not there already")]
        chips += [
            (key, f"{words} {counts[key]:,}", f"Only those: {words.casefold()}")
            for key, words in GROUP_WORDS.items()
            if counts[key]
        ]
        self.chips = FilterChips("Show", chips, "all")
        self.chips.chosen.connect(self._show_group)
        self._top.insertWidget(0, self.chips)
        QWidget.setTabOrder(self.chips.chip("all"), self.for_all)

    def _count(self) -> None:
        count = sum(row.comes_in for row in self.table.rows)
        self.import_button.setText(f"&Import {count:,} spec{'s' * (count != 1)}")
        self.import_button.setEnabled(bool(count))

    def _say_what_is_there(self, found: Preview) -> None:
        there, bad = len(found.same), len(found.unreadable)
        said = []
        if there:
            said.append(f"{there:,} {'is' if there == 1 else 'are'} in the bar already.")
        if bad:
            said.append(f"{bad:,} cannot be read and will be left out.")
        self.summary.setText(" ".join(said))
        self.summary.setVisible(bool(said))
        if not self.table.rows:
            self.banner.say("There is nothing to import.", "info")

    def _show_working(self, working: bool, words: str = "") -> None:
        self.progress.setVisible(working)
        self.progress.setRange(0, 0)
        self.progress.setFormat(f"{words} %p %")
        self._body.setEnabled(not working)
        self.import_button.setEnabled(not working)
        self.cancel_button.setText("&Stop" if working else "Cancel")
        if working:
            self.cancel_button.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._count()

    def _connect(self) -> None:
        self.work.moved.connect(self._on_moved)
        self.details.decided.connect(self._on_decided)
        self.view.selectionModel().currentRowChanged.connect(self._on_current)
        self.for_all.activated.connect(lambda _: self.choose_for_all(self.for_all.currentData()))

    def _lay_out(self) -> None:
        self.view.setModel(self.shown)
        prepare_view(self.view, "Specs of the file")
        header = self.view.horizontalHeader()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for number, width in COLUMN_WIDTHS.items():
            self.view.setColumnWidth(number, width)
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        for choice, words in _FOR_ALL:
            self.for_all.addItem(words, choice)
        self._for_all_label = text_label("Those that differ:")
        self.for_all.setAccessibleName("What becomes of those that differ")
        self._top = QHBoxLayout()
        self._top.setSpacing(UNIT)
        self._top.addStretch(1)
        self._top.addWidget(self._for_all_label)
        self._top.addWidget(self.for_all)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.setHandleWidth(UNIT + HALF)
        splitter.addWidget(Card(self.view))
        splitter.addWidget(Card(self.details))
        splitter.setSizes([480, 440])
        self._body = QWidget()
        inner = QVBoxLayout(self._body)
        inner.setContentsMargins(0, 0, 0, 0)
        inner.setSpacing(UNIT)
        inner.addLayout(self._top)
        inner.addWidget(splitter, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(PAD, PAD, PAD, PAD)
        column.setSpacing(UNIT)
        files = spoken_list([each.file for each in self._texts[:3]], "and")
        more = len(self._texts) - 3
        title = f"{files} and {more} more" if more > 0 else files
        column.addWidget(text_label(title, TypeSize.SUBTITLE, wrap=True))
        column.addWidget(self.summary)
        column.addWidget(self._body, 1)
        column.addWidget(self.banner)
        column.addLayout(self._buttons())

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addWidget(self.progress, 1)
        row.addStretch(1)
        for each in (self.cancel_button, self.import_button):
            each.setAutoDefault(False)
            row.addWidget(each)
        return row


def preview_specs(window: MainWindow, texts: Sequence[NamedText]) -> None:
    """Show what documents would bring to the window's bar."""
    bar = window.bar
    beside = bar.beside

    def write(
        found: Preview, decisions: dict[int, Decision], progress: Progress
    ) -> Done[ImportedSpecs]:
        with beside() as own:  # a bar belongs to one thread
            return own.specs.import_previewed(found, decisions, progress)

    dialog = ImportSpecsDialog(texts, bar.snapshot, window.background, write, window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: _after(window, dialog.imported))
    dialog.open()


def _after(window: MainWindow, imported: ImportedSpecs | None) -> None:
    window.bar.refresh()
    if imported is None:
        return
    said = [(len(imported.added), "came in"), (len(imported.replaced), "replaced")]
    words = [f"{count:,} spec{'s' * (count != 1)} {verb}" for count, verb in said if count]
    window.toast.say(spoken_list(words, "and"), "Undo", window.undo)
    names = (*imported.added, *imported.replaced)
    if names:
        window.go("specs", names[0])
