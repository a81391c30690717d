"""Bottle shapes: from the height of the liquid to its volume and back.

A height is measured with a ruler from the table the bottle stands on to the
surface of the liquid. Nothing stands at the lowest inner point, the thickness
of the glass above the table; the bottle's nominal size stands at the fill
height in its neck; above that is headspace, up to the brim. A shape grows
evenly with the cube root of the size. The shapes are typical ones, drawn up
for barkeep (`resources/vessels.toml`, *common practice*), so every volume read
this way carries the shape's own doubt. What stands on the bar around them,
glasses and tins, is in `barkeep.domain.glasses`.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cache
from math import hypot, inf, isfinite
from typing import Literal, cast

from barkeep import resource_files
from barkeep.domain.profiles import SECTIONS, Profile, Punt, Section, Station, faults
from barkeep.domain.toml_fields import Fields, Table, parse, refuse_other_tables, tables
from barkeep.errors import (
    AmountError,
    HeightAboveBottle,
    KnowledgeError,
    LevelAboveSize,
    NegativeAmount,
)

FILE = "vessels.toml"
MOST_HEADSPACE = 0.08
"""27 CFR 5.202(b) allows this share of headspace from 200 ml up; every shape here keeps it."""
RULER_SIGMA_CM = 0.2
"""One-sigma doubt of a height read with a ruler held to the glass (*common practice*)."""
_ROUNDING = 1e-9
"""A height or volume this little above the brim, as a share, is the brim."""


@dataclass(frozen=True)
class Shape:
    """A typical bottle of `reference_ml`; heights in cm from the table.

    `name` stands inside a sentence after *a*; `shape_sigma` is the one-sigma
    doubt of a volume read by height, as a share of the bottle's size.
    """

    key: str
    name: str
    about: str
    reference_ml: float
    outer_height_cm: float
    wall_cm: float
    neck_cm: float
    shape_sigma: float
    profile: Profile
    basis: str

    def scale(self, size_ml: float) -> float:
        """How many times as tall and wide as described a bottle of this size is."""
        _refuse_no_size(size_ml)
        return float((size_ml / self.reference_ml) ** (1.0 / 3.0))

    def of_size(self, size_ml: float) -> str:
        """The bottle in words: *a tall round bottle of 700 ml*."""
        return f"a {self.name} of {size_ml:g} ml"


@dataclass(frozen=True, slots=True)
class Usual:
    """The shape to assume for these kinds (none: any) in these sizes, both ends included."""

    shape: str
    kinds: frozenset[str] = frozenset()
    from_ml: float = 0.0
    to_ml: float = inf

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
    _refuse_nonsense(volume_ml, "ml", "what is left is a volume")
    brimful = brimful_ml(shape, size_ml)
    if volume_ml > brimful * (1.0 + _ROUNDING):
        most = float(f"{brimful:.4g}")
        raise LevelAboveSize(float(f"{volume_ml:.6g}"), most, "ml", shape.of_size(size_ml))
    return scale * shape.profile.height_of(volume_ml * shape.reference_ml / size_ml)


def brimful_ml(shape: Shape, size_ml: float) -> float:
    """What a bottle of this nominal size holds to the brim."""
    _refuse_no_size(size_ml)
    return shape.profile.brimful_ml * size_ml / shape.reference_ml


def fill_height_cm(shape: Shape, size_ml: float) -> float:
    """The height above the table at which a full bottle's liquid stands."""
    return shape.scale(size_ml) * shape.profile.height_of(shape.reference_ml)


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
    _refuse_nonsense(sigma_cm, "cm", "a doubt is a length")
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
    _refuse_nonsense(height_cm, "cm", "the height of the liquid is a length")
    brim_cm = scale * shape.profile.brim_cm
    if height_cm > brim_cm * (1.0 + _ROUNDING):
        tallest = tallest_cm(shape, size_ml)
        raise HeightAboveBottle(height_cm, tallest, brim_cm, shape.of_size(size_ml))
    return height_cm / scale


