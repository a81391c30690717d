"""Pars: the least the owner wants to have of something."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from barkeep.domain.amounts.measures import PACKAGES, read_amount
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.errors import InvalidField
from barkeep.translation import tr, tr_noop

MOST_PAR = 1e5
"""In ml, g or pieces; a par above it is a misprint."""


_PACKAGES = re.compile(rf"([0-9]{{1,3}}) ?(?:(?:{'|'.join(PACKAGES)})s?|flaschen?)", re.IGNORECASE)


_FEW = re.compile(r"[1-9]")
"""So few ml nobody keeps on a shelf."""


@dataclass(frozen=True, slots=True)
class Par:
    """The least to have of an ingredient and its kinds, in the ingredient's own unit."""

    ingredient: str
    amount: float


def with_par(pars: Iterable[Par], par: Par) -> tuple[Par, ...]:
    """The pars with this one in place of any other of its ingredient; none for an amount of 0."""
    others = [each for each in pars if each.ingredient != par.ingredient]
    kept = [*others, par] if par.amount > 0.0 else others
    return tuple(sorted(kept, key=lambda each: each.ingredient))


def read_par(text: str, ingredient: Ingredient, units: BarUnits = US_UNITS) -> float:
    """How much is wanted, in the ingredient's unit, from *1.4 l*, *12* or *2 bottles*.

    A bottle is what one purchase of it usually holds; a bare number is in the
    ingredient's unit. Raises `AmountError`, `NegativeAmount` or `WrongDimension`, and
    `InvalidField` for a bare number so small that bottles are likely meant.
    """
    few = _FEW.fullmatch(text.strip()) if ingredient.unit == "ml" else None
    if few:
        told = tr_noop("say of what, since it is no amount to keep; likely “{n} bottles”")
        if few.group() == "1":
            told = tr_noop("say of what, since it is no amount to keep; likely “{n} bottle”")
        raise InvalidField("par", text.strip(), tr(told, n=few.group()))
    packages = _PACKAGES.fullmatch(text.strip())
    if packages:
        return int(packages[1]) * ingredient.typical_size
    return read_amount(text, ingredient.unit, units)
