"""What the batch in the form takes and gives, as it is read."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.house_making import Making
from barkeep.domain.house_words import drawn_in_words, figures_in_words, short_in_words
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.inventory import Bottle
from barkeep.domain.knowledge import MadeFrom
from barkeep.domain.level_words import quantity
from barkeep.errors import spoken_list


@dataclass(frozen=True, slots=True)
class InputRow:
    """One input: how much, of what, and where it comes from; `short` where it does not do."""

    amount: str
    name: str
    source: str
    short: bool


@dataclass(frozen=True, slots=True)
class MakingView:
    """A batch in words, part by part."""

    inputs: tuple[InputRow, ...]
    short: tuple[str, ...]
    past: tuple[str, ...]
    gives: tuple[str, ...]
    how: str
    cautions: tuple[str, ...]


def making_view(plan: Making, tree: FamilyTree) -> MakingView:
    """The words of a batch."""
    rows = tuple(
        InputRow(
            quantity(each.need, each.unit),
            tree.name(each.ingredient),
            drawn_in_words(each),
            each.short,
        )
        for each in plan.inputs
    )
    comes_to = figures_in_words(plan.figures)
    keeps = f"Made on {plan.made}, use by {plan.use_by}." if plan.use_by else ""
    gives = (comes_to, *plan.figures.unknown, keeps, *plan.notes)
    return MakingView(
        rows,
        tuple(short_in_words(each, tree) for each in plan.short),
        plan.past,
        tuple(each for each in gives if each),
        plan.recipe.how,
        plan.cautions,
    )


def recipe_words(recipe: MadeFrom, tree: FamilyTree) -> str:
    """A recipe by what it takes, to choose it by."""
    inputs = spoken_list([tree.in_sentence(each.ingredient) for each in recipe.inputs], "and")
    return f"Your own: {inputs}" if recipe.own else f"From {inputs}"


def made_words(bottle: Bottle) -> str:
    """What has come on the shelf, and how long it keeps."""
    said = quantity(bottle.level.amount, bottle.product.unit)
    keeps = f", use by {bottle.use_by}" if bottle.use_by else ""
    return f"{bottle.product.name} is on the shelf: {said}{keeps}."
