"""USDA National Nutrient Database: `usda_liquids.csv`.

Composition per 100 g from SR26, household weights and yields from SR28. An
ingredient whose basis names one of its NDB numbers must hold what USDA says,
its sugar times the density of its household measure.
"""

from __future__ import annotations

import re

import pytest

from barkeep.domain.ingredients.composition import shipped_portions
from barkeep.domain.liquids import content, ethanol, sucrose
from tests.outside import physics
from tests.outside.tables import rows

TABLE = {row["ndb_no"]: row for row in rows("usda_liquids")}
CITED = re.compile(r"USDA (?:SR26 )?(\d{5})(.*?)(?:;|$)")


SOME_OTHER_WAY = {
    "coffee-liqueur": "the later release, 38.3 g in 100 g",
    "honey-syrup": "one part honey to one of water, by volume",
    "cane-syrup": "USDA gives no household measure; density of sucrose at 73.2 °Bx",
    "pasteurised-egg-white": "USDA gives no household measure; density as of fresh white",
}
"""Ingredients whose sugar comes of a cited row by another way, each checked by itself below."""
SPIRITS = {
    row["ndb_no"]: float(found[1])
    for row in TABLE.values()
    if "distilled" in row["name"] and (found := re.search(r"(\d+) proof", row["name"]))
}


def density(number: str) -> float:
    """g per ml of the household measure."""
    return float(TABLE[number]["density_g_per_ml_from_household_measure"])


def sugar_g_per_l(number: str, carbohydrate: bool = False) -> float:
    column = "carb_by_diff_g_100g" if carbohydrate else "sugars_g_100g"
    return float(TABLE[number][column]) * density(number) * 10.0


def cited(tree) -> dict[str, re.Match[str]]:
    """Ingredient -> the number it names and the words after it."""
    found = {key: CITED.search(tree[key].basis) for key in tree}
    return {key: match for key, match in found.items() if match}


def test_usda_sugar_of_every_ingredient_that_names_a_row(tree):
    """Within 1 % or 0.1 g/l; rounded by us to 0.1 g/l."""
    plain = {key: match for key, match in cited(tree).items() if key not in SOME_OTHER_WAY}
    assert len(plain) >= 45
    for key, match in plain.items():
        expected = sugar_g_per_l(match[1], "carbohydrate" in match[2])
        assert tree[key].sugar_g_per_l == pytest.approx(expected, rel=0.01, abs=0.1), key


def test_usda_every_number_that_is_named_is_in_the_table(tree):
    assert {match[1] for match in cited(tree).values()} <= TABLE.keys()
    assert cited(tree).keys() >= SOME_OTHER_WAY.keys()


def test_usda_14414_coffee_liqueur_is_the_later_release_s(tree):
    later = re.search(r"sugars 46\.43->([\d.]+)", TABLE["14414"]["difference_vs_later_release"])
    expected = float(later[1]) * density("14414") * 10.0
    assert tree["coffee-liqueur"].sugar_g_per_l == pytest.approx(expected, rel=0.01)


def test_usda_19296_honey_syrup_is_half_honey(tree):
    """500 ml of honey in 500 ml of water come to a little less than a litre."""
    honey_g = 500.0 * density("19296")
    solids_g = honey_g * (1.0 - float(TABLE["19296"]["water_g_100g"]) / 100.0)
    made = physics.syrup(solids_g, honey_g + 500.0 - solids_g)
    expected = sugar_g_per_l("19296") / 2.0 * 1000.0 / made.volume_ml
    assert tree["honey-syrup"].sugar_g_per_l == pytest.approx(expected, rel=0.01)


def test_usda_90480_cane_syrup_weighs_as_sucrose_does(tree):
    sugars = float(TABLE["90480"]["sugars_g_100g"])
    assert tree["cane-syrup"].sugar_g_per_l == pytest.approx(sucrose.g_per_l(sugars), rel=0.01)


def test_usda_01172_pasteurised_white_weighs_as_fresh(tree):
    expected = float(TABLE["01172"]["sugars_g_100g"]) * density("01124") * 10.0
    assert tree["pasteurised-egg-white"].sugar_g_per_l == pytest.approx(expected, abs=0.1)


@pytest.mark.parametrize(
    "number", SPIRITS, ids=lambda number: f"USDA SR26 {number}: {SPIRITS[number]:.0f} proof"
)
def test_ethanol_and_energy_of_a_spirit(number):
    """Ethanol by mass within 0.11 g in 100 g; energy within 1.5 %, USDA's factor being 6.93."""
    by_mass = float(TABLE[number]["ethanol_g_100g"])
    ours = 100.0 * ethanol.mass_fraction(physics.of_us_proof(SPIRITS[number]))
    assert ours == pytest.approx(by_mass, abs=0.11)
    assert ours + float(TABLE[number]["water_g_100g"]) == pytest.approx(100.0, abs=0.15)
    kcal = float(TABLE[number]["kcal_100g"])
    assert content.energy_kcal({"ethanol": ours}) == pytest.approx(kcal, rel=0.015)


