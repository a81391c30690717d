"""Sugar and water: density, strength in degrees Brix, and what a syrup yields.

Density by a polynomial of the ICUMSA SPS-4 type (Bubník et al., *Sugar
Technologists Manual*, 1995). Brix is grams of sucrose in 100 g of solution.
"""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.liquids.constants import constants, polynomial, within

HIGHEST_BRIX = 85.0

GRANULATED_G_PER_ML = 200.0 / 236.5882365
"""Granulated sugar as it lies in a cup: 200 g to the US cup (USDA SR28 19335)."""

SATURATED_BRIX = 66.7
"""What water holds at 20 °C; values differ from 66.7 to 67.1. Beyond it sugar may crystallise."""


@dataclass(frozen=True, slots=True)
class Syrup:
    """A syrup made: its volume at 20 °C, mass, Brix and grams of sugar in a litre."""

    volume_ml: float
    mass_g: float
    brix: float
    sugar_g_per_l: float

    @property
    def saturated(self) -> bool:
        """Whether it holds as much sugar as it can at 20 °C, or more."""
        return self.brix >= SATURATED_BRIX - 0.05


def water_density_kg_m3(temperature_c: float) -> float:
    """Density of water, the start of the sucrose polynomial; 0 to 80 °C. Raises `OutsideRange`."""
    t = within("temperature", temperature_c, 0.0, 80.0, unit="°C")
    table = constants("sucrose_water")
    over: float = polynomial(table["water"], t)
    return over / (1.0 + float(table["water_under"]) * t)


def density_kg_m3(brix: float, temperature_c: float = 20.0) -> float:
    """Density of sucrose and water. Range: 0 to 85 °Bx, 0 to 80 °C (range *from memory*).

    Source: ICUMSA SPS-4 type polynomial. Raises `OutsideRange`.
    """
    w = within("sugar content", brix, 0.0, HIGHEST_BRIX, unit="°Bx") / 100.0
    u = (within("temperature", temperature_c, 0.0, 80.0, unit="°C") - 20.0) / 100.0
    rows = [polynomial([0.0, *row], w) for row in constants("sucrose_water")["c"]]
    return water_density_kg_m3(temperature_c) + polynomial(rows, u)


def g_per_l(brix: float, temperature_c: float = 20.0) -> float:
    """Grams of sucrose in a litre of solution of this Brix. Raises `OutsideRange`."""
    return density_kg_m3(brix, temperature_c) * brix / 100.0


def brix_of(sugar_g_per_l: float) -> float:
    """The Brix of a solution with this much sucrose in a litre at 20 °C. Raises `OutsideRange`."""
    from scipy.optimize import brentq  # heavy, and not every start needs it

    most = g_per_l(HIGHEST_BRIX)
    wanted = within("sugar content", sugar_g_per_l, 0.0, most, unit="g/l")
    if wanted in (0.0, most):
        return 0.0 if wanted == 0.0 else HIGHEST_BRIX
    return float(brentq(lambda b: g_per_l(b) - wanted, 0.0, HIGHEST_BRIX, xtol=1e-12, rtol=1e-14))


def syrup(sugar_g: float, water_g: float) -> Syrup:
    """What dissolving sugar in water gives, measured at 20 °C. Raises `OutsideRange`.

    >>> round(syrup(1000.0, 1000.0).volume_ml, 1)
    1626.5
    """
    within("mass of sugar", sugar_g, 0.0, 1e7, unit="g")
    within("mass of water", water_g, 1e-9, 1e7, unit="g")
    mass = sugar_g + water_g
    brix = 100.0 * sugar_g / mass
    volume_ml = mass * 1000.0 / density_kg_m3(brix)
    return Syrup(volume_ml, mass, brix, sugar_g * 1000.0 / volume_ml)


def syrup_by_volume(
    sugar_ml: float, water_ml: float, sugar_g_per_ml: float = GRANULATED_G_PER_ML
) -> Syrup:
    """What sugar and water measured in the same cup give at 20 °C. Raises `OutsideRange`.

    A cup of sugar is mostly air, so 1 to 1 by volume is weaker than by weight.

    >>> round(syrup_by_volume(236.588, 236.588).sugar_g_per_l, 1)
    553.5
    """
    packed = within("bulk density of sugar", sugar_g_per_ml, 0.1, 1.59, unit="g/ml")
    water_g = water_ml * water_density_kg_m3(20.0) / 1000.0
    return syrup(sugar_ml * packed, water_g)


def water_to_thin_g(volume_ml: float, brix: float, wanted_brix: float) -> float:
    """Grams of water that bring a syrup from one Brix down to another. Raises `OutsideRange`."""
    mass = volume_ml * density_kg_m3(brix) / 1000.0
    wanted = within("wanted sugar content", wanted_brix, 1e-6, brix, unit="°Bx")
    return mass * (brix / wanted - 1.0)


def volume_taken_ml_per_g(sugar_g_per_l: float, temperature_c: float = 20.0) -> float:
    """The volume that a gram of dissolved sucrose takes up at a temperature, ml/g.

    The solution is named by its sugar in a litre at 20 °C. 0.616 in a weak one,
    0.637 in a syrup of 1200 g/l. Raises `OutsideRange`.
    """
    within("sugar content", sugar_g_per_l, 0.0, g_per_l(HIGHEST_BRIX), unit="g/l")
    sugar = max(sugar_g_per_l, 1.0)  # its limit in a very weak solution
    brix = brix_of(sugar)
    litre_g = density_kg_m3(brix)
    volume_ml = litre_g * 1000.0 / density_kg_m3(brix, temperature_c)
    water_ml = (litre_g - sugar) * 1000.0 / water_density_kg_m3(temperature_c)
    return (volume_ml - water_ml) / sugar
