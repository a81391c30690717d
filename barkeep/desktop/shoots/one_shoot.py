"""One shoot in full: what is next, can it all be poured, running order, mise en place, log.

Once it is filmed nobody asks whether it can be poured, and nothing is made ready any more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import (
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QKeySequence,
    QShortcut,
)
from PySide6.QtWidgets import QAbstractButton, QCheckBox, QPushButton, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, TypeSize
from barkeep.desktop.shoots.dragging import DrinkHead, DropLine, carried_by, gap_at, place_in
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
    used_in_brief,
    when_in_words,
)
from barkeep.desktop.shoots.stop_line import StopLinePicture
from barkeep.desktop.widgets.details import DetailRow
from barkeep.desktop.widgets.folds import Folds
from barkeep.desktop.widgets.offered import Offered, OfferedRow
from barkeep.desktop.widgets.refilled import (
    FilledColumn,
    Piece,
    TickRow,
    fact,
    fold_line,
    heading,
    note,
    offered_row,
    tick,
    words,
)
from barkeep.domain.bar.shoots import LoggedBottle
from barkeep.domain.phrases import capitalised, counted
from barkeep.domain.shoots.drinks import spec_of
from barkeep.domain.shoots.making_ahead import ToMake
from barkeep.domain.shoots.mise_en_place import Step
from barkeep.domain.shoots.plan import Rescue, past_by_then
from barkeep.domain.shoots.stops import StopLine
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop


@dataclass(frozen=True)
class ShootActs:
    """What can be done on the page of a shoot; drinks and lines are told by their places."""

    rescue: Callable[[Rescue], object]
    pour_as_written: Callable[[int, int], object]
    pour_otherwise: Callable[[int], object]
    batch: Callable[[int], object]
    move: Callable[[int, int], object]
    tick: Callable[[str, bool], object]
    make: Callable[[str, float], object]
    stop: Callable[[str], object]
    held: str = ""
    """Why nothing may be written just now; empty where it may."""


class ShootPage(FilledColumn):
    """The page of one shoot; made once, and filled with each answer."""

    def __init__(self, folds: Folds) -> None:
        super().__init__(margins=PAD)
        self._folds = folds
        self.shoot_id: int | None = None
        """Whose page it is."""
        self._acts: ShootActs | None = None
        self._heads: list[QWidget] = []
        self._last: QWidget = self
        self._drop_line = DropLine(self)
        self.setAcceptDrops(True)
        for keys, by in (("Alt+Up", -1), ("Alt+Down", 1)):
            shortcut = QShortcut(QKeySequence(keys), self, partial(self._move_focused, by))
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        self.ticks: dict[str, QCheckBox] = {}
        self.drinks: list[DrinkPart] = []

    def fill(self, answer: ShootAnswer, acts: ShootActs) -> None:
        """Show another answer, or another shoot."""
        told = _Told(answer, acts, self._folds)
        told.tell()
        shown = self.fill_with(told.pieces)
        self.shoot_id = answer.shoot.id
        self._acts = acts if answer.shoot.log is None and not acts.held else None
        self._heads = [shown[place] for place in told.heads]
        self._last = shown[told.drinks[-1]] if told.drinks else self
        self.ticks = {key: _box_of(shown[place]) for key, place in told.ticks.items()}
        self.drinks = [
            DrinkPart(drink.name, _buttons_of(shown[place]))
            for drink, place in zip(answer.shoot.drinks, told.drinks, strict=False)
        ]  # none, while they are folded

    def _move_focused(self, by: int) -> None:
        """Move the drink whose buttons have the keyboard up or down."""
        focused = self.focusWidget()
        parts = enumerate(self.drinks)
        number = next((at for at, each in parts if focused in each.buttons.values()), None)
        if number is not None and 0 <= number + by < len(self.drinks):
            self._place(number, number + by)

    def _place(self, number: int, to: int) -> None:
        if self._acts is not None and number != to:
            self._acts.move(number, to - number)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Show where it would go; of another shoot, or of one that is logged, nowhere."""
        if not self._takes(event):
            event.ignore()
            return
        event.acceptProposedAction()
        gap = gap_at(event.position().y(), self._tops, self._end)
        self._drop_line.show_at(self._end if gap == len(self._heads) else self._tops[gap])

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if self._takes(event):
            event.acceptProposedAction()

    def dragLeaveEvent(self, _event: QDragLeaveEvent) -> None:
        self._drop_line.hide()

    def dropEvent(self, event: QDropEvent) -> None:
        self._drop_line.hide()
        number = carried_by(event)
        if number is not None and self._takes(event):
            event.acceptProposedAction()
            gap = gap_at(event.position().y(), self._tops, self._end)
            self._place(number, place_in(gap, number))

    def _takes(self, event: QDropEvent) -> bool:
        number = carried_by(event)
        return number is not None and number < len(self._heads) and self._acts is not None

    @property
    def _tops(self) -> list[float]:
        return [float(each.y()) for each in self._heads]

    @property
    def _end(self) -> float:
        """Where the last drink ends: below its buttons."""
        return float(self._last.geometry().bottom())

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


