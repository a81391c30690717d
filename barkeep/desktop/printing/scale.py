"""The one measure of printing: a tenth of a point, so that type needs no rounding."""

from __future__ import annotations

PER_POINT = 10.0
PER_INCH = 72.0 * PER_POINT
_MM_PER_INCH = 25.4


def from_mm(length_mm: float) -> float:
    """A length in tenths of a point."""
    return length_mm * PER_INCH / _MM_PER_INCH


def from_points(length: float) -> float:
    """A length in tenths of a point."""
    return length * PER_POINT
