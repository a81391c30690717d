"""Families of drinks and their usual ranges."""

from __future__ import annotations

import pytest

from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.balance import Range, read_styles, styles
from barkeep.domain.drink.words import place_in_words
from barkeep.errors import KnowledgeError
from tests.domain.drink.test_analysis import BARE, classic, written
from tests.walked import walked

ROW = (
    'name = "drinks"\nclassics = 5\nstrength = [1, 2]\nsugar = [1, 2]\nacid = [1, 2]\n'
    "middle = [1, 1, 1]\n"
)


@walked(
    ("name", "key"),
    [
        ("Daiquiri", "shaken"),
        ("White Lady", "shaken_liqueur"),
        ("Whiskey Sour", "shaken"),
        ("Silver Fizz", "long_sour"),
        ("Clover Club", "shaken_egg_white"),
        ("Manhattan", "stirred"),
        ("Negroni", "stirred"),
        ("Old Fashioned", "stirred_spirit"),
        ("Dry Martini", "stirred_dry"),
        ("Bamboo", "stirred_aperitif"),
        ("Gin and Tonic", "long"),
        ("French 75", "sparkling"),
        ("Black Velvet", None),
        ("Godfather", "built"),
        ("Frozen Daiquiri", "blended"),
        ("Alexander", None),
        ("Screwdriver", None),
        ("Hot Toddy", None),
        ("Lemonade", None),
        ("Kir", None),
    ],
)
def test_families(name, key):
    style = analyse(classic(name), BARE).style
    assert (None if style is None else style.key) == key


def test_a_value_at_either_end_is_within():
    usual = Range(15.0, 19.7)
    assert [usual.place_of(each) for each in (14.9, 15.0, 17.0, 19.7, 19.8)] == [
        *("below", "within", "within", "within", "above")
    ]


def test_the_ranges_are_ordered_and_in_grams_per_litre():
    for style in styles().values():
        for quality in ("strength", "sugar", "acid"):
            usual = style.range_of(quality)
            assert 0.0 <= usual.low < usual.high
        assert style.acid.high < 30.0 < style.sugar.high or style.key == "stirred_dry"


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        (
            "60 ml vodka\n30 ml lime juice\n22.5 ml simple syrup",
            "Among sours sweetened with syrup it is as strong, as sweet and as sour as usual.",
        ),
        (
            "60 ml London dry gin\n40 ml lime juice\n15 ml simple syrup",
            "Among sours sweetened with syrup it is sourer than usual, but as strong and as sweet.",
        ),
        (
            "60 ml navy-strength gin\n15 ml lime juice\n30 ml simple syrup",
            "Among sours sweetened with syrup it is stronger, sweeter and less sour than usual.",
        ),
        ("60 ml vodka\n30 ml cream", "No usual range is known for a drink of this kind."),
    ],
)
def test_where_it_lies_in_words(lines, said):
    assert place_in_words(analyse(written(f"Drink\n{lines}\n\nShake."), BARE)) == said


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("shaken = 3", "write it as a table"),
        (f"[a]\n{ROW.replace('[1, 2]', '[2, 1]', 1)}", "from the lower to the higher"),
        (f"[a]\n{ROW.replace('[1, 2]', '7', 1)}", "“strength” must be 2 numbers, not 7"),
        (f"[a]\n{ROW}colour = 1", "there is no field “colour”"),
        (f"[a]\n{ROW.replace('drinks', '')}", "is empty"),
    ],
)
def test_a_broken_table_is_refused(text, reason):
    with pytest.raises(KnowledgeError, match=reason):
        read_styles(text)
