"""Making things at home: what is drawn, what is short or past its date, and what comes out."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.ingredients.figures import liquid_of
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.making.figures import RecipePart, expected_yield_ml
from barkeep.domain.making.house_made import (
    batch_sizes,
    drawn_in_words,
    figures_in_words,
    most_made,
    plan_making,
    recipes_for,
    scaled,
    short_in_words,
)
from barkeep.domain.spec_text.recipes import UnusableInput, read_inputs, write_inputs
from tests.walked import walked

TODAY = date(2026, 11, 21)
KNOWN = shipped()
TREE = KNOWN.tree


def bottle(number, key, amount, *, state="open", use_by=None, made=None, opened=None, **label):
    unit = TREE[key].unit
    product = Product(f"{TREE.name(key)} {number}", "", key, 1000.0, unit, id=number, **label)
    level = Level(amount, state, opened)
    return Bottle(number, product, level, number, made=made, use_by=use_by)


def bar(*bottles, **changes):
    return Snapshot(KNOWN, TODAY, bottles=bottles, **changes)


def plan(key, amount, *bottles):
    return plan_making(recipes_for(key, KNOWN)[0], amount, bar(*bottles))


# What is drawn


def test_sugar_and_water_are_always_there_and_draw_nothing():
    made = plan("simple-syrup", 500.0, bottle(1, "sugar", 900.0))
    assert [(each.always_there, each.draws) for each in made.inputs] == [(True, ()), (True, ())]
    assert not made.short
    assert drawn_in_words(made.inputs[0]) == "always there"


def test_hot_water_comes_of_the_water_that_is_always_there():
    made = plan("oleo-saccharum", 250.0, bottle(1, "lemon-peel", 20.0))
    assert not made.short


def test_what_the_owner_says_is_not_there_is_drawn():
    snapshot = bar(bottle(1, "sugar", 100.0), settings=Settings(not_there=frozenset({"sugar"})))
    made = plan_making(recipes_for("simple-syrup", KNOWN)[0], 500.0, snapshot)
    (short,) = made.short
    assert (short.ingredient, short.have) == ("sugar", 100.0)
    assert short_in_words(short, TREE) == "Short of white sugar: 307 g needed, 100 g there."


def test_open_bottles_and_the_soonest_date_go_first():
    late = bottle(1, "lemon-juice", 300.0, use_by=TODAY + timedelta(days=3))
    soon = bottle(2, "lemon-juice", 300.0, use_by=TODAY + timedelta(days=1))
    sealed = bottle(3, "lemon-juice", 300.0, state="sealed", use_by=TODAY)
    syrup = bottle(4, "simple-syrup", 900.0)
    juice = plan("sour-mix", 1000.0, late, soon, sealed, syrup).inputs[0]
    assert [(each.bottle.id, each.amount) for each in juice.draws] == [(2, 300.0), (1, 200.0)]
    assert drawn_in_words(juice) == "300 ml of Lemon juice 2, 200 ml of Lemon juice 1"


def test_a_kind_of_the_input_does_and_its_own_comes_first():
    gin, kind = bottle(1, "london-dry-gin", 700.0), bottle(2, "gin", 100.0)
    vermouth, curacao = bottle(3, "sweet-vermouth", 500.0), bottle(4, "dry-curacao", 500.0)
    drawn = plan("fruit-cup", 500.0, gin, kind, vermouth, curacao).inputs[0].draws
    assert [(each.bottle.id, each.amount) for each in drawn] == [(2, 100.0), (1, 100.0)]


def test_fruit_is_taken_whole_and_what_is_over_is_said():
    made = plan("lime-juice", 120.0, bottle(1, "lime", 9.0))
    assert made.inputs[0].need == 5.0  # 120 / 26 = 4.6
    assert any("5 × lime" in note for note in made.notes)


def test_a_bottle_past_its_date_is_left_out_and_said():
    past = bottle(1, "lemon-juice", 400.0, made=date(2026, 11, 12), use_by=date(2026, 11, 14))
    made = plan("sour-mix", 1000.0, past, bottle(2, "simple-syrup", 900.0))
    assert made.past == ("The lemon juice of 12 Nov is past its date (14 Nov) and is not counted.",)
    (short,) = made.short
    assert (short.ingredient, short.need, short.have) == ("lemon-juice", 500.0, 0.0)
    assert "Lemon juice can be made here first." in made.notes


def test_a_bottle_open_too_long_or_to_be_used_sooner_is_minded():
    old = bottle(1, "simple-syrup", 900.0, opened=TODAY - timedelta(days=40))
    juice = bottle(2, "lemon-juice", 900.0, use_by=TODAY + timedelta(days=1))
    made = plan("sour-mix", 1000.0, old, juice)
    cautions = made.cautions
    said = "The simple syrup is past its date (11 Nov, opened on 12 Oct) and is not counted."
    assert made.past == (said,)
    assert any(
        each.startswith("The lemon juice that goes in is to be used by 22 Nov") for each in cautions
    )


def test_one_bottle_is_not_drawn_twice():
    recipe = MadeFrom("fruit-cup", (Input("gin", 100.0), Input("london-dry-gin", 100.0)), 200.0, "")
    made = plan_making(recipe, 200.0, bar(bottle(1, "london-dry-gin", 150.0)))
    assert sum(draw.amount for each in made.inputs for draw in each.draws) == 150.0
    assert [each.ingredient for each in made.short] == ["london-dry-gin"]


# What comes out; worked by hand


@pytest.mark.computed
def test_simple_syrup_is_sugar_over_its_yield():
    """1000 g of sugar in 1626.5 ml (by the ICUMSA polynomial): 614.8 g/l."""
    figures = plan("simple-syrup", 500.0).figures
    assert figures.sugar_g_per_l == pytest.approx(1_000_000 / 1626.5, rel=1e-4)
    assert (figures.abv_percent, figures.acid_g_per_l, figures.unknown) == (0.0, 0.0, ())


def test_the_label_of_what_is_poured_counts():
    """400 ml at 700 g/l and 500 ml of juice at 26 g/l in a litre: 280 + 13 = 293 g/l."""
    syrup = bottle(1, "simple-syrup", 900.0, sugar_g_per_l=700.0)
    juice = bottle(2, "lemon-juice", 900.0, sugar_g_per_l=26.0, acid_g_per_l=60.0)
    figures = plan("sour-mix", 1000.0, syrup, juice).figures
    assert figures.sugar_g_per_l == pytest.approx(293.0, abs=0.6)
    assert figures.acid_g_per_l == pytest.approx(30.0, abs=0.1)


def test_an_infusion_keeps_its_strength_whatever_the_peel_soaks_up():
    """250 ml of vodka at 45 % yield 245 ml, and those are at 45 %, not at 45.9 %."""
    vodka = bottle(1, "vodka", 700.0, abv_percent=45.0)
    made = plan("lemon-vodka", 245.0, vodka, bottle(2, "lemon-peel", 4.0))
    assert made.figures.abv_percent == pytest.approx(45.0)


def test_water_thins():
    """100 ml at 40 % with 100 ml of water: 20 % vol, as volumes add (0.2 ml of water's density)."""
    recipe = MadeFrom("vodka", (Input("gin", 100.0), Input("water", 100.0)), 200.0, "Stir.")
    gin = bottle(1, "gin", 700.0, abv_percent=40.0)
    assert plan_making(recipe, 200.0, bar(gin)).figures.abv_percent == pytest.approx(20.0, rel=2e-3)


def test_what_is_boiled_down_grows_sweeter_and_its_strength_is_not_known():
    inputs = (Input("red-wine", 500.0), Input("sugar", 100.0))
    thin = MadeFrom("grenadine", inputs, 280.0, "Warm gently and strain.")
    down = replace(thin, how="Simmer and reduce by half.")
    wine = bottle(1, "red-wine", 700.0, abv_percent=13.0, sugar_g_per_l=0.0, acid_g_per_l=5.6)
    first = plan_making(thin, 280.0, bar(wine)).figures
    second = plan_making(down, 280.0, bar(wine)).figures
    assert second.sugar_g_per_l == pytest.approx(100_000 / 280.0)
    assert second.acid_g_per_l == pytest.approx(10.0)  # 2.8 g in 280 ml
    assert first.sugar_g_per_l < 200.0 and first.abv_percent < 13.0
    assert second.abv_percent is None
    assert "how much of the alcohol stays is not known" in second.unknown[0]


def test_what_is_not_known_is_not_guessed():
    figures = plan("orgeat", 500.0).figures
    assert (figures.sugar_g_per_l, figures.acid_g_per_l) == (None, None)
    assert figures.unknown == (
        "How much of the sugar and acid comes from almonds is not known: "
        "those usual for orgeat count.",
    )
    assert figures_in_words(figures) == "It comes to 0.0 % vol."


def test_fruit_alone_gives_what_is_usual():
    usual = liquid_of("lime-juice", TREE)
    figures = plan("lime-juice", 100.0).figures
    assert (figures.sugar_g_per_l, figures.acid_g_per_l) == (usual.sugar.value, usual.acid.value)


def test_of_what_is_not_poured_nothing_is_said():
    assert figures_in_words(plan("lemon-peel", 8.0).figures) == ""


def test_fat_and_saturation_are_said():
    assert any("shake it" in each for each in plan("cream-of-coconut", 640.0).notes)
    assert any("crystals" in each for each in plan("rich-simple-syrup", 500.0).notes)
    assert not any("crystals" in each for each in plan("simple-syrup", 500.0).notes)


def test_it_keeps_as_long_as_its_kind():
    made = plan_making(recipes_for("lime-juice", KNOWN)[0], 52.0, bar(), date(2026, 11, 19))
    assert (made.made, made.use_by) == (date(2026, 11, 19), date(2026, 11, 20))


def test_allergens_and_cautions_of_the_inputs():
    cautions = plan("orgeat", 500.0).cautions
    assert any("almond" in each or "nut" in each for each in cautions)


# Sizes


def test_the_most_is_what_the_scarcest_input_gives():
    recipe = recipes_for("sour-mix", KNOWN)[0]
    snapshot = bar(bottle(1, "lemon-juice", 100.0), bottle(2, "simple-syrup", 900.0))
    assert most_made(recipe, snapshot) == pytest.approx(200.0)
    assert batch_sizes(recipe, snapshot) == (200.0,)
    assert most_made(recipes_for("simple-syrup", KNOWN)[0], snapshot) is None


def test_whole_fruit_gives_whole_fruit():
    recipe = recipes_for("lime-juice", KNOWN)[0]
    assert most_made(recipe, bar(bottle(1, "lime", 3.7))) == pytest.approx(78.0)


@given(st.sampled_from(KNOWN.made_from), st.floats(1.0, 5000.0))
def test_a_batch_of_any_size_is_the_same_thing(recipe, amount):
    """Inputs grow with the amount; strength, sugar and acid stay, but for whole pieces."""
    half = scaled(recipe, amount / 2.0)
    assert [2.0 * each.amount for each in half.inputs] == pytest.approx(
        [each.amount for each in scaled(recipe, amount).inputs]
    )
    if all(TREE[each.ingredient].unit != "each" for each in recipe.inputs):
        one = plan_making(recipe, amount, bar()).figures
        two = plan_making(recipe, recipe.yields, bar()).figures
        assert one.sugar_g_per_l == (
            None if two.sugar_g_per_l is None else pytest.approx(two.sugar_g_per_l)
        )


@given(
    st.lists(st.floats(0.5, 700.0), max_size=5),
    st.floats(10.0, 2000.0),
)
def test_never_more_is_drawn_than_is_needed_or_there(levels, amount):
    bottles = [bottle(n, "lemon-juice", level) for n, level in enumerate(levels, 1)]
    juice = plan("sour-mix", amount, *bottles).inputs[0]
    assert all(draw.amount <= draw.bottle.level.amount for draw in juice.draws)
    assert juice.have == pytest.approx(min(juice.need, sum(levels)), abs=1e-6)
    assert juice.short == (sum(levels) < juice.need * (1 - 1e-9))


# A recipe as text


@walked("recipe", KNOWN.made_from)
def test_every_recipe_reads_back(recipe):
    assert read_inputs(write_inputs(recipe, TREE), TREE) == recipe.inputs


def test_both_ways_of_writing_an_input():
    text = "500 g sugar\n\nwater = 1/2 l"
    assert read_inputs(text, TREE) == (Input("sugar", 500.0), Input("water", 500.0))


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("500 g sugar\n2 cl moonglow dust", 2, "moonglow dust"),
        ("sugar", 1, "say how much of it, as a weight"),
        ("500 g gin", 1, "volume"),
    ],
)
def test_a_line_that_cannot_be_used_is_located(text, line, words):
    with pytest.raises(UnusableInput) as refused:
        read_inputs(text, TREE)
    assert refused.value.line == line and words in str(refused.value)


def test_the_yield_of_sugar_in_anything_is_expected():
    parts = [RecipePart("sugar", 500.0), RecipePart("pomegranate-juice", 500.0)]
    assert expected_yield_ml(parts, KNOWN) == pytest.approx(810.0, abs=5.0)
