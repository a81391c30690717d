"""How glasses, kinds and garnishes look: shipped data, drawn up by eye (*common practice*)."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache
from typing import Annotated, Literal, TypeVar

from barkeep.domain.bottles.shapes import Profile, Station, faults
from barkeep.domain.drink.colours import Rgb, Tint, is_colour, rgb_of, tint
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.glasses import Glass, shipped_glassware
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import (
    Limits,
    NotNegative,
    Positive,
    Table,
    Text,
    Texts,
    parse,
    read,
    read_field,
    table_in,
    table_of,
    without,
)

FILE = "drink_pictures.toml"

Stuff = Literal["glass", "metal", "ceramic"]
Form = Literal[
    "peel", "wheel", "wedge", "slice", "cherry", "olive", "onion", "berry", "leaves", "sprig",
    "flower", "blade", "beans", "dust", "piece",
]  # fmt: skip
"""How a garnish is drawn."""

T = TypeVar("T")

_Cloud = Annotated[float, Limits(ge=0.0, le=1.0)]
_ROWS = tuple[tuple[NotNegative, NotNegative], ...]


@dataclass(frozen=True, slots=True)
class Vessel:
    """A glass in profile: its inside, and what it stands on. Lengths in cm.

    Without `stem_cm` it stands on its own base. Only where it is `made_of` glass one
    sees what is in it.
    """

    key: str
    profile: Profile
    of: Texts
    stem_cm: NotNegative = 0.0
    foot_cm: NotNegative = 0.0
    handle: bool = False
    made_of: Stuff = "glass"

    def holding(self, brim_ml: float) -> Vessel:
        """The same glass grown evenly until it holds so much to the brim."""
        by = (brim_ml / self.profile.brimful_ml) ** (1.0 / 3.0)
        stations = tuple(each.grown(by) for each in self.profile.stations)
        return replace(
            self,
            profile=Profile("round", stations),
            stem_cm=self.stem_cm * by,
            foot_cm=self.foot_cm * by,
        )


@dataclass(frozen=True, slots=True)
class GarnishLook:
    """How a garnish is drawn, and its colour as *#rrggbb*."""

    form: Form
    colour: str


@dataclass(frozen=True, slots=True)
class Looks:
    """All that is known of how things look, by the keys of glasses and kinds."""

    vessels: Mapping[str, Vessel]
    tints: Mapping[str, Tint]
    foam_cm: Mapping[str, float]
    garnishes: Mapping[str, GarnishLook]
    named_clear: Mapping[str, Rgb]
    named_cloudy: Mapping[str, Rgb]

    def vessel_for(self, glass: Glass) -> Vessel:
        """A glass in profile, as large as it is."""
        return self.vessels[glass.key].holding(glass.brim_ml)

    def tint_of(self, kind: str, tree: FamilyTree) -> Tint:
        """How a kind looks; one nobody has looked at is clear as water, a fruit is its flesh."""
        liquid = _nearest(kind, self.tints, tree)
        if liquid is not None or kind not in tree or not tree.is_a(kind, "fruit"):
            return liquid or WATER
        return solid(self.garnish_of(kind, tree).colour)

    def garnish_of(self, kind: str, tree: FamilyTree) -> GarnishLook:
        """How a kind is drawn as a garnish."""
        return _nearest(kind, self.garnishes, tree) or GarnishLook("piece", "#c9a24a")

    def foam_of(self, kind: str, tree: FamilyTree) -> float:
        """How many cm of foam a kind leaves on a shaken drink."""
        return _nearest(kind, self.foam_cm, tree) or 0.0

    def word_for(self, seen: Tint) -> str:
        """What its colour is called: the nearest of those that have a name."""
        named = self.named_cloudy if seen.is_cloudy else self.named_clear
        return min(named, key=lambda word: _apart(named[word], seen.rgb))


WATER = tint("#fbfcfc", 0.0)
FLESH = 0.9
"""How cloudy fruit makes what it is blended into."""


def solid(colour: str) -> Tint:
    """What is no liquid, in its colour as *#rrggbb*."""
    return tint(colour, FLESH)


