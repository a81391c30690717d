"""How far a new bottle's fill and strength may be off its label."""

from __future__ import annotations

from barkeep.domain.liquids.constants import within

STRENGTH_TOLERANCE = 0.3
"""% vol that a spirit may be off its label. Source: 27 CFR 19.356."""


_TOLERANCES = ((1000.0, 0.015), (376.0, 0.02), (101.0, 0.03), (0.0, 0.045))


def fill_tolerance(size_ml: float) -> float:
    """The share by which a fill may be off. Source: 27 CFR 19.356. Raises `OutsideRange`."""
    size = within("size", size_ml, 0.0, 1e7, unit="ml")
    return next(share for least, share in _TOLERANCES if size >= least)
