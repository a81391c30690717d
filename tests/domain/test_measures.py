"""Amounts read and printed, conversions, and levels."""

from __future__ import annotations

import csv
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.domain.amounts import FRACTIONAL, NEAR_ENOUGH, parse_amount, show_amount, show_range
from barkeep.domain.inventory import TENTHS_SIGMA, VOLUME_SIGMA_ML
from barkeep.domain.levels import MeasuredLevel, parse_level
from barkeep.domain.measures import (
    Amount,
    dimension,
    exported_factors,
    registry,
    show_quantity,
    show_volume,
    to_quantity,
    unit_named,
)
from barkeep.errors import (
    AmountError,
    LevelAboveSize,
    NegativeAmount,
    UserError,
    WrongDimension,
)

UNITS = sorted(FRACTIONAL | {"ml", "cl", "l", "g", "kg"})


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("2 oz", Amount(2, None, "oz")),
        ("60ml", Amount(60, None, "ml")),
        ("6 cl", Amount(6, None, "cl")),
        ("¾ oz", Amount(0.75, None, "oz")),
        ("1 1/2 oz", Amount(1.5, None, "oz")),
        ("1-1/2 oz", Amount(1.5, None, "oz")),
        ("1-½ oz", Amount(1.5, None, "oz")),
        ("1-1½ oz", Amount(1, 1.5, "oz")),
        ("1½ oz", Amount(1.5, None, "oz")),
        ("1 ½ oz", Amount(1.5, None, "oz")),
        ("1 1⁄2 oz", Amount(1.5, None, "oz")),
        (".75 oz", Amount(0.75, None, "oz")),
        ("3/4 oz", Amount(0.75, None, "oz")),
        ("⅓ oz", Amount(1 / 3, None, "oz")),
        ("1,5 cl", Amount(1.5, None, "cl")),
        ("0,125 l", Amount(0.125, None, "l")),
        ("2-3 dashes", Amount(2, 3, "dash")),
        ("2 – 3 dashes", Amount(2, 3, "dash")),
        ("2 to 3 dashes", Amount(2, 3, "dash")),
        ("8-10 leaves", Amount(8, 10, "leaf")),
        ("1", Amount(1, None, "each")),
        ("½", Amount(0.5, None, "each")),
        ("a splash", Amount(1, None, "splash")),
        ("2 fl. oz.", Amount(2, None, "oz")),
        ("2 ounces", Amount(2, None, "oz")),
        ("1 imp. oz", Amount(1, None, "imp_oz")),
        ("2 tsp.", Amount(2, None, "tsp")),
        ("4 Teaspoons", Amount(4, None, "tsp")),
        ("1 Table Spoon", Amount(1, None, "tbsp")),
        ("2 Bar Spoons", Amount(2, None, "barspoon")),
        ("3 pieces", Amount(3, None, "piece")),
        ("1 pony", Amount(1, None, "pony")),
        ("2 ponies", Amount(2, None, "pony")),
        ("250 grams", Amount(250, None, "g")),
        ("0 ml", Amount(0, None, "ml")),
    ],
)
def test_amounts_are_read_as_people_write_them(text, amount):
    assert parse_amount(text) == amount
    assert parse_amount(f"  {text} ") == amount


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "a number and a unit"),
        ("some", "a number and a unit"),
        ("nan", "a number and a unit"),
        ("inf ml", "a number and a unit"),
        ("1e5 ml", "a number and a unit"),
        ("12 elephants", "a number and a unit"),
        ("1 0z", "a number and a unit"),
        ("1/0 oz", "divided by zero"),
        ("3-2 oz", "from the smaller number to the larger"),
        ("2-2 oz", "from the smaller number to the larger"),
        ("1,000 ml", "1000 for thousands or 1.000"),
        ("9999999 ml", "no amount here is above"),
    ],
)
def test_what_is_no_amount_is_refused_with_what_was_expected(text, said):
    with pytest.raises(AmountError, match=said):
        parse_amount(text)


def test_less_than_nothing_is_refused():
    for text in ("-5 ml", "−5 ml", "- 1/2 oz"):
        with pytest.raises(NegativeAmount):
            parse_amount(text)


@given(st.text(max_size=40))
def test_any_text_is_an_amount_or_a_sentence(text):
    try:
        amount = parse_amount(text)
    except UserError as error:
        assert str(error).endswith(".")
    else:
        assert 0 <= amount.value <= 1e6
        assert amount.high is None or amount.high > amount.value


@given(st.floats(0.01, 5000), st.sampled_from(UNITS))
def test_what_is_printed_reads_back(value, unit):
    again = parse_amount(show_amount(value, unit))
    assert again.unit == unit
    assert again.value == pytest.approx(value, rel=NEAR_ENOUGH)


