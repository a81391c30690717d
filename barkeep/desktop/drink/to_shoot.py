"""Drinks put into a shoot: the next one stands ready, another can be chosen, or one begun."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import Screen
from barkeep.desktop.widgets.buttons import day_field, day_in, offer
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.days import day_short
from barkeep.domain.shoots.running_order import Addition, next_shoot, open_shoots, with_added
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

ADD_TO_SHOOT = tr_noop("Add to a s&hoot…")
ADD_TO_SHOOT_KEYS = "Ctrl+J"
WIDTH = 440
SHOOT, THEME, ON = "shoot", "theme", "on"
NEXT_DAYS = 7
"""A shoot that is begun here is planned so many days ahead, to begin with."""


def add_to_shoot(screen: Screen, specs: Sequence[Spec]) -> None:
    """Ask over a page which shoot these drinks go into, and say there what was done."""

    def said(done: Done[Addition]) -> None:
        if done.changes:
            screen.say_done(done.value.in_words)
        else:
            screen.context.toast.say(done.value.in_words)

    if screen.held:
        screen.banner.say(screen.held, "info")
    elif specs:
        dialog = AddToShoot(screen.context.bar, specs, screen)
        dialog.written.connect(said)
        screen.open_dialog(dialog)


class AddToShoot(FormDialog):
    """`written` carries what was done."""

    written = Signal(object)

    def __init__(self, bar: Bar, specs: Sequence[Spec], parent: QWidget | None = None) -> None:
        super().__init__(tr("Add to a shoot"), tr("Add"), parent)
        self._bar, self._specs = bar, tuple(specs)
        snapshot = bar.snapshot
        self._shoots = open_shoots(snapshot.shoots, snapshot.on)
        self.shoot = QComboBox()
        self.theme = QLineEdit()
        self.on = day_field(snapshot.on + timedelta(days=NEXT_DAYS))
        for each in self._shoots:
            self.shoot.addItem(_said(each), each.id)
        self.shoot.addItem(tr("A new shoot"), None)
        self.add_field(SHOOT, tr("&Shoot"), self.shoot)
        self.add_field(THEME, tr("&Theme"), self.theme)
        self.add_field(ON, tr("&Day"), self.on)
        likely = next_shoot(snapshot.shoots, snapshot.on)
        self.shoot.setCurrentIndex(self.shoot.findData(None if likely is None else likely.id))
        self.shoot.currentIndexChanged.connect(lambda _row: self._show_choice())
        self._show_choice()
        self.setMinimumWidth(dialog_width(WIDTH))
        (self.shoot if likely else self.theme).setFocus()

    def submit(self) -> None:
        self.clear_refusal()
        run_operation(self, self._add, self._finish)
        self.has_problems()  # which takes the keyboard to what is lacking

    def _add(self) -> Done[Addition]:
        shoots, chosen = self._bar.shoots, self._chosen
        if chosen is not None and chosen.id is not None:
            return shoots.add_drinks(chosen.id, self._specs)
        planned = with_added(self._new, self._specs)
        done = shoots.add(planned.shoot)
        begun = Addition(done.value, planned.added, planned.there)
        return Done(begun, done.changes, done.label, done.step)

    def _finish(self, done: Done[Addition]) -> None:
        self.accept()
        self.written.emit(done)

    @property
    def _chosen(self) -> Shoot | None:
        """The shoot that is chosen; None for a new one."""
        row = self.shoot.currentIndex()
        return self._shoots[row] if row < len(self._shoots) else None

    @property
    def _new(self) -> Shoot:
        return Shoot(None, self.theme.text(), day_in(self.on))

    def _show_choice(self) -> None:
        """Say what would be added to what is chosen, and ask for what a new one needs."""
        chosen = self._chosen
        for name in (THEME, ON):
            field = self.fields[name]
            field.label.setVisible(chosen is None)
            field.widget.setVisible(chosen is None)
        self.forgive(THEME)
        planned = with_added(chosen or self._new, self._specs)
        self.say_intro(_plan_in_words(planned))
        offer(self.accept_button, "" if planned.added else tr("Nothing would be added"))


def _said(shoot: Shoot) -> str:
    return f"{shoot.theme} · {day_short(shoot.on)}"


def _plan_in_words(planned: Addition) -> str:
    """What would be added at the end, and what stands there already."""
    sentences = []
    if planned.added:
        names = spoken_list(planned.added, "and")
        sentences.append(tr("Added at the end: {names}.", names=names))
    if planned.there:
        sentences.append(tr("There already: {names}.", names=spoken_list(planned.there, "and")))
    return " ".join(sentences)
