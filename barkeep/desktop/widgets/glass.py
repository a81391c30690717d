"""What every painted vessel shares: where its centimetres lie, its outline, the liquid in it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainterPath

if TYPE_CHECKING:
    from barkeep.domain.bottles.shapes import Station
    from barkeep.domain.drink.colours import Tint

HIDES = 0.2
"""A power of the cloud: a little of it hides much of what lies behind."""


@dataclass(frozen=True, slots=True)
class Place:
    """Where centimetres lie in a picture: x from the middle of a vessel, y above the table."""

    middle: float
    table: float
    scale: float

    def at(self, x_cm: float, y_cm: float) -> QPointF:
        """A point of the vessel."""
        return QPointF(self.middle + x_cm * self.scale, self.table - y_cm * self.scale)

    def box(self, x_cm: float, y_cm: float, wide_cm: float, high_cm: float) -> QRectF:
        """A box around a middle."""
        corner = self.at(x_cm - wide_cm / 2.0, y_cm + high_cm / 2.0)
        return QRectF(corner.x(), corner.y(), wide_cm * self.scale, high_cm * self.scale)


def outline_of(stations: Sequence[Station], place: Place) -> QPainterPath:
    """The inside of a vessel, open at the top: corners rounded off between the stations."""
    right = [place.at(each.width_cm / 2.0, each.height_cm) for each in stations]
    left = [place.at(-each.width_cm / 2.0, each.height_cm) for each in reversed(stations)]
    path = QPainterPath(left[0])
    _round_off(path, left)
    path.lineTo(right[0])
    _round_off(path, right)
    return path


def liquid_colour(tint: Tint) -> QColor:
    """Its colour: the clearer and paler, the more one sees through it."""
    colour = QColor.fromRgbF(*tint.rgb)
    takes = 1.0 - min(tint.rgb)
    clear = min(1.0, 0.35 + takes)
    colour.setAlphaF(max(clear, tint.cloud**HIDES))
    return colour


def _round_off(path: QPainterPath, points: Sequence[QPointF]) -> None:
    for point, following in pairwise(points[1:]):
        path.quadTo(point, (point + following) / 2.0)
    path.lineTo(points[-1])
