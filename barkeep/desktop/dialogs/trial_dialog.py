"""Write down how a version of a drink tasted: when, to whom, on which scales, and what changed."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QCheckBox, QDateEdit, QLineEdit, QPlainTextEdit, QWidget

from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.operations import run_operation
from barkeep.desktop.widgets.score_grid import ScoreGrid
from barkeep.domain.ingredients import folded
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.trial_words import ends, read_score_value, show_score
from barkeep.domain.trials import Scale, Score, Trial
from barkeep.errors import InvalidField, UnknownName, UserError

if TYPE_CHECKING:
    from barkeep.application.bar import Bar
    from barkeep.application.done import Done

WIDTH = 620
ON, TASTERS, SCORES, CHANGED, NOTES, WON = "on", "taster", "score", "changed", "notes", "won"
TASTERS_HINT = "Parted by commas; each has a row below. Only who scores is kept."
SCORES_HINT = "What is left empty is not scored. The scales are chosen in Settings."
WON_HINT = "Of several versions the one that won last is marked."
NOTES_LINES = 4


class TrialDialog(FormDialog):
    """`written` carries what was done once the trial is written down."""

    written = Signal(object)

    def __init__(self, bar: Bar, trial: Trial, name: str, parent: QWidget | None = None) -> None:
        title = f"Trial of {name}" if trial.id is None else f"Change trial of {name}"
        super().__init__(title, "Write down" if trial.id is None else "Save", parent)
        self._bar, self._trial = bar, trial
        self._scales = scales_for(trial, bar.snapshot)
        self.on = QDateEdit(QDate(trial.on.year, trial.on.month, trial.on.day))
        self.tasters = QLineEdit(", ".join(trial.tasters or last_tasters(bar.snapshot)))
        self.scores = ScoreGrid([f"{each.name}\n{ends(each)}" for each in self._scales])
        self.changed = QLineEdit(trial.changed)
        self.notes = QPlainTextEdit(trial.notes)
        self.won = QCheckBox("This &version is settled on")
        self.won.setChecked(trial.won)
        self._add_fields()
        self._fill_scores()
        self.setMinimumWidth(WIDTH)
        self.tasters.setFocus()

    def submit(self) -> None:
        self.clear_refusal()
        trial = self.read(SCORES, self._wanted)
        if trial is None:
            return
        act = self._bar.trials.add if trial.id is None else self._bar.trials.replace
        run_operation(self, lambda: act(trial), self._finish)

    def field_of(self, error: UserError) -> str | None:
        if isinstance(error, UnknownName) and error.kind == "scale":
            return SCORES
        return super().field_of(error)

    def _wanted(self) -> Trial:
        """What the fields say. Raises `InvalidField` for a score that is no number."""
        return replace(
            self._trial,
            on=_as_date(self.on.date()),
            scores=tuple(self._scores()),
            changed=self.changed.text(),
            notes=self.notes.toPlainText(),
            won=self.won.isChecked(),
        )

    def _scores(self) -> Iterator[Score]:
        tasters = self.scores.tasters
        for (row, column), text in self.scores.written().items():
            scale = self._scales[column]
            try:
                value = read_score_value(text)
                if not scale.holds(value) and not self._was_given(text, row, column):
                    raise InvalidField(SCORES, text, f"it is {ends(scale)}")
            except InvalidField as error:
                self.scores.setCurrentCell(row, column)
                field = f"{tasters[row]}’s score for {scale.name}"
                raise InvalidField(field, text, error.expected) from None
            yield Score(tasters[row], scale.name, value)

    def _was_given(self, text: str, row: int, column: int) -> bool:
        """Whether a score was there before the scale was changed."""
        score = Score(self.scores.tasters[row], self._scales[column].name, read_score_value(text))
        return score in self._trial.scores

    def _finish(self, done: Done[Trial]) -> None:
        self.accept()
        self.written.emit(done)

    def _add_fields(self) -> None:
        self.on.setCalendarPopup(True)
        self.on.setDisplayFormat("d MMMM yyyy")
        self.on.setMaximumDate(_qt_date(self._bar.snapshot))
        self.add_field(ON, "&Date", self.on)
        self.tasters.setPlaceholderText("Such as Wren, Osk")
        self.tasters.textChanged.connect(self._show_tasters)
        self.add_field(TASTERS, "&Tasters", self.tasters, hint=TASTERS_HINT)
        self.add_field(SCORES, "&Scores", self.scores, hint=SCORES_HINT)
        self.scores.itemChanged.connect(lambda _item: self.forgive(SCORES))
        self.changed.setPlaceholderText("Since the last trial, such as less lemon")
        self.add_field(CHANGED, "What was &changed", self.changed)
        self.notes.setTabChangesFocus(True)
        self.notes.setFixedHeight(NOTES_LINES * self.notes.fontMetrics().lineSpacing() + 20)
        self.add_field(NOTES, "&Notes", self.notes)
        self.add_field(WON, "Won", self.won, hint=WON_HINT)
        for name in (SCORES, NOTES):
            self.fields[name].label.setMinimumHeight(self.changed.sizeHint().height())
        self.won.setAccessibleName("This version is settled on")

    def _fill_scores(self) -> None:
        self._show_tasters()
        rows = {folded(taster): row for row, taster in enumerate(self.scores.tasters)}
        columns = {folded(scale.name): column for column, scale in enumerate(self._scales)}
        for each in self._trial.scores:
            cell = rows[folded(each.taster)], columns[folded(each.scale)]
            self.scores.write(cell, show_score(each.value))

    def _show_tasters(self) -> None:
        self.scores.show_tasters(read_tasters(self.tasters.text()))
        if self.isVisible():
            self._fit()


def read_tasters(text: str) -> tuple[str, ...]:
    """The names in a list parted by commas, each once."""
    names: dict[str, str] = {}
    for each in text.split(","):
        names.setdefault(folded(each), " ".join(each.split()))
    return tuple(name for name in names.values() if name)


def last_tasters(snapshot: Snapshot) -> Sequence[str]:
    """Who tasted last at this bar: most often the same people taste again."""
    return next((each.tasters for each in reversed(snapshot.trials) if each.tasters), ())


def scales_for(trial: Trial, snapshot: Snapshot) -> tuple[Scale, ...]:
    """The owner's scales, and those of the trial that are no longer among them."""
    scales = {folded(each.name): each for each in snapshot.settings.scales}
    for score in trial.scores:
        scales.setdefault(folded(score.scale), Scale(score.scale))
    return tuple(scales.values())


def _qt_date(snapshot: Snapshot) -> QDate:
    return QDate(snapshot.on.year, snapshot.on.month, snapshot.on.day)


def _as_date(day: QDate) -> date:
    return date(day.year(), day.month(), day.day())
