"""What the drinks of tonight are filtered by; each filter is a term of the query language."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from barkeep.desktop.drink.tonight_rows import TonightRow
from barkeep.desktop.drink.words import ANY_BASE, kinds_by_name
from barkeep.desktop.look.metrics import HALF
from barkeep.desktop.widgets.buttons import button, offer_choices
from barkeep.desktop.widgets.chips import ChoiceChip, FlowLayout, tick_chip
from barkeep.domain.cautions.allergens import shipped_allergens
from barkeep.domain.drink.at_the_bar import WHOSE
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised, counted
from barkeep.domain.specs.query import DUE_DAYS, MADE

BY_ANYONE = (("Anyone's", None), *((words, key) for key, words in WHOSE.items()))
ANY_TAG = ("Any tag", None)
HOW = (("Made any way", None), *((capitalised(each), f"made:{each}") for each in MADE))
STRENGTH = (
    ("Any strength", None),
    ("Alcohol-free, under 0.5 % vol", "strength:free"),
    ("Light, up to 12 % vol", "strength:light"),
    ("Medium, 12 to 20 % vol", "strength:medium"),
    ("Strong, 20 % vol and up", "strength:strong"),
    ("Very strong, 28 % vol and up", "strength:>=28"),
)
CLEAR_KEYS = "Ctrl+0"


FREE_OF = (
    ("Whatever it carries", None),
    *((f"No {each.word}", f'no:"{each.word}"') for each in shipped_allergens().all),
)
"""Every allergen of the lists; two that are asked for most have a chip of their own."""


class TonightFilters(QWidget):
    """Chips that go on below where there is no more room; each is a term of the query.

    `changed` tells of any; `clear_wanted` comes from the button that is there once one is on.
    """

    changed = Signal()
    clear_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.whose, self.bases, self.tags = map(ChoiceChip, ("Whose", "Base", "Tag"))
        self.how, self.strengths = ChoiceChip("Made how"), ChoiceChip("Strength")
        self.free_of = ChoiceChip("Free of")
        self.no_egg = tick_chip("No egg", "Nothing that carries egg")
        self.no_nuts = tick_chip("No nuts", "Nothing that carries tree nuts or peanuts")
        self.due = tick_chip("Due", f"Uses something that is due within {DUE_DAYS} days")
        self.boxes = (self.whose, self.bases, self.tags, self.how, self.strengths, self.free_of)
        self._clear = button("", self.clear_wanted.emit)
        self._clear.setProperty("chip", True)
        self._clear.setToolTip(f"Show every drink again ({CLEAR_KEYS})")
        self.ticks = {self.no_egg: "no:egg", self.no_nuts: "no:nuts", self.due: "due"}
        """Each tick and the term it stands for."""
        for box, choices in (
            (self.whose, BY_ANYONE),
            (self.bases, (ANY_BASE,)),
            (self.tags, (ANY_TAG,)),
            (self.how, HOW),
            (self.strengths, STRENGTH),
            (self.free_of, FREE_OF),
        ):
            offer_choices(box, choices)
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
        offer_choices(self.bases, [ANY_BASE, *((name, _term("base", key)) for name, key in kinds)])
        tags = _each_once(tag for each in rows for tag in each.spec.tags)
        offer_choices(self.tags, [ANY_TAG, *((tag, _term("tag", tag)) for tag in tags)])

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
        self._clear.setText(f"Clear {self.count}")
        self._clear.setAccessibleName(f"Clear {counted(self.count, 'filter')}")
        self._clear.setVisible(self.count > 0)


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
