"""Memory makes the answers quicker and changes none of them."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Level
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.pouring.assessment import assess
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import drink_for, tonight, verdicts
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.how_much import some_of
from tests.walked import walked
from tests.worlds import bottle, having, random_bar, random_spec, snapshot


def changed_somehow(chance: Random, bar):
    """Pour, buy, lose, rewrite or let a day pass."""
    kind = chance.choice(["pour", "buy", "lose", "spec", "day", "always"])
    if kind == "pour" and bar.bottles:
        bottles = list(bar.bottles)
        place = chance.randrange(len(bottles))
        level = Level(chance.choice([0.0, 15.0, 300.0]), "open")
        bottles[place] = replace(bottles[place], level=level)
        return replace(bar, bottles=tuple(bottles))
    if kind == "lose" and bar.bottles:
        return replace(bar, bottles=bar.bottles[1:])
    if kind == "spec":
        rewritten = random_spec(chance, bar.knowledge, bar.specs[0].name)
        return replace(bar, specs=(rewritten, *bar.specs[1:]))
    if kind == "day":
        return replace(bar, on=bar.on.replace(day=bar.on.day % 28 + 1))
    if kind == "always":
        return replace(bar, settings=Settings(not_there=frozenset(bar.always_there)))
    return having(bar, chance.choice(list(bar.knowledge.tree)))


@walked("seed", some_of(range(60), 2))
def test_asking_again_after_any_change_gives_what_asking_afresh_gives(seed):
    chance = Random(seed)
    bar = random_bar(chance)
    memory = Memory()
    for _ in range(6):
        assert tonight(bar, "close", 1, memory) == tonight(bar, "close", 1)
        assert next_bottle(bar, "close", memory) == next_bottle(bar, "close")
        bar = changed_somehow(chance, bar)


def test_only_what_a_change_can_reach_is_settled_again(monkeypatch):
    settled = []

    def noted(spec, *rest):
        settled.append(spec.name)
        return drink_for(spec, *rest)

    monkeypatch.setattr("barkeep.domain.pouring.verdicts.drink_for", noted)
    bar = random_bar(Random(1))
    memory = Memory()
    tonight(bar, memory=memory)
    assert len(settled) == len(bar.specs)
    settled.clear()
    tonight(bar, memory=memory)
    assert settled == []
    poured = replace(bar.bottles[0], level=Level(1.0, "open"))
    tonight(replace(bar, bottles=(poured, *bar.bottles[1:])), memory=memory)
    reach = bar.knowledge.graph.reach
    touched = [
        spec.name
        for spec in bar.specs
        if any(poured.ingredient in reach(line.ingredient) for line in spec.lines)
    ]
    assert sorted(settled) == sorted(touched)
    assert 0 < len(settled) < len(bar.specs)


def counted(bar, key: str, amount: float):
    """The bar after the first bottle of a kind was found to hold so much."""
    one = next(each for each in bar.bottles if each.ingredient == key)
    level = replace(one.level, amount=amount)
    return bar.changed(
        bottles=tuple(replace(each, level=level) if each is one else each for each in bar.bottles)
    )


COUNTS = [
    # what is poured, what is there before; what is counted, the verdict for one and for three
    (
        [line("gin", 60)],
        {"gin": 700},
        [(60.0, "ready", "one_short"), (59.9, "one_short", "one_short")],
    ),
    (
        [line("gin", 60)],
        {"gin": 20},
        [(40.0, "one_short", "one_short"), (60.0, "ready", "one_short")],
    ),
    ([line("gin", 60)], {"gin": 700}, [(180.0, "ready", "ready"), (179.0, "ready", "one_short")]),
    # Two lines from one bottle, each of which it is enough for.
    (
        [line("gin", 60), line("gin", 15)],
        {"gin": 75},
        [
            (74.0, "one_short", "one_short"),
            (60.0, "one_short", "one_short"),
            (225.0, "ready", "ready"),
        ],
    ),
    # Two lines from two bottles together, the second of which stands in.
    (
        [line("london-dry-gin", 60), line("london-dry-gin", 5)],
        {"london-dry-gin": 700, "genever": 40},
        [(21.0, "stand_in", "one_short"), (20.0, "one_short", "one_short")],
    ),
    # Juice from limes, four of which make three serves, and what else is poured of it.
    (
        [line("lime-juice", 40), line("lime", 1)],
        {"lime": 9},
        [(2.0, "one_short", "short"), (3.0, "ready", "one_short"), (7.0, "ready", "ready")],
    ),
    # What stands in once the first bottle is too low for all lines.
    (
        [line("london-dry-gin", 60)],
        {"london-dry-gin": 700, "genever": 100},
        [(50.0, "stand_in", "one_short"), (130.0, "ready", "stand_in"), (180.0, "ready", "ready")],
    ),
    # Both bottles together.
    (
        [line("london-dry-gin", 60)],
        {"london-dry-gin": 700, "genever": 20},
        [
            (45.0, "stand_in", "one_short"),
            (30.0, "one_short", "one_short"),
            (60.0, "ready", "one_short"),
        ],
    ),
]


@pytest.mark.parametrize(("lines", "there", "counts"), COUNTS)
def test_a_count_tells_what_it_bears_on(lines, there, counts):
    bottles = [bottle(number, *each) for number, each in enumerate(there.items(), 1)]
    bar, memory = snapshot(KNOWLEDGE, bottles, [spec(*lines)]), Memory()
    for step, (amount, for_one, for_three) in enumerate([(None, None, None), *counts]):
        if amount is not None:
            bar = counted(bar, next(iter(there)), amount)
        found = [verdicts(bar, "close", serves, memory).of for serves in (1, 3)]
        assert next_bottle(bar, "close", memory) == next_bottle(bar, "close"), step
        if amount is not None:
            assert found == [(for_one,), (for_three,)], step


@walked("seed", some_of(range(80), 8))
def test_after_any_counts_the_answer_is_that_of_a_bar_asked_for_the_first_time(seed):
    chance, memory = Random(seed), Memory()
    bar = random_bar(chance)
    within = chance.choice(["exact", "close", "loose"])
    for _ in range(8):
        for serves in (1, 3):
            afresh = verdicts(bar, within, serves)
            assert verdicts(bar, within, serves, memory) == afresh
        assert next_bottle(bar, within, memory) == next_bottle(bar, within)
        key = chance.choice(bar.bottles).ingredient
        amount = chance.choice(
            [2.0, 5.0, 6.0, 15.0, 30.0, 59.0, 60.0, 65.0, 95.0, 179.0, 180.0, 700.0]
        )
        bar = counted(bar, key, amount)


def test_a_count_tells_of_what_a_purchase_would_be_mixed_with():
    more = {
        **KNOWLEDGE.tree.ingredients,
        "caraway": Ingredient("caraway", "Caraway", unit="g"),
    }
    knowledge = Knowledge(
        FamilyTree(more),
        made_from=(MadeFrom("kummel", (Input("caraway", 20), Input("gin", 700)), 700.0, "Steep."),),
    )
    bottles = [bottle(1, "gin", 700), bottle(2, "kummel", 10)]
    bar, memory = snapshot(knowledge, bottles, [spec(line("kummel", 30))]), Memory()
    for amount, turning in [
        (700.0, {"caraway", "kummel"}),
        (25.0, {"caraway", "kummel"}),
        (15.0, {"kummel"}),
        (20.0, {"caraway", "kummel"}),
    ]:
        bar = counted(bar, "gin", amount)
        found = next_bottle(bar, "close", memory)
        forms = [form.ingredient for each in found if each.unlocks for form in each.forms]
        assert set(forms) == turning, amount


def test_a_count_that_leaves_enough_has_no_drink_looked_at_again(monkeypatch):
    looked_at = []

    def noted(spec, sourcing, *rest):
        looked_at.append(spec.name)
        return assess(spec, sourcing, *rest)

    monkeypatch.setattr("barkeep.domain.pouring.verdicts.assess", noted)
    monkeypatch.setattr("barkeep.domain.buying.next_bottle.assess", noted)
    drinks = [
        spec(line("gin", 60), line("kummel", 20), name="Short of kümmel"),
        spec(line("gin", 20), line("genever", 30), name="Short of genever"),
    ]
    bottles = [bottle(1, "gin", 700), bottle(2, "kummel", 10), bottle(3, "genever", 10)]
    bar, memory = snapshot(KNOWLEDGE, bottles, drinks), Memory()
    for amount, expected in [
        (700.0, ["Short of genever", "Short of kümmel"]),
        (300.0, []),
        (40.0, ["Short of kümmel"]),
        (50.0, ["Short of kümmel"]),
        (600.0, ["Short of kümmel"]),
        (500.0, []),
    ]:
        bar = counted(bar, "gin", amount)
        looked_at.clear()
        verdicts(bar, memory=memory)
        next_bottle(bar, memory=memory)
        assert sorted(looked_at) == expected, amount
