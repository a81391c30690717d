"""The quantities of the US Gauging Manual (27 CFR 30), at 60 °F, out of barkeep's functions."""

from __future__ import annotations

import math

from barkeep.domain.liquids import ethanol
from barkeep.domain.liquids.ethanol import US_REFERENCE_C
from tests.outside import physics
from tests.outside.tables import LB_G, US_GAL_ML


def density(proof: float, temperature_c: float = US_REFERENCE_C) -> float:
    """kg/m³ of a spirit of a US proof."""
    p = ethanol.mass_fraction(physics.of_us_proof(proof), US_REFERENCE_C)
    return ethanol.density_of_mass_fraction(p, temperature_c)


def parts_of_water(proof: float) -> float:
    """Gallons of water that went into 100 gallons: the last column of Table 6."""
    p = ethanol.mass_fraction(physics.of_us_proof(proof), US_REFERENCE_C)
    water = ethanol.density_of_mass_fraction(0.0, US_REFERENCE_C)
    return 100.0 * (1.0 - p) * density(proof) / water


def wine_gallons_per_lb(proof: float) -> float:
    """Gallons that weigh a pound in air: Table 4."""
    return physics.out_of_air_g(LB_G, density(proof)) * 1000.0 / density(proof) / US_GAL_ML


def proof_gallons_per_lb(proof: float) -> float:
    """The same, as gallons of 100 proof."""
    return wine_gallons_per_lb(proof) * proof / 100.0


def weight_lb(gallons: float, proof: float) -> float:
    """What gallons weigh in air, rounded up to the ounce as 27 CFR 30.44 does."""
    return math.ceil(16.0 * gallons / wine_gallons_per_lb(proof)) / 16.0
