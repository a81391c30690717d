"""What is left, by each of the four means, and what is refused."""

from __future__ import annotations

from math import hypot

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.amounts.amount import NEAR_ENOUGH
from barkeep.domain.amounts.measures import show_volume
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bottles.bottle import (
    SCALE_SIGMA_G,
    TENTHS_SIGMA,
    VOLUME_SIGMA_ML,
    Tare,
    fill_sigma,
)
from barkeep.domain.bottles.containers import Container
from barkeep.domain.bottles.levels import (
    EMPTY_SIGMA,
    MeasuredLevel,
    gross_weight_g,
    level_by_height,
    level_by_weight,
    parse_level,
    read_weight_g,
)
from barkeep.domain.bottles.shapes import brimful_ml, height_cm, tallest_cm, volume_sigma_ml
from barkeep.domain.liquids.sweetened import in_air
from barkeep.errors import (
    AmountError,
    BelowTare,
    DensityUnknown,
    HeightAboveBottle,
    LevelAboveSize,
    NegativeAmount,
    TareUnknown,
    UserError,
    WeightAboveFull,
    WrongDimension,
)
from tests.domain.bottles.bottles_to_measure import CREAM, LIQUEUR, LIQUIDS, SHAPES, TARE, container
from tests.walked import walked

SPIRIT = container()
LIMES = Container("the limes", 12.0, "each")
SUGAR = Container("the sugar", 500.0, "g")


shapes = st.sampled_from(SHAPES)
liquids = st.sampled_from(sorted(LIQUIDS))
shares = st.floats(0.0, 1.0)


class TestShares:
    @pytest.mark.parametrize(
        ("text", "amount"),
        [
            *(("0.4", 280), ("0,4", 280), ("4/10", 280), ("40 %", 280), ("40%", 280)),
            *(("½", 350), ("1", 700)),
        ],
    )
    def test_a_share_of_the_bottle(self, text, amount):
        level = parse_level(text, SPIRIT)
        assert level == MeasuredLevel(pytest.approx(amount), "tenths", TENTHS_SIGMA * 700)

    def test_a_share_of_what_is_weighed_or_counted(self):
        assert parse_level("0.5", SUGAR) == MeasuredLevel(250.0, "tenths", TENTHS_SIGMA * 500)

    @pytest.mark.parametrize(
        ("text", "pieces"), [("½", 6), ("1/2", 6), ("50 %", 6), ("12/12", 12), ("6/12", 6)]
    )
    def test_pieces_have_only_fractions_and_percents_for_shares(self, text, pieces):
        assert parse_level(text, LIMES).amount == pieces

    @pytest.mark.parametrize("held", [SPIRIT, SUGAR, container(size=1500.0)])
    def test_an_empty_one_is_plain_to_see(self, held):
        for text in ("0", "0/10", "0 %"):
            assert parse_level(text, held) == MeasuredLevel(0.0, "tenths", EMPTY_SIGMA)
        assert parse_level("0.01", held).sigma == TENTHS_SIGMA * held.size

    def test_an_empty_one_is_as_plain_by_jug_and_ruler(self):
        assert parse_level("0 ml", SPIRIT).sigma == EMPTY_SIGMA
        assert parse_level("0 cm", SPIRIT).sigma == EMPTY_SIGMA
        assert parse_level("0 g", SUGAR).sigma == EMPTY_SIGMA