def _nearest(kind: str, said: Mapping[str, T], tree: FamilyTree) -> T | None:
    above = (kind, *tree.upwards(kind)) if kind in tree else (kind,)
    return next((said[each] for each in above if each in said), None)


def _apart(one: Rgb, other: Rgb) -> float:
    """How far two colours lie apart to the eye: the *redmean* of the channels (common practice)."""
    red = (one[0] + other[0]) / 2.0
    parts = [(a - b) ** 2 for a, b in zip(one, other, strict=True)]
    return (2.0 + red) * parts[0] + 4.0 * parts[1] + (3.0 - red) * parts[2]


@cache
def shipped_looks() -> Looks:
    """What barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return table_of(FILE, read_looks, Looks)


def read_looks(text: str, file: str = FILE) -> Looks:
    """Looks out of a TOML text. Raises `KnowledgeError`."""
    document = parse(text, file, *("basis", "shape", "colour", "foam", "garnish"), *_NAMED)
    read_field(document, name="basis", kind=Text, file=file, place="the text")
    foam = table_in(document, "foam", file)
    named, clear, cloudy = (_named(document, name, file) for name in _NAMED)
    return Looks(
        vessels=_vessels(table_in(document, "shape", file), file),
        tints={
            key: _tint(each, file, key) for key, each in table_in(document, "colour", file).items()
        },
        foam_cm={
            key: read_field(foam, name=key, kind=Positive, file=file, place="foam") for key in foam
        },
        garnishes={
            key: _garnish(each, file, key)
            for key, each in table_in(document, "garnish", file).items()
        },
        named_clear={**clear, **named},
        named_cloudy={**cloudy, **named},
    )


_NAMED = ("named", "named_clear", "named_cloudy")


def _named(document: Table, name: str, file: str) -> Mapping[str, Rgb]:
    written = table_in(document, name, file)
    return {word: rgb_of(_colour(each, file, f"{name}.{word}")) for word, each in written.items()}


def _vessels(drawn: Table, file: str) -> Mapping[str, Vessel]:
    """The vessel of each glass. Raises `KnowledgeError` for a glass that has none."""
    found: dict[str, Vessel] = {}
    for key, each in drawn.items():
        vessel = _vessel(key, each, file)
        for glass in vessel.of:
            if glass not in shipped_glassware().glasses:
                raise KnowledgeError(file, f"shape.{key}", f"“{glass}” is not a glass")
            found[glass] = vessel
    for glass in shipped_glassware().glasses:
        if glass not in found:
            raise KnowledgeError(file, "shape", f"nothing says how a {glass} looks")
    return found


def _vessel(key: str, drawn: Table, file: str) -> Vessel:
    place = f"shape.{key}"
    rows = read_field(drawn, name="inner", kind=_ROWS, file=file, place=place)
    profile = Profile("round", tuple(Station(high, wide, wide) for high, wide in rows))
    for fault in faults(profile):
        raise KnowledgeError(file, place, fault)
    return read(without(drawn, "inner"), Vessel, file, place, key=key, profile=profile)


def _tint(written: object, file: str, key: str) -> Tint:
    place = f"colour.{key}"
    if not isinstance(written, list) or len(written) not in (2, 3):
        raise KnowledgeError(file, place, "write [colour, cloud] or [colour, cloud, depth]")
    colour, *numbers = written
    cloud = read_field({"cloud": numbers[0]}, name="cloud", kind=_Cloud, file=file, place=place)
    depth = read_field(
        {"depth": numbers[-1] if len(numbers) == 2 else 1.0},
        name="depth",
        kind=Positive,
        file=file,
        place=place,
    )
    return tint(_colour(colour, file, place), cloud, depth)


def _garnish(written: object, file: str, key: str) -> GarnishLook:
    place = f"garnish.{key}"
    if not isinstance(written, list) or len(written) != 2:
        raise KnowledgeError(file, place, "write [form, colour]")
    form = read_field({"form": written[0]}, name="form", kind=Form, file=file, place=place)
    return GarnishLook(form, _colour(written[1], file, place))


def _colour(written: object, file: str, place: str) -> str:
    if not isinstance(written, str) or not is_colour(written):
        raise KnowledgeError(file, place, f"“{written}” is no colour such as #a1b2c3")
    return written
