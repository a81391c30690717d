"""What the drinks of tonight are filtered by; each filter is a term of the query language."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from barkeep.desktop.drink.tonight_rows import TonightRow
from barkeep.desktop.drink.words import ANY_BASE, kinds_by_name
from barkeep.desktop.look.metrics import HALF
from barkeep.desktop.widgets.buttons import button, offer_choices
from barkeep.desktop.widgets.chips import ChoiceChip, FlowLayout, tick_chip
from barkeep.domain.cautions.allergens import shipped_allergens
from barkeep.domain.drink.at_the_bar import WHOSE
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.domain.specs.query import DUE_DAYS, MADE
from barkeep.translation import tr, tr_about, tr_noop

BY_ANYONE = ((tr_noop("Anyone's"), None), *((words, key) for key, words in WHOSE.items()))
ANY_TAG = (tr_noop("Any tag"), None)
ANY_WAY = (tr_noop("Made any way"), None)
_TECHNIQUES: Mapping[Technique, str] = {
    "shaken": tr_noop("Shaken"),
    "stirred": tr_noop("Stirred"),
    "built": tr_noop("Built"),
    "blended": tr_noop("Blended"),
    "swizzled": tr_noop("Swizzled"),
    "hot": tr_noop("Hot"),
    "thrown": tr_noop("Thrown"),
}
HOW = (ANY_WAY, *((_TECHNIQUES[each], f"made:{each}") for each in MADE))
STRENGTH = (
    (tr_noop("Any strength"), None),
    (tr_noop("Alcohol-free, under 0.5 % vol"), "strength:free"),
    (tr_noop("Light, up to 12 % vol"), "strength:light"),
    (tr_noop("Medium, 12 to 20 % vol"), "strength:medium"),
    (tr_noop("Strong, 20 % vol and up"), "strength:strong"),
    (tr_noop("Very strong, 28 % vol and up"), "strength:>=28"),
)
CLEAR_KEYS = "Ctrl+0"


WHATEVER = (tr_noop("Whatever it carries"), None)


class TonightFilters(QWidget):
    """Chips that go on below where there is no more room; each is a term of the query.

    `changed` tells of any; `clear_wanted` comes from the button that is there once one is on.
    """

    changed = Signal()
    clear_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.whose, self.bases, self.tags = map(ChoiceChip, (tr("Whose"), tr("Base"), tr("Tag")))
        self.how, self.strengths = (
            ChoiceChip(tr("Made how")),
            ChoiceChip(tr_about("filter", "Strength")),
        )
        self.free_of = ChoiceChip(tr("Free of"))
        self.no_egg = tick_chip(tr("No egg"), tr("Nothing that carries egg"))
        self.no_nuts = tick_chip(tr("No nuts"), tr("Nothing that carries tree nuts or peanuts"))
        self.due = tick_chip(
            tr("Due"), tr("Uses something that is due within {days} days", days=DUE_DAYS)
        )
        self.boxes = (self.whose, self.bases, self.tags, self.how, self.strengths, self.free_of)
        self._clear = button("", self.clear_wanted.emit)
        self._clear.setProperty("chip", True)
        self._clear.setToolTip(tr("Show every drink again ({keys})", keys=CLEAR_KEYS))
        self.ticks = {self.no_egg: "no:egg", self.no_nuts: "no:nuts", self.due: "due"}
        """Each tick and the term it stands for."""
        for box, choices in (
            (self.whose, BY_ANYONE),
            (self.bases, (ANY_BASE,)),
            (self.tags, (ANY_TAG,)),
            (self.how, HOW),
            (self.strengths, STRENGTH),
            (self.free_of, _free_of()),
        ):
            offer_choices(box, [(tr(words), value) for words, value in choices])
            box.currentIndexChanged.connect(self._on_change)
        for tick in self.ticks:
            tick.toggled.connect(self._on_change)
        self.setLayout(FlowLayout((*self.boxes, *self.ticks, self._clear), gap=HALF + 2))
        self._offer_to_clear()

    @property
    def count(self) -> int:
        """How many of them are on."""
        return sum(box.currentIndex() > 0 for box in self.boxes) + sum(
            tick.isChecked() for tick in self.ticks
        )

    @property
    def query(self) -> str:
        """What is asked for, as it would be typed."""
        chosen = (box.currentData() for box in self.boxes)
        ticked = (term for tick, term in self.ticks.items() if tick.isChecked())
        return " ".join(each for each in (*chosen, *ticked) if each)

    def offer(self, rows: Sequence[TonightRow], tree: FamilyTree) -> None:
        """Offer the bases and tags that occur; a choice stays where it still stands."""
        kinds = kinds_by_name({each.base_kind for each in rows if each.base_kind}, tree)
        offer_choices(
            self.bases, [_said(ANY_BASE), *((name, _term("base", key)) for name, key in kinds)]
        )
        tags = _each_once(tag for each in rows for tag in each.spec.tags)
        offer_choices(self.tags, [_said(ANY_TAG), *((tag, _term("tag", tag)) for tag in tags)])

    def clear(self) -> None:
        """Ask for nothing."""
        for box in self.boxes:
            box.setCurrentIndex(0)
        for tick in self.ticks:
            tick.setChecked(False)

    def _on_change(self, _choice: object) -> None:
        self._offer_to_clear()
        self.changed.emit()

    def _offer_to_clear(self) -> None:
        self._clear.setText(tr("Clear {count}", count=self.count))
        filters = counted(self.count, "filter")
        self._clear.setAccessibleName(tr("Clear {filters}", filters=filters))
        self._clear.setVisible(self.count > 0)


def _free_of() -> tuple[tuple[str, str | None], ...]:
    """Every allergen of the lists; two that are asked for most have a chip of their own."""
    allergens = (each.word for each in shipped_allergens().all)
    return (
        WHATEVER,
        *((tr("No {allergen}", allergen=tr(each)), f'no:"{each}"') for each in allergens),
    )


def _said(choice: tuple[str, None]) -> tuple[str, None]:
    return tr(choice[0]), choice[1]


def _term(field: str, value: str) -> str:
    """A term of the query language; a quotation mark would end its value."""
    plain = value.replace('"', " ")
    return f'{field}:"{plain}"'


def _each_once(tags: Iterable[str]) -> tuple[str, ...]:
    """Tags by name, each as it is written first."""
    first: dict[str, str] = {}
    for tag in tags:
        first.setdefault(tag.casefold(), tag)
    return tuple(first[each] for each in sorted(first))
