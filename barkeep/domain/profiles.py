"""The inside of a bottle as areas against height, integrated and turned round.

A profile is a list of stations: at a height above the table the inside is so
wide. Between two stations width, depth and corner radius change evenly, so the
area of the cross-section is a quadratic in height and the volume below it a
cubic, both exact. A punt is a paraboloid, whose area is linear in height.
Heights in cm, areas in cm², volumes in ml.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate, pairwise
from math import pi
from typing import Literal, get_args

Section = Literal["round", "square", "oval"]
SECTIONS: tuple[Section, ...] = get_args(Section)

_STEPS = 100
"""Halving alone narrows a height to the last digit in fewer steps than this."""
_CONVERGED = 1e-12
"""A step this small, as a share: the next would change no digit, as each squares the error."""


@dataclass(frozen=True, slots=True)
class Station:
    """The inside at one height above the table. Only a square has a corner radius."""

    height_cm: float
    width_cm: float
    depth_cm: float
    corner_cm: float = 0.0


@dataclass(frozen=True, slots=True)
class Punt:
    """The push-up inside: a paraboloid that stands on the lowest inner point."""

    depth_cm: float = 0.0
    width_cm: float = 0.0

    def area_cm2(self, above_base_cm: float) -> float:
        """The area it takes from the cross-section at a height above the lowest inner point."""
        if above_base_cm >= self.depth_cm:
            return 0.0
        return pi / 4.0 * self.width_cm**2 * (1.0 - above_base_cm / self.depth_cm)


@dataclass(frozen=True, slots=True)
class Segment:
    """A stretch of the inside whose area is `a + b·t + c·t²`, t in cm above `foot_cm`."""

    foot_cm: float
    length_cm: float
    a: float
    b: float
    c: float

    @property
    def volume_ml(self) -> float:
        """What the whole stretch holds."""
        return self.volume_to(self.length_cm)

    @property
    def least_area_cm2(self) -> float:
        """The smallest area anywhere along it."""
        ends = (0.0, self.length_cm)
        turn = -self.b / (2.0 * self.c) if self.c > 0.0 else 0.0
        places = (*ends, turn) if 0.0 < turn < self.length_cm else ends
        return min(self.area_at(each) for each in places)

    def area_at(self, t: float) -> float:
        """The area of the cross-section t cm above its foot."""
        return self.a + t * (self.b + t * self.c)

    def volume_to(self, t: float) -> float:
        """What it holds up to t cm above its foot."""
        return t * (self.a + t * (self.b / 2.0 + t * self.c / 3.0))

    def height_of(self, volume_ml: float) -> float:
        """How many cm above its foot a volume stands: Newton's method kept between bounds."""
        low, high = 0.0, self.length_cm
        t = high * volume_ml / self.volume_ml
        for _ in range(_STEPS):
            excess = self.volume_to(t) - volume_ml
            low, high = (low, t) if excess > 0.0 else (t, high)
            following = t - excess / self.area_at(t)
            if not low <= following <= high:
                following = (low + high) / 2.0
            if abs(following - t) <= _CONVERGED * t:
                return following
            t = following
        return t