class TestVolumes:
    @pytest.mark.parametrize(
        ("text", "amount"),
        [("315 ml", 315), ("31 cl", 310), ("10 oz", 295.735295625), ("0.7 l", 700)],
    )
    def test_a_volume(self, text, amount):
        level = parse_level(text, SPIRIT)
        assert level == MeasuredLevel(pytest.approx(amount), "volume", VOLUME_SIGMA_ML)

    @pytest.mark.parametrize(
        ("text", "size"), [("25.4 oz", 750.0), ("25.5 oz", 750.0), ("23.7 oz", 700.0)]
    )
    def test_a_full_bottle_in_rounded_ounces_is_full(self, text, size):
        level = parse_level(text, container(size=size))
        assert (level.amount, level.method) == (size, "volume")

    @pytest.mark.parametrize(("text", "size"), [("790 ml", 750.0), ("60 ml", 50.0)])
    def test_what_no_bottle_of_the_size_has_room_for_is_refused(self, text, size):
        with pytest.raises(LevelAboveSize):
            parse_level(text, container(size=size))

    @pytest.mark.parametrize("text", ["1.02", "101 %"])
    def test_more_than_the_whole_is_no_share(self, text):
        with pytest.raises(UserError):
            parse_level(text, SPIRIT)

    def test_an_ounce_is_what_the_bar_means_by_it(self):
        imperial = parse_level("10 oz", SPIRIT, BarUnits("imp_oz"))
        assert imperial.amount == pytest.approx(284.130625)

    @given(st.floats(0.001, 700))
    def test_a_printed_volume_reads_back_as_a_level(self, volume):
        level = parse_level(show_volume(volume), container(size=705.0))
        assert level.amount == pytest.approx(volume, rel=NEAR_ENOUGH, abs=1e-9)


class TestPiecesAndGoodsByWeight:
    @pytest.mark.parametrize(
        ("text", "amount", "method"),
        [
            *(("4", 4, "volume"), ("4 each", 4, "volume"), ("1", 1, "volume"), ("0", 0, "volume")),
            *(("0.5", 0.5, "volume"), (",5", 0.5, "volume"), ("1.5", 1.5, "volume")),
        ],
    )
    def test_pieces_are_counted(self, text, amount, method):
        level = parse_level(text, LIMES)
        assert (level.amount, level.method, level.sigma) == (amount, method, 0)

    @pytest.mark.parametrize(("text", "amount"), [("250 g", 250), ("250", 250), ("0.3 kg", 300)])
    def test_what_is_kept_by_weight_is_weighed_alone(self, text, amount):
        assert parse_level(text, SUGAR) == MeasuredLevel(amount, "weight", SCALE_SIGMA_G)

    @pytest.mark.parametrize("text", ["11.5 cm", "200 ml"])
    def test_neither_has_a_height_or_a_volume(self, text):
        with pytest.raises(WrongDimension, match="a weight such as 250 g"):
            parse_level(text, SUGAR)
        with pytest.raises(WrongDimension, match="a number of pieces"):
            parse_level(text, LIMES)


