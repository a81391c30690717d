"""Say what may be poured instead of an ingredient; what the owner says wins."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.shelving import NeverOffered
from barkeep.desktop.look.metrics import dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog, read_number
from barkeep.desktop.screens.name_completion import NameCompleter, complete_with, ingredient_names
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.ticks import CheckGroup
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.ingredients.relations import Scope, StandIn
from barkeep.domain.stand_ins.offers import FLOOR
from barkeep.domain.stand_ins.words import SCOPE_WORDS, closeness_word
from barkeep.errors import InvalidField, UnknownName, UserError, spoken_list
from barkeep.translation import tr, tr_noop

T = TypeVar("T")


WIDTH = 580
OFFERED, CLOSENESS, RATIO = tr_noop("offered"), tr_noop("closeness"), tr_noop("ratio")
WHY, SCOPE = tr_noop("why"), tr_noop("scope")
LEAST, MOST = 0.01, 0.99
"""How close an own stand-in may be; what is the same would be a kind of it."""
TOO_FAR = tr_noop("Too far to offer")
EMPTY = {
    OFFERED: tr_noop("Say what is poured instead."),
    CLOSENESS: tr_noop("Say how close it is, 0.01 to 0.99."),
    WHY: tr_noop("Say why in a few words: the reason is shown with every offer."),
}
KNOWN = tr_noop("A stand-in for this is known already; what you write here takes its place.")
OWN = tr_noop("You have said this before; what you write here takes its place.")


class OwnStandInDialog(FormDialog):
    """`added` carries the stand-in."""

    added = Signal(object)

    def __init__(self, bar: Bar, wanted: str, parent: QWidget | None = None) -> None:
        tree = bar.snapshot.knowledge.tree
        super().__init__(
            tr("Add a stand-in for {wanted}", wanted=tree.in_sentence(wanted)),
            tr("Add stand-in"),
            parent,
        )
        self._bar, self._tree, self._wanted = bar, tree, wanted
        self._seen = bar.knowledge.own_stand_ins
        self._scope_chosen = False
        self.edits = {name: QLineEdit() for name in (OFFERED, CLOSENESS, RATIO, WHY)}
        self.scopes = CheckGroup({scope: tr(words) for scope, words in SCOPE_WORDS.items()})
        self._add_fields()
        self._complete()
        self.say_intro(self._plain_intro())
        self.setMinimumWidth(dialog_width(WIDTH))
        self.edits[OFFERED].setFocus()

    def submit(self) -> None:
        draft = self._draft()
        if self.has_problems() or draft is None:
            return
        add, seen = self._bar.knowledge.add_stand_in, self._seen
        run_operation(self, lambda: add(draft, seen), self._finish)

    def see(self, theirs: tuple[StandIn, ...]) -> None:
        self._bar.refresh()
        self._seen = theirs

    def show_theirs(self) -> None:
        offered = self._tree.called(self.edits[OFFERED].text())
        self._fill(None if offered is None else self._known(offered))

    def field_of(self, error: UserError) -> str | None:
        if isinstance(error, UnknownName | NeverOffered):
            return OFFERED
        return super().field_of(error)

    def choose_offered(self, key: str) -> None:
        """Take an ingredient, and what is known of it as a stand-in where nothing is written."""
        self.edits[OFFERED].setText(self._tree.name(key))
        self.forgive(OFFERED)
        self._warn_of_allergens(key)
        entry = self._known(key)
        if not self._is_written():
            self._fill(entry)
        known = tr(OWN if entry is not None and entry.own else KNOWN)
        self.say_intro(self._plain_intro() if entry is None else known)

    # The fields

    def _add_fields(self) -> None:
        wanted = self._tree.in_sentence(self._wanted)
        self.edits[OFFERED].setPlaceholderText(tr("Begin to type any of its names"))
        self.edits[CLOSENESS].setPlaceholderText(tr("{least} to {most}", least=LEAST, most=MOST))
        self.edits[RATIO].setPlaceholderText("1")
        self.add_field(OFFERED, tr("&Pour instead"), self.edits[OFFERED])
        self.add_field(CLOSENESS, tr("&Closeness"), self.edits[CLOSENESS], tr(TOO_FAR))
        self.explain(CLOSENESS, "closeness")
        self.add_field(RATIO, tr("&Ratio"), self.edits[RATIO], tr("times as much"))
        self.edits[RATIO].setToolTip(
            plain_tip(tr("How much of it replaces one part of {wanted}", wanted=wanted))
        )
        self.add_field(WHY, tr("&Why"), self.edits[WHY])
        self.add_field(SCOPE, tr("W&here"), self.scopes, tall=True)
        self.scopes.ticked.connect(self._on_scope)
        word = self.unit_label(CLOSENESS)
        word.setMinimumWidth(word.sizeHint().width())  # the longest it ever says
        word.clear()
        self.edits[CLOSENESS].textChanged.connect(self._show_word)

    def _complete(self) -> None:
        edit = self.edits[OFFERED]
        names = ingredient_names(self._tree, self._bar.snapshot.owned)
        completer = NameCompleter(names, self)
        complete_with(edit, completer, self._on_completed)
        edit.editingFinished.connect(self._on_offered_left)
        edit.textEdited.connect(lambda _text: self.banner.clear())

    def _on_completed(self, index: QModelIndex) -> None:
        self.choose_offered(str(NameCompleter.value(index)))

    def _on_offered_left(self) -> None:
        key = self._tree.called(self.edits[OFFERED].text())
        if key is not None and not self.problem(OFFERED):
            self.choose_offered(key)

    def _on_scope(self) -> None:
        self._scope_chosen = True
        self.forgive(SCOPE)

    def _show_word(self, text: str) -> None:
        """The word for a closeness; while it is being typed, a mistake is no mistake yet."""
        try:
            closeness = _read_closeness(text)
        except UserError:
            closeness = None
        word = "" if closeness is None else closeness_word(closeness)
        self.unit_label(CLOSENESS).setText(tr(TOO_FAR) if closeness and closeness < FLOOR else word)

    # What is known

    def _plain_intro(self) -> str:
        nothing = self._bar.snapshot.knowledge.none_because.get(self._wanted)
        if nothing:
            return tr(
                "So far nothing stands in for it: {nothing}. What you say goes before that.",
                nothing=tr(nothing),
            )
        return tr("What you say goes before what is known already.")

    def _known(self, offered: str) -> StandIn | None:
        entries = self._bar.snapshot.knowledge.stand_ins
        pair = (self._wanted, offered)
        return next((each for each in entries if (each.wanted, each.offered) == pair), None)

    def _is_written(self) -> bool:
        """Whether the owner has written anything beside the name."""
        edited = (self.edits[name].isModified() for name in (CLOSENESS, RATIO, WHY))
        return self._scope_chosen or any(edited)

    def _fill(self, entry: StandIn | None) -> None:
        shown = {CLOSENESS: "", RATIO: "", WHY: ""}
        if entry is not None:
            shown = {CLOSENESS: f"{entry.closeness:g}", RATIO: f"{entry.ratio:g}", WHY: entry.why}
        for name, text in shown.items():
            self.edits[name].setText(text)
            self.forgive(name)
        self.scopes.choose(frozenset(entry.scope if entry is not None else ()))

    def _warn_of_allergens(self, offered: str) -> None:
        had = self._tree[self._wanted].allergens
        brought = sorted(set(self._tree[offered].allergens) - set(had))
        self.banner.clear()
        if brought:
            name = self._tree.name(offered)
            said = tr(
                "{name} brings in {brought} (allergen).",
                name=name,
                brought=spoken_list(list(map(tr, brought)), "and"),
            )
            self.banner.say(said, "warning")

    # Reading

    def _draft(self) -> StandIn | None:
        """What the fields say; None where one of them cannot be used."""
        offered = self._read(OFFERED, self._read_offered)
        closeness = self._read(CLOSENESS, _read_closeness)
        ratio = self._read(RATIO, _read_ratio)
        why = self._read(WHY, lambda text: text)
        scope = self.read(SCOPE, self._read_scope)
        if offered is None or closeness is None or ratio is None or why is None or scope is None:
            return None
        return StandIn(
            wanted=self._wanted,
            offered=offered,
            closeness=closeness,
            ratio=ratio,
            why=why,
            scope=scope,
        )

    def _read(self, name: str, reader: Callable[[str], T]) -> T | None:
        text = self.edits[name].text().strip()
        if not text and name in EMPTY:
            self.refuse(name, tr(EMPTY[name]))
            return None
        return self.read(name, lambda: reader(text))

    def _read_offered(self, text: str) -> str:
        key = find_ingredient(self._tree, text)
        if key != self._wanted and self._tree.is_a(key, self._wanted):
            wanted = self._tree.in_sentence(self._wanted)
            expected = tr("it is a kind of {wanted} and is poured for it anyway", wanted=wanted)
            raise InvalidField(OFFERED, self._tree.name(key), expected)
        return key

    def _read_scope(self) -> tuple[Scope, ...]:
        chosen = self.scopes.chosen
        if {"shaken", "stirred"} <= set(chosen):
            both = tr("shaken and stirred")
            raise InvalidField(
                SCOPE, both, tr("all that is ticked must hold, and no drink is both")
            )
        return chosen

    def _finish(self, done: Done[StandIn]) -> None:
        self.accept()
        self.added.emit(done.value)


def _read_closeness(text: str) -> float | None:
    value = read_number(CLOSENESS, text, "0.85")
    if value is not None and not LEAST <= value <= MOST:
        raise InvalidField(
            CLOSENESS, text.strip(), tr("it is {least} to {most}", least=LEAST, most=MOST)
        )
    return value


def _read_ratio(text: str) -> float:
    """As much as is wanted where nothing is written."""
    value = read_number(RATIO, text, "0.75")
    return 1.0 if value is None else value
