"""Sweetened spirits and liqueurs: density, for weighing bottles, and what a scale in air shows.

A litre is taken as ethanol and water, and sugar that takes up the volume it
takes up in water alone. No published table of the three together was found:
at 40 % vol and 300 g/l the older rule of Tabarié (OIV-MA-AS2-03B) gives 0.4 %
more, and Hackbarth, *J. Am. Soc. Brew. Chem.* 67(3):146 (2009), finds real
liqueurs lighter than that rule. So the density is good to half a percent.
Cream and egg liqueurs hold fat and protein, which this knows nothing of.

Air buoys a liquid up more than the weights a scale was set by: a spirit reads
0.11 % less than its mass. Air is taken as 1.2 kg/m³ and the weights as
8000 kg/m³, the conventions of OIML R 111 and D 28.
"""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.liquids import ethanol, sucrose
from barkeep.domain.liquids.constants import within
from barkeep.translation import tr, tr_noop

AIR_G_PER_ML, WEIGHTS_G_PER_ML = 0.0012, 8.0
_SCALE = 1.0 - AIR_G_PER_ML / WEIGHTS_G_PER_ML
UNSWEETENED_G_PER_L = 5.0
"""Up to this much sugar a spirit weighs what ethanol and water weigh."""
SIGMA_UNSWEETENED, SIGMA_SWEETENED = 0.0005, 0.005
"""One-sigma doubt of the density, a share; the former is a label's ±0.3 % vol (27 CFR 19.356)."""


@dataclass(frozen=True, slots=True)
class SpiritDensity:
    """A density in g/ml and its one-sigma doubt as a share of it."""

    g_per_ml: float
    sigma_share: float


def spirit_density(
    abv_percent: float, sugar_g_per_l: float = 0.0, temperature_c: float = 20.0
) -> SpiritDensity:
    """Density at a temperature of a spirit or liqueur of a strength and sugar at 20 °C.

    Source: additive volumes over OIML R 22 and the ICUMSA polynomial. Range: what
    fits into a litre; 0 to 40 °C. Raises `OutsideRange`, also where strength and
    sugar cannot both be so high.
    """
    abv = within(tr_noop("strength"), abv_percent, 0.0, 100.0, unit="% vol")
    sugar = within(
        "sugar content", sugar_g_per_l, 0.0, sucrose.g_per_l(sucrose.HIGHEST_BRIX), unit="g/l"
    )
    within(tr_noop("temperature"), temperature_c, 0.0, ethanol.WARMEST_C, unit="°C")
    rest_ml = 1000.0 - sugar * sucrose.volume_taken_ml_per_g(sugar)
    most = rest_ml / 10.0
    of_rest = 1000.0 * within(
        tr("strength beside {sugar:g} g/l of sugar", sugar=sugar), abv, 0.0, most, unit="% vol"
    )
    rest_abv = min(100.0, of_rest / rest_ml)
    rest_g = ethanol.mass_g(rest_ml, rest_abv)
    rest_there_ml = ethanol.volume_ml(rest_g, rest_abv, temperature_c)
    sugar_there_ml = sugar * sucrose.volume_taken_ml_per_g(sugar, temperature_c)
    doubt = SIGMA_UNSWEETENED if sugar <= UNSWEETENED_G_PER_L else SIGMA_SWEETENED
    return SpiritDensity((rest_g + sugar) / (rest_there_ml + sugar_there_ml), doubt)


def in_air(g_per_ml: float) -> float:
    """What a millilitre of this density reads on a scale in air, in g.

    >>> round(750 * in_air(0.948045), 1)  # 711.0 g in a vacuum
    710.2
    """
    return (g_per_ml - AIR_G_PER_ML) / _SCALE


def out_of_air(read_g_per_ml: float) -> float:
    """The density, g/ml, of what reads so much a millilitre; the inverse of `in_air`."""
    return read_g_per_ml * _SCALE + AIR_G_PER_ML
