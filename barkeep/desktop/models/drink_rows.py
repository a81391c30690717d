"""How the Tonight list shows a drink."""

from __future__ import annotations

from barkeep.desktop.models.row_table import Column
from barkeep.desktop.widgets.roles import ICONS_ROLE, SUBTITLE_ROLE, VERDICT_ROLE
from barkeep.desktop.widgets.verdict_badge import WORDS
from barkeep.domain.answers.makeable import VERDICTS, Drink
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.specs import base
from barkeep.errors import spoken_list

MANY = 10**6
"""Sorts what nothing limits after every number."""


def drink_columns(tree: FamilyTree) -> tuple[Column[Drink], ...]:
    """Drink, verdict, base, serves, and what is missing or runs out first."""
    return (
        Column(
            "Drink",
            lambda drink: drink.spec.name,
            roles={
                SUBTITLE_ROLE: lambda drink: ingredients_in_brief(drink, tree),
                ICONS_ROLE: lambda drink: ("warning",) if drink.warnings else (),
            },
            tooltip=lambda drink: "\n".join(drink.warnings),
        ),
        Column(
            "Tonight",
            lambda drink: WORDS[drink.verdict],
            key=lambda drink: (VERDICTS.index(drink.verdict), drink.spec.name.casefold()),
            roles={VERDICT_ROLE: lambda drink: drink.verdict},
        ),
        Column("Base", lambda drink: base_name(drink, tree)),
        Column(
            "Serves",
            serves_in_words,
            key=lambda drink: MANY if drink.serves is None else drink.serves,
            right=True,
        ),
        Column("Limited by", lambda drink: hindrance(drink, tree)),
    )


def ingredients_in_brief(drink: Drink, tree: FamilyTree) -> str:
    """The required ingredients, in the spec's order."""
    names = (tree.name(line.ingredient) for line in drink.spec.required_lines)
    return ", ".join(dict.fromkeys(names))


def base_name(drink: Drink, tree: FamilyTree) -> str:
    """What the drink is built on; empty for a spec without volumes."""
    key = base(drink.spec, tree)
    return tree.name(key) if key else ""


def serves_in_words(drink: Drink) -> str:
    """How many serves; an em dash where none can be made."""
    if not drink.makeable:
        return "—"
    return "no limit" if drink.serves is None else str(drink.serves)


def hindrance(drink: Drink, tree: FamilyTree) -> str:
    """What is missing, or else what ends the serves."""
    if drink.missing:
        return spoken_list([tree.name(key) for key in drink.missing], "and")
    return tree.name(drink.runs_out) if drink.runs_out else ""
