"""The buying plan: the purchases that make most drinks ready, so many or within a budget.

`planning` finds one. Its claim is exact: buying all of it and asking *tonight* again gives these
drinks and no others. Each kind is bought once.
"""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.buying.limits import Limits
from barkeep.domain.buying.packages import Purchase
from barkeep.domain.buying.shops import Shop
from barkeep.domain.pouring.programme import Ended


@dataclass(frozen=True, slots=True)
class Step:
    """One purchase of a plan and what it opens beside those before it.

    `owned` is what is there already, but too little. `exactly` are those of `unlocks` that need
    no stand-in once all is bought; `makeable` is how many drinks can be made after it.
    """

    bought: Purchase
    owned: bool
    shop: Shop
    unlocks: tuple[str, ...]
    exactly: tuple[str, ...]
    makeable: int


@dataclass(frozen=True, slots=True)
class Plan:
    """What to buy, in an order that opens most soonest.

    `before` is how many drinks can be made now; `worth` what the drinks it opens are worth
    together, each one unless they were weighed, and `upper_bound` what no set can exceed. `cost`
    is that of all purchases with a known price, `unpriced` the kinds of those without.
    `left_out` are kinds that might help, but whose price nobody knows, where money is what
    limits: they were not looked at. `not_counted` says of which drinks nothing is claimed.
    """

    limits: Limits
    steps: tuple[Step, ...]
    before: int
    worth: float
    upper_bound: float
    ended: Ended
    weighed: bool
    currency: str
    left_out: tuple[str, ...]
    not_counted: tuple[str, ...]

    @property
    def proved_best(self) -> bool:
        """Whether nothing better can be bought within the limits."""
        return self.ended == "proved"

    @property
    def unlocks(self) -> tuple[str, ...]:
        """Every drink it opens."""
        return tuple(name for each in self.steps for name in each.unlocks)

    @property
    def cost(self) -> float:
        """What all purchases with a known price cost."""
        return sum(each.bought.price or 0.0 for each in self.steps)

    @property
    def unpriced(self) -> tuple[str, ...]:
        """The kinds among them whose price nobody knows."""
        return tuple(each.bought.ingredient for each in self.steps if each.bought.price is None)
