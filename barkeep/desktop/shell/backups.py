"""The bar's backups in the window: listed, made, and one put in the bar's place."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QGridLayout,
    QTableView,
    QWidget,
)

from barkeep.application.backups import compare, restore
from barkeep.application.kept_backups import (
    Comparison,
    KeptBackup,
    Restored,
    in_words,
    last_change,
    said_at,
)
from barkeep.desktop.look.metrics import PAD, UNIT, TypeSize
from barkeep.desktop.screens.list_stack import ListStack, prepare_view, set_widths
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys, button, offer, primary_button
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.domain.bar.backups import ALL_OF_DAYS, ONE_OF_WEEKS
from barkeep.store.holdings import Holdings
from barkeep.translation import tr, tr_about, tr_noop

QUESTION = "backups"
FILES = tr_noop("Bars and documents of a whole bar (*.barkeep *.json);;All files (*)")
HOW = tr_noop(
    "One is kept before the first change of each day and before each import: all of the last "
    "{days} days, then one of each of {weeks} weeks, then one of every month. "
    "Those you asked for stay. They are kept in {folder}."
)
KEPT_FIRST = tr_noop(
    "What the bar holds now is kept as a backup first. Undo goes no further back than it does in "
    "what is put in its place."
)


def _columns() -> tuple[Column[KeptBackup], ...]:
    """When, why, size, what is in it, what was changed last."""
    return (
        Column(tr_about("a backup", "Made"), lambda row: said_at(row.at), key=lambda row: row.at),
        Column(tr("Why"), lambda row: row.why),
        Column(
            tr("Size"),
            lambda row: tr("{size:.0f} kB", size=row.size / 1000),
            lambda row: row.size,
            right=True,
        ),
        Column(tr("What is in it"), _held, tooltip=_held),
        Column(tr("Changed last"), _changed, tooltip=_changed),
    )


def _held(row: KeptBackup) -> str:
    return row.problem if row.holds is None else in_words(row.holds)


def _changed(row: KeptBackup) -> str:
    return "" if row.holds is None else last_change(row.holds)


class BackupsDialog(RefusedInBanner, QDialog):
    """A table of the bar's backups; `may_replace` asks whether something unsaved may be lost."""

    def __init__(
        self, context: ScreenContext, may_replace: Callable[[], bool], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Backups"))
        self._context, self._bar = context, context.bar
        self._may_replace = may_replace
        self.table: RowTable[KeptBackup] = RowTable(_columns(), self)
        self.view = QTableView()
        self.view.setModel(self.table)
        prepare_view(self.view, tr("Backups"))
        self.view.setSortingEnabled(False)
        self.stack = ListStack(
            self.view,
            EmptyState(
                "picture-empty-shelf", tr("No backup yet"), tr("Back up now makes the first.")
            ),
            EmptyState.no_match(tr_noop("backups")),
        )
        self.where = text_label("", quiet=True, wrap=True)
        self.banner = Banner()
        self.make_button = primary_button(tr("Back &up now"), self.make, "check")
        self.restore_button = button(tr("&Restore…"), self.restore_chosen)
        self.file_button = button(tr("Restore a &file…"), self.restore_file)
        self.where_button = button(tr("&Where they are kept…"), self.choose_folder)
        self.beside_button = button(tr("Keep them &beside the bar"), partial(self.keep_in, ""))
        self.close_button = button(tr("C&lose"), self.reject)
        self._lay_out()
        self.renew()

    # What the user does

    def make(self) -> None:
        """Keep a backup now."""
        self._ask(
            self._bar.backups.make, lambda path: self._said(tr("Backed up to {path}", path=path))
        )

    def restore_chosen(self) -> None:
        """Set the chosen backup beside the bar, and ask."""
        row = self.view.currentIndex().row()
        if row >= 0:
            self._compare(self.table.rows[row].path)

    def restore_file(self) -> None:
        """Set a bar or a document in another file beside the bar, and ask."""
        folder = str(self._bar.offered("").parent)
        name, _kind = QFileDialog.getOpenFileName(self, tr("Restore a file"), folder, tr(FILES))
        if name:
            self._compare(Path(name))

    def choose_folder(self) -> None:
        """Ask for the folder in which the backups are kept from now on."""
        present = str(self._bar.backups.folder.parent)
        name = QFileDialog.getExistingDirectory(self, tr("Where backups are kept"), present)
        if name:
            self.keep_in(name)

    def keep_in(self, folder: str) -> None:
        """Keep the backups in this folder from now on; empty for the one beside the bar."""
        seen = self._bar.snapshot.settings
        wanted = replace(seen, backups=folder)
        change = self._bar.settings.change
        run_operation(self, lambda: change(wanted, seen), lambda _done: self.renew())

    def renew(self) -> None:
        """List what there is now."""
        kept = self._bar.backups.listed()
        self.table.show_rows(kept)
        self.stack.show_counts(len(kept), len(kept))
        folder = self._bar.backups.folder
        self.where.setText(
            tr(
                HOW,
                days=ALL_OF_DAYS,
                weeks=ONE_OF_WEEKS,
                folder=str(folder).replace("/", "/\u200b"),
            )
        )
        self.beside_button.setVisible(bool(self._bar.snapshot.settings.backups))
        if kept:
            self.view.selectRow(0)
        read_only = tr("The bar is read-only") if self._bar.is_read_only else ""
        offer(self.restore_button, read_only or ("" if kept else tr("There is no backup yet")))
        for each in (self.file_button, self.where_button, self.beside_button):
            offer(each, read_only)

    # Inside

    def _compare(self, file: Path) -> None:
        self._ask(partial(compare, self._bar.at, file), self._ask_whether)

    def _ask_whether(self, found: Comparison) -> None:
        if not self.isVisible():
            return
        question = RestoreDialog(found, self)
        question.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        question.agreed.connect(partial(self._restore, found.file))
        question.open()

    def _restore(self, file: Path) -> None:
        if self._may_replace():
            folder = self._bar.backups.folder
            self._ask(partial(restore, self._bar.at, file, folder), self._restored)

    def _restored(self, done: Restored) -> None:
        self._bar.refresh()
        said = tr("The bar holds {things} now.", things=in_words(done.comparison.then))
        if done.kept:
            kept = tr("What was there is kept as {name}.", name=done.kept.name)
            said = f"{said} {kept}"
        self._said(said)

    def _said(self, words: str) -> None:
        self.renew()
        self.banner.say(words, "done")

    def _ask(self, question: Callable[[], object], show: Callable[..., object]) -> None:
        """Do what takes longer than a frame off the GUI thread."""
        self.clear_refusal()
        self._context.background.ask(QUESTION, question, show, self.show_refusal)

    def _lay_out(self) -> None:
        self.view.doubleClicked.connect(lambda _index: self.restore_chosen())
        buttons = (self.restore_button, self.file_button, self.where_button, self.beside_button)
        for each in (*buttons, self.close_button):
            each.setAutoDefault(False)
        column_of(
            text_label(self.windowTitle(), TypeSize.SUBTITLE),
            self.where,
            wide(Card(self.stack)),
            self.banner,
            row_of(*buttons, SPRING, self.close_button, self.make_button),
            on=self,
            margins=DIALOG,
            gap=PAD,
        )
        self.resize(960, 520)
        set_widths(self.view, (128, 104, 64, 240))
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)


