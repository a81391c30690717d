"""Ask for one fact of a bottle: what it weighs empty or full, what its dasher gives."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.counting import tare_in_words, weighed
from barkeep.application.done import Done
from barkeep.application.settings_of_kinds import checked_house_pour
from barkeep.application.shelving import refuse_dates
from barkeep.desktop.bottles.labels import read_date
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.amounts.measures import read_amount
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Bottle, BottleFacts
from barkeep.domain.bottles.levels import read_weight_g
from barkeep.domain.days import day_said
from barkeep.domain.phrases import begun_small
from barkeep.errors import UserError, spoken_list
from barkeep.translation import tr, tr_noop

FACT = "fact"
WIDTH = 480


@dataclass(frozen=True, slots=True)
class FactTask:
    """One fact to be asked for.

    `preview` says what a text would come to and raises a `UserError` for one
    that cannot be used; `perform` writes it down over what was `seen` of the
    bottle, or of the settings. `empty_means` is what no text at all would come to, where that may
    be written. `word` is one of barkeep's own that it asks for.
    """

    title: str
    verb: str
    label: str
    hint: str
    intro: str
    preview: Callable[[str], str]
    perform: Callable[[str, Any], Done[Any]]
    seen: BottleFacts | Settings
    said: str
    empty_means: str = ""
    word: str = ""


def weigh_empty_task(bar: Bar, bottle: Bottle) -> FactTask:
    """What the bottle weighs with nothing in it."""
    intro = tr("Put the empty bottle on the scale, without its cap.")
    return _weighing(bar, bottle=bottle, how="empty", hint=tr("Such as 520 g"), intro=intro)


def weigh_full_task(bar: Bar, bottle: Bottle) -> FactTask:
    """What the bottle weighs as it came from the shop."""
    intro = tr(
        "Put the full bottle on the scale, without its cap. What it should hold is taken off, "
        "to within what makers may fill over or under."
    )
    return _weighing(bar, bottle=bottle, how="full", hint=tr("Such as 1230 g"), intro=intro)


def dasher_task(bar: Bar, bottle: Bottle) -> FactTask:
    """What one dash from the bottle comes to."""
    title = bottle.product.title
    usual = tr(
        "A dash is what the bar means by one, {dash_ml:g} ml.",
        dash_ml=bar.snapshot.settings.dash_ml,
    )

    def read(text: str) -> float | None:
        units = bar.snapshot.settings.units
        return read_amount(text, "ml", units) if text.strip() else None

    def preview(text: str) -> str:
        dash_ml = read(text)
        if not dash_ml:
            return usual
        return tr("So about {n:.0f} dashes are 10 ml.", n=10.0 / dash_ml)

    return FactTask(
        title=tr("Set the dasher of {title}", title=title),
        verb=tr("Set"),
        label=tr("&One dash is"),
        hint=tr("Such as 0.3 ml"),
        intro=tr(
            "Count the dashes that fill 10 ml, and divide 10 ml by them. Left empty, a dash is "
            "what the bar means by one."
        ),
        preview=preview,
        perform=lambda text, seen: bar.counting.set_dasher(bottle.id, read(text), seen),
        seen=bottle,
        said=tr("Set the dasher of {title}", title=title),
        empty_means=usual,
    )


def use_by_task(bar: Bar, bottle: Bottle) -> FactTask:
    """Until when the bottle is good."""
    title = bottle.product.title

    def read(text: str) -> date | None:
        return read_date(text.strip()) if text.strip() else None

    def preview(text: str) -> str:
        use_by = read(text)
        refuse_dates(bottle.made, use_by)
        if use_by is None:
            return tr("It has no use-by day.")
        return tr("It is used by {day}.", day=day_said(use_by))

    known = f" {tr('So far it is {day}.', day=day_said(bottle.use_by))}" if bottle.use_by else ""
    return FactTask(
        title=tr("Set the use-by day of {title}", title=title),
        verb=tr("Set"),
        label=tr("&Use by"),
        hint=tr("Such as 2026-12-31"),
        intro=tr(
            "Write the day until which it is good.{known} Left empty, it has none.", known=known
        ),
        preview=preview,
        perform=lambda text, seen: bar.inventory.redate(bottle.id, seen.made, read(text), seen),
        seen=bottle,
        said=tr("Set the use-by day of {title}", title=title),
        empty_means=tr("It has no use-by day."),
    )


_POURED_FIRST = {
    (False, False): tr_noop("A spec that says no more than {name} pours it first."),
    (True, False): tr_noop(
        "A spec that says no more than {name} pours it first where it suits the drink."
    ),
    (False, True): tr_noop(
        "A spec that says no more than {name} pours it first, in place of {before}."
    ),
    (True, True): tr_noop(
        "A spec that says no more than {name} pours it first where it suits the drink, "
        "in place of {before}."
    ),
}
"""By whether it must suit the drink, and whether another was poured so far."""


def house_task(bar: Bar, bottle: Bottle) -> FactTask:
    """For which general kind its product is poured."""
    product, tree = bottle.product, bar.snapshot.knowledge.tree
    above = [tree.in_sentence(each) for each in tree.upwards(product.ingredient)]
    kinds = [tree.in_sentence(product.ingredient), *above[:2]]

    def preview(text: str) -> str:
        key = checked_house_pour(text, product, tree).kind
        before = {each.kind: each.product for each in bar.snapshot.settings.house}.get(key)
        known = bar.snapshot.product_by_id.get(before or 0)
        roles = tree.ordinary.roles.get(key)
        suits = roles is not None and bool(roles.dark)
        instead = "" if known is None or known == product else known.title
        name = tree.in_sentence(key)
        return tr(_POURED_FIRST[suits, bool(instead)], name=name, before=instead)

    return FactTask(
        title=tr("Make {title} a house pour", title=product.title),
        verb=tr("Set"),
        label=tr("&House pour for"),
        hint=tr("Such as {kinds}", kinds=spoken_list(kinds)),
        intro=tr(
            "Name the kind that it is poured for where a spec says no more. The settings list "
            "your house pours, and take one away."
        ),
        preview=preview,
        perform=lambda text, seen: bar.settings.set_house_pour(text, product.id, seen),
        seen=bar.snapshot.settings,
        said=tr("{title} is a house pour", title=product.title),
        word="house pour",
    )


def _weighing(bar: Bar, *, bottle: Bottle, how: str, hint: str, intro: str) -> FactTask:
    title, full = bottle.product.title, how == "full"

    def preview(text: str) -> str:
        return weighed(bottle, read_weight_g(text), full, bar.snapshot).sentence

    def perform(text: str, seen: BottleFacts) -> Done[Any]:
        return bar.counting.learn_tare(bottle.id, read_weight_g(text), full, seen)

    known = ""
    if bottle.tare:
        weight = tare_in_words(bottle.tare)
        known = f" {tr('So far it is taken to weigh {weight}.', weight=weight)}"
    return FactTask(
        title=tr("Weigh {title} full" if full else "Weigh {title} empty", title=title),
        verb=tr("Write down"),
        label=tr("&Weight"),
        hint=hint,
        intro=f"{intro}{known}",
        preview=preview,
        perform=perform,
        seen=bottle,
        said=tr("Weighed {title} full" if full else "Weighed {title} empty", title=title),
        word="tare",
    )


class FactDialog(FormDialog):
    """`done_with` carries the sentence to say once the fact is written."""

    done_with = Signal(str)

    def __init__(self, task: FactTask, parent: QWidget | None = None) -> None:
        super().__init__(task.title, task.verb, parent)
        self.task, self._seen = task, task.seen
        self.fact = QLineEdit()
        self.fact.setPlaceholderText(task.hint)
        self.outcome = text_label(task.empty_means, wrap=True)
        self.say_intro(task.intro)
        self.add_field(FACT, task.label, self.fact)
        if task.word:
            self.explain(FACT, task.word)
        self.form.addWidget(self.outcome, self.form.rowCount(), 0, 1, 3)
        self.setMinimumWidth(dialog_width(WIDTH))
        self.fact.textChanged.connect(self._show_outcome)
        self.fact.setFocus()

    def submit(self) -> None:
        text = self.fact.text()
        if not text.strip() and not self.task.empty_means:
            self.refuse(FACT, tr("Write it down, {hint}.", hint=begun_small(self.task.hint)))
        else:
            self.read(FACT, lambda: self.task.preview(text))
        if self.has_problems():
            return
        run_operation(self, lambda: self.task.perform(text, self._seen), self._finish)

    def see(self, theirs: BottleFacts) -> None:
        self._seen = theirs

    def field_of(self, error: UserError) -> str | None:
        return FACT  # whatever is refused here, it is the one field

    def _show_outcome(self, text: str) -> None:
        """What the text would come to; while it is being typed, a mistake is no mistake yet."""
        try:
            words = self.task.preview(text) if text.strip() else self.task.empty_means
        except UserError:
            words = ""
        self.outcome.setText(words)
        self._fit()

    def _finish(self, _done: Done[Any]) -> None:
        self.accept()
        self.done_with.emit(self.task.said)
