"""Analyses: what is conserved, what scales, and drinks worked out by hand."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.amounts.amount import Amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.contents import Pour, pours_for
from barkeep.domain.liquids.content import ethanol_g
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Line, Spec
from tests.walked import walked
from tests.worlds import TODAY

BARE = Snapshot(shipped(), TODAY)
TREE = BARE.knowledge.tree
POURED = ("gin", "bourbon", "triple-sec", "sweet-vermouth", "lime-juice", "simple-syrup", "cream")
TECHNIQUES = ("shaken", "stirred", "built", "thrown", "swizzled", "blended", "hot")


def classic(name: str) -> Spec:
    return next(each for each in BARE.knowledge.classics if each.name == name)


def written(text: str) -> Spec:
    (read,) = read_specs(text, TREE)
    assert read.spec is not None, read.problems
    return read.spec


def bottle(ingredient: str, number: int = 1, *, opened: date | None = None, **label) -> Bottle:
    product = Product(f"bottle {number}", "Hollow Lamp", ingredient, 700.0, id=number, **label)
    return Bottle(number, product, Level(500.0, "open", opened))


def bar(*bottles: Bottle, **chosen) -> Snapshot:
    products = tuple(each.product for each in bottles)
    return Snapshot(BARE.knowledge, TODAY, products, bottles, settings=Settings(**chosen))


lines = st.lists(
    st.tuples(st.sampled_from(POURED), st.floats(1.0, 90.0)), min_size=1, max_size=6
).map(lambda some: tuple(Line(f"{ml} ml {key}", key, ml, None, "ml", ml) for key, ml in some))
specs = st.builds(
    lambda some, technique: Spec("Drink", some, technique=technique, ice="cubes"),
    lines,
    st.sampled_from(TECHNIQUES),
)


def scaled(spec: Spec, factor: float) -> Spec:
    some = (replace(line, quantity=(line.quantity or 0.0) * factor) for line in spec.lines)
    return replace(spec, lines=tuple(some))


class TestWhatIsConserved:
    @given(specs)
    def test_ethanol_sugar_and_acid_are_what_was_poured_whatever_the_ice(self, spec):
        found = analyse(spec, BARE)
        held = {"abv": 0.0, "sugar": 0.0, "acid": 0.0}
        for line in spec.lines:
            kind = TREE[line.ingredient]
            held["abv"] += line.quantity * (kind.abv_percent or 0.0)
            held["sugar"] += line.quantity * (kind.sugar_g_per_l or 0.0)
            held["acid"] += line.quantity * (kind.acid_g_per_l or 0.0)
        served = found.served_volume_ml
        assert found.abv_percent * served == pytest.approx(held["abv"], abs=1e-6)
        assert found.sugar_g_per_l * served == pytest.approx(held["sugar"], abs=1e-6)
        assert found.acid_g_per_l * served == pytest.approx(held["acid"], abs=1e-6)
        assert found.ethanol_g == pytest.approx(ethanol_g(served, found.abv_percent))

    @given(specs)
    def test_what_is_served_is_what_was_poured_and_the_water_of_the_ice(self, spec):
        found = analyse(spec, BARE)
        assert found.start_volume_ml == pytest.approx(sum(line.quantity for line in spec.lines))
        water = found.dilution.share * found.start_volume_ml
        assert found.served_volume_ml == pytest.approx(found.start_volume_ml + water)
        assert (water == 0.0) == (spec.technique == "hot")

    @given(specs, st.floats(0.2, 20.0))
    def test_scaling_every_line_scales_volumes_and_leaves_what_a_litre_holds(self, spec, factor):
        one, more = analyse(spec, BARE), analyse(scaled(spec, factor), BARE)
        for name in ("start_volume_ml", "served_volume_ml", "ethanol_g", "kcal"):
            assert getattr(more, name) == pytest.approx(factor * getattr(one, name))
        for name in ("abv_percent", "sugar_g_per_l", "acid_g_per_l"):
            assert getattr(more, name) == pytest.approx(getattr(one, name))
            assert getattr(more.sigma, name) == pytest.approx(getattr(one.sigma, name))
        assert more.sigma.served_volume_ml == pytest.approx(factor * one.sigma.served_volume_ml)

    @given(specs, st.sampled_from(["oz", "cl", "ml", "tsp"]))
    def test_the_unit_of_a_line_changes_nothing(self, spec, unit):
        size = to_quantity(Amount(1.0, None, unit), "ml")
        said = tuple(replace(line, amount=line.quantity / size, unit=unit) for line in spec.lines)
        one, other = analyse(spec, BARE), analyse(replace(spec, lines=said), BARE)
        assert other == replace(one, spec=other.spec, contents=other.contents)

    @given(specs)
    def test_the_order_of_the_lines_changes_nothing(self, spec):
        one, other = analyse(spec, BARE), analyse(replace(spec, lines=spec.lines[::-1]), BARE)
        assert other.abv_percent == pytest.approx(one.abv_percent)
        assert other.sigma.abv_percent == pytest.approx(one.sigma.abv_percent)
        assert other.kcal == pytest.approx(one.kcal)


class TestDoubt:
    @settings(max_examples=50)
    @given(specs)
    def test_no_figure_is_surer_than_the_ice_that_thins_it(self, spec):
        found = analyse(spec, BARE)
        ice = found.dilution.sigma * found.start_volume_ml
        assert found.sigma.served_volume_ml >= ice - 1e-9
        assert found.sigma.abv_percent >= found.abv_percent * ice / found.served_volume_ml - 1e-9

    def test_doubts_are_joined_as_by_hand(self):
        # 60 ml of 40 % vol in 60 ml of water, hot, so that no ice adds a doubt of its own.
        spec = written("Plain\n60 ml vodka\n60 ml boiling water\n\nWarm it.")
        found = analyse(spec, BARE)
        pour, figure, heat = 0.03 * 60, 0.05 * 40, 20 * 0.15 / 2
        by_hand = math.sqrt(
            ((40 - 20) * pour / 120) ** 2
            + ((0 - 20) * pour / 120) ** 2
            + (figure * 60 / 120) ** 2
            + heat**2
        )
        assert found.abv_percent == pytest.approx(20.0)
        assert found.sigma.abv_percent == pytest.approx(by_hand)
        assert found.sigma.served_volume_ml == pytest.approx(math.sqrt(2) * pour)

    def test_sigmas_agree_with_drinks_poured_at_random(self):
        from random import Random

        chance, spec = Random(7), classic("Daiquiri")
        found = analyse(spec, BARE)
        strengths, volumes = [], []
        for _ in range(4000):
            ice = found.dilution.share + chance.gauss(0.0, found.dilution.sigma)
            poured = [
                (
                    chance.gauss(c.volume_ml, c.sigma_ml),
                    chance.gauss(c.liquid.abv.value, c.liquid.abv.sigma),
                )
                for c in found.contents
            ]
            start = sum(ml for ml, _abv in poured)
            volumes.append(start * (1.0 + ice))
            strengths.append(sum(ml * abv for ml, abv in poured) / volumes[-1])
        assert _deviation(volumes) == pytest.approx(found.sigma.served_volume_ml, rel=0.06)
        assert _deviation(strengths) == pytest.approx(found.sigma.abv_percent, rel=0.06)

    def test_a_label_is_surer_than_a_usual_figure(self):
        spec = classic("Daiquiri")
        labelled = bar(bottle("white-rum", abv_percent=40.0))
        assert analyse(spec, labelled).sigma.abv_percent < analyse(spec, BARE).sigma.abv_percent

    @walked(
        ("name", "said"),
        [
            ("Daiquiri", "Ice adds 50 % ± 8 %"),
            ("Daiquiri", "Usual figures, not a label's: white rum 40 % vol"),
            ("Daiquiri", "contraction would change strength by less than 0.2 % vol"),
            ("Long Island Iced Tea", "Cola has no amount: taken as 90 ml ± 30 ml."),
            ("Hot Toddy", "about 85 % stays in"),
            ("Hot Toddy", "Honey holds more or less water"),
            ("Sazerac", "Of the rinse of absinthe about 1 ml stays, ± 1 ml."),
            ("Screwdriver", "Sources disagree on the acid of orange juice: ± 30 %."),
            ("Espresso Martini", "Hot espresso melts more ice than the formula knows of"),
            ("Silver Fizz", "Foam of egg takes room"),
            ("White Russian", "Fat and protein of cream and milk"),
            ("Kir", "No ice is named, so no dilution is counted."),
            ("Champagne Cocktail", "Not counted, for it is optional: Cognac."),
            ("Old Fashioned", "Over ice it goes on thinning"),
            ("Wine Cobbler", "is not known: orange slice."),
            ("Ramos Fizz", "The dilution formula was fitted to 15 to 45 % vol"),
            ("Lemonade", "No price is known for lemon juice, so the cost is not"),
        ],
    )
    def test_what_is_uncertain_is_said(self, name, said):
        assert any(said in each for each in analyse(classic(name), BARE).uncertain)

    def test_a_drink_without_ice_says_nothing_of_thinning(self):
        said = analyse(classic("Silver Fizz"), BARE).uncertain
        assert not any("goes on thinning" in each for each in said)

    def test_a_range_is_counted_as_its_middle_and_said(self):
        found = analyse(
            written("Range\n40-50 ml gin\n2-4 dashes orange bitters\n\nStir on ice."), BARE
        )
        gin, bitters = found.contents
        assert gin.volume_ml == pytest.approx(45.0)
        assert bitters.volume_ml == pytest.approx(2.4)
        assert gin.sigma_ml == pytest.approx(math.hypot(0.03 * 45, 5 / math.sqrt(3)))
        assert "Gin: 40–50 ml is counted as its middle." in found.uncertain

    def test_a_grouping_takes_the_middle_of_its_kinds_and_says_so(self):
        group = Line("60 ml liqueur", "liqueur", 60.0, None, "ml", 60.0)
        found = analyse(Spec("Group", (group,), "Stir with ice.", "stirred"), BARE)
        kinds = sorted(
            TREE[key].abv_percent
            for key in TREE.descendants("liqueur")
            if TREE[key].abv_percent is not None
        )
        assert found.contents[0].liquid.abv.value == pytest.approx(kinds[len(kinds) // 2], abs=1.0)
        (said,) = [each for each in found.uncertain if each.startswith("Liqueur may be many")]
        assert f"({kinds[0]:g} to {kinds[-1]:g} % vol" in said

    def test_what_nothing_is_known_of_counts_as_water_and_is_said(self):
        from barkeep.domain.bar.knowledge import with_owner
        from barkeep.domain.ingredients.tree import Ingredient

        knowledge = with_owner(BARE.knowledge, (Ingredient("fog", "Fog"),))
        spec = Spec("Foggy", (Line("30 ml fog", "fog", 30.0, None, "ml", 30.0),), technique="built")
        found = analyse(spec, replace(BARE, knowledge=knowledge))
        assert (found.abv_percent, found.served_volume_ml) == (0.0, 30.0)
        assert (
            "Fog: neither strength nor sugar is known; it is counted as water." in found.uncertain
        )

    def test_an_owners_kind_takes_what_is_said_of_the_kind_above(self):
        from barkeep.domain.bar.knowledge import with_owner
        from barkeep.domain.ingredients.tree import Ingredient

        own = Ingredient("pier-gin", "Pier gin", ("gin",))
        knowledge = with_owner(BARE.knowledge, (own,))
        spec = Spec("Pier", (Line("x", "pier-gin", 30.0, None, "ml", 30.0),), technique="built")
        assert analyse(spec, replace(BARE, knowledge=knowledge)).abv_percent == 40.0


def _deviation(values: list[float]) -> float:
    mean = sum(values) / len(values)
    return math.sqrt(sum((value - mean) ** 2 for value in values) / len(values))


class TestWhatIsPoured:
    def test_the_label_of_the_bottle_poured_tonight_comes_first(self):
        spec = classic("Daiquiri")
        strong = bar(bottle("white-rum", abv_percent=63.0))
        assert analyse(spec, strong).ethanol_g == pytest.approx(
            analyse(spec, BARE).ethanol_g * 63 / 40
        )
        sweet = bar(bottle("simple-syrup", sugar_g_per_l=300.0))
        assert analyse(spec, sweet).sugar_g_per_l < analyse(spec, BARE).sugar_g_per_l
        sour = bar(bottle("lime-juice", acid_g_per_l=60.0))
        per_l = analyse(spec, BARE).acid_g_per_l
        assert analyse(spec, sour).acid_g_per_l == pytest.approx(per_l * 60 / 45.9)

    def test_a_bottle_of_a_kind_below_is_poured_and_a_stand_in_is_not(self):
        spec = written("Kinds\n60 ml gin\n\nStir with ice.")
        below = bar(bottle("london-dry-gin", abv_percent=47.0))
        assert analyse(spec, below).contents[0].pour.ingredient == "london-dry-gin"
        beside = bar(bottle("genever", abv_percent=47.0))
        assert analyse(spec, beside).contents[0].pour == Pour("gin")

    def test_a_least_strength_is_minded(self):
        spec = written("Strong\n30 ml rum (at least 50 %)\n\nStir with ice.")
        both = bar(bottle("rum", 1, abv_percent=40.0), bottle("rum", 2, abv_percent=57.0))
        assert analyse(spec, both).contents[0].liquid.abv.value == 57.0

    def test_other_pours_can_be_given(self):
        spec = classic("Daiquiri")
        pours = list(pours_for(spec, BARE))
        pours[0] = Pour("overproof-rum", ratio=0.5)
        found = analyse(spec, BARE, pours=pours)
        first = found.contents[0]
        assert (first.pour.ingredient, first.volume_ml) == (
            "overproof-rum",
            pytest.approx(analyse(spec, BARE).contents[0].volume_ml / 2),
        )

    def test_the_method_can_be_another(self):
        spec = classic("Daiquiri")
        shaken, stirred = analyse(spec, BARE), analyse(spec, BARE, "stirred")
        assert stirred.dilution.share < shaken.dilution.share
        assert stirred.ethanol_g == shaken.ethanol_g
        assert analyse(spec, BARE, "hot").dilution.share == 0.0


class TestTheRest:
    def test_every_classic_is_analysed(self):
        assert len(BARE.knowledge.classics) > 200
        for spec in BARE.knowledge.classics:
            found = analyse(spec, BARE)
            assert 20.0 < found.served_volume_ml < 500.0, spec.name
            assert 0.0 <= found.abv_percent <= 60.0, spec.name
            assert found.uncertain, spec.name
            assert all(each[0].isupper() and each.endswith(".") for each in found.uncertain)
            assert (found.abv_percent == 0.0) == all(
                line.ingredient not in TREE.alcoholic for line in spec.required_lines
            ), spec.name

    def test_nothing_to_pour_is_nothing(self):
        spec = Spec("Leaf", (Line("mint leaf", "mint-leaf", quantity=1.0),))
        found = analyse(spec, BARE)
        assert (found.served_volume_ml, found.abv_percent, found.sugar_g_per_l) == (0.0, 0.0, 0.0)
        assert (found.frozen, found.fit, found.style, found.sugar_to_acid) == (None,) * 4

    def test_standard_drinks_are_the_bars_countrys(self):
        spec = classic("Daiquiri")
        here, there = analyse(spec, bar()), analyse(spec, bar(country="United Kingdom"))
        assert here.standard_drinks == pytest.approx(here.ethanol_g / 14.0)
        assert there.standard_drinks == pytest.approx(here.ethanol_g / 8.0, rel=0.02)
        assert there.country == "United Kingdom"

    def test_energy_is_by_the_eu_factors_and_counts_fat_and_protein(self):
        found = analyse(classic("Daiquiri"), BARE)
        sugar_g = found.sugar_g_per_l * found.served_volume_ml / 1000
        acid_g = found.acid_g_per_l * found.served_volume_ml / 1000
        assert found.kcal == pytest.approx(7 * found.ethanol_g + 4 * sugar_g + 3 * acid_g)
        creamy = analyse(written("Cream\n30 ml cream\n\nShake with ice."), BARE)
        assert creamy.kcal == pytest.approx(30 * (9 * 0.372 + 4 * 0.0206 + 4 * 0.0281), rel=1e-3)

    def test_a_stirred_strong_drink_keeps_in_a_freezer_and_a_sour_freezes(self):
        strong = analyse(
            written("Strong\n90 ml gin\n\nPour."), bar(bottle("gin", abv_percent=47.0))
        )
        assert strong.frozen.in_freezer == "liquid"
        assert strong.frozen.point_c < -25.0
        assert analyse(classic("Daiquiri"), BARE).frozen.in_freezer == "frozen"
        assert analyse(classic("Gin Fizz"), BARE).frozen is None
        assert analyse(classic("Hot Toddy"), BARE).frozen is None

    def test_its_glass_is_large_enough_or_it_says_why_not(self):
        assert analyse(classic("Daiquiri"), BARE).fit.why == ""
        large = scaled(classic("Daiquiri"), 3.0)
        assert "does not fit" in analyse(large, BARE).fit.why
        assert analyse(replace(large, glass="a watering can"), BARE).fit is None

    def test_allergens_and_cautions_are_those_of_everything_that_goes_in(self):
        found = analyse(classic("Silver Fizz"), BARE)
        assert [each.word for each in found.allergens] == ["egg"]
        assert any("raw egg" in each.text.casefold() for each in found.cautions)
        assert analyse(classic("Daiquiri"), BARE).allergens == ()

    def test_a_strong_label_raises_its_caution(self):
        spec = written("Plain\n30 ml rum\n\nPour.")
        calm = analyse(spec, bar(bottle("rum", abv_percent=40.0)))
        fire = analyse(spec, bar(bottle("rum", abv_percent=70.0)))
        assert len(fire.cautions) > len(calm.cautions)


class TestCost:
    def test_it_is_what_the_bottles_poured_cost(self):
        spec = written("Two\n60 ml gin\n10 ml simple syrup\n\nStir with ice.")
        priced = bar(bottle("gin", 1, price=21.0), bottle("simple-syrup", 2, price=7.0))
        found = analyse(spec, priced).cost
        assert found.amount == pytest.approx(60 * 21 / 700 + 10 * 7 / 700)
        assert (found.currency, found.unpriced) == ("EUR", ())

    def test_without_a_price_of_its_own_the_lowest_known_of_its_kind_counts(self):
        products = (
            Product("a", "Hollow Lamp", "london-dry-gin", 700.0, price=28.0, id=1),
            Product("b", "Hollow Lamp", "gin", 1000.0, price=30.0, id=2),
        )
        known = replace(bar(), products=products)
        found = analyse(written("One\n50 ml gin\n\nStir with ice."), known).cost
        assert found.amount == pytest.approx(50 * 0.03)

    def test_what_is_made_here_costs_what_goes_into_it(self):
        limes = replace(
            bar(), products=(Product("limes", "", "lime", 4.0, "each", price=2.0, id=1),)
        )
        spec = written("Sour\n26 ml lime juice\n10 ml simple syrup\n\nShake with ice.")
        assert analyse(spec, limes).cost.amount == pytest.approx(0.5)  # sugar is always there

    def test_what_has_no_price_is_named_and_the_rest_counted(self):
        found = analyse(classic("Daiquiri"), bar(bottle("white-rum", price=14.0))).cost
        assert found.amount is None
        assert found.unpriced == ("lime-juice",)
        assert found.priced == pytest.approx(59.147 * 14 / 700, rel=1e-4)


# Worked by hand: (start ml, served ml, % vol, sugar g/l, acid g/l), each with the figures of
# resources/ingredients.toml (lime 17.3 g/l sugar and 45.9 g/l acid; 1:1 syrup 614.8 g/l) and
# Arnold's dilution, which is from memory.
BY_HAND = [
    # 60 of 40 %, 30 of lime, 22.5 of syrup: a = 24/112.5; d = 0.203 + 1.742a - 1.567a^2 = 0.5033
    (
        "60 ml vodka\n30 ml lime juice\n22.5 ml simple syrup\n\nShake",
        112.5,
        169.1,
        14.2,
        84.9,
        8.14,
    ),
    # 30 + 30 + 30 of 43, 25 and 16 %: a = 0.28; d = 0.145 + 1.246a - 1.21a^2 = 0.3990
    (
        "30 ml London dry gin\n30 ml red bitter aperitivo\n30 ml sweet vermouth\n\nStir on ice",
        *(90.0, 125.9, 20.0, 95.3, 1.19),
    ),
    # 60 of 40 % built on ice takes 24 % of itself, then 120 of tonic at 90.8 and 4.0 g/l
    ("60 ml vodka\n120 ml tonic water\n\nBuild over ice", 180.0, 194.4, 12.35, 56.0, 2.47),
    # no ice: 100 of white wine at 12.5 % (3 and 5 g/l), 15 of cassis at 18 % (450 and 8 g/l)
    ("100 ml dry white wine\n15 ml crème de cassis\n\nPour", 115.0, 115.0, 13.2, 61.3, 5.39),
    # 10 g of sugar takes 6.2 ml; one lime gives 26 ml
    ("60 ml cachaça\n1 lime\n10 g sugar\n\nBuild on ice", 92.2, 114.3, 21.0, 91.4, 10.4),
]


@pytest.mark.parametrize(("text", "start", "served", "abv", "sugar", "acid"), BY_HAND)
def test_drinks_worked_by_hand(text, start, served, abv, sugar, acid):
    found = analyse(written(f"By hand\n{text}"), BARE)
    assert found.start_volume_ml == pytest.approx(start, rel=1e-3)
    assert found.served_volume_ml == pytest.approx(served, rel=2e-3)
    assert found.abv_percent == pytest.approx(abv, rel=5e-3)
    assert found.sugar_g_per_l == pytest.approx(sugar, rel=5e-3)
    assert found.acid_g_per_l == pytest.approx(acid, rel=1e-2)


def test_a_stirred_drink_computed_from_the_remembered_equation():
    # 60 ml of 45 %, 30 ml of 16 %, 1.6 ml of 44.7 %: a = 0.3550, dilution 0.4348; 131.4 ml at
    # 24.7 % vol. Computed from Arnold's equation, which is from memory: no outside check.
    spec = written(
        "Stirred\n60 ml rye whiskey\n30 ml sweet vermouth\n2 dashes aromatic bitters\n\nStir on ice"
    )
    found = analyse(spec, BARE)
    assert found.dilution.share == pytest.approx(0.4348, abs=5e-5)
    assert found.served_volume_ml == pytest.approx(131.4, abs=0.05)
    assert found.abv_percent == pytest.approx(24.7, abs=0.08)


def test_a_shaken_drink_computed_from_the_remembered_equation():
    # 60 ml of 40 %, 22.5 ml of lime at 4.59 %, 22.5 ml of 1:1: a = 0.2286, dilution 0.5193;
    # 159.5 ml at 15.0 % vol, acid 0.65 g/100 ml, sugar 8.9 with the lime's own. From memory too.
    spec = written("Shaken\n60 ml white rum\n22.5 ml lime juice\n22.5 ml simple syrup\n\nShake")
    found = analyse(spec, BARE)
    assert found.dilution.share == pytest.approx(0.5193, abs=5e-5)
    assert found.served_volume_ml == pytest.approx(159.5, abs=0.05)
    assert found.abv_percent == pytest.approx(15.0, abs=0.06)
    assert found.acid_g_per_l == pytest.approx(6.5, abs=0.06)
    assert found.sugar_g_per_l == pytest.approx(89.0, abs=0.5)
