"""The knowledge texts: what they say, and every fault located by file and key."""

from __future__ import annotations

import pytest

from barkeep.documents.knowledge import (
    _pairs,
    _refuse_pairs,
    read_ingredients,
    read_made_from,
    read_stand_ins,
    read_tree,
)
from barkeep.domain.ingredients.relations import Input, MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import Confusable, Ingredient
from barkeep.errors import CyclicFamily, KnowledgeError
from tests.walked import walked

INGREDIENTS = """
[spirit]
name = "Spirit"
family = true

[gin]
name = "Gin"
parents = ["spirit"]
aliases = ["juniper spirit"]
regional = { UK = ["mother's milk"] }
printed = ["Old Gin"]
abv_percent = 40
sugar_g_per_l = 0.5
allergens = ["sulphites"]
typical_size = 500
basis = "common practice"

[old-gin]
name = "Old gin"
parents = ["gin"]

[sugar]
name = "Sugar"
unit = "g"
always_there = true

[water]
name = "Water"

[syrup]
name = "Syrup"
acid_g_per_l = 0
shelf_life_days = 14

[lime]
name = "Lime"
unit = "each"

[cordial]
name = "Cordial"
"""
CONFUSABLES = """
[[confusable]]
pair = ["syrup", "cordial"]
why = "Cordial is sour too."
"""
STAND_INS = """
[[stand_in]]
wanted = "gin"
offered = "water"
closeness = 0.1
ratio = 1
why = "It is clear as well."
scope = ["shaken", "accent"]

[[nothing]]
wanted = "lime"
why = "Nothing else is green."
"""
MADE = """
[[made]]
made = "syrup"
inputs = { sugar = 500, water = 500 }
yields = 810
how = "Stir until clear."
closeness = 0.9
basis = "measured"
"""


def read_confusables(text, tree, file="confusables.toml"):
    """The pairs of one text, as the whole tree reads them."""
    pairs = _pairs(text, file)
    _refuse_pairs(pairs, tree, file)
    return pairs


@pytest.fixture(scope="module")
def small():
    return read_tree(INGREDIENTS, CONFUSABLES)


def test_ingredients_are_read_whole(small):
    assert small["gin"] == Ingredient(
        "gin",
        "Gin",
        ("spirit",),
        ("juniper spirit",),
        {"UK": ("mother's milk",)},
        ("Old Gin",),
        abv_percent=40.0,
        sugar_g_per_l=0.5,
        allergens=("sulphites",),
        typical_size=500.0,
        basis="common practice",
    )
    assert small["syrup"].shelf_life_days == 14 and small["syrup"].acid_g_per_l == 0.0
    assert small["spirit"].family and small["sugar"].always_there
    sizes = [small[key].typical_size for key in ("water", "sugar", "lime")]
    assert sizes == [700.0, 1000.0, 1.0]
    assert small.confusables == (Confusable("syrup", "cordial", "Cordial is sour too."),)


def test_stand_ins_and_recipes_are_read_whole(small):
    offers, nothing = read_stand_ins(STAND_INS, small)
    why = "It is clear as well."
    assert offers == (StandIn("gin", "water", 0.1, 1.0, why, ("shaken", "accent")),)
    assert nothing == (NoStandIn("lime", "Nothing else is green."),)
    inputs = (Input("sugar", 500.0), Input("water", 500.0))
    made = MadeFrom("syrup", inputs, 810.0, "Stir until clear.", 0.9, "measured")
    assert read_made_from(MADE, small) == (made,)
    assert read_made_from(MADE.replace("closeness = 0.9", ""), small)[0].closeness == 1.0


def test_empty_texts_hold_nothing(small):
    assert read_stand_ins("", small) == ((), ()) and read_made_from("", small) == ()
    assert read_confusables("", small) == () and read_ingredients("") == ()


