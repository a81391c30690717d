"""Bottle shapes: height and volume of the liquid, what is assumed, and what is refused."""

from __future__ import annotations

import tomllib
from itertools import pairwise, product
from math import inf, nan, pi, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from barkeep import resource_files
from barkeep.domain.bottles.shapes import (
    FILE,
    MOST_HEADSPACE,
    Usual,
    brimful_ml,
    height_cm,
    read_shapes,
    read_usual,
    shipped_shapes,
    tallest_cm,
    usual_shape,
    volume_ml,
    volume_sigma_ml,
)
from barkeep.errors import (
    AmountError,
    HeightAboveBottle,
    KnowledgeError,
    LevelAboveSize,
    NegativeAmount,
    UserError,
)
from tests.walked import walked

TEXT = resource_files.read_text(FILE)
RAW = tomllib.loads(TEXT)["shape"]
SHAPES = shipped_shapes()
TALL = SHAPES["tall-round"]


every_shape = pytest.mark.parametrize("key", sorted(SHAPES))
shapes = st.sampled_from(sorted(SHAPES)).map(SHAPES.__getitem__)
sizes_ml = st.floats(50.0, 3000.0)
shares = st.floats(0.0, 1.0)


# What a bottle holds ------------------------------------------------------------------------------


@given(shape=shapes, size=sizes_ml)
def test_an_empty_and_a_full_bottle_are_exact(shape, size):
    base = shape.profile.base_cm * (size / shape.reference_ml) ** (1 / 3)
    assert volume_ml(shape, size, 0.0) == 0.0
    assert volume_ml(shape, size, base) == pytest.approx(0.0, abs=1e-12 * size)
    assert height_cm(shape, size, 0.0) == pytest.approx(base, rel=1e-12)
    full = fill_height_cm(shape, size)
    assert volume_ml(shape, size, full) == pytest.approx(size, rel=1e-12)


@given(shape=shapes, size=sizes_ml)
def test_a_full_bottle_stands_in_its_neck_with_little_above(shape, size):
    brimful = brimful_ml(shape, size)
    assert size < brimful <= (1.0 + MOST_HEADSPACE) * size
    neck = shape.neck_cm * (size / shape.reference_ml) ** (1 / 3)
    assert neck < fill_height_cm(shape, size) < height_cm(shape, size, brimful)
    assert height_cm(shape, size, brimful) <= tallest_cm(shape, size)


@given(shape=shapes, size=sizes_ml, share=shares)
def test_a_volume_read_from_its_own_height_comes_back(shape, size, share):
    volume = share * brimful_ml(shape, size)
    back = volume_ml(shape, size, height_cm(shape, size, volume))
    assert back == pytest.approx(volume, rel=1e-9, abs=1e-12 * size)


@given(shape=shapes, size=sizes_ml, share=shares)
def test_a_height_comes_back_from_its_volume(shape, size, share):
    low, high = height_cm(shape, size, 0.0), height_cm(shape, size, brimful_ml(shape, size))
    height = low + share * (high - low)
    assert height_cm(shape, size, volume_ml(shape, size, height)) == pytest.approx(height, rel=1e-9)


@given(shape=shapes, size=sizes_ml, one=shares, other=shares)
def test_a_higher_liquid_is_always_more(shape, size, one, other):
    low, high = height_cm(shape, size, 0.0), height_cm(shape, size, brimful_ml(shape, size))
    lower, upper = sorted(low + share * (high - low) for share in (one, other))
    if upper - lower > 1e-9 * high:
        assert volume_ml(shape, size, lower) < volume_ml(shape, size, upper)


@given(shape=shapes, size=sizes_ml, share=shares)
def test_half_as_tall_holds_an_eighth(shape, size, share):
    height = share * fill_height_cm(shape, size)
    eighth = volume_ml(shape, size / 8.0, height / 2.0)
    assert eighth == pytest.approx(volume_ml(shape, size, height) / 8.0, rel=1e-9, abs=1e-9)


