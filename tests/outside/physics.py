"""What published sources count with, worked out of barkeep's densities.

Proof, weights in air, mixing and thinning: barkeep itself asks none of this,
but their published figures show that the densities below them are right.
"""

from __future__ import annotations

from dataclasses import dataclass

from scipy.optimize import brentq

from barkeep.domain.liquids import ethanol, sucrose
from barkeep.domain.liquids.ethanol import density_of_mass_fraction, read_strength
from barkeep.domain.liquids.sweetened import in_air, spirit_density

GRANULATED_G_PER_ML = 200.0 / 236.5882365
"""Granulated sugar as it lies in a cup: 200 g to the US cup (USDA SR28 19335)."""

GLASS_PER_K = 25e-6
"""How soda-lime glass grows."""


@dataclass(frozen=True, slots=True)
class Mixture:
    """A volume in ml at 20 °C, and its strength in % vol."""

    volume_ml: float
    abv_percent: float


@dataclass(frozen=True, slots=True)
class Syrup:
    """A syrup made: its volume at 20 °C, mass, Brix and grams of sugar in a litre."""

    volume_ml: float
    mass_g: float
    brix: float
    sugar_g_per_l: float


def of_us_proof(proof: float) -> float:
    """% vol of degrees of US proof."""
    return read_strength(f"{proof:.9f} proof")


def us_proof(abv_percent: float) -> float:
    """Degrees of US proof."""
    return 2.0 * abv_percent


def strength_of_density(density_kg_m3: float, temperature_c: float = 20.0) -> float:
    """% vol at 20 °C of ethanol and water of a density."""
    return ethanol.strength(
        _root(lambda p: density_kg_m3 - density_of_mass_fraction(p, temperature_c))
    )


def strength_of_reading(reading_abv: float, temperature_c: float, reference_c: float) -> float:
    """% vol of what a glass hydrometer reads away from its own temperature."""
    p = ethanol.mass_fraction(reading_abv, reference_c)
    marked = density_of_mass_fraction(p, reference_c)
    actual = marked * (1.0 - GLASS_PER_K * (temperature_c - reference_c))
    found = _root(lambda each: actual - density_of_mass_fraction(each, temperature_c))
    return ethanol.strength(found, reference_c)


def apparent_abv(abv_percent: float, sugar_g_per_l: float) -> float:
    """% vol that a hydrometer shows of a sweetened spirit."""
    return strength_of_density(spirit_density(abv_percent, sugar_g_per_l).g_per_ml * 1000.0)


def mixed(*parts: Mixture) -> Mixture:
    """What pouring spirits and water together gives: masses add, volumes contract."""
    grams = [ethanol.mass_g(each.volume_ml, each.abv_percent) for each in parts]
    shares = [ethanol.mass_fraction(each.abv_percent) for each in parts]
    p = sum(g * share for g, share in zip(grams, shares, strict=True)) / sum(grams)
    return Mixture(sum(grams) * 1000.0 / density_of_mass_fraction(p), ethanol.strength(p))


def water_to_reduce_ml(volume_ml: float, abv_percent: float, wanted_abv: float) -> float:
    """The water that brings a spirit down to a strength, ml at 20 °C; its ethanol stays."""
    shares = ethanol.mass_fraction(abv_percent) / ethanol.mass_fraction(wanted_abv)
    grams = ethanol.mass_g(volume_ml, abv_percent) * (shares - 1.0)
    return grams * 1000.0 / density_of_mass_fraction(0.0)


def in_air_g(mass_g: float, density_kg_m3: float) -> float:
    """What a scale shows of a true mass of this density."""
    return mass_g * in_air(density_kg_m3 / 1000.0) * 1000.0 / density_kg_m3


def out_of_air_g(shown_g: float, density_kg_m3: float) -> float:
    """The true mass of what a scale shows."""
    return shown_g * density_kg_m3 / (in_air(density_kg_m3 / 1000.0) * 1000.0)


def tabarie_kg_m3(abv_percent: float, sugar_g_per_l: float) -> float:
    """The density of a liqueur by the older rule of OIV-MA-AS2-03B."""
    sweet = sucrose.density_kg_m3(sucrose.brix_of(sugar_g_per_l))
    return ethanol.density_kg_m3(abv_percent) + sweet - sucrose.water_density_kg_m3(20.0)


def syrup(sugar_g: float, water_g: float) -> Syrup:
    """What dissolving sugar in water gives, measured at 20 °C."""
    mass = sugar_g + water_g
    brix = 100.0 * sugar_g / mass
    volume_ml = mass * 1000.0 / sucrose.density_kg_m3(brix)
    return Syrup(volume_ml, mass, brix, sugar_g * 1000.0 / volume_ml)


def syrup_by_the_cup(sugar_ml: float, water_ml: float) -> Syrup:
    """What sugar and water measured in the same cup give at 20 °C."""
    water_g = water_ml * sucrose.water_density_kg_m3(20.0) / 1000.0
    return syrup(sugar_ml * GRANULATED_G_PER_ML, water_g)


def water_to_thin_g(volume_ml: float, brix: float, wanted_brix: float) -> float:
    """The water that brings a syrup from one Brix down to another, g."""
    return volume_ml * sucrose.density_kg_m3(brix) / 1000.0 * (brix / wanted_brix - 1.0)


def _root(off) -> float:
    """The mass fraction at which the growing `off` is nothing."""
    if off(0.0) >= 0.0:
        return 0.0
    return brentq(off, 0.0, 1.0, xtol=1e-15, rtol=1e-14)
