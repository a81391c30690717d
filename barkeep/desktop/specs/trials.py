"""Trials on a spec's page: how each tasted, the scores typed in, and what can be done with it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QCheckBox,
    QHeaderView,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.specs.family import TrialRow, in_brief
from barkeep.desktop.widgets.buttons import button, day_field, day_in, hold
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.labels import PictureLabel, caption, copyable, selectable, text_label
from barkeep.desktop.widgets.layouts import column_of, row_of
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.days import day_of_year
from barkeep.domain.phrases import folded
from barkeep.domain.specs.trials import Scale, Score, Trial, ends, read_score_value, show_score
from barkeep.errors import InvalidField, UnknownName, UserError
from barkeep.translation import tr, tr_noop

Cell = tuple[int, int]
"""Taster and scale, each counted from 0."""
LEAST_ROWS, MOST_ROWS = 2, 6
"""So many rows the grid has room for, at least and at most."""
NAME_WIDTH = 150
"""The most room a taster's name takes, in device-independent pixels."""


ALONE = tr_noop("Score")
"""What heads the row of who tastes alone and is not named."""


class ScoreGrid(QTableWidget):
    """The arrow keys move, typing writes, and Tab goes on to what is after the grid."""

    def __init__(self, scales: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(0, len(scales), parent)
        self.tasters: tuple[str, ...] = ()
        """Who has a row."""
        self.setHorizontalHeaderLabels(list(scales))
        self.setTabKeyNavigation(False)
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(
            triggers.AnyKeyPressed | triggers.EditKeyPressed | triggers.DoubleClicked
        )
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setWordWrap(True)
        across = self.horizontalHeader()
        across.setSectionsClickable(False)
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap)
        across.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        across.setMinimumSectionSize(76)
        down = self.verticalHeader()
        down.setSectionsClickable(False)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setDefaultSectionSize(self.fontMetrics().height() + 2 * UNIT + 6)
        down.setMaximumWidth(NAME_WIDTH)

    def taster(self, row: int) -> str:
        """Whose a row is, empty for who tastes alone."""
        return self.tasters[row] if self.tasters else ""

    def show_tasters(self, tasters: Sequence[str]) -> None:
        """Give each a row, or one to who tastes alone.

        What was typed stays in its place, whatever its taster is called.
        """
        before = self.rowCount()
        self.tasters = tuple(tasters)
        rows = self.tasters or (tr(ALONE),)
        self.setRowCount(len(rows))
        for row, taster in enumerate(rows):
            header = QTableWidgetItem(self._shortened(taster))
            header.setToolTip(plain_tip(taster))
            self.setVerticalHeaderItem(row, header)
            for column in range(self.columnCount()) if row >= before else ():
                cell = QTableWidgetItem()
                cell.setTextAlignment(Qt.AlignmentFlag.AlignCenter)
                self.setItem(row, column, cell)
        if self.currentRow() < 0:
            self.setCurrentCell(0, 0)
        self.updateGeometry()

    def _shortened(self, taster: str) -> str:
        """A name as far as there is room for it; both its ends tell it from others."""
        metrics, room = self.verticalHeader().fontMetrics(), NAME_WIDTH - 3 * UNIT
        return metrics.elidedText(taster, Qt.TextElideMode.ElideMiddle, room)

    def write(self, cell: Cell, text: str) -> None:
        """Put a text into a cell."""
        item = self.item(*cell)
        if item is not None:
            item.setText(text)

    def written(self) -> Mapping[Cell, str]:
        """What was typed, by row and column; empty cells are left out."""
        cells = [(row, at) for row in range(self.rowCount()) for at in range(self.columnCount())]
        items = ((cell, self.item(*cell)) for cell in cells)
        return {cell: item.text().strip() for cell, item in items if item and item.text().strip()}

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace) and self.currentItem():
            self.currentItem().setText("")
            return
        super().keyPressEvent(event)

    def sizeHint(self) -> QSize:
        rows = min(MOST_ROWS, max(LEAST_ROWS, self.rowCount()))
        height = self.horizontalHeader().sizeHint().height() + 2 * self.frameWidth()
        return QSize(360, height + rows * self.verticalHeader().defaultSectionSize())

    def minimumSizeHint(self) -> QSize:
        return QSize(240, self.sizeHint().height())


