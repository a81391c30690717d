"""Bring bottles in from CSV files: everything is shown before anything is written."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QTableView, QVBoxLayout, QWidget

from barkeep.application.done import Done
from barkeep.application.imports import Imported
from barkeep.desktop.metrics import PAD, UNIT, TypeSize
from barkeep.desktop.models.row_table import Column, RowTable
from barkeep.desktop.operations import run_operation
from barkeep.desktop.screens.list_stack import prepare_view
from barkeep.desktop.widgets.banner import Banner
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.card import Card
from barkeep.desktop.widgets.labels import text_label
from barkeep.documents.bottles_csv import BottleRow, BottlesFile, read_bottles_csv
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.measures import show_quantity
from barkeep.errors import Problem, UnreadableFile, UnusableFile, UserError, spoken_list

if TYPE_CHECKING:
    from barkeep.desktop.main_window import MainWindow

LARGEST_BYTES = 4 * 1024 * 1024


def import_files(window: MainWindow, files: Sequence[Path]) -> None:
    """Show each file's bottles, one dialog after another; each is imported on its own."""
    if not files:
        return
    first, *rest = files
    run_operation(
        window,
        lambda: read_file(first),
        lambda text: _preview(window, first, text, rest),
        lambda error: _refuse(window, error, rest),
    )


def read_file(path: Path) -> str:
    """The text of a file. Raises `UnreadableFile`."""
    try:
        if path.stat().st_size > LARGEST_BYTES:
            raise UnreadableFile(path.name, "it is too large for a list of bottles")
        return path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError:
        raise UnreadableFile(path.name, "it is not UTF-8 text") from None
    except OSError as error:
        raise UnreadableFile(path.name, error.strerror or "it cannot be read") from None


class ImportDialog(QDialog):
    """One file's bottles, or everything that is wrong with it; nothing of such a file comes in."""

    def __init__(
        self, file: str, found: BottlesFile, tree: FamilyTree, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle("Import bottles")
        self.resize(720, 480)
        self.banner = Banner(closable=False)
        self.view = QTableView()
        self._describe(file, found, tree)
        column = QVBoxLayout(self)
        column.setContentsMargins(PAD, PAD, PAD, PAD)
        column.setSpacing(UNIT)
        column.addWidget(text_label(file, TypeSize.SUBTITLE, wrap=True))
        column.addWidget(self.banner)
        column.addWidget(Card(self.view), 1)
        column.addLayout(self._buttons(found))
        self.view.resizeColumnsToContents()

    def show_refusal(self, error: UserError) -> None:
        """Say why nothing came in; the problems of rows take the place of the rows."""
        if isinstance(error, UnusableFile):
            self._show_problems(error.problems)
        else:
            self.banner.say(str(error), "error")

    def clear_refusal(self) -> None:
        """Nothing to take away: the dialog closes when all is well."""

    def _describe(self, file: str, found: BottlesFile, tree: FamilyTree) -> None:
        if found.problems:
            self._show_problems(found.problems)
            return
        self._show(RowTable(_bottle_columns(tree), self), found.rows, f"Bottles of {file}")
        if found.ignored:
            columns = spoken_list([f"“{each}”" for each in found.ignored], "and")
            self.banner.say(f"These columns mean nothing here: {columns}.", "info")

    def _show_problems(self, problems: Sequence[Problem]) -> None:
        count = len(problems)
        self._show(RowTable(_PROBLEM_COLUMNS, self), problems, "Problems")
        places = "one place" if count == 1 else f"{count} places"
        words = f"Nothing was imported: the file cannot be used in {places}. Mend it, try again."
        self.banner.say(words, "error")
        self.import_button.setEnabled(False) if hasattr(self, "import_button") else None

    def _show(self, table: RowTable, rows: Sequence[object], name: str) -> None:  # type: ignore[type-arg]
        table.show_rows(rows)
        self.view.setModel(table)
        prepare_view(self.view, name)
        self.view.setSortingEnabled(False)

    def _buttons(self, found: BottlesFile) -> QHBoxLayout:
        count = len(found.rows)
        words = f"&Import {count} bottle{'s' * (count != 1)}"
        self.import_button = primary_button(words, self.accept)
        self.import_button.setVisible(not found.problems and count > 0)
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addStretch(1)
        row.addWidget(button("Cancel" if not found.problems else "C&lose", self.reject))
        row.addWidget(self.import_button)
        return row
