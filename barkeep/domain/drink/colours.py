"""Colours of liquids, and of what is mixed from them.

Each of the three channels is one layer of paint in the theory of Kubelka and Munk
(*Zeitschrift für technische Physik* 12, 1931; from memory): what a liquid takes
away adds up by volume, and so does what it scatters. A clear liquid is seen through,
so it shows what is left of the light; a cloudy one gives back `1 + q − √(q² + 2q)`
of it, where q is what it takes away for what it scatters.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from math import exp, log, sqrt

DEEPEST = 8.0
"""How cloudy a wholly cloudy liquid is, as a power of e: a fifth of cream clouds a drink."""
WHITENS = 12.0
"""What a wholly cloudy liquid gives back for what a clear one takes away: cream lightens coffee."""
DARKEST, LIGHTEST = 0.004, 0.996
_COLOUR = re.compile(r"#[0-9a-f]{6}")


Rgb = tuple[float, float, float]
"""Red, green and blue from 0 to 1."""

CLOUDY = 0.03
"""What is cloudier than this is no longer clear."""


@dataclass(frozen=True, slots=True)
class Tint:
    """How a liquid looks: red, green and blue from 0 to 1, and its cloud from 0 to 1.

    `depth` is how many times more than one sees it colours what it is mixed into: a
    red bitter is as red as can be by itself, and a little of it still reddens a drink.
    """

    rgb: Rgb
    cloud: float
    depth: float = 1.0

    @property
    def hex(self) -> str:
        """The colour as *#rrggbb*."""
        return "#" + "".join(f"{round(255 * each):02x}" for each in self.rgb)

    @property
    def is_cloudy(self) -> bool:
        """Whether one does not see through it clearly."""
        return self.cloud > CLOUDY


def is_colour(text: str) -> bool:
    """Whether a text is a colour as *#rrggbb* in small letters."""
    return _COLOUR.fullmatch(text) is not None


def tint(colour: str, cloud: float, depth: float = 1.0) -> Tint:
    """A liquid from a colour as *#rrggbb*, its cloud and its depth."""
    return Tint(rgb_of(colour), cloud, depth)


def rgb_of(colour: str) -> Rgb:
    """The three channels of *#rrggbb*, from 0 to 1."""
    red, green, blue = (int(colour[at : at + 2], 16) / 255.0 for at in (1, 3, 5))
    return red, green, blue


def mixed(parts: Iterable[tuple[Tint, float]]) -> Tint | None:
    """What liquids of these volumes look like together; None where there is nothing of any.

    >>> mixed([(tint("#cf1a24", 0.0), 30.0), (tint("#ffffff", 0.0), 60.0)]).hex
    '#ed7784'
    """
    poured = [(each, volume) for each, volume in parts if volume > 0.0]
    whole = sum(volume for _, volume in poured)
    if not whole:
        return None
    shares = [(each, volume / whole) for each, volume in poured]
    scatters = sum(share * _scatters(each.cloud) for each, share in shares)
    cloud = _cloud(scatters)
    taken = [
        sum(share * each.depth ** (1.0 - share) * _taken(each, channel) for each, share in shares)
        for channel in range(3)
    ]
    red, green, blue = (_seen(each, scatters, cloud) for each in taken)
    return Tint((red, green, blue), cloud)


def _scatters(cloud: float) -> float:
    """What scatters in a liquid so cloudy; a wholly cloudy one scatters 1."""
    return -log(1.0 - min(cloud, 1.0 - exp(-DEEPEST))) / DEEPEST


def _cloud(scatters: float) -> float:
    return min(1.0, (1.0 - exp(-DEEPEST * scatters)) / (1.0 - exp(-DEEPEST)))


def _taken(each: Tint, channel: int) -> float:
    """What a liquid takes away, so that by itself it looks as it does: found by halving."""
    wanted = min(max(each.rgb[channel], DARKEST), LIGHTEST)
    scatters, low, high = _scatters(each.cloud), 0.0, 400.0
    for _ in range(60):
        middle = (low + high) / 2.0
        low, high = (
            (middle, high) if _seen(middle, scatters, each.cloud) > wanted else (low, middle)
        )
    return (low + high) / 2.0


def _seen(taken: float, scatters: float, cloud: float) -> float:
    """One channel of what is seen: partly through the liquid, partly from within it."""
    through = exp(-taken)
    if not scatters:
        return through
    q = taken / (WHITENS * scatters)
    return (1.0 - cloud) * through + cloud * (1.0 + q - sqrt(q * q + 2.0 * q))