def _refuse_no_size(size_ml: float) -> None:
    if not isfinite(size_ml) or size_ml <= 0.0:
        raise AmountError(f"{size_ml:g} ml", "a bottle's size is a volume above nothing")


def _refuse_nonsense(value: float, unit: Literal["cm", "ml"], expected: str) -> None:
    if not isfinite(value):
        raise AmountError(f"{value:g} {unit}", f"{expected}, a number of {unit}")
    if value < 0.0:
        raise NegativeAmount(f"{value:g} {unit}")


@cache
def shipped_shapes() -> Mapping[str, Shape]:
    """The shapes barkeep brings along, by key. Raises `KnowledgeError` for a broken resource."""
    return read_shapes(resource_files.read_text(FILE))


@cache
def _shipped_usual() -> tuple[Usual, ...]:
    return read_usual(resource_files.read_text(FILE))


def read_shapes(text: str, file: str = FILE) -> Mapping[str, Shape]:
    """Shapes out of a TOML text, by key. Raises `KnowledgeError`."""
    document = parse(text, file)
    refuse_other_tables(document, ("basis", "shape", "usual"), file)
    basis = Fields({"basis": document.get("basis")}, file, "the text").text("basis")
    shapes = document.get("shape", {})
    if not isinstance(shapes, dict):
        raise KnowledgeError(file, "shape", "write each shape as a table, [shape.its-key]")
    return {key: _shape(key, table, basis, file) for key, table in shapes.items()}


def read_usual(text: str, file: str = FILE) -> tuple[Usual, ...]:
    """What to assume, in order, out of the same text. Raises `KnowledgeError`.

    The last one fits everything, so that there is always an answer.
    """
    shapes = read_shapes(text, file)
    found = []
    for number, table in enumerate(tables(parse(text, file), "usual", file), 1):
        fields = Fields(table, file, f"usual {number}")
        shape = fields.text("shape")
        if shape not in shapes:
            fields.refuse(f"“{shape}” is not a shape")
        kinds = frozenset(fields.words("kinds"))
        from_ml = fields.number_or_none("from_ml") or 0.0
        to_ml = fields.number_or_none("to_ml", least=from_ml)
        found.append(Usual(shape, kinds, from_ml, inf if to_ml is None else to_ml))
        fields.finish()
    if not found or found[-1] != Usual(found[-1].shape):
        raise KnowledgeError(file, "usual", "the last must fit any kind in any size")
    return tuple(found)


def _shape(key: str, table: object, basis: str, file: str) -> Shape:
    place = f"shape.{key}"
    if not isinstance(table, dict):
        raise KnowledgeError(file, place, "write each shape as a table, [shape.its-key]")
    fields = Fields(table, file, place)
    shape = Shape(
        key=key,
        name=fields.text("name"),
        about=fields.text("about"),
        reference_ml=fields.number("reference_ml", above=0.0),
        outer_height_cm=fields.number("outer_height_cm", above=0.0),
        wall_cm=fields.number("wall_cm", above=0.0),
        neck_cm=fields.number("neck_cm", above=0.0),
        shape_sigma=fields.number("shape_sigma", above=0.0, most=0.5),
        profile=_profile(fields),
        basis=basis,
    )
    fields.finish()
    for fault in faults(shape.profile) or _unlike_a_bottle(shape):
        fields.refuse(fault)
    return shape


def _profile(fields: Fields) -> Profile:
    section = cast(Section, fields.choice("section", SECTIONS, ""))
    rows = fields.rows("inner", 2 if section == "round" else 3)
    stations = tuple(_station(section, row) for row in rows)
    return Profile(section, stations, _punt(fields.table("punt"), fields))


def _station(section: Section, row: tuple[float, ...]) -> Station:
    height, width, *third = row
    if section == "square":
        return Station(height, width, width, corner_cm=third[0])
    return Station(height, width, third[0] if third else width)


def _punt(table: Table, owner: Fields) -> Punt:
    if not table:
        return Punt()
    fields = Fields(table, owner.file, f"{owner.key}.punt")
    depth, width = (fields.number(name, above=0.0) for name in ("depth_cm", "width_cm"))
    fields.finish()
    return Punt(depth, width)


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
