"""Count, pour from, waste or correct one bottle, with what would be left drawn beside it."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from barkeep.application.done import Done
from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.dialogs.level_task import LevelTask, Outcome
from barkeep.desktop.metrics import UNIT
from barkeep.desktop.models.bottle_words import left_of
from barkeep.desktop.operations import run_operation
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.level_drawing import LevelReading
from barkeep.desktop.widgets.level_gauge import LevelGauge
from barkeep.errors import UserError

AMOUNT, NOTE = "amount", "note"
WIDTH = 520


class LevelDialog(FormDialog):
    """`done_with` carries the sentence to say once the change is written."""

    done_with = Signal(str)

    def __init__(self, task: LevelTask, parent: QWidget | None = None) -> None:
        super().__init__(task.title, task.verb, parent)
        self.task = task
        self.amount = QLineEdit()
        self.note = QLineEdit()
        self.outcome = text_label("", wrap=True)
        self.gauge = LevelGauge(editable=task.from_gauge)
        self._add_fields()
        self._draw(None)
        self.setMinimumWidth(WIDTH)
        self.amount.textChanged.connect(self._show_outcome)
        self.gauge.picked.connect(self._take_share)

    def submit(self) -> None:
        text, note = self.amount.text(), self.note.text().strip()
        if not text.strip():
            self.refuse(AMOUNT, f"Write an amount {_lower(self.task.hint)}.")
        else:
            self.read(AMOUNT, lambda: self.task.preview(text))
        if self.has_problems():
            return
        run_operation(self, lambda: self.task.perform(text, note), self._finish)

    def field_of(self, error: UserError) -> str | None:
        return AMOUNT  # whatever is refused here, it is the amount

    def _add_fields(self) -> None:
        intro = f"The ledger says {left_of(self.task.bottle)}"
        self.say_intro(f"{intro}. {self.task.help}" if self.task.help else intro)
        self.amount.setPlaceholderText(self.task.hint)
        self.add_field(AMOUNT, self.task.label, self.amount)
        if self.task.noted:
            self.note.setPlaceholderText("Optional")
            self.add_field(NOTE, "&Note", self.note)
        self.form.addWidget(self.outcome, 8, 1, 1, 2)
        holder = QVBoxLayout()
        holder.setSpacing(UNIT)
        holder.addWidget(self.gauge)
        holder.addStretch(1)
        self.body.insertLayout(0, holder)
        self.amount.setFocus()

    def _show_outcome(self, text: str) -> None:
        """What the text would come to; while it is being typed, a mistake is no mistake yet."""
        try:
            outcome = self.task.preview(text) if text.strip() else None
        except UserError:
            outcome = None
        self._draw(outcome)

    def _draw(self, outcome: Outcome | None) -> None:
        bottle = self.task.bottle
        sealed = bottle.level.state == "sealed"
        if outcome is None:
            self.gauge.show_reading(LevelReading(bottle.share, sealed=sealed), left_of(bottle))
            self.outcome.setText("")
            return
        share = outcome.level / bottle.product.size
        doubt = outcome.doubt / bottle.product.size
        self.gauge.show_reading(LevelReading(share, bottle.share, doubt), outcome.words)
        self.outcome.setText(outcome.words)

    def _take_share(self, share: float) -> None:
        self.amount.setText(f"{share:g}")
        self.forgive(AMOUNT)

    def _finish(self, _done: Done[Any]) -> None:
        said = self.task.said(self.amount.text())
        self.accept()
        self.done_with.emit(said)


def _lower(hint: str) -> str:
    return hint[:1].lower() + hint[1:]
