"""How a drink is made: what makes it hot, and what only sounds so."""

from __future__ import annotations

from barkeep.application.knowledge import shipped
from barkeep.domain.specs.technique import technique_of
from tests.walked import walked


@walked(
    ("method", "technique"),
    [
        ("Stir with ice. It gives a gentle heat.", "stirred"),
        ("Rinse the glass with hot water, then stir with ice", "stirred"),
        ("Stir with ice, strain and drizzle hot honey", "stirred"),
        ("Build over ice and drizzle hot honey", "built"),
        ("Stir and drizzle hot honey over it", "stirred"),
        ("Muddle the chilli for heat, stir with ice", "stirred"),
        ("Muddle the chilli for heat, then stir", "stirred"),
        ("Muddle the hot chilli, stir and strain", "stirred"),
        ("Stir and strain into a warmed glass. A warm, spicy finish.", "stirred"),
        ("Preheat the mug with boiling water. Build over ice", "built"),
        ("Warm the glass with hot water, then stir and strain", "stirred"),
    ],
)
def test_a_word_of_warmth_makes_no_hot_drink(method, technique):
    assert technique_of(method) == technique


@walked(
    "method",
    [
        "Rinse the mug with hot water. Fill with hot coffee.",
        "Warm the mug, add the rum and fill with hot water.",
        "Build in a warmed mug and fill with boiling water.",
        "Heat the milk.",
        "Gently warm the port.",
        "Stir over a low heat until warm.",
        "Stir without ice and serve hot.",
        "Pour hot coffee over ice cream.",
        "Stir in hot water. No ice.",
    ],
)
def test_what_is_heated_is_hot(method):
    assert technique_of(method) == "hot"


def test_the_classics_that_are_hot_are_those_without_ice():
    hot = {spec.name for spec in shipped().classics if spec.technique == "hot"}
    assert hot == {
        *("Hot Toddy", "Hot Whiskey", "Irish Coffee", "Hot Buttered Rum", "Hot Milk Punch"),
        *("Tom and Jerry", "Mulled Wine", "Bishop", "Hot Spiced Cider", "Hot Gin Punch"),
        *("Grog", "Coffee Royal"),
    }
