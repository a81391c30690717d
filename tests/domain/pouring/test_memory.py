"""Memory makes the answers quicker and changes none of them."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import Level
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import drink_for, tonight
from tests.how_much import some_of
from tests.walked import walked
from tests.worlds import having, random_bar, random_spec


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
