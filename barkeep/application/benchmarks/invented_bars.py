"""Bars of any size, made up from a seed out of what the book of classics draws on."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from datetime import date
from random import Random

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.spec import Line, Spec

LEAST_LINES, MOST_LINES = 4, 6


def invented_bar(
    knowledge: Knowledge, specs: int, bottles: int, *, seed: int, on: date
) -> Snapshot:
    """So many specs and open bottles over the shipped tree, without the book itself.

    Each spec takes the technique of a classic and four to six of the book's
    own lines, an ingredient once; a bottle's kind comes up as often as lines
    ask for it. The same seed makes the same bar. `specs` and `bottles` are
    counts from 0 on.
    """
    chance = Random(seed)
    shelf = tuple(_bottles(chance, knowledge, bottles))
    return Snapshot(
        knowledge,
        on,
        products=tuple(each.product for each in shelf),
        bottles=shelf,
        specs=tuple(_specs(chance, knowledge, specs)),
        settings=Settings(classics=False),
    )


def _specs(chance: Random, knowledge: Knowledge, count: int) -> Iterator[Spec]:
    lines = [line for classic in knowledge.classics for line in classic.lines]
    for number in range(1, count + 1):
        like = chance.choice(knowledge.classics)
        yield Spec(
            f"Invented {number:06}",
            _lines(chance, lines),
            technique=like.technique,
            glass=like.glass,
            id=number,
        )


def _lines(chance: Random, lines: list[Line]) -> tuple[Line, ...]:
    """Four to six lines; among so many drawn there are as many different ingredients."""
    wanted = chance.randint(LEAST_LINES, MOST_LINES)
    drawn: dict[str, Line] = {}
    while len(drawn) < wanted:
        line = chance.choice(lines)
        drawn.setdefault(line.ingredient, line)
    return tuple(drawn.values())


def _bottles(chance: Random, knowledge: Knowledge, count: int) -> Iterator[Bottle]:
    tree = knowledge.tree
    asked = Counter(line.ingredient for spec in knowledge.classics for line in spec.lines)
    kinds, weights = list(asked), list(asked.values())
    for number in range(1, count + 1):
        key = _sold(chance, tree, chance.choices(kinds, weights)[0])
        size = tree[key].typical_size
        product = Product(
            name=f"{tree.name(key)} {number}",
            maker="Invented",
            ingredient=key,
            size=size,
            unit=tree[key].unit,
            id=number,
        )
        level = Level(size * chance.uniform(0.05, 1.0), "open")
        yield Bottle(number, product, level, number)


def _sold(chance: Random, tree: FamilyTree, key: str) -> str:
    """A kind that a shop sells: of a family, one of those below it."""
    if not tree[key].family:
        return key
    return chance.choice([each for each in sorted(tree.descendants(key)) if not tree[each].family])
