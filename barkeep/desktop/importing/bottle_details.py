"""The pane beside a list of bottles: a row to repair as fields, any other as it was understood."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from barkeep.desktop.importing.bottle_rows import (
    BottleRow,
    level_of,
    opened_of,
    size_of,
    strength_of,
)
from barkeep.desktop.importing.repair_form import RepairForm
from barkeep.desktop.look.metrics import HALF, PAD, TypeSize
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.details import ScrolledPage, add_noted, grid_of_rows
from barkeep.desktop.widgets.labels import PictureLabel, copyable, text_label
from barkeep.desktop.widgets.layouts import at_top, column_of, row_of, wide
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.translation import tr, tr_noop

CHOICES = (
    ("skip", tr_noop("Leave out"), tr_noop("It is the bottle that is there; nothing comes in")),
    ("add", tr_noop("Add another"), tr_noop("It is one more bottle of the same product")),
)


class BottleDetails(QStackedWidget):
    """`decided` carries whether the row that is shown comes in beside what it looks like."""

    decided = Signal(bool)

    def __init__(self, tree: FamilyTree, *, teachable: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.form = RepairForm(tree, teachable=teachable)
        self.chips: FilterChips | None = None
        self._repair = ScrolledPage(tr("The row to repair"), 300)
        self._repair.show_page(self.form)
        self._facts = ScrolledPage(tr("The chosen row"), 300)
        for each in (self._facts, self._repair):
            self.addWidget(each)

    def show_row(self, row: BottleRow | None, typed: Mapping[str, str] | None) -> None:
        """Show one row, with what was typed for it before; or nothing."""
        self.chips = None
        if row is not None and row.group == "repair":
            self.form.show_row(row.listed, typed)
            self._repair.verticalScrollBar().setValue(0)
            self.setCurrentWidget(self._repair)
            return
        page = QWidget()
        column = column_of(on=page, margins=PAD)
        if row is not None:
            self._add(column, row)
        column.addStretch(1)
        self._facts.show_page(page)
        self.setCurrentWidget(self._facts)

    def focus_first(self) -> None:
        """Go to where something can be said of the row."""
        if self.currentWidget() is self._repair:
            said = self.form.focus_first()
            self.form.adjustSize()
            self._repair.ensureWidgetVisible(said, 0, PAD)
        elif self.chips is not None:
            self.chips.chip(self.chips.choice).setFocus(Qt.FocusReason.OtherFocusReason)

    def _add(self, column: QVBoxLayout, row: BottleRow) -> None:
        column.addWidget(text_label(row.title, TypeSize.SUBTITLE, wrap=True))
        column.addWidget(text_label(tr("Row {row}", row=row.listed.row), quiet=True))
        if row.there is not None:
            column.addWidget(text_label(_there(row.there), wrap=True))
            self.chips = FilterChips(tr("Do"), CHOICES, "add" if row.again else "skip")
            self.chips.chosen.connect(lambda choice: self.decided.emit(choice == "add"))
            column.addWidget(self.chips, 0, Qt.AlignmentFlag.AlignLeft)
            column.addSpacing(HALF)
        for remark in row.listed.remarks:
            picture = PictureLabel("info", 16, "info", tr("Remark"))
            column.addLayout(row_of(at_top(picture), wide(text_label(remark, wrap=True))))
        grid = grid_of_rows()
        for number, (label, said) in enumerate(_facts_of(row)):
            add_noted(grid, number, copyable(said), beside=text_label(label, quiet=True))
        column.addLayout(grid)


def _facts_of(row: BottleRow) -> Iterator[tuple[str, str]]:
    """What is known of the row, as it was understood."""
    bottle = row.listed.bottle
    if bottle is None:
        return
    yield tr("Ingredient"), row.ingredient
    facts = (
        (tr("Strength"), strength_of(row)),
        (tr("Size"), size_of(row)),
        (tr("Level"), level_of(row)),
        (tr("Opened"), opened_of(row)),
        (tr("Price"), "" if bottle.draft.price is None else f"{bottle.draft.price:.2f}"),
    )
    yield from ((label, said) for label, said in facts if said)


def _there(bottle: Bottle) -> str:
    left = quantity(bottle.level.amount, bottle.product.unit)
    return tr("It looks like the bottle that is there already, with {left} left.", left=left)