class RestoreDialog(QDialog):
    """The bar and what would be put in its place, side by side; `agreed` where it shall be."""

    agreed = Signal()

    def __init__(self, found: Comparison, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Restore"))
        self.restore_button = button(tr("&Restore"), self._agree)
        self.cancel_button = primary_button(tr("Cancel"), self.reject)
        self.restore_button.setAutoDefault(False)
        self.cancel_button.setDefault(True)
        words = " ".join(filter(None, (found.problem, tr(KEPT_FIRST))))
        column_of(
            text_label(tr("Put this in the bar’s place?"), TypeSize.SUBTITLE),
            _side_by_side(found),
            text_label(words, quiet=True, wrap=True),
            row_of(SPRING, self.restore_button, self.cancel_button),
            on=self,
            margins=DIALOG,
            gap=PAD,
        )
        self.setMinimumWidth(760)

    def _agree(self) -> None:
        self.accept()
        self.agreed.emit()


def comparison_rows(found: Comparison) -> Sequence[tuple[str, str, str]]:
    """Bottles, products, specs and shoots, and the last change: of the bar, and of the other."""
    rows = [
        (words, _count(found.now, counted), _count(found.then, counted))
        for counted, words in (
            ("bottles", tr("Bottles")),
            ("products", tr("Products")),
            ("specs", tr("Specs")),
            ("shoots", tr("Shoots")),
        )
    ]
    before, after = ("" if each is None else last_change(each) for each in (found.now, found.then))
    heads = ("", tr("The bar as it is"), found.file.name)
    return [heads, *rows, (tr("Changed last"), before, after)]


def _count(holds: Holdings | None, word: str) -> str:
    return "" if holds is None else str(getattr(holds, word))


def _side_by_side(found: Comparison) -> QGridLayout:
    grid = QGridLayout()
    grid.setHorizontalSpacing(PAD)
    grid.setVerticalSpacing(UNIT)
    for row, cells in enumerate(comparison_rows(found)):
        for column, text in enumerate(cells):
            size = TypeSize.STRONG if row == 0 else TypeSize.BODY
            label = text_label(text, size, quiet=column == 0, wrap=column > 0)
            grid.addWidget(label, row, column, Qt.AlignmentFlag.AlignTop)
            grid.setColumnStretch(column, int(column > 0))
    return grid
