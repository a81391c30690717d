"""The allergen lists, and what the ingredients carry, against `data/allergens.csv`.

Its sources: the US nine of the Food Allergen Labeling and Consumer Protection
Act 2004 with the FASTER Act 2021, and the fourteen of Regulation (EU)
1169/2011, Annex II, which the United Kingdom keeps; both read in copies. What
in a bar may carry which is the table's fourth column. Which ingredients
nobody need look for it in (the distillates) is the regulation's own exemption.
"""

from __future__ import annotations

import pytest

from barkeep.domain.cautions.allergens import allergens_of, shipped_allergens
from tests.outside.tables import rows

OUR_WORDS = {
    "crustacean shellfish": ("crustaceans",),
    "wheat / cereals containing gluten": ("wheat", "gluten"),
    "soybeans": ("soya",),
    "sulphur dioxide / sulphites": ("sulphites",),
}
TABLE = {row["allergen"]: row for row in rows("allergens")}


def ours(allergen: str) -> tuple[str, ...]:
    return OUR_WORDS.get(allergen, (allergen,))


def on_list(name: str) -> set[str]:
    return {each.word for each in shipped_allergens().all if name in each.lists}


def test_the_table_is_whole():
    assert len(TABLE) == 14


def test_the_us_nine():
    printed = {"milk", "egg", "fish", "crustacean shellfish", "tree nuts", "peanuts", "soybeans"}
    printed |= {"sesame", "wheat / cereals containing gluten"}
    assert {name for name, row in TABLE.items() if row["list"].startswith("US")} == printed
    # Of the cereals the US list names wheat alone.
    assert on_list("US") == {word for name in printed for word in ours(name)} - {"gluten"}
    assert len(on_list("US")) == 9


def test_the_european_fourteen():
    assert all("EU" in row["list"] for row in TABLE.values())
    assert on_list("EU") == {word for name in TABLE for word in ours(name)}
    # Wheat is one of the cereals that contain gluten, so fifteen words are fourteen entries.
    assert len(on_list("EU")) == 15


def test_each_list_names_its_law():
    authority = shipped_allergens().authority
    assert "2004" in authority["US"] and "2021" in authority["US"]
    assert "1169/2011, Annex II" in authority["EU"]


# Allergen -> every ingredient that the table's fourth column speaks of and barkeep has.
CARRIERS = {
    "milk": "cream-liqueur chocolate-cream-liqueur cream butter milk double-cream hot-chocolate",
    "egg": "egg-white egg egg-yolk egg-liqueur pasteurised-egg-white ice-cream",
    "fish": "worcestershire-sauce tomato-clam-juice",
    "tree nuts": """
        orgeat falernum falernum-syrup hazelnut-liqueur nocino amaretto creme-de-noyaux
        walnut-bitters peach-bitters almonds walnuts almond-milk almond-extract
    """,
    "wheat / cereals containing gluten": "lager pale-ale bitter-ale wheat-beer stout oat-milk",
    "soybeans": "soya-milk soy-sauce",
    "sesame": "sesame-oil",
    "celery": "celery-bitters celery-salt tomato-clam-juice celery-juice celery",
    "mustard": "pickle-brine",
    "sulphur dioxide / sulphites": """
        dry-white-wine champagne dry-vermouth sweet-vermouth fino-sherry ruby-port madeira cider
        white-quinquina red-americano ginger-wine bottled-lime-juice bottled-lemon-juice
        cocktail-cherry cocktail-cherry-syrup raisins grenadine coconut-cream cream-of-coconut
        desiccated-coconut lime-cordial elderflower-cordial blackcurrant-cordial ginger-cordial
        alcohol-free-sparkling-wine cocktail-onion
    """,
    "molluscs": "tomato-clam-juice",
}
NONE_IN_BAR = {"crustacean shellfish", "peanuts", "lupin"}
"""No ingredient of barkeep is one of these."""


def test_every_row_is_looked_at():
    assert CARRIERS.keys() | NONE_IN_BAR == TABLE.keys()


@pytest.mark.parametrize("allergen", CARRIERS)
def test_what_the_table_says_may_carry_it_does(tree, allergen):
    assert TABLE[allergen]["bar_ingredients_that_may_carry_it"]
    for key in CARRIERS[allergen].split():
        carried = {each.word for each in allergens_of([key], tree)}
        assert carried & set(ours(allergen)), key


def test_the_us_names_no_gluten_where_there_is_no_wheat(tree):
    lists = {each.word: each.lists for each in allergens_of(["stout", "wheat-beer"], tree)}
    assert lists == {"gluten": ("EU",), "wheat": ("US", "EU")}


def test_distillates_of_cereals_nuts_and_whey_are_exempt(tree):
    assert "exempt" in TABLE["wheat / cereals containing gluten"]["exemption"]
    below = tree.descendants("spirit")
    assert len(below) > 50
    assert {key for key in below if allergens_of([key], tree)} == set()


def test_coconut_and_chickpea_water_are_on_no_list(tree):
    assert "coconut removed" in TABLE["tree nuts"]["threshold_or_note"]
    assert allergens_of(["coconut", "coconut-water", "aquafaba"], tree) == ()