@given(st.integers(0, 50), st.sampled_from([0, 1 / 8, 1 / 4, 1 / 3, 1 / 2, 5 / 8, 2 / 3, 7 / 8]))
def test_eighths_and_thirds_read_back_exactly(whole, part):
    value = whole + part
    assert parse_amount(show_amount(value, "oz")).value == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("value", "unit", "shown"),
    [
        (1.5, "oz", "1 ½ oz"),
        (0.333, "oz", "⅓ oz"),
        (0.75, "oz", "¾ oz"),
        (1.99, "oz", "2 oz"),
        (1.8, "oz", "1.8 oz"),
        (22.5, "ml", "22.5 ml"),
        (1234.5, "ml", "1234 ml"),
        (0.05, "ml", "0.05 ml"),
        (2, "dash", "2 dashes"),
        (1, "dash", "1 dash"),
        (2.5, "leaf", "2 ½ leaves"),
        (1, "imp_oz", "1 imp oz"),
        (3, "each", "3"),
        (0, "oz", "0 oz"),
    ],
)
def test_amounts_are_printed_as_a_bartender_writes_them(value, unit, shown):
    assert show_amount(value, unit) == shown


def test_ranges_and_quantities_are_printed():
    assert show_range(2, 3, "dash") == "2–3 dashes"
    assert show_range(0.5, None, "oz") == "½ oz"
    assert show_volume(314.6) == "315 ml"
    assert show_quantity(2.5, "each") == "2 ½"
    assert show_quantity(12.34, "g") == "12.3 g"


def test_units_are_converted():
    assert to_quantity(parse_amount("2 oz"), "ml") == pytest.approx(59.147059125)
    assert to_quantity(parse_amount("6 cl"), "ml") == 60
    assert to_quantity(parse_amount("0.1 l"), "ml") == 100
    assert to_quantity(parse_amount("2-3 dashes"), "ml") == pytest.approx(1.6)
    assert to_quantity(parse_amount("1/4 kg"), "g") == 250
    assert to_quantity(parse_amount("2 sprigs"), "each") == 2


@pytest.mark.parametrize(
    ("text", "unit", "said"),
    [
        ("30 g", "ml", "“30 g” is a weight; a volume"),
        ("2 oz", "g", "“2 oz” is a volume; a weight"),
        ("1 part", "ml", "is a share of the drink"),
        ("3", "ml", "is a number of pieces"),
        ("8 leaves", "each", "a piece of no fixed size"),
        ("11.5 cm", "ml", "is a length"),
    ],
)
def test_the_wrong_kind_of_amount_is_refused(text, unit, said):
    with pytest.raises(WrongDimension, match=said):
        to_quantity(parse_amount(text), unit)


CUSTOMARY = {
    # name in the table of customary measures -> barkeep's unit
    "US fluid ounce": "oz",
    "UK imperial fluid ounce": "imp_oz",
    "centilitre": "cl",
    "US teaspoon": "tsp",
    "US tablespoon": "tbsp",
    "US cup": "cup",
    "US gill": "gill",
    "US pint": "pint",
    "pony": "pony",
    "jigger": "jigger",
    "wineglass (old manuals)": "wineglass",
    "shot (US)": "shot",
    "dash (bitters bottle)": "dash",
    "barspoon": "barspoon",
    "drop": "drop",
    "splash": "splash",
    "float": "float",
    "rinse": "rinse",
}


def test_each_customary_measure_has_the_value_of_the_table(customary):
    for name, unit in CUSTOMARY.items():
        value = float(customary[name]["mL_default"])
        assert to_quantity(Amount(1, None, unit), "ml") == pytest.approx(value, rel=1e-6), name


def test_what_is_shipped_is_what_pint_makes_of_the_units():
    assert resource_files.read_text("unit_factors.toml") == exported_factors()


def test_pint_agrees_on_every_unit():
    units = registry()
    for unit in UNITS:
        if dimension(unit) == "volume":
            expected = units.Quantity(3.0, unit).to("ml").magnitude
            assert to_quantity(Amount(3.0, None, unit), "ml") == pytest.approx(expected, rel=1e-11)
    with pytest.raises(Exception, match="Cannot convert"):
        units.Quantity(1.0, "part").to("ml")


def test_each_unit_that_can_be_written_is_defined_or_has_no_fixed_size():
    loose = {unit for unit in UNITS if dimension(unit) == "loose"}
    assert loose == {"leaf", "slice", "wedge", "wheel", "peel", "twist", "handful"}


def test_each_defined_unit_names_its_basis():
    lines = resource_files.read_text("units.txt").splitlines()
    customary = lines[lines.index(next(each for each in lines if "customary volumes" in each)) :]
    for line in customary:
        if " * ml = " in line:
            assert "#" in line, line


