"""Sugar and water: density, strength in degrees Brix.

Density by a polynomial of the ICUMSA SPS-4 type (Bubník et al., *Sugar
Technologists Manual*, 1995). Brix is grams of sucrose in 100 g of solution.
"""

from __future__ import annotations

from barkeep.domain.liquids.constants import constants, polynomial, within
from barkeep.translation import tr_noop

HIGHEST_BRIX = 85.0

SATURATED_BRIX = 66.7
"""What water holds at 20 °C; values differ from 66.7 to 67.1. Beyond it sugar may crystallise."""


def water_density_kg_m3(temperature_c: float) -> float:
    """Density of water, the start of the sucrose polynomial; 0 to 80 °C. Raises `OutsideRange`."""
    t = within(tr_noop("temperature"), temperature_c, 0.0, 80.0, unit="°C")
    table = constants("sucrose_water")
    over: float = polynomial(table["water"], t)
    return over / (1.0 + float(table["water_under"]) * t)


def density_kg_m3(brix: float, temperature_c: float = 20.0) -> float:
    """Density of sucrose and water. Range: 0 to 85 °Bx, 0 to 80 °C (range *from memory*).

    Source: ICUMSA SPS-4 type polynomial. Raises `OutsideRange`.
    """
    w = within(tr_noop("sugar content"), brix, 0.0, HIGHEST_BRIX, unit="°Bx") / 100.0
    u = (within(tr_noop("temperature"), temperature_c, 0.0, 80.0, unit="°C") - 20.0) / 100.0
    rows = [polynomial([0.0, *row], w) for row in constants("sucrose_water")["c"]]
    return water_density_kg_m3(temperature_c) + polynomial(rows, u)


def g_per_l(brix: float, temperature_c: float = 20.0) -> float:
    """Grams of sucrose in a litre of solution of this Brix. Raises `OutsideRange`."""
    return density_kg_m3(brix, temperature_c) * brix / 100.0


def brix_of(sugar_g_per_l: float) -> float:
    """The Brix of a solution with this much sucrose in a litre at 20 °C. Raises `OutsideRange`."""
    from scipy.optimize import brentq  # heavy, and not every start needs it

    most = g_per_l(HIGHEST_BRIX)
    wanted = within(tr_noop("sugar content"), sugar_g_per_l, 0.0, most, unit="g/l")
    if wanted in (0.0, most):
        return 0.0 if wanted == 0.0 else HIGHEST_BRIX
    return float(brentq(lambda b: g_per_l(b) - wanted, 0.0, HIGHEST_BRIX, xtol=1e-12, rtol=1e-14))


def volume_taken_ml_per_g(sugar_g_per_l: float, temperature_c: float = 20.0) -> float:
    """The volume that a gram of dissolved sucrose takes up at a temperature, ml/g.

    The solution is named by its sugar in a litre at 20 °C. 0.616 in a weak one,
    0.637 in a syrup of 1200 g/l. Raises `OutsideRange`.
    """
    within(tr_noop("sugar content"), sugar_g_per_l, 0.0, g_per_l(HIGHEST_BRIX), unit="g/l")
    sugar = max(sugar_g_per_l, 1.0)  # its limit in a very weak solution
    brix = brix_of(sugar)
    litre_g = density_kg_m3(brix)
    volume_ml = litre_g * 1000.0 / density_kg_m3(brix, temperature_c)
    water_ml = (litre_g - sugar) * 1000.0 / water_density_kg_m3(temperature_c)
    return (volume_ml - water_ml) / sugar