@walked(
    ("old", "new", "key", "reason"),
    [
        ('name = "Gin"', "", "gin", "“name” is missing"),
        ('name = "Gin"', 'name = " "', "gin", "“name” is empty"),
        ('name = "Gin"', "name = 7", "gin", "“name” must be a text, not 7"),
        ('name = "Gin"', 'name = "Water"', "water", "belongs to gin already"),
        ("abv_percent", "abv", "gin", "no field “abv”"),
        ("abv_percent = 40", "abv_percent = 101", "gin", "0 or more and at most 100"),
        ("abv_percent = 40", "abv_percent = -1", "gin", "“abv_percent” is -1"),
        ("abv_percent = 40", "abv_percent = nan", "gin", "“abv_percent” is nan"),
        ("abv_percent = 40", "abv_percent = inf", "gin", "“abv_percent” is inf"),
        ("abv_percent = 40", 'abv_percent = "40"', "gin", "must be a number, not '40'"),
        ("abv_percent = 40", "abv_percent = true", "gin", "must be a number, not True"),
        ("sugar_g_per_l = 0.5", "sugar_g_per_l = -0.5", "gin", "must be 0 or more"),
        ("shelf_life_days = 14", "shelf_life_days = 1.5", "syrup", "whole days"),
        ("shelf_life_days = 14", "shelf_life_days = 0", "syrup", "more than 0"),
        ("typical_size = 500", "typical_size = 0", "gin", "more than 0"),
        ('unit = "g"', 'unit = "oz"', "sugar", "one of ml, g, each"),
        ("always_there = true", 'always_there = "yes"', "sugar", "true or false"),
        ('parents = ["spirit"]', 'parents = "spirit"', "gin", "a list of texts"),
        ('parents = ["spirit"]', 'parents = ["spirit", "spirit"]', "gin", "twice"),
        ('parents = ["spirit"]', 'parents = ["moss"]', "gin", "“moss” is not an ingredient"),
        ('regional = { UK = ["mother\'s milk"] }', "regional = 7", "gin", "must be a table"),
        ('UK = ["mother\'s milk"]', "UK = 7", "gin.regional", "a list of texts"),
        ("[gin]", "[Gin_]", "Gin_", "small letters"),
        ("[gin]", "gin = 7\n[gin2]", "the text", "not TOML"),
    ],
)
def test_a_fault_in_the_ingredients_is_located(old, new, key, reason):
    text = INGREDIENTS.replace(old, new, 1)
    assert text != INGREDIENTS
    if new.startswith("gin = 7"):
        text = "gin = 7\n[gin]\nname = 'Gin'"
    with pytest.raises(KnowledgeError) as fault:
        read_tree(text, "", "kinds.toml")
    assert (fault.value.file, fault.value.key) == ("kinds.toml", key)
    assert reason in fault.value.reason


def test_a_value_where_a_table_belongs_is_located():
    with pytest.raises(KnowledgeError, match=r"ingredients.toml, gin: write it as a table, \["):
        read_ingredients("gin = 7")


def test_a_circle_names_its_members():
    text = INGREDIENTS.replace('name = "Spirit"', 'name = "Spirit"\nparents = ["old-gin"]')
    with pytest.raises(CyclicFamily, match="spirit → old-gin → gin → spirit"):
        read_tree(text, "")


@pytest.mark.parametrize(
    ("text", "key", "reason"),
    [
        (CONFUSABLES.replace("cordial", "moss"), "confusable 1", "“moss” is not an ingredient"),
        (CONFUSABLES.replace(', "cordial"', ""), "confusable 1", "names two ingredients"),
        (CONFUSABLES.replace("why", "because"), "confusable syrup, cordial", "“why” is missing"),
        (CONFUSABLES * 2, "confusable syrup, cordial", "there twice"),
        (
            CONFUSABLES + CONFUSABLES.replace('"syrup", "cordial"', '"cordial", "syrup"'),
            "confusable cordial, syrup",
            "there twice",
        ),
        (
            CONFUSABLES.replace('"syrup", "cordial"', '"old-gin", "spirit"'),
            "confusable old-gin, spirit",
            "by descent",
        ),
        (CONFUSABLES + "more = 1", "confusable syrup, cordial", "no field “more”"),
        (CONFUSABLES.replace("[[confusable]]", "[[confusables]]"), "confusables", "misspelling"),
        (CONFUSABLES.replace("[[confusable]]", "[confusable]"), "confusable", "[[confusable]]"),
    ],
)
def test_a_fault_in_the_confusables_is_located(small, text, key, reason):
    with pytest.raises(KnowledgeError) as fault:
        read_confusables(text, small, "false.toml")
    assert (fault.value.file, fault.value.key) == ("false.toml", key)
    assert reason in fault.value.reason


PAIR = "stand-in water for gin"


