"""A spec cut into the steps that are shown on camera."""

from __future__ import annotations

import pytest

from barkeep.documents.printed.camera import CameraStep, camera_drink
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.specs.spec import Line, Spec

TREE = FamilyTree(
    {
        each.key: each
        for each in (
            Ingredient("gin", "gin"),
            Ingredient("bitters", "bitters"),
            Ingredient("soda", "soda water"),
            Ingredient("twist", "lemon twist", unit="each"),
        )
    }
)
GIN = Line("60 ml gin", "gin", 60.0, None, "ml", 60.0)
DASHES = Line("2 dashes bitters", "bitters", 2.0, None, "dash", 1.6)
TOP = Line("soda water (optional)", "soda", optional=True)
MORE = Line("15 ml gin", "gin", 15.0, None, "ml", 15.0, optional=True)
TWIST = Line("Garnish: 1 lemon twist", "twist", 1.0, None, "each", 1.0, garnish=True)
METHOD = "Stir with ice;  strain.\nServe at once!"


def cut(*lines, method=METHOD, serves=1, cautions=(), **fields):
    spec = Spec("Night Train", tuple(lines), method=method, **fields)
    return camera_drink(spec, TREE, Settings(), serves=serves, cautions=cautions)


def texts(drink):
    return [each.text for each in drink.steps]


def test_name_pours_method_garnish_and_cautions_in_that_order():
    drink = cut(TWIST, GIN, DASHES, cautions=("Allergens: none.", "Hot."))
    assert texts(drink) == [
        "Night Train",
        "2 oz gin",
        "2 dashes bitters",
        "Stir with ice;",
        "strain.",
        "Serve at once!",
        "1 lemon twist",
        "Allergens: none.",
        "Hot.",
    ]
    assert drink.name == "Night Train"


def test_a_pour_is_in_ounces_with_the_millilitres_below_and_knows_its_line():
    drink = cut(TWIST, GIN, DASHES)
    assert drink.lines == ("2 oz (60 ml) gin", "2 dashes bitters")
    assert drink.steps[1:3] == (
        CameraStep("2 oz gin", "60 ml", 0),
        CameraStep("2 dashes bitters", "", 1),
    )
    assert [each.line for each in drink.steps[3:]] == [None] * 4


def test_what_may_be_left_out_is_said_once():
    *_, more, top = cut(MORE, TOP, method="").steps
    assert more == CameraStep("½ oz gin (optional)", "15 ml", 0)
    assert top == CameraStep("soda water (optional)", "", 1)


def test_a_garnish_is_called_one():
    assert cut(GIN, TWIST).steps[-1] == CameraStep("1 lemon twist", "garnish")


def test_a_garnish_that_nobody_knows_is_a_step_too():
    drink = cut(GIN, TWIST, notes="Garnish: a paper lantern\nBetter in winter.")
    assert drink.steps[-1] == CameraStep("a paper lantern", "garnish")


@pytest.mark.parametrize(
    ("fields", "serves", "below"),
    [
        ({}, 1, "one serve"),
        ({"glass": "coupe"}, 2, "coupe · 2 serves, amounts for one"),
        ({"glass": "rocks glass", "ice": "one large cube"}, 1, "rocks glass · one large cube · "),
    ],
)
def test_the_name_says_glass_ice_and_serves(fields, serves, below):
    head = cut(GIN, serves=serves, **fields).steps[0]
    assert head.text == "Night Train" and head.below.startswith(below)


def test_amounts_are_those_of_one_serve():
    assert cut(GIN, serves=5).lines == cut(GIN).lines


def test_no_lines_and_no_method_leave_the_name():
    drink = cut(method=" ")
    assert texts(drink) == ["Night Train"] and drink.lines == ()
