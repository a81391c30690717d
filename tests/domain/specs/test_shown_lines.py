"""The lines of a spec as the bar likes to see them, and what a dash comes to in them."""

from __future__ import annotations

import locale
from dataclasses import replace

import pytest

from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.pouring.words import in_dashes_of_bottle
from barkeep.domain.spec_text.text import read_specs, write_spec
from barkeep.domain.specs.quantities import in_dashes_of
from barkeep.domain.specs.shown_lines import shown_lines
from barkeep.domain.specs.spec import Line
from tests.walked import walked
from tests.worlds import snapshot

IMPERIAL = BarUnits("imp_oz")
TREE = FamilyTree(
    {
        each.key: each
        for each in (
            Ingredient("gin", "Old tom gin", aliases=("gin",)),
            Ingredient("bitters", "Orange bitters"),
            Ingredient("soda", "Soda water"),
            Ingredient("mint", "Mint leaf", unit="each", aliases=("mint leaves",)),
            Ingredient("honey", "Honey", unit="g"),
        )
    }
)
BRANCH = """\
Branch Line
2 oz gin
1 jigger soda water, cold
1 tsp gin (optional)
2-3 dashes orange bitters
1 barspoon gin
8 mint leaves
Top with soda water
"""


def spec(text=BRANCH, units=US_UNITS):
    """The one spec of a text."""
    (read,) = read_specs(text, TREE, units)
    assert read.problems == ()
    return read.spec


def texts(style, units=US_UNITS, of=None):
    """The lines as they are shown."""
    return [line.text for line in shown_lines(of or spec(), TREE, style, units)]


def test_as_written_is_as_written():
    lines = shown_lines(spec(), TREE, "as_written")
    assert [line.text for line in lines] == BRANCH.splitlines()[1:]
    assert not any(line.written for line in lines)
    assert [line.amount for line in lines] == [
        *("2 oz", "1 jigger", "1 tsp", "2–3 dashes", "1 barspoon", "8", "")
    ]


def test_in_millilitres_what_is_poured_changes_and_the_rest_stays():
    lines = shown_lines(spec(), TREE, "ml")
    assert [line.text for line in lines] == [
        "60 ml gin",
        "45 ml soda water, cold",
        "5 ml gin (optional)",
        "2-3 dashes orange bitters",
        "5 ml gin",
        "8 mint leaves",
        "Top with soda water",
    ]
    assert [line.written for line in lines] == [
        *("2 oz gin", "1 jigger soda water, cold", "1 tsp gin (optional)", ""),
        *("1 barspoon gin", "", ""),
    ]


FRACTIONS = """
1 1/2 oz gin | 1 ½ oz gin
1½ oz gin | 1 ½ oz gin
1 ½ oz gin | 1 ½ oz gin
3/4 oz gin | ¾ oz gin
1/2 mint leaf | ½ mint leaf
1/2oz gin | ½ oz gin
1-1 1/2 oz gin | 1–1 ½ oz gin
1-1/2 oz gin | 1 ½ oz gin
1/16 oz gin | 1/16 oz gin
1/2 l soda water | ½ l soda water
Garnish: 1/2 mint leaf | Garnish: ½ mint leaf
2 oz gin (1/2 of it later) | 2 oz gin (1/2 of it later)
1.5 oz gin | 1.5 oz gin
2-3 dashes orange bitters | 2-3 dashes orange bitters
half an oz gin | half an oz gin
"""


@walked("written", FRACTIONS.strip().splitlines())
def test_as_it_is_written_a_fraction_is_shown_as_on_every_page(written):
    text, wanted = written.split(" | ")
    of = spec(f"Branch Line\n{text}\n2 oz gin")
    assert texts("as_written", of=of)[0] == wanted
    assert write_spec(of, TREE).splitlines()[1] == text  # what is edited and exported stays


