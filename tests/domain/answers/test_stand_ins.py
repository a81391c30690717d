"""Stand-ins: ranked, reasoned, and honest where nothing will do."""

from __future__ import annotations

from dataclasses import replace

from barkeep.domain.answers.stand_ins import stand_in
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.knowledge import StandIn, with_owner
from tests.domain.answers.test_makeable import KNOWLEDGE, line, spec
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
    assert "pour 54 ml of genever instead of 60 ml" in within.stand_ins[0].corrections


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
    assert "stronger: 45 against 40 % vol" in corrections


def test_the_amount_to_pour_is_in_the_units_of_the_line():
    bar = snapshot(KNOWLEDGE, [bottle(1, "genever", 700)])
    written = line("london-dry-gin", 59.147, amount=2.0, unit="oz")
    corrections = stand_in(bar, "london-dry-gin", spec(written)).stand_ins[0].corrections
    assert "pour 1.8 oz of genever instead of 2 oz" in corrections


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
    assert "stronger: 43.2 against 40 % vol" in corrections
    assert "sweeter: 54 against 0 g/l sugar" in corrections
    assert "brings in tree nuts (allergen)" in corrections
