"""Ethanol and water: there and back again, nothing lost, nothing beyond its range."""

from __future__ import annotations

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from barkeep.domain.liquids import buoyancy, ethanol
from barkeep.domain.liquids.constants import constants
from barkeep.domain.liquids.ethanol import SpiritMixture
from barkeep.errors import OutsideRange

abvs = st.floats(0.0, 100.0)

above_freezing = st.floats(0.0, 40.0)

references = st.sampled_from([15.0, ethanol.US_REFERENCE_C, 20.0, 25.0])

volumes = st.floats(0.01, 100_000.0)

mixtures = st.builds(SpiritMixture, volumes, abvs)


def exactly(value):
    return pytest.approx(value, rel=1e-9, abs=1e-9)


def ethanol_g(mixture: SpiritMixture) -> float:
    mass = ethanol.mass_g(mixture.volume_ml, mixture.abv_percent)
    return mass * ethanol.mass_fraction(mixture.abv_percent)


class TestThereAndBack:
    @given(abvs, references)
    def test_strength_and_mass_fraction(self, abv, reference):
        p = ethanol.mass_fraction(abv, reference)
        assert 0.0 <= p <= 1.0
        assert ethanol.strength(p, reference) == exactly(abv)

    @given(st.floats(0.0, 1.0), references)
    @example(1.0, 25.0).via("rounding passed 100 % vol by a hair")
    def test_mass_fraction_and_strength(self, p, reference):
        assert ethanol.mass_fraction(ethanol.strength(p, reference), reference) == exactly(p)

    @given(abvs, above_freezing)
    def test_density_and_strength(self, abv, t):
        rho = ethanol.density_kg_m3(abv, t)
        assert ethanol.strength_of_density(rho, t) == exactly(abv)

    @given(volumes, abvs, above_freezing)
    def test_volume_and_mass(self, volume, abv, t):
        mass = ethanol.mass_g(volume, abv, t)
        assert ethanol.volume_ml(mass, abv, t) == exactly(volume)

    @given(abvs)
    def test_proofs(self, abv):
        assert ethanol.of_us_proof(ethanol.us_proof(abv)) == exactly(abv)
        assert ethanol.of_old_uk_proof(ethanol.old_uk_proof(abv)) == exactly(abv)

    @given(volumes, st.floats(700.0, 1500.0))
    def test_in_air_and_out_of_it(self, mass, density):
        shown = buoyancy.in_air_g(mass, density)
        assert shown < mass
        assert buoyancy.out_of_air_g(shown, density) == exactly(mass)

    @given(abvs, references)
    def test_a_hydrometer_at_its_own_temperature_is_right(self, abv, reference):
        assert ethanol.strength_of_reading(abv, reference, reference) == exactly(abv)


class TestDensity:
    @given(abvs, st.floats(0.01, 10.0), above_freezing)
    def test_more_ethanol_is_lighter(self, abv, more, t):
        stronger = min(100.0, abv + more)
        assert ethanol.density_kg_m3(stronger, t) <= ethanol.density_kg_m3(abv, t)
        if stronger - abv > 1e-6:
            assert ethanol.density_kg_m3(stronger, t) < ethanol.density_kg_m3(abv, t)

    @given(st.floats(20.0, 100.0), above_freezing, st.floats(0.01, 10.0))
    @example(39.99999999999999, 39.99999999999999, 1.0)  # a hair warmer, within rounding
    def test_a_warmer_spirit_is_lighter(self, abv, t, warmer):
        hotter = min(40.0, t + warmer)
        assert ethanol.density_kg_m3(abv, hotter) <= ethanol.density_kg_m3(abv, t) + 1e-9

    @pytest.mark.computed
    def test_water_is_densest_at_4_c(self):
        """CRC Handbook (from memory): 3.98 °C."""
        densities = {t / 10: ethanol.density_kg_m3(0.0, t / 10) for t in range(0, 101)}
        assert max(densities, key=densities.__getitem__) == pytest.approx(4.0, abs=0.1)

    @given(st.floats(20.0, 80.0), st.floats(0.1, 19.9))
    def test_a_hydrometer_reads_too_strong_when_warm_and_too_weak_when_cold(self, abv, off):
        """A warm spirit is lighter, so the glass sinks as it would in a stronger one."""
        assert ethanol.strength_of_reading(abv, 20.0 + off) < abv
        assert ethanol.strength_of_reading(abv, 20.0 - off) > abv

    def test_it_is_a_spirit_of_its_strength_that_does_not_freeze(self):
        assert ethanol.density_kg_m3(40.0, -18.0) > ethanol.density_kg_m3(40.0, 0.0)
        with pytest.raises(OutsideRange):
            ethanol.density_kg_m3(20.0, -18.0)

    @given(st.integers(0, 15))
    def test_the_cold_end_is_where_it_begins_to_freeze(self, at):
        curve = constants("freezing")
        p = curve["mass_fraction"][at]
        coldest = max(curve["celsius"][at], ethanol.COLDEST_C)
        assert ethanol.density_of_mass_fraction(p, coldest) > 900.0
        with pytest.raises(OutsideRange):
            ethanol.density_of_mass_fraction(p, coldest - 0.01)