def _box_of(row: QWidget) -> QCheckBox:
    assert isinstance(row, TickRow)
    return row.box


def _buttons_of(row: QWidget) -> dict[str, QPushButton]:
    assert isinstance(row, OfferedRow)
    return {each.text(): each for each in row.shown}


@dataclass(frozen=True, slots=True)
class DrinkPart:
    """What is offered for one drink of the running order, by what stands on each button."""

    name: str
    buttons: Mapping[str, QPushButton]

    @property
    def first_button(self) -> QPushButton | None:
        """The first of its buttons, None where it has none."""
        return next(iter(self.buttons.values()), None)

    def is_named_in(self, name: str) -> bool:
        """Whether an accessible name is that of something of this drink."""
        return name.startswith(f"{self.name}: ")


def drink_head(number: int, words: str, *, above: int, movable: bool) -> Piece[DrinkHead]:
    """The name of a drink of the running order."""
    return Piece(
        ("drink", above),
        partial(DrinkHead, above),
        lambda made: made.fill(number, words, movable=movable),
    )


OTHERWISE, BATCH = tr_noop("Pour otherwise…"), tr_noop("Batch…")


class _Stops(StopLinePicture):
    """What is next is done by what is told each time it is filled."""

    def __init__(self) -> None:
        super().__init__()
        self._take_stop: Callable[[str], object] = lambda _key: None
        self.taken.connect(lambda key: self._take_stop(key))

    def fill(self, line: StopLine, take: Callable[[str], object]) -> None:
        """Show another line."""
        self._take_stop = take
        self.show_line(line)