class TestWeights:
    def test_a_bottle_on_a_scale(self):
        """REFERENCE: 750 ml of 40 % vol reads 710.2 g, the air's buoyancy taken off."""
        level = parse_level("1230.2 g", container(size=750.0))
        assert level.amount == pytest.approx(750.0, abs=0.05)
        assert level.method == "weight"

    @pytest.mark.parametrize(
        ("text", "same"), [("0.812 kg", "812 g"), ("812g", "812 g"), ("1.79 lb", "811.93 g")]
    )
    def test_any_unit_of_weight(self, text, same):
        found, wanted = parse_level(text, SPIRIT).amount, parse_level(same, SPIRIT).amount
        assert found == pytest.approx(wanted, abs=0.1)

    @given(liquids, shapes, shares)
    def test_a_volume_weighed_is_that_volume(self, liquid, shape, share):
        held = container(LIQUIDS[liquid], shape=shape)
        left = share * held.size
        found = level_by_weight(gross_weight_g(left, held), held)
        assert found.amount == pytest.approx(left, rel=1e-9, abs=1e-9)

    @given(liquids, shares)
    def test_the_doubt_is_of_scale_tare_and_density(self, liquid, share):
        held = container(LIQUIDS[liquid], tare=Tare(520.0, 7.5))
        left = share * held.size
        found = level_by_weight(gross_weight_g(left, held), held)
        per_ml = in_air(held.contents.density.g_per_ml)
        by_weights = hypot(SCALE_SIGMA_G, 7.5) / per_ml
        assert found.sigma == pytest.approx(
            hypot(by_weights, left * held.contents.density.sigma_share)
        )

    def test_a_spirit_is_weighed_to_a_few_ml_and_a_liqueur_less_surely(self):
        spirit = level_by_weight(gross_weight_g(350.0, SPIRIT), SPIRIT)
        liqueur = container(LIQUEUR)
        sweet = level_by_weight(gross_weight_g(350.0, liqueur), liqueur)
        assert 1.0 < spirit.sigma < 2.0 < sweet.sigma < 5.0

    def test_without_its_own_weight_nothing_is_known(self):
        with pytest.raises(TareUnknown, match="Hollow Lamp Dry gin weighs without its contents"):
            parse_level("812 g", container(tare=None))

    def test_cream_is_not_worked_out_from_strength_and_sugar(self):
        with pytest.raises(DensityUnknown, match="it holds cream, milk, egg or coconut") as refused:
            parse_level("812 g", container(CREAM))
        assert "once full and once empty" in str(refused.value)

    @pytest.mark.parametrize("text", ["0 g", "480 g", "515 g"])
    def test_less_than_the_empty_bottle_is_refused(self, text):
        with pytest.raises(BelowTare, match="weighs empty"):
            parse_level(text, SPIRIT)

    def test_a_little_less_than_the_empty_bottle_is_empty(self):
        level = parse_level("518 g", SPIRIT)
        assert (level.amount, level.method) == (0.0, "weight")
        assert level.sigma > 1.0

    def test_a_little_more_than_full_is_full(self):
        """Makers fill up to 2 % over, which is 14 ml of 700."""
        generous = gross_weight_g(714.0, SPIRIT)
        assert level_by_weight(generous, SPIRIT).amount == 700.0

    def test_more_than_full_is_refused_with_what_full_would_be(self):
        with pytest.raises(WeightAboveFull, match=r"1300 g is more than .* \(about 1183 g\)"):
            parse_level("1300 g", SPIRIT)


class TestHeights:
    @given(liquids, shapes, shares)
    def test_a_volume_by_its_height_is_that_volume(self, liquid, shape, share):
        held = container(LIQUIDS[liquid], shape=shape)
        left = share * held.size
        height = height_cm(held.shape, held.size, left)
        found = level_by_height(height, held)
        assert found.amount == pytest.approx(left, rel=1e-9, abs=1e-6)
        assert found.sigma == volume_sigma_ml(held.shape, held.size, height)
        assert found.method == "height"

    @given(shapes, shares)
    def test_text_as_it_is_read_off_a_ruler(self, shape, share):
        held = container(shape=shape)
        height = height_cm(held.shape, held.size, share * held.size)
        by_cm = parse_level(f"{height:.4f} cm", held).amount
        by_inch = parse_level(f"{height / 2.54:.4f} in", held).amount
        assert by_cm == pytest.approx(share * held.size, abs=0.2)
        assert by_inch == pytest.approx(by_cm, abs=0.2)

    def test_inches_are_written_as_fractions_too(self):
        held = container(shape="tall-round")
        assert parse_level("4 1/2 in", held) == parse_level("11.43 cm", held)

    @given(shapes)
    def test_up_to_the_brim_is_full_and_above_it_is_no_bottle(self, shape):
        held = container(shape=shape)
        allowed = held.size + 3 * fill_sigma(held.size)
        over = min(allowed, 0.999 * brimful_ml(held.shape, held.size))
        assert level_by_height(height_cm(held.shape, held.size, over), held).amount == held.size
        with pytest.raises(HeightAboveBottle):
            level_by_height(tallest_cm(held.shape, held.size) + 0.1, held)

    def test_a_ruler_that_stands_too_high_is_said(self):
        with pytest.raises(HeightAboveBottle, match="above the whole bottle"):
            parse_level("60 cm", container(shape="tall-round"))

    def test_no_height_is_nothing(self):
        assert parse_level("0 cm", container(shape="square")).amount == 0.0


