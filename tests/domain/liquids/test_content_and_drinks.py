"""Ethanol, energy, standard drinks, Pearson's square, fills."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bottles.bottle import fill_tolerance
from barkeep.domain.liquids import content, ethanol
from barkeep.errors import OutsideRange, UnknownName
from tests.walked import walked

volumes = st.floats(0.0, 10_000.0)
abvs = st.floats(0.0, 100.0)
grams = st.floats(0.0, 1000.0)


class TestEthanol:
    @given(volumes, abvs)
    def test_it_is_its_share_of_the_mass_too(self, volume, abv):
        mass = ethanol.mass_g(volume, abv) * ethanol.mass_fraction(abv)
        assert content.ethanol_g(volume, abv) == pytest.approx(mass, rel=1e-9, abs=1e-9)

    @given(volumes, abvs, st.floats(0.0, 5.0))
    def test_ice_does_not_take_it_away(self, volume, abv, added):
        served, weaker = volume * (1.0 + added), abv / (1.0 + added)
        before = content.ethanol_g(volume, abv)
        assert content.ethanol_g(served, weaker) == pytest.approx(before, rel=1e-9, abs=1e-9)

    @pytest.mark.parametrize(
        ("volume", "abv", "sentence"),
        [
            (-1.0, 40.0, "a volume of -1 ml cannot be used: it is 0 to 1e+09 ml."),
            (1.0, 140.0, "a strength of 140 % vol cannot be used: it is 0 to 100 % vol."),
        ],
    )
    def test_what_cannot_be_is_refused(self, volume, abv, sentence):
        with pytest.raises(OutsideRange) as refused:
            content.ethanol_g(volume, abv)
        assert str(refused.value) == sentence


class TestEnergy:
    @pytest.mark.computed
    def test_a_measure_of_spirit(self):
        """100 ml at 40 % vol: 221 kcal, 916 kJ (EU 1169/2011, Annex XIV: 7 kcal, 29 kJ a gram)."""
        held = {"ethanol": content.ethanol_g(100.0, 40.0)}
        assert content.energy_kcal(held) == pytest.approx(221.0, abs=0.5)
        assert content.energy_kj(held) == pytest.approx(916.0, abs=0.9)

    @given(grams, grams, grams)
    def test_it_adds_up(self, spirit, sugar, fat):
        whole = content.energy_kcal({"ethanol": spirit, "sugar": sugar, "fat": fat})
        assert whole == pytest.approx(7.0 * spirit + 4.0 * sugar + 9.0 * fat)

    @pytest.mark.parametrize(
        "nutrient", ["ethanol", "sugar", "polyol", "acid", "protein", "fat", "fibre"]
    )
    def test_both_units_are_of_the_same_energy(self, nutrient):
        """The regulation rounds each by itself: 4.0 to 4.4 kJ to the kcal."""
        ratio = content.energy_kj({nutrient: 1.0}) / content.energy_kcal({nutrient: 1.0})
        assert ratio == pytest.approx(4.184, rel=0.05)

    def test_nothing_has_none_and_less_is_refused(self):
        assert content.energy_kcal({}) == content.energy_kj({}) == 0.0
        with pytest.raises(OutsideRange) as refused:
            content.energy_kcal({"acid": -1.0})
        assert str(refused.value) == "a mass of acid of -1 g cannot be used: it is 0 to 1e+07 g."

    def test_what_was_done_longer_keeps_less(self):
        kept = content.alcohol_kept()
        simmered = [share for what, share in kept.items() if what.startswith("simmered")]
        assert len(simmered) == 6
        assert simmered == sorted(simmered, reverse=True)
        assert all(0.0 < share < 1.0 for share in kept.values())


class TestStandardDrinks:
    @given(grams, st.sampled_from(content.countries()))
    def test_they_are_the_ethanol_again(self, mass, country):
        count = content.standard_drinks(mass, country)
        assert count * content.standard_drink(country).grams == pytest.approx(mass)

    def test_every_country_says_where_its_figure_comes_from(self):
        for country in content.countries():
            one = content.standard_drink(country)
            assert one.country == country
            assert one.basis and one.called
            assert 7.0 < one.grams <= 20.0

    def test_a_british_one_is_a_unit(self):
        assert content.standard_drink("United Kingdom").called == "unit"
        assert content.standard_drink(content.DEFAULT_COUNTRY).called == "standard drink"

    def test_an_unknown_country_names_the_nearest(self):
        with pytest.raises(UnknownName) as refused:
            content.standard_drinks(10.0, "Icelnd")
        assert "Iceland" in refused.value.nearest

    @walked(
        ("said", "country"),
        [
            *(("UK", "United Kingdom"), ("u.k.", "United Kingdom"), ("gb", "United Kingdom")),
            *(("Great  Britain", "United Kingdom"), ("the uk", "United Kingdom")),
            *(("USA", "United States"), ("U.S.A.", "United States"), ("us", "United States")),
            *(("America", "United States"), ("the Netherlands", "Netherlands")),
            *(("holland", "Netherlands"), (" new zealand ", "New Zealand")),
        ],
    )
    def test_a_country_goes_by_its_other_names_too(self, said, country):
        assert content.country_named(said) == country

    def test_no_two_countries_share_a_name(self):
        for country in content.countries():
            one = content.standard_drink(country)
            for name in (country, *one.aliases):
                assert content.country_named(name) == country

    @pytest.mark.parametrize(
        ("said", "nearest"), [("irland", "Ireland"), ("Grate Britain", "United Kingdom")]
    )
    def test_a_misspelt_country_names_the_nearest(self, said, nearest):
        with pytest.raises(UnknownName) as refused:
            content.country_named(said)
        assert refused.value.nearest[0] == nearest

    def test_less_than_nothing_is_refused(self):
        with pytest.raises(OutsideRange) as refused:
            content.standard_drinks(-1.0, "Canada")
        assert "a mass of ethanol of -1 g cannot be used" in str(refused.value)


class TestFills:
    @given(st.floats(0.0, 10_000.0), st.floats(0.0, 1000.0))
    def test_a_larger_bottle_is_filled_no_less_closely(self, size, more):
        assert fill_tolerance(size + more) <= fill_tolerance(size)

    def test_less_than_nothing_is_refused(self):
        with pytest.raises(OutsideRange):
            fill_tolerance(-1.0)
