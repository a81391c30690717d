"""How the Bottles list shows a bottle, what it answers to, and which filters keep it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import Qt

from barkeep.desktop.bottles.words import NONE, left_of, level_in_words, short_date
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE, SUBTITLE_ROLE
from barkeep.desktop.widgets.levels import LevelReading
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded, price_in_words

LOW_SHARE = 0.2
"""An open bottle with less than this share left is called low (*common practice*)."""

DUE_DAYS = 3
"""So many days before its use-by date a thing is called due."""


SHELF, BOTTLE, LEVEL, LEFT, USE_BY, INGREDIENT, OPENED, PRICE = range(8)
"""The columns, left to right."""


@dataclass(frozen=True, slots=True)
class BottleRow:
    """One bottle with what the list needs beside it; `place` counts along the shelf from 1."""

    bottle: Bottle
    place: int
    ingredient: str
    words: str
    on: date

    @property
    def past(self) -> bool:
        """Whether its use-by date is over while something is left."""
        return self.bottle.level.amount > 0 and self.bottle.past_use_by(self.on)

    @property
    def due(self) -> bool:
        """Whether it is past its use-by date or will be within a few days."""
        last = self.bottle.use_by
        there = self.bottle.level.amount > 0
        return there and last is not None and last <= self.on + timedelta(days=DUE_DAYS)

    @property
    def low(self) -> bool:
        """Whether it is open and nearly used up."""
        return self.bottle.level.state == "open" and self.bottle.share < LOW_SHARE

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
            bottle,
            place,
            tree.name(bottle.ingredient),
            f"{_label_words(bottle)} {kinds[bottle.ingredient]}",
            snapshot.on,
        )
        for place, bottle in enumerate(along, 1)
    )


def bottle_columns() -> tuple[Column[BottleRow], ...]:
    """Place along the shelf, bottle, level, what is left, use by, ingredient, opened, price."""
    return (
        Column("Shelf", lambda row: str(row.place), key=lambda row: row.place),
        Column(
            "Bottle",
            lambda row: row.bottle.product.name,
            key=lambda row: (folded(row.bottle.product.title), row.place),
            tooltip=lambda row: row.bottle.product.title,
            roles={SUBTITLE_ROLE: _below_name, ICONS_ROLE: _marks},
        ),
        Column(
            "Level",
            lambda row: "",
            key=lambda row: (row.bottle.share, row.place),
            tooltip=lambda row: level_in_words(row.bottle),
            roles={
                LEVEL_ROLE: lambda row: reading_of(row.bottle),
                Qt.ItemDataRole.AccessibleTextRole: lambda row: level_in_words(row.bottle),
            },
        ),
        Column(
            "Left",
            lambda row: left_of(row.bottle),
            key=lambda row: (row.bottle.level.amount, row.place),
            roles={SUBTITLE_ROLE: lambda row: _state(row)},
        ),
        Column(
            "Use by",
            _use_by,
            key=lambda row: (row.bottle.use_by or date.max, row.place),
            tooltip=use_by_in_words,
            roles={ICONS_ROLE: lambda row: ("warning",) if row.past else ()},
        ),
        Column(
            "Ingredient",
            lambda row: row.ingredient,
            key=lambda row: (folded(row.ingredient), row.place),
            tooltip=lambda row: row.ingredient,
        ),
        Column(
            "Opened",
            lambda row: short_date(row.bottle.level.opened, row.on),
            key=lambda row: (row.bottle.level.opened or date.max, row.place),
        ),
        Column(
            "Price",
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
    last = row.bottle.use_by
    if last is None:
        return ""
    day = short_date(last, row.on)
    days = (last - row.on).days
    if row.past:
        return f"Past its use-by date, {day}: taste and look before using it, or waste it"
    if days < 0:
        return f"{day}, and nothing is left"
    return f"{day}: {_days(days)}"


def _days(days: int) -> str:
    if days == 0:
        return "the last day is today"
    return "one more day" if days == 1 else f"{days} more days"


def _use_by(row: BottleRow) -> str:
    day = short_date(row.bottle.use_by, row.on)
    return f"Past: {day}" if row.past else day


def _below_name(row: BottleRow) -> str:
    product = row.bottle.product
    if product.maker:
        return product.maker
    if product.house_made:
        return "House-made"
    if row.pantry:
        return "Pantry"
    same = folded(row.ingredient) == folded(product.name)
    return "No maker" if same else row.ingredient


def _state(row: BottleRow) -> str:
    """The state, and the word *low* with it: the gauge alone must not carry that."""
    state = row.bottle.level.state
    return f"{state}, low" if row.low else state


def _marks(row: BottleRow) -> tuple[str, ...]:
    return ("house-made",) if row.bottle.product.house_made else ()


def _label_words(bottle: Bottle) -> str:
    product = bottle.product
    house_made = "house-made" if product.house_made else ""
    return folded(" ".join((product.title, product.barcode, house_made)))


def _kind_words(key: str, tree: FamilyTree) -> str:
    """Every name of the ingredient and of all it descends from."""
    kinds = (key, *sorted(tree.ancestors(key)))
    return folded(" ".join(name for kind in kinds for name in tree[kind].all_names))
