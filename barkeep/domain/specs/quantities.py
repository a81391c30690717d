"""How much of its ingredient a line takes, in the ingredient's own unit."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache
from math import isclose

from barkeep.domain.amounts.amount import Amount, show_range
from barkeep.domain.amounts.measures import dimension, to_quantity
from barkeep.domain.amounts.units import UNITS, US_UNITS, BarUnits
from barkeep.domain.ingredients.composition import Portions, shipped_portions
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.specs.shown_lines import names_in_sentence, worded
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import WrongDimension

PART_ML = 30.0
"""What one part is taken to be in a single serve: about an ounce (*common practice*)."""


_SPOONS = frozenset({"tsp", "tbsp", "dessertspoon", "barspoon", "cup", "pint", "imp_pint", "pinch"})
"""Volumes in which pieces are measured out: *a cup of raspberries*."""


_NOBODYS_OWN = frozenset((None, *UNITS))
"""What a line's unit may be without being a measure of the owner's own."""


def quantity_of(
    amount: Amount,
    ingredient: Ingredient,
    portions: Portions | None = None,
    units: BarUnits = US_UNITS,
) -> tuple[float | None, str]:
    """An amount in the ingredient's own unit, or None and a note that says why not.

    Of a range the lower end counts. Raises `WrongDimension` where the amount
    cannot be meant, such as a weight of gin.
    """
    found, note = _converted(amount, ingredient, portions or shipped_portions(), units)
    return (None if found is None else float(f"{found:.12g}")), note


def at_bar(units: BarUnits, spec: Spec, tree: FamilyTree) -> Spec:
    """The spec as a bar means it: its dashes are the bar's, its own measures what they were.

    An owner's measure that has changed since a line was written, or is gone,
    changes no drink: the line says in its ingredient's own unit what it came to
    then, and notes how it was written. Where nothing differs it is the spec
    itself, and else the very same object each time.
    """
    written = {line.unit for line in spec.lines}
    if not written <= _NOBODYS_OWN:
        lines = tuple(_as_it_was(line, spec.serves, tree, units) for line in spec.lines)
        spec = spec if lines == spec.lines else _with_lines(spec, lines)
    return in_dashes_of(units, spec, tree) if "dash" in written else spec


def came_to_otherwise(line: Line, serves: float, tree: FamilyTree, units: BarUnits) -> bool:
    """Whether a line's unit is no longer what it was when the line was written."""
    if line.unit is None or line.unit in UNITS or line.amount is None or line.quantity is None:
        return False
    try:
        written = Amount(line.amount, None, line.unit)
        now, _ = quantity_of(written, tree[line.ingredient], None, units)
    except WrongDimension:
        return True  # there is no such measure any more
    return now is None or not isclose(now, line.quantity * serves, rel_tol=1e-9)


def _as_it_was(line: Line, serves: float, tree: FamilyTree, units: BarUnits) -> Line:
    if not came_to_otherwise(line, serves, tree, units) or not (line.amount and line.quantity):
        return line
    # Three digits, as it is printed, so that the text reads back to it.
    unit, amount = tree[line.ingredient].unit, float(f"{line.quantity * serves:.3g}")
    high = None
    if line.amount_high is not None:
        high = float(f"{amount * line.amount_high / line.amount:.3g}")
    said = f"{show_range(line.amount, line.amount_high, str(line.unit), units)} when written"
    note = f"{line.note}, {said}" if line.note else said
    kept = replace(line, amount=amount, amount_high=high, unit=unit, note=note)
    shown = show_range(amount, high, unit, units)
    return replace(kept, text=worded(kept, names_in_sentence(line, tree), shown))


@lru_cache(maxsize=20_000)
def _with_lines(spec: Spec, lines: tuple[Line, ...]) -> Spec:
    return replace(spec, lines=lines)


def in_dashes_of(units: BarUnits, spec: Spec, tree: FamilyTree) -> Spec:
    """The spec with its lines in dashes at what the bar's dash comes to.

    It is the spec itself where that is so already, and else the very same
    object each time, so that what is known of it holds.
    """
    quantities = {
        number: _in_dashes(line, dashes=line.amount, serves=spec.serves, tree=tree, units=units)
        for number, line in enumerate(spec.lines)
        if line.unit == "dash" and line.amount is not None and line.quantity is not None
    }
    if all(spec.lines[number].quantity == each for number, each in quantities.items()):
        return spec
    return _with_quantities(spec, tuple(quantities.items()))


def _in_dashes(
    line: Line, *, dashes: float, serves: float, tree: FamilyTree, units: BarUnits
) -> float | None:
    poured = float(f"{dashes * units.dash_ml / serves:.12g}")
    if line.quantity == poured:  # as nearly all are: it is asked of every spec after every change
        return poured
    whole, _ = quantity_of(Amount(dashes, None, "dash"), tree[line.ingredient], None, units)
    return None if whole is None else float(f"{whole / serves:.12g}")


@lru_cache(maxsize=20_000)
def _with_quantities(spec: Spec, quantities: tuple[tuple[int, float | None], ...]) -> Spec:
    lines = list(spec.lines)
    for number, quantity in quantities:
        lines[number] = replace(lines[number], quantity=quantity)
    return replace(spec, lines=tuple(lines))


def _converted(
    amount: Amount, ingredient: Ingredient, portions: Portions, units: BarUnits
) -> tuple[float | None, str]:
    key, unit, kind = ingredient.key, ingredient.unit, dimension(amount.unit, units)
    if unit == "ml" and kind == "part":
        return amount.value * PART_ML, ""
    if unit == "ml" and kind == "count" and key in portions.piece_ml:
        return amount.value * portions.piece_ml[key], ""
    if unit == "ml" and kind == "mass" and key in portions.g_per_ml:
        return to_quantity(amount, "g", units) / portions.g_per_ml[key], ""
    if unit == "g" and kind in ("volume", "count", "loose"):
        return _weighed(amount, key=key, kind=kind, portions=portions, units=units)
    if unit == "each" and kind in ("mass", "loose", "part"):
        words = {"mass": "by weight", "loose": f"by the {amount.unit}", "part": "by parts"}
        return None, words[kind]
    if unit == "ml" and amount.unit == "scoop":
        return None, "by the scoop"
    if unit == "each" and amount.unit in _SPOONS:
        return None, "by volume"
    return to_quantity(amount, unit, units), ""


def _weighed(
    amount: Amount, *, key: str, kind: str, portions: Portions, units: BarUnits
) -> tuple[float | None, str]:
    if kind == "volume":
        density = portions.g_per_ml.get(key)
        return (to_quantity(amount, "ml", units) * density, "") if density else (None, "by volume")
    piece = portions.piece_g.get(key) if kind == "count" else None
    return (amount.value * piece, "") if piece else (None, "by the piece")
