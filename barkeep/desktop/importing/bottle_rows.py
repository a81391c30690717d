"""The rows of a list of bottles as the import shows them, and what becomes of each."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.application.bottle_imports import BottlePreview
from barkeep.desktop.screens.row_table import Column
from barkeep.documents.bottles_csv import ListedRow
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.days import day_short
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.translation import tr, tr_noop

Group = Literal["repair", "same", "new"]
GROUP_WORDS: dict[Group, str] = {
    "repair": tr_noop("To repair"),
    "same": tr_noop("There already"),
    "new": tr_noop("New"),
}
LEFT_OUT, COMES_IN, ANOTHER, TO_REPAIR = (
    tr_noop("Is left out"),
    tr_noop("Comes in"),
    tr_noop("Comes in too"),
    tr_noop("To repair"),
)


@dataclass(frozen=True, slots=True)
class BottleRow:
    """One row with the name of its ingredient, as it is written where that could not be read.

    `there` is the bottle it looks like, `again` whether it comes in beside that.
    """

    group: Group
    listed: ListedRow
    ingredient: str
    there: Bottle | None = None
    again: bool = False

    @property
    def title(self) -> str:
        """Maker and name."""
        if self.listed.bottle is not None:
            return self.listed.bottle.draft.title
        cells = self.listed.cells
        return f"{cells.get('maker', '')} {cells.get('product', '')}".strip() or tr("No name")

    @property
    def outcome(self) -> str:
        """What importing will do with it."""
        if self.group == "repair":
            return tr(TO_REPAIR)
        if self.group == "same":
            return tr(ANOTHER if self.again else LEFT_OUT)
        return tr(COMES_IN)

    @property
    def comes_in(self) -> bool:
        """Whether importing writes it."""
        return self.group == "new" or self.again


def rows_of(
    found: BottlePreview, again: Collection[int], tree: FamilyTree
) -> tuple[BottleRow, ...]:
    """What needs a look first; `again` are the rows that come in beside what they look like."""
    rows = [BottleRow("repair", each, _ingredient(each, tree)) for each in found.repair]
    for same in found.same:
        row = BottleRow("same", same.row, _ingredient(same.row, tree))
        rows.append(replace(row, there=same.bottle, again=same.row.row in again))
    rows += [BottleRow("new", each, _ingredient(each, tree)) for each in found.new]
    return tuple(rows)


def _ingredient(row: ListedRow, tree: FamilyTree) -> str:
    if row.bottle is None:
        return row.cells.get("ingredient", "")
    return tree.name(row.bottle.draft.ingredient)


def _cell(row: BottleRow, column: str) -> str:
    return row.listed.cells.get(column, "")


def strength_of(row: BottleRow) -> str:
    """The strength as it was understood."""
    bottle = row.listed.bottle
    if bottle is None:
        return _cell(row, "abv")
    abv = bottle.draft.abv_percent
    return "" if abv is None else f"{abv:g} %"


def size_of(row: BottleRow) -> str:
    """The size as it was understood."""
    bottle = row.listed.bottle
    return _cell(row, "size") if bottle is None else quantity(bottle.draft.size, bottle.draft.unit)


def level_of(row: BottleRow) -> str:
    """What is left, as it was understood."""
    bottle = row.listed.bottle
    if bottle is None:
        return _cell(row, "level")
    return tr("full") if bottle.level is None else quantity(bottle.level.amount, bottle.draft.unit)


def opened_of(row: BottleRow) -> str:
    """When it was opened, as it was understood."""
    bottle = row.listed.bottle
    if bottle is None:
        return _cell(row, "opened")
    return "" if bottle.opened is None else day_short(bottle.opened)


COLUMNS: tuple[Column[BottleRow], ...] = (
    Column(
        tr_noop("Row"), lambda row: str(row.listed.row), key=lambda row: row.listed.row, right=True
    ),
    Column(tr_noop("Bottle"), lambda row: row.title, tooltip=lambda row: row.title),
    Column(tr_noop("Ingredient"), lambda row: row.ingredient, tooltip=lambda row: row.ingredient),
    Column(tr_noop("Strength"), strength_of, right=True),
    Column(tr_noop("What happens"), lambda row: row.outcome),
)
"""The columns of the list; what could not be read stands as it is written."""
