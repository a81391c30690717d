"""A whole menu against the levels: brute force on small bars, a flow on larger ones."""

from __future__ import annotations

from dataclasses import replace
from itertools import product
from random import Random

import networkx as nx
import pytest

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.shoots.menu import Menu, Order, menu
from barkeep.domain.specs.spec import Line, Spec
from tests import worlds
from tests.walked import walked

KINDS = ("a", "b", "c", "d")


def small_bar(chance: Random, kinds=KINDS, units: int = 4):
    """A bar whose every line takes 10 ml and whose stand-ins are one for one."""
    tree = FamilyTree({key: Ingredient(key, key.upper()) for key in kinds})
    pairs = {(chance.choice(kinds), chance.choice(kinds)) for _ in range(len(kinds))}
    stand_ins = tuple(
        StandIn(one, other, chance.choice([0.9, 0.85]), 1.0, "near")
        for one, other in sorted(pairs)
        if one != other
    )
    bottles = [
        worlds.bottle(number, key, 10.0 * chance.randint(0, units), 700.0)
        for number, key in enumerate(kinds, 1)
    ]
    return worlds.snapshot(Knowledge(tree, stand_ins), bottles)


def orders_for(chance: Random, kinds=KINDS, most_serves: int = 3, count: int = 2):
    found = []
    for number in range(count):
        keys = chance.sample(kinds, chance.randint(1, 2))
        lines = tuple(Line(f"10 ml {key}", key, 10.0, None, "ml", 10.0) for key in keys)
        found.append(Order(Spec(f"Spec {number}", lines, "Build."), chance.randint(1, most_serves)))
    return found


def ways_of(bar, key):
    """The kinds a line of this kind may be poured from, by the entries alone."""
    entries = [each for each in bar.knowledge.stand_ins if each.wanted == key]
    first = {key: 1.0} | {each.offered: each.closeness for each in entries}
    both = dict(first)
    for middle, closeness in first.items():
        for each in bar.knowledge.stand_ins:
            if each.wanted == middle and each.offered not in first:
                both[each.offered] = max(both.get(each.offered, 0), closeness * each.closeness)
    return [kind for kind, closeness in both.items() if closeness >= 0.8]


def fits(bar, orders, serves) -> bool:
    """Whether some way to pour that many serves of each order leaves no bottle below nothing."""
    have = {bottle.ingredient: round(bottle.level.amount / 10) for bottle in bar.bottles}
    asked = [
        ways_of(bar, line.ingredient)
        for order, count in zip(orders, serves, strict=True)
        for line in order.spec.lines
        for _ in range(count)
    ]
    return any(
        all(poured.count(kind) <= have[kind] for kind in KINDS) for poured in product(*asked)
    )


def brute(bar, orders):
    every = product(*(range(order.serves + 1) for order in orders))
    return max((each for each in every if fits(bar, orders, each)), key=lambda each: sum(each))


@walked("seed", range(60))
def test_the_menu_is_what_trying_everything_finds(seed):
    chance = Random(seed)
    bar, orders = small_bar(chance), orders_for(chance)
    answer = menu(orders, bar)
    best = brute(bar, orders)
    assert answer.possible == (sum(best) == sum(order.serves for order in orders))
    kept = [order.serves - drop for order, drop in zip(orders, answer.drop, strict=True)]
    assert sum(kept) == sum(best)
    assert fits(bar, orders, kept)
    adds_up(answer, bar)


