"""What an empty bottle weighs, and what is in it, learned from one and from two weighings."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from barkeep.domain.bottles.bottle import Bottle, Level, Product, Tare, fill_sigma
from barkeep.domain.bottles.containers import container_of, contents_of
from barkeep.domain.bottles.levels import gross_weight_g, level_by_weight
from barkeep.domain.bottles.taring import odd_glass, tare_again, weighed_empty, weighed_full
from barkeep.domain.liquids.sweetened import in_air, spirit_density
from barkeep.errors import InvalidField, UnlikelyTare
from tests.domain.bottles.bottles_to_measure import TREE

GIN = Product("Dry gin", "Hollow Lamp", "london-dry-gin", 700.0, abv_percent=40.0, id=1)

CREAM = Product("Milk Churn", "Tansy Lock", "cream-liqueur", 700.0, abv_percent=17.0, id=2)


def bottle(product: Product = GIN, number: int = 1, **known: object) -> Bottle:
    return Bottle(number, product, Level(700.0, "sealed"), **known)  # type: ignore[arg-type]


def learned_bottle(found, product):
    """The bottle as it is once what was learned is written down."""
    if found.density_g_per_ml is None:
        return found.bottle
    return replace(found.bottle, product=replace(product, density_g_per_ml=found.density_g_per_ml))


class TestEmpty:
    def test_it_is_as_sure_as_the_scale(self):
        found = weighed_empty(bottle(), 520.0, TREE)
        assert found.bottle.tare == Tare(520.0, 1.0)
        assert found.density_g_per_ml is None

    @pytest.mark.parametrize("weight_g", [0.0, -3.0, 25_000.0, float("nan"), float("inf")])
    def test_what_is_no_weight_is_refused(self, weight_g):
        with pytest.raises(InvalidField, match="more than nothing and at most 20 kg"):
            weighed_empty(bottle(), weight_g, TREE)

    def test_what_is_not_poured_is_not_weighed_so(self):
        with pytest.raises(InvalidField, match="not poured"):
            weighed_empty(bottle(replace(GIN, unit="g")), 520.0, TREE)

    @pytest.mark.parametrize("weight_g", [5.0, 9.0, 2900.0, 19_000.0])
    def test_what_no_bottle_of_the_size_weighs_is_refused(self, weight_g):
        with pytest.raises(UnlikelyTare, match="is no weight of an empty bottle of 700 ml"):
            weighed_empty(bottle(), weight_g, TREE)

    @pytest.mark.parametrize(
        ("weight_g", "odd"),
        [(80.0, "light"), (170.0, "light"), (180.0, ""), (1100.0, ""), (1200.0, "heavy")],
    )
    def test_what_few_bottles_weigh_is_odd(self, weight_g, odd):
        assert odd_glass(weighed_empty(bottle(), weight_g, TREE).bottle) == odd

    def test_without_a_weight_nothing_is_odd(self):
        assert odd_glass(bottle()) == ""

    def test_what_is_made_here_may_stand_in_a_heavy_bottle(self):
        own = bottle(replace(GIN, size=100.0, house_made=True))
        assert weighed_empty(own, 500.0, TREE).bottle.tare == Tare(500.0, 1.0)


class TestFull:
    @pytest.mark.parametrize("product", [GIN, CREAM])
    @pytest.mark.parametrize(("weight_g", "too"), [(500.0, "little"), (19_000.0, "much")])
    def test_a_weight_that_leaves_no_likely_bottle_is_refused(self, product, weight_g, too):
        with pytest.raises(UnlikelyTare, match=f"full is too {too} for the 700 ml"):
            weighed_full(bottle(product), weight_g, TREE)

    def test_what_it_should_hold_is_taken_off(self):
        found = weighed_full(bottle(), 1230.0, TREE).bottle
        contents_g = 700.0 * in_air(spirit_density(40.0).g_per_ml)
        assert found.tare.weight_g == pytest.approx(1230.0 - contents_g)
        assert found.full_g == 1230.0
        assert not found.tare.was_weighed

    def test_its_doubt_is_that_of_a_maker_s_fill(self):
        """2 % either way, all of it as likely: 8.1 ml of 700, which weigh 7.7 g."""
        tare = weighed_full(bottle(), 1230.0, TREE).bottle.tare
        assert tare.sigma_g == pytest.approx(0.948 * fill_sigma(700.0), rel=0.02)
        assert fill_sigma(700.0) == pytest.approx(700 * 0.02 / 3**0.5)

    def test_a_full_bottle_reads_as_full_afterwards(self):
        found = weighed_full(bottle(), 1230.0, TREE).bottle
        level = level_by_weight(1230.0, container_of(found, TREE))
        assert level.amount == pytest.approx(700.0)

    def test_a_bottle_lighter_than_its_contents_is_refused(self):
        with pytest.raises(UnlikelyTare, match="too little for the 700 ml"):
            weighed_full(bottle(), 650.0, TREE)

    def test_a_weighed_tare_is_not_replaced_by_a_worked_out_one(self):
        known = bottle(tare=Tare(566.0, 1.0))
        found = weighed_full(known, 1230.0, TREE)
        assert found.bottle.tare == Tare(566.0, 1.0)
        assert found.odd_contents_ml is None

    def test_two_weights_that_do_not_go_together_are_said(self):
        known = bottle(tare=Tare(520.0, 1.0))
        assert weighed_full(known, 1130.0, TREE).odd_contents_ml == pytest.approx(644.2, abs=0.5)

    def test_more_than_the_bottle_has_room_for_is_refused(self):
        """700 ml in the usual shape is brimful below 740 ml; 800 ml would weigh 757 g."""
        for bottle_before, weigh, weight_g in (
            (bottle(tare=Tare(520.0, 1.0)), weighed_full, 1277.0),
            (bottle(full_g=1277.0), weighed_empty, 520.0),
        ):
            with pytest.raises(UnlikelyTare, match="do not go with the 700 ml"):
                weigh(bottle_before, weight_g, TREE)

    def test_what_is_made_here_may_stand_in_a_larger_bottle(self):
        own = replace(GIN, house_made=True)
        found = weighed_full(bottle(own, tare=Tare(520.0, 1.0)), 1277.0, TREE)
        assert found.odd_contents_ml == pytest.approx(800.0, abs=1.0)

    def test_an_empty_weight_replaces_a_worked_out_one(self):
        once = weighed_full(bottle(), 1230.0, TREE).bottle
        assert weighed_empty(once, 566.0, TREE).bottle.tare == Tare(566.0, 1.0)


class TestBoth:
    @pytest.mark.parametrize("full_first", [True, False])
    def test_both_weights_give_the_density_of_cream(self, full_first):
        start = bottle(CREAM)
        if full_first:
            first = weighed_full(start, 1242.0, TREE)
            assert first.waits_for_empty and first.bottle.tare is None
            found = weighed_empty(first.bottle, 512.0, TREE)
        else:
            first = weighed_empty(start, 512.0, TREE)
            assert not first.waits_for_empty
            found = weighed_full(first.bottle, 1242.0, TREE)
        assert found.density_g_per_ml == pytest.approx((1242.0 - 512.0) / 700.0, rel=0.002)
        assert found.density_g_per_ml > (1242.0 - 512.0) / 700.0  # the air is taken off
        held = container_of(learned_bottle(found, CREAM), TREE)
        assert level_by_weight(1242.0, held).amount == pytest.approx(700.0)
        assert level_by_weight(877.0, held).amount == pytest.approx(350.0)
        assert level_by_weight(512.0, held).amount == 0.0

    def test_a_spirit_s_density_is_never_learned_from_a_fill(self):
        both = weighed_full(bottle(tare=Tare(566.0, 1.0)), 1240.0, TREE)
        assert both.density_g_per_ml is None

    def test_a_like_bottle_s_tare_is_as_good(self):
        other = bottle(CREAM, 2, tare=Tare(512.0, 1.0))
        found = weighed_full(bottle(CREAM), 1242.0, TREE, (other,))
        assert found.density_g_per_ml == pytest.approx(1.044, abs=0.002)

    def test_the_next_bottle_of_it_can_be_weighed_full(self):
        known = replace(CREAM, density_g_per_ml=1.043)
        found = weighed_full(bottle(known), 1242.0, TREE).bottle
        assert found.tare.weight_g == pytest.approx(512.7, abs=0.2)
        assert found.tare.sigma_g > 8.0

    @pytest.mark.parametrize(
        ("empty_g", "full_g"), [(512.0, 900.0), (512.0, 2000.0), (900.0, 800.0)]
    )
    def test_weights_that_cannot_both_be_are_refused(self, empty_g, full_g):
        for product in (CREAM, GIN):
            with pytest.raises(UnlikelyTare, match="do not go with the 700 ml"):
                weighed_full(bottle(product, tare=Tare(empty_g, 1.0)), full_g, TREE)
            with pytest.raises(UnlikelyTare):
                weighed_empty(bottle(product, full_g=full_g), empty_g, TREE)


class TestAgain:
    def test_a_corrected_label_moves_a_worked_out_tare(self):
        found = weighed_full(bottle(), 1230.0, TREE).bottle
        stronger = replace(found, product=replace(GIN, abv_percent=57.0))
        again = tare_again(stronger, TREE).tare
        assert again == weighed_full(bottle(stronger.product), 1230.0, TREE).bottle.tare
        assert again.weight_g > found.tare.weight_g + 20

    def test_a_weighed_tare_and_none_stay(self):
        for each in (bottle(), bottle(tare=Tare(520.0, 1.0), full_g=1230.0)):
            assert tare_again(each, TREE) == each

    def test_a_label_that_says_cream_after_all_leaves_nothing_known(self):
        found = weighed_full(bottle(), 1230.0, TREE).bottle
        assert tare_again(replace(found, product=CREAM), TREE).tare is None


@given(
    st.floats(0, 60),
    st.floats(0, 500),
    st.sampled_from([50.0, 350.0, 500.0, 700.0, 750.0, 1000.0]),
    st.floats(0, 1),
    st.floats(0.11, 3.9),
)
def test_what_was_learned_full_weighs_every_level_right(
    strength, sugar, size, share, glass_g_per_ml
):
    """Full weighing, then any level: the fill's doubt is the only one between the two."""
    product = replace(GIN, size=size, abv_percent=strength, sugar_g_per_l=sugar)
    density = contents_of(product, TREE).density
    assume(density is not None)
    glass_g = glass_g_per_ml * size
    full_g = glass_g + size * in_air(density.g_per_ml)
    found = weighed_full(bottle(product), full_g, TREE).bottle
    assert found.tare.weight_g == pytest.approx(glass_g, abs=1e-6)
    held = container_of(found, TREE)
    level = level_by_weight(gross_weight_g(share * size, held), held)
    assert level.amount == pytest.approx(share * size, rel=1e-9, abs=1e-9)
