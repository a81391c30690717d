"""Bring bottles in from CSV files: everything is shown before anything is written."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QTableView, QWidget

from barkeep.application.done import Done
from barkeep.application.imports import ImportedBottles
from barkeep.desktop.ingredients.own_ingredient import Way
from barkeep.desktop.ingredients.teaching import Teach, teach_buttons, teach_by_keys, teacher
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.documents.bottles_csv import BottlesFile, ListedBottle, read_bottles_csv
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import Problem, UnusableFile, UserError, spoken_list

ReadAgain = Callable[[Snapshot], BottlesFile]
"""Reads the same file with what a bar knows now."""
Write = Callable[[Sequence[ListedBottle], str], Done[ImportedBottles]]

_PROBLEMS: tuple[Column[Problem], ...] = (
    Column("Line", lambda problem: str(problem.line), right=True),
    Column("Field", lambda problem: str(problem.column), right=True),
    Column("What is wrong", lambda problem: problem.message),
)


class ImportDialog(RefusedInBanner, QDialog):
    """One file's bottles, or all that is wrong with it; of such a file nothing comes in.

    `imported` is what came in, once it has.
    """

    def __init__(
        self,
        *,
        file: str,
        found: BottlesFile,
        tree: FamilyTree,
        write: Write,
        parent: QWidget | None = None,
        again: ReadAgain | None = None,
        teach: Teach | None = None,
    ) -> None:
        super().__init__(parent)
        self._again, self._teach = again, teach
        self.setWindowTitle("Import bottles")
        self.resize(720, 480)
        self.imported: ImportedBottles | None = None
        self._file, self._found, self._write = file, found, write
        self._problems: tuple[Problem, ...] = ()
        self.banner = Banner(closable=False)
        self.view = QTableView()
        self.close_button = button("Cancel", self.reject)
        self.import_button = primary_button("&Import", self._import)
        self.teach_buttons = tuple(teach_buttons("", lambda _words, way: self.teach(way)))
        self._lay_out()
        teach_by_keys(self, self.teach)
        self._show_found(tree)

    def show_refusal(self, error: UserError) -> None:
        """Say why nothing came in; problems of rows take the place of the rows."""
        if isinstance(error, UnusableFile):
            self._show_problems(error.problems)
        else:
            super().show_refusal(error)

    def teach(self, way: Way = "new") -> None:
        """Ask what the unknown words of the chosen problem are; then read the file again."""
        if self._teach is not None and self._unknown:
            self._teach(self, self._unknown, way, self._learn)

    @property
    def _unknown(self) -> str:
        """The words of the chosen problem that name no ingredient."""
        place = self.view.currentIndex().row()
        problem = self._problems[place] if 0 <= place < len(self._problems) else None
        return (problem.unknown or "") if problem is not None else ""

    def _learn(self, snapshot: Snapshot) -> None:
        if self._again is not None:
            self._found = self._again(snapshot)
            self.banner.clear()
            self._show_found(snapshot.knowledge.tree)
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_found(self, tree: FamilyTree) -> None:
        if self._found.problems:
            self._show_problems(self._found.problems)
        else:
            self._show_bottles(tree)

    def _import(self) -> None:
        run_operation(self, lambda: self._write(self._found.rows, self._file), self._done)

    def _done(self, done: Done[ImportedBottles]) -> None:
        self.imported = done.value
        self.accept()

    def _show_bottles(self, tree: FamilyTree) -> None:
        self._problems = ()
        self._show(_bottle_columns(tree), self._found.rows, f"Bottles in {self._file}")
        count = len(self._found.rows)
        self.import_button.setText(f"&Import {count} bottle{'s' * (count != 1)}")
        self.import_button.setVisible(bool(self._found.rows))
        self.close_button.setText("Cancel")
        if not self._found.rows:
            self.banner.say("There is no bottle in this file.", "info")
        elif self._found.ignored:
            columns = spoken_list([f"“{each}”" for each in self._found.ignored], "and")
            self.banner.say(f"Nothing is read from {columns}.", "info")

    def _show_problems(self, problems: Sequence[Problem]) -> None:
        self._problems = tuple(problems)
        self._show(_PROBLEMS, problems, f"Problems of {self._file}")
        places = "one place" if len(problems) == 1 else f"{len(problems)} places"
        words = f"Nothing was imported: the file cannot be used in {places}."
        self.banner.say(words, "error")
        self.import_button.hide()
        self.close_button.setText("C&lose")

    def _show(self, columns: Sequence[Column[Any]], rows: Sequence[Any], name: str) -> None:
        table: RowTable[Any] = RowTable(columns, self)
        table.show_rows(rows)
        self.view.setModel(table)
        prepare_view(self.view, name)
        self.view.setSortingEnabled(False)
        self.view.setWordWrap(True)
        self.view.resizeColumnsToContents()
        self.view.resizeRowsToContents()
        self.view.selectionModel().currentRowChanged.connect(lambda *_: self._offer_teaching())
        self.view.selectRow(0)
        self._offer_teaching()

    def _offer_teaching(self) -> None:
        for each in self.teach_buttons:
            each.setVisible(bool(self._unknown))

    def _lay_out(self) -> None:
        column_of(
            text_label(self._file, TypeSize.SUBTITLE, wrap=True),
            self.banner,
            wide(Card(self.view)),
            row_of(*self.teach_buttons, SPRING, self.close_button, self.import_button),
            on=self,
            margins=PAD,
        )


def _bottle_columns(tree: FamilyTree) -> tuple[Column[ListedBottle], ...]:
    return (
        Column("Product", lambda row: row.draft.name),
        Column("Maker", lambda row: row.draft.maker),
        Column("Ingredient", lambda row: tree[row.draft.ingredient].name),
        Column("Size", lambda row: show_quantity(row.draft.size, row.draft.unit), right=True),
        Column("Level", _level, right=True),
        Column("Opened", lambda row: "" if row.opened is None else f"{row.opened:%Y-%m-%d}"),
    )


def _level(row: ListedBottle) -> str:
    if row.level is None:
        return "full"
    return show_quantity(row.level.amount, row.draft.unit)


def preview_bottles(context: ScreenContext, file: str, text: str, parent: QWidget) -> None:
    """Show a list of bottles before they come in."""
    bar = context.bar

    def read(snapshot: Snapshot) -> BottlesFile:
        return read_bottles_csv(text, snapshot.knowledge.tree, snapshot.settings.units)

    dialog = ImportDialog(
        file=file,
        found=read(bar.snapshot),
        tree=bar.snapshot.knowledge.tree,
        write=bar.imports.bottles,
        parent=parent,
        again=read,
        teach=teacher(bar),
    )

    def say() -> None:
        if dialog.imported is not None:
            count = dialog.imported.bottles
            words = f"{count} bottle{'s' * (count != 1)} came in"
            context.toast.say(words, "Undo", context.undo)

    dialog.accepted.connect(say)
    dialog.open()
