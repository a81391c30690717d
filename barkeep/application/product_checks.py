"""Whether a product may come into the bar as it was described."""

from __future__ import annotations

from dataclasses import replace
from math import isfinite
from typing import get_args

from barkeep.application.finding import find_ingredient
from barkeep.domain.barcodes import checked_gtin
from barkeep.domain.drafts import ProductDraft
from barkeep.domain.ingredients import FamilyTree, Unit
from barkeep.domain.taring import HEAVIEST_G_PER_ML, LIGHTEST_G_PER_ML
from barkeep.domain.vessels import shipped_shapes
from barkeep.errors import InvalidField

STRONGEST = 100.0
"""% vol; more than this there cannot be."""


def checked_draft(draft: ProductDraft, tree: FamilyTree) -> ProductDraft:
    """The draft with its ingredient as a key and without stray blanks.

    Raises `InvalidField`, or `UnknownName` for the ingredient.
    """
    name, maker = " ".join(draft.name.split()), " ".join(draft.maker.split())
    if not name:
        raise InvalidField("name", draft.name, "a product needs a name")
    if draft.unit not in get_args(Unit):
        raise InvalidField("unit", draft.unit, "it is ml, g or each")
    if not (isfinite(draft.size) and draft.size > 0):
        raise InvalidField("size", draft.size, "it is more than nothing")
    _in_range("strength", draft.abv_percent, STRONGEST, "it is 0 to 100 % vol")
    _in_range("sugar", draft.sugar_g_per_l, None, "it is 0 g/l or more")
    _in_range("acid", draft.acid_g_per_l, None, "it is 0 g/l or more")
    _in_range("price", draft.price, None, "it is nothing or more")
    _refuse_unlikely(draft.density_g_per_ml)
    if draft.shape is not None and draft.shape not in shipped_shapes():
        raise InvalidField("shape", draft.shape, f"it is one of {', '.join(shipped_shapes())}")
    key = find_ingredient(tree, draft.ingredient)
    barcode = checked_gtin(draft.barcode)
    return replace(draft, name=name, maker=maker, ingredient=key, barcode=barcode)


def _refuse_unlikely(density_g_per_ml: float | None) -> None:
    lightest, heaviest = LIGHTEST_G_PER_ML, HEAVIEST_G_PER_ML
    if density_g_per_ml is not None and not lightest <= density_g_per_ml <= heaviest:
        raise InvalidField("density", density_g_per_ml, f"it is {lightest:g} to {heaviest:g} g/ml")


def _in_range(field: str, value: float | None, highest: float | None, expected: str) -> None:
    if value is None:
        return
    if not isfinite(value) or value < 0 or (highest is not None and value > highest):
        raise InvalidField(field, value, expected)