WIDTH = 620
ON, TASTERS, SCORES, CHANGED, NOTES, WON = "on", "taster", "score", "changed", "notes", "won"
TASTERS_HINT = tr_noop(
    "Parted by commas; each has a row below. Only who scores is kept, "
    "and who tastes alone needs no name."
)
SCORES_HINT = tr_noop("What is left empty is not scored. The scales are chosen in Settings.")
WON_HINT = tr_noop("Of several versions the one that won last is marked.")
NOTES_LINES = 4


class TrialDialog(FormDialog):
    """`written` carries what was done once the trial is written down."""

    written = Signal(object)

    def __init__(self, bar: Bar, trial: Trial, name: str, parent: QWidget | None = None) -> None:
        title = (
            tr("Trial of {name}", name=name)
            if trial.id is None
            else tr("Change trial of {name}", name=name)
        )
        super().__init__(title, tr("Write down") if trial.id is None else tr("Save"), parent)
        self._bar, self._trial = bar, trial
        self._scales = scales_for(trial, bar.snapshot)
        self.on = day_field(trial.on, latest=bar.snapshot.on)
        named = trial.tasters if trial.scores else last_tasters(bar.snapshot)
        self.tasters = QLineEdit(", ".join(named))
        self.scores = ScoreGrid([f"{each.name}\n{ends(each)}" for each in self._scales])
        self.changed = QLineEdit(trial.changed)
        self.notes = QPlainTextEdit(trial.notes)
        self.won = QCheckBox(tr("This &version is settled on"))
        self.won.setChecked(trial.won)
        self._add_fields()
        self._fill_scores()
        self.setMinimumWidth(dialog_width(WIDTH))
        self.tasters.setFocus()

    def submit(self) -> None:
        self.clear_refusal()
        trial = self.read(SCORES, self._wanted)
        if trial is None:
            return
        before, trials = self._trial, self._bar.trials
        act = partial(trials.add, trial)
        if trial.id is not None:
            act = partial(trials.replace, trial, before)
        run_operation(self, act, self._finish)

    def see(self, theirs: Trial) -> None:
        self._trial = theirs

    def field_of(self, error: UserError) -> str | None:
        if isinstance(error, UnknownName) and error.kind == "scale":
            return SCORES
        return super().field_of(error)

    def _wanted(self) -> Trial:
        """What the fields say. Raises `InvalidField` for a score that is no number."""
        return replace(
            self._trial,
            on=day_in(self.on),
            scores=tuple(self._scores()),
            changed=self.changed.text(),
            notes=self.notes.toPlainText(),
            won=self.won.isChecked(),
        )

    def _scores(self) -> Iterator[Score]:
        for (row, column), text in self.scores.written().items():
            scale = self._scales[column]
            try:
                value = read_score_value(text)
                if not scale.holds(value) and not self._was_given(text, row, column):
                    raise InvalidField(SCORES, text, tr("it is {ends}", ends=ends(scale)))
            except InvalidField as error:
                self.scores.setCurrentCell(row, column)
                whose = self.scores.taster(row)
                field = (
                    tr("{whose}’s score for {name}", whose=whose, name=scale.name)
                    if whose
                    else tr("score for {name}", name=scale.name)
                )
                raise InvalidField(field, text, error.expected) from None
            yield Score(self.scores.taster(row), scale.name, value)

    def _was_given(self, text: str, row: int, column: int) -> bool:
        """Whether a score was there before the scale was changed."""
        score = Score(self.scores.taster(row), self._scales[column].name, read_score_value(text))
        return score in self._trial.scores

    def _finish(self, done: Done[Trial]) -> None:
        self.accept()
        self.written.emit(done)

    def _add_fields(self) -> None:
        self.add_field(ON, tr("&Date"), self.on)
        self.tasters.setPlaceholderText(tr("Such as Wren, Osk"))
        self.tasters.textChanged.connect(self._show_tasters)
        self.add_field(TASTERS, tr("&Tasters"), self.tasters, hint=tr(TASTERS_HINT))
        self.add_field(SCORES, tr("&Scores"), self.scores, hint=tr(SCORES_HINT), tall=True)
        self.scores.itemChanged.connect(lambda _item: self.forgive(SCORES))
        self.changed.setPlaceholderText(tr("Since the last trial, such as less lemon"))
        self.add_field(CHANGED, tr("What was &changed"), self.changed)
        self.notes.setTabChangesFocus(True)
        self.notes.setFixedHeight(NOTES_LINES * self.notes.fontMetrics().lineSpacing() + 20)
        self.add_field(NOTES, tr("&Notes"), self.notes, tall=True)
        self.add_field(WON, tr("Won"), self.won, hint=tr(WON_HINT))
        self.won.setAccessibleName(tr("This version is settled on"))

    def _fill_scores(self) -> None:
        self._show_tasters()
        rows = {folded(taster): row for row, taster in enumerate(self.scores.tasters or ("",))}
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


