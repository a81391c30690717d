"""How the Stand-ins list shows an ingredient."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.desktop.models.row_table import Column
from barkeep.desktop.widgets.roles import SUBTITLE_ROLE
from barkeep.domain.answers.words import plain_amount
from barkeep.domain.snapshot import Snapshot


@dataclass(frozen=True, slots=True)
class IngredientRow:
    """One ingredient with the words around it, and what the bar holds of it in its unit.

    `amount` is None for what is always there.
    """

    key: str
    name: str
    family: str
    search: str
    amount: float | None
    there: str


def ingredient_rows(snapshot: Snapshot) -> tuple[IngredientRow, ...]:
    """Every ingredient a line can ask for, groupings left out."""
    tree = snapshot.knowledge.tree
    return tuple(_row(key, snapshot) for key in tree if not tree[key].family)


def ingredient_columns() -> tuple[Column[IngredientRow], ...]:
    """The name with its family, and what is there."""
    return (
        Column("Ingredient", lambda row: row.name, roles={SUBTITLE_ROLE: lambda row: row.family}),
        Column(
            "In the bar",
            lambda row: row.there,
            key=lambda row: float("inf") if row.amount is None else row.amount,
            right=True,
        ),
    )


def _row(key: str, snapshot: Snapshot) -> IngredientRow:
    tree = snapshot.knowledge.tree
    ingredient = tree[key]
    family = ", ".join(tree.name(parent) for parent in ingredient.parents)
    above = " ".join(tree.name(each) for each in tree.ancestors(key))
    search = " ".join((*ingredient.all_names, above))
    amount: float | None = sum(each.level.amount for each in snapshot.usable.get(key, ()))
    there = plain_amount(amount or 0.0, ingredient.unit) if amount else "—"
    if key in snapshot.always_there:
        amount, there = None, "always there"
    return IngredientRow(key, ingredient.name, family, search, amount, there)
