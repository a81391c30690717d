"""What a recipe takes of a fruit: its peel, its flesh, or all of it.

A peeled lemon is still squeezed, so peels and juice share their fruit; what is
cut into wedges is gone with its peel.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal, TypeAlias

from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree

Part: TypeAlias = Literal["flesh", "peel"]
WHOLE: tuple[Part, ...] = ("flesh", "peel")
PEELS = (
    *("lemon-peel", "lime-peel", "orange-peel", "grapefruit-peel"),
    *("citrus-peel", "mandarin-peel", "yuzu-peel"),
)
"""What is cut off a fruit and leaves the rest of it to be squeezed."""


def parts_taken(recipe: MadeFrom, tree: FamilyTree) -> tuple[Part, ...]:
    """What of its fruit a recipe takes; of all else everything."""
    if recipe.made in PEELS:
        return ("peel",)
    squeezed = len(recipe.inputs) == 1 and "juice" in tree and tree.is_a(recipe.made, "juice")
    return ("flesh",) if squeezed else WHOLE


@dataclass
class Used:
    """How much of each ingredient is taken, its flesh and its peel apart, in its unit."""

    flesh: dict[str, float] = field(default_factory=dict)
    peel: dict[str, float] = field(default_factory=dict)

    def of(self, key: str, parts: tuple[Part, ...] = WHOLE) -> float:
        """How much of it is taken, of whichever of these parts more is."""
        return max(self._by_part(each).get(key, 0.0) for each in parts)

    def add(self, key: str, amount: float, parts: tuple[Part, ...] = WHOLE) -> None:
        """So much more of these parts."""
        for each in parts:
            taken = self._by_part(each)
            taken[key] = taken.get(key, 0.0) + amount

    def copy(self) -> Used:
        """The same, to be tried on."""
        return Used(dict(self.flesh), dict(self.peel))

    def _by_part(self, part: Part) -> dict[str, float]:
        return self.flesh if part == "flesh" else self.peel
