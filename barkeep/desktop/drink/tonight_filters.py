"""What the drinks of tonight are filtered by; each filter is a term of the query language."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QWidget

from barkeep.desktop.drink.tonight_rows import TonightRow
from barkeep.desktop.drink.words import ANY_BASE, kinds_by_name
from barkeep.desktop.look.metrics import PAD, UNIT
from barkeep.desktop.widgets.buttons import offer_choices
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.domain.drink.at_the_bar import WHOSE
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.specs.query import DUE_DAYS, MADE

BY_ANYONE = (("Anyone's", None), *((words, key) for key, words in WHOSE.items()))
ANY_TAG = ("Any tag", None)
HOW = (("Made any way", None), *((capitalised(each), f"made:{each}") for each in MADE))
STRENGTHS = (
    ("Any strength", None),
    ("No alcohol", "strength:<0.5"),
    ("Up to 12 % vol", "strength:<12"),
    ("12 to 20 % vol", "strength:12..20"),
    ("20 to 28 % vol", "strength:20..28"),
    ("28 % vol and up", "strength:>28"),
)


class TonightFilters(QWidget):
    """Boxes and ticks that go on below where there is no more room; `changed` tells of any."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.whose, self.bases, self.tags = _box("Whose"), _box("Base", 11), _box("Tag", 9)
        self.how, self.strengths = _box("Made how"), _box("Strength")
        self.no_egg = _tick("No egg", "Nothing that carries egg")
        self.no_nuts = _tick("No nuts", "Nothing that carries tree nuts or peanuts")
        self.due = _tick("Due", f"Uses something that is due within {DUE_DAYS} days")
        self.boxes = (self.whose, self.bases, self.tags, self.how, self.strengths)
        self.ticks = {self.no_egg: "no:egg", self.no_nuts: "no:nuts", self.due: "due"}
        """Each tick and the term it stands for."""
        for box, choices in (
            (self.whose, BY_ANYONE),
            (self.bases, (ANY_BASE,)),
            (self.tags, (ANY_TAG,)),
            (self.how, HOW),
            (self.strengths, STRENGTHS),
        ):
            offer_choices(box, choices)
            box.currentIndexChanged.connect(lambda _index: self.changed.emit())
        for tick in self.ticks:
            tick.toggled.connect(lambda _on: self.changed.emit())
        self.setLayout(FlowLayout((*self.boxes, *self.ticks), gap=UNIT))

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


def _box(name: str, letters: int = 0) -> QComboBox:
    """As wide as its widest choice, or as so many letters."""
    made = QComboBox()
    made.setAccessibleName(name)
    policy = QComboBox.SizeAdjustPolicy
    made.setSizeAdjustPolicy(
        policy.AdjustToMinimumContentsLengthWithIcon if letters else policy.AdjustToContents
    )
    made.setMinimumContentsLength(letters)
    return made


def _tick(words: str, explanation: str) -> QCheckBox:
    made = QCheckBox(words)
    made.setToolTip(explanation)
    made.setMinimumHeight(2 * PAD)  # as high as a box, so that they stand in one row
    return made
