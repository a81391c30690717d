"""Trials on a spec's page: how each tasted, and what can be done with it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from barkeep.application.done import Done
from barkeep.desktop.dialogs.trial_dialog import TrialDialog
from barkeep.desktop.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.models.family_view import TrialRow, in_brief, trial_rows
from barkeep.desktop.operations import run_operation
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.flow_layout import FlowLayout
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.sections import add_heading, selectable
from barkeep.domain.specs import Spec
from barkeep.domain.trials import Trial

if TYPE_CHECKING:
    from barkeep.desktop.screens.specs import SpecsScreen

SHOWN_AT_FIRST = 4
NO_TRIALS = "No trial yet. Taste it, and write down what each taster made of it."


class TrialsSection(QWidget):
    """The trials of one spec, newest first; older ones come when they are asked for."""

    def __init__(
        self, rows: Sequence[TrialRow], work: TrialWork, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._work = work
        self._blocks: list[_TrialBlock] = []
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(HALF)
        add_heading(self._column, "Trials")
        words = in_brief([row.trial for row in rows]) or NO_TRIALS
        self._column.addWidget(selectable(text_label(words, quiet=True, wrap=True)))
        self._rows = QVBoxLayout()
        self._rows.setSpacing(HALF)
        self._column.addLayout(self._rows)
        for row in rows[:SHOWN_AT_FIRST]:
            self._add_block(row)
        self._older = tuple(rows[SHOWN_AT_FIRST:])
        self.more_button = button(f"Show all {len(rows)} trials", self.show_all)
        self.more_button.setVisible(bool(self._older))
        self.add_button = button("Add a trial…", work.add)
        buttons = FlowLayout()
        buttons.setSpacing(UNIT)
        for each in (self.add_button, self.more_button):
            buttons.addWidget(each)
        self._column.addSpacing(UNIT)
        self._column.addLayout(buttons)

    def show_all(self) -> None:
        """Show the older ones too, and go on from the first of them."""
        older, self._older = self._older, ()
        before = self._blocks[-1].buttons[-1]
        blocks = [self._add_block(row) for row in older]
        for block in blocks:
            block.show()  # what is not shown yet takes no focus
        for each in (each for block in blocks for each in block.buttons):
            QWidget.setTabOrder(before, each)
            before = each
        self.more_button.hide()
        blocks[0].buttons[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def _add_block(self, row: TrialRow) -> _TrialBlock:
        block = _TrialBlock(row, self._work)
        self._rows.addWidget(block)
        self._blocks.append(block)
        return block


class _TrialBlock(QWidget):
    def __init__(self, row: TrialRow, work: TrialWork) -> None:
        super().__init__()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, UNIT, 0, 0)
        column.setSpacing(2)
        head = QHBoxLayout()
        head.setSpacing(UNIT)
        head.addWidget(selectable(text_label(row.on, TypeSize.STRONG)))
        if row.trial.won:
            head.addWidget(PictureLabel("check", 16, "ready", "Won"))
            head.addWidget(text_label("Won", TypeSize.STRONG))
        head.addStretch(1)
        column.addLayout(head)
        for words in (row.scores, row.changed, row.notes):
            if words:
                column.addWidget(selectable(text_label(words, wrap=True)))
        if row.tasters:
            quiet = text_label(row.tasters, TypeSize.CAPTION, quiet=True, wrap=True)
            column.addWidget(selectable(quiet))
        self.buttons = tuple(_buttons(row, work))
        across = FlowLayout()
        across.setSpacing(UNIT)
        for each in self.buttons:
            across.addWidget(each)
        column.addSpacing(HALF)
        column.addLayout(across)


def _buttons(row: TrialRow, work: TrialWork) -> Sequence[QPushButton]:
    trial = row.trial
    settle = "Not won after all" if trial.won else "Mark as won"
    made = (
        button("Edit…", partial(work.edit, trial)),
        button(settle, partial(work.mark_won, trial, not trial.won)),
        button("Remove", partial(work.remove, trial)),
    )
    for each in made:
        each.setAccessibleName(f"{each.text()} trial of {row.on}")
    return made


@dataclass
class TrialWork:
    """What can be done with the trials of the spec that is chosen on `screen`."""

    screen: SpecsScreen
    dialog: TrialDialog | None = None

    def section(self, spec: Spec) -> TrialsSection | None:
        """The trials of an own spec; a classic has none."""
        if spec.id is None:
            return None
        return TrialsSection(trial_rows(spec, self.screen.context.bar.snapshot), self)

    def add(self) -> None:
        """Ask how the chosen spec tasted."""
        row = self.screen.current
        if row is not None and row.spec.id is not None:
            snapshot = self.screen.context.bar.snapshot
            self._ask(Trial(None, row.spec.id, snapshot.on), row.spec.name)

    def edit(self, trial: Trial) -> None:
        """Ask what was really said."""
        row = self.screen.current
        if row is not None:
            self._ask(trial, row.spec.name)

    def remove(self, trial: Trial) -> None:
        """Take a trial away; the toast can put it back."""
        bar = self.screen.context.bar
        remove = partial(bar.trials.remove, trial.id or 0)
        if self.screen.do(remove, say=f"Removed the trial of {_day(trial)}"):
            self._come_back()

    def mark_won(self, trial: Trial, won: bool) -> None:
        """Say that a trial settled on this version, or take that back."""
        bar = self.screen.context.bar
        name = "" if self.screen.current is None else self.screen.current.spec.name
        said = f"{name} is the version that won" if won else f"{name} is not settled on"
        if self.screen.do(partial(bar.trials.mark_won, trial.id or 0, won), say=said):
            self._come_back()

    def _ask(self, trial: Trial, name: str) -> None:
        self.screen.clear_refusal()
        self.dialog = dialog = TrialDialog(self.screen.context.bar, trial, name, self.screen)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.written.connect(self._on_written)
        dialog.finished.connect(self._on_closed)
        dialog.open()

    def _on_written(self, done: Done[Trial]) -> None:
        if done.changes:
            undo = partial(run_operation, self.screen, self.screen.context.bar.undo)
            said = f"Wrote down the trial of {_day(done.value)}"
            self.screen.context.toast.say(said, "Undo", undo)

    def _on_closed(self, _result: int) -> None:
        self.dialog = None
        self._come_back()

    def _come_back(self) -> None:
        """The page, and with it the button that was pressed, may have been built anew."""
        page = self.screen.detail.widget()
        section = None if page is None else page.findChild(TrialsSection)
        if section is not None:
            section.add_button.setFocus(Qt.FocusReason.OtherFocusReason)
            self.screen.show_in_details(section)


def _day(trial: Trial) -> str:
    return f"{trial.on:%d %B}".lstrip("0")
