"""One shoot in full: what is next, can it all be poured, running order, mise en place, log.

Once it is filmed nobody asks whether it can be poured, and nothing is made ready any more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QAbstractButton, QCheckBox, QGridLayout, QPushButton, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.shoots.rows import (
    PouredLine,
    ShootAnswer,
    draws,
    drops,
    left_out,
    logged_in_words,
    poured_lines,
    serves_in_words,
    shortfalls,
    things_to_make,
    when_in_words,
)
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.details import add_heading, add_noted, grid_of_rows
from barkeep.desktop.widgets.labels import PictureLabel, caption, copyable, text_label
from barkeep.desktop.widgets.layouts import SPRING, at_top, column_of, row_of, wide
from barkeep.domain.bar.shoots import LoggedBottle
from barkeep.domain.shoots.drinks import spec_of
from barkeep.domain.shoots.making_ahead import ToMake
from barkeep.domain.shoots.mise_en_place import Step
from barkeep.domain.shoots.plan import Rescue, past_by_then


@dataclass(frozen=True)
class OfferedAction:
    """A button of the page: what it says and does; the first of a shoot is its next step."""

    text: str
    act: Callable[[], object]
    picture: str = ""


@dataclass(frozen=True)
class ShootActs:
    """What can be done on the page of a shoot; drinks and lines are told by their places."""

    rescue: Callable[[Rescue], object]
    pour_as_written: Callable[[int, int], object]
    pour_otherwise: Callable[[int, QPoint], object]
    batch: Callable[[int], object]
    move: Callable[[int, int], object]
    tick: Callable[[str, bool], object]
    make: Callable[[str, float], object]


class ShootPage(QWidget):
    """The page of one shoot."""

    def __init__(
        self,
        answer: ShootAnswer,
        next_step: OfferedAction | None,
        offers: Sequence[OfferedAction],
        acts: ShootActs,
    ) -> None:
        super().__init__()
        self._answer, self._acts = answer, acts
        self.ticks: dict[str, QCheckBox] = {}
        self.drinks: list[DrinkPart] = []
        self._column = column_of(on=self, margins=PAD, gap=HALF)
        self._add_head(next_step, offers)
        filmed = answer.shoot.state == "filmed"
        if answer.shoot.log is not None:
            self._add_log(answer.shoot.log.bottles)
        elif filmed:
            self._add_what_to_log()
        else:
            self._add_outlook()
        self._add_drinks()
        if answer.shoot.log is None and not filmed:
            self._add_mise()
            self._add_sentences("To draw from", draws(answer))
        if answer.shoot.notes:
            self._add_sentences("Notes", [answer.shoot.notes])
        self._column.addStretch(1)

    @property
    def shoot_id(self) -> int | None:
        """Whose page it is."""
        return self._answer.shoot.id

    def focused_name(self) -> str:
        """What has the keyboard on this page; empty where it is elsewhere."""
        focused = self.focusWidget()
        return focused.accessibleName() if focused is not None and focused.hasFocus() else ""

    def take_focus(self, name: str) -> bool:
        """Give the keyboard to what is called so, else to the like of it; whether there is any."""
        names = {each.accessibleName(): each for each in self.findChildren(QAbstractButton)}
        drink = next((each for each in self.drinks if each.is_named_in(name)), None)
        found = names.get(name) or (drink.first_button if drink else None)
        if found is not None:
            found.setFocus(Qt.FocusReason.OtherFocusReason)
        return found is not None

    def _add_head(self, next_step: OfferedAction | None, offers: Sequence[OfferedAction]) -> None:
        shoot = self._answer.shoot
        self._say(shoot.theme, size=TypeSize.TITLE)
        self._say(when_in_words(shoot), quiet=True)
        row = FlowLayout()
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
        for sentence in (*past_by_then(answer.plan, answer.snapshot), *left_out(answer)):
            self._say(sentence)

    def _add_what_to_log(self) -> None:
        """What the log takes as long as nothing else is said in it."""
        answer = self._answer
        add_heading(self._column, "The log")
        self._say(answer.plan.verdict, size=TypeSize.STRONG)
        for sentence in (*shortfalls(answer), *left_out(answer)):
            self._say(sentence)
        self._add_sentences("As planned it takes", draws(answer))

    def _add_log(self, bottles: Sequence[LoggedBottle]) -> None:
        add_heading(self._column, "The log")
        if not bottles:
            self._say("Nothing was poured or counted.", quiet=True)
        for each in bottles:
            self._say(each.title)
            self._column.addWidget(caption(logged_in_words(each)))
            self._column.addSpacing(HALF)

    def _add_rescue(self, rescue: Rescue) -> None:
        name = self._answer.snapshot.knowledge.tree.in_sentence(rescue.chosen.ingredient)
        words = f"{rescue.why} Closeness {rescue.closeness:.2f}."
        self._column.addSpacing(HALF)
        self._say(words, quiet=True)
        use = button(f"Use {name} in {rescue.name}", partial(self._acts.rescue, rescue))
        self._column.addLayout(FlowLayout([use]))

    def _add_drinks(self) -> None:
        add_heading(self._column, "Running order")
        drinks = self._answer.shoot.drinks
        if not drinks:
            self._say("No drink yet: put some in with Edit.", quiet=True)
        for number in range(len(drinks)):
            self._add_drink(number)

    def _add_drink(self, number: int) -> None:
        if number:
            self._column.addSpacing(PAD)
        part = DrinkPart(self._answer, number, self._acts)
        self.drinks.append(part)
        self._column.addWidget(part)

    def _add_mise(self) -> None:
        steps, shoot = self._answer.mise.steps, self._answer.shoot
        if not steps:
            return
        done = sum(each.key in shoot.ticked for each in steps)
        to_make = {each.key: each for each in things_to_make(self._answer)}
        add_heading(self._column, f"Mise en place: {done} of {len(steps)} done")
        when = ""
        for step in steps:
            now = step.said_when(self._answer.starts)
            if now != when:
                self._say(now, quiet=True)
                when = now
            self._add_tick(step, to_make.get(step.key), done=step.key in shoot.ticked)

    def _add_tick(self, step: Step, thing: ToMake | None, *, done: bool) -> None:
        row = _TickRow(step.text, done)
        row.box.toggled.connect(partial(self._acts.tick, step.key))
        self.ticks[step.key] = row.box
        if thing is not None and not done:
            name = self._answer.snapshot.knowledge.tree.in_sentence(thing.ingredient)
            made = button("Make…", partial(self._acts.make, thing.ingredient, thing.amount))
            made.setAccessibleName(f"Make {name}…")
            row.add_button(made)
        self._column.addWidget(row)

    def _add_sentences(self, heading: str, sentences: Iterable[str]) -> None:
        said = list(sentences)
        if said:
            add_heading(self._column, heading)
            for each in said:
                self._say(each)

    def _say(self, text: str, *, quiet: bool = False, size: TypeSize = TypeSize.BODY) -> None:
        self._column.addWidget(copyable(text, size, quiet=quiet))


class _TickRow(QWidget):
    """A box with words that wrap beside it; a click on the words ticks it too."""

    def __init__(self, text: str, done: bool) -> None:
        super().__init__()
        self.box = QCheckBox()
        self.box.setChecked(done)
        self.box.setAccessibleName(text)
        words = text_label(text, wrap=True, quiet=done)
        row = row_of(at_top(self.box), wide(words), on=self)
        self._row = row

    def add_button(self, made: QWidget) -> None:
        """Put a button after the words."""
        self._row.addWidget(made, 0, Qt.AlignmentFlag.AlignTop)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self.box.toggle()
        event.accept()


OTHERWISE = "Pour otherwise…"


class DrinkPart(QWidget):
    """One drink of the running order; of a logged shoot it only shows and batches."""

    def __init__(self, answer: ShootAnswer, number: int, acts: ShootActs) -> None:
        super().__init__()
        self._number, self._acts = number, acts
        self._drink = drink = answer.shoot.drinks[number]
        self._logged = answer.shoot.log is not None
        self.buttons: dict[str, QPushButton] = {}
        there = spec_of(drink, answer.snapshot) is not None
        self._column = column_of(on=self, gap=HALF)
        self._say(f"{number + 1}. {drink.name}", size=TypeSize.STRONG)
        removed = "" if there else " Its spec was removed."
        self._say(f"{serves_in_words(drink.serves)}.{removed}", quiet=True)
        if there:
            self._add_lines(poured_lines(answer, number))
        self._add_buttons(there, number, len(answer.shoot.drinks) - 1)

    @property
    def first_button(self) -> QPushButton | None:
        """The first of its buttons, None where it has none."""
        return next(iter(self.buttons.values()), None)

    def is_named_in(self, name: str) -> bool:
        """Whether an accessible name is that of something of this drink."""
        return name.startswith(f"{self._drink.name}: ")

    def _add_lines(self, lines: Sequence[PouredLine]) -> None:
        grid = grid_of_rows()
        for row, line in enumerate(lines):
            self._add_line(grid, row, line)
        self._column.addLayout(grid)

    def _add_line(self, grid: QGridLayout, row: int, line: PouredLine) -> None:
        state, picture = line.state, None
        if not self._logged:
            picture = PictureLabel(state.picture, 16, state.tone, state.word)
        note = line.note if line.chosen or not self._logged else ""
        words = add_noted(grid, row, copyable(line.text), note, beside=picture)
        if line.chosen and not self._logged:
            back = button(
                "Pour as written", partial(self._acts.pour_as_written, self._number, line.place)
            )
            back.setAccessibleName(f"{self._drink.name}: pour {line.name} as written")
            words.addLayout(row_of(back, SPRING))

    def _add_buttons(self, there: bool, number: int, last: int) -> None:
        row = FlowLayout()
        changeable = not self._logged
        acts: tuple[tuple[bool, str, Callable[[], object]], ...] = (
            (there, "Batch…", partial(self._acts.batch, number)),
            (there and changeable, OTHERWISE, self._ask_otherwise),
            (number > 0 and changeable, "Earlier", partial(self._acts.move, number, -1)),
            (number < last and changeable, "Later", partial(self._acts.move, number, 1)),
        )
        for wanted, text, act in acts:
            if wanted:
                made = button(text, act)
                made.setAccessibleName(f"{self._drink.name}: {text}")
                self.buttons[text] = made
                row.addWidget(made)
        self._column.addSpacing(HALF)
        self._column.addLayout(row)

    def _ask_otherwise(self) -> None:
        """Ask for the menu right below the button, wherever the mouse may be."""
        asked = self.buttons[OTHERWISE]
        self._acts.pour_otherwise(self._number, asked.mapToGlobal(asked.rect().bottomLeft()))

    def _say(self, text: str, *, quiet: bool = False, size: TypeSize = TypeSize.BODY) -> None:
        self._column.addWidget(copyable(text, size, quiet=quiet))