def fill_height_cm(shape, size):
    """Where a full bottle's liquid stands."""
    return height_cm(shape, size, size)


def area_from_the_resource(key: str, height: float) -> float:
    """The cross-section straight from the rows of the file, in cm²."""
    rows = RAW[key]["inner"]
    low, high = next((a, b) for a, b in pairwise(rows) if a[0] <= height <= b[0])
    share = (height - low[0]) / (high[0] - low[0])
    _, width, *third = ((1 - share) * a + share * b for a, b in zip(low, high, strict=True))
    area = {
        "round": lambda: pi * (width / 2) ** 2,
        "oval": lambda: pi * (width / 2) * (third[0] / 2),
        # Four sides, the middle, and four quarters of a circle.
        "square": lambda: (
            (width - 2 * third[0]) ** 2 + 4 * third[0] * (width - 2 * third[0]) + pi * third[0] ** 2
        ),
    }[RAW[key]["section"]]()
    punt = RAW[key].get("punt", {"depth_cm": 1.0, "width_cm": 0.0})
    below_tip = 1.0 - (height - rows[0][0]) / punt["depth_cm"]
    radius = punt["width_cm"] / 2 * sqrt(max(0.0, below_tip))
    return area - pi * radius**2


@every_shape
@walked("share, size", product([0.02, 0.1, 0.25, 0.5, 0.75, 0.95, 1.0], [50.0, 700.0, 3000.0]))
def test_the_volume_is_the_integral_of_the_profile(key, share, size):
    shape = SHAPES[key]
    low, high = shape.profile.base_cm, shape.profile.brim_cm
    height = low + share * (high - low)
    tip = low + RAW[key].get("punt", {"depth_cm": 0.0})["depth_cm"]
    corners = sorted({row[0] for row in RAW[key]["inner"]} | {tip, height})
    cuts = [corner for corner in corners if low <= corner <= height]
    integral = sum(
        quad(lambda h: area_from_the_resource(key, h), a, b, epsabs=0.0, epsrel=1e-12)[0]
        for a, b in pairwise(cuts)
    )
    scale = (size / shape.reference_ml) ** (1 / 3)
    assert volume_ml(shape, size, height * scale) == pytest.approx(integral * scale**3, rel=1e-9)


def test_a_tall_round_bottle_is_as_tall_and_wide_as_they_commonly_are():
    """About 30 cm by 7.3 to 7.6 cm for 750 ml: common practice."""
    assert tallest_cm(TALL, 750) == pytest.approx(30.0, abs=0.5)
    inner = max(station.width_cm for station in TALL.profile.stations)
    assert 7.3 <= inner + 2 * TALL.wall_cm <= 7.6


@every_shape
def test_a_bottle_narrows_from_its_shoulder_up(key):
    widths = [station.width_cm for station in SHAPES[key].profile.stations]
    shoulder = widths.index(max(widths))
    assert widths[:shoulder] == sorted(widths[:shoulder])
    assert widths[shoulder:] == sorted(widths[shoulder:], reverse=True)


# What is refused ----------------------------------------------------------------------------------


@given(shape=shapes, size=sizes_ml, above=st.floats(1.001, 10.0))
def test_no_liquid_stands_above_the_brim(shape, size, above):
    brim = height_cm(shape, size, brimful_ml(shape, size))
    with pytest.raises(HeightAboveBottle) as caught:
        volume_ml(shape, size, above * brim)
    assert caught.value.tallest_cm == tallest_cm(shape, size)
    assert caught.value.brim_cm == pytest.approx(brim)
    assert caught.value.height_cm == above * brim
    assert shape.name in str(caught.value)
    with pytest.raises(HeightAboveBottle):
        volume_sigma_ml(shape, size, above * brim)


def test_a_height_above_the_whole_bottle_says_how_tall_it_is():
    with pytest.raises(UserError) as caught:
        volume_ml(TALL, 750, 31.5)
    assert str(caught.value) == (
        "31.5 cm is above the whole bottle: a tall round bottle of 750 ml is 30 cm tall. "
        "Measure again, or choose another shape."
    )


