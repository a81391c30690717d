"""Bring bottles in from CSV files: everything is shown before anything is written."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtWidgets import QDialog, QTableView, QWidget

from barkeep.application.done import Done
from barkeep.application.imports import ImportedBottles
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
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import Problem, UnusableFile, UserError, spoken_list

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
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle("Import bottles")
        self.resize(720, 480)
        self.imported: ImportedBottles | None = None
        self._file, self._found, self._write = file, found, write
        count = len(found.rows)
        self.banner = Banner(closable=False)
        self.view = QTableView()
        self.close_button = button("Cancel", self.reject)
        words = f"&Import {count} bottle{'s' * (count != 1)}"
        self.import_button = primary_button(words, self._import)
        self._lay_out()
        if found.problems:
            self._show_problems(found.problems)
        else:
            self._show_bottles(tree)

    def show_refusal(self, error: UserError) -> None:
        """Say why nothing came in; problems of rows take the place of the rows."""
        if isinstance(error, UnusableFile):
            self._show_problems(error.problems)
        else:
            super().show_refusal(error)

    def _import(self) -> None:
        run_operation(self, lambda: self._write(self._found.rows, self._file), self._done)

    def _done(self, done: Done[ImportedBottles]) -> None:
        self.imported = done.value
        self.accept()

    def _show_bottles(self, tree: FamilyTree) -> None:
        self._show(_bottle_columns(tree), self._found.rows, f"Bottles in {self._file}")
        self.import_button.setVisible(bool(self._found.rows))
        if not self._found.rows:
            self.banner.say("There is no bottle in this file.", "info")
        elif self._found.ignored:
            columns = spoken_list([f"“{each}”" for each in self._found.ignored], "and")
            self.banner.say(f"Nothing is read from {columns}.", "info")

    def _show_problems(self, problems: Sequence[Problem]) -> None:
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
        self.view.selectRow(0)

    def _lay_out(self) -> None:
        column_of(
            text_label(self._file, TypeSize.SUBTITLE, wrap=True),
            self.banner,
            wide(Card(self.view)),
            row_of(SPRING, self.close_button, self.import_button),
            on=self,
            margins=PAD,
        )


def _bottle_columns(tree: FamilyTree) -> tuple[Column[ListedBottle], ...]:
    return (
        Column("Product", lambda row: row.draft.name),
        Column("Maker", lambda row: row.draft.maker),
        Column("Ingredient", lambda row: tree.name(row.draft.ingredient)),
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
    tree = bar.snapshot.knowledge.tree
    found = read_bottles_csv(text, tree, bar.snapshot.settings.units)
    dialog = ImportDialog(
        file=file, found=found, tree=tree, write=bar.imports.bottles, parent=parent
    )

    def say() -> None:
        if dialog.imported is not None:
            count = dialog.imported.bottles
            words = f"{count} bottle{'s' * (count != 1)} came in"
            context.toast.say(words, "Undo", context.undo)

    dialog.accepted.connect(say)
    dialog.open()