def test_in_ounces_a_spoon_stays_a_spoon():
    assert texts("oz")[:3] == ["2 oz gin", "1 ½ oz soda water, cold", "1 tsp gin (optional)"]
    assert texts("oz", of=spec("Metric\n60 ml gin\n2.5 ml gin")) == [*("2 oz gin", "½ tsp gin")]


def test_in_parts_what_is_poured_is_a_ratio():
    assert texts("parts")[:2] == ["1 part gin", "¾ part soda water, cold"]
    assert texts("parts")[2:] == texts("as_written")[2:]


def test_a_line_in_the_wished_unit_is_not_rounded():
    odd = spec("Odd\n22 ml gin\n1.3 oz gin")
    assert texts("ml", of=odd) == ["22 ml gin", "37.5 ml gin"]
    assert texts("oz", of=odd) == ["¾ oz gin", "1.3 oz gin"]


@pytest.mark.parametrize(
    ("written", "style", "shown"),
    [
        ("1-2 oz gin", "ml", "30–60 ml gin"),
        ("1-2 ml gin", "oz", "1–3 dashes gin"),
        ("5-15 ml gin", "oz", "1 tsp to ½ oz gin"),
        ("59-60 ml gin", "oz", "2 oz gin"),
        ("1 part gin", "ml", "30 ml gin"),
    ],
)
def test_ranges_and_parts_are_converted_too(written, style, shown):
    assert texts(style, of=spec(f"Odd\n{written}")) == [shown]


class TestOunces:
    def test_an_ounce_keeps_its_volume_whatever_the_bar_says_later(self):
        us, imperial = spec(units=US_UNITS).lines[0], spec(units=IMPERIAL).lines[0]
        assert (us.unit, us.quantity) == ("oz", pytest.approx(59.147, abs=1e-3))
        assert (imperial.unit, imperial.quantity) == ("imp_oz", pytest.approx(56.826, abs=1e-3))

    def test_an_ounce_of_the_other_kind_says_so(self):
        assert texts("as_written", IMPERIAL)[0] == "2 US oz gin"
        imperial = spec(units=IMPERIAL)
        assert texts("as_written", IMPERIAL, imperial)[0] == "2 oz gin"
        assert texts("as_written", US_UNITS, imperial)[0] == "2 imp oz gin"
        shown = shown_lines(imperial, TREE, "as_written", US_UNITS)[0]
        assert (shown.amount, shown.written) == ("2 imp oz", "2 imp oz gin")

    @pytest.mark.parametrize(
        ("text", "said"),
        [
            ("2 oz gin", "2 imp oz gin"),
            ("1 1/2 fl. oz. gin, cold", "1 1/2 imp oz gin, cold"),
            ("2 imperial ounces gin", "2 imperial ounces gin"),
        ],
    )
    def test_what_is_written_is_not_taken_for_this_bars_ounces(self, text, said):
        shown = shown_lines(spec(f"Fog\n{text}", IMPERIAL), TREE, "oz", US_UNITS)[0]
        assert shown.written == said

    def test_it_is_converted_where_ounces_are_wished(self):
        assert texts("oz", IMPERIAL)[0] == "2 ⅛ oz gin"  # 59.1 ml are 2.08
        assert texts("oz", IMPERIAL, spec("Large\n16 oz gin")) == ["16 ½ oz gin"]

    @pytest.mark.parametrize("units", [US_UNITS, IMPERIAL])
    @pytest.mark.parametrize("read_at", [US_UNITS, IMPERIAL])
    def test_a_spec_written_out_reads_back_at_its_bar(self, units, read_at):
        before = spec(units=read_at)
        again = spec(write_spec(before, TREE, units), units)
        figures = [(line.amount, line.unit, line.quantity) for line in again.lines]
        assert figures == [(line.amount, line.unit, line.quantity) for line in before.lines]

    def test_its_own_words_are_kept_where_they_still_say_it(self):
        assert write_spec(spec(units=IMPERIAL), TREE, IMPERIAL) == BRANCH
        assert "\n2 imp oz gin\n" in write_spec(spec(units=IMPERIAL), TREE)

    def test_what_is_written_anew_has_a_point_wherever_it_is_read(self, monkeypatch):
        monkeypatch.setattr(locale, "localeconv", lambda: {"decimal_point": ","})
        line = Line("some gin", "gin", 22.4, None, "ml", 22.4)
        text = write_spec(replace(spec(), lines=(line,)), TREE)
        assert "22.4 ml gin" in text
        assert texts("cl", of=replace(spec(), lines=(line,))) == ["2,25 cl gin"]


