"""How much of its ingredient a line takes, in the ingredient's own unit."""

from __future__ import annotations

from barkeep.domain.amounts import Amount
from barkeep.domain.ingredients import Ingredient
from barkeep.domain.measures import dimension, to_quantity
from barkeep.domain.portions import Portions, shipped_portions

PART_ML = 30.0
"""What one part is taken to be in a single serve: about an ounce (*common practice*)."""

_SPOONS = frozenset({"tsp", "tbsp", "dessertspoon", "barspoon", "cup", "pint", "pinch"})
"""Volumes in which pieces are measured out: *a cup of raspberries*."""


def quantity_of(
    amount: Amount, ingredient: Ingredient, portions: Portions | None = None
) -> tuple[float | None, str]:
    """An amount in the ingredient's own unit, or None and a note that says why not.

    Of a range the lower end counts. Raises `WrongDimension` where the amount
    cannot be meant, such as a weight of gin.
    """
    found, note = _converted(amount, ingredient, portions or shipped_portions())
    return (None if found is None else float(f"{found:.12g}")), note


def _converted(
    amount: Amount, ingredient: Ingredient, portions: Portions
) -> tuple[float | None, str]:
    key, unit, kind = ingredient.key, ingredient.unit, dimension(amount.unit)
    if unit == "ml" and kind == "part":
        return amount.value * PART_ML, ""
    if unit == "ml" and kind == "count" and key in portions.piece_ml:
        return amount.value * portions.piece_ml[key], ""
    if unit == "ml" and kind == "mass" and key in portions.g_per_ml:
        return to_quantity(amount, "g") / portions.g_per_ml[key], ""
    if unit == "g" and kind in ("volume", "count", "loose"):
        return _weighed(amount, key, kind, portions)
    if unit == "each" and kind in ("mass", "loose", "part"):
        words = {"mass": "by weight", "loose": f"by the {amount.unit}", "part": "by parts"}
        return None, words[kind]
    if unit == "each" and amount.unit in _SPOONS:
        return None, "by volume"
    return to_quantity(amount, unit), ""


def _weighed(amount: Amount, key: str, kind: str, portions: Portions) -> tuple[float | None, str]:
    if kind == "volume":
        density = portions.g_per_ml.get(key)
        return (to_quantity(amount, "ml") * density, "") if density else (None, "by volume")
    piece = portions.piece_g.get(key) if kind == "count" else None
    return (amount.value * piece, "") if piece else (None, "by the piece")
