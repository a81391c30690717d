"""What a general want is poured from: an answer key by a bartender's reasoning."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from random import Random

import pytest

from barkeep.domain.bar.of_kinds import HousePour, ShelfLife
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.pouring.serves_in_words import serves_in_words
from barkeep.domain.pouring.verdicts import Drink, tonight
from barkeep.domain.shoots.menu import Order, menu
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Line, Spec
from tests.walked import walked
from tests.worlds import TODAY, snapshot


def stock(number: int, key: str, tree, level: float = 700.0, opened: int | None = None) -> Bottle:
    """A bottle of a kind; sealed where `opened` is None, else opened that many days ago."""
    product = Product(f"{key} {number}", "Hollow Lamp", key, 700.0, tree[key].unit, id=number)
    day = None if opened is None else TODAY - timedelta(days=opened)
    state = "sealed" if opened is None else "open"
    return Bottle(number, product, Level(level, state, opened=day), number)


def poured(knowledge, bottles, text: str, method: str, **how) -> Drink:
    """What is poured for a drink of that line, or of several."""
    tree = knowledge.tree
    (read,) = read_specs(f"Test\n{text}\n\n{method}\n", tree)
    assert not read.problems, read.problems
    there = [
        stock(number, key, tree, **more)
        if isinstance(more, dict)
        else stock(number, key, tree, more)
        for number, (key, more) in enumerate(bottles, 1)
    ]
    bar = snapshot(replace(knowledge, classics=()), there, [read.spec])
    return tonight(bar, how.pop("within", "loose"), how.pop("serves", 1))[0]


def full(*keys: str):
    return [(key, 700.0) for key in keys]


SHAKE, STIR = "Shake with ice and strain.", "Stir with ice and strain."
HOT = "Pour into a warm glass and top with boiling water."

KEYED = [
    # what is there, the line, the method, what is poured, and whether it is a stand-in
    (["overproof-rum", "white-rum"], "60 ml rum", SHAKE, "white-rum", False),
    (["aged-rum", "white-rum"], "60 ml rum", STIR, "aged-rum", False),
    (["aged-rum", "white-rum"], "60 ml rum", SHAKE, "white-rum", False),
    (["blackstrap-rum", "aged-rum"], "60 ml rum", SHAKE, "aged-rum", False),
    (["rhum-agricole-blanc", "gold-rum"], "60 ml rum", SHAKE, "gold-rum", False),
    (["navy-rum", "dark-rum"], "60 ml rum", STIR, "dark-rum", False),
    (["rhum-agricole-vieux", "aged-rum"], "60 ml rum", STIR, "aged-rum", False),
    (["overproof-rum"], "60 ml rum", SHAKE, "overproof-rum", True),
    (["rhum-agricole-blanc"], "60 ml rum", SHAKE, "rhum-agricole-blanc", True),
    (["blackstrap-rum"], "60 ml dark rum", STIR, "blackstrap-rum", True),
    (["overproof-rum", "white-rum"], "60 ml overproof rum", SHAKE, "overproof-rum", False),
    (["blackstrap-rum", "white-rum"], "60 ml blackstrap rum", SHAKE, "blackstrap-rum", False),
    (
        ["rhum-agricole-vieux", "aged-rum"],
        "60 ml aged rhum agricole",
        STIR,
        "rhum-agricole-vieux",
        False,
    ),
    (["navy-strength-gin", "london-dry-gin"], "60 ml gin", STIR, "london-dry-gin", False),
    (["navy-strength-gin", "contemporary-gin"], "60 ml gin", SHAKE, "contemporary-gin", False),
    (["old-tom-gin", "london-dry-gin"], "60 ml gin", STIR, "london-dry-gin", False),
    (["old-tom-gin", "navy-strength-gin"], "60 ml gin", STIR, "old-tom-gin", False),
    (["barrel-aged-gin", "london-dry-gin"], "60 ml gin", SHAKE, "london-dry-gin", False),
    (["navy-strength-gin"], "60 ml gin", SHAKE, "navy-strength-gin", True),
    (
        ["navy-strength-gin", "london-dry-gin"],
        "60 ml navy-strength gin",
        STIR,
        "navy-strength-gin",
        False,
    ),
    (["smoky-scotch", "blended-scotch"], "60 ml Scotch whisky", SHAKE, "blended-scotch", False),
    (
        ["smoky-scotch", "single-malt-scotch"],
        "60 ml Scotch whisky",
        STIR,
        "single-malt-scotch",
        False,
    ),
    (["smoky-scotch", "bourbon"], "60 ml whisky", SHAKE, "bourbon", False),
    (["smoky-scotch"], "60 ml Scotch whisky", SHAKE, "smoky-scotch", True),
    (
        ["cask-strength-scotch", "blended-scotch"],
        "60 ml Scotch whisky",
        STIR,
        "blended-scotch",
        False,
    ),
    (["high-proof-bourbon", "bourbon"], "60 ml bourbon", SHAKE, "bourbon", False),
    (
        ["high-proof-rye", "bonded-rye-whiskey"],
        "60 ml rye whiskey",
        STIR,
        "bonded-rye-whiskey",
        False,
    ),
    (["corn-whiskey", "rye-whiskey"], "60 ml whiskey", STIR, "rye-whiskey", False),
    (["anejo-tequila", "blanco-tequila"], "60 ml tequila", SHAKE, "blanco-tequila", False),
    (["anejo-tequila", "blanco-tequila"], "60 ml tequila", STIR, "anejo-tequila", False),
    (
        ["extra-anejo-tequila", "reposado-tequila"],
        "60 ml tequila",
        SHAKE,
        "reposado-tequila",
        False,
    ),
    (["armagnac", "cognac"], "60 ml brandy", STIR, "cognac", False),
    (["aged-mezcal", "mezcal"], "60 ml mezcal", SHAKE, "mezcal", False),
    (["fernet", "amaro"], "30 ml amaro", STIR, "amaro", False),
    (["fernet"], "30 ml amaro", STIR, "fernet", True),
    (["blue-curacao", "triple-sec"], "20 ml orange liqueur", SHAKE, "triple-sec", False),
    (["sparkling-rose", "prosecco"], "60 ml sparkling wine", SHAKE, "prosecco", False),
    (
        ["jamaican-pot-still-rum", "aged-jamaican-rum"],
        "60 ml Jamaican rum",
        SHAKE,
        "aged-jamaican-rum",
        False,
    ),
    (["white-rum", "aged-rum"], "60 ml rum", HOT, "aged-rum", False),
    (
        ["overproof-rum", "white-rum"],
        "60 ml rum",
        "Shake with ice, float the overproof and strain.",
        "overproof-rum",
        False,
    ),
    (["egg", "pasteurised-egg-white"], "25 ml egg white", SHAKE, "pasteurised-egg-white", False),
    (["151-rum", "demerara-rum"], "60 ml rum", STIR, "demerara-rum", False),
    (["contemporary-gin", "london-dry-gin"], "60 ml gin", STIR, "london-dry-gin", False),
    (["old-tom-gin", "contemporary-gin"], "60 ml gin", SHAKE, "contemporary-gin", False),
    (["champagne", "prosecco"], "60 ml sparkling wine", SHAKE, "prosecco", False),
    (["champagne", "cava"], "60 ml sparkling wine", SHAKE, "cava", False),
    (["sparkling-rose", "champagne"], "60 ml sparkling wine", SHAKE, "champagne", False),
    (["aged-jamaican-rum", "aged-rum"], "60 ml aged rum", STIR, "aged-rum", False),
    (["demerara-rum", "aged-barbadian-rum"], "60 ml aged rum", SHAKE, "aged-barbadian-rum", False),
    (["extra-anejo-tequila", "reposado-tequila"], "60 ml tequila", STIR, "reposado-tequila", False),
    (["extra-anejo-tequila", "blanco-tequila"], "60 ml tequila", STIR, "blanco-tequila", False),
    (["px-sherry", "oloroso-sherry"], "60 ml sherry", STIR, "oloroso-sherry", False),
    (["cream-sherry"], "60 ml sherry", STIR, "cream-sherry", True),
    (["px-sherry", "cream-sherry"], "60 ml sherry", STIR, "cream-sherry", True),
    (["px-sherry", "fino-sherry"], "20 ml PX sherry", STIR, "px-sherry", False),
    (["stout", "lager"], "200 ml beer", "Build over ice.", "lager", False),
    (["single-cream", "whipping-cream"], "30 ml cream", SHAKE, "whipping-cream", False),
    (["single-cream"], "30 ml cream", SHAKE, "single-cream", False),
]


@walked(("there", "text", "method", "kind", "stands_in"), KEYED)
def test_a_general_want_pours_what_a_bartender_would(
    knowledge, there, text, method, kind, stands_in
):
    for bottles in (full(*there), full(*reversed(there))):
        found = poured(knowledge, bottles, text, method)
        assert found.lines[0].ingredient == kind
        assert found.verdict == ("stand_in" if stands_in else "ready")


def of(knowledge, *bottles: tuple[str, dict], text: str, method: str = STIR, **how) -> Drink:
    return poured(knowledge, bottles, text, method, **how)


class TestTheOwner:
    def test_the_house_pour_goes_first_among_what_suits_the_drink_alike(self, knowledge):
        (read,) = read_specs(f"Test\n60 ml rum\n\n{SHAKE}\n", knowledge.tree)
        there = [stock(n, key, knowledge.tree) for n, key in enumerate(["white-rum"] * 2, 1)]
        aged = stock(3, "aged-rum", knowledge.tree)
        bar = snapshot(replace(knowledge, classics=()), [*there, aged], [read.spec])
        assert tonight(bar)[0].lines[0].bottle.id == 1
        for house, first in ((2, 2), (3, 1)):  # a dark rum is no pour for a shaken drink
            own = replace(bar, settings=Settings(house=(HousePour("rum", house),)))
            assert tonight(own)[0].lines[0].bottle.id == first

    def test_what_is_only_poured_when_asked_for_is_asked_for_by_the_owner(self, knowledge):
        (read,) = read_specs(f"Test\n60 ml gin\n\n{STIR}\n", knowledge.tree)
        keys = ["london-dry-gin", "navy-strength-gin"]
        there = [stock(n, key, knowledge.tree) for n, key in enumerate(keys, 1)]
        bar = snapshot(replace(knowledge, classics=()), there, [read.spec])
        own = replace(bar, settings=Settings(house=(HousePour("gin", 2),)))
        assert tonight(bar)[0].lines[0].ingredient == "london-dry-gin"
        found = tonight(own)[0]
        assert (found.verdict, found.lines[0].ingredient) == ("ready", "navy-strength-gin")
        other = replace(there[1].product, id=3)
        another = replace(there[1], id=3, product=other)
        gone = replace(own, bottles=(there[0], another))  # of another label, which nobody asked for
        assert tonight(gone)[0].lines[0].ingredient == "london-dry-gin"


class TestServes:
    def test_the_count_is_of_the_bottle_shown_and_what_follows_is_named(self, knowledge):
        found = of(
            knowledge,
            ("navy-strength-gin", {"level": 450.0}),
            ("london-dry-gin", {"level": 300.0}),
            text="60 ml gin",
        )
        words = "5 serves, then navy-strength gin for 10 more (stand-in)"
        assert serves_in_words(found, knowledge.tree) == words
        assert (found.verdict, found.serves, found.serves_in_all) == ("ready", 5, 15)
        assert found.then[0].poured[0].ratio == 0.75
        assert not any("No ordinary gin" in each for each in found.warnings)

    def test_like_bottles_count_as_one(self, knowledge):
        two = [("london-dry-gin", {"level": 300.0})] * 2
        found = of(knowledge, *two, text="60 ml gin")
        assert (found.serves, found.then) == (10, ())

    def test_a_stand_in_alone_warns_and_says_how_much(self, knowledge):
        found = of(knowledge, ("navy-strength-gin", {}), text="60 ml gin", within="loose")
        assert found.verdict == "stand_in" and found.lines[0].ratio == 0.75
        said = "No ordinary gin is there: navy-strength gin is poured only when asked for; "
        assert any(each.startswith(said) for each in found.warnings)

    def test_a_kind_that_stands_in_by_its_own_words_is_not_called_a_kind_of_it(self, knowledge):
        found = of(knowledge, ("rhum-agricole-blanc", {}), text="60 ml cachaça", within="loose")
        assert found.verdict == "stand_in"
        assert not any("No ordinary" in each for each in found.warnings)

    def test_no_serve_is_lost_where_only_the_rests_together_make_it(self, knowledge):
        two = [("london-dry-gin", {"level": 80.0}), ("contemporary-gin", {"level": 100.0})]
        found = of(knowledge, *two, text="60 ml gin")
        assert (found.serves, found.serves_in_all) == (1, 3)
        assert serves_in_words(found, knowledge.tree).endswith(
            "then the rests of several bottles together for 1 more"
        )


class TestSaferAndSooner:
    def test_pasteurised_goes_before_raw(self, knowledge):
        found = of(
            knowledge,
            ("egg", {"level": 6.0}),
            ("pasteurised-egg-white", {"level": 300.0}),
            text="60 ml gin\n25 ml egg white",
            method=SHAKE,
        )
        assert found.lines[1].ingredient == "pasteurised-egg-white"
        assert not any(each.startswith("Raw egg") for each in found.warnings)

    def test_what_is_open_and_near_its_end_goes_before_a_fresh_bottle(self, knowledge):
        fresh, older = {"opened": 1}, {"opened": 20}
        found = of(
            knowledge,
            ("sweet-vermouth", {}),
            ("sweet-vermouth", fresh),
            ("sweet-vermouth", older),
            text="60 ml sweet vermouth",
        )
        assert found.lines[0].bottle.id == 3

    def test_what_is_sound_goes_before_what_has_faded(self, knowledge):
        faded, sealed = {"opened": 80}, {"level": 120.0}
        found = of(
            knowledge,
            ("sweet-vermouth", faded),
            ("sweet-vermouth", sealed),
            text="60 ml sweet vermouth",
        )
        assert found.lines[0].bottle.id == 2 and found.serves == 13
        (said,) = [each for each in found.warnings if "opened 80 days ago" in each]
        assert said.startswith("After 2: ") and "keeps 49 days: past its best" in said


GONE = [
    # what, opened so many days ago, whether it is counted, and what is said of it
    ("sweet-vermouth", 60, True, "keeps 49 days: past its best"),
    ("sweet-vermouth", 40, True, ""),
    ("fino-sherry", 12, True, "keeps 7 days: past its best"),
    ("coffee-liqueur", 500, True, "keeps 365 days: past its best"),
    ("white-wine", 9, True, "keeps 5 days: past its best"),
    ("london-dry-gin", 3000, True, ""),
    ("lemon-juice", 4, False, "keeps 1 day: not safe"),
    ("lemon-juice", 1, True, ""),
    ("double-cream", 8, False, "keeps 5 days: not safe"),
    ("milk", 6, False, "keeps 5 days: not safe"),
    ("black-tea", 3, False, "keeps 2 days: not safe"),
    ("cold-brew-coffee", 5, False, "keeps 3 days: not safe"),
    ("simple-syrup", 40, False, "keeps 30 days: not safe"),
    ("orgeat", 20, False, "keeps 14 days: not safe"),
    ("pasteurised-egg-white", 5, False, "keeps 3 days: not safe"),
    ("cream-liqueur", 400, False, "keeps 270 days: not safe"),
    ("tonic-water", 4, False, "flat, wilted or dried out"),
    ("champagne", 5, False, "flat, wilted or dried out"),
    ("falernum", 800, True, "keeps 365 days: past its best"),
]


@walked(("key", "days", "counted", "said"), GONE)
def test_what_was_opened_too_long_ago_is_told_apart(knowledge, key, days, counted, said):
    bar = snapshot(knowledge, [stock(1, key, knowledge.tree, opened=days)])
    assert (key in bar.usable, key in bar.past) == (counted, not counted)
    (there,) = bar.bottles
    assert said in bar.off_in_words(there) and bool(said) == bar.is_off(there)
    assert ("not counted" in bar.off_in_words(there)) == (not counted)


def test_the_owner_says_how_long_a_thing_keeps(knowledge):
    bar = snapshot(knowledge, [stock(1, "sweet-vermouth", knowledge.tree, opened=60)])
    assert bar.is_off(bar.bottles[0])
    for kind, days, off in (
        ("sweet-vermouth", 90, False),
        ("vermouth", 90, False),
        ("wine", 9, True),
    ):
        own = replace(bar, settings=Settings(keeps=(ShelfLife(kind, days),)))
        assert own.is_off(own.bottles[0]) is off


WANTS = ("rum", "gin", "whisky", "scotch-whisky", "bourbon", "rye-whiskey", "dark-rum", "aged-rum")


@pytest.mark.parametrize("first", range(0, 60, 20))
def test_an_ordinary_want_never_draws_what_is_only_poured_when_asked_for(knowledge, first):
    """Over random bars: while what is ordinary is there, no answer takes what is not."""
    tree, special = knowledge.tree, 0
    for seed in range(first, first + 20):
        chance = Random(seed)
        wanted = chance.choice(WANTS)
        below = sorted(tree.descendants(wanted))
        keys = chance.sample(below, min(len(below), chance.randint(1, 5)))
        levels = {key: chance.choice([30.0, 130.0, 700.0]) for key in keys}
        there = [stock(n, key, tree, level) for n, (key, level) in enumerate(levels.items(), 1)]
        line = Line(f"60 ml {wanted}", wanted, amount=60.0, unit="ml", quantity=60.0)
        spec = Spec("Test", (line,), technique=chance.choice(["shaken", "stirred", "built"]))
        bar = snapshot(replace(knowledge, classics=()), there, [spec])
        asked = {each for each in keys if tree.only_when_asked(each, wanted)}
        enough = {key for key, level in levels.items() if level >= 60.0} - asked
        (found,) = tonight(bar, "loose")
        first_pour, drawn = found.lines[0].ingredient, menu([Order(spec, 1)], bar, "loose").draws
        if enough:
            assert first_pour in enough, (seed, wanted, keys)
            assert {each.bottle.ingredient for each in drawn} <= set(keys) - asked
        elif first_pour in asked:
            special += 1
            assert found.verdict == "stand_in"
    assert special


def test_nothing_that_is_not_safe_is_poured_by_any_answer(knowledge):
    tree, spoilt = knowledge.tree, 0
    keys = [key for key in sorted(tree) if tree[key].shelf_life_days and not tree[key].family]
    for seed in range(3):
        chance = Random(seed)
        there = [
            stock(n, key, tree, opened=chance.choice([0, 3, 10, 60, 400]))
            for n, key in enumerate([*keys, "london-dry-gin", "white-rum", "bourbon"], 1)
        ]
        bar = snapshot(knowledge, there)
        drinks = tonight(bar, "loose")
        after = [answer for drink in drinks for then in drink.then for answer in then.poured]
        answers = [*(answer for drink in drinks for answer in drink.lines), *after]
        orders = [Order(drink.spec, 2) for drink in drinks if drink.makeable][::12]
        poured = [
            *(each.bottle for each in answers if each.bottle is not None),
            *(draw.bottle for draw in menu(orders, bar, "loose").draws),
        ]
        assert len(poured) > 100
        for each in poured:
            end = bar.ends.get(each.id)
            assert end is None or not end.is_over(TODAY) or end.after == "past_its_best"
        spoilt += sum(map(len, bar.past.values()))
    assert spoilt > 50
