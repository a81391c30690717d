"""Bottles against 27 CFR 5.202(b): from 200 ml up at most 8 % of the capacity is headspace.

The sizes are the standards of fill for distilled spirits, 27 CFR 5.203.
"""

from __future__ import annotations

import pytest

from barkeep.domain.bottles.shapes import brimful_ml, shipped_shapes
from tests.walked import walked

SIZES_ML = (200, 250, 331, 350, 355, 375, 475, 500, 570, 700, 710, 720, 750, 900, 945)
LARGE_SIZES_ML = (1000, 1500, 1750, 1800, 2000, 3000, 3750)


@pytest.mark.parametrize("key", sorted(shipped_shapes()))
@walked("size_ml", (*SIZES_ML, *LARGE_SIZES_ML))
def test_headspace_is_within_the_rule(key, size_ml):
    capacity_ml = brimful_ml(shipped_shapes()[key], size_ml)
    assert 0.0 < capacity_ml - size_ml <= 0.08 * capacity_ml