class TestMixing:
    @given(st.lists(mixtures, min_size=1, max_size=6))
    def test_ethanol_and_mass_stay(self, parts):
        made = ethanol.mixed(parts)
        assert ethanol_g(made) == exactly(sum(map(ethanol_g, parts)))
        masses = (ethanol.mass_g(each.volume_ml, each.abv_percent) for each in parts)
        assert ethanol.mass_g(made.volume_ml, made.abv_percent) == exactly(sum(masses))

    @given(st.lists(mixtures, min_size=1, max_size=6))
    def test_the_strength_lies_between(self, parts):
        strengths = [each.abv_percent for each in parts]
        made = ethanol.mixed(parts).abv_percent
        assert min(strengths) - 1e-9 <= made <= max(strengths) + 1e-9

    @pytest.mark.computed
    @given(volumes, volumes)
    def test_ethanol_and_water_contract(self, spirit, water):
        """At most some 3.7 % of the volume goes (from memory)."""
        made = ethanol.mixed([SpiritMixture(spirit, 100.0), SpiritMixture(water, 0.0)])
        assert made.volume_ml < spirit + water
        assert made.volume_ml > 0.96 * (spirit + water)

    @given(volumes, abvs)
    def test_one_thing_alone_stays_itself(self, volume, abv):
        made = ethanol.mixed([SpiritMixture(volume, abv)])
        assert (made.volume_ml, made.abv_percent) == (exactly(volume), exactly(abv))

    def test_nothing_makes_nothing(self):
        assert ethanol.mixed([]) == SpiritMixture(0.0, 0.0)
        assert ethanol.mixed([SpiritMixture(0.0, 40.0)]) == SpiritMixture(0.0, 0.0)


class TestReduction:
    @given(volumes, st.floats(0.1, 100.0), st.floats(0.01, 1.0))
    def test_ethanol_stays_and_the_water_is_what_mixing_needs(self, volume, abv, share):
        wanted = max(abv * share, 0.1)
        done = ethanol.reduced(volume, abv, wanted)
        assert done.volume_ml * wanted == exactly(volume * abv)
        made = ethanol.mixed([SpiritMixture(volume, abv), SpiritMixture(done.water_ml, 0.0)])
        assert made.volume_ml == pytest.approx(done.volume_ml, rel=1e-8)
        assert made.abv_percent == pytest.approx(wanted, rel=1e-8)

    @given(volumes, st.floats(0.001, 100.0))
    def test_to_its_own_strength_it_takes_nothing(self, volume, abv):
        done = ethanol.reduced(volume, abv, abv)
        assert (done.water_ml, done.volume_ml) == (exactly(0.0), exactly(volume))

    def test_a_spirit_cannot_be_strengthened_with_water(self):
        with pytest.raises(OutsideRange) as refused:
            ethanol.reduced(700.0, 40.0, 43.0)
        assert str(refused.value) == (
            "a wanted strength of 43 % vol cannot be used: it is 0.001 to 40 % vol."
        )


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: ethanol.mass_fraction(101.0),
            "a strength of 101 % vol cannot be used: it is 0 to 100 % vol.",
        ),
        (
            lambda: ethanol.density_kg_m3(40.0, 60.0),
            "a temperature of 60 °C cannot be used: it is -20 to 40 °C.",
        ),
        (
            lambda: ethanol.density_kg_m3(0.0, -1.0),
            "a temperature of -1 °C cannot be used: it is 0 to 40 °C.",
        ),
        (
            lambda: ethanol.density_of_mass_fraction(-0.5),
            "a mass fraction of ethanol of -0.5 cannot be used: it is 0 to 1.",
        ),
        (
            lambda: ethanol.strength_of_density(1040.0),
            "a density of 1040 kg/m³ cannot be used: it is 789.239 to 998.201 kg/m³.",
        ),
        (
            lambda: ethanol.strength_of_density(900.0, -5.0),
            "a temperature of -5 °C cannot be used: it is 0 to 40 °C.",
        ),
        (
            lambda: ethanol.strength_of_reading(0.0, 40.0),
            "a hydrometer reading of 0 % vol cannot be used: it is 3.78525 to 100 % vol.",
        ),
        (
            lambda: ethanol.strength_of_reading(100.0, 10.0),
            "a hydrometer reading of 100 % vol cannot be used: it is 0 to 98.2961 % vol.",
        ),
        (
            lambda: ethanol.of_us_proof(201.0),
            "a proof of 201 degrees cannot be used: it is 0 to 200 degrees.",
        ),
        (
            lambda: ethanol.of_old_uk_proof(176.0),
            "a proof of 176 degrees cannot be used: it is 0 to 175.25 degrees.",
        ),
        (
            lambda: ethanol.mixed([SpiritMixture(-1.0, 40.0)]),
            "a volume of -1 ml cannot be used: it is 0 to 1e+09 ml.",
        ),
    ],
)
def test_what_cannot_be_is_refused_with_its_value_and_range(call, sentence):
    with pytest.raises(OutsideRange) as refused:
        call()
    assert str(refused.value) == sentence


@pytest.mark.parametrize("value", [float("nan"), float("inf"), float("-inf")])
def test_what_is_no_number_is_refused(value):
    for call in (ethanol.density_kg_m3, ethanol.mass_fraction, ethanol.us_proof):
        with pytest.raises(OutsideRange):
            call(value)
