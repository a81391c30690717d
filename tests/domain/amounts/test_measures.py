"""Amounts read and printed, and conversions."""

from __future__ import annotations

import locale
import subprocess
import sys

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.application.own_locale import (
    print_numbers_as_the_user_does,
    print_numbers_for_programs,
)
from barkeep.application.settings import LEAST_DASH_ML, MOST_DASH_ML
from barkeep.domain.amounts.amount import (
    NEAR_ENOUGH,
    Amount,
    amount_at_start,
    parse_amount,
    show_amount,
    show_number,
    show_range,
)
from barkeep.domain.amounts.measures import (
    dashes_from,
    dimension,
    length_cm,
    show_quantity,
    show_volume,
    to_quantity,
)
from barkeep.domain.amounts.units import (
    DASH_ML,
    UNITS,
    US_UNITS,
    BarUnits,
    registry,
    unit_named,
    unit_words,
)
from barkeep.domain.amounts.units import TABLE as DEFINED
from barkeep.errors import AmountError, NegativeAmount, UserError, WrongDimension
from tests.outside.tables import rows
from tests.walked import walked

IMPERIAL = BarUnits("imp_oz")


@walked(
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
        ("2 lb", Amount(2, None, "lb")),
        ("1/2 imperial pint", Amount(0.5, None, "imp_pint")),
        ("1 UK gill", Amount(1, None, "imp_gill")),
        ("0 ml", Amount(0, None, "ml")),
    ],
)
def test_amounts_are_read_as_people_write_them(text, amount):
    assert parse_amount(text) == amount
    assert parse_amount(f"  {text} ") == amount


