"""What stands in for an ingredient and what it stands in for, one row each."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from barkeep.application.own_ingredients import (
    STAND_IN_CLOSENESS,
    STAND_IN_RATIO,
    STAND_IN_WHY,
)
from barkeep.desktop.look.metrics import HALF
from barkeep.desktop.screens.form_dialog import read_number
from barkeep.desktop.screens.name_completion import NameCompleter, Offers
from barkeep.desktop.widgets.buttons import quiet_button
from barkeep.desktop.widgets.layouts import column_of, row_of, wide
from barkeep.desktop.widgets.terms import explain
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import InvalidField
from barkeep.translation import tr, tr_noop

STAND_INS = tr_noop("stand-ins")
INSTEAD, FOR = "instead", "for"
WAYS = ((tr_noop("Instead of it"), INSTEAD), (tr_noop("It instead of"), FOR))
WHICH = tr_noop("say which ingredient, or take the row away")


class StandInRow(QWidget):
    """One row; `written` comes once a name is begun in it, `unwanted` when it is to go.

    What it began from keeps what the row does not show.
    """

    written = Signal()
    unwanted = Signal()

    def __init__(self, number: int, names: Offers, parent: QWidget) -> None:
        super().__init__(parent)
        self._from: StandIn | None = None
        self.way = QComboBox()
        for words, way in WAYS:
            self.way.addItem(tr(words), way)
        self.name, self.closeness, self.ratio, self.why = (QLineEdit() for _ in range(4))
        for edit, named, example, letters in (
            (self.name, tr("ingredient"), tr("Begin to type a name"), 0),
            (
                self.closeness,
                tr("closeness"),
                tr("{closeness:g} close", closeness=STAND_IN_CLOSENESS),
                9,
            ),
            (self.ratio, tr("ratio"), tr("{ratio:g} to 1", ratio=STAND_IN_RATIO), 7),
            (self.why, tr("why"), tr("Why, in a few words"), 0),
        ):
            edit.setAccessibleName(tr("Stand-in {number}: {named}", number=number, named=named))
            edit.setPlaceholderText(example)
            if letters:
                edit.setFixedWidth(letters * edit.fontMetrics().averageCharWidth() + 32)
        self.way.setAccessibleName(tr("Stand-in {number}: which way", number=number))
        self.name.setCompleter(NameCompleter(names, self.name))
        self.name.textChanged.connect(lambda text: self.written.emit() if text else None)
        self.ratio.setToolTip(tr("How much replaces one part"))
        self.closeness.setToolTip(tr("How close it is, up to 1, which tastes the same"))
        explain(self.closeness, "closeness")
        self.away = quiet_button(
            "remove", tr("Take stand-in {number} away", number=number), self.unwanted.emit
        )
        row_of(
            self.way,
            wide(self.name),
            self.closeness,
            self.ratio,
            wide(self.why),
            self.away,
            on=self,
            gap=HALF,
        )

    @property
    def is_empty(self) -> bool:
        """Whether nothing is written in it."""
        return not any(each.text().strip() for each in self._edits)

    def show_entry(self, entry: StandIn, key: str, tree: FamilyTree) -> None:
        """Show what is said already."""
        self._from = entry
        is_for = entry.offered == key
        self.way.setCurrentIndex(self.way.findData(FOR if is_for else INSTEAD))
        self.name.setText(tree.name(entry.wanted if is_for else entry.offered))
        self.closeness.setText(f"{entry.closeness:g}")
        self.ratio.setText(f"{entry.ratio:g}")
        self.why.setText(entry.why)

    def read(self, key: str) -> StandIn:
        """What it says of the ingredient with this key. Raises `InvalidField`."""
        name = self.name.text().strip()
        if not name:
            raise InvalidField(STAND_INS, "", WHICH)
        closeness = read_number(STAND_INS, self.closeness.text(), f"{STAND_IN_CLOSENESS:g}")
        ratio = read_number(STAND_INS, self.ratio.text(), "0.75")
        is_for = self.way.currentData() == FOR
        said = StandIn(
            wanted=name if is_for else key,
            offered=key if is_for else name,
            closeness=STAND_IN_CLOSENESS if closeness is None else closeness,
            ratio=STAND_IN_RATIO if ratio is None else ratio,
            why=self.why.text().strip() or STAND_IN_WHY,
        )
        return replace(said, scope=self._from.scope) if self._from is not None else said

    @property
    def _edits(self) -> tuple[QLineEdit, ...]:
        return (self.name, self.closeness, self.ratio, self.why)


class StandInRows(QWidget):
    """Grows by an empty row as soon as the last is written in; `grown` comes then."""

    grown = Signal()

    def __init__(self, names: Offers, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._names, self._made = names, 0
        self.rows: list[StandInRow] = []
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)  # or its label's letter would not lead here
        self._column = column_of(on=self, gap=HALF)
        self._add_row()

    def show_entries(self, entries: Iterable[StandIn], key: str, tree: FamilyTree) -> None:
        """Show what is said already, and an empty row."""
        for entry in entries:
            self.rows[-1].show_entry(entry, key, tree)

    def read(self, key: str) -> tuple[StandIn, ...]:
        """All that is said of the ingredient with this key. Raises `InvalidField`."""
        return tuple(row.read(key) for row in self.rows if not row.is_empty)

    def _add_row(self) -> None:
        self._made += 1
        row = StandInRow(self._made, self._names, self)
        row.written.connect(lambda: self._on_written(row))
        row.unwanted.connect(lambda: self._take_away(row))
        self.rows.append(row)
        self._column.addWidget(row)
        row.show()  # at once, so that Tab comes to it
        row.away.setEnabled(False)
        if len(self.rows) == 1:
            self.setFocusProxy(row.name)

    def _on_written(self, row: StandInRow) -> None:
        row.away.setEnabled(True)
        if row is self.rows[-1]:
            self._add_row()
            self.grown.emit()

    def _take_away(self, row: StandInRow) -> None:
        self.rows.remove(row)
        row.hide()
        row.deleteLater()
        self.setFocusProxy(self.rows[0].name)
        self.rows[0].name.setFocus()
