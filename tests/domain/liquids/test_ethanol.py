"""Ethanol and water: there and back again, nothing lost, nothing beyond its range."""

from __future__ import annotations

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from barkeep.domain.liquids import ethanol
from barkeep.domain.liquids.constants import constants
from barkeep.errors import InvalidField, OutsideRange
from tests.walked import walked

abvs = st.floats(0.0, 100.0)
above_freezing = st.floats(0.0, 40.0)
references = st.sampled_from([15.0, ethanol.US_REFERENCE_C, 20.0, 25.0])
volumes = st.floats(0.01, 100_000.0)


def exactly(value):
    return pytest.approx(value, rel=1e-9, abs=1e-9)


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

    @given(volumes, abvs, above_freezing)
    def test_volume_and_mass(self, volume, abv, t):
        mass = ethanol.mass_g(volume, abv, t)
        assert ethanol.volume_ml(mass, abv, t) == exactly(volume)

    @given(abvs)
    def test_proofs(self, abv):
        assert ethanol.read_strength(f"{2.0 * abv:.12f} proof") == exactly(abv)
        british = ethanol.OLD_UK_PROOF_PER_ABV * abv
        assert ethanol.read_strength(f"{british:.12f} UK proof") == exactly(abv)


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
    ],
)
def test_what_cannot_be_is_refused_with_its_value_and_range(call, sentence):
    with pytest.raises(OutsideRange) as refused:
        call()
    assert str(refused.value) == sentence


@pytest.mark.parametrize("value", [float("nan"), float("inf"), float("-inf")])
def test_what_is_no_number_is_refused(value):
    for call in (ethanol.density_kg_m3, ethanol.mass_fraction):
        with pytest.raises(OutsideRange):
            call(value)


class TestStrengthsAsWritten:
    @walked(
        ("text", "abv"),
        [
            ("43", 43.0),
            ("41,2 %", 41.2),
            ("41.2% vol", 41.2),
            ("41.2 % ABV", 41.2),
            (" .5 % ", 0.5),
            ("86 proof", 43.0),
            ("151proof", 75.5),
            ("100 US Proof", 50.0),
            ("175.25 UK proof", 100.0),
            ("70° british proof", 39.943),
            ("0", 0.0),
        ],
    )
    def test_percent_and_both_proofs(self, text, abv):
        assert ethanol.read_strength(text) == pytest.approx(abv, abs=0.001)

    @walked(
        ("text", "said"),
        [
            ("strong", "write % vol, such as 41.2, or proof, such as 86 proof"),
            ("", "write % vol"),
            ("43 g", "write % vol"),
            ("100° proof", "write 100 US proof or 100 UK proof: they are not the same"),
            ("101", "it is 0 to 100 % vol"),
            ("-3", "write % vol"),
            ("201 proof", "it is 0 to 100 % vol"),
            ("176 UK proof", "it is 0 to 100 % vol"),
        ],
    )
    def test_what_is_none_is_refused_in_a_sentence(self, text, said):
        with pytest.raises(InvalidField, match=said) as refused:
            ethanol.read_strength(text, "abv")
        assert refused.value.field == "abv"