def test_a_height_between_brim_and_stopper_says_where_the_brim_is():
    with pytest.raises(UserError) as caught:
        volume_ml(TALL, 750, 29.5)
    assert str(caught.value) == (
        "29.5 cm is above the mouth: a tall round bottle of 750 ml is brimful at 29.1 cm. "
        "Measure again, or choose another shape."
    )


def test_between_fill_height_and_brim_there_is_more_than_the_size():
    over = fill_height_cm(TALL, 750) + 1.0
    assert 750 < volume_ml(TALL, 750, over) < brimful_ml(TALL, 750)


@pytest.mark.parametrize("call", [volume_ml, volume_sigma_ml, height_cm])
def test_below_nothing_and_no_number_are_refused(call):
    with pytest.raises(NegativeAmount, match=r"“-3 (cm|ml)” is below nothing"):
        call(TALL, 750, -3.0)
    for value in (nan, inf, -inf):
        with pytest.raises(AmountError, match="a number of"):
            call(TALL, 750, value)


@pytest.mark.parametrize("size", [0.0, -700.0, nan, inf])
def test_a_bottle_of_no_size_is_refused(size):
    for call in (brimful_ml, tallest_cm):
        with pytest.raises(AmountError, match="a bottle's size is a volume above nothing"):
            call(TALL, size)
    with pytest.raises(AmountError, match="a bottle's size is a volume above nothing"):
        usual_shape(size, {"gin", "spirit"})
    for call in (volume_ml, height_cm, volume_sigma_ml):
        with pytest.raises(AmountError, match="a bottle's size is a volume above nothing"):
            call(TALL, size, 5.0)


def test_more_than_brimful_has_no_height():
    with pytest.raises(LevelAboveSize) as caught:
        height_cm(TALL, 750, 800)
    assert (
        str(caught.value) == "800 ml is more than a tall round bottle of 750 ml holds (772.9 ml)."
    )


# How sure it is -----------------------------------------------------------------------------------


def test_the_doubt_joins_ruler_and_shape():
    surface = pi / 4 * 6.95**2
    assert volume_sigma_ml(TALL, 750, 10.0) == pytest.approx(
        sqrt((0.2 * surface) ** 2 + (TALL.shape_sigma * 750) ** 2)
    )
    assert volume_sigma_ml(TALL, 750, 10.0, sigma_cm=0.0) == pytest.approx(22.5)
    with pytest.raises(NegativeAmount):
        volume_sigma_ml(TALL, 750, 10.0, sigma_cm=-0.1)


@given(shape=shapes, size=sizes_ml)
def test_a_neck_is_read_more_surely_than_a_body(shape, size):
    neck = volume_sigma_ml(shape, size, fill_height_cm(shape, size))
    assert neck < volume_sigma_ml(shape, size, height_cm(shape, size, size / 2.0))
    assert neck > shape.shape_sigma * size


@pytest.mark.parametrize(
    ("assumed", "real", "size"),
    [
        ("general", ["tall-round", "sloped-shoulder", "squat-round", "square", "tapered"], 700.0),
        ("wine", ["wine-high-shoulder", "wine-sloping", "wine-slender"], 750.0),
    ],
)
def test_a_shape_that_was_only_assumed_owns_up_to_the_spread_of_the_real_ones(assumed, real, size):
    shape = SHAPES[assumed]
    errors = []
    for key in real:
        for twentieth in range(1, 20):
            true_ml = size * twentieth / 20
            height = height_cm(SHAPES[key], size, true_ml)
            errors.append((min(size, volume_ml(shape, size, height)) - true_ml) / size)
    spread = sqrt(sum(error**2 for error in errors) / len(errors))
    assert spread <= shape.shape_sigma < 1.4 * spread
    assert all(SHAPES[key].shape_sigma < shape.shape_sigma for key in real)


