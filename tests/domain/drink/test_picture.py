"""Pictures of drinks: how high they stand, what colour they are, and what stands in and on them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.colours import mixed, tint
from barkeep.domain.drink.looks import read_looks, shipped_looks
from barkeep.domain.drink.picture import (
    FLOATS,
    DrinkPicture,
    IceInGlass,
    height_with_ice,
    picture_of,
)
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.glasses import shipped_glassware
from barkeep.errors import KnowledgeError
from barkeep.resource_files import read_text
from tests.walked import walked

BARE = Snapshot(shipped(), date(2026, 11, 21))
TREE = BARE.knowledge.tree
LOOKS = shipped_looks()
GLASSES = tuple(shipped_glassware().glasses.values())


def drawn(text: str) -> DrinkPicture:
    """The picture of a spec as written."""
    (read,) = read_specs(text, TREE)
    assert read.spec is not None, read.problems
    picture = picture_of(analyse(read.spec, BARE), TREE)
    assert picture is not None
    return picture


channels = st.integers(8, 247)
tints = st.builds(
    lambda red, green, blue, cloud: tint(f"#{red:02x}{green:02x}{blue:02x}", cloud),
    channels,
    channels,
    channels,
    st.floats(0.0, 1.0),
)


@settings(max_examples=60)
@given(tints, st.floats(0.1, 500.0))
def test_a_liquid_by_itself_looks_as_it_does(one, volume):
    seen = mixed([(one, volume)])
    assert seen is not None
    assert seen.rgb == pytest.approx(one.rgb, abs=0.005)
    assert seen.cloud == pytest.approx(one.cloud, abs=0.005)


@settings(max_examples=60)
@given(tints, tints, st.floats(1.0, 200.0), st.floats(1.0, 200.0))
def test_what_is_mixed_hangs_neither_on_the_order_nor_on_how_much_there_is(a, b, of_a, of_b):
    seen, turned = mixed([(a, of_a), (b, of_b)]), mixed([(b, 3 * of_b), (a, 3 * of_a)])
    assert seen is not None and turned is not None
    assert seen.rgb == pytest.approx(turned.rgb)
    assert min(a.cloud, b.cloud) - 0.01 <= seen.cloud <= max(a.cloud, b.cloud) + 0.01


def test_what_mixes_lightens_and_deepens_as_behind_a_bar():
    """Common practice: water pales, cream browns coffee, a little red bitter reddens much gin."""
    red, gin, water = (
        LOOKS.tint_of("red-bitter", TREE),
        LOOKS.tint_of("gin", TREE),
        tint("#fbfcfc", 0),
    )
    coffee, cream = LOOKS.tint_of("coffee", TREE), LOOKS.tint_of("cream", TREE)
    thinned = mixed([(red, 30), (water, 90)])
    assert thinned is not None and sum(thinned.rgb) > sum(red.rgb)
    white_coffee = mixed([(coffee, 120), (cream, 30)])
    assert white_coffee is not None and white_coffee.is_cloudy
    assert sum(coffee.rgb) < sum(white_coffee.rgb) < sum(cream.rgb)
    pink = mixed([(red, 15), (gin, 90)])
    assert pink is not None and pink.rgb[0] > pink.rgb[1] + 0.2
    assert mixed([]) is None and mixed([(red, 0.0)]) is None


@walked("glass", GLASSES)
def test_every_glass_is_drawn_and_holds_what_it_is_said_to(glass):
    profile = LOOKS.vessel_for(glass).profile
    assert profile.brimful_ml == pytest.approx(glass.brim_ml)
    half = profile.height_of(glass.brim_ml / 2.0)
    assert profile.volume_to(half) == pytest.approx(glass.brim_ml / 2.0)


def test_every_liquid_has_a_colour_of_its_own_or_of_a_kind_above_it():
    liquids = [key for key in TREE if TREE[key].unit == "ml" and not TREE[key].family]
    bare = [each for each in liquids if not ({each, *TREE.upwards(each)} & set(LOOKS.tints))]
    assert bare == []
    unknown = {*LOOKS.tints, *LOOKS.garnishes, *LOOKS.foam_cm} - set(TREE)
    assert unknown == set()


@settings(max_examples=40)
@given(
    st.sampled_from(GLASSES),
    st.sampled_from(["cubes", "crushed", "large"]),
    st.floats(0.05, 0.4),
    st.floats(0.02, 0.55),
)
def test_a_drink_with_ice_stands_where_what_is_below_holds_both(glass, form, ice_share, share):
    """Computed: what the glass holds up to there, less the ice that lies in it, is the liquid."""
    profile = LOOKS.vessel_for(glass).profile
    ice = IceInGlass(form, ice_share * glass.brim_ml)
    liquid = share * glass.brim_ml
    at = height_with_ice(profile, liquid, ice)
    held = profile.volume_to(at)
    if form == "large":
        side = ice.ml ** (1 / 3)
        in_it = min(held, side * side * min(FLOATS * side, at - profile.base_cm))
    else:
        in_it = held * ice_share
    assert held - in_it == pytest.approx(liquid, rel=1e-3, abs=0.05)
    assert at > height_with_ice(profile, liquid / 2.0, ice)


def test_the_whole_book_is_drawn_and_said():
    drawn_of, without = [], []
    for spec in BARE.knowledge.classics:
        picture = picture_of(analyse(spec, BARE), TREE)
        if picture is None:
            without.append(spec.name)
        else:
            drawn_of.append(picture)
    assert without == []
    for each in drawn_of:
        assert each.in_words.startswith(("A ", "An "))
        assert each.vessel.profile.base_cm < each.surface_cm <= each.vessel.profile.brim_cm


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (
            "Red Hour\n1 oz gin\n1 oz red bitter\n1 oz sweet vermouth\nGarnish: orange peel\n"
            "Glass: rocks\nIce: one large cube\n\nStir with ice and strain over a large cube.",
            "A rocks glass filled to 2.2 cm below the brim, red. With one large piece of ice, "
            "orange peel.",
        ),
        (
            "Two Stories\n3 oz coffee\n1 oz cream\nGlass: heatproof glass\n\n"
            "Pour the hot coffee and float the cream on top.",
            "A heatproof glass filled to 4.2 cm below the brim, nearly black, then milk white from "
            "the bottom up.",
        ),
        (
            "Nothing Said\ngin\nGlass: coupe\n\nStir with ice and strain.",
            "A coupe, empty, since nothing that goes in it has an amount.",
        ),
        (
            "Flood\n5 oz gin\n4 oz lemon juice\n3 oz soda water\nGlass: coupe\n\nShake and strain.",
            None,
        ),
    ],
)
def test_what_a_picture_says(text, words):
    said = drawn(text).in_words
    if words is None:
        assert "It is too small: " in said and " ml find no room below the brim." in said
    else:
        assert said == words


def test_a_batch_and_an_unknown_glass_have_no_picture():
    spec = replace(BARE.knowledge.classics[0], glass="the blue one")
    assert picture_of(analyse(spec, BARE), TREE) is None


@pytest.mark.parametrize(
    ("row", "wrong", "place"),
    [
        ('spirit = ["#f6f3ea", 0.0]', 'spirit = ["white", 0.0]', "colour.spirit"),
        ('spirit = ["#f6f3ea", 0.0]', 'spirit = ["#f6f3ea", 2.0]', "colour.spirit"),
        ('lime = ["wheel", "#7fae3a"]', 'lime = ["ball", "#7fae3a"]', "garnish.lime"),
        ("egg = 0.7", "egg = -0.7", "foam"),
        ('of = ["shot"]', 'of = ["thimble"]', "shape.shot"),
        ("inner = [[1.0, 3.2], [6.4, 4.6]]", "inner = [[6.4, 3.2], [1.0, 4.6]]", "shape.shot"),
    ],
)
def test_a_mistake_in_the_looks_is_named(row, wrong, place):
    text = read_text("drink_pictures.toml")
    assert text.count(f"\n{row}\n") == 1
    with pytest.raises(KnowledgeError) as fault:
        read_looks(text.replace(f"\n{row}\n", f"\n{wrong}\n"))
    assert place in str(fault.value)
