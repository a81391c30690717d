"""What a drink looks like in its glass: how high it stands, its colours, what is in and on it.

The liquid is what the analysis says is served, the water of the ice in it. How high it
stands follows from the inside of the glass and the room that the ice takes:

- crushed ice and cubes are heaped through the whole glass, so that of each height only
  what they leave is liquid;
- a large cube floats, with 0.917 of it in the liquid (the density of ice), or stands on the
  bottom where the liquid is not that deep.

What is floated, sunk or layered keeps its own colour; all else is one mix.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate
from typing import Literal

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.shapes import Profile
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.colours import Tint, mixed
from barkeep.domain.drink.contents import Content, pours_of
from barkeep.domain.drink.ice import is_carbonated, is_poured_hot, lines_named
from barkeep.domain.drink.looks import WATER, Form, Looks, Vessel, shipped_looks
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, counted, folded
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.glasses import Glass, glass_as_written, ice_named
from barkeep.domain.specs.spec import Line, Spec
from barkeep.translation import tr

FLOATS = 0.917
"""The share of ice that lies in the liquid it floats on: its density in g/ml at 0 °C."""
STRAW = ("swizzled", "blended")
"""Techniques whose drinks are sipped through a straw (*common practice*)."""
SLUSH = 0.6
"""How cloudy blended ice is."""
MOST_PIECES = 5
"""More pieces of one garnish are not drawn, only told."""

IceForm = Literal["none", "cubes", "crushed", "large"]

_ON_TOP = re.compile(
    r"\b(?:float(?:ing)?|layer(?:ing)?|drizzl(?:e|ing))\s+(?P<what>[^.,;]*)", re.IGNORECASE
)
_BELOW = re.compile(
    r"\b(?:let|letting)\s+(?P<let>[^.,;]*?)\s+sink\b|\bsink(?:ing)?\s+(?P<sunk>[^.,;]*)",
    re.IGNORECASE,
)
_LAYERED = re.compile(r"\b(?:in\s+layers|layered|layer\s+(?:the\s+\w+\s+)?in\b|layer\s+them)", re.I)
_OVER_ICE = re.compile(
    r"\b(?:over|onto)\s+(?P<what>(?:[\w-]+\s+){0,3}?(?:ice|cubes?|spheres?|blocks?))\b",
    re.IGNORECASE,
)
"""The ice that a drink is built on or strained over, where its spec names none by itself."""
_STRAW = re.compile(r"\bstraws?\b")


@dataclass(frozen=True, slots=True)
class IceInGlass:
    """The ice in a glass: in what pieces, and the room it takes in all."""

    form: IceForm
    ml: float

    @property
    def side_cm(self) -> float:
        """The side of a piece, in cm: usual ones, and of a large cube what it holds."""
        if self.form == "large":
            return float(self.ml ** (1.0 / 3.0))
        return {"none": 0.0, "cubes": 2.6, "crushed": 0.8}[self.form]


@dataclass(frozen=True, slots=True)
class Layer:
    """One colour of the drink, from the layer below it up to `top_cm` above the table."""

    tint: Tint
    top_cm: float
    volume_ml: float


@dataclass(frozen=True, slots=True)
class DrawnGarnish:
    """A garnish as it is drawn; `pieces` of it, at most `MOST_PIECES`."""

    form: Form
    colour: str
    name: str
    pieces: int = 1


@dataclass(frozen=True, slots=True)
class DrinkPicture:
    """A drink in its glass. Heights in cm above the table; the layers lie from the bottom up.

    `spills_ml` is what finds no room below the brim. `ice_side_cm` is how large a piece of
    the ice is.
    """

    vessel: Vessel
    glass: Glass
    layers: tuple[Layer, ...]
    foam_cm: float
    ice: IceForm
    ice_side_cm: float
    bubbles: bool
    hot: bool
    straw: bool
    rim: str | None
    garnishes: tuple[DrawnGarnish, ...]
    spills_ml: float

    @property
    def in_words(self) -> str:
        """The same for whoever does not see it."""
        return " ".join(_sentences(self, shipped_looks()))

    @property
    def surface_cm(self) -> float:
        """How high the liquid stands, the foam not counted."""
        return self.layers[-1].top_cm if self.layers else self.vessel.profile.base_cm


def picture_of(analysis: Analysis, tree: FamilyTree) -> DrinkPicture | None:
    """A drink as it is served; None of a batch, and where no known glass is named.

    A drink of which nothing has an amount is an empty glass, which the words say.
    """
    spec, looks = analysis.spec, shipped_looks()
    glass = glass_as_written(spec.glass)
    if glass is None or analysis.is_batch:
        return None
    vessel = looks.vessel_for(glass)
    ice = _ice(spec, glass)
    layers = _layers(list(_parts(analysis, looks, tree)), vessel.profile, ice)
    garnishes, rim = _garnishes(spec, looks, tree)
    top_cm = layers[-1].top_cm if layers else vessel.profile.base_cm
    return DrinkPicture(
        vessel=vessel,
        glass=glass,
        layers=layers,
        foam_cm=min(_foam(analysis, looks, tree), vessel.profile.brim_cm - top_cm),
        ice=ice.form,
        ice_side_cm=ice.side_cm,
        bubbles=any(is_carbonated(each.pour.ingredient, tree) for each in analysis.contents),
        hot=spec.technique == "hot" or is_poured_hot(spec, tree),
        straw=_has_straw(spec, ice.form),
        rim=rim,
        garnishes=garnishes,
        spills_ml=max(0.0, sum(each.volume_ml for each in layers) - _room(vessel.profile, ice)),
    )


def poured_picture(drink: Drink, snapshot: Snapshot) -> DrinkPicture | None:
    """A drink as it is poured tonight, stand-ins in the place of what is missing."""
    poured = analyse(drink.spec, snapshot, pours=pours_of(drink))
    return picture_of(poured, snapshot.knowledge.tree)


def _ice(spec: Spec, glass: Glass) -> IceInGlass:
    """The ice in the glass; what is blended has it in it already."""
    if spec.technique in ("blended", "hot"):
        return IceInGlass("none", 0.0)
    over = None if spec.ice else _OVER_ICE.search(spec.method)
    found = ice_named(over["what"] if over else spec.ice)
    if found is None or found.key == "none":
        return IceInGlass("none", 0.0)
    form: IceForm = (
        "crushed" if found.key == "crushed" else "large" if found.key == "large" else "cubes"
    )
    return IceInGlass(form, found.volume_ml(glass))


def _layers(
    parts: Sequence[tuple[Tint, float]], profile: Profile, ice: IceInGlass
) -> tuple[Layer, ...]:
    """The colours from the bottom up, each as high as it stands."""
    whole = accumulate(volume for _, volume in parts)
    return tuple(
        Layer(seen, height_with_ice(profile, up_to, ice), volume)
        for (seen, volume), up_to in zip(parts, whole, strict=True)
    )


def _room(profile: Profile, ice: IceInGlass) -> float:
    """How much liquid stands in a glass that is full to the brim with so much ice in it."""
    return profile.brimful_ml - ice.ml * (FLOATS if ice.form == "large" else 1.0)


def height_with_ice(profile: Profile, liquid_ml: float, ice: IceInGlass) -> float:
    """How high a liquid stands in a glass with so much ice, in cm above the table.

    At most the brim. Heights rise with the liquid.
    """
    share = ice.ml / profile.brimful_ml
    if ice.form != "large":
        return profile.height_of(min(liquid_ml / (1.0 - share), profile.brimful_ml))
    side = ice.side_cm
    low, high = profile.base_cm, profile.brim_cm
    for _ in range(50):
        middle = (low + high) / 2.0
        under = min(FLOATS * side, middle - profile.base_cm) * side * side
        held = profile.volume_to(middle) - min(under, profile.volume_to(middle))
        low, high = (middle, high) if held < liquid_ml else (low, middle)
    return (low + high) / 2.0


def _parts(analysis: Analysis, looks: Looks, tree: FamilyTree) -> Iterator[tuple[Tint, float]]:
    """The colours of the drink and how much of each, from the bottom up."""
    contents = [each for each in analysis.contents if each.volume_ml > 0.0]
    spec = analysis.spec
    below, above = _apart(spec, contents, tree)
    melt = max(0.0, analysis.served_volume_ml - analysis.start_volume_ml)
    if _LAYERED.search(spec.method):
        yield from ((_seen(each, looks, tree), each.volume_ml) for each in contents)
        return
    yield from ((_seen(each, looks, tree), each.volume_ml) for each in below)
    rest = [each for each in contents if each not in below and each not in above]
    blend = [(_seen(each, looks, tree), each.volume_ml) for each in rest]
    mix = mixed([*blend, (WATER, melt if blend else 0.0)])
    if mix is not None:
        if spec.technique == "blended":
            mix = replace(mix, cloud=max(mix.cloud, SLUSH))
        yield mix, sum(volume for _, volume in blend) + melt
    yield from ((_seen(each, looks, tree), each.volume_ml) for each in above)


def _seen(content: Content, looks: Looks, tree: FamilyTree) -> Tint:
    return looks.tint_of(content.pour.ingredient, tree)


def _apart(
    spec: Spec, contents: Sequence[Content], tree: FamilyTree
) -> tuple[list[Content], list[Content]]:
    """What lies below the mix and what above it."""
    lines = [each.line for each in contents]
    sunk: set[int] = set()
    for found in _BELOW.finditer(spec.method):
        sunk |= lines_named(found["let"] or found["sunk"] or "", lines, tree)
    above = {number for number, line in enumerate(lines) if _floats(line)}
    for found in _ON_TOP.finditer(spec.method):
        above |= lines_named(found["what"], lines, tree)
    above -= sunk
    if len(sunk) + len(above) >= len(lines):
        return [], []
    return [contents[each] for each in sorted(sunk)], [contents[each] for each in sorted(above)]


def _floats(line: Line) -> bool:
    return line.unit == "float" or "float" in line.note


def _foam(analysis: Analysis, looks: Looks, tree: FamilyTree) -> float:
    """The foam on top, in cm: of what foams when it is shaken, or the head of a beer."""
    kinds = [each.pour.ingredient for each in analysis.contents if each.counted]
    if analysis.technique == "shaken":
        return max((looks.foam_of(each, tree) for each in kinds), default=0.0)
    beers = sum(
        each.volume_ml for each in analysis.contents if tree.is_a(each.pour.ingredient, "beer")
    )
    return 1.2 if beers > analysis.served_volume_ml / 3.0 else 0.0


def _has_straw(spec: Spec, form: IceForm) -> bool:
    said = _STRAW.search(folded(f"{spec.method} {spec.notes}")) is not None
    return said or form == "crushed" or spec.technique in STRAW


def _garnishes(
    spec: Spec, looks: Looks, tree: FamilyTree
) -> tuple[tuple[DrawnGarnish, ...], str | None]:
    """What stands in and on the glass, and the colour of its rim."""
    rim, drawn = None, []
    for line in spec.lines:
        if not line.garnish:
            continue
        look = looks.garnish_of(line.ingredient, tree)
        if line.on_the_rim:
            rim = look.colour
            continue
        pieces = round(line.amount) if line.unit is None and line.amount else 1
        name = line.called or tree.in_sentence(line.ingredient)
        drawn.append(DrawnGarnish(look.form, look.colour, name, max(1, min(pieces, MOST_PIECES))))
    return tuple(drawn), rim


def _sentences(drawn: DrinkPicture, looks: Looks) -> Iterator[str]:
    yield as_sentence(
        tr(
            "a {glass}{filled}{coloured}",
            glass=tr(drawn.glass.name),
            filled=_filled(drawn),
            coloured=_coloured(drawn, looks),
        )
    )
    if drawn.spills_ml >= 1.0:
        yield tr(
            "It is too small: {spilt:.0f} ml find no room below the brim.",
            spilt=drawn.spills_ml,
        )
    beside = list(_beside(drawn))
    if beside:
        yield as_sentence(tr("with {beside}", beside=", ".join(beside)))


def _filled(drawn: DrinkPicture) -> str:
    if not drawn.layers:
        return tr(", empty, since nothing that goes in it has an amount")
    left = drawn.vessel.profile.brim_cm - drawn.surface_cm
    return (
        tr(" full to the brim")
        if left < 0.1
        else tr(" filled to {left:.1f} cm below the brim", left=left)
    )


def _coloured(drawn: DrinkPicture, looks: Looks) -> str:
    words = [tr(looks.word_for(each.tint)) for each in drawn.layers]
    named = list(dict.fromkeys(words))
    if not named:
        return ""
    if len(named) == 1:
        return f", {named[0]}"
    return tr(", {colours} from the bottom up", colours=tr(", then ").join(named))


def _beside(drawn: DrinkPicture) -> Iterator[str]:
    if drawn.foam_cm > 0.0:
        yield tr("foam")
    if drawn.ice != "none":
        yield {
            "cubes": tr("ice cubes"),
            "crushed": tr("crushed ice"),
            "large": tr("one large piece of ice"),
        }[drawn.ice]
    if drawn.rim is not None:
        yield tr("a rim")
    for each in drawn.garnishes:
        yield each.name if each.pieces == 1 else counted(each.pieces, each.name)
    if drawn.straw:
        yield tr("a straw")