@pytest.mark.parametrize(
    ("old", "new", "key", "reason"),
    [
        ('"water"', '"moss"', "stand-in moss for gin", "“moss” is not an ingredient"),
        ('"gin"', '"moss"', "stand-in water for moss", "“moss” is not an ingredient"),
        ('"gin"', '"water"', "stand-in water for water", "for itself"),
        ("closeness = 0.1", "closeness = 0", PAIR, "more than 0 and at most 1"),
        ("closeness = 0.1", "closeness = 1.01", PAIR, "more than 0 and at most 1"),
        ("closeness = 0.1", "", PAIR, "“closeness” is missing"),
        ("ratio = 1", "ratio = 0", PAIR, "more than 0"),
        ("ratio = 1", "ratio = -1", PAIR, "more than 0"),
        ('"accent"', '"acent"', PAIR, "one of shaken, stirred, accent, never_base"),
        ("why = ", "wy = ", PAIR, "“why” is missing"),
        ("scope = ", "scopes = ", PAIR, "no field “scopes”"),
        ('"lime"', '"gin"', "gin", "yet a stand-in is given too"),
        ('"lime"', '"moss"', "nothing moss", "“moss” is not an ingredient"),
        ("[[nothing]]", "[[none]]", "none", "misspelling"),
    ],
)
def test_a_fault_in_the_stand_ins_is_located(small, old, new, key, reason):
    text = STAND_INS.replace(old, new, 1)
    assert text != STAND_INS
    with pytest.raises(KnowledgeError) as fault:
        read_stand_ins(text, small, "subs.toml")
    assert (fault.value.file, fault.value.key) == ("subs.toml", key)
    assert reason in fault.value.reason


def test_a_stand_in_between_confusables_is_refused_also_by_descent(small):
    text = STAND_INS.replace('"gin"', '"syrup"').replace('"water"', '"cordial"')
    with pytest.raises(KnowledgeError, match="confusable: Cordial is sour too"):
        read_stand_ins(text, small)
    kinds = INGREDIENTS + '\n[lime-cordial]\nname = "Lime cordial"\nparents = ["cordial"]\n'
    tree = read_tree(kinds, CONFUSABLES)
    with pytest.raises(KnowledgeError, match="confusable"):
        read_stand_ins(text.replace('"cordial"', '"lime-cordial"'), tree)


def test_duplicates_are_refused(small):
    offer, nothing = STAND_INS.split("[[nothing]]")
    with pytest.raises(KnowledgeError, match="stand-in water for gin: it is there twice"):
        read_stand_ins(offer * 2, small)
    with pytest.raises(KnowledgeError, match="nothing for lime: it is there twice"):
        read_stand_ins(f"[[nothing]]{nothing}" * 2, small)
    with pytest.raises(KnowledgeError, match="made syrup from sugar, water: it is there twice"):
        read_made_from(MADE * 2, small)
    other = MADE.replace("water = 500", "lime = 2")
    assert len(read_made_from(MADE + other, small)) == 2


@pytest.mark.parametrize(
    ("old", "new", "key", "reason"),
    [
        ("{ sugar = 500, water = 500 }", "{}", "made syrup", "made from nothing"),
        ("inputs = { sugar = 500, water = 500 }", "", "made syrup", "made from nothing"),
        ("sugar = 500", "moss = 500", "made syrup, inputs", "“moss” is not an ingredient"),
        ("sugar = 500", "sugar = 0", "made syrup, inputs", "more than 0"),
        ("sugar = 500", 'sugar = "lots"', "made syrup, inputs", "must be a number"),
        ("sugar = 500", "syrup = 500", "made syrup", "made from itself"),
        ("yields = 810", "yields = 0", "made syrup", "more than 0"),
        ("yields = 810", "", "made syrup", "“yields” is missing"),
        ("closeness = 0.9", "closeness = 2", "made syrup", "at most 1"),
        ("how = ", "why = ", "made syrup", "“how” is missing"),
        ('"syrup"', '"moss"', "made moss", "“moss” is not an ingredient"),
    ],
)
def test_a_fault_in_the_recipes_is_located(small, old, new, key, reason):
    text = MADE.replace(old, new, 1)
    assert text != MADE
    with pytest.raises(KnowledgeError) as fault:
        read_made_from(text, small, "made.toml")
    assert (fault.value.file, fault.value.key) == ("made.toml", key)
    assert reason in fault.value.reason


@pytest.mark.parametrize("read", [read_stand_ins, read_made_from, read_confusables])
def test_what_is_not_toml_says_where(small, read):
    with pytest.raises(KnowledgeError, match=r"not TOML: .*line 2"):
        read("\n= 1\n", small)
