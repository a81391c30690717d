"""The garnishes of a shoot: how many of each, and whether they are there, cut from fruit, or got.

A rim takes no piece but a saucer, and what is grated or sprinkled is there while
any of it is. Where a line gives a choice, what is there goes first.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import chain

from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.ingredients.tasks import task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import freely_there
from barkeep.domain.pouring.garnishes import garnish_name
from barkeep.domain.pouring.supply import Supply
from barkeep.domain.shoots.menu import Order
from barkeep.domain.specs.garnish_notes import garnishes_in_words
from barkeep.domain.specs.spec import Line

A_LITTLE: Mapping[Unit, float] = {"g": 2.0, "ml": 5.0}
"""What a rim takes, or a grating or a few drops, of what is not counted (*common practice*)."""


@dataclass(frozen=True, slots=True)
class GarnishNeed:
    """So many pieces of one garnish, by its name in the specs.

    `wanted` are the keys of which any will do, none for what is kept in words;
    `drinks` are the numbers of the orders it is for, which with `is_required`
    cannot be made without it.
    """

    name: str
    count: int
    wanted: tuple[str, ...] = ()
    on_the_rim: bool = False
    drinks: tuple[int, ...] = ()
    is_required: bool = False


@dataclass(frozen=True, slots=True)
class GarnishSource:
    """Where a garnish comes from: what there is of `ingredient` itself, or what it is cut from.

    `have` and `amount` are in the ingredient's unit. `recipe` is how it is cut,
    None where it stands there or has to be got.
    """

    ingredient: str
    unit: Unit
    amount: float
    have: float
    recipe: MadeFrom | None = None

    @property
    def fruit(self) -> Input | None:
        """What it is cut from, and how much of that in all."""
        if self.recipe is None:
            return None
        (fruit,) = self.recipe.inputs
        return Input(fruit.ingredient, fruit.amount * self.amount / self.recipe.yields)


def needed_of(line: Line, order: Order, tree: FamilyTree, number: int = 0) -> GarnishNeed:
    """What one garnish of an order takes; `number` is that of the order."""
    return GarnishNeed(
        name=garnish_name(line, tree),
        count=_pieces(line, order),
        wanted=line.wanted,
        on_the_rim=line.on_the_rim,
        drinks=(number,),
        is_required=order.spec.requires(line),
    )


def garnish_needs(orders: Sequence[Order], tree: FamilyTree) -> tuple[GarnishNeed, ...]:
    """All garnishes of these orders, the same thing once, those kept in words last."""
    found: dict[tuple[str, tuple[str, ...], bool], GarnishNeed] = {}
    for each in (*_known(orders, tree), *_in_words(orders)):
        key = (each.name, each.wanted, each.is_required)
        before = found.get(key)
        found[key] = each if before is None else _with(before, each)
    return tuple(found.values())


def _known(orders: Sequence[Order], tree: FamilyTree) -> Iterator[GarnishNeed]:
    for number, order in enumerate(orders):
        for line in order.spec.lines:
            if line.garnish and order.serves > 0:
                yield needed_of(line, order, tree, number)


def _in_words(orders: Sequence[Order]) -> Iterator[GarnishNeed]:
    for number, order in enumerate(orders):
        for name in garnishes_in_words(order.spec.notes) if order.serves > 0 else ():
            yield GarnishNeed(name, order.serves, drinks=(number,))


def _pieces(line: Line, order: Order) -> int:
    pieces = whole_up((line.amount or 1.0) * order.serves / order.spec.serves)
    return max(1, int(pieces))


def _with(one: GarnishNeed, other: GarnishNeed) -> GarnishNeed:
    drinks = tuple(dict.fromkeys((*one.drinks, *other.drinks)))
    return replace(one, count=one.count + other.count, drinks=drinks)


def source_of(need: GarnishNeed, snapshot: Snapshot, supply: Supply) -> GarnishSource | None:
    """Where a garnish comes from on the day of the snapshot; None of what is kept in words.

    First what stands there, then what is cut from what stands there, then the
    line's first choice, to be got or cut from what is got.
    """
    sources = [_source(need, key, snapshot, supply) for key in need.wanted]
    there = (each for each in sources if each.have >= each.amount)
    some = (each for each in sources if each.have > 0.0 and each.recipe is None)
    cut = (
        each
        for each in sources
        if each.fruit is not None
        and supply.total_of_kind(each.fruit.ingredient, snapshot.knowledge.tree) > 0.0
    )
    return next(chain(there, cut, some, sources), None)


def _source(need: GarnishNeed, key: str, snapshot: Snapshot, supply: Supply) -> GarnishSource:
    tree = snapshot.knowledge.tree
    unit = tree[key].unit
    amount = float(need.count) if unit == "each" else A_LITTLE[unit] * need.count
    have = math.inf if freely_there(key, snapshot) else supply.total_of_kind(key, tree)
    if unit != "each" and have > 0.0:
        have = math.inf  # of what is sprinkled there is enough while there is any
    recipe = snapshot.knowledge.own_way.get(key)
    is_cut = recipe is not None and task_of(recipe, tree) == "cut"
    return GarnishSource(
        ingredient=key,
        unit=unit,
        amount=amount,
        have=have,
        recipe=recipe if is_cut and have < amount else None,
    )
