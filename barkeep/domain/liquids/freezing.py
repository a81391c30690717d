"""Where a drink freezes, and whether it stays liquid in a freezer."""

from __future__ import annotations

from math import ceil
from typing import Literal

from barkeep.domain.liquids.constants import constants, interpolated, within
from barkeep.translation import tr, tr_noop

FREEZER_C = -18.0
"""A household freezer (*common practice*)."""
SAFE_MARGIN_C, SLUSH_ABV = 1.0, 25.0
COLDEST_FREEZER_C = -27.0
"""Colder than this the table cannot tell what stays liquid: it ends at -28.7 °C."""
STRONGEST_KNOWN_ABV = 46.3
"""Of what is stronger only a bound is known, % vol: the end of the table."""
_SUCROSE_G_PER_MOL = 342.3
_KELVIN_PER_MOLAL = 1.86


InFreezer = Literal["liquid", "borderline", "slush", "frozen"]


def freezing_point_c(abv_percent: float, sugar_g_per_l: float = 0.0) -> float:
    """Where ice begins to form, °C; of what is stronger than 46.3 % vol, a bound: not above this.

    Source: Lange's *Handbook of Chemistry*, 15th ed., Table 5.13, between its
    points in straight lines; 0 to 46.3 % vol. Sugar lowers it by 1.86 °C for a
    mole in a kilogram of water (the ideal law, *from memory*; real syrups
    freeze a little lower still). Range of sugar: 0 to 600 g/l. Raises `OutsideRange`.
    """
    abv = within(tr_noop("strength"), abv_percent, 0.0, 100.0, unit="% vol")
    sugar = within(tr_noop("sugar content"), sugar_g_per_l, 0.0, 600.0, unit="g/l")
    water_kg_per_l = max(0.2, 1.0 - abv / 100.0 - sugar * 0.62 / 1000.0)
    return _of_strength(abv) - _KELVIN_PER_MOLAL * sugar / _SUCROSE_G_PER_MOL / water_kg_per_l


def where_ice_begins(point_c: float, abv_percent: float) -> str:
    """A freezing point in words; only a bound for what is stronger than the table.

    >>> where_ice_begins(-8.6, 22.0), where_ice_begins(-28.7, 50.0)
    ('at −9 °C', 'below −28 °C')
    """
    if abv_percent > STRONGEST_KNOWN_ABV:
        return tr("below {degrees} °C", degrees=f"{ceil(point_c)}".replace("-", "−"))
    return tr("at {degrees} °C", degrees=f"{round(point_c)}".replace("-", "−"))


def in_freezer(
    abv_percent: float, sugar_g_per_l: float = 0.0, freezer_c: float = FREEZER_C
) -> InFreezer:
    """How a drink comes out of a freezer.

    *liquid* where ice would begin a degree or more below the freezer,
    *borderline* within a degree of it, *slush* from 25 % vol up, else *frozen*
    (the ranges are *common practice*). Range of the freezer: -27 to 0 °C.
    Raises `OutsideRange`.
    """
    freezer = within(tr_noop("freezer temperature"), freezer_c, COLDEST_FREEZER_C, 0.0, unit="°C")
    spare = freezer - freezing_point_c(abv_percent, sugar_g_per_l)
    if spare >= SAFE_MARGIN_C:
        return "liquid"
    if spare >= -SAFE_MARGIN_C:
        return "borderline"
    return "slush" if abv_percent >= SLUSH_ABV else "frozen"


def _of_strength(abv: float) -> float:
    curve = constants("freezing")
    return interpolated(curve["abv_percent"], curve["celsius"], abv)
