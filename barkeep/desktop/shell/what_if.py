"""What if: what the bar should be like on paper, while every page answers as if it were."""

from __future__ import annotations

from PySide6.QtWidgets import QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.on_paper import read_on_paper
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.operations import run_operation
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

WITH, WITHOUT = "with", "without"
INTRO = tr_noop(
    "Every page then answers as if the bar were like this. Nothing of it is written, and nothing "
    "else can be, until you go back: F4."
)
WITH_HINT = tr_noop("Kinds or products, one after a semicolon: vodka; Lamp Room dry gin")
WITHOUT_HINT = tr_noop("Bottles by name or number, or all of a kind: #12; lemon juice")
WIDTH = 520


class WhatIfDialog(FormDialog):
    """`likely` is what is in both fields to begin with."""

    def __init__(self, bar: Bar, likely: tuple[str, str], parent: QWidget | None = None) -> None:
        super().__init__(tr("What if"), tr("Show it so"), parent)
        self._bar = bar
        self.also, self.gone = QLineEdit(likely[0]), QLineEdit(likely[1])
        self.say_intro(tr(INTRO))
        self.add_field(WITH, tr("As if there &were also"), self.also, hint=tr(WITH_HINT))
        self.add_field(WITHOUT, tr("As if there were &not"), self.gone, hint=tr(WITHOUT_HINT))
        self.setMinimumWidth(dialog_width(WIDTH))
        (self.gone if likely[1] else self.also).setFocus()

    def submit(self) -> None:
        self.clear_refusal()
        also, gone = _several(self.also), _several(self.gone)
        bar = self._bar.snapshot
        self.read(WITH, lambda: read_on_paper(bar, bought=also))
        self.read(WITHOUT, lambda: read_on_paper(bar, gone=gone))
        if not self.has_problems():
            run_operation(self, lambda: self._bar.what_if(also, gone), lambda _paper: self.accept())

    def field_of(self, error: UserError) -> str | None:
        return super().field_of(error) or WITH


def _several(field: QLineEdit) -> list[str]:
    return [each.strip() for each in field.text().split(";") if each.strip()]
