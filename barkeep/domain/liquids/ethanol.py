"""Ethanol and water: density, strength and proof.

Density by the general formula of OIML R 22, *International Alcoholometric
Tables*, 1975. Strength is % vol at 20 °C unless another reference is given;
mass fractions run from 0 to 1.

>>> round(density_kg_m3(40.0), 2)
948.05
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache

from barkeep.domain.liquids.constants import constants, interpolated, polynomial, within
from barkeep.errors import InvalidField
from barkeep.translation import tr, tr_noop

REFERENCE_C = 20.0
"""The temperature at which strength is stated in most countries."""
US_REFERENCE_C = (60.0 - 32.0) / 1.8
"""The temperature at which US proof is stated: 60 °F (27 CFR 5.11)."""
COLDEST_C, WARMEST_C = -20.0, 40.0

STRENGTH_TOLERANCE = 0.3
"""% vol that a spirit may be off its label. Source: 27 CFR 19.356."""

US_PROOF_PER_ABV = 2.0
"""Degrees of US proof to one % vol (27 CFR 5.11)."""

OLD_UK_PROOF_PER_ABV = 1.7525
"""Degrees of British proof (until 1980) to one % vol: 57.06 % vol is 100."""

HOW_STRENGTHS = tr_noop("write % vol, such as 41.2, or proof, such as 86 proof")

STRENGTH_UNIT = (
    r"(?:[ ]?%(?:[ ]?(?:vol|abv|alc)\b\.?)?"
    r"|[ ]?(?P<degree>°[ ]?)?(?:(?P<kind>us|uk|british)[ ]?)?(?P<proof>proof))"
)
"""What follows the number of a strength; its groups are for `degrees_per_abv`."""

STRENGTH = re.compile(
    rf"(?P<number>(?:[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)){STRENGTH_UNIT}?", re.IGNORECASE
)


def density_of_mass_fraction(mass_fraction: float, temperature_c: float = REFERENCE_C) -> float:
    """Density in kg/m³ of ethanol and water. Source: OIML R 22 (1975), general formula.

    Range: 0 to 1, -20 to 40 °C, and not frozen. Raises `OutsideRange`.
    """
    p = within(tr_noop("mass fraction of ethanol"), mass_fraction, 0.0, 1.0, unit="")
    t = within(tr_noop("temperature"), temperature_c, _coldest(p), WARMEST_C, unit="°C")
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
    abv = within(tr_noop("strength"), abv_percent, 0.0, 100.0, unit="% vol")
    return _root(lambda p: strength(p, reference_c) - abv)


def strength(mass_fraction: float, reference_c: float = REFERENCE_C) -> float:
    """The strength by volume, % vol, of a share by mass, 0 to 1. Raises `OutsideRange`."""
    pure = density_of_mass_fraction(1.0, reference_c)
    here = density_of_mass_fraction(mass_fraction, reference_c)
    return min(100.0, 100.0 * mass_fraction * here / pure)  # rounding may pass 100 by a hair


def mass_g(volume_ml: float, abv_percent: float, temperature_c: float = REFERENCE_C) -> float:
    """The mass of a volume measured at a temperature. Raises `OutsideRange`."""
    return volume_ml * density_kg_m3(abv_percent, temperature_c) / 1000.0


def volume_ml(mass_g: float, abv_percent: float, temperature_c: float = REFERENCE_C) -> float:
    """The volume of a mass at a temperature. Raises `OutsideRange`."""
    return mass_g * 1000.0 / density_kg_m3(abv_percent, temperature_c)


def read_strength(text: str, field: str = "strength") -> float:
    """A strength in % vol as it is written: *43*, *41,2 % vol*, *86 proof*, *70 UK proof*.

    Proof is US proof, twice the strength (27 CFR 5.11, there at 60 °F), unless
    it says that it is British, as used until 1980. Degrees of proof were both,
    so they are asked about; and so is a bare number below 1, which may be a share
    of the whole. Raises `InvalidField` for `field`.

    >>> read_strength("100 proof"), round(read_strength("100 UK proof"), 2)
    (50.0, 57.06)
    """
    written = " ".join(text.split())
    found = STRENGTH.fullmatch(written)
    if found is None:
        raise InvalidField(field, written, HOW_STRENGTHS)
    number = float(found["number"].replace(",", "."))
    if found["degree"] and not found["kind"]:
        expected = tr(
            "write {number:g} US proof or {number:g} UK proof: they are not the same", number=number
        )
        raise InvalidField(field, written, expected)
    if 0.0 < number < 1.0 and written == found["number"]:
        expected = tr(
            "write {percent:g} % or {number:g} %, whichever is meant",
            percent=100.0 * number,
            number=number,
        )
        raise InvalidField(field, written, expected)
    abv = number / degrees_per_abv(found)
    if abv > 100.0:
        raise InvalidField(field, written, tr_noop("it is 0 to 100 % vol"))
    return abv


def degrees_per_abv(found: re.Match[str]) -> float:
    """How many of what a match of `STRENGTH` is in make up one % vol."""
    if not found["proof"]:
        return 1.0
    british = (found["kind"] or "").casefold() in ("uk", "british")
    return OLD_UK_PROOF_PER_ABV if british else US_PROOF_PER_ABV


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