@walked(
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


@given(st.floats(0.01, 5000), st.sampled_from(sorted(UNITS)))
@settings(max_examples=2000)
def test_what_is_printed_reads_back_and_is_printed_the_same(value, unit):
    shown = show_amount(value, unit)
    again = parse_amount(shown)
    assert again.unit == unit
    assert again.value == pytest.approx(value, rel=NEAR_ENOUGH + 0.005)
    assert show_amount(again.value, unit) == shown


@given(st.integers(0, 50), st.sampled_from([0, 1 / 8, 1 / 4, 1 / 3, 1 / 2, 5 / 8, 2 / 3, 7 / 8]))
def test_eighths_and_thirds_read_back_exactly(whole, part):
    value = whole + part
    assert parse_amount(show_amount(value, "oz")).value == pytest.approx(value, rel=1e-12)


@walked(
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
        (1.004, "dash", "1 dash"),
        (0.4926, "oz", "½ oz"),
        (1.5, "imp_pint", "1 ½ imp pints"),
        (2, "lb", "2 lb"),
        (4.5, "in", "4 ½ in"),
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


BASES = {"volume": "ml", "mass": "g", "count": "each", "part": "part", "length": "cm"}


@walked("unit", sorted(UNITS))
def test_the_table_is_what_pint_reads_in_the_file(unit):
    pints, known = registry(), DEFINED[unit]
    for word in known.words:
        assert pints.parse_units(word.replace(" ", "_")) == pints.parse_units(unit), word
    if known.dimension == "loose":
        assert dict(pints.get_dimensionality(pints.parse_units(unit))) == {f"[{unit}]": 1}
    else:
        in_base = pints.Quantity(1.0, unit).to(BASES[known.dimension])
        assert known.factor == pytest.approx(float(in_base.magnitude), rel=1e-12)


def test_the_table_leaves_out_no_line_of_the_file():
    lines = [each.partition("#")[0] for each in resource_files.read_text("units.txt").splitlines()]
    defined = [each for each in lines if " = " in each and "- = " not in each]
    assert len(defined) == len(DEFINED)


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
    assert loose == {"leaf", "slice", "wedge", "wheel", "peel", "twist", "handful", "grating"} | {
        *("bunch", "scoop", "chunk"),
    }


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


def test_converting_does_not_import_pint():
    code = (
        "import sys; from barkeep.domain.amounts.measures import parse_amount, to_quantity; "
        "to_quantity(parse_amount('10 oz'), 'ml'); to_quantity(parse_amount('2 cm3'), 'ml'); "
        "print('pint' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


class TestWhatPintReads:
    @walked(
        ("text", "unit", "quantity"),
        [
            ("2 hl", "ml", 200_000.0),
            ("0,5 hectolitres", "ml", 50_000.0),
            ("1.5 Decaliters", "ml", 15_000.0),
            ("3 dag", "g", 30.0),
            ("250 mg", "g", 0.25),
            ("500 milligrams", "g", 0.5),
            ("20 centigrams", "g", 0.2),
            ("20 mlitre", "ml", 20.0),  # half abbreviated, and one of the table all the same
            ("3 clitres", "ml", 30.0),
            ("2 kgram", "g", 2000.0),
            ("30 cm3", "ml", 30.0),
            ("30 cm³", "ml", 30.0),
            ("30 cm**3", "ml", 30.0),
            ("30 CM^3", "ml", 30.0),
            ("0.3 dm³", "ml", 300.0),
            ("45 cc", "ml", 45.0),
        ],
    )
    def test_prefixes_and_cubes(self, text, unit, quantity):
        assert to_quantity(parse_amount(text), unit) == pytest.approx(quantity, rel=1e-12)

    def test_they_are_printed_in_full_and_read_back(self):
        amount = parse_amount("2 hl")
        assert show_amount(amount.value, amount.unit) == "2 hectolitres"
        assert parse_amount(show_amount(amount.value, amount.unit)) == amount

    def test_the_wrong_kind_of_them_is_refused_too(self):
        with pytest.raises(WrongDimension, match="“3 decagrams” is a weight; a volume"):
            to_quantity(parse_amount("3 dag"), "ml")
        with pytest.raises(WrongDimension, match="“2 hectolitres” is a volume; a weight"):
            to_quantity(parse_amount("2 hl"), "g")

    @pytest.mark.parametrize("text", ["2 kilodash", "3 millipints", "1 hectolime", "2 cm4", "1 m3"])
    def test_nothing_else_takes_a_prefix_or_a_power(self, text):
        with pytest.raises(AmountError, match="a number and a unit"):
            parse_amount(text)

    def test_they_stand_in_front_of_a_name(self):
        assert amount_at_start("3 dag sugar").unit == "decagram"
        found = amount_at_start("30 cm3 gin")
        assert (found.unit, "30 cm3 gin"[found.end :]) == ("ml", " gin")


class TestWhatABarMeans:
    @pytest.mark.parametrize("word", ["oz", "oz.", "fl oz", "Fl. oz.", "ounces", "fluid ounce"])
    def test_an_ounce_of_neither_kind_is_the_bars(self, word):
        assert parse_amount(f"2 {word}").unit == "oz"
        assert parse_amount(f"2 {word}", IMPERIAL).unit == "imp_oz"

    @pytest.mark.parametrize("units", [US_UNITS, IMPERIAL])
    def test_an_ounce_that_says_which_it_is_is_that_one(self, units):
        for word in ("US oz", "us fl oz", "US fluid ounces"):
            assert parse_amount(f"2 {word}", units).unit == "oz"
        for word in ("imp oz", "imp. fl. oz.", "Imperial fluid ounces", "UK oz"):
            assert parse_amount(f"2 {word}", units).unit == "imp_oz"

    def test_only_the_bars_own_ounce_is_printed_without_saying_which(self):
        assert show_amount(1.5, "oz") == "1 ½ oz"
        assert show_amount(1.5, "imp_oz") == "1 ½ imp oz"
        assert show_amount(1.5, "imp_oz", IMPERIAL) == "1 ½ oz"
        assert show_range(1, 1.5, "oz", IMPERIAL) == "1–1 ½ US oz"

    @given(st.floats(0.01, 5000), st.sampled_from(["oz", "imp_oz"]), st.sampled_from([0, 1]))
    def test_an_ounce_reads_back_as_itself_at_its_bar(self, value, unit, which):
        units = (US_UNITS, IMPERIAL)[which]
        assert parse_amount(show_amount(value, unit, units), units).unit == unit
        assert parse_amount(f"1 {unit_words(unit)}", units).unit == unit

    def test_a_dash_comes_to_what_the_bar_says(self):
        dashes = Amount(2, 3, "dash")
        assert to_quantity(dashes, "ml") == 1.6
        assert to_quantity(dashes, "ml", BarUnits(dash_ml=0.3)) == 0.6
        assert to_quantity(Amount(2, None, "drop"), "ml", BarUnits(dash_ml=0.3)) == 0.1

    def test_the_dash_of_no_bar_is_the_one_in_the_table(self):
        assert registry().Quantity(1.0, "dash").to("ml").magnitude == DASH_ML

    def test_dashes_of_one_bottle_are_more_of_another(self):
        assert dashes_from(None, 2, 0.8) == 2
        assert dashes_from(0.4, 2, 0.8) == 4
        assert dashes_from(0.3, 2, 0.8) == pytest.approx(16 / 3)

    @given(st.floats(0.05, 2), st.floats(0.05, 2), st.floats(0.1, 20))
    def test_as_much_is_poured_from_either_bottle(self, bottle_ml, bar_ml, dashes):
        poured_ml = dashes_from(bottle_ml, dashes, bar_ml) * bottle_ml
        assert poured_ml == pytest.approx(dashes * bar_ml)


class TestLengths:
    @pytest.mark.parametrize(
        "text", ["4.5 in", "4.5in.", "4 1/2 inches", '4½"', "4,5″", "4.5 Inch"]
    )
    def test_inches_are_understood_at_the_end(self, text):
        assert parse_amount(text) == Amount(4.5, None, "in")
        assert length_cm(parse_amount(text)) == 11.43

    @pytest.mark.parametrize("text", ["1 in the glass", '1 " of peel', "1 inch ginger"])
    def test_they_are_not_where_the_text_goes_on(self, text):
        assert amount_at_start(text).unit is None

    def test_other_lengths_and_what_is_none(self):
        assert length_cm(parse_amount("11.5 cm")) == 11.5
        assert length_cm(parse_amount("115 mm")) == 11.5
        with pytest.raises(WrongDimension, match="“2 oz” is a volume; a length such as"):
            length_cm(parse_amount("2 oz"))


class TestDecimalMarks:
    @pytest.fixture
    def comma(self, monkeypatch):
        """A locale that writes a decimal comma."""
        monkeypatch.setattr(locale, "localeconv", lambda: {"decimal_point": ","})

    def test_decimals_are_printed_with_the_users_mark(self, comma):
        assert show_amount(22.5, "ml") == "22,5 ml"
        assert show_quantity(12.34, "g") == "12,3 g"
        assert show_range(22.5, 30, "ml") == "22,5–30 ml"
        assert show_amount(1.5, "oz") == "1 ½ oz"
        assert show_number(0.25, fractions=False, mark=".") == "0.25"

    def test_a_mark_that_is_not_read_is_not_printed(self, monkeypatch):
        monkeypatch.setattr(locale, "localeconv", lambda: {"decimal_point": "٫"})
        assert show_amount(22.5, "ml") == "22.5 ml"

    def test_the_locale_is_taken_up_and_an_unknown_one_leaves_the_point(self, monkeypatch):
        before = locale.setlocale(locale.LC_NUMERIC)
        try:
            monkeypatch.setenv("LC_ALL", "no_SUCH")
            print_numbers_as_the_user_does()
            assert locale.setlocale(locale.LC_NUMERIC) == "C"
            monkeypatch.setenv("LC_ALL", "C.UTF-8")
            print_numbers_as_the_user_does()
            assert locale.setlocale(locale.LC_NUMERIC) == "C.UTF-8"
            print_numbers_for_programs()
            assert locale.setlocale(locale.LC_NUMERIC) == "C"
        finally:
            locale.setlocale(locale.LC_NUMERIC, before)


CUSTOMARY = {
    # name in the table of customary measures -> barkeep's unit
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
TABLE = {row["name"]: row for row in rows("customary_measures")}


@walked("name", CUSTOMARY)
def test_each_customary_measure_is_the_choice_of_the_table(name):
    """These have no standard: what is held is that the choice is one, not that it is right."""
    volume_ml = to_quantity(Amount(1, None, CUSTOMARY[name]), "ml")
    assert volume_ml == pytest.approx(float(TABLE[name]["mL_default"]), rel=1e-6)


def test_barkeeps_dashers_lie_within_what_was_measured():
    low, high = map(float, TABLE["dash (bitters bottle)"]["mL_range"].split("-"))
    assert low <= DASH_ML <= high
    assert float(TABLE["dash (Japanese-style dasher)"]["mL_range"].split("-")[0]) > LEAST_DASH_ML
    assert float(TABLE["dash (1933 manual)"]["mL_default"]) < MOST_DASH_ML
