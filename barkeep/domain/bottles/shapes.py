"""Bottle shapes: the inside as areas against height, from the height of the liquid to its volume.

A profile is a list of stations: at a height above the table the inside is so
wide. Between two stations width, depth and corner radius change evenly, so the
area of the cross-section is a quadratic in height and the volume below it a
cubic, both exact. A punt is a paraboloid, whose area is linear in height.
Heights in cm, areas in cm², volumes in ml.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, cached_property
from itertools import accumulate, pairwise
from math import hypot, inf, isfinite, pi
from typing import Annotated, Any, Literal

from barkeep import resource_files
from barkeep.errors import (
    AmountError,
    HeightAboveBottle,
    KnowledgeError,
    LevelAboveSize,
    NegativeAmount,
)
from barkeep.shipped_data import (
    Limits,
    NotNegative,
    Positive,
    Table,
    Text,
    parse,
    parted,
    read,
    read_field,
    table_in,
    table_of,
    tables,
    without,
)
from barkeep.translation import tr, tr_noop

Section = Literal["round", "square", "oval"]

_ROWS: Mapping[Section, Any] = {
    "round": tuple[tuple[NotNegative, NotNegative], ...],
    "square": tuple[tuple[NotNegative, NotNegative, NotNegative], ...],
    "oval": tuple[tuple[NotNegative, NotNegative, NotNegative], ...],
}
"""What a row of the inside holds: height and width, and of what is not round one more length."""


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

    def grown(self, by: float) -> Station:
        """The same of a vessel so many times as tall and wide."""
        lengths = (self.height_cm, self.width_cm, self.depth_cm, self.corner_cm)
        return Station(*(each * by for each in lengths))


@dataclass(frozen=True, slots=True)
class Punt:
    """The push-up inside: a paraboloid that stands on the lowest inner point."""

    depth_cm: Positive
    width_cm: Positive

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
    punt: Punt | None = None

    @property
    def base_cm(self) -> float:
        """The lowest inner point: the thickness of the glass below it."""
        return self.stations[0].height_cm

    @property
    def punt_cm(self) -> float:
        """How high the push-up reaches above that."""
        return self.punt.depth_cm if self.punt else 0.0

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
        tip_cm = self.base_cm + self.punt_cm
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
        return Segment(foot_cm=low.height_cm, length_cm=length, a=a, b=b, c=c)

    def _area(self, station: Station) -> float:
        outline = area_cm2(self.section, station)
        above_base_cm = station.height_cm - self.base_cm
        return outline - (self.punt.area_cm2(above_base_cm) if self.punt else 0.0)


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
    if profile.base_cm + profile.punt_cm > profile.brim_cm:
        found.append("the punt reaches above the brim")
    if not found and min(each.least_area_cm2 for each in profile.segments) <= 0.0:
        found.append("somewhere there is no room inside")
    return found


FILE = "vessels.toml"
MOST_HEADSPACE = 0.08
"""27 CFR 5.202(b) allows this share of headspace from 200 ml up; every shape here keeps it."""
RULER_SIGMA_CM = 0.2
"""One-sigma doubt of a height read with a ruler held to the glass (*common practice*)."""
_ROUNDING = 1e-9
"""A height or volume this little above the brim, as a share, is the brim."""

_SHIPPED_WORDS = frozenset(
    {
        tr_noop("round bottle"),
        tr_noop("Any round bottle whose own shape nobody has looked up: between tall and squat"),
        tr_noop("wine bottle"),
        tr_noop(
            "Any wine bottle whose own shape nobody has looked up: between high and sloping "
            "shoulders"
        ),
        tr_noop("tall round bottle"),
        tr_noop(
            "Straight sides, a short round shoulder and a long neck: many gins, vodkas and "
            "vermouths"
        ),
        tr_noop("bottle with sloped shoulders"),
        tr_noop("Straight sides below, then a long even slope to the neck: many whiskies and rums"),
        tr_noop("squat round bottle"),
        tr_noop(
            "Short and wide with flat shoulders, often a stopper: many aged rums, brandies "
            "and liqueurs"
        ),
        tr_noop("square bottle"),
        tr_noop(
            "Four flat sides with rounded edges and short shoulders: some whiskies, gins and "
            "liqueurs"
        ),
        tr_noop("flat flask"),
        tr_noop("Flat and oval, made for a pocket: small bottles of spirit"),
        tr_noop("tapered bottle"),
        tr_noop(
            "Narrow at the foot and widest at the shoulder: some aperitifs, vodkas and liqueurs"
        ),
        tr_noop("wine bottle with high shoulders"),
        tr_noop(
            "Straight sides, marked round shoulders, a hollow foot: most red wine, port and sherry"
        ),
        tr_noop("wine bottle with sloping shoulders"),
        tr_noop(
            "Wider, with shoulders that slope gently to the neck and a hollow foot: much white wine"
        ),
        tr_noop("slender wine bottle"),
        tr_noop(
            "Very tall and slim, all slope, flat below: aromatic white wine and some fruit spirits"
        ),
        tr_noop("sparkling wine bottle"),
        tr_noop("Thick glass, sloping shoulders and a deep hollow foot, made for pressure"),
        tr_noop("swing-top bottle"),
        tr_noop(
            "A wire holds a stopper with a rubber ring: syrups, cordials and whatever is made here"
        ),
        tr_noop("long-neck bottle"),
        tr_noop("Small, round shoulders and a crown cork: beer, cider and mixers"),
        tr_noop("bitters bottle"),
        tr_noop("Small and round with a long neck and a dasher in its mouth"),
        tr_noop("miniature"),
        tr_noop("A single measure: stubby, with thick glass and a short neck"),
        tr_noop("large round bottle"),
        tr_noop(
            "The largest size of a spirit, stout so that it can still be held, often with a handle"
        ),
        tr_noop("preserving jar"),
        tr_noop("Straight and wide with a wide mouth: cherries, syrups and whatever steeps"),
    }
)
"""What the shipped shapes are called and said to be, marked here to be translated."""


@dataclass(frozen=True)
class Shape:
    """A typical bottle of `reference_ml`; heights in cm from the table.

    `name` stands inside a sentence after *a*; `shape_sigma` is the one-sigma
    doubt of a volume read by height, as a share of the bottle's size.
    """

    key: str
    name: Text
    about: Text
    reference_ml: Positive
    outer_height_cm: Positive
    wall_cm: Positive
    neck_cm: Positive
    shape_sigma: Annotated[float, Limits(gt=0.0, le=0.5)]
    profile: Profile
    basis: str

    def scale(self, size_ml: float) -> float:
        """How many times as tall and wide as described a bottle of this size is."""
        _refuse_no_size(size_ml)
        return float((size_ml / self.reference_ml) ** (1.0 / 3.0))

    @property
    def name_said(self) -> str:
        """Its name as a person reads it."""
        return _said(self.name)

    @property
    def about_said(self) -> str:
        """What it is, as a person reads it."""
        return _said(self.about)

    def of_size(self, size_ml: float) -> str:
        """The bottle in words: *a tall round bottle of 700 ml*."""
        return tr("a {shape} of {size_ml:g} ml", shape=self.name_said, size_ml=size_ml)


def _said(words: str) -> str:
    return tr(words) if words in _SHIPPED_WORDS else words


@dataclass(frozen=True, slots=True)
class Usual:
    """The shape to assume for these kinds (none: any) in these sizes, both ends included."""

    shape: Text
    kinds: frozenset[Text] = frozenset()
    from_ml: NotNegative = 0.0
    to_ml: NotNegative = inf

    def fits(self, size_ml: float, kinds: Collection[str]) -> bool:
        """Whether it is said of a bottle of this size with one of these kinds in it."""
        of_kind = not self.kinds or not self.kinds.isdisjoint(kinds)
        return of_kind and self.from_ml <= size_ml <= self.to_ml


def volume_ml(shape: Shape, size_ml: float, height_cm: float) -> float:
    """The volume that stands up to a height above the table.

    Below the lowest inner point nothing; between the fill height and the brim
    more than `size_ml`. Raises `HeightAboveBottle` above the brim, `AmountError`
    or `NegativeAmount` for what is no height or no size.
    """
    inner_cm = _inner_height(shape, size_ml, height_cm)
    return shape.profile.volume_to(inner_cm) * size_ml / shape.reference_ml


def height_cm(shape: Shape, size_ml: float, volume_ml: float) -> float:
    """The height above the table at which a volume stands; the inverse of `volume_ml`.

    Raises `LevelAboveSize` for more than brimful, `AmountError` or
    `NegativeAmount` for what is no volume or no size.
    """
    scale = shape.scale(size_ml)
    _refuse_nonsense(volume_ml, "ml", tr("what is left is a volume"))
    brimful = brimful_ml(shape, size_ml)
    if volume_ml > brimful * (1.0 + _ROUNDING):
        most = float(f"{brimful:.4g}")
        raise LevelAboveSize(float(f"{volume_ml:.6g}"), most, "ml", shape.of_size(size_ml))
    return scale * shape.profile.height_of(volume_ml * shape.reference_ml / size_ml)


def brimful_ml(shape: Shape, size_ml: float) -> float:
    """What a bottle of this nominal size holds to the brim."""
    _refuse_no_size(size_ml)
    return shape.profile.brimful_ml * size_ml / shape.reference_ml


def tallest_cm(shape: Shape, size_ml: float) -> float:
    """The height of the whole bottle with its closure."""
    return shape.scale(size_ml) * shape.outer_height_cm


def volume_sigma_ml(
    shape: Shape, size_ml: float, height_cm: float, sigma_cm: float = RULER_SIGMA_CM
) -> float:
    """One-sigma doubt of a volume read by height.

    The ruler's doubt times the area of the surface, joined with how well a
    typical shape fits a real bottle (root of the sum of squares). Raises as
    `volume_ml` does.
    """
    _refuse_nonsense(sigma_cm, "cm", tr("a doubt is a length"))
    inner_cm = _inner_height(shape, size_ml, height_cm)
    surface_cm2 = shape.scale(size_ml) ** 2 * shape.profile.area_at(inner_cm)
    return hypot(sigma_cm * surface_cm2, shape.shape_sigma * size_ml)


def usual_shape(size_ml: float, kinds: Collection[str]) -> str:
    """The key of the shape to assume for a product whose record names none.

    `kinds` are the keys of its ingredient and of every kind above that. Raises
    `AmountError` for what is no size.
    """
    _refuse_no_size(size_ml)
    return next(rule.shape for rule in _shipped_usual() if rule.fits(size_ml, kinds))


def _inner_height(shape: Shape, size_ml: float, height_cm: float) -> float:
    """The height in the reference bottle, held to the brim against rounding."""
    scale = shape.scale(size_ml)
    _refuse_nonsense(height_cm, "cm", tr("the height of the liquid is a length"))
    brim_cm = scale * shape.profile.brim_cm
    if height_cm > brim_cm * (1.0 + _ROUNDING):
        tallest = tallest_cm(shape, size_ml)
        raise HeightAboveBottle(height_cm, tallest, brim_cm, shape.of_size(size_ml))
    return height_cm / scale


def _refuse_no_size(size_ml: float) -> None:
    if not isfinite(size_ml) or size_ml <= 0.0:
        raise AmountError(f"{size_ml:g} ml", tr("a bottle's size is a volume above nothing"))


def _refuse_nonsense(value: float, unit: Literal["cm", "ml"], expected: str) -> None:
    if not isfinite(value):
        raise AmountError(
            f"{value:g} {unit}", tr("{expected}, a number of {unit}", expected=expected, unit=unit)
        )
    if value < 0.0:
        raise NegativeAmount(f"{value:g} {unit}")


@cache
def shipped_shapes() -> Mapping[str, Shape]:
    """The shapes barkeep brings along, by key. Raises `KnowledgeError` for a broken resource."""
    return table_of(FILE, read_shapes, Mapping[str, Shape])


@cache
def _shipped_usual() -> tuple[Usual, ...]:
    return read_usual(resource_files.read_text(FILE))


def read_shapes(text: str, file: str = FILE) -> Mapping[str, Shape]:
    """Shapes out of a TOML text, by key. Raises `KnowledgeError`."""
    return _shapes(_document(text, file), file)


def read_usual(text: str, file: str = FILE) -> tuple[Usual, ...]:
    """What to assume, in order, out of the same text. Raises `KnowledgeError`.

    The last one fits everything, so that there is always an answer.
    """
    document = _document(text, file)
    shapes = _shapes(document, file)
    found = []
    for number, each in enumerate(tables(document, "usual", file), 1):
        rule = read(each, Usual, file, f"usual {number}")
        if rule.shape not in shapes:
            raise KnowledgeError(file, f"usual {number}", f"“{rule.shape}” is not a shape")
        if rule.to_ml < rule.from_ml:
            reason = f"“to_ml” is {rule.to_ml:g}; it must be {rule.from_ml:g} or more"
            raise KnowledgeError(file, f"usual {number}", reason)
        found.append(rule)
    if not found or found[-1] != Usual(found[-1].shape):
        raise KnowledgeError(file, "usual", "the last must fit any kind in any size")
    return tuple(found)


def _document(text: str, file: str) -> Table:
    return parse(text, file, "basis", "shape", "usual")


def _shapes(document: Table, file: str) -> Mapping[str, Shape]:
    basis = read_field(document, name="basis", kind=Text, file=file, place="the text")
    drawn = table_in(document, "shape", file)
    return {key: _shape(key, each, basis, file) for key, each in drawn.items()}


def _shape(key: str, raw: object, basis: str, file: str) -> Shape:
    place = f"shape.{key}"
    own, drawn = parted(raw, Shape, file, place)
    profile = _profile(drawn, file, place)
    shape = read(own, Shape, file, place, key=key, profile=profile, basis=basis)
    for fault in faults(profile) or _unlike_a_bottle(shape):
        raise KnowledgeError(file, place, fault)
    return shape


def _profile(drawn: Table, file: str, place: str) -> Profile:
    section: Section = read_field(drawn, name="section", kind=Section, file=file, place=place)
    rows = read_field(drawn, name="inner", kind=_ROWS[section], file=file, place=place)
    stations = tuple(_station(section, row) for row in rows)
    return read(without(drawn, "inner"), Profile, file, place, stations=stations)


def _station(section: Section, row: tuple[float, ...]) -> Station:
    height, width, *third = row
    if section == "square":
        return Station(height, width, width, corner_cm=third[0])
    return Station(height, width, third[0] if third else width)


def _unlike_a_bottle(shape: Shape) -> list[str]:
    """What makes a sound profile no bottle of its size, in words."""
    brimful, size = shape.profile.brimful_ml, shape.reference_ml
    if brimful < size:
        return [f"it holds only {brimful:.4g} ml of its {size:g} ml to the brim"]
    found = []
    if brimful - size > MOST_HEADSPACE * size:
        found.append(
            f"it holds {brimful:.4g} ml to the brim, {brimful / size - 1.0:.1%} more than its "
            f"{size:g} ml; at most {MOST_HEADSPACE:.0%} may be empty"
        )
    fill_cm = shape.profile.height_of(size)
    if fill_cm < shape.neck_cm:
        found.append(f"{size:g} ml stands at {fill_cm:.1f} cm, below the neck")
    if shape.outer_height_cm < shape.profile.brim_cm:
        found.append("the brim lies above the whole bottle")
    return found