class TestDashes:
    JAPANESE = BarUnits(dash_ml=0.3)

    def test_a_line_is_read_in_the_bars_dashes(self):
        assert spec().lines[3].quantity == 1.6
        assert spec(units=self.JAPANESE).lines[3].quantity == 0.6

    def test_all_specs_have_the_bars_dashes_however_they_were_written(self):
        own, classic = spec(), replace(spec(), name="Classic", classic=True)
        knowledge = Knowledge(TREE, classics=(classic,))
        bar = snapshot(knowledge, specs=[own])
        assert [each.lines[3].quantity for each in bar.all_specs] == [1.6, 1.6]
        assert all(each is one for each, one in zip(bar.all_specs, (own, classic), strict=True))
        japanese = replace(bar, settings=Settings(dash_ml=0.3))
        assert [each.lines[3].quantity for each in japanese.all_specs] == [0.6, 0.6]
        assert [each.lines[0] for each in japanese.all_specs] == [own.lines[0]] * 2

    def test_what_is_known_of_a_spec_holds_after_a_change_elsewhere(self):
        bar = snapshot(Knowledge(TREE), specs=[spec()])
        japanese = replace(bar, settings=Settings(dash_ml=0.3))
        other = replace(japanese, settings=Settings("Another name", dash_ml=0.3))
        assert japanese.all_specs[0] is other.all_specs[0]

    def test_what_is_weighed_changes_as_well(self):
        sweet = spec("Sweet\n2 dashes honey")
        (line,) = in_dashes_of(self.JAPANESE, sweet, TREE).lines
        assert line.quantity == pytest.approx(sweet.lines[0].quantity * 0.3 / 0.8)

    def test_a_line_without_an_amount_stays(self):
        assert in_dashes_of(self.JAPANESE, spec("Fizz\nTop with soda water"), TREE)


def dasher(dash_ml):
    """A bottle whose dash is so much."""
    product = Product("Orange bitters", "Hollow Lamp", "bitters", 100.0, id=1)
    return Bottle(1, product, Level(80.0, "open"), dash_ml=dash_ml)


@walked(
    ("written", "dash_ml", "ratio", "said"),
    [
        ("2 dashes", 0.3, 1.0, "Pour 5 dashes from this dasher instead of 2."),
        ("2 dashes", 0.4, 1.0, "Pour 4 dashes from this dasher instead of 2."),
        ("3 dashes", 1.6, 1.0, "Pour 2 dashes from this dasher instead of 3."),
        ("1 dash", 2.0, 1.0, ""),
        ("2 dashes", 0.8, 1.0, ""),
        ("2 dashes", None, 1.0, ""),
        ("2 dashes", 0.4, 0.5, ""),
        ("2-3 dashes", 0.3, 1.0, "Pour 5–8 dashes from this dasher instead of 2–3."),
        ("2 drops", 0.3, 1.0, ""),
    ],
)
def test_a_dasher_that_is_not_the_bars_says_how_many_dashes(written, dash_ml, ratio, said):
    amount = parse_amount(written)
    line = Line(written, "bitters", amount.value, amount.high, amount.unit, 1.6)
    assert in_dashes_of_bottle(line, dasher(dash_ml), ratio, US_UNITS) == said
    assert in_dashes_of_bottle(line, None, ratio, US_UNITS) == ""
