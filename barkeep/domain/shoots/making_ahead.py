"""What has to be made here, from the needs down to what is bought, and when each must be begun.

Drinks take what is there first; what they are short of is made, and what that
takes and is not there is made before it. The margin lies on what the drinks
take and is not laid on again further down. How long before each kind is begun
is *common practice*.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tasks import Task, is_of_the_last_minute, task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import is_made_here
from barkeep.domain.pouring.sourcing import need
from barkeep.domain.pouring.supply import Supply, supply_of
from barkeep.domain.shoots.menu import Order

DAY_MINUTES = 24 * 60
READY_MINUTES = 30
"""So long before the start everything made is ready."""
HANDS_MINUTES = 30
"""What making one thing takes, resting apart."""
SAME_DAY_MINUTES, SQUEEZE_MINUTES, CUT_MINUTES, LAST_MINUTES = 120, 60, 30, 15
AT_ONCE = frozenset({"boiling-water"})
"""Not made ahead for something else: its recipe says so in its own words."""


NOISE = 3
"""Needs are rounded to so many decimals: the solver's noise must not take another fruit."""


@dataclass(frozen=True, slots=True)
class ToMake:
    """Something to make: how much, from what, how, and how long before the start to begin.

    `inputs` are in each ingredient's own unit; pieces of fruit are whole. It
    rests `rest_hours`; `into` is the key of what it is made for, empty where it
    goes into the drinks themselves, which take `wanted` of it. `is_all` is not
    so where the rest is bought.
    """

    ingredient: str
    amount: float
    unit: Unit
    inputs: tuple[tuple[str, float, Unit], ...]
    how: str
    work: Task
    minutes_before: int
    rest_hours: float = 0.0
    into: str = ""
    is_all: bool = True
    wanted: float = 0.0

    @property
    def spare(self) -> float:
        """How much more is made than the drinks take, a share."""
        return self.amount / self.wanted - 1.0 if self.wanted else 0.0

    @property
    def squeezed(self) -> bool:
        """Whether it is juice straight out of fruit."""
        return self.work == "squeeze"

    @property
    def key(self) -> str:
        """What it is ticked off by."""
        use = f":for-{self.into}" if self.into else ""
        return f"{self.work}:{self.ingredient}{use}"


def to_make(orders: Sequence[Order], snapshot: Snapshot, margin: float) -> tuple[ToMake, ...]:
    """Everything the orders take that is not there and can be made, what is begun first before."""
    maker = _Maker(snapshot, supply_of(snapshot))
    needs = sorted(_needs(orders, maker.tree).items(), key=lambda each: maker.reach(each[0]))
    short = [(wanted[0], maker.taken(wanted, amount)) for wanted, amount in needs]
    totals: dict[str, float] = {}
    for key, amount in short:
        if amount > 0.0:
            totals[key] = totals.get(key, 0.0) + amount
    made: list[ToMake] = []
    for key, amount in totals.items():
        wanted = amount * (1.0 + margin)
        much = maker.to_be_made(key, wanted) if key in maker.recipes else 0.0
        if much > 0.0:
            made_for = min(amount, much)
            steps = maker.made(key, made_for, margin=much / made_for - 1.0)
            made += [replace(each, is_all=much >= amount or bool(each.into)) for each in steps]
    return tuple(sorted(_joined(made), key=lambda each: -each.minutes_before))


def _joined(made: Sequence[ToMake]) -> Iterator[ToMake]:
    """The same thing for the same use is made in one go, begun when the first of it must be."""
    found: dict[str, ToMake] = {}
    for each in made:
        before = found.get(each.key)
        found[each.key] = each if before is None else _with(before, each)
    yield from found.values()


def _with(one: ToMake, other: ToMake) -> ToMake:
    inputs = tuple(
        (key, amount + more, unit)
        for (key, amount, unit), (_key, more, _unit) in zip(one.inputs, other.inputs, strict=True)
    )
    begun = max(one.minutes_before, other.minutes_before)
    return replace(
        one,
        amount=one.amount + other.amount,
        wanted=one.wanted + other.wanted,
        inputs=inputs,
        minutes_before=begun,
    )


def _needs(orders: Sequence[Order], tree: FamilyTree) -> Mapping[tuple[str, ...], float]:
    """What lines ask for -> how much of it they take, garnishes and optional lines apart."""
    total: dict[tuple[str, ...], float] = {}
    for order in orders:
        for line in order.spec.required_lines:
            amount = need(line, tree) * order.serves
            total[line.wanted] = total.get(line.wanted, 0.0) + amount
    return {key: amount for key, amount in total.items() if amount > 0.0}