class TestRefusals:
    @walked("text", ["1.2", "315", "nan", "inf", "", "full", "0.4 of it", "2-3 oz", "800-820 g"])
    def test_what_is_no_level_is_refused(self, text):
        with pytest.raises(AmountError):
            parse_level(text, SPIRIT)

    def test_a_bare_number_is_told_which_units_there_are(self):
        with pytest.raises(AmountError, match=r"315 ml, 812 g on a scale or 11\.5 cm high"):
            parse_level("315", SPIRIT)

    @pytest.mark.parametrize(
        "text",
        [
            *("3 dashes", "1 drop", "2 pinches", "a splash ", "1 barspoon", "1 rinse", "1 float"),
            *("0 dashes", "dash of it"),
        ],
    )
    @walked("held", [SPIRIT, SUGAR])
    def test_no_level_is_measured_in_what_is_poured_by_feel(self, text, held):
        with pytest.raises(AmountError):
            parse_level(text, held)

    def test_a_dash_is_told_what_is_wanted_instead(self):
        with pytest.raises(AmountError, match="a dash is too small to measure a level in; write"):
            parse_level("3 dashes", SPIRIT)

    @pytest.mark.parametrize("text", ["1 part", "4 each", "3 sprigs", "2 wedges"])
    def test_the_wrong_kind_of_level_is_refused(self, text):
        with pytest.raises(WrongDimension, match=f"“{text}” is a .*; a share of the bottle"):
            parse_level(text, SPIRIT)

    def test_less_than_nothing_and_more_than_the_size_are_refused(self):
        for text in ("-0.2", "-5 ml", "-812 g", "-11 cm"):
            with pytest.raises(NegativeAmount):
                parse_level(text, SPIRIT)
        for text in ("800 ml", "110 %", "1 l"):
            with pytest.raises(LevelAboveSize, match="more than Hollow Lamp Dry gin holds"):
                parse_level(text, SPIRIT)
        with pytest.raises(LevelAboveSize):
            parse_level("13", LIMES)

    @given(st.text(max_size=20), st.sampled_from([SPIRIT, SUGAR, LIMES, container(CREAM, None)]))
    def test_any_text_is_a_level_or_a_sentence(self, text, held):
        try:
            level = parse_level(text, held)
        except UserError as error:
            assert str(error).endswith((".", "?"))
        else:
            assert 0 <= level.amount <= held.size
            assert level.sigma >= 0

    @given(
        st.floats(0, 5000),
        st.sampled_from(["g", "kg", "ml", "cm", "mm", "in", "oz", "lb", "%", "dashes"]),
        shapes,
        liquids,
    )
    def test_any_amount_is_a_level_or_a_sentence(self, number, unit, shape, liquid):
        held = container(LIQUIDS[liquid], shape=shape)
        try:
            level = parse_level(f"{number:.3f} {unit}", held)
        except UserError as error:
            assert str(error).endswith((".", "?"))
        else:
            assert 0 <= level.amount <= held.size


class TestWeightsAlone:
    @pytest.mark.parametrize(
        ("text", "weight_g"), [("520 g", 520), ("1.2 kg", 1200), ("2 lb", 907.18474)]
    )
    def test_a_weight_is_read(self, text, weight_g):
        assert read_weight_g(text) == pytest.approx(weight_g)

    def test_what_is_no_weight_is_refused(self):
        with pytest.raises(AmountError, match="needs its unit"):
            read_weight_g("520")
        with pytest.raises(AmountError, match="not a range"):
            read_weight_g("500-520 g")
        with pytest.raises(WrongDimension, match="is a volume"):
            read_weight_g("520 ml")
        with pytest.raises(NegativeAmount):
            read_weight_g("-520 g")


def test_a_tare_tells_whether_it_was_weighed():
    assert TARE.was_weighed
    assert not Tare(571.0, 7.7).was_weighed
