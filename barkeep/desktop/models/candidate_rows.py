"""How the Next bottle list shows a purchase."""

from __future__ import annotations

from barkeep.desktop.models.row_table import Column
from barkeep.desktop.widgets.roles import SUBTITLE_ROLE
from barkeep.domain.answers.unlocks import Candidate
from barkeep.domain.ingredients import FamilyTree


def candidate_columns(tree: FamilyTree, currency: str) -> tuple[Column[Candidate], ...]:
    """Ingredient, how many drinks it turns ready, brings near, its price, and which drinks."""
    return (
        Column(
            "Ingredient",
            lambda each: tree.name(each.ingredient),
            roles={SUBTITLE_ROLE: lambda each: family_line(each, tree)},
        ),
        Column(
            "Turns ready",
            lambda each: str(len(each.unlocks)),
            key=lambda each: (len(each.unlocks), len(each.nearest)),
            right=True,
        ),
        Column(
            "Brings near",
            lambda each: str(len(each.nearest)),
            key=lambda each: len(each.nearest),
            right=True,
        ),
        Column(
            "Price",
            lambda each: price_in_words(each, currency),
            key=lambda each: (each.price is None, each.price or 0.0),
            right=True,
        ),
        Column(
            "Drinks",
            lambda each: ", ".join(each.unlocks),
            tooltip=lambda each: each.why,
        ),
    )


def family_line(candidate: Candidate, tree: FamilyTree) -> str:
    """The kinds right above it; for what is there but too low, that."""
    if candidate.owned:
        return "in the bar, but too little is left"
    return ", ".join(tree.name(parent) for parent in tree[candidate.ingredient].parents)


def price_in_words(candidate: Candidate, currency: str) -> str:
    """The lowest known price, or that none is known."""
    return "not known" if candidate.price is None else f"{candidate.price:.2f} {currency}"