@dataclass(frozen=True, slots=True)
class TrialActs:
    """What can be done with the trials of the spec on the page; `won` may be taken back too."""

    add: Callable[[], object]
    edit: Callable[[Trial], object]
    mark_won: Callable[[Trial, bool], object]
    remove: Callable[[Trial], object]


SHOWN_AT_FIRST = 4
NO_TRIALS = tr_noop("No trial yet. Taste it, and write down what each taster made of it.")


class TrialsSection(QWidget):
    """The trials of one spec, newest first; older ones come when they are asked for.

    While something is `held` for a reason, nothing of it is written.
    """

    def __init__(
        self,
        rows: Sequence[TrialRow],
        acts: TrialActs,
        held: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._acts, self._held = acts, held
        self._blocks: list[_TrialBlock] = []
        self._column = column_of(on=self, gap=HALF)
        words = in_brief([row.trial for row in rows]) or tr(NO_TRIALS)
        self._column.addWidget(copyable(words, quiet=True))
        self._rows = QVBoxLayout()
        self._rows.setSpacing(HALF)
        self._column.addLayout(self._rows)
        for row in rows[:SHOWN_AT_FIRST]:
            self._add_block(row)
        self._older = tuple(rows[SHOWN_AT_FIRST:])
        self.more_button = button(tr("Show all {count} trials", count=len(rows)), self.show_all)
        self.more_button.setVisible(bool(self._older))
        self.add_button = button(tr("Add a trial…"), acts.add)
        hold(self.add_button, held)
        self._column.addSpacing(UNIT)
        self._column.addLayout(FlowLayout((self.add_button, self.more_button)))

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
        block = _TrialBlock(row, self._acts)
        for each in block.buttons:
            hold(each, self._held)
        self._rows.addWidget(block)
        self._blocks.append(block)
        return block


class _TrialBlock(QWidget):
    def __init__(self, row: TrialRow, acts: TrialActs) -> None:
        super().__init__()
        head = row_of(selectable(text_label(row.on, TypeSize.STRONG)))
        if row.trial.won:
            head.addWidget(PictureLabel("check", 16, "ready", tr("Won")))
            head.addWidget(text_label(tr("Won"), TypeSize.STRONG))
        head.addStretch(1)
        column = column_of(head, on=self, margins=(0, UNIT, 0, 0), gap=2)
        for words in (row.scores, row.changed, row.notes):
            if words:
                column.addWidget(copyable(words))
        if row.tasters:
            column.addWidget(caption(row.tasters))
        self.buttons = tuple(_buttons(row, acts))
        column.addSpacing(HALF)
        column.addLayout(FlowLayout(self.buttons))


def _buttons(row: TrialRow, acts: TrialActs) -> Sequence[QPushButton]:
    trial = row.trial
    settle = tr("Not won after all") if trial.won else tr("Mark as won")
    made = (
        button(tr("Edit…"), partial(acts.edit, trial)),
        button(settle, partial(acts.mark_won, trial, not trial.won)),
        button(tr("Remove"), partial(acts.remove, trial)),
    )
    for each in made:
        each.setAccessibleName(tr("{act} trial of {day}", act=each.text(), day=row.on))
    return made


def day_of(trial: Trial) -> str:
    """The day of a trial, as a sentence names it."""
    return day_of_year(trial.on)
