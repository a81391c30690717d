"""What a package holds by what stands on it: its size in the unit that its contents are kept in.

Honey and cream of coconut are poured and sold by weight; so are cubes, olives and
limes, which are used by the piece. What they come to is from
`resources/portions.toml`.
"""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.amounts.amount import Amount, parse_amount
from barkeep.domain.amounts.measures import dimension, show_quantity, to_quantity
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.ingredients.composition import shipped_portions
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import AmountError, UserError
from barkeep.translation import tr


class PiecesToCount(UserError):
    """A weight of what is used by the piece: `likely` is about how many pieces it is."""

    text: str
    name: str
    likely: int
    says = "“{text}” of {name} is about {likely} pieces; write how many there are."


@dataclass(frozen=True, slots=True)
class PackageSize:
    """A size in the unit of its ingredient; `said` tells what a weight was taken for."""

    amount: float
    said: str = ""


def package_size(text: str, key: str, tree: FamilyTree, units: BarUnits) -> PackageSize:
    """What a size that is written with its unit means for an ingredient.

    Raises `PiecesToCount`, `AmountError`, `NegativeAmount` or `WrongDimension`.
    """
    kind, amount = tree[key], parse_amount(text, units)
    if amount.high is not None:
        raise AmountError(text.strip(), tr("write one amount, not a range"))
    if kind.unit != "g" and dimension(amount.unit, units) == "mass":
        found = _by_weight(amount, text, key, tree, units=units)
        if found is not None:
            return found
    return PackageSize(to_quantity(amount, kind.unit, units))


def _by_weight(
    amount: Amount, text: str, key: str, tree: FamilyTree, *, units: BarUnits
) -> PackageSize | None:
    """A weight of what is poured or counted; None where it is not sold so."""
    weight_g, name = to_quantity(amount, "g", units), tree.in_sentence(key)
    portions = shipped_portions()
    if key in portions.g_per_ml:
        size_ml = float(f"{weight_g / portions.g_per_ml[key]:.12g}")
        shown = show_quantity(round(size_ml), "ml")
        written = text.strip()
        told = tr("{written} of {name} is about {shown}.", written=written, name=name, shown=shown)
        return PackageSize(size_ml, told)
    if key in portions.each_g and weight_g:
        raise PiecesToCount(text.strip(), name, max(1, round(weight_g / portions.each_g[key])))
    return None
