"""What is known of a bottle before it stands on a scale: density, tare and shape."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bottles.bottle import Bottle, Level, Product, Tare, fill_tolerance
from barkeep.domain.bottles.containers import (
    FATTY,
    GLASS_TO_GLASS_SIGMA_G,
    NO_STRENGTH,
    OUT_OF_RANGE,
    container_of,
    contents_of,
    like_tare,
)
from barkeep.domain.bottles.shapes import usual_shape
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.liquids.ethanol import density_kg_m3
from barkeep.domain.liquids.sweetened import in_air, out_of_air
from tests.domain.bottles.bottles_to_measure import (
    CREAM,
    GIN,
    KNOWN_CREAM,
    LIQUEUR,
    SHAPES,
    TREE,
    container,
)
from tests.walked import walked

PRODUCT = Product("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0, abv_percent=40.0, id=1)


def density_of(label):
    """The density of a product of the shipped world, which must have one."""
    density = contents_of(label, TREE).density
    assert density is not None
    return density


def unknown_because(label, tree=TREE):
    """Why there is no density; there must be none."""
    contents = contents_of(label, tree)
    assert contents.density is None
    return contents.no_density_because


def bottle(number: int, product: Product = PRODUCT, tare: Tare | None = None) -> Bottle:
    return Bottle(number, product, Level(350.0, "open"), tare=tare)


class TestDensity:
    @pytest.mark.computed  # 0.948045 g/ml: 40 % vol by OIML R 22, as barkeep works it out
    def test_the_label_goes_before_what_is_usual(self):
        density = density_of(GIN)
        assert density.g_per_ml == pytest.approx(0.948045, abs=1e-5)
        stronger = density_of(replace(GIN, abv_percent=57.0))
        assert stronger.g_per_ml == pytest.approx(density_kg_m3(57.0) / 1000)

    def test_what_the_label_does_not_say_is_in_doubt(self):
        named = density_of(GIN)
        usual = density_of(replace(GIN, abv_percent=None))
        assert usual.g_per_ml == pytest.approx(named.g_per_ml, abs=0.01)
        assert usual.sigma_share > 3 * named.sigma_share
        sweet = density_of(LIQUEUR)
        guessed = density_of(replace(LIQUEUR, sugar_g_per_l=None))
        assert guessed.sigma_share > 1.5 * sweet.sigma_share

    def test_sugar_makes_it_heavier_and_acid_as_much(self):
        plain = density_of(replace(GIN, sugar_g_per_l=0.0))
        sour = density_of(replace(GIN, sugar_g_per_l=20.0, acid_g_per_l=30.0))
        sweet = density_of(replace(GIN, sugar_g_per_l=50.0))
        assert plain.g_per_ml < sour.g_per_ml == pytest.approx(sweet.g_per_ml)

    @walked(
        "key",
        [
            *("cream-liqueur", "chocolate-cream-liqueur", "egg-liqueur", "double-cream", "milk"),
            *("egg-white", "coconut-milk", "cream-of-coconut", "oat-milk"),
        ],
    )
    def test_fat_and_egg_are_not_worked_out(self, key):
        assert unknown_because(replace(CREAM, ingredient=key)) == FATTY

    def test_an_owner_s_own_cream_liqueur_is_known_by_its_allergens(self):
        own = Ingredient("toffee-cream", "Toffee cream", ("liqueur",), allergens=("milk",))
        tree = FamilyTree({**TREE.ingredients, own.key: own})
        assert unknown_because(replace(CREAM, ingredient=own.key), tree) == FATTY

    def test_what_nobody_knows_the_strength_of(self):
        tree = FamilyTree({"moss": Ingredient("moss", "Moss wine")})
        nothing = replace(GIN, ingredient="moss", abv_percent=None)
        assert unknown_because(nothing, tree) == NO_STRENGTH

    def test_what_cannot_be(self):
        assert unknown_because(replace(GIN, abv_percent=90.0, sugar_g_per_l=900.0)) == OUT_OF_RANGE

    def test_what_was_learned_goes_first_and_is_as_sure_as_a_fill(self):
        density = density_of(KNOWN_CREAM)
        assert density.g_per_ml == 1.043
        assert density.sigma_share == pytest.approx(fill_tolerance(700.0) / 3**0.5)

    def test_every_liquid_that_is_sold_has_a_density_or_a_reason(self):
        for key in TREE:
            if TREE[key].unit == "ml":
                draft = replace(GIN, ingredient=key, abv_percent=None)
                contents = contents_of(draft, TREE)
                density = contents.density
                if density is None:
                    assert contents.no_density_because == FATTY, key
                else:
                    assert 0.78 < density.g_per_ml < 1.5, key
                    assert 0 < density.sigma_share < 0.15, key


class TestAir:
    def test_a_balance_in_air_reads_0_11_percent_low(self):
        spirit = density_kg_m3(40.0) / 1000
        assert 1 - in_air(spirit) / spirit == pytest.approx(0.0011, abs=5e-5)
        for size, reads in ((750.0, 710.2), (700.0, 662.9), (1000.0, 947.0)):
            assert size * in_air(spirit) == pytest.approx(reads, abs=0.05)

    @given(st.floats(0.7, 1.5))
    def test_there_and_back(self, density):
        assert out_of_air(in_air(density)) == pytest.approx(density, rel=1e-12)


class TestTare:
    def test_its_own_goes_first(self):
        own = bottle(1, tare=Tare(520.0, 1.0))
        other = bottle(2, tare=Tare(530.0, 1.0))
        assert container_of(own, TREE, (own, other)).tare == Tare(520.0, 1.0)

    def test_that_of_a_like_bottle_is_less_sure(self):
        there = (bottle(1), bottle(2, tare=Tare(530.0, 7.0)), bottle(3, tare=Tare(526.0, 1.0)))
        tare = container_of(there[0], TREE, there).tare
        assert tare.weight_g == 526.0
        assert tare.sigma_g == pytest.approx((1 + GLASS_TO_GLASS_SIGMA_G**2) ** 0.5)
        assert not tare.was_weighed

    def test_another_product_or_a_thing_made_here_lends_none(self):
        other = bottle(2, replace(PRODUCT, id=2), Tare(526.0, 1.0))
        assert like_tare(PRODUCT, (other,)) is None
        made = replace(PRODUCT, house_made=True)
        assert like_tare(made, (bottle(2, made, Tare(526.0, 1.0)),)) is None

    def test_what_is_not_poured_has_neither(self):
        sugar = container_of(bottle(1, replace(PRODUCT, unit="g")), TREE)
        assert (sugar.tare, sugar.contents.density, sugar.shape) == (None, None, None)


class TestShape:
    def test_the_product_s_own_goes_before_the_usual_one(self):
        assert container(shape="square").shape.key == "square"
        kinds = ("london-dry-gin", *TREE.ancestors("london-dry-gin"))
        assert container().shape.key == usual_shape(700.0, kinds)

    def test_one_that_a_later_barkeep_knew_is_the_usual_one(self):
        assert container(shape="amphora").shape == container().shape

    def test_every_shape_can_be_named(self):
        assert [container(shape=key).shape.key for key in SHAPES] == list(SHAPES)
