"""Correct what the label of a product says; all its bottles follow."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from barkeep.application.done import Done
from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.dialogs.label_fields import LabelFields
from barkeep.desktop.operations import run_operation
from barkeep.domain.inventory import Product
from barkeep.errors import DuplicateName, LevelAboveSize, UnknownName, UserError

if TYPE_CHECKING:
    from barkeep.application.bar import Bar

WIDTH = 560
INTRO = "What is written here counts for every bottle of it. The shape is for measuring by height."


class ChangeLabelDialog(FormDialog):
    """`done_with` carries the sentence to say once the change is written."""

    done_with = Signal(str)

    def __init__(self, bar: Bar, product: Product, parent: QWidget | None = None) -> None:
        super().__init__("Change the label", "Change", parent)
        self._bar, self._product = bar, product
        self.label = LabelFields(self, bar.snapshot, with_acid=True)
        self.edits = self.label.edits
        self.label.choose_ingredient(product.ingredient)
        self.label.fill(product)
        self.say_intro(INTRO)
        self.setMinimumWidth(WIDTH)
        self.edits["name"].setFocus()

    def submit(self) -> None:
        draft = self.label.read()
        if draft is None:
            self.has_problems()
            return
        product = self._product
        wanted = replace(draft, density_g_per_ml=product.density_g_per_ml)
        change = self._bar.inventory.change_product
        run_operation(self, lambda: change(product.id, wanted), self._finish)

    def field_of(self, error: UserError) -> str | None:
        match error:
            case UnknownName():
                return "ingredient"
            case DuplicateName():
                return "name"
            case LevelAboveSize():
                return "size"
        return super().field_of(error)

    def _finish(self, done: Done[Product]) -> None:
        self.accept()
        if done.changes:
            self.done_with.emit(f"Changed the label of {done.value.title}")
