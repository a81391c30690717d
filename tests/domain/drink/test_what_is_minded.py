"""What a bartender would say before handing the glass over, and what would only be noise."""

from __future__ import annotations

from dataclasses import replace

from barkeep.domain.drink.analysis import analyse
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.specs.spec import Line, Spec
from tests.walked import walked
from tests.worlds import bottle, snapshot


def line(key, ml=30.0, **more):
    return Line(f"{ml:g} ml {key}", key, ml, None, "ml", ml, **more)


def one(key, **more):
    return Line(f"1 {key}", key, 1.0, None, "each", 1.0, **more)


def garnish(key):
    return Line(f"Garnish: {key}", key, garnish=True)


def drink(knowledge, lines, shelf=(), home=(), technique="shaken", method=""):
    """The one drink of a bar that has everything it needs, `home` of its own making."""
    keys = dict.fromkeys((*(each.ingredient for each in lines if each.required), *shelf))
    bottles = []
    for number, key in enumerate(keys, 1):
        there = bottle(number, key, 500.0)
        product = replace(there.product, house_made=key in home)
        bottles.append(replace(there, product=product))
    spec = Spec("Signal", tuple(lines), technique=technique, method=method)
    bar = snapshot(replace(knowledge, classics=()), bottles, [spec])
    (found,) = tonight(bar)
    return found, bar


RUM, GIN, RYE = line("overproof-rum", 50), line("london-dry-gin", 50), line("rye-whiskey", 60)
LIME, LEMON = line("lime-juice", 25), line("lemon-juice", 25)

CASES = {
    # what it is: (lines, what else the bar has, what of it is of its own making, how), tags
    "a spirit in a stirred drink is not a fire": (
        ([RUM, line("sweet-vermouth")], (), (), "stirred", "Stir on ice."),
        "sulphites",
    ),
    "a strong spirit beside a flame is": (
        ([RUM, LIME], (), (), "shaken", "Shake. Flame an orange peel over it."),
        "! flame, strong bottle",
    ),
    "a torched garnish": (
        ([GIN, LEMON], (), (), "shaken", "Shake, strain, and torch the rosemary."),
        "! flame",
    ),
    "a cordial of the kitchen has no sulphites": (
        ([line("navy-strength-gin", 50), line("lime-cordial", 25)], (), ("lime-cordial",), "", ""),
        "",
    ),
    "a bought cordial has": (([GIN, line("lime-cordial", 25)], (), (), "", ""), "sulphites"),
    "grenadine of the kitchen": (
        ([GIN, LEMON, line("grenadine", 10)], (), ("grenadine",), "", ""),
        "",
    ),
    "bought grenadine": (([GIN, LEMON, line("grenadine", 10)], (), (), "", ""), "sulphites"),
    "orgeat of the kitchen is nuts all the same": (
        ([line("aged-rum", 50), LIME, line("orgeat", 15)], (), ("orgeat",), "", ""),
        "! tree nuts",
    ),
    "a wine of one's own holds sulphites all the same": (
        ([GIN, line("dry-vermouth")], (), ("dry-vermouth",), "stirred", ""),
        "sulphites",
    ),
    "a missing cherry adds none": (([RYE, garnish("cocktail-cherry")], (), (), "stirred", ""), ""),
    "a cherry that is there does": (
        ([RYE, garnish("cocktail-cherry")], ("cocktail-cherry",), (), "stirred", ""),
        "sulphites",
    ),
    "raw egg": (([RYE, LEMON, one("egg-white")], (), (), "", ""), "! raw egg · egg"),
    "pasteurised egg is egg, and safe": (
        ([RYE, LEMON, line("pasteurised-egg-white", 20)], (), (), "", ""),
        "egg",
    ),
    "an egg that is left out": (
        ([RYE, LEMON, one("egg-white", optional=True)], (), (), "", ""),
        "",
    ),
    "an egg liqueur is egg, and cooked": (
        ([line("egg-liqueur", 40), LIME], (), (), "", ""),
        "egg",
    ),
    "quinine": (([GIN, line("tonic-water", 120)], (), (), "built", ""), "! quinine"),
    "grapefruit": (
        ([line("blanco-tequila", 50), line("grapefruit-juice", 60)], (), (), "built", ""),
        "! grapefruit and medicines",
    ),
    "cola is for everybody": (
        ([line("white-rum", 50), line("cola", 120)], (), (), "built", ""),
        "",
    ),
    "coconut is told an allergic guest": (
        ([line("white-rum", 50), line("coconut-water", 60)], (), (), "built", ""),
        "coconut",
    ),
    "dry ice": (
        ([GIN, LIME], (), (), "", "Shake. Drop a piece of dry ice in."),
        "! dry ice or nitrogen",
    ),
    "beer": (([line("stout", 200)], (), (), "built", ""), "gluten"),
    "cream": (
        ([line("cognac", 40), line("white-creme-de-cacao"), line("double-cream")], (), (), "", ""),
        "milk",
    ),
    "a plain sour needs no word": (([GIN, LEMON, line("simple-syrup", 20)], (), (), "", ""), ""),
}


@walked("case", CASES)
def test_the_tags_are_what_a_bartender_would_say(case, knowledge):
    (lines, shelf, home, technique, method), tags = CASES[case]
    found, bar = drink(knowledge, lines, shelf, home, technique or "shaken", method)
    assert found.makeable
    assert found.minded.in_brief == tags
    as_analysed = analyse(found.spec, bar).minded
    assert as_analysed.allergen_tags == found.minded.allergen_tags or "left out" in case


def test_what_is_needed_and_missing_is_minded_all_the_same(knowledge):
    spec = Spec("Signal", (GIN, line("orgeat", 15)), technique="shaken")
    bar = snapshot(replace(knowledge, classics=()), [bottle(1, "london-dry-gin", 500.0)], [spec])
    (found,) = tonight(bar, "exact")
    assert not found.makeable and found.minded.in_brief == "! tree nuts"


def test_nothing_is_dropped_for_being_of_less_weight(knowledge):
    found, bar = drink(knowledge, [RUM, line("cola", 120)], technique="built")
    keys = {each.key for each in found.minded.all_cautions}
    assert keys == {"strong-spirit", "caffeine-with-alcohol"}
    assert {each.tier for each in found.minded.all_cautions} == {"general"}
    assert {each.key for each in analyse(found.spec, bar).cautions} == keys
    assert all(each.source for each in found.minded.all_cautions)
