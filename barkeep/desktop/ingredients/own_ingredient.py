"""Say what an unknown name is: a kind of something, or another name for it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Literal

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QLineEdit, QVBoxLayout, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.own_ingredients import (
    UnderstoodAlready,
    allergen_words,
    in_unit,
    new_ingredient,
)
from barkeep.application.owner_knowledge import SaidOf
from barkeep.application.shelving import NeverOffered
from barkeep.desktop.ingredients.stand_in_rows import STAND_INS, StandInRows
from barkeep.desktop.screens.form_dialog import FRAME, FormDialog, read_number
from barkeep.desktop.screens.name_completion import NameCompleter, ingredient_names
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import order_tabs
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.ticks import CheckGroup
from barkeep.domain.cautions.allergens import allergens_of, shipped_allergens
from barkeep.domain.ingredients.names import bare_name
from barkeep.domain.ingredients.own import likely_kind
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import folded
from barkeep.errors import DuplicateName, InvalidField, UnknownName, UserError, spoken_list
from barkeep.translation import tr, tr_noop

Way = Literal["new", "name"]
"""A kind of its own, or another name for one that is known."""
WAYS = (
    (
        "new",
        tr_noop("Something of its own"),
        tr_noop("A new ingredient, a kind of one that is known"),
    ),
    ("name", tr_noop("Another name"), tr_noop("Another name for an ingredient that is known")),
)
NAME, KIND, UNIT = tr_noop("name"), tr_noop("kind"), tr_noop("unit")
NAMES, KEEPS = tr_noop("other names"), tr_noop("keeps")
STRENGTH, SUGAR, ACID = tr_noop("strength"), tr_noop("sugar"), tr_noop("acid")
ALLERGENS = tr_noop("allergens")
TITLES: dict[Way, str] = {"new": tr_noop("New ingredient"), "name": tr_noop("Another name")}
VERBS: dict[Way, str] = {"new": tr_noop("Add ingredient"), "name": tr_noop("Add the name")}
KIND_LABELS: dict[Way, str] = {"new": tr_noop("A &kind of"), "name": tr_noop("Is a name &for")}
INTROS: dict[Way, str] = {
    "new": tr_noop(
        "Only its name and its kind are needed; figures left empty are as its kind has them."
    ),
    "name": tr_noop("From now on the name is understood wherever it is written."),
}
GUESSED = tr_noop("What it is called suggests this kind; write another where that is wrong.")
SAY_KIND: dict[Way, str] = {
    "new": tr_noop("Say what it is a kind of, such as syrup."),
    "name": tr_noop("Say which ingredient is meant."),
}
UNITS = ((tr_noop("As its kind"), None), ("ml", "ml"), ("g", "g"), (tr_noop("Pieces"), "each"))
FIELDS = {"alias": NAMES, "parents": KIND, "shelf life": KEEPS, "allergen": ALLERGENS}
"""What a use case calls a field, where this form calls it otherwise."""
OF_STAND_INS = ("closeness", "ratio", "why", "scope", "offered")
ROOM = 128
"""Letters across; where the screen has fewer, the fields stand in one column."""


class OwnIngredientDialog(FormDialog):
    """`taught` carries the key of the ingredient that is new, changed or has one more name.

    `words` are the unknown ones that it begins from; with `changes`, the key of an own
    ingredient, that one is changed instead.
    """

    taught = Signal(str)
    scrolls = True

    def __init__(
        self,
        bar: Bar,
        words: str = "",
        *,
        way: Way = "new",
        changes: str | None = None,
        parent: QWidget | None = None,
    ) -> None:
        self._bar, self._tree = bar, bar.snapshot.knowledge.tree
        self._before = None if changes is None else bar.knowledge.as_said(changes)
        self._seen = None if changes is None else bar.knowledge.said_of(changes)
        name = bare_name(" ".join(words.split())) if self._before is None else self._before.name
        title = TITLES[way] if self._before is None else tr("Change {name}", name=name)
        super().__init__(title, VERBS[way] if self._before is None else tr("Change"), parent)
        self.ways = FilterChips(tr("It is"), WAYS, way)
        plain = (NAME, KIND, NAMES, KEEPS, STRENGTH, SUGAR, ACID)
        self.edits = {each: QLineEdit() for each in plain}
        self.unit = QComboBox()
        self._guessed = False
        names = ingredient_names(self._tree)
        self.stand_ins = StandInRows(names)
        carried = {each: tr(each) for each in allergen_words()}
        self.allergens: CheckGroup[str] = CheckGroup(carried, beside=True)
        self._add_fields()
        self.edits[KIND].setCompleter(NameCompleter(names, self))
        self._connect()
        self._begin(name)

    @property
    def way(self) -> Way:
        """What it is going to be."""
        return "name" if self.ways.choice == "name" else "new"

    def submit(self) -> None:
        self.clear_refusal()
        name, kinds = self.edits[NAME].text().strip(), self._kinds()
        if not name:
            self.refuse(NAME, tr("Write what it is called."))
        if not kinds:
            self.refuse(KIND, tr(SAY_KIND[self.way]))
        if self.way == "name":
            self._submit_name(name)
        else:
            self._submit_ingredient(name)

    def field_of(self, error: UserError) -> str | None:
        match error:
            case UnknownName():
                return KIND
            case NeverOffered():
                return STAND_INS
            case DuplicateName(_, name) | UnderstoodAlready(name):
                return NAME if folded(name) == folded(self.edits[NAME].text()) else NAMES
            case InvalidField(field) if field in OF_STAND_INS:
                return STAND_INS
            case InvalidField("alias") if self.way == "name":
                return NAME
            case InvalidField(field):
                return FIELDS.get(field) or super().field_of(error)
        return None

    # Writing

    def _submit_name(self, name: str) -> None:
        key = self.read(KIND, lambda: find_ingredient(self._tree, self.edits[KIND].text()))
        if key is not None and not self.has_problems():
            run_operation(self, lambda: self._bar.knowledge.add_name(key, name), self._finish)

    def _submit_ingredient(self, name: str) -> None:
        draft = self._draft(name)
        if draft is None or self.has_problems():
            self.has_problems()
            return
        said = self.read(STAND_INS, lambda: self._read_stand_ins(draft.key))
        if said is None:
            self.has_problems()
            return
        add = self._bar.knowledge.add_ingredient
        seen = self._seen or SaidOf(None, ())  # a new one is to take the place of none
        run_operation(self, lambda: add(draft, said, seen), self._finish)

    def see(self, theirs: SaidOf) -> None:
        self._bar.refresh()
        self._tree = self._bar.snapshot.knowledge.tree
        self._seen = theirs

    def show_theirs(self) -> None:
        theirs = None if self._seen is None else self._seen.ingredient
        if theirs is not None:
            self._before = theirs
            self.edits[NAME].setText(theirs.name)
            self._fill(theirs)

    def _finish(self, done: Done[Ingredient]) -> None:
        self.accept()
        self.taught.emit(done.value.key)

    def _kinds(self) -> list[str]:
        return [each.strip() for each in self.edits[KIND].text().split(";") if each.strip()]

    def _draft(self, name: str) -> Ingredient | None:
        """What the fields say; None where one of them cannot be used."""
        strength = self._number(STRENGTH, lambda text: read_strength(text, STRENGTH))
        sugar = self._number(SUGAR, lambda text: read_number(SUGAR, text, "240"))
        acid = self._number(ACID, lambda text: read_number(ACID, text, "45"))
        keeps = self._number(KEEPS, _read_days)
        kinds = self._kinds()
        begun = self.read(KIND, lambda: self._begun(name, kinds)) if kinds else None
        if begun is None:
            return None
        names = (each.strip() for each in self.edits[NAMES].text().split(","))
        return replace(
            begun,
            name=name,
            aliases=tuple(each for each in names if each),
            abv_percent=strength,
            sugar_g_per_l=sugar,
            acid_g_per_l=acid,
            shelf_life_days=None if keeps is None else round(keeps),
            allergens=(*self.allergens.chosen, *self._unlisted()),
        )

    def _begun(self, name: str, kinds: list[str]) -> Ingredient:
        unit = self.unit.currentData()
        if self._before is None:
            return new_ingredient(name or "?", kinds, self._tree, unit)
        parents = tuple(find_ingredient(self._tree, each) for each in kinds)
        return in_unit(replace(self._before, parents=parents), unit, self._tree)

    def _number(self, field: str, reader: Callable[[str], float | None]) -> float | None:
        text = self.edits[field].text().strip()
        return self.read(field, lambda: reader(text)) if text else None

    def _read_stand_ins(self, key: str) -> tuple[StandIn, ...]:
        said = self.stand_ins.read(key)
        for each in said:
            other = each.wanted if each.offered == key else each.offered
            if other != key:
                try:
                    find_ingredient(self._tree, other)
                except UnknownName as error:
                    expected = _no_such(error)
                    raise InvalidField(STAND_INS, other, expected) from error
        return said

    def _unlisted(self) -> tuple[str, ...]:
        """Words of the owner's for what it carries that are on no list; they stay."""
        known = shipped_allergens().by_word
        carried = () if self._before is None else self._before.allergens
        return tuple(each for each in carried if folded(each) not in known)

    # What it shows

    def _begin(self, name: str) -> None:
        self.edits[NAME].setText(name)
        if self._before is not None:
            self.ways.hide()
            self._fill(self._before)
        else:
            kind = likely_kind(name, self._tree)
            if kind is not None:
                self.edits[KIND].setText(self._tree.name(kind))
                self._guessed = True
        self._show_way()
        first = self.edits[KIND if name and self._before is None else NAME]
        first.setFocus(Qt.FocusReason.OtherFocusReason)
        first.selectAll()

    def _fill(self, of: Ingredient) -> None:
        self.edits[KIND].setText("; ".join(map(self._tree.name, of.parents)))
        self.edits[NAMES].setText(", ".join(of.aliases))
        for field, value in (
            (KEEPS, of.shelf_life_days),
            (STRENGTH, of.abv_percent),
            (SUGAR, of.sugar_g_per_l),
            (ACID, of.acid_g_per_l),
        ):
            unit = " %" if field == STRENGTH else ""
            self.edits[field].setText("" if value is None else f"{value:g}{unit}")
        self.unit.setCurrentIndex(self.unit.findData(of.unit))
        known = shipped_allergens()
        self.allergens.choose(frozenset(known.called(each).word for each in of.allergens))
        said = self._bar.knowledge.own_stand_ins_of(of.key)
        self.stand_ins.show_entries(said, of.key, self._tree)

    def _show_way(self) -> None:
        way = self.way
        for part in self._of_new:
            part.setVisible(way == "new")
        label = tr(KIND_LABELS[way])
        self.fields[KIND].label.setText(label)
        self.edits[KIND].setAccessibleName(label.replace("&", ""))
        guessed = f"{tr(GUESSED)} " if self._guessed and way == "new" else ""
        self.say_intro(f"{guessed}{tr(INTROS[way])}")
        if self._before is None:
            self.setWindowTitle(tr(TITLES[way]))
            self.heading.setText(tr(TITLES[way]))
            self.accept_button.setText(tr(VERBS[way]))
            self.accept_button.setAccessibleName(tr(VERBS[way]))
        self.clear_refusal()
        self._show_kind()

    def _show_kind(self) -> None:
        """What is usual for the kind stands where nothing is written."""
        keys = [self._tree.by_name.get(folded(each)) for each in self._kinds()]
        kind = next((self._tree[key] for key in keys if key), None)
        usual = {
            STRENGTH: kind and kind.abv_percent,
            SUGAR: kind and kind.sugar_g_per_l,
            ACID: kind and kind.acid_g_per_l,
        }
        for field, value in usual.items():
            self.edits[field].setPlaceholderText(
                "" if value is None else tr("Usual: {value:g}", value=value)
            )
        carried = [tr(each.word) for each in allergens_of([kind.key], self._tree)] if kind else []
        said = ""
        if kind and carried:
            said = tr(
                "{name} carries {carried}, so this does as well.",
                name=kind.name,
                carried=spoken_list(carried, "and"),
            )
        self._carried.setText(said)
        self._carried.setVisible(bool(said))

    def _add_fields(self) -> None:
        edits = self.edits
        outer = self.layout()
        assert isinstance(outer, QVBoxLayout)
        outer.insertWidget(1, self.ways, 0, Qt.AlignmentFlag.AlignLeft)
        self.add_field(NAME, tr("&Name"), edits[NAME])
        self.add_field(KIND, KIND_LABELS["new"], edits[KIND])
        edits[KIND].setPlaceholderText(tr("Begin to type any of its names"))
        figures = self.begin_part()
        self.add_field(UNIT, tr("Kept &in"), self.unit)
        self.add_field(NAMES, tr("&Other names"), edits[NAMES])
        self.add_field(KEEPS, tr("Keeps &for"), edits[KEEPS], tr("days"))
        edits[NAMES].setPlaceholderText(tr("Parted by commas"))
        if self._has_room():
            self.begin_column()
        self.add_field(STRENGTH, tr("S&trength"), edits[STRENGTH], "% vol")
        self.add_field(SUGAR, tr("S&ugar"), edits[SUGAR], tr("g per litre"))
        self.add_field(ACID, tr("Aci&d"), edits[ACID], tr("g per litre"))
        below = self.begin_part()
        self.add_field(STAND_INS, tr("&Stand-ins"), self.stand_ins, tall=True)
        self.add_field(ALLERGENS, tr("A&llergens"), self.allergens, tall=True)
        self.allergens.setFocusPolicy(Qt.FocusPolicy.ClickFocus)  # as the rows above them
        self._carried = text_label("", quiet=True, wrap=True)
        carried = self.allergens.layout()
        assert carried is not None
        carried.addWidget(self._carried)
        self._of_new = (figures, below)
        for words, value in UNITS if self._before is None else UNITS[1:]:
            self.unit.addItem(tr(words), value)
        self._line_up()
        across = self.screen().availableGeometry().width() - FRAME
        self.setMinimumWidth(min(self._wanted_width(), across))
        order_tabs(self)

    def _line_up(self) -> None:
        """Begin the fields of every part at the same place."""
        first = (NAME, KIND, UNIT, NAMES, KEEPS, STAND_INS, ALLERGENS)
        labels = [self.fields[name].label for name in first]
        if not self._has_room():
            labels += [self.fields[name].label for name in (STRENGTH, SUGAR, ACID)]
        longest = max(label.sizeHint().width() for label in labels)
        for label in labels:
            label.setMinimumWidth(longest)

    def _on_grown(self) -> None:
        self.forgive(STAND_INS)
        order_tabs(self)
        self._fit()

    def _has_room(self) -> bool:
        return self._wanted_width() < self.screen().availableGeometry().width()

    def _wanted_width(self) -> int:
        return ROOM * self.fontMetrics().averageCharWidth()

    def _connect(self) -> None:
        self.ways.chosen.connect(lambda _way: self._show_way())
        self.edits[KIND].textChanged.connect(lambda _text: self._show_kind())
        self.stand_ins.grown.connect(self._on_grown)


def _read_days(text: str) -> float:
    if not text.isdecimal():
        raise InvalidField(KEEPS, text, tr("it is a whole number of days, such as 30"))
    return float(text)


def _no_such(error: UnknownName) -> str:
    if not error.nearest:
        return tr("there is no ingredient of this name; add it first")
    return tr(
        "there is no ingredient of this name; the nearest are {names}",
        names=spoken_list(error.nearest, "and"),
    )