class _Told:
    """All that is told of one shoot, piece by piece.

    `ticks`, `drinks` (the buttons of each) and `heads` are places in it.
    """

    def __init__(self, answer: ShootAnswer, acts: ShootActs, folds: Folds) -> None:
        self._answer, self._acts, self._folds = answer, acts, folds
        self.pieces: list[Piece[Any]] = []
        self.ticks: dict[str, int] = {}
        self.drinks: list[int] = []
        self.heads: list[int] = []

    def tell(self) -> None:
        """Tell all of it, what matters now first; of what is folded its line alone."""
        shoot = self._answer.shoot
        filmed = shoot.state == "filmed"
        self._tell_head()
        if shoot.log is not None:
            self._tell_log(shoot.log.bottles)
        elif filmed:
            self._tell_what_to_log()
        else:
            self._tell_outlook()
        self._tell_drinks()
        if shoot.log is None and not filmed:
            self._tell_mise()
            self._tell_sentences(tr("To draw from"), draws(self._answer), fold="draws")
        if shoot.notes:
            self._tell_sentences(tr("Notes"), [shoot.notes])

    def _tell_head(self) -> None:
        self._say(when_in_words(self._answer.shoot), quiet=True)
        stops, take = self._answer.stops, self._acts.stop
        self.pieces.append(Piece("stops", _Stops, lambda made: made.fill(stops, take)))

    def _opens(self, fold: str, words: str, brief: str, *, at_first: bool = False) -> bool:
        """Begin a part that opens and closes; whether it is open."""
        is_open = self._folds.is_open(fold, at_first)
        turn = partial(self._folds.turn, fold)
        self.pieces.append(fold_line(words, brief, turn, is_open=is_open))
        return is_open

    def _tell_outlook(self) -> None:
        answer = self._answer
        if not self._opens(
            "outlook",
            tr("Can it all be poured?"),
            answer.plan.verdict,
            at_first=True,
        ):
            return
        self._say(answer.plan.verdict, size=TypeSize.STRONG)
        for sentence in shortfalls(answer):
            self._say(sentence)
        for rescue in answer.plan.rescues:
            self._tell_rescue(rescue)
        if said := drops(answer):
            self._say(said)
        for sentence in (*past_by_then(answer.plan, answer.snapshot), *left_out(answer)):
            self._say(sentence)

    def _tell_what_to_log(self) -> None:
        """What the log takes as long as nothing else is said in it."""
        answer = self._answer
        self.pieces.append(heading(tr("The log")))
        self._say(answer.plan.verdict, size=TypeSize.STRONG)
        for sentence in (*shortfalls(answer), *left_out(answer)):
            self._say(sentence)
        self._tell_sentences(tr("As planned it takes"), draws(answer), fold="draws")

    def _tell_log(self, bottles: Sequence[LoggedBottle]) -> None:
        self.pieces.append(heading(tr("The log")))
        self._say(f"{capitalised(self._answer.stops['count'].why)}.")
        brief = used_in_brief(bottles)
        if bottles and not self._opens("logged", tr("What was used"), brief, at_first=True):
            return
        if not bottles:
            self._say(tr("Nothing was poured or counted."), quiet=True)
        for each in bottles:
            self._say(each.title)
            self.pieces.append(note(logged_in_words(each)))

    def _tell_rescue(self, rescue: Rescue) -> None:
        name = self._answer.snapshot.knowledge.tree.in_sentence(rescue.chosen.ingredient)
        said = tr("{why} Closeness {closeness:.2f}.", why=rescue.why, closeness=rescue.closeness)
        self.pieces.append(words(said, quiet=True, above=HALF))
        use = Offered(
            tr("Use {stand_in} in {drink}", stand_in=name, drink=rescue.name),
            partial(self._acts.rescue, rescue),
        )
        self.pieces.append(offered_row([use], self._acts.held))

    def _tell_drinks(self) -> None:
        drinks = self._answer.shoot.drinks
        brief = spoken_list(self._answer.shoot.names, "and") or tr("No drink yet")
        if not self._opens("order", tr("Running order"), brief):
            return
        if not drinks:
            self._say(tr("No drink yet: put some in with Edit."), quiet=True)
        for number in range(len(drinks)):
            self._tell_drink(number)

    def _tell_drink(self, number: int) -> None:
        """One drink of the running order; of a logged shoot it only shows and batches."""
        answer = self._answer
        drink = answer.shoot.drinks[number]
        there = spec_of(drink, answer.snapshot) is not None
        above = PAD if number else 0
        self.heads.append(len(self.pieces))
        movable = answer.shoot.log is None and not self._acts.held and len(answer.shoot.drinks) > 1
        title = f"{number + 1}. {drink.name}"
        self.pieces.append(drink_head(number, title, above=above, movable=movable))
        removed = "" if there else tr(" Its spec was removed.")
        self._say(f"{serves_in_words(drink.serves)}.{removed}", quiet=True)
        for line in poured_lines(answer, number) if there else ():
            self._tell_line(number, line)
        self.drinks.append(len(self.pieces))
        offers = list(self._offers_of(number, there=there))
        self.pieces.append(offered_row(offers, self._acts.held))

    def _tell_line(self, number: int, line: PouredLine) -> None:
        state, drink = line.state, self._answer.shoot.drinks[number]
        if self._answer.shoot.log is not None:
            told = line.note if line.chosen else ""
            self.pieces.append(fact(DetailRow(line.text, note=told)))
            return
        row = DetailRow(
            line.text, label=tr(state.word), note=line.note, picture=state.picture, tone=state.tone
        )
        back = Offered(
            tr("Pour as written"),
            partial(self._acts.pour_as_written, number, line.place),
            name=tr("{drink}: pour {line} as written", drink=drink.name, line=line.name),
        )
        self.pieces.append(fact(row, [back] if line.chosen else [], self._acts.held))

    def _offers_of(self, number: int, *, there: bool) -> Iterator[Offered]:
        shoot = self._answer.shoot
        changeable, last = shoot.log is None, len(shoot.drinks) - 1
        acts: tuple[tuple[bool, str, Callable[[], object]], ...] = (
            (there, BATCH, partial(self._acts.batch, number)),
            (there and changeable, OTHERWISE, partial(self._acts.pour_otherwise, number)),
            (number > 0 and changeable, tr("Earlier"), partial(self._acts.move, number, -1)),
            (number < last and changeable, tr("Later"), partial(self._acts.move, number, 1)),
        )
        for wanted, text, act in acts:
            if wanted:
                name = f"{shoot.drinks[number].name}: {tr(text)}"
                yield Offered(tr(text), act, name=name, writes=text != BATCH)

    def _tell_mise(self) -> None:
        steps, shoot = self._answer.mise.steps, self._answer.shoot
        if not steps:
            return
        done = sum(each.key in shoot.ticked for each in steps)
        to_make = {each.key: each for each in things_to_make(self._answer)}
        next_step = next((each.text for each in steps if each.key not in shoot.ticked), "")
        words = tr("Mise en place: {done} of {of} done", done=done, of=len(steps))
        brief = tr("Next: {next_step}", next_step=next_step) if next_step else ""
        if not self._opens("mise", words, brief):
            return
        when = ""
        for step in steps:
            now = step.said_when(self._answer.starts)
            if now != when:
                self._say(now, quiet=True)
                when = now
            self._tell_tick(step, to_make.get(step.key), done=step.key in shoot.ticked)

    def _tell_tick(self, step: Step, thing: ToMake | None, *, done: bool) -> None:
        offers = []
        if thing is not None and not done:
            name = self._answer.snapshot.knowledge.tree.in_sentence(thing.ingredient)
            make = partial(self._acts.make, thing.ingredient, thing.amount)
            offers.append(Offered(tr("Make…"), make, name=tr("Make {name}…", name=name)))
        self.ticks[step.key] = len(self.pieces)
        act = partial(self._acts.tick, step.key)
        self.pieces.append(tick(step.text, act, offers, self._acts.held, done=done))

    def _tell_sentences(self, title: str, sentences: Iterable[str], fold: str = "") -> None:
        said = list(sentences)
        if not said:
            return
        if fold and not self._opens(fold, title, counted(len(said), "bottle")):
            return
        if not fold:
            self.pieces.append(heading(title))
        for each in said:
            self._say(each)

    def _say(self, text: str, *, quiet: bool = False, size: TypeSize = TypeSize.BODY) -> None:
        self.pieces.append(words(text, size, quiet=quiet))
