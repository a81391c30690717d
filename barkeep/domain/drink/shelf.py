"""A bottle as it stands on the shelf: its inside in profile, and how high what is in it stands.

What is poured stands in the shape of its label or the usual one of its kind; what is weighed
in a jar; what is counted lies in a bowl. Lengths in cm above the board.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil
from typing import Literal

from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.containers import shape_of
from barkeep.domain.bottles.shapes import Profile, Station, brimful_ml, height_cm, tallest_cm
from barkeep.domain.drink.colours import Tint
from barkeep.domain.drink.looks import WATER, Looks, solid
from barkeep.domain.ingredients.tree import FamilyTree

Form = Literal["bottle", "jar", "bowl"]

MOST_PIECES = 7
"""More pieces do not lie in a drawn bowl."""


def _round(rows: tuple[tuple[float, float], ...]) -> Profile:
    return Profile("round", tuple(Station(high, wide, wide) for high, wide in rows))


JAR = _round(((0.5, 7.6), (0.9, 8.6), (11.0, 8.6), (12.0, 8.0), (13.0, 7.8)))
BOWL = _round(((0.6, 4.4), (1.2, 7.0), (3.0, 9.6), (5.0, 10.6)))


JAR_FULL = 0.94
"""A full jar is filled to this share of its brim."""


@dataclass(frozen=True, slots=True)
class Standing:
    """How a bottle looks: its `inside` from the base to the brim, grown to its own size.

    `surface_cm` is where what is in it ends, the base where nothing is; a bowl has `pieces`
    in its place.
    """

    form: Form
    shape: str
    inside: tuple[Station, ...]
    tall_cm: float
    surface_cm: float
    tint: Tint
    colour: str
    pieces: int = 0


def standing(bottle: Bottle, tree: FamilyTree, looks: Looks) -> Standing:
    """A bottle of the bar as it looks now."""
    product = bottle.product
    tint = looks.tint_of(bottle.ingredient, tree)
    if product.unit != "ml" and tint == WATER:
        tint = solid(looks.garnish_of(bottle.ingredient, tree).colour)
    colour = looks.word_for(tint)
    if product.unit == "ml":
        shape, size = shape_of(product, tree), product.size
        scale = shape.scale(size)
        inside = tuple(each.grown(scale) for each in shape.profile.stations)
        level = min(bottle.level.amount, brimful_ml(shape, size))
        return Standing(
            form="bottle",
            shape=shape.name,
            inside=inside,
            tall_cm=tallest_cm(shape, size),
            surface_cm=height_cm(shape, size, level),
            tint=tint,
            colour=colour,
        )
    profile = JAR if product.unit == "g" else BOWL
    surface, pieces = profile.base_cm, 0
    if product.unit == "g":
        surface = JAR.height_of(JAR.brimful_ml * JAR_FULL * min(1.0, bottle.share))
    else:
        pieces = min(MOST_PIECES, ceil(bottle.level.amount))
    form: Form = "jar" if product.unit == "g" else "bowl"
    return Standing(
        form=form,
        shape=form,
        inside=profile.stations,
        tall_cm=profile.brim_cm + 1.2,
        surface_cm=surface,
        tint=tint,
        colour=colour,
        pieces=pieces,
    )