@dataclass
class _Maker:
    """Hands out what is there, each amount once."""

    snapshot: Snapshot
    supply: Supply
    used: dict[str, float] = field(default_factory=dict)

    @property
    def tree(self) -> FamilyTree:
        """The kinds there are."""
        return self.snapshot.knowledge.tree

    @property
    def recipes(self) -> Mapping[str, MadeFrom]:
        """How each thing is made here."""
        return self.snapshot.knowledge.own_way

    def reach(self, wanted: tuple[str, ...]) -> int:
        """How many kinds would do: who is served by few comes first."""
        return sum(1 + len(self.tree.descendants(key)) for key in wanted)

    def taken(self, wanted: tuple[str, ...], amount: float) -> float:
        """Take so much of what is there; what is then still short."""
        kinds = dict.fromkeys(kind for key in wanted for kind in self.tree.poured_as(key))
        for kind in kinds:
            if kind in self.supply.always:
                return 0.0
            here = min(amount, self.left(kind))
            if here > 0.0:
                self.used[kind] = self.used.get(kind, 0.0) + here
                amount -= here
        return max(0.0, amount)

    def left(self, kind: str) -> float:
        """What is not handed out yet of just this kind."""
        return self.supply.total(kind) - self.used.get(kind, 0.0)

    def to_be_made(self, key: str, amount: float) -> float:
        """How much of a thing that is lacking is made; the rest of it is bought.

        What one buys is made only as far as what is there for it goes.
        """
        if is_made_here(key, self.snapshot):
            return amount
        return min(amount, self._could_be_made(key, frozenset()))

    def _could_be_made(self, key: str, within: frozenset[str]) -> float:
        """The most that what is there would give; `within` holds what it is made for."""
        recipe = self.recipes.get(key)
        if recipe is None or key in within:
            return 0.0
        gives = (
            self._at_hand(each.ingredient, within | {key}) * recipe.yields / each.amount
            for each in recipe.inputs
            if each.ingredient not in self.supply.always
        )
        return min(gives, default=math.inf)

    def _at_hand(self, key: str, within: frozenset[str]) -> float:
        there = sum(self.left(kind) for kind in (key, *self.tree.descendants(key)))
        return there + self._could_be_made(key, within)

    def made(
        self,
        key: str,
        amount: float,
        *,
        margin: float = 0.0,
        into: str = "",
        by: int | None = None,
        path: str = "",
    ) -> Iterator[ToMake]:
        """One thing to make, after what it takes that has to be made itself.

        The margin is a share on top of the amount. `by` is when it must be
        ready, in minutes before the start; None for what goes into the drinks.
        """
        recipe, tree = self.recipes[key], self.tree
        begun = self._begun(recipe, by)
        inputs = []
        for each in recipe.inputs:
            unit = tree[each.ingredient].unit
            wanted = with_margin(each.amount * amount / recipe.yields, margin, unit)
            inputs.append((each.ingredient, wanted, unit))
            short = self.taken((each.ingredient,), wanted)
            known = each.ingredient in self.recipes and each.ingredient not in AT_ONCE
            in_a_circle = f"/{each.ingredient}/" in f"{path}/{key}/"
            much = self.to_be_made(each.ingredient, short) if short > 0.0 and known else 0.0
            if much > 0.0 and not in_a_circle:
                yield from self.made(
                    each.ingredient, amount=much, into=key, by=begun, path=f"{path}/{key}"
                )
        yield ToMake(
            ingredient=key,
            amount=self._given(recipe, inputs, amount * (1.0 + margin)),
            unit=tree[key].unit,
            inputs=tuple(inputs),
            how=recipe.how,
            work=task_of(recipe, tree),
            minutes_before=begun,
            rest_hours=recipe.rest_hours,
            into=into,
            wanted=0.0 if into else amount,
        )

    def _given(
        self, recipe: MadeFrom, inputs: Sequence[tuple[str, float, Unit]], amount: float
    ) -> float:
        """What comes out: the amount, where the whole pieces that go in give so much."""
        if len(inputs) == 1 and inputs[0][2] == "each":
            amount = min(amount, inputs[0][1] * recipe.yields / recipe.inputs[0].amount)
        unit = self.tree[recipe.made].unit
        return float(math.ceil(amount - 1e-9)) if unit == "each" else amount

    def _begun(self, recipe: MadeFrom, by: int | None) -> int:
        took = HANDS_MINUTES + math.ceil(recipe.rest_hours * 60.0)
        usual = self._usually(recipe) if by is None else by + took
        return max(usual, READY_MINUTES + took) if recipe.rest_hours else usual

    def _usually(self, recipe: MadeFrom) -> int:
        """How long before the start it is begun where nothing hurries it."""
        if is_of_the_last_minute(recipe, self.tree):
            return LAST_MINUTES
        match task_of(recipe, self.tree):
            case "separate":
                return LAST_MINUTES
            case "cut":
                return CUT_MINUTES
            case "squeeze":
                return SQUEEZE_MINUTES
        life = self.tree[recipe.made].shelf_life_days
        return SAME_DAY_MINUTES if life is not None and life <= 1 else DAY_MINUTES


def with_margin(amount: float, margin: float, unit: Unit) -> float:
    """So much and a share on top of it; of whole pieces the margin never breaks another.

    >>> [with_margin(each, 0.15, "each") for each in (4.0, 4.6, 7.0)], with_margin(90.0, 0.5, "ml")
    ([4.0, 5.0, 8.0], 135.0)
    """
    if unit != "each":
        return amount * (1.0 + margin)
    return float(max(math.ceil(amount - 1e-9), math.floor(amount * (1.0 + margin) + 1e-9)))