# What is assumed ----------------------------------------------------------------------------------


@walked(
    ("ingredient", "size", "shape"),
    [
        ("london-dry-gin", 700, "general"),
        ("london-dry-gin", 50, "miniature"),
        ("london-dry-gin", 1750, "large-round"),
        ("triple-sec", 700, "general"),
        ("cream-liqueur", 700, "general"),
        ("red-wine", 750, "wine"),
        ("dry-vermouth", 1000, "wine"),
        ("fino-sherry", 375, "wine"),
        ("prosecco", 750, "sparkling"),
        ("champagne", 1500, "sparkling"),
        ("alcohol-free-sparkling-wine", 750, "sparkling"),
        ("aromatic-bitters", 200, "bitters"),
        ("aromatic-bitters", 473, "general"),
        ("lager", 330, "long-neck"),
        ("tonic-water", 200, "long-neck"),
        ("sparkling-lemonade", 1000, "general"),
        ("simple-syrup", 500, "general"),
    ],
)
def test_the_usual_shape_of_a_kind(tree, ingredient, size, shape):
    assert usual_shape(size, {ingredient, *tree.ancestors(ingredient)}) == shape


def test_whatever_is_poured_there_is_a_shape_to_assume(tree):
    for key in tree:
        for size in (50.0, 350.0, 750.0, 3000.0):
            assert usual_shape(size, {key, *tree.ancestors(key)}) in SHAPES


def test_what_is_assumed_names_real_kinds(tree):
    rules = read_usual(TEXT)
    assert len(rules) > 4
    assert all(kind in tree for rule in rules for kind in rule.kinds)


def test_every_specific_shape_says_how_to_know_it():
    abouts = [shape.about for shape in SHAPES.values()]
    assert len(set(abouts)) == len(abouts) >= 8
    assert all(shape.basis == "common practice" for shape in SHAPES.values())
    assert {shape.profile.section for shape in SHAPES.values()} == {"round", "square", "oval"}


# Broken resources ---------------------------------------------------------------------------------

SOUND = """
basis = "common practice"
[shape.plain]
name = "plain bottle"
about = "Only for tests"
section = "round"
reference_ml = 100
outer_height_cm = 14
wall_cm = 0.2
neck_cm = 10
shape_sigma = 0.05
inner = [[1, 3.76], [10, 3.76], [11, 1.0], [13, 1.0]]
[[usual]]
shape = "plain"
"""


def test_a_sound_text_is_read():
    shape = read_shapes(SOUND, "v.toml")["plain"]
    assert fill_height_cm(shape, 100) > 10
    assert read_usual(SOUND, "v.toml") == (Usual("plain"),)


