"""What has to be made here, from the needs down to what is bought, and when each must be begun.

Drinks take what is there first; what they are short of is made, and what that
takes and is not there is made before it. The margin lies on what the drinks
take and is not laid on again further down. How long before each kind is begun
is *common practice*.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.rounding import whole_up, whole_with_spare
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.fruit import WHOLE, Part, parts_taken
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tasks import Task, is_of_the_last_minute, task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.available import Available, available_in
from barkeep.domain.making.made_here import is_made_here
from barkeep.domain.pouring.sourcing import need
from barkeep.domain.shoots.menu import Order

MARGIN = 0.15
"""What is squeezed and made beyond the need, a share (*common practice*)."""
DAY_MINUTES = 24 * 60
READY_MINUTES = 30
"""So long before the start everything made is ready."""
HANDS_MINUTES = 30
"""What making one thing takes, resting apart."""
SAME_DAY_MINUTES, SQUEEZE_MINUTES, CUT_MINUTES, LAST_MINUTES = 120, 60, 30, 15
AT_ONCE = frozenset({"boiling-water"})
"""Not made ahead for something else: its recipe says so in its own words."""


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
    task: Task
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
        return self.task == "squeeze"

    @property
    def key(self) -> str:
        """What it is ticked off by."""
        use = f":for-{self.into}" if self.into else ""
        return f"{self.task}:{self.ingredient}{use}"


def to_make(orders: Sequence[Order], snapshot: Snapshot, margin: float) -> tuple[ToMake, ...]:
    """Everything the orders take that is not there and can be made, what is begun first before."""
    maker = _Maker(available_in(snapshot))
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
    """Takes what is there, and says how to make what is not."""

    stock: Available

    @property
    def snapshot(self) -> Snapshot:
        """The bar."""
        return self.stock.snapshot

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

    def taken(
        self, wanted: tuple[str, ...], amount: float, parts: tuple[Part, ...] = WHOLE
    ) -> float:
        """Take so much of what is there, these parts of a fruit; what is then still short."""
        kinds = {kind for key in wanted for kind in self.tree.poured_as(key)}
        if not self.snapshot.always_there.isdisjoint(kinds):
            return 0.0
        for key in wanted:
            amount -= self.stock.draw(key, amount, parts)
        return max(0.0, amount)

    def to_be_made(self, key: str, amount: float) -> float:
        """How much of a thing that is lacking is made; the rest of it is bought.

        What one buys is made only as far as what is there for it goes.
        """
        if is_made_here(key, self.snapshot):
            return amount
        return self.stock.makes(key, amount)

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
        begun, parts = self._begun(recipe, by), parts_taken(recipe, tree)
        inputs = []
        for each in recipe.inputs:
            unit = tree[each.ingredient].unit
            wanted = with_margin(each.amount * amount / recipe.yields, margin, unit)
            inputs.append((each.ingredient, wanted, unit))
            short = self.taken((each.ingredient,), wanted, parts)
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
            task=task_of(recipe, tree),
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
        return whole_up(amount) if unit == "each" else amount

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
        life = self.snapshot.keeps_days(recipe.made)
        return SAME_DAY_MINUTES if life is not None and life <= 1 else DAY_MINUTES


def with_margin(amount: float, margin: float, unit: Unit) -> float:
    """So much and a share on top of it; of whole pieces the margin never breaks another.

    >>> [with_margin(each, 0.15, "each") for each in (4.0, 4.6, 7.0)], with_margin(90.0, 0.5, "ml")
    ([4.0, 5.0, 8.0], 135.0)
    """
    if unit == "each":
        return whole_with_spare(amount, amount * margin)
    return amount * (1.0 + margin)
