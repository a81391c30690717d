"""What is in a drink: ethanol, energy, and what is left of its alcohol after heat."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from barkeep.domain.liquids.constants import constants, within
from barkeep.domain.liquids.ethanol import density_of_mass_fraction

Nutrient = Literal["ethanol", "sugar", "polyol", "acid", "protein", "fat", "fibre"]


def ethanol_g(volume_ml: float, abv_percent: float) -> float:
    """Grams of ethanol in a volume: 0.789239 g to the ml at 20 °C (OIML R 22).

    >>> round(ethanol_g(44.36, 40.0), 1)  # one US standard drink
    14.0
    """
    share = within("strength", abv_percent, 0.0, 100.0, "% vol") / 100.0
    return ethanol_ml_g(within("volume", volume_ml, 0.0, 1e9, "ml") * share)


def ethanol_ml_g(ethanol_ml: float) -> float:
    """Grams of a volume of pure ethanol at 20 °C."""
    return ethanol_ml * density_of_mass_fraction(1.0) / 1000.0


def energy_kcal(grams: Mapping[Nutrient, float]) -> float:
    """Energy of what a drink holds. Source: Regulation (EU) 1169/2011, Annex XIV."""
    return _energy("kcal_per_g", grams)


def energy_kj(grams: Mapping[Nutrient, float]) -> float:
    """The same in kilojoules, by the regulation's own factors."""
    return _energy("kj_per_g", grams)


def alcohol_kept() -> Mapping[str, float]:
    """What was done to it -> the share of its alcohol that stays.

    Source: USDA Table of Nutrient Retention Factors, Release 6 (2007).
    """
    kept: Mapping[str, float] = constants("alcohol_kept")
    return kept


def _energy(table: str, grams: Mapping[Nutrient, float]) -> float:
    per_g: Mapping[str, float] = constants(table)
    return sum(
        per_g[each] * within(f"mass of {each}", amount, 0.0, 1e7, "g")
        for each, amount in grams.items()
    )
