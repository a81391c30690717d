"""What is asked at the bar with a guest before one, and what a bartender would answer."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.drink.search import search
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.errors import BadQuery
from tests.worlds import TODAY, bottle, snapshot


def line(key, ml=30.0, **more):
    return Line(f"{ml:g} ml {key}", key, ml, None, "ml", ml, **more)


def own(name, *lines, **more):
    return Spec(name, lines, **{"technique": "shaken", **more})


def filming(theme, on, *names):
    drinks = tuple(ShootDrink(None, each) for each in names)
    return Shoot(None, theme, on, drinks, "planned")


BOOK = (
    own("Brown Owl", line("bourbon", 60), line("sweet-vermouth"), technique="stirred"),
    own("Ditch", line("london-dry-gin", 50), line("lime-juice", 20), tags=("house",)),
    own("Feather Bed", line("vodka", 45), line("pasteurised-egg-white", 20)),
    own("Gate", line("white-rum", 45), line("orgeat", 15), line("lime-juice", 20)),
    own("Nutcracker", line("vodka", 45), line("coffee-liqueur", 20), Line("nutmeg", "nutmeg")),
    own("Ferry", line("egg-liqueur", 45), line("lime-juice", 20)),
    own("Malt Shovel", line("blended-scotch", 45), line("beer", 30), technique="built"),
    own(
        "Riddle",
        line("london-dry-gin", 60),
        unsettled=(UnsettledLine("20 ml pine fog cordial", 1, "pine fog cordial is not known"),),
    ),
    own(
        "Winter Line",
        line("cognac", 45),
        line("double-cream", 20),
        tags=("winter", "house sour"),
        glass="coupe",
    ),
    Spec("Old Hand", (line("fino-sherry", 60),), technique="stirred", classic=True),
    Spec(
        "Own Goal",
        (line("aged-rum", 50), Line("cherry", "cocktail-cherry", garnish=True)),
        technique="built",
        classic=True,
    ),
)
CLASSICS = {"Old Hand", "Own Goal"}
ALL = {each.name for each in BOOK}
NUTS, EGG = {"Gate"}, {"Feather Bed", "Ferry"}
UNSURE = {"Riddle"}
"""One whose line is not understood: nobody can vouch for what is in it."""


@pytest.fixture(scope="module")
def bar(knowledge):
    classics = tuple(each for each in BOOK if each.classic)
    specs = tuple(each for each in BOOK if not each.classic)
    opened = bottle(1, "fino-sherry", 400)
    due = replace(opened, level=replace(opened.level, opened=TODAY - timedelta(5)))
    past = filming("Last Week", TODAY - timedelta(7), "Ditch")
    soon = filming("Next Week", TODAY + timedelta(4), "Gate", "Own Goal")
    later = filming("Next Year", date(2027, 5, 1), "Ferry")
    made = snapshot(replace(knowledge, classics=classics), [due], specs)
    return replace(made, shoots=(later, past, soon))


CASES = (
    # whose
    ("own", ALL - CLASSICS),
    ("OWN", ALL - CLASSICS),
    ("-own", CLASSICS),
    ("classic", CLASSICS),
    ('"own"', {"Brown Owl", "Own Goal"}),
    ("shoot", {"Gate", "Own Goal"}),
    ("own shoot", {"Gate"}),
    ("-shoot own with:lime-juice", {"Ditch", "Ferry"}),
    # built on
    ("base:gin", {"Ditch", "Riddle"}),
    ("base:whisky", {"Brown Owl", "Malt Shovel"}),
    ("base:rum", {"Gate", "Own Goal"}),
    ("base:rum -own", {"Own Goal"}),
    ('base:"white rum"', {"Gate"}),
    ("-base:spirit", {"Ferry", "Old Hand"}),
    # made how
    ("made:stirred", {"Brown Owl", "Old Hand"}),
    ("made:stir", {"Brown Owl", "Old Hand"}),
    ("made:Build", {"Malt Shovel", "Own Goal"}),
    # what a guest must not have
    ("no:egg", ALL - EGG - UNSURE),
    ("no:eggs", ALL - EGG - UNSURE),
    ("-egg", ALL - EGG - UNSURE),
    ("without:egg", ALL - EGG - UNSURE),
    ("no:nuts", ALL - NUTS - UNSURE),
    ("no:nut", ALL - NUTS - UNSURE),
    ("-nut", ALL - NUTS - UNSURE),
    ("-nuts", ALL - NUTS - UNSURE),
    ("no:dairy", ALL - {"Winter Line"} - UNSURE),
    ("no:gluten", ALL - {"Malt Shovel"} - UNSURE),
    ("no:sulfites", ALL - {"Brown Owl", "Old Hand", "Own Goal"} - UNSURE),
    ("-no:nuts", NUTS | UNSURE),
    ("no egg", ALL - EGG - UNSURE),
    ("own no nuts", ALL - NUTS - UNSURE - CLASSICS),
    ("egg-free", ALL - EGG - UNSURE),
    ("nut-free -own", CLASSICS),
    ("with sherry", {"Old Hand"}),
    ('"no egg"', set()),
    ("no:gin", ALL - {"Ditch", "Riddle"}),
    # the rest
    ("tag:house", {"Ditch"}),
    ("tag:winter glass:coupe", {"Winter Line"}),
    ("due", {"Old Hand"}),
    ("own due", set()),
    ("own with:vermouth -egg", {"Brown Owl"}),
    ("base:", ALL),
    ("no:", ALL),
)


@pytest.mark.parametrize(("asked", "answer"), CASES)
def test_it_finds_what_a_bartender_would_name(asked, answer, bar):
    assert {spec.name for spec in search(bar, asked)} == answer


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("base:unicorn", "no ingredient is called that"),
        ("made:wobbled", "write one of shaken, stirred, built"),
        ("no:unicorn", "no ingredient and no allergen is called that"),
        ("without:unicorn", "no ingredient and no allergen is called that"),
        ("due:soon", "write a number of days"),
    ],
)
def test_what_means_nothing_is_said_and_never_finds_nothing(asked, told, bar):
    with pytest.raises(BadQuery) as caught:
        search(bar, asked)
    assert told in str(caught.value)
