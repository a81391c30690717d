"""Ethanol and water: density, strength, proof, contraction, and the water to add.

Density by the general formula of OIML R 22, *International Alcoholometric
Tables*, 1975. Strength is % vol at 20 °C unless another reference is given;
mass fractions run from 0 to 1.

>>> round(density_kg_m3(40.0), 2)
948.05
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import lru_cache

from barkeep.domain.liquids.constants import constants, interpolated, polynomial, within

REFERENCE_C = 20.0
"""The temperature at which strength is stated in most countries."""

US_REFERENCE_C = (60.0 - 32.0) / 1.8
"""The temperature at which US proof is stated: 60 °F (27 CFR 5.11)."""

COLDEST_C, WARMEST_C = -20.0, 40.0

OLD_UK_PROOF_PER_ABV = 1.7525
"""Degrees of British proof (until 1980) to one % vol: 57.06 % vol is 100."""


_GLASS_PER_K = 25e-6

_WEAKEST = 1e-3


@dataclass(frozen=True, slots=True)
class SpiritMixture:
    """A volume in ml at 20 °C, and its strength in % vol."""

    volume_ml: float
    abv_percent: float


@dataclass(frozen=True, slots=True)
class Reduction:
    """What weakening a spirit takes and gives: water to add and the volume after, ml at 20 °C."""

    water_ml: float
    volume_ml: float


def density_of_mass_fraction(mass_fraction: float, temperature_c: float = REFERENCE_C) -> float:
    """Density in kg/m³ of ethanol and water. Source: OIML R 22 (1975), general formula.

    Range: 0 to 1, -20 to 40 °C, and not frozen. Raises `OutsideRange`.
    """
    p = within("mass fraction of ethanol", mass_fraction, 0.0, 1.0, unit="")
    t = within("temperature", temperature_c, _coldest(p), WARMEST_C, unit="°C")
    table, away = constants("ethanol_water"), t - REFERENCE_C
    total: float = polynomial(table["a"], p) + polynomial([0.0, *table["b"]], away)
    for power, row in enumerate(table["c"], start=1):
        total += polynomial([0.0, *row], p) * away**power
    return total


def density_kg_m3(abv_percent: float, temperature_c: float = REFERENCE_C) -> float:
    """Density of a spirit of a strength (% vol at 20 °C), at a temperature. Source: OIML R 22.

    Range: 0 to 100 % vol, -20 to 40 °C, and not frozen. Raises `OutsideRange`.
    """
    return density_of_mass_fraction(mass_fraction(abv_percent), temperature_c)


@lru_cache(maxsize=4096)
def mass_fraction(abv_percent: float, reference_c: float = REFERENCE_C) -> float:
    """The share of ethanol by mass, 0 to 1, of a strength by volume. Raises `OutsideRange`."""
    abv = within("strength", abv_percent, 0.0, 100.0, unit="% vol")
    return _root(lambda p: strength(p, reference_c) - abv)


def strength(mass_fraction: float, reference_c: float = REFERENCE_C) -> float:
    """The strength by volume, % vol, of a share by mass, 0 to 1. Raises `OutsideRange`."""
    pure = density_of_mass_fraction(1.0, reference_c)
    here = density_of_mass_fraction(mass_fraction, reference_c)
    return min(100.0, 100.0 * mass_fraction * here / pure)  # rounding may pass 100 by a hair


def strength_of_density(density_kg_m3: float, temperature_c: float = REFERENCE_C) -> float:
    """The strength, % vol at 20 °C, of an unsweetened spirit of a density at a temperature.

    Range: 0 to 40 °C and the densities from water's to ethanol's there. Raises `OutsideRange`.
    """
    t = within("temperature", temperature_c, 0.0, WARMEST_C, unit="°C")
    lightest, heaviest = density_of_mass_fraction(1.0, t), density_of_mass_fraction(0.0, t)
    rho = within("density", density_kg_m3, lightest, heaviest, unit="kg/m³")
    return strength(_root(lambda p: rho - density_of_mass_fraction(p, t)))


def strength_of_reading(
    reading_abv: float, temperature_c: float, reference_c: float = REFERENCE_C
) -> float:
    """The true strength, % vol, of what a glass hydrometer reads away from its reference.

    The hydrometer's glass is soda-lime, which grows by 25 parts in a million a
    degree. Range: 0 to 40 °C, and what a glass can read there: from water's
    reading, at least 0 % vol, to ethanol's, at most 100. Raises `OutsideRange`.
    """
    t = within("temperature", temperature_c, 0.0, WARMEST_C, unit="°C")
    lowest, highest = (_reading(p, t, reference_c) for p in (0.0, 1.0))
    within("hydrometer reading", reading_abv, lowest, highest, unit="% vol")
    marked = density_of_mass_fraction(mass_fraction(reading_abv, reference_c), reference_c)
    actual = marked * (1.0 - _GLASS_PER_K * (t - reference_c))
    p = _root(lambda each: actual - density_of_mass_fraction(each, t))
    return strength(p, reference_c)


def mass_g(volume_ml: float, abv_percent: float, temperature_c: float = REFERENCE_C) -> float:
    """The mass of a volume measured at a temperature. Raises `OutsideRange`."""
    return volume_ml * density_kg_m3(abv_percent, temperature_c) / 1000.0


def volume_ml(mass_g: float, abv_percent: float, temperature_c: float = REFERENCE_C) -> float:
    """The volume of a mass at a temperature. Raises `OutsideRange`."""
    return mass_g * 1000.0 / density_kg_m3(abv_percent, temperature_c)


def us_proof(abv_percent: float) -> float:
    """Degrees of US proof: twice the strength. Source: 27 CFR 5.11 (there at 60 °F)."""
    return 2.0 * within("strength", abv_percent, 0.0, 100.0, unit="% vol")


def of_us_proof(proof: float) -> float:
    """The strength, % vol, of degrees of US proof."""
    return within("proof", proof, 0.0, 200.0, unit="degrees") / 2.0


def old_uk_proof(abv_percent: float) -> float:
    """Degrees of British proof as used until 1980; 100 is 57.06 % vol."""
    return OLD_UK_PROOF_PER_ABV * within("strength", abv_percent, 0.0, 100.0, unit="% vol")


def of_old_uk_proof(proof: float) -> float:
    """The strength, % vol, of degrees of British proof as used until 1980."""
    highest = 100.0 * OLD_UK_PROOF_PER_ABV
    return within("proof", proof, 0.0, highest, unit="degrees") / OLD_UK_PROOF_PER_ABV


def mixed(parts: Iterable[SpiritMixture]) -> SpiritMixture:
    """What pouring spirits and water together gives: masses add, volumes contract.

    >>> spirit, water = SpiritMixture(50.0, 100.0), SpiritMixture(50.0, 0.0)
    >>> mixed([spirit, water]).volume_ml  # doctest: +ELLIPSIS
    96.4...
    """
    total_g = ethanol_g = 0.0
    for part in parts:
        share = within("volume", part.volume_ml, 0.0, 1e9, unit="ml")
        grams = mass_g(share, part.abv_percent)
        total_g += grams
        ethanol_g += grams * mass_fraction(part.abv_percent)
    if total_g == 0.0:
        return SpiritMixture(0.0, 0.0)
    p = ethanol_g / total_g
    return SpiritMixture(total_g * 1000.0 / density_of_mass_fraction(p), strength(p))


def reduced(volume_ml: float, abv_percent: float, wanted_abv: float) -> Reduction:
    """How to weaken a spirit with water, ml at 20 °C.

    The ethanol stays, so the volume after is exact; the water is what is
    missing by mass. Raises `OutsideRange` where `wanted_abv` is none, or more
    than there is.
    """
    within("volume", volume_ml, 0.0, 1e9, unit="ml")
    q_before = within("strength", abv_percent, _WEAKEST, 100.0, unit="% vol")
    q_after = within("wanted strength", wanted_abv, _WEAKEST, q_before, unit="% vol")
    added_g = mass_g(volume_ml, q_before) * (mass_fraction(q_before) / mass_fraction(q_after) - 1.0)
    # Where nothing is weakened, rounding may leave a hair less than nothing to add.
    water_ml = max(0.0, added_g) * 1000.0 / density_of_mass_fraction(0.0)
    return Reduction(water_ml, volume_ml * q_before / q_after)


def _reading(mass_fraction: float, temperature_c: float, reference_c: float) -> float:
    """What a glass hydrometer shows, % vol, on its scale from 0 to 100."""
    glass = 1.0 - _GLASS_PER_K * (temperature_c - reference_c)
    marked = density_of_mass_fraction(mass_fraction, temperature_c) / glass
    return strength(_root(lambda p: marked - density_of_mass_fraction(p, reference_c)), reference_c)


def _root(off: Callable[[float], float]) -> float:
    """The mass fraction at which the growing `off` is nothing, or the end that is nearest to it."""
    from scipy.optimize import brentq  # heavy, and not every start needs it

    if off(0.0) >= 0.0:
        return 0.0
    if off(1.0) <= 0.0:
        return 1.0
    return float(brentq(off, 0.0, 1.0, xtol=1e-15, rtol=1e-14))


def _coldest(p: float) -> float:
    """Where it begins to freeze, or the formula's own limit."""
    curve = constants("freezing")
    return max(COLDEST_C, interpolated(curve["mass_fraction"], curve["celsius"], p))
