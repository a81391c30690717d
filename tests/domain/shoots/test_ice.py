"""Ice by what it is for: every figure is common practice, worked here by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.shoots.ice import ice_for, ice_in_words
from barkeep.domain.shoots.menu import Order
from barkeep.domain.specs.glasses import glass_named
from barkeep.domain.specs.spec import Line, Spec
from tests.walked import walked

LINES = (Line("60 ml gin", "gin", 60.0, None, "ml", 60.0),)
SPEC = Spec("Signal", LINES, "", "shaken")


def order(method="", technique="shaken", *, ice="", glass="highball", serves=4, **more):
    spec = replace(SPEC, method=method, technique=technique, ice=ice, glass=glass, **more)
    return Order(spec, serves)


def taken(*orders):
    """Kind -> grams, and pieces where they are counted."""
    return {each.kind: each.pieces or pytest.approx(each.grams) for each in ice_for(orders)}


SHAKEN, STIRRED, GLASS = "cubes to shake with", "cubes to stir with", "cubes for the glass"
HIGHBALL_G = 4 * glass_named("highball").brim_ml * 0.5 * 1.25
"""Four glasses filled with cubes, half a gram a millilitre, and a quarter more."""


@walked(
    ("asked", "wanted"),
    [
        # Four tins two thirds full, 250 g each, and a quarter more.
        (order("Shake with ice and strain."), {SHAKEN: 1250.0}),
        (order("Dry shake, then shake with ice and double strain."), {SHAKEN: 1250.0}),
        (order("Stir over ice and strain up.", "stirred"), {STIRRED: 1000.0}),
        (
            order("Throw with ice eight times and strain.", "thrown"),
            {"cubes to throw with": 1250.0},
        ),
        (order("Build over ice in the glass, soda last.", "built"), {GLASS: HIGHBALL_G}),
        (order("Stir over ice in the glass.", "built"), {GLASS: HIGHBALL_G}),
        (
            order("Shake with ice and strain over fresh ice."),
            {SHAKEN: 1250.0, GLASS: HIGHBALL_G},
        ),
        (
            order("Shake with ice, strain over fresh crushed ice."),
            {SHAKEN: 1250.0, "crushed ice for the glass": HIGHBALL_G * 1.2},
        ),
        # A swizzle is worked on the ice it is served on.
        (
            order("Swizzle.", "swizzled", ice="crushed"),
            {"crushed ice for the glass": HIGHBALL_G * 1.2},
        ),
        (order("Swizzle.", "swizzled"), {"crushed ice to swizzle with": 1250.0}),
        (order("Blend until smooth.", "blended"), {"crushed ice to blend with": 750.0}),
        # A scoop of 120 g, not a tin full.
        (order("Whip shake with crushed ice and strain."), {"crushed ice to shake with": 600.0}),
        # One a serve, and one of four to spare.
        (
            order("Stir with ice and strain over a large cube.", "stirred", glass="rocks"),
            {STIRRED: 1000.0, "large cubes of 5 cm for the glass": 5},
        ),
        (
            order("Build in the glass.", "built", ice="one sphere", glass="rocks"),
            {"spheres of 6 cm for the glass": 5},
        ),
        (
            order("Build in the glass.", "built", ice="a clear spear"),
            {"spears of 3.5 × 12 cm for the glass": 5},
        ),
        # No ice where none comes to the drink.
        (order("Build in the glass, not over ice.", "built"), {}),
        (order("Warm it through.", "hot"), {}),
        (order("Stir without ice and pour from the freezer.", "stirred"), {}),
        (order("Shake with ice and strain.", serves=0), {}),
    ],
)
def test_ice_is_what_a_drink_is_worked_with_and_served_on(asked, wanted):
    assert taken(asked) == wanted


def test_a_jug_is_filled_once_for_all_that_drink_of_it():
    spec = replace(SPEC, method="Build over ice.", technique="built", glass="jug", serves=4)
    assert taken(Order(spec, 8)) == {GLASS: 2 * 1000.0 * 0.5 * 1.25}


def test_drinks_of_one_shoot_add_up_form_by_form():
    orders = (
        order("Shake with ice and strain.", serves=2),
        order("Shake with ice, strain over crushed ice.", serves=2),
        order("Stir with ice, strain over a large cube.", "stirred", glass="rocks", serves=3),
    )
    assert dict(ice_in_words(ice_for(orders))) == {
        # 4 x 250 and 3 x 200 g, each a quarter more, shown to the next tenth of a kilogram
        "cubes": "Freeze or buy 2.1 kg of ice in cubes: 1.3 kg to shake with and 0.8 kg to stir "
        "with, a quarter to spare for what melts (common practice).",
        "crushed": "Freeze or buy 0.6 kg of crushed ice for the glass, a quarter to spare for what "
        "melts (common practice).",
        "large": "Freeze or buy 4 × large cubes of 5 cm (0.5 kg) for the glass: one a serve, and "
        "some to spare (common practice).",
    }


def test_ice_is_never_shown_as_less_than_it_takes():
    for serves in range(1, 30):
        (need,) = ice_for([order("Shake with ice and strain.", serves=serves)])
        assert need.grams <= float(need.shown.removesuffix(" kg")) * 1000.0 < need.grams + 100.0


def test_a_drink_takes_what_caterers_reckon(knowledge):
    """The middle classic on ice takes 0.3 to 0.6 kg (*from memory*: half a kilogram)."""
    weights = [sum(each.grams for each in ice_for([Order(spec, 1)])) for spec in knowledge.classics]
    on_ice = sorted(each for each in weights if each)
    assert len(on_ice) > 0.8 * len(weights)
    assert 300.0 <= on_ice[len(on_ice) // 2] <= 600.0
    assert max(on_ice) <= 1000.0
