"""Count, pour from, waste or correct one bottle, with what would be left drawn beside it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any, NamedTuple

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.desktop.bottles.rows import left_of
from barkeep.desktop.counting.rows import (
    difference_explained,
    difference_in_words,
    reading_in_words,
)
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of
from barkeep.desktop.widgets.levels import LevelGauge, LevelReading
from barkeep.domain.amounts.measures import read_amount, read_change
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.counting import CountRow, Typed, exactly
from barkeep.domain.bottles.level_words import doubt_of, number, quantity
from barkeep.domain.phrases import begun_small, capitalised
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

HOW_TO_COUNT = tr_noop(
    "A share of the bottle, a volume, its weight with what is in it but without its cap, "
    "or the height of the liquid above the table."
)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a text would come to: the level after it, that in words, and what stands after ±."""

    level: float
    words: str
    doubt: float = 0.0


@dataclass(frozen=True, slots=True)
class LevelTask:
    """One change of one bottle's level.

    `preview` raises a `UserError` for a text that cannot be used; `perform`
    writes, given the text and a note. `from_gauge` lets the gauge be clicked;
    `help` says more than the hint has room for.
    """

    bottle: Bottle
    title: str
    verb: str
    label: str
    hint: str
    preview: Callable[[str], Outcome]
    perform: Callable[[str, str], Done[Any]]
    said: Callable[[str], str]
    noted: bool = True
    from_gauge: bool = False
    help: str = ""


def count_task(bar: Bar, bottle: Bottle, ingredient: str) -> LevelTask:
    """Write down what is really left."""
    product = bottle.product

    def read(text: str) -> Typed:
        snapshot = bar.snapshot
        container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
        return exactly(text, container, snapshot.settings.units)

    def preview(text: str) -> Outcome:
        typed = read(text)
        row = CountRow(bottle, ingredient, typed)
        found = reading_in_words(typed, bottle)
        words = f"{found}. {capitalised(difference_in_words(row))}: {difference_explained(row)}"
        return Outcome(typed.measured.amount, words, doubt_of(typed.measured.sigma))

    def said(text: str) -> str:
        return tr(
            "Counted {title}: {amount}",
            title=product.title,
            amount=quantity(read(text).measured.amount, product.unit),
        )

    return LevelTask(
        bottle=bottle,
        title=tr("Count {title}", title=product.title),
        verb=tr("Count"),
        label=tr("&What is left"),
        hint={
            "ml": tr("Such as 0.45, 315 ml, 812 g or 11.5 cm"),
            "g": tr("Such as 250 g, or 0.4 of it"),
            "each": tr("Such as 4"),
        }[product.unit],
        preview=preview,
        perform=lambda text, _note: bar.counting.count({bottle.id: read(text).measured}),
        said=said,
        noted=False,
        from_gauge=product.unit != "each",
        help=HOW_TO_COUNT if product.unit == "ml" else "",
    )


class _TakingWords(NamedTuple):
    """What is said of taking something out: the dialog's title, its verb, and that it is done."""

    title: str
    verb: str
    said: str


_POURING = _TakingWords(
    tr_noop("Pour from {title}"), tr_noop("Pour"), tr_noop("Poured {amount} of {title}")
)
_WASTING = _TakingWords(
    tr_noop("Waste from {title}"), tr_noop("Waste"), tr_noop("Wasted {amount} of {title}")
)


def pour_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Take an amount out for use."""
    return _taking(bar, bottle, _POURING, bar.inventory.pour)


def waste_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Write off what was spilled or thrown away."""
    return _taking(bar, bottle, _WASTING, bar.inventory.waste)


def correct_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Put the ledger right by a signed change."""
    unit, title = bottle.product.unit, bottle.product.title

    def read(text: str) -> float:
        return read_change(text, unit, units_of(bar, bottle))

    def preview(text: str) -> Outcome:
        return _outcome(bottle, bottle.level.amount + read(text))

    return LevelTask(
        bottle=bottle,
        title=tr("Correct {title}", title=title),
        verb=tr("Correct"),
        label=tr("&More or less"),
        hint=tr("Such as +{some} or −{some}", some=_some(bottle)),
        preview=preview,
        perform=lambda text, note: bar.inventory.correct(bottle.id, read(text), note),
        said=lambda _text: tr("Corrected {title}", title=title),
    )


def units_of(bar: Bar, bottle: Bottle) -> BarUnits:
    """What the bar means by its measures; a dash is what this bottle's dasher gives."""
    units = bar.snapshot.settings.units
    return units if bottle.dash_ml is None else replace(units, dash_ml=bottle.dash_ml)


def _taking(
    bar: Bar,
    bottle: Bottle,
    words: _TakingWords,
    take: Callable[[int, float, str], Done[Bottle]],
) -> LevelTask:
    unit, title = bottle.product.unit, bottle.product.title

    def read(text: str) -> float:
        return read_amount(text, unit, units_of(bar, bottle))

    def preview(text: str) -> Outcome:
        return _outcome(bottle, bottle.level.amount - read(text))

    return LevelTask(
        bottle=bottle,
        title=tr(words.title, title=title),
        verb=tr(words.verb),
        label=tr("&How much"),
        hint=_such_as(bottle),
        preview=preview,
        perform=lambda text, note: take(bottle.id, read(text), note),
        said=lambda text: tr(words.said, amount=quantity(read(text), unit), title=title),
    )


def _outcome(bottle: Bottle, level: float) -> Outcome:
    unit, size = bottle.product.unit, bottle.product.size
    if level < 0:
        short = quantity(-level, unit)
        return Outcome(0.0, tr("That is {short} more than the ledger says is left", short=short))
    if level > size:
        over = quantity(level - size, unit)
        return Outcome(size, tr("That is {over} more than it holds", over=over))
    left, whole = number(level, unit), quantity(size, unit)
    return Outcome(level, tr("Leaves {left} of {size}", left=left, size=whole))


def _such_as(bottle: Bottle) -> str:
    if bottle.product.unit == "ml":
        return tr("Such as {some} or 2 oz", some=_some(bottle))
    return tr("Such as {some}", some=_some(bottle))


def _some(bottle: Bottle) -> str:
    return {"ml": "60 ml", "g": "20 g", "each": "1"}[bottle.product.unit]


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
        self.setMinimumWidth(dialog_width(WIDTH))
        self.amount.textChanged.connect(self._show_outcome)
        self.gauge.picked.connect(self._take_share)

    def submit(self) -> None:
        text, note = self.amount.text(), self.note.text().strip()
        if not text.strip():
            self.refuse(AMOUNT, tr("Write an amount {hint}.", hint=_lower(self.task.hint)))
        else:
            self.read(AMOUNT, lambda: self.task.preview(text))
        if self.has_problems():
            return
        run_operation(self, lambda: self.task.perform(text, note), self._finish)

    def field_of(self, error: UserError) -> str | None:
        return AMOUNT  # whatever is refused here, it is the amount

    def _add_fields(self) -> None:
        intro = tr("The ledger says {left}", left=left_of(self.task.bottle))
        self.say_intro(f"{intro}. {tr(self.task.help)}" if self.task.help else intro)
        self.amount.setPlaceholderText(self.task.hint)
        self.add_field(AMOUNT, self.task.label, self.amount)
        if self.task.noted:
            self.note.setPlaceholderText(tr("Optional"))
            self.add_field(NOTE, tr("&Note"), self.note)
        self.form.addWidget(self.outcome, 8, 1, 1, 2)
        holder = column_of(self.gauge, SPRING)
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
    return begun_small(hint)