@dataclass(frozen=True)
class Profile:
    """The inside of a reference bottle, stations from the lowest inner point to the brim."""

    section: Section
    stations: tuple[Station, ...]
    punt: Punt = Punt()

    @property
    def base_cm(self) -> float:
        """The lowest inner point: the thickness of the glass below it."""
        return self.stations[0].height_cm

    @property
    def brim_cm(self) -> float:
        """The mouth."""
        return self.stations[-1].height_cm

    @cached_property
    def segments(self) -> tuple[Segment, ...]:
        """The stretches between stations, cut once more at the tip of a punt."""
        return tuple(self._cut())

    @cached_property
    def brimful_ml(self) -> float:
        """What it holds to the brim."""
        return self._filled[-1]

    @cached_property
    def _filled(self) -> tuple[float, ...]:
        """What is held up to the foot of each segment, and at last up to the brim."""
        return tuple(accumulate((each.volume_ml for each in self.segments), initial=0.0))

    def volume_to(self, height_cm: float) -> float:
        """What stands in it up to a height; nothing below the base, brimful above the brim."""
        if height_cm <= self.base_cm:
            return 0.0
        if height_cm >= self.brim_cm:
            return self.brimful_ml
        at = self._segment_at(height_cm)
        segment = self.segments[at]
        return self._filled[at] + segment.volume_to(height_cm - segment.foot_cm)

    def height_of(self, volume_ml: float) -> float:
        """The height at which a volume from nothing to brimful stands."""
        if volume_ml <= 0.0:
            return self.base_cm
        if volume_ml >= self.brimful_ml:
            return self.brim_cm
        at = max(n for n, filled in enumerate(self._filled[:-1]) if filled <= volume_ml)
        segment = self.segments[at]
        return segment.foot_cm + segment.height_of(volume_ml - self._filled[at])

    def area_at(self, height_cm: float) -> float:
        """The area of the surface of the liquid; beyond either end that at the end."""
        held = min(max(height_cm, self.base_cm), self.brim_cm)
        segment = self.segments[self._segment_at(held)]
        return segment.area_at(held - segment.foot_cm)

    def _segment_at(self, height_cm: float) -> int:
        return max(n for n, each in enumerate(self.segments) if each.foot_cm <= height_cm)

    def _cut(self) -> Iterator[Segment]:
        tip_cm = self.base_cm + self.punt.depth_cm
        for low, high in pairwise(self.stations):
            if low.height_cm < tip_cm < high.height_cm:
                tip = between(low, high, tip_cm)
                yield self._segment(low, tip)
                yield self._segment(tip, high)
            else:
                yield self._segment(low, high)

    def _segment(self, low: Station, high: Station) -> Segment:
        """The area between two stations; it is known there and half way, so it is known."""
        length = high.height_cm - low.height_cm
        middle_cm = low.height_cm + length / 2.0
        a = self._area(low)
        half = self._area(between(low, high, middle_cm))
        end = self._area(high)
        b = (4.0 * half - 3.0 * a - end) / length
        c = 2.0 * (a - 2.0 * half + end) / length**2
        return Segment(low.height_cm, length, a, b, c)

    def _area(self, station: Station) -> float:
        outline = area_cm2(self.section, station)
        return outline - self.punt.area_cm2(station.height_cm - self.base_cm)


def area_cm2(section: Section, station: Station) -> float:
    """The area a station's outline encloses: an ellipse, or a square with rounded corners."""
    box = station.width_cm * station.depth_cm
    if section == "square":
        return box - (4.0 - pi) * station.corner_cm**2
    return pi / 4.0 * box


def between(low: Station, high: Station, height_cm: float) -> Station:
    """The inside at a height between two stations."""
    share = (height_cm - low.height_cm) / (high.height_cm - low.height_cm)

    def even(start: float, end: float) -> float:
        return start + share * (end - start)

    return Station(
        height_cm,
        even(low.width_cm, high.width_cm),
        even(low.depth_cm, high.depth_cm),
        even(low.corner_cm, high.corner_cm),
    )


def faults(profile: Profile) -> Sequence[str]:
    """What makes a profile no bottle, in words; nothing where it is one."""
    stations = profile.stations
    if len(stations) < 2:
        return ("the inside needs two heights or more",)
    found = []
    if stations[0].height_cm <= 0.0:
        found.append("the lowest inner point must lie above the table")
    if any(high.height_cm <= low.height_cm for low, high in pairwise(stations)):
        found.append("the heights of the inside must rise from row to row")
    if any(2.0 * each.corner_cm > min(each.width_cm, each.depth_cm) for each in stations):
        found.append("a corner's radius is at most half the width")
    if profile.base_cm + profile.punt.depth_cm > profile.brim_cm:
        found.append("the punt reaches above the brim")
    if not found and min(each.least_area_cm2 for each in profile.segments) <= 0.0:
        found.append("somewhere there is no room inside")
    return found