def test_usda_nine_rows_are_spirits():
    assert len(SPIRITS) == 9


@pytest.mark.parametrize(
    ("key", "number", "within"),
    [
        ("vodka", "14051", 0.3),
        ("rum", "14050", 0.3),
        ("whisky", "14037", 0.3),
        ("red-wine", "14096", 0.6),
        ("white-wine", "14106", 0.6),
        ("lager", "14003", 0.1),
        ("pale-ale", "14003", 0.1),
    ],
    ids=lambda value: f"USDA SR26 {value}" if str(value).isdigit() else str(value),
)
def test_strength(tree, key, number, within):
    """% vol by USDA's ethanol and density, printed to 0.1."""
    row = TABLE[number]
    implied = float(row["ethanol_g_100g"]) * density(number) / content.ethanol_ml_g(1.0)
    assert implied == pytest.approx(float(row["implied_abv_pct_from_that_density"]), abs=0.06)
    assert tree[key].abv_percent == pytest.approx(implied, abs=within)


def test_usda_14415_cream_liqueur_is_as_strong_as_its_name_says(tree):
    """USDA's ethanol of liqueurs does not fit its density, so the proof in the name counts."""
    assert "34 proof" in TABLE["14415"]["name"]
    assert tree["cream-liqueur"].abv_percent == physics.of_us_proof(34.0)


@pytest.mark.parametrize(
    ("key", "number"),
    [("sugar", "19335"), ("demerara-sugar", "19908"), ("honey", "19296"), ("molasses", "19304")],
    ids=lambda value: f"USDA SR28 {value}" if str(value).isdigit() else str(value),
)
def test_weight_of_a_spoonful(key, number):
    assert shipped_portions().g_per_ml[key] == pytest.approx(density(number), abs=0.001)


@pytest.mark.parametrize(
    ("key", "number"),
    [("egg-white", "01124"), ("egg-yolk", "01125")],
    ids=lambda value: f"USDA SR28 {value}" if str(value).isdigit() else str(value),
)
def test_what_a_large_egg_holds(tree, knowledge, key, number):
    """To the millilitre, by its weight and the weight of a cup."""
    grams = float(re.fullmatch(r"large=(\d+) g", TABLE[number]["yields"])[1])
    volume = round(grams / density(number))
    assert shipped_portions().piece_ml[key] == volume
    assert tree[key].typical_size == volume
    assert yields(knowledge, key) == [volume]


def yields(knowledge, made: str) -> list[float]:
    """What one of each single thing yields."""
    return [
        each.yields
        for each in knowledge.made_from
        if each.made == made and len(each.inputs) == 1 and each.inputs[0].amount == 1
    ]


@pytest.mark.parametrize(
    ("juice", "number", "least", "most"),
    [
        ("lime-juice", "09160", 22.0, 30.0),
        ("lemon-juice", "09152", 30.0, 45.0),
        ("orange-juice", "09206", 60.0, 75.0),
        ("grapefruit-juice", "09128", 120.0, 180.0),
    ],
    ids=lambda value: f"USDA SR28 {value}" if str(value).startswith("09") else str(value),
)
def test_juice_of_a_fruit(knowledge, juice, number, least, most):
    """USDA presses more out of a fruit than a bar does; ours is in the middle of the trade's range.

    The range is *common practice*; below USDA's, and at least 0.6 of it.
    """
    grams = float(re.search(r"(?:lime|lemon|fruit) yields=([\d.]+) g", TABLE[number]["yields"])[1])
    by_usda = grams / density(number)
    (ours,) = yields(knowledge, juice)
    assert least < ours < most
    assert 0.6 * by_usda <= ours < by_usda


def test_usda_12119_water_of_a_coconut(knowledge):
    grams = float(re.search(r"coconut yields=([\d.]+) g", TABLE["12119"]["yields"])[1])
    (ours,) = yields(knowledge, "coconut-water")
    assert ours == pytest.approx(grams / density("12119"), rel=0.02)


def test_usda_09152_wedges_of_a_lemon(knowledge):
    lemon, wedge = (
        float(re.search(rf"{what} yields=([\d.]+) g", TABLE["09152"]["yields"])[1])
        for what in ("lemon", "wedge")
    )
    (ours,) = yields(knowledge, "lemon-wedge")
    assert ours == round(lemon / wedge)
