"""The best derivation is exact, circles and recipes or not."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace
from random import Random

import pytest

from barkeep.domain.bar.knowledge import with_owner
from barkeep.domain.ingredients.derivations import Derivations, KindOf, Want
from barkeep.domain.ingredients.figures import liquid_of
from barkeep.domain.ingredients.graph import Rule, best_closeness
from barkeep.domain.ingredients.relations import STAND_IN_STEPS, StandIn
from tests.walked import walked
from tests.worlds import random_bar


def best_by_enumeration(node: str, rules: list[Rule[str]], owned: set[str], seen: tuple[str, ...]):
    """Try every derivation that never needs a node to derive itself: slow and plainly right."""
    best = 1.0 if node in owned else 0.0
    for rule in rules:
        if rule.head != node or set(rule.body) & {node, *seen}:
            continue
        worth = rule.closeness
        for each in rule.body:
            worth *= best_by_enumeration(each, rules, owned, (*seen, node))
        best = max(best, worth)
    return best


def random_rules(chance: Random) -> tuple[list[str], list[Rule[str]], set[str]]:
    nodes = [f"n{number}" for number in range(chance.randint(3, 7))]
    rules = [
        Rule(
            chance.choice(nodes),
            chance.choice([1.0, 0.9, 0.7, 0.5]),
            tuple(chance.choice(nodes) for _ in range(chance.choice([1, 1, 2, 3]))),
        )
        for _ in range(chance.randint(2, 10))
    ]
    return nodes, rules, set(chance.sample(nodes, chance.randint(0, 2)))


@pytest.mark.parametrize("hundred", range(5))
def test_best_closeness_equals_enumeration_on_500_random_graphs(hundred):
    for seed in range(hundred * 100, hundred * 100 + 100):
        nodes, rules, owned = random_rules(Random(seed))
        found = best_closeness(rules, owned)
        for node in nodes:
            expected = best_by_enumeration(node, rules, owned, ())
            assert found.get(node, 0.0) == pytest.approx(expected, abs=1e-12), (seed, node)


def test_some_of_the_random_graphs_have_circles_and_recipes():
    import networkx as nx

    circular = together = 0
    for seed in range(500):
        _, rules, _ = random_rules(Random(seed))
        graph = nx.DiGraph((rule.head, each) for rule in rules for each in rule.body)
        circular += not nx.is_directed_acyclic_graph(graph)
        together += any(len(set(rule.body)) > 1 for rule in rules)
    assert circular > 250
    assert together > 250


def test_a_circle_of_perfect_stand_ins_gives_nothing_from_nothing():
    rules = [Rule("a", 1.0, ("b",)), Rule("b", 1.0, ("a",))]
    assert best_closeness(rules, set()) == {}
    assert best_closeness(rules, {"b"}) == {"a": 1.0, "b": 1.0}


def test_an_input_taken_twice_counts_twice():
    rules = [Rule("a", 0.9, ("b",)), Rule("c", 1.0, ("a", "a"))]
    assert best_closeness(rules, {"b"})["c"] == pytest.approx(0.81)


@walked("seed", range(60))
def test_the_search_reaches_the_bound_where_nothing_is_scoped_or_confused(seed):
    """The bound comes from Knuth's algorithm, the search from walking every path."""
    bar = random_bar(Random(seed))
    knowledge = bar.knowledge
    graph = knowledge.graph
    world = Derivations(graph, knowledge.tree, bar.owned)
    scoped = any(entry.scope for entry in knowledge.stand_ins)
    for key in knowledge.tree:
        best = max((each.closeness for each in world.of(Want(key))), default=0.0)
        bound = world.bound(key, STAND_IN_STEPS)
        assert best <= bound + 1e-12
        tree = knowledge.tree
        upward = any(tree.is_a(each.wanted, each.offered) for each in knowledge.stand_ins)
        pairs = {(each.wanted, each.offered) for each in knowledge.stand_ins}
        overruled = any((a, c) in pairs for a, b in pairs for b2, c in pairs if b == b2)
        below = [(a, a2) for a, b in pairs for a2, c in pairs if c != b and tree.is_a(c, b)]
        apart = any(said in (taken, key) for taken, said in below)
        if not (scoped or upward or overruled or apart or tree.confusables):
            assert best == pytest.approx(bound)


def test_no_derivation_ever_offers_a_false_friend_or_breaks_its_own_sum():
    for seed in range(200):
        bar = random_bar(Random(seed))
        tree = bar.knowledge.tree
        world = Derivations(bar.knowledge.graph, tree, bar.owned)
        for key in tree:
            for each in (*world.of(Want(key)), *world.buying_one(Want(key))):
                assert tree.mistaken(key, each.offered) is None
                assert 0.0 < each.closeness <= 1.0
                assert each.leaves - {each.buying} <= bar.owned
                assert each.buying not in bar.owned


def test_what_the_book_says_of_a_pair_is_what_is_offered(knowledge):
    """Bourbon for rye is close, a wheated one less so: no way through a general kind is taken."""
    offered = defaultdict(list)
    for entries in knowledge.graph.stand_ins.values():
        for entry in entries:
            offered[entry.offered].append(entry)
    for there, entries in offered.items():
        world = Derivations(knowledge.graph, knowledge.tree, frozenset({there}))
        for entry in entries:
            best = world.of(Want(entry.wanted))[0]
            assert best.stand_ins == (entry,)
            assert (best.closeness, best.ratio) == (entry.closeness, entry.ratio)


def test_a_spirit_taken_as_a_kind_of_a_stand_in_is_poured_by_its_strength(knowledge):
    """The ratio is of the kind above: what is much stronger has an entry of its own."""
    tree = knowledge.tree
    world = Derivations(knowledge.graph, tree, frozenset())
    shares = {}
    for wanted in (each for each in tree if tree[each].unit == "ml" and not tree[each].family):
        for way in world.buying_one(Want(wanted, floor=0.6)):
            ours, theirs = liquid_of(wanted, tree), liquid_of(way.offered, tree)
            dry = all(each.abv.value >= 30 and each.sugar.value < 20 for each in (ours, theirs))
            if dry and len(way.stand_ins) == 1 and isinstance(way.steps[-1], KindOf):
                share = way.ratio * theirs.abv.value / ours.abv.value
                shares[wanted, way.offered] = share
    assert len(shares) > 20
    assert {pair: share for pair, share in shares.items() if abs(share - 1.0) > 0.12} == {}


def test_an_owners_word_for_a_kind_holds_for_what_is_below_it(knowledge):
    said = StandIn("rye-whiskey", "bourbon", 0.95, 1.0, "we like it so")
    for own, worth in ((said, 0.95), (replace(said, wanted="calvados"), 0.7)):
        ours = with_owner(knowledge, stand_ins=(own,))
        world = Derivations(ours.graph, ours.tree, frozenset({"wheated-bourbon"}))
        assert world.of(Want("rye-whiskey"))[0].closeness == worth
