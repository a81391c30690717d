"""How a bottle is shown and spoken of, what a search finds it by, and which filters keep it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Literal

from PySide6.QtCore import Qt

from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE, SUBTITLE_ROLE
from barkeep.desktop.widgets.levels import LevelReading
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import STATE_WORDS, Bottle, Entry, Level
from barkeep.domain.bottles.going_off import End, off_in_words
from barkeep.domain.bottles.level_words import number, percent, quantity
from barkeep.domain.days import day_of_year_short, day_short
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import begun_small, capitalised, folded, price_in_words
from barkeep.translation import tr, tr_noop

SHELF, BOTTLE, LEVEL, LEFT, USE_BY, INGREDIENT, OPENED, PRICE = range(8)
"""The columns, left to right."""
Mark = Literal["past", "due", "low", "empty"]


@dataclass(frozen=True, slots=True)
class BottleRow:
    """One bottle with what the list needs beside it; `place` counts along the shelf from 1."""

    bottle: Bottle
    place: int
    ingredient: str
    words: str
    on: date
    end: End | None = None

    @property
    def last(self) -> date | None:
        """The last day it is good, by its own date or by how long it is open."""
        return None if self.end is None else self.end.last

    @property
    def past(self) -> bool:
        """Whether that day is over while something is left."""
        return self.bottle.level.amount > 0 and self.end is not None and self.end.is_over(self.on)

    @property
    def due(self) -> bool:
        """Whether something is left whose last day is over or will be within a few days."""
        return self.bottle.level.amount > 0 and self.end is not None and self.end.is_due(self.on)

    @property
    def low(self) -> bool:
        """Whether it is open and nearly used up."""
        return self.bottle.is_low

    @property
    def pantry(self) -> bool:
        """Whether it is counted in pieces or weighed."""
        return self.bottle.product.unit != "ml"


KINDS: Mapping[str, Callable[[BottleRow], bool]] = {
    "all": lambda row: True,
    "bottles": lambda row: not row.pantry,
    "pantry": lambda row: row.pantry,
}
STATES: Mapping[str, Callable[[BottleRow], bool]] = {
    "any": lambda row: True,
    "open": lambda row: row.bottle.level.state == "open",
    "sealed": lambda row: row.bottle.level.state == "sealed",
    "empty": lambda row: row.bottle.level.state == "empty",
    "low": lambda row: row.low or row.due,
}


def bottle_rows(snapshot: Snapshot) -> tuple[BottleRow, ...]:
    """A row for each bottle along the shelf."""
    tree = snapshot.knowledge.tree
    kinds = {key: _kind_words(key, tree) for key in {each.ingredient for each in snapshot.bottles}}
    along = sorted(snapshot.bottles, key=lambda each: (each.position, each.id))
    return tuple(
        BottleRow(
            bottle=bottle,
            place=place,
            ingredient=tree.name(bottle.ingredient),
            words=f"{_label_words(bottle)} {kinds[bottle.ingredient]}",
            on=snapshot.on,
            end=snapshot.ends.get(bottle.id),
        )
        for place, bottle in enumerate(along, 1)
    )


def bottle_columns() -> tuple[Column[BottleRow], ...]:
    """Place along the shelf, bottle, level, what is left, use by, ingredient, opened, price."""
    return (
        Column(tr("Shelf"), lambda row: str(row.place), key=lambda row: row.place),
        Column(
            tr("Bottle"),
            lambda row: row.bottle.product.name,
            key=lambda row: (folded(row.bottle.product.title), row.place),
            tooltip=lambda row: row.bottle.product.title,
            roles={SUBTITLE_ROLE: _below_name, ICONS_ROLE: _marks},
        ),
        Column(
            tr("Level"),
            lambda row: "",
            key=lambda row: (row.bottle.share, row.place),
            tooltip=lambda row: level_in_words(row.bottle),
            roles={
                LEVEL_ROLE: lambda row: reading_of(row.bottle),
                Qt.ItemDataRole.AccessibleTextRole: lambda row: level_in_words(row.bottle),
            },
        ),
        Column(
            tr("Left"),
            lambda row: left_of(row.bottle),
            key=lambda row: (row.bottle.level.amount, row.place),
            roles={SUBTITLE_ROLE: lambda row: _state(row)},
        ),
        Column(
            tr("Use by"),
            _use_by,
            key=lambda row: (row.last or date.max, row.place),
            tooltip=use_by_in_words,
            roles={ICONS_ROLE: lambda row: ("warning",) if row.past else ()},
        ),
        Column(
            tr("Ingredient"),
            lambda row: row.ingredient,
            key=lambda row: (folded(row.ingredient), row.place),
            tooltip=lambda row: row.ingredient,
        ),
        Column(
            tr("Opened"),
            lambda row: short_date(row.bottle.level.opened, row.on),
            key=lambda row: (row.bottle.level.opened or date.max, row.place),
        ),
        Column(
            tr("Price"),
            lambda row: price_in_words(row.bottle.product.price, unknown=NONE),
            key=lambda row: (row.bottle.product.price or 0.0, row.place),
            right=True,
        ),
    )


def reading_of(bottle: Bottle) -> LevelReading:
    """What a gauge draws of a bottle."""
    return LevelReading(bottle.share, sealed=bottle.level.state == "sealed")


def use_by_in_words(row: BottleRow) -> str:
    """The use-by date and how it stands today; empty where there is none."""
    last, end = row.last, row.end
    if last is None or end is None:
        return ""
    day = short_date(last, row.on)
    days = (last - row.on).days
    if row.past and end.begun is not None:
        return off_in_words(row.bottle.product.title, end, row.on)
    if row.past:
        faded = end.after == "past_its_best"
        if faded:
            return tr("Past its use-by date, {day}: taste it before using it", day=day)
        return tr("Past its use-by date, {day}: not counted, make it anew or waste it", day=day)
    if days < 0:
        return tr("{day}, and nothing is left", day=day)
    return f"{day}: {_days(days)}"


def _days(days: int) -> str:
    if days == 0:
        return tr("the last day is today")
    return tr("one more day") if days == 1 else tr("{days} more days", days=days)


def _use_by(row: BottleRow) -> str:
    day = short_date(row.last, row.on)
    return f"{_past_word(row)}: {day}" if row.past else day


def _past_word(row: BottleRow) -> str:
    """What it is past its date, told apart: only faded, or not to be used."""
    return tr("Faded") if row.end is not None and row.end.after == "past_its_best" else tr("Past")


def _below_name(row: BottleRow) -> str:
    product = row.bottle.product
    if product.maker:
        return product.maker
    if product.house_made:
        return tr("House-made")
    if row.pantry:
        return tr("Pantry")
    same = folded(row.ingredient) == folded(product.name)
    return tr("No maker") if same else row.ingredient


def _state(row: BottleRow) -> str:
    """The state, and the word *low* with it: the gauge alone must not carry that."""
    state = tr(STATE_WORDS[row.bottle.level.state])
    return tr("{state}, low", state=state) if row.low else state


def _marks(row: BottleRow) -> tuple[str, ...]:
    return ("house-made",) if row.bottle.product.house_made else ()


def marks_of(row: BottleRow) -> tuple[tuple[Mark, str], ...]:
    """What there is to know of a bottle at a glance, each with its word."""
    age: tuple[tuple[Mark, str], ...] = ()
    if row.past:
        age = (("past", begun_small(_past_word(row))),)
    elif row.due:
        age = (("due", tr("due")),)
    if row.bottle.level.state == "empty":
        return (*age, ("empty", tr(STATE_WORDS["empty"])))
    return (*age, ("low", tr("low"))) if row.low else age


def _label_words(bottle: Bottle) -> str:
    product = bottle.product
    house_made = f"house-made {tr('House-made')}" if product.house_made else ""
    return folded(" ".join((product.title, product.barcode, house_made)))


def _kind_words(key: str, tree: FamilyTree) -> str:
    """Every name of the ingredient and of all it descends from."""
    kinds = (key, *sorted(tree.ancestors(key)))
    return " ".join(folded(name) for kind in kinds for name in tree[kind].all_names)


NONE = "—"
_WHAT = {
    "receive": tr_noop("Received {amount}"),
    "open": tr_noop("Opened"),
    "count": tr_noop("Counted {amount}"),
    "pour": tr_noop("Poured {amount}"),
    "waste": tr_noop("Wasted {amount}"),
    "empty": tr_noop("Emptied"),
    "correct": tr_noop("Corrected {amount}"),
    "reverse": tr_noop("Taken back"),
}


def left_of(bottle: Bottle) -> str:
    """What is left of how much: *315 of 700 ml*."""
    product = bottle.product
    size = quantity(product.size, product.unit)
    return tr("{left} of {size}", left=number(bottle.level.amount, product.unit), size=size)


def level_in_words(bottle: Bottle) -> str:
    """The level for those who do not see the gauge."""
    return f"{left_of(bottle)}, {percent(bottle.share)}, {tr(STATE_WORDS[bottle.level.state])}"


def short_date(day: date | None, on: date) -> str:
    """Day and month, and the year where it is another than that of `on`."""
    if day is None:
        return NONE
    return day_of_year_short(day) if day.year == on.year else day_short(day)


def state_in_words(level: Level, on: date) -> str:
    """Sealed, open since when, or empty."""
    if level.state == "open" and level.opened is not None:
        return tr("Open since {day}", day=short_date(level.opened, on))
    return capitalised(tr(STATE_WORDS[level.state]))


def entry_in_words(entry: Entry, unit: Unit) -> str:
    """What happened: *Poured 60 ml*."""
    sign = "" if entry.kind != "correct" else "+" if entry.amount > 0 else "−"
    amount = f"{sign}{quantity(abs(entry.amount), unit)}"
    return tr(_WHAT[entry.kind], amount=amount)
