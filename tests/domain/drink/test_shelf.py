"""How bottles stand on the shelf: in which shape, how high, and in what colour."""

from __future__ import annotations

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.bottles.shapes import Profile
from barkeep.domain.drink.looks import shipped_looks
from barkeep.domain.drink.shelf import JAR, JAR_FULL, MOST_PIECES, standing

TREE, LOOKS = shipped().tree, shipped_looks()


def held(kind: str, size: float, amount: float, unit="ml", shape: str | None = None) -> Bottle:
    product = Product("Box", "Grey Ferry", kind, size, unit, shape=shape, id=1)
    return Bottle(id=1, product=product, level=Level(amount, "open"))


@pytest.mark.parametrize(
    ("kind", "size", "unit", "form", "shape", "colour"),
    [
        ("london-dry-gin", 700, "ml", "bottle", "round bottle", "clear"),
        ("red-wine", 750, "ml", "bottle", "wine bottle", None),
        ("aromatic-bitters", 200, "ml", "bottle", "bitters bottle", None),
        ("coffee-bean", 250, "g", "jar", "jar", None),
        ("lime", 12, "each", "bowl", "bowl", None),
    ],
)
def test_each_stands_in_its_own_form(kind, size, unit, form, shape, colour):
    seen = standing(held(kind, size, size, unit), TREE, LOOKS)
    assert (seen.form, seen.shape) == (form, shape)
    assert colour in (None, seen.colour)


@pytest.mark.parametrize("share", [0.0, 0.1, 0.5, 0.9, 1.0])
@pytest.mark.parametrize("size", [50.0, 700.0, 1750.0])
def test_what_is_drawn_below_the_surface_is_what_is_left(size, share):
    """The drawn inside, filled to the drawn surface, holds the level (the punt left out)."""
    seen = standing(held("bourbon", size, share * size, shape="square"), TREE, LOOKS)
    inside = Profile("square", seen.inside)
    assert inside.volume_to(seen.surface_cm) == pytest.approx(share * size, abs=0.02 * size)
    assert seen.tall_cm > seen.inside[-1].height_cm > seen.surface_cm or share == 0.0


def test_jars_fill_evenly_and_bowls_hold_what_can_be_counted():
    half = standing(held("coffee-bean", 250, 125, "g"), TREE, LOOKS)
    assert JAR.volume_to(half.surface_cm) == pytest.approx(0.5 * JAR_FULL * JAR.brimful_ml)
    pieces = [standing(held("lime", 40, each, "each"), TREE, LOOKS).pieces for each in (0, 2.5, 40)]
    assert pieces == [0, 3, MOST_PIECES]