@walked("seed", range(12))
def test_large_menus_agree_with_a_maximum_flow(seed):
    chance = Random(1000 + seed)
    kinds = tuple(f"k{number}" for number in range(12))
    bar = small_bar(chance, kinds, units=40)
    orders = orders_for(chance, kinds, most_serves=20, count=10)
    graph = nx.DiGraph()
    for bottle in bar.bottles:
        graph.add_edge(bottle.ingredient, "sink", capacity=round(bottle.level.amount / 10))
    asked = 0
    for number, order in enumerate(orders):
        for place, line in enumerate(order.spec.lines):
            asked += order.serves
            graph.add_edge("source", (number, place), capacity=order.serves)
            for kind in ways_of(bar, line.ingredient):
                graph.add_edge((number, place), kind)
    flow = nx.maximum_flow_value(graph, "source", "sink")
    answer = menu(orders, bar)
    assert sum(line.unmet for line in answer.lines) == pytest.approx(asked - flow)
    adds_up(answer, bar)


def adds_up(answer: Menu, bar) -> None:
    """Every line's serves are accounted for, and no bottle gives more than it has."""
    for line in answer.lines:
        served = sum(each.serves for each in line.poured)
        assert served + line.unmet == pytest.approx(line.order.serves)
        assert line.short == pytest.approx(10.0 * line.unmet)
    for draw in answer.draws:
        assert draw.amount <= draw.bottle.level.amount + 1e-6
    poured = sum(each.serves for line in answer.lines for each in line.poured)
    assert sum(draw.amount for draw in answer.draws) == pytest.approx(10.0 * poured)


def one_line(key, quantity=10.0):
    return (Line(f"{quantity} ml {key}", key, quantity, None, "ml", quantity),)


def test_exact_is_poured_before_a_stand_in_where_both_would_do():
    tree = FamilyTree({key: Ingredient(key, key.upper()) for key in KINDS})
    knowledge = Knowledge(tree, (StandIn("a", "b", 0.9, 1.0, "near"),))
    bar = worlds.snapshot(knowledge, [worlds.bottle(1, "a", 20.0), worlds.bottle(2, "b", 100.0)])
    (line,) = menu([Order(Spec("X", one_line("a")), 3)], bar).lines
    assert [(each.derivation.offered, each.serves) for each in line.poured] == [
        ("a", pytest.approx(2.0)),
        ("b", pytest.approx(1.0)),
    ]


def test_open_bottles_go_first():
    tree = FamilyTree({"a": Ingredient("a", "A")})
    full = worlds.bottle(1, "a", 100.0)
    sealed = replace(full, level=replace(full.level, state="sealed"))
    bar = worlds.snapshot(Knowledge(tree), [sealed, worlds.bottle(2, "a", 30.0)])
    answer = menu([Order(Spec("X", one_line("a")), 5)], bar)
    assert {draw.bottle.id: draw.amount for draw in answer.draws} == {
        2: pytest.approx(30.0),
        1: pytest.approx(20.0),
    }


def test_a_looser_stand_in_that_saves_the_menu_is_named():
    tree = FamilyTree({key: Ingredient(key, key.upper()) for key in KINDS})
    knowledge = Knowledge(tree, (StandIn("a", "b", 0.7, 1.0, "far"),))
    bar = worlds.snapshot(knowledge, [worlds.bottle(2, "b", 100.0)])
    answer = menu([Order(Spec("X", one_line("a")), 2)], bar)
    assert not answer.possible
    assert answer.drop == (2,)
    assert answer.lacking[0].short == pytest.approx(20.0)
    (saved,) = answer.saved_by
    assert saved.poured[0].derivation.offered == "b"
    assert menu([Order(Spec("X", one_line("a")), 2)], bar, "loose").possible


def test_nothing_asked_is_possible_and_draws_nothing(knowledge):
    bar = worlds.snapshot(knowledge)
    answer = menu([Order(Spec("X", one_line("gin")), 0)], bar)
    assert (answer.possible, answer.draws, answer.drop) == (True, (), (0,))


def test_one_order_agrees_with_tonight(sample_bar, clock):
    from barkeep.application.bar import Bar

    with Bar.open(sample_bar, clock=clock) as bar:
        snapshot = bar.snapshot
    for drink in tonight(snapshot, serves=2):
        answer = menu([Order(drink.spec, 2)], snapshot)
        assert answer.possible == drink.makeable, drink.spec.name