@walked(
    ("old", "new", "key", "reason"),
    [
        ("[shape.plain]", "[shape.plain", "the text", "it is not TOML"),
        ("[[usual]]", "[[usuel]]", "usuel", "there is no such entry"),
        ('basis = "common practice"', "", "the text", "“basis” is missing"),
        ("reference_ml = 100", "", "shape.plain", "“reference_ml” is missing"),
        ("reference_ml = 100", "reference_ml = 0", "shape.plain", "must be more than 0"),
        (
            "reference_ml = 100",
            "reference_ml = 120",
            "shape.plain",
            "it holds only 106.5 ml of its 120 ml",
        ),
        ("reference_ml = 100", "reference_ml = 90", "shape.plain", "at most 8% may be empty"),
        ('"round"', '"triangular"', "shape.plain", "must be one of round, square, oval"),
        ('section = "round"', "", "shape.plain", "must be one of round, square, oval"),
        ("[10, 3.76]", "[10, 3.76, 2.0]", "shape.plain", "a list of rows of 2 numbers"),
        ("[10, 3.76]", '[10, "wide"]', "shape.plain", "a list of rows of 2 numbers"),
        ("[10, 3.76]", "[10, -3.76]", "shape.plain", "a list of rows of 2 numbers"),
        ("[10, 3.76]", "[10, nan]", "shape.plain", "a list of rows of 2 numbers"),
        ("[10, 3.76]", "[12, 3.76]", "shape.plain", "must rise from row to row"),
        ("[1, 3.76]", "[0, 3.76]", "shape.plain", "must lie above the table"),
        ("[13, 1.0]", "[13, 0.0]", "shape.plain", "there is no room inside"),
        ("[[1, 3.76], [10, 3.76], [11, 1.0], [13, 1.0]]", "[[1, 4]]", "shape.plain", "two heights"),
        ("neck_cm = 10", "neck_cm = 12.5", "shape.plain", "below the neck"),
        ("outer_height_cm = 14", "outer_height_cm = 12", "shape.plain", "above the whole bottle"),
        ("shape_sigma = 0.05", "shape_sigma = 0.9", "shape.plain", "at most 0.5"),
        ("wall_cm = 0.2", "wall_cm = 0.2\nwal = 1", "shape.plain", "there is no field “wal”"),
        ("wall_cm = 0.2", "wall_cm = 0.2\npunt = {depth_cm = 2}", "shape.plain.punt", "width_cm"),
        (
            "wall_cm = 0.2",
            "wall_cm = 0.2\npunt = {depth_cm = 2, width_cm = 3.8}",
            "shape.plain",
            "there is no room inside",
        ),
        (
            "wall_cm = 0.2",
            "wall_cm = 0.2\npunt = {depth_cm = 20, width_cm = 1}",
            "shape.plain",
            "the punt reaches above the brim",
        ),
        (
            'section = "round"\n',
            'section = "square"\n',
            "shape.plain",
            "a list of rows of 3 numbers",
        ),
    ],
)
def test_a_broken_shape_names_file_key_and_reason(old, new, key, reason):
    assert old in SOUND
    with pytest.raises(KnowledgeError) as caught:
        read_shapes(SOUND.replace(old, new, 1), "v.toml")
    assert (caught.value.file, caught.value.key) == ("v.toml", key)
    assert reason in caught.value.reason


def test_a_corner_wider_than_its_square_is_refused():
    square = SOUND.replace('"round"', '"square"').replace(
        "[[1, 3.76], [10, 3.76], [11, 1.0], [13, 1.0]]", "[[1, 4, 3], [13, 4, 1]]"
    )
    with pytest.raises(KnowledgeError, match="at most half the width"):
        read_shapes(square)


@pytest.mark.parametrize(
    ("rule", "key", "reason"),
    [
        ('shape = "round"', "usual 1", "“round” is not a shape"),
        ("", "usual 1", "“shape” is missing"),
        ('shape = "plain"\nfrom_ml = 50\nto_ml = 20', "usual 1", "must be 50 or more"),
        ('shape = "plain"\nto_ml = 20', "usual", "the last must fit any kind in any size"),
        ('shape = "plain"\nkinds = ["gin"]', "usual", "the last must fit any kind in any size"),
        ('shape = "plain"\nkind = "gin"', "usual 1", "there is no field “kind”"),
    ],
)
def test_a_broken_assumption_names_its_place(rule, key, reason):
    broken = SOUND.replace('shape = "plain"\n', rule + "\n")
    with pytest.raises(KnowledgeError) as caught:
        read_usual(broken, "v.toml")
    assert (caught.value.key, caught.value.file) == (key, "v.toml")
    assert reason in caught.value.reason


def test_nothing_assumed_is_refused():
    with pytest.raises(KnowledgeError, match="the last must fit any kind in any size"):
        read_usual(SOUND.split("[[usual]]")[0])


def test_shapes_and_punts_are_tables():
    with pytest.raises(KnowledgeError, match=r"shape: write it as a table, \[shape\]"):
        read_shapes('basis = "x"\nshape = 1')
    with pytest.raises(KnowledgeError, match=r"shape\.plain: write it as a table"):
        read_shapes('basis = "x"\nshape.plain = 1')
