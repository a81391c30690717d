"""Stand-ins: ranked, reasoned, and honest where nothing will do."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bar.knowledge import with_owner
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.stand_ins.offers import MOST_NAMED, or_buy_in_words, stand_in
from tests.domain.drink.test_analysis import BARE, TREE, bar, classic
from tests.domain.drink.test_analysis import bottle as real_bottle
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.worlds import bottle, snapshot


def offered(answer) -> list[str]:
    return [each.ingredient for each in answer.stand_ins]


def test_what_is_said_of_a_pair_goes_before_a_chain():
    chain = StandIn("genever", "kummel", 0.9, 1.0, "caraway")
    longer = replace(KNOWLEDGE, none=(), stand_ins=(*KNOWLEDGE.stand_ins, chain))
    bar = snapshot(longer, [bottle(1, "kummel", 700)])
    assert offered(stand_in(bar, "london-dry-gin"))[0] == "kummel"
    own = StandIn("london-dry-gin", "kummel", 0.35, 1.0, "I tried it")
    (first, *_rest) = stand_in(
        replace(bar, knowledge=with_owner(longer, stand_ins=(own,))), "london-dry-gin"
    ).stand_ins
    assert (first.ingredient, first.closeness) == ("kummel", 0.35)


@pytest.mark.parametrize(
    ("wanted", "there"),
    [
        ("rye-whiskey", "high-proof-bourbon"),
        ("rye-whiskey", "bonded-bourbon"),
        ("bourbon", "high-proof-rye"),
        ("bourbon", "bonded-rye-whiskey"),
        ("canadian-whisky", "high-proof-rye"),
        ("canadian-whisky", "bonded-rye-whiskey"),
        ("aged-jamaican-rum", "jamaican-pot-still-rum"),
    ],
)
def test_a_stronger_cousin_is_offered_in_its_own_words_and_less_of_it(wanted, there):
    (first, *_rest) = stand_in(bar(real_bottle(there)), wanted).stand_ins
    assert (first.ingredient, first.closeness) == (there, 0.8)
    assert "pour less" in first.why or "pour much less" in first.why
    assert any(each.startswith("take 0.") for each in first.corrections)


def test_of_what_is_as_close_what_is_said_of_the_kind_itself_goes_first():
    there = bar(real_bottle("aged-jamaican-rum"), real_bottle("aged-rum", 2))
    assert offered(stand_in(there, "gold-rum"))[:2] == ["aged-rum", "aged-jamaican-rum"]


def test_falernum_is_made_from_its_syrup_and_a_strong_rum():
    there = bar(real_bottle("falernum-syrup"), real_bottle("overproof-rum", 2))
    juice = replace(there, bottles=(*there.bottles, real_bottle("lime-juice", 3)))
    (first, *_rest) = stand_in(juice, "falernum").stand_ins
    assert (first.ingredient, first.closeness, first.owned) == ("falernum", 0.9, True)


def test_owned_comes_first_then_the_closest():
    answer = stand_in(snapshot(KNOWLEDGE, [bottle(1, "genever", 700)]), "london-dry-gin")
    assert offered(answer) == ["genever", "gin"]
    genever, gin = answer.stand_ins
    assert genever.owned and not gin.owned
    assert genever.bottle is not None and gin.bottle is None
    assert gin.missing == ("gin",)
    assert genever.why == "Genever stands in for London dry gin: maltier."


def test_alone_the_ratio_is_said_and_within_a_spec_what_to_pour():
    bar = snapshot(KNOWLEDGE, [bottle(1, "genever", 700)])
    alone = stand_in(bar, "london-dry-gin").stand_ins[0]
    assert "take 0.9 times the amount" in alone.corrections
    within = stand_in(bar, "london-dry-gin", spec(line("london-dry-gin", 60)))
    assert "pour 55 ml of genever instead of 60 ml" in within.stand_ins[0].corrections


def test_a_scope_holds_within_a_spec():
    bar = snapshot(KNOWLEDGE, [bottle(1, "genever", 700)])
    assert "genever" in offered(stand_in(bar, "gin"))
    assert "genever" not in offered(stand_in(bar, "gin", spec(line("gin", 60))))
    accent = spec(line("london-dry-gin", 60), line("gin", 20))
    assert "genever" in offered(stand_in(bar, "gin", accent))


def test_what_can_be_made_here_is_offered():
    answer = stand_in(snapshot(KNOWLEDGE, [bottle(1, "lime", 3, 3)]), "lime-juice")
    (made,) = answer.stand_ins
    assert (made.ingredient, made.closeness, made.owned) == ("lime-juice", 1.0, True)
    assert made.path == ("Lime juice is made here from lime",)


def test_nothing_does_and_why():
    answer = stand_in(snapshot(KNOWLEDGE), "kummel")
    assert answer.none_because == "nothing else tastes of caraway like it"
    assert answer.stand_ins == ()


def test_a_labels_own_strength_comes_before_the_usual_one():
    stock = bottle(1, "genever", 700)
    strong = replace(stock, product=replace(stock.product, abv_percent=50.0))
    corrections = stand_in(snapshot(KNOWLEDGE, [strong]), "london-dry-gin").stand_ins[0].corrections
    assert "stronger: 50 against 40 % vol" in corrections


def test_the_amount_to_pour_is_in_the_units_of_the_line():
    bar = snapshot(KNOWLEDGE, [bottle(1, "genever", 700)])
    written = line("london-dry-gin", 59.147, amount=2.0, unit="oz")
    corrections = stand_in(bar, "london-dry-gin", spec(written)).stand_ins[0].corrections
    assert "pour 1 ¾ oz of genever instead of 2 oz" in corrections


def test_a_grouping_has_no_figures_to_compare():
    tree = dict(KNOWLEDGE.tree.ingredients)
    tree["gin"] = replace(tree["gin"], family=True, abv_percent=None)
    bar = snapshot(replace(KNOWLEDGE, tree=FamilyTree(tree)), [bottle(1, "genever", 700)])
    assert stand_in(bar, "gin").stand_ins[0].corrections == ()


def test_where_no_stand_in_is_known_that_is_said():
    answer = stand_in(snapshot(KNOWLEDGE), "coconut-milk")
    assert answer.none_because == "no stand-in for it is known"


def test_a_false_friend_is_named_as_not_the_same():
    (friend,) = stand_in(snapshot(KNOWLEDGE), "coconut-milk").confusables
    assert (friend.ingredient, friend.why) == ("cream-of-coconut", "one is sweet and one is not")


def test_what_it_changes_is_said_in_figures_and_allergens():
    tree = dict(KNOWLEDGE.tree.ingredients)
    tree["genever"] = replace(
        tree["genever"], abv_percent=48.0, sugar_g_per_l=60.0, allergens=("tree nuts",)
    )
    bar = snapshot(replace(KNOWLEDGE, tree=FamilyTree(tree)), [bottle(1, "genever", 700)])
    corrections = stand_in(bar, "london-dry-gin").stand_ins[0].corrections
    assert "stronger: 48 against 40 % vol" in corrections
    assert "sweeter: 60 against 0 g/l sugar" in corrections
    assert "brings in tree nuts (allergen)" in corrections


def corrections_of(wanted: str, offered: str, drink: str, shelf=BARE) -> tuple[str, ...]:
    """What the shipped knowledge says of one thing for another in a classic."""
    offers = stand_in(shelf, wanted, classic(drink)).stand_ins
    return next(each for each in offers if each.ingredient == offered).corrections


def test_a_bottle_that_is_stronger_than_its_kind_is_not_poured_by_the_ratio():
    shelf = bar(real_bottle("irish-whiskey", 1, abv_percent=46.0))
    said = corrections_of("bourbon", "irish-whiskey", "Whiskey Sour", shelf)
    assert "pour 2 oz of Irish whiskey to keep the strength" in said
    assert "stronger: 46 against 45 % vol" in said


def test_a_much_stronger_kind_of_a_stand_in_is_poured_less():
    said = corrections_of("white-rum", "navy-rum", "Daiquiri")
    assert "pour 1 ½ oz of navy-style rum instead of 2 oz" in said  # its ratio has it
    assert "stronger: 54.5 against 40 % vol" in said


def test_a_ratio_set_by_taste_stands_and_that_is_said():
    bar = snapshot(KNOWLEDGE, [bottle(1, "genever", 700)])
    said = stand_in(bar, "london-dry-gin", spec(line("london-dry-gin", 60))).stand_ins[0]
    assert "measured by taste, not by strength: 14 % less alcohol" in said.corrections
    assert not any("to keep the strength" in each for each in said.corrections)


def test_after_a_correction_of_the_balance_sugar_and_acid_are_not_compared():
    for offered in stand_in(BARE, "orange-juice", classic("Bronx")).stand_ins:
        if any("to keep the balance" in each for each in offered.corrections):
            assert not any("g/l" in each for each in offered.corrections)
    said = corrections_of("triple-sec", "blue-curacao", "Margarita")
    assert any("to keep the balance" in each for each in said)
    assert not any("g/l" in each for each in said)


OF_A_MARK = r"\d+( [⅛¼⅓⅜½⅝⅔¾⅞])?|[⅛¼⅓⅜½⅝⅔¾⅞]|\d+\.5"


@pytest.mark.parametrize(
    ("wanted", "drink"),
    [
        ("simple-syrup", "Daiquiri"),
        ("honey-syrup", "Bee's Knees"),
        ("lime-juice", "Daiquiri"),
        ("sugar-cube", "Champagne Cocktail"),
        ("orange-juice", "Bronx"),
        ("bourbon", "Whiskey Sour"),
    ],
)
def test_every_amount_to_pour_can_be_measured(wanted, drink):
    if not any(wanted in each.wanted for each in classic(drink).lines):
        pytest.fail(f"{drink} has no {wanted}")
    amount = re.compile(rf"(?:pour|take|and) ({OF_A_MARK}) (?:oz|tsp|g|dash|drop|[a-z]+)")
    found = [
        each
        for offer in stand_in(BARE, wanted, classic(drink)).stand_ins
        for each in offer.corrections
        if each.startswith(("pour", "take"))
    ]
    for said in found:
        assert amount.match(said), said
        assert "22.2 ml" not in said


def test_pieces_are_named_and_the_original_is_as_written():
    said = corrections_of("simple-syrup", "sugar-cube", "Daiquiri")
    assert "take 3 ½ sugar cubes instead of ¾ oz" in said
    (grams,) = corrections_of("simple-syrup", "sugar", "Daiquiri")
    assert grams == "take 14 g of white sugar instead of ¾ oz"


def test_what_can_be_measured_no_otherwise_is_not_said():
    nearly = replace(
        KNOWLEDGE, stand_ins=(StandIn("london-dry-gin", "genever", 0.9, 1.01, "nearly the same"),)
    )
    bar = snapshot(nearly, [bottle(1, "genever", 700)])
    written = spec(line("london-dry-gin", 59.147, amount=2.0, unit="oz"))
    said = stand_in(bar, "london-dry-gin", written).stand_ins[0].corrections
    assert not any(each.startswith("pour") for each in said)


def test_a_thing_to_be_bought_is_offered_once_with_what_else_would_do():
    answer = stand_in(BARE, "coffee-liqueur", classic("Espresso Martini"))
    assert not any(
        one.ingredient == other.ingredient and one.owned == other.owned
        for one, other in pairwise(sorted(answer.stand_ins, key=lambda each: each.ingredient))
    )
    (syrup,) = [each for each in answer.stand_ins if each.ingredient == "coffee-syrup"]
    assert len(syrup.missing) == 1
    assert syrup.missing[0] not in dict(syrup.or_buy)
    named = or_buy_in_words(syrup, TREE)
    assert len(syrup.or_buy) <= MOST_NAMED or "more" in named


def test_buying_what_gets_no_closer_than_what_is_there_is_not_offered():
    shelf = bar(*(real_bottle(key, n) for n, key in enumerate(["coffee-syrup", "aged-rum"], 1)))
    answer = stand_in(shelf, "coffee-liqueur", classic("Espresso Martini"))
    made = [each for each in answer.stand_ins if each.ingredient == "coffee-liqueur"]
    assert [each.owned for each in made] == [True]


def test_an_input_that_is_there_twice_is_named_once():
    twice = MadeFrom("lime-juice", (Input("lime", 1.0), Input("lime", 1.0)), 30.0, "Press.")
    knowledge = replace(KNOWLEDGE, made_from=(twice,))
    answer = stand_in(snapshot(knowledge, [bottle(1, "lime", 9, 9)]), "lime-juice")
    assert answer.stand_ins[0].path == ("Lime juice is made here from lime",)


def test_a_ratio_over_two_steps_is_said_in_digits_that_can_be_poured(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        offers = stand_in(opened.snapshot, "bourbon").stand_ins
    said = [each for offer in offers for each in offer.corrections if "times" in each]
    assert "take 1.1 times the amount" in said
    assert not any("1.1025" in each for each in said)
