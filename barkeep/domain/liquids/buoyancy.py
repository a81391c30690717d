"""What air does to a scale: it buoys a liquid up more than the weights the scale was set by.

Air is taken as 1.2 kg/m³ and the weights as 8000 kg/m³, the conventions of
OIML R 111 and D 28. A spirit reads 0.11 % less than its mass.
"""

from __future__ import annotations

AIR_G_PER_ML, WEIGHTS_G_PER_ML = 0.0012, 8.0
_SCALE = 1.0 - AIR_G_PER_ML / WEIGHTS_G_PER_ML


def in_air(g_per_ml: float) -> float:
    """What a millilitre of this density reads on a scale in air, in g.

    >>> round(750 * in_air(0.948045), 1)  # 711.0 g in a vacuum
    710.2
    """
    return (g_per_ml - AIR_G_PER_ML) / _SCALE


def out_of_air(read_g_per_ml: float) -> float:
    """The density, g/ml, of what reads so much a millilitre; the inverse of `in_air`."""
    return read_g_per_ml * _SCALE + AIR_G_PER_ML
