"""Strength, sugar and acid of one ingredient as it is poured, each with its doubt."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, Protocol

from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.liquids.ethanol import STRENGTH_TOLERANCE

Source = Literal["label", "usual", "kinds", "unknown"]
"""The bottle's label, the ingredient's usual figure, the middle of a family's kinds, or nothing."""


LABEL_SHARE = 0.05
"""One-sigma doubt of a label's or a recipe's sugar and acid, a share (*common practice*)."""
USUAL_STRENGTH_SHARE = 0.05
"""One-sigma doubt of a usual strength: most labels of a kind lie so near it (*common practice*)."""
USUAL_SHARE = 0.15
"""The same of usual sugar and acid. Limes differ so much from each other: Penniston et al. 2008."""
DISPUTED_ACID_SHARE = 0.3
"""Sources disagree by nearly half on the acid of these juices."""
DISPUTED_ACID = ("orange-juice", "grapefruit-juice")


class Labelled(Protocol):
    """A product, or the draft of one, as far as its label gives figures."""

    @property
    def abv_percent(self) -> float | None:
        """Strength, % vol."""

    @property
    def sugar_g_per_l(self) -> float | None:
        """Sugar, g per litre."""

    @property
    def acid_g_per_l(self) -> float | None:
        """Acid, g per litre."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A value, its one-sigma doubt in the same unit, and where it comes from.

    `low` and `high` are the ends of a family's kinds where it is their middle.
    """

    value: float
    sigma: float
    source: Source
    low: float = 0.0
    high: float = 0.0


NOTHING = Figure(0.0, 0.0, "usual")
UNKNOWN = Figure(0.0, 0.0, "unknown")


@dataclass(frozen=True, slots=True)
class Liquid:
    """Strength in % vol, sugar and acid in g per litre."""

    abv: Figure
    sugar: Figure
    acid: Figure

    @property
    def known(self) -> bool:
        """Whether anything is known of it."""
        return self.abv.source != "unknown"


def liquid_of(key: str, tree: FamilyTree, product: Labelled | None = None) -> Liquid:
    """The figures of a product's label, where it gives them, else the ingredient's usual ones.

    What says nothing of itself takes the middle of the kinds below it, or else
    what is said of the nearest kind above it.
    """
    usual = tree.once(_usual_of, key)
    if product is None:
        return usual
    return Liquid(
        _labelled(product.abv_percent, STRENGTH_TOLERANCE, usual.abv),
        _labelled(product.sugar_g_per_l, _share_of(product.sugar_g_per_l), usual.sugar),
        _labelled(product.acid_g_per_l, _share_of(product.acid_g_per_l), usual.acid),
    )


def _usual_of(tree: FamilyTree, key: str) -> Liquid:
    ingredient = _with_figures(key, tree)
    return _middle_of_kinds(key, tree) if ingredient is None else _usual(ingredient, tree)


def _labelled(value: float | None, sigma: float, usual: Figure) -> Figure:
    return usual if value is None else Figure(value, sigma if value else 0.0, "label")


def _share_of(value: float | None) -> float:
    return LABEL_SHARE * (value or 0.0)


def _with_figures(key: str, tree: FamilyTree) -> Ingredient | None:
    """The ingredient; without figures and kinds of its own, the nearest above that has figures."""
    if _figured(tree[key]):
        return tree[key]
    if tree.descendants(key):
        return None
    return next((tree[each] for each in tree.upwards(key) if _figured(tree[each])), None)


def _usual(ingredient: Ingredient, tree: FamilyTree) -> Liquid:
    disputed = any(tree.is_a(ingredient.key, each) for each in DISPUTED_ACID)
    return Liquid(
        _figure(ingredient.abv_percent, USUAL_STRENGTH_SHARE),
        _figure(ingredient.sugar_g_per_l, USUAL_SHARE),
        _figure(ingredient.acid_g_per_l, DISPUTED_ACID_SHARE if disputed else USUAL_SHARE),
    )


def _figure(value: float | None, share: float) -> Figure:
    return Figure(value, share * value, "usual") if value else NOTHING


def _middle_of_kinds(key: str, tree: FamilyTree) -> Liquid:
    for place in (key, *tree.upwards(key)):
        kinds = [tree[each] for each in sorted(tree.descendants(place)) if _figured(tree[each])]
        if kinds:
            return Liquid(
                _middle(each.abv_percent for each in kinds),
                _middle(each.sugar_g_per_l for each in kinds),
                _middle(each.acid_g_per_l for each in kinds),
            )
    return Liquid(UNKNOWN, UNKNOWN, UNKNOWN)


def _middle(values: Iterable[float | None]) -> Figure:
    known = [value or 0.0 for value in values]
    from statistics import fmean, median  # loads slowly, and few kinds need it

    mean = fmean(known)
    sigma = fmean((value - mean) ** 2 for value in known) ** 0.5
    return Figure(value=median(known), sigma=sigma, source="kinds", low=min(known), high=max(known))


def _figured(ingredient: Ingredient) -> bool:
    return ingredient.unit == "ml" and not (
        ingredient.abv_percent is None and ingredient.sugar_g_per_l is None
    )