def test_a_unit_word_is_known_in_every_form():
    for word in ("Ounces", "oz", "fl oz", "FLUID OUNCE", "oz."):
        assert unit_named(word) == "oz"
    assert unit_named("elephant") is None


class TestLevels:
    @pytest.mark.parametrize(
        ("text", "amount"),
        [
            *(("0.4", 280), ("0,4", 280), ("4/10", 280), ("40 %", 280), ("40%", 280)),
            *(("½", 350), ("1", 700), ("0", 0)),
        ],
    )
    def test_a_share_of_the_bottle(self, text, amount):
        level = parse_level(text, 700, "ml", "the gin")
        assert level == MeasuredLevel(pytest.approx(amount), "tenths", TENTHS_SIGMA * 700)

    @pytest.mark.parametrize(
        ("text", "amount"),
        [("315 ml", 315), ("31 cl", 310), ("10 oz", 295.735295625), ("0.7 l", 700)],
    )
    def test_a_volume(self, text, amount):
        level = parse_level(text, 700, "ml", "the gin")
        assert level == MeasuredLevel(pytest.approx(amount), "volume", VOLUME_SIGMA_ML)

    @pytest.mark.parametrize(
        ("text", "amount", "method"),
        [("4", 4, "volume"), ("4 each", 4, "volume"), ("1", 1, "volume"), ("0", 0, "volume")],
    )
    def test_pieces_are_counted(self, text, amount, method):
        level = parse_level(text, 12, "each", "the limes")
        assert (level.amount, level.method, level.sigma) == (amount, method, 0)

    @pytest.mark.parametrize(("text", "amount"), [("250 g", 250), ("250", 250), ("0.3 kg", 300)])
    def test_a_weight_of_what_is_weighed(self, text, amount):
        level = parse_level(text, 500, "g", "the sugar")
        assert (level.amount, level.method) == (amount, "weight")
        assert parse_level("0.5", 500, "g", "the sugar").method == "tenths"

    @pytest.mark.parametrize(
        "text", ["1.2", "315", "nan", "inf", "", "full", "0.4 of it", "2-3 oz"]
    )
    def test_what_is_no_level_is_refused(self, text):
        with pytest.raises(AmountError):
            parse_level(text, 700, "ml", "the gin")

    @pytest.mark.parametrize("text", ["812 g", "11.5 cm", "1 part", "4 each"])
    def test_the_wrong_kind_of_level_is_refused(self, text):
        with pytest.raises(WrongDimension, match=f"“{text}” is a .*; a share of the bottle"):
            parse_level(text, 700, "ml", "the gin")

    def test_less_than_nothing_and_more_than_the_size_are_refused(self):
        for text in ("-0.2", "-5 ml"):
            with pytest.raises(NegativeAmount):
                parse_level(text, 700, "ml", "the gin")
        for text in ("800 ml", "110 %", "1 l"):
            with pytest.raises(LevelAboveSize, match="more than the gin holds"):
                parse_level(text, 700, "ml", "the gin")
        with pytest.raises(LevelAboveSize):
            parse_level("13", 12, "each", "the limes")

    @given(st.text(max_size=20), st.sampled_from(["ml", "g", "each"]))
    def test_any_text_is_a_level_or_a_sentence(self, text, unit):
        try:
            level = parse_level(text, 700.0, unit, "the gin")
        except UserError as error:
            assert str(error).endswith(".")
        else:
            assert 0 <= level.amount <= 700

    @given(st.floats(0.001, 700))
    def test_a_printed_volume_reads_back_as_a_level(self, volume):
        level = parse_level(show_volume(volume), 705.0, "ml", "the gin")
        assert level.amount == pytest.approx(volume, rel=NEAR_ENOUGH, abs=1e-9)


def test_converting_does_not_import_pint():
    code = (
        "import sys; from barkeep.domain.measures import parse_level; "
        "parse_level('10 oz', 700, 'ml', 'x'); print('pint' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


@pytest.fixture(scope="module")
def customary():
    """The table of customary measures, by name."""
    lines = CUSTOMARY_TABLE.strip().splitlines()
    return {row["name"]: row for row in csv.DictReader(lines)}


# NIST Handbook 44, App. C and the UK Weights and Measures gallon for the exact ones; for the others
# bar-vademecum.eu, a 1933 manual and common practice, as said beside each unit.
CUSTOMARY_TABLE = """
name,mL_default
US fluid ounce,29.57353
UK imperial fluid ounce,28.413062
centilitre,10
US teaspoon,4.928922
US tablespoon,14.786765
US cup,236.588236
US gill,118.294118
US pint,473.176473
pony,29.57353
jigger,44.360294
wineglass (old manuals),59.147059
shot (US),44.360294
dash (bitters bottle),0.8
barspoon,5
drop,0.05
splash,7.5
float,15
rinse,5
"""
