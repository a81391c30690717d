"""What there is of an ingredient, and what could be made of it here, each amount handed out once.

Six lemons are lemon juice, eggs are egg white, and sugar and water are syrup.
Only the thing itself counts, never a likeness of it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.fruit import WHOLE, Part, Used, parts_taken
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tasks import task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import freely_there, kept_as
from barkeep.domain.pouring.supply import Supply, supply_of

LEAST = 1e-9
"""Less than this of anything is arithmetic, not an amount."""
HALVINGS = 48
"""Of the span between nothing and all, to find how much there is enough for."""

MOST_MADE = 10_000.0
"""More of one thing is made for no batch, in its unit (a choice)."""


@dataclass(frozen=True, slots=True)
class Taken:
    """Of one ingredient, in its unit: what stands in the bar, and what is made of other things.

    `recipe` is how it is made, None where nothing is; `inputs` says how much of
    each of its ingredients that takes.
    """

    ingredient: str
    there: float
    made: float = 0.0
    recipe: MadeFrom | None = None
    inputs: Mapping[str, float] = field(default_factory=dict)

    @property
    def amount(self) -> float:
        """All of it."""
        return self.there + self.made


@dataclass
class Available:
    """Hands out what a bar holds, each amount once."""

    snapshot: Snapshot
    supply: Supply
    _used: Used = field(default_factory=Used)

    def there(self, key: str) -> float:
        """What stands in the bar of an ingredient and its kinds and is not handed out yet."""
        return sum(self._left(each, WHOLE) for each in kept_as(key, self.snapshot))

    def draw(self, key: str, amount: float, parts: tuple[Part, ...] = WHOLE) -> float:
        """Hand out up to so much of what stands there, the kind itself first; how much it was."""
        drawn = 0.0
        for each in kept_as(key, self.snapshot):
            some = min(amount - drawn, self._left(each, parts))
            if some > 0.0:
                self._used.add(each, some, parts)
                drawn += some
        return drawn

    def hand_out(self, key: str, amount: float) -> None:
        """Count so much of just this kind as handed out."""
        self._used.add(key, amount)

    def makes(self, key: str, amount: float) -> float:
        """How much more of it could be made of what is left, up to an amount; none of it is."""
        recipe = self.snapshot.knowledge.own_way.get(key)
        if recipe is None:
            return 0.0
        return recipe.yields * self._times_made(recipe, amount / recipe.yields)

    def most(self, key: str, amount: float) -> Taken:
        """What could be had, up to an amount; nothing is handed out."""
        return self._copy().take(key, amount)

    def take(self, key: str, amount: float) -> Taken:
        """Hand out up to so much: first what stands there, then what it can be made of."""
        if freely_there(key, self.snapshot):
            return Taken(key, amount)
        there = self.draw(key, amount)
        lacking = amount - there
        recipe = self.snapshot.knowledge.own_way.get(key)
        if lacking <= LEAST * amount or recipe is None:
            return Taken(key, there)
        times = self._times_made(recipe, lacking / recipe.yields)
        if times <= 0.0:
            return Taken(key, there)
        self._make(recipe, times, frozenset())
        inputs = {each.ingredient: each.amount * times for each in recipe.inputs}
        made = recipe.yields * times
        return Taken(key, there, made=made, recipe=recipe, inputs=inputs)

    def _times_made(self, recipe: MadeFrom, wanted: float) -> float:
        """How many times a recipe can be made, up to as many as are wanted."""
        if self._copy()._make(recipe, wanted, frozenset()):
            return wanted
        low, high = 0.0, wanted
        for _step in range(HALVINGS):
            middle = (low + high) / 2.0
            can = self._copy()._make(recipe, middle, frozenset())
            low, high = (middle, high) if can else (low, middle)
        return low

    def _make(self, recipe: MadeFrom, times: float, within: frozenset[str]) -> bool:
        """Hand out all that so many times a recipe take; whether there was enough.

        `within` holds what is being made already, so that no recipe goes in circles.
        """
        parts = parts_taken(recipe, self._tree)
        inside = within | {recipe.made}
        return all(
            self._all_of(each.ingredient, each.amount * times, parts, inside)
            for each in recipe.inputs
        )

    def _all_of(
        self, key: str, amount: float, parts: tuple[Part, ...], within: frozenset[str]
    ) -> bool:
        if freely_there(key, self.snapshot):
            return True
        lacking = amount - self.draw(key, amount, parts)
        if lacking <= LEAST * amount:
            return True
        recipe = self.snapshot.knowledge.own_way.get(key)
        if recipe is None or key in within:
            return False
        return self._make(recipe, lacking / recipe.yields, within)

    def _left(self, key: str, parts: tuple[Part, ...]) -> float:
        return max(0.0, self.supply.total(key) - self._used.of(key, parts))

    @property
    def _tree(self) -> FamilyTree:
        return self.snapshot.knowledge.tree

    def _copy(self) -> Available:
        return Available(self.snapshot, self.supply, self._used.copy())


def available_in(snapshot: Snapshot) -> Available:
    """All that a bar holds today, none of it handed out."""
    return Available(snapshot, supply_of(snapshot))


def all_there_is(key: str, snapshot: Snapshot) -> float:
    """All there is of an ingredient, in its unit, juice still in its fruit among it.

    What is made rather than squeezed, separated or cut counts only where none of it stands there.
    """
    stock, recipe = available_in(snapshot), snapshot.knowledge.own_way.get(key)
    there = stock.there(key)
    fresh = recipe is not None and task_of(recipe, snapshot.knowledge.tree) != "make"
    return there if there > 0.0 and not fresh else stock.most(key, MOST_MADE).amount
