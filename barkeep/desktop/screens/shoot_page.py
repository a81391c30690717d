"""One shoot in full: what is next, can it all be poured, running order, mise en place, log."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QVBoxLayout, QWidget

from barkeep.desktop.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.models.shoot_rows import (
    ShootAnswer,
    chosen_in_words,
    draws,
    drops,
    logged_in_words,
    past_dates,
    serves_in_words,
    shortfalls,
    when_in_words,
)
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.flow_layout import FlowLayout
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.sections import add_heading, selectable
from barkeep.domain.answers.shoot_plan import Rescue
from barkeep.domain.shoots import ShootDrink, spec_of


@dataclass(frozen=True)
class Offer:
    """A button of the page: what it says and does; the first of a shoot is its next step."""

    text: str
    act: Callable[[], object]
    picture: str = ""


class ShootPage(QWidget):
    """The page of one shoot. Signals carry what the user wants changed."""

    rescue_wanted = Signal(object)
    as_written_wanted = Signal(int, int)
    otherwise_wanted = Signal(int)
    batch_wanted = Signal(int)
    moved = Signal(int, int)
    ticked = Signal(str, bool)

    def __init__(
        self,
        answer: ShootAnswer,
        next_step: Offer | None,
        offers: Sequence[Offer],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._answer = answer
        self.ticks: dict[str, QCheckBox] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(PAD, PAD, PAD, PAD)
        self._column.setSpacing(HALF)
        self._add_head(next_step, offers)
        if answer.shoot.log is None:
            self._add_outlook()
        self._add_drinks()
        if answer.shoot.log is None:
            self._add_mise()
            self._add_sentences("To draw from", draws(answer))
        else:
            self._add_sentences("The log", map(logged_in_words, answer.shoot.log.bottles))
        if answer.shoot.notes:
            self._add_sentences("Notes", [answer.shoot.notes])
        self._column.addStretch(1)

    @property
    def shoot_id(self) -> int | None:
        """Whose page it is."""
        return self._answer.shoot.id

    def _add_head(self, next_step: Offer | None, offers: Sequence[Offer]) -> None:
        shoot = self._answer.shoot
        self._say(shoot.theme, size=TypeSize.TITLE)
        self._say(when_in_words(shoot), quiet=True)
        row = _flow()
        if next_step is not None:
            row.addWidget(primary_button(next_step.text, next_step.act, next_step.picture or None))
        for each in offers:
            row.addWidget(button(each.text, each.act, each.picture or None))
        self._column.addSpacing(UNIT)
        self._column.addLayout(row)

    def _add_outlook(self) -> None:
        answer = self._answer
        add_heading(self._column, "Can it all be poured?")
        self._say(answer.plan.verdict, size=TypeSize.STRONG)
        for sentence in shortfalls(answer):
            self._say(sentence)
        for rescue in answer.plan.rescues:
            self._add_rescue(rescue)
        if said := drops(answer):
            self._say(said)
        for sentence in past_dates(answer):
            self._say(sentence)

    def _add_rescue(self, rescue: Rescue) -> None:
        name = self._answer.snapshot.knowledge.tree.in_sentence(rescue.chosen.ingredient)
        words = f"{rescue.why} Closeness {rescue.closeness:.2f}."
        self._column.addSpacing(HALF)
        self._say(words, quiet=True)
        use = button(f"Use {name} in {rescue.name}", lambda: self.rescue_wanted.emit(rescue))
        self._in_a_row([use])

    def _add_drinks(self) -> None:
        add_heading(self._column, "Running order")
        drinks = self._answer.shoot.drinks
        if not drinks:
            self._say("No drink yet: put some in with Edit.", quiet=True)
        for number, drink in enumerate(drinks):
            self._add_drink(number, drink)

    def _add_drink(self, number: int, drink: ShootDrink) -> None:
        snapshot, last = self._answer.snapshot, len(self._answer.shoot.drinks) - 1
        there = spec_of(drink, snapshot) is not None
        if number:
            self._column.addSpacing(UNIT)
        self._say(f"{number + 1}. {drink.name}", size=TypeSize.STRONG)
        removed = "" if there else " Its spec was removed."
        self._say(f"{serves_in_words(drink.serves)}.{removed}", quiet=True)
        logged = self._answer.shoot.log is not None
        chosen = list(chosen_in_words(drink, snapshot))
        for line, words in chosen:
            self._say(words)
            if not logged:
                self._in_a_row([button("Pour as written", partial(self._as_written, number, line))])
        row = []
        if there:
            row.append(button("Batch…", lambda: self.batch_wanted.emit(number)))
        if there and not logged:
            row.append(button("Pour otherwise…", lambda: self.otherwise_wanted.emit(number)))
        if number and not logged:
            row.append(button("Earlier", lambda: self.moved.emit(number, -1)))
        if number < last and not logged:
            row.append(button("Later", lambda: self.moved.emit(number, 1)))
        for each in row:
            each.setAccessibleName(f"{drink.name}: {each.text()}")
        self._in_a_row(row)

    def _as_written(self, number: int, line: int) -> None:
        self.as_written_wanted.emit(number, line)

    def _add_mise(self) -> None:
        steps, shoot = self._answer.mise.steps, self._answer.shoot
        if not steps:
            return
        done = sum(each.key in shoot.ticked for each in steps)
        add_heading(self._column, f"Mise en place: {done} of {len(steps)} done")
        when = ""
        for step in steps:
            now = step.said_when(self._answer.starts)
            if now != when:
                self._say(now, quiet=True)
                when = now
            self._add_tick(step.key, step.text, done=step.key in shoot.ticked)

    def _add_tick(self, key: str, text: str, *, done: bool) -> None:
        row = _TickRow(text, done)
        row.box.toggled.connect(lambda on: self.ticked.emit(key, on))
        self.ticks[key] = row.box
        self._column.addWidget(row)

    def _add_sentences(self, heading: str, sentences: Iterable[str]) -> None:
        said = list(sentences)
        if said:
            add_heading(self._column, heading)
            for each in said:
                self._say(each)

    def _in_a_row(self, widgets: Sequence[QWidget]) -> None:
        if widgets:
            row = _flow()
            for each in widgets:
                row.addWidget(each)
            self._column.addLayout(row)

    def _say(self, text: str, *, quiet: bool = False, size: TypeSize = TypeSize.BODY) -> None:
        self._column.addWidget(selectable(text_label(text, size, quiet=quiet, wrap=True)))


class _TickRow(QWidget):
    """A box with words that wrap beside it; a click on the words ticks it too."""

    def __init__(self, text: str, done: bool) -> None:
        super().__init__()
        self.box = QCheckBox()
        self.box.setChecked(done)
        self.box.setAccessibleName(text)
        words = text_label(text, wrap=True, quiet=done)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(UNIT)
        row.addWidget(self.box, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(words, 1)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.box.toggle()
        event.accept()


def _flow() -> FlowLayout:
    row = FlowLayout()
    row.setSpacing(UNIT)
    return row
